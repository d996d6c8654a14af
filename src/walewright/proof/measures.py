"""What was wanted beside what the bed knitted, piece by piece."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import accumulate

from walewright.bed import Fabric
from walewright.design.model import Design, Piece
from walewright.proof.model import Measure
from walewright.solve.model import SizedPiece, SizedRun


def measures(design: Design, piece: Piece, sized: SizedPiece, fabric: Fabric, size: int) -> tuple[Measure, ...]:
    """Widths and heights at every level, then the neck, of one piece in size number `size`."""
    gauge = design.fabric(piece.fabric)
    across, up = gauge.stitches_per_cm, gauge.rows_per_cm
    found: list[Measure] = [_width("start", piece.start_width[size], fabric.stitches_at(0), across)]
    for row, station, wanted in _stations(piece, sized, size):
        extent = fabric.extent_at(row)
        if extent is not None:
            found.append(_width(station, wanted, extent[1] - extent[0] + 1, across))
    for level in piece.levels:
        row = sized.row(level.name)
        height = level.height[size]
        if row:
            knitted = fabric.rows_between(0, row)
            found.append(Measure(f"height of {level.name}", height, knitted / up, round(knitted - height * up, 3), "rows"))
    for opening, wanted_opening in zip(sized.openings, piece.openings, strict=True):
        gap = neck_gap(fabric, sized.rows)
        if gap is not None:
            found.append(_width(opening.name, wanted_opening.width[size], gap, across))
        depth, rows = wanted_opening.depth[size], fabric.rows_between(opening.row, sized.rows)
        found.append(Measure(f"depth of {opening.name}", depth, rows / up, round(rows - depth * up, 3), "rows"))
    return tuple(found)


def _width(where: str, wanted_cm: float, stitches: int, per_cm: float) -> Measure:
    return Measure(f"width at {where}", wanted_cm, stitches / per_cm, round(stitches - wanted_cm * per_cm, 3), "st")


def _stations(piece: Piece, sized: SizedPiece, size: int) -> Iterator[tuple[int, str, float]]:
    """(row, level, wanted width in cm) at the end of each run of the outer edges that changes the width in some size. Where
    nothing changes there is nothing further to measure (every width is compared with the counts all the same)."""
    rows = {level.name: sized.row(level.name) for level in piece.levels}
    for level in piece.levels:
        ends = [sum(r.change[size] for r in runs if rows[r.to_level] <= rows[level.name]) for runs in (piece.left, piece.right)]
        if any(r.to_level == level.name and any(r.change) for r in (*piece.left, *piece.right)):
            yield rows[level.name], level.name, piece.start_width[size] + sum(ends)


def neck_gap(fabric: Fabric, top_row: int) -> int | None:
    """Needles between the two halves at the last row, or None when only one part was knitted there."""
    halves = sorted(fabric.passes(top_row), key=lambda course: course.first)
    if len(halves) != 2:
        return None
    return halves[1].first - halves[0].last - 1


def as_counted(sized: SizedPiece, fabric: Fabric) -> Iterator[tuple[str, int, int]]:
    """(where, counted, knitted) for every width and row of the counts; equal, if the plan did what the counts say."""
    yield "the start", sized.start, fabric.stitches_at(0)
    yield "the rows", sized.rows, fabric.rows
    left, right = _edge_at(sized.left), _edge_at(sized.right)
    for row in sorted(set(left) | set(right)):
        extent = fabric.extent_at(row)
        if extent is not None and row in left and row in right:
            # Each edge for itself, counted from the centre mark: what was shaped at the wrong edge leaves the width right.
            half = sized.start // 2
            yield f"row {row}, left of the centre", half + left[row], -extent[0]
            yield f"row {row}, right of the centre", sized.start - half + right[row], extent[1] + 1
    for opening in sized.openings:
        gap = neck_gap(fabric, sized.rows)
        yield f"the {opening.name}", opening.width, -1 if gap is None else gap


def _edge_at(runs: tuple[SizedRun, ...]) -> dict[int, int]:
    """Row -> stitches that the edge has moved by then, at the end of each run."""
    totals = accumulate(sum(by for _, by in run.changes()) for run in runs)
    return {run.to_row: total for run, total in zip(runs, totals, strict=True)}
