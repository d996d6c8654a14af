"""Expressions: dimension arithmetic over all sizes at once.

A `Value` holds one float per size in base units (cm, stitches, rows, g). Sums, min, max and round need one dimension;
products and quotients make new ones. Every `let` is worked out once; the order of the source does not matter, and a
definition that leads back to itself is reported, so that working out always ends.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Mapping
from functools import partial

from walewright.design.findings import Findings
from walewright.design.model import Fabric, PerSize
from walewright.design.reading.units import LENGTH, NUMBER, ROWS, STITCHES, WORDS, Dimension, convert, written
from walewright.record import record, replace
from walewright.report.model import NOWHERE, Span
from walewright.report.said import Amount, Said, only, said
from walewright.source import syntax

ROUNDING = ("round", "round_up", "round_down")
FUNCTIONS = ("min", "max", *ROUNDING)
REGAUGED = "stitches"
"""The function that takes a width from one fabric to another."""

HIDDEN = "@"
"""In the names of definitions that an author cannot write: those of a shape, local to one use of it."""

LARGEST = 1e12
"""In any base unit, far beyond a garment and far below what a float holds: whatever is above is a slip."""
MOST_SHOWN = 8
"""`let`s of a ring that are shown; a reader finds the rest from there."""


@record
class Value:
    """A quantity per size, in base units, and where it is written."""

    amounts: PerSize
    dimension: Dimension
    span: Span
    row: Span = NOWHERE
    """Of a row of `sizes` without a unit: where that row is."""

    def on(self, span: Span) -> Value:
        return replace(self, span=span)


@record
class Here:
    """The place of an expression in the work: counts of this dimension, stitches across and rows up, are lengths there, so many to
    the centimetre. None: the fabric is not known, and what would need it has no value; why not has been told."""

    count: Dimension
    per_cm: float | None

    def length(self, value: Value) -> Value | None:
        """A count as a length."""
        if self.per_cm is None:
            return None
        return replace(value, amounts=tuple(a / self.per_cm for a in value.amounts), dimension=LENGTH)


class Scope:
    """The names with a value: rows of the size table, with a knitter's own in them, and `let`s."""

    def __init__(
        self,
        findings: Findings,
        sizes: tuple[str, ...],
        measured: Mapping[str, Value | None],
        lets: Mapping[str, syntax.Let],
        fabrics: Mapping[str, Fabric | None] | None = None,
    ) -> None:
        self._findings = findings
        self.sizes = sizes
        self._lets = lets
        self._fabrics = fabrics or {}
        self._known: dict[str, Value | None] = dict(measured)
        # Once and for all: who asks for them has a name that is none of them, and there may be many such.
        self.names = tuple(n for n in dict.fromkeys((*measured, *lets)) if HIDDEN not in n)

    def named(self, name: str, span: Span) -> Value | None:
        """The value called `name`; None when there is none or it could not be worked out."""
        if name not in self._known and name in self._lets:
            self._work_out(name)
        if name not in self._known:
            self._findings.unknown("measurement", name, span, self.names)
            return None
        value = self._known[name]
        return value.on(span) if value is not None else None

    def _work_out(self, name: str) -> None:
        """Works out a `let` after those it needs. A loop with a path of its own: no chain of `let`s is too long for it."""
        path = {name: None}
        while path:
            last = next(reversed(path))
            needed = (n for n in names(self._lets[last].value) if n in self._lets and n not in self._known)
            first = next(needed, None)
            if last in self._known:
                path.popitem()
            elif first in path:
                ring = list(path)
                self._tell_cycle(ring[ring.index(first) :])
            elif first is not None:
                path[first] = None
            else:
                self._known[last] = self.value(self._lets[last].value)
                path.popitem()

    def value(self, expression: syntax.Expr, here: Here | None = None) -> Value | None:
        """The expression for every size, or None when something in it has been reported. `here`: where in the work it stands, so
        that lengths and counts add up; what a name stands for has no such place."""
        if isinstance(expression, syntax.Number):
            return self._number(expression)
        if isinstance(expression, syntax.Name):
            return self.named(expression.name, expression.span)
        if isinstance(expression, syntax.Negative):
            inner = self.value(expression.value, here)
            return inner and Value(tuple(-a for a in inner.amounts), inner.dimension, expression.span)
        if isinstance(expression, syntax.Call):
            return self._call(expression, here)
        if isinstance(expression, syntax.Regauged):
            return self._regauged(expression)
        return self._binary(expression, here)

    # ------------------------------------------------------------ kinds of expression

    def _number(self, number: syntax.Number) -> Value | None:
        read = literal(number, self._findings)
        return read and Value((read[0],) * len(self.sizes), read[1], number.span)

    def _binary(self, expression: syntax.Binary, here: Here | None) -> Value | None:
        left, right = self.value(expression.left, here), self.value(expression.right, here)
        if left is None or right is None:
            return None
        pairs = tuple(zip(left.amounts, right.amounts, strict=True))
        if expression.op == "*":
            product = tuple(a * b for a, b in pairs)
            return self._bounded(Value(product, left.dimension.times(right.dimension), expression.span))
        if expression.op == "/":
            nought = tuple(s for s, b in zip(self.sizes, right.amounts, strict=True) if b == 0)
            if nought:
                self._findings.report("division-by-zero", (right.span, "zero"), helps=("not-zero",), sizes=self.only(nought))
                return None
            share = tuple(a / b for a, b in pairs)
            return self._bounded(Value(share, left.dimension.over(right.dimension), expression.span))
        alike = self.alike((left, right), here)
        if alike is None:
            return None
        left, right = alike
        pairs = tuple(zip(left.amounts, right.amounts, strict=True))
        sign = 1 if expression.op == "+" else -1
        return self._bounded(Value(tuple(a + sign * b for a, b in pairs), left.dimension, expression.span))

    def _call(self, call: syntax.Call, here: Here | None) -> Value | None:
        if call.function not in FUNCTIONS:
            self._findings.unknown("function", call.function, call.span, FUNCTIONS)
            return None
        rounding = call.function in ROUNDING
        if not call.args or (rounding and len(call.args) != 2):
            kind = "impossible-statement/round" if rounding else "impossible-statement/no-value"
            self._findings.report(kind, (call.span, "given"), function=call.function, count=len(call.args))
            return None
        values = [self.value(a, here) for a in call.args]
        there = tuple(v for v in values if v is not None)
        given = self.alike(there, here) if len(there) == len(values) else None
        if given is None:
            return None
        if rounding and min(given[1].amounts) <= 0:
            self._findings.report(
                "not-positive/step", (given[1].span, "step"), helps=("a-step",), step=Amount(min(given[1].amounts), "")
            )
            return None
        work = _WORK[call.function]
        return Value(tuple(work(a) for a in zip(*(v.amounts for v in given), strict=True)), given[0].dimension, call.span)

    def _regauged(self, call: syntax.Regauged) -> Value | None:
        if call.function != REGAUGED:
            self._findings.unknown("function", call.function, call.span, (REGAUGED,))
            return None
        value = self.value(call.value)
        for field, name in (("of", call.of), ("within", call.within)):
            if name not in self._fabrics:
                self._findings.unknown("fabric", name, call.place_of(field) or call.span, self._fabrics)
                return None
        of, within = self._fabrics[call.of], self._fabrics[call.within]
        if value is None or of is None or within is None:
            return None
        if value.dimension != LENGTH:
            self._findings.report(
                "wrong-unit/regauged",
                (value.span, "dimension"),
                helps=("a-length",),
                function=REGAUGED,
                dimension=value.dimension.kind,
            )
            return None
        share = of.stitches_per_cm / within.stitches_per_cm
        return self._bounded(Value(tuple(a * share for a in value.amounts), LENGTH, call.span))

    # ------------------------------------------------------------ what is told

    def _bounded(self, value: Value) -> Value | None:
        high = tuple(s for s, a in zip(self.sizes, value.amounts, strict=True) if not abs(a) <= LARGEST)
        if not high:
            return value
        self._findings.report("number-too-large", (value.span, "too-large"), helps=("check-units",), sizes=self.only(high))
        return None

    def alike(self, values: tuple[Value, ...], here: Here | None) -> tuple[Value, ...] | None:
        """Values that can be added or compared: of one dimension, or counts among lengths in their place, where all are lengths.
        None where they cannot, which is told."""
        kinds = {v.dimension for v in values}
        if here is not None and kinds == {LENGTH, here.count}:
            lengths = [here.length(v) if v.dimension == here.count else v for v in values]
            known = tuple(v for v in lengths if v is not None)
            return known if len(known) == len(lengths) else None
        return values if all(self.agree(values[0], v) for v in values[1:]) else None

    def agree(self, one: Value, other: Value) -> bool:
        """Whether the two can be added or compared; told, with both places, when they cannot."""
        if one.dimension == other.dimension:
            return True
        bare = NUMBER in (one.dimension, other.dimension)
        self._findings.report(
            "mixed-units",
            (one.span, "one"),
            (other.span, "other"),
            helps=("write-unit",) if bare else ("in-its-place",) if _in_a_place({one.dimension, other.dimension}) else ("alike",),
            one=one.dimension.kind,
            other=other.dimension.kind,
        )
        return False

    def only(self, sizes: tuple[str, ...]) -> tuple[str, ...]:
        """The sizes concerned, empty when all are."""
        return only(self.sizes, sizes)

    def _tell_cycle(self, names: list[str]) -> None:
        for name in names:
            self._known[name] = None
        shown = names if len(names) <= MOST_SHOWN else [*names[:MOST_SHOWN], "..."]
        ring = tuple(n.partition(HIDDEN)[0] for n in (*shown, names[0]))
        places = ((self._lets[n].span, said("named-here", name=n.partition(HIDDEN)[0])) for n in names[:MOST_SHOWN])
        self._findings.report("cyclic-let", *places, helps=("own-value",), ring=ring)


