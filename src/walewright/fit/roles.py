"""Openings that only the source's own measures of the body tell: a waist is one where hips are to be fitted, a leg's end where a
foot is."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.design.model import Design
from walewright.fit.girths import Tube
from walewright.fit.loops import Walker
from walewright.fit.model import ROWS, Ring
from walewright.fit.rings import edges_below
from walewright.record import replace


def with_roles(design: Design, walker: Walker, tubes: Sequence[Tube], rings: tuple[Ring, ...]) -> tuple[Ring, ...]:
    """A garment with an armhole or a sleeve has neither."""
    to_fit = {m.body for m in design.measurements if m.to_fit or m.published}
    if any(r.role for r in rings):
        return rings
    if to_fit & set(ROWS["foot"]):
        return tuple(replace(r, role="leg") if _leg(r, walker) else r for r in rings)
    if "hips" in to_fit and len(rings) == 2 and all(r.relaxed for r in rings) and not walker.glued.parts > 1:
        waist = min(rings, key=lambda r: r.relaxed)
        return tuple(replace(r, role="waist") if r is waist else r for r in rings)
    return rings


def _leg(ring: Ring, walker: Walker) -> bool:
    """The opening of a sock: a whole first or last row, or the band on it."""
    below = edges_below(walker.cloth.design, walker.glued, ring.edges)
    return bool(below) and all(p.edge in ("start", "end") and walker.cloth.piece(p.owner) is not None for p in below)
