"""Yarn, carriage and counter: threading, passes, wraps. Passes also watch the yarn's way: where it hangs, where it turned."""

from __future__ import annotations

from array import array
from itertools import pairwise

from walewright.bed.loops import HELPERS, NOTHING, Kind
from walewright.bed.machine import HELD, NON_WORKING, WORKING, Layout, Machine, Refusal
from walewright.bed.model import Bar, Turn
from walewright.knit.operations import BreakYarn, Check, MoveCarriage, Pass, SetCounter, Side, UseYarn, Wrap, other

_EMPTY_HOOK = array("i", (NOTHING,)).tobytes()
LONGEST_FLOAT = 5
"""Needles the yarn may skip at the start of a row: the usual limit for floats, "5 sts" (alessandrina.com, fair-isle pages)."""


def use_yarn(m: Machine, op: UseYarn) -> Refusal | None:
    """The same unbroken yarn at another tension goes on; anything else is a fresh end."""
    if m.yarn != op.yarn or m.fastened:
        m.settle_chain(goes_on=False)
        _new_end(m)
        m.yarn = op.yarn
    m.tension = op.tension
    return None


def break_yarn(m: Machine, op: BreakYarn) -> Refusal | None:
    """The yarn is cut: a chain begun by a cast-off is fastened off with it."""
    if m.yarn is None:
        return m.refuse("no-yarn", "there is no yarn to break off: none is threaded")
    m.settle_chain(goes_on=False)
    _new_end(m)
    m.yarn = None
    m.tension = ""
    return None


def _new_end(m: Machine) -> None:
    m.runs += 1
    m.run = m.runs
    m.fastened = False
    m.yarn_side = None
    m.over = m.wrapped = -1


def move_carriage(m: Machine, op: MoveCarriage) -> Refusal | None:
    """The carriage is carried over: the yarn is not laid."""
    m.side = op.to
    m.held_here.clear()
    return None


def set_counter(m: Machine, op: SetCounter) -> Refusal | None:
    """Setting the counter back after rows were knitted begins another part of the piece; to 0, with the whole width in work,
    the piece itself, and what was knitted before is its edging."""
    if op.rows < m.counter and any(c.kind == "knit" and c.section == m.section for c in m.courses):
        m.section += 1
        if op.rows == 0 and _whole_width(m):
            m.main = m.section
        else:
            m.parting = op.rows if m.position.find(HELD) >= 0 else None
    m.counter = op.rows
    return None


def _whole_width(m: Machine) -> bool:
    row = next(course for course in reversed(m.courses) if course.kind == "knit")
    nothing_held = bool(m.layout().runs) and m.position.find(HELD) < 0
    return nothing_held and row.first == row.live_first and row.last == row.live_last


def check(m: Machine, op: Check) -> Refusal | None:
    """Whether the machine stands as stated; a refusal names everything that differs."""
    found: list[tuple[str, int | str, int | str]] = []
    if m.stitches() != op.stitches:
        found.append(("stitches", op.stitches, m.stitches()))
    if m.counter != op.row:
        found.append(("row", op.row, m.counter))
    if m.side != op.side:
        found.append(("side", op.side, m.side or "nowhere yet"))
    if not found:
        return None
    said = "; ".join(f"{what}: {wanted} stated, {actual} found" for what, wanted, actual in found)
    data: dict[str, int | str] = {}
    for what, wanted, actual in found:
        data[f"{what}_stated"] = wanted
        data[f"{what}_found"] = actual
    return m.refuse("check-differs", f"what the step states does not hold: {said}", **data)


# ------------------------------------------------------------------ passes


def cross(m: Machine, op: Pass) -> Refusal | None:
    """One row: a loop on every working needle, drawn through all that the needle carries; bars where it carries none."""
    start = other(op.to)
    if m.side == op.to:
        return m.refuse("carriage-already-there", f"the carriage is already on the {op.to}, so it cannot knit a row to the {op.to}")
    m.settle_chain(goes_on=True)
    at = m.layout()
    empty = _empty(m, at)
    refusal = (
        m.yarn_missing("this row")
        or _something_to_knit(m, at, len(empty))
        or _yarn_comes_from(m, at.first if start == "left" else at.last, start)
        or _parts_meet(m, at)
        or unwrapped_across(m, at.first, at.last)
        or _no_bars_side_by_side(m, empty)
        or _no_long_gaps(m, at)
    )
    if refusal is not None:
        return refusal
    _turn(m, at, start)
    m.counter += 1
    if m.helper() is None:
        _knit_row(m, at, empty, op.to)
    else:
        _knit_helper_row(m, at)
    m.side = m.yarn_side = op.to
    m.yarn_at = at.last if op.to == "right" else at.first
    m.over = at.beyond[op.to]
    m.wrapped = -1
    m.held_here.clear()
    return None


def _something_to_knit(m: Machine, at: Layout, empty: int) -> Refusal | None:
    if not at.runs:
        return m.refuse("no-needle-in-work", "no needle is in working position, so the row knits nothing")
    if sum(b - a for a, b in at.runs) == empty:
        return m.refuse("no-loops", "no needle in working position carries a loop, so the row knits nothing")
    return None


def _empty(m: Machine, at: Layout) -> list[int]:
    """Working needles without a loop, left to right."""
    # The search in bytes is the quick way to say that there is none, which is nearly always so.
    return [i for a, b in at.runs if _EMPTY_HOOK in m.top[a:b].tobytes() for i in range(a, b) if m.top[i] == NOTHING]


