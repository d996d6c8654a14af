"""The ends of edgings along a piece: rows knitted before its own ones, or on its first row, which was hung again.

An edging knitted first is in the block of its piece: its edges are named before the counter is set back to 0 for the piece itself.
One that is added after is a block of its own, which hangs from the piece: its last row is at the bottom, and where the first row of
the piece was hung with its purl side to the knitter, left and right have changed places. Its edges are those of the piece, by the
sides that the piece has. Where rows are folded up and hung, the ends of two of them lie upon each other, and are one place.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from walewright.bed.corners import Corners
from walewright.bed.fabric import KnitFabric, KnitPiece
from walewright.bed.machine import Machine
from walewright.bed.model import BedEdge, BedPart, Course
from walewright.bed.outline import end_loop
from walewright.knit.operations import Side, other
from walewright.record import replace

SIDES: tuple[Side, Side] = ("left", "right")


def through_both(m: Machine, edge: BedEdge, rows: Sequence[Course], chain: Sequence[Course]) -> BedEdge:
    """An edge along the ends of `rows` with, at each that a fold has laid on another one, the end of that other one too, unless it
    is among the rows itself. `chain` has all rows of that side."""
    if len(edge.points) != len(rows) or edge.at is None:
        return edge
    own = {course.counter for course in rows}
    points = list(edge.points)
    for section, low, high in m.folds:
        beneath = {low + high - course.counter: course for course in chain if course.section == section}
        for n, course in enumerate(rows):
            under = beneath.get(course.counter)
            if course.section == section and low <= course.counter <= high and under is not None and under.counter not in own:
                points[n] = (*points[n], end_loop(under, edge.at))
    return replace(edge, points=tuple(points))


def as_it_hangs(m: Machine, edge: BedEdge) -> BedEdge:
    """An edge of rows as it lies along the piece whose first row they hang from."""
    if not m.rehung or edge.along != "rows" or edge.at is None:
        return edge
    ((_, facing),) = m.rehung[:1]
    side = other(edge.at) if facing == "purl" else edge.at
    return replace(edge, part=side, at=side, points=edge.points[::-1])


def corners_of_strips(m: Machine, strips: Sequence[BedEdge], own: Corners | None) -> dict[tuple[str, BedPart], Corners]:
    """The bottom and the top corner of each: the lower one at the edging's outer edge, the upper one where the piece begins. `own`
    are the corners of that beginning."""
    above = m.pieces[m.rehung[0][0]].fabric if m.rehung else None
    top = above.corners.get(("start", "whole")) if above is not None else own
    if top is None:
        return {}
    numbers = {"left": 0, "right": 1}
    return {(e.name, e.part): ((e.name, numbers[e.part]), top[numbers[e.part]]) for e in strips if e.part in numbers}


def holder(pieces: Mapping[str, KnitPiece], name: str, edge: str) -> tuple[str, KnitPiece] | None:
    """The block that has an edge of a piece: its own, or that which hangs from its first row; None of a piece that is not there."""
    own = pieces.get(name)
    if own is None or own.fabric is None:
        return None if own is None else (name, own)
    found = having({n: p.fabric for n, p in pieces.items() if p.fabric is not None}, name, edge)
    return None if found is None else (found[0], pieces[found[0]])


def having(fabrics: Mapping[str, KnitFabric], name: str, edge: str) -> tuple[str, KnitFabric] | None:
    """The same among finished `fabrics`."""
    own = fabrics.get(name)
    if own is None or own.edge(edge):
        return None if own is None else (name, own)
    return next(((n, f) for n, f in fabrics.items() if f.below == name and f.edge(edge)), (name, own))


def rows_at_ends(m: Machine, passes: Sequence[Course], sections: range) -> int:
    """How many of the rows of those sections lie at their two ends: of what was folded, two upon each other are one."""
    fold = next(((low, high) for section, low, high in m.folds if section in sections), None)
    if fold is not None:
        return (fold[1] - fold[0] + 1) // 2
    return len({(course.section, course.counter) for course in passes if course.section in sections})


def rows_of_strip(pieces: Mapping[str, KnitPiece], name: str, edging: str) -> int | None:
    """How many rows are at each end of a band, or of an edging of a piece: one that was named, that hangs from its first row, or
    that was knitted before it. None where there is no such thing."""
    own = pieces[name].fabric if name in pieces else None
    if own is None or not edging:
        return None if own is None else own.end_rows
    found = own.edge(f"{edging} left")
    hanging = next((p.fabric for p in pieces.values() if p.fabric is not None and p.fabric.below == name), None)
    if found:
        return found[0].count
    return hanging.end_rows if hanging is not None else own.rows_before or None
