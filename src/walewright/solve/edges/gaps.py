"""Openings in the programme: where a gap begins, how wide it is and where its edges go."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Literal

from walewright.design.model import Design, DesignInSize, EdgeRun, Opening, Piece
from walewright.design.model.per_size import minus, plus, times
from walewright.record import replace
from walewright.report.said import said
from walewright.solve.algebra.programme import Draft
from walewright.solve.algebra.quantities import LESSER, NumberWanted, Quantity, want
from walewright.solve.algebra.ranges import signed, want_place, want_range
from walewright.solve.algebra.sums import NOTHING, Terms
from walewright.solve.algebra.terms import EdgeTerms, OpeningTerms, ways
from walewright.solve.edges.edges import EdgeClause, PerSizeTerms, cast_off, doubled, new
from walewright.solve.edges.gauge import fabric_at, fabric_below, level_number, rows_down
from walewright.solve.edges.stepping import StepsInTurn, steps_in_turn, steps_off
from walewright.trade.sides import SIDES, EdgeSide, WhichEdges

SHUT_CM = 1e-6
"""Width of a gap that has narrowed to nothing."""


def gap_runs(opening: Opening, side: EdgeSide) -> tuple[EdgeRun, ...]:
    """The runs of the gap's edge at that side: a positive change widens it."""
    return opening.left if side == "left" else opening.right


def alike(piece: Piece, opening: Opening) -> bool:
    """Whether the gap lies in the middle and its edges are each other's mirror image. Of an odd number of stitches taken at its
    parting, which narrow to nothing, one edge moves a stitch more than the other."""
    if piece.parity != "even" and any(flat and abs(wide) < SHUT_CM for flat, wide in zip(opening.flat, opening.width, strict=True)):
        return False
    return not any(opening.centre) and [_shape(r) for r in opening.left] == [_shape(r) for r in opening.right]


def _shape(run: EdgeRun) -> EdgeRun:
    return replace(run, name="", origin=replace(run.origin, path=""))


def end_level(piece: Piece, opening: Opening) -> str:
    """The level where the parts end or rejoin."""
    return opening.to_level or piece.levels[-1].name


def rejoins(piece: Piece, opening: Opening) -> bool:
    """Whether the parts come together again below the top."""
    return level_number(piece, end_level(piece, opening)) < len(piece.levels) - 1


def opening_terms(
    draft: Draft, design: Design, piece: Piece, opening: Opening, rows: Sequence[Mapping[str, Terms]], one: PerSizeTerms
) -> tuple[OpeningTerms, ...]:
    """The numbers of an opening, per size."""
    end = end_level(piece, opening)
    to_rows = [of[end] for of in rows]
    if opening.from_level is None:
        depth = _depth(draft, design, piece, opening)
        from_rows = minus(to_rows, depth)
    else:
        from_rows = tuple(of[opening.from_level] for of in rows)
        depth = minus(to_rows, from_rows)
    if alike(piece, opening):
        left, right = _alike(draft, design, piece, opening, one)
    else:
        left, right = _apart(draft, design, piece, opening, one)
    made: list[OpeningTerms] = []
    for at in design.each_size:
        edges: list[EdgeTerms] = []
        for side, edge in zip(SIDES, (at.of(left), at.of(right)), strict=True):
            runs = gap_runs(opening, side)
            come = (at.of(from_rows), *(at.of(rows)[run.to_level] for run in runs))
            directions = tuple(ways(at.of(run.change), at.of(run.most or run.change)) for run in runs)
            edges.append(replace(edge, from_rows=come[:-1], to_rows=come[1:], ways=directions))
        made.append(OpeningTerms(at.of(depth), edges[0], edges[1], at.of(from_rows), at.of(to_rows)))
    return tuple(made)


def _quantity(piece: Piece, opening: Opening, figure: str, clause: str, asked: NumberWanted, level: str = "") -> Quantity:
    part: EdgeClause = {"part": opening.name, "piece": piece.name, "place": level}
    return Quantity(
        name=said(figure, **part),
        pieces=(piece.name,),
        origin=opening.origin,
        terms=asked.terms,
        factor=asked.factor,
        wanted=asked.wanted,
        cm=asked.cm,
        unit="st",
        # What is nothing is nothing: no stitch is taken where none is wanted.
        tolerance=tuple(2.0 if w else 0.0 for w in asked.wanted),
        clause=said(clause, **part),
    )


