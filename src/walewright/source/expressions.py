"""Expressions and numbers as they are written in a source."""

from __future__ import annotations

from decimal import Decimal

from walewright.source import syntax
from walewright.source.rules import ROUNDINGS

_SUMS = ("+", "-")


def number(value: float) -> str:
    """The shortest decimal that reads back as the same float, without an exponent: 2.5, 40, 0.0001."""
    text = format(Decimal(repr(float(value))), "f")
    return text.rstrip("0").rstrip(".") if "." in text else text


def amount(written: syntax.Number) -> str:
    """A number with its unit: `12 cm`."""
    return number(written.value) if written.unit is None else f"{number(written.value)} {written.unit}"


def expression(value: syntax.Expr) -> str:
    """An expression with no more brackets than it needs to read back as the same tree."""
    if isinstance(value, syntax.Number):
        return amount(value)
    if isinstance(value, syntax.Name):
        return value.name
    if isinstance(value, syntax.Call):
        between = " to " if value.function in ROUNDINGS else ", "
        return f"{value.function}({between.join(expression(a) for a in value.args)})"
    if isinstance(value, syntax.Regauged):
        return f"{value.function}({expression(value.value)} of {value.of} in {value.within})"
    if isinstance(value, syntax.Negative):
        return f"-{_within(value.value, 3)}"
    strength = _strength(value)
    # Equal operations are read from the left, so only the right side needs brackets at equal strength.
    return f"{_within(value.left, strength)} {value.op} {_within(value.right, strength + 1)}"


def _within(value: syntax.Expr, strength: int) -> str:
    return expression(value) if _strength(value) >= strength else f"({expression(value)})"


def _strength(value: syntax.Expr) -> int:
    if isinstance(value, syntax.Binary):
        return 1 if value.op in _SUMS else 2
    return 3
