"""Which tail is needed where: what is sewn with an end of yarn that is broken off, by the joins and bands that use its edge.

A graft is sewn with the tail of a last row, that of the side named first if it is one. A seam begins with the tail of a last edge
that lies along it, else with that of an edging hung on at its foot, else with that of a last edge at its head; one tail sews one
seam, in the order of the joins. Where a graft ends at the top of a seam, its tail goes on there. A band's tail sews the band's own
end. What no tail sews is sewn with a new length of yarn.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import field

from walewright.counted import counted_piece
from walewright.counted.model import SizedGarment
from walewright.design.model import Design, Fabric
from walewright.glue.model import OPPOSITE, Chain, EndAt, Glued, Place, Seam, start_facing
from walewright.knit.folding import counted
from walewright.knit.joining_steps import Strip
from walewright.knit.lengths import grafting_cm, seam_tail_cm
from walewright.knit.manners import SeamThread
from walewright.knit.strips import end_cm
from walewright.knit.tail_ends import GraftTail, graft_tail, hangs_at, last_edge, last_parts, open_end
from walewright.record import record, replace
from walewright.trade.edge_names import BAND_ENDS, StripAt, part_of_edge
from walewright.trade.joins import JOINS
from walewright.trade.sides import SIDES, EdgeSide

Where = tuple[str, str]
"""(piece, "start", or "end" with a side where the author named one)."""


NOBODY: Strip = ("", "")

MOST_TAILS = 2
"""Whose tails are named in one sentence."""


@record
class SewnWith:
    """What a seam is sewn with, and how long a new length of yarn for it is."""

    thread: SeamThread
    cm: int
    of: Strip = NOBODY
    """The piece or band whose tail it is, and its edging if it is that of one."""


@record
class Tails:
    """What one size's tails are needed for: grafts, and centimetres of seam, by place. `sewing` and `ends`: what sews each seam,
    and each pair of ends of strips, by number."""

    grafts: Mapping[Where, float] = field(default_factory=dict)
    """With the centimetres of the seam that is sewn with the tail after the graft."""
    seams: Mapping[Where, float] = field(default_factory=dict)
    sewing: Mapping[int, SewnWith] = field(default_factory=dict)
    ends: Mapping[int, SewnWith] = field(default_factory=dict)

    def of_end(self, piece: str, edge: str, fabric: Fabric, stitches: int) -> int:
        """Of the `stitches` of a last edge called "end", "shoulder left" or another."""
        places = {(piece, last) for last in (last_edge(edge), "end")}
        if grafts := places & self.grafts.keys():
            return grafting_cm(fabric, stitches, max(self.grafts[place] for place in grafts))
        return seam_tail_cm(max((self.seams.get(place, 0.0) for place in places), default=0.0))

    def of_start(self, piece: str) -> int:
        """Of an edging hung on the start of a piece."""
        return seam_tail_cm(self.seams.get((piece, "start"), 0.0))


def tails(design: Design, glued: Glued, garment: SizedGarment) -> Tails:
    """The tails that one size needs. Copies are knitted alike, so that each has the tail that one of them needs."""
    grafts: dict[Where, float] = {}
    going_on: list[GraftTail] = []
    for made in glued.seams:
        if design.joins[made.join].way == "grafted" or _both_open(design, made):
            grafts |= dict.fromkeys(_open_last(design, made.one) or _open_last(design, made.other), 0.0)
            going_on += filter(None, [graft_tail(design, garment, made)])
    seams: dict[Where, float] = {}
    used: set[tuple[Where, int]] = set()
    sewing: dict[int, SewnWith] = {}
    for number, (made, sized) in enumerate(zip(glued.seams, garment.seams, strict=True)):
        if not JOINS[design.joins[made.join].way].by_needle or _both_open(design, made):
            continue
        length = max(sized.one_cm, sized.other_cm)
        if not made.beyond:
            length += sum(max((end_cm(design, garment, end) for end in ends), default=0.0) for ends in made.over)
        sewing[number] = SewnWith("new", seam_tail_cm(length))
        for where, copy in _hanging(design, garment, made):
            if (where, copy) not in used and where not in grafts:
                used.add((where, copy))
                # Where the seam does not go on along its edging, the tail runs along the end of that all the same.
                first = length + (_start_cm(design, garment, where[0]) if where[1] == "start" and not any(made.over) else 0.0)
                seams[where] = max(seams.get(where, 0.0), first)
                sewing[number] = SewnWith("tail", seam_tail_cm(length), _owner(design, where))
                break
        else:
            for tail in [tail for tail in going_on if _goes_on(garment, tail, made)][:1]:
                going_on.remove(tail)
                grafts[tail.piece, tail.last] = max(grafts[tail.piece, tail.last], length)
                sewing[number] = SewnWith("tail", seam_tail_cm(length), (tail.piece, ""))
    return Tails(grafts, seams, sewing, dict(_ends(design, glued, garment, used)))


def _owner(design: Design, where: Where) -> Strip:
    """Whose tail hangs there: an edging's where one is knitted on."""
    owner, last = where
    if design.band(owner) is not None:
        return owner, ""
    piece = design.piece(owner)
    at: StripAt = "start" if last == "start" else "end"
    return owner, next((name for name, there in piece.strips if there == at), "")


