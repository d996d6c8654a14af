"""Stretches of rows: zones in another fabric, and rows that are repeated."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from walewright.design.findings import Findings, within
from walewright.design.model import Chart, CountPerSize, Fabric, Level, Origin, PerSize, RepeatStretch, Zone
from walewright.design.pieces.cloth import PieceCloth
from walewright.design.pieces.fitting import CutOut, leaves
from walewright.design.pieces.openings import offset
from walewright.design.pieces.outline import NOTHING, PieceOutline, stretch
from walewright.design.reading.numbered import numbered
from walewright.design.reading.places import POSITIVE, AmountPlace
from walewright.report.said import Said, said
from walewright.source import syntax
from walewright.trade.sides import SIDES

MOST_TIMES = 100
MOST_REPEATS = 400


def cloth_of(
    nodes: Sequence[syntax.ZoneLine],
    levels: tuple[Level, ...],
    place: AmountPlace,
    fabrics: Mapping[str, Fabric | None],
) -> PieceCloth:
    """The fabrics by height; faults of the zones are told by `zone`, not here."""
    numbers = {level.name: number for number, level in enumerate(levels)}
    bands = tuple(
        (numbers[n.from_level], numbers[n.to_level], fabrics[n.fabric])
        for n in nodes
        if n.width is None and n.repeats is None and n.fabric in fabrics and n.from_level in numbers and n.to_level in numbers
    )
    return PieceCloth(place, levels, bands)


def zone(
    node: syntax.ZoneLine,
    outline: PieceOutline,
    cloth: PieceCloth,
    fabrics: Mapping[str, Fabric | None],
    charts: Mapping[str, Chart | None],
) -> Zone | None:
    """Another fabric between two levels, over the whole width or a panel of it."""
    findings = cloth.place.findings
    what = said("fabric-of", fabric=node.fabric, piece=outline.piece)
    fabric = findings.look_up("fabric", node.fabric, node.span, fabrics)
    between = stretch(node, what, outline, findings)
    if fabric is None or between is None:
        return None
    low, high = between
    place = cloth.at(high)
    centre = offset(node.offset, said("middle-of", of=what), outline, place)
    origin = Origin(f"piece {outline.piece} / {node.fabric} from {node.from_level}", node.span)
    if centre is None:
        return None
    if node.width is None and node.repeats is None:
        return Zone(node.fabric, node.from_level, node.to_level, None, centre, origin)
    width = _width(node, fabric, what, place, charts)
    arounds = dict.fromkeys(cloth.below(level) for level in range(low + 1, high + 1))
    if width is None or not all(_panel(fabric, around, what, node, findings) for around in arounds):
        return None
    reach = {s: tuple(w / 2 for w in width[0]) for s in SIDES}
    for at in range(low, high + 1):
        level = outline.levels[at]
        cut = CutOut(what, node.span, reach, centre)
        if not leaves(cut, level.height, said("at-level", level=level.name), outline, place):
            return None
    return Zone(node.fabric, node.from_level, node.to_level, width=width[0], centre=centre, origin=origin, repeats=width[1])


def _width(
    node: syntax.ZoneLine, fabric: Fabric, what: Said, place: AmountPlace, charts: Mapping[str, Chart | None]
) -> tuple[PerSize, CountPerSize] | None:
    """The width of a panel in cm, and how many repeats it is wide, if that is said. Stitches of a charted one are its own."""
    chart = charts.get(fabric.chart)
    if node.repeats is None or node.width is not None:
        here = AmountPlace(place.scope, place.findings, fabric) if fabric.chart else place
        wide = here.across(node.width, said("width-of", of=what), POSITIVE) if node.width is not None else None
        return None if wide is None else (wide, ())
    repeats = numbered(node.repeats, place.scope, said("repeats-of", of=what), place.findings)
    if repeats is None:
        return None
    if not fabric.chart:
        place.findings.report(
            "repeats-without-chart",
            (node.span, "repeats"),
            (fabric.origin.span, "stitch"),
            helps=("give-width",),
            what=what,
            repeats=repeats[0],
            stitch=fabric.stitch,
        )
        return None
    wrong = tuple(s for s, n in zip(place.scope.sizes, repeats, strict=True) if not 1 <= n <= MOST_REPEATS)
    if wrong:
        first = repeats[place.scope.sizes.index(wrong[0])]
        place.findings.report(
            "not-positive/repeats" if first < 1 else "absurd-count/repeats",
            (node.span, "repeats"),
            notes=("possible",),
            helps=within(first, 1, MOST_REPEATS),
            sizes=place.scope.only(wrong),
            what=what,
            repeats=first,
            most=MOST_REPEATS,
        )
        return None
    if chart is None:
        return None
    stitches = (chart.before + n * chart.repeat + chart.after for n in repeats)
    return tuple(n / fabric.stitches_per_cm for n in stitches), repeats


def _panel(fabric: Fabric, around: Fabric | None, what: Said, node: syntax.ZoneLine, findings: Findings) -> bool:
    """Whether a panel can be knitted in the rows of the fabric around it: with its yarn, at its tension, worked by hand."""
    if around is None:
        return True
    alike = (fabric.yarn, fabric.tension) == (around.yarn, around.tension)
    if fabric.stitch in ("latched rib", "chart") and alike:
        return True
    findings.report(
        "panel-fabric",
        (node.span, "part"),
        (fabric.origin.span, "fabric"),
        (around.origin.span, "around"),
        helps=("same-yarn", "whole-width"),
        what=what,
        around=around.name,
        stitch=fabric.stitch,
        yarn=fabric.yarn,
        tension=fabric.tension,
        around_stitch=around.stitch,
        around_yarn=around.yarn,
        around_tension=around.tension,
    )
    return False


def repeat(node: syntax.RepeatLine, outline: PieceOutline, findings: Findings, place: AmountPlace) -> RepeatStretch | None:
    """Rows worked several times; the width at their end is that at their beginning."""
    what = said("repeat-in", piece=outline.piece)
    times = numbered(node.times, place.scope, what, findings)
    if times is None:
        return None
    wrong = tuple(i for i, number in enumerate(times) if not 2 <= number <= MOST_TIMES)
    if wrong:
        findings.report(
            "not-positive/times" if times[wrong[0]] < 2 else "absurd-count/times",
            (node.span, "times"),
            notes=("possible",),
            helps=within(times[wrong[0]], 2, MOST_TIMES),
            sizes=place.scope.only(tuple(place.scope.sizes[i] for i in wrong)),
            what=what,
            times=times[wrong[0]],
            most=MOST_TIMES,
        )
        return None
    between = stretch(node, what, outline, findings)
    if between is None:
        return None
    low, high = (outline.levels[i].height for i in between)
    sizes = place.scope.sizes
    for side in SIDES:
        before, after = outline.position(side, low, above=True), outline.position(side, high)
        moved = tuple(s for s, a, b in zip(sizes, before, after, strict=True) if abs(a - b) > NOTHING)
        if moved:
            findings.report(
                "repeat-changes-width",
                (node.span, "from-to"),
                notes=("centre",),
                helps=("straight",),
                sizes=place.scope.only(moved),
                side=side,
                piece=outline.piece,
                from_level=node.from_level,
                to_level=node.to_level,
                before=place.per_size(before),
                after=place.per_size(after),
            )
            return None
    origin = Origin(f"piece {outline.piece} / repeat from {node.from_level}", node.span)
    return RepeatStretch(node.from_level, node.to_level, times, origin)
