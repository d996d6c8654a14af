"""Partings: what hands do where the width parts, when one part gives way to another, and where parts rejoin."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.counted.model import SizedOpening
from walewright.counted.parts import SizedPart
from walewright.design.model import Fabric
from walewright.knit import steps as st
from walewright.knit.hands import perform
from walewright.knit.lengths import SEWN_IN, length_cm
from walewright.knit.operations import CrossingWay
from walewright.knit.state import State, WaitingPart
from walewright.knit.steps import PartPlace, Step
from walewright.knit.weave import stated
from walewright.knit.working_order import PutBy, WorkedPart
from walewright.record import replace
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


def place(part: SizedPart) -> tuple[PartPlace, int]:
    """Which part it is, and of more than three the number of an inner one from the left."""
    if part.rank in (1, part.among):
        return "left" if part.rank == 1 else "right", 0
    return ("middle", 0) if part.among == 3 else ("nth", part.rank)


def _put_by(put_by: PutBy, first: int, last: int, held: tuple[int, int], origin: str) -> Step:
    """The part on needles `first`..`last`, and those `held` for shaping at its ends, until its turn. Cord keeps every loop on its
    own needle, so that nothing has to be hung back and counted: it is chosen before waste yarn however long the part waits."""
    side, nth = place(put_by.part)
    if put_by.rows > MOST_HELD:
        return st.PartOnCord(side, first - held[0], last + held[1], put_by.rows, nth, origin=origin)
    return st.HoldPart(side, first, last, nth, origin=origin)


def taken(opening: SizedOpening) -> tuple[Step, ...]:
    """The gap's stitches, taken where the width parts."""
    origin = opening.origin.path
    first, last = opening.first, opening.first + opening.flat - 1
    if not opening.flat:
        return ()
    if opening.taken == "cast-off":
        return (st.CloseCentre(opening.flat, first, last, origin=origin),)
    return (st.CentreToWaste(opening.flat, first, last, f"{opening.name} centre", origin=origin),)


def part(turn: WorkedPart, following: SizedPart, state: State, use: st.UseYarnStep, crossing: EmptyCrossing) -> tuple[Step, ...]:
    """The gaps' stitches taken, and all parts put by but the one that is worked first (`following`), into hold or on cord. Where
    its own side is not the carriage's, it is begun with a new end of yarn; the carriage comes there by the `crossing` of the
    bed."""
    origin = turn.openings[0].origin.path
    centres = tuple(step for opening in turn.openings for step in taken(opening))
    put_by = tuple(_apart(turn, following, state, origin))
    if turn.goes_on:
        return (*centres, *put_by)
    return (
        *centres,
        st.BreakOff(SEWN_IN, origin=origin),
        # More than one needle is held only on the side where the carriage is not.
        st.CarriageAt(following.home, past_loops(crossing), origin=origin),
        *put_by,
        _yarn(use, origin),
    )


def _apart(turn: WorkedPart, following: SizedPart, state: State, origin: str) -> Iterator[Step]:
    """Each part that is put by, those at the left of the one worked first from the left, those at its right from the right."""
    first, last = state.working()
    for put_by in turn.put_by:
        left, right = put_by.part.left, put_by.part.right
        at_left, at_right = left == turn.part.left, right == turn.part.right
        low = first if at_left or left is None else left.first + left.flat
        high = last if at_right or right is None else right.first - 1
        held = state.held_left if at_left else 0, state.held_right if at_right else 0
        yield _put_by(put_by, low, high, held, origin)


