"""A programme made smaller before it is solved: what has to be equal is one number, and what is said twice is said once.

Sizes that are wanted alike are held alike by the grading, so most wishes that compare two of them say nothing: of twenty sizes
there are a hundred and ninety pairs. What is left has the same best numbers at the same cost.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

from walewright.solve.algebra.programme import Linear, Programme, Terms, Wish


@dataclass(frozen=True, slots=True)
class Reduced:
    """Lines, wishes and small costs (variable, cost per unit) over fewer variables: `leader` says of each that occurs in the
    programme which one stands for it."""

    lines: tuple[Linear, ...]
    wishes: tuple[Wish, ...]
    nudges: tuple[tuple[int, float], ...]
    leader: Mapping[int, int]


def reduced(programme: Programme) -> Reduced:
    """The smaller programme."""
    lines = _narrowed(line for rule in programme.rules for _, line in rule.constraints)
    occurring = (
        *(v for line in lines for v, _ in line.terms),
        *(v for wish in programme.wishes for v, _ in wish.terms),
        *(v for v, _ in programme.nudges),
    )
    leader = _tied(lines, occurring)
    fewer = _narrowed(replace(line, terms=_led(line.terms, leader)) for line in lines)
    wishes = _together(replace(wish, terms=_led(wish.terms, leader)) for wish in programme.wishes)
    return Reduced(fewer, wishes, tuple((leader[v], cost) for v, cost in programme.nudges), leader)


def _narrowed(lines: Iterable[Linear]) -> tuple[Linear, ...]:
    """Lines over the same terms as one."""
    found: dict[Terms, Linear] = {}
    for line in lines:
        terms, turned = _faced(line.terms)
        low, high = line.low, line.high
        if turned:
            low, high = None if high is None else -high, None if low is None else -low
        known = found.get(terms)
        if known is not None:
            low = known.low if low is None else low if known.low is None else max(low, known.low)
            high = known.high if high is None else high if known.high is None else min(high, known.high)
        found[terms] = Linear(terms, low, high)
    return tuple(found.values())


def _faced(terms: Terms) -> tuple[Terms, bool]:
    """The terms by the numbers of their variables, the first one positive, and whether that turned their signs."""
    rising = tuple(sorted(terms))
    if rising and rising[0][1] < 0:
        return tuple((v, -c) for v, c in rising), True
    return rising, False


def _tied(lines: Iterable[Linear], occurring: Iterable[int]) -> dict[int, int]:
    """Variable to the least of those that it has to equal."""
    leader = {v: v for v in occurring}

    def find(v: int) -> int:
        while leader[v] != v:
            leader[v] = leader[leader[v]]
            v = leader[v]
        return v

    for line in lines:
        if line.low == line.high == 0 and [c for _, c in line.terms] == [1, -1]:
            one, other = sorted(find(v) for v, _ in line.terms)
            leader[other] = one
    return {v: find(v) for v in leader}


def _led(terms: Terms, leader: Mapping[int, int]) -> Terms:
    added: dict[int, int] = {}
    for variable, coefficient in terms:
        added[leader[variable]] = added.get(leader[variable], 0) + coefficient
    return tuple((v, c) for v, c in added.items() if c)


def _together(wishes: Iterable[Wish]) -> tuple[Wish, ...]:
    """Wishes for the same number as one; none for what is so anyway."""
    found: dict[tuple[Terms, float, bool, float], Wish] = {}
    for wish in wishes:
        terms = wish.terms if wish.wanted else _faced(wish.terms)[0]
        if not terms and not wish.wanted:
            continue
        key = terms, wish.wanted, wish.beyond > 0, wish.free
        known = found.get(key)
        weight, beyond = (known.weight, known.beyond) if known is not None else (0.0, 0.0)
        found[key] = replace(wish, terms=terms, weight=weight + wish.weight, beyond=beyond + wish.beyond)
    return tuple(found.values())
