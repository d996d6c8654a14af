"""What a bed and a pair of hands ask of a piece's outer edges, as rules of the programme."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise, product

from walewright.design.model import Design, EdgeRun, Opening, Origin, Piece, Rate
from walewright.solve.edges import ACROSS_RUN, runs_of
from walewright.solve.gaps import alike, end_level, gap_runs, rejoins
from walewright.solve.gauge import level_number
from walewright.solve.inside import inside_rules
from walewright.solve.lean import may_lean
from walewright.solve.multiples import multiple_rules
from walewright.solve.programme import Draft, Kind, Linear, Rule, Terms, total
from walewright.solve.terms import SIDES, EdgeTerms, PieceTerms

Lines = list[tuple[int, Linear]]


def piece_rules(draft: Draft, design: Design, piece: Piece, terms: Sequence[PieceTerms]) -> None:
    """Writes the rules of a piece into the draft."""
    _levels(draft, piece, terms)
    _bed(draft, design, piece, terms)
    for side in SIDES[:1] if piece.symmetric else SIDES:
        edge = _Edge(piece, f"the edge of the {piece.name}", runs_of(piece, side), tuple(t.edge(side) for t in terms), 1)
        _edge_rules(draft, edge)
    _left_over(draft, piece, terms)
    for number, opening in enumerate(piece.openings):
        what = f"the edge of the {opening.name} of the {piece.name}"
        for side in SIDES[:1] if alike(opening) else SIDES:
            edges = tuple(t.openings[number].edge(side) for t in terms)
            _edge_rules(draft, _Edge(piece, what, gap_runs(opening, side), edges, -1, opening.shape == "edges"))
    inside_rules(draft, design, piece, terms)
    multiple_rules(draft, design, piece, terms)


@dataclass(frozen=True, slots=True)
class _Edge:
    """An edge of a part in all sizes. `outwards` is 1 where the part grows as the edge gets farther from the centre, -1 at a
    gap, which takes from the part."""

    piece: Piece
    what: str
    runs: tuple[EdgeRun, ...]
    terms: tuple[EdgeTerms, ...]
    outwards: int
    led: bool = True
    """Whether the author led it from level to level: a neck's edges were not."""


def rule(draft: Draft, name: str, kind: Kind, origins: tuple[Origin, ...], says: str, fails: str, lines: Lines, sizes: int) -> None:
    """Writes a rule that says the same in every size, if it says anything."""
    made = [(i, line) for i, line in lines if line.terms]
    if made:
        draft.rules.append(Rule(name, kind, origins, (says,) * sizes, (fails,) * sizes, tuple(made)))


def below(piece: Piece, run: int, side: str) -> str:
    """The level where a run begins: where the last one ended."""
    runs = runs_of(piece, side)
    return runs[run - 1].to_level if run else piece.levels[0].name


def _levels(draft: Draft, piece: Piece, terms: Sequence[PieceTerms]) -> None:
    lines: Lines = []
    for low, high in pairwise(piece.levels):
        lines += [(i, Linear(total((t.rows[high.name], 1), (t.rows[low.name], -1)), 1, None)) for i, t in enumerate(terms)]
    says = f"there are two rows or more between two levels of the {piece.name}"
    fails = f"there cannot be two rows or more between all levels of the {piece.name}"
    rule(draft, f"rising levels of the {piece.name}", Kind.CONSTRUCTION, (piece.origin,), says, fails, lines, len(terms))


def _bed(draft: Draft, design: Design, piece: Piece, terms: Sequence[PieceTerms]) -> None:
    half = design.machine.needles // 2
    lines: Lines = []
    for i, t in enumerate(terms):
        if may_lean(piece):
            pairs = product({t.left.start, *t.left.after}, {t.right.start, *t.right.after})
            widths = dict.fromkeys(total((a, 1), (b, 1)) for a, b in sorted(pairs))
            lines += [(i, Linear(width, None, 2 * half)) for width in widths]
            continue
        places = [place for edge in (t.left, t.right) for place in (edge.start, *edge.after)]
        # Its mirror image has to find room too, with the middle stitch still at the right.
        places += [total((place, 1), (t.one, 1)) for place in (t.left.start, *t.left.after) if t.one]
        lines += [(i, Linear(place, None, half)) for place in dict.fromkeys(places)]
    says = f"the bed has {design.machine.needles} needles"
    fails = f"the {piece.name} cannot hang on {design.machine.needles} needles"
    origins = (piece.origin, design.machine.origin)
    rule(draft, f"bed width of the {piece.name}", Kind.MACHINE, origins, says, fails, lines, len(terms))


