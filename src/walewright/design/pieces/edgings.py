"""Edgings: a fabric at an edge, plain or folded, and how it is begun and closed."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from walewright.design.findings import Findings
from walewright.design.model import Band, EdgeJoin, Edging, Fabric, Origin, PerSize, Piece
from walewright.design.reading.places import POSITIVE, AmountPlace
from walewright.design.reading.values import Scope
from walewright.report.said import Said, said
from walewright.source import syntax
from walewright.trade.edgings import CAST_OFFS, EDGINGS, WHENS, EdgingKind

MOCK_KNOWN = {2: "1 by 1", 3: "2 by 1"}


def edging(node: syntax.EdgingLine, fabrics: Mapping[str, Fabric | None], scope: Scope, findings: Findings) -> Edging | None:
    """An edging of its kind in its fabric, checked: depth, fold and fabric suit the kind."""
    cloth = findings.look_up("fabric", node.fabric, node.span, fabrics)
    depth = _depth(node, AmountPlace(scope, findings, cloth), findings)
    sound = True
    for what, word, known in (
        ("way of adding an edging", node.when, WHENS),
        ("cast-off", node.cast_off, CAST_OFFS),
        ("kind of edging", node.kind, EDGINGS),
    ):
        if word not in known:
            findings.unknown(what, word, node.span, known)
            sound = False
    if cloth is None or depth is None or not sound:
        return None
    if not _suits(node, cloth, findings):
        return None
    return Edging(
        node.name,
        node.fabric,
        depth,
        node.when,
        node.cast_off,
        Origin(f"edging {node.name}", node.span),
        kind=node.kind,
        mock=node.mock,
        fold_tension=node.fold_tension or "",
        inside_tension=node.inside_tension or "",
    )


def _depth(node: syntax.EdgingLine, place: AmountPlace, findings: Findings) -> PerSize | None:
    if node.depth is not None:
        return place.up(node.depth, said("depth-of", of=said("edging", edging=node.name)), POSITIVE)
    if not EDGINGS[node.kind].has_depth:
        return tuple(0.0 for _ in place.scope.sizes)
    findings.report("missing-part/depth", (node.span, "none"), helps=("add",), edging=node.name)
    return None


def _suits(node: syntax.EdgingLine, cloth: Fabric, findings: Findings) -> bool:
    """Whether what is said of an edging goes together."""
    if EDGINGS[node.kind].idle_needles and node.mock not in MOCK_KNOWN:
        findings.unknown("mock rib", str(node.mock), node.span, MOCK_KNOWN.values())
        return False
    if cloth.stitch == "chart":
        findings.report(
            "edging-charted",
            (node.span, "in"),
            (cloth.origin.span, "chart"),
            helps=("plain",),
            edging=node.name,
            fabric=cloth.name,
            chart=cloth.chart,
        )
        return False
    if cloth.stitch == "latched rib" and not EDGINGS[node.kind].latched:
        findings.report(
            "edging-latched",
            (node.span, "made-as"),
            (cloth.origin.span, "latched-rib"),
            helps=("plain",),
            edging=node.name,
            made_as=_made_as(node.kind),
        )
        return False
    if node.when == "first" and "first" not in EDGINGS[node.kind].when:
        findings.report(
            "edging-only-after", (node.span, "knitted-first"), helps=("after",), edging=node.name, made_as=_made_as(node.kind)
        )
        return False
    if node.when == "after" and "after" not in EDGINGS[node.kind].when:
        findings.report(
            "edging-only-first",
            (node.span, "added-after"),
            notes=("hanging",),
            helps=("first",),
            edging=node.name,
            made_as=_made_as(node.kind),
        )
        return False
    return _fold_suits(node, findings)


def _fold_suits(node: syntax.EdgingLine, findings: Findings) -> bool:
    facts = EDGINGS[node.kind]
    if node.fold_tension and not facts.fold_row:
        fault = "edging-without-fold/picot" if facts.eyelets else "edging-without-fold/fold-row"
        kinds = tuple(kind for kind, other in EDGINGS.items() if other.fold_row)
    elif node.inside_tension and not facts.folded:
        fault, kinds = "edging-without-fold/inside", tuple(kind for kind, other in EDGINGS.items() if other.folded)
    else:
        return True
    findings.report(fault, (node.span, "here"), notes=("kinds",), helps=("leave-out",), edging=node.name, kinds=kinds)
    return False


def _made_as(kind: EdgingKind) -> Said:
    match kind:
        case "mock rib":
            return said("a-mock-rib")
        case "facing":
            return said("a-facing")
        case "plain" | "folded" | "picot" | "rolled" | "chained":
            return said("edging-kind", kind=kind)


def closed(
    edgings: Iterable[Edging | None],
    pieces: Iterable[Piece | None],
    bands: Iterable[Band | None],
    joins: Iterable[EdgeJoin | None],
    findings: Findings,
) -> None:
    """Reports edgings that are left on waste yarn where nothing takes their loops up."""
    grafted = {(e.piece, e.edge) for j in joins if j is not None and j.way == "grafted" for e in (*j.one, *j.other)}
    for made in edgings:
        if made is None or made.cast_off != "waste":
            continue
        users = [
            (p.origin.span, said("start-of-piece", piece=p.name))
            for p in pieces
            if p is not None and p.start_edging == made.name and (p.name, "start") not in grafted
        ]
        users += [
            (p.origin.span, said("end-of-piece", piece=p.name))
            for p in pieces
            if p is not None and p.end_edging == made.name and (p.name, "end") not in grafted
        ]
        users += [(b.origin.span, said("band", band=b.name)) for b in bands if b is not None and b.edging == made.name]
        if users:
            findings.report(
                "edging-left-open",
                users[0],
                (made.origin.span, "left"),
                helps=("cast-off-or-graft",),
                edging=made.name,
                place=users[0][1],
            )
