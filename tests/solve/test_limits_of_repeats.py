"""Whole repeats, edge stitches and edgings at their limits, and where charts lie; against every whole number tried."""

from __future__ import annotations

from math import floor, lcm

import pytest

from tests.solve.tiny import Number, least, tiny, width, width_at
from walewright.counted.model import SizedChart
from walewright.report.english import in_english


def chart(name: str, columns: int, fit: str, before: int = 0, after: int = 0) -> str:
    """A chart of so many columns a repeat, and a fabric in it that lies so."""
    row = "| " + ". " * (before + columns + after) + "|\n"
    beside = f", after {before} stitches" if before else ""
    marked = "| " + ". " * before + "- " + ". " * (columns - 1 + after) + "|\n"
    return f"""\
chart {name}_drawn
    key . knit
    key - purl
    {marked}    {row}    repeat {columns} stitches{beside}
fabric {name}
    chart {name}_drawn in rope at tension 5, {fit}
    swatch 100 stitches by 100 rows = 100 cm by 100 cm
"""


def piece(fabric: str, wide: float, more: str = "", lines: str = "") -> str:
    made = f"piece back in {fabric}{more}\n    levels hem 0 cm, low 8 cm, top 30 cm\n    start {wide:g} cm wide with e-wrap\n"
    return made + lines + "    end cast off\n"


