"""The line drawing on the cover: the garment made up, from the outlines of its own pieces in a middle size.

Seen from the front: a body with its sleeves, which are the pieces that are joined to the body's edge and to another's, or one
that is knitted with them from side to side. Whatever forms no body is laid out as a group to one scale, what is joined to
a tube as it looks when made up.
"""

from __future__ import annotations

from walewright.design.model import Design
from walewright.figures.banded import Rim, rims
from walewright.figures.collars import collars_of
from walewright.figures.drawn import DrawnGarment, drawn
from walewright.figures.evened import evened
from walewright.figures.group import group
from walewright.figures.measures import MeasuredPiece
from walewright.figures.model import Drawing
from walewright.figures.sideways import draw_sideways, sideways
from walewright.figures.trunks import Trunk, trunk_of
from walewright.figures.worn import inner_names, worn
from walewright.glue.model import GluedSizes
from walewright.guide.model import Guide
from walewright.record import replace
from walewright.solve.model import Counts


def middle_size(counts: Counts) -> int:
    """The size that drawings show."""
    return (len(counts.sizes) - 1) // 2


def _edged(garment: DrawnGarment, trunk: Trunk) -> dict[str, tuple[Rim, ...]]:
    """The bands on the outer edges of the fronts, by the names of these: those of necks and between fronts are drawn with them."""
    inner = inner_names(trunk)
    found = {}
    for placed in trunk.fronts:
        necks = {opening.name for opening in placed.piece.piece.openings}
        found[placed.name] = rims(garment, placed.piece, inner.get(placed.name, set()) | necks)
    return found


def cover(
    guide: Guide, design: Design, counts: Counts, pieces: tuple[MeasuredPiece, ...], glued: GluedSizes | None = None
) -> Drawing:
    """The garment in its middle size; without what meets what (`glued`) nothing is made up but a body."""
    size = middle_size(counts)
    flat = drawn(design, counts, pieces, size, glued.in_size(size) if glued is not None else None)
    garment = replace(flat, pieces=tuple(map(evened, flat.pieces)))
    title = guide.say("drawing/worn", title=design.title, size=garment.title_size)
    trunk = trunk_of(garment)
    if trunk is not None:
        return worn(garment, trunk, title, collars_of(garment, trunk), _edged(garment, trunk))
    across = sideways(garment)
    if across is not None:
        return draw_sideways(garment, across, title)
    return group(garment, guide.say("drawing/group", title=design.title, size=garment.title_size))
