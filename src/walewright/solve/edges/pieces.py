"""Pieces in the programme: which numbers a piece has in a size, as terms over variables."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from itertools import pairwise

from walewright.design.model import CountPerSize, Design, Level, Piece
from walewright.design.model.per_size import minus
from walewright.record import replace
from walewright.report.said import said
from walewright.solve.algebra.programme import Draft, Rule, RuleKind, Wish
from walewright.solve.algebra.quantities import HIDDEN, OFF_COST, STEADY, Quantity, want
from walewright.solve.algebra.ranges import CENTRAL, want_range
from walewright.solve.algebra.sums import NOTHING, Terms, Values
from walewright.solve.algebra.terms import EdgeTerms, OpeningTerms, PieceTerms, WedgeTerms, image
from walewright.solve.edges.edges import PerSizeTerms, new, outer_edges
from walewright.solve.edges.gaps import opening_terms
from walewright.solve.edges.gauge import course, highest, level_number, rows_to, stages
from walewright.solve.edges.held import end_of, wedge_terms
from walewright.solve.edges.inlays import slot_terms
from walewright.trade.sides import SIDES

__all__ = ["SIDES", "EdgeTerms", "Heights", "OpeningTerms", "PieceTerms", "WedgeTerms", "image", "piece_terms"]

FabricsBelow = tuple[tuple[str, tuple[float, ...]], ...]

Heights = dict[tuple[str, tuple[float, ...], tuple[float, ...], FabricsBelow], tuple[Terms, ...]]
"""(level, least and greatest heights, fabrics up to it) to its terms per size: levels alike in all of them share their rows."""


def piece_terms(draft: Draft, design: Design, piece: Piece, heights: Heights) -> tuple[PieceTerms, ...]:
    """The numbers of a piece that is no mirror image, per size; what is wanted of them is written into the draft."""
    one = _middle(draft, design, piece)
    rows = _levels(draft, design, piece, heights)
    left, right = outer_edges(draft, design, piece, rows, one)
    openings = tuple(opening_terms(draft, design, piece, o, rows, one) for o in piece.openings)
    wedges = tuple(
        wedge_terms(draft, design, piece=piece, wedge=w, rows=rows, edges={"left": left, "right": right}, openings=openings)
        for w in piece.wedges
    )
    slots = tuple(slot_terms(draft, design, piece, slot, one) for slot in piece.slots)
    _stages(draft, design, piece, rows)
    return tuple(
        PieceTerms(
            left=at.of(left),
            right=at.of(right),
            rows=at.of(rows),
            openings=at.each(openings),
            wedges=at.each(wedges),
            slots=at.each(slots),
            one=at.of(one),
        )
        for at in design.each_size
    )


def _middle(draft: Draft, design: Design, piece: Piece) -> PerSizeTerms:
    """The middle stitch of an odd number: a variable that is 1, so that sums of stitches need no numbers besides terms; where the
    number may be odd or even and is not settled yet, one that is 1 or 0."""
    sizes = range(len(design.sizes))
    open_yet = piece.parity == "either" and not piece.settled
    if not open_yet and not any(piece.odd(i) for i in sizes):
        return (NOTHING,) * len(sizes)
    name = f"{piece.name}: middle stitch"
    one = tuple(draft.variable(name, piece.name, i) if open_yet or piece.odd(i) else NOTHING for i in sizes)
    clause = said("odd-number", piece=piece.name)
    lines = tuple((i, terms.within(0 if open_yet else 1, 1)) for i, terms in enumerate(one) if terms)
    draft.rules.append(Rule(clause, RuleKind.CONSTRUCTION, (piece.origin,), (clause,) * len(one), lines))
    return one


def with_settled_numbers(design: Design, terms: Mapping[str, Sequence[PieceTerms]], values: Values) -> Design:
    """The design with the pieces of which the number of stitches may be odd or even as `values` have it in each size. What lies on
    needles in the middle of such a piece, a panel or a motif, can be placed only then, so all is counted again with it."""

    def settled(piece: Piece) -> Piece:
        if piece.parity != "either":
            return piece
        return replace(piece, settled=tuple(bool(of.one.at(values)) for of in terms[piece.name]))

    return replace(design, pieces=tuple(settled(piece) for piece in design.pieces))


def _key(design: Design, piece: Piece, level: Level) -> tuple[str, tuple[float, ...], tuple[float, ...], FabricsBelow]:
    return level.name, level.height, highest(level), course(design, piece, level.name)


def _levels(draft: Draft, design: Design, piece: Piece, heights: Heights) -> tuple[dict[str, Terms], ...]:
    found: tuple[dict[str, Terms], ...] = tuple({} for _ in design.sizes)
    # Where a wedge begins or ends gives way: what is seen is how high it is, and the top.
    hidden = {name for w in piece.wedges for name in (w.from_level, end_of(piece, w))} - {piece.levels[-1].name}
    for number, level in enumerate(piece.levels):
        key = _key(design, piece, level)
        if number == 0:
            terms: PerSizeTerms = (NOTHING,) * len(design.sizes)
        elif key in heights:
            terms = heights[key]
        else:
            terms = heights[key] = new(draft, design, piece, f"rows to {level.name}")
            alike = tuple(
                p.name for p in design.pieces if any(x.name == level.name and _key(design, p, x) == key for x in p.levels)
            )
            wanted, most = (tuple(rows_to(at, piece, level.name, free) for at in design.each_size) for free in (False, True))
            quantity = Quantity(
                name=said("height", level=level.name, piece=piece.name),
                pieces=alike,
                origin=level.origin,
                terms=terms,
                factor=2,
                wanted=wanted,
                cm=level.height,
                unit="rows",
                tolerance=(2.0,) * len(design.sizes),
                clause=said("is-up", level=level.name, piece=piece.name),
                share=HIDDEN if level.name in hidden else 1.0,
                figure=("height", piece.name, level.name),
                times=_most_often(number, (p for p in design.pieces if p.name in alike and number < len(p.levels))),
            )
            want_range(draft, quantity, most, highest(level))
        for i, of_size in enumerate(found):
            of_size[level.name] = terms[i]
    return found


def _most_often(number: int, pieces: Iterable[Piece]) -> CountPerSize:
    """How often the rows below that level are knitted in each size, in the piece that has them most often."""
    return tuple(map(max, zip(*(_times(piece, number) for piece in pieces), strict=True)))


def _times(piece: Piece, number: int) -> CountPerSize:
    """How often the rows below a level are knitted: in every copy, and a repeat's again and again."""
    times = piece.copies
    for repeat in piece.repeats:
        if level_number(piece, repeat.from_level) < number <= level_number(piece, repeat.to_level):
            times = tuple(n * max(repeat.times) for n in times)
    return times


