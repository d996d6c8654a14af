"""Large print: no small type on the pages, and cells of charts that can be read at arm's length."""

from __future__ import annotations

import io
import re
from collections.abc import Callable, Iterator
from typing import Any

import pypdf
import pytest
from hypothesis import given
from hypothesis import strategies as hs

from tests.sheet.pullover import printed
from tests.whole.shipped_once import compiled
from walewright.cli.formats.format import Pattern
from walewright.cli.options import Wanted
from walewright.figures.chart_sheets import LARGE, large
from walewright.sheet import html, pdf
from walewright.sheet.theme import LETTERINGS
from walewright.world import package_text

Make = Callable[..., Any]

ROOM = (178.0, 225.0)
"""mm of paper between the margins of an A4 page, and below a heading on a letter page."""

BESIDE = 17.5 * 2, 20.1 * 2
"""mm beside the cells, and above and below them."""


def lettered(data: bytes) -> Iterator[tuple[float, float, str]]:
    """(points, x, text) of all that is set."""
    found: list[tuple[float, float, str]] = []

    def visit(text: str, current: list[float], matrix: list[float], _: object, size: float) -> None:
        if text.strip():
            found.append((size * abs(matrix[3] * current[3]), current[4] + matrix[4] * current[0], text))

    for page in pypdf.PdfReader(io.BytesIO(data)).pages:
        page.extract_text(visitor_text=visit)
    yield from found


@pytest.fixture(scope="module", params=[1, 8])
def in_large_print(pattern: Make, request: pytest.FixtureRequest) -> bytes:
    made = pattern(request.param).sheet(large_print=True)
    # Without drawings, whose letters grow with them.
    return pdf(re.sub(r"<svg.*?</svg>", "", html(made, large_print=True), flags=re.S), made)[0]


def test_no_type_is_small(in_large_print: bytes) -> None:
    sizes = list(lettered(in_large_print))
    assert len(sizes) > 100
    # The renderer's points are px of 0.75 pt.
    assert [(round(size, 1), text) for size, _, text in sizes if size < 13.9][:5] == []


def test_in_ordinary_print_some_is() -> None:
    assert any(size < 10 for size, _, _ in lettered(printed()[0]))


@pytest.mark.parametrize("name", ["kittiwake", "mooring"])
def test_the_type_of_the_opened_out_pieces_is_as_large_as_what_is_read(name: str) -> None:
    outcome = compiled(name)
    guide = Wanted({}, (), language="english").guide
    ordinary, large_print = (Pattern(outcome, guide, "a4", "cm", "", "2026-01-02", large_print=big).sheet for big in (False, True))
    for sheet, least in ((ordinary, 6.5), (large_print, 13.9)):
        (picture,) = (joins for part in sheet.parts for joins in part.joins)
        drawing = picture.drawing
        kinds = {lettering.kind for lettering in drawing.letterings}
        sizes = [float(re.findall(r'font-size="([\d.]+)"', LETTERINGS[kind])[0]) for kind in kinds]
        assert min(sizes) * drawing.scale * 72 / 25.4 >= least
        assert drawing.width * drawing.scale <= ROOM[0]
    (beneath,) = (joins for part in large_print.parts for joins in part.joins)
    assert beneath.columns == 1, "the list stands beneath it"
    assert ".joins, .joins > *" in package_text("sheet/themes/large.css")


@given(hs.integers(1, 120), hs.integers(1, 160), hs.floats(0.5, 1.5))
def test_cells_of_a_chart_are_large_and_fit_the_page(columns: int, rows: int, ratio: float) -> None:
    made = large(columns, rows, ratio)
    assert min(made.width, made.height) * made.scale >= LARGE - 1e-9
    for sheet in made.sheets:
        assert len(sheet.columns) * made.width * made.scale + BESIDE[0] <= ROOM[0]
        assert len(sheet.rows) * made.height * made.scale + BESIDE[1] <= ROOM[1]
    assert {c for s in made.sheets for c in s.columns} == set(range(columns))
    assert {r for s in made.sheets for r in s.rows} == set(range(rows))
