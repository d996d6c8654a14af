"""How edges of finished pieces lie on the needles: which end hangs at the left, and whether neighbours are one line.

With its purl side to the knitter, a piece has its row ends at the right hang downwards from left to right, those at the left
upwards; what was cast on hangs upside down, its right end at the left. With its knit side to the knitter all is the other
way round.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from walewright.bed.corners import Corners, HungEdge
from walewright.bed.fabric import KnitFabric
from walewright.bed.machine import Machine
from walewright.bed.model import BedEdge
from walewright.bed.refusals import Refusal, of_piece
from walewright.bed.sides import clockwise_backwards
from walewright.bed.stretched import corners_of
from walewright.knit.operations import HungEnd, PickUpEdge

ENDS: Mapping[Literal["rows", "stitches"], tuple[HungEnd, HungEnd]] = {"rows": ("bottom", "top"), "stitches": ("left", "right")}
"""Ends of an edge, in the order of its points."""


def turned(edge: BedEdge, facing: str) -> bool:
    """Whether the points of an edge lie on the needles from the last one to the first."""
    return clockwise_backwards(edge) == (facing == "purl")


def from_the_left(edge: BedEdge, facing: str) -> tuple[tuple[int, ...], ...]:
    """The points in order from left to right."""
    return edge.points[::-1] if turned(edge, facing) else edge.points


def wrong_end(m: Machine, op: PickUpEdge, edges: tuple[BedEdge, ...]) -> Refusal | None:
    """The edge hangs with the end at the left that is said to be there."""
    if not op.left_end:
        return None
    at_left = _end_at_left(op, edges)
    if at_left == op.left_end:
        return None
    return m.refuse("edge-lies-otherwise", facing=op.facing, edge=op.edge, piece=op.piece, at_left=at_left, left_end=op.left_end)


def _end_at_left(op: PickUpEdge, edges: tuple[BedEdge, ...]) -> HungEnd:
    first = edges[-1] if op.facing == "knit" else edges[0]
    return ENDS[first.along][turned(first, op.facing)]


def hung_edge(m: Machine, op: PickUpEdge, fabric: KnitFabric, edges: tuple[BedEdge, ...], points: range) -> HungEdge:
    """What hangs on the needles now, `points` of an edge or all of several, with the corners at its two ends."""
    first, last = m.span(op.first, op.last)
    at_left, at_right = (edges[0], edges[-1]) if op.facing == "purl" else (edges[-1], edges[0])
    begin, end = (fabric.corners.get((edge.name, edge.part)) for edge in (at_left, at_right))
    if len(edges) == 1 and begin is not None:
        begin = end = corners_of(edges[0], begin, points)
    corners = None
    if begin is not None and end is not None:
        corners = begin[turned(at_left, op.facing)], end[not turned(at_right, op.facing)]
    at_left_end = _end_at_left(op, edges)
    return HungEdge(
        piece=op.piece,
        edge=op.edge,
        part=op.part,
        copy=op.copy,
        first=first,
        last=last,
        corners=corners,
        facing=op.facing,
        left_end=at_left_end,
        stretch=(op.low, op.high),
    )


def beside(m: Machine, line: list[HungEdge]) -> Refusal | None:
    """The edge hung last lies beside the one before it, and they meet there; all of them are no ring."""
    if len(line) < 2:
        return None
    before, now = line[-2:]
    if now.first != before.last + 1:
        return m.refuse("hung-apart", one=before.piece, other=now.piece)
    if not _meet(m, before, now):
        return m.refuse("edges-do-not-meet", one=of_piece(before.piece, before.edge), other=of_piece(now.piece, now.edge))
    if len({(h.piece, h.copy) for h in line}) > 1 and _meet(m, now, line[0]):
        return m.refuse("line-is-a-ring", one=line[0].piece, other=now.piece)
    return None


def same_side(m: Machine, over: HungEdge) -> Refusal | None:
    """What is linked lies right side to right side: one piece has its purl side to the knitter, the other its knit side."""
    beneath = next((h for h in m.hung if h.first <= over.last and over.first <= h.last), None)
    if beneath is None or beneath.facing != over.facing:
        return None
    return m.refuse("linked-face-to-back", beneath=beneath.piece, over=over.piece, facing=over.facing)


def _meet(m: Machine, one: HungEdge, other: HungEdge) -> bool:
    """Whether the right corner of one is the left corner of the other, at every copy."""
    if one.corners is None or other.corners is None:
        return True
    pairs = zip(_each(m, one), _each(m, other), strict=False)
    return all(m.meetings.meet((*a, one.corners[1]), (*b, other.corners[0])) for a, b in pairs)


def _each(m: Machine, hung: HungEdge) -> list[tuple[str, int]]:
    """(piece, copy) that the copies of this block lie on."""
    fabric = m.pieces[hung.piece].fabric
    copies = 1 if fabric is None else fabric.copies
    return [(hung.piece, hung.copy_for(number, copies)) for number in range(1, m.copies + 1)]


def put_together(m: Machine, name: str, own: Corners | None) -> Refusal | None:
    """What a finished block brings together: two lines that were linked, and its own start with the line it was hung on."""
    refusal = _sides_together(m, name)
    if refusal is not None or not m.hung or any(h.corners is None for h in (*m.hung, *m.over_hung)):
        return refusal
    if m.over_hung:
        _ends_meet(m, m.hung, m.over_hung)
    elif own is not None:
        for copy, (begin, end) in enumerate(zip(_each(m, m.hung[0]), _each(m, m.hung[-1]), strict=False), 1):
            left, right = m.hung[0].corners, m.hung[-1].corners
            assert left is not None
            assert right is not None
            m.meetings.join((name, copy, own[0]), (*begin, left[0]))
            m.meetings.join((name, copy, own[1]), (*end, right[1]))
    return None


def _sides_together(m: Machine, name: str) -> Refusal | None:
    """What is hung with its purl side to the knitter goes on in what is knitted; what is linked over it lies face to face with
    it. A first row that was rehung is hung too."""
    for number in range(1, m.copies + 1):
        under = [((h.piece, h.copy_for(number, m.copies)), h.facing == "knit") for h in m.hung]
        first_rows = [((piece, number), facing == "knit") for piece, facing in m.rehung]
        over = [((h.piece, h.copy_for(number, m.copies)), h.facing == "purl") for h in m.over_hung]
        own = [((name, number), False)] if not over else []
        odd = m.meetings.sides.together([*under, *first_rows, *over, *own])
        if odd is not None:
            return m.refuse("side-turned", piece=odd[0])
    return None


def _ends_meet(m: Machine, one: list[HungEdge], other: list[HungEdge]) -> None:
    for a, b, end in ((one[0], other[0], 0), (one[-1], other[-1], 1)):
        assert a.corners is not None
        assert b.corners is not None
        for here, there in zip(_each(m, a), _each(m, b), strict=False):
            m.meetings.join((*here, a.corners[end]), (*there, b.corners[end]))
