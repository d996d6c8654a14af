"""Weaving: the tracks of one stretch of rows, put into one order of sentences.

Where only one track is busy, its phrase is printed as one repeat; where several are, their moves are worked row by row in one
order, and what recurs in that order is folded into repeats again. Whether a phrase has to be taken apart is decided for all
sizes together, so that their texts keep one structure. Rows of a stretch that is worked several times are not counted: they
are one repeat, after which the counter is named again.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from walewright.knit import steps as st
from walewright.knit.at_once import Crowd, told
from walewright.knit.fold import NOTHING_KNOWN, Known, fold
from walewright.knit.hands import perform
from walewright.knit.merging import rows_of
from walewright.knit.order import GroupKey, Rank, RowStretch
from walewright.knit.state import State
from walewright.knit.steps import Step
from walewright.record import replace

_STOPS = (
    st.Repeat,
    st.Together,
    st.MarkEdges,
    st.UseYarnStep,
    st.StartChart,
    st.StopChart,
    st.StopChartOn,
    st.StartStripes,
    st.StopStripes,
    st.SpreadEvenly,
    st.SlotOnWaste,
    st.SlotClosed,
    st.EyeletAt,
    st.NeedleOut,
    st.NeedlesOutEvery,
    st.NeedleBack,
    st.NeedlesBackEvery,
    st.LatchRib,
    st.LatchPanel,
    st.LatchInStages,
    st.LatchPanelInStages,
)
"""What the counter is named before."""

_Item = Step | None
"""A step, or the place where it is stated what must be true."""


def crowded(stretches: Iterable[RowStretch]) -> frozenset[GroupKey]:
    """Keys of the groups that overlap another in any of the sizes, or reach beyond their stretch."""
    found: set[GroupKey] = set()
    for rows in stretches:
        for i, one in enumerate(rows.groups):
            if one.start < rows.first_row or one.last > rows.last_row:
                found.add(one.key)
            for another in rows.groups[i + 1 :]:
                if one.key != another.key and one.meets(another):
                    found |= {one.key, another.key}
    return frozenset(found)


def weave(
    rows: RowStretch, unrolled: frozenset[GroupKey], state: State, known: Known = NOTHING_KNOWN, crowds: Sequence[Crowd] = ()
) -> tuple[tuple[Step, ...], State]:
    """The sentences of a stretch, ending with what must be true at its last row, and the state after them. `known` are bodies
    that other sizes repeat here; each of the `crowds` is told as shapings that go on together."""
    made: list[Step] = []
    yarn = rows.yarn if rows.yarn is not None and _another(rows.yarn, state) else None
    again = rows.times > 1 and rows.yarn_each_time
    if yarn is not None and not again:
        made.append(yarn)
        _, state = perform(state, yarn)
    if rows.times > 1:
        body = [s for s in _folded(_in_order(rows, unrolled), known) if s is not None]
        if again and rows.yarn is not None:
            body = [rows.yarn, *body]
        items: list[_Item] = [st.Repeat(tuple(body), rows.times, origin=body[0].origin), None] if body else []
    else:
        items = _counted(rows, unrolled, state.row - rows.first_row, known, crowds)
    for item in items:
        if item is None:
            if not (made and isinstance(made[-1], st.Now)):
                made += stated(state, made[-1].origin if made else "")
        else:
            _, state = perform(state, item)
            made.append(item)
    return tuple(made), state


def _another(yarn: st.UseYarnStep, state: State) -> bool:
    return (state.yarn, state.fabric) != ((yarn.yarn, yarn.tension), yarn.fabric)


def stated(state: State, origin: str) -> tuple[Step, ...]:
    """What must be true."""
    if state.side is None:
        return ()
    if state.waiting:
        return (st.NowInHalf(state.stitches - state.waiting, state.row, state.side, state.waiting, origin=origin),)
    return (st.Now(state.stitches, state.row, state.side, origin=origin),)


# ----------------------------------------------------------------- one order of moves


def _in_order(rows: RowStretch, unrolled: frozenset[GroupKey]) -> list[_Item]:
    """A stretch whose rows are not counted."""
    made: list[_Item] = []
    at = rows.first_row
    for row, step in _moves(rows, unrolled):
        if step is None:
            continue
        if row > at:
            made.append(st.KnitRows(row - at, origin=step.origin))
            at = row
        made.append(step)
        at += rows_of(step)
    if rows.last_row > at:
        made.append(st.KnitRows(rows.last_row - at))
    return made


def _counted(rows: RowStretch, unrolled: frozenset[GroupKey], ahead: int, known: Known, crowds: Sequence[Crowd]) -> list[_Item]:
    """A stretch whose rows are counted; the counter is `ahead` of the rows by those that were worked several times."""
    made: list[_Item] = []
    busy: list[Step] = []
    at = rows.first_row

    def rest() -> None:
        made.extend(_folded(busy, known))
        busy.clear()

    for row, step in _moves(rows, unrolled, crowds):
        origin = step.origin if step is not None else ""
        if row > at:
            if step is None or isinstance(step, _STOPS):
                rest()
                made.extend((st.KnitTo(row + ahead, origin=origin), None))
            else:
                busy.append(st.KnitRows(row - at, origin=origin))
            at = row
        if isinstance(step, st.Together):
            rest()
            made.extend((replace(step, from_row=step.from_row + ahead, to_row=step.to_row + ahead), None))
            at = step.to_row
        elif isinstance(step, st.Repeat):
            rest()
            made.extend((step, None))
            at += rows_of(step)
        elif step is not None:
            busy.append(step)
    rest()
    if rows.last_row > at:
        made.append(st.KnitTo(rows.last_row + ahead))
    made.append(None)
    return made


def _folded(steps: Iterable[_Item], known: Known) -> list[_Item]:
    """Folded, with what must be true after each repeat."""
    made: list[_Item] = []
    for step in fold([s for s in steps if s is not None], known):
        made += [step, None] if isinstance(step, st.Repeat) else [step]
    return made


def _moves(rows: RowStretch, unrolled: frozenset[GroupKey], crowds: Sequence[Crowd] = ()) -> Iterator[tuple[int, Step | None]]:
    """(row, step) in the order worked; None is a waypoint, where busy rows begin after plain ones. A repeat stands at the row
    where its first gap begins."""
    todo: list[tuple[int, Rank, int, Step | None]] = []
    together: set[GroupKey] = set()
    for crowd in crowds:
        shapings = told(rows, crowd)
        if shapings is not None:
            together |= crowd
            todo.append((shapings.from_row, Rank.PHRASE, len(rows.groups), shapings))
    for number, group in enumerate(rows.groups):
        if group.key in together:
            continue
        if group.repeat is not None and group.key not in unrolled:
            # One without rows is done at once: a phrase that begins at the same row begins with rows.
            todo.append((group.start, Rank.PHRASE if rows_of(group.repeat) else Rank.SHAPE, number, group.repeat))
            continue
        if rows.first_row <= group.start and not any(g.start < group.start < g.last for g in rows.groups):
            todo.append((group.start, Rank.WAYPOINT, number, None))
        todo += [(m.row, m.rank, number, m.step) for m in group.moves if rows.has(m)]
    for row, _, _, step in sorted(todo, key=lambda t: t[:3]):
        yield row, step
