"""What every node of the syntax tree is, and quantities as they are written, with their units."""

from __future__ import annotations

from dataclasses import field

from walewright.record import record
from walewright.report.model import NOWHERE, Span


@record(kw_only=True)
class Node:
    span: Span = field(default=NOWHERE, compare=False, repr=False)
    said: tuple[tuple[str, Span], ...] = field(default=(), compare=False, repr=False)
    """Which of the fields parts of the line have filled, each with its place."""

    def place_of(self, name: str) -> Span | None:
        """Where the field `name` was said; None where nothing was."""
        return next((span for field_name, span in self.said if field_name == name), None)


@record
class Number(Node):
    """`12`, `12 cm`, `50 %`. `unit` is the word written, or None."""

    value: float
    unit: str | None = None


@record
class Name(Node):
    name: str


@record
class Negative(Node):
    value: Expr


@record
class Binary(Node):
    """`op` is one of + - * /"""

    op: str
    left: Expr
    right: Expr


@record
class Call(Node):
    """`min(a, b, ...)`, `max(a, b, ...)`, `round(a to b)` (args = (a, b)): a rounded to the nearest multiple of b."""

    function: str
    args: tuple[Expr, ...]


@record
class Regauged(Node):
    """`stitches(a of rib in plain)`: as wide as the stitches are in fabric `within` that take `value` in fabric `of`. `function` is
    the word in front, as it is written."""

    function: str
    value: Expr
    of: str
    within: str


Expr = Number | Name | Negative | Binary | Call | Regauged
