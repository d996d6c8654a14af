"""Carriage and counter: passes, wraps. Passes also watch the yarn's way: where it hangs, where it turned."""

from __future__ import annotations

from array import array
from itertools import pairwise

from walewright.bed.by_hand import settle
from walewright.bed.loops import HELPERS, NOTHING, LoopKind
from walewright.bed.machine import HELD, NON_WORKING, WORKING, Layout, Machine
from walewright.bed.model import Bar, Course, Float, Turn
from walewright.bed.refusals import Refusal
from walewright.bed.strands import REACH
from walewright.knit.operations import Check, MoveCarriage, Pass, SetCounter, Side, Wrap, other
from walewright.record import replace
from walewright.report.said import Said, said

_EMPTY_HOOK = array("i", (NOTHING,)).tobytes()
LONGEST_FLOAT = REACH
"""Needles the yarn may skip at the start of a row."""


def move_carriage(m: Machine, op: MoveCarriage) -> Refusal | None:
    """The yarn is not laid. Past loops in work the carriage goes only as the bed lets it: set to knit, without yarn, it drops
    them."""
    has = m.bed.crossing
    if op.way and has not in ("any", op.way):
        return m.refuse("crossing-not-there", way=said(f"bed/crossing/{op.way}"), bed=said(f"bed/crosses/{has}"))
    if not op.way and has != "any" and m.working_ends() is not None:
        return m.refuse("crossing-drops", to=op.to, bed=said(f"bed/crosses/{has}"))
    m.side = op.to
    m.held_here.clear()
    return None


def set_counter(m: Machine, op: SetCounter) -> Refusal | None:
    """Setting the counter back after rows were knitted begins another part of the piece; to 0, with the whole width in work,
    the piece itself, and what was knitted before is its edging."""
    parting = False
    if op.rows < m.counter and any(c.kind == "knit" and c.section == m.section for c in m.courses):
        m.section += 1
        if op.rows == 0 and _whole_width(m):
            m.main = m.section
        else:
            parting = m.waits_at() >= 0
            m.parting = op.rows if parting else None
    if not parting:
        # The rows of the same stitches are only counted anew: an end hangs as many of them below as before.
        m.pending.strands = [replace(s, counter=s.counter + op.rows - m.counter) for s in m.pending.strands]
    m.counter = op.rows
    return None


def _whole_width(m: Machine) -> bool:
    row = _last_row(m)
    nothing_held = bool(m.layout().runs) and m.waits_at() < 0
    return nothing_held and row[0].first == row[0].live_first and row[-1].last == row[-1].live_last


def _last_row(m: Machine) -> list[Course]:
    """The courses of the last pass, from left to right: several in picture knitting."""
    row: list[Course] = []
    for course in reversed(m.courses):
        if course.kind == "knit":
            if row and (course.counter, course.section) != (row[0].counter, row[0].section):
                break
            row.insert(0, course)
    return row


def check(m: Machine, op: Check) -> Refusal | None:
    """Whether the machine stands as stated; a refusal names everything that differs."""
    found: list[Said] = []
    if m.stitches() != op.stitches:
        found.append(said("bed/differs/stitches", stated=op.stitches, found=m.stitches()))
    if m.counter != op.row:
        found.append(said("bed/differs/row", stated=op.row, found=m.counter))
    if m.side is None:
        found.append(said("bed/differs/no-side", stated=op.side))
    elif m.side != op.side:
        found.append(said("bed/differs/side", stated=op.side, found=m.side))
    if not found:
        return None
    return m.refuse("check-differs", differing=tuple(found))


# ------------------------------------------------------------------ passes


def cross(m: Machine, op: Pass) -> Refusal | None:
    """One row: a loop on every working needle, drawn through all that the needle carries; bars where it carries none."""
    start = other(op.to)
    if m.side == op.to:
        return m.refuse("carriage-already-there", to=op.to)
    m.settle_chain(goes_on=True)
    at = m.layout()
    empty = empty_hooks(m, at)
    refusal = (
        m.yarn_missing("row")
        or _something_to_knit(m, at, len(empty))
        or _yarn_comes_from(m, at.first if start == "left" else at.last, start)
        or row_can_be_knitted(m, at, empty)
    )
    if refusal is not None:
        return refusal
    turned(m, at, start, m.yarn_side)
    m.counter += 1
    if m.helper() is None:
        _knit_row(m, at, empty, op.to)
    else:
        _knit_helper_row(m, at)
    m.yarn_side = op.to
    m.yarn_at = at.last if op.to == "right" else at.first
    row_done(m, at, op.to)
    return None


