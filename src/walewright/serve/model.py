"""What a page shows, as plain values that another process can send: garments, a form, a result."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field
from typing import Literal

from walewright.record import record

Posted = Mapping[str, str]
"""What was filled in, by the names of the fields."""


@record
class ServedGarment:
    """A source that can be chosen: `name` in addresses, `file` where it lies. A `text` lies nowhere: somebody gave it."""

    name: str
    file: str
    text: str = ""


@record
class Alternative:
    """One of several: its `value` in the form, and what it is called."""

    value: str
    label: str


@record
class OfferedChoice:
    name: str
    label: str
    alternatives: tuple[Alternative, ...]


@record
class OfferedRow:
    """A measurement: `value` is the pattern's in the size that is chosen, `values` in each, in cm; `picture`: where it is taken, as
    SVG. `counts`: it is a number, no length."""

    name: str
    label: str
    about: str
    value: str
    of_body: bool
    counts: bool = False
    values: tuple[float, ...] = ()
    picture: str = ""


@record
class OfferedFabric:
    name: str
    label: str
    about: str
    tension: str
    dial: str


@record
class OfferedYarn:
    name: str
    label: str
    about: str
    grams: str
    metres: str


@record
class Offer:
    """All that can be given for a garment, with the pattern's own figures."""

    title: str
    summary: str
    sizes: tuple[Alternative, ...]
    size: str
    choices: tuple[OfferedChoice, ...]
    rows: tuple[OfferedRow, ...]
    fabrics: tuple[OfferedFabric, ...]
    yarns: tuple[OfferedYarn, ...]
    bed: str
    beds: tuple[Alternative, ...]


@record
class ToldMistake:
    """A message: whether it forbids the pattern, and its words."""

    error: bool
    message: str
    notes: tuple[str, ...] = ()
    helps: tuple[str, ...] = ()


@record
class DrawnPiece:
    """A drawing as SVG, and, where it has letters, what they stand for."""

    title: str
    svg: str
    legend: tuple[tuple[str, str, str], ...] = ()
    """(letter, measure, figure)."""


@record
class ResultTable:
    """Rows of as many texts as there are heads; the first of a row is its head."""

    caption: str
    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


ResultState = Literal["proven", "refused", "stopped", "busy", "failed", "memory", "cancelled"]
"""How it ended: a pattern, or messages why not; it took too long; too many wait; a fault of the program; memory ran out; nobody
wanted it any longer."""


@record
class PageResult:
    """`eases`: garment less body by the names of measurements, in cm."""

    state: ResultState
    told: tuple[ToldMistake, ...] = ()
    tables: tuple[ResultTable, ...] = ()
    drawings: tuple[DrawnPiece, ...] = ()
    eases: Mapping[str, float] = field(default_factory=dict)


@record
class PageAnswer:
    """The form with what was filled in (`values`; `stray`: for fields that it has not now), and the result, if one was asked for.
    `hints`: by the names of measurements, the pattern's size that is nearest, and the ease. Without an `offer` the source could not
    be understood."""

    offer: Offer | None
    values: Posted = field(default_factory=dict)
    stray: Posted = field(default_factory=dict)
    result: PageResult | None = None
    hints: Mapping[str, str] = field(default_factory=dict)


@record
class TakenFile:
    """A file to be taken away."""

    name: str
    data: bytes
