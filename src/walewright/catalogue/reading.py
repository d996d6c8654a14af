"""The text of a catalogue becomes a `Catalogue`, or everything that is wrong with it. What it may say is in docs/publishing.md."""

from __future__ import annotations

import datetime
from collections.abc import Mapping
from dataclasses import fields

from walewright.catalogue.lines import CatalogueLines, toml_lines
from walewright.catalogue.makings import Issued, makings
from walewright.catalogue.model import HOUSE, Catalogue, Nameable, NamedTheme
from walewright.catalogue.patterns import Matching
from walewright.catalogue.places import TomlPath
from walewright.catalogue.settings import SETTINGS, Settings, settings
from walewright.record import record, replace
from walewright.report.model import Diagnostic, Span, diagnosed

MOST_LINES = 6
"""Lines of an imprint; more would push the cover's list of contents onto the next page, see `sheet.theme_lines`."""
LONGEST_LINE = 120

WHOLE = ("title", "edition", "date", "imprint", "usual", "themes", "garments", "exceptions")


def read(file: str, text: str, known: Nameable) -> tuple[Catalogue | None, tuple[Diagnostic, ...]]:
    """The catalogue in the text of `file`, or everything that is wrong in it."""
    lines, whole = toml_lines(file, text)
    lines.only((), lines.values, WHOLE)
    title = lines.text(("title",), lines.values["title"]) if "title" in lines.values else ""
    date = _date(lines)
    _lacking(lines, whole)
    edition = lines.text(("edition",), lines.values["edition"]) if "edition" in lines.values else ""
    has_imprint = "imprint" in lines.values
    imprint = lines.texts(("imprint",), lines.values["imprint"], MOST_LINES, LONGEST_LINE) if has_imprint else ()
    themes = _themes(lines)
    usual = settings(lines, ("usual",), lines.table("usual"), known, (HOUSE, *themes))
    issued = _issued(lines, known, themes, usual, whole)
    made = makings(lines, issued, known) if not lines.faults else ()
    if lines.faults or date is None:
        # In the order of the text, whatever was looked at first.
        return None, tuple(sorted(lines.faults, key=lambda fault: fault.labels[0].span.start))
    return Catalogue(file=file, title=title, edition=edition, date=date, imprint=imprint, themes=themes, makings=made), ()


def _lacking(lines: CatalogueLines, whole: bool) -> None:
    """What a catalogue has to say and does not; it may be in a line that could not be read."""
    head = Span(lines.file, 0, 0)
    if whole and "title" not in lines.values:
        lines.fault("catalogue-line/lacking-title", head, "add-title")
    if whole and "date" not in lines.values:
        lines.faults.append(diagnosed("catalogue-line/lacking-date", (head, ""), notes=("on-the-pages",), helps=("add-date",)))
    if whole and not lines.values.get("garments", ()):
        lines.fault("catalogue-line/lacking-garments", head, "add-garments")


def _date(lines: CatalogueLines) -> datetime.date | None:
    value = lines.values.get("date")
    if type(value) is datetime.date:
        return value
    if "date" in lines.values:
        lines.fault("catalogue-line/no-date", lines.value("date"), "write-date")
    return None


def _themes(lines: CatalogueLines) -> dict[str, NamedTheme]:
    found = {}
    for name, value in lines.table("themes").items():
        path = ("themes", name)
        if name == HOUSE or not name.isprintable() or not all(c.isalnum() or c in "-_" for c in name):
            lines.fault("catalogue-line/theme-name", lines.key(*path), "other-name", name=name, house=HOUSE)
        file = lines.text(path, value)
        if file:
            found[name] = NamedTheme(file, lines.value(*path))
    return found


@record
class _Exception:
    """What is otherwise for some sources."""

    sources: tuple[str, ...]
    settings: Settings


def _issued(
    lines: CatalogueLines, known: Nameable, themes: Mapping[str, NamedTheme], usual: Settings, whole: bool
) -> tuple[Issued, ...]:
    """Each source of each `[[garments]]`, with what holds for it."""
    names = (HOUSE, *themes)
    matching = Matching(lines, known.sources)
    exceptions = []
    for at, table in enumerate(lines.tables("exceptions")):
        path: TomlPath = ("exceptions", at)
        lines.only(path, table, ("sources", *SETTINGS))
        exceptions.append(_Exception(matching.sources(path, table, whole), settings(lines, path, table, known, names)))
    found = []
    for at, table in enumerate(lines.tables("garments")):
        path = ("garments", at)
        lines.only(path, table, ("sources", "without", *SETTINGS))
        own = settings(lines, path, table, known, names)
        sources = matching.sources(path, table, whole)
        left_out = matching.named((*path, "without"), table["without"]) if "without" in table else ()
        for source in sources:
            if source not in left_out:
                others = (e.settings for e in exceptions if source in e.sources)
                found.append(Issued(source, _over(usual, own, *others), (*path, "sources")))
    return tuple(found)


def _over(*all_: Settings) -> Settings:
    """What holds where several say something: what the last of them says."""
    made = all_[0]
    for one in all_[1:]:
        said = {f.name: getattr(one, f.name) for f in fields(one) if getattr(one, f.name) is not None}
        made = replace(made, **said)
    return made