def _yarn_comes_from(m: Machine, index: int, start: Side) -> Refusal | None:
    if m.yarn_side is None:
        return None
    if m.yarn_side != start:
        return m.refuse(
            "yarn-at-other-side",
            f"the {m.yarn} hangs at the {m.yarn_side}, but the row starts at the {start}; it would lie across the whole row",
            yarn=m.yarn or "",
        )
    away = abs(index - m.yarn_at)
    if away > LONGEST_FLOAT:
        return m.refuse(
            "yarn-float",
            f"the {m.yarn} comes from needle {m.name(m.yarn_at)} and the row starts at needle {m.name(index)}: "
            f"it would float over {away} needles",
            m.yarn_at,
            index,
            over=away,
        )
    return None


def _no_bars_side_by_side(m: Machine, empty: list[int]) -> Refusal | None:
    """Two empty hooks side by side get one long bar, not two loops: "never two at once" (lacecarriage.com, increasing)."""
    for i, j in pairwise(empty):
        if j == i + 1:
            return m.refuse(
                "bars-side-by-side",
                f"needles {m.name(i)} and {m.name(j)} are both empty and in work: the yarn makes no stitches there",
                i,
                j,
            )
    return None


def _no_long_gaps(m: Machine, at: Layout) -> Refusal | None:
    for (_, last), (first, _) in pairwise(at.runs):
        idle = m.position.count(NON_WORKING, last, first)
        if idle > LONGEST_FLOAT:
            return m.refuse(
                "yarn-float",
                f"between needles {m.name(last - 1)} and {m.name(first)} the {m.yarn} would float over {idle} needles out of work",
                last - 1,
                first,
                over=idle,
            )
    return None


def _parts_meet(m: Machine, at: Layout) -> Refusal | None:
    """A row over parts worked one after another: all must have come to the row that the counter reads."""
    if m.parting is None:
        return None
    tops = [m.course_of(loop) for a, b in at.runs for loop in m.top[a:b] if loop >= 0]
    earlier = [c.counter for c in tops if m.main <= c.section < m.section and c.counter > m.parting]
    if not earlier:
        return None
    if max(earlier) != m.counter:
        return m.refuse(
            "parts-meet-unevenly",
            f"the row would go over two parts of which one was knitted to RC {max(earlier)} and the other to RC {m.counter}",
            one=max(earlier),
            other=m.counter,
        )
    m.parting = None
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
        step = -1 if turn.side == "right" else 1
        beside = index + step
        while 0 <= beside < len(m.position) and m.position[beside] == NON_WORKING:
            beside += step
        live = 0 <= beside < len(m.position) and m.position[beside] == WORKING and m.top[beside] != NOTHING
        if live and m.row_of(index) != m.row_of(beside):
            return m.refuse(
                "held-edge-unwrapped",
                f"the yarn turned beside the held needle {m.name(index)} at RC {turn.counter} without a wrap; "
                f"knitting on over {m.name(beside)} and {m.name(index)} leaves a hole",
                index,
                row=turn.counter,
            )
        del m.unwrapped[index]
    return None


def _turn(m: Machine, at: Layout, start: Side) -> None:
    """The pass leaves `start`: did the yarn run out over held needles there, and does it come back wrapped?"""
    inner = at.beyond[start]
    for index in m.held_here:
        # Held where the carriage stands, straight after being knitted: the yarn comes back over it, a wrap by itself.
        if index == inner and m.yarn_side == start:
            m.wrap(index)
            return
    if inner < 0 or m.over != inner or m.yarn_side != start:
        return
    turn = Turn(m.counter, inner - m.half, start, m.wrapped == inner)
    m.turns.append(turn)
    if not turn.wrapped:
        m.unwrapped[inner] = turn


def _knit_row(m: Machine, at: Layout, empty: list[int], to: Side) -> None:
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
    course = m.course("knit", at.first, at.last, begin, to)
    for index in empty:
        loops.kind[top[index]] = Kind.BAR
        edge = index - m.half in (course.live_first, course.live_last)
        m.bars.append(Bar(m.counter, index - m.half, top[index], edge))
    for index in at.inside:
        loop = loops.add(index - m.half, Kind.BAR)
        m.hang(index, (loop,))
        m.course("laid", index, index, loop)


def _knit_helper_row(m: Machine, at: Layout) -> None:
    number = HELPERS[m.yarn or "waste"]
    m.waste.append((m.yarn or "waste", m.tension, 1))
    for a, b in at.runs:
        m.top[a:b] = array("i", (number,)) * (b - a)
    for index in [i for i in m.more if m.position[i] == WORKING]:
        del m.more[index]
    for index in at.inside:
        m.hang(index, (number,))


# ------------------------------------------------------------------ wraps


def wrap(m: Machine, op: Wrap) -> Refusal | None:
    """Only the innermost held needle beside the last knitted one, on the carriage's side, can be reached by the yarn."""
    index = op.slot + m.half
    m.settle_chain(goes_on=True)
    refusal = m.yarn_missing("a wrap")
    if refusal is not None:
        return refusal
    if m.position[index] != HELD:
        return m.refuse("wrap-not-held", f"needle {m.name(index)} is not in holding position, so it cannot be wrapped", index)
    if m.yarn_side is None or m.side != m.yarn_side or m.over != index:
        return m.refuse(
            "wrap-away-from-yarn",
            f"the yarn is not beside needle {m.name(index)}: a wrap goes on the innermost held needle that the last row ran over",
            index,
        )
    if m.wrapped == index:
        return m.refuse("wrapped-already", f"needle {m.name(index)} has been wrapped since the last row", index)
    m.wrap(index)
    m.wrapped = index
    return None
