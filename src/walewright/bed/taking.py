"""Edges of finished pieces taken up on the needles: rehanging feet, picking up."""

from __future__ import annotations

from walewright.bed.corners import copies_of
from walewright.bed.fabric import KnitFabric, KnitPiece
from walewright.bed.linking import over_another
from walewright.bed.loops import LoopKind
from walewright.bed.lying import beside, from_the_left, hung_edge, same_side, turned, wrong_end
from walewright.bed.machine import Machine
from walewright.bed.model import BedEdge, CourseKind, Link
from walewright.bed.needles import needs_empty
from walewright.bed.refusals import Refusal, edge_said, known_edges
from walewright.bed.stretched import points_of, take_stretch
from walewright.bed.strips import holder
from walewright.knit.operations import NEXT_COPY, PickUpEdge, Rehang
from walewright.record import replace

FOLLOWS = "follows-from-earlier"
"""The code of a refusal that only repeats an earlier one: the piece was never finished. It is not reported."""


def _piece(m: Machine, name: str) -> tuple[KnitPiece, KnitFabric] | Refusal:
    piece = m.pieces.get(name)
    if piece is None:
        return m.refuse("piece-unknown/to-hang", piece=name)
    if piece.fabric is None:
        return m.refuse("follows-from-earlier", piece=name)
    return piece, piece.fabric


def rehang(m: Machine, op: Rehang) -> Refusal | None:
    """The piece hangs upside down; with its purl side to the knitter, left and right change places."""
    found = _piece(m, op.piece)
    if isinstance(found, Refusal):
        return found
    piece, fabric = found
    first, last = m.span(op.first, op.last)
    refusal = needs_empty(m, first, last, "rehang-over-loops", "take-a-foot")
    if refusal is not None:
        return refusal
    if not fabric.feet:
        return m.refuse("no-open-feet", piece=op.piece)
    start = next(iter(fabric.edge("start")), BedEdge("start", "whole", "stitches", 0, None, ()))
    refusal = _take(m, piece, fabric=fabric, name=op.piece, edge=start, copy=0, points=range(len(start.points)))
    if refusal is not None:
        return refusal
    count = last - first + 1
    if count != len(fabric.feet):
        return m.refuse("rehang-count", piece=op.piece, feet=len(fabric.feet), needles=count, first=m.at(first), last=m.at(last))
    if m.copies != fabric.copies:
        return _copies_differ(m, op.piece, fabric)
    m.rehung.append((op.piece, op.facing))
    feet = fabric.feet if op.facing == "knit" else reversed(fabric.feet)
    _hang(m, op.piece, "rehang", LoopKind.REHUNG, first, [(loop,) for loop in feet])
    return None


def pick_up_edge(m: Machine, op: PickUpEdge) -> Refusal | None:
    """Loops of a finished edge, taken evenly, on the needles in work."""
    found = _piece(m, op.piece)
    if isinstance(found, Refusal):
        return found
    piece, fabric = found
    label = op.edge if op.part == "whole" else f"{op.edge} {op.part}"
    name, piece = holder(m.pieces, op.piece, label) or (op.piece, piece)
    fabric = piece.fabric or fabric
    first, last = m.span(op.first, op.last)
    refusal = over_another(m, op) if op.over else needs_empty(m, first, last, "pick-up-over-loops", "pick-up")
    if refusal is not None:
        return refusal
    edges = fabric.edge(label)
    if not edges or (op.part == "whole" and edges[0].each):
        return m.refuse(
            "edge-unknown/to-hang",
            piece=op.piece,
            edge=edge_said(op.edge, op.part),
            known=known_edges((e.name, e.part) for e in fabric.edges),
        )
    refusal = _wrong_copy(m, op, fabric) or wrong_end(m, op, edges)
    if refusal is not None:
        return refusal
    points = points_of(m, op, fabric, edges)
    if isinstance(points, Refusal):
        return points
    path: list[tuple[tuple[int, ...], bool]] = []
    for edge in edges if op.facing == "purl" else reversed(edges):
        live = edge.live or (edge.name == "start" and bool(fabric.feet))
        some = points if len(edges) == 1 else range(len(edge.points))
        refusal = _take(m, piece, fabric=fabric, name=name, edge=edge, copy=op.copy, points=some)
        if refusal is not None:
            return refusal
        path += [(point, live) for point in from_the_left(replace(edge, points=edge.points[some.start : some.stop]), op.facing)]
    count = last - first + 1
    refusal = _number(m, op, count, len(path)) or _ratio(m, op, edges, count, len(path))
    if refusal is not None:
        return refusal
    line = m.over_hung if op.over else m.hung
    line.append(hung_edge(m, op, fabric, edges, points))
    refusal = beside(m, line) or (same_side(m, line[-1]) if op.over else None)
    if refusal is not None:
        return refusal
    # Row ends are shared out from below, at whichever side they hang: both halves of a neck give the same rows.
    downwards = len(edges) == 1 and edges[0].along == "rows" and turned(edges[0], op.facing)
    _hang(m, name, "pick up", LoopKind.PICKED, first, _evenly(path[::-1], count)[::-1] if downwards else _evenly(path, count))
    return None


