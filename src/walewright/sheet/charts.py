"""The charts of the booklet: each with its sheets, its key, where it lies, and its fabric as the bed knitted it."""

from __future__ import annotations

import re
from collections.abc import Iterator

from walewright.design.model import Chart, Design, Fabric
from walewright.figures import chart_drawing, symbols, yarns
from walewright.figures.chart_sheets import cut
from walewright.figures.loops import picture
from walewright.figures.measures import name_of
from walewright.figures.model import Drawing
from walewright.guide.numbers import listed, sentence
from walewright.proof.model import FabricPicture, Proof
from walewright.sheet import chart_places
from walewright.sheet.model import ChartPart, ChartSheet, Fact, KeyRow
from walewright.solve.model import Counts
from walewright.write.model import ChartText, Instructions, NoteKind

RIGHT_SIDE = {
    "knit": "the knit side, which faces away from you at the machine",
    "purl": "the purl side, which faces you at the machine",
}


SAID_ABOVE = (NoteKind.SIDE, NoteKind.REPEAT)
"""Those notes of the plain text that the facts above a drawn chart say in full."""


def charts(design: Design, counts: Counts, instructions: Instructions, proof: Proof) -> tuple[ChartPart, ...]:
    """Those that a piece works, in the order of the source."""
    return tuple(_charts(design, counts, instructions, proof))


def _charts(design: Design, counts: Counts, instructions: Instructions, proof: Proof) -> Iterator[ChartPart]:
    texts = {t.name: t for t in instructions.charts}
    for chart in design.charts:
        found = chart_places.uses(design, counts, chart)
        if found:
            yield _part(design, chart, found, texts.get(chart.name), proof)


def anchor(chart: str) -> str:
    """The place of a chart's page."""
    return "chart-" + re.sub(r"[^A-Za-z0-9_]+", "-", chart)


def _part(
    design: Design, chart: Chart, found: tuple[chart_places.ChartUse, ...], text: ChartText | None, proof: Proof
) -> ChartPart:
    fabric = _fabric(design, chart, found)
    whole = cut(chart.width, len(chart.rows), fabric.stitches_per_cm / fabric.rows_per_cm)
    lines = chart_places.centres(chart, found)
    several = len(whole.sheets) > 1
    sheets = tuple(
        ChartSheet(
            chart_drawing.sheet(design, chart, whole, window, lines),
            f"Sheet {window.letter}: columns {window.left + 1} to {window.right}, rows {window.low + 1} to {window.high}"
            if several
            else "",
        )
        for window in whole.sheets
    )
    shown = _picture(chart, found, proof)
    return ChartPart(
        anchor=anchor(chart.name),
        title=sentence(text.title if text else f"Chart {name_of(chart.name)}"),
        facts=tuple(_facts(design, chart, fabric, len(lines))),
        notes=tuple(n.text for n in text.notes if n.kind not in SAID_ABOVE) if text else (),
        map=chart_drawing.sheet_map(chart, whole) if several else None,
        sheets=sheets,
        key=key(design, chart, text),
        places=chart_places.places(chart, found, design.sizes),
        picture=picture(design, shown, fabric.right_side) if shown else None,
        picture_note=seen(fabric.right_side),
    )


def _fabric(design: Design, chart: Chart, found: tuple[chart_places.ChartUse, ...]) -> Fabric:
    """That of the chart; of a motif, the one in which it stands."""
    for use in found:
        for at in use.sized:
            if at is not None:
                return design.fabric(at[1].fabric or design.piece(use.piece).fabric)
    raise LookupError(chart.name)


def _picture(chart: Chart, found: tuple[chart_places.ChartUse, ...], proof: Proof) -> FabricPicture | None:
    names = {at[1].fabric for use in found for at in use.sized if at is not None and at[1].fabric} | {chart.name}
    return next((p for p in proof.pictures if p.fabric in names), None)


def seen(right_side: str) -> str:
    """Under the picture of a fabric."""
    if right_side == "purl":
        return (
            "The fabric from its right side, the purl side, as it hangs on the bed before you. Drawn from the loops that the "
            "simulated bed made."
        )
    return (
        "The fabric from its right side, the knit side: turned round, so that what lies left on the bed is at the right; "
        "broken lines are yarn that runs behind. Drawn from the loops that the simulated bed made."
    )


def _facts(design: Design, chart: Chart, fabric: Fabric, centres: int) -> Iterator[Fact]:
    yield Fact(
        "Seen", "as you sit before it: the purl side faces you, left is left on the bed, row 1 is knitted first, at the bottom"
    )
    yield Fact("Right side", RIGHT_SIDE[fabric.right_side])
    rows = f"{len(chart.rows)} row{'s' if len(chart.rows) > 1 else ''}"
    if chart.repeat:
        across = f"columns {chart.before + 1} to {chart.before + chart.repeat}, in the heavy box, again and again across"
        once = [f"{count} once at the {side}" for count, side in ((chart.before, "left"), (chart.after, "right")) if count]
        yield Fact("Repeat", f"{across}; {rows}, again and again upwards" + (f"; {listed(once)}" if once else ""))
    else:
        yield Fact("Size", f"{chart.width} stitches by {rows}, worked once")
    if centres > 1:
        yield Fact("Wedges", "above and below point at the columns between which the centre mark lies in one size or another")
    if chart.yarns:
        main = yarns.yarn_named(design, fabric.yarn).label
        yield Fact("Yarns", f"white cells: {main}, or the yarn in use; hatched cells: as the key says")
    moves = {k.cell.kind for k in chart.key} & {"from left", "from right", "two from left", "two from right"}
    if moves:
        yield Fact("Slants", "lean the way the loop is moved on the bed; on the knit side it is the other way round")


def key(design: Design, chart: Chart, text: ChartText | None) -> tuple[KeyRow, ...]:
    """Every symbol that occurs, in the author's order."""
    said = dict(text.key) if text else {}
    used = set("".join(chart.rows))
    made = []
    for entry in chart.key:
        if entry.symbol not in used:
            continue
        cell = entry.cell
        named = f"knit in {yarns.yarn_named(design, cell.yarn).label}" if cell.yarn else symbols.name(cell)
        drawn = chart_drawing.key_drawing(design, chart, cell)
        made.append(KeyRow(drawn, entry.symbol, sentence(named), said.get(entry.symbol, ""), symbols.standard(cell)))
    return tuple(made)


def other_pictures(design: Design, parts: tuple[ChartPart, ...], proof: Proof) -> tuple[ChartSheet, ...]:
    """Pictures of fabrics without a chart (stripes), each with its caption."""
    made = []
    for shown in proof.pictures:
        fabric = next((f for f in design.fabrics if f.name == shown.fabric), None)
        if fabric is None or fabric.chart:
            continue
        drawn: Drawing = picture(design, shown, fabric.right_side)
        made.append(ChartSheet(drawn, f"{sentence(name_of(fabric.name))}. {seen(fabric.right_side)}"))
    return tuple(made)
