"""Buttons: how many, and where, from the overlap and the buttonholes above."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from walewright.design.model import Design, PerSize
from walewright.fit.cloth import Cloth
from walewright.fit.girths import buttonholes, narrower, width_of
from walewright.fit.loops import Walker
from walewright.fit.model import Buttons
from walewright.glue.model import Glued


def buttons(design: Design, walkers: Sequence[Walker]) -> tuple[Buttons, ...]:
    """One for each lap whose upper strip has buttonholes."""
    cloths = [walker.cloth for walker in walkers]
    found: list[Buttons] = []
    for lap in design.laps:
        over, under = lap.over[0], lap.under[0]
        if not buttonholes(design, over):
            continue
        overlap = lap.width or tuple(w for c in cloths if (w := narrower(c, lap)) is not None)
        holes = [_places(c, over) for c in cloths]
        if len(overlap) < len(cloths) or not holes or len({len(h) for h in holes}) != 1:
            continue
        places = tuple(tuple(h[i][0] for h in holes) for i in range(len(holes[0])))
        across: PerSize = tuple(_from_outer_edge(c, over, h[0][1]) for c, h in zip(cloths, holes, strict=True))
        # What lies at that distance from the edge above lies as far from the edge below, counted from the other side.
        below = tuple(o - a for o, a in zip(overlap, across, strict=True))
        made = Buttons(over, under, tuple(overlap), places, below)
        found.append(_from_below(made, cloths) if _from_above(walkers[0].glued, over) else made)
    return tuple(found)


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


def _from_below(made: Buttons, cloths: Sequence[Cloth]) -> Buttons:
    lengths = [length_of(c, made.over) for c in cloths]
    turned = tuple(tuple(length - p for length, p in zip(lengths, place, strict=True)) for place in reversed(made.places))
    return replace(made, places=turned)


def length_of(cloth: Cloth, owner: str) -> float:
    """How long a strip is: a band along its line, a piece along its rows."""
    band = cloth.band(owner)
    return cloth.rim(band[1]) if band is not None else cloth.height(owner, 0.5)


def _places(cloth: Cloth, owner: str) -> list[tuple[float, float]]:
    """(cm from the beginning, share of the width from its line or left edge) of each buttonhole."""
    band = cloth.band(owner)
    if band is not None:
        design, sized = band
        per_cm = cloth.design.edged_in(design.edging).stitches_per_cm
        first = -(sized.stitches // 2)
        return sorted(((h.first + h.last + 1) / 2 / per_cm - first / per_cm, 0.5) for h in sized.holes)
    piece = cloth.sized(owner)
    named = {h.edge for h in cloth.design.piece(owner).buttonholes}
    slots = [s for s in piece.slots if s.taken in ("cast-off", "eyelet")]
    fabric = cloth.fabrics[owner]
    left = -piece.start_left
    if not named:
        return []
    up = {slot.row: fabric.height_cm(0, piece.counter(slot.row)) or 0.0 for slot in slots}
    return sorted((up[s.row], ((s.first + s.last + 1) / 2 - left) / piece.start) for s in slots)


def _from_outer_edge(cloth: Cloth, owner: str, share: float) -> float:
    width = width_of(cloth, owner) or 0.0
    return min(share, 1 - share) * width
