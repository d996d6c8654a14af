"""Folding: a list of sentences worked row by row, with what recurs in it printed once as a repeat.

Where two edges are shaped at the same time, their moves are interleaved in one order; if the periods agree, the same stretch
of work comes again and again, and a knitter would rather read it once. What is a repeat in one size is one of a single round
where it occurs but once in another, so that the sizes' texts keep one structure.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from types import MappingProxyType
from typing import Any

from walewright.knit import steps as st
from walewright.knit.steps import Step, shape
from walewright.record import record

LONGEST_BODY = 24
"""Steps of a repeat's body: more than that no knitter keeps in mind for a round (from memory)."""

_HOLDING = (st.HoldAtEnd, st.ReturnSome)


Cost = tuple[int, int, int]
"""Lines to be read, repeats that begin in the middle of a thought or with stitches that are the first held at their end, and,
negative, the sizes that have its repeats: less is better."""


@record
class _Folded:
    """What some work costs, its first sentences, and what follows them. Most ways that are tried are not taken: so no sentence is
    put together before one is."""

    cost: Cost
    first: tuple[Step, ...] = ()
    rest: _Folded | None = None

    def steps(self) -> tuple[Step, ...]:
        """All of its sentences."""
        found: list[Step] = []
        at: _Folded | None = self
        while at is not None:
            found += at.first
            at = at.rest
        return tuple(found)


_NOTHING = _Folded((0, 0, 0))


BodyShape = tuple[Any, ...]
"""What two rounds have in common whatever their numbers."""


Known = Mapping[BodyShape, int]
"""Shapes of bodies that are repeats in some size, each with the number of sizes where it is one."""

NOTHING_KNOWN: Known = MappingProxyType({})


def body_shape(body: Sequence[Step]) -> BodyShape:
    """The shape of each of its steps."""
    return tuple(shape(s) for s in body)


def fold(steps: Sequence[Step], known: Known = NOTHING_KNOWN) -> tuple[Step, ...]:
    """The same work with the fewest sentences; of those with as few, the one whose repeats begin as phrases do, are those of the
    most sizes, and begin early."""
    found = _Folding(tuple(steps), known).best()
    return tuple(_single_rounds(found, sorted(known, key=lambda body: (-len(body), body))))


def _single_rounds(steps: tuple[Step, ...], known: Sequence[BodyShape]) -> list[Step]:
    """Steps that are a round of what another size repeats as repeats of one round, the longest rounds first."""
    for number, body in enumerate(known):
        for i in range(len(steps) - len(body) + 1):
            end = i + len(body)
            if body_shape(steps[i:end]) == body:
                before, after = (_single_rounds(some, known[number:]) for some in (steps[:i], steps[end:]))
                return [*before, st.Repeat(steps[i:end], 1, origin=steps[end - 1].origin), *after]
    return list(steps)


class _Folding:
    """Work to be folded, each of its sentences with a number of its own: equal numbers are compared sooner than equal sentences.
    A body is the numbers of its sentences."""

    def __init__(self, steps: tuple[Step, ...], known: Known) -> None:
        self.known = known
        numbers: dict[Step, int] = {}
        self.work = tuple(numbers.setdefault(step, len(numbers)) for step in steps)
        self.sentences = tuple(numbers)
        self.knits = [isinstance(s, st.KnitRows) for s in self.sentences]
        self.goes_on = [isinstance(s, st.KnitRows | st.Repeat) for s in self.sentences]
        self.holds = [isinstance(s, _HOLDING) for s in self.sentences]
        self.bodies: dict[tuple[int, ...], tuple[Step, ...]] = {}
        self.costs: dict[tuple[int, ...], Cost] = {}

    def best(self) -> tuple[Step, ...]:
        """All of the work, folded."""
        return self._best(self.work, self.known, _first_held(self.sentences[n] for n in self.work)).steps()

    def _best(self, work: tuple[int, ...], known: Known, first_held: Sequence[bool] = ()) -> _Folded:
        alike = _alike(work)
        best = [_NOTHING] * (len(work) + 1)
        for i in range(len(work) - 1, -1, -1):
            rest = best[i + 1]
            lines, awkward, usual = rest.cost
            cost, repeats = (lines + 1, awkward, usual), False
            taken: tuple[tuple[int, ...], int] | None = None
            for length, same in alike:
                rounds = 1 + same[i] // length
                if rounds < 2:
                    continue
                body, begins_holding = work[i : i + length], any(first_held[i : i + length])
                # A round less than there are may leave a better repeat for what follows.
                for times in range(max(2, rounds - 1), rounds + 1):
                    own, after = self._cost(body, times, known), best[i + times * length].cost
                    option = (own[0] + after[0], own[1] + after[1] + begins_holding, own[2] + after[2])
                    if option < cost or (option == cost and not repeats):
                        cost, repeats, taken = option, True, (body, times)
            if taken is None:
                best[i] = _Folded(cost, (self.sentences[work[i]],), rest)
            else:
                best[i] = _Folded(cost, self._repeat(*taken), best[i + taken[1] * len(taken[0])])
        return best[0]

    def _inner(self, body: tuple[int, ...]) -> tuple[Step, ...]:
        """One round, folded in itself."""
        if body not in self.bodies:
            found = self._best(body, NOTHING_KNOWN) if len(body) > 3 else None
            self.costs[body] = found.cost if found else (len(body), 0, 0)
            self.bodies[body] = found.steps() if found else tuple(self.sentences[n] for n in body)
        return self.bodies[body]

    def _cost(self, body: tuple[int, ...], times: int, known: Known) -> Cost:
        if not any(self.goes_on[n] for n in body):
            return 1 + times * len(body), 1, 0
        inner = self._inner(body)
        begins = self.holds if any(self.holds[n] for n in body) else self.knits
        lines, awkward, _ = self.costs[body]
        usual = known.get(body_shape(inner), 0) if known else 0
        return 1 + lines, awkward + (not begins[body[0]]), -usual

    def _repeat(self, body: tuple[int, ...], times: int) -> tuple[Step, ...]:
        """The sentences of some rounds; what goes on over no row is written out."""
        if not any(self.goes_on[n] for n in body):
            return tuple(self.sentences[n] for n in body) * times
        return (st.Repeat(self._inner(body), times, origin=self.sentences[body[-1]].origin),)


def _first_held(steps: Iterable[Step]) -> list[bool]:
    """Of each step whether it holds the first stitches at its end: in a repeat these are the next ones there, each time, and in
    the sizes that hold as many no other time they are none of it."""
    holding: set[str] = set()
    found: list[bool] = []
    for step in steps:
        found.append(isinstance(step, st.HoldAtEnd) and step.side not in holding)
        if isinstance(step, st.HoldAtEnd):
            holding.add(step.side)
        elif isinstance(step, st.ReturnHeld):
            holding.discard(step.side)
    return found


def _alike(work: tuple[int, ...]) -> list[tuple[int, list[int]]]:
    """For each length of a body that recurs: how many sentences from each one on are the same as those so much later."""
    found: list[tuple[int, list[int]]] = []
    for length in range(2, min(LONGEST_BODY, len(work) // 2) + 1):
        same = [0] * (len(work) + 1)
        for i in range(len(work) - length - 1, -1, -1):
            if work[i] == work[i + length]:
                same[i] = same[i + 1] + 1
        if max(same) >= length:
            found.append((length, same))
    return found
