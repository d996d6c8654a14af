"""Contrast of text and paper, against values that follow from the definition (WCAG 2.2, glossary, "contrast ratio")."""

from __future__ import annotations

import pytest

from walewright.report.model import Severity, Span
from walewright.sheet.render import house_css
from walewright.sheet.theme import colours, places
from walewright.sheet.theme_contrast import LEAST, Channels, channels, contrast, hard_to_read, hexadecimal

HOUSE = house_css()


def of(colour: str) -> Channels:
    found = channels(colour)
    assert found is not None
    return found


def test_black_on_white_is_the_most_and_a_colour_on_itself_the_least() -> None:
    assert contrast(of("black"), of("white")) == pytest.approx(21)
    assert contrast(of("#7a2f3b"), of("#7a2f3b")) == 1
    assert contrast(of("white"), of("red")) == contrast(of("red"), of("white"))


@pytest.mark.parametrize(
    ("colour", "luminance"), [("red", 0.2126), ("lime", 0.7152), ("blue", 0.0722), ("#030303", 3 / 255 / 12.92)]
)
def test_a_pure_colour_has_its_share_of_white(colour: str, luminance: float) -> None:
    assert contrast(of(colour), of("white")) == pytest.approx(1.05 / (luminance + 0.05))


def test_the_grey_at_the_limit() -> None:
    """#767676 is the lightest grey that still has 4.5 : 1 on white."""
    assert contrast(of("#767676"), of("white")) >= LEAST > contrast(of("#777777"), of("white"))


def test_the_house_can_be_read() -> None:
    assert list(hard_to_read(HOUSE, "", {name: Span("x", 0, 1) for name in colours(HOUSE)})) == []


def test_each_colour_is_warned_of_where_it_is_set() -> None:
    css = ":root { --ink: #777777; --accent: #767676;\n  --tint: yellow }"
    (told,) = hard_to_read(HOUSE, css, places("mine.css", css))
    assert (told.code, told.severity) == ("theme-low-contrast", Severity.WARNING)
    span = told.labels[0].span
    assert css[span.start : span.end] == "--ink: #777777"
    assert dict(told.facts)["ratio"] == 4.47


def test_a_darker_paper_makes_both_hard_to_read() -> None:
    css = ":root { --paper: #556 }"
    found = list(hard_to_read(HOUSE, css, places("mine.css", css)))
    assert [dict(d.facts)["name"] for d in found] == ["ink", "accent"]
    assert {css[d.labels[0].span.start : d.labels[0].span.end] for d in found} == {"--paper: #556"}


def test_what_is_no_plain_colour_is_not_reckoned_with() -> None:
    css = ":root { --ink: rgba(0, 0, 0, 0.1); --accent: nonsense }"
    assert list(hard_to_read(HOUSE, css, places("mine.css", css))) == []
    assert channels("currentColor") is None


def test_a_colour_is_written_as_it_is_read() -> None:
    assert hexadecimal(of("rgb(122, 47, 59)")) == "#7a2f3b"
