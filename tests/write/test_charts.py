"""Charts in words and as a grid of symbols."""

from __future__ import annotations

from itertools import pairwise

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.in_english import chart_text, grid_lines, plain_text, write
from tests.write.chart_garments import CELLS, LOZENGE, ROSE, WIDE, chart, worked
from walewright.design.model import Cell, Chart
from walewright.knit import steps as st
from walewright.knit.steps import SizePlan
from walewright.write.charts import meaning
from walewright.write.english.charts import MARKS
from walewright.write.grid import COLUMNS, OVERLAP, strips
from walewright.write.model import NoteKind
from walewright.write.plain import WIDTH


def plan(*charts: Chart) -> SizePlan:
    return worked("M", tuple(st.StartChart(c.name, "", "panel", 0, c.width - 1, 1, 0) for c in charts))


def test_two_charts(snapshot: SnapshotAssertion) -> None:
    assert plain_text(write((plan(ROSE, LOZENGE),), charts=(LOZENGE, ROSE, WIDE))) == snapshot


def test_only_charts_that_are_worked_are_printed_in_the_order_of_the_source() -> None:
    assert [c.name for c in write((plan(ROSE, LOZENGE),), charts=(WIDE, LOZENGE, ROSE)).charts] == ["lozenge", "rose"]
    assert write((plan(),), charts=(WIDE, LOZENGE)).charts == ()


def test_a_chart_that_one_size_works_in_a_repeat_is_printed() -> None:
    inside = st.Repeat((st.StartChart("rose", "", "panel", 0, 3, 1, 0), st.KnitRows(4), st.StopChart("rose")), 2)
    some, none = worked("S", (inside,)), worked("M", (st.KnitRows(8),))
    assert [c.name for c in write((none, some), charts=(LOZENGE, ROSE)).charts] == ["rose"]


def test_a_chart_that_is_not_there_is_a_fault_of_the_caller() -> None:
    with pytest.raises(KeyError, match="rose"):
        write((plan(ROSE),), charts=(LOZENGE,))


def test_the_key_has_the_symbols_that_occur_in_the_author_s_order() -> None:
    drawn = chart("few", "-.", "v-")
    assert [symbol for symbol, _ in chart_text(drawn).key] == [".", "-", "v"]


def test_every_kind_of_cell_has_its_own_words() -> None:
    told = [meaning(cell, picture, stage).key for cell in CELLS.values() for picture in (False, True) for stage in (0, 9)]
    assert set(MARKS) - {"mark/lay-in-use", "mark/by-hand"} <= set(told) <= set(MARKS)
    assert len(set(MARKS.values())) == len(MARKS)


def test_200_rows_of_100_stitches_fit_the_page() -> None:
    text = chart_text(WIDE)
    lines = list(grid_lines(text))
    assert max(map(len, lines)) <= WIDTH
    # Every row stands in every strip, with its number at both ends.
    for number in (1, 99, 200):
        assert sum(line.lstrip().startswith(f"{number} |") and line.endswith(f"| {number}") for line in lines) == 3
    assert [line for line in lines if line.startswith("Columns")] == [
        "Columns 1 to 38 of 100:",
        "Columns 35 to 72 of 100, columns 35 to 38 as before:",
        "Columns 69 to 100 of 100, columns 69 to 72 as before:",
    ]


@pytest.mark.parametrize("width", [1, COLUMNS, COLUMNS + 1, 2 * COLUMNS - OVERLAP, 2 * COLUMNS - OVERLAP + 1, 300])
def test_strips_cover_the_width_and_overlap(width: int) -> None:
    made = strips(width)
    assert (made[0][0], made[-1][1]) == (1, width)
    assert all(last - first < COLUMNS for first, last in made)
    assert all(b[0] == a[1] - OVERLAP + 1 for a, b in pairwise(made))


def test_column_numbers_stand_above_their_columns() -> None:
    lines = list(grid_lines(chart_text(WIDE)))
    ruler, row = lines[lines.index("Columns 69 to 100 of 100, columns 69 to 72 as before:") + 2 :][:2]
    for number in (75, 80, 95, 100):
        column = ruler.index(str(number)) + len(str(number)) - 1
        assert column == row.index("|") + 2 + 2 * (number - 69)


def test_what_is_repeated_is_told() -> None:
    def repeat(drawn: Chart) -> str:
        return next(n.text for n in chart_text(drawn).notes if n.kind is NoteKind.REPEAT)

    assert repeat(LOZENGE) == "Repeat: columns 1 to 10 across; rows 1 to 4 upwards."
    assert repeat(ROSE) == "Repeat: none; the 4 columns and 3 rows are worked once."
    bordered = chart("few", "-.v", before=1, repeat=1, after=1)
    assert repeat(bordered) == "Repeat: column 2 across, column 1 once at the left, column 3 once at the right; row 1 upwards."


def test_a_wide_cross_is_said_to_need_a_column_beside_it() -> None:
    for half, said in ((2, False), (3, True)):
        cells = {**CELLS, "W": Cell("cross", "", half, "left")}
        text = chart_text(chart("cable", "-" + "W" * 2 * half, "-" + "." * 2 * half, cells=cells))
        assert (
            "A cross of 3 over 3 or wider without such a column beside it is knit plain." in [n.text for n in text.notes]
        ) == said
