"""How much is sewn with which yarn in one size, by the seams' lengths on the fabric."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.bed import KnitFabric, seam
from walewright.counted.bands import band_fabric
from walewright.design.model import Design
from walewright.glue.model import Glued
from walewright.proof.seams import pairs
from walewright.trade.edge_names import is_top
from walewright.trade.joins import JOINS

GRAFT = 4 / 3
"""A graft without a tail takes 4 widths of yarn, where a seam takes 3 lengths (common practice)."""


def seams_cm(design: Design, glued: Glued, fabrics: Mapping[str, KnitFabric]) -> dict[str, float]:
    """Centimetres of seam by yarn, that of the piece named first, over all seams of the garment."""
    found: dict[str, float] = {}
    for made in glued.seams:
        way = design.joins[made.join].way
        new_end = way == "grafted" and not any(is_top(p.edge) for p in (*made.one, *made.other))
        # Linked seams are knitted, grafted ones are sewn with a tail that was asked for, where one hangs.
        along = seam(fabrics, pairs(made.one)) if JOINS[way].by_needle or new_end else None
        if along is not None:
            yarn = design.fabric(design.piece(made.one[0].owner).fabric).yarn
            beyond = 0.0 if made.beyond else sum(_strip_cm(design, fabrics, pair[0]) for pair in made.over_strips if pair)
            found[yarn] = found.get(yarn, 0.0) + (along.length_cm or 0.0) * (GRAFT if new_end else 1) + beyond
    for pair in glued.ends:
        along = seam(fabrics, pairs((pair.one,)))
        yarn = band_fabric(design, pair.one.owner).yarn
        found[yarn] = found.get(yarn, 0.0) + ((along.length_cm if along else None) or 0.0)
    return found


def _strip_cm(design: Design, fabrics: Mapping[str, KnitFabric], owner: str) -> float:
    """How long the end of an edging or a band is that a seam goes on along: `owner` as in `Seam.over_strips`."""
    piece = next((p for p in design.pieces if owner in (p.name, f"{p.name} end")), None)
    if piece is None:
        return fabrics[owner].end_rows / band_fabric(design, owner).rows_per_cm
    at = "start" if owner == piece.name else "end"
    edging = design.edging((piece.start_edging if at == "start" else piece.end_edging) or "")
    if at == "start":
        hung = fabrics.get(f"{piece.name} {edging.name}")
        rows = fabrics[piece.name].rows_before if hung is None else hung.end_rows
    else:
        rows = sum(edge.count for name, where in piece.strips if where == at for edge in fabrics[piece.name].edge(f"{name} left"))
    return rows / design.fabric(edging.fabric).rows_per_cm
