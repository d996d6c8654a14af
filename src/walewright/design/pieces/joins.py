"""Bands along edges, joins of edges, and cords."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from walewright.design.findings import Findings
from walewright.design.model import Band, Cord, CountPerSize, EdgeJoin, EdgeName, Edging, Fabric, Origin, PerSize, Piece
from walewright.design.pieces.names import EdgesOfPieces, edges, with_bands
from walewright.design.pieces.slots import possible
from walewright.design.reading.numbered import numbered
from walewright.design.reading.places import NOT_NEGATIVE, POSITIVE, AmountPlace
from walewright.design.reading.values import Scope
from walewright.report.said import Said, said
from walewright.source import syntax
from walewright.trade.edge_names import BAND_ENDS, is_top
from walewright.trade.ends import ENDS, STARTS
from walewright.trade.joins import JOINS


def every_band(
    nodes: Sequence[syntax.BandLine],
    known: EdgesOfPieces,
    edgings: Mapping[str, Edging | None],
    fabrics: Mapping[str, Fabric | None],
    scope: Scope,
    findings: Findings,
) -> list[Band | None]:
    """The bands; each may lie along ends of those that stand before it."""
    named = with_bands(known, nodes, edgings)
    found: list[Band | None] = []
    for number, node in enumerate(nodes):
        later = {other.name: other.span for other in nodes[number:] if other.name not in known}
        ref = next((ref for ref in node.along if ref.piece in later), None)
        if ref is None:
            found.append(band(node, named, edgings, fabrics, scope, findings))
            continue
        findings.report(
            "along-later-piece/band",
            (ref.span, "along"),
            (later[ref.piece], "band"),
            helps=("write-before",) if ref.piece != node.name else (),
            band=node.name,
            model=ref.piece,
            edge=ref.edge,
        )
        found.append(None)
    return found


def band(
    node: syntax.BandLine,
    known: EdgesOfPieces,
    edgings: Mapping[str, Edging | None],
    fabrics: Mapping[str, Fabric | None],
    scope: Scope,
    findings: Findings,
) -> Band | None:
    """An edging picked up along edges, with its buttonholes."""
    edging = findings.look_up("edging", node.edging, node.span, edgings)
    along = edges(node.along, known, findings)
    what = said("band", band=node.name)
    if edging is not None and edging.when == "first":
        findings.report(
            "edging-first-in-band",
            (node.span, "with"),
            (edging.origin.span, "knitted-first"),
            helps=("after",),
            band=what,
            edging=edging.name,
        )
        return None
    holes: tuple[CountPerSize, PerSize, PerSize] | None = ((), (), ())
    if node.holes != 0 or node.hole_stitches:
        holes = _holes(node, what, edging, fabrics, scope, findings)
    hole_along = edges(node.hole_along, known, findings)
    if edging is None or along is None or holes is None or hole_along is None or not _picked(node, what, findings):
        return None
    if not _on_band(node, along, hole_along, findings):
        return None
    counts, first, last = holes
    return Band(
        name=node.name,
        edging=node.edging,
        along=along,
        origin=Origin(f"band {node.name}", node.span),
        holes=counts,
        hole_stitches=node.hole_stitches,
        first=first,
        last=last,
        facing=node.facing,
        picked=(node.picked, node.of_rows) if node.of_rows else None,
        hole_along=hole_along,
    )


MOST_OF_ROWS = 100
"""Rows that a ratio counts off: nobody counts further."""


def _picked(node: syntax.BandLine, what: Said, findings: Findings) -> bool:
    """Whether so many stitches can be picked up of so many rows, where that is said: one of each row end at most."""
    place = node.place_of("picked")
    if place is None:
        return True
    if all(ref.edge == "start" or is_top(ref.edge.replace("_", " ")) for ref in node.along):
        findings.idle(node, "picked", said("no-row-edge", band=node.name), said("leave-out"))
        return False
    if 1 <= node.picked <= node.of_rows <= MOST_OF_ROWS:
        return True
    findings.report(
        "pick-up-ratio", (place, "ratio"), helps=("fewer",), band=what, stitches=node.picked, rows=node.of_rows, most=MOST_OF_ROWS
    )
    return False


def _on_band(node: syntax.BandLine, along: tuple[EdgeName, ...], part: tuple[EdgeName, ...], findings: Findings) -> bool:
    """Whether the part with the buttonholes is one stretch of the band, told in its order; an edge that is there twice leads to no
    one place."""
    places = [n for n in range(len(along)) if along[n : n + len(part)] == part]
    if not part or len(places) == 1:
        return True
    findings.report(
        "buttonholes-off-band",
        (node.hole_along[0].span.to(node.hole_along[-1].span), "along"),
        notes=(said("band-along", along=_words(along)),),
        helps=("twice" if places else "stretch",),
        band=node.name,
        twice=bool(places),
    )
    return False


def _holes(
    node: syntax.BandLine,
    what: Said,
    edging: Edging | None,
    fabrics: Mapping[str, Fabric | None],
    scope: Scope,
    findings: Findings,
) -> tuple[CountPerSize, PerSize, PerSize] | None:
    """How many buttonholes there are, and how far the outermost are from the band's ends."""
    place = AmountPlace(scope, findings, fabrics.get(edging.fabric) if edging else None)
    meant = said("buttonholes-of", of=what)
    counts = numbered(node.holes, scope, meant, findings)
    if counts is None or not possible(counts, node.hole_stitches, node.span, meant, scope, findings):
        return None
    found: list[PerSize] = []
    for word, wanted in (("first", node.first), ("last", node.last)):
        if wanted is None:
            findings.report("missing-part/buttonhole", (node.span, "none"), helps=("add",), band=what, which=word)
            continue
        length = place.across(wanted, said("place-of-buttonhole", which=word, of=what), NOT_NEGATIVE)
        found += [length] if length is not None else []
    return (counts, found[0], found[1]) if len(found) == 2 else None


