"""Needles: which of them have stitches of a counted piece about a row."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from itertools import pairwise

from walewright.counted.model import SizedChart, SizedOpening, SizedPiece, SizedRun
from walewright.record import record


@record
class InWork:
    """Which needles of a piece have stitches about a row: over the whole width, or in the part between the openings `left` and
    `right` of it. None of them: the part goes to the outer edge of the piece there."""

    sized: SizedPiece
    left: SizedOpening | None = None
    right: SizedOpening | None = None

    def at(self, row: int) -> tuple[int, int]:
        """First and last slot when all moves up to `row` are made; what is held counts as what is in work."""
        sized, left, right = self.sized, self.left, self.right
        first = -sized.start_left - _moved(sized.left, row)
        last = sized.start - sized.start_left - 1 + _moved(sized.right, row)
        if left is not None:
            first = left.first + left.flat - _moved(left.edge("right"), row)
        if right is not None:
            last = right.first - 1 + _moved(right.edge("left"), row)
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
    return sum(run.moved(row) for run in runs if run.from_row <= row)


def moved(runs: Iterable[SizedRun]) -> int:
    """Stitches that runs move outwards in all."""
    return sum(by for run in runs for _, by in run.changes())


def ends(sized: SizedPiece, row: int) -> tuple[int, int]:
    """First and last slot of the width at an even row, before what is moved there on the way further."""
    left, right = sized.start_left + come(sized.left, row), sized.start - sized.start_left + come(sized.right, row)
    return -left, right - 1


def come(runs: Iterable[SizedRun], row: int) -> int:
    """Stitches that runs have moved outwards at an even row, without what is moved there on the way further."""
    return sum(by for run in runs for at, by in run.changes() if at < row or run.to_row <= row)


def stitches_at(sized: SizedPiece, row: int) -> int:
    """Stitches between the outer edges at a row, before any change there that belongs to what comes after."""
    below = (run for run in (*sized.left, *sized.right) if run.from_row < row)
    return sized.start + sum(by for run in below for at, by in run.changes() if at <= row)


def last_row(sized: SizedPiece, first: int, last: int, from_row: int, to_row: int) -> int:
    """Where the needles of a chart or panel leave it: a gap that begins below its end, and takes all its needles, ends it there."""
    taken = (o.row for o in sized.openings if o.flat and o.first <= first and last < o.first + o.flat)
    return min((row for row in taken if from_row < row < to_row), default=to_row)


def meets_edge(sized: SizedPiece, chart: SizedChart) -> bool:
    """Whether a chart has columns among those that are knitted plain at an end of the work. Beside an opening, and where needles
    are held, there is another end: then it may."""
    to_row = last_row(sized, chart.first, chart.last, chart.from_row, chart.to_row)
    if any(o.row < to_row and o.to_row > chart.from_row for o in sized.openings) or any(
        wedge.from_row < to_row and wedge.to_row > chart.from_row for wedge in sized.wedges
    ):
        return True
    ends_there = map(InWork(sized).about, range(chart.from_row, to_row + 1))
    return any(chart.first < first + chart.edge or chart.last > last - chart.edge for first, last in ends_there)


def moves(runs: Iterable[SizedRun]) -> Counter[int]:
    """Row to the stitches by which the edge moves when so many rows are knitted."""
    found: Counter[int] = Counter()
    for run in runs:
        for row, by in run.changes():
            found[row] += by
    return found


def moved_in(sized: SizedPiece, row: int, *sides: str) -> tuple[tuple[int, ...], int]:
    """What happens in the very row at outer edges, those of the `sides` or both: by how many stitches they are moved on their way
    further, outwards positive, and how many stitches are held from there on."""
    runs = (run for side in sides or ("left", "right") for run in (sized.left if side == "left" else sized.right))
    by = (change for run in runs if not run.across and run.to_row > row for at, change in run.changes() if at == row)
    wedges = (w for w in sized.wedges if w.from_row == row and (not sides or w.edge in (*sides, "both")))
    return tuple(by), sum(wedge.at_once for wedge in wedges)


def top_width(sized: SizedPiece) -> int:
    """Stitches of the last row, an opening's included."""
    return sized.start + moved((*sized.left, *sized.right))


def to_the_top(sized: SizedPiece) -> tuple[SizedOpening, ...]:
    """The openings that part the last row, from left to right."""
    return tuple(sorted((o for o in sized.openings if not o.rejoins), key=lambda o: o.first))


def tops(sized: SizedPiece) -> tuple[tuple[int, int], ...]:
    """The parts of the last row from left to right: the first slot of each, and its stitches."""
    ends = (InWork(sized, *between).at(sized.rows) for between in pairwise((None, *to_the_top(sized), None)))
    return tuple((first, last - first + 1) for first, last in ends)


def widest_of(sized: SizedPiece, from_row: int, to_row: int) -> tuple[int, int]:
    """First and last slot of the widest of the rows after `from_row` up to `to_row`."""
    whole = InWork(sized)
    return max((whole.at(row) for row in range(from_row, max(to_row, from_row + 1))), key=lambda ends: ends[1] - ends[0])
