"""What a knitter gave in place of the source's own, as JSON."""

from __future__ import annotations

from typing import TYPE_CHECKING

from walewright.plan.shapes import Json, cm

if TYPE_CHECKING:
    from walewright.design.model import Design


def regraded(design: Design) -> list[Json]:
    """One entry for each thing given; none in the source's own edition."""
    return [
        {
            "kind": g.kind,
            "name": g.name,
            "own": g.own,
            "source": g.source,
            "own_cm": cm(g.own_cm) if g.kind == "measure" and not g.own else None,
            "source_cm": {size: cm(value) for size, value in zip(design.sizes, g.source_cm, strict=False)},
        }
        for g in design.given
    ]
