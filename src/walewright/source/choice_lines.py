"""Nodes of the syntax tree for what a source leaves to the knitter, and for what it has of other files."""

from __future__ import annotations

from dataclasses import field
from typing import TYPE_CHECKING

from walewright.record import record
from walewright.report.model import Span
from walewright.source.quantities import Node

if TYPE_CHECKING:
    from walewright.source.syntax import Statement


@record
class ChoiceLine(Node):
    """`choice sleeves long, short`: what a knitter can choose, the first of them where nothing is chosen. `places`: where each
    alternative stands in the file."""

    name: str
    alternatives: tuple[str, ...]
    places: tuple[Span, ...] = field(default=(), compare=False, repr=False)


@record
class ForBlock(Node):
    """`for sleeves short` with a block of statements that are there where this is chosen, as if they stood among those around."""

    choice: str
    alternative: str
    body: tuple[Statement, ...] = ()


@record
class UseFrom(Node):
    """`use lozenge, welt from "stitches.wale"`: definitions of another file in the source's folder or below."""

    names: tuple[str, ...]
    file: str
