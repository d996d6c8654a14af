"""Pieces begun along edges that are much longer than their own first row, which draw the edges in, or much shorter, which flare."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.design.model import Design
from walewright.fit.loops import Walker
from walewright.report.model import Diagnostic, Severity, diagnosed
from walewright.report.said import Amount, only, said

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
        if piece.start_by_edges:
            continue
        place = ((piece.start_origin or piece.origin).span, "begun-here")
        sizes = list(zip(design.sizes, wide, edges, strict=True))
        if full := [(size, own, along) for size, own, along in sizes if own > FULL * along > 0]:
            yield diagnosed(
                "start-too-full",
                place,
                notes=tuple(said("wider", size=size, wide=Amount(own), edges=Amount(along)) for size, own, along in full),
                helps=("as-edges", "fullness"),
                severity=Severity.WARNING,
                sizes=only(design.sizes, [size for size, _, _ in full]),
                piece=piece.name,
            )
        if bad := [(size, own, along) for size, own, along in sizes if own < SHARE * along]:
            yield diagnosed(
                "start-draws-in",
                place,
                notes=tuple(said("narrower", size=size, wide=Amount(own), edges=Amount(along)) for size, own, along in bad),
                helps=("as-wide",),
                severity=Severity.WARNING,
                sizes=only(design.sizes, [size for size, _, _ in bad]),
                piece=piece.name,
            )