def turn_to(
    to: SizedPart,
    before: WorkedPart,
    state: State,
    counter: int,
    use: st.UseYarnStep,
    begun: tuple[tuple[int, Step], ...] = (),
) -> tuple[Step, ...]:
    """A part returned to work where it was left, the counter read back to its first row. The part worked `before` it, still on its
    needles, waits meanwhile. `begun` are charts and stripes that ended in another part, each with the counter value where it
    begins: they are taken up where they stood. No loop is in work when the carriage comes: it passes those that
    are held."""
    origin = _origin(to)
    steps: list[Step] = []
    if state.last >= state.first:
        put_by = _put_by(before.put_by[0], *state.working(), (state.held_left, state.held_right), origin)
        # The yarn is broken before cord is laid: it hangs from that part.
        steps += (
            [st.BreakOff(SEWN_IN, origin=origin), put_by]
            if isinstance(put_by, st.PartOnCord)
            else [put_by, st.BreakOff(SEWN_IN, origin=origin)]
        )
    return (
        *steps,
        st.CarriageAt(to.home, "held", origin=origin),
        st.SetRowCounter(counter, origin=origin),
        *_back(state.part_on(_slot(to)), to, origin),
        _yarn(use, origin),
        *_taken_up(counter, begun, origin),
    )


def _origin(part: SizedPart) -> str:
    """Of the statement of an opening beside it."""
    return next(opening.origin.path for opening in (part.left, part.right) if opening is not None)


def _slot(part: SizedPart) -> int:
    """A needle of a part that waits to be begun, beside an opening that begins with it."""
    left, right = part.left, part.right
    if left is not None and left.row == part.from_row:
        return left.first + left.flat
    if right is not None and right.row == part.from_row:
        return right.first - 1
    raise ValueError("no opening begins beside the part")


def _back(waiting: WaitingPart, part: SizedPart, origin: str) -> tuple[Step, ...]:
    """The part that has waited, in work again."""
    side, nth = place(part)
    first, last = waiting.first + waiting.held_left, waiting.last - waiting.held_right
    drawn = (st.DrawPartsCord(side, waiting.first, waiting.last, nth, origin=origin),) if waiting.cord else ()
    return (*drawn, st.ReturnPart(side, first, last, nth, origin=origin))


def _taken_up(counter: int, begun: tuple[tuple[int, Step], ...], origin: str) -> tuple[Step, ...]:
    if not begun:
        return ()
    again = [s for at, start in begun for s in (st.SetRowCounter(at, origin=origin), start)]
    say = st.Say(said("goes-on-as-it-stood"), origin=origin)
    return (say, *again, st.SetRowCounter(counter, origin=origin))


def rejoin(
    turn: WorkedPart, into: SizedPart, state: State, fabric: Fabric, use: st.UseYarnStep, crossing: EmptyCrossing
) -> tuple[Step, ...]:
    """With one of the parts that are joined in work: the gaps beside it cast on again, in `fabric`, and the others returned, from
    it outwards. Where the yarn does not hang at the end from which knitting goes on, it does so with a new end, to which the
    carriage comes by the `crossing` of the bed."""
    origin = turn.openings[0].origin.path
    joined, at = turn.joined, turn.joined.index(turn.part)
    steps: list[Step] = []
    side = state.side
    if not turn.goes_on:
        # Needles that the yarn runs under cannot come back.
        side = into.home
        steps += [st.BreakOff(SEWN_IN, origin=origin), st.CarriageAt(side, past_loops(crossing), origin=origin), _yarn(use, origin)]
    for towards, others in (("left", joined[:at][::-1]), ("right", joined[at + 1 :])):
        for other in others:
            waiting = state.beside("left" if towards == "left" else "right")
            if waiting is None:
                raise ValueError(f"{state.block}: no part waits at the {towards}")
            more = (*_between(waiting, state, fabric, origin), *_back(waiting, other, origin))
            for step in more:
                _, state = perform(state, step)
            steps += more
    return (*steps, *stated(replace(state, side=side), origin))


def _between(waiting: WaitingPart, state: State, fabric: Fabric, origin: str) -> tuple[Step, ...]:
    """The gap between a part that waits and the one in work, cast on again."""
    first, last = (waiting.last + 1, state.first - 1) if waiting.last < state.first else (state.last + 1, waiting.first - 1)
    count = last - first + 1
    return (st.CastOnBetween(count, first, last, length_cm(fabric, count), origin=origin),) if count else ()


def _yarn(use: st.UseYarnStep, origin: str) -> st.UseYarnStep:
    return replace(use, before="", origin=origin)
