"""The renderer's document of a sheet, with no more of its own style sheet than a sheet uses."""

from __future__ import annotations

import re
from functools import cache

import weasyprint

from walewright import world
from walewright.sheet.fonts import ShippedOnly

NOTES = re.compile(r"^::(?:foot)?note-[\w-]+\s*\{[^}]*\}\n?", re.MULTILINE)
"""Rules of the renderer's style sheet for calls, marks and ways back of notes. They hold for each element there is, though no sheet
has a note: with them, most styles that are computed are those of marks that nobody sets."""

MARKS = re.compile(r"^::marker(?=\s*\{)", re.MULTILINE)
"""The rule for marks of lists, which only a list's items have."""


class PrintedPage(weasyprint.HTML):  # type: ignore[misc]
    """The HTML of a sheet or a bench copy, which fetches nothing but what is shipped.

    The renderer asks for its style sheet by a method that it does not document. If it no longer does, all rules hold again and
    printing takes longer, no more (`tests/sheet/test_printer.py`)."""

    def __init__(self, page: str) -> None:
        super().__init__(string=page, url_fetcher=ShippedOnly())

    def _ua_stylesheets(self, forms: bool = False) -> list[weasyprint.CSS]:
        return [_sparing()]


@cache
def _sparing() -> weasyprint.CSS:
    """The renderer's own style sheet without what no sheet uses."""
    whole = world.library_text("weasyprint", "css/html5_ua.css")
    return weasyprint.CSS(string=MARKS.sub("li::marker", NOTES.sub("", whole)))
