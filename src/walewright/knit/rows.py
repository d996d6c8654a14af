"""One row, as hands and carriage knit it: stripes, charts, and the carriage's pass, in the order in which a knitter works.

What a chart has begun on a needle and not ended (a purl column, a ladder, a needle held for a tuck) is kept in the state, and
ended when the chart goes on otherwise or the needle leaves it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from typing import assert_never

from walewright.design.model import Cell
from walewright.knit import operations as op
from walewright.knit.charting import Active, InForce, RowOfChart, SlotSpan, active, cell, row_of
from walewright.knit.operations import Operation
from walewright.knit.stages import row_knitted
from walewright.knit.state import State
from walewright.record import replace

Done = tuple[tuple[Operation, ...], State]

NEEDS_SLACK = 3
"""A cross of so many over so many and wider cannot be made without a dropped column beside it (common practice)."""


def knit_row(s: State) -> Done:
    """The next row and the state after it, the counter one on."""
    if s.side is None:
        raise ValueError(f"{s.block}: the carriage side is not known yet")
    made: list[Operation] = []
    if s.stripes is not None:
        more, s = _stripe(s)
        made += more
    if not s.in_force:
        to = op.other(s.side or "right")
        made.append(op.Pass(to))
        s = replace(s, side=to, row=s.row + 1)
    else:
        more, s = _charted(s)
        made += more
    if s.ribs:
        more, s = row_knitted(s)
        made += more
    return tuple(made), s


def _stripe(s: State) -> Done:
    """The yarn of the row about to be knitted, carried up or joined in anew where another one is in use."""
    stripes = s.stripes
    yarn = stripes.yarn(s.row) if stripes is not None else None
    if stripes is None or yarn is None or (s.yarn is not None and s.yarn[0] == yarn):
        return (), s
    after = replace(s, yarn=(yarn, stripes.tension))
    if s.yarn is not None and s.yarn[0] in stripes.carried:
        return (op.UseYarn(yarn, stripes.tension, carried=True),), after
    cut: tuple[Operation, ...] = (op.BreakYarn(),) if s.yarn is not None else ()
    return (*cut, op.UseYarn(yarn, stripes.tension, carried=yarn in stripes.carried)), after


# ----------------------------------------------------------------- a row with charts


def _charted(s: State) -> Done:
    working = s.working()
    needles = active(s.in_force, s.row, working)
    rows = [_ladders_on(row_of(one, s.row, mine), working) for one, mine in zip(s.in_force, needles, strict=True)]
    singles = {slot: found for row in rows for slot, found in row.singles.items()}
    made: list[Operation] = []

    held = {slot for one in s.in_force for slot in one.tucked}
    # The charts of an unknown yarn in use (none was said) have none to compare with.
    main, tension = s.yarn or ("", "")
    by_hand = _by_hand(singles, main)
    made += (op.Release(a, z) for a, z in ranges(held - by_hand.tuck))
    dropped, s = _run_down(s, needles)
    made += dropped
    for _, moved in sorted(group for row in rows for group in row.moves):
        made += (op.Transfer(m.first, m.last, m.by) for m in moved)
    crossed, in_force = _cross(s.in_force, rows)
    made += crossed
    begun = {slot for one in in_force for slot in one.ladder}
    made += (op.Transfer(slot, slot, 1) for slot in sorted(by_hand.ladder - begun))

    picture = any(one.chart.picture and _reaches(one, mine) for one, mine in zip(in_force, needles, strict=True))
    colours = {} if picture else by_hand.colours
    coloured = {slot for slots in colours.values() for slot in slots}
    made += (op.Hold(a, z) for a, z in ranges((by_hand.tuck - held) | by_hand.slip | by_hand.long | coloured))

    to = op.other(s.side or "right")
    if picture:
        yarns = {slot: c.yarn for slot, c in singles.items() if c.yarn}
        made.append(op.PictureRow(to, tension, _blocks(working, yarns, main)))
    else:
        made.append(op.Pass(to))

    made += _off_and_back(by_hand.slip)
    made += (op.DrawLong(slot) for slot in sorted(by_hand.long))
    made += (op.Release(a, z) for a, z in ranges(by_hand.long))
    for yarn, slots in colours.items():
        lift, back = _off(slots), _back(slots)
        made += (*lift, op.LayIn(yarn, tension, tuple(slots), to), *back)

    after = replace(s, side=to, row=s.row + 1, in_force=tuple(_counted(in_force, rows)))
    more, after = _settle(after)
    return (*made, *more), after


@dataclass(slots=True)
class _ByHand:
    """The needles of a row that ask for hands, by what is done with them; `colours`: those of each yarn but the one in use."""

    tuck: set[int] = field(default_factory=set)
    slip: set[int] = field(default_factory=set)
    long: set[int] = field(default_factory=set)
    ladder: set[int] = field(default_factory=set)
    colours: dict[str, list[int]] = field(default_factory=dict)


def _by_hand(singles: Mapping[int, Cell], main: str) -> _ByHand:
    made = _ByHand()
    for slot, found in sorted(singles.items()):
        match found.kind:
            case "tuck":
                made.tuck.add(slot)
            case "slip":
                made.slip.add(slot)
            case "long":
                made.long.add(slot)
            case "ladder":
                made.ladder.add(slot)
            case "knit":
                if found.yarn != main:
                    made.colours.setdefault(found.yarn, []).append(slot)
            case "purl":
                pass  # The carriage knits it; its column is latched up later.
            case "hole" | "from left" | "from right" | "two from left" | "two from right" | "three" | "cross":
                pass  # Worked with its neighbours, before the row.
            case _:
                assert_never(found.kind)
    return made


def _reaches(one: InForce, needles: Active) -> bool:
    """Whether any needle has a cell of the chart."""
    first, last = needles.span
    return any(slot in needles and one.column(slot) is not None for slot in range(first, last + 1))


def _cross(in_force: tuple[InForce, ...], rows: list[RowOfChart]) -> tuple[tuple[Operation, ...], tuple[InForce, ...]]:
    """Crossings. A purl column beside one is dropped before and re-formed after it, one between two after both: that gives the
    loops room. A wide one that has none beside it is not made."""
    made: list[Operation] = []
    pending = {slot: count for one in in_force for slot, count in one.purl.items()}
    down: dict[int, int] = {}
    used: set[int] = set()
    crosses = sorted((c for row in rows for c in row.crosses), key=lambda c: c.first)
    begins = {found.first for found in crosses}
    for found in crosses:
        beside = (found.first - 1, found.last + 1)
        half = (found.last - found.first + 1) // 2
        if half >= NEEDS_SLACK and not any(slot in down or (slot in pending and slot not in used) for slot in beside):
            continue
        for slot in beside:
            if slot in pending and slot not in used:
                used.add(slot)
                down[slot] = pending[slot]
                made.append(op.Drop(slot, down[slot]))
        made.append(op.Cross(found.first, found.last, half, "left" if found.hung_first == "left" else "right"))
        between = found.last + 1 if found.last + 2 in begins else None
        made += (op.LatchUp(slot, down.pop(slot)) for slot in beside if slot in down and slot != between)
    return tuple(made), tuple(replace(one, purl=_without(one.purl.items(), used)) for one in in_force)


def _counted(in_force: tuple[InForce, ...], rows: list[RowOfChart]) -> Iterator[InForce]:
    """With the row that has just been knitted counted on the needles where something is pending."""
    for one, row in zip(in_force, rows, strict=True):
        if not row.singles and not one.tucked:
            yield one
            continue
        purl, ladder, tucked = dict(one.purl), dict(one.ladder), set[int]()
        for slot, found in row.singles.items():
            match found.kind:
                case "purl":
                    purl[slot] = purl.get(slot, 0) + 1
                case "ladder":
                    ladder[slot] = ladder.get(slot, 0) + 1
                case "tuck":
                    tucked.add(slot)
        yield replace(one, purl=purl, ladder=ladder, tucked=frozenset(tucked))


def _settle(s: State) -> Done:
    """After a row: columns that do not go on in the next one are latched up, and deep ones as far as they have come by then."""
    latch: list[tuple[int, int]] = []
    charts: list[InForce] = []
    if not any(one.purl for one in s.in_force):
        return (), s
    for one, mine in zip(s.in_force, active(s.in_force, s.row, s.working()), strict=True):
        over = {slot for slot in one.purl if cell(one, s.row, slot, mine).kind != "purl"}
        deep = {slot for slot, rows in one.purl.items() if one.chart.stage and rows >= one.chart.stage}
        # A column that the next row drops for a cross is latched up after that: it gives the slack.
        over |= deep - _dropped_next(s) if deep else set()
        latch += ((slot, one.purl[slot]) for slot in over)
        charts.append(replace(one, purl=_without(one.purl.items(), over)))
    return tuple(op.LatchUp(*at) for at in sorted(latch)), replace(s, in_force=tuple(charts))


def _dropped_next(s: State) -> set[int]:
    """Needles right beside a cross of the next row."""
    needles = active(s.in_force, s.row, s.working())
    crosses = [c for one, mine in zip(s.in_force, needles, strict=True) for c in row_of(one, s.row, mine).crosses]
    return {slot for c in crosses for slot in (c.first - 1, c.last + 1)}


# ----------------------------------------------------------------- ladders


def _ladders_on(row: RowOfChart, working: SlotSpan) -> RowOfChart:
    """The row without a ladder on the last needle: its loop needs a needle to go to."""
    ends = row.singles.get(working[1])
    if ends is None or ends.kind != "ladder":
        return row
    return replace(row, singles={slot: found for slot, found in row.singles.items() if slot != working[1]})


def _run_down(s: State, needles: tuple[Active, ...]) -> Done:
    """Before a row: ladders that do not go on in it are dropped. Not sooner, for whatever comes between the rows (another chart,
    shaping, the end of the piece) needs a loop on every needle."""
    if not any(one.ladder for one in s.in_force):
        return (), s
    drop: list[tuple[int, int]] = []
    charts: list[InForce] = []
    for one, mine in zip(s.in_force, needles, strict=True):
        over: set[int] = set()
        if one.row(s.row) is not None:
            over = {slot for slot in one.ladder if slot in mine and cell(one, s.row, slot, mine).kind != "ladder"}
        drop += ((slot, one.ladder[slot]) for slot in over)
        charts.append(replace(one, ladder=_without(one.ladder.items(), over)))
    return tuple(op.Drop(*at) for at in sorted(drop)), replace(s, in_force=tuple(charts))


# ----------------------------------------------------------------- needles that leave a chart


def leave(before: State, after: State, hung_on: frozenset[int] = frozenset()) -> Done:
    """What is done before a step that takes needles from a chart, or hangs a further loop on the needles `hung_on`, `after` being
    the state it leads to: their columns are latched up, held needles return; a ladder stays knitted. Columns of a part that is to
    wait are put by. The state is `before` without them."""
    latch: list[tuple[int, int]] = []
    back: set[int] = set()
    put_by = dict(before.put_by)
    charts: list[InForce] = []
    still = tuple(zip(after.in_force, active(after.in_force, after.row, after.working()), strict=True))
    for one in before.in_force:
        mine = [needles for another, needles in still if one.placed_as(another)]
        lost = {slot for slot in one.pending if not any(slot in needles for needles in mine) or after.is_gap(slot)}
        lost |= one.pending & hung_on
        waiting = {slot for slot in lost if slot in one.purl and after.waits(slot)}
        put_by.update({(one.chart.name, slot): one.purl[slot] for slot in waiting})
        latch += ((slot, one.purl[slot]) for slot in lost - waiting if slot in one.purl)
        back |= lost & one.tucked
        charts.append(without(one, lost))
    made: list[Operation] = [op.LatchUp(*at) for at in sorted(latch)]
    made += (op.Release(a, z) for a, z in ranges(back))
    return tuple(made), replace(before, in_force=tuple(charts), put_by=put_by)


def taken_up(s: State) -> Done:
    """What was put by on needles that are in work again: it goes on where the chart reaches them, and is latched up where it does
    not. Of a chart that is still to be begun anew it stays put by."""
    back = {at: rows for at, rows in s.put_by.items() if not s.waits(at[1]) and any(one.chart.name == at[0] for one in s.in_force)}
    if not back:
        return (), s
    charts = list(s.in_force)
    latch = {slot: rows for (_, slot), rows in back.items()}
    for number, (one, mine) in enumerate(zip(s.in_force, active(s.in_force, s.row, s.working()), strict=True)):
        on = {slot: rows for (name, slot), rows in back.items() if name == one.chart.name and slot in mine}
        charts[number] = replace(one, purl={**one.purl, **on})
        latch = {slot: rows for slot, rows in latch.items() if slot not in on}
    kept = {at: rows for at, rows in s.put_by.items() if at not in back}
    return tuple(op.LatchUp(*at) for at in sorted(latch.items())), replace(s, in_force=tuple(charts), put_by=kept)


def stopped(one: InForce) -> tuple[Operation, ...]:
    """What is done when a chart ends: columns latched up, held needles returned; a ladder stays knitted."""
    return (
        *(op.LatchUp(*at) for at in sorted(one.purl.items())),
        *(op.Release(a, z) for a, z in ranges(one.tucked)),
    )


def without(one: InForce, slots: set[int]) -> InForce:
    """With nothing pending on these needles."""
    purl, ladder = _without(one.purl.items(), slots), _without(one.ladder.items(), slots)
    return replace(one, purl=purl, ladder=ladder, tucked=one.tucked - slots)


def _without(pending: Iterable[tuple[int, int]], slots: set[int]) -> dict[int, int]:
    return {slot: rows for slot, rows in pending if slot not in slots}


# ----------------------------------------------------------------- ranges of needles


def ranges(slots: Iterable[int]) -> Iterator[tuple[int, int]]:
    """The needles as ranges of neighbours, as long as can be, from left to right."""
    begin = end = None
    for slot in sorted(slots):
        if begin is not None and end is not None and slot > end + 1:
            yield begin, end
            begin = None
        begin = slot if begin is None else begin
        end = slot
    if begin is not None and end is not None:
        yield begin, end


def _off(slots: Iterable[int]) -> tuple[Operation, ...]:
    return tuple(op.LiftOff(a, z) for a, z in ranges(slots))


def _back(slots: Iterable[int]) -> tuple[Operation, ...]:
    return tuple(op.Release(a, z) for a, z in ranges(slots))


def _off_and_back(slots: Iterable[int]) -> tuple[Operation, ...]:
    kept = tuple(slots)
    return (*_off(kept), *_back(kept))


def _blocks(working: tuple[int, int], yarns: dict[int, str], main: str) -> tuple[tuple[str, int, int], ...]:
    """Blocks of neighbours in one yarn over all needles in work."""
    blocks: list[tuple[str, int, int]] = []
    for slot in range(working[0], working[1] + 1):
        yarn = yarns.get(slot, main)
        if blocks and blocks[-1][0] == yarn:
            blocks[-1] = (yarn, blocks[-1][1], slot)
        else:
            blocks.append((yarn, slot, slot))
    return tuple(blocks)