def _depth(draft: Draft, design: Design, piece: Piece, opening: Opening) -> PerSizeTerms:
    terms = new(draft, design, piece, f"{opening.name} depth")
    end = end_level(piece, opening)
    wanted = tuple(rows_down(at, piece, end, at.of(opening.depth)) for at in design.each_size)
    depth = _quantity(piece, opening, "part-depth", "is-deep", NumberWanted(terms, 2, wanted, opening.depth))
    want(draft, replace(depth, unit="rows"))
    return terms


def _flat_per_cm(at: DesignInSize, piece: Piece, opening: Opening) -> float:
    """Stitches to the cm at the parting."""
    if opening.from_level is not None:
        return fabric_below(at.design, piece, opening.from_level).stitches_per_cm
    end = level_number(piece, end_level(piece, opening))
    return fabric_at(at, piece, at.of(piece.levels[end].height) - at.of(opening.depth)).stitches_per_cm


def _steps(draft: Draft, design: Design, piece: Piece, opening: Opening, runs: Sequence[EdgeRun]) -> list[PerSizeTerms]:
    nothing: PerSizeTerms = (NOTHING,) * len(design.sizes)
    return [
        new(draft, design, piece, f"{opening.name} {r.path} to {r.to_level}")
        if bool(r.rates) or (r.equal_steps and any(r.change))
        else nothing
        for r in runs
    ]


def _casts(draft: Draft, design: Design, piece: Piece, opening: Opening, runs: Sequence[EdgeRun]) -> list[PerSizeTerms]:
    nothing: PerSizeTerms = (NOTHING,) * len(design.sizes)
    edge: EdgeClause = {"piece": piece.name, "opening": opening.name}
    return [cast_off(draft, design, piece, r, {**edge, "level": r.to_level}) if any(r.cast_off) else nothing for r in runs]


def _in_turn(
    draft: Draft, design: Design, piece: Piece, opening: Opening, runs: Sequence[EdgeRun], side: WhichEdges | Literal[""]
) -> list[StepsInTurn]:
    """By size, the steps of each run that are of several sizes."""
    edge: EdgeClause = {"piece": piece.name, "opening": opening.name, "side": side}
    of_runs = [
        steps_in_turn(draft, design, piece, r, f"{opening.name} {side}".rstrip(), {**edge, "level": r.to_level}) for r in runs
    ]
    return [at.each(of_runs) for at in design.each_size]


# ----------------------------------------------------------------- a gap in the middle


def _alike(
    draft: Draft, design: Design, piece: Piece, opening: Opening, one: PerSizeTerms
) -> tuple[tuple[EdgeTerms, ...], tuple[EdgeTerms, ...]]:
    """Both edges of a gap in the middle share their numbers. Of a gap that takes stitches in a piece of an odd number, the
    middle one is taken too; one that takes none parts the piece beside it."""
    middle = tuple(m if flat else NOTHING for m, flat in zip(one, opening.flat, strict=True))
    runs = opening.left
    width = opening.flat
    either = piece.parity == "either"
    moving = [bool(any(r.change) or any(r.most or ())) for r in runs]
    if any(opening.flat):
        per_cm = [_flat_per_cm(at, piece, opening) for at in design.each_size]
        half = new(draft, design, piece, f"{opening.name} flat part")
        terms, factor = doubled(half, middle)
        wanted = times(opening.flat, per_cm)
        # A square gap's flat part is its width, which everybody sees.
        name, clause, share = ("flat-part", "is-flat-middle", LESSER) if any(moving) else ("part-width", "is-wide", 1.0)
        flat = _quantity(piece, opening, name, clause, NumberWanted(terms, factor, wanted, opening.flat))
        want(draft, replace(flat, share=share, either=either))
    else:
        half = (NOTHING,) * len(design.sizes)
    now, after = half, list[PerSizeTerms]()
    least = most = width
    for number, run in enumerate(runs):
        least = tuple(w + 2 * c for w, c in zip(least, run.change, strict=True))
        most = tuple(w + 2 * c for w, c in zip(most, run.most or run.change, strict=True))
        if moving[number]:
            last = not any(moving[number + 1 :])
            now = new(draft, design, piece, f"{opening.name} width" + ("" if last else f" at {run.to_level}"))
            terms, factor = doubled(now, middle)
            per = fabric_below(design, piece, run.to_level).stitches_per_cm
            level = "" if last else run.to_level
            wanted = tuple(w * per for w in least)
            after.append(now)
            if run.rates:
                continue
            quantity = _quantity(piece, opening, "part-width", "is-wide", NumberWanted(terms, factor, wanted, least), level)
            want_range(draft, replace(quantity, either=either), tuple(w * per for w in most), most)
        else:
            after.append(now)
    casts, steps = _casts(draft, design, piece, opening, runs), _steps(draft, design, piece, opening, runs)
    in_turn = _in_turn(draft, design, piece, opening, runs, "")
    left = tuple(
        EdgeTerms(at.of(half), at.each(after), at.each(casts), at.each(steps), in_turn=at.of(in_turn)) for at in design.each_size
    )
    right = tuple(
        replace(edge, start=edge.start + m, after=tuple(place + m for place in edge.after)) if m else edge
        for edge, m in zip(left, middle, strict=True)
    )
    return left, right


