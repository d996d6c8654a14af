"""A bench copy on paper: what stays on one page, what the heads say, and how charts and drawings are drawn there."""

from __future__ import annotations

import io
import re
from collections.abc import Callable
from dataclasses import replace
from functools import cache
from itertools import pairwise
from typing import Any

import pypdf
import pytest
from hypothesis import given
from hypothesis import strategies as hs

from tests.sheet.test_charts import chart, key, lying, with_charts
from tests.whole.shipped_once import SHIPPED, source
from walewright import sheet
from walewright.bench_copies import bench_copy
from walewright.design import Changes
from walewright.figures import chart_drawing, symbols
from walewright.figures.chart_sheets import AT_BENCH, LARGE, Cut, Window, at_bench, large
from walewright.guide.english import LANGUAGE
from walewright.pipeline import Outcome, compile
from walewright.sheet import chart_places
from walewright.sheet.bench import BenchDocument, BenchRow
from walewright.sheet.charts import charts_at_bench
from walewright.sheet.proven import ProvenPattern

Make = Callable[..., Any]


@cache
def document(name: str, size: str) -> BenchDocument:
    made: Outcome = compile(source(name), f"{name}.wale", SHIPPED, Changes(sizes=(size,)))
    copy, faults = bench_copy(made, 0)
    assert faults == ()
    assert copy is not None
    proven = ProvenPattern(*made.result(), made.fit, glued=made.glued)
    return sheet.compose_bench(LANGUAGE, replace(proven, instructions=copy.instructions), made.plans[0], sheet.PageOptions())


@cache
def on_pages(name: str, size: str) -> tuple[str, ...]:
    """The words of each page."""
    made = document(name, size)
    made = sheet.with_heads(LANGUAGE, made, sheet.anchors_of_pages(sheet.bench_html(made)))
    read = pypdf.PdfReader(io.BytesIO(sheet.on_paper(sheet.bench_html(made), made).data))
    return tuple(page.extract_text() for page in read.pages)


def rows(made: BenchDocument) -> list[BenchRow]:
    return [row for of in made.sheets for stage in of.stages for row in stage.rows]


def said(row: BenchRow) -> str:
    return " ".join("".join(run.text for run in phrase) for phrase in row.what)


# ----------------------------------------------------------------- breaks


def test_a_turn_is_held_or_returned_and_wrapped() -> None:
    made = rows(document("driftline", "toddler_shoe_5"))
    wraps = [(above, row) for above, row in pairwise(made) if said(row).startswith("Wrap")]
    assert len(wraps) > 20
    for above, row in wraps:
        assert row.kept == bool(re.match("At the .* hold|Return the", said(above)))
        assert not above.kept or said(above).startswith("Wrap")


def test_two_crosses_of_a_row_are_kept_together_and_those_of_two_rows_are_not() -> None:
    made = rows(document("hawser", "S"))
    crosses = [(above, row) for above, row in pairwise(made) if "Cross " in said(row)]
    assert {row.kept for _, row in crosses} == {True, False}
    assert all(row.kept == (row.again and "Cross " in said(above)) for above, row in crosses)


def test_the_last_line_of_a_sheet_is_not_alone() -> None:
    for of in document("driftline", "toddler_shoe_5").sheets:
        steps = [row for row in of.stages[-1].rows if not row.note]
        assert steps[-1].kept if len(steps) > 1 else of.stages[-1].kept
        assert all(row.kept for row in of.stages[-1].rows if row.note)


@pytest.mark.parametrize(("name", "size"), [("driftline", "toddler_shoe_5"), ("hawser", "S")])
def test_no_page_begins_with_the_second_half_of_a_turn(name: str, size: str) -> None:
    pages = [" ".join(page.split()) for page in on_pages(name, size)]
    first = [found[1] for page in pages if (found := re.search(r"In work(?: Held)?(?: Waiting)? (.{0,60})", page))]
    assert len(first) > 6
    kept = [said(row) for row in rows(document(name, size)) if row.kept and row.what]
    assert kept
    for begun in first:
        words = re.sub(r"^(\d+ )?(\d{3} )?(left|right) ", "", begun)
        assert not words.startswith("Wrap")
        assert not re.match(r"Drop \d+ rows on R", words)


# ----------------------------------------------------------------- heads


