"""Partings: what hands do where the width parts, when the one part gives way to the other, and where they rejoin."""

from __future__ import annotations

from dataclasses import replace

from walewright.counted.model import SizedOpening
from walewright.design.model import Fabric
from walewright.knit import steps as st
from walewright.knit.lengths import SEWN_IN, length_cm
from walewright.knit.operations import CrossingWay, Side
from walewright.knit.state import State, WaitingPart
from walewright.knit.steps import Step
from walewright.report.said import said
from walewright.trade.beds import EmptyCrossing

MOST_HELD = 30
"""Rows that a part waits with its needles right out; longer, its stitches are worn by the yarn and the brushes that pass (common
practice)."""


def past_loops(crossing: EmptyCrossing) -> CrossingWay:
    """How the carriage passes loops in work; of a bed whose owner has not said it, in any way that there is."""
    if crossing == "none":
        raise ValueError("the carriage of the bed passes no loop in work without knitting it")
    return crossing


def _put_by(side: Side, first: int, last: int, held: tuple[int, int], rows: int, origin: str) -> Step:
    """The part, `held` of its needles being held for shaping at its ends, until its turn in `rows` rows. Cord keeps every loop on
    its own needle, so that nothing has to be hung back and counted: it is chosen before waste yarn however long the part waits."""
    if rows > MOST_HELD:
        return st.PartOnCord(side, first - held[0], last + held[1], rows, origin=origin)
    return st.HoldPart(side, first, last, origin=origin)


def part(opening: SizedOpening, state: State, use: st.UseYarnStep, rows: int, crossing: EmptyCrossing) -> tuple[Step, ...]:
    """The gap's stitches taken, and the part that is worked second put by for `rows` rows: into hold, or on cord. Of an opening
    that rejoins, the left part comes first: with a new end of yarn from its own side, to which the carriage comes by the
    `crossing` of the bed."""
    origin = opening.origin.path
    first, last = opening.first, opening.first + opening.flat - 1
    centre: tuple[Step, ...] = ()
    if opening.flat and opening.taken == "cast-off":
        centre = (st.CloseCentre(opening.flat, first, last, origin=origin),)
    elif opening.flat:
        centre = (st.CentreToWaste(opening.flat, first, last, f"{opening.name} centre", origin=origin),)
    working = state.working()
    if not opening.rejoins:
        return (*centre, _put_by("left", working[0], first - 1, (state.held_left, 0), rows, origin))
    return (
        *centre,
        st.BreakOff(SEWN_IN, origin=origin),
        # More than one needle is held only on the side where the carriage is not.
        st.CarriageAt("left", past_loops(crossing), origin=origin),
        _put_by("right", last + 1, working[1], (0, state.held_right), rows, origin),
        _yarn(use, origin),
    )


def turn_to(
    side: Side,
    opening: SizedOpening,
    state: State,
    counter: int,
    use: st.UseYarnStep,
    rows: int,
    crossing: EmptyCrossing,
    begun: tuple[tuple[int, Step], ...] = (),
) -> tuple[Step, ...]:
    """The second part, at `side`, returned to work where it was left, the counter read back to the parting. A first part still
    on its needles waits meanwhile, `rows` rows. `begun` are charts and stripes that ended in the first part, each with the
    counter value where it begins: they are taken up where they stood. What is held when the carriage comes is passed as it is."""
    origin = opening.origin.path
    steps: list[Step] = []
    if state.last >= state.first:
        done: Side = "left" if side == "right" else "right"
        put_by = _put_by(done, *state.working(), (state.held_left, state.held_right), rows, origin)
        # The yarn is broken before cord is laid: it hangs from that part.
        steps += (
            [st.BreakOff(SEWN_IN, origin=origin), put_by]
            if isinstance(put_by, st.PartOnCord)
            else [put_by, st.BreakOff(SEWN_IN, origin=origin)]
        )
    waiting = state.left if side == "left" else state.right
    if waiting is None:
        raise ValueError(f"{state.block}: no part waits at the {side}")
    return (
        *steps,
        st.CarriageAt(side, "" if crossing == "hold" or crossing == "none" else crossing, origin=origin),
        st.SetRowCounter(counter, origin=origin),
        *_back(waiting, side, origin),
        _yarn(use, origin),
        *_taken_up(counter, begun, origin),
    )


def _back(waiting: WaitingPart, side: Side, origin: str) -> tuple[Step, ...]:
    """The part that has waited, in work again."""
    first, last = waiting.first + waiting.held_left, waiting.last - waiting.held_right
    drawn = (st.DrawPartsCord(side, waiting.first, waiting.last, origin=origin),) if waiting.cord else ()
    return (*drawn, st.ReturnPart(side, first, last, origin=origin))


def _taken_up(counter: int, begun: tuple[tuple[int, Step], ...], origin: str) -> tuple[Step, ...]:
    if not begun:
        return ()
    again = [s for at, start in begun for s in (st.SetRowCounter(at, origin=origin), start)]
    say = st.Say(said("goes-on-as-it-stood"), origin=origin)
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
        *_back(waiting, "left", origin),
        st.Now(state.stitches + count, state.row, state.side, origin=origin),
    )


def _yarn(use: st.UseYarnStep, origin: str) -> st.UseYarnStep:
    return replace(use, before="", origin=origin)
