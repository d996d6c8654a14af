"""Fabrics like others in another yarn: `like` replaced by the model's stitch in that yarn, with the model's swatch and right side.

What comes of the model has a `Used` span, so that a fault of it is told once, at the model.
"""

from __future__ import annotations

from collections.abc import Mapping

from walewright.design.findings import Findings, Used
from walewright.design.model import Fabric, Yarn
from walewright.design.pieces.alike import marked
from walewright.design.reading.regauged import SAME_YARN
from walewright.record import replace
from walewright.report.model import Severity, Span
from walewright.source import syntax


def fabrics_written_out(tree: syntax.Tree, findings: Findings) -> syntax.Tree:
    """The tree with every fabric that is `like` another written out. `like` is then the fabric whose swatch it is."""
    if not any(isinstance(s, syntax.FabricBlock) and s.like for s in tree.statements):
        return tree
    nodes = {s.name: s for s in reversed(tree.statements) if isinstance(s, syntax.FabricBlock)}
    found = (_written(s, nodes, findings) if isinstance(s, syntax.FabricBlock) and s.like else s for s in tree.statements)
    return replace(tree, statements=tuple(found))


def _written(node: syntax.FabricBlock, nodes: Mapping[str, syntax.FabricBlock], findings: Findings) -> syntax.FabricBlock:
    lost = (*node.body, syntax.Broken("", span=node.span))
    model = _model(node, nodes, findings)
    if model is None:
        return replace(node, body=lost)
    own = [s for s in node.body if not isinstance(s, syntax.TextLine)]
    if own:
        findings.report(
            "fabric-not-like/own-lines", (own[0].span, "own"), (node.span, "like"), helps=("in-full",), model=model.name
        )
        return replace(node, body=lost)
    stripes = next((s for s in model.body if isinstance(s, syntax.Stitch) and s.stripes), None)
    if stripes is not None:
        findings.report(
            "fabric-not-like/stripes", (node.span, "like"), (stripes.span, "stripes"), helps=("in-full",), model=model.name
        )
        return replace(node, body=lost)

    def mark(span: Span) -> Span:
        return Used(node.span.file, node.span.start, node.span.end, span, "", model.name)

    taken = tuple(marked(s, mark) for s in model.body if not isinstance(s, syntax.TextLine))
    body = tuple(replace(s, yarn=node.yarn) if isinstance(s, syntax.Stitch) else s for s in taken)
    return replace(node, like=model.name, body=(*node.body, *body))


def _model(node: syntax.FabricBlock, nodes: Mapping[str, syntax.FabricBlock], findings: Findings) -> syntax.FabricBlock | None:
    """The fabric at the end of the chain of models; None, and reported once, where there is no such fabric."""
    chain = [node.name]
    model = findings.look_up("fabric", node.like, node.span, nodes)
    while model is not None and model.like:
        if model.name in chain:
            if node.name == min(chain):
                findings.report("fabric-not-like/ring", (node.span, "like"), helps=("in-full",), ring=tuple(chain), model=node.like)
            return None
        chain.append(model.name)
        model = nodes.get(model.like)
    return model


def of_one_swatch(
    fabrics: Mapping[str, Fabric | None], yarns: Mapping[str, Yarn | None], findings: Findings
) -> dict[str, Fabric | None]:
    """The fabrics; those with the swatch of another as heavy as their own yarn makes it. A yarn that is not as thick as that of the
    swatch is warned of."""
    found = dict(fabrics)
    for name, fabric in fabrics.items():
        model = fabrics.get(fabric.swatch_of) if fabric is not None and fabric.swatch_of else None
        if fabric is None or model is None:
            continue
        own, its = yarns.get(fabric.yarn), yarns.get(model.yarn)
        if own is None or its is None:
            continue
        if abs(own.tex - its.tex) > SAME_YARN * max(own.tex, its.tex):
            findings.report(
                "swatch-of-other-yarn",
                (fabric.origin.span, "in"),
                (its.origin.span, "swatched"),
                helps=("swatch",),
                severity=Severity.WARNING,
                fabric=name,
                yarn=fabric.yarn,
                other=model.yarn,
                tex=own.tex,
                its=its.tex,
            )
        found[name] = replace(fabric, swatch_grams=fabric.swatch_grams * own.tex / its.tex)
    return found