def _start_cm(design: Design, garment: SizedGarment, piece: str) -> float:
    return counted_piece(design, garment.piece(piece)).edging_cm


def _goes_on(garment: SizedGarment, tail: GraftTail, seam: Seam) -> bool:
    """Whether a seam has an end where a graft's tail comes out."""
    for place, end, _ in _outer(seam):
        side = _side(garment, place)
        name = place.edge if side is None or place.edge.endswith(f" {side}") else f"{place.edge} {side}"
        if end == "top" and (place.owner, place.copy, name) == (tail.piece, tail.copy, tail.out_edge):
            return True
    return False


def _ends(design: Design, glued: Glued, garment: SizedGarment, used: set[tuple[Where, int]]) -> Iterator[tuple[int, SewnWith]]:
    """What sews each pair of ends: the tail of a band that hangs there and is not `used`."""
    for number, pair in enumerate(glued.ends):
        of_bands = [end for end in (pair.one, pair.other) if _band_tail(design, garment, end)]
        free = [((end.owner, end.edge), end.copy) for end in of_bands if ((end.owner, end.edge), end.copy) not in used]
        used.update(free[:1])
        length = max(end_cm(design, garment, end) for end in (pair.one, pair.other))
        own = (free[0][0][0], "") if free else NOBODY
        yield number, SewnWith("tail" if free else "new", seam_tail_cm(length), own)


def _band_tail(design: Design, garment: SizedGarment, end: Place) -> bool:
    """Whether the tail of a band hangs at that end of it: chained off it hangs at the first one after an even number of rows, where
    the carriage is at the right."""
    band = design.band(end.owner)
    edging = design.edging(band.edging) if band is not None else None
    if edging is None or edging.cast_off != "chain":
        return False
    even = counted(edging, next(b.rows for b in garment.bands if b.name == end.owner)) % 2 == 0
    return end.edge == BAND_ENDS[0 if even else 1]


def agreed(needed: Sequence[Tails]) -> tuple[Tails, ...]:
    """The tails of sizes that are put together alike, so that every seam is told in the same words: where it is sewn with a tail in
    some of them only, both ways."""
    sewing, ends = (_alike([of.sewing for of in needed]), _alike([of.ends for of in needed]))
    return tuple(replace(of, sewing=a, ends=b) for of, a, b in zip(needed, sewing, ends, strict=True))


def _alike(sizes: Sequence[Mapping[int, SewnWith]]) -> list[dict[int, SewnWith]]:
    unlike = {n for n in sizes[0] if len({with_[n].thread for with_ in sizes}) > 1}
    others = {n for n in sizes[0] if len({with_[n].of for with_ in sizes}) > 1}
    owned = [{n: replace(s, of=NOBODY) if n in others else s for n, s in with_.items()} for with_ in sizes]
    return [{n: replace(s, thread="either") if n in unlike else s for n, s in with_.items()} for with_ in owned]


