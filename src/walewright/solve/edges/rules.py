"""What a bed and a pair of hands ask of a piece's outer edges, as rules of the programme."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise, product

from walewright.design.model import Design, EdgeRun, Opening, Piece
from walewright.record import record
from walewright.report.said import Said, said
from walewright.solve.algebra.programme import Draft, Lines, RuleKind, asks
from walewright.solve.algebra.sums import NOTHING, Linear, Terms
from walewright.solve.algebra.terms import EdgeTerms, PieceTerms
from walewright.solve.edges.edges import ACROSS_RUN, runs_of
from walewright.solve.edges.gaps import alike, end_level, gap_runs, rejoins
from walewright.solve.edges.gauge import level_number
from walewright.solve.edges.inside import inside_rules
from walewright.solve.edges.lean import may_lean
from walewright.solve.edges.multiples import multiple_rules
from walewright.solve.edges.stepping import step_rules
from walewright.trade.shaping import rows_inside
from walewright.trade.sides import SIDES, EdgeSide


def piece_rules(draft: Draft, design: Design, piece: Piece, terms: Sequence[PieceTerms]) -> None:
    """Writes the rules of a piece into the draft."""
    _levels(draft, piece, terms)
    _bed(draft, design, piece, terms)
    for side in SIDES[:1] if piece.symmetric else SIDES:
        which = said("outer-edge", piece=piece.name)
        edge = _Edge(piece, which, runs_of(piece, side), tuple(t.edge(side) for t in terms), 1)
        _edge_rules(draft, edge)
    _left_over(draft, piece, terms)
    for number, opening in enumerate(piece.openings):
        which = said("edge-of-opening", opening=opening.name, piece=piece.name)
        for side in SIDES[:1] if alike(piece, opening) else SIDES:
            edges = tuple(t.openings[number].edge(side) for t in terms)
            _edge_rules(
                draft,
                _Edge(
                    piece=piece, which=which, runs=gap_runs(opening, side), terms=edges, outwards=-1, led=opening.shape == "edges"
                ),
            )
    inside_rules(draft, design, piece, terms)
    multiple_rules(draft, design, piece, terms)


@record
class _Edge:
    """An edge of a part in all sizes. `outwards` is 1 where the part grows as the edge gets farther from the centre, -1 at a
    gap, which takes from the part."""

    piece: Piece
    which: Said
    runs: tuple[EdgeRun, ...]
    terms: tuple[EdgeTerms, ...]
    outwards: int
    led: bool = True
    """Whether the author led it from level to level: a neck's edges were not."""


def below(piece: Piece, run: int, side: EdgeSide) -> str:
    """The level where a run begins: where the last one ended."""
    runs = runs_of(piece, side)
    return runs[run - 1].to_level if run else piece.levels[0].name


def _levels(draft: Draft, piece: Piece, terms: Sequence[PieceTerms]) -> None:
    lines: Lines = []
    for low, high in pairwise(piece.levels):
        lines += [(i, t.rows[high.name] - t.rows[low.name] >= 1) for i, t in enumerate(terms)]
    asks(draft, said("levels-rise", piece=piece.name), (piece.origin,), lines, len(terms))


def _bed(draft: Draft, design: Design, piece: Piece, terms: Sequence[PieceTerms]) -> None:
    half = design.machine.needles // 2
    lines: Lines = []
    for i, t in enumerate(terms):
        if may_lean(piece):
            pairs = product({t.left.start, *t.left.after}, {t.right.start, *t.right.after})
            widths = dict.fromkeys(a + b for a, b in sorted(pairs, key=lambda pair: [place.of for place in pair]))
            lines += [(i, width <= 2 * half) for width in widths]
            continue
        places = [place for edge in (t.left, t.right) for place in (edge.start, *edge.after)]
        # Its mirror image has to find room too, with the middle stitch still at the right.
        places += [place + t.one for place in (t.left.start, *t.left.after) if t.one]
        lines += [(i, place <= half) for place in dict.fromkeys(places)]
    clause = said("bed-has", piece=piece.name, needles=design.machine.needles)
    asks(draft, clause, (piece.origin, design.machine.origin), lines, len(terms), RuleKind.MACHINE)