@pytest.mark.parametrize("wide", [10, 11, 12.3, 14.6, 15, 17.4])
@pytest.mark.parametrize(
    ("columns", "edge", "before", "after"),
    [(3, 0, 0, 0), (3, 2, 0, 1), (4, 0, 0, 0), (4, 1, 1, 1), (5, 2, 0, 1), (6, 1, 2, 0), (7, 0, 0, 1)],
)
@pytest.mark.parametrize("more", ["", ", centre stitch"])
def test_whole_repeats_between_edge_stitches(wide: float, columns: int, edge: int, before: int, after: int, more: str) -> None:
    """Half a repeat off at the most, a whole one of an odd repeat, two stitches at the least; one repeat at the least."""
    fit = f"whole repeats, {edge} edge stitches" if edge != 1 else "whole repeats, 1 edge stitch"
    fit = "whole repeats" if not edge else fit
    made = tiny(chart("wavy", columns, fit, before, after) + piece("wavy", wide, more))
    odd = int(bool(more))
    within = max(2.0, lcm(columns, 2) / 2)
    rest = 2 * edge + before + after
    # A centre stitch has no tie to be decided: the number is counted by itself.
    numbers = {"start": Number(wide, step=2, rest=odd, within=within, near=1.0 if within == 2 else None)}
    best = least(numbers, lambda c: (c["start"] - rest) % columns == 0 and c["start"] - rest >= columns)
    if best is None:
        assert made.errors
        assert {d.code for d in made.errors} <= {"counts-conflict", "repeat-wider-than-piece", "repeat-parity"}
        return
    start = made.piece.start
    assert start in {c["start"] for c in best.choices} or (odd and abs(start - wide) == abs(best.choices[0]["start"] - wide))
    if not odd:
        assert made.cost == pytest.approx(best.cost, abs=2e-6)
    (found,) = made.piece.charts
    assert found.first == -(start // 2) + edge
    assert found.last == start - start // 2 - 1 - edge
    assert found.start == found.first + before
    assert found.repeats == (start - rest) // columns


@pytest.mark.parametrize("wide", [9.0, 12.0, 15.0, 17.0])
def test_two_fabrics_on_one_width_have_half_of_their_least_common_multiple(wide: float) -> None:
    text = chart("wavy", 3, "whole repeats") + chart("steep", 4, "whole repeats")
    made = tiny(text + piece("wavy", wide, lines="    fabric steep from low to top\n"))
    best = least({"start": Number(wide, within=6.0)}, lambda c: c["start"] % 12 == 0)
    assert best is not None
    assert made.piece.start in {c["start"] for c in best.choices}


@pytest.mark.parametrize("wide", [13.0, 15.0, 17.4, 20.0])
def test_whole_repeats_that_begin_above_a_slope_choose_its_end(wide: float) -> None:
    lines = f"    edges slope to {wide:g} cm wide at low\n    fabric wavy from low to top\n"
    made = tiny(chart("wavy", 5, "whole repeats, 2 edge stitches") + piece("plain", 12, lines=lines))

    def holds(c: dict[str, int]) -> bool:
        # The written slope goes out, and half of ten stitches may be what is left of it the other way.
        n = (c["wide"] - c["start"]) // 2
        return (c["wide"] - 4) % 5 == 0 and c["low"] >= (2 * n + 2 if n > 0 else 1 - n)

    best = least({"start": width(12), "wide": Number(wide, within=5.0), "low": Number(8)}, holds)
    if best is None:
        assert made.error.code == "counts-conflict"
        assert made.line() == lines.splitlines()[0].strip()
        assert "it moves by one stitch once in 2 rows at most" in in_english(made.error).message
        return
    assert width_at(made.piece, "low") in {c["wide"] for c in best.choices}
    assert made.piece.start in {c["start"] for c in best.choices}


@pytest.mark.parametrize("columns", [3, 4, 5, 6])
@pytest.mark.parametrize("fit", ["centred", "balanced"])
@pytest.mark.parametrize("edge", [0, 2])
@pytest.mark.parametrize("wide", [6, 8, 14, 15])
def test_the_middle_of_a_repeat_or_the_border_of_two_lies_at_the_mark(columns: int, fit: str, edge: int, wide: int) -> None:
    """Of an even repeat the border in its middle, of an odd one its middle column, which is right of the mark."""
    stitches = f", {edge} edge stitches" if edge else ""
    more = ", centre stitch" if wide % 2 else ""
    made = tiny(chart("wavy", columns, fit + stitches) + piece("wavy", wide, more))
    if columns > wide - 2 * edge:
        assert made.error.code == "repeat-wider-than-piece"
        return
    (found,) = made.piece.charts
    begins = [slot for slot in range(-40, 40) if (slot + columns // 2 if fit == "centred" else slot) % columns == 0]
    whole = [slot for slot in begins if found.first <= slot and slot + columns - 1 <= found.last]
    assert (found.first, found.last) == (-(wide // 2) + edge, wide - wide // 2 - 1 - edge)
    assert found.start == (whole[0] if whole else -(columns // 2) if fit == "centred" else 0)


@pytest.mark.parametrize("side", ["left", "right"])
def test_a_piece_that_leans_takes_its_charts_along(side: str) -> None:
    lines = f"    {side} edge slope by 6 cm at top\n"
    made = tiny(chart("wavy", 4, "balanced, 2 edge stitches") + piece("wavy", 14, lines=lines), needles=20)
    (found,) = made.piece.charts
    off = made.piece.lean
    assert off == (-3 if side == "left" else 3)
    assert found.first == -7 - off + 2
    assert (found.start + off) % 4 == 0
    assert found.start == min(s for s in range(found.first, found.last) if (s + off) % 4 == 0)


# ----------------------------------------------------------------- panels and motifs


@pytest.mark.parametrize("wide", [3.0, 4.0, 5.4, 7.9])
@pytest.mark.parametrize("more", ["", ", centre stitch"])
@pytest.mark.parametrize("columns", [2, 3])
def test_a_panel_has_the_repeats_nearest_to_its_width(wide: float, more: str, columns: int) -> None:
    """In the middle, of the numbers beside it, one that is even or odd as the piece is; else half a needle to the right."""
    stitches = 21 if more else 20
    body = piece("plain", stitches, more, f"    fabric cable from hem to low, {wide:g} cm wide\n")
    made = tiny(chart("cable", columns, "centred").replace("tension 5", "tension 4").replace(", centred", "") + body)
    nearest = min(range(1, 9), key=lambda k: (abs(k * columns - wide), -k))
    beside = [k for k in (nearest - 1, nearest, nearest + 1) if k >= 1 and k * columns % 2 == stitches % 2]
    repeats = min(beside, key=lambda k: (abs(k * columns - wide), k), default=nearest)
    panel: SizedChart = made.piece.charts[0]
    assert panel.repeats == repeats
    middle = (stitches % 2) / 2
    assert panel.first == floor(middle - repeats * columns / 2 + 0.5)
    assert panel.last == panel.first + repeats * columns - 1


# ----------------------------------------------------------------- edgings


@pytest.mark.parametrize(("deep", "rows"), [(0.4, 2), (2.0, 2), (2.9, 2), (3.0, 4), (4.9, 4), (5.0, 6)])
@pytest.mark.parametrize("kind", ["", ", folded", ", rolled"])
def test_an_edging_has_the_nearest_even_number_of_rows(deep: float, rows: int, kind: str) -> None:
    """Two at the least; of two equally near the larger one."""
    way = "on waste yarn" if "folded" in kind else "with e-wrap"
    text = f"edging hem_edge in plain, {deep} cm deep{kind}, knitted first\n" + piece("plain", 10)
    made = tiny(text.replace("with e-wrap", f"{way}, with hem_edge"))
    assert made.piece.edging_rows == rows


@pytest.mark.parametrize("wide", [8.0, 9.0, 10.0, 11.0, 12.0, 13.0])
@pytest.mark.parametrize("more", ["", ", centre stitch"])
def test_a_mock_rib_of_two_and_one_begins_and_ends_with_two(wide: float, more: str) -> None:
    text = "edging hem_edge in plain, 4 cm deep, mock rib 2 by 1, knitted first\n" + piece("plain", wide, more)
    made = tiny(text.replace("with e-wrap", "on waste yarn, with hem_edge"))
    odd = int(bool(more))
    best = least({"start": Number(wide, rest=odd, within=3.0)}, lambda c: c["start"] % 3 == 2)
    assert best is not None
    assert abs(made.piece.start - wide) in {abs(c["start"] - wide) for c in best.choices}
    assert made.piece.start % 6 == (5 if odd else 2)
