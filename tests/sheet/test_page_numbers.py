"""The numbers of the contents are those of the pages, whoever writes them."""

from __future__ import annotations

import io
import re
from collections.abc import Callable
from typing import Any

import pypdf
import pytest
import weasyprint
from weasyprint.text.fonts import FontConfiguration

from tests.sheet.pullover import Pattern
from walewright.sheet import html, printer
from walewright.sheet.fonts import ShippedOnly, font_face_css
from walewright.sheet.page_numbers import FIGURE_SPACE, KEEPING_ROOM, ROOM, numbered
from walewright.sheet.printer import PrintedPage

STYLE = """.contents a::after { content: target-counter(attr(href), page); float: right; }
section { break-before: page; }"""

DRAWN = "<style>a.drawn::after { content: target-counter(attr(href), page); }</style>"


def page(sections: int, first: str = "") -> str:
    """One page with the contents, and one for each section."""
    links = "".join(f'<li><a href="#s{n}">Section {n}</a></li>' for n in range(sections))
    parts = "".join(f'<section id="s{n}"><h2>Part</h2></section>' for n in range(sections))
    return (
        f'<html lang="en"><head><title>A page</title><style>{STYLE}</style></head>'
        f'<body>{first}<div class="contents"><ul>{links}</ul></div>{parts}</body></html>'
    )


def laid_out(source: str) -> Any:
    fonts = FontConfiguration()
    weasyprint.CSS(string=font_face_css(), font_config=fonts, url_fetcher=ShippedOnly())
    return PrintedPage(source).laid_out(fonts, {})


def text(document: Any, at: int = 0) -> str:
    """Of one page, as a reader of the PDF finds it."""
    return pypdf.PdfReader(io.BytesIO(document.write_pdf())).pages[at].extract_text()


@pytest.mark.parametrize("sections", [1, 3, 12])
def test_numbers(sections: int) -> None:
    found = re.findall(r"\d+", text(laid_out(page(sections))))
    assert sorted(map(int, found)) == sorted([*range(sections), *range(2, sections + 2)])


def test_a_drawing_that_is_named_before_it_comes() -> None:
    source = page(2, '<p>as in the drawing, p. <a class="drawn" href="#s1"></a>.</p>').replace("</title>", f"</title>{DRAWN}")
    document = laid_out(source)
    assert re.findall(r"p\. (\d+)", text(document)) == ["3"]
    assert sorted(re.findall(r"\d+", text(document))) == ["0", "1", "2", "3", "3"]


def test_as_the_renderer_numbers_them(pattern: Callable[..., Pattern], monkeypatch: pytest.MonkeyPatch) -> None:
    source = html(pattern(3).sheet())
    ours = text(laid_out(source)).split()
    asked: list[int] = []

    def unnumbered(document: Any, count: int) -> bool:
        asked.append(count)
        return False

    monkeypatch.setattr(printer, "numbered", unnumbered)
    assert text(laid_out(source)).split() == ours
    assert asked == [source.count('<li><a href="#')]


def test_no_page_is_laid_out_again(monkeypatch: pytest.MonkeyPatch) -> None:
    """Else nothing is gained by it."""
    made: list[int] = []
    from weasyprint.layout import page as pages

    once = pages.make_page

    def counted(context: Any, root: Any, kind: Any, resume_at: Any, number: int, state: Any) -> Any:
        made.append(number)
        return once(context, root, kind, resume_at, number, state)

    monkeypatch.setattr(pages, "make_page", counted)
    laid_out(page(4))
    assert made == [1, 2, 3, 4, 5]


def test_a_number_with_more_digits_than_there_is_room_for() -> None:
    assert "101" in text(laid_out(page(1, '<div style="break-after: page"></div>' * 99)), 99)


@pytest.mark.parametrize("gone", ["_page_box", "anchors"])
def test_a_renderer_without_such_boxes(gone: str) -> None:
    document = PrintedPage(page(2)).render(stylesheets=[weasyprint.CSS(string=KEEPING_ROOM)])
    delattr(document.pages[0], gone)
    assert not numbered(document, 2)


def test_a_link_that_got_no_number() -> None:
    document = PrintedPage(page(2)).render(stylesheets=[weasyprint.CSS(string=KEEPING_ROOM)])
    assert not numbered(document, 3)


def test_room_is_kept_for_two_digits() -> None:
    document = PrintedPage(page(2)).render(stylesheets=[weasyprint.CSS(string=KEEPING_ROOM)])
    texts = [box.text for box in document.pages[0]._page_box.descendants() if getattr(box, "text", None) == ROOM]
    assert len(texts) == 2
    assert numbered(document, 2)
    boxes = [box for box in document.pages[0]._page_box.descendants() if box.element_tag == "a::after"]
    assert [box.pango_layout.text for box in boxes if hasattr(box, "pango_layout")] == [f"{FIGURE_SPACE}2", f"{FIGURE_SPACE}3"]
