"""Loops taken off and hung back evenly on more or fewer needles: which needles, and which of them get two loops or none."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.counted.model import SizedPiece
from walewright.counted.needles import moved
from walewright.knit import steps as st
from walewright.knit.manners import SpreadChange
from walewright.knit.order import Group, Move, Rank, alone
from walewright.record import replace


def spread_groups(sized: SizedPiece) -> Iterator[Group]:
    """Each change across the whole width, at its row. The edges may have unlike numbers of runs below it."""
    changes = ([n for n, run in enumerate(runs) if run.across] for runs in (sized.left, sized.right))
    for number, (left, right) in enumerate(zip(*changes, strict=True)):
        run = sized.left[left]
        first = -sized.start_left - moved(sized.left[:left])
        last = sized.start - sized.start_left - 1 + moved(sized.right[:right])
        outwards = sum(by for _, by in run.changes()), sum(by for _, by in sized.right[right].changes())
        how = with_half_gaps if run.half_gaps else spread_evenly
        step = how(last - first + 1, first - outwards[0], last + outwards[1], run.origin.path)
        if step is not None:
            yield alone(("across", number), Move(run.from_row, Rank.SPREAD, step))


def spread_evenly(loops: int, first: int, last: int, origin: str) -> st.SpreadEvenly | None:
    """`loops` loops hung back on needles `first`..`last`; None if those are as many. The changed needles are as far from
    each other, and the last from the end, as whole needles allow, the wider spaces first."""
    needles = last - first + 1
    changed = abs(needles - loops)
    if changed == 0:
        return None
    least, wider = divmod(needles - changed, changed + 1)
    what: SpreadChange = "two together" if needles < loops else "an empty needle"
    singles, runs = (least + 1, wider) if wider else (least, changed)
    return st.SpreadEvenly(
        first, last, needles, what, singles=singles, runs=runs, more_singles=least, more_runs=changed - runs, origin=origin
    )


def with_half_gaps(loops: int, first: int, last: int, origin: str) -> st.SpreadEvenly | None:
    """The same, but that the first changed needle and the last one are half as far from the ends as from each other: as many
    gaps as there are changes, one of them in two halves, the smaller half first. The wider gaps are the first of those between."""
    needles = last - first + 1
    changed = abs(needles - loops)
    if changed == 0:
        return None
    gap, wider = divmod(needles - changed, changed)
    what: SpreadChange = "two together" if needles < loops else "an empty needle"
    rounds = [(gap + 1, wider), (gap, changed - 1 - wider)]
    (singles, runs), (more_singles, more_runs) = sorted(rounds, key=lambda of: of[1] == 0)
    even = st.SpreadEvenly(first, last, needles, what, singles, runs, more_singles=more_singles, more_runs=more_runs, origin=origin)
    return replace(even, first_singles=gap // 2, first_runs=1)
