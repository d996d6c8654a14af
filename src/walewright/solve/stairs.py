"""Schedules along a curve: several stitches at once where it is steep, one at a time where it is flat.

Moves are made at every second row (the carriage has to come back), of as many stitches as the curve asks for. The rows between
two moves are one stair; for each stair some number of stitches moved suits its rows best.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from walewright.solve.model import Phrase
from walewright.solve.schedule import ALLOWED_BEYOND, CLOSE


@dataclass(frozen=True, slots=True)
class Flight:
    """`stitches` moved over `rows` rows along `line` (`line[i - 1]` is wanted at row i), at `slots` (rising, 2 rows apart).

    At `single` slots one stitch can go, but not several."""

    stitches: int
    rows: int
    line: tuple[float, ...]
    slots: tuple[int, ...]
    single: frozenset[int] = frozenset()
    begin: int = 0

    def stairs(self) -> tuple[tuple[float, float], ...]:
        """(least, most) wanted on each stair: the rows before the first slot, then those from each slot to the next."""
        ends = (0, *self.slots, self.rows)
        found: list[tuple[float, float]] = []
        for begin, end in pairwise(ends):
            rows = self.line[begin:end] or (self.line[begin - 1],)
            found.append((rows[0], rows[-1]))
        return tuple(found)

    def least(self) -> tuple[float, ...]:
        """The least deviation that a whole number of stitches can have on each stair. All can be had at once: the best
        numbers rise with the curve. Nothing is moved before the first slot, everything after the last."""
        stairs = self.stairs()
        found = [_off(stairs[0], 0)]
        for low, high in stairs[1:]:
            down = min(self.stitches, int((low + high) / 2))
            found.append(min(_off((low, high), s) for s in (down, min(down + 1, self.stitches))))
        found[-1] = _off(stairs[-1], self.stitches)
        return tuple(found)


def _off(stair: tuple[float, float], moved: int) -> float:
    return max(abs(moved - stair[0]), abs(moved - stair[1]))


Form = tuple[str, ...]
"""What each phrase does: "many" (two stitches or more at every slot) or "one" (one stitch, slots further and further apart)."""


def forms() -> Iterator[Form]:
    """Fewest phrases first; steep before flat, as a curve that flattens is."""
    for count in range(1, 9):
        for many in range(min(count, 5), -1, -1):
            if count - many <= 4:
                yield ("many",) * many + ("one",) * (count - many)


@dataclass(frozen=True, slots=True)
class _Found:
    """Phrases so far as (rows of the gap, stitches, times), and what they deviate (squares, added up)."""

    cost: float
    phrases: tuple[tuple[int, int, int], ...]


_State = tuple[int, int, int, int]
"""Slot of the last move (-1: none yet), stitches moved, stitches of the last phrase, its gap in slots."""


def flight_schedules(flights: Sequence[Flight], signs: Sequence[int]) -> tuple[tuple[Phrase, ...], ...] | None:
    """Phrases for each flight, of one form where possible; `signs[i]` is -1 for inward moves. None where there is no slot.

    No stair is more than half a stitch worse than it must be; where no common form can do that, than the worst one must be.
    """
    if any(f.stitches and not set(f.slots) - f.single for f in flights):
        return None
    if not any(f.stitches for f in flights):
        return tuple(() for _ in flights)
    each = [tuple(least + ALLOWED_BEYOND for least in f.least()) for f in flights]
    whole = [(max(f.least()) + ALLOWED_BEYOND,) * (len(f.slots) + 1) for f in flights]
    for limits in (each, whole):
        for form in forms():
            found: list[_Found] = []
            for flight, limit in zip(flights, limits, strict=True):
                best = _Search(flight, limit).best(form)
                if best is None:
                    break
                found.append(best)
            else:
                return tuple(_phrases(f, form, sign) for f, sign in zip(found, signs, strict=True))
    return tuple(_one_by_one(flight, sign) for flight, sign in zip(flights, signs, strict=True))


def _phrases(found: _Found, form: Form, sign: int) -> tuple[Phrase, ...]:
    made: list[Phrase] = []
    for (gap, stitches, times), what in zip(found.phrases, form, strict=True):
        if times:
            made.append(Phrase((gap,), (sign * stitches,), times))
        else:
            # A phrase not worked in this size keeps its place, so that the sizes line up.
            made.append(Phrase((2,), (sign * (2 if what == "many" else 1),), 0))
    return tuple(made)


class _Search:
    """Phrases that keep each stair of a flight within its limit."""

    def __init__(self, flight: Flight, limit: Sequence[float]) -> None:
        self.flight = flight
        self.stairs = flight.stairs()
        self.limit = limit

    def best(self, form: Form) -> _Found | None:
        """The schedule of that form nearest to the curve, None if each strays too far on some stair."""
        whole = self.flight.stitches
        if whole == 0:
            return _Found(0.0, ((2, 1, 0),) * len(form))
        states: dict[_State, _Found] = {(-1, 0, whole, 1): _Found(0.0, ())}
        for what in form:
            reached = {state: _Found(found.cost, (*found.phrases, (2, 1, 0))) for state, found in states.items()}
            for state, found in states.items():
                for gap, stitches in self._choices(what, state):
                    self._work(reached, state, found, gap, stitches)
            states = reached
        ends: list[tuple[float, _Found]] = []
        for (slot, moved, _, _), found in states.items():
            rest = self._stand(slot, len(self.flight.slots), moved) if moved == whole else None
            if rest is not None:
                ends.append((found.cost + rest, found))
        return min(ends, key=lambda e: round(e[0], 9))[1] if ends else None

    def _choices(self, what: str, state: _State) -> Iterator[tuple[int, int]]:
        """(gap in slots, stitches) of a phrase after that state: never more stitches, never shorter gaps, than before."""
        slot, moved, last_stitches, last_gap = state
        left = self.flight.stitches - moved
        if what == "many":
            yield from ((1, stitches) for stitches in range(2, min(left, last_stitches) + 1))
        elif left:
            first = last_gap if last_stitches == 1 else 1
            for gap in range(first, len(self.flight.slots) - slot):
                # Standing still for longer only gets worse.
                if self._stand(slot, slot + gap, moved) is None:
                    return
                yield gap, 1

    def _stand(self, slot: int, until: int, moved: int) -> float | None:
        """Cost of standing at `moved` stitches from slot number `slot` to slot number `until`; None: too far off."""
        cost = 0.0
        for number in range(slot + 1, until + 1):
            off = _off(self.stairs[number], moved)
            if off > self.limit[number] + CLOSE:
                return None
            cost += off * off
        return cost

    def _work(self, reached: dict[_State, _Found], state: _State, found: _Found, gap: int, stitches: int) -> None:
        slots = self.flight.slots
        slot, moved, cost, times = state[0], state[1], found.cost, 0
        rows = slots[slot + gap] - (slots[slot] if slot >= 0 else self.flight.begin) if slot + gap < len(slots) else 0
        while moved + stitches <= self.flight.stitches and slot + gap < len(slots):
            standing = self._stand(slot, slot + gap, moved)
            # The first gap begins with the run, which may be a row off the rhythm of the slots.
            if standing is None or (times and slots[slot + gap] - slots[slot] != rows):
                return
            if stitches > 1 and slots[slot + gap] in self.flight.single:
                return
            cost += standing
            slot, moved, times = slot + gap, moved + stitches, times + 1
            if _off(self.stairs[slot + 1], moved) > self.limit[slot + 1] + CLOSE:
                return
            key = (slot, moved, stitches, gap)
            known = reached.get(key)
            if known is None or cost < known.cost - CLOSE:
                reached[key] = _Found(cost, (*found.phrases, (rows, stitches, times)))


def _one_by_one(flight: Flight, sign: int) -> tuple[Phrase, ...]:
    """Each stair at its own best height: always possible, if not plain."""
    made: list[Phrase] = []
    moved, last = 0, flight.begin
    last_slot = max(n for n, slot in enumerate(flight.slots) if slot not in flight.single)
    for number, (slot, (low, high)) in enumerate(zip(flight.slots, flight.stairs()[1:], strict=True)):
        height = flight.stitches if number == last_slot else min(flight.stitches, round((low + high) / 2))
        if slot in flight.single:
            height = min(height, moved + 1)
        if height > moved:
            made.append(Phrase((slot - last,), (sign * (height - moved),), 1))
            moved, last = height, slot
    return tuple(made)
