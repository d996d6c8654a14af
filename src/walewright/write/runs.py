"""Runs: rows of a table one after the other in which the same is done every so many rows, as one."""

from __future__ import annotations

from collections.abc import Hashable, Sequence
from itertools import pairwise

from walewright.record import record, replace
from walewright.write.align import Column
from walewright.write.listed import in_one
from walewright.write.row_by_row import Entry, doings

FEWEST = 3
"""Rows from which on they are shorter as one."""

_ONE, _RUN = 2, 3
"""How long a row is, and a run."""


@record
class EntryRun:
    """What is done first, with all that is done on the way to the last; then `every` so many rows (None where it is done once)
    to the `last`."""

    first: Column[Entry]
    every: tuple[int | None, ...]
    last: Column[Entry]


def in_runs(rows: Sequence[Column[Entry]]) -> list[Column[Entry] | EntryRun]:
    """The rows of a table, those of a run as one wherever that makes the table shorter. One size has each row on a line."""
    if rows and len(rows[0]) == 1:
        return list(rows)
    # best[i]: how long the rows from i on are, and where the next line begins.
    best = [(0, 0)] * (len(rows) + 1)
    for begin in reversed(range(len(rows))):
        ways = [(best[begin + 1][0] + _ONE, begin + 1)]
        for end in range(begin + 2, len(rows) + 1):
            if not _alike(rows[begin:end]):
                break
            if end - begin >= FEWEST:
                ways.append((best[end][0] + _RUN, end))
        best[begin] = min(ways, key=lambda way: (way[0], -way[1]))
    made: list[Column[Entry] | EntryRun] = []
    begin = 0
    while begin < len(rows):
        end = best[begin][1]
        made.append(rows[begin] if end - begin == 1 else _run(rows[begin:end]))
        begin = end
    return made


def _own(rows: Sequence[Column[Entry]]) -> list[list[Entry]]:
    """The entries of each size."""
    return [[entry for entry in entries if entry is not None] for entries in zip(*rows, strict=True)]


def _alike(rows: Sequence[Column[Entry]]) -> bool:
    """Whether all sizes do the same in all of them, each always after so many rows."""
    done: set[Hashable] = {doings(next(entry for entry in row if entry is not None)) for row in rows}
    return len(done) == 1 and all(
        len({b.row - a.row for a, b in pairwise(own)}) <= 1 and all(one.steps == own[0].steps for one in own) for own in _own(rows)
    )


def _run(rows: Sequence[Column[Entry]]) -> EntryRun:
    own = _own(rows)
    first = tuple(replace(one[0], way=in_one([entry.way for entry in one])) if one else None for one in own)
    every = tuple(one[1].row - one[0].row if len(one) > 1 else None for one in own)
    return EntryRun(first, every, tuple(one[-1] if one else None for one in own))
