"""Charts in a source: every symbol is a cell with a place of its own, and a chart written anew is the same drawing."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.source.source_trees import symbols
from walewright import source
from walewright.source import syntax as s

DRAWN = """\ufeff# Maße
chart lozenge
    key O  hole
    key / two from left   # leans right
    |. . O / .|  # the top; | no cell
      # between
    |  ..O/.|
    | 1 ( \\ é = |
    repeat 4 stitches , after 1 stitch
    colours with floats
"""

TIDY = """# Maße

chart lozenge
    key O hole
    key / two from left  # leans right
    | . . O / . |  # the top; | no cell
    # between
    | . . O / . |
    | 1 ( \\ é = |
    repeat 4 stitches, after 1 stitch
    colours with floats
"""


def rows(tree: s.Tree) -> tuple[s.ChartRow, ...]:
    return tuple(
        row for chart in tree.statements if isinstance(chart, s.ChartBlock) for row in chart.body if isinstance(row, s.ChartRow)
    )


def test_a_chart_is_kept_as_it_is_drawn() -> None:
    tree, told = source.read("", DRAWN)
    assert told == ()
    assert source.tidy(tree) == TIDY
    assert source.read("", TIDY) == (tree, ())


@pytest.mark.parametrize("ending", ["\n", "\r\n"])
def test_every_cell_has_its_place_in_the_file(ending: str) -> None:
    text = DRAWN.replace("\n", ending)
    tree, told = source.read("f.wale", text)
    assert told == ()
    assert len(rows(tree)) == 3
    for row in rows(tree):
        assert tuple(text[place.start : place.end] for place in row.places) == row.cells
        assert {place.file for place in row.places} == {"f.wale"}
        assert row.span.start < row.places[0].start
        assert row.places[-1].end < row.span.end


def test_equal_rows_have_places_of_their_own() -> None:
    tree, _ = source.read("", "chart c\n    | . O |\n    | . O |\n")
    above, below = rows(tree)
    assert above == below
    assert [below.places[n].start - above.places[n].start for n in (0, 1)] == [len("    | . O |\n")] * 2


@given(st.lists(st.tuples(symbols, st.sampled_from(("", " ", "  ", "\t"))), min_size=1, max_size=60))
def test_a_row_is_its_symbols_whatever_the_blanks(drawn: list[tuple[str, str]]) -> None:
    tree, told = source.read("", "chart c\n    |" + "".join(blank + symbol for symbol, blank in drawn) + "|")
    assert told == ()
    assert rows(tree)[0].cells == tuple(symbol for symbol, _ in drawn)


def test_a_row_as_wide_as_any_bed_reads() -> None:
    """Brackets in it are symbols, however many."""
    tree, told = source.read("", f"chart c\n    | {'( ' * 200}|")
    assert told == ()
    assert len(rows(tree)[0].cells) == 200


@pytest.mark.parametrize("row", ["| . O", ". O |", "| . | O |", "|", "| |", '| . "O" |', "| . O | |", "| # |"])
def test_a_broken_row_is_one_report_and_one_broken_line(row: str) -> None:
    tree, told = source.read("", f"chart c\n    key O hole\n    | . O |\n    {row}\n    | . . |\n")
    assert len(told) == 1, told
    chart = tree.statements[0]
    assert isinstance(chart, s.ChartBlock)
    assert [type(line) for line in chart.body] == [s.ChartKey, s.ChartRow, s.Broken, s.ChartRow]


def test_a_row_at_the_margin_belongs_to_its_chart() -> None:
    tree, told = source.read("", "chart c\n    key O hole\n|O.|\n")
    assert [d.code for d in told] == ["wrong-indent"]
    assert len(rows(tree)) == 1


def test_a_chart_in_a_fabric_opens_no_block() -> None:
    tree, told = source.read("", "fabric f\n    chart c in wool at tension 5\n    right side purl\n")
    assert told == ()
    assert tree.statements == (s.FabricBlock("f", (s.Stitch("chart", "wool", "5", chart="c"), s.RightSide("purl"))),)


def test_a_misspelt_chart_opens_its_block() -> None:
    tree, told = source.read("", "chrat c\n    key O hole\n    | . O |\n    | . O\n")
    assert [d.code for d in told] == ["unreadable-line", "unreadable-line"]
    assert all(isinstance(line, s.Broken) for line in tree.statements)
