"""A catalogue as a value: what is issued, of which sources, in which forms."""

from __future__ import annotations

import datetime
from collections.abc import Mapping
from dataclasses import field
from typing import Any, Literal

from walewright.record import record
from walewright.report.model import Span

JsonObject = dict[str, Any]
PrintKind = Literal["usual", "large"]
HOUSE = "house"
"""What the house's own look is called among the themes."""

MANIFEST, SHELF = "catalogue.json", "index.html"
"""What is written beside the products."""


@record
class FormatFacts:
    """What a product of a format ends in, and what of a page it depends on: of "paper", "units", "theme" and "print"."""

    suffix: str
    varies_with: frozenset[str]


@record
class Nameable:
    """What a catalogue can name: `sources` by their paths from its folder, the rest by their names."""

    sources: tuple[str, ...]
    languages: tuple[str, ...]
    papers: tuple[str, ...]
    units: tuple[str, ...]
    formats: Mapping[str, FormatFacts]
    usual_formats: tuple[str, ...]


@record
class NamedTheme:
    """A theme by its path from the catalogue's folder; none is the house's own. `span`: where it stands."""

    file: str
    span: Span


@record
class Product:
    """A file that is made. What its format does not depend on is empty."""

    file: str
    format: str
    paper: str = ""
    units: str = ""
    theme: str = ""
    print: str = ""


@record
class Making:
    """A source compiled once, in one language and with one set of choices, and all that is printed of it."""

    source: str
    language: str
    sizes: tuple[str, ...]
    """Those that are made; none named: all."""
    choices: tuple[tuple[str, str], ...]
    products: tuple[Product, ...]
    places: Mapping[str, Span] = field(default_factory=dict, compare=False)
    """Where in the catalogue it is said: "choose" and "size" for what a knitter could give as an option, "" for the source."""

    @property
    def name(self) -> str:
        """What tells it from all others of a catalogue."""
        chosen = (f"{choice}={alternative}" for choice, alternative in self.choices)
        return " ".join((self.source, self.language, *self.sizes, *chosen))


@record
class Catalogue:
    """What a catalogue's file says, with all that is to be made of it."""

    file: str
    title: str
    edition: str
    date: datetime.date
    """The edition's, which is printed on the pages."""
    imprint: tuple[str, ...]
    themes: Mapping[str, NamedTheme]
    makings: tuple[Making, ...] = field(default=())
