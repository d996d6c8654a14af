"""The figures of a lettered schematic, as a table beneath it."""

from __future__ import annotations

from walewright.figures.measures import DrawnMeasure, MeasuredPiece, name_of
from walewright.figures.schematic import labels, lettered
from walewright.guide.numbers import cm, inches
from walewright.sheet.model import Row, RowGroup, SizesTable, TableCell


def legend(piece: MeasuredPiece, sizes: tuple[str, ...], units: str) -> SizesTable | None:
    """The figures of the letters, or None where the drawing carries them itself."""
    if not lettered(piece, sizes):
        return None
    rows = tuple(
        Row(m.label, tuple(_cell(m, i, units) for i in range(len(sizes))), key=key, note=_unit_note(m))
        for (key,), m in zip(labels(piece, sizes, units), piece.measures, strict=True)
    )
    on_bed = (
        Row("Most stitches", tuple(TableCell(str(s.widest)) for s in piece.sized)),
        Row("Rows in all", tuple(TableCell(str(s.counter(s.rows))) for s in piece.sized)),
    )
    unit = {"cm": "centimetres", "in": "inches", "both": "centimetres and inches"}[units]
    caption = f"Measurements of the {name_of(piece.piece.name)} in {unit}; stitches and rows in small type"
    return SizesTable(caption, sizes, (RowGroup("", (*rows, *on_bed)),))


def _unit_note(measure: DrawnMeasure) -> str:
    return {"st": "st", "rows": "rows", "": ""}[measure.unit]


def _cell(measure: DrawnMeasure, size: int, units: str) -> TableCell:
    value = measure.values[size]
    under = [str(measure.counts[size])] if measure.counts else []
    if units == "both":
        under.insert(0, f"{inches(value)}″")
    return TableCell(inches(value) if units == "in" else cm(value), " · ".join(under))
