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
        sizes = list(zip(design.sizes, wide, edges, strict=True))
        for kind, note, helps, found in (
            ("start-too-full", "wider", ("as-edges", "fullness"), [one for one in sizes if one[1] > FULL * one[2] > 0]),
            ("start-draws-in", "narrower", ("as-wide",), [one for one in sizes if one[1] < SHARE * one[2]]),
        ):
            if found and not piece.start_by_edges:
                yield diagnosed(
                    kind,
                    ((piece.start_origin or piece.origin).span, "begun-here"),
                    notes=tuple(said(note, size=size, wide=Amount(own), edges=Amount(along)) for size, own, along in found),
                    helps=helps,
                    severity=Severity.WARNING,
                    sizes=only(design.sizes, [size for size, _, _ in found]),
                    piece=piece.name,
                )
