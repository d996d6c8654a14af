"""Quantities: every number that the author wants somewhere, in all sizes, and what wanting it means to the programme.

A wanted number gives a rule (so far off at the most), a wish (as near as possible), and, over the sizes, the grading.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import combinations, pairwise
from math import ceil, floor
from typing import Literal

from walewright.design.model import CountPerSize, Origin
from walewright.record import record, replace
from walewright.report.said import Fact, Said, said, tenths
from walewright.solve.algebra.programme import Draft, FigureAt, Lines, Rule, RuleKind, Wish
from walewright.solve.algebra.sums import Linear, Terms

OFF_COST = 1.0
"""For each stitch or row off the wanted number."""

BEYOND_COST = 30.0
"""More for each above the first: no figure is off by more than one for the sake of another, unless a rule forces it."""

NEAR = 1.0
"""Stitches that a finished width may be off, unless a rule forces it: a height beside it gives way first."""

STEADY = 3.0
"""Share of what has to come out alike in all sizes: the rows of a slope. A level below or above it gives way."""

LESSER = 0.3
"""Share of that for what nobody sees as a measurement: the flat part of a neck, a first cast-off."""

HIDDEN = 0.02
"""Share of that for what nobody sees at all: where a held slope begins, when its height and the top are what is measured."""

UNEVEN_COST = 0.001
"""For each stitch or row by which a step of the grading is out of step with what is wanted."""

EQUAL_COST = 1.5
"""For each stitch or row by which two sizes differ that are wanted alike: what else is as good as equal is decided by that."""

PLAIN_COST = 0.0001
"""Decides between two numbers equally near: the plainer one."""

TIE = 1e-6
"""Distances that differ by less than that are equal."""

EXACT = 1e-9


@record
class NumberWanted:
    """What is asked of numbers, by size: `factor` times the value of `terms[i]` should be `wanted[i]`, which is `cm[i]`."""

    terms: tuple[Terms, ...]
    factor: int
    wanted: tuple[float, ...]
    cm: tuple[float, ...]


@record
class Quantity:
    """A number wanted in every size: `factor` times the value of `terms[i]` should be `wanted[i]` stitches or rows.

    `factor` is 2 where the terms count one of two sides, or pairs of rows, and then even numbers come out. At most
    `tolerance[i]` off is allowed. `cm` are the wanted lengths. `name` is the figure, `clause` says of it what is wanted, without
    the fact `cm`.
    """

    name: Said
    pieces: tuple[str, ...]
    origin: Origin
    terms: tuple[Terms, ...]
    factor: int
    wanted: tuple[float, ...]
    cm: tuple[float, ...]
    tolerance: tuple[float, ...]
    clause: Said
    unit: Literal["st", "rows"] = "st"
    share: float = 1.0
    kind: RuleKind = RuleKind.WANTED
    near: float = 0.5
    """Share of the tolerance that a finished width is kept within wherever that can be."""
    times: CountPerSize = ()
    """How often it is knitted in each size, once where nothing is said: what each is off adds up."""
    signed: bool = False
    """Whether it may be less than none: an edge that is drawn past the middle of its piece's start."""

    either: bool = False
    """Whether it may be odd in one size and even in another: what is wanted alike or nearly may come out a stitch apart."""

    figure: FigureAt = ("", "", "")
    """(what, of which piece, at which level), as in `Change`; empty where no single figure says it."""

    @property
    def finished_width(self) -> bool:
        """Whether it is a width that everybody sees, and not a part of one."""
        return self.unit == "st" and self.share == 1.0

    def rule(self, lengths: Iterable[Fact], lines: Lines) -> Rule:
        """What is asked of it, the clause of each size with its length."""
        says = tuple(Said(self.clause.key, (*self.clause.facts, ("cm", cm))) for cm in lengths)
        return Rule(self.name, self.kind, (self.origin,), says, tuple(lines))

    def cm_per_unit(self, wanted: Sequence[float], cm: Sequence[float]) -> float:
        """How many centimetres one unit of its terms is, by stitches or rows that are so many centimetres; 0 of none."""
        per_cm = max((w / length for w, length in zip(wanted, cm, strict=True) if length), default=0.0)
        return self.factor / per_cm if per_cm else 0.0


