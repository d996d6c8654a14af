"""Pieces begun along edges that are much longer than their own first row, which draw the edges in, or much shorter, which flare."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.design.model import Design
from walewright.fit.loops import Walker
from walewright.report.model import Diagnostic, Severity, diagnosed
from walewright.report.said import Amount, said

SHARE = 0.85
"""Of the edges' length, at rest, that a first row has at least: what is picked up for is some 10 % less than what it is picked up
along where a rib or a collar is to hold (common practice)."""

FULL = 1.2
"""Of the edges' length that a first row has at most, unless it is a frill (from memory)."""


def drawn_in(design: Design, walkers: Sequence[Walker]) -> Iterator[Diagnostic]:
    """A warning for each piece that starts `along` edges a good deal longer or shorter than it is wide."""
    for piece in design.pieces:
        lines = [walker.glued.lines_of(piece.name) for walker in walkers]
        if piece.start_way != "along" or piece.mirror_of or not all(lines):
            continue
        wide = [w.cloth.sized(piece.name).start * w.cloth.stitch(piece.name) for w in walkers]
        edges = [sum(w.cloth.length(p) or 0.0 for p in own[0].along) for w, own in zip(walkers, lines, strict=True)]
        bad = [i for i, (own, along) in enumerate(zip(wide, edges, strict=True)) if own < SHARE * along]
        full = [i for i, (own, along) in enumerate(zip(wide, edges, strict=True)) if own > FULL * along > 0]
        if full and not piece.start_by_edges:
            yield diagnosed(
                "start-too-full",
                ((piece.start_origin or piece.origin).span, "begun-here"),
                notes=tuple(said("wider", size=design.sizes[i], wide=Amount(wide[i]), edges=Amount(edges[i])) for i in full),
                helps=("as-edges", "fullness"),
                severity=Severity.WARNING,
                sizes=() if len(full) == len(design.sizes) else tuple(design.sizes[i] for i in full),
                piece=piece.name,
            )
        if bad and not piece.start_by_edges:
            yield diagnosed(
                "start-draws-in",
                ((piece.start_origin or piece.origin).span, "begun-here"),
                notes=tuple(said("narrower", size=design.sizes[i], wide=Amount(wide[i]), edges=Amount(edges[i])) for i in bad),
                helps=("as-wide",),
                severity=Severity.WARNING,
                sizes=() if len(bad) == len(design.sizes) else tuple(design.sizes[i] for i in bad),
                piece=piece.name,
            )
