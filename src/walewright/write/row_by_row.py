"""Row by row: stretches where several shapings happen at the same time, each row at which something is done as one entry.

Such a stretch is one thing for the alignment of the sizes, and its entries are aligned among themselves: what falls on one
row in one size may fall on two in another.
"""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Sequence
from dataclasses import field

from walewright.knit import steps as st
from walewright.knit.operations import Side
from walewright.knit.steps import Step
from walewright.record import record
from walewright.report.said import Said
from walewright.write import align as align_
from walewright.write.align import Column, align
from walewright.write.listed import NOTHING, InRowOrder, KnitRowsListed, Way, in_one
from walewright.write.tally import RowTally, counted

SHAPING = (
    st.Decrease,
    st.IncreaseFashioned,
    st.DecreaseOn,
    st.DecreaseOuter,
    st.IncreaseBeside,
    st.IncreaseOuter,
    st.IncreaseAtCarriage,
    st.CastOffAtCarriage,
    st.CastOnAtCarriage,
    st.HoldAtEnd,
    st.WrapHeld,
    st.ReturnHeld,
    st.ReturnSome,
)

BY_CARRIAGE = (
    st.IncreaseAtCarriage,
    st.CastOffAtCarriage,
    st.CastOnAtCarriage,
    st.HoldAtEnd,
    st.WrapHeld,
)
"""Steps that are right only with the carriage on one side."""

FEWEST = 4
"""Entries from which on a table is easier to follow than sentences."""


@record
class Entry:
    """With the counter at `row`, `steps` are done; `counts` has after each of them the stitches of the part being worked, and how
    many of those are held."""

    row: int
    steps: tuple[Step, ...]
    counts: tuple[tuple[int, int], ...]

    way: Way = NOTHING
    """What is done on the way to that row."""
    side: Side | None = None
    """Where the carriage stands then."""

    @property
    def by_carriage(self) -> Side | None:
        """Where the carriage has to stand for what is done, where that matters."""
        return self.side if any(isinstance(step, BY_CARRIAGE) for step in self.steps) else None

    @property
    def stitches(self) -> int:
        return self.counts[-1][0]

    @property
    def held(self) -> int:
        return self.counts[-1][1]


@record
class Rows(Step):
    """A stretch of one size: `steps` as planned, and the same as `entries`."""

    entries: tuple[Entry, ...]
    steps: tuple[Step, ...] = field(compare=False, repr=False)
    titles: tuple[st.Words, ...] = ()
    """What goes on at the same time, where that is known."""

    @property
    def several(self) -> bool:
        """Whether more than one shaping goes on in it, long enough for a table."""
        if self.titles:
            return True
        return len(self.entries) >= FEWEST and len({_track(s) for e in self.entries for s in e.steps}) > 1


def _track(step: Step) -> Hashable:
    """What tells one shaping from another: the statement it comes from, or else what is done where."""
    if step.origin:
        return step.origin
    return ("hold", step.side) if isinstance(step, st.HoldAtEnd | st.WrapHeld | st.ReturnHeld | st.ReturnSome) else likeness(step)


def folded(steps: Sequence[Step], tally: RowTally) -> tuple[tuple[Step, ...], RowTally]:
    """The steps, stretches of plain rows and shaping as `Rows`, and the tally after them. A stretch has two entries at least,
    and begins and ends with something done: rows that are knitted after it are told apart."""
    made: list[Step] = []
    stretch: list[Step] = []
    entries: list[Entry] = []
    trailing: list[Step] = []

    def close() -> None:
        made.extend([Rows(tuple(entries), tuple(stretch))] if len(entries) > 1 else stretch)
        made.extend(trailing)
        for told in (stretch, entries, trailing):
            told.clear()

    for step in steps:
        if isinstance(step, InRowOrder):
            close()
            told, tally = _in_row_order(step, tally)
            made += told
            continue
        tally = counted(tally, step)
        if isinstance(step, SHAPING) and tally.row is not None:
            count = tally.stitches, sum(tally.held)
            if entries and not trailing:
                before = entries[-1]
                entries[-1] = Entry(tally.row, (*before.steps, step), (*before.counts, count), before.way, tally.side)
            else:
                entries.append(Entry(tally.row, (step,), (count,), _way(trailing), tally.side))
            stretch += [*trailing, step]
            trailing.clear()
        elif isinstance(step, st.KnitRows) and tally.row is not None:
            trailing.append(step)
        else:
            close()
            made.append(step)
    close()
    return tuple(made), tally