def cloth_of_each(
    pieces: Mapping[str, Piece | None],
    bands: Sequence[syntax.BandLine],
    edgings: Mapping[str, Edging | None],
    fabrics: Mapping[str, Fabric | None],
) -> Mapping[str, Fabric | None]:
    """The fabric of each piece, and of each band, that is known."""
    own = {name: piece.fabric for name, piece in pieces.items() if piece is not None}
    own |= {band.name: made.fabric for band in bands if (made := edgings.get(band.edging)) is not None and band.name not in pieces}
    return {name: fabrics.get(fabric) for name, fabric in own.items()}


def every_join(
    order: Sequence[syntax.Statement],
    known: EdgesOfPieces,
    pieces: Mapping[str, Piece | None],
    edgings: Mapping[str, Edging | None],
    cloth: Mapping[str, Fabric | None],
    scope: Scope,
    findings: Findings,
) -> list[EdgeJoin | None]:
    """The joins among statements; each may name ends of edgings and of bands, wherever these stand."""
    return [
        join(n, known, pieces=pieces, edgings=edgings, cloth=cloth, scope=scope, findings=findings)
        for n in order
        if isinstance(n, syntax.JoinLine)
    ]


def join(
    node: syntax.JoinLine,
    known: EdgesOfPieces,
    pieces: Mapping[str, Piece | None],
    edgings: Mapping[str, Edging | None],
    cloth: Mapping[str, Fabric | None],
    scope: Scope,
    findings: Findings,
) -> EdgeJoin | None:
    """Two rows of edges put together. Rows of easing are rows of the `cloth` of what is named first, a piece or a band."""
    one = edges(node.one, known, findings)
    other = edges(node.other, known, findings)
    if node.way not in JOINS:
        findings.unknown("way to join", node.way, node.span, JOINS)
        return None
    easing: PerSize | None = tuple(0.0 for _ in scope.sizes)
    longer: PerSize | None = None
    place = AmountPlace(scope, findings, cloth.get(node.one[0].piece) if node.one else None)
    if node.easing is not None:
        easing = place.up(node.easing, said("easing-of-join"), NOT_NEGATIVE)
    if node.longer is not None:
        longer = place.up(node.longer, said("longer-side"))
    if one is None or other is None or easing is None or (node.longer is not None and longer is None):
        return None
    if node.next_copy and not _equally_often(node, pieces, findings):
        return None
    ratio = (node.of_rows, node.to_stitches) if node.place_of("of_rows") is not None else None
    if ratio is not None and not _in_ratio(node, findings):
        return None
    origin = Origin(f"join {_words(one)} to {_words(other)}", node.span)
    made = EdgeJoin(
        one, other, easing, origin, longer=longer, way=node.way, matching=node.matching, next_copy=node.next_copy, ratio=ratio
    )
    if not JOINS[made.way].by_loops:
        return made
    return made if _two_edges(made, node, pieces, findings) and _loop_by_loop(made, node, pieces, edgings, findings) else None


def _in_ratio(node: syntax.JoinLine, findings: Findings) -> bool:
    """Whether a join of so many rows to so many stitches asks for nothing else that counts or measures."""
    place = node.place_of("of_rows") or node.span
    beside = next((p for name in ("easing", "longer", "way", "matching") if (p := node.place_of(name)) is not None), None)
    if beside is not None and not (node.way == "sewn" and beside == node.place_of("way")):
        findings.report("join-ratio/beside", (place, "ratio"), (beside, "beside"), helps=("leave-one",))
        return False
    if 1 <= node.of_rows <= MOST_OF_ROWS and 1 <= node.to_stitches <= MOST_OF_ROWS:
        return True
    findings.report(
        "join-ratio/numbers", (place, "ratio"), helps=("numbers",), rows=node.of_rows, stitches=node.to_stitches, most=MOST_OF_ROWS
    )
    return False


