"""What can be said for all garments of a catalogue, for some, and for exceptions: in which forms they are printed."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from typing import Any, get_args

from walewright.catalogue.lines import CatalogueLines
from walewright.catalogue.model import Nameable, PrintKind
from walewright.catalogue.places import TomlPath
from walewright.record import record
from walewright.report.model import Span

SETTINGS = ("languages", "papers", "units", "themes", "prints", "formats", "name", "sizes", "choices")
PLACES = ("source", "choice", "language", "theme", "paper", "units", "print")
"""What the name of a product can have in braces."""

SOURCE = "{source}"
_PLACE = re.compile(r"\{([^{}]*)\}")
_LETTERS = re.compile(r"[\w.-]*", re.ASCII)


@record
class Settings:
    """What is said of the forms of some garments; None where nothing is."""

    languages: tuple[str, ...] | None = None
    papers: tuple[str, ...] | None = None
    units: tuple[str, ...] | None = None
    themes: tuple[str, ...] | None = None
    prints: tuple[str, ...] | None = None
    formats: tuple[str, ...] | None = None
    name: str | None = None
    sizes: tuple[str, ...] | None = None
    choices: tuple[tuple[str, str], ...] | None = None
    choices_at: Span | None = None
    sizes_at: Span | None = None


def settings(lines: CatalogueLines, path: TomlPath, table: Mapping[str, Any], known: Nameable, themes: Sequence[str]) -> Settings:
    """What a table says of the forms; the table `[usual]` says nothing else."""
    if path == ("usual",):
        lines.only(path, table, SETTINGS)
    there = {
        "languages": known.languages,
        "papers": known.papers,
        "units": known.units,
        "themes": themes,
        "prints": get_args(PrintKind),
        "formats": tuple(known.formats),
    }
    found: dict[str, Any] = {
        name: lines.some_of((*path, name), table[name], names) or None for name, names in there.items() if name in table
    }
    if "name" in table:
        found["name"] = _name(lines, (*path, "name"), table["name"])
    if "sizes" in table:
        found["sizes"] = lines.texts((*path, "sizes"), table["sizes"])
        found["sizes_at"] = lines.value(*path, "sizes")
    if "choices" in table:
        within = lines.in_table((*path, "choices"), table["choices"])
        found["choices"] = tuple((choice, lines.text((*path, "choices", choice), value)) for choice, value in within.items())
        found["choices_at"] = lines.value(*path, "choices")
    return Settings(**found)


def _name(lines: CatalogueLines, path: TomlPath, value: Any) -> str | None:
    """How products are called, with places for what differs between them."""
    name = lines.text(path, value)
    wrong = [place for place in _PLACE.findall(name) if place not in PLACES]
    for place in wrong:
        lines.fault("catalogue-line/no-place", lines.value(*path), "places-are", name=place, known=PLACES)
    plain = _PLACE.sub("", name)
    if name and not wrong and (not _LETTERS.fullmatch(plain) or SOURCE not in name or name[0] in ".-"):
        lines.fault("catalogue-line/name", lines.value(*path), "write-name", source=SOURCE)
    return name or None


def filled(name: str, facts: Mapping[str, str]) -> str:
    """A name with its places filled. A place that has nothing in it takes along the hyphen, stop or line before it."""
    return re.sub(r"([-._]?)\{(\w+)\}", lambda found: found[1] + facts[found[2]] if facts[found[2]] else "", name)
