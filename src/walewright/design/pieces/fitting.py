"""Whether what is cut into a piece leaves fabric beside it, in every size; by how much it does not, where it does not."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.design.model import PerSize
from walewright.design.model.per_size import minus, plus
from walewright.design.pieces.outline import NOTHING, OpeningGap, PieceOutline
from walewright.design.reading.places import AmountPlace, concerned
from walewright.record import record
from walewright.report.model import Span
from walewright.report.said import Said, said
from walewright.trade.sides import SIDES, EdgeSide


def fits(gap: OpeningGap, what: Said, outline: PieceOutline, place: AmountPlace) -> bool:
    """Whether a gap leaves fabric on both sides at its parting, at every level it passes and at its end."""
    opening = gap.opening
    sizes = range(len(gap.low))
    passed = [x.height for x in outline.levels if all(gap.low[i] < x.height[i] < gap.high[i] for i in sizes)]
    where = [(said("at-its-top"), gap.high), (said("where-it-parts"), gap.low), *((said("on-the-way"), h) for h in passed)]
    for words, heights in where:
        reach = {s: tuple(gap.reach(s, i, h) for i, h in enumerate(heights)) for s in SIDES}
        kind = "beyond-the-edge/room" if opening.shape == "edges" else "neck-too-wide"
        if not leaves(CutOut(what, opening.origin.span, reach, opening.centre), heights, words, outline, place, kind):
            return False
    return True


@record
class CutOut:
    """Something cut into a piece: how far it reaches left and right of its own middle, which lies `centre` right of the piece's,
    cm."""

    what: Said
    span: Span
    reach: Mapping[EdgeSide, PerSize]
    centre: PerSize


def leaves(
    cut: CutOut, heights: PerSize, where: Said, outline: PieceOutline, place: AmountPlace, kind: str = "beyond-the-edge/room"
) -> bool:
    """Whether at these heights a piece goes on beside what is cut into it; `kind` is the diagnostic where it does not."""
    sizes, reach, centre = place.scope.sizes, cut.reach, cut.centre
    beside = {
        side: tuple(edge + sign * c - r for edge, c, r in zip(outline.position(side, heights), centre, reach[side], strict=True))
        for side, sign in zip(SIDES, (1, -1), strict=True)
    }
    short = tuple(s for s, *room in zip(sizes, *beside.values(), strict=True) if min(room) <= NOTHING)
    if not short:
        return True
    taken = plus(*reach.values())
    centred = not any(centre)
    notes: tuple[Said, ...]
    if centred:
        # The narrower side of the piece decides.
        narrow = tuple(2 * min(a, b) for a, b in zip(*(outline.position(s, heights) for s in SIDES), strict=True))
        notes = (said("piece-wide", where=where, width=place.per_size(narrow)),)
        over = minus(taken, narrow)
    else:
        notes = tuple(_beside(side, where, room, place) for side, room in beside.items())
        over = tuple(max(-min(room), 0.0) for room in zip(*beside.values(), strict=True))
    stitch = 1 / place.fabric.stitches_per_cm if place.fabric else 0.0
    least = tuple(o + stitch * (2 if centred else 1) for o in over)
    by = concerned(sizes, least, short)
    place.findings.report(
        kind,
        (cut.span, "wide"),
        notes=notes,
        helps=("narrower" if centred else "narrower-or-inwards",),
        sizes=place.scope.only(short),
        what=cut.what,
        taken=place.per_size(taken),
        by=by,
    )
    return False


def _beside(side: EdgeSide, where: Said, room: PerSize, place: AmountPlace) -> Said:
    """How much fabric is left on a side; or how far beyond the edge it goes, where it does so in every size."""
    if all(cm < -NOTHING for cm in room):
        return said("beyond", side=side, where=where, over=place.per_size(tuple(-cm for cm in room)))
    return said("beside", side=side, where=where, room=place.per_size(room))
