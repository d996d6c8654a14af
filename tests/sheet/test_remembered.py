"""What the renderer works out of a style is remembered with the style, and is what it was."""

from __future__ import annotations

from typing import Any

import pytest

from tests.sheet.pullover import make_pattern
from walewright.sheet import html
from walewright.sheet.loading import renderer
from walewright.sheet.printer import PrintedPage
from walewright.sheet.remembered import REMEMBERED, place

LOOKS = """<html lang="en"><head><style>
body { direction: rtl; line-height: calc(1em + 2px); letter-spacing: 0.1em }
p { width: 40%; margin-inline-start: 2em; padding: 3% 1em; border-radius: 4px 20%; color: red; border: 2px solid currentcolor }
p > b { text-decoration: underline; color: blue; overflow-wrap: anywhere } i { word-spacing: 1em; white-space: pre }
table { border-collapse: collapse; width: 60% } td { border: 3px solid; padding: 5% } td + td { border: 0 }
.far { position: absolute; width: 30%; inset-inline-end: 0; margin: 10%; border-radius: 50% }
.just { text-align: justify; hyphens: auto; width: 5em }
</style></head><body><p>Knit <b>unbreakablelongwords</b> and <i>4\t rows</i>.</p><p>Knit <b>unbreakablelongwords</b> again.</p>
<table><tr><td>1</td><td>22</td></tr><tr><td>1</td><td>1</td></tr></table><div><div class="far">far <b>off</b></div></div>
<div class="just">Increase and decrease alternately everywhere, alternately everywhere.</div></body></html>"""
"""Of what a publisher's own style sheet may ask for, some of what the house's does not."""


@pytest.fixture(autouse=True)
def _loaded() -> None:
    renderer()


@pytest.mark.parametrize(("module", "name"), [(module, name) for module, name, _ in REMEMBERED])
def test_the_renderer_still_has_it_there(module: str, name: str) -> None:
    """A renderer that has it elsewhere is slower: where it is has to be looked up again."""
    assert hasattr(getattr(*place(module, name)), "__wrapped__")


@pytest.mark.parametrize(
    ("module", "name"),
    [
        ("weasyprint.text.line_break", "get_font_description"),
        ("weasyprint.layout.inline", "strut"),
        ("weasyprint.layout.block", "resolve_percentages"),
        ("weasyprint.layout.inline", "split_first_line"),
        ("weasyprint.text.line_break", "Layout.setup"),
        ("weasyprint.draw.text", "get_color"),
    ],
)
def test_it_is_worked_out_once_for_all_that_share_a_style(module: str, name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Fifty lines in one style, of two different texts, on a page."""
    owner, called = place(module, name)
    worked_out = getattr(owner, called).__wrapped__
    asked: list[object] = []

    def counted(*of: Any, **named: Any) -> Any:
        asked.append(of[0])
        return worked_out(*of, **named)

    counted.__name__ = worked_out.__name__
    sparing = next(how for m, n, how in REMEMBERED if (m, n) == (module, name))
    monkeypatch.setattr(owner, called, sparing(counted))
    lines = "<p>Knit.</p><p>Cast off.</p>" * 25
    assert PrintedPage(f'<html lang="en"><body>{lines}</body></html>').write_pdf()
    assert 1 <= len(asked) <= 5


@pytest.mark.parametrize("text", ["12", "-0.25", "1e2", "3mm", "50%", "2em", "", None, "wide"])
def test_lengths_of_drawings_are_what_they_were(text: str | None) -> None:
    size = getattr(*place("weasyprint.svg", "size"))
    assert size(text, 16, 200) == size.__wrapped__(text, 16, 200)


@pytest.mark.parametrize("page", ["house", "looks"])
def test_pages_are_what_they_were(page: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Each box stands where it stands without, and is drawn alike."""
    source = html(make_pattern(3).sheet()) if page == "house" else LOOKS
    places, drawn = _places(source), PrintedPage(source).write_pdf(uncompressed_pdf=True)
    for module, name, _ in REMEMBERED:
        owner, called = place(module, name)
        monkeypatch.setattr(owner, called, getattr(owner, called).__wrapped__)
    assert places == _places(source)
    assert drawn == PrintedPage(source).write_pdf(uncompressed_pdf=True)


def _places(page: str) -> list[tuple[str, float, float, float]]:
    pages = PrintedPage(page).render().pages
    boxes = (box for laid in pages for box in laid._page_box.descendants())
    return [(str(box.element_tag), box.position_x, box.position_y, box.width) for box in boxes if hasattr(box, "position_x")]
