"""Lines within a piece along which its edges are shaped: darts and gussets. Whether they find room, and whether hands can do it.

An emptied needle would leave a ladder, so all stitches from the line to the edge are moved by one needle: one stitch to each line
at a time, at most every 4th row, and no more than 20 stitches with a tool of 3 prongs, 40 with one of 7 to 10 (common practice).
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import Literal

from walewright.design.model import InsideLine, PerSize
from walewright.design.model.per_size import minus
from walewright.design.pieces.moves import EdgeMove, position
from walewright.design.pieces.tracing import TracedSides, Tracing
from walewright.design.reading.places import NOT_NEGATIVE
from walewright.record import record
from walewright.report.model import Severity
from walewright.report.said import said
from walewright.source import syntax
from walewright.trade.sides import OTHER_SIDE, SIDES, EdgeSide

MOST_MOVED = ((3, 20), (10, 40))
"""(prongs, stitches) that hands move with a tool of so many prongs (common practice)."""

LEAST_OUTSIDE = 3.0
"""Stitches in the design that a line lies in from the edge, so that with what rounding takes one at least is left to be moved."""
LEAST_BETWEEN = 3.0
"""Stitches in the design between two lines, or a line and the other edge."""


@record
class _LinesFound:
    """Those of the edge at `side`, from the centre outwards."""

    side: EdgeSide
    of: tuple[Literal["centre", "edge"], ...]
    at: tuple[PerSize, ...]
    """Where each lies at the run's beginning, outwards from the middle of the start."""


def inside_lines(node: syntax.EdgeLine, now: TracedSides, moved: EdgeMove, on: Tracing) -> tuple[InsideLine, ...] | None:
    """The lines of a run shaped along some; none of another; None when told why they cannot be."""
    if node.way != "inside":
        return ()
    which = [name for name, wrong in _wrong(node, on) if wrong]
    if which:
        _tell(node, which[0], on)
        return None
    sides: tuple[EdgeSide, ...] = SIDES if node.which == "both" else (node.which,)
    made = _lines(node, sides, now, on)
    if made is None:
        return None
    found = [_LinesFound(side, tuple(line.of for line, _ in made), tuple(at[side] for _, at in made)) for side in sides]
    if not all(all(b >= a for one, other in pairwise(f.at) for a, b in zip(one, other, strict=True)) for f in found):
        # The line nearer to the centre at one edge is the farther one at the other.
        _tell(node, "one-place", on)
        return None
    if not all(_room(node, f, now, moved, on) for f in found[: 1 if found[0].at == found[-1].at else 2]):
        return None
    _tell_many(node, found, now, moved, on)
    return tuple(line for line, _ in made)


def _tell(node: syntax.EdgeLine, case: str, on: Tracing) -> None:
    on.findings.report(f"line-inside/{case}", (node.span, "shaped"), helps=(case,), to_level=node.to_level)


def _wrong(node: syntax.EdgeLine, on: Tracing) -> tuple[tuple[str, bool], ...]:
    return (
        ("opening", on.gap),
        ("slope", node.path != "slope" or node.cast_off is not None),
        ("one-place", node.which == "both" and any(p.of in SIDES for p in node.places)),
    )


_Line = tuple[InsideLine, dict[EdgeSide, PerSize]]
"""A line, and where it lies at each of the edges that have it."""


def _lines(node: syntax.EdgeLine, sides: tuple[EdgeSide, ...], now: TracedSides, on: Tracing) -> list[_Line] | None:
    """The lines from the centre outwards. Of both edges each has its own on its own side of the centre line."""
    made: list[_Line] = []
    for one in node.places:
        distance = on.cloth.place.across(one.distance, said("place-of-line", of=on.what), NOT_NEGATIVE)
        if distance is None:
            return None
        if one.of == "edge":
            at = {s: minus(now[s].least, distance) for s in sides}
            made.append((InsideLine("edge", distance), at))
        else:
            at = {s: position(s, s if len(sides) > 1 else one.of, distance, on.centre) for s in sides}
            first, last = at[sides[0]], at[sides[-1]]
            made.append((InsideLine("centre", first, last if last != first else ()), at))
    return sorted(made, key=lambda line: line[1][sides[0]][0])


def _room(node: syntax.EdgeLine, found: _LinesFound, now: TracedSides, moved: EdgeMove, on: Tracing) -> bool:
    """Whether there are stitches outside the outermost line, between two, and inside the innermost one, in every size."""
    place, side = on.cloth.place, found.side
    stitch = 1 / place.fabric.stitches_per_cm if place.fabric is not None else 0.0
    before, after, other = now[side].least, moved.of(now[side]).least, now[OTHER_SIDE[side]].least
    short: list[str] = []
    for i, size in enumerate(on.sizes):
        inner, outer = found.at[0][i], found.at[-1][i]
        taken = max(before[i] - after[i], 0.0)
        goes_with_edge = found.of == ("edge",)
        room = [inner - (taken if goes_with_edge else 0.0) + other[i] - LEAST_BETWEEN * stitch]
        if len(found.at) > 1:
            # What all lines take is taken from between the two outermost ones.
            gaps = [b[i] - a[i] for a, b in pairwise(found.at)]
            room += [gap - LEAST_BETWEEN * stitch for gap in (*gaps[:-1], gaps[-1] - taken)]
        elif not goes_with_edge:
            room.append(min(before[i], after[i]) - outer - LEAST_OUTSIDE * stitch)
        if found.of[-1] == "centre":
            room.append(before[i] - outer - LEAST_OUTSIDE * stitch)
        if min(room) < -1e-6:
            short.append(size)
    if short:
        only = place.scope.only(tuple(short))
        on.findings.report(
            "line-inside/no-room",
            (node.span, "shaped"),
            notes=("between-outermost",) if len(found.at) > 1 else (),
            helps=("no-room",),
            sizes=only,
            to_level=node.to_level,
        )
        return False
    return True


def _tell_many(node: syntax.EdgeLine, every: Sequence[_LinesFound], now: TracedSides, moved: EdgeMove, on: Tracing) -> None:
    """Of both edges, the message names the one that has more outside its lines."""
    place = on.cloth.place
    prongs = max(on.machine.prongs, default=1) if on.machine is not None else 0
    if place.fabric is None or not prongs:
        return
    most = next((many for wide, many in MOST_MOVED if prongs <= wide), MOST_MOVED[-1][1])
    outside = [0] * len(on.sizes)
    for found in every:
        edge = now[found.side]
        reach = zip(edge.most, moved.of(edge).farthest, found.at[0], strict=True)
        counts = (round((max(before, after) - at) * place.fabric.stitches_per_cm) for before, after, at in reach)
        outside = list(map(max, outside, counts))
    many = tuple(size for size, count in zip(on.sizes, outside, strict=True) if count > most)
    if many:
        on.findings.report(
            "many-stitches-moved",
            (node.span, "shaped"),
            helps=("seam", "nearer"),
            severity=Severity.WARNING,
            sizes=place.scope.only(many),
            to_level=node.to_level,
            stitches=max(outside),
            most=most,
            prongs=prongs,
        )
