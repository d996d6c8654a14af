"""How much is sewn with which yarn in one size, by the seams' lengths on the fabric."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.bed import KnitFabric, seam
from walewright.design.model import Design
from walewright.glue.model import Glued
from walewright.proof.seams import pairs, sewn_on
from walewright.trade.edge_names import part_of_edge
from walewright.trade.joins import JOINS

GRAFT = 4 / 3
"""A graft without a tail takes 4 widths of yarn, where a seam takes 3 lengths (common practice)."""
LAST = ("end", "shoulder")
"""Edges where the yarn was broken off."""


def seams_cm(design: Design, glued: Glued, fabrics: Mapping[str, KnitFabric]) -> dict[str, float]:
    """Centimetres of seam by yarn, that of the piece named first, over all seams of the garment."""
    found: dict[str, float] = {}
    for made in glued.seams:
        way = design.joins[made.join].way
        new_end = way == "grafted" and not any(part_of_edge(p.edge).name in LAST for p in (*made.one, *made.other))
        # Linked seams are knitted, grafted ones are sewn with a tail that was asked for, where one hangs.
        along = seam(fabrics, pairs(made.one)) if JOINS[way].by_needle or new_end else None
        if along is not None:
            yarn = design.cloth(made.one[0].owner).yarn
            beyond = 0.0 if made.beyond else sum(sewn_on(design, fabrics, ends[0]).cm for ends in made.over if ends)
            found[yarn] = found.get(yarn, 0.0) + (along.length_cm or 0.0) * (GRAFT if new_end else 1) + beyond
    for pair in glued.ends:
        along = seam(fabrics, pairs((pair.one,)))
        yarn = design.cloth(pair.one.owner).yarn
        found[yarn] = found.get(yarn, 0.0) + ((along.length_cm if along else None) or 0.0)
    return found
