"""Names of edges: which edges a piece has, and the check that every edge spoken of is there."""

from __future__ import annotations

from collections.abc import Container, Iterable, Iterator, Mapping

from walewright.design.findings import Findings
from walewright.design.model import EdgeName, Edging
from walewright.design.pieces.slots import upper
from walewright.report.model import Span
from walewright.report.said import said
from walewright.source import syntax
from walewright.trade.edge_names import BAND_ENDS, OWN_EDGES, StripAt, strip_name, top_between
from walewright.trade.edgings import EDGINGS
from walewright.trade.sides import SIDES

EdgesOfPieces = Mapping[str, Mapping[str, str] | None]
"""By piece: an edge's name in the source to its name in the design. None where a lost line may have named more."""


def with_bands(
    known: EdgesOfPieces, bands: Iterable[syntax.BandLine], edgings: Mapping[str, Edging | None]
) -> Mapping[str, Mapping[str, str] | None]:
    """The same with the two ends of each band."""
    made = {band.name: edgings.get(band.edging) for band in bands}
    return {**{name: {_written(end): _shown(end, own) for end in BAND_ENDS} for name, own in made.items()}, **known}


HIDDEN = ""
"""In place of an end of what is turned in as a whole: it lies behind the piece."""


def _shown(end: str, edging: Edging | None) -> str:
    return HIDDEN if edging is not None and EDGINGS[edging.kind].turned_in else end


def _written(edge: str) -> str:
    return edge.replace(" ", "_")


def known_edges(nodes: Iterable[syntax.PieceBlock], edgings: Mapping[str, Edging | None]) -> tuple[EdgesOfPieces, EdgesOfPieces]:
    """By piece, the edges that can be spoken of, and those that something can be hung on: the ends of edgings too."""
    nodes = tuple(nodes)
    known = _edge_names(nodes)
    return known, _with_strips(known, nodes, edgings)


def _with_strips(known: EdgesOfPieces, nodes: Iterable[syntax.PieceBlock], edgings: Mapping[str, Edging | None]) -> EdgesOfPieces:
    """The same with the ends of the edgings along each piece, `welt_left` and `welt_right`, which something can be hung on."""
    first = _first(nodes)
    return {name: _ended(own, _model(first[name], first), edgings) for name, own in known.items()}


def _ended(
    own: Mapping[str, str] | None, node: syntax.PieceBlock | None, edgings: Mapping[str, Edging | None]
) -> Mapping[str, str] | None:
    if own is None or node is None:
        return own
    given = {*OWN_EDGES, *(name for name, _ in _given(node.body))}
    strips = ((name, of) for strip, of in _strips(node.body, given, edgings) for name in (strip, *(f"{strip} {s}" for s in SIDES)))
    return {**{_written(name): _shown(name, of) for name, of in strips}, **own}


def _edge_names(nodes: Iterable[syntax.PieceBlock]) -> EdgesOfPieces:
    """By piece, the edges that can be joined or picked up along.

    Read off the statements, so that edges are checked even of a piece that is not understood. A piece that is parted to its
    top ends in two shoulders. A slot has a lower edge of its own name and an upper one, and so has an opening that closes
    again. An edge that runs up both sides has parts, `side_left` and `side_right`, and a gap `neck_centre` as well. A mirror
    image has the edges of its model.
    """
    first = _first(nodes)
    return {name: _names(_model(node, first)) for name, node in first.items()}


def _first(nodes: Iterable[syntax.PieceBlock]) -> dict[str, syntax.PieceBlock]:
    """By name, of two of one name the first."""
    first: dict[str, syntax.PieceBlock] = {}
    for node in nodes:
        first.setdefault(node.name, node)
    return first


def _model(node: syntax.PieceBlock, nodes: Mapping[str, syntax.PieceBlock]) -> syntax.PieceBlock | None:
    """The piece that has the shape; None when the mirrors lead nowhere."""
    seen = {node.name}
    while node.mirror_of is not None:
        if node.mirror_of in seen or node.mirror_of not in nodes:
            return None
        node = nodes[node.mirror_of]
        seen.add(node.name)
    return node


