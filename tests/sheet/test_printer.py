"""The renderer is given no more of its own style sheet than a sheet uses."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path
from xml.etree import ElementTree

import pytest
import weasyprint

from tests.sheet.pullover import Pattern
from walewright.sheet import html
from walewright.sheet.fewer_boxes import with_fewer_boxes
from walewright.sheet.kept_words import keep_figures
from walewright.sheet.printer import MARKS, NOTES, PrintedPage

PAGE = '<html lang="en"><head><title>A page</title></head><body><h1>A hat</h1><ul><li>Cast on.</li></ul><p>Knit.</p></body></html>'


def marked(document: type[weasyprint.HTML]) -> int:
    """How many boxes of marks of lists the page has, laid out by it."""
    made = PrintedPage(PAGE) if document is PrintedPage else document(string=PAGE)
    pages = made.render().pages
    return sum(str(box.element_tag).endswith("::marker") for page in pages for box in page._page_box.descendants())


def test_the_renderers_style_sheet_has_the_rules_that_are_left_out() -> None:
    """A renderer that writes them otherwise is slower: what to leave out has to be looked up again."""
    whole = (Path(weasyprint.__file__).parent / "css" / "html5_ua.css").read_text(encoding="utf-8")
    left_out = NOTES.findall(whole)
    assert {re.match(r"::([\w-]+)", rule)[1] for rule in left_out} >= {"footnote-call", "footnote-marker"}  # type: ignore[index]
    assert len(MARKS.findall(whole)) == 1
    rest = MARKS.sub("li::marker", NOTES.sub("", whole))
    assert not re.search(r"(?m)^::", rest)
    assert whole.count("{") - rest.count("{") == len(left_out)


def test_the_renderer_asks_for_it() -> None:
    asked = []

    class Asked(PrintedPage):
        def _ua_stylesheets(self, forms: bool = False) -> list[weasyprint.CSS]:
            asked.append(forms)
            return super()._ua_stylesheets(forms)

    Asked(PAGE).render()
    assert asked


def test_lists_keep_their_marks() -> None:
    assert marked(PrintedPage) == marked(weasyprint.HTML) == 1


def flat(element: ElementTree.Element) -> list[tuple[str, dict[str, str], str, str]]:
    """All elements, with what is in them; but for a parser's own names for namespaces, and for how much space is between them."""
    return [
        (
            e.tag,
            {name: value for name, value in e.attrib.items() if not name.endswith("}xmlns")},
            "" if e.tag == "html" else e.text or "",
            "" if e.tag in ("head", "body") else e.tail if e.tail and e.tail.strip() else " " * bool(e.tail),
        )
        for e in element.iter()
    ]


def as_parsed(page: str) -> ElementTree.Element:
    """The renderer's own tree, its figures kept with their units, in as few boxes."""
    tree: ElementTree.Element = weasyprint.HTML(string=page).etree_element
    keep_figures(tree)
    with_fewer_boxes(tree)
    return tree


@pytest.mark.parametrize("title", ["Tidewrack", "Tide & Wrack", "<b>\u00a0wrack</b>"])
def test_a_page_is_the_same_tree_read_as_xml(pattern: Callable[..., Pattern], title: str) -> None:
    page = html(pattern(3, title=title).sheet())
    assert ElementTree.fromstring(page).tag == "html"
    assert flat(PrintedPage(page).etree_element) == flat(as_parsed(page))


def test_a_page_that_is_no_xml_is_read_all_the_same() -> None:
    page = "<html lang=en><title>A page</title><p>Knit.<br>Purl."
    assert flat(PrintedPage(page).etree_element) == flat(as_parsed(page))
