"""The charts of the booklet: each with its sheets, its key, where it lies, and its fabric as the bed knitted it."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator

from walewright.design.model import Chart, Design, Fabric
from walewright.figures import chart_drawing, symbols, yarns
from walewright.figures.chart_sheets import LARGE, Cut, Window, at_bench, cut
from walewright.figures.chart_sheets import large as cut_large
from walewright.figures.loops import picture
from walewright.figures.measures import name_of
from walewright.figures.model import Drawing
from walewright.guide.model import Guide
from walewright.guide.numbers import sentence
from walewright.proof.model import FabricPicture, Proof
from walewright.record import replace
from walewright.sheet import chart_places
from walewright.sheet.model import ChartPart, ChartRows, ChartSheet, Fact, KeyRow
from walewright.sheet.proven import ProvenPattern
from walewright.write.model import ChartText, NoteKind

SAID_ABOVE = (NoteKind.SIDE, NoteKind.REPEAT)
"""Those notes of the plain text that the facts above a drawn chart say in full."""


def charts(guide: Guide, pattern: ProvenPattern, large_print: bool = False) -> tuple[ChartPart, ...]:
    """Those that a piece works, in the order of the source."""
    made = tuple(_charts(guide, pattern, cut_large if large_print else cut))
    return tuple(map(_enlarged, made)) if large_print else made


def charts_at_bench(guide: Guide, pattern: ProvenPattern) -> tuple[ChartPart, ...]:
    """The same for a bench copy: large, and by needles where the same ones knit the columns everywhere."""
    return tuple(map(_enlarged, _charts(guide, pattern, at_bench, by_needles=True)))


def _enlarged(part: ChartPart) -> ChartPart:
    """With symbols in its key as large as in the chart."""
    scale = LARGE / chart_drawing.KEY_CELL
    return replace(part, key=tuple(replace(row, drawing=replace(row.drawing, scale=scale)) for row in part.key))


Cutting = Callable[[int, int, float], Cut]


def _charts(guide: Guide, pattern: ProvenPattern, cutting: Cutting, by_needles: bool = False) -> Iterator[ChartPart]:
    for chart in pattern.design.charts:
        found = chart_places.uses(pattern.design, pattern.counts, chart)
        if found:
            yield _part(guide, pattern, chart, found, cutting, chart_places.fixed(chart, found) if by_needles else None)


def anchor(chart: str) -> str:
    """The place of a chart's page."""
    return "chart-" + re.sub(r"[^A-Za-z0-9_]+", "-", chart)


def _part(
    guide: Guide,
    pattern: ProvenPattern,
    chart: Chart,
    found: tuple[chart_places.ChartUse, ...],
    cutting: Cutting,
    needles: int | None,
) -> ChartPart:
    design, text = pattern.design, next((t for t in pattern.instructions.charts if t.name == chart.name), None)
    fabric, ground = _fabric(design, chart, found), ground_yarn(design, chart, found)
    whole = cutting(chart.width, len(chart.rows), fabric.stitches_per_cm / fabric.rows_per_cm)
    lines = chart_places.centres(guide, chart, found) if needles is None else chart_places.mark(guide, chart, needles)
    several, look = len(whole.sheets) > 1, chart_drawing.ChartLook(needles, ground)
    sheets = tuple(
        ChartSheet(
            replace(
                chart_drawing.sheet(guide, design, chart, whole, window, lines, look=look),
                scale=whole.scale,
            ),
            _caption(guide, window) if several else "",
            ChartRows(window.low + 1, window.high, round(whole.height, 4), round(len(window.columns) * whole.width, 4)),
        )
        for window in whole.sheets
    )
    shown = _picture(chart, found, pattern.proof)
    return ChartPart(
        anchor=anchor(chart.name),
        title=sentence(text.title if text else guide.say("chart", chart=name_of(chart.name))),
        facts=tuple(_facts(guide, design, chart, ground, centres=len(lines), most_repeats=_most_repeats(found), fabric=fabric)),
        notes=tuple(n.text for n in text.notes if n.kind not in SAID_ABOVE) if text else (),
        cut_note=guide.say("chart/cut", sheets=len(sheets)) if several else "",
        map=chart_drawing.sheet_map(guide, chart, whole) if several else None,
        sheets=sheets,
        key=key(guide, design, chart, text, ground),
        places=chart_places.places(guide, chart, found, design.sizes),
        picture=picture(guide, design, shown, fabric.right_side) if shown else None,
        picture_note=seen(guide, fabric.right_side),
    )


def _fabric(design: Design, chart: Chart, found: tuple[chart_places.ChartUse, ...]) -> Fabric:
    """That of the chart; of a motif, the one in which it stands."""
    for use in found:
        for at in use.sized:
            if at is not None:
                return design.fabric(at[1].fabric or design.piece(use.piece).fabric)
    raise LookupError(chart.name)