def _in_row_order(step: InRowOrder, tally: RowTally) -> tuple[list[Step], RowTally]:
    """What goes on together as one stretch, and the rows after its last move."""
    entries: list[Entry] = []
    trailing: list[Step] = []
    for one in step.body:
        tally = counted(tally, one)
        assert tally.row is not None, "what goes on together has its rows counted"
        if isinstance(one, st.KnitRows):
            trailing.append(one)
            continue
        count = tally.stitches, sum(tally.held)
        if entries and not trailing:
            before = entries[-1]
            entries[-1] = Entry(tally.row, (*before.steps, one), (*before.counts, count), before.way, tally.side)
        else:
            entries.append(Entry(tally.row, (one,), (count,), _way(trailing), tally.side))
        trailing.clear()
    return [Rows(tuple(entries), step.body, step.titles), *trailing], tally


def _way(rows: Sequence[Step]) -> Way:
    return in_one([row.way for row in rows if isinstance(row, KnitRowsListed)])


def only_several(lists: Sequence[Sequence[Step]]) -> tuple[tuple[Step, ...], ...]:
    """The lists of all sizes, those stretches taken apart again that are none of several shapings in any size."""
    kept: list[set[int]] = [set() for _ in lists]
    passed = [0] * len(lists)
    for column in align([[s for s in steps if isinstance(s, Rows)] for steps in lists], likeness, closeness):
        several = any(s.several for s in column if s is not None)
        for size, stretch in enumerate(column):
            if stretch is not None:
                if several:
                    kept[size].add(passed[size])
                passed[size] += 1
    return tuple(tuple(_apart(steps, keep)) for steps, keep in zip(lists, kept, strict=True))


def _apart(steps: Sequence[Step], keep: set[int]) -> Iterator[Step]:
    number = 0
    for step in steps:
        if not isinstance(step, Rows):
            yield step
            continue
        yield from [step] if number in keep else step.steps
        number += 1


def likeness(step: Step) -> Hashable:
    """As `align.likeness`; any two stretches can go together."""
    return "rows" if isinstance(step, Rows) else align_.likeness(step)


def closeness(one: Step, other: Step) -> int:
    """As `align.closeness`; of stretches, in how many entries they are alike."""
    if not isinstance(one, Rows) or not isinstance(other, Rows):
        return align_.closeness(one, other)
    return sum(doings(a) == doings(b) for a, b in zip(one.entries, other.entries, strict=False))


def doings(entry: Entry) -> Hashable:
    """What is done at a row, whatever its numbers."""
    return tuple(likeness(s) for s in entry.steps)


def table(stretches: Column[Rows]) -> list[Column[Entry]]:
    """The entries of all sizes as rows of one table. What is done at one row stands together, unless the table is shorter or
    has fewer rows for some sizes only with each thing told apart."""
    together = [() if s is None else s.entries for s in stretches]
    apart = [tuple(one for entry in entries for one in _one_by_one(entry)) for entries in together]
    made = [align(entries, doings, lambda a, b: a.row == b.row) for entries in (together, apart)]
    return min(made, key=lambda rows: len(rows) + sum(None in row for row in rows))


def _one_by_one(entry: Entry) -> Iterator[Entry]:
    for number, (step, count) in enumerate(zip(entry.steps, entry.counts, strict=True)):
        yield Entry(entry.row, (step,), (count,), NOTHING if number else entry.way, entry.side)


def titles(stretches: Column[Rows]) -> tuple[st.Words, ...]:
    """What goes on at the same time in any size, each once."""
    return tuple(dict.fromkeys(title for rows in stretches if rows is not None for title in rows.titles))


def announced(stretches: Column[Rows]) -> tuple[Said, ...]:
    """What goes on at the same time, each once: decrease at the left end, hold at the right end."""
    steps = (s for rows in stretches if rows is not None for e in rows.entries for s in e.steps)
    return tuple(dict.fromkeys(Said(_going_on(s)) for s in steps))


def _going_on(step: Step) -> str:
    match step:
        case st.Decrease(ends=ends) | st.DecreaseOn(ends=ends) | st.DecreaseOuter(ends=ends):
            return f"decrease at {ends}"
        case st.IncreaseFashioned(ends=ends) | st.IncreaseBeside(ends=ends) | st.IncreaseOuter(ends=ends):
            return f"increase at {ends}"
        case st.IncreaseAtCarriage():
            return "increase at carriage"
        case st.CastOffAtCarriage():
            return "cast off at carriage"
        case st.CastOnAtCarriage():
            return "cast on at carriage"
        case st.HoldAtEnd(side=side) | st.WrapHeld(side=side) | st.ReturnHeld(side=side) | st.ReturnSome(side=side):
            return f"hold at {side}"
    raise KeyError(type(step).__name__)