def _edge_rules(draft: Draft, edge: _Edge) -> None:
    for number, run in enumerate(edge.runs):
        if not any(run.change) and not any(run.most or ()):
            continue
        if run.path == ACROSS_RUN:
            _across(draft, edge, run, number)
            continue
        _one_way(draft, edge, run, number)
        if run.rates:
            _at_rate(draft, edge, run, number)
        else:
            _room(draft, edge, run, number)


def _named(edge: _Edge, run: EdgeRun) -> Said:
    return said("edge-to", edge=edge.which, level=run.to_level) if edge.led else edge.which


def _one_way(draft: Draft, edge: _Edge, run: EdgeRun, number: int) -> None:
    """A run moves in or out, not both; steps are equal; a cast-off is part of the move."""
    lines: Lines = []
    which = _named(edge, run)
    for i, terms in enumerate(edge.terms):
        away, ways = terms.moved(number), terms.ways[number]
        if not any((run.change[i], (run.most or run.change)[i])):
            lines.append((i, away.equals(0)))
        if len(ways) == 1:
            lines.append((i, ways[0] * away >= terms.cast_off[number]))
        if terms.step[number]:
            sign = terms.ways[number][0]
            # After a cast-off the steps divide what is left; a rate goes on from it.
            times = run.rates[i].stitches if run.rates else run.steps[i]
            steps = times * terms.step[number] + terms.cast_off[number]
            lines.append((i, away.equals(sign * steps)))
    count = len(edge.terms)
    equal = max(run.steps, default=0) if run.equal_steps else 0
    asks(draft, said("moves-one-way", edge=which, steps=equal, run=number), (run.origin,), lines, count)
    step_rules(draft, run, edge.terms, number, which)
    if run.way.kind == "fashioned" and edge.outwards > 0 and not may_lean(edge.piece):
        need = run.way.inset + 1
        lines = [(i, place >= need) for i, e in enumerate(edge.terms) for place in (e.before(number), e.after[number])]
        clause = said("shaping-takes", piece=edge.piece.name, inset=run.way.inset, stitches=need, edge=which, run=number)
        asks(draft, clause, (run.origin,), lines, count)


def _left_over(draft: Draft, piece: Piece, terms: Sequence[PieceTerms]) -> None:
    """A piece keeps a stitch each side of the centre mark, or its centre stitch; of a one-sided piece both edges together keep
    those that are moved on a tool, and one more."""
    insets = [run.way.inset for run in (*piece.left, *piece.right) if run.way.kind == "fashioned"] if may_lean(piece) else []
    need = max((1 if piece.parity == "odd" or may_lean(piece) else 2), *(inset + 1 for inset in insets), 0)
    lines: Lines = []
    for level in range(len(piece.levels)):
        for i, t in enumerate(terms):
            width = _place(piece, t, "left", level) + _place(piece, t, "right", level)
            # Of an odd number one stitch is enough: its centre stitch.
            lines.append((i, width + (t.one if piece.parity == "either" else NOTHING) >= need))
    asks(draft, said("keeps-stitches", piece=piece.name, stitches=need), (piece.origin,), lines, len(terms))


def _place(piece: Piece, terms: PieceTerms, side: EdgeSide, level: int) -> Terms:
    """Where an edge is at a level, taken to have come all the way where a run goes on past it."""
    runs = piece.left if side == "left" else piece.right
    edge = terms.edge(side)
    number = next((n for n, run in enumerate(runs) if level_number(piece, run.to_level) >= level), len(runs) - 1)
    return edge.after[number] if level else edge.start


def _across(draft: Draft, edge: _Edge, run: EdgeRun, number: int) -> None:
    """Two loops go on a needle at most, and every second needle is left empty at most."""
    lines: Lines = []
    for i, terms in enumerate(edge.terms):
        # Both edges move alike, so half the width tells of the whole.
        now, then = terms.after[number], terms.before(number)
        lines += [(i, 2 * now >= then), (i, 2 * then >= now)]
        direction = terms.ways[number][0]
        if run.most is None:
            lines.append((i, direction * now >= direction * then))
    clause = said("hung-across", piece=edge.piece.name, level=run.to_level, run=number)
    asks(draft, clause, (run.origin,), lines, len(edge.terms))


