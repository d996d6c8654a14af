"""Hands shaping inside the work: all that lies outside a line goes over by one needle; only at the edge one is left empty."""

from __future__ import annotations

from walewright.knit import operations as op
from walewright.knit.operations import Side
from walewright.readback.mind import Contradiction, Mind, needle


class Inside(Mind):
    """Methods are named for the grammar's phrases. Of one end a single needle is named, of both the left end's first."""

    def decrease_on(self, by: int, ends: str, *needles: int) -> None:
        for side, stays, prongs in self._lines(by, ends, needles):
            self._inwards(side, self._beyond(side, stays), prongs)

    def decrease_outer(self, by: int, ends: str, stitches: int, prongs: int) -> None:
        for side in self._ends_of(by, ends, prongs):
            first, last = self._outermost(side, stitches, self._part())
            self._inwards(side, list(range(first, last + 1)), prongs)

    def increase_beside(self, by: int, ends: str, *needles: int) -> None:
        for side, stays, prongs in self._lines(by, ends, needles):
            self._outwards(side, self._beyond(side, stays), prongs)

    def increase_outer(self, by: int, ends: str, stitches: int, prongs: int) -> None:
        for side in self._ends_of(by, ends, prongs):
            first, last = self._outermost(side, stitches, self._part())
            self._outwards(side, list(range(first, last + 1)), prongs)

    def _ends_of(self, by: int, ends: str, prongs: int) -> tuple[Side, ...]:
        if by != 1:
            raise Contradiction("contradiction/one-at-a-line", stitches=by)
        if prongs < 1:
            raise Contradiction("contradiction/no-prongs")
        return ("left", "right") if ends == "both ends" else ("left",) if ends == "left end" else ("right",)

    def _lines(self, by: int, ends: str, needles: tuple[int, ...]) -> list[tuple[Side, int, int]]:
        """(end, needle that stays, prongs of the tool)."""
        *named, prongs = needles
        sides = self._ends_of(by, ends, prongs)
        if len(named) != len(sides):
            raise Contradiction("contradiction/needles-of-ends", needles=len(named), ends=len(sides))
        return [(side, stays, prongs) for side, stays in zip(sides, named, strict=True)]

    def _beyond(self, side: Side, stays: int) -> list[int]:
        """The needles in work outside one, in order."""
        part = self._working()
        found = [s for s in part if (s < stays if side == "left" else s > stays)]
        if stays not in part or not found:
            raise Contradiction("contradiction/none-beyond", needle=needle(stays))
        return found

    def _inwards(self, side: Side, moved: list[int], prongs: int) -> None:
        """The innermost first: they go on the needle beside them, the next ones on those that they have left."""
        towards = 1 if side == "left" else -1
        inner_first = sorted(moved, reverse=side == "left")
        for at in range(0, len(inner_first), prongs):
            some = inner_first[at : at + prongs]
            self.made.append(op.Transfer(min(some), max(some), towards))
        edge = inner_first[-1]
        self.made.append(op.OutOfWork(edge, edge))
        self._empty(edge, edge)

    def _outwards(self, side: Side, moved: list[int], prongs: int) -> None:
        """The outermost first, on a needle brought to work; the one left empty gets the loop below the next stitch inwards."""
        away = -1 if side == "left" else 1
        outer_first = sorted(moved, reverse=side == "right")
        new = outer_first[0] + away
        self._free(new, new)
        self.made.append(op.IntoWork(new, new))
        self._state(new, new, "work")
        for at in range(0, len(outer_first), prongs):
            some = outer_first[at : at + prongs]
            self.made.append(op.Transfer(min(some), max(some), away))
        self.made.append(op.FillFromBelow(outer_first[-1], outer_first[-1] - away))