def ground_yarn(design: Design, chart: Chart, found: tuple[chart_places.ChartUse, ...]) -> str:
    """The yarn of the cells that name none, of a chart in colours; "" where it is not the same wherever the chart lies, or where
    such cells have symbols, which are read best on white."""
    if not chart.yarns or any(k.cell.kind != "knit" for k in chart.key):
        return ""
    fabrics = {
        at[1].fabric or name for use in found for name in _fabrics_of(design, use.piece) for at in use.sized if at is not None
    }
    worked = [design.fabric(name) for name in fabrics]
    names = {fabric.yarn for fabric in worked}
    return names.pop() if len(names) == 1 and not any(fabric.stripes for fabric in worked) else ""


def _fabrics_of(design: Design, piece: str) -> tuple[str, ...]:
    """Those that a motif may stand in."""
    of = design.piece(piece)
    return (of.fabric, *(zone.fabric for zone in of.zones))


def _picture(chart: Chart, found: tuple[chart_places.ChartUse, ...], proof: Proof) -> FabricPicture | None:
    names = {at[1].fabric for use in found for at in use.sized if at is not None and at[1].fabric} | {chart.name}
    return next((p for p in proof.pictures if p.fabric in names), None)


def _caption(guide: Guide, window: Window) -> str:
    left, low = window.left + 1, window.low + 1
    return guide.say("chart/sheet", sheet=window.letter, left=left, right=window.right, low=low, high=window.high)


def seen(guide: Guide, right_side: str) -> str:
    """Under the picture of a fabric."""
    return guide.say(f"chart/seen-{right_side}")


def _most_repeats(found: tuple[chart_places.ChartUse, ...]) -> int:
    """As often as whole repeats lie side by side, wherever most do."""
    return max((at[1].repeats for use in found for at in use.sized if at is not None), default=0)


def _facts(
    guide: Guide, design: Design, chart: Chart, ground: str, *, fabric: Fabric, centres: int, most_repeats: int
) -> Iterator[Fact]:
    def fact(name: str, text: str) -> Fact:
        return Fact(guide.say(f"chart/{name}"), text)

    yield fact("seen", guide.say("chart/as-you-sit"))
    yield fact("right-side", guide.say(f"chart/right-side-{fabric.right_side}"))
    rows = guide.say("chart/rows", count=len(chart.rows))
    if chart.repeat:
        sides = ((chart.before, "left"), (chart.after, "right"))
        once = tuple(guide.say("chart/once-at", count=count, side=side) for count, side in sides if count)
        first, last = chart.before + 1, chart.before + chart.repeat
        key = "chart/repeated" if most_repeats > 1 else "chart/repeated-upwards"
        yield fact("repeat", guide.say(key, first=first, last=last, rows=rows, once=guide.listed(once)))
    else:
        yield fact("size", guide.say("chart/worked-once", width=chart.width, rows=rows))
    if centres > 1:
        yield fact("wedges", guide.say("chart/wedges-point"))
    if chart.yarns:
        own = yarns.yarn_named(design, fabric.yarn).label
        yield fact("yarns", guide.say("chart/in-colours") if ground else guide.say("chart/white-cells", yarn=own))
    moves = {k.cell.kind for k in chart.key} & {"from left", "from right", "two from left", "two from right"}
    if moves:
        yield fact("slants", guide.say("chart/slants-lean"))


def key(guide: Guide, design: Design, chart: Chart, text: ChartText | None, ground: str) -> tuple[KeyRow, ...]:
    """Every symbol that occurs, in the author's order; `ground` as of the chart drawn."""
    said = dict(text.key) if text else {}
    used = set("".join(chart.rows))
    made = []
    for entry in chart.key:
        if entry.symbol not in used:
            continue
        cell = entry.cell
        yarn = cell.yarn or ground
        label = yarns.yarn_named(design, yarn).label if yarn else ""
        named = guide.say("chart/knit-in", yarn=label) if yarn else symbols.name(guide, cell)
        drawn = chart_drawing.key_drawing(guide, design, chart, cell, ground=ground)
        made.append(KeyRow(drawn, entry.symbol, sentence(named), said.get(entry.symbol, "")))
    return tuple(made)


def other_pictures(guide: Guide, design: Design, parts: tuple[ChartPart, ...], proof: Proof) -> tuple[ChartSheet, ...]:
    """Pictures of fabrics without a chart (stripes), each with its caption."""
    made = []
    for shown in proof.pictures:
        fabric = next((f for f in design.fabrics if f.name == shown.fabric), None)
        if fabric is None or fabric.chart:
            continue
        drawn: Drawing = picture(guide, design, shown, fabric.right_side)
        made.append(
            ChartSheet(
                drawn, guide.say("chart/of-fabric", fabric=sentence(name_of(fabric.name)), seen=seen(guide, fabric.right_side))
            )
        )
    return tuple(made)
