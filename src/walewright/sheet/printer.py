"""The renderer's document of a sheet, with no more of its own style sheet than a sheet uses."""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache
from typing import Any
from xml.etree import ElementTree

import weasyprint

from walewright import world
from walewright.sheet.fewer_boxes import with_fewer_boxes
from walewright.sheet.fonts import ShippedOnly
from walewright.sheet.kept_words import keep_figures
from walewright.sheet.own_notes import with_own_notes
from walewright.sheet.page_numbers import KEEPING_ROOM, numbered
from walewright.sheet.shared_styles import own_sheets, with_anchors_on_headings

NOTES = re.compile(r"^::(?:foot)?note-[\w-]+\s*\{[^}]*\}\n?", re.MULTILINE)
"""Rules of the renderer's style sheet for calls, marks and ways back of notes. They hold for each element there is, though no sheet
has a note: with them, most styles that are computed are those of marks that nobody sets."""

MARKS = re.compile(r"^::marker(?=\s*\{)", re.MULTILINE)
"""The rule for marks of lists, which only a list's items have."""


class PrintedPage(weasyprint.HTML):  # type: ignore[misc]
    """The HTML of a sheet or a bench copy, which fetches nothing but what is shipped.

    The renderer asks for its style sheet by a method that it does not document. If it no longer does, all rules hold again and
    printing takes longer, no more (`tests/sheet/test_printer.py`).

    A page that is written as XML too, as all of the templates are, is read as XML, by the language's own parser: the renderer's
    takes forty times as long for the same tree."""

    wrapper_element: Any
    etree_element: Any

    def __init__(self, page: str) -> None:
        root = _as_xml(page)
        super().__init__(string=page if root is None else "<html></html>", url_fetcher=ShippedOnly())
        if root is not None:
            self.wrapper_element = type(self.wrapper_element).from_html_root(root, content_language=None)
            self.etree_element = self.wrapper_element.etree_element
        keep_figures(self.etree_element)
        with_fewer_boxes(self.etree_element)

    def laid_out(self, fonts: Any, options: Mapping[str, Any]) -> Any:
        """The renderer's document of all pages, with the numbers of its contents, in the faces that `fonts` has been given."""
        lists = (block for block in self.etree_element.iter("div") if "contents" in block.get("class", "").split())
        asked = sum(1 for block in lists for _ in block.iter("a"))
        asked += sum(1 for link in self.etree_element.iter("a") if link.get("class") == "drawn")
        with_anchors_on_headings(self.etree_element)
        sheets = own_sheets(self.etree_element)
        if asked:
            document = self.render(fonts, stylesheets=[*sheets, _keeping_room()], **options)
            if numbered(document, asked):
                return with_own_notes(document)
        return with_own_notes(self.render(fonts, stylesheets=sheets, **options))

    def _ua_stylesheets(self, forms: bool = False) -> list[weasyprint.CSS]:
        return [_sparing()]


def _as_xml(page: str) -> ElementTree.Element | None:
    """The tree of a page that is well-formed; None of any other. Whatever is given from outside is escaped in it, and it names no
    entities."""
    try:
        return ElementTree.fromstring(page)
    except ElementTree.ParseError:
        return None


@cache
def _sparing() -> weasyprint.CSS:
    """The renderer's own style sheet without what no sheet uses."""
    whole = world.library_text("weasyprint", "css/html5_ua.css")
    return weasyprint.CSS(string=MARKS.sub("li::marker", NOTES.sub("", whole)))


@cache
def _keeping_room() -> weasyprint.CSS:
    return weasyprint.CSS(string=KEEPING_ROOM)
