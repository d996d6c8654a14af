"""Needles: which of them have stitches of a counted piece about a row."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass

from walewright.counted.model import SizedOpening, SizedPiece, SizedRun
from walewright.trade.sides import EdgeSide


@dataclass(frozen=True, slots=True)
class InWork:
    """Which needles of a piece have stitches about a row: over the whole width (`side` None), or in the part at `side` ("left",
    "right") of `opening`."""

    sized: SizedPiece
    side: EdgeSide | None = None
    opening: SizedOpening | None = None

    def at(self, row: int) -> tuple[int, int]:
        """First and last slot when all moves up to `row` are made; what is held counts as what is in work."""
        sized, gap = self.sized, self.opening
        first = -sized.start_left - _moved(sized.left, row)
        last = sized.start - sized.start_left - 1 + _moved(sized.right, row)
        if gap is not None and self.side == "left":
            last = gap.first - 1 + _moved(gap.edge("left"), row)
        elif gap is not None and self.side == "right":
            first = gap.first + gap.flat - _moved(gap.edge("right"), row)
        return first, last

    def about(self, row: int) -> tuple[int, int]:
        """The slots that have a stitch just before and just after all that is done at a row. A move may come one row before or
        after its own (see `SizedRun`)."""
        ends = [self.at(near) for near in (row - 2, row - 1, row, row + 1)]
        return max(first for first, _ in ends), min(last for _, last in ends)

    def fewest(self, row: int) -> int:
        """The fewest stitches there are about a row."""
        return min(last - first + 1 for first, last in (self.at(near) for near in (row - 1, row, row + 1)))


def _moved(runs: Iterable[SizedRun], row: int) -> int:
    return sum(run.moved(row) for run in runs)


def moved(runs: Iterable[SizedRun]) -> int:
    """Stitches that runs move outwards in all."""
    return sum(by for run in runs for _, by in run.changes())


def moves(runs: Iterable[SizedRun]) -> Counter[int]:
    """Row to the stitches by which the edge moves when so many rows are knitted."""
    found: Counter[int] = Counter()
    for run in runs:
        for row, by in run.changes():
            found[row] += by
    return found


def top_width(sized: SizedPiece) -> int:
    """Stitches of the last row, an opening's included."""
    return sized.start + moved((*sized.left, *sized.right))


def shoulders(sized: SizedPiece, opening: SizedOpening) -> tuple[int, int]:
    """Stitches of the last row left and right of an opening."""
    both = top_width(sized) - opening.width
    if not opening.left:
        return both // 2, both - both // 2
    left = sized.start_left + moved(sized.left) + opening.first + moved(opening.left)
    return left, both - left


def widest_of(sized: SizedPiece, from_row: int, to_row: int) -> tuple[int, int]:
    """First and last slot of the widest of the rows after `from_row` up to `to_row`."""
    whole = InWork(sized)
    return max((whole.at(row) for row in range(from_row, max(to_row, from_row + 1))), key=lambda ends: ends[1] - ends[0])
