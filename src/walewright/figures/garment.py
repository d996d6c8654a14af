"""The line drawing on the cover: the garment made up, from the outlines of its own pieces in a middle size.

Seen from the front: a body with its sleeves, which are the pieces that are joined to the body's edge and to another's, or one
that is knitted with them from side to side. Whatever forms no body is laid out as a group to one scale, what is joined to
a tube as it looks when made up.
"""

from __future__ import annotations

from walewright.design.model import Design
from walewright.figures.banded import Rim, rims
from walewright.figures.collars import NO_COLLARS, collars_of
from walewright.figures.group import group
from walewright.figures.measures import MeasuredPiece
from walewright.figures.model import Drawing
from walewright.figures.sideways import draw_sideways, sideways
from walewright.figures.trunks import Trunk, trunk_of
from walewright.figures.worn import inner_names, worn
from walewright.glue.model import GluedSizes
from walewright.guide.model import Guide
from walewright.solve.model import Counts


def middle_size(counts: Counts) -> int:
    """The size that drawings show."""
    return (len(counts.sizes) - 1) // 2


def _edged(design: Design, counts: Counts, trunk: Trunk, size: int) -> dict[str, tuple[Rim, ...]]:
    """The bands on the outer edges of the fronts, by the names of these: those of necks and between fronts are drawn with them."""
    inner = inner_names(trunk, size)
    found = {}
    for placed in trunk.fronts:
        necks = {opening.name for opening in placed.piece.piece.openings}
        found[placed.name] = rims(design, counts, placed.piece, size, inner.get(placed.name, set()) | necks)
    return found


def cover(
    guide: Guide, design: Design, counts: Counts, pieces: tuple[MeasuredPiece, ...], glued: GluedSizes | None = None
) -> Drawing:
    """The garment in its middle size; without what meets what (`glued`) nothing is made up but a body."""
    size = middle_size(counts)
    named = counts.sizes[size].size if len(counts.sizes) > 1 else ""
    title = guide.say("drawing/worn", title=design.title, size=named)
    own = glued.in_size(size) if glued is not None else None
    trunk = trunk_of(design, counts, pieces, size)
    if trunk is not None:
        collars = collars_of(design, own, pieces, trunk, size) if own is not None else NO_COLLARS
        return worn(design, pieces, trunk, size, title, collars, _edged(design, counts, trunk, size))
    across = sideways(design, counts, pieces, size)
    if across is not None:
        return draw_sideways(design, across, size, title)
    return group(design, counts, own, pieces, size, guide.say("drawing/group", title=design.title, size=named))
