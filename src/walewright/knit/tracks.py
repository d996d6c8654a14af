"""Tracks: what happens at one edge of a piece, as groups of moves that can be printed as one phrase or, when
something else happens meanwhile, move by move.

From its `start` (the row where its first gap begins) to its `last` move a group needs the rows for itself when it is
printed as a repeat.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from walewright.knit import steps as st
from walewright.knit.operations import Side
from walewright.solve.model import SizedRun, SizedWedge

BOTH = "both ends"


@dataclass(frozen=True, slots=True)
class Move:
    """At counter value `row`, `step` is done. `rank` orders moves of one row: returns and wraps, then holds, then the rest."""

    row: int
    rank: int
    step: st.Step


@dataclass(frozen=True, slots=True)
class Group:
    """`key` is the same for the same group of the same track in every size. `repeat` is the phrase's step (None: only moves)."""

    key: tuple[str, int]
    start: int
    last: int
    moves: tuple[Move, ...]
    repeat: st.Step | None

    def meets(self, another: Group) -> bool:
        """Whether the two stretches of rows overlap, so that neither can be printed as one phrase."""
        return self.start < another.last and another.start < self.last


def run_groups(track: str, run: SizedRun, number: int, ends: str, origin: str) -> Iterator[Group]:
    """The groups of one run of a row edge; `ends` is "both ends", "left end" or "right end"."""
    scheduled = at = run.from_row
    for index, phrase in enumerate(run.phrases):
        if phrase.times == 0:
            continue
        rounds: list[tuple[int, list[Move], tuple[st.Step, ...]]] = []
        for _ in range(phrase.times):
            begin, moves, body = at, list[Move](), list[st.Step]()
            for gap, by in zip(phrase.gaps, phrase.by, strict=True):
                scheduled += gap
                for row, step in _changes(scheduled, by, run, ends, scheduled - at, origin):
                    if row > at:
                        body.append(st.KnitRows(row - at, origin=origin))
                    body.append(step)
                    moves.append(Move(row, 2, step))
                    at = row
            rounds.append((begin, moves, tuple(body)))
        # After a change worked first at one end, then at the other, the first round has a row less to knit: it stands alone.
        alone = 1 if len(rounds) > 1 and rounds[0][2] != rounds[1][2] else 0
        key = number * 100 + index * 2
        for part, some in ((0, rounds[:alone]), (1, rounds[alone:])):
            if some:
                moves = [m for _, made, _ in some for m in made]
                repeat = st.Repeat(some[0][2], len(some), origin=origin)
                yield Group((track, key + part), some[0][0], moves[-1].row, tuple(moves), repeat)


def _changes(row: int, by: int, run: SizedRun, ends: str, room: int, origin: str) -> list[tuple[int, st.Step]]:
    """When and how one change of the edge is made. Where hands need the carriage at the edge, two ends take two rows: the
    scheduled one and the one before, or, where there is no room before, the one after."""
    if by == -1:
        return [(row, st.Decrease(ends, 1, run.way.inset if run.way.kind == "fashioned" else 0, origin=origin))]
    if by == 1 and run.way.kind == "fashioned":
        return [(row, st.IncreaseFashioned(ends, run.way.inset, origin=origin))]
    step: st.Step
    if by == 1:
        step = st.IncreaseAtCarriage(origin=origin)
    elif by < 0:
        step = st.CastOffAtCarriage(-by, origin=origin)
    else:
        step = st.CastOnAtCarriage(by, origin=origin)
    if ends != BOTH:
        return [(row, step)]
    return [(row - 1, step), (row, step)] if room >= 2 else [(row, step), (row + 1, step)]


def wedge_groups(track: str, wedge: SizedWedge, side: Side, from_group: int, lead: int, origin: str) -> Iterator[Group]:
    """The groups of a held edge at `side`, from group `from_group` on. `lead` is 1 where the first hold is a row after
    the wedge's row (the carriage starts at `side`) and 0 where it is at once."""
    row = wedge.from_row + lead + 2 * from_group
    index = from_group
    last_group = len(wedge.groups) - 1
    while index < last_group:
        size = wedge.groups[index]
        same = 1
        while index + same < last_group and wedge.groups[index + same] == size:
            same += 1
        moves: list[Move] = []
        start = row
        body = (
            st.HoldAtEnd(side, size, origin=origin),
            st.KnitRows(1, origin=origin),
            st.WrapHeld(side, origin=origin),
            st.KnitRows(1, origin=origin),
        )
        for _ in range(same):
            moves += [Move(row, 1, body[0]), Move(row + 1, 0, body[2])]
            row += 2
        yield Group((track, 0 if size == wedge.groups[0] else 1), start, row, tuple(moves), st.Repeat(body, same, origin=origin))
        index += same
    if last_group > 0:
        back = st.ReturnHeld(side, origin=origin)
        yield Group((track, 2), row, row, (Move(row, 0, back),), None)


def mark_groups(track: str, runs: tuple[SizedRun, ...], met: frozenset[str], origin: str) -> Iterator[Group]:
    """A marker thread where an edge that has to be found again (`met`: it is joined or picked up) begins above the start
    and nothing in the fabric shows it."""
    for number, run in enumerate(runs):
        if run.from_row > 0 and run.name in met and not any(p.gaps[0] == 0 and p.times for p in run.phrases):
            step = st.MarkEdges(run.name, origin=origin)
            yield Group((track, number), run.from_row, run.from_row, (Move(run.from_row, 2, step),), None)
