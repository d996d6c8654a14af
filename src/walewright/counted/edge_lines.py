"""Where the named edges of a counted piece lie: each as a line in centimetres, on the same ground as the piece's outline."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from math import hypot

from walewright.counted.edges import above, split_part
from walewright.counted.model import SizedOpening, SizedRun
from walewright.counted.needles import moved
from walewright.counted.outline import STEP, Outline, Point, between_slopes, between_tops, inner_points, line_cm
from walewright.counted.piece import CountedPiece
from walewright.trade.edge_names import is_top, number_of_top
from walewright.trade.sides import SIDES, EdgeSide

DrawnEdge = tuple[Point, ...]
"""Rows from the bottom up, stitches from the left to the right, as the piece hung on the bed."""

WHOLE = (0.0, 1.0)


def edge_line(of: CountedPiece, shape: Outline, edge: str, share: tuple[float, float] = WHOLE) -> DrawnEdge:
    """The line of an edge as the glued garment names it ("side left", "neck centre", "thumb upper", "end"), from one `share` of
    its length to another; `shape` is the piece's outline. Empty for what is no edge of the piece's fabric."""
    line = _line(of, shape, edge)
    return line if share == WHOLE or len(line) < 2 else stretch(line, *share)


def _line(of: CountedPiece, shape: Outline, edge: str) -> DrawnEdge:
    head, part = split_part(edge)
    if of.piece.strip_at(edge) is not None:
        return _end_of_edging(of, shape, edge, part)
    if head == "start":
        return _start(of, shape)
    number = number_of_top(edge)
    if number:
        return between_tops(shape, number)
    if is_top(head):
        left, right = shape.shoulder_left, tuple(reversed(shape.shoulder_right))
        inner = (between_tops(shape, number) for number in range(2, len(shape.tops) + 1))
        return _joined(*({"left": (left,), "right": (right,)}.get(part, (left, *inner, right))))
    for opening in of.sized.openings:
        if opening.name == head:
            return _gap_line(of, opening, part)
        if opening.rejoins and above(head) == opening.name:
            first = opening.first + moved(opening.edge("left"))
            return line_cm(of, ((first, opening.to_row), (first + opening.width, opening.to_row)))
    for slot in of.sized.slots:
        if slot.name == head or above(head) == slot.name:
            return line_cm(of, ((slot.first, slot.row), (slot.last + 1, slot.row)))
    for side in SIDES:
        runs = of.sized.left if side == "left" else of.sized.right
        if part in ("", side) and any(run.name == head for run in runs):
            return _side(of, shape, side, runs, head)
    return ()


def _start(of: CountedPiece, shape: Outline) -> DrawnEdge:
    """The outer edge of the edging, where there is one."""
    if not of.edging_cm:
        return shape.foot
    return tuple(edging_foot(of, shape))


def edging_foot(of: CountedPiece, shape: Outline) -> Iterator[Point]:
    """The outer edge of the edging along the start, from the left to the right: as wide as its own fabric."""
    half, wide = of.edging_width_cm / 2, max(shape.start_width, 1e-6)
    first = shape.foot[0][0]
    return ((-half + (x - first) / wide * 2 * half, y - of.edging_cm) for x, y in shape.foot)


def _end_of_edging(of: CountedPiece, shape: Outline, edge: str, part: str) -> DrawnEdge:
    """From the outer corner of the edging along the start up to the piece's; what is knitted on at the end is not drawn."""
    if of.piece.strip_at(edge) == "end" or not of.edging_cm:
        return ()
    ends, at = list(edging_foot(of, shape)), 0 if part == "left" else -1
    return ends[at], shape.foot[at]


def _side(of: CountedPiece, shape: Outline, side: EdgeSide, runs: Sequence[SizedRun], name: str) -> DrawnEdge:
    sign = 1 if side == "right" else -1
    points = list(_own_points(runs, of.middle + sign * of.sized.start / 2, sign, name))
    # An edge that is held from its first row to its last has no rows of its own to lie along.
    seen = list(between_slopes(of.sized, side, points)) or points
    line = line_cm(of, seen)
    corner = (shape.left if side == "left" else shape.right)[0]
    if of.edging_cm and line and hypot(line[0][0] - corner[0], line[0][1] - corner[1]) < 1e-6:
        ends = list(edging_foot(of, shape))
        return (ends[0] if side == "left" else ends[-1], *line)
    return line


def _own_points(runs: Sequence[SizedRun], x: float, sign: int, name: str) -> Iterator[Point]:
    """(stitches, row) of the runs of that name, bottom up."""
    last = 0
    for run in runs:
        own = run.name == name
        if own:
            yield x, float(run.from_row)
        for row, by in run.changes():
            if own and (row == last or (abs(by) >= STEP and row - last > 2)):
                yield x, float(row)
            x += sign * by
            if own:
                yield x, float(row)
            last = row
        if own:
            yield x, float(run.to_row)
        last = max(last, run.to_row)


def _gap_line(of: CountedPiece, opening: SizedOpening, part: str) -> DrawnEdge:
    row, to_row, first, end = opening.row, opening.to_row, opening.first, opening.first + opening.flat
    sides = {
        "left": line_cm(of, inner_points(opening.edge("left"), first, +1, row, to_row)),
        "centre": line_cm(of, ((first, row), (end, row))),
        "right": line_cm(of, inner_points(opening.edge("right"), end, -1, row, to_row)),
    }
    return sides[part] if part else _joined(tuple(reversed(sides["left"])), sides["centre"], sides["right"])


def _joined(*lines: DrawnEdge) -> DrawnEdge:
    points = [point for line in lines for point in line]
    return tuple(p for i, p in enumerate(points) if i == 0 or p != points[i - 1])


# ----------------------------------------------------------------- along a line


def length(line: Sequence[Point]) -> float:
    """In cm, as the points are."""
    return sum(hypot(b[0] - a[0], b[1] - a[1]) for a, b in pairwise(line))


def along(line: Sequence[Point], share: float) -> tuple[Point, Point]:
    """The point at that share of the line's length, and the direction (of length 1) in which the line goes there."""
    left = length(line) * share
    for a, b in pairwise(line):
        step = hypot(b[0] - a[0], b[1] - a[1])
        if step and left <= step + 1e-9:
            t = left / step
            return (a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t), ((b[0] - a[0]) / step, (b[1] - a[1]) / step)
        left -= step
    return line[-1], (1.0, 0.0)


def stretch(line: DrawnEdge, low: float, high: float) -> DrawnEdge:
    """The line from one share of its length to another."""
    whole, done = length(line), 0.0
    kept = [along(line, low)[0]]
    for a, b in pairwise(line):
        done += hypot(b[0] - a[0], b[1] - a[1])
        if low * whole + 1e-9 < done < high * whole - 1e-9:
            kept.append(b)
    return (*kept, along(line, high)[0])