def places(seam: Seam) -> Chain:
    """All edges of a seam."""
    return (*seam.one, *seam.other)


def _both_open(design: Design, seam: Seam) -> bool:
    """No seam holds open loops: what is joined so is grafted."""
    return design.joins[seam.join].way == "sewn" and all(open_end(design, place) for place in places(seam))


def _open_last(design: Design, side: Chain) -> list[Where]:
    return [(place.owner, last_edge(place.edge)) for place in side if open_end(design, place)]


def _outer(seam: Seam) -> Iterator[tuple[Place, EndAt, bool]]:
    """The edges at both ends of a seam's sides, the end at which each lies there, and whether it is all of that side."""
    for chain, begins in ((seam.one, seam.one_begins), (seam.other, seam.other_begins)):
        if chain:
            yield chain[0], begins[0], len(chain) == 1
            yield chain[-1], OPPOSITE[begins[-1]], len(chain) == 1


def _hanging(design: Design, garment: SizedGarment, seam: Seam) -> Iterator[tuple[Where, int]]:
    """Where a tail hangs at an end of the seam, and of which copy, the best place first."""
    for place, end, alone in _outer(seam):
        last = last_edge(place.edge)
        if last and hangs_at(design, garment.piece(place.owner), last) == end:
            yield (place.owner, last), place.copy
        # A band's tail is as long as its own end asks for.
        if alone and _band_tail(design, garment, place):
            yield (place.owner, place.edge), place.copy
    of_pieces = [(place, end) for place, end, _ in _outer(seam) if design.band(place.owner) is None]
    for place, end in of_pieces:
        side = _side(garment, place)
        at_foot = end == "bottom" or design.piece(place.owner).strip_at(place.edge) == "start"
        if side and at_foot and _at_its_foot(design, garment, place, side):
            yield (place.owner, "start"), place.copy
    for place, end in of_pieces:
        side = _side(garment, place)
        if side and end == "top" and _run(garment, place, side, -1):
            sized = garment.piece(place.owner)
            last = list(last_parts(sized))[0 if side == "left" else -1]
            if hangs_at(design, sized, last) == side:
                yield (place.owner, last), place.copy


def _at_its_foot(design: Design, garment: SizedGarment, place: Place, side: EdgeSide) -> bool:
    """Whether the tail of an edging hung on the start of the piece hangs at the foot of an edge. A chain runs from the carriage,
    which is at the right after an even number of rows, to the other end: the left needle, where the piece's right edge is when its
    purl side was to the knitter. By back-stitch the tail is sewn up."""
    piece = design.piece(place.owner)
    edging = design.edging(piece.start_edging) if piece.start_edging is not None else None
    if edging is None or edging.when != "after" or edging.cast_off != "chain":
        return False
    even = counted(edging, garment.piece(piece.name).edging_rows) % 2 == 0
    at_left = "right" if start_facing(design, piece.name) == "purl" else "left"
    return (side == at_left) == even and (piece.strip_at(place.edge) == "start" or _run(garment, place, side, 0))


def _side(garment: SizedGarment, place: Place) -> EdgeSide | None:
    """The side of the bed where a row edge lay, None of any other."""
    if place.edge in BAND_ENDS:
        return None
    sized = garment.piece(place.owner)
    name = _called(place.edge)
    for side, runs in zip(SIDES, (sized.left, sized.right), strict=True):
        if place.edge.endswith(f" {side}") or (name == place.edge and any(run.name == name for run in runs)):
            return side
    return None


def _run(garment: SizedGarment, place: Place, side: EdgeSide, number: int) -> bool:
    """Whether the edge is the first or the last one of its side that has a name."""
    sized = garment.piece(place.owner)
    named = [run.name for run in (sized.left if side == "left" else sized.right) if run.name]
    return bool(named) and named[number] == _called(place.edge)


def _called(edge: str) -> str:
    """The name that the author gave to an edge on both sides, or on one."""
    return part_of_edge(edge).name
