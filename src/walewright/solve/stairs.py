"""Schedules along a curve: several stitches at once where it is steep, one at a time where it is flat.

Moves are made at every second row (the carriage has to come back), of as many stitches as the curve asks for. The rows between
two moves are one stair; each stair has a height that suits its rows best, and may be half a stitch worse than that.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from walewright.solve.model import Phrase
from walewright.solve.schedule import ALLOWED_BEYOND, CLOSE


@dataclass(frozen=True, slots=True)
class Flight:
    """`stitches` moved over `rows` rows along `line` (`line[i - 1]` is wanted at row i), at `slots` (rising, 2 rows apart)."""

    stitches: int
    rows: int
    line: tuple[float, ...]
    slots: tuple[int, ...]

    def stair(self, number: int) -> tuple[float, ...]:
        """What is wanted at the rows between slot `number` and the next; number -1 is before the first."""
        begin = 0 if number < 0 else self.slots[number]
        end = self.slots[number + 1] if number + 1 < len(self.slots) else self.rows
        return self.line[begin:end]

    def off(self, number: int, moved: int) -> float:
        """The greatest deviation on that stair with `moved` stitches moved."""
        return max((abs(moved - wanted) for wanted in self.stair(number)), default=0.0)

    def least(self, number: int) -> float:
        """The least deviation that any whole number of stitches has on that stair."""
        stair = self.stair(number)
        if not stair or number < 0:
            return self.off(number, 0)
        middle = (min(stair) + max(stair)) / 2
        return min(self.off(number, min(self.stitches, max(0, int(middle) + up))) for up in (0, 1))


Form = tuple[str, ...]
"""What each phrase does: "many" (two stitches or more at every slot) or "one" (one stitch, slots further and further apart)."""


def forms() -> Iterator[Form]:
    """Fewest phrases first; steep before flat, as a curve that flattens is."""
    for count in range(1, 8):
        for many in range(min(count, 5), -1, -1):
            if count - many <= 4:
                yield ("many",) * many + ("one",) * (count - many)


@dataclass(frozen=True, slots=True)
class _Found:
    """Phrases so far as (gap, stitches, times), what they deviate (squares added up), the last gap and the last number."""

    cost: float
    phrases: tuple[tuple[int, int, int], ...]


_State = tuple[int, int, int, int]
"""Slot of the last move (-1: none yet), stitches moved, stitches of the last phrase, gap of the last phrase in slots."""


def flight_schedules(flights: Sequence[Flight], sign: int) -> tuple[tuple[Phrase, ...], ...] | None:
    """Phrases for each flight, of one form where possible; `sign` is -1 for inward moves. None where none fits at all."""
    if not any(f.stitches for f in flights):
        return tuple(() for _ in flights)
    if any(f.stitches and not f.slots for f in flights):
        return None
    for allowed in (ALLOWED_BEYOND, 2 * ALLOWED_BEYOND):
        for form in forms():
            found = [_best(flight, form, allowed) for flight in flights]
            if all(f is not None for f in found):
                return tuple(_phrases(f, form, sign) for f in found if f is not None)
    return tuple(_one_by_one(flight, sign) for flight in flights)


def _phrases(found: _Found, form: Form, sign: int) -> tuple[Phrase, ...]:
    made: list[Phrase] = []
    for (gap, stitches, times), what in zip(found.phrases, form, strict=True):
        if times:
            made.append(Phrase((gap,), (sign * stitches,), times))
        else:
            made.append(Phrase((2,), (sign * (2 if what == "many" else 1),), 0))
    return tuple(made)


def _best(flight: Flight, form: Form, allowed: float) -> _Found | None:
    """The schedule of that form nearest to the curve, None if each strays too far on some stair."""
    if flight.stitches == 0:
        return _Found(0.0, ((2, 1, 0),) * len(form))
    limit = [flight.least(number) + allowed + CLOSE for number in range(-1, len(flight.slots))]
    states: dict[_State, _Found] = {(-1, 0, flight.stitches + 1, 1): _Found(0.0, ())}
    for what in form:
        reached: dict[_State, _Found] = {
            state: _Found(found.cost, (*found.phrases, (2, 1, 0))) for state, found in states.items()
        }
        for state, found in states.items():
            for gap, stitches in _choices(flight, what, state):
                _work(flight, limit, reached, state, found, gap, stitches)
        states = reached
    ends = [(f.cost + _rest(flight, state[0]), f) for state, f in states.items() if state[1] == flight.stitches]
    ends = [e for e in ends if _rest_holds(flight, limit, e[1])]
    return min(ends, key=lambda e: round(e[0], 9))[1] if ends else None


def _choices(flight: Flight, what: str, state: _State) -> Iterator[tuple[int, int]]:
    """(gap in slots, stitches) of a phrase after that state: ever fewer stitches, ever longer gaps."""
    _, moved, last_stitches, last_gap = state
    left = flight.stitches - moved
    if what == "many":
        yield from ((1, stitches) for stitches in range(2, min(left, last_stitches - 1) + 1))
    elif left:
        longest = len(flight.slots)
        first = last_gap + 1 if last_stitches == 1 else 1
        yield from ((gap, 1) for gap in range(first, longest + 1))


def _work(
    flight: Flight, limit: list[float], reached: dict[_State, _Found], state: _State, found: _Found, gap: int, stitches: int
) -> None:
    slot, moved, cost, times = state[0], state[1], found.cost, 0
    first = slot
    while moved + stitches <= flight.stitches:
        landing = slot + gap
        if landing >= len(flight.slots):
            return
        for waiting in range(slot, landing):
            # The stairs that are passed without a move stay at the same height.
            off = flight.off(waiting, moved)
            if off > limit[waiting + 1]:
                return
            cost += off * off
        slot, moved, times = landing, moved + stitches, times + 1
        if flight.off(slot, moved) > limit[slot + 1]:
            return
        # The first gap of all begins at the run's beginning, which may lie a row or two before the first slot.
        rows = flight.slots[slot] - (flight.slots[slot - gap] if slot - gap >= 0 else 0)
        if first < 0 and times > 1 and rows != flight.slots[gap - 1]:
            return
        key = (slot, moved, stitches, gap)
        known = reached.get(key)
        if known is None or cost < known.cost - CLOSE:
            reached[key] = _Found(cost, (*found.phrases, (rows, stitches, times)))


def _rest(flight: Flight, slot: int) -> float:
    return sum(flight.off(number, flight.stitches) ** 2 for number in range(slot, len(flight.slots)))


def _rest_holds(flight: Flight, limit: list[float], found: _Found) -> bool:
    row = sum(gap * times for gap, _, times in found.phrases)
    slot = flight.slots.index(row) if row in flight.slots else -1
    return all(flight.off(number, flight.stitches) <= limit[number + 1] for number in range(slot, len(flight.slots)))


def _one_by_one(flight: Flight, sign: int) -> tuple[Phrase, ...]:
    """Each stair at its own best height: always possible, if not plain."""
    made: list[Phrase] = []
    moved = last = 0
    for number, slot in enumerate(flight.slots):
        stair = flight.stair(number)
        middle = (min(stair) + max(stair)) / 2 if stair else float(flight.stitches)
        height = flight.stitches if number == len(flight.slots) - 1 else min(flight.stitches, max(moved, round(middle)))
        if height > moved:
            made.append(Phrase((slot - last,), (sign * (height - moved),), 1))
            moved, last = height, slot
    return tuple(made)
