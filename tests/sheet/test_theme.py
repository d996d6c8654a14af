"""A theme: its colours in drawings, and what it may not do."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from tests.laws.code_tree import PACKAGE
from walewright.figures.model import Drawing, Stroke, Tile
from walewright.sheet import html, pdf
from walewright.sheet.theme import LETTERINGS, PENS, colours, pen, unfit
from walewright.sheet.themed import Theme

Make = Callable[..., Any]

HOUSE = (PACKAGE / "sheet" / "themes" / "booklet.css").read_text(encoding="utf-8")


def test_the_house_has_every_colour_that_a_pen_asks_for() -> None:
    asked = {name for text in (*PENS.values(), *LETTERINGS.values()) for name in re.findall(r"\{([\w-]+)\}", text)}
    assert asked - {"colour", "width"} <= set(colours(HOUSE))


def test_every_colour_of_the_house_is_a_property() -> None:
    assert len(re.findall(r"#[0-9a-fA-F]{3,6}\b", re.sub(r":root \{.*?\}", "", HOUSE, flags=re.DOTALL))) == 0
    used = set(re.findall(r"var\(--([\w-]+)\)", HOUSE))
    drawn = {name for text in PENS.values() for name in re.findall(r"\{([\w-]+)\}", text)}
    assert used - {"of", "page", "wide"} | (drawn - {"colour", "width"}) == set(colours(HOUSE))


def test_the_last_of_a_name_holds_and_one_may_stand_for_another() -> None:
    known = colours(":root { --ink: #111; --accent: var( --ink ); }\n@media print { :root { --ink: red } } :root { --ink: #222 }")
    assert known == {"ink": "#222", "accent": "#222"}
    assert colours(":root { --a: var(--b); --b: var(--a) }")["a"] in ("var(--a)", "var(--b)")


def test_a_theme_colours_text_and_drawings(pattern: Make) -> None:
    made = pattern(3).sheet()
    plain, red = html(made), html(made, Theme(":root { --accent: #c0ffee }"))
    assert 'stroke="#1f5a61"' in plain
    assert 'stroke="#1f5a61"' not in red
    assert 'stroke="#c0ffee"' in red
    head = red.index("</style>")
    assert red[:head].index("--accent: #1f5a61") < red[:head].index("--accent: #c0ffee")
    data, warnings = pdf(red, made)
    assert (data[:5], warnings) == (b"%PDF-", ())


def test_a_tile_in_a_yarns_colour_leaves_that_colour_to_what_is_drawn_after_it(pattern: Make) -> None:
    made = pattern(1).sheet()
    tiled = Drawing("tiled", 9, 9, (Stroke("M0 0h9", "tiled", "t"),), (), tiles=(Tile("t", 1, 1, "M0 0h1", "#ece7da", 0.2),))
    strand = Drawing("strand", 9, 9, (Stroke("M0 0h9", "strand", "#ece7da", 1.0),), ())
    parts = tuple(replace(part, drawing=strand) for part in made.parts)
    page = html(replace(made, cover=tiled, parts=parts))
    assert page.count('stroke="#ece7da"') == 1 + sum(part.drawing is not None for part in parts) > 1
    assert 'stroke=""' not in page


def test_a_colour_cannot_leave_its_attribute() -> None:
    drawn = pen(Stroke("M0 0", "outline"), {"ink": '"/><script>'})
    assert "<" not in drawn
    assert drawn.count('"') == 8


@pytest.mark.parametrize(
    ("css", "what"),
    [
        ("a { background: url(x.png) }", "url()"),
        ('a { background: url("x.png") }', "url()"),
        ("a { background: u\\72l(x.png) }", "url()"),
        ("a { background: URL('//example.org') }", "url()"),
        ('@import "x.css";', "@import"),
        ("@IMPORT url(x.css);", "@import"),
        ('@font-face { font-family: X; src: local("X") }', "@font-face"),
        ("@media print { a { content: image-set('x.png' 1x) } }", "image-set()"),
        ("a { --x: { b: [url(x)] } }", "url()"),
        ("a { background: url(x y) }", "url()"),
        ("/* </style> */", "</"),
        ("a::after { content: '</style>' }", "</"),
    ],
)
def test_what_would_fetch_something_is_refused_where_it_stands(css: str, what: str) -> None:
    found = unfit("mine.css", css)
    assert what in [dict(d.facts)["what"] for d in found]
    for one in found:
        assert one.code == "theme-reaches-out"
        (label,) = one.labels
        assert css[label.span.start : label.span.end].lower()[:1] in "u@i<s"


def test_the_place_is_that_of_the_line() -> None:
    css = "a { color: red }\n\n  b { background: url(x) }"
    (fault,) = unfit("mine.css", css)
    assert css[fault.labels[0].span.start :].startswith("url(x)")


def test_what_reaches_for_nothing_is_let_through() -> None:
    assert unfit("mine.css", HOUSE.replace("url(", "none(")) == ()
    assert unfit("mine.css", "/* url(x) */ a { content: 'url(x) @import' }") == ()
