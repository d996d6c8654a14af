"""Buttons: how many, and where, from the overlap and the buttonholes above."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import zip_longest

from walewright.counted.model import SizedPiece, SizedSlot
from walewright.counted.needles import ends
from walewright.design.model import Buttonholes, Design, Lap, Origin
from walewright.fit.cloth import Cloth
from walewright.fit.girths import Tube, band_on, buttoned, buttonholes, lap_of, narrower, width_of
from walewright.fit.loops import LoopEnd, Walker
from walewright.fit.model import Buttons, ButtonsFrom
from walewright.glue.model import EndAt, Glued
from walewright.record import record, replace
from walewright.trade.sides import SIDES, EdgeSide


@record
class _Column:
    """Buttonholes one above the other: how far up each is, and how far in from the edge that is lapped over, in cm."""

    up: tuple[float, ...]
    across: float


def buttons(design: Design, walkers: Sequence[Walker], tubes: Sequence[Tube]) -> tuple[Buttons, ...]:
    """One for each column of buttonholes in what is laid over."""
    cloths = [walker.cloth for walker in walkers]
    found: list[Buttons] = []
    for lap in (*design.laps, *_reckoned_with(design, tubes)):
        over, under = (_with_holes(design, place) for place in (lap.over, lap.under))
        overlap = lap.width or tuple(w for c in cloths if (w := narrower(c, lap)) is not None)
        by_size = [tuple(_columns(c, over, lap)) for c in cloths] if buttonholes(design, over) else []
        if len(overlap) < len(cloths) or len({len(columns) for columns in by_size}) != 1:
            continue
        for columns in zip(*by_size, strict=True):
            # What lies at that distance from the edge above lies as far from the edge below, counted from the other side.
            below = tuple(o - column.across for o, column in zip(overlap, columns, strict=True))
            counted_from, turned = _counted_from(design, walkers[0].glued, over)
            places = tuple(zip_longest(*(column.up for column in columns)))
            made = Buttons(over, under, tuple(overlap), places, below, counted_from)
            if over == under:
                made = replace(made, over_on=lap.over[0], under_on=lap.under[0])
            found.append(_from_other_end(made, cloths) if turned else made)
    return tuple(found)


def _with_holes(design: Design, place: tuple[str, str]) -> str:
    """What has the buttonholes, or takes the buttons: the band on an edge if it has holes, else what the lap names."""
    band = band_on(design, place)
    return band if buttonholes(design, band) else place[0]


def _reckoned_with(design: Design, tubes: Sequence[Tube]) -> Iterator[Lap]:
    """What laps where the author says nothing of it: what has buttonholes, over what has none and meets it."""
    told: set[tuple[tuple[str, str], tuple[str, str]]] = set()
    for tube in tubes:
        closing = tube.top.closing
        ends = tube.top.loop.ends
        if closing != "lapped" or ends is None or lap_of(design, ends) is not None:
            continue
        over, under = ends if buttoned(design, ends[0]) else ends[::-1]
        places = _place(over, under), _place(under, over)
        if places not in told:
            told.add(places)
            yield Lap(*places, (), _origin(design, over.edge[0]))


def _place(end: LoopEnd, other: LoopEnd) -> tuple[str, str]:
    """What comes to an end, by itself; of one band that comes to both the edge of the piece that it lies along."""
    return end.beneath[:2] if end.edge[0] == other.edge[0] else (end.edge[0], "")


def _origin(design: Design, owner: str) -> Origin:
    band = design.band(owner)
    return band.origin if band is not None else design.piece(owner).origin


def _counted_from(design: Design, glued: Glued, owner: str) -> tuple[ButtonsFrom, bool]:
    """From which end buttons are counted, and whether that is not the one at which the strip begins."""
    line = next(iter(glued.lines_of(owner)), None)
    band = design.band(owner)
    far = band is not None and bool(band.hole_along) and band.along[0] not in band.hole_along
    if far and line is not None and line.left_ends[-1] == "top":
        # They lie towards its other end, and that is a lower one too.
        return "lower", True
    if line is None or line.left_ends[0] in ("top", "bottom"):
        return "lower", _from_above(glued, owner)
    inner = _INNER.get(line.along[0].edge)
    return ("neck", line.left_ends[0] != inner) if inner is not None else ("first", False)


_INNER: Mapping[str, EndAt] = {"shoulder left": "right", "shoulder right": "left"}
"""The end of a shoulder that lies at the neck."""


def _from_above(glued: Glued, owner: str) -> bool:
    """Whether a band, or a strip sewn on, begins at the upper end of what it lies along."""
    for line in glued.lines_of(owner):
        return line.left_ends[0] == "top"
    for seam in glued.seams:
        for own, begins, other in (
            (seam.one, seam.one_begins, seam.other_begins),
            (seam.other, seam.other_begins, seam.one_begins),
        ):
            if own[0].owner == owner and {begins[0], other[0]} == {"top", "bottom"}:
                return True
    return False


def _from_other_end(made: Buttons, cloths: Sequence[Cloth]) -> Buttons:
    lengths = [length_of(c, made.over) for c in cloths]
    by_size = ([p for p in column if p is not None] for column in zip(*made.places, strict=True))
    turned = ([length - p for p in reversed(own)] for own, length in zip(by_size, lengths, strict=True))
    return replace(made, places=tuple(zip_longest(*turned)))


def length_of(cloth: Cloth, owner: str) -> float:
    """How long a strip is: a band along its line, a piece along its rows, with what it has at its ends."""
    band = cloth.band(owner)
    if band is not None:
        return cloth.rim(band[1])
    return cloth.start_adds(owner) + cloth.height(owner, 0.5) + cloth.end_adds(owner)


def _columns(cloth: Cloth, owner: str, lap: Lap) -> Iterator[_Column]:
    """Those of a band, at half its depth, or of a piece, a column for each statement."""
    band = cloth.band(owner)
    if band is not None:
        design, sized = band
        per_cm = cloth.design.edged_in(design.edging).stitches_per_cm
        first = -(sized.stitches // 2)
        up = sorted((h.first + h.last + 1) / 2 / per_cm - first / per_cm for h in sized.holes)
        yield _Column(tuple(up), (width_of(cloth, owner) or 0.0) / 2)
        return
    piece = cloth.sized(owner)
    fabric = cloth.fabrics[owner]
    for holes in cloth.design.piece(owner).buttonholes:
        slots = sorted((s for s in piece.slots if s.origin.span == holes.origin.span), key=lambda s: s.row)
        foot = cloth.start_adds(owner)
        up = [foot + (fabric.height_cm(0, piece.counter(slot.row)) or 0.0) for slot in slots]
        if slots:
            yield _Column(tuple(up), _from_lapped_edge(cloth, owner, holes, slots[0], lap))


def _from_lapped_edge(cloth: Cloth, owner: str, holes: Buttonholes, slot: SizedSlot, lap: Lap) -> float:
    """From the middle of a buttonhole to the edge that the lap names, over the band on it; of a strip to the nearer edge."""
    piece = cloth.sized(owner)
    stitch = cloth.stitch(owner, slot.row)
    from_edges = {side: _stitches_in(piece, slot, side) * stitch for side in SIDES}
    if not lap.over[1]:
        return min(from_edges.values())
    band = band_on(cloth.design, lap.over)
    return from_edges[holes.edge] + (cloth.adds(band) if band != owner else 0.0)


def _stitches_in(piece: SizedPiece, slot: SizedSlot, side: EdgeSide) -> float:
    first, last = ends(piece, slot.row)
    middle = (slot.first + slot.last + 1) / 2
    return middle - first if side == "left" else last + 1 - middle
