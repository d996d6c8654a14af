"""What the renderer works out of a style is remembered with the style, and is what it was."""

from __future__ import annotations

from importlib import import_module
from typing import Any

import pytest

from tests.sheet.pullover import make_pattern
from walewright.sheet import html
from walewright.sheet.loading import renderer
from walewright.sheet.printer import PrintedPage
from walewright.sheet.remembered import NUMBERS, OF_A_STYLE

PAGE = '<html lang="en"><body><h1>A hat</h1><p>Knit <b>4</b> rows.</p><p>Cast <b>off</b>.</p></body></html>'


@pytest.mark.parametrize(("module", "name"), [*OF_A_STYLE, NUMBERS])
def test_the_renderer_still_has_it_there(module: str, name: str) -> None:
    """A renderer that has it elsewhere is slower: where it is has to be looked up again."""
    renderer()
    assert hasattr(getattr(import_module(module), name), "__wrapped__")


def test_it_is_worked_out_once_for_all_that_share_a_style(monkeypatch: pytest.MonkeyPatch) -> None:
    renderer()
    lines = import_module("weasyprint.text.line_break")
    asked: list[int] = []
    worked_out = lines.get_font_description.__wrapped__

    def counted(style: Any) -> Any:
        asked.append(id(style))
        return worked_out(style)

    from walewright.sheet.remembered import _once

    monkeypatch.setattr(lines, "get_font_description", _once(counted))
    PrintedPage(PAGE).render()
    assert asked
    assert len(asked) == len(set(asked))


@pytest.mark.parametrize("text", ["12", "-0.25", "1e2", "3mm", "50%", "2em", "", None, "wide"])
def test_lengths_of_drawings_are_what_they_were(text: str | None) -> None:
    renderer()
    size = getattr(import_module(NUMBERS[0]), NUMBERS[1])
    assert size(text, 16, 200) == size.__wrapped__(text, 16, 200)


def test_pages_are_what_they_were(monkeypatch: pytest.MonkeyPatch) -> None:
    """Each box stands where it stands without."""
    renderer()
    page = html(make_pattern(3).sheet())
    with_it = _places(page)
    for module, name in (*OF_A_STYLE, NUMBERS):
        within = import_module(module)
        monkeypatch.setattr(within, name, getattr(within, name).__wrapped__)
    assert with_it == _places(page)


def _places(page: str) -> list[tuple[str, float, float, float]]:
    pages = PrintedPage(page).render().pages
    boxes = (box for laid in pages for box in laid._page_box.descendants())
    return [(str(box.element_tag), box.position_x, box.position_y, box.width) for box in boxes if hasattr(box, "position_x")]
