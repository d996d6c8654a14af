"""The schematics of all pieces, and the figures of lettered ones as a table beside them."""

from __future__ import annotations

from collections.abc import Iterable

from walewright.design.model import Design
from walewright.figures.garment import middle_size
from walewright.figures.measures import MeasuredPiece, name_of
from walewright.figures.schematic import drawing, fitting_scale, labels, lettered
from walewright.guide.model import Guide
from walewright.guide.numbers import inches
from walewright.sheet.model import Row, RowGroup, SizesTable, TableCell
from walewright.sheet.parts import Drawings
from walewright.solve.model import Counts


def schematics(guide: Guide, design: Design, pieces: tuple[MeasuredPiece, ...], counts: Counts, units: str) -> Drawings:
    """Of each piece that needs one of its own: its drawing, and the legend if that carries letters."""
    at = design.at(middle_size(counts))
    scale = fitting_scale(at, pieces)
    shown = (p for p in pieces if not drawn_turned(guide, p, pieces))
    return {p.piece.name: (drawing(guide, at, p, units, scale), legend(guide, p, design.sizes, units)) for p in shown}


def legend(guide: Guide, piece: MeasuredPiece, sizes: tuple[str, ...], units: str) -> SizesTable | None:
    """The figures of the letters, or None where the drawing carries them itself."""
    if not lettered(piece, sizes):
        return None
    rows = tuple(
        Row(m.label(guide), tuple(_cell(guide, cm, units) for cm in m.values), key=key)
        for (key,), m in zip(labels(guide, piece, sizes, units), piece.measures, strict=True)
    )
    caption = guide.say("legend", piece=name_of(piece.piece.name), unit=guide.say(f"unit/{units}"))
    return SizesTable(caption, sizes, (RowGroup("", rows),))


def drawn_turned(guide: Guide, piece: MeasuredPiece, pieces: Iterable[MeasuredPiece]) -> bool:
    """Whether the drawing of another piece, turned round, and its figures hold for `piece`, which needs none of its own."""
    model = next((p for p in pieces if p.piece.name == piece.piece.mirror_of and p.piece.mirror_of is None), None)
    return model is not None and _shown(guide, model) == _shown(guide, piece)


def _shown(guide: Guide, piece: MeasuredPiece) -> tuple[object, ...]:
    """What a drawing shows besides the outline: how long everything is, and how much lies in it."""
    each = (laid.sized for laid in piece.laid)
    inside = tuple((len(s.slots), len(s.zones), len(s.charts), len(s.openings), len(s.wedges)) for s in each)
    return inside, tuple((m.place, m.unit, tuple(map(guide.cm, m.values))) for m in piece.measures)


def _cell(guide: Guide, cm: float, units: str) -> TableCell:
    if units == "both":
        return TableCell(guide.cm(cm), f"{inches(cm)}″")
    return TableCell(inches(cm) if units == "in" else guide.cm(cm))
