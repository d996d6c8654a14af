"""The parts of a counted piece: the whole width up to a parting, the parts between openings, and what comes of them where they
rejoin. Each part lies between two edges, and has rows of its own until one of these begins or ends."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from walewright.counted.model import SizedOpening, SizedPiece
from walewright.counted.needles import InWork
from walewright.record import record
from walewright.trade.sides import EdgeSide


@record
class SizedPart:
    """Rows after `from_row` up to `to_row` between the openings `left` and `right` of it; None: an outer edge of the piece. It was
    the `rank`th of so many parts (`among`) from the left when it began."""

    left: SizedOpening | None
    right: SizedOpening | None
    from_row: int
    to_row: int
    rank: int
    among: int

    @property
    def whole(self) -> bool:
        """Whether it is the whole width."""
        return self.left is None and self.right is None

    @property
    def home(self) -> EdgeSide:
        """The side where the carriage is at even rows: its outer edge, or the right one where it has none or both."""
        return "left" if self.left is None and self.right is not None else "right"

    @property
    def sides(self) -> tuple[EdgeSide, ...]:
        """The outer edges that it has."""
        found: tuple[tuple[EdgeSide, SizedOpening | None], ...] = (("left", self.left), ("right", self.right))
        return tuple(side for side, gap in found if gap is None)

    def needles(self, sized: SizedPiece) -> InWork:
        """Which needles it has."""
        return InWork(sized, self.left, self.right)

    def touches(self, first: int, last: int) -> bool:
        """Whether any of the needles lies between its openings where these begin."""
        return (self.left is None or last >= self.left.first + self.left.flat) and (self.right is None or first < self.right.first)

    def meets(self, other: SizedPart) -> bool:
        """Whether the other one is worked on stitches of this one, or this one on stitches of it: it lies above it or below."""
        (low, high), (first, last) = self._between(), other._between()
        return (self.to_row == other.from_row or other.to_row == self.from_row) and max(low, first) < min(high, last)

    def _between(self) -> tuple[float, float]:
        low = float("-inf") if self.left is None else self.left.first
        return low, float("inf") if self.right is None else self.right.first


def open_at(sized: SizedPiece, row: int) -> tuple[SizedOpening, ...]:
    """The openings that the piece is parted by in the row above `row`, from left to right."""
    return tuple(sorted((o for o in sized.openings if o.row <= row < o.to_row), key=lambda o: o.first))


def parts_at(sized: SizedPiece, row: int) -> tuple[InWork, ...]:
    """What is knitted by itself in the row above `row`, from left to right: the whole width, or its parts."""
    return tuple(InWork(sized, *between) for between in pairwise((None, *open_at(sized, row), None)))


def parts_of(sized: SizedPiece) -> tuple[SizedPart, ...]:
    """From the start up, those that begin in the same row from left to right."""
    return tuple(sorted(_parts(sized), key=lambda part: (part.from_row, part.rank)))


def _parts(sized: SizedPiece) -> Iterator[SizedPart]:
    rows = sorted({0, sized.rows, *(row for o in sized.openings for row in (o.row, o.to_row))})
    going: list[SizedPart] = []
    for row in rows[:-1]:
        bounds = list(pairwise((None, *open_at(sized, row), None)))
        kept = {_bounds(part): part for part in going if _bounds(part) in bounds}
        yield from (_ended(part, row) for part in going if _bounds(part) not in kept)
        going = [
            kept.get(between) or SizedPart(*between, row, sized.rows, rank, len(bounds)) for rank, between in enumerate(bounds, 1)
        ]
    yield from going


def _bounds(part: SizedPart) -> tuple[SizedOpening | None, SizedOpening | None]:
    return part.left, part.right


def _ended(part: SizedPart, row: int) -> SizedPart:
    return SizedPart(part.left, part.right, part.from_row, row, part.rank, part.among)


def above(part: SizedPart, parts: Sequence[SizedPart]) -> tuple[SizedPart, ...]:
    """What it parts into, or is joined into, from left to right."""
    return tuple(other for other in parts if other.from_row == part.to_row and part.meets(other))


def below(part: SizedPart, parts: Sequence[SizedPart]) -> tuple[SizedPart, ...]:
    """What it came of, from left to right."""
    return tuple(sorted((other for other in parts if other.to_row == part.from_row and part.meets(other)), key=_place))


def _place(part: SizedPart) -> float:
    return float("-inf") if part.left is None else part.left.first
