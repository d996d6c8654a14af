"""Charts, stripes and edgings in words, read back: the same grids, and the same moves as the plan's."""

from __future__ import annotations

import pytest
from hypothesis import HealthCheck, given, settings

from tests.draws import draws
from tests.in_english import drawing, laid_out, plain_text, read_back_all, write
from tests.write.chart_garments import CELLS, LOZENGE, PICTURE_CELLS, ROSE, WIDE, chart, charted_plans, charts, edged, worked
from walewright.design.model import Cell, Chart
from walewright.knit import expand
from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.steps import SizePlan
from walewright.readback.charts import Mark, ReadChart


def printed(*drawn: Chart) -> str:
    """The text of a plan that works the charts."""
    steps = tuple(st.StartChart(c.name, "", "panel", 0, c.width - 1, 1, 0) for c in drawn)
    return plain_text(write((worked("M", steps),), charts=drawn))


def read(text: str) -> ReadChart:
    (sheet,) = laid_out(text).sheets
    made = drawing(sheet)
    assert isinstance(made, ReadChart), made
    return made


KINDS = {
    "hole": "hole",
    "from left": "left",
    "from right": "right",
    "two from left": "onto left",
    "two from right": "onto right",
    "three": "onto both",
}


def mark(symbol: str, cell: Cell, picture: bool) -> Mark:
    """The cell as a knitter understands it."""
    if cell.kind == "knit":
        return Mark(symbol, "lay" if picture else "by hand" if cell.yarn else "knit", cell.yarn)
    return Mark(symbol, KINDS.get(cell.kind, cell.kind), "", cell.cross, cell.hung_first)


def same(drawn: Chart) -> ReadChart:
    rows = tuple(tuple(mark(s, drawn.cell(y, x), drawn.picture) for x, s in enumerate(row)) for y, row in enumerate(drawn.rows))
    return ReadChart(drawn.name, rows, drawn.before, drawn.repeat, drawn.after, drawn.picture)


@settings(max_examples=draws(100), deadline=None)
@given(charts("lozenge"))
def test_any_chart_prints_and_reads_back_as_itself(drawn: Chart) -> None:
    assert read(printed(drawn)) == same(drawn)


@pytest.mark.parametrize("drawn", [LOZENGE, ROSE, WIDE], ids=lambda c: c.name)
def test_a_chart(drawn: Chart) -> None:
    assert read(printed(drawn)) == same(drawn)


@pytest.mark.parametrize("width", [1, 37, 38, 39, 71, 72, 73, 106, 107, 200])
def test_strips_are_laid_together(width: int) -> None:
    drawn = chart("wide", *("".join(".-uv"[(x * x + y) % 4] for x in range(width)) for y in range(3)))
    assert read(printed(drawn)) == same(drawn)


@pytest.mark.parametrize("symbol", ["|", "=", "-", "#", "9", ":", "(", "“", "ß", "Ø", "."])
def test_a_symbol_can_be_anything(symbol: str) -> None:
    drawn = chart("grid", f"{symbol}x", f"{symbol}{symbol}", cells={symbol: Cell("purl"), "x": Cell("slip")})
    assert read(printed(drawn)) == same(drawn)


@pytest.mark.parametrize("name", ["to", "the", "by", "and", "lay", "R", "COR", "st", "in", "größe2", "yarn"])
def test_names_can_be_any_word(name: str) -> None:
    for cells in (CELLS, PICTURE_CELLS):
        drawn = chart(name, "x", cells={**cells, "x": Cell("knit", name)} if cells is CELLS else PICTURE_CELLS)
        assert read(printed(drawn)) == same(drawn)
    laid = Chart(name, ROSE.rows, chart("k", "x", cells={s: Cell("knit", name) for s in ".x1"}).key, 0, 0, 0, True, ROSE.origin)
    assert read(printed(laid)) == same(laid)


def test_every_kind_of_cell_is_in_the_sample() -> None:
    assert {*KINDS, "knit", "purl", "tuck", "slip", "long", "ladder", "cross"} == {cell.kind for cell in CELLS.values()}


@settings(max_examples=draws(60), deadline=None, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
@given(charted_plans())
def test_any_charted_plan(made: tuple[tuple[SizePlan, ...], tuple[Chart, ...]]) -> None:
    plans, drawn = made
    works, faults = read_back_all(plain_text(write(plans, charts=drawn)))
    assert faults == ()
    assert works == tuple(expand(p, drawn) for p in plans)


def test_edgings_stripes_and_links() -> None:
    plans = (edged("S", 40, 2), edged("M", 46, 3))
    works, faults = read_back_all(plain_text(write(plans)))
    assert faults == ()
    assert works == tuple(expand(p) for p in plans)


def test_the_edged_garment_has_every_new_way() -> None:
    """So that the comparison above is about something."""
    works, _ = read_back_all(plain_text(write((edged("S", 40, 2),))))
    assert works is not None
    made = [o for block in works[0].blocks for o in block.operations]
    assert {op.HangFeet, op.SewOff, op.InFabric} <= {type(o) for o in made}
    assert op.BreakYarn(120) in made
    assert op.CastOn("e-wrap", -20, 19) in made
    assert op.PickUpEdge("front", "end", "whole", -20, 19, over=True, left_end="left") in made
    assert op.UseYarn("wool", "4", carried=True) in made
    assert [b.name for b in works[0].blocks] == ["back", "sleeve", "back end link"]
