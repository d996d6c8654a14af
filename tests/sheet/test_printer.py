"""The renderer is given no more of its own style sheet than a sheet uses."""

from __future__ import annotations

import re
from pathlib import Path

import weasyprint

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
