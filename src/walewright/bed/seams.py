"""Joins between finished pieces, and what is still open when everything is knitted."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from walewright.bed.corners import Corner, Meetings, copies_of
from walewright.bed.fabric import KnitFabric, KnitPiece
from walewright.bed.lying import ENDS
from walewright.bed.model import BedEdge, Fault, fault_of
from walewright.bed.refusals import Refusal, known_edges, refused, walk_said
from walewright.bed.sides import Turned, clockwise_backwards
from walewright.bed.strips import having, rows_of_strip
from walewright.knit.operations import Join
from walewright.record import record
from walewright.report.said import Amount, tenths

_CLOSE = 1e-6
_ROUNDED = 0.5 + _CLOSE
"""Lengths are told in whole millimetres."""
WAYS = ("sewn", "gathered", "pleated", "grafted")

SeamWalk = Sequence[tuple[str, str, int]]
"""(piece, edge, copy) along one side of a seam."""


@record
class SewnSeam:
    """One side of a join: rows and stitches added up apart, and the length in cm (None without a gauge). `loose_mm`: by how much
    another reckoning of its slopes may differ."""

    rows: int
    stitches: int
    length_cm: float | None
    loose_mm: float = 0.0
    chained: int = 0
    """Stitches cast off or on at once along it."""


def edges_of(fabrics: Mapping[str, KnitFabric], side: Sequence[tuple[str, str]]) -> tuple[BedEdge, ...] | None:
    """The edges that lie along one side of a join; None if a piece or an edge is unknown. An edge that both sides of a piece have
    alike lies there once."""
    found: list[BedEdge] = []
    for piece, name in side:
        own = having(fabrics, piece, name)
        edges = own[1].edge(name) if own is not None else ()
        if not edges:
            return None
        found += edges
    return tuple(found)


def _held(fabrics: Mapping[str, KnitFabric], name: str, edge: str) -> tuple[str, KnitFabric]:
    """The block that has an edge, which is known to be there."""
    found = having(fabrics, name, edge)
    assert found is not None, f"nothing is called {name}"
    return found


def seam(fabrics: Mapping[str, KnitFabric], side: Sequence[tuple[str, str]]) -> SewnSeam | None:
    """Measure ((piece, edge), ...); None if a piece or an edge is unknown."""
    edges = edges_of(fabrics, side)
    if edges is None:
        return None
    lengths = [edge.length_cm for edge in edges]
    known = [length for length in lengths if length is not None]
    return SewnSeam(
        sum(edge.count for edge in edges if edge.along == "rows"),
        sum(edge.count for edge in edges if edge.along == "stitches"),
        sum(known) if len(known) == len(lengths) else None,
        10 * sum(edge.loose_cm for edge in edges),
        sum(len(edge.points) - edge.count for edge in edges if edge.along == "rows"),
    )


def join(op: Join, index: int, pieces: dict[str, KnitPiece], meetings: Meetings) -> Fault | None:
    """Check one join, count its edges as taken up, and bring the corners at its ends together."""
    refusal = _refused(op, pieces, meetings)
    return fault_of(refusal, "joins", index, sides=(walk_said(op.one), walk_said(op.other))) if refusal is not None else None


def _refused(op: Join, pieces: dict[str, KnitPiece], meetings: Meetings) -> Refusal | None:
    fabrics = {name: piece.fabric for name, piece in pieces.items() if piece.fabric is not None}
    for name, edge, _ in (*op.one, *op.other):
        if name not in pieces:
            return refused("piece-unknown/to-join", piece=name)
        own = having(fabrics, name, edge)
        if own is None:
            return None
        found = own[1].edge(edge)
        if len(found) != 1 or (found[0].each and found[0].part not in edge):
            return refused("edge-unknown/to-join", piece=name, edge=edge, known=known_edges((e.name, e.part) for e in own[1].edges))
    refusal = _copies(op, fabrics)
    if refusal is not None:
        return refusal
    if not op.other:
        return _closed(op, pieces, fabrics, meetings) or _over(op, pieces)
    refusal = _way(op, pieces, fabrics) or _taken(op, pieces, fabrics)
    if refusal is not None:
        return refusal
    one, other = (_measured(fabrics, side) for side in (op.one, op.other))
    refusal = _told(op, one, other)
    if refusal is None and any(op.ratio):
        refusal = _in_ratio(op, one, other)
    elif refusal is None and (op.way == "grafted" or (op.easing_mm == 0 and op.longer_mm == 0)):
        refusal = _equal(one, other)
    elif refusal is None:
        refusal = _eased(op, one, other)
    return refusal or _brought_together(op, fabrics, meetings) or _over(op, pieces) or _sewn_with(op, pieces)


def _sewn_with(op: Join, pieces: Mapping[str, KnitPiece]) -> Refusal | None:
    """The tails that are named are there, and one of them is of what lies in the seam."""
    for name, edging in op.tails:
        if rows_of_strip(pieces, name, edging) is None:
            return refused("join-told/no-strip", piece=name, edging=edging)
    own = {name for name, *_ in (*op.one, *op.other, *op.over)}
    if op.tails and not any(name in own for name, _ in op.tails):
        return refused("join-told/tail-elsewhere", piece=op.tails[0][0])
    return None


def _over(op: Join, pieces: Mapping[str, KnitPiece]) -> Refusal | None:
    """What is said of the strips whose ends are sewn on is so."""
    for name, edging, rows in op.over:
        found = rows_of_strip(pieces, name, edging)
        if found is None:
            return refused("join-told/no-strip", piece=name, edging=edging)
        if found != rows:
            return refused("join-told/strip", piece=name, edging=edging, found=found, rows=rows)
    return None


def _closed(op: Join, pieces: Mapping[str, KnitPiece], fabrics: Mapping[str, KnitFabric], meetings: Meetings) -> Refusal | None:
    """One edge folded in half and sewn, or drawn up: its two ends meet."""
    if len(op.one) != 1 or op.way not in ("sewn", "gathered"):
        return refused("join-way/closing", way=op.way)
    refusal = _taken(op, pieces, fabrics)
    ((name, edge_name, copy),) = op.one
    _, fabric = _held(fabrics, name, edge_name)
    (edge,) = fabric.edge(edge_name)
    low, high = fabric.corners[edge.name, edge.part]
    for one in copies_of(copy, fabrics[name].copies):
        meetings.join((name, one, low), (name, one, high))
    return refusal


def _measured(fabrics: Mapping[str, KnitFabric], side: SeamWalk) -> SewnSeam:
    found = seam(fabrics, [(piece, edge) for piece, edge, _ in side])
    assert found is not None
    return found


def _taken(op: Join, pieces: Mapping[str, KnitPiece], fabrics: Mapping[str, KnitFabric]) -> Refusal | None:
    """Every stretch of an edge is joined once."""
    for name, edge_name, copy in (*op.one, *op.other):
        block, fabric = _held(fabrics, name, edge_name)
        for edge in fabric.edge(edge_name):
            for one in copies_of(copy, fabric.copies):
                key = (edge.name, edge.part, one)
                if key in pieces[block].taken or any(key == some for some, _ in pieces[block].stretches):
                    return refused("edge-taken/joined", edge=edge_name, piece=name)
                pieces[block].taken.add(key)
    return None


def _copies(op: Join, fabrics: Mapping[str, KnitFabric]) -> Refusal | None:
    """A copy that is named is there; a seam made at each copy of one piece is made at no other that is knitted less often."""
    for name, _, copy in (*op.one, *op.other):
        copies = fabrics[name].copies
        if copy and (copies == 1 or not 1 <= copy <= copies):
            return refused("no-such-copy/joined", copy=copy, piece=name, copies=copies)
    each = {fabrics[name].copies for name, _, copy in (*op.one, *op.other) if copy == 0}
    if len(each) < 2:
        return None
    return refused("copies-differ/joined", fewest=min(each), most=max(each))


def _brought_together(op: Join, fabrics: Mapping[str, KnitFabric], meetings: Meetings) -> Refusal | None:
    """Along each side the edges follow each other from corner to corner; the ends of both sides then meet."""
    copies = max(fabrics[name].copies if copy == 0 else 1 for name, _, copy in (*op.one, *op.other))
    for number in range(1, copies + 1):
        ends: list[tuple[tuple[str, int, Corner], tuple[str, int, Corner]]] = []
        sheets: list[Turned] = []
        for side, begin in ((op.one, op.ends[0]), (op.other, op.ends[1])):
            walked = _walked(side, begin, number, fabrics, meetings)
            if walked is None:
                return refused("join-not-in-line", edges=walk_said(side), begin=begin)
            ends.append((walked[0], walked[1]))
            # Face to face, one goes clockwise and the other does not.
            sheets += [(sheet, clockwise == (side is op.other)) for sheet, clockwise in walked[2]]
        odd = meetings.sides.together(sheets)
        if odd is not None:
            return refused("side-turned", piece=odd[0])
        for one, other in zip(*ends, strict=True):
            meetings.join(one, other)
    return None


_CornerAt = tuple[str, int, Corner]


def _walked(
    side: SeamWalk, begin: str, number: int, fabrics: Mapping[str, KnitFabric], meetings: Meetings
) -> tuple[_CornerAt, _CornerAt, list[Turned]] | None:
    """The first and the last corner of a side, and for each edge of which piece and whether it is walked clockwise round it."""
    at: _CornerAt | None = None
    first: _CornerAt | None = None
    sheets: list[Turned] = []
    for name, edge_name, copy in side:
        _, fabric = _held(fabrics, name, edge_name)
        (edge,) = fabric.edge(edge_name)
        which = copy or min(number, fabric.copies)
        low, high = ((name, which, corner) for corner in fabric.corners[edge.name, edge.part])
        if at is None:
            if begin not in ENDS[edge.along]:
                return None
            upwards = begin == ENDS[edge.along][0]
            first = low if upwards else high
        elif meetings.meet(at, low):
            upwards = True
        elif meetings.meet(at, high):
            upwards = False
        else:
            return None
        at = high if upwards else low
        sheets.append(((name, which), upwards != clockwise_backwards(edge)))
    return (first, at, sheets) if first is not None and at is not None else None


def _told(op: Join, one: SewnSeam, other: SewnSeam) -> Refusal | None:
    """What the join says of its edges is so."""
    if op.rows and (one.rows, other.rows) != (op.rows, op.rows):
        return refused("join-told/rows", one=one.rows, other=other.rows, rows=op.rows)
    if any(op.chained) and (one.chained, other.chained) != op.chained:
        says_one, says_other = op.chained
        return refused("join-told/chained", one=one.chained, other=other.chained, says_one=says_one, says_other=says_other)
    longest = max(one.length_cm or 0.0, other.length_cm or 0.0)
    if op.thread_cm and op.thread_cm < longest:
        return refused("join-told/thread", thread=Amount(op.thread_cm), long=Amount(round(longest)))
    for stated, edge in ((op.one_mm, one), (op.other_mm, other)):
        if stated and edge.length_cm is None:
            return refused("join-told/no-length", stated=Amount(stated, "mm"))
        if stated and edge.length_cm is not None and abs(edge.length_cm * 10 - stated) > _ROUNDED + edge.loose_mm:
            return refused("join-told/length", long=Amount(round(edge.length_cm * 10), "mm"), stated=Amount(stated, "mm"))
    return None


def _way(op: Join, pieces: Mapping[str, KnitPiece], fabrics: Mapping[str, KnitFabric]) -> Refusal | None:
    """Grafting goes from open loop to open loop."""
    if op.way not in WAYS:
        return refused("join-way/joining", way=op.way, ways=WAYS)
    if op.way != "grafted":
        return None
    for name, edge_name, _ in (*op.one, *op.other):
        _, fabric = _held(fabrics, name, edge_name)
        for edge in fabric.edge(edge_name):
            is_open = edge.live or (edge.name == "start" and bool(fabric.feet))
            if edge.along == "rows":
                return refused("grafted-not-open-loops/row-ends", edge=edge_name, piece=name)
            if not is_open:
                return refused("grafted-not-open-loops/closed", edge=edge_name, piece=name)
    return None


def _in_ratio(op: Join, one: SewnSeam, other: SewnSeam) -> Refusal | None:
    """So many row ends to so many stitches, all the way; at the end one row may be over, or missing."""
    rows, stitches = (one.rows, other.stitches) if one.rows else (other.rows, one.stitches)
    mixed = (one.rows and one.stitches) or (other.rows and other.stitches)
    of_rows, to_stitches = op.ratio
    if not mixed and abs(rows * to_stitches - stitches * of_rows) <= to_stitches:
        return None
    return refused("join-unequal/ratio", rows=rows, stitches=stitches, of_rows=of_rows, to_stitches=to_stitches)


def _equal(one: SewnSeam, other: SewnSeam) -> Refusal | None:
    if one.rows != other.rows:
        return refused("join-unequal/rows", one=one.rows, other=other.rows)
    if one.stitches != other.stitches:
        return refused("join-unequal/stitches", one=one.stitches, other=other.stitches)
    return None


def _eased(op: Join, one: SewnSeam, other: SewnSeam) -> Refusal | None:
    if one.length_cm is None or other.length_cm is None:
        return refused("no-gauge")
    off = (one.length_cm - other.length_cm) * 10 - op.longer_mm
    if abs(off) <= op.easing_mm + one.loose_mm + other.loose_mm + _CLOSE:
        return None
    lengths = {"one": tenths(one.length_cm), "other": tenths(other.length_cm)}
    easing, apart = Amount(op.easing_mm, "mm"), Amount(round(abs(off)), "mm")
    if not op.longer_mm:
        return refused("join-unequal/apart", **lengths, apart=apart, easing=easing)
    wanted = Amount(abs(op.longer_mm), "mm")
    if op.longer_mm > 0:
        return refused("join-unequal/longer", **lengths, wanted=wanted, apart=apart, easing=easing)
    return refused("join-unequal/shorter", **lengths, wanted=wanted, apart=apart, easing=easing)


def open_feet(pieces: Mapping[str, KnitPiece]) -> list[Fault]:
    """First rows that run down when the waste yarn is taken out, because nothing took up their feet."""
    return [
        fault_of(refused("feet-open", piece=name, feet=len(piece.fabric.feet)), name, -1)
        for name, piece in pieces.items()
        if piece.fabric is not None and piece.fabric.feet and not piece.all_taken("start", "whole")
    ]


def free_edges(pieces: Mapping[str, KnitPiece]) -> tuple[tuple[str, str, int], ...]:
    """(piece, edge, copy) of every edge with a name that nothing took up."""
    return tuple(
        (name, edge.name if _alone(edge, piece.fabric) else f"{edge.name} {edge.part}", copy)
        for name, piece in pieces.items()
        if piece.fabric is not None
        for edge in piece.fabric.edges
        for copy in range(1, piece.fabric.copies + 1)
        if (edge.name, edge.part, copy) not in piece.taken
    )


def _alone(edge: BedEdge, fabric: KnitFabric) -> bool:
    """Whether the edge is the only one of its name."""
    return sum(1 for e in fabric.edges if e.name == edge.name) == 1


def open_edges(pieces: Mapping[str, KnitPiece]) -> tuple[tuple[str, str], ...]:
    """(piece, edge) of stitches that stay on waste yarn for good."""
    return tuple(
        (name, edge.name if edge.part == "whole" else f"{edge.name} {edge.part}")
        for name, piece in pieces.items()
        if piece.fabric is not None
        for edge in piece.fabric.edges
        if edge.live and not piece.all_taken(edge.name, edge.part)
    )
