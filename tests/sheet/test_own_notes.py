"""Ruled space for notes: where a page would stay white, and nowhere else."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

import pytest
import weasyprint
from weasyprint.text.fonts import FontConfiguration

from tests.sheet.pullover import Pattern
from walewright.sheet import html
from walewright.sheet.fonts import ShippedOnly, font_face_css
from walewright.sheet.own_notes import CLASS, with_own_notes
from walewright.sheet.printer import PrintedPage

HIGH = 200
"""mm of a page between its margins."""

STYLE = f"""@page {{ size: 100mm {HIGH}mm; margin: 0; }} body {{ margin: 0; }}
.{CLASS} {{ position: absolute; width: 100%; height: 0; }}
p {{ margin: 0; font-size: 4mm; line-height: 5mm; break-inside: avoid; }}"""


def section(high: int) -> str:
    """Words that stand so high, all on one page."""
    lines = "<br/>".join(["words"] * (high // 5))
    return (
        f'<section><p>{lines}</p><svg class="{CLASS}" xmlns="http://www.w3.org/2000/svg" width="100%" height="0">'
        "<title>Notes</title></svg></section>"
    )


def page(*heights: int) -> str:
    sections = "".join(map(section, heights))
    return f'<html lang="en"><head><title>A page</title><style>{STYLE}</style></head><body>{sections}</body></html>'


def laid_out(source: str) -> Any:
    fonts = FontConfiguration()
    weasyprint.CSS(string=font_face_css(), font_config=fonts, url_fetcher=ShippedOnly())
    return PrintedPage(source).laid_out(fonts, {})


def ruled(document: Any) -> list[list[tuple[int, int]]]:
    """Of each page, from where to where lines are ruled, mm from its top."""
    return [
        [
            (round(box.position_y / 96 * 25.4), round((box.position_y + box.height) / 96 * 25.4))
            for box in page._page_box.descendants()
            if box.element is not None and box.element.get("class") == CLASS
        ]
        for page in document.pages
    ]


@pytest.mark.parametrize(
    ("heights", "expected"),
    [
        # What is left of the last page, in whole lines of 8 mm.
        ((75,), [[(79, 195)]]),
        ((40, 35), [[(79, 195)]]),
        # Too little room for lines.
        ((170,), [[]]),
        # What follows is too high for the rest of a page.
        ((120, 190), [[(124, 200)], []]),
        ((120, 120), [[(124, 200)], [(124, 200)]]),
        # Less than a third of the page stays white, or nothing.
        ((150, 190), [[], []]),
        ((120, 60, 190), [[], []]),
    ],
)
def test_where_a_page_would_stay_white(heights: Sequence[int], expected: list[list[tuple[int, int]]]) -> None:
    assert ruled(laid_out(page(*heights))) == expected


def test_words_behind_them_keep_their_place() -> None:
    assert ruled(laid_out(page(40).replace("</body>", "<p>words<br/>words<br/>words</p></body>"))) == [[]]


def test_a_page_without_room_for_them_is_as_before() -> None:
    with_lines, without = page(120, 190, 60), page(120, 190, 60).replace(CLASS, "gone")
    places = [
        [round(box.position_y) for page in laid_out(source).pages for box in page._page_box.descendants() if box.element_tag == "p"]
        for source in (with_lines, without.replace("<svg", "<svg hidden='hidden' style='display: none'"))
    ]
    assert places[0] == places[1]


def test_lines_without_room_are_no_figure_of_the_document() -> None:
    data = laid_out(page(40, 40)).write_pdf(pdf_variant="pdf/ua-1", uncompressed_pdf=True)
    assert data.count(b"/S /Figure") == 1


@pytest.mark.parametrize("gone", ["_page_box"])
def test_a_renderer_without_such_boxes(gone: str) -> None:
    document = PrintedPage(page(40)).render()
    for laid in document.pages:
        delattr(laid, gone)
    assert with_own_notes(document) is document


def test_a_booklet_ends_in_them(pattern: Callable[..., Pattern]) -> None:
    document = laid_out(html(pattern(3).sheet()))
    last = document.pages[-1]._page_box
    floor = last.content_box_y() + last.height
    ours = [box for box in last.descendants() if box.element is not None and box.element.get("class") == CLASS]
    ends = [box.position_y + box.height for box in ours]
    assert len(ends) == 1
    assert floor - 34 < ends[0] <= floor