def _edge_rules(draft: Draft, edge: _Edge) -> None:
    for number, run in enumerate(edge.runs):
        if not any(run.change) and not any(run.most or ()):
            continue
        if run.path == ACROSS_RUN:
            _across(draft, edge, run, number)
            continue
        _one_way(draft, edge, run, number)
        if run.rate is not None:
            _at_rate(draft, edge, run, run.rate, number)
        else:
            _room(draft, edge, run, number)


def _named(edge: _Edge, run: EdgeRun) -> str:
    return f"{edge.what} to `{run.to_level}`" if edge.led else edge.what


def _one_way(draft: Draft, edge: _Edge, run: EdgeRun, number: int) -> None:
    """A run moves in or out, not both; steps are equal; a cast-off is part of the move."""
    lines: Lines = []
    what = _named(edge, run)
    for i, terms in enumerate(edge.terms):
        away, ways = terms.moved(number), terms.ways[number]
        if not any((run.change[i], (run.most or run.change)[i])):
            lines.append((i, Linear(away, 0, 0)))
        if len(ways) == 1:
            lines.append((i, Linear(total((away, ways[0]), (terms.cast_off[number], -1)), 0, None)))
        if terms.step[number]:
            sign = terms.ways[number][0]
            # After a cast-off the steps divide what is left; a rate goes on from it.
            times = run.rate.stitches if run.rate is not None else run.steps
            steps = total((terms.step[number], times), (terms.cast_off[number], 1))
            lines.append((i, Linear(total((away, 1), (steps, -sign)), 0, 0)))
    says = f"{what} moves one way" + (" in equal steps" if run.steps else "")
    fails = says.replace(" moves ", " cannot move ")
    count = len(edge.terms)
    rule(draft, f"way of {what} ({number})", Kind.CONSTRUCTION, (run.origin,), says, fails, lines, count)
    if run.way.kind == "fashioned" and edge.outwards > 0 and not may_lean(edge.piece):
        need = run.way.inset + 1
        lines = [(i, Linear(place, need, None)) for i, e in enumerate(edge.terms) for place in (e.before(number), e.after[number])]
        says = f"shaping {run.way.inset} in takes {need} stitches on each side"
        fails = f"the {edge.piece.name} cannot be shaped {run.way.inset} in"
        rule(draft, f"stitches to shape {what} ({number})", Kind.CONSTRUCTION, (run.origin,), says, fails, lines, count)


def _left_over(draft: Draft, piece: Piece, terms: Sequence[PieceTerms]) -> None:
    """A piece keeps a stitch each side of the centre mark, or its centre stitch; of a one-sided piece both edges together keep
    those that are moved on a tool, and one more."""
    insets = [run.way.inset for run in (*piece.left, *piece.right) if run.way.kind == "fashioned"] if may_lean(piece) else []
    need = max((1 if piece.odd or may_lean(piece) else 2), *(inset + 1 for inset in insets), 0)
    lines: Lines = []
    for level in range(len(piece.levels)):
        for i, t in enumerate(terms):
            width = total((_place(piece, t, "left", level), 1), (_place(piece, t, "right", level), 1))
            lines.append((i, Linear(width, need, None)))
    stitches = "a stitch" if need == 1 else f"{need} stitches"
    says = f"the {piece.name} keeps {stitches} at the least"
    fails = f"the {piece.name} cannot keep {stitches} at all levels"
    rule(draft, f"stitches left of the {piece.name}", Kind.CONSTRUCTION, (piece.origin,), says, fails, lines, len(terms))


def _place(piece: Piece, terms: PieceTerms, side: str, level: int) -> Terms:
    """Where an edge is at a level, taken to have come all the way where a run goes on past it."""
    runs = piece.left if side == "left" else piece.right
    edge = terms.edge(side)
    number = next((n for n, run in enumerate(runs) if level_number(piece, run.to_level) >= level), len(runs) - 1)
    return edge.after[number] if level else edge.start


