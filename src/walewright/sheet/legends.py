"""The figures of a lettered schematic, as a table beneath it."""

from __future__ import annotations

from walewright.figures.measures import DrawnMeasure, MeasuredPiece, name_of
from walewright.figures.schematic import labels, lettered
from walewright.guide.model import Guide
from walewright.guide.numbers import cm, inches
from walewright.sheet.model import Row, RowGroup, SizesTable, TableCell


def legend(guide: Guide, piece: MeasuredPiece, sizes: tuple[str, ...], units: str) -> SizesTable | None:
    """The figures of the letters, or None where the drawing carries them itself."""
    if not lettered(piece, sizes):
        return None
    rows = tuple(
        Row(m.label(guide), tuple(_cell(m, i, units) for i in range(len(sizes))), key=key, note=_unit_note(guide, m))
        for (key,), m in zip(labels(guide, piece, sizes, units), piece.measures, strict=True)
    )
    on_bed = (
        Row(guide.say("legend/most-stitches"), tuple(TableCell(str(s.widest)) for s in piece.sized)),
        Row(guide.say("legend/rows-in-all"), tuple(TableCell(str(s.counter(s.rows))) for s in piece.sized)),
    )
    caption = guide.say("legend", piece=name_of(piece.piece.name), unit=guide.say(f"unit/{units}"))
    return SizesTable(caption, sizes, (RowGroup("", (*rows, *on_bed)),))


def _unit_note(guide: Guide, measure: DrawnMeasure) -> str:
    return guide.say(f"legend/{measure.unit}") if measure.unit else ""


def _cell(measure: DrawnMeasure, size: int, units: str) -> TableCell:
    value = measure.values[size]
    under = [str(measure.counts[size])] if measure.counts else []
    if units == "both":
        under.insert(0, f"{inches(value)}″")
    return TableCell(inches(value) if units == "in" else cm(value), " · ".join(under))
