"""Lettering of drawings on paper: none is smaller than is read with ease, in graded pages and in copies of one size."""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest

from tests.draws import few_of
from tests.whole.shipped_once import GARMENTS, SHIPPED, compiled, source
from walewright.cli.formats.format import Pattern
from walewright.cli.options import Wanted
from walewright.design import Changes
from walewright.figures.model import Drawing
from walewright.pipeline import Outcome, compile
from walewright.sheet import Sheet
from walewright.sheet.theme import LETTERINGS
from walewright.world import package_text

LEAST = 6.5
"""Points (common practice: captions are set in 6 to 8)."""

GUIDE = Wanted({}, (), language="english").guide
MILLIMETRES = {kind: float(re.findall(r'font-size="([\d.]+)"', said)[0]) for kind, said in LETTERINGS.items()}
HOUSE, FRONT, STEPS = (
    package_text(f"sheet/{file}") for file in ("themes/booklet.css", "templates/front.html", "templates/sheet.html")
)


def told(pattern: str, text: str) -> tuple[float, ...]:
    """The numbers in the one place where a template or the style sheet says how large a drawing is."""
    (found,) = re.findall(pattern, text)
    return tuple(map(float, [found] if isinstance(found, str) else found))


ACROSS, BESIDE = (
    told(rf"part\.drawing\.scale, {of}", STEPS) for of in (r"(\d+) if part\.across", r"\d+ if part\.across else (\d+)")
)
IN_A_COLUMN = told(r"\.flow \.beside svg { max-width: (\d+)mm", HOUSE)
JOINS = told(r"\.joins svg { max-width: (\d+)mm", HOUSE)
WORN = told(r"sheet\.cover\.scale, (\d+), (\d+)\)", FRONT)
BY_HAND = told(r"\.way svg { max-width: (\d+)mm", HOUSE)


def printed(of: Drawing, wide: float = 1000, high: float = 1000) -> Iterator[float]:
    """Points of its letterings, where it is so wide and high at most."""
    width, height = of.width * of.scale, of.height * of.scale
    scale = of.scale * min(1, wide / width, high / height)
    yield from (MILLIMETRES[lettering.kind] * scale * 72 / 25.4 for lettering in of.letterings)


def sizes_of(sheet: Sheet) -> Iterator[tuple[str, float]]:
    for part in sheet.parts:
        if part.drawing is not None:
            yield from (
                (part.title, size)
                for size in printed(part.drawing, *(IN_A_COLUMN if sheet.narrow else ACROSS if part.across else BESIDE))
            )
        for joins in part.joins:
            yield from (("joins", size) for size in printed(joins.drawing, *JOINS))
    for chart in sheet.charts:
        yield from ((chart.title, size) for shown in chart.sheets for size in printed(shown.drawing))
        yield from ((chart.title, size) for size in (printed(chart.map) if chart.map else ()))
    yield from ((way.title, size) for way in sheet.handwork for size in printed(way.drawing, *BY_HAND))
    yield from (("cover", size) for size in printed(sheet.cover, *WORN))


def sheet_of(outcome: Outcome) -> Sheet:
    return Pattern(outcome, GUIDE, "a4", "cm", "", "2026-01-02").sheet


def one_size(name: str) -> Outcome:
    sizes = compiled(name).result()[0].sizes
    return compile(source(name), f"{name}.wale", SHIPPED, Changes(sizes=(sizes[(len(sizes) - 1) // 2],)))


# Those whose drawings are widest in one size, and one with a chart.
FIRST = ("curlew", "windrow", "ebb", "saltmarsh")


@pytest.mark.parametrize("name", few_of((*FIRST, *(name for name in GARMENTS if name not in FIRST)), len(FIRST)))
def test_no_lettering_of_a_drawing_is_too_small(name: str) -> None:
    for outcome in (compiled(name), one_size(name)):
        found = list(sizes_of(sheet_of(outcome)))
        assert len(found) > 5
        assert [(what, round(size, 2)) for what, size in found if size < LEAST] == []


def test_a_drawing_that_figures_would_make_too_wide_has_letters_and_a_legend() -> None:
    sheet = sheet_of(one_size("curlew"))
    skirt, waistband = (part for part in sheet.parts if part.drawing is not None)
    assert skirt.legend is not None
    assert waistband.legend is None
    kinds = [{t.kind for t in part.drawing.letterings} for part in (skirt, waistband) if part.drawing is not None]
    assert kinds == [{"letter", "word"}, {"figure"}]
