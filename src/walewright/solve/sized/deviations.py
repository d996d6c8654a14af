"""Wanted against solved, at every width station and level of a piece, of its openings, wedges and slots."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.counted import CountedPiece
from walewright.counted.model import Deviation, MeasureKey, SizedOpening, SizedPiece
from walewright.design.model import Opening, Piece
from walewright.solve.edges.edges import ACROSS_RUN
from walewright.solve.edges.gaps import end_level
from walewright.solve.edges.gauge import highest, level_number, rows_down, rows_to


def deviations(of: CountedPiece, size: int) -> Iterator[Deviation]:
    """The rows of the check table that a piece has in one size. What was free is wanted as it was solved."""
    piece, sized = of.piece, of.sized
    yield _width(of, MeasureKey("width", "start"), _ranged(piece.start_width, piece.start_most, size), sized.start, 0, whole=True)
    yield from _outline(of, size)
    for opening, made in zip(piece.openings, sized.openings, strict=True):
        yield from _opening(of, opening, made, size)
    yield from _inside(of, size)


Range = tuple[float, float]
"""From the least to the most that is wanted, in cm; the same twice where nothing is free."""


def _ranged(least: tuple[float, ...], most: tuple[float, ...] | None, size: int) -> Range:
    ends = least[size], (most or least)[size]
    return min(ends), max(ends)


def _width(of: CountedPiece, key: MeasureKey, wanted: Range, stitches: int, row: int, whole: bool = False) -> Deviation:
    """Of stitches just below `row`, or at the start; with the panels of the `whole` width, if it is that."""
    per_cm, panels = of.fabric(row).stitches_per_cm, of.panels_cm(row) if whole else 0.0
    solved = stitches / per_cm + panels
    cm = min(max(solved, wanted[0]), wanted[1])
    return Deviation(
        piece=of.piece.name,
        key=key,
        wanted_cm=cm,
        wanted=(cm - panels) * per_cm,
        solved=stitches,
        solved_cm=solved,
        unit="st",
    )


def _outline(of: CountedPiece, size: int) -> Iterator[Deviation]:
    piece, sized = of.piece, of.sized
    wanted = _ranged(piece.start_width, piece.start_most, size)
    knitted = 0
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
            row = sized.row(level.name)
            # Loops hung back on other needles are measured in what is knitted with them.
            here = min(row + 1, sized.rows) if spread else row
            if _half_way(piece, sized, row):
                continue
            if not any(r.change[size] or (r.most or r.change)[size] for r, _ in ending) and not _alike(of, here, knitted):
                # Straight on in another fabric: the same stitches are wanted, whatever they measure there.
                same = _as_many(of, wanted[0], knitted, here), _as_many(of, wanted[1], knitted, here)
                yield _width(of, MeasureKey("width", "level", level.name), same, stitches, here, whole=True)
                continue
            knitted = here
            yield _width(of, MeasureKey("width", "level", level.name, across=spread), wanted, stitches, here, whole=True)
        row = sized.row(level.name)
        if row:
            yield _height(of, level.name, row, size)


def _alike(of: CountedPiece, one: int, other: int) -> bool:
    """Whether as many stitches are as wide in two rows."""
    return (of.stitch_cm(one), of.panels_cm(one)) == (of.stitch_cm(other), of.panels_cm(other))


def _as_many(of: CountedPiece, cm: float, row: int, other: int) -> float:
    """How wide the stitches of so many centimetres in one row are in another."""
    return of.width_cm((cm - of.panels_cm(row)) / of.stitch_cm(row), other)


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


def _height(of: CountedPiece, name: str, row: int, size: int) -> Deviation:
    """A level. Its rows are measured each in the fabric that it is knitted in, as they are on the bed."""
    design, piece = of.design, of.piece
    level = piece.levels[level_number(piece, name)]
    low, high = rows_to(design, piece, name, size), rows_to(design, piece, name, size, most=True)
    wanted = min(max(float(row), low), high)
    free = highest(level)[size] - level.height[size]
    cm = level.height[size] + (free * (wanted - low) / (high - low) if high > low else 0.0)
    return Deviation(piece.name, MeasureKey("height", "level", name), cm, wanted, row, of.height_cm(row), "rows")


def _opening(of: CountedPiece, opening: Opening, made: SizedOpening, size: int) -> Iterator[Deviation]:
    design, piece = of.design, of.piece
    end = end_level(piece, opening)
    changes = [(r.change[size], (r.most or r.change)[size]) for r in (*opening.left, *opening.right)]
    ends = opening.flat[size] + sum(low for low, _ in changes), opening.flat[size] + sum(high for _, high in changes)
    yield _width(of, MeasureKey("width", "opening", opening.name), (min(ends), max(ends)), made.width, made.to_row)
    rows, up = made.depth, of.fabric(made.to_row).rows_per_cm
    if opening.from_level is None:
        cm = opening.depth[size]
        wanted = rows_down(design, piece, end, cm, size)
    else:
        begin = opening.from_level
        cm = piece.levels[level_number(piece, end)].height[size] - piece.levels[level_number(piece, begin)].height[size]
        wanted = rows_to(design, piece, end, size) - rows_to(design, piece, begin, size)
        if any(piece.levels[level_number(piece, name)].most for name in (begin, end)):
            cm, wanted = rows / up, float(rows)
    solved = cm + (rows - wanted) / up
    yield Deviation(piece.name, MeasureKey("depth", "opening", opening.name), cm, wanted, rows, solved, "rows")


def _inside(of: CountedPiece, size: int) -> Iterator[Deviation]:
    piece, sized = of.piece, of.sized
    done: set[str] = set()
    for wedge in piece.wedges:
        made = [w for w in sized.wedges if w.origin == wedge.origin and w.from_row == sized.row(wedge.from_level)]
        if wedge.width is None or not made or wedge.name in done:
            continue
        done.add(wedge.name)
        key = MeasureKey("width", "wedge", wedge.name)
        yield _width(of, key, (wedge.width[size],) * 2, sum(made[0].groups), made[0].from_row + 1)
    for slot in piece.slots:
        solved = next(s for s in sized.slots if s.name == slot.name)
        yield _width(of, MeasureKey("width", "slot", slot.name), (slot.width[size],) * 2, solved.stitches, solved.row)
