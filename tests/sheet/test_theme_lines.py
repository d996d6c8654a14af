"""A theme's description: what it says, and each thing that it cannot say, at its place."""

from __future__ import annotations

import pytest

from tests.sheet.themes import WHOLE
from walewright.report.english import in_english
from walewright.sheet.render import house_css
from walewright.sheet.theme import colours
from walewright.sheet.theme_lines import MOST_FONTS, MOST_LINES, described

NAMES = tuple(colours(house_css()))
FONT = '[[font]]\nfamily = "A"\nfile = "a.ttf"\n'


def test_a_whole_description_is_read() -> None:
    found, faults = described("theme.toml", WHOLE, NAMES)
    assert faults == ()
    assert found is not None
    assert found.imprint == ("Loops & <Rows>", "For private use.")
    assert found.logo is not None
    assert (found.logo.file, found.logo.alternative) == ("pictures/mark.png", "A row of loops")
    assert found.colours == {"accent": "#800000"}
    assert [(f.family, f.file, f.weight, f.style) for f in found.fonts] == [
        ("House Display", "display.woff2", 700, "italic"),
        ("House Display", "display.ttf", 400, "normal"),
    ]
    assert [WHOLE[f.span.start : f.span.end] for f in found.fonts] == ['file = "display.woff2"', 'file = "display.ttf"']


def test_an_empty_description_says_nothing() -> None:
    found, faults = described("theme.toml", "# nothing\n", NAMES)
    assert faults == ()
    assert found is not None
    assert (found.imprint, found.logo, dict(found.colours), found.fonts) == ((), None, {}, ())


@pytest.mark.parametrize(
    ("text", "case", "place"),
    [
        ('a = 1\nimprint = ["x"', "no-toml", ""),
        ("imprint = [1]]", "no-toml", "]"),
        ("a = " + "[" * 5000, "no-toml", ""),
        ("a = " + "1" * 5000, "no-toml", ""),
        ('author = "x"', "unknown", 'author = "x"'),
        ('[logo]\nfile = "a"\nalternative = "b"\nwidth = 3', "unknown", "width = 3"),
        (FONT + "size = 3", "unknown", "size = 3"),
        ('imprint = "x"', "no-list", 'imprint = "x"'),
        (f"imprint = {['x'] * (MOST_LINES + 1)}", "no-list", "imprint"),
        ("imprint = [3]", "no-text", "imprint = [3]"),
        ('imprint = [" "]', "no-text", "imprint"),
        ('imprint = ["a\\nb"]', "no-text", "imprint"),
        (f'imprint = ["{"x" * 121}"]', "no-text", "imprint"),
        ("logo = 3", "no-table", "logo = 3"),
        ('[logo]\nfile = "a"', "lacking", "[logo]"),
        ('[logo]\nfile = "a"\nalternative = ""', "no-text", 'alternative = ""'),
        ("colours = 3", "no-table", "colours = 3"),
        ('[colours]\nshade = "red"', "colour-unknown", 'shade = "red"'),
        ("[colours]\nink = 3", "no-colour", "ink = 3"),
        ('[colours]\nink = "red; }"', "no-colour", "ink"),
        ('[colours]\nink = "currentColor"', "no-colour", "ink"),
        ('[colours]\nink = "rgba(0, 0, 0, 0.5)"', "no-colour", "ink"),
        ('font = "x"', "no-fonts", 'font = "x"'),
        (FONT * (MOST_FONTS + 1), "no-fonts", "[[font]]"),
        ('[[font]]\nfamily = "A"', "lacking", "[[font]]"),
        (FONT + '[[font]]\nfile = "b.ttf"\nfamily = "a"', "face-twice", 'file = "b.ttf"'),
        ('[[font]]\nfile = "a"\nfamily = \'A"; }\'', "family", "family"),
        ('[[font]]\nfile = "a"\nfamily = "sheet sans"', "house-family", "family"),
        (FONT + "weight = 0", "weight", "weight = 0"),
        (FONT + "weight = true", "weight", "weight = true"),
        (FONT + 'weight = "bold"', "weight", "weight"),
        (FONT + 'style = "oblique"', "style", "style"),
        (FONT + "style = [1]", "style", "style"),
        ('logo = { file = "a" }', "lacking", "logo = {"),
        ('logo.file = "a"\nlogo.alternative = 3', "no-text", "logo.alternative = 3"),
    ],
)
def test_what_it_cannot_say_is_told_at_its_place(text: str, case: str, place: str) -> None:
    found, faults = described("theme.toml", text, NAMES)
    assert found is None
    assert [(d.code, d.case) for d in faults] == [("theme-line", case)]
    (fault,) = faults
    span = fault.labels[0].span
    assert text[span.start : span.end].startswith(place)
    assert in_english(fault).helps


def test_several_faults_are_told_together() -> None:
    text = 'imprint = 3\n[colours]\nred = "red"\nink = 3\n'
    _, faults = described("theme.toml", text, NAMES)
    assert {d.case for d in faults} == {"no-list", "colour-unknown", "no-colour"}
