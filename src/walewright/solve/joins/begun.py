"""Pieces begun along edges, where the width of their start is free: no more stitches than can be picked up there, and, where it is
to be as wide as the edges are, as many as a band would have."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from math import ceil

from walewright.counted.edges import split_part
from walewright.design.model import Design, DesignInSize, EdgeName, Piece
from walewright.report.said import said
from walewright.solve.algebra.programme import Draft, Rule, RuleKind
from walewright.solve.algebra.sums import NOTHING, Linear, Terms
from walewright.solve.edges.edges import new
from walewright.solve.edges.gauge import fabric_above
from walewright.solve.edges.lengths import FINE, Garment, edge_terms
from walewright.solve.edges.multiples import slack
from walewright.solve.joins.joining import spoken
from walewright.trade.parity import Parity
from walewright.trade.sides import GAP_PARTS, SIDES


def begun_rules(draft: Draft, design: Design, terms: Garment) -> None:
    """A stitch for every row end and for every stitch at the most, as the bands are picked up. Of a start that is not free that is
    told when all is counted (`bands.short_starts`)."""
    for piece in design.pieces:
        if piece.start_way != "along" or piece.start_most is None or piece.mirror_of is not None:
            continue
        lines: list[tuple[int, Linear]] = []
        for at in design.each_size:
            places = sum((_places(at, terms, edge) for edge in piece.start_along), NOTHING)
            own = at.of(terms[piece.name])
            lines.append((at.number, own.left.start + own.right.start <= places))
        clause = said("place-for-each-stitch", piece=piece.name, edges=spoken(piece.start_along))
        where = (piece.start_origin or piece.origin,)
        draft.rules.append(Rule(clause, RuleKind.CONSTRUCTION, where, (clause,) * len(lines), tuple(lines)))
        if piece.start_by_edges:
            full = new(draft, design, piece, "as many as there are places")
            lines = [(at.number, line) for at in design.each_size for line in _as_wide(at, piece, terms, at.of(full))]
            clause = said("as-wide-as-edges", piece=piece.name, edges=spoken(piece.start_along))
            draft.rules.append(Rule(clause, RuleKind.CONSTRUCTION, where, (clause,) * len(lines), tuple(lines)))


def _as_wide(at: DesignInSize, piece: Piece, terms: Garment, full: Terms) -> Iterator[Linear]:
    """Along rows by length, along stitches one for one, to the nearest number that the start can have; where that is more than
    there are places (`full` is 1), as many as these."""
    per_cm = fabric_above(at.design, piece, piece.levels[0].name).stitches_per_cm
    wide, places = NOTHING, NOTHING
    for edge in piece.start_along:
        other = at.design.piece(edge.piece)
        places += _places(at, terms, edge)
        for part in _parts(other, edge.edge):
            measured = edge_terms(at, other, at.of(terms[other.name]), part)
            wide += _stitches(measured.length, per_cm) if measured.rows or measured.rows.more else measured.stitches * _SHARES
    own = at.of(terms[piece.name])
    start = own.left.start + own.right.start
    off = max(_NEAREST[piece.parity], slack(at.design, piece, "left", 0))
    needles = at.design.machine.needles
    yield full <= 1
    yield start * _SHARES <= wide + round(off * _SHARES)
    yield start * _SHARES + full * (needles * _SHARES) >= wide - round(off * _SHARES)
    yield start + (1 - full) * needles >= places - (ceil(off) if off >= 1 else 0)


_SHARES = 1000
"""Of a stitch, in which lengths are reckoned here: fine enough, and far below what the solver takes for endless."""


def _stitches(length: Terms, per_cm: float) -> Terms:
    """A length in shares of a stitch."""
    return Terms(tuple((v, round(c / FINE * per_cm * _SHARES)) for v, c in length.of), round(length.more / FINE * per_cm * _SHARES))


_NEAREST: Mapping[Parity, float] = {"even": 1.0, "odd": 1.0, "either": 0.5}
"""How far off the nearest number of that parity is at the most."""


def _parts(piece: Piece, edge: str) -> tuple[str, ...]:
    """The edge of an opening part by part: its row edges and its foot."""
    if any(o.name == edge for o in piece.openings):
        return tuple(f"{edge} {part}" for part in GAP_PARTS)
    return (edge,)


def _places(at: DesignInSize, terms: Garment, edge: EdgeName) -> Terms:
    """Row ends and stitches of an edge; of what an outer edge casts off on the way, what it casts off first."""
    piece, own = at.design.piece(edge.piece), at.of(terms[edge.piece])
    measured = edge_terms(at, piece, own, edge.edge)
    head, part = split_part(edge.edge)
    runs = {"left": piece.left, "right": piece.right}
    side = part or next((s for s in SIDES if any(run.name == head for run in runs[s])), "")
    cast = [own.edge(side).cast_off[n] for n, run in enumerate(runs[side]) if run.name == head] if side in SIDES else []
    return sum(cast, measured.rows + measured.stitches)
