"""Nodes of what is for the page: the author's texts, the photograph, and what else has to be bought."""

from __future__ import annotations

from walewright.record import record
from walewright.source.quantities import Expr, Node
from walewright.source.wearing_lines import ToMeasure


@record
class InLanguage(Node):
    """`in german "…"`: what a text is in another printed language."""

    language: str
    text: str


@record
class NameLine(Node):
    """`name brim, in german "Krempe"`: what is called so in the source is called otherwise in a printed language."""

    name: str
    others: tuple[InLanguage, ...] = ()


@record
class TextLine(Node):
    """`summary "…"`, `note "…"`, `designer "…"`, `step "…"` and the like: `key` is the first word.

    `note "…", for L XL`: `sizes` are those that a note is for; empty: all."""

    key: str
    text: str
    others: tuple[InLanguage, ...] = ()
    sizes: tuple[str, ...] = ()


@record
class PhotographLine(Node):
    """`photograph "tidewrack.jpg", showing "A grey pullover"`: a file beside the source, and what is to be seen on it."""

    file: str
    showing: str
    others: tuple[InLanguage, ...] = ()
    """What `showing` is in other languages."""


@record
class ForEachButtonhole(Node):
    """`for each buttonhole of right_band + pocket`: as many as these pieces and bands have."""

    owners: tuple[str, ...]


@record
class NeededLine(Node):
    """`needed "buttons, 15 mm", 6`, `needed "open-ended zip", along left_front edge`, `needed "a press stud"`: what is needed
    beside the yarn. `amount` counts it or is a length of it; None: nothing is said."""

    text: str
    amount: Expr | ToMeasure | ForEachButtonhole | None = None
    others: tuple[InLanguage, ...] = ()
