"""What goes before what: moves of hands at a row, in groups that can be printed as one phrase."""

from __future__ import annotations

from enum import IntEnum

from walewright.knit import steps as st
from walewright.record import record, replace

GroupKey = tuple[str, int]
"""The same for the same group of the same track in every size."""


class Rank(IntEnum):
    """The order of what is done at one row. The yarn has just run out over held needles, so wraps come first; a rib is latched
    when its last row is knitted and before anything leaves the needles; what begins at a row comes after what ends there."""

    WRAP = 0
    LATCH = 1
    END = 2
    """Of a chart or stripes."""
    RETURN = 3
    WAYPOINT = 4
    """No hands: the counter is named here, because busy rows begin after plain ones."""
    YARN = 5
    CHART = 6
    """A chart or stripes begin."""
    SPREAD = 7
    HOLD = 8
    SLOT = 9
    MARK = 10
    SHAPE = 11
    PHRASE = 12
    """A repeat, which begins with the rows before its first move."""


@record
class Move:
    """At row `row`, `step` is done."""

    row: int
    rank: Rank
    step: st.Step


@record
class Group:
    """Moves of one track. From `start`, the row where the first gap begins, to the `last` move they need the rows for
    themselves when they are printed as one phrase, `repeat` (None: only moves)."""

    key: GroupKey
    start: int
    last: int
    moves: tuple[Move, ...]
    repeat: st.Step | None

    def meets(self, another: Group) -> bool:
        """Whether the two stretches of rows overlap, so that neither can be printed as one phrase."""
        return self.start < another.last and another.start < self.last


def alone(key: GroupKey, move: Move) -> Group:
    """A group of a single move without a phrase."""
    return Group(key, move.row, move.row, (move,), None)


@record
class RowStretch:
    """Rows `first_row`..`last_row` of one part of a piece, worked `times` times in all, and the groups that move in them.
    `opens`: what was in work before it, if anything, was not the same needles. `yarn` is that of its first row, where it may
    have to be changed; `yarn_each_time`: its last row is knitted with another one."""

    first_row: int
    last_row: int
    groups: tuple[Group, ...]
    times: int = 1
    opens: bool = True
    yarn: st.UseYarnStep | None = None
    yarn_each_time: bool = False

    def has(self, move: Move) -> bool:
        """What is done at the last row belongs to the rows after it, but for what ends with the last row: a wrap, when the
        yarn is about to turn, a rib's last row, a chart's, and loops hung back before a parting or the end."""
        if move.rank in (Rank.WRAP, Rank.LATCH, Rank.END):
            return self.first_row < move.row <= self.last_row
        if move.rank is Rank.SPREAD:
            return self.first_row < move.row <= self.last_row or (self.opens and move.row == self.first_row)
        if move.rank is Rank.YARN:
            return self.first_row < move.row < self.last_row
        return self.first_row <= move.row < self.last_row

    def only_its_own(self) -> RowStretch:
        """Without the groups that do not move in it. One without moves, which another size works, keeps its place."""
        own = (g for g in self.groups if any(self.has(m) for m in g.moves) or (not g.moves and self._begins(g)))
        return replace(self, groups=tuple(own))

    def _begins(self, group: Group) -> bool:
        return self.first_row <= group.start < self.last_row
