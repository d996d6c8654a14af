"""Partings: what hands do where the width parts, when the one part gives way to the other, and where they rejoin."""

from __future__ import annotations

from walewright.design.model import Fabric
from walewright.knit import steps as st
from walewright.knit.lengths import SEWN_IN, length_cm
from walewright.knit.operations import Side
from walewright.knit.state import State
from walewright.knit.steps import Step
from walewright.solve.model import SizedOpening


def part(opening: SizedOpening, state: State, use: st.UseYarnStep) -> tuple[Step, ...]:
    """The gap's stitches taken, and the part that is worked second put into hold. Of an opening that rejoins, the left part
    comes first: with a new end of yarn from its own side."""
    origin = opening.origin.path
    first, last = opening.first, opening.first + opening.flat - 1
    centre: tuple[Step, ...] = ()
    if opening.flat and opening.taken == "cast-off":
        centre = (st.CloseCentre(opening.flat, first, last, origin=origin),)
    elif opening.flat:
        centre = (st.CentreToWaste(opening.flat, first, last, f"{opening.name} centre", origin=origin),)
    working = state.working()
    if not opening.rejoins:
        return (*centre, st.HoldPart("left", working[0], first - 1, origin=origin))
    return (
        *centre,
        st.BreakOff(SEWN_IN, origin=origin),
        # More than one needle is held only on the side where the carriage is not.
        st.CarriageAt("left", origin=origin),
        st.HoldPart("right", last + 1, working[1], origin=origin),
        _yarn(use, origin),
    )


def turn_to(
    side: Side, opening: SizedOpening, state: State, counter: int, use: st.UseYarnStep, begun: tuple[tuple[int, Step], ...] = ()
) -> tuple[Step, ...]:
    """The second part, at `side`, returned to work where it was left, the counter read back to the parting. A first part still
    on its needles waits meanwhile. `begun` are charts and stripes that ended in the first part, each with the counter value
    where it begins: they are taken up where they stood."""
    origin = opening.origin.path
    steps: list[Step] = []
    if state.last >= state.first:
        done: Side = "left" if side == "right" else "right"
        steps += [st.HoldPart(done, *state.working(), origin=origin), st.BreakOff(SEWN_IN, origin=origin)]
    waiting = state.left if side == "left" else state.right
    if waiting is None:
        raise ValueError(f"{state.block}: no part waits at the {side}")
    first, last = waiting.first + waiting.held_left, waiting.last - waiting.held_right
    return (
        *steps,
        st.CarriageAt(side, origin=origin),
        st.SetRowCounter(counter, origin=origin),
        st.ReturnPart(side, first, last, origin=origin),
        _yarn(use, origin),
        *_taken_up(counter, begun, origin),
    )


def _taken_up(counter: int, begun: tuple[tuple[int, Step], ...], origin: str) -> tuple[Step, ...]:
    if not begun:
        return ()
    again = [s for at, start in begun for s in (st.SetRowCounter(at, origin=origin), start)]
    say = st.Say("What ended in the other part goes on here as it stood: the counter only goes by where it began.", origin=origin)
    return (say, *again, st.SetRowCounter(counter, origin=origin))


def rejoin(opening: SizedOpening, state: State, fabric: Fabric) -> tuple[Step, ...]:
    """With the right part in work: the gap cast on again, in `fabric`, and the left part returned."""
    origin = opening.origin.path
    waiting = state.left
    if waiting is None or state.side is None:
        raise ValueError(f"{state.block}: no part waits at the left")
    gap = (waiting.last + 1, state.first - 1)
    count = gap[1] - gap[0] + 1
    between: tuple[Step, ...] = (st.CastOnBetween(count, *gap, length_cm(fabric, count), origin=origin),) if count else ()
    return (
        *between,
        st.ReturnPart("left", waiting.first + waiting.held_left, waiting.last, origin=origin),
        st.Now(state.stitches + count, state.row, state.side, origin=origin),
    )


def _yarn(use: st.UseYarnStep, origin: str) -> st.UseYarnStep:
    return st.UseYarnStep(use.yarn, use.tension, origin=origin)
