"""Buttons: how many, and where, from the overlap and the buttonholes above."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.design.model import Design, PerSize
from walewright.fit.cloth import Cloth
from walewright.fit.girths import buttonholes, narrower, width_of
from walewright.fit.model import Buttons


def buttons(design: Design, cloths: Sequence[Cloth]) -> tuple[Buttons, ...]:
    """One for each lap whose upper strip has buttonholes."""
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
        found.append(Buttons(over, under, tuple(overlap), places, below))
    return tuple(found)


def _places(cloth: Cloth, owner: str) -> list[tuple[float, float]]:
    """(cm from the beginning, share of the width from its line or left edge) of each buttonhole."""
    band = cloth.band(owner)
    if band is not None:
        design, sized = band
        per_cm = cloth.design.fabric(cloth.design.edging(design.edging).fabric).stitches_per_cm
        first = -(sized.stitches // 2)
        return sorted(((h.first + h.last + 1) / 2 / per_cm - first / per_cm, 0.5) for h in sized.holes)
    piece = cloth.sized(owner)
    named = {h.edge for h in cloth.design.piece(owner).buttonholes}
    slots = [s for s in piece.slots if s.taken in ("cast-off", "eyelet")]
    up = cloth.row_height(owner)
    left = -piece.start_left
    return sorted((s.row * up, ((s.first + s.last + 1) / 2 - left) / piece.start) for s in slots) if named else []


def _from_outer_edge(cloth: Cloth, owner: str, share: float) -> float:
    width = width_of(cloth, owner) or 0.0
    return min(share, 1 - share) * width
