"""What hands do with parts: where the width parts, when one gives way to another, and where they rejoin."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from walewright.knit import operations as op
from walewright.knit import part_steps as st
from walewright.knit.rows import Done
from walewright.knit.state import State, WaitingPart
from walewright.knit.step import Step
from walewright.record import replace


def hold_part(s: State, step: st.HoldPart) -> Done:
    """Needles already held for shaping stay held: the sentence names only those that are put to hold now."""
    return (op.Hold(step.first, step.last),), _put_by(s, step.first, step.last)


def part_on_cord(s: State, step: st.PartOnCord) -> Done:
    """All its needles are named, those held for shaping too."""
    first, last = s.working()
    waiting = _put_by(s, max(step.first, first), min(step.last, last))
    return (op.LayCord(step.first, step.last),), waiting.on_cord(step.first, cord=True)


def _put_by(s: State, first: int, last: int) -> State:
    """With the part on these needles, and those held at its ends, waiting: all that is in work, or its left or right end."""
    begin, end = s.working()
    if (first, last) == (begin, end):
        return s.wait(WaitingPart(s.first, s.last, s.held_left, s.held_right))
    if first == begin:
        gap = next((taken for taken in s.gaps if taken[0] == last + 1), (last + 1, last))
        rest = replace(s.wait(WaitingPart(s.first, last, s.held_left, 0)), first=gap[1] + 1, last=s.last, held_right=s.held_right)
    else:
        gap = next((taken for taken in s.gaps if taken[1] == first - 1), (first, first - 1))
        rest = replace(s.wait(WaitingPart(first, s.last, 0, s.held_right)), first=s.first, last=gap[0] - 1, held_left=s.held_left)
    return replace(rest, gaps=tuple(taken for taken in s.gaps if taken != gap))


def draw_parts_cord(s: State, step: st.DrawPartsCord) -> Done:
    """The part waits right out then."""
    return (op.DrawCord(step.first, step.last),), s.on_cord(step.first, cord=False)


def return_part(s: State, step: st.ReturnPart) -> Done:
    """Alone, or beside what is in work."""
    return (op.Release(step.first, step.last),), s.resume(step.first)


PART_HANDS: Mapping[type[Step], Callable[[State, Any], Done]] = {
    st.HoldPart: hold_part,
    st.PartOnCord: part_on_cord,
    st.DrawPartsCord: draw_parts_cord,
    st.ReturnPart: return_part,
}
