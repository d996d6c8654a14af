"""Stretches of a finished edge: which of its points they have, which are taken, and the corners at their ends."""

from __future__ import annotations

from walewright.bed.corners import Corner, Corners
from walewright.bed.fabric import KnitFabric, KnitPiece
from walewright.bed.machine import Machine
from walewright.bed.model import BedEdge, BedPart
from walewright.bed.refusals import Refusal
from walewright.knit.operations import PickUpEdge

EdgeKey = tuple[str, BedPart, int]
"""(edge, part, copy)"""

_WITHIN = 1000
"""Corners within an edge are numbered from here on, by the points before them."""


def points_of(m: Machine, op: PickUpEdge, fabric: KnitFabric, edges: tuple[BedEdge, ...]) -> range | Refusal:
    """The numbers of the points of the stretch that is asked for; of what is not asked for as a stretch, all of them."""
    if op.low >= op.high and not (op.low or op.high):
        return range(sum(len(edge.points) for edge in edges))
    if len(edges) != 1:
        return m.refuse("stretch-of-many", edge=op.edge, piece=op.piece)
    (edge,) = edges
    rows = edge.along == "rows"
    places = (fabric.course_of(point[0]).counter if rows else n for n, point in enumerate(edge.points, 1))
    inside = [n for n, place in enumerate(places) if op.low < place <= op.high]
    if not inside or (edge.along == "stitches" and op.high > len(edge.points)):
        return m.refuse("stretch-not-there", edge=op.edge, piece=op.piece, low=op.low, high=op.high)
    return range(inside[0], inside[-1] + 1)


def take_stretch(m: Machine, piece: KnitPiece, name: str, key: EdgeKey, points: range, count: int) -> bool:
    """Takes up some of the `count` points of an edge; whether they are still to be had. When all are taken, the edge is."""
    taken = {p for own in (*piece.stretches, *m.stretches.get(name, ())) for p in own[1] if own[0] == key}
    if taken & set(points):
        return False
    m.stretches.setdefault(name, []).append((key, points))
    if len(taken) + len(points) == count:
        m.taken.append((name, *key))
    return True


def corners_of(edge: BedEdge, whole: Corners, points: range) -> Corners:
    """The corners of a stretch: where it does not end with the edge, places within it."""
    return _corner(edge, whole[0], points.start, 0), _corner(edge, whole[1], points.stop, len(edge.points))


def _corner(edge: BedEdge, end: Corner, at: int, edge_ends: int) -> Corner:
    return end if at == edge_ends else (f"{edge.name} {edge.part}", _WITHIN + at)