def row_can_be_knitted(m: Machine, at: Layout, empty: list[int]) -> Refusal | None:
    """What holds of every row, whatever yarn is in it."""
    return (
        parts_meet(m, at)
        or unwrapped_across(m, at.first, at.last)
        or _no_bars_side_by_side(m, empty)
        or _no_long_gaps(m, at)
        or settle(m, at.inside)
    )


def row_done(m: Machine, at: Layout, to: Side) -> None:
    """The carriage stands at `to`."""
    m.side = to
    m.over = at.beyond[to]
    m.wrapped = -1
    m.held_here.clear()


def _something_to_knit(m: Machine, at: Layout, empty: int) -> Refusal | None:
    if not at.runs:
        return m.refuse("no-needle-in-work")
    if sum(b - a for a, b in at.runs) == empty:
        return m.refuse("no-loops")
    return None


def empty_hooks(m: Machine, at: Layout) -> list[int]:
    """Working needles without a loop, left to right."""
    # The search in bytes is the quick way to say that there is none, which is nearly always so.
    return [i for a, b in at.runs if _EMPTY_HOOK in m.top[a:b].tobytes() for i in range(a, b) if m.top[i] == NOTHING]


def _yarn_comes_from(m: Machine, index: int, start: Side) -> Refusal | None:
    if m.yarn_side is None:
        return None
    if m.yarn_side != start:
        return m.refuse("yarn-at-other-side", yarn=m.yarn or "", hangs=m.yarn_side, start=start)
    away = abs(index - m.yarn_at)
    if away > LONGEST_FLOAT:
        return m.refuse("yarn-float/from-needle", yarn=m.yarn or "", needle=m.at(m.yarn_at), other=m.at(index), over=away)
    return None


def _no_bars_side_by_side(m: Machine, empty: list[int]) -> Refusal | None:
    """Two empty hooks side by side get one long bar, not two loops: "never two at once" (lacecarriage.com, increasing)."""
    for i, j in pairwise(empty):
        if j == i + 1:
            return m.refuse("bars-side-by-side", needle=m.at(i), other=m.at(j))
    return None


def _no_long_gaps(m: Machine, at: Layout) -> Refusal | None:
    for (_, last), (first, _) in pairwise(at.runs):
        idle = m.position.count(NON_WORKING, last, first)
        if idle > LONGEST_FLOAT:
            return m.refuse("yarn-float/out-of-work", needle=m.at(last - 1), other=m.at(first), over=idle)
    return None


def parts_meet(m: Machine, at: Layout) -> Refusal | None:
    """A row over parts worked one after another: all must have come to the row that the counter reads."""
    if m.parting is None:
        return None
    tops = [m.course_of(loop) for a, b in at.runs for loop in m.top[a:b] if loop >= 0]
    reached: dict[int, int] = {}
    for course in tops:
        if m.main <= course.section < m.section and course.counter > m.parting:
            reached[course.section] = max(course.counter, reached.get(course.section, 0))
    if not reached:
        return None
    uneven = next((row for row in reached.values() if row != m.counter), None)
    if uneven is not None:
        return m.refuse("parts-meet-unevenly", one=uneven, other=m.counter)
    # Where others still wait, these count from here on as one part.
    m.parting = m.counter if m.waits_at() >= 0 else None
    m.stretch += 1
    return None


def unwrapped_across(m: Machine, first: int, last: int) -> Refusal | None:
    """A turn beside a held needle leaves a hole where both needles are worked together again, unless it was wrapped.

    If the neighbour is gone by then, or still waits, the turn was a real edge, such as a parted half's neck; so it was if
    both were knitted up to the same row meanwhile, as the two sides of a slit.
    """
    for index, turn in list(m.unwrapped.items()):
        if not first <= index <= last or m.position[index] != WORKING:
            continue
        beside = _beside(m, index, turn)
        live = 0 <= beside < len(m.position) and m.position[beside] == WORKING and m.top[beside] != NOTHING
        if live and m.row_of(index) != m.row_of(beside):
            return m.refuse("held-edge-unwrapped", needle=m.at(index), beside=m.at(beside), row=turn.counter)
        del m.unwrapped[index]
    return None


def unwrapped_moved(m: Machine, first: int, last: int) -> Refusal | None:
    """The same, of loops that are about to be moved off their needles, by which they could not be told later. Where the needle
    beside still holds its loops, nothing is decided yet."""
    for index in range(first, last + 1):
        turn = m.unwrapped.get(index)
        beside = -1 if turn is None else _beside(m, index, turn)
        if 0 <= beside < len(m.position) and m.position[beside] == WORKING:
            refusal = unwrapped_across(m, index, index)
            if refusal is not None:
                return refusal
    return None


