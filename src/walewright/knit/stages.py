"""Latching in stages: at which rows the columns of a deep rib are latched up, and what hands do there.

A column drops only as deep as hangs free above the comb and the weights, so a deep rib is latched up every so many rows; a stage
begins in the stitch that was re-formed and hung last. Where a stitch is about to be moved, taken off or hung with another, its
column is latched up before, as far as it has come: nothing drops through such a place.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import field
from functools import lru_cache
from typing import TYPE_CHECKING

from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.operations import Operation
from walewright.record import record, replace

if TYPE_CHECKING:
    from walewright.knit.state import State


def stage_rows(begin: int, cuts: Iterable[int], each: int, most: int) -> tuple[int, ...]:
    """The rows at which a rib that begins at `begin` is latched up: at each of `cuts`, the last one its end, and every `each`
    rows between, or half way where two stages are enough; the last stage before a cut is no deeper than `most`."""
    rows: list[int] = []
    for cut in sorted(set(cuts)):
        if most < cut - begin <= 2 * each:
            begin += -(-(cut - begin) // 4) * 2
            rows.append(begin)
        while cut - begin > most:
            begin += each
            rows.append(begin)
        if cut > begin:
            rows.append(cut)
            begin = cut
    return tuple(rows)


def rib_slots(first: int, last: int, every: int, begin: int) -> tuple[int, ...]:
    """The wales a rib re-forms: counted outwards from slot `begin` and its mirror image, never the end needles (see
    `steps.LatchRib`)."""
    return tuple(x for x in range(first + 1, last) if _outwards(x) >= begin and (_outwards(x) - begin) % every == 0)


def _outwards(slot: int) -> int:
    return slot if slot >= 0 else -1 - slot


@record
class LatchColumn:
    """`rows` that are not latched up yet; `on`: they stand on a stitch that was re-formed."""

    rows: int = 0
    on: bool = False


@lru_cache(maxsize=1024)
def _column(rows: int, on: bool) -> LatchColumn:
    """The same for each needle: a rib has one a needle and row."""
    return LatchColumn(rows, on)


@record
class Rib:
    """A rib that is latched up at the counter's `rows`, knitted from `base` on; on the needles `first`..`last`, or over the whole
    width where `first` > `last`. `sooner`: columns are latched up before their stitches are disturbed."""

    every: int
    begin: int
    rows: tuple[int, ...]
    first: int
    last: int
    sooner: bool
    base: int
    columns: Mapping[int, LatchColumn] = field(default_factory=dict)

    def wales(self, first: int, last: int) -> Iterator[int]:
        """Those of a width that ends at `first` and `last`."""
        whole = self.first > self.last
        return (x for x in rib_slots(first, last, self.every, self.begin) if whole or self.first <= x <= self.last)

    def same(self, another: Rib) -> bool:
        """Whether the other is this one, begun again in a second part."""
        return replace(self, columns={}) == replace(another, columns={})


def row_knitted(s: State) -> tuple[tuple[Operation, ...], State]:
    """After a row: it is counted on the needles in work, and where a stage ends its columns are latched up."""
    made: list[Operation] = []
    ribs: list[Rib] = []
    first, last = s.working()
    for rib in s.ribs:
        if not rib.base < s.row <= rib.rows[-1]:
            ribs.append(rib)
            continue
        columns = dict(rib.columns)
        for slot in range(first, last + 1):
            old = columns.get(slot)
            columns[slot] = _column(1, False) if old is None else _column(old.rows + 1, old.on)
        if s.row in rib.rows:
            made += _up(columns, (x for x in rib.wales(s.first, s.last) if first <= x <= last))
            # An end needle is left out. If the edge moves on outwards, its column begins here: no stage is deeper than the others.
            columns |= {end: LatchColumn() for end in (s.first, s.last)}
        if s.row < rib.rows[-1] or s.waiting:
            ribs.append(replace(rib, columns=columns))
    return tuple(made), replace(s, ribs=tuple(ribs))


def _up(columns: dict[int, LatchColumn], wales: Iterable[int]) -> Iterator[Operation]:
    for slot in wales:
        column = columns.get(slot, LatchColumn())
        if column.rows:
            yield op.LatchUp(slot, column.rows, column.on)
            columns[slot] = LatchColumn(0, True)


def before_step(s: State, step: st.Step) -> tuple[tuple[Operation, ...], State]:
    """What is done before a step of hands: the columns of the stitches that it disturbs are latched up. The
    state is `s` without them."""
    disturbed = _disturbed(s, step)
    made: list[Operation] = []
    ribs: list[Rib] = []
    first, last = s.working()
    for rib in s.ribs:
        columns = dict(rib.columns)
        if rib.sooner:
            made += _up(columns, (x for x in rib.wales(s.first, s.last) if first <= x <= last and x in disturbed))
        ribs.append(replace(rib, columns={x: c for x, c in columns.items() if x not in disturbed}))
    return tuple(made), replace(s, ribs=tuple(ribs))


_ALL_OFF = (st.SpreadEvenly, st.OffOnWaste, st.CastOffAll, st.SewOffAll, st.GatherAll)


def _disturbed(s: State, step: st.Step) -> set[int]:
    first, last = s.working()
    match step:
        case st.Decrease(ends=ends, by=by, inset=inset):
            return _at_ends(s, ends, max(inset, 1) + by)
        case st.IncreaseFashioned(ends=ends, inset=inset):
            return _at_ends(s, ends, inset + 1)
        case st.DecreaseOn(first=left, last=right) | st.IncreaseBeside(first=left, last=right):
            moved = {"left end": range(first, left + 1), "right end": range(right, last + 1)}
            return {x for end, some in moved.items() if step.ends in ("both ends", end) for x in some}
        case st.DecreaseOuter(ends=ends, stitches=n) | st.IncreaseOuter(ends=ends, stitches=n):
            return _at_ends(s, ends, n + 1)
        case st.CastOffAtCarriage(stitches=n) if s.side is not None:
            return _at_ends(s, f"{s.side} end", n + 1)
        case st.HoldAtEnd(side=side, stitches=n):
            return set(range(first, first + n)) if side == "left" else set(range(last - n + 1, last + 1))
        case st.CentreToWaste() | st.SlotOnWaste():
            return set(range(step.first, step.last + 1))
        case st.CloseCentre() | st.SlotClosed():
            return set(range(step.first, step.last + 2))
        case st.EyeletAt(needle=needle, side=side):
            return {needle, needle + (1 if side == "right" else -1)}
    if isinstance(step, _ALL_OFF):
        return set(range(s.first, s.last + 1))
    return set()


def _at_ends(s: State, ends: str, count: int) -> set[int]:
    found: set[int] = set()
    if ends in ("both ends", "left end"):
        found |= set(range(s.first, s.first + count))
    if ends in ("both ends", "right end"):
        found |= set(range(s.last - count + 1, s.last + 1))
    return found