def _stages(draft: Draft, design: Design, piece: Piece, rows: Sequence[Mapping[str, Terms]]) -> None:
    """The rows between two levels are wanted for themselves, not as what two rounded levels leave between them: an armhole
    meets its sleeve, and a held slope equally high in all sizes gets the same steps in all. Two free levels keep their
    distance, as far as that is not free too."""
    held = {(wedge.from_level, end_of(piece, wedge)) for wedge in piece.wedges}
    for (low, high), (_, _, fabric) in zip(pairwise(piece.levels), stages(design, piece), strict=True):
        if low is piece.levels[0] or (low.most is None) != (high.most is None):
            continue
        cm = minus(high.height, low.height)
        most = minus(highest(high), highest(low))
        ends = {"low": low.name, "high": high.name, "piece": piece.name}
        quantity = Quantity(
            name=said("rows-between", **ends),
            pieces=(piece.name,),
            origin=high.origin,
            terms=tuple(r[high.name] - r[low.name] for r in rows),
            factor=2,
            wanted=tuple(c * fabric.rows_per_cm for c in cm),
            cm=cm,
            unit="rows",
            tolerance=(3.0,) * len(design.sizes),
            clause=said("is-between", **ends),
            share=STEADY if (low.name, high.name) in held else 1.0,
            kind=RuleKind.BETWEEN,
            times=_times(piece, level_number(piece, high.name)),
        )
        if low.most is None:
            want(draft, quantity)
        else:
            # As far as nothing else asks for it: each of them may go anywhere in its own range.
            for terms, least, greatest in zip(quantity.terms, cm, most, strict=True):
                middle, way = ((least + greatest) / 2 * fabric.rows_per_cm, abs(greatest - least) / 2 * fabric.rows_per_cm)
                draft.wishes.append(Wish(2 * terms, middle, CENTRAL, OFF_COST, free=way + 1))