def test_a_head_says_what_its_page_goes_on_with() -> None:
    made = document("driftline", "toddler_shoe_5")
    sock, cuff = made.sheets
    (joined,) = cuff.joined
    pages = (
        (sock.anchor,),
        (sock.anchor,),
        (cuff.anchor, joined.anchor),
        (joined.anchor, "abbreviations", "pinned"),
        ("pinned",),
        (),
    )
    parts, numbers = zip(*sheet.with_heads(LANGUAGE, made, pages).heads, strict=True)
    title = made.title
    assert [part.removeprefix(title) for part in parts] == [
        *(": Sock (knit 2)", ": Sock (knit 2)", ": Sock cuff (knit 2)", ": Making up", ": Drawings and measurements", ""),
    ]
    assert numbers == ("tension 6 · 1 of 2", "tension 6 · 2 of 2", "tension 4", "2 of 2", "2 of 2", "")


def test_heads_are_those_of_what_stands_below_them() -> None:
    pages = on_pages("driftline", "toddler_shoe_5")
    assert len(pages) > 5
    for page in pages:
        head = page.split("\n", 1)[0]
        assert ("Making up" in head) <= ("In work" not in page)
        assert ("Drawings" in head) <= ("Abbreviations" not in page)


def test_a_head_is_one_line_and_counts_no_single_page() -> None:
    lines = [line.replace("\N{NO-BREAK SPACE}", " ") for page in on_pages("fairlead", "M") for line in page.split("\n")]
    assert lines.count("Fairlead, size M: Join the left shoulder of the back on the bed") == 1
    assert "1 of 1" not in lines
    assert not any(line.endswith("· 1 of 1") for line in lines)
    assert {"Fairlead, size M: Back tension 5 · 1 of 3", "Fairlead, size M: Back welt tension 3"} <= {*lines}


@pytest.mark.parametrize(("name", "size"), [("fairlead", "M"), ("hawser", "S")])
def test_no_page_has_a_last_stage_and_nothing_else(name: str, size: str) -> None:
    for page in on_pages(name, size):
        below = " ".join(page.split()).partition("In work")[2]
        assert not re.match(r"( Held)?( Waiting)? Finish ", below), page


def test_a_column_without_a_figure_is_not_printed() -> None:
    made = document("fairlead", "M")
    counted = {sheet.title: sheet.counted for sheet in made.sheets}
    assert (counted["Front"], counted["Front welt"]) == ((True, True, True), (True, False, False))
    assert {sheet.counted for sheet in document("hawser", "S").sheets} >= {(True, False, False), (True, True, True)}
    html = sheet.bench_html(made)
    for of, table in zip((s for s in made.sheets if s.stages), html.split('<table class="bench')[1:], strict=True):
        table = table.partition("</table>")[0]
        (head,) = re.findall("<thead>(.*?)</thead>", table, re.DOTALL)
        columns = head.count("<th ")
        assert columns == 5 + sum(of.counted)
        for row in re.findall("<tr[ >].*?</tr>", table.partition("</thead>")[2], re.DOTALL):
            across = sum(int(n) for n in re.findall(r'colspan="(\d+)"', row))
            assert across + len(re.findall("<t[dh][ >]", row)) - row.count("colspan") == columns
        assert ("Held" in head) == any(row.counts[1] != "\N{MIDDLE DOT}" for stage in of.stages for row in stage.rows if row.counts)


def test_abbreviations_stand_together_before_the_drawings() -> None:
    html = sheet.bench_html(document("driftline", "toddler_shoe_5"))
    assert html.index('id="abbreviations"') < html.index('id="pinned"')
    pages = [page for page in on_pages("driftline", "toddler_shoe_5") if "stitch(es)" in page]
    assert all("needle left of the centre mark" in page for page in pages)


# ----------------------------------------------------------------- drawings


def test_each_piece_has_its_measures() -> None:
    made = document("hawser", "S")
    assert [piece.title for piece in made.pinned] == ["back", "front", "sleeve"]
    for piece in made.pinned:
        figures = [one.text for one in piece.drawing.letterings]
        assert sum(" cm" in text for text in figures) > 3 or piece.figures
        assert 1.2 <= piece.drawing.scale <= 1.35
    back, front, _ = (piece.drawing.width * piece.drawing.scale for piece in made.pinned)
    assert back + front < 180, "side by side"
    lettered = document("driftline", "toddler_shoe_5").pinned[0]
    assert len(lettered.figures) == len({letter for letter, _, _ in lettered.figures}) > 5
    assert all(much.endswith(" cm") for _, _, much in lettered.figures)


# ----------------------------------------------------------------- charts


