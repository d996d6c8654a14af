"""Schedules along a curve: several stitches at once where it is steep, one at a time where it is flat.

Moves are made at every second row (the carriage has to come back), of as many stitches as the curve asks for. The rows between
two moves are one stair; for each stair some number of stitches moved suits its rows best.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from math import inf

from walewright.counted.model import ShapingPhrase
from walewright.record import record
from walewright.solve.schedule.schedule import ALLOWED_BEYOND, CLOSE


@record
class Flight:
    """`stitches` moved over `rows` rows along `line` (`line[i - 1]` is wanted at row i), at `slots` (rising, 2 rows apart).

    At `single` slots one stitch can go, but not several. The first gap is counted from `begin`. `steepens`: the line is level in
    the end, as an arch, and not at first."""

    stitches: int
    rows: int
    line: tuple[float, ...]
    slots: tuple[int, ...]
    single: frozenset[int] = frozenset()
    begin: int = 0
    steepens: bool = False

    def stairs(self) -> tuple[tuple[float, float], ...]:
        """(least, most) wanted on each stair: the rows before the first slot, then those from each slot to the next."""
        ends = (0, *self.slots, self.rows)
        found: list[tuple[float, float]] = []
        for begin, end in pairwise(ends):
            rows = self.line[begin:end] or (self.line[begin - 1],)
            found.append((rows[0], rows[-1]))
        return tuple(found)

    def least(self) -> tuple[float, ...]:
        """The least deviation that a whole number of stitches can have on each stair, whatever it has on the others. Nothing is
        moved before the first slot, everything after the last."""
        stairs = self.stairs()
        found = [_off(stairs[0], 0)]
        for low, high in stairs[1:]:
            down = min(self.stitches, int((low + high) / 2))
            found.append(min(_off((low, high), s) for s in (down, min(down + 1, self.stitches))))
        found[-1] = _off(stairs[-1], self.stitches)
        return tuple(found)


def _off(stair: tuple[float, float], moved: int) -> float:
    return max(abs(moved - stair[0]), abs(moved - stair[1]))


def least_deviation(flight: Flight) -> float:
    """The least greatest deviation of any schedule; infinite where the moves do not fit."""
    return _best_stairs(flight, inf, by_worst=True)[0]


def _best_stairs(flight: Flight, limit: float, by_worst: bool) -> tuple[float, tuple[int, ...]]:
    """Heights after each slot that deviate least, by the greatest deviation or by the sum of squares, none above the limit; with
    what they deviate, infinite where there are none."""
    stairs = flight.stairs()
    nothing = _off(stairs[0], 0)
    reach = [inf] * (flight.stitches + 1)
    if nothing <= limit + CLOSE:
        reach[0] = nothing if by_worst else nothing * nothing
    back: list[list[int]] = []
    for slot, stair in zip(flight.slots, stairs[1:], strict=True):
        following, origins = [inf] * len(reach), [0] * len(reach)
        best, best_from = inf, 0
        for height in range(len(reach)):
            if slot in flight.single:
                best, best_from = min((reach[h], h) for h in (height, height - 1) if h >= 0)
            elif reach[height] < best:
                best, best_from = reach[height], height
            off = _off(stair, height)
            if best < inf and off <= limit + CLOSE:
                following[height] = max(best, off) if by_worst else best + off * off
                origins[height] = best_from
        reach = following
        back.append(origins)
    heights = [flight.stitches]
    for origins in reversed(back):
        heights.append(origins[heights[-1]])
    return reach[flight.stitches], tuple(reversed(heights[:-1]))


# ----------------------------------------------------------------- forms


Form = tuple[int, int]
"""How many phrases of "many" (two stitches or more at every slot) and how many of "one" (one stitch, the slots further and
further apart). A curve that flattens has the many first, one that steepens the other way round."""


def forms() -> Iterator[Form]:
    """Fewest phrases first."""
    for count in range(1, 9):
        for many in range(min(count, 5), -1, -1):
            if count - many <= 4:
                yield many, count - many


@record
class _Found:
    """Phrases so far: what they deviate (squares, added up), and the last of them as (rows of the gap, stitches, times) with what
    goes before it."""

    cost: float
    last: tuple[int, int, int] | None = None
    before: _Found | None = None

    def phrases(self) -> tuple[tuple[int, int, int], ...]:
        """All phrases, the first first."""
        found: list[tuple[int, int, int]] = []
        at: _Found | None = self
        while at is not None and at.last is not None:
            found.append(at.last)
            at = at.before
        return tuple(reversed(found))


_State = tuple[int, int, int, int]
"""Slot of the last move (-1: none yet), stitches moved, stitches of the last phrase, its gap in slots."""

_ONE = 1
_FREE = 10**6
"""Of a phrase that sets no bound to the next one."""


def flight_schedules(flights: Sequence[Flight], signs: Sequence[int]) -> tuple[tuple[ShapingPhrase, ...], ...] | None:
    """Phrases for each flight, of one form where possible; `signs[i]` is -1 for inward moves. None where there is no slot.

    No stair is more than half a stitch worse than it must be; where no common form can do that, than the worst one must be.
    """
    if not any(f.stitches for f in flights):
        return tuple(() for _ in flights)
    worst = {f: least_deviation(f) for f in dict.fromkeys(flights)}
    if inf in worst.values():
        return None
    each = {f: _Search(f, tuple(least + ALLOWED_BEYOND for least in f.least())) for f in worst}
    whole = {f: _Search(f, (least + ALLOWED_BEYOND,) * (len(f.slots) + 1)) for f, least in worst.items()}
    for searches in (each, whole):
        for form in forms():
            if all(search.best(form) is not None for search in searches.values()):
                made = [searches[flight].best(form) for flight in flights]
                return tuple(_phrases(f, flight.steepens, form, s) for f, flight, s in zip(made, flights, signs, strict=True) if f)
    return tuple(_one_by_one(flight, worst[flight] + ALLOWED_BEYOND, sign) for flight, sign in zip(flights, signs, strict=True))


def _phrases(found: _Found, steepens: bool, form: Form, sign: int) -> tuple[ShapingPhrase, ...]:
    many, ones = (2,) * form[0], (1,) * form[1]
    made: list[ShapingPhrase] = []
    for (gap, stitches, times), unworked in zip(found.phrases(), ones + many if steepens else many + ones, strict=True):
        # A phrase not worked in this size keeps its place, so that the sizes line up.
        made.append(ShapingPhrase((gap,), (sign * stitches,), times) if times else ShapingPhrase((2,), (sign * unworked,), 0))
    return tuple(made)


class _Search:
    """Phrases that keep each stair of a flight within its limit. What a beginning of phrases leads to is worked out once for all
    forms that begin so."""

    def __init__(self, flight: Flight, limit: Sequence[float]) -> None:
        self.flight = flight
        self.whole = flight.stitches
        # costs[n][h]: what it costs to have h stitches moved on stair n, where that is within its limit
        self.costs: list[dict[int, float]] = []
        for stair, most in zip(flight.stairs(), limit, strict=True):
            offs = (
                (h, _off(stair, h)) for h in range(max(0, int(stair[1] - most) - 1), min(self.whole, int(stair[0] + most) + 1) + 1)
            )
            self.costs.append({h: off * off for h, off in offs if off <= most + CLOSE})
        self.reached: dict[Form, dict[_State, _Found]] = {}
        self.ended: dict[Form, _Found | None] = {}

    def best(self, form: Form) -> _Found | None:
        """The schedule of that form nearest to the curve, None if each strays too far on some stair."""
        if form not in self.ended:
            self.ended[form] = self._best(form)
        return self.ended[form]

    def _best(self, form: Form) -> _Found | None:
        if self.whole == 0:
            found = _Found(0.0)
            for _ in range(sum(form)):
                found = _Found(0.0, (2, 1, 0), found)
            return found
        ends: list[tuple[float, _Found]] = []
        for (slot, moved, _, _), found in self._after(form).items():
            rest = self._stand(slot, len(self.flight.slots), moved) if moved == self.whole else None
            if rest is not None:
                ends.append((found.cost + rest, found))
        return min(ends, key=lambda e: round(e[0], 9))[1] if ends else None

    def _after(self, form: Form) -> dict[_State, _Found]:
        """The states that the phrases of a form lead to."""
        if form == (0, 0):
            most, gap = (_ONE, _FREE) if self.flight.steepens else (self.whole, _ONE)
            return {(-1, 0, most, gap): _Found(0.0)}
        if form not in self.reached:
            many, ones = form
            last_is_many = many > 0 if self.flight.steepens else ones == 0
            before = self._after((many - 1, ones) if last_is_many else (many, ones - 1))
            self.reached[form] = self._after_phrase(before, last_is_many)
        return self.reached[form]

    def _after_phrase(self, states: dict[_State, _Found], many: bool) -> dict[_State, _Found]:
        reached = {state: _Found(found.cost, (2, 1, 0), found) for state, found in states.items()}
        for state, found in states.items():
            for gap, stitches in self._choices(many, state):
                self._work(reached, state, found, gap, stitches)
        return reached

    def _choices(self, many: bool, state: _State) -> Iterator[tuple[int, int]]:
        """(gap in slots, stitches) of a phrase after that state. Where the curve flattens never more stitches and never shorter
        gaps than before, where it steepens never fewer and never longer ones."""
        slot, moved, last_stitches, last_gap = state
        left = self.whole - moved
        steepens = self.flight.steepens
        if many:
            low, high = (max(2, last_stitches), left) if steepens else (2, min(left, last_stitches))
            # The first of several stitches is a gap of its own where it ends the plain rows at the beginning.
            for gap in range(1, len(self.flight.slots) - slot if steepens and slot < 0 else 2):
                if self._stand(slot, slot + gap, moved) is None:
                    return
                yield from ((gap, stitches) for stitches in range(low, high + 1))
        elif left:
            first = last_gap if last_stitches == 1 and not steepens else 1
            until = len(self.flight.slots) - slot
            for gap in range(first, min(until, last_gap + 1) if steepens else until):
                # Standing still for longer only gets worse.
                if self._stand(slot, slot + gap, moved) is None:
                    return
                yield gap, 1

    def _stand(self, slot: int, until: int, moved: int) -> float | None:
        """Cost of standing at `moved` stitches from slot number `slot` to slot number `until`; None: too far off."""
        cost = 0.0
        for stair in self.costs[slot + 1 : until + 1]:
            here = stair.get(moved)
            if here is None:
                return None
            cost += here
        return cost

    def _work(self, reached: dict[_State, _Found], state: _State, found: _Found, gap: int, stitches: int) -> None:
        slots, single = self.flight.slots, self.flight.single
        slot, moved, cost, times = state[0], state[1], found.cost, 0
        rows = slots[slot + gap] - (slots[slot] if slot >= 0 else self.flight.begin) if slot + gap < len(slots) else 0
        while moved + stitches <= self.whole and slot + gap < len(slots):
            standing = self._stand(slot, slot + gap, moved)
            # The first gap begins with the run, which may be a row off the rhythm of the slots.
            if standing is None or (times and slots[slot + gap] - slots[slot] != rows):
                return
            if stitches > 1 and slots[slot + gap] in single:
                return
            cost += standing
            slot, moved, times = slot + gap, moved + stitches, times + 1
            if moved not in self.costs[slot + 1]:
                return
            # The plain rows before the first move of a curve that steepens bind nothing that comes after.
            key = (slot, moved, stitches, _FREE if self.flight.steepens and slot == gap - 1 else gap)
            known = reached.get(key)
            if known is None or cost < known.cost - CLOSE:
                reached[key] = _Found(cost, (rows, stitches, times), found)


def _one_by_one(flight: Flight, limit: float, sign: int) -> tuple[ShapingPhrase, ...]:
    """Each stair at a height of its own, nearest to the curve of all schedules within the limit: always possible, if not plain."""
    _, heights = _best_stairs(flight, limit, by_worst=False)
    made: list[ShapingPhrase] = []
    moved, last = 0, flight.begin
    for slot, height in zip(flight.slots, heights, strict=True):
        if height > moved:
            made.append(ShapingPhrase((slot - last,), (sign * (height - moved),), 1))
            moved, last = height, slot
    return tuple(made)
