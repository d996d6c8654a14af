"""How an edge is shaped: at its end stitches, or with a transfer tool some stitches in."""

from __future__ import annotations

from walewright.design.findings import Findings
from walewright.design.model import MachineProfile, ShapingWay
from walewright.report.model import Span
from walewright.trade.shaping import WAYS


def shaping_way(
    kind: str | None, inset: int | None, span: Span, machine: MachineProfile | None, findings: Findings, at_once: int = 1
) -> ShapingWay | None:
    """The way an edge is shaped; a fashioned one needs a transfer tool of as many prongs as it is stitches in."""
    if kind in (None, "simple"):
        return ShapingWay("simple", 0, at_once)
    if kind == "inside":
        # Its lines say how many stitches go at once.
        return ShapingWay("inside", 0, at_once)
    if kind != "fashioned":
        findings.unknown("way of shaping", str(kind), span, WAYS)
        return None
    depth = inset if inset is not None else 0
    if machine is not None and depth not in machine.prongs:
        findings.report(
            "no-such-tool/prongs",
            (span, "fashioned"),
            (machine.origin.span, "bed"),
            notes=("at-hand",),
            helps=("other-tool",),
            inset=depth,
            prongs=machine.prongs,
        )
        return None
    return ShapingWay("fashioned", depth, at_once)
