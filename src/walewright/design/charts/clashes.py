"""Patterns and hand work that cannot stand together on the same needles in the same rows."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import combinations

from walewright.design.charts.areas import Area, AreaKind, Ground
from walewright.design.model import Buttonholes, PerSize, Piece
from walewright.design.model.per_size import minus
from walewright.design.pieces.outline import NOTHING
from walewright.report.model import Span
from walewright.report.said import Said, said

ReachAcross = tuple[PerSize, PerSize]

BY_THE_COUNTER: Mapping[AreaKind, bool] = {"chart": True, "rib": False, "stripes": True}
"""Whether it goes by the row counter: rows worked again would bring it out of step."""


def apart(piece: Piece, found: tuple[Area, ...], ground: Ground) -> bool:
    """Whether all patterns of a piece leave each other alone, and all that is worked once leaves charts alone; told where not."""
    sound = True
    for one, other in combinations(found, 2):
        sound = _two(piece, one, other, ground) and sound
    for area in found:
        for thing in _once(piece, area, ground):
            sound = False
            what, span, sizes, proposal = thing
            _tell(piece, (what, span), (area.what, area.span), sizes, proposal, ground)
    return sound


def _two(piece: Piece, one: Area, other: Area, ground: Ground) -> bool:
    """Whether two patterns can stand together."""
    if one.kind != "chart":
        one, other = other, one
    shared = one.shares_rows(other.low, other.high, ground.sizes)
    # Of two ribs each latches up its own wales of the same rows.
    by_hand = one.kind == "chart" or one.kind == other.kind == "rib"
    if not by_hand or not shared or (one.reach is None and other.reach is None):
        return True
    meet = one.meets(other.reach)
    both = tuple(s for s, m in zip(ground.sizes, meet, strict=True) if m and s in shared)
    proposal = _proposal(one, other, shared, both, ground)
    if proposal is None:
        return True
    words, sizes = proposal
    _tell(piece, (one.what, one.span), (other.what, other.span), sizes, words, ground)
    return False


def _proposal(
    one: Area, other: Area, shared: tuple[str, ...], both: tuple[str, ...], ground: Ground
) -> tuple[Said, tuple[str, ...]] | None:
    """How to mend two patterns that share rows (`both`: needles too), and the sizes concerned; None when nothing is wrong."""
    if other.kind == "stripes":
        return said("plain-or-drawn"), shared
    if other.kind == "rib":
        return (said("end-or-move"), both) if both else None
    pictured = next((a for a in (one, other) if a.chart is not None and a.chart.picture), None)
    if pictured is not None:
        return said("end-before-picture", picture=pictured.what), shared
    if len({y for a in (one, other) if a.chart is not None for y in a.chart.yarns}) > 1:
        return said("same-yarn"), shared
    if not both:
        return None
    whole = next((a for a in (one, other) if a.reach is None), None)
    if whole is not None:
        local = other if whole is one else one
        late = _begins_within(whole, local, both, ground)
        return (said("within", local=local.what, whole=whole.what), late) if late else None
    motifs = [a for a in (one, other) if a.fabric is None]
    if len(motifs) == 1:
        panel = other if motifs[0] is one else one
        late = _begins_within(panel, motifs[0], both, ground)
        return (said("after", local=motifs[0].what, panel=panel.what), late) if late else None
    return said("move-or-end"), both


def _begins_within(later: Area, area: Area, sizes: tuple[str, ...], ground: Ground) -> tuple[str, ...]:
    """The sizes in which `later` begins in the rows of `area`, which it would cover."""
    return tuple(
        s
        for s, at, low, high in zip(ground.sizes, later.low, area.low, area.high, strict=True)
        if s in sizes and low + NOTHING < at < high - NOTHING
    )


def _once(piece: Piece, area: Area, ground: Ground) -> Iterator[tuple[Said, Span, tuple[str, ...], Said]]:
    """What is worked once, or rows worked again, in a pattern: what, where, sizes, and how to mend it."""
    if BY_THE_COUNTER[area.kind]:
        for repeat in piece.repeats:
            sizes = area.shares_rows(ground.height(repeat.from_level), ground.height(repeat.to_level), ground.sizes)
            if sizes:
                yield (
                    said("repeat-of-rows"),
                    repeat.origin.span,
                    sizes,
                    said("plain-or-drawn-often") if area.kind == "chart" else said("plain"),
                )
    if area.kind != "chart":
        return
    for slot in piece.slots:
        at = ground.height(slot.level)
        reach = _about(slot.centre, slot.width)
        yield from _cut(said("slot", slot=slot.name), slot.origin.span, low=at, high=at, reach=reach, area=area, ground=ground)
    for holes in piece.buttonholes:
        low, high = ground.height(holes.from_level), ground.height(holes.to_level)
        reach_of_holes = _holes(holes, low, ground)
        yield from _cut(said("row-of-buttonholes"), holes.origin.span, low, high, reach=reach_of_holes, area=area, ground=ground)
    for run in piece.left:
        if run.path == "across":
            at = ground.height(run.to_level)
            sizes = area.shares_rows(at, at, ground.sizes)
            if sizes:
                yield said("change-across"), run.origin.span, sizes, said("end-or-begin")


def _cut(
    what: Said, span: Span, low: PerSize, high: PerSize, reach: ReachAcross, area: Area, ground: Ground
) -> Iterator[tuple[Said, Span, tuple[str, ...], Said]]:
    shared = area.shares_rows(low, high, ground.sizes)
    sizes = tuple(s for s, m in zip(ground.sizes, area.meets(reach), strict=True) if m and s in shared)
    if sizes:
        yield what, span, sizes, said("elsewhere-or-beside") if area.reach is not None else said("elsewhere")


def _about(centre: PerSize, width: PerSize) -> ReachAcross:
    pairs = tuple(zip(centre, width, strict=True))
    return tuple(c - w / 2 for c, w in pairs), tuple(c + w / 2 for c, w in pairs)


def _holes(holes: Buttonholes, low: PerSize, ground: Ground) -> ReachAcross:
    """From the outer side of buttonholes to their inner side, by the edge where they begin."""
    fabric = ground.cloth.own
    wide = holes.stitches / fabric.stitches_per_cm if fabric is not None else 0.0
    edge = ground.outline.position(holes.edge, low)
    outer = minus(edge, holes.distance)
    inner = tuple(o - wide for o in outer)
    if holes.edge == "right":
        return inner, outer
    return tuple(-o for o in outer), tuple(-i for i in inner)


def _tell(
    piece: Piece, one: tuple[Said, Span], other: tuple[Said, Span], sizes: tuple[str, ...], proposal: Said, ground: Ground
) -> None:
    place = ground.cloth.place
    place.findings.report(
        "patterns-clash",
        (one[1], "one"),
        (other[1], "other"),
        helps=(proposal,),
        sizes=place.scope.only(sizes),
        one=one[0],
        other=other[0],
        piece=piece.name,
    )
