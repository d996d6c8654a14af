"""Weaving: the tracks of one part of a piece, put into one order of sentences.

Where only one track is busy, its phrase is printed as one repeat; where several are, their moves are printed row by row
("at the same time" without the words). Whether a phrase has to be unrolled is decided for all sizes together, so
that their texts keep one structure.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from walewright.knit import steps as st
from walewright.knit.hands import State, perform
from walewright.knit.tracks import Group, Move

Key = tuple[str, int]


@dataclass(frozen=True, slots=True)
class Part:
    """One part of a piece: rows `first_row`..`last_row` and the groups of moves that fall into them."""

    first_row: int
    last_row: int
    groups: tuple[Group, ...]


def crowded(parts: Iterable[Part]) -> frozenset[Key]:
    """Keys of the groups that overlap another in any of the sizes, or reach beyond their part."""
    found: set[Key] = set()
    for part in parts:
        for i, one in enumerate(part.groups):
            if one.start < part.first_row or one.last > part.last_row:
                found.add(one.key)
            for another in part.groups[i + 1 :]:
                if one.key != another.key and one.meets(another):
                    found |= {one.key, another.key}
    return frozenset(found)


def weave(part: Part, unrolled: frozenset[Key], state: State) -> tuple[tuple[st.Step, ...], State]:
    """The sentences of `part`, ending with what must be true at its last row, and the state after them."""
    made: list[st.Step] = []
    at = part.first_row

    def do(step: st.Step) -> None:
        nonlocal state
        _, state = perform(state, step)
        made.append(step)

    def now(origin: str) -> None:
        side = state.side
        if side is not None and not (made and isinstance(made[-1], st.Now)):
            if state.waiting:
                mine = state.stitches - state.waiting
                made.append(st.NowInHalf(mine, state.row, side, state.waiting, origin=origin))
            else:
                made.append(st.Now(state.stitches, state.row, side, origin=origin))

    for row, step in _in_order(part, unrolled):
        origin = step.origin if step is not None else ""
        if row > at:
            if step is None or isinstance(step, st.Repeat | st.MarkEdges):
                do(st.KnitTo(row, origin=origin))
                now(origin)
            else:
                do(st.KnitRows(row - at, origin=origin))
            at = row
        if step is not None:
            do(step)
        if isinstance(step, st.Repeat):
            at = state.row
            now(origin)
    if part.last_row > at:
        do(st.KnitTo(part.last_row))
    now("")
    return tuple(made), state


_WAYPOINT = 2
"""Rank of a plain stop between wraps (0), holds (1 + 2) and the rest: what begins at a row is announced by its counter value."""


def _in_order(part: Part, unrolled: frozenset[Key]) -> Iterator[tuple[int, st.Step | None]]:
    """(row, step) in the order worked; None is a waypoint, where busy rows begin after plain ones: the counter is named
    there. A repeat stands at the row where its first gap begins."""
    todo: list[tuple[int, int, int, st.Step | None]] = []
    for number, group in enumerate(part.groups):
        if group.repeat is not None and group.key not in unrolled:
            todo.append((group.start, 6, number, group.repeat))
            continue
        if not any(g.start < group.start < g.last for g in part.groups):
            todo.append((group.start, _WAYPOINT, number, None))
        todo += [(m.row, 2 * m.rank + (m.rank > 0), number, m.step) for m in group.moves if _falls_into(part, m)]
    for row, _, _, step in sorted(todo, key=lambda t: t[:3]):
        if part.first_row <= row <= part.last_row:
            yield row, step


def _falls_into(part: Part, move: Move) -> bool:
    """Rows of the part itself; a wrap that is due at its last row still belongs to it: the yarn is about to turn."""
    return part.first_row <= move.row < part.last_row or (move.row == part.last_row > part.first_row and move.rank == 0)
