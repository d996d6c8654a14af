"""Wanted against solved, at every width station and level of a piece, of its openings, wedges and slots."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from walewright.counted.model import Deviation, MeasureKey, SizedOpening, SizedPiece
from walewright.design.model import Design, Opening, Piece
from walewright.solve.edges.edges import ACROSS_RUN
from walewright.solve.edges.gaps import end_level
from walewright.solve.edges.gauge import fabric_above, fabric_below, highest, level_number, rows_down, rows_to
from walewright.solve.edges.widths import Across, across


def deviations(design: Design, piece: Piece, sized: SizedPiece, size: int) -> Iterator[Deviation]:
    """The rows of the check table that a piece has in one size. What was free is wanted as it was solved."""
    first = piece.levels[0].name
    yield _width(
        piece,
        MeasureKey("width", "start"),
        _ranged(piece.start_width, piece.start_most, size),
        sized.start,
        across(design, piece, first, size),
    )
    yield from _outline(design, piece, sized, size)
    for opening, made in zip(piece.openings, sized.openings, strict=True):
        yield from _opening(design, piece, opening, made, size)
    yield from _inside(design, piece, sized, size)


Range = tuple[float, float]
"""From the least to the most that is wanted, in cm; the same twice where nothing is free."""


def _ranged(least: tuple[float, ...], most: tuple[float, ...] | None, size: int) -> Range:
    ends = least[size], (most or least)[size]
    return min(ends), max(ends)


def _width(piece: Piece, key: MeasureKey, wanted: Range, stitches: int, by: Across) -> Deviation:
    solved = by.cm(stitches)
    cm = min(max(solved, wanted[0]), wanted[1])
    return Deviation(piece.name, key, cm, by.stitches(cm), stitches, solved, "st")


def _outline(design: Design, piece: Piece, sized: SizedPiece, size: int) -> Iterator[Deviation]:
    wanted = _ranged(piece.start_width, piece.start_most, size)
    knitted = across(design, piece, piece.levels[0].name, size)
    runs = (*piece.left, *piece.right)
    made = (*sized.left, *sized.right)
    stitches = sized.start
    for level in piece.levels:
        for spread in (False, True):
            ending = [
                (run, solved)
                for run, solved in zip(runs, made, strict=True)
                if run.to_level == level.name and (run.path == ACROSS_RUN) is spread
            ]
            if not ending:
                continue
            # A width that is free after one that was free is the one or the other way round: see the walk of the edges.
            low = sum(r.change[size] for r, _ in ending)
            high = sum((r.most or r.change)[size] for r, _ in ending)
            turned = any(r.most for r, _ in ending)
            ends = (wanted[turned] + low, wanted[not turned] + high)
            wanted = min(ends), max(ends)
            stitches += sum(by for _, run in ending for _, by in run.changes())
            here = across(design, piece, level.name, size, above=spread)
            if _half_way(piece, sized, sized.row(level.name)):
                continue
            if not any(r.change[size] or (r.most or r.change)[size] for r, _ in ending) and here != knitted:
                # Straight on in another fabric: the same stitches are wanted, whatever they measure there.
                same = here.cm(knitted.stitches(wanted[0])), here.cm(knitted.stitches(wanted[1]))
                yield _width(piece, MeasureKey("width", "level", level.name), same, stitches, here)
                continue
            knitted = here
            yield _width(piece, MeasureKey("width", "level", level.name, across=spread), wanted, stitches, here)
        row = sized.row(level.name)
        if row:
            yield _height(design, piece, sized, level.name, row, size)


def _half_way(piece: Piece, sized: SizedPiece, at: int) -> bool:
    """Whether an edge is in the midst of a run that moves it in some size: no width is asked for at that row, and what it has there
    is none that the counts chose."""
    for side in (piece.left, piece.right):
        begun = 0
        for run in side:
            to = sized.row(run.to_level)
            if begun < at < to and any(run.most or run.change):
                return True
            begun = to
    return False


def _height(design: Design, piece: Piece, sized: SizedPiece, name: str, row: int, size: int) -> Deviation:
    """A level. Its rows are measured each in the fabric that it is knitted in, as they are on the bed."""
    level = piece.levels[level_number(piece, name)]
    up = fabric_below(design, piece, name).rows_per_cm
    low, high = rows_to(design, piece, name, size), rows_to(design, piece, name, size, most=True)
    wanted = min(max(float(row), low), high)
    free = highest(level)[size] - level.height[size]
    cm = level.height[size] + (free * (wanted - low) / (high - low) if high > low else 0.0)
    below = piece.levels[: level_number(piece, name) + 1]
    per_cm = [fabric_below(design, piece, at.name).rows_per_cm for at in below[1:]]
    if any(found != up for found in per_cm):
        solved = sum((sized.row(b.name) - sized.row(a.name)) / found for (a, b), found in zip(pairwise(below), per_cm, strict=True))
    else:
        solved = row / up
    return Deviation(piece.name, MeasureKey("height", "level", name), cm, wanted, row, solved, "rows")


def _opening(design: Design, piece: Piece, opening: Opening, made: SizedOpening, size: int) -> Iterator[Deviation]:
    end = end_level(piece, opening)
    fabric = fabric_below(design, piece, end)
    changes = [(r.change[size], (r.most or r.change)[size]) for r in (*opening.left, *opening.right)]
    ends = opening.flat[size] + sum(low for low, _ in changes), opening.flat[size] + sum(high for _, high in changes)
    yield _width(
        piece,
        MeasureKey("width", "opening", opening.name),
        (min(ends), max(ends)),
        made.width,
        Across(fabric.stitches_per_cm, 0.0),
    )
    rows = made.to_row - made.row
    if opening.from_level is None:
        cm = opening.depth[size]
        wanted = rows_down(design, piece, end, cm, size)
    else:
        begin = opening.from_level
        cm = piece.levels[level_number(piece, end)].height[size] - piece.levels[level_number(piece, begin)].height[size]
        wanted = rows_to(design, piece, end, size) - rows_to(design, piece, begin, size)
        if any(piece.levels[level_number(piece, name)].most for name in (begin, end)):
            cm, wanted = rows / fabric.rows_per_cm, float(rows)
    solved = cm + (rows - wanted) / fabric.rows_per_cm
    yield Deviation(piece.name, MeasureKey("depth", "opening", opening.name), cm, wanted, rows, solved, "rows")


def _inside(design: Design, piece: Piece, sized: SizedPiece, size: int) -> Iterator[Deviation]:
    done: set[str] = set()
    for wedge in piece.wedges:
        made = [w for w in sized.wedges if w.origin == wedge.origin and w.from_row == sized.row(wedge.from_level)]
        if wedge.width is None or not made or wedge.name in done:
            continue
        done.add(wedge.name)
        fabric = fabric_above(design, piece, wedge.from_level)
        by = Across(fabric.stitches_per_cm, 0.0)
        yield _width(piece, MeasureKey("width", "wedge", wedge.name), (wedge.width[size],) * 2, sum(made[0].groups), by)
    for slot in piece.slots:
        solved = next(s for s in sized.slots if s.name == slot.name)
        fabric = fabric_below(design, piece, slot.level)
        by = Across(fabric.stitches_per_cm, 0.0)
        stitches = solved.last - solved.first + 1
        yield _width(piece, MeasureKey("width", "slot", slot.name), (slot.width[size],) * 2, stitches, by)
