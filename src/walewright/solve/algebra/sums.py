"""Sums: the linear expressions of a programme over its variables, and lines that bound them. They are reckoned with like numbers:
`one + other`, `2 * width - 3`, `one >= other`.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from walewright.record import record

Values = Sequence[int] | Mapping[int, int]
"""The number of each variable, by variable number."""


@record
class Terms:
    """A sum of (variable number, coefficient), and a number `more`. It is true where it has a variable."""

    of: tuple[tuple[int, int], ...] = ()
    more: int = 0

    def __iter__(self) -> Iterator[tuple[int, int]]:
        return iter(self.of)

    def __bool__(self) -> bool:
        return bool(self.of)

    def __add__(self, other: Terms | int) -> Terms:
        if isinstance(other, int):
            return Terms(self.of, self.more + other)
        added = dict(self.of)
        for variable, coefficient in other.of:
            added[variable] = added.get(variable, 0) + coefficient
        return Terms(tuple((v, c) for v, c in added.items() if c), self.more + other.more)

    __radd__ = __add__

    def __mul__(self, times: int) -> Terms:
        return Terms(tuple((v, times * c) for v, c in self.of) if times else (), times * self.more)

    __rmul__ = __mul__

    def __neg__(self) -> Terms:
        return self * -1

    def __sub__(self, other: Terms | int) -> Terms:
        return self + -other

    def __rsub__(self, other: int) -> Terms:
        return -self + other

    def within(self, low: int | None, high: int | None) -> Linear:
        """The line that bounds it."""
        ends = (None if end is None else end - self.more for end in (low, high))
        return Linear(Terms(self.of), *ends)

    def __ge__(self, least: Terms | int) -> Linear:
        return (self - least).within(0, None)

    def __le__(self, most: Terms | int) -> Linear:
        return (self - most).within(None, 0)

    def equals(self, other: Terms | int) -> Linear:
        """The line that both are the same."""
        return (self - other).within(0, 0)

    def at(self, values: Values) -> int:
        """What it comes to."""
        return sum(coefficient * values[variable] for variable, coefficient in self.of) + self.more


NOTHING = Terms()


@record
class Linear:
    """low <= sum of terms <= high, all whole numbers. A bound that is None is open."""

    terms: Terms
    low: int | None
    high: int | None

    def holds(self, values: Values) -> bool:
        """Whether these values of the variables keep within the bounds."""
        found = self.terms.at(values)
        return (self.low is None or found >= self.low) and (self.high is None or found <= self.high)
