"""Groups of a chart's row: loops that are moved together, groups that are crossed, and needles that go by themselves.

They are found as the chart has them on all needles; one that is not wholly within the needles that go by the chart is not
worked at all, so that no decrease comes without its hole.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field

from walewright.knit import operations as op
from walewright.knit.operations import Operation
from walewright.readback.charts import Mark

MarkAt = Callable[[int], Mark | None]
"""The chart's mark on a slot, None where the chart has none."""

_FARTHEST = 1000
"""Needles that a group is followed for; charts have up to some hundred columns."""

_SINGLES = ("purl", "tuck", "slip", "long", "ladder", "by hand", "lay")
_TAKES = {"onto left": (-1,), "onto right": (1,), "onto both": (-1, 1)}


@dataclass(slots=True)
class Found:
    """`moves` and `crosses` with their leftmost needle (moves of one group keep their order), `singles` by slot."""

    moves: list[tuple[int, Operation]] = field(default_factory=list)
    crosses: list[tuple[int, Mark]] = field(default_factory=list)
    singles: dict[int, Mark] = field(default_factory=dict)


def groups(mark: MarkAt, active: set[int], start: int) -> Found:
    """What is to be worked of a row on the slots `active`; the chart's first repeated column lies on slot `start`."""
    found = Found()
    for slot in sorted(active):
        here = mark(slot)
        if here is None:
            continue
        if here.kind in _TAKES:
            _moved(mark, slot, _TAKES[here.kind], active, found)
        elif here.kind == "cross":
            first = _first_of_cross(mark, here, slot, start)
            if first == slot and all(s in active and mark(s) == here for s in range(slot, slot + 2 * here.half)):
                found.crosses.append((slot, here))
        elif here.kind in _SINGLES:
            found.singles[slot] = here
    return found


def _moved(mark: MarkAt, taker: int, sides: tuple[int, ...], active: set[int], found: Found) -> None:
    """The runs of loops that come on to the needle `taker` from `sides`, the left one first."""
    holes: list[int] = []
    for side in sides:
        hole = _hole(mark, taker, side)
        if hole is None or not all(s in active for s in range(min(hole, taker), max(hole, taker) + 1)):
            return
        holes.append(hole)
    leftmost = min(taker, *holes)
    for hole in holes:
        move = op.Transfer(hole, taker - 1, 1) if hole < taker else op.Transfer(taker + 1, hole, -1)
        found.moves.append((leftmost, move))


def _hole(mark: MarkAt, taker: int, side: int) -> int | None:
    """Where the run of loops that moves on to `taker` from a side (-1 left, 1 right) begins; None if it has no hole."""
    passing = "left" if side < 0 else "right"
    for far in range(1, _FARTHEST):
        there = mark(taker + side * far)
        if there is None or there.kind not in (passing, "hole"):
            return None
        if there.kind == "hole":
            return taker + side * far
    return None


def _first_of_cross(mark: MarkAt, here: Mark, slot: int, start: int) -> int:
    """The first needle of the cross that `slot` belongs to: a run of the same mark is cut into crosses from its left end; one
    without an end from the repeat's first column."""
    for far in range(1, _FARTHEST):
        if mark(slot - far) != here:
            begin = slot - far + 1
            break
    else:
        begin = start
    return begin + (slot - begin) // (2 * here.half) * (2 * here.half)
