"""Levels and starts: how high a piece's named heights are, how wide it begins, and on what."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise

from walewright.design.edgings import FOLDED
from walewright.design.findings import Findings, amount
from walewright.design.model import Edging, Level, Origin, PerSize
from walewright.design.moves import rises, width_range
from walewright.design.places import Place
from walewright.report.said import said
from walewright.source import syntax

STARTS_KNOWN = ("waste", "hand waste", "e-wrap", "chain", "along")
ON_WASTE = ("waste", "hand waste")
"""Starts whose first row of garment yarn is open, to be hung up."""
CLOSED_STARTS = ("e-wrap", "chain")


def levels(stack: syntax.Levels, piece: str, place: Place) -> tuple[Level, ...] | None:
    """The levels, strictly rising from 0 in every size; free ones rise at both ends of their ranges."""
    findings = place.findings
    findings.once("level", ((d.name, d.span) for d in stack.levels))
    if len(stack.levels) < 2:
        findings.report("missing-part/piece-needs-two", (stack.span, "start-top-least"), piece=piece)
        return None
    found = [level for d in stack.levels if (level := _level(d, piece, place)) is not None]
    if len(found) < len(stack.levels) or len({d.name for d in stack.levels}) < len(found):
        return None
    first = found[0]
    if first.most is not None or any(abs(h) > 1e-9 for h in first.height):
        heights = "anywhere in a range" if first.most is not None else place.per_size(first.height)
        findings.report("first-level", (first.origin.span, "at"), piece=piece, heights=heights)
        return None
    # Counted, so that every pair is told of.
    fallen = sum(not _above(low, high, piece, place) for low, high in pairwise(found))
    return None if fallen else tuple(found)


def _level(node: syntax.LevelDef, piece: str, place: Place) -> Level | None:
    what = f"level `{node.name}` of piece `{piece}`"
    height = place.up(node.height, what)
    origin = Origin(f"piece {piece} / level {node.name}", node.span)
    if node.most is None:
        return Level(node.name, height, origin) if height is not None else None
    most = place.up(node.most, what)
    if height is None or most is None or not rises(height, most, node.most, what, place):
        return None
    return Level(node.name, height, origin, most)


def _above(low: Level, high: Level, piece: str, place: Place) -> bool:
    sizes = place.scope.sizes
    for lower, upper in ((low.height, high.height), (low.most or low.height, high.most or high.height)):
        fallen = [i for i in range(len(sizes)) if upper[i] <= lower[i] + 1e-9]
        if fallen:
            at_most = " at its highest" if lower is low.most or upper is high.most else ""
            place.findings.report(
                "levels-fall",
                (high.origin.span, "here"),
                (low.origin.span, "here-2"),
                notes=tuple(said("then", among=sizes[i], lower=amount(lower[i]), upper=amount(upper[i])) for i in fallen),
                sizes=place.scope.only(tuple(sizes[i] for i in fallen)),
                name=high.name,
                name_2=low.name,
                at_most=at_most,
                piece=piece,
            )
            return False
    return True


def start(
    node: syntax.Start, piece: str, place: Place, edgings: Mapping[str, Edging | None]
) -> tuple[PerSize, PerSize | None] | None:
    """The width a piece begins with (of a free one, from the first to the second), its way and edging checked."""
    findings = place.findings
    widths = width_range(node.width, node.most, f"the start of piece `{piece}`", place)
    if node.way not in STARTS_KNOWN:
        findings.unknown("way to start", node.way, node.span, STARTS_KNOWN)
        return None
    if node.edging is not None:
        edging = findings.look_up("edging", node.edging, node.span, edgings)
        if edging is None or not _suits(edging, node, findings):
            return None
    return widths


def _suits(edging: Edging, node: syntax.Start, findings: Findings) -> bool:
    """Whether an edging can be made at such a start."""
    waste = node.way in ON_WASTE
    how = "started on waste yarn" if waste else f"started with {node.way}"
    if node.way == "along":
        how = "started along other pieces"
    if edging.when == "after" and not waste:
        findings.report(
            "edging-needs-loops",
            (node.span, "how"),
            (edging.origin.span, "added-after"),
            helps=("start-waste-yarn",),
            name=edging.name,
            how=how,
        )
        return False
    if edging.when == "first" and edging.kind in FOLDED:
        if not waste:
            findings.report(
                "edging-needs-waste-start",
                (node.span, "how"),
                (edging.origin.span, "knitted-first"),
                helps=("start-waste-yarn",),
                name=edging.name,
                how=how,
                sort=edging.kind,
            )
        return waste
    if edging.when == "first" and node.way not in CLOSED_STARTS:
        findings.report(
            "edging-needs-closed-start",
            (node.span, "how"),
            (edging.origin.span, "knitted-first"),
            helps=("start-e-wrap",),
            name=edging.name,
            how=how,
        )
        return False
    return True
