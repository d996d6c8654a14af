"""The schematics of all pieces, and the figures of lettered ones as a table beside them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from walewright.design.model import Design
from walewright.figures.garment import middle_size
from walewright.figures.measures import DrawnMeasure, MeasuredPiece, name_of
from walewright.figures.necks import differ_by_necks, with_neck
from walewright.figures.schematic import PRINTED, fitting_scale, labels, schematic
from walewright.guide.model import Guide
from walewright.guide.numbers import inches, sentence
from walewright.sheet.model import Row, RowGroup, SizesTable, TableCell
from walewright.sheet.parts import Drawings
from walewright.solve.model import Counts


def schematics(
    guide: Guide,
    design: Design,
    pieces: tuple[MeasuredPiece, ...],
    counts: Counts,
    units: str,
    image_of: Mapping[str, str],
    printed: float = PRINTED,
) -> Drawings:
    """Of each piece that needs one of its own: its drawing, `printed` mm wide at most on paper, and the legend if that carries
    letters. `image_of`: of which piece before them some are the mirror images."""
    at = design.at(middle_size(counts))
    scale = fitting_scale(at, pieces)
    together = {model: name for name, model in drawn_with(pieces).items()}
    by_name = {p.piece.name: p for p in pieces}
    own = (p for p in pieces if p.piece.name not in together.values() and not drawn_turned(guide, p, by_name, image_of))
    shown = (with_neck(p, by_name[together[p.piece.name]]) if p.piece.name in together else p for p in own)
    made = {p: schematic(guide, at, p, units, scale, printed) for p in shown}
    return {p.piece.name: (of.drawing, legend(guide, p, design.sizes, units, of.lettered)) for p, of in made.items()}


def legend(guide: Guide, piece: MeasuredPiece, sizes: tuple[str, ...], units: str, lettered: bool) -> SizesTable | None:
    """The figures of the letters, or None where the drawing carries them itself."""
    if not lettered:
        return None
    found: dict[str, list[DrawnMeasure]] = {}
    for (key,), measure in zip(labels(guide, piece, units, lettered), piece.measures, strict=True):
        found.setdefault(key, []).append(measure)
    rows = tuple(
        Row(_told(guide, alike), tuple(_cell(guide, cm, units) for cm in alike[0].values), key=key) for key, alike in found.items()
    )
    caption = guide.say("legend", piece=name_of(piece.piece.name), unit=guide.say(f"unit/{units}"))
    return SizesTable(caption, sizes, (RowGroup("", rows),))


def _told(guide: Guide, alike: Sequence[DrawnMeasure]) -> str:
    """What one letter stands for."""
    return sentence(guide.listed([measure.spoken(guide) for measure in alike]))


def drawn_with(pieces: Sequence[MeasuredPiece]) -> dict[str, str]:
    """The pieces that lie on the drawing of another one, which differs by its neck alone, each with the name of that. A drawing
    that carries figures has no room for two necks."""
    found: dict[str, str] = {}
    mirrored = {p.piece.mirror_of for p in pieces} | {p.piece.name for p in pieces if p.piece.mirror_of is not None}
    free = [p for p in pieces if p.piece.name not in mirrored and len(p.laid) > 1]
    for number, piece in enumerate(free):
        models = (p for p in free[:number] if p.piece.name not in (*found, *found.values()) and differ_by_necks(p, piece))
        model = next(models, None)
        if model is not None:
            found[piece.piece.name] = model.piece.name
    return found


def drawn_turned(guide: Guide, piece: MeasuredPiece, pieces: Mapping[str, MeasuredPiece], image_of: Mapping[str, str]) -> bool:
    """Whether the drawing of another piece before it, turned round, and its figures hold for `piece`, which needs none of its
    own."""
    model = image_of.get(piece.piece.name, "")
    return bool(model) and model not in image_of and _shown(guide, pieces[model]) == _shown(guide, piece)


def _shown(guide: Guide, piece: MeasuredPiece) -> tuple[object, ...]:
    """What a drawing shows besides the outline: how long everything is, and how much lies in it."""
    each = (laid.sized for laid in piece.laid)
    inside = tuple((len(s.slots), len(s.zones), len(s.charts), len(s.openings), len(s.wedges)) for s in each)
    return inside, tuple((m.place, m.unit, tuple(map(guide.cm, m.values))) for m in piece.measures)


def _cell(guide: Guide, cm: float, units: str) -> TableCell:
    if units == "both":
        return TableCell(guide.cm(cm), f"{inches(cm)}″")
    return TableCell(inches(cm) if units == "in" else guide.cm(cm))