def literal(number: syntax.Number, findings: Findings) -> tuple[float, Dimension] | None:
    """A written number in base units; an unknown unit is reported."""
    if number.unit is None:
        return number.value, NUMBER
    read = convert(number.value, number.unit)
    if read is None:
        findings.unknown("unit", number.unit, number.span, WORDS)
    return read


def measured(number: syntax.Number, wanted: Dimension, what: Said, findings: Findings) -> float | None:
    """A literal that must be of one dimension and above zero."""
    read = literal(number, findings)
    if read is None:
        return None
    value, dimension = read
    if number.unit is None:
        findings.report("no-unit/amount", (number.span, "bare"), helps=("write",), what=what, unit=wanted.unit)
    elif dimension != wanted:
        findings.report("wrong-unit/amount", (number.span, "dimension"), what=what, wanted=wanted.kind, dimension=dimension.kind)
    elif value <= 0:
        findings.report(
            "not-positive/amount", (number.span, "value"), helps=("above-nothing",), what=what, value=Amount(value, wanted.unit)
        )
    else:
        return value
    return None


def _in_a_place(dimensions: set[Dimension]) -> bool:
    """Whether they would add up where a width or a height is written."""
    return LENGTH in dimensions and bool(dimensions & {STITCHES, ROWS})


def _rounded(pair: tuple[float, ...], lift: float) -> float:
    """To a multiple of the second: the one at or below the first with so much of a step added."""
    value, step = pair
    if abs(value) > step * LARGEST:
        return value  # the step is lost in the last digit of the value
    return math.floor(value / step + lift) * step