def _beside(m: Machine, index: int, turn: Turn) -> int:
    """The next needle that is in use on the side of the turn; may lie past the end of the bed."""
    step = -1 if turn.side == "right" else 1
    beside = index + step
    while 0 <= beside < len(m.position) and m.position[beside] == NON_WORKING:
        beside += step
    return beside


def turned(m: Machine, at: Layout, start: Side, yarn_side: Side | None) -> None:
    """The pass leaves `start`: did the yarn run out over held needles there, and does it come back wrapped?"""
    inner = at.beyond[start]
    for index in m.held_here:
        # Held where the carriage stands, straight after being knitted: the yarn comes back over it, a wrap by itself.
        if index == inner and yarn_side == start:
            m.wrap(index)
            return
    if inner < 0 or m.over != inner or yarn_side != start:
        return
    turn = Turn(m.counter, inner - m.half, start, m.wrapped == inner)
    m.turns.append(turn)
    if not turn.wrapped:
        m.unwrapped[inner] = turn


def _knit_row(m: Machine, at: Layout, empty: list[int], to: Side) -> None:
    begin = loops_of_row(m, at)
    course = m.course("knit", at.first, at.last, begin, to)
    bars_of_row(m, empty, course.live_first, course.live_last)
    pending = m.pending
    pending.at_edge = None
    if pending.laid:
        pending.laid = {}
    if pending.lifted:
        pending.lifted = set()
    for index in at.inside:
        loop = m.loops.add(index - m.half, LoopKind.BAR)
        m.hang(index, (loop,))
        m.course("laid", index, index, loop)
        pending.laid[index] = loop
    for (_, last), (first, _) in pairwise(at.runs):
        idle = (i - m.half for i in range(last, first) if m.position[i] == NON_WORKING)
        m.kept.floats += [Float(m.counter, m.yarn or "", slot, slot) for slot in idle]


def loops_of_row(m: Machine, at: Layout) -> int:
    """A loop on every working needle, drawn through what it carries; the first one's id."""
    loops, top = m.loops, m.top
    begin = n = len(loops.parent)
    for a, b in at.runs:
        loops.parent.extend(top[a:b])
        loops.slot.extend(m.axis[a:b])
        top[a:b] = array("i", range(n, n + b - a))
        n += b - a
    loops.kind.extend(bytes(n - begin))
    loops.face.extend(bytes(n - begin))
    for index in [i for i in m.more if m.position[i] == WORKING]:
        loops.more[top[index]] = tuple(m.more.pop(index))
    return begin


def bars_of_row(m: Machine, empty: list[int], live_first: int, live_last: int) -> None:
    """In the hooks that were empty the row has laid bars."""
    for index in empty:
        m.loops.kind[m.top[index]] = LoopKind.BAR
        m.bars.append(Bar(m.counter, index - m.half, m.top[index], index - m.half in (live_first, live_last)))


def _knit_helper_row(m: Machine, at: Layout) -> None:
    yarn = m.yarn or "waste"
    number = HELPERS[yarn]
    m.waste.append((yarn, m.tension, 1))
    for a, b in at.runs:
        m.top[a:b] = array("i", (number,)) * (b - a)
        m.kept.helpers[yarn] += b - a
    for index in [i for i in m.more if m.position[i] == WORKING]:
        del m.more[index]
    for index in at.inside:
        m.hang(index, (number,))
    m.pending.laid.clear()
    m.pending.lifted.clear()


# ------------------------------------------------------------------ wraps


def wrap(m: Machine, op: Wrap) -> Refusal | None:
    """Only the innermost held needle beside the last knitted one, on the carriage's side, can be reached by the yarn."""
    index = op.slot + m.half
    m.settle_chain(goes_on=True)
    refusal = m.yarn_missing("wrap")
    if refusal is not None:
        return refusal
    if m.position[index] != HELD:
        return m.refuse("wrap-not-held", needle=m.at(index))
    at_edge = m.pending.at_edge
    if (m.yarn_side is None and at_edge is None) or m.side != (m.yarn_side or m.side) or m.over != index:
        return m.refuse("wrap-away-from-yarn", needle=m.at(index))
    if m.wrapped == index:
        return m.refuse("wrapped-already", needle=m.at(index))
    m.wrap(index, at_edge)
    m.wrapped = index
    return None
