"""Sums of quantities that have a value for each size."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, Protocol, TypeVar


class _Number(Protocol):
    """A length, a count, or terms of numbers that are not known yet."""

    def __add__(self, other: Any, /) -> Any: ...
    def __sub__(self, other: Any, /) -> Any: ...
    def __mul__(self, other: Any, /) -> Any: ...


_Value = TypeVar("_Value", bound=_Number)


def plus(one: Sequence[_Value], other: Sequence[_Value]) -> tuple[_Value, ...]:
    """Both together, size by size."""
    return tuple(a + b for a, b in zip(one, other, strict=True))


def minus(one: Sequence[_Value], other: Sequence[_Value]) -> tuple[_Value, ...]:
    """The one less the other, size by size."""
    return tuple(a - b for a, b in zip(one, other, strict=True))


def times(one: Sequence[_Value], other: Sequence[float]) -> tuple[_Value, ...]:
    """The one so often, size by size."""
    return tuple(a * b for a, b in zip(one, other, strict=True))