# Halves go up, as knitters round. The small share keeps 0.5, or a whole, from missing its step for the way it is written in binary.
_LIFTS = {"round": 0.5 + 1e-9, "round_up": 1 - 1e-9, "round_down": 1e-9}

_WORK: dict[str, Callable[[tuple[float, ...]], float]] = {
    "min": min,
    "max": max,
    **{name: partial(_rounded, lift=lift) for name, lift in _LIFTS.items()},
}


def names(expression: syntax.Expr) -> Iterator[str]:
    """The names an expression uses, in the order in which they stand."""
    if isinstance(expression, syntax.Name):
        yield expression.name
    elif isinstance(expression, syntax.Negative):
        yield from names(expression.value)
    elif isinstance(expression, syntax.Binary):
        yield from names(expression.left)
        yield from names(expression.right)
    elif isinstance(expression, syntax.Call):
        for argument in expression.args:
            yield from names(argument)
    elif isinstance(expression, syntax.Regauged):
        yield from names(expression.value)


def words(expression: syntax.Expr) -> str:
    """The expression as an author would write it, for a printed requirement."""
    if isinstance(expression, syntax.Number):
        return written(expression.value, expression.unit or "")
    if isinstance(expression, syntax.Name):
        return expression.name
    if isinstance(expression, syntax.Negative):
        inner = words(expression.value)
        return f"-({inner})" if isinstance(expression.value, syntax.Binary) else f"-{inner}"
    if isinstance(expression, syntax.Call):
        between = " to " if expression.function in ROUNDING else ", "
        return f"{expression.function}({between.join(words(a) for a in expression.args)})"
    if isinstance(expression, syntax.Regauged):
        return f"{expression.function}({words(expression.value)} of {expression.of} in {expression.within})"
    left, right = words(expression.left), words(expression.right)
    if _strength(expression.left) < _strength(expression):
        left = f"({left})"
    if _strength(expression.right) <= _strength(expression):
        right = f"({right})"
    return f"{left} {expression.op} {right}"


def _strength(expression: syntax.Expr) -> int:
    if isinstance(expression, syntax.Binary):
        return 1 if expression.op in "+-" else 2
    return 3