def _names(node: syntax.PieceBlock | None) -> dict[str, str] | None:
    if node is None or any(isinstance(s, syntax.Broken) for s in node.body):
        return None
    tops = {s.levels[-1].name for s in node.body if isinstance(s, syntax.Levels) and s.levels}
    openings = [s for s in node.body if isinstance(s, syntax.OpeningLine)]
    at_top = sum(isinstance(s, syntax.Neck) for s in node.body) + sum(o.to_level in tops for o in openings)
    parted = at_top > 0
    found = {"start": "start"}
    found |= {name: name for name, _ in _given(node.body)}
    found["shoulder" if parted else "end"] = "shoulder" if parted else "end"
    for slot in node.body:
        if isinstance(slot, syntax.SlotLine) and slot.taken == "waste":
            found[upper(slot.name)] = f"{slot.name} upper"
        elif isinstance(slot, syntax.SlotLine):
            # Closed, it has no stitches to take up.
            found.pop(slot.name, None)
            found.pop(upper(slot.name), None)
    for opening in openings:
        if opening.to_level not in tops:
            found[upper(opening.name)] = f"{opening.name} upper"
    for edge in _two_sided(node.body, parted):
        for side in ("left", "right"):
            found.setdefault(f"{edge}_{side}", f"{edge} {side}")
    for number in range(2, at_top + 1):
        found.setdefault(_written(top_between(number)), top_between(number))
    gaps = [s.name for s in openings] + ["neck" for s in node.body if isinstance(s, syntax.Neck)]
    for gap in gaps:
        for part in ("left", "centre", "right"):
            found.setdefault(f"{gap}_{part}", f"{gap} {part}")
    return found


def _strips(
    body: tuple[syntax.Statement, ...], own: Container[str], edgings: Mapping[str, Edging | None]
) -> Iterator[tuple[str, Edging]]:
    """What the ends of a piece's edgings are called."""
    begun = next((s.edging for s in body if isinstance(s, syntax.Start) and s.edging), "")
    ended = next((s.edging for s in body if isinstance(s, syntax.End) and s.edging), "")
    both: tuple[tuple[str, StripAt, str], ...] = ((begun, "start", ended), (ended, "end", begun))
    for edging, at, other in both:
        made = edgings.get(edging)
        if made is not None:
            yield strip_name(edging, own, at, other), made


def _two_sided(body: tuple[syntax.Statement, ...], parted: bool) -> Iterator[str]:
    """Edges that have a left and a right part: those called on both sides, and the shoulders."""
    edges = [n for n in body if isinstance(n, syntax.EdgeLine) and n.called]
    called = [{n.called for n in edges if n.which in ("both", side)} for side in ("left", "right")]
    yield from sorted(name for name in called[0] & called[1] if name)
    if parted:
        yield "shoulder"


def _given(body: tuple[syntax.Statement, ...]) -> list[tuple[str, Span]]:
    """Names given to edges in a piece's block: of the outer edges once, though each side may have it."""
    called: dict[str, Span] = {}
    for node in body:
        if isinstance(node, syntax.EdgeLine) and node.called:
            called.setdefault(node.called, node.span)
    given = list(called.items())
    for node in body:
        if isinstance(node, syntax.Neck):
            given.append(("neck", node.span))
        elif isinstance(node, syntax.OpeningLine):
            given.append((node.name, node.span))
        elif isinstance(node, syntax.SlotLine):
            given += [(node.name, node.span), (upper(node.name), node.span)]
    return given


def given_edges(node: syntax.PieceBlock) -> Iterator[tuple[str, Span]]:
    """The names that a piece gives to its edges, openings and slots, and where."""
    yield from _given(node.body)


def told_apart(node: syntax.PieceBlock, findings: Findings) -> bool:
    """Whether edges, openings and slots of a piece have names of their own; told where two share one."""
    given = _given(node.body)
    findings.once("edge", given)
    return len({name for name, _ in given}) == len(given)


def edges(refs: tuple[syntax.EdgeRef, ...], known: EdgesOfPieces, findings: Findings) -> tuple[EdgeName, ...] | None:
    """The edges, or None when one is not there."""
    found: list[EdgeName] = []
    for ref in refs:
        names = findings.look_up("piece", ref.piece, ref.span, known)
        if names is None:
            continue
        if names.get(ref.edge) == HIDDEN:
            findings.report("no-such-edge/turned-in", (ref.span, "here"), helps=("other-edging",), piece=ref.piece, edge=ref.edge)
        elif ref.edge in names:
            found.append(EdgeName(ref.piece, names[ref.edge]))
        else:
            shown = tuple(name for name, edge in names.items() if edge != HIDDEN)
            findings.unknown(said("edge-of-piece", piece=ref.piece), ref.edge, ref.span, shown, code="no-such-edge")
    return tuple(found) if len(found) == len(refs) else None
