"""Bands along edges, joins of edges, and the check that every edge spoken of is there."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.design.findings import Findings
from walewright.design.model import Band, EdgeName, Edging, Fabric, Join, Origin, Piece
from walewright.design.places import NOT_NEGATIVE, Place
from walewright.design.values import Scope
from walewright.source import syntax


def edge_names(nodes: tuple[syntax.Piece, ...]) -> dict[str, tuple[str, ...] | None]:
    """By piece, the edges that can be joined or picked up along; None where a lost line may have named more.

    Read off the statements, so that edges are checked even of a piece that is not understood. A piece with a neck ends in
    two shoulders; a mirror image has the edges of its model.
    """
    first: dict[str, syntax.Piece] = {}
    for node in nodes:
        first.setdefault(node.name, node)
    return {name: _names(_model(node, first)) for name, node in first.items()}


def _model(node: syntax.Piece, nodes: Mapping[str, syntax.Piece]) -> syntax.Piece | None:
    """The piece that has the shape; None when the mirrors lead nowhere."""
    seen = {node.name}
    while node.mirror_of is not None:
        if node.mirror_of in seen or node.mirror_of not in nodes:
            return None
        node = nodes[node.mirror_of]
        seen.add(node.name)
    return node


def _names(node: syntax.Piece | None) -> tuple[str, ...] | None:
    if node is None or any(isinstance(s, syntax.Broken) for s in node.body):
        return None
    called = dict.fromkeys(s.called for s in node.body if isinstance(s, syntax.Edge) and s.called)
    parts = any(isinstance(s, syntax.Neck) for s in node.body)
    return ("start", *(("neck", "shoulder") if parts else ("end",)), *called)


def edges(
    refs: tuple[syntax.EdgeRef, ...], outlines: Mapping[str, tuple[str, ...] | None], findings: Findings
) -> tuple[EdgeName, ...] | None:
    """The edges, or None when one is not there."""
    found: list[EdgeName] = []
    for ref in refs:
        names = findings.look_up("piece", ref.piece, ref.span, outlines)
        if names is None:
            continue
        if ref.edge in names:
            found.append(EdgeName(ref.piece, ref.edge))
        else:
            findings.unknown(f"edge of piece `{ref.piece}`", ref.edge, ref.span, names, code="no-such-edge")
    return tuple(found) if len(found) == len(refs) else None


def band(
    node: syntax.Band, outlines: Mapping[str, tuple[str, ...] | None], edgings: Mapping[str, Edging | None], findings: Findings
) -> Band | None:
    """An edging picked up along edges."""
    edging = findings.look_up("edging", node.edging, node.span, edgings)
    along = edges(node.along, outlines, findings)
    if edging is None or along is None:
        return None
    return Band(node.name, node.edging, along, Origin(f"band {node.name}", node.span))


def join(
    node: syntax.Join,
    outlines: Mapping[str, tuple[str, ...] | None],
    pieces: Mapping[str, Piece | None],
    fabrics: Mapping[str, Fabric | None],
    scope: Scope,
    findings: Findings,
) -> Join | None:
    """Two rows of edges sewn together. Rows of easing are rows of the first piece's fabric."""
    one = edges(node.one, outlines, findings)
    other = edges(node.other, outlines, findings)
    easing: tuple[float, ...] | None = tuple(0.0 for _ in scope.sizes)
    if node.easing is not None:
        first = pieces.get(node.one[0].piece) if node.one else None
        fabric = fabrics.get(first.fabric) if first else None
        easing = Place(scope, findings, fabric).up(node.easing, "the easing of a join", NOT_NEGATIVE)
    if one is None or other is None or easing is None:
        return None
    path = f"join {_words(one)} to {_words(other)}"
    return Join(one, other, easing, Origin(path, node.span))


def _words(names: tuple[EdgeName, ...]) -> str:
    return " + ".join(f"{n.piece} {n.edge}" for n in names)
