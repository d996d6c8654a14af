"""Wedges in the programme: how many stitches are held, in how many rows, and what stays in work."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from walewright.design.model import Design, Opening, PerSize, Piece, Wedge
from walewright.design.model.per_size import minus
from walewright.report.said import Fact, said
from walewright.solve.algebra.programme import Draft, RuleKind
from walewright.solve.algebra.quantities import STEADY, Quantity, want
from walewright.solve.algebra.sums import NOTHING, Terms
from walewright.solve.algebra.terms import EdgeTerms, OpeningTerms, WedgeTerms
from walewright.solve.edges.apart import from_the_left
from walewright.solve.edges.edges import PerSizeTerms, new, runs_of
from walewright.solve.edges.gaps import end_level
from walewright.solve.edges.gauge import fabric_above, level_number, rows_to
from walewright.trade.sides import OTHER_SIDE, SIDES, EdgeSide


def wedge_sides(wedge: Wedge) -> tuple[EdgeSide, ...]:
    """The edges that it is held at."""
    return SIDES if wedge.edge == "both" else (wedge.edge,)


def end_of(piece: Piece, wedge: Wedge) -> str:
    """The level where all is back in work."""
    return wedge.to_level or piece.levels[-1].name


def beside(piece: Piece, wedge: Wedge, side: EdgeSide) -> int | None:
    """Which opening parts the piece while the wedge is held: then the wedge lies in its parts. Of several, the one nearest to the
    edge at that side."""
    end = level_number(piece, end_of(piece, wedge))
    there = [
        number
        for number, opening in enumerate(piece.openings)
        if end <= level_number(piece, end_level(piece, opening)) and _begins_below(piece, opening, end)
    ]
    return from_the_left(piece.openings, there)[0 if side == "left" else -1] if there else None


def _begins_below(piece: Piece, opening: Opening, level: int) -> bool:
    if opening.from_level is not None:
        return level_number(piece, opening.from_level) < level
    top = piece.levels[level_number(piece, end_level(piece, opening))]
    heights = zip(top.height, opening.depth, piece.levels[level].height, strict=True)
    return all(high - deep < low - 1e-9 for high, deep, low in heights)


def edge_at(piece: Piece, side: EdgeSide, level: str, edge: EdgeTerms) -> tuple[Terms, ...]:
    """Where an outer edge may be at a level: its places there. None where it is on its way from one place to another."""
    number, found = level_number(piece, level), list[Terms]()
    come = 0
    if number == 0:
        found.append(edge.start)
    for index, run in enumerate(runs_of(piece, side)):
        to = level_number(piece, run.to_level)
        still = not any(run.change) and not any(run.most or ())
        if to == number or (come < number < to and still):
            found.append(edge.after[index])
        come = to
    return tuple(dict.fromkeys(found))


def wedge_terms(
    draft: Draft,
    design: Design,
    piece: Piece,
    wedge: Wedge,
    rows: Sequence[Mapping[str, Terms]],
    edges: Mapping[str, Sequence[EdgeTerms]],
    openings: Sequence[Sequence[OpeningTerms]],
) -> tuple[WedgeTerms, ...]:
    """The numbers of a wedge, per size; `openings[n]` are those of opening n."""
    count = range(len(design.sizes))
    end = end_of(piece, wedge)
    pairs = [rows[i][end] - rows[i][wedge.from_level] for i in count]
    _steady(draft, design, piece, wedge, tuple(pairs))
    rest = _width(draft, design, piece, wedge, "rest", wedge.rest) if wedge.rest is not None else (NOTHING,) * len(count)
    held: dict[EdgeSide, PerSizeTerms] = {}
    if wedge.width is not None:
        width = _width(draft, design, piece, wedge, "width", wedge.width)
        held = dict.fromkeys(wedge_sides(wedge), width)
    else:
        for side in wedge_sides(wedge):
            gap = beside(piece, wedge, side)
            outer = [(edge_at(piece, side, wedge.from_level, e) or (e.after[-1],))[-1] for e in edges[side]]
            inner = [NOTHING if gap is None else openings[gap][i].edge(side).after[-1] for i in count]
            if gap is None and wedge.edge != "both":
                # The one shoulder of a piece is all the stitches that are left, to where the other edge has come at the top.
                inner = [-e.after[-1] for e in edges[OTHER_SIDE[side]]]
            held[side] = tuple(outer[i] - inner[i] - rest[i] for i in count)
    return tuple(
        WedgeTerms(tuple((side, terms[i]) for side, terms in held.items()), rest[i], rows[i][wedge.from_level], pairs[i])
        for i in count
    )


def _steady(draft: Draft, design: Design, piece: Piece, wedge: Wedge, pairs: PerSizeTerms) -> None:
    """Slopes equally high get equal steps in all sizes. Of one that goes from a level to the next, above the start, the rows are
    wanted for themselves already."""
    low, high = level_number(piece, wedge.from_level), level_number(piece, end_of(piece, wedge))
    if low > 0 and high == low + 1:
        return
    begin, end = piece.levels[low], piece.levels[high]
    if begin.most is not None or end.most is not None:
        return
    cm = minus(end.height, begin.height)
    wanted = tuple(rows_to(at, piece, end.name) - rows_to(at, piece, begin.name) for at in design.each_size)
    want(
        draft,
        Quantity(
            name=said("rows-held", wedge=wedge.called, piece=piece.name),
            pieces=(piece.name,),
            origin=wedge.origin,
            terms=pairs,
            factor=2,
            wanted=wanted,
            cm=cm,
            unit="rows",
            tolerance=(4.0,) * len(cm),
            clause=said("is-high", part=wedge.called, piece=piece.name),
            share=STEADY,
            kind=RuleKind.BETWEEN,
        ),
    )


def _width(draft: Draft, design: Design, piece: Piece, wedge: Wedge, name: str, cm: PerSize) -> PerSizeTerms:
    per_cm = fabric_above(design, piece, wedge.from_level).stitches_per_cm
    terms = new(draft, design, piece, f"{wedge.name} {name} at {wedge.from_level} {wedge.edge}")
    # A wedge at both edges has one number for the two.
    figure: dict[str, Fact] = {"wedge": wedge.called, "piece": piece.name, "edge": wedge.edge, "level": wedge.from_level}
    figure["both"] = wedge.edge == "both"
    want(
        draft,
        Quantity(
            name=said("held-width" if name == "width" else "held-rest", **figure),
            pieces=(piece.name,),
            origin=wedge.origin,
            terms=terms,
            factor=1,
            wanted=tuple(c * per_cm for c in cm),
            cm=cm,
            tolerance=(1.0,) * len(design.sizes),
            clause=said("is-held-wide" if name == "width" else "rests", wedge=wedge.called, piece=piece.name),
        ),
    )
    return terms
