"""The numbers of a piece in one size as terms over the programme's variables.

Stitches of an edge are counted from the centre mark outwards, those of a gap's edge from the centre mark to that side (less
than none where the gap does not reach the mark). Rows are counted in pairs.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from walewright.record import record, replace
from walewright.solve.algebra.sums import NOTHING, Terms
from walewright.trade.sides import OTHER_SIDE, EdgeSide


@record
class EdgeTerms:
    """One edge in one size: stitches from the centre at the start and after each run; what each run casts off at once and by how
    much each of its steps goes, or how often it moves at its rate (no terms where it does not); pairs of rows to where each run
    begins and ends; which ways each run may go: 1 away from the centre, -1 towards it; and, of steps of several sizes, how much
    each goes (none where all are equal)."""

    start: Terms
    after: tuple[Terms, ...]
    cast_off: tuple[Terms, ...]
    step: tuple[Terms, ...]
    from_rows: tuple[Terms, ...] = ()
    to_rows: tuple[Terms, ...] = ()
    ways: tuple[tuple[int, ...], ...] = ()
    in_turn: tuple[tuple[Terms, ...], ...] = ()

    def all(self) -> Iterator[Terms]:
        """All its terms."""
        yield from (self.start, *self.after, *self.cast_off, *self.step, *self.from_rows, *self.to_rows)
        yield from (terms for of_run in self.in_turn for terms in of_run)

    def before(self, run: int) -> Terms:
        """Stitches from the centre at the beginning of run number `run`."""
        return self.after[run - 1] if run else self.start

    def moved(self, run: int) -> Terms:
        """By how much run number `run` takes the edge away from the centre."""
        return self.after[run] - self.before(run)

    def pairs(self, run: int) -> Terms:
        """Pairs of rows of run number `run`."""
        return self.to_rows[run] - self.from_rows[run]


@record
class OpeningTerms:
    """A gap. `left` and `right` are its edges; `from_rows` and `to_rows` pairs of rows to its parting and to its end; `depth` is
    the pairs of rows between."""

    depth: Terms
    left: EdgeTerms
    right: EdgeTerms
    from_rows: Terms
    to_rows: Terms

    def edge(self, side: EdgeSide) -> EdgeTerms:
        """The gap's edge at that side."""
        return self.left if side == "left" else self.right

    @property
    def width(self) -> Terms:
        """Stitches of the whole gap at its end."""
        return self.left.after[-1] + self.right.after[-1]

    @property
    def taken(self) -> Terms:
        """Stitches taken at the parting."""
        return self.left.start + self.right.start


@record
class WedgeTerms:
    """`held`: side to the stitches of its groups; `rest`: those held all the while; `pairs` of rows."""

    held: tuple[tuple[EdgeSide, Terms], ...]
    rest: Terms
    from_rows: Terms
    pairs: Terms


@record
class PieceTerms:
    """A piece in one size. `rows` are pairs of rows up to each level; the first level has no terms: it is 0.

    `one` is a variable that is 1 in a piece of an odd number of stitches, else no terms. `slots` are stitches."""

    left: EdgeTerms
    right: EdgeTerms
    rows: Mapping[str, Terms]
    openings: tuple[OpeningTerms, ...]
    wedges: tuple[WedgeTerms, ...] = ()
    slots: tuple[Terms, ...] = ()
    one: Terms = NOTHING

    def all(self) -> Iterator[Terms]:
        """All its terms."""
        yield from (*self.rows.values(), *self.slots, self.one)
        for edge in (self.left, self.right, *(edge for o in self.openings for edge in (o.left, o.right))):
            yield from edge.all()
        for opening in self.openings:
            yield from (opening.depth, opening.from_rows, opening.to_rows)
        for wedge in self.wedges:
            yield from (*(held for _, held in wedge.held), wedge.rest, wedge.from_rows, wedge.pairs)

    def edge(self, side: EdgeSide) -> EdgeTerms:
        """The edge at that side."""
        return self.left if side == "left" else self.right


def ways(least: float, most: float) -> tuple[int, ...]:
    """Which ways an edge may go that moves by something between the two."""
    return tuple(d for d in (1, -1) if d * least > 0 or d * most > 0) or (1,)


def image(terms: PieceTerms) -> PieceTerms:
    """The numbers of a mirror image: left and right exchanged. Of an odd number the middle stitch stays right of the mark."""
    one = terms.one
    openings = tuple(
        replace(
            o,
            left=_shifted(o.right, one, -1),
            right=_shifted(o.left, one, 1),
        )
        for o in terms.openings
    )
    wedges = tuple(replace(w, held=tuple((OTHER_SIDE[side], held) for side, held in reversed(w.held))) for w in terms.wedges)
    return replace(terms, left=_shifted(terms.right, one, -1), right=_shifted(terms.left, one, 1), openings=openings, wedges=wedges)


def _shifted(edge: EdgeTerms, one: Terms, by: int) -> EdgeTerms:
    if not one:
        return edge
    return replace(edge, start=edge.start + by * one, after=tuple(place + by * one for place in edge.after))
