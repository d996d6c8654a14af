"""The garment as it is worn, as JSON: girths, ease, reach, openings, what passes through them, buttons."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from walewright.plan.shapes import Json, cm

if TYPE_CHECKING:
    from walewright.design.model import PerSize
    from walewright.fit.model import Fit, Ring


def _beside(fit: Fit, per_size: Callable[[PerSize], Json]) -> Json:
    """What is wanted of finished measurements, where something is."""
    found = [
        {"name": b.name, "wanted_cm": per_size(b.wanted), "cm": per_size(b.knitted), "off_cm": per_size(b.off)} for b in fit.beside
    ]
    return {"wanted": found} if found else {}


def _edges(ring: Ring, sizes: tuple[str, ...]) -> Json | list[Json]:
    """The edges of an opening, by size where it does not go along the same ones in all."""
    every = [[{"of": p.owner, "edge": p.edge, "copy": p.copy} for p in chain] for chain in ring.chains]
    return every[0] if all(chain == every[0] for chain in every) else dict(zip(sizes, every, strict=True))


def worn(fit: Fit | None, sizes: tuple[str, ...]) -> Json:
    """Lengths by size; what could not be told is not there."""

    def per_size(values: tuple[float | None, ...]) -> Json:
        return {size: cm(value) for size, value in zip(sizes, values, strict=False) if value is not None}

    if fit is None:
        return {}
    return {
        "girths": [
            {"piece": g.piece, "at": g.at, "over": list(g.over), "closing": g.closing, "body": g.body, "cm": per_size(g.values)}
            for g in fit.girths
        ],
        "finished": [{"name": name, "cm": per_size(values)} for name, values in fit.stated],
        **_beside(fit, per_size),
        "ease": [
            {
                "name": e.name,
                "fits": e.fits,
                "finished_cm": per_size(e.finished),
                "body_cm": per_size(e.body),
                "cm": per_size(e.ease),
            }
            for e in fit.eases
        ],
        "reach": [{"sleeve": r.sleeve, "way": r.way, "cm": per_size(r.values), "body_cm": per_size(r.body)} for r in fit.reaches],
        "openings": [
            {
                "edges": _edges(r, sizes),
                "role": r.role,
                "copies": r.copies[0] if len(set(r.copies)) == 1 else dict(zip(sizes, r.copies, strict=True)),
                "cm": per_size(r.relaxed),
                "stretched_cm": per_size(r.stretched),
            }
            for r in fit.rings
        ],
        "passes": [
            {
                "opening": p.name,
                "part": p.part,
                "never": p.never,
                "cm": per_size(p.relaxed),
                "stretched_cm": per_size(p.stretched),
                "needed_cm": per_size(p.needed),
            }
            for p in fit.passings
        ],
        "buttons": [
            {
                "over": b.over,
                "under": b.under,
                "overlap_cm": per_size(b.overlap),
                "from_edge_cm": per_size(b.across),
                "at_cm": [per_size(place) for place in b.places],
            }
            for b in fit.buttons
        ],
    }