# ----------------------------------------------------------------- any other gap


def _apart(
    draft: Draft, design: Design, piece: Piece, opening: Opening, one: PerSizeTerms
) -> tuple[tuple[EdgeTerms, ...], tuple[EdgeTerms, ...]]:
    """Edges of their own: the parting has a place and a width, and every run moves by so much."""
    per_cm = [_flat_per_cm(at, piece, opening) for at in design.each_size]
    centre = opening.centre or tuple(0.0 for _ in per_cm)
    flat = times(opening.flat, per_cm)
    # The middle of a piece of an odd number lies half a stitch right of the centre mark.
    middle = tuple(c * per + (0.5 if extra else 0.0) for c, per, extra in zip(centre, per_cm, one, strict=True))
    wanted_right = tuple(m + f / 2 for m, f in zip(middle, flat, strict=True))
    right = signed(draft, f"{piece.name}: {opening.name} place", piece.name, wanted_right)
    if any(flat):
        wanted_left = tuple(f / 2 - m for m, f in zip(middle, flat, strict=True))
        left = signed(draft, f"{piece.name}: {opening.name} place at the left", piece.name, wanted_left)
        taken = plus(left, right)
        parting = _quantity(piece, opening, "flat-part", "is-flat-parting", NumberWanted(taken, 1, flat, opening.flat))
        want(draft, replace(parting, share=LESSER))
    else:
        left = tuple(-terms for terms in right)
    part: EdgeClause = {"part": opening.name, "piece": piece.name}
    side = "right" if sum(centre) >= 0 else "left"
    want_place(
        draft,
        Quantity(
            name=said("part-place", **part),
            pieces=(piece.name,),
            origin=opening.origin,
            terms=minus(right, left),
            factor=1,
            wanted=tuple(2 * m for m in middle),
            cm=centre,
            tolerance=(3.0,) * len(design.sizes),
            clause=said("is-off-centre", **part, side=side),
            share=LESSER,
        ),
    )
    return (
        _moving(draft, design, piece, opening, "left", left),
        _moving(draft, design, piece, opening, "right", right),
    )


def _moving(
    draft: Draft, design: Design, piece: Piece, opening: Opening, side: EdgeSide, start: PerSizeTerms
) -> tuple[EdgeTerms, ...]:
    runs = gap_runs(opening, side)
    now, after = start, list[PerSizeTerms]()
    for run in runs:
        edge: EdgeClause = {"part": opening.name, "piece": piece.name, "side": side, "level": run.to_level}
        if any(run.change) or any(run.most or ()):
            move = new(draft, design, piece, f"{opening.name} {side} to {run.to_level}")
            signs = [1 if c >= 0 else -1 for c in run.change]
            now = tuple(t + s * m for t, m, s in zip(now, move, signs, strict=True))
            after.append(now)
            if run.rates:
                continue
            per_cm = fabric_below(design, piece, run.to_level).stitches_per_cm
            least, most = (tuple(abs(c) for c in changes) for changes in (run.change, run.most or run.change))
            quantity = Quantity(
                name=said("part-move", **edge),
                pieces=(piece.name,),
                origin=run.origin,
                terms=move,
                factor=1,
                wanted=tuple(c * per_cm for c in least),
                cm=least,
                tolerance=tuple(1 + n / 2 for n in steps_off(run, len(design.sizes))),
                clause=said("part-moves", **edge),
            )
            want_range(draft, quantity, tuple(c * per_cm for c in most), most)
        else:
            after.append(now)
    casts, steps = _casts(draft, design, piece, opening, runs), _steps(draft, design, piece, opening, runs)
    in_turn = _in_turn(draft, design, piece, opening, runs, side)
    return tuple(
        EdgeTerms(at.of(start), at.each(after), at.each(casts), at.each(steps), in_turn=at.of(in_turn)) for at in design.each_size
    )
