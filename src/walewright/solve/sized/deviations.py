"""Wanted against solved, at every width station and level of a piece, of its openings, wedges and slots."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.counted import CountedPiece
from walewright.counted.model import Deviation, MeasureKey, SizedOpening, SizedPiece
from walewright.design.model import DesignInSize, Opening, Piece
from walewright.solve.edges.edges import ACROSS_RUN
from walewright.solve.edges.gaps import end_level
from walewright.solve.edges.gauge import highest, level_number, rows_down, rows_to


def deviations(at: DesignInSize, of: CountedPiece) -> Iterator[Deviation]:
    """The rows of the check table that a piece has in one size. What was free is wanted as it was solved."""
    piece, sized = of.piece, of.sized
    yield _width(of, MeasureKey("width", "start"), _ranged(at, piece.start_width, piece.start_most), sized.start, 0, whole=True)
    yield from _outline(at, of)
    for opening, made in zip(piece.openings, sized.openings, strict=True):
        yield from _opening(at, of, opening, made)
    yield from _inside(at, of)


Range = tuple[float, float]
"""From the least to the most that is wanted, in cm; the same twice where nothing is free."""


def _ranged(at: DesignInSize, least: tuple[float, ...], most: tuple[float, ...] | None) -> Range:
    ends = at.of(least), at.of(most or least)
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


def _outline(at: DesignInSize, of: CountedPiece) -> Iterator[Deviation]:
    piece, sized = of.piece, of.sized
    wanted = _ranged(at, piece.start_width, piece.start_most)
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
            low = sum(at.of(r.change) for r, _ in ending)
            high = sum(at.of(r.most or r.change) for r, _ in ending)
            turned = any(r.most for r, _ in ending)
            ends = (wanted[turned] + low, wanted[not turned] + high)
            wanted = min(ends), max(ends)
            stitches += sum(by for _, run in ending for _, by in run.changes())
            row = sized.row(level.name)
            # Loops hung back on other needles are measured in what is knitted with them.
            here = min(row + 1, sized.rows) if spread else row
            if _half_way(piece, sized, row):
                continue
            if not any(at.of(r.change) or at.of(r.most or r.change) for r, _ in ending) and not _alike(of, here, knitted):
                # Straight on in another fabric: the same stitches are wanted, whatever they measure there.
                same = _as_many(of, wanted[0], knitted, here), _as_many(of, wanted[1], knitted, here)
                yield _width(of, MeasureKey("width", "level", level.name), same, stitches, here, whole=True)
                continue
            knitted = here
            yield _width(of, MeasureKey("width", "level", level.name, across=spread), wanted, stitches, here, whole=True)
        row = sized.row(level.name)
        if row:
            yield _height(at, of, level.name, row)


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


def _height(at: DesignInSize, of: CountedPiece, name: str, row: int) -> Deviation:
    """A level. Its rows are measured each in the fabric that it is knitted in, as they are on the bed."""
    piece = of.piece
    level = piece.levels[level_number(piece, name)]
    low, high = rows_to(at, piece, name), rows_to(at, piece, name, most=True)
    wanted = min(max(float(row), low), high)
    free = at.of(highest(level)) - at.of(level.height)
    cm = at.of(level.height) + (free * (wanted - low) / (high - low) if high > low else 0.0)
    return Deviation(
        piece.name, MeasureKey("height", "level", name), cm, wanted=wanted, solved=row, solved_cm=of.height_cm(row), unit="rows"
    )


def _opening(at: DesignInSize, of: CountedPiece, opening: Opening, made: SizedOpening) -> Iterator[Deviation]:
    piece = of.piece
    end = end_level(piece, opening)
    changes = [(at.of(r.change), at.of(r.most or r.change)) for r in (*opening.left, *opening.right)]
    ends = at.of(opening.flat) + sum(low for low, _ in changes), at.of(opening.flat) + sum(high for _, high in changes)
    yield _width(of, MeasureKey("width", "opening", opening.name), (min(ends), max(ends)), made.width, made.to_row)
    rows, up = made.depth, of.fabric(made.to_row).rows_per_cm
    if opening.from_level is None:
        cm = at.of(opening.depth)
        wanted = rows_down(at, piece, end, cm)
    else:
        begin = opening.from_level
        cm = at.of(piece.levels[level_number(piece, end)].height) - at.of(piece.levels[level_number(piece, begin)].height)
        wanted = rows_to(at, piece, end) - rows_to(at, piece, begin)
        if any(piece.levels[level_number(piece, name)].most for name in (begin, end)):
            cm, wanted = rows / up, float(rows)
    solved = cm + (rows - wanted) / up
    yield Deviation(
        piece.name, MeasureKey("depth", "opening", opening.name), cm, wanted=wanted, solved=rows, solved_cm=solved, unit="rows"
    )


def _inside(at: DesignInSize, of: CountedPiece) -> Iterator[Deviation]:
    piece, sized = of.piece, of.sized
    done: set[str] = set()
    for wedge in piece.wedges:
        made = [w for w in sized.wedges if w.origin == wedge.origin and w.from_row == sized.row(wedge.from_level)]
        if wedge.width is None or not made or wedge.name in done:
            continue
        done.add(wedge.name)
        key = MeasureKey("width", "wedge", wedge.name)
        yield _width(of, key, (at.of(wedge.width),) * 2, sum(made[0].groups), made[0].from_row + 1)
    for slot in piece.slots:
        solved = next(s for s in sized.slots if s.name == slot.name)
        yield _width(of, MeasureKey("width", "slot", slot.name), (at.of(slot.width),) * 2, solved.stitches, solved.row)
