"""Joins in the programme: how many rows and stitches each side has, and how long it is, as far as that is linear."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.design.model import Design, DesignInSize, EdgeJoin, EdgeName, Fabric
from walewright.glue.model import GluedSizes
from walewright.record import replace
from walewright.report.model import Span
from walewright.report.said import Fact, Said, said, tenths
from walewright.solve.algebra.programme import Draft, Rule, RuleKind, Wish
from walewright.solve.algebra.sums import Linear
from walewright.solve.edges.gauge import stages
from walewright.solve.edges.lengths import FINE, ROUNDING, Garment, LengthTerms, edge_terms, strip_terms
from walewright.trade.joins import JOINS

_NEAR_ROWS = 2
"""Rows that a length may be off where it has to be as near as rows allow: they come in pairs."""

_CURVED_COST = 20.0 / FINE
"""For each unit that a curved edge is longer or shorter than its join can take: above a row or two, below what rules say."""

_LONGER_COST = 0.5 / FINE
"""For each unit off, of a join that is to be as near as rows allow: less than moving any wanted number by one more."""


def easing_mm(at: DesignInSize, join: EdgeJoin) -> int:
    """Easing as it is printed and checked: whole millimetres."""
    return round(at.of(join.easing) * 10)


def longer_cm(at: DesignInSize, join: EdgeJoin) -> float:
    """By how much `one` shall be longer, in whole millimetres."""
    return 0.0 if join.longer is None else round(at.of(join.longer) * 10) / 10


def near_cm(design: Design, join: EdgeJoin) -> float:
    """How far off a join may be that has to be as near as rows allow: one that goes round a piece moves twice for each row."""
    fabrics: list[Fabric] = []
    for name in dict.fromkeys(e.piece for e in (*join.one, *join.other)):
        band = design.band(name)
        fabrics += [fabric for _, _, fabric in stages(design, design.piece(name))] if band is None else [design.cloth(name)]
    twice = 2 if rounded(join.one) or rounded(join.other) else 1
    return twice * _NEAR_ROWS * max(1 / f.rows_per_cm for f in fabrics)


def rounded(side: Sequence[EdgeName]) -> frozenset[str]:
    """Pieces that a side of a join goes round, up one edge, along their stitches and down the other: of those, edges called on
    both sides count on both. Otherwise one of them lies on one of the other piece's, and counts once."""
    along = {e.piece for e in side if e.edge in ("start", "end")}
    return frozenset(e.piece for e in side if e.piece in along)


def edge_by_edge(joins: Sequence[EdgeJoin], glued: GluedSizes) -> tuple[EdgeJoin, ...]:
    """The joins, each that names several edges to lie one by one along others written as one for each seam: the two sides of a back
    called by one name, along a left and a right front."""
    found: list[EdgeJoin] = []
    for number, join in enumerate(joins):
        seams = [seam for group in glued.groups for seam in group.seams if seam.join == number]
        if not seams or len(join.one) == len(join.other) or any(len(s.one) != 1 or len(s.other) != 1 for s in seams):
            found.append(join)
            continue
        sides = dict.fromkeys((s.one[0].owner, s.one[0].edge, s.other[0].owner, s.other[0].edge) for s in seams)
        found += [replace(join, one=(EdgeName(a, b),), other=(EdgeName(c, d),)) for a, b, c, d in sides]
    return tuple(found)


def with_free_levels(design: Design, join: EdgeJoin) -> tuple[str, ...]:
    """Pieces whose free levels are chosen so that this join comes out: `matching` does that, not the programme."""
    if join.longer is None and not any(join.easing):
        return ()
    names = dict.fromkeys(e.piece for e in (*join.one, *join.other) if design.band(e.piece) is None)
    models = {n: design.piece(n).mirror_of or n for n in names}
    return tuple(n for n, model in models.items() if any(level.most for level in design.piece(model).levels))