def _across(draft: Draft, edge: _Edge, run: EdgeRun, number: int) -> None:
    """Two loops go on a needle at most, and every second needle is left empty at most."""
    lines: Lines = []
    what = f"the loops of the {edge.piece.name} at `{run.to_level}`"
    for i, terms in enumerate(edge.terms):
        # Both edges move alike, so half the width tells of the whole.
        now, then = terms.after[number], terms.before(number)
        lines += [(i, Linear(total((now, 2), (then, -1)), 0, None)), (i, Linear(total((then, 2), (now, -1)), 0, None))]
        direction = terms.ways[number][0]
        if run.most is None:
            lines.append((i, Linear(total((now, direction), (then, -direction)), 0, None)))
    says = f"{what} are hung two on a needle, or every second needle is left empty, at most"
    fails = f"{what} cannot be hung back so: two go on a needle, or every second needle is left empty, at most"
    rule(draft, f"across {what} ({number})", Kind.CONSTRUCTION, (run.origin,), says, fails, lines, len(edge.terms))


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


def _at_rate(draft: Draft, edge: _Edge, run: EdgeRun, rate: Rate, number: int) -> None:
    """As many moves as there are so many rows in the run: at least one."""
    lines: Lines = []
    for i, terms in enumerate(edge.terms):
        over = total((terms.pairs(number), 2), (terms.step[number], -rate.rows))
        lines += [(i, Linear(over, rate.spare, rate.spare + rate.rows - 1)), (i, Linear(terms.step[number], 1, None))]
    what, stitches = _named(edge, run), "a stitch" if rate.stitches == 1 else f"{rate.stitches} stitches"
    rows = "every row" if rate.rows == 1 else f"every {rate.rows} rows"
    says = f"{what} moves by {stitches} {rows}, once at least"
    fails = f"{what} cannot move by {stitches} {rows}: the rows below `{run.to_level}` and the width there do not allow it"
    rule(draft, f"rate of {what} ({number})", Kind.CONSTRUCTION, (run.origin,), says, fails, lines, len(edge.terms))


def _room(draft: Draft, edge: _Edge, run: EdgeRun, number: int) -> None:
    """So many moves need so many rows. A new width is knitted for a row at least before the run ends."""
    lines: Lines = []
    every, what = 1, _named(edge, run)
    parts = partings(edge.piece, run, number, edge.runs) if edge.outwards > 0 else 0
    for i, terms in enumerate(edge.terms):
        found = [_rows_for(edge, run, terms, number, way, parts) for way in terms.ways[number]]
        lines += [(i, line) for line, _ in found]
        # The way that is written comes first; the other one is only what whole repeats may leave of it.
        every = max(every, found[0][1])
    one = "one stitch" if run.way.at_once == 1 else "two stitches"
    by_stitches = run.path == "slope" or run.way.at_once > 1
    how_often = "once a row" if by_stitches and every == 1 else "once in two rows"
    moves = f"moves by {one}" if by_stitches else "moves"
    says = f"{what} {moves} {how_often} at most"
    fails = f"{what} cannot move so far in so few rows: it {moves} {how_often} at most"
    rule(draft, f"room for {what} ({number})", Kind.CONSTRUCTION, (run.origin,), says, fails, lines, len(edge.terms))


def _rows_for(edge: _Edge, run: EdgeRun, terms: EdgeTerms, number: int, way: int, parts: int) -> tuple[Linear, int]:
    """The rows that a run's moves that `way` need, and once in how many rows it moves."""
    pairs, cast, outer = terms.pairs(number), terms.cast_off[number], edge.outwards > 0
    size = total((terms.moved(number), way), (cast, -1))
    inwards = edge.outwards * way < 0
    at_once = run.way.at_once if inwards else 1
    if run.path == "steps":
        return Linear(pairs, run.steps + (1 if outer or cast else 0) + parts, None), 2
    if at_once > 1 or (run.path == "slope" and (inwards or run.way.kind == "fashioned")):
        # One move every row; after a cast-off the first move waits for the other end's turn, and an increase needs a stitch
        # below the last row's to be filled from.
        waits = cast or (number == 0 and not inwards)
        return Linear(total((pairs, 2 * at_once), (size, -1)), (2 if waits else 1) * at_once, None), 1
    if run.path == "slope":
        return Linear(total((pairs, 1), (size, -1)), (1 if outer or cast else 0) + parts, None), 2
    return Linear(pairs, (2 if outer or cast else 1) + parts, None), 2
