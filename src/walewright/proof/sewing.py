"""How much is sewn with which yarn in one size, by the seams' lengths on the fabric."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.bed import Fabric, seam
from walewright.design.model import Design, EdgeName
from walewright.solve.model import SizedGarment, SizedJoin

BY_NEEDLE = ("sewn", "gathered")
"""Ways that take a length of yarn of their own: linked seams are knitted, grafted ones are sewn with a tail that was asked for,
where one hangs."""
GRAFT = 4 / 3
"""A graft without a tail takes 4 widths of yarn, where a seam takes 3 lengths (common practice)."""
LAST = ("end", "shoulder")
"""Edges where the yarn was broken off."""


def seams_cm(design: Design, garment: SizedGarment, fabrics: Mapping[str, Fabric]) -> dict[str, float]:
    """Centimetres of seam by yarn, that of the piece named first, all copies of the pieces."""
    found: dict[str, float] = {}
    for join in garment.joins:
        new_end = join.way == "grafted" and not any(e.edge.partition(" ")[0] in LAST for e in (*join.one, *join.other))
        sewn = join.way in BY_NEEDLE or new_end
        along = seam(fabrics, tuple((e.piece, e.edge) for e in join.one)) if sewn else None
        piece = next((p for p in design.pieces if p.name == join.one[0].piece), None)
        if along is not None and piece is not None:
            yarn = design.fabric(piece.fabric).yarn
            found[yarn] = found.get(yarn, 0.0) + (along.length_cm or 0.0) * _times(join, fabrics) * (GRAFT if new_end else 1)
    return found


def _times(join: SizedJoin, fabrics: Mapping[str, Fabric]) -> int:
    """How often the garment has that seam: at both sides of a piece, and for every copy of it."""
    if join.one == join.other:
        # An edge joined to its like on the same piece closes it to a tube.
        return fabrics[join.one[0].piece].copies
    return max(_edges(edge, fabrics) for edge in (*join.one, *join.other))


def _edges(edge: EdgeName, fabrics: Mapping[str, Fabric]) -> int:
    fabric = fabrics[edge.piece]
    found = fabric.edge(edge.edge)
    return fabric.copies * (2 if found and found[0].each else 1)