def want(draft: Draft, quantity: Quantity) -> None:
    """Writes a quantity into the programme."""
    factor = quantity.factor
    lines: list[tuple[int, Linear]] = []
    near: list[tuple[int, Linear]] = []
    for size, (terms, wanted, off) in enumerate(zip(quantity.terms, quantity.wanted, quantity.tolerance, strict=True)):
        if not terms:
            continue
        low, high = _within(wanted, off, factor)
        lines.append((size, terms.within(low if quantity.signed else max(low, 0), high)))
        if quantity.finished_width and off <= 2 * NEAR:
            # An edge by itself gets half of it, so that the width between two has no more either.
            low, high = _within(wanted, NEAR * off * quantity.near, factor)
            near.append((size, terms.within(low if quantity.signed else max(low, 0), high)))
        weight = quantity.share * (quantity.times[size] if quantity.times else 1)
        draft.wishes.append(Wish(factor * terms, wanted, OFF_COST * weight, BEYOND_COST * weight, free=1.0))
        draft.nudges += [(v, c * factor * _plainer(wanted, factor)) for v, c in terms]
    rule = quantity.rule((tenths(cm) for cm in quantity.cm), lines)
    unit = quantity.cm_per_unit(quantity.wanted, quantity.cm)
    draft.rules.append(replace(rule, cm_per_unit=unit, near=tuple(near), figure=quantity.figure))
    _grade(draft, quantity)


def _within(wanted: float, off: float, factor: int) -> tuple[int, int]:
    """The least and the greatest value of the terms that is at most `off` away."""
    return ceil((wanted - off) / factor - EXACT), floor((wanted + off) / factor + EXACT)


def _plainer(wanted: float, factor: int) -> float:
    """The cost of one more where two numbers are equally near: positive if the lower of them is the plainer one."""
    low = floor(wanted / factor) * factor
    high = low + factor
    if abs(high - wanted - (wanted - low)) > TIE:
        return 0.0
    return PLAIN_COST if _plainness(low) >= _plainness(high) else -PLAIN_COST


def _plainness(number: int) -> int:
    """Tens are plainer than fours, fours than the rest."""
    return 2 * (number % 10 == 0) + (number % 4 == 0)


def equal_sizes(draft: Draft, terms: tuple[Terms, ...], wanted: tuple[float, ...], factor: int = 1) -> None:
    """What is wanted alike in two sizes should come out alike, whatever lies between them."""
    for i, j in combinations(range(len(terms)), 2):
        if abs(wanted[i] - wanted[j]) <= TIE and (apart := factor * (terms[i] - terms[j])):
            draft.wishes.append(Wish(apart, 0.0, EQUAL_COST))


def _grade(draft: Draft, quantity: Quantity) -> None:
    """What is wanted no smaller comes out no smaller, from size to size; and the steps are as even as those wanted."""
    apart = 1 if quantity.either else 0
    lines: list[tuple[int, Linear]] = []
    for (smaller, less), (larger, more) in pairwise(zip(quantity.terms, quantity.wanted, strict=True)):
        growth = larger - smaller
        if not growth:
            continue
        if more >= less - EXACT:
            lines.append((-1, growth >= -apart))
        if more <= less + EXACT:
            lines.append((-1, growth <= apart))
    if lines:
        graded = said("graded", figure=quantity.name)
        draft.rules.append(Rule(graded, RuleKind.GRADING, (quantity.origin,), (graded,) * len(quantity.terms), tuple(lines)))
    if not quantity.either:
        equal_sizes(draft, quantity.terms, quantity.wanted, quantity.factor)
    factor = quantity.factor
    for i in range(1, len(quantity.terms) - 1):
        bend = factor * (quantity.terms[i - 1] - 2 * quantity.terms[i] + quantity.terms[i + 1])
        if bend:
            wanted = quantity.wanted[i - 1] - 2 * quantity.wanted[i] + quantity.wanted[i + 1]
            draft.wishes.append(Wish(bend, wanted, UNEVEN_COST))
