"""Outer edges in the programme: where each of them is at the start and after each of its runs."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from walewright.design.model import Design, EdgeRun, PerSize, Piece
from walewright.design.model.per_size import minus, plus
from walewright.record import record, replace
from walewright.report.model import EDGE_FIGURES
from walewright.report.said import Fact, said
from walewright.solve.algebra.programme import Draft, Rule, RuleKind, Wish
from walewright.solve.algebra.quantities import BEYOND_COST, LESSER, OFF_COST, NumberWanted, Quantity, equal_sizes, want
from walewright.solve.algebra.ranges import want_range
from walewright.solve.algebra.sums import NOTHING, Terms
from walewright.solve.algebra.terms import EdgeTerms, ways
from walewright.solve.edges.gauge import fabric_below, level_number
from walewright.solve.edges.lean import may_lean
from walewright.solve.edges.multiples import leeway, slack
from walewright.solve.edges.stepping import StepsInTurn, steps_in_turn, steps_off
from walewright.solve.edges.widths import BOTH, WidthAcross, across
from walewright.trade.sides import EdgeSide, WhichEdges

PerSizeTerms = tuple[Terms, ...]

EdgeClause = dict[str, Fact]
"""The facts of a figure or a clause that say which edge it is of, and where."""

ACROSS_RUN = "across"
"""Path of a run without rows: the loops are hung back evenly on more or fewer needles."""

ONE_EDGE = 1.0
"""Stitches that one edge by itself may be off so that the width between two comes out."""


def new(draft: Draft, design: Design, piece: Piece, name: str) -> PerSizeTerms:
    """A new number of the piece in every size."""
    return tuple(draft.variable(f"{piece.name}: {name}", piece.name, i) for i in range(len(design.sizes)))


def runs_of(piece: Piece, side: WhichEdges) -> tuple[EdgeRun, ...]:
    """The runs of the outer edge at that side."""
    return piece.left if side == "left" else piece.right


def outer_edges(
    draft: Draft, design: Design, piece: Piece, rows: Sequence[Mapping[str, Terms]], one: PerSizeTerms
) -> tuple[tuple[EdgeTerms, ...], tuple[EdgeTerms, ...]]:
    """Both edges of a piece, per size. Edges alike share their numbers: then widths are wanted, else each edge's distance from
    the centre. `one` is the middle stitch of an odd number."""
    start = _start(draft, design, piece, one)
    if piece.symmetric:
        left = _edge(_LedEdge(draft, design, piece, "both", one), start, rows)
        return left, tuple(_beside(edge, extra) for edge, extra in zip(left, one, strict=True))
    right_start = plus(start, one)
    zero: PerSizeTerms = pinned(draft, design, piece) if may_lean(piece) else (NOTHING,) * len(start)
    left = _edge(_LedEdge(draft, design, piece, "left", one, zero), start, rows)
    right = _edge(_LedEdge(draft, design, piece, "right", one, zero), right_start, rows)
    _both_together(draft, design, piece, left, right)
    return left, right


def _both_together(draft: Draft, design: Design, piece: Piece, left: Sequence[EdgeTerms], right: Sequence[EdgeTerms]) -> None:
    """Of a piece whose edges go their own ways the width is what is measured: two edges, each as near as it can be, may be a stitch
    off together. Wherever both have come to a place, the sum of the two is wanted as well."""
    if piece.start_most is not None or any(run.most is not None for run in (*piece.left, *piece.right)):
        return
    for name in [level.name for level in piece.levels[1:]]:
        come = [come_to(piece, side, name) for side in ("left", "right")]
        ending = [run for run in (*piece.left, *piece.right) if run.to_level == name]
        if None in come or not any(any(run.change) for run in ending) or any(run.path == ACROSS_RUN for run in ending):
            continue
        runs = [run for side, last in zip((piece.left, piece.right), come, strict=True) for run in side[: (last or 0) + 1]]
        cm = [at.of(piece.start_width) + sum(at.of(run.change) for run in runs) for at in design.each_size]
        by = _reckoned(design, piece, name)
        wanted = tuple(b.stitches(c) for b, c in zip(by, cm, strict=True))
        terms = tuple(one.after[come[0] or 0] + other.after[come[1] or 0] for one, other in zip(left, right, strict=True))
        draft.wishes += [Wish(t, w, OFF_COST, BEYOND_COST) for t, w in zip(terms, wanted, strict=True) if t]
        equal_sizes(draft, terms, wanted)


def come_to(piece: Piece, side: EdgeSide, name: str) -> int | None:
    """Number of the run that ends at a level, or leads straight on past it; None where the edge is on its way there."""
    to = level_number(piece, name)
    for number, run in enumerate(runs_of(piece, side)):
        end = level_number(piece, run.to_level)
        if end == to or (end > to and not any(run.change)):
            return number
        if end > to:
            return None
    return len(runs_of(piece, side)) - 1


def pinned(draft: Draft, design: Design, piece: Piece) -> PerSizeTerms:
    """As many stitches as the bed has needles, by which the places of a one-sided piece's edges are counted up: an edge may be
    drawn past the middle of the start, and no number of the programme is less than none."""
    unit = new(draft, design, piece, "zero")
    sizes = len(design.sizes)
    lines = tuple((i, terms.equals(1)) for i, terms in enumerate(unit))
    clause = said("from-the-middle", piece=piece.name)
    draft.rules.append(Rule(clause, RuleKind.CONSTRUCTION, (piece.origin,), (clause,) * sizes, lines))
    return tuple(design.machine.needles * terms for terms in unit)


def _beside(edge: EdgeTerms, one: Terms) -> EdgeTerms:
    """The right edge of a piece whose edges are alike."""
    if not one:
        return edge
    after = tuple(place + one for place in edge.after)
    return replace(edge, start=edge.start + one, after=after)


def doubled(terms: PerSizeTerms, one: PerSizeTerms) -> tuple[PerSizeTerms, int]:
    """(terms, factor) of a width of which `terms` is the left half: even, or odd with the middle stitch."""
    if not any(one):
        return terms, 2
    return tuple(2 * t + extra for t, extra in zip(terms, one, strict=True)), 1


def _start(draft: Draft, design: Design, piece: Piece, one: PerSizeTerms) -> PerSizeTerms:
    """Stitches left of the centre mark at the start."""
    half = new(draft, design, piece, "start")
    terms, factor = doubled(half, one)
    by = _reckoned(design, piece, piece.levels[0].name)
    quantity = Quantity(
        name=said("start", piece=piece.name),
        pieces=(piece.name,),
        origin=piece.origin,
        terms=terms,
        factor=factor,
        wanted=tuple(b.stitches(w) for b, w in zip(by, piece.start_width, strict=True)),
        cm=piece.start_width,
        tolerance=(max(2.0, slack(design, piece, "left", 0)),) * len(design.sizes),
        clause=said("starts-wide", piece=piece.name),
        times=piece.copies,
        either=piece.parity == "either",
        figure=("width", piece.name, piece.levels[0].name),
    )
    most = piece.start_most or piece.start_width
    want_range(draft, quantity, tuple(b.stitches(w) for b, w in zip(by, most, strict=True)), most)
    return half


def _reckoned(design: Design, piece: Piece, level: str, side: WhichEdges = BOTH, above: bool = False) -> tuple[WidthAcross, ...]:
    """How widths are reckoned at a level, per size."""
    return tuple(across(at, piece, level, side, above) for at in design.each_size)


@dataclass(slots=True)
class _Walk:
    """Where an edge has come to: its terms, and how far from the centre it is wanted, in cm (`least` to `most`)."""

    now: PerSizeTerms
    least: PerSize
    most: PerSize
    by: tuple[WidthAcross, ...]
    """How it was reckoned where it was measured last."""

    @property
    def free(self) -> bool:
        """Whether it may have come to several places."""
        return any(abs(a - b) > 1e-9 for a, b in zip(self.least, self.most, strict=True))

    def lead(self, run: EdgeRun, by: tuple[WidthAcross, ...]) -> tuple[tuple[int, ...], ...]:
        """On over a run that is reckoned `by`; which ways it may go in each size. A width to come to takes the least
        change from the farthest place, and the most from the nearest."""
        if run.most is None:
            ends = [self.least, self.most], [run.change, run.change]
        else:
            ends = [self.most, self.least], [run.change, run.most]
        one, other = (plus(*each) for each in zip(*ends, strict=True))
        least, most = tuple(map(min, one, other)), tuple(map(max, one, other))
        if all(abs(b.per_cm - a.per_cm) < 1e-9 and abs(b.spare - a.spare) < 1e-9 for a, b in zip(self.by, by, strict=True)):
            # Straight on is straight on, wherever that is.
            found = tuple(ways(a, b) for a, b in zip(run.change, run.most or run.change, strict=True))
        else:
            # In another fabric as wide is more or fewer stitches.
            moves = zip(self.by, by, self.least, self.most, least, most, strict=True)
            found = tuple(
                ways(now.stitches(c) - then.stitches(b), now.stitches(d) - then.stitches(a)) for then, now, a, b, c, d in moves
            )
        self.least, self.most, self.by = least, most, by
        return found


def _halved(by: tuple[WidthAcross, ...]) -> tuple[WidthAcross, ...]:
    """The same for half a width."""
    return tuple(replace(b, spare=b.spare / 2) for b in by)


@record
class _LedEdge:
    """An outer edge that is led from the start to the top; `side` "both": it stands for two alike. `one` is the middle stitch of an
    odd number, `zero` what its places are counted up by, if at all."""

    draft: Draft
    design: Design
    piece: Piece
    side: WhichEdges
    one: PerSizeTerms
    zero: PerSizeTerms = ()


def _edge(of: _LedEdge, start: PerSizeTerms, rows: Sequence[Mapping[str, Terms]]) -> tuple[EdgeTerms, ...]:
    """The numbers of an edge, per size."""
    draft, design, piece, side = of.draft, of.design, of.piece, of.side
    count = len(design.sizes)
    nothing: PerSizeTerms = (NOTHING,) * count
    first = piece.start_width
    begun = _reckoned(design, piece, piece.levels[0].name, side)
    walk = _Walk(start, tuple(w / 2 for w in first), tuple(w / 2 for w in piece.start_most or first), begun)
    after: list[PerSizeTerms] = []
    casts: list[PerSizeTerms] = []
    steps: list[PerSizeTerms] = []
    directions: list[tuple[tuple[int, ...], ...]] = []
    in_turn: list[StepsInTurn] = []
    if side == BOTH:
        walk.by = _halved(walk.by)
    levels = [piece.levels[0].name]
    for run in piece.right if side == "right" else piece.left:
        moving = any(run.change) or any(run.most or ())
        still: tuple[tuple[int, ...], ...] = ((1,),) * count
        directions.append(_move(of, run, walk) if moving else still)
        after.append(walk.now)
        cast: EdgeClause = {"piece": piece.name, "opening": "", "level": run.to_level}
        casts.append(cast_off(draft, design, piece, run, cast) if any(run.cast_off) else nothing)
        counted = moving and (run.equal_steps or bool(run.rates))
        steps.append(new(draft, design, piece, f"{run.path} to {run.to_level}") if counted else nothing)
        in_turn.append(steps_in_turn(draft, design, piece, run, side, _at(piece, side, run)))
        levels.append(run.to_level)
    return tuple(
        EdgeTerms(
            start=at.of(start),
            after=at.each(after),
            cast_off=at.each(casts),
            step=at.each(steps),
            from_rows=tuple(at.of(rows)[level] for level in levels[:-1]),
            to_rows=tuple(at.of(rows)[level] for level in levels[1:]),
            ways=at.each(directions),
            in_turn=at.each(in_turn),
        )
        for at in design.each_size
    )


def _move(of: _LedEdge, run: EdgeRun, walk: _Walk) -> tuple[tuple[int, ...], ...]:
    """Leads the walk over a run that changes the width, and wants what is written of it; which ways it may go."""
    draft, design, piece, side = of.draft, of.design, of.piece, of.side
    alike, before, was_free = side == BOTH, walk.now, walk.free
    name = f"width at {run.to_level}" if alike else f"{side} at {run.to_level}"
    walk.now = new(draft, design, piece, f"{name} across" if run.path == ACROSS_RUN else name)
    if any(of.zero):
        walk.now = minus(walk.now, of.zero)
    # Loops hung back across the work are measured in what is knitted with them, shaped edges in what they were knitted in.
    by = _reckoned(design, piece, run.to_level, side, run.path == ACROSS_RUN)
    found = walk.lead(run, _halved(by) if alike else by)
    if run.rates:
        # Where it comes to follows from its rows, and is not wanted.
        return found
    which: EdgeSide = "right" if side == "right" else "left"
    number = runs_of(piece, side).index(run)
    if may_turn := leeway(design, piece, which, number):
        # Where whole repeats take more than a small move has, what is left of it may go the other way.
        found = tuple(
            f if len(f) > 1 or abs(c) * b.per_cm > may_turn else (f[0], -f[0])
            for f, c, b in zip(found, run.change, by, strict=True)
        )
    loose = slack(design, piece, which, number + 1)
    if was_free and run.most is None:
        # What the edge starts from is free: how far it moves is wanted, not where it comes to.
        moved = tuple(d * (now - then) for now, then, (d, *_) in zip(walk.now, before, found, strict=True))
        want(draft, _by_so_far(piece, side, run, moved, by, loose))
    else:
        least, most = (tuple((2 if alike else 1) * p for p in places) for places in (walk.least, walk.most))
        terms, unit = doubled(walk.now, of.one) if alike else (walk.now, 1)
        # The centre line of an odd number goes through the needle right of the mark.
        half = 0.0 if alike else 0.5 if side == "right" else -0.5
        extra = tuple(half * piece.odd(i) for i in range(len(by)))
        wanted, farthest = (
            tuple(b.stitches(c) + more for b, c, more in zip(by, places, extra, strict=True)) for places in (least, most)
        )
        place = _placed(piece, side, run, NumberWanted(terms, unit, wanted, least), loose)
        want_range(draft, replace(place, signed=any(of.zero)), farthest, most)
    return found


def _at(piece: Piece, side: WhichEdges, run: EdgeRun) -> EdgeClause:
    return {"piece": piece.name, "level": run.to_level, "side": "" if side == BOTH else side}


def _placed(piece: Piece, side: WhichEdges, run: EdgeRun, asked: NumberWanted, loose: float) -> Quantity:
    """Where a run comes to: the width of two edges alike, or how far from the centre one edge is."""
    alike = side == BOTH
    # Steps are equal, so each of them may be off by half a stitch.
    sides = 2 if alike else 1
    off = tuple(float(max(sides + sides * n / 2, loose)) for n in steps_off(run, len(asked.cm)))
    return Quantity(
        name=said("width-wanted" if alike else "edge-at", **_at(piece, side, run)),
        pieces=(piece.name,),
        origin=run.origin,
        terms=asked.terms,
        factor=asked.factor,
        wanted=asked.wanted,
        cm=asked.cm,
        tolerance=off,
        clause=said("is-wide-at" if alike else "is-from-the-centre", **_at(piece, side, run)),
        near=0.5 if alike else ONE_EDGE,
        times=piece.copies,
        either=alike and piece.parity == "either",
        figure=("width" if side == "both" else EDGE_FIGURES[side], piece.name, run.to_level),
    )


def _by_so_far(
    piece: Piece, side: WhichEdges, run: EdgeRun, moved: PerSizeTerms, by: tuple[WidthAcross, ...], loose: float
) -> Quantity:
    """By how much a run moves its edge."""
    wide = tuple(abs(c) for c in run.change)
    return Quantity(
        name=said("edge-move", **_at(piece, side, run)),
        pieces=(piece.name,),
        origin=run.origin,
        terms=moved,
        factor=1,
        wanted=tuple(c * b.per_cm for b, c in zip(by, wide, strict=True)),
        cm=wide,
        tolerance=tuple(max(1 + n / 2, loose) for n in steps_off(run, len(wide))),
        clause=said("edge-moves", **_at(piece, side, run)),
    )


def cast_off(draft: Draft, design: Design, piece: Piece, run: EdgeRun, edge: EdgeClause) -> PerSizeTerms:
    """What a run of an `edge` casts off at once, per size."""
    per_cm = fabric_below(design, piece, run.to_level).stitches_per_cm
    terms = new(draft, design, piece, f"{edge['opening']} cast off before {run.to_level}")
    want(
        draft,
        Quantity(
            name=said("begun-cast-off", **edge),
            pieces=(piece.name,),
            origin=run.origin,
            terms=terms,
            factor=1,
            wanted=tuple(c * per_cm for c in run.cast_off),
            cm=run.cast_off,
            tolerance=(1.0,) * len(design.sizes),
            clause=said("begins-cast-off", **edge),
            share=LESSER,
            figure=("cast-off", piece.name, run.to_level) if piece.symmetric and run in piece.left else ("", "", ""),
        ),
    )
    return terms
