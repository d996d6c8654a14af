"""Parts of a page share their styles, and look as they would if they did not."""

from __future__ import annotations

from typing import Any
from xml.etree import ElementTree

import pytest
import weasyprint

from tests.sheet.pullover import make_pattern
from walewright.sheet import html
from walewright.sheet.printer import PrintedPage
from walewright.sheet.shared_styles import own_sheets, with_anchors_on_headings

PART = '<section id="{0}"><div class="head"><h2>{0}</h2></div><p>Knit.</p></section>'
STYLE = "#front h2 {{ color: #123456; }} p {{ margin: {0} }}"


def page(*parts: str, style: str = "") -> ElementTree.Element:
    return ElementTree.fromstring(f"<html><head><style>{style}</style></head><body>{''.join(parts)}</body></html>")


def anchors(root: ElementTree.Element) -> dict[str, str]:
    return {e.get("id", ""): e.tag for e in root.iter() if e.get("id")}


def test_an_anchor_moves_to_the_heading_of_its_part() -> None:
    root = page(PART.format("back"), PART.format("front"), style=STYLE.format("0"))
    with_anchors_on_headings(root)
    # What a rule names stays.
    assert anchors(root) == {"back": "h2", "front": "section"}


@pytest.mark.parametrize(
    "part",
    [
        '<section id="back">Words before. <h2>Back</h2></section>',
        '<section id="back"><p>Words before.</p><h2>Back</h2></section>',
        '<section id="back"><p>No heading.</p></section>',
    ],
)
def test_it_stays_where_a_heading_does_not_begin_the_part(part: str) -> None:
    root = page(part)
    with_anchors_on_headings(root)
    assert anchors(root) == {"back": "section"}


def test_no_anchor_is_lost() -> None:
    root = page(
        '<section id="outer"><h2 id="inner">Back</h2></section>', '<section id="one"><div id="two"><h3>On</h3></div></section>'
    )
    before = set(anchors(root))
    with_anchors_on_headings(root)
    assert set(anchors(root)) == before


def test_a_style_sheet_is_read_once_for_many_pages() -> None:
    one, other = (own_sheets(page(PART.format("back"), style=STYLE.format("1mm"))) for _ in range(2))
    assert one[-1] is other[-1]
    assert own_sheets(page(PART.format("back"), style=STYLE.format("2mm")))[-1] is not one[-1]


def test_one_with_faces_belongs_to_its_page() -> None:
    root = page(PART.format("back"), style='@font-face { font-family: "Own"; src: url("data:font/ttf;base64,") }')
    assert own_sheets(root) == []
    assert root.find("head/style") is not None


DRAWING = (
    '<svg class="{0}" xmlns="http://www.w3.org/2000/svg" width="{1}mm" height="5mm" viewBox="0 0 2 1"><path d="M0 0L2 1"/></svg>'
)


def test_a_drawing_is_as_large_as_it_says_unless_a_rule_says_otherwise() -> None:
    root = page(
        DRAWING.format("small", 10), DRAWING.format("small", 8), DRAWING.format("cover", 10), style=".cover { width: 30mm }"
    )
    made = PrintedPage(ElementTree.tostring(root, encoding="unicode"))
    made_pages = made.render(stylesheets=own_sheets(made.etree_element)).pages
    boxes = [box for laid in made_pages for box in laid._page_box.descendants() if str(box.element_tag).endswith("svg")]
    assert [round(box.width * 25.4 / 96, 2) for box in boxes] == [10, 8, 30]


def test_a_sheet_looks_as_it_does_with_its_own_style_sheet() -> None:
    """Every box stands where it stands when anchors and style sheets are left where they are, and each anchor leads to its page."""
    faces, given = weasyprint.CSS(string=""), html(make_pattern(3).sheet())
    plain = PrintedPage(given)
    plain_pages = plain.render(stylesheets=[faces]).pages
    made = PrintedPage(given)
    with_anchors_on_headings(made.etree_element)
    made_pages = made.render(stylesheets=[*own_sheets(made.etree_element), faces]).pages
    assert [_places(one) for one in made_pages] == [_places(one) for one in plain_pages]
    # A part that goes on has its anchor on its next pages too.
    first = [{a: n for n, one in reversed(list(enumerate(pages))) for a in one.anchors} for pages in (made_pages, plain_pages)]
    assert first[0] == first[1]
    assert len(first[0]) > 5


def test_most_parts_share_their_styles() -> None:
    shared = PrintedPage(html(make_pattern(3).sheet()))
    with_anchors_on_headings(shared.etree_element)
    own_sheets_kept = own_sheets(shared.etree_element)
    assert len(_styles(shared.render(stylesheets=own_sheets_kept))) < 0.8 * len(
        _styles(PrintedPage(html(make_pattern(3).sheet())).render())
    )


def _places(laid: Any) -> list[tuple[str | float, ...]]:
    boxes = (box for box in laid._page_box.descendants() if hasattr(box, "position_x"))
    return [(str(box.element_tag), *(round(at, 2) for at in _place(box))) for box in boxes]


def _place(box: Any) -> tuple[float, ...]:
    return box.position_x, box.position_y, getattr(box, "width", 0), getattr(box, "height", 0)


def _styles(document: Any) -> set[int]:
    return {id(box.style) for laid in document.pages for box in laid._page_box.descendants()}
