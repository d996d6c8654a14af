"""Lines within a piece: in every row where an edge was shaped along one, the stitch on it is drawn through two loops, or through
the loop hung beside it from the row below."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.bed import KnitFabric
from walewright.bed.loops import LoopKind
from walewright.bed.refusals import slot_of
from walewright.counted import inside
from walewright.counted.inside import InsideMove
from walewright.counted.model import SizedPiece
from walewright.proof.told import Told
from walewright.report.said import said


def lines(sized: SizedPiece, fabric: KnitFabric) -> Told:
    """(where, counted, knitted) for every stitch lost or gained along a line."""
    for move in inside.moves(sized):
        counter = sized.counter(move.row) + 1
        found = any(_there(fabric, loop, move) for loop in _loops(fabric, counter, move.slot))
        at = slot_of(move.slot)
        where = said("at/lost", row=counter, needle=at) if move.by < 0 else said("at/gained", row=counter, needle=at)
        yield where, 1, int(found)


def _loops(fabric: KnitFabric, counter: int, slot: int) -> Iterator[int]:
    for course in fabric.passes(counter):
        for loop in range(course.first_loop, course.first_loop + course.count):
            if fabric.slots[loop] == slot:
                yield loop


def _there(fabric: KnitFabric, loop: int, move: InsideMove) -> bool:
    below = fabric.parents_of(loop)
    if move.by > 0:
        return any(one >= 0 and fabric.kinds[one] == LoopKind.FILL for one in below)
    return len(below) > 1
