"""Pieces begun along edges that are longer than their own first row: hung so, they draw the edges in."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.design.model import Design
from walewright.fit.cloth import Cloth
from walewright.glue.model import Glued
from walewright.report.model import Diagnostic, Severity, diagnosed
from walewright.report.said import Amount, said

SHARE = 0.85
"""Of the edges' length, at rest, that a first row has at least: what is picked up for is some 10 % less than what it is picked up
along where a rib or a collar is to hold (common practice)."""


def drawn_in(design: Design, glued: Glued, cloths: Sequence[Cloth]) -> Iterator[Diagnostic]:
    """A warning for each piece that starts `along` edges a good deal longer than it is wide."""
    for piece in design.pieces:
        lines = glued.lines_of(piece.name)
        if piece.start_way != "along" or piece.mirror_of or not lines:
            continue
        wide = [cloth.sized(piece.name).start * cloth.stitch(piece.name) for cloth in cloths]
        edges = [sum(cloth.length(place) or 0.0 for place in lines[0].along) for cloth in cloths]
        bad = [i for i, (own, along) in enumerate(zip(wide, edges, strict=True)) if own < SHARE * along]
        if bad:
            yield diagnosed(
                "start-draws-in",
                ((piece.start_origin or piece.origin).span, "begun-here"),
                notes=tuple(said("narrower", size=design.sizes[i], wide=Amount(wide[i]), edges=Amount(edges[i])) for i in bad),
                helps=("as-wide",),
                severity=Severity.WARNING,
                sizes=() if len(bad) == len(design.sizes) else tuple(design.sizes[i] for i in bad),
                piece=piece.name,
            )
