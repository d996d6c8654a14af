"""A latched rib over some rows of a piece: whether it can be latched up in one go, at which rows it is, and its sentences."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from walewright.counted.model import SizedPiece
from walewright.knit import steps as st
from walewright.knit.manners import Sooner
from walewright.knit.tracks import BOTH, ShapedEnds, run_groups
from walewright.record import record, replace


@record
class Ribbed:
    """Every `every`th wale, counted outwards from slot `begin`, from `from_row` to `to_row`, on `needles` or over the whole
    width."""

    every: int
    begin: int
    from_row: int
    to_row: int
    needles: tuple[int, int] | None
    origin: str

    def step(self, rows: int) -> st.Step:
        """The sentence that latches up so many rows at once."""
        if self.needles is None:
            return st.LatchRib(self.every, self.begin, rows, origin=self.origin)
        return st.LatchPanel(self.every, self.begin, rows, *self.needles, origin=self.origin)

    def stages(self, rows: tuple[int, ...], sooner: Sooner) -> st.Step:
        """The sentence that does so at these counter values."""
        if self.needles is None:
            return st.LatchInStages(self.every, self.begin, rows, sooner, origin=self.origin)
        return st.LatchPanelInStages(self.every, self.begin, rows, *self.needles, sooner, origin=self.origin)

    def by_repeats(self, sized: SizedPiece) -> Iterator[Ribbed]:
        """Cut where rows that are worked several times begin and end."""
        again = [r for r in sized.repeats if r.times > 1]
        bounds = sorted({row for r in again for row in (r.from_row, r.to_row) if self._inside(row)})
        for begin, end in pairwise((self.from_row, *bounds, self.to_row)):
            yield replace(self, from_row=begin, to_row=end)

    def in_repeat(self, sized: SizedPiece) -> bool:
        """Whether its rows are worked several times."""
        return any(r.times > 1 and r.from_row <= self.from_row and self.to_row <= r.to_row for r in sized.repeats)

    def _inside(self, row: int) -> bool:
        return self.from_row < row < self.to_row

    def cuts(self, sized: SizedPiece) -> Iterator[int]:
        """Rows where all of it is latched up, because what is knitted above is not on the same stitches: a parting, and holes in a
        rib over the whole width."""
        for opening in sized.openings:
            yield from (row for row in (opening.row, opening.to_row) if self._inside(row))
        if self.needles is None:
            yield from (slot.row for slot in sized.slots if self._inside(slot.row))

    def disturbed(self, sized: SizedPiece, symmetric: bool) -> bool:
        """Whether a stitch of it may be moved, cast off, held, taken off or hung with another before its last row; `symmetric`:
        both edges of the piece are moved together."""
        if any(w.from_row < self.to_row and self.from_row < w.to_row for w in sized.wedges):
            return True
        if self.needles is not None:
            return any(self._inside(o.row) for o in sized.openings)
        runs = [*sized.left, *sized.right]
        for opening in sized.openings:
            if opening.flat and self._inside(opening.row):
                return True
            runs += [*opening.left, *opening.right, opening.run]
        moved = any(self._inside(row) for run in runs for row, by in run.changes() if by)
        if symmetric and not moved:
            moved = any(map(self._inside, _worked(sized)))
        return moved or any(self._inside(slot.row) for slot in sized.slots)


def _worked(sized: SizedPiece) -> Iterator[int]:
    """The rows at which hands move the edges of a symmetric piece: what needs the carriage is done at one end a row before or after
    the scheduled one."""
    begins = {0, *(opening.to_row for opening in sized.openings)}
    for run in sized.left:
        for begin in begins:
            yield from (move.row for group in run_groups("", run, 0, ShapedEnds(BOTH, begin), "") for move in group.moves)
