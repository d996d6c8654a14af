"""The counted garment: solved numbers put together into pieces, edges and openings of every size."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from walewright.design.model import Design, Piece
from walewright.solve.bands import even
from walewright.solve.model import SizedOpening, SizedPiece, SizedRun, SizedWedge
from walewright.solve.pieces import PieceTerms
from walewright.solve.programme import Values, amount
from walewright.solve.rules import below
from walewright.solve.shaping import Gap, Span, edge_runs, openings
from walewright.solve.wedges import groups


def sized_pieces(design: Design, piece: Piece, terms: Sequence[PieceTerms], values: Values) -> tuple[SizedPiece, ...]:
    """A piece in every size."""
    rows = [{level: 2 * amount(t, values) for level, t in of.rows.items()} for of in terms]
    tops = [r[piece.levels[-1].name] for r in rows]
    partings = [
        top - 2 * amount(of.openings[0].depth, values) if of.openings else top + 2 for top, of in zip(tops, terms, strict=True)
    ]
    edges: dict[str, list[tuple[SizedRun, ...]]] = {}
    for side in ("left", "right"):
        if side == "right" and piece.symmetric:
            edges[side] = edges["left"]
            continue
        edges[side] = []
        runs = piece.left if side == "left" else piece.right
        for number, run in enumerate(runs):
            spans = [_span(piece, side, number, t, r, values, p) for t, r, p in zip(terms, rows, partings, strict=True)]
            made = edge_runs(piece, side, number, spans)
            assert made is not None, f"no room at the edge to {run.to_level}, though its rule holds"
            edges[side].append(made)
    gaps: list[tuple[SizedOpening, ...]] = []
    for number, opening in enumerate(piece.openings):
        counted = [
            Gap(p, top, amount(of.openings[number].half, values), amount(of.openings[number].flat, values))
            for p, top, of in zip(partings, tops, terms, strict=True)
        ]
        parted = openings(opening, counted)
        assert parted is not None, f"no room at the {opening.name}, though its rule holds"
        gaps.append(parted)
    return tuple(
        _piece(
            design,
            piece,
            2 * amount(terms[i].left.start, values),
            rows[i],
            tuple(run[i] for run in edges["left"]),
            tuple(run[i] for run in edges["right"]),
            tuple(gap[i] for gap in gaps),
            i,
        )
        for i in range(len(terms))
    )


def _span(piece: Piece, side: str, number: int, terms: PieceTerms, rows: Mapping[str, int], values: Values, parting: int) -> Span:
    run = (piece.left if side == "left" else piece.right)[number]
    edge = terms.edge(side)
    change = amount(edge.after[number], values) - amount(edge.before(number), values)
    steps = run.steps if run.path == "steps" else 0
    return Span(rows[below(piece, number, side)], rows[run.to_level], change, amount(edge.cast_off[number], values), steps, parting)


def _piece(
    design: Design,
    piece: Piece,
    start: int,
    rows: Mapping[str, int],
    left: tuple[SizedRun, ...],
    right: tuple[SizedRun, ...],
    parted: tuple[SizedOpening, ...],
    size: int,
) -> SizedPiece:
    top = rows[piece.levels[-1].name]
    half = parted[0].width // 2 if parted else 0
    reach = {"left": start // 2 + _moved(left), "right": start // 2 + _moved(right)}
    wedges: list[SizedWedge] = []
    for w in piece.wedges:
        held = {side: groups(reach[side] - half, top - rows[w.from_level]) for side in reach if w.edge in ("both", side)}
        if len(set(held.values())) == 1:
            wedges.append(SizedWedge(w.name, w.edge, rows[w.from_level], next(iter(held.values())), w.origin))
        else:
            wedges += [SizedWedge(w.name, side, rows[w.from_level], g, w.origin) for side, g in held.items()]
    edging_rows = 0
    if piece.start_edging is not None:
        edging = design.edging(piece.start_edging)
        edging_rows = even(edging.depth[size] * design.fabric(edging.fabric).rows_per_cm)
    return SizedPiece(
        piece.name,
        start,
        tuple((level.name, rows[level.name]) for level in piece.levels),
        top,
        left,
        right,
        parted,
        tuple(wedges),
        edging_rows,
        _widest(start, left, right),
    )


def _moved(runs: Sequence[SizedRun]) -> int:
    return sum(by for run in runs for _, by in run.changes())


def _widest(start: int, left: Sequence[SizedRun], right: Sequence[SizedRun]) -> int:
    moves = sorted((row, by) for run in (*left, *right) for row, by in run.changes())
    width = most = start
    for _, by in moves:
        width += by
        most = max(most, width)
    return most
