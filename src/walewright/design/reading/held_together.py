"""Yarns that are several held together: as thick as all of them, and none of them bought."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from walewright.design.findings import Findings
from walewright.design.model import Origin, Yarn
from walewright.design.reading.materials import colour_of, reserved
from walewright.source import syntax

MOST_STRANDS = 12
"""As many thin ones as make a bulky one (common practice: two or three)."""


def held_together(
    nodes: Iterable[syntax.YarnLine], single: Mapping[str, Yarn | None], findings: Findings
) -> dict[str, Yarn | None]:
    """The yarns `single`, and those that are some of them together, in the order of the source."""
    made = dict(single)
    for node in nodes:
        if node.strands and node.name not in made:
            made[node.name] = _together(node, single, findings)
    order = list(dict.fromkeys(n.name for n in nodes))
    return {name: made[name] for name in order if name in made}


def _together(node: syntax.YarnLine, single: Mapping[str, Yarn | None], findings: Findings) -> Yarn | None:
    place = node.place_of("strands") or node.span
    if reserved(node, findings):
        return None
    if len(node.strands) > MOST_STRANDS:
        findings.report(
            "absurd-count/strands",
            (place, "strands"),
            notes=("possible",),
            helps=("leave-some-out",),
            yarn=node.name,
            count=len(node.strands),
            most=MOST_STRANDS,
        )
        return None
    strands = [findings.look_up("yarn to be bought", name, place, single) for name in node.strands]
    found = [s for s in strands if s is not None]
    if len(found) < len(strands) or not colour_of(node, findings):
        return None
    tex = sum(s.tex for s in found)
    if node.fibres:
        findings.report(
            "fibre-of-strands", (node.place_of("fibres") or node.span, "fibre"), helps=("at-the-strands",), name=node.name
        )
        return None
    return Yarn(
        node.name, node.label, tex, 1000.0, Origin(f"yarn {node.name}", node.span), colour=node.colour or "", strands=node.strands
    )
