"""The colours of charts: light yarn has light cells, in the chart as in its key, and is told apart without colour."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from tests.whole.shipped_once import compiled
from walewright.figures import yarns
from walewright.guide.english import LANGUAGE
from walewright.sheet import ProvenPattern, chart_places
from walewright.sheet.charts import charts, ground_yarn
from walewright.sheet.model import ChartPart


def part_of(name: str) -> ChartPart:
    design, counts, instructions, proof = compiled(name).result()
    return next(part for part in charts(LANGUAGE, ProvenPattern(design, counts, instructions, proof)) if len(part.key) > 1)


@pytest.mark.parametrize(
    ("name", "bare"), [("saltmarsh", "Knit in fingering-weight wool, white"), ("shoal", "Knit in fine wool, sand")]
)
def test_the_lightest_yarn_alone_has_no_hatch(name: str, bare: str) -> None:
    part = part_of(name)
    # In the key: a fill, and a hatch beside the grid and the frame.
    hatched = {row.name: any(st.kind in ("light", "mark") for st in row.drawing.strokes) for row in part.key}
    assert [row for row, marked in hatched.items() if not marked] == [bare]
    fills = {row.name: next(st.colour for st in row.drawing.strokes if st.kind == "fill") for row in part.key}
    assert max(fills, key=lambda row: yarns.lightness(fills[row])) == bare
    # In the chart: every yarn is laid in its own colour, all but one have a tile, no cell is left white.
    (sheet,) = part.sheets
    assert {st.colour for st in sheet.drawing.strokes if st.kind == "fill"} == set(fills.values())
    assert len(sheet.drawing.tiles) == len(part.key) - 1
    assert len({tile.data for tile in sheet.drawing.tiles}) == len(sheet.drawing.tiles)
    filled = 0.0
    for data in (st.data for st in sheet.drawing.strokes if st.kind == "fill"):
        boxes = re.findall(r"M([-\d.]+) ([-\d.]+)H([-\d.]+)V([-\d.]+)H", data)
        filled += sum((float(x1) - float(x0)) * (float(y1) - float(y0)) for x0, y0, x1, y1 in boxes)
    rows = sheet.rows
    assert filled == pytest.approx(rows.wide * rows.rise * (rows.high - rows.low + 1), rel=0.01)


def test_a_dark_yarn_is_hatched_in_light_lines_and_looks_alike_in_chart_and_key() -> None:
    part = part_of("saltmarsh")
    (green,) = (row for row in part.key if row.written == ".")
    assert "light" in {st.kind for st in green.drawing.strokes}
    (tile,) = part.sheets[0].drawing.tiles
    assert tile.colour == "paper"


def test_cells_that_name_no_yarn_stay_white_where_the_yarn_changes() -> None:
    design, counts, _, _ = compiled("saltmarsh").result()
    chart = next(c for c in design.charts if c.yarns)
    found = chart_places.uses(design, counts, chart)
    assert ground_yarn(design, chart, found) == "green"
    striped = tuple(replace(f, stripes=(("green", 2), ("white", 2))) for f in design.fabrics)
    assert ground_yarn(replace(design, fabrics=striped), chart, found) == ""
    symbols = tuple(replace(k, cell=replace(k.cell, kind="purl")) if not k.cell.yarn else k for k in chart.key)
    assert ground_yarn(design, replace(chart, key=symbols), found) == ""
    looks = yarns.in_chart(design, chart, "")
    assert all(look.hatch is not None for look in looks.values())
