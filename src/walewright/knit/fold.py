"""Folding: a list of sentences worked row by row, with what recurs in it printed once as a repeat.

Where two edges are shaped at the same time, their moves are interleaved in one order; if the periods agree, the same stretch
of work comes again and again, and a knitter would rather read it once. What is a repeat in one size is one of a single round
where it occurs but once in another, so that the sizes' texts keep one structure.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any

from walewright.knit import steps as st
from walewright.knit.steps import Step, shape

LONGEST_BODY = 24
"""Steps of a repeat's body: more than that no knitter keeps in mind for a round (from memory)."""

_HOLDING = (st.HoldAtEnd, st.ReturnSome)


@dataclass(frozen=True, slots=True)
class _Folded:
    """`lines` counts what has to be read, `awkward` the repeats that begin in the middle of a thought, `usual` the sizes that have
    its repeats."""

    lines: int
    awkward: int
    usual: int
    steps: tuple[Step, ...]

    @property
    def cost(self) -> tuple[int, int, int]:
        return self.lines, self.awkward, -self.usual

    def before(self, rest: _Folded) -> _Folded:
        return _Folded(self.lines + rest.lines, self.awkward + rest.awkward, self.usual + rest.usual, self.steps + rest.steps)


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
    found = _best(tuple(steps), known).steps
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


def _best(steps: tuple[Step, ...], known: Known = NOTHING_KNOWN) -> _Folded:
    alike = _alike(steps)
    bodies: dict[tuple[Step, ...], _Folded] = {}
    best = [_Folded(0, 0, 0, ())] * (len(steps) + 1)
    for i in range(len(steps) - 1, -1, -1):
        found = _Folded(1, 0, 0, steps[i : i + 1]).before(best[i + 1])
        repeats = False
        for length in range(2, min(LONGEST_BODY, (len(steps) - i) // 2) + 1):
            rounds = 1 + alike[length][i] // length
            if rounds < 2:
                continue
            body = steps[i : i + length]
            if body not in bodies:
                bodies[body] = _best(body) if length > 3 else _Folded(length, 0, 0, body)
            # A round less than there are may leave a better repeat for what follows.
            for times in range(max(2, rounds - 1), rounds + 1):
                option = _repeat(body, bodies[body], times, known).before(best[i + times * length])
                if option.cost < found.cost or (option.cost == found.cost and not repeats):
                    found, repeats = option, True
        best[i] = found
    return best[0]


def _alike(steps: tuple[Step, ...]) -> dict[int, list[int]]:
    """For each length of a body: how many steps from each one on are the same as those so much later."""
    numbers: dict[Step, int] = {}
    codes = [numbers.setdefault(step, len(numbers)) for step in steps]
    found: dict[int, list[int]] = {}
    for length in range(2, min(LONGEST_BODY, len(steps) // 2) + 1):
        same = [0] * (len(steps) + 1)
        for i in range(len(steps) - length - 1, -1, -1):
            same[i] = same[i + 1] + 1 if codes[i] == codes[i + length] else 0
        found[length] = same
    return found


def _repeat(body: tuple[Step, ...], inner: _Folded, times: int, known: Known) -> _Folded:
    if not any(isinstance(s, st.KnitRows | st.Repeat) for s in inner.steps):
        return _Folded(1 + times * len(body), 1, 0, body * times)
    holds = any(isinstance(s, _HOLDING) for s in body)
    awkward = not isinstance(body[0], _HOLDING if holds else st.KnitRows)
    usual = known.get(body_shape(inner.steps), 0) if known else 0
    return _Folded(1 + inner.lines, inner.awkward + awkward, usual, (st.Repeat(inner.steps, times, origin=body[-1].origin),))
