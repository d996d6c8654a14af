"""How much is sewn with which yarn in one size, by the seams' lengths on the fabric."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.bed import KnitFabric, seam
from walewright.design.model import Design
from walewright.glue.model import Glued, Place
from walewright.proof.seams import pairs
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
            beyond = 0.0 if made.beyond else sum(_strip_cm(design, fabrics, ends[0]) for ends in made.over if ends)
            found[yarn] = found.get(yarn, 0.0) + (along.length_cm or 0.0) * (GRAFT if new_end else 1) + beyond
    for pair in glued.ends:
        along = seam(fabrics, pairs((pair.one,)))
        yarn = design.cloth(pair.one.owner).yarn
        found[yarn] = found.get(yarn, 0.0) + ((along.length_cm if along else None) or 0.0)
    return found


def _strip_cm(design: Design, fabrics: Mapping[str, KnitFabric], end: Place) -> float:
    """How long the end of an edging or a band is that a seam goes on along."""
    if design.band(end.owner) is not None:
        return fabrics[end.owner].end_rows / design.cloth(end.owner).rows_per_cm
    edging, piece = design.strip(end.owner, end.edge), design.piece(end.owner)
    assert edging is not None, "it is the end of a strip"
    at = piece.strip_at(end.edge)
    if at == "start":
        hung = fabrics.get(f"{piece.name} {edging.name}")
        rows = fabrics[piece.name].rows_before if hung is None else hung.end_rows
    else:
        rows = sum(edge.count for name, where in piece.strips if where == at for edge in fabrics[piece.name].edge(f"{name} left"))
    return rows / design.fabric(edging.fabric).rows_per_cm