def join_rules(draft: Draft, design: Design, garment: Garment, matched: Sequence[EdgeJoin]) -> None:
    """Writes a rule for each join: equal rows and stitches, or lengths within the easing; for those that are `matched` by free
    levels only what their way of joining asks for."""
    for join in design.joins:
        lines: list[tuple[int, Linear]] = []
        for at in design.each_size:
            one, other = (side_terms(at, garment, side) for side in (join.one, join.other))
            if join.ratio is not None:
                rows, stitches = join.ratio
                # One side has rows and the other stitches, whichever it is. Rows come in pairs: one may be over, or missing.
                over = stitches * (one.rows + other.rows) - rows * (one.stitches + other.stitches)
                lines.append((at.number, over.within(-stitches, stitches)))
            elif JOINS[join.way].by_loops or (easing_mm(at, join) == 0 and join.longer is None):
                lines.append((at.number, one.rows.equals(other.rows)))
                lines.append((at.number, one.stitches.equals(other.stitches)))
            elif all(join.origin != other_join.origin for other_join in matched):
                lines += _lengths(draft, at, join, one, other)
        kept = tuple((i, line) for i, line in lines if line.terms)
        if kept:
            name = said("join", one=spoken(join.one), other=spoken(join.other))
            says = tuple(_says(at, join) for at in design.each_size)
            draft.rules.append(Rule(name, RuleKind.JOIN, (join.origin,), says, kept))


def _lengths(draft: Draft, at: DesignInSize, join: EdgeJoin, one: LengthTerms, other: LengthTerms) -> list[tuple[int, Linear]]:
    """Lengths within the easing, as a rule. Of a curve the length is only roughly known before its rows are: then it is a wish,
    and the joins are held against their lengths when all is counted."""
    over = one.length - other.length - round(longer_cm(at, join) * FINE)
    off = round((easing_mm(at, join) / 10 or near_cm(at.design, join)) * FINE) - ROUNDING
    # A slope is known to a hundredth of its length: so much less is asked for, as far as that leaves some room.
    off = max(off - one.loose - other.loose, off // 2)
    if not over:
        return []
    if not easing_mm(at, join):
        draft.wishes.append(Wish(over, 0.0, _LONGER_COST))
    if one.rough or other.rough:
        draft.wishes.append(Wish(over, 0.0, 0.0, _CURVED_COST, free=off))
        return []
    return [(at.number, over.within(-off, off))]


def _says(at: DesignInSize, join: EdgeJoin) -> Said:
    sides: dict[str, Fact] = {"one": spoken(join.one), "other": spoken(join.other)}
    longer = longer_cm(at, join)
    if join.ratio is not None:
        return said("joined-ratio", **sides, rows=join.ratio[0], stitches=join.ratio[1])
    if JOINS[join.way].by_loops:
        return said("joined-loops", **sides, way=join.way)
    if longer:
        return said("joined-longer", **sides, longer=tenths(longer))
    if easing_mm(at, join):
        return said("joined-eased", **sides, easing=tenths(easing_mm(at, join) / 10))
    return said("joined-rows", **sides)


def labelled(design: Design, join: EdgeJoin) -> Iterator[tuple[Span, Said]]:
    """The pieces and bands that a join names, in the order of the source."""
    names = {e.piece for e in (*join.one, *join.other)}
    origins = {**{piece.name: piece.origin for piece in design.pieces}, **{band.name: band.origin for band in design.bands}}
    return ((origin.span, said("the", name=name)) for name, origin in origins.items() if name in names)


def spoken(side: Sequence[EdgeName]) -> str:
    """ "back armhole + front armhole"."""
    return " + ".join(f"{e.piece} {e.edge}" for e in side)


def side_terms(at: DesignInSize, garment: Garment, side: Sequence[EdgeName]) -> LengthTerms:
    """One side of a join in one size."""
    found = LengthTerms()
    whole = rounded(side)
    for edge in side:
        band = at.design.band(edge.piece)
        if band is not None:
            found += strip_terms(at, at.design.edging(band.edging))
            continue
        piece = at.design.piece(edge.piece)
        found += edge_terms(at, piece, at.of(garment[edge.piece]), edge.edge, edge.piece in whole)
    return found
