"""Parts of lines as they are written, put together."""

from __future__ import annotations

from collections.abc import Iterable

from walewright.source import syntax
from walewright.source.expressions import expression
from walewright.source.written_as import ORDINAL_ENDINGS


def joined(*parts: str) -> str:
    """Parts of a line after one another; those that say nothing left out."""
    return " ".join(p for p in parts if p)


def with_options(head: str, options: Iterable[str]) -> str:
    """A line and what follows behind commas; parts that say nothing left out."""
    return ", ".join((head, *(o for o in options if o)))


def maybe(before: str, value: syntax.Expr | None, after: str = "") -> str:
    """A part of a line around an amount, or nothing without an amount."""
    return joined(before, expression(value), after) if value is not None else ""


def counted(count: int | syntax.Name, one: str, many: str) -> str:
    """`3 rows`, `1 row`, or a name in place of the number."""
    return f"{number_or_name(count)} {one if count == 1 else many}"


def number_or_name(count: int | syntax.Name) -> str:
    """A number that counts something, or its name."""
    return count.name if isinstance(count, syntax.Name) else str(count)


def ordinal(count: int) -> str:
    """`3rd`, `11th`."""
    ending = "th" if count % 100 in (11, 12, 13) else ORDINAL_ENDINGS.get(count % 10, "th")
    return f"{count}{ending}"
