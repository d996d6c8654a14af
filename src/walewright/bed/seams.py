"""Joins between finished pieces, and what is still open when everything is knitted."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from walewright.bed.corners import Corner, Meetings, copies_of
from walewright.bed.fabric import KnitFabric, KnitPiece
from walewright.bed.lying import ENDS
from walewright.bed.model import BedEdge, Fault
from walewright.bed.sides import Turned, clockwise_backwards
from walewright.knit.operations import Join

_CLOSE = 1e-6
_ROUNDED = 0.5 + _CLOSE
"""Lengths are told in whole millimetres."""
WAYS = ("sewn", "gathered", "grafted")

SeamWalk = Sequence[tuple[str, str, int]]
"""(piece, edge, copy) along one side of a seam."""


@dataclass(frozen=True, slots=True)
class SewnSeam:
    """One side of a join: rows and stitches added up apart, and the length in cm (None without a gauge). `loose_mm`: by how much
    another reckoning of its slopes may differ."""

    rows: int
    stitches: int
    length_cm: float | None
    loose_mm: float = 0.0


def edges_of(fabrics: Mapping[str, KnitFabric], side: Sequence[tuple[str, str]]) -> tuple[BedEdge, ...] | None:
    """The edges that lie along one side of a join; None if a piece or an edge is unknown. An edge that both sides of a piece have
    alike lies there once."""
    found: list[BedEdge] = []
    for piece, name in side:
        edges = fabrics[piece].edge(name) if piece in fabrics else ()
        if not edges:
            return None
        found += edges
    return tuple(found)


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
    )


def spoken(side: SeamWalk) -> str:
    """ "back armhole + front armhole"."""
    return " + ".join(f"{piece} {edge}" for piece, edge, _ in side)


def join(op: Join, index: int, pieces: dict[str, KnitPiece], meetings: Meetings) -> Fault | None:
    """Check one join, count its edges as taken up, and bring the corners at its ends together."""
    fabrics = {name: piece.fabric for name, piece in pieces.items() if piece.fabric is not None}
    for name, edge, _ in (*op.one, *op.other):
        if name not in pieces:
            return _fault("piece-unknown", index, f"there is no piece {name!r} to join", piece=name)
        if name not in fabrics:
            return None
        found = fabrics[name].edge(edge)
        if len(found) != 1 or (found[0].each and found[0].part not in edge):
            known = ", ".join(sorted({e.name if e.part == "whole" else f"{e.name} {e.part}" for e in fabrics[name].edges}))
            return _fault("edge-unknown", index, f"the {name} has no edge {edge!r} to join; it has {known}", piece=name, edge=edge)
    text = f"{spoken(op.one)} to {spoken(op.other)}"
    fault = _copies(op, index, text, fabrics)
    if fault is not None:
        return fault
    if not op.other:
        return _closed(op, index, pieces, fabrics, meetings)
    fault = _way(op, index, text, pieces, fabrics) or _taken(op, index, text, pieces, fabrics)
    if fault is not None:
        return fault
    one, other = (_measured(fabrics, side) for side in (op.one, op.other))
    fault = _told(op, index, text, one, other)
    if fault is None and (op.way == "grafted" or (op.easing_mm == 0 and op.longer_mm == 0)):
        fault = _equal(index, text, one, other)
    elif fault is None:
        fault = _eased(op, index, text, one, other)
    return fault or _brought_together(op, index, text, fabrics, meetings)


def _closed(
    op: Join, index: int, pieces: Mapping[str, KnitPiece], fabrics: Mapping[str, KnitFabric], meetings: Meetings
) -> Fault | None:
    """One edge folded in half and sewn, or drawn up: its two ends meet."""
    text = f"{spoken(op.one)} upon itself"
    if len(op.one) != 1 or op.way not in ("sewn", "gathered"):
        return _fault("join-way", index, f"closing {text}: one edge is sewn or gathered, not {op.way}", way=op.way)
    fault = _taken(op, index, text, pieces, fabrics)
    ((name, edge_name, copy),) = op.one
    (edge,) = fabrics[name].edge(edge_name)
    low, high = fabrics[name].corners[edge.name, edge.part]
    for one in copies_of(copy, fabrics[name].copies):
        meetings.join((name, one, low), (name, one, high))
    return fault


def _measured(fabrics: Mapping[str, KnitFabric], side: SeamWalk) -> SewnSeam:
    found = seam(fabrics, [(piece, edge) for piece, edge, _ in side])
    assert found is not None
    return found


def _taken(op: Join, index: int, text: str, pieces: Mapping[str, KnitPiece], fabrics: Mapping[str, KnitFabric]) -> Fault | None:
    """Every stretch of an edge is joined once."""
    for name, edge_name, copy in (*op.one, *op.other):
        for edge in fabrics[name].edge(edge_name):
            for one in copies_of(copy, fabrics[name].copies):
                key = (edge.name, edge.part, one)
                if key in pieces[name].taken or any(key == some for some, _ in pieces[name].stretches):
                    message = f"joining {text}: the {edge_name} of the {name} has been taken up already"
                    return _fault("edge-taken", index, message, piece=name, edge=edge_name)
                pieces[name].taken.add(key)
    return None


def _copies(op: Join, index: int, text: str, fabrics: Mapping[str, KnitFabric]) -> Fault | None:
    """A copy that is named is there; a seam made at each copy of one piece is made at no other that is knitted less often."""
    for name, _, copy in (*op.one, *op.other):
        copies = fabrics[name].copies
        if copy and (copies == 1 or not 1 <= copy <= copies):
            there = f"{copies} times" if copies > 1 else "once"
            return _fault("no-such-copy", index, f"joining {text}: copy {copy} of the {name}, which is knitted {there}", piece=name)
    each = {fabrics[name].copies for name, _, copy in (*op.one, *op.other) if copy == 0}
    if len(each) < 2:
        return None
    return _fault("copies-differ", index, f"joining {text}: one is knitted {min(each)} times, another {max(each)} times")


def _brought_together(op: Join, index: int, text: str, fabrics: Mapping[str, KnitFabric], meetings: Meetings) -> Fault | None:
    """Along each side the edges follow each other from corner to corner; the ends of both sides then meet."""
    copies = max(fabrics[name].copies if copy == 0 else 1 for name, _, copy in (*op.one, *op.other))
    for number in range(1, copies + 1):
        ends: list[tuple[tuple[str, int, Corner], tuple[str, int, Corner]]] = []
        sheets: list[Turned] = []
        for side, begin in ((op.one, op.ends[0]), (op.other, op.ends[1])):
            walked = _walked(side, begin, number, fabrics, meetings)
            if walked is None:
                message = f"joining {text}: the edges {spoken(side)} do not follow each other from the {begin} of the first"
                return _fault("join-not-in-line", index, message)
            ends.append((walked[0], walked[1]))
            # Face to face, one goes clockwise and the other does not.
            sheets += [(sheet, clockwise == (side is op.other)) for sheet, clockwise in walked[2]]
        odd = meetings.sides.together(sheets)
        if odd is not None:
            message = f"joining {text}: so the {odd[0]} would lie with its other side out than what it hangs together with already"
            return _fault("side-turned", index, message, piece=odd[0])
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
        (edge,) = fabrics[name].edge(edge_name)
        which = copy or min(number, fabrics[name].copies)
        low, high = ((name, which, corner) for corner in fabrics[name].corners[edge.name, edge.part])
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


def _told(op: Join, index: int, text: str, one: SewnSeam, other: SewnSeam) -> Fault | None:
    """What the join says of its edges is so."""
    if op.rows and (one.rows, other.rows) != (op.rows, op.rows):
        message = f"joining {text}: {one.rows} rows against {other.rows}, where it says {op.rows}"
        return _fault("join-told", index, message, rows=op.rows)
    for said, edge in ((op.one_mm, one), (op.other_mm, other)):
        if said and (edge.length_cm is None or abs(edge.length_cm * 10 - said) > _ROUNDED + edge.loose_mm):
            long = "of no known length" if edge.length_cm is None else f"{edge.length_cm * 10:.0f} mm long"
            return _fault("join-told", index, f"joining {text}: an edge is {long}, where it says {said} mm", mm=said)
    return None


def _way(op: Join, index: int, text: str, pieces: Mapping[str, KnitPiece], fabrics: Mapping[str, KnitFabric]) -> Fault | None:
    """Grafting goes from open loop to open loop."""
    if op.way not in WAYS:
        return _fault(
            "join-way", index, f"joining {text}: there is no join called {op.way!r}; there are {', '.join(WAYS)}", way=op.way
        )
    if op.way != "grafted":
        return None
    for name, edge_name, _ in (*op.one, *op.other):
        for edge in fabrics[name].edge(edge_name):
            is_open = edge.live or (edge.name == "start" and bool(fabrics[name].feet))
            if edge.along == "rows" or not is_open:
                what = "row ends" if edge.along == "rows" else "closed stitches"
                message = f"joining {text}: the {edge_name} of the {name} is {what}, and only open loops can be grafted"
                return _fault("grafted-not-open-loops", index, message, piece=name, edge=edge_name)
    return None


def _equal(index: int, text: str, one: SewnSeam, other: SewnSeam) -> Fault | None:
    for what, here, there in (("rows", one.rows, other.rows), ("stitches", one.stitches, other.stitches)):
        if here != there:
            counts = {f"{what}_one": here, f"{what}_other": there}
            return _fault("join-unequal", index, f"joining {text}: {here} {what} against {there}", **counts)
    return None


def _eased(op: Join, index: int, text: str, one: SewnSeam, other: SewnSeam) -> Fault | None:
    if one.length_cm is None or other.length_cm is None:
        return _fault("no-gauge", index, f"joining {text}: without the gauge of their fabrics the edges have no length to compare")
    off = (one.length_cm - other.length_cm) * 10 - op.longer_mm
    if abs(off) <= op.easing_mm + one.loose_mm + other.loose_mm + _CLOSE:
        return None
    apart = f"they are {abs(off):.0f} mm apart"
    if op.longer_mm:
        than = "longer" if op.longer_mm > 0 else "shorter"
        apart = f"the first should be {abs(op.longer_mm)} mm {than}, which is {abs(off):.0f} mm off"
    return _fault(
        "join-unequal",
        index,
        f"joining {text}: {one.length_cm:.1f} cm against {other.length_cm:.1f} cm; {apart} and {op.easing_mm} mm can be eased in",
        off_mm=round(abs(off)),
        easing_mm=op.easing_mm,
    )


def _fault(code: str, index: int, message: str, **data: int | str) -> Fault:
    return Fault(code, "joins", index, message, tuple(sorted(data.items())))


def open_feet(pieces: Mapping[str, KnitPiece]) -> list[Fault]:
    """First rows that run down when the waste yarn is taken out, because nothing took up their feet."""
    return [
        Fault(
            "feet-open",
            name,
            -1,
            f"the {name} was begun on waste yarn, and nothing takes up the {len(piece.fabric.feet)} feet of its first row",
            (("feet", len(piece.fabric.feet)),),
        )
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