def _number(m: Machine, op: PickUpEdge, count: int, places: int) -> Refusal | None:
    """As many stitches as there are needles find places; loop is linked to loop."""
    if count > places:
        return m.refuse("pick-up-too-many", stitches=count, edge=edge_said(op.edge, op.part), piece=op.piece, places=places)
    if op.over and count != places:
        return m.refuse("link-unequal", stitches=places, edge=edge_said(op.edge, op.part), piece=op.piece, needles=count)
    return None


def _ratio(m: Machine, op: PickUpEdge, edges: tuple[BedEdge, ...], count: int, places: int) -> Refusal | None:
    """What is said of stitches and rows is so, but for half a stitch and one more in a hundred rows."""
    per, every = op.ratio
    rows = edges[0].along == "rows" and edges[0].count == len(edges[0].points)
    near = rows and abs(count * every - places * per) * 100 <= every * (50 + places)
    if near or op.ratio == (0, 0):
        return None
    where = edge_said(op.edge, op.part)
    return m.refuse("ratio-told", edge=where, piece=op.piece, stitches=count, places=places, per=per, every=every)


def _take(m: Machine, piece: KnitPiece, fabric: KnitFabric, name: str, edge: BedEdge, copy: int, points: range) -> Refusal | None:
    """Every point of an edge can be taken up once: of the copy named, or of each."""
    for one in copies_of(copy, fabric.copies):
        key = (edge.name, edge.part, one)
        free = key not in piece.taken and (name, *key) not in m.taken
        if not free or not take_stretch(m, piece, name, key, points, len(edge.points)):
            return m.refuse("edge-taken/hung", edge=edge_said(edge.name, edge.part), piece=name)
    return None


def _wrong_copy(m: Machine, op: PickUpEdge, fabric: KnitFabric) -> Refusal | None:
    """One of several copies is named, and then by a block that is knitted once; or each copy of the block takes its own."""
    if op.copy in (0, NEXT_COPY):
        return None if m.copies == fabric.copies else _copies_differ(m, op.piece, fabric)
    if fabric.copies == 1 or not 1 <= op.copy <= fabric.copies:
        return m.refuse("no-such-copy/hung", copy=op.copy, piece=op.piece, copies=fabric.copies)
    return None if m.copies == 1 else _copies_differ(m, op.piece, fabric)


def _copies_differ(m: Machine, piece: str, fabric: KnitFabric) -> Refusal:
    return m.refuse("copies-differ/hung", piece=piece, copies=fabric.copies, own=m.copies)


def _evenly(path: list[tuple[tuple[int, ...], bool]], count: int) -> list[tuple[int, ...]]:
    """Share the points out: a needle takes all live stitches of its share, or the middle point of a firm edge."""
    hung: list[tuple[int, ...]] = []
    for j in range(count):
        share = path[j * len(path) // count : (j + 1) * len(path) // count]
        live = tuple(loop for point, waits in share if waits for loop in point)
        hung.append(live or share[len(share) // 2][0])
    return hung


def _hang(m: Machine, piece: str, kind: CourseKind, loop_kind: LoopKind, first: int, hung: list[tuple[int, ...]]) -> None:
    begin = len(m.loops.parent)
    for i, loops in enumerate(hung, first):
        loop = m.loops.add(i - m.half, loop_kind)
        m.hang(i, (loop,))
        m.links.append(Link(loop, piece, loops))
    m.course(kind, first, first + len(hung) - 1, begin)
