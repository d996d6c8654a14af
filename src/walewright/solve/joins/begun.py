"""Pieces begun along edges: no more stitches than can be picked up there, where the width of their start is free."""

from __future__ import annotations

from walewright.counted.edges import split_part
from walewright.design.model import Design, EdgeName
from walewright.report.said import said
from walewright.solve.algebra.programme import Draft, Rule, RuleKind
from walewright.solve.algebra.sums import NOTHING, Linear, Terms
from walewright.solve.edges.lengths import Garment, edge_terms
from walewright.solve.joins.joining import spoken
from walewright.trade.sides import SIDES


def begun_rules(draft: Draft, design: Design, terms: Garment) -> None:
    """A stitch for every row end and for every stitch at the most, as the bands are picked up. Of a start that is not free that is
    told when all is counted (`bands.short_starts`)."""
    for piece in design.pieces:
        if piece.start_way != "along" or piece.start_most is None or piece.mirror_of is not None:
            continue
        lines: list[tuple[int, Linear]] = []
        for size in range(len(design.sizes)):
            places = sum((_places(design, terms, edge, size) for edge in piece.start_along), NOTHING)
            own = terms[piece.name][size]
            lines.append((size, own.left.start + own.right.start <= places))
        clause = said("place-for-each-stitch", piece=piece.name, edges=spoken(piece.start_along))
        where = (piece.start_origin or piece.origin,)
        draft.rules.append(Rule(clause, RuleKind.CONSTRUCTION, where, (clause,) * len(lines), tuple(lines)))


def _places(design: Design, terms: Garment, edge: EdgeName, size: int) -> Terms:
    """Row ends and stitches of an edge; of what an outer edge casts off on the way, what it casts off first."""
    piece, own = design.piece(edge.piece), terms[edge.piece][size]
    measured = edge_terms(design, piece, own, edge.edge, size)
    head, part = split_part(edge.edge)
    runs = {"left": piece.left, "right": piece.right}
    side = part or next((s for s in SIDES if any(run.name == head for run in runs[s])), "")
    cast = [own.edge(side).cast_off[n] for n, run in enumerate(runs[side]) if run.name == head] if side in SIDES else []
    return sum(cast, measured.rows + measured.stitches)
