"""A page of paper is laid out from fewer boxes; its words and the places where a line may end stay."""

from __future__ import annotations

from collections.abc import Callable
from xml.etree import ElementTree

import pytest

from tests.sheet.pullover import Pattern
from walewright.sheet import html
from walewright.sheet.fewer_boxes import with_fewer_boxes
from walewright.sheet.printer import PrintedPage


def fewer(words: str) -> str:
    page = ElementTree.fromstring(f"<div>{words}</div>")
    with_fewer_boxes(page)
    return ElementTree.tostring(page, encoding="unicode")[5:-6].replace("\N{NO-BREAK SPACE}", "~")


@pytest.mark.parametrize(
    ("words", "as_set"),
    [
        ('<b>RC <span class="whole">54 (56: 58)</span></b>.', "<b>RC 54~(56:~58)</b>."),
        ('from <span class="whole">1 (2)</span> to <span class="whole">3 (4)</span>.', "from 1~(2) to 3~(4)."),
        ('<i>a</i> and <span class="whole">1 (2)</span>', "<i>a</i> and 1~(2)"),
        # A line could end behind a dash, whatever the spaces are.
        ('<span class="whole">4 – 5</span>', '<span class="whole">4 – 5</span>'),
        ('<span class="long">1 (2)</span>', '<span class="long">1 (2)</span>'),
        ('<span class="whole">1 <b>2</b></span>', '<span class="whole">1 <b>2</b></span>'),
        ('<td class="what"><p>Knit <b>2</b> rows.</p></td>', '<td class="what">Knit <b>2</b> rows.</td>'),
        ('<td class="what"><p>Knit.</p><p>Then.</p></td>', '<td class="what"><p>Knit.</p><p>Then.</p></td>'),
        ('<td class="tick"><span class="box">□</span></td>', '<td class="tick box">□</td>'),
        ('<td class="tick"><span class="box" /></td>',) * 2,
        ('<td class="tick"><span class="box">□</span><span class="box">□</span></td>',) * 2,
    ],
)
def test_boxes_are_taken_out(words: str, as_set: str) -> None:
    assert fewer(words) == as_set


def test_a_printed_page_has_fewer(pattern: Callable[..., Pattern]) -> None:
    page = html(pattern(3).sheet())
    laid, written = PrintedPage(page).etree_element, ElementTree.fromstring(page)
    assert sum(1 for _ in laid.iter()) < 0.95 * sum(1 for _ in written.iter())
    words = ("".join("".join(tree.itertext()).split()) for tree in (laid, written))
    assert len(set(words)) == 1