@given(hs.integers(1, 120), hs.integers(1, 160), hs.floats(0.5, 1.5))
def test_a_chart_that_can_be_is_not_cut(columns: int, tall: int, ratio: float) -> None:
    made, usual = at_bench(columns, tall, ratio), large(columns, tall, ratio)
    assert len(made.sheets) in (1, len(usual.sheets))
    cell = min(made.width, made.height) * made.scale
    assert cell >= (AT_BENCH if len(made.sheets) < len(usual.sheets) else LARGE) - 1e-9
    assert (
        len(made.sheets) == 1
        or min(145 / columns, 182 / (tall * made.height / made.width)) * min(1, made.height / made.width) < AT_BENCH
    )
    for of in made.sheets:
        assert len(of.columns) * made.width * made.scale <= 145 + 1e-6
        assert len(of.rows) * made.height * made.scale <= 182 + 1e-6


def test_eighteen_columns_are_one_sheet_headed_by_their_needles() -> None:
    (ropes,) = document("hawser", "S").charts
    (only,) = ropes.sheets
    assert (only.caption, ropes.cut_note) == ("", "")
    above = [one for one in only.drawing.letterings if one.kind == "count" and one.y < 0]
    assert [one.text for one in sorted(above, key=lambda one: one.x)] == [
        *("L 9", "8", "7", "6", "5", "4", "3", "2", "1", "1", "2", "3", "4", "5", "6", "7", "8", "R 9"),
    ]
    (mark,) = (one for one in only.drawing.letterings if one.text == "centre mark")
    ones = sorted(one.x for one in above if one.text == "1")
    assert ones[0] < mark.x - 1.7 < ones[1]


def test_low_rows_have_every_second_number(pattern: Make) -> None:
    tall = chart(("." * 26,) * 6)
    design = with_charts(pattern(1), tall, lies={}).design
    for height, numbers in ((1.9, ["2", "4", "6"]), (2.1, ["1", "2", "3", "4", "5", "6"])):
        (window,) = (
            whole := Cut(2.4, height, (Window("A", 0, 0, left=0, right=26, low=0, high=6, again_left=0, again_low=0),))
        ).sheets
        drawn = chart_drawing.sheet(LANGUAGE, design, tall, whole, window, ())
        assert [one.text for one in drawn.letterings if one.kind == "count" and one.anchor == "end"] == numbers


PLAIN = chart(("....", "...."), repeat=4)


@pytest.mark.parametrize(
    ("places", "slot"),
    [
        (((-2, 1, -2, 1),), -2),
        (((-2, 1, -2, 1), (-2, 1, -2, 1)), -2),
        (((-2, 1, -2, 1), (-3, 0, -3, 1)), None),
        (((-4, 3, -4, 2),), None),
        (((-2, 1, -1, 1),), None),
    ],
)
def test_needles_head_columns_that_are_knitted_by_them_alone(
    pattern: Make, places: tuple[tuple[int, int, int, int], ...], slot: int | None
) -> None:
    lies = {"front": tuple(lying(a, z, start, repeats=n, rows=(10 * i, 10 * i + 8)) for i, (a, z, start, n) in enumerate(places))}
    made = with_charts(pattern(1), PLAIN, lies=lies)
    found = chart_places.uses(made.design, made.counts, PLAIN)
    assert chart_places.fixed(PLAIN, found) == slot
    (part,) = charts_at_bench(LANGUAGE, ProvenPattern(made.design, made.counts, made.instructions, made.proof))
    above = [one.text for one in part.sheets[0].drawing.letterings if one.kind == "count" and one.y < 0]
    assert above == (["L 2", "1", "1", "R 2"] if slot is not None else ["1", "2", "3", "4"])


def test_a_cross_ends_with_the_cells_of_its_sheet() -> None:
    made = chart(("xxxxxx",), key("x", "cross", cross=3, hung_first="left"))
    left, right = (
        Window(name, n, 0, left=3 * n, right=3 * n + 3, low=0, high=1, again_left=0, again_low=0) for n, name in enumerate("AB")
    )
    whole = Cut(4.0, 4.0, (left, right))
    for window in (left, right):
        (data,) = chart_drawing.symbol_strokes(made, whole, window)
        across = [float(x) for x in re.findall(r"[ML](-?[\d.]+) ", data)]
        assert (min(across), max(across)) == pytest.approx((0, 12), abs=1.01)
        assert min(across) >= 0
        assert max(across) <= 12
    cell = made.key[-1].cell
    assert symbols.cross(0, 0, 4, 4, cell, (0, 24)) == symbols.cross(0, 0, 4, 4, cell)
