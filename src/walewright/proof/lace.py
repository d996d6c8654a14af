"""Holes and their decreases, on the loop graph: every hole of a charted row has a stitch drawn through two loops, and the reverse.

A loop was moved if the loop it is drawn through was made on another needle. From a hole the moved loops are followed, needle by
needle, to where one of them lies on another loop; from a doubled stitch back to the hole that they come from.
"""

from __future__ import annotations

from collections.abc import Iterator

from walewright.bed import Course, KnitFabric
from walewright.bed.loops import LoopKind
from walewright.counted.model import SizedPiece
from walewright.knit.operations import needle

Unpaired = tuple[int, str, str]
"""(row, needle, "hole" or "decrease")."""


def unpaired(sized: SizedPiece, fabric: KnitFabric) -> Iterator[Unpaired]:
    """Holes without a decrease and decreases without a hole, in the rows of the piece's charts. Shaping at an end of the row, where
    the emptied needle has gone out of work, is none."""
    if not sized.charts:
        return
    doubled = {loop for loop, more in fabric.more_parents.items() if _moved_parents(fabric, loop) and more}
    bars = {bar.loop for bar in fabric.bars if not bar.at_edge}
    if not doubled and not bars:
        return
    previous: dict[int, int] = {}
    for course in fabric.passes():
        if any(sized.within(c.from_row, c.to_row, course.counter) for c in sized.charts):
            loops = range(course.first_loop, course.first_loop + course.count)
            if any(loop in bars or loop in doubled for loop in loops):
                yield from _in_row(fabric, course, bars, previous)
        for loop in range(course.first_loop, course.first_loop + course.count):
            previous[fabric.slots[loop]] = loop


def _in_row(fabric: KnitFabric, course: Course, bars: set[int], previous: dict[int, int]) -> Iterator[Unpaired]:
    row = {fabric.slots[loop]: loop for loop in range(course.first_loop, course.first_loop + course.count)}
    if fabric.hung_back(course.counter - 1) is not None:
        return
    for slot, loop in row.items():
        inside = course.first < slot < course.last
        hole = loop in bars and inside and not _ladder_ends(fabric, previous.get(slot))
        if hole and not any(_leads_to_decrease(fabric, row, slot, step) for step in (1, -1)):
            yield course.counter, needle(slot), "hole"
        for step in _sources(fabric, loop):
            if not _comes_from_hole(fabric, row, course, bars, slot, step):
                yield course.counter, needle(slot), "decrease"


def _ladder_ends(fabric: KnitFabric, below: int | None) -> bool:
    """The stitches below on that needle have been let down to bars: the yarn in the empty hook is the end of a ladder."""
    return below is not None and fabric.kinds[below] == LoopKind.FLOAT


def _own(fabric: KnitFabric, loop: int) -> tuple[int, ...]:
    """The needles on which those it is drawn through were made, without yarn laid over a held needle or wrapped round it."""
    return tuple(
        fabric.slots[parent]
        for parent in fabric.parents_of(loop)
        if parent >= 0 and fabric.kinds[parent] != LoopKind.WRAP and not _laid_over(fabric, parent)
    )


def _laid_over(fabric: KnitFabric, loop: int) -> bool:
    return fabric.kinds[loop] == LoopKind.BAR and fabric.course_of(loop).kind == "laid"


def _moved_parents(fabric: KnitFabric, loop: int) -> bool:
    return any(parent >= 0 and fabric.slots[parent] != fabric.slots[loop] for parent in fabric.parents_of(loop))


def _sources(fabric: KnitFabric, loop: int) -> tuple[int, ...]:
    """Of a stitch through several loops: in which direction (-1 left, 1 right) lie the needles that the moved ones come from."""
    made = _own(fabric, loop)
    if len(made) < 2:
        return ()
    at = fabric.slots[loop]
    return tuple(sorted({1 if slot > at else -1 for slot in made if slot != at}))


def _leads_to_decrease(fabric: KnitFabric, row: dict[int, int], hole: int, step: int) -> bool:
    """Whether the loops from the hole on in one direction were moved away from it, the last on to another loop."""
    at = hole + step
    while at in row:
        made = _own(fabric, row[at])
        if not any((at - slot) * step > 0 for slot in made):
            return False
        if len(made) > 1:
            return True
        at += step
    return False


def _comes_from_hole(fabric: KnitFabric, row: dict[int, int], course: Course, bars: set[int], slot: int, step: int) -> bool:
    """Whether the needles in that direction were moved towards `slot`, from a hole, or (shaping) from beyond the row."""
    at = slot + step
    while course.first <= at <= course.last:
        loop = row.get(at)
        if loop is None:
            return False
        if loop in bars:
            return True
        if not any((made - at) * step > 0 for made in _own(fabric, loop)):
            return False
        at += step
    return True
