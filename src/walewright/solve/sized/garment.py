"""The counted garment: solved numbers put together into pieces, edges and openings of every size."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.counted.edgings import edging_rows
from walewright.counted.model import ShapingPhrase, SizedOpening, SizedPiece, SizedRun
from walewright.design.model import Design, DesignInSize, EdgeRun, Opening, Piece
from walewright.record import record, replace
from walewright.solve.algebra.sums import Values
from walewright.solve.edges.charts import sized_charts
from walewright.solve.edges.edges import runs_of
from walewright.solve.edges.gaps import alike, gap_runs, rejoins
from walewright.solve.edges.holes import settled
from walewright.solve.edges.inlays import sized_buttonholes, sized_repeats, sized_slots, sized_zones
from walewright.solve.edges.lean import lean, may_lean
from walewright.solve.edges.pieces import SIDES, EdgeTerms, OpeningTerms, PieceTerms
from walewright.solve.edges.stepping import steps_made
from walewright.solve.edges.wedges import sized_wedges
from walewright.solve.schedule.shaping import edge_runs
from walewright.solve.schedule.spans import GAP, LEFT, PAIR, RIGHT, ShapingSpan
from walewright.solve.schedule.turned import turned_runs
from walewright.solve.sized.inside import apart, lined
from walewright.solve.sized.out import sized_out

Runs = tuple[SizedRun, ...]


def sized_pieces(
    design: Design, piece: Piece, terms: Sequence[PieceTerms], values: Values, together: bool = True
) -> tuple[SizedPiece, ...]:
    """A piece in every size. A mirror image has its model's schedule, moved to the carriage sides of its own edges. Schedules are
    of one form in all sizes, or (not `together`) each is as plain as it can be by itself."""
    turned = _turned(design, piece)
    if together:
        outlines = _outlines(piece, terms, values, turned)
    else:
        outlines = [_outlines(_in_size(piece, i), (t,), values, turned)[0] for i, t in enumerate(terms)]
    return tuple(_piece(at, piece, at.of(terms), values, at.of(outlines)) for at in design.each_size)


def _in_size(piece: Piece, size: int) -> Piece:
    """The piece with the steps and rates of one size on its edges, as it is scheduled by itself."""

    def alone(runs: tuple[EdgeRun, ...]) -> tuple[EdgeRun, ...]:
        return tuple(run.of_size(size) for run in runs)

    openings = tuple(replace(opening, left=alone(opening.left), right=alone(opening.right)) for opening in piece.openings)
    return replace(piece, left=alone(piece.left), right=alone(piece.right), openings=openings)


def _outlines(piece: Piece, terms: Sequence[PieceTerms], values: Values, turned: bool) -> list[_Outline]:
    edges = _outer(piece, terms, values, turned)
    gaps = [_opening(piece, opening, [t.openings[n] for t in terms], values) for n, opening in enumerate(piece.openings)]
    return [_Outline(edges["left"][i], edges["right"][i], tuple(gap[i] for gap in gaps)) for i in range(len(terms))]


@record
class _Outline:
    left: Runs
    right: Runs
    openings: tuple[SizedOpening, ...]


def _turned(design: Design, piece: Piece) -> bool:
    """Whether a piece is the mirror image of one that is scheduled for itself."""
    return piece.mirror_of is not None and not _turned(design, design.piece(piece.mirror_of))


def _outer(piece: Piece, terms: Sequence[PieceTerms], values: Values, turned: bool) -> dict[str, list[Runs]]:
    """The runs of both outer edges, per size."""
    parted = [tuple((2 * o.from_rows.at(values), 2 * o.to_rows.at(values)) for o in t.openings) for t in terms]
    edges: dict[str, list[Runs]] = {}
    for side in SIDES:
        if side == "right" and piece.symmetric:
            edges[side] = edges["left"]
            continue
        whose = PAIR if piece.symmetric else LEFT if side == "left" else RIGHT
        edges[side] = _edge(runs_of(piece, side), [t.edge(side) for t in terms], values, whose, parted, turned and whose != PAIR)
    return edges


def _edge(
    runs: Sequence[EdgeRun],
    edges: Sequence[EdgeTerms],
    values: Values,
    whose: str,
    parted: Sequence[tuple[tuple[int, int], ...]],
    turned: bool = False,
) -> list[Runs]:
    """All runs of an edge, per size. At a gap a part loses what the gap gains."""
    made: list[Runs] = []
    sign = -1 if whose == GAP else 1
    for number, run in enumerate(runs):
        spans = [
            ShapingSpan(
                from_row=2 * edge.from_rows[number].at(values),
                to_row=2 * edge.to_rows[number].at(values),
                change=sign * edge.moved(number).at(values),
                cast_off=edge.cast_off[number].at(values),
                steps=run.steps[size] if run.steps else 0,
                parted=between,
                in_turn=steps_made(run, edge, number, size, values),
            )
            for size, (edge, between) in enumerate(zip(edges, parted, strict=True))
        ]
        sized = (turned_runs if turned else edge_runs)(run, whose, spans)
        assert sized is not None, f"no room at the edge to {run.to_level}, though its rule holds"
        made.append(sized)
    return [tuple(run[i] for run in made) for i in range(len(edges))]


# ----------------------------------------------------------------- openings


def _opening(piece: Piece, opening: Opening, terms: Sequence[OpeningTerms], values: Values) -> tuple[SizedOpening, ...]:
    """An opening in every size. The moves are those of a part that begins with the carriage at its outer edge, so that casting
    off at the gap is possible after one row and then after every second."""
    none: list[tuple[tuple[int, int], ...]] = [() for _ in terms]
    right = _edge(gap_runs(opening, "right"), [t.right for t in terms], values, GAP, none)
    left = right
    if not alike(piece, opening):
        left = _edge(gap_runs(opening, "left"), [t.left for t in terms], values, GAP, none)
    made: list[SizedOpening] = []
    for size, own in enumerate(terms):
        row, to_row = 2 * own.from_rows.at(values), 2 * own.to_rows.at(values)
        made.append(
            SizedOpening(
                name=opening.name,
                row=row,
                flat=own.taken.at(values),
                width=own.width.at(values),
                run=_in_one(opening, row, to_row, right[size]),
                origin=opening.origin,
                to_row=to_row,
                first=-own.left.start.at(values),
                taken=opening.taken,
                rejoins=rejoins(piece, opening),
                left=left[size],
                right=right[size],
            )
        )
    return tuple(made)


def _in_one(opening: Opening, row: int, to_row: int, runs: Runs) -> SizedRun:
    """The runs of a gap's edge as one: plain rows before a run's first move belong to its gap."""
    phrases: list[ShapingPhrase] = []
    at = row
    for run in runs:
        late = run.from_row - at
        for phrase in run.phrases:
            here = phrase
            if phrase.times and late:
                gap, *gaps = phrase.gaps
                phrases.append(ShapingPhrase((gap + late, *gaps), phrase.by, 1))
                here, late = ShapingPhrase(phrase.gaps, phrase.by, phrase.times - 1), 0
            phrases.append(here)
        at = max((change for change, _ in run.changes()), default=at)
    return SizedRun(name=opening.name, from_row=row, to_row=to_row, phrases=tuple(phrases), way=opening.way, origin=opening.origin)


# ----------------------------------------------------------------- the whole piece


def _piece(at: DesignInSize, piece: Piece, terms: PieceTerms, values: Values, outline: _Outline) -> SizedPiece:
    rows = {level: 2 * t.at(values) for level, t in terms.rows.items()}
    start = terms.left.start.at(values) + terms.right.start.at(values)
    left_of = start // 2 + (lean(at.design.machine.needles, start, outline.left, outline.right) if may_lean(piece) else 0)
    left = lined(at, piece, "left", outline.left, left_of, start / 2 - left_of)
    right = lined(at, piece, "right", outline.right, start - left_of, start / 2 - left_of)
    left, right = apart(left, right)
    edging = 0 if piece.start_edging is None else edging_rows(at, at.design.edging(piece.start_edging))
    ended = 0 if piece.end_edging is None else edging_rows(at, at.design.edging(piece.end_edging))
    stitches = {slot.name: t.at(values) for slot, t in zip(piece.slots, terms.slots, strict=True)}
    off = left_of - start // 2
    begin = {"left": left_of, "right": start - left_of}
    slots = [*sized_slots(at, piece, stitches, rows, off)]
    for holes in piece.buttonholes:
        slots += sized_buttonholes(at, piece, holes, rows, begin[holes.edge], left if holes.edge == "left" else right)
    made = SizedPiece(
        name=piece.name,
        start=start,
        levels=tuple((level.name, rows[level.name]) for level in piece.levels),
        rows=rows[piece.levels[-1].name],
        left=left,
        right=right,
        openings=outline.openings,
        wedges=sized_wedges(piece, terms, values),
        edging_rows=edging,
        widest=_widest(start, left, right),
        slots=tuple(sorted(slots, key=lambda s: (s.row, s.first))),
        zones=tuple(sized_zones(at, piece, rows, off)),
        repeats=sized_repeats(at, piece, rows),
        needles_out=tuple(sized_out(at, piece, start / 2 - left_of, rows, (-left_of, start - left_of - 1), (left, right))),
        lean=off,
        end_rows=ended,
        copies=at.of(piece.copies),
    )
    made = replace(made, slots=settled(made, made.slots, frozenset(holes.origin.path for holes in piece.buttonholes)))
    return replace(made, charts=sized_charts(at, piece, made))


def _widest(start: int, left: Runs, right: Runs) -> int:
    moves = sorted((row, by) for run in (*left, *right) for row, by in run.changes())
    width = most = start
    for _, by in moves:
        width += by
        most = max(most, width)
    return most
