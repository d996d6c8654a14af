"""Lines within a piece along which its edges are shaped: darts and gussets. Whether they find room, and whether hands can do it.

An emptied needle would leave a ladder, so all stitches from the line to the edge are moved by one needle: one stitch to each line
at a time, at most every 4th row, and no more than 20 stitches with a tool of 3 prongs, 40 with one of 7 to 10 (common practice).
"""

from __future__ import annotations

from dataclasses import dataclass

from walewright.design.model import InsideLine, PerSize
from walewright.design.pieces.moves import EdgeMove, position
from walewright.design.pieces.tracing import TracedSides, Tracing
from walewright.design.reading.places import NOT_NEGATIVE
from walewright.report.model import Severity
from walewright.report.said import said
from walewright.source import syntax
from walewright.trade.sides import OTHER_SIDE, EdgeSide

MOST_LINES = 2
"""At one edge: of more, the needles of those between would be others each time."""

MOST_MOVED = ((3, 20), (10, 40))
"""(prongs, stitches) that hands move with a tool of so many prongs (common practice)."""

LEAST_OUTSIDE = 3.0
"""Stitches in the design that a line lies in from the edge, so that with what rounding takes one at least is left to be moved."""
LEAST_BETWEEN = 3.0
"""Stitches in the design between two lines, or a line and the other edge."""


@dataclass(frozen=True, slots=True)
class _LinesFound:
    lines: tuple[InsideLine, ...]
    at: tuple[PerSize, ...]
    """Where each lies at the run's beginning, outwards from the middle of the start."""


def inside_lines(node: syntax.EdgeLine, now: TracedSides, moved: EdgeMove, on: Tracing) -> tuple[InsideLine, ...] | None:
    """The lines of a run shaped along some; none of another; None when told why they cannot be."""
    if node.way != "inside":
        return ()
    findings = on.findings
    which = [name for name, wrong in _wrong(node, on) if wrong]
    if which:
        findings.report(
            f"line-inside/{which[0]}", (node.span, "shaped"), helps=(which[0],), to_level=node.to_level, most=MOST_LINES
        )
        return None
    side: EdgeSide = "right" if node.which == "right" else "left"
    found = _places(node, side, now, on)
    if found is None:
        return None
    if not _room(node, side, found, now, moved, on):
        return None
    return found.lines


def _wrong(node: syntax.EdgeLine, on: Tracing) -> tuple[tuple[str, bool], ...]:
    both = node.which == "both"
    return (
        ("opening", on.gap),
        ("slope", node.path != "slope" or node.cast_off is not None),
        ("lines", len(node.places) > MOST_LINES),
        ("one-place", both and any(p.of in ("left", "right") or (p.of == "own" and any(on.centre)) for p in node.places)),
    )


def _places(node: syntax.EdgeLine, side: EdgeSide, now: TracedSides, on: Tracing) -> _LinesFound | None:
    """The lines from the centre outwards."""
    place = on.cloth.place
    made: list[tuple[InsideLine, PerSize]] = []
    for one in node.places:
        distance = place.across(one.distance, said("place-of-line", of=on.what), NOT_NEGATIVE)
        if distance is None:
            return None
        if one.of == "edge":
            at = tuple(e - d for e, d in zip(now[side].least, distance, strict=True))
            made.append((InsideLine("edge", distance), at))
        else:
            at = position(side, one.of, distance, on.centre)
            made.append((InsideLine("centre", at), at))
    made.sort(key=lambda m: m[1][0])
    return _LinesFound(tuple(line for line, _ in made), tuple(at for _, at in made))


def _room(node: syntax.EdgeLine, side: EdgeSide, found: _LinesFound, now: TracedSides, moved: EdgeMove, on: Tracing) -> bool:
    """Whether there are stitches outside the outermost line, between two, and inside the innermost one, in every size."""
    place = on.cloth.place
    stitch = 1 / place.fabric.stitches_per_cm if place.fabric is not None else 0.0
    before, after, other = now[side].least, moved.of(now[side]).least, now[OTHER_SIDE[side]].least
    short: list[str] = []
    for i, size in enumerate(on.sizes):
        inner, outer = found.at[0][i], found.at[-1][i]
        taken = max(before[i] - after[i], 0.0)
        goes_with_edge = found.lines[0].of == "edge" and len(found.lines) == 1
        room = [inner - (taken if goes_with_edge else 0.0) + other[i] - LEAST_BETWEEN * stitch]
        if len(found.lines) > 1:
            room.append(outer - inner - taken - LEAST_BETWEEN * stitch)
        elif not goes_with_edge:
            room.append(min(before[i], after[i]) - outer - LEAST_OUTSIDE * stitch)
        if found.lines[-1].of == "centre":
            room.append(before[i] - outer - LEAST_OUTSIDE * stitch)
        if min(room) < -1e-6:
            short.append(size)
    if short:
        on.findings.report(
            "line-inside/no-room",
            (node.span, "shaped"),
            helps=("no-room",),
            sizes=place.scope.only(tuple(short)),
            to_level=node.to_level,
        )
        return False
    _tell_many(node, found, tuple(map(max, now[side].most, moved.of(now[side]).farthest)), stitch, on)
    return True


def _tell_many(node: syntax.EdgeLine, found: _LinesFound, farthest: PerSize, stitch: float, on: Tracing) -> None:
    prongs = max(on.machine.prongs, default=1) if on.machine is not None else 0
    if not stitch or not prongs:
        return
    most = next((many for wide, many in MOST_MOVED if prongs <= wide), MOST_MOVED[-1][1])
    outside = [round((far - at) / stitch) for far, at in zip(farthest, found.at[0], strict=True)]
    many = tuple(size for size, count in zip(on.sizes, outside, strict=True) if count > most)
    if many:
        on.findings.report(
            "many-stitches-moved",
            (node.span, "shaped"),
            helps=("seam", "nearer"),
            severity=Severity.WARNING,
            sizes=on.cloth.place.scope.only(many),
            to_level=node.to_level,
            stitches=max(outside),
            most=most,
            prongs=prongs,
        )
