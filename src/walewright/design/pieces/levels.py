"""Levels and starts: how high a piece's named heights are, how wide it begins, and on what."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise

from walewright.design.findings import Findings
from walewright.design.model import Edging, Level, Origin, PerSize
from walewright.design.pieces.moves import rises, width_range
from walewright.design.reading.places import POSITIVE, AmountPlace
from walewright.record import record
from walewright.report.said import Amount, Said, said
from walewright.source import syntax
from walewright.trade.edgings import EDGINGS
from walewright.trade.ends import STARTS


def levels(stack: syntax.Levels, piece: str, place: AmountPlace) -> tuple[Level, ...] | None:
    """The levels, strictly rising from 0 in every size; free ones rise at both ends of their ranges."""
    findings = place.findings
    findings.once("level", ((d.name, d.span) for d in stack.levels))
    if len(stack.levels) < 2:
        findings.report("missing-part/two-levels", (stack.span, "least"), helps=("second-level",), piece=piece)
        return None
    found = [level for d in stack.levels if (level := _level(d, piece, place)) is not None]
    if len(found) < len(stack.levels) or len({d.name for d in stack.levels}) < len(found):
        return None
    first = found[0]
    if first.most is not None or any(abs(h) > 1e-9 for h in first.height):
        label = "in-range" if first.most is not None else "at"
        findings.report(
            "first-level", (first.origin.span, label), helps=("begin-at-0",), piece=piece, heights=place.per_size(first.height)
        )
        return None
    # Counted, so that every pair is told of.
    fallen = sum(not _above(low, high, piece, place) for low, high in pairwise(found))
    return None if fallen else tuple(found)


def _level(node: syntax.LevelDef, piece: str, place: AmountPlace) -> Level | None:
    what = said("level-in", level=node.name, piece=piece)
    height = place.up(node.height, what)
    origin = Origin(f"piece {piece} / level {node.name}", node.span)
    if node.most is None:
        return Level(node.name, height, origin) if height is not None else None
    most = place.up(node.most, what)
    if height is None or most is None or not rises(height, most, node.most, what, place):
        return None
    return Level(node.name, height, origin, most)


def _above(low: Level, high: Level, piece: str, place: AmountPlace) -> bool:
    sizes = place.scope.sizes
    for lower, upper in ((low.height, high.height), (low.most or low.height, high.most or high.height)):
        fallen = [i for i in range(len(sizes)) if upper[i] <= lower[i] + 1e-9]
        if fallen:
            highest = lower is low.most or upper is high.most
            place.findings.report(
                "levels-fall",
                (high.origin.span, "upper"),
                (low.origin.span, "lower"),
                notes=tuple(said("then", size=sizes[i], low=Amount(lower[i]), high=Amount(upper[i])) for i in fallen),
                helps=("apart",),
                sizes=place.scope.only(tuple(sizes[i] for i in fallen)),
                upper=high.name,
                lower=low.name,
                highest=highest,
                piece=piece,
            )
            return False
    return True


@record
class StartWidth:
    """How wide a piece begins (of a free start, from `width` to `most`), and how far right of its middle the centre line lies, from
    which its places are counted."""

    width: PerSize
    most: PerSize | None
    centre: PerSize


def start(node: syntax.Start, piece: str, place: AmountPlace, edgings: Mapping[str, Edging | None]) -> StartWidth | None:
    """The width a piece begins with, its way and edging checked."""
    findings = place.findings
    widths = _start_width(node, said("start-of-piece", piece=piece), place)
    if node.way not in STARTS:
        findings.unknown("way to start", node.way, node.span, STARTS)
        return None
    if node.edging is not None:
        edging = findings.look_up("edging", node.edging, node.span, edgings)
        if edging is None or not _suits(edging, node, findings):
            return None
    return widths


_NARROWEST, _WIDEST = 0.1, 500.0
"""Centimetres between which a start lies that is as wide as the edges are which it is begun along."""


def _start_width(node: syntax.Start, what: Said, place: AmountPlace) -> StartWidth | None:
    if node.width is not None:
        widths = width_range(node.width, node.most, what, place)
        return StartWidth(*widths, tuple(0.0 for _ in place.scope.sizes)) if widths is not None else None
    if node.from_place is None:
        least, most, centre = (tuple(cm for _ in place.scope.sizes) for cm in (_NARROWEST, _WIDEST, 0.0))
        return StartWidth(least, most, centre)
    assert node.to_place is not None
    ends = [place.across(end, what) for end in (node.from_place, node.to_place)]
    width = place.across(syntax.Binary("-", node.to_place, node.from_place, span=node.span), what, POSITIVE)
    if width is None or ends[0] is None or ends[1] is None:
        return None
    return StartWidth(width, None, tuple(-(a + b) / 2 + 0.0 for a, b in zip(*ends, strict=True)))


def _suits(edging: Edging, node: syntax.Start, findings: Findings) -> bool:
    """Whether an edging can be made at such a start."""
    waste = STARTS[node.way].open
    how = "on-waste" if waste else "along" if node.way == "along" else "with"
    if edging.when == "after" and not waste:
        findings.report(
            "edging-needs-loops",
            (node.span, how),
            (edging.origin.span, "added-after"),
            helps=("on-waste",),
            edging=edging.name,
            way=node.way,
        )
        return False
    if edging.when == "first" and EDGINGS[edging.kind].folded:
        if not waste:
            findings.report(
                "edging-needs-waste-start",
                (node.span, how),
                (edging.origin.span, "kind-first"),
                helps=("on-waste",),
                edging=edging.name,
                way=node.way,
                made_as=edging.kind,
            )
        return waste
    if edging.when == "first" and STARTS[node.way].cast_on is None:
        findings.report(
            "edging-needs-closed-start",
            (node.span, how),
            (edging.origin.span, "knitted-first"),
            helps=("closed",),
            edging=edging.name,
            way=node.way,
        )
        return False
    return True