def partings(piece: Piece, run: EdgeRun, number: int, runs: Sequence[EdgeRun]) -> int:
    """Rows inside a run where the piece may part or rejoin: a move that takes both ends in turn cannot be made there."""
    low = level_number(piece, runs[number - 1].to_level) if number else 0
    high = level_number(piece, run.to_level)

    def inside(level: str) -> bool:
        return low < level_number(piece, level) < high

    def parts(opening: Opening) -> int:
        begin = 1 if opening.from_level is None or inside(opening.from_level) else 0
        return begin + (1 if rejoins(piece, opening) and inside(end_level(piece, opening)) else 0)

    return sum(parts(opening) for opening in piece.openings)


def _at_rate(draft: Draft, edge: _Edge, run: EdgeRun, number: int) -> None:
    """As many moves as there are so many rows in the run: at least one."""
    lines: Lines = []
    for i, (terms, rate) in enumerate(zip(edge.terms, run.rates, strict=True)):
        over = 2 * terms.pairs(number) - rate.rows * terms.step[number]
        lines += [(i, over.within(rate.spare, rate.spare + rate.rows - 1)), (i, terms.step[number] >= 1)]
    clause = said(
        "moves-at-rate",
        edge=_named(edge, run),
        stitches=run.rates[0].stitches,
        rows=run.rates[0].rows,
        level=run.to_level,
        run=number,
    )
    asks(draft, clause, (run.origin,), lines, len(edge.terms))


def _room(draft: Draft, edge: _Edge, run: EdgeRun, number: int) -> None:
    """So many moves need so many rows. A new width is knitted for a row at least before the run ends."""
    lines: Lines = []
    every = 1
    parts = partings(edge.piece, run, number, edge.runs) if edge.outwards > 0 else 0
    for i, terms in enumerate(edge.terms):
        found = [_rows_for(edge, run, terms, number, way, (parts, run.steps[i] if run.steps else 0)) for way in terms.ways[number]]
        lines += [(i, line) for line, _ in found]
        # The way that is written comes first; the other one is only what whole repeats may leave of it.
        every = max(every, found[0][1])
    by_stitches = run.path == "slope" or run.way.at_once > 1
    clause = said(
        "moves-at-most",
        edge=_named(edge, run),
        stitches=run.way.at_once if by_stitches else 0,
        rows=every if by_stitches else 2,
        run=number,
    )
    asks(draft, clause, (run.origin,), lines, len(edge.terms))


def _rows_for(edge: _Edge, run: EdgeRun, terms: EdgeTerms, number: int, way: int, parted: tuple[int, int]) -> tuple[Linear, int]:
    """The rows that a run's moves that `way` need, and once in how many rows it moves. `parted`: how often the piece parts or
    rejoins within it, and in how many steps it goes."""
    parts, steps = parted
    pairs, cast, outer = terms.pairs(number), terms.cast_off[number], edge.outwards > 0
    size = way * terms.moved(number) - cast
    inwards = edge.outwards * way < 0
    if run.way.inside:
        # The first move is made after so many rows too, and a row is knitted after the last.
        every = rows_inside(inwards)
        return 2 * run.way.at_once * pairs >= every * size + run.way.at_once, every
    at_once = run.way.at_once if inwards else 1
    if run.path == "steps":
        return pairs >= steps + (1 if outer or cast else 0) + parts, 2
    if at_once > 1 or (run.path == "slope" and (inwards or run.way.kind == "fashioned")):
        # One move every row; after a cast-off the first move waits for the other end's turn, and an increase needs a stitch
        # below the last row's to be filled from.
        waits = cast or (number == 0 and not inwards)
        return 2 * at_once * pairs - size >= (2 if waits else 1) * at_once, 1
    if run.path == "slope":
        return pairs - size >= (1 if outer or cast else 0) + parts, 2
    return pairs >= (2 if outer or cast else 1) + parts, 2