def _equally_often(node: syntax.JoinLine, pieces: Mapping[str, Piece | None], findings: Findings) -> bool:
    """Whether a join of each copy to the next one, or to its own, is of one piece that is knitted several times, or of two that are
    knitted equally often. Of a band it is not known yet how often it is knitted."""
    sides = [list(dict.fromkeys(ref.piece for ref in side)) for side in (node.one, node.other)]
    names = list(dict.fromkeys(name for side in sides for name in side))
    found = [piece for name in names if (piece := pieces.get(name)) is not None]
    once = next((piece for piece in found if max(piece.copies) == 1), None)
    if once is None and len({piece.copies for piece in found}) < 2 and all(len(side) == 1 for side in sides):
        return True
    findings.report(
        "next-of-one/knitted-once" if once is not None else "next-of-one/two-pieces",
        (node.span, "next"),
        *([(once.origin.span, "once")] if once is not None else []),
        helps=("leave-out-or-several",),
        piece=once.name if once is not None else names[0],
        other=names[-1],
        next=node.next_copy != "own",
    )
    return False


def _two_edges(made: EdgeJoin, node: syntax.JoinLine, pieces: Mapping[str, Piece | None], findings: Findings) -> bool:
    """Whether the sides of a join loop by loop are two edges: of another piece, of another copy or of its other side."""
    if frozenset(made.one) != frozenset(made.other):
        return True
    for edge in made.one:
        piece = pieces.get(edge.piece)
        if piece is None or max(piece.copies) > 1 or _on_both_sides(piece, edge.edge):
            return True
    findings.report("joined-to-itself", (node.span, "twice"), helps=("another",), edges=_words(made.one), way=made.way)
    return False


def _on_both_sides(piece: Piece, edge: str) -> bool:
    """Whether the name is that of an edge at the left and of one at the right."""
    return all(any(run.name == edge for run in runs) for runs in (piece.left, piece.right)) or (
        edge == "shoulder" and any(not o.to_level or o.to_level == piece.levels[-1].name for o in piece.openings)
    )


def _loop_by_loop(
    made: EdgeJoin,
    node: syntax.JoinLine,
    pieces: Mapping[str, Piece | None],
    edgings: Mapping[str, Edging | None],
    findings: Findings,
) -> bool:
    """Whether a join that goes loop by loop has loops on both sides, and no fullness to lose."""
    if node.easing is not None or node.longer is not None:
        findings.report(
            "loops-do-not-ease",
            (node.span, "easing" if node.easing is not None else "longer"),
            helps=("leave-out",),
            way=made.way,
        )
        return False
    closed_may_be = made.way == "linked"
    for edge, ref in zip((*made.one, *made.other), (*node.one, *node.other), strict=True):
        piece = pieces.get(edge.piece)
        no_loops = edge.edge in BAND_ENDS if piece is None else not _has_loops(piece, edge.edge, edgings, closed_may_be)
        if no_loops:
            findings.report(
                "join-needs-loops",
                (ref.span, "here"),
                *([(piece.origin.span, "piece")] if piece is not None else []),
                helps=(_loops_by(edge.edge, piece, closed_may_be) if piece is not None else "sew",),
                way=made.way,
                closed_too=closed_may_be,
                piece=edge.piece,
                edge=ref.edge,
            )
            return False
    return True


def _has_loops(piece: Piece, edge: str, edgings: Mapping[str, Edging | None], closed_may_be: bool) -> bool:
    """Whether an edge is a row of stitches that are open, or (`closed_may_be`) cast off or cast on. An edging that is left on
    waste yarn has the open loops of its start."""
    if is_top(edge):
        end = ENDS[piece.end_way]
        return end.open or (closed_may_be and end.edge)
    if edge == "start":
        edging = edgings.get(piece.start_edging) if piece.start_edging is not None else None
        is_open = STARTS[piece.start_way].open and (edging is None or (edging.when, edging.cast_off) == ("after", "waste"))
        return is_open or (closed_may_be and piece.start_way != "along")
    for slot in piece.slots:
        if edge == slot.name:
            return slot.taken == "waste" or closed_may_be
        if edge == f"{slot.name} upper":
            return closed_may_be
    return False


def _loops_by(edge: str, piece: Piece, closed_may_be: bool) -> str:
    """The help that gives an edge its loops; of an edge along the rows, or the cast-on one above a slot, nothing does."""
    if edge == "start":
        # What is hung on a start closes it, but for what is left on waste yarn.
        return "begin-on-waste" if piece.start_edging is None else "begin-without-edging"
    if is_top(edge):
        return "end-on-waste-or-cast-off" if closed_may_be else "end-on-waste"
    return "sew"


def _words(names: tuple[EdgeName, ...]) -> str:
    return " + ".join(f"{n.piece} {n.edge}" for n in names)


def cord(node: syntax.CordLine, known: EdgesOfPieces, scope: Scope, findings: Findings) -> Cord | None:
    """A cord drawn through a piece."""
    findings.look_up("piece", node.piece, node.span, known)
    length = AmountPlace(scope, findings, None, in_fabric=False).across(node.length, said("cord-of", piece=node.piece), POSITIVE)
    if length is None or node.piece not in known:
        return None
    return Cord(node.piece, length, Origin(f"cord {node.piece}", node.span))


def joins_before(order: Sequence[syntax.Statement]) -> tuple[int, ...]:
    """How many joins come before each step of making up."""
    texts = (at for at, node in enumerate(order) if isinstance(node, syntax.TextLine))
    return tuple(sum(isinstance(n, syntax.JoinLine) for n in order[:at]) for at in texts)
