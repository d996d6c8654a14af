"""Charts on paper: cut into sheets, drawn whole, told apart in black and white, and laid on the bed."""

from __future__ import annotations

import itertools
import re
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from tests.whole.shipped_once import GARMENTS, compiled, source
from walewright.counted import model as s
from walewright.design import model as d
from walewright.figures import chart_drawing, symbols, yarns
from walewright.figures.chart_sheets import LEAST, OVERLAP, ROOM, Cut, Window, cut, letter
from walewright.figures.model import Drawing
from walewright.guide.english import LANGUAGE
from walewright.guide.english.drawings import DRAWINGS
from walewright.proof import model as p
from walewright.sheet import ProvenPattern, chart_places, html
from walewright.sheet.charts import charts
from walewright.sheet.hand_tools import moved_together
from walewright.sheet.lengths import bobbins, floats
from walewright.write import model as w

Make = Callable[..., Any]

ORIGIN = d.Origin("by hand")


def key(symbol: str, kind: str, yarn: str = "", cross: int = 0, hung_first: str = "") -> d.CellKey:
    return d.CellKey(symbol, d.Cell(kind, yarn, cross, hung_first), ORIGIN)


def chart(
    rows: tuple[str, ...], *keys: d.CellKey, before: int = 0, repeat: int = 0, after: int = 0, picture: bool = False
) -> d.Chart:
    """`rows` as drawn in a source: the last one is knitted first."""
    return d.Chart("trial", tuple(reversed(rows)), (key(".", "knit"), *keys), before, repeat, after, picture, ORIGIN)


LACE = chart(
    ("..........", "./O....O\\.", "..........", "...OAa.3.."),
    key("O", "hole"),
    key("/", "two from right"),
    key("\\", "two from left"),
    key("A", "from left"),
    key("a", "two from left"),
    key("3", "three"),
    before=1,
    repeat=8,
    after=1,
)

ISLAND = chart(tuple(".N" * 50 if row % 3 else "G" * 100 for row in range(200)), key("N", "knit", "navy"), key("G", "knit", "gold"))


def with_charts(made: Any, *found: d.Chart, lies: dict[str, tuple[s.SizedChart, ...]]) -> Any:
    """The pattern with charts in its design, lying so on its pieces in every size; each chart is a fabric too."""
    fabrics = tuple(replace(made.design.fabrics[0], name=c.name, stitch="chart", chart=c.name, edge=1) for c in found)
    colours = tuple(d.Yarn(n, n, 50, 200, ORIGIN) for n in ("navy", "gold"))
    design = replace(made.design, charts=found, fabrics=(*made.design.fabrics, *fabrics), yarns=(*made.design.yarns, *colours))
    sizes = tuple(replace(g, pieces=tuple(replace(q, charts=lies.get(q.name, ())) for q in g.pieces)) for g in made.counts.sizes)
    return replace(made, design=design, counts=replace(made.counts, sizes=sizes))


def lying(
    first: int, last: int, start: int, fabric: str = "trial", repeats: int = 3, rows: tuple[int, int] = (0, 40)
) -> s.SizedChart:
    return s.SizedChart("trial", fabric, "whole", rows[0], rows[1], first, last, 1, start, repeats, ORIGIN)


# ----------------------------------------------------------------- sheets


@pytest.mark.parametrize(
    ("columns", "rows", "ratio"), [(100, 200, 0.72), (100, 200, 1.0), (31, 58, 0.7), (300, 7, 1.2), (5, 900, 0.9)]
)
def test_every_cell_is_on_one_sheet_and_the_overlap_on_its_neighbour(columns: int, rows: int, ratio: float) -> None:
    made = cut(columns, rows, ratio)
    own = [(c, r) for sheet in made.sheets for c in range(sheet.left, sheet.right) for r in range(sheet.low, sheet.high)]
    assert sorted(own) == sorted(itertools.product(range(columns), range(rows)))
    for sheet in made.sheets:
        left, below = made.at(sheet.across - 1, sheet.up), made.at(sheet.across, sheet.up - 1)
        again = sheet.left - sheet.first, sheet.low - sheet.lowest
        assert again == (OVERLAP if left else 0, OVERLAP if below else 0)
        if left:
            assert left.right == sheet.left
            assert left.left <= sheet.first
        if below:
            assert below.high == sheet.low
            assert below.low <= sheet.lowest
        assert len(sheet.columns) * made.width <= ROOM[0] + 1e-6
        assert len(sheet.rows) * made.height <= ROOM[1] + 1e-6
    assert min(made.width, made.height) >= LEAST - 1e-6
    assert [sheet.letter for sheet in made.sheets] == [letter(i) for i in range(len(made.sheets))]


def test_a_chart_that_fits_is_one_sheet_as_large_as_may_be() -> None:
    made = cut(12, 16, 0.8)
    assert len(made.sheets) == 1
    assert (made.width, made.height) == pytest.approx((6.0, 4.8))


def test_sheets_say_what_is_on_which(pattern: Make) -> None:
    made = with_charts(pattern(1), ISLAND, lies={"front": (lying(-50, 49, -50, ""),)})
    (part,) = charts(LANGUAGE, ProvenPattern(made.design, made.counts, made.instructions, made.proof))
    assert len(part.sheets) > 4
    assert part.map is not None
    assert {t.text for t in part.map.letterings} == {letter(i) for i in range(len(part.sheets))}
    second = part.sheets[1]
    assert second.caption.startswith("Sheet B: columns ")
    assert "also on sheet A" in [t.text for t in second.drawing.letterings]
    assert any("continued on sheet" in t.text for t in part.sheets[0].drawing.letterings)
    assert [st.kind for st in part.sheets[0].drawing.strokes].count("veil") == 0
    assert "veil" in [st.kind for st in second.drawing.strokes]
    # A whole sheet is a few paths, not one a cell.
    assert all(len(sheet.drawing.strokes) < 14 for sheet in part.sheets)


def test_a_large_chart_in_colours_stays_small(pattern: Make) -> None:
    made = with_charts(pattern(1), ISLAND, lies={})
    whole = cut(ISLAND.width, len(ISLAND.rows), 0.75)
    drawn = [chart_drawing.sheet(LANGUAGE, made.design, ISLAND, whole, sheet, ()) for sheet in whole.sheets]
    cells = sum(len(sheet.rows) * len(sheet.columns) for sheet in whole.sheets)
    size = sum(len(st.data) for one in drawn for st in one.strokes) + sum(len(tile.data) for one in drawn for tile in one.tiles)
    # The worst there is: two rows of three with a yarn that changes at every needle.
    assert size / cells < 30
    for one in drawn:
        assert {st.colour for st in one.strokes if st.kind == "tiled"} == {tile.name for tile in one.tiles}
    names = [tile.name for one in drawn for tile in one.tiles]
    assert len(set(names)) == len(names) > 0


def squares(of: Drawing, colour: str) -> float:
    """Area filled with a colour, mm²."""
    found = 0.0
    for stroke in of.strokes:
        if stroke.kind == "fill" and stroke.colour == colour:
            for x0, y0, x1, y1 in re.findall(r"M([-\d.]+) ([-\d.]+)H([-\d.]+)V([-\d.]+)H", stroke.data):
                found += (float(x1) - float(x0)) * (float(y1) - float(y0))
    return found


def test_every_cell_of_a_colour_is_filled_once_and_again_in_overlaps(pattern: Make) -> None:
    made = with_charts(pattern(1), ISLAND, lies={})
    whole = cut(ISLAND.width, len(ISLAND.rows), 0.75)
    for symbol, name in (("N", "navy"), ("G", "gold")):
        shade = yarns.colour(made.design, name)
        total = sum(squares(chart_drawing.sheet(LANGUAGE, made.design, ISLAND, whole, sheet, ()), shade) for sheet in whole.sheets)
        shown = sum(ISLAND.rows[r][c] == symbol for sheet in whole.sheets for r in sheet.rows for c in sheet.columns)
        assert shown > sum(row.count(symbol) for row in ISLAND.rows)
        assert total / (whole.width * whole.height) == pytest.approx(shown, rel=0.01)


# ----------------------------------------------------------------- symbols


def test_each_kind_has_its_own_symbol() -> None:
    kinds = [k.removeprefix("cell/") for k in DRAWINGS if k.startswith("cell/")]
    kinds = [k for k in kinds if k not in ("knit", "tuck", "cross")]
    drawn = [symbols.symbol(k, 0, 0, 4, 3) for k in kinds]
    drawn += [symbols.tuck(0, 0, 4, 6)] + [
        symbols.cross(0, 0, 4, 3, d.Cell("cross", "", k, side)) for k in (1, 2) for side in ("left", "right")
    ]
    assert all(drawn)
    assert len(set(drawn)) == len(drawn)
    assert symbols.symbol("knit", 0, 0, 4, 3) == ""


def test_slants_lean_the_way_the_loop_goes() -> None:
    (x0, y0), (x1, y1) = re.findall(r"([\d.]+) ([\d.]+)", symbols.symbol("from left", 0, 0, 10, 10))
    assert float(x0) < float(x1)
    assert float(y0) > float(y1)
    (x0, y0), (x1, y1) = re.findall(r"([\d.]+) ([\d.]+)", symbols.symbol("from right", 0, 0, 10, 10))
    assert float(x0) > float(x1)
    assert float(y0) > float(y1)


def test_a_tuck_spans_the_rows_of_its_run_and_a_cross_its_cells() -> None:
    made = chart((".t", "tt", "tt", "..", "xx"), key("t", "tuck"), key("x", "cross", cross=1, hung_first="left"))
    whole = cut(2, 5, 1.0)
    strokes = chart_drawing.symbol_strokes(made, whole, whole.sheets[0])
    # One cross and two runs, of two and of three rows.
    assert len(strokes) == 3
    heights = []
    for data in strokes[1:]:
        ys = [float(y) for y in re.findall(r"[ML][\d.]+ ([\d.]+)", data)]
        heights.append(max(ys) - min(ys))
    assert sorted(round((h + 0.58 * whole.width) / whole.height) for h in heights) == [2, 3]


@pytest.mark.parametrize(("k", "lines"), [(1, 1), (2, 2), (3, 3), (4, 3)])
@pytest.mark.parametrize("first", ["left", "right"])
def test_of_a_cross_the_band_hung_first_is_unbroken(k: int, lines: int, first: str) -> None:
    drawn = re.findall(r"M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)", symbols.cross(0, 0, 4, 4, d.Cell("cross", "", k, first)))
    strokes = [(float(a), float(b), float(c), float(e)) for a, b, c, e in drawn]
    whole = [(x0, x1) for x0, y0, x1, y1 in strokes if abs(y1 - y0) > 3]
    assert len(whole) == lines
    assert all((x1 > x0) == (first == "left") and abs(x1 - x0) == pytest.approx(4 * k) for x0, x1 in whole)
    broken = [(x0, x1) for x0, y0, x1, y1 in strokes if abs(y1 - y0) <= 3]
    assert broken
    assert all((x1 > x0) != (first == "left") for x0, x1 in broken)


def test_a_tuck_cut_by_the_border_of_a_sheet_is_open_there() -> None:
    made = chart(("..", "t.", "t.", "t.", ".."), key("t", "tuck"))
    lower, upper = (Window("A", 0, 0, 0, 2, low, high, 0, 0) for low, high in ((0, 3), (3, 5)))
    whole = Cut(4.0, 4.0, (lower, upper))
    (below,) = chart_drawing.symbol_strokes(made, whole, lower)
    (above,) = chart_drawing.symbol_strokes(made, whole, upper)
    # Only the upper end has its arch; at the border the legs reach the line.
    assert ("a" in below, "a" in above) == (False, True)
    assert "L0.8 0" in below
    assert above.startswith("M0.8 8L")


def test_yarns_differ_without_colour() -> None:
    marks = [yarns.hatch(i, 0, 0, 4, 3) for i in range(16)]
    assert len(set(marks)) == 16
    assert yarns.hatch_pen("#101820") == "light"
    assert yarns.hatch_pen("#f0eadc") == "mark"


def test_the_palette_differs_in_lightness_from_neighbour_to_neighbour() -> None:
    shades = [yarns.lightness(c) for c in yarns.PALETTE]
    assert all(abs(a - b) > 0.15 for a, b in itertools.pairwise(shades))


# ----------------------------------------------------------------- the page


def lace_pattern(pattern: Make) -> Any:
    made = with_charts(pattern(2), LACE, lies={"back": (lying(-27, 26, -26),), "front": (lying(-27, 26, -26),)})
    text = w.ChartText(
        "trial",
        "Chart trial",
        LACE.rows,
        1,
        8,
        1,
        False,
        (("O", "leave the needle empty"),),
        (w.ChartNote(w.NoteKind.WHEN, "A note."),),
    )
    sections = [
        replace(
            sec, paragraphs=(w.Paragraph("", "", (w.Sentence((w.Run("Work it."),), (0, 1), "", "", "", False, ("StartChart",)),)),)
        )
        if sec.name == "back"
        else sec
        for sec in made.instructions.sections
    ]
    pieces = tuple(replace(q, fabric="trial") if q.name == "back" else q for q in made.design.pieces)
    instructions = replace(made.instructions, charts=(text,), sections=tuple(sections))
    return replace(made, instructions=instructions, design=replace(made.design, pieces=pieces))


def test_the_key_has_every_symbol_that_occurs_with_words(pattern: Make) -> None:
    made = lace_pattern(pattern)
    (part,) = charts(LANGUAGE, ProvenPattern(made.design, made.counts, made.instructions, made.proof))
    rows = {k.written: k for k in part.key}
    assert set(rows) == set("".join(LACE.rows))
    assert (rows["O"].name, rows["O"].what) == ("Eyelet", "leave the needle empty")
    page = html(made.sheet())
    assert 'id="chart-trial"' in page
    for words in ("the purl side faces you", "faces away from you at the machine", "A note."):
        assert words in page
    # Whose symbols they are is for docs/language.md to say.
    assert "JIS" not in page
    # The piece refers to the chart and to the technique, which is told once.
    back = page.split('id="part-back"')[1].split("</section>")[0]
    assert 'href="#chart-trial"' in back
    assert 'href="#how-eyelet-and-lace"' in back
    assert page.count('id="how-eyelet-and-lace"') == 1


def test_where_the_chart_lies(pattern: Make) -> None:
    made = lace_pattern(pattern)
    (part,) = charts(LANGUAGE, ProvenPattern(made.design, made.counts, made.instructions, made.proof))
    assert part.places is not None
    # Back and front are alike and share a table.
    (group,) = part.places.groups
    assert group.title == "Back and front"
    told = {r.label: r.cells[0].text for r in group.rows}
    assert told["First needle"] == "L 27"
    assert told["Last needle"] == "R 27"
    assert told["Repeat’s first column"] == "L 26"
    assert told["Whole repeats"] == "3"
    # From L 26 on: R 1 is 26 columns further, and 26 = 3 * 8 + 2.
    assert told["At the centre mark"] == "3 | 4"


@pytest.mark.parametrize(
    ("first", "start", "column"), [(-27, -26, 1 + 2), (-25, -24, 1 + 0), (-20, -19, 1 + 3), (0, 1, 0), (-30, -29, 1 + 5)]
)
def test_the_column_right_of_the_centre_mark(first: int, start: int, column: int) -> None:
    sized = s.SizedChart("trial", "trial", "whole", 0, 8, first, first + 60, 1, start, 5, ORIGIN)
    assert chart_places.column_right_of_centre(LACE, sized) == column


def test_the_border_at_the_right_is_found_too() -> None:
    sized = s.SizedChart("trial", "trial", "whole", 0, 8, -17, 0, 1, -16, 2, ORIGIN)
    assert chart_places.column_right_of_centre(LACE, sized) == 9


def test_a_motif_is_marked_at_its_own_middle(pattern: Make) -> None:
    motif = chart(("..", ".O", "O/"), key("O", "hole"), key("/", "two from right"))
    made = with_charts(pattern(1), motif, lies={"front": (lying(10, 11, 10, ""),)})
    found = chart_places.uses(made.design, made.counts, motif)
    assert chart_places.centres(LANGUAGE, motif, found) == (chart_drawing.Centre(1.0, "middle"),)
    table = chart_places.places(LANGUAGE, motif, found, ("XS",))
    assert table is not None
    assert {r.label: r.cells[0].text for r in table.groups[0].rows}["Middle at"] == "R 11 | R 12"


def test_no_chart_no_page(pattern: Make) -> None:
    made = with_charts(pattern(1), LACE, lies={})
    assert charts(LANGUAGE, ProvenPattern(made.design, made.counts, made.instructions, made.proof)) == ()


def test_tools_with_as_many_prongs_as_stitches_are_moved_together() -> None:
    assert moved_together(LACE) == {1, 2}
    # A run over the border of two repeats.
    over = chart(("a..OAA",), key("O", "hole"), key("A", "from left"), key("a", "two from left"), repeat=6)
    assert moved_together(over) == {3, 1}


def test_bobbins_and_floats_are_listed(pattern: Make) -> None:
    made = with_charts(pattern(2), ISLAND, lies={})
    ends = tuple(p.BobbinUse("front", "trial", "navy", n, "L 3", 10 * n, 2.5 * n, "R 2", 40, ((15, 16),) * (2 - n)) for n in (1, 2))
    long = p.FloatFound("front", "gold", 34, "L 9", "L 3", 7, 5.4)
    sizes = (
        replace(made.proof.sizes[0], bobbins=ends, floats=(long, replace(long, row=36))),
        replace(made.proof.sizes[1], bobbins=ends[:1]),
    )
    proof = replace(made.proof, sizes=sizes)
    summed, two, one = bobbins(LANGUAGE, made.design, proof)
    hung = ("1", "Navy", "L 3 to R 2", "RC 9", "to RC 40; it hangs from RC 14 to 16 and is taken up again", "2.5")
    assert two.rows == (hung, ("2", "Navy", "L 3 to R 2", "RC 19", "to RC 40", "5.0"))
    assert one.rows == (hung,)
    assert [table.caption for table in (two, one)] == [
        f"Bobbins for the front in {size}: what to wind on each, tails included" for size in made.design.sizes
    ]
    assert summed.rows == (("Navy", "2 (1)", "7.5", "2.5"),)
    assert len(summed.heads) == len(summed.rows[0])
    (single,) = bobbins(LANGUAGE, made.design, replace(proof, sizes=(sizes[1], sizes[1])))
    assert len(single.rows) == 1, "one bobbin needs no sum"
    told = floats(LANGUAGE, made.design, proof)
    assert told is not None
    assert told.rows == (("Front (XS)", "Gold", "33, 35", "L 9 to L 3: 7 stitches, 5.4 cm"),)
    assert floats(LANGUAGE, made.design, made.proof) is None
    page = html(replace(made, proof=proof).sheet())
    assert "Bobbins for the front" in page
    assert "L 9 to L 3: 7 stitches" in page


def test_sizes_whose_bobbins_are_of_other_blocks_share_no_line(pattern: Make) -> None:
    """Both sizes have two bobbins; the second is of another yarn in each, and one of gold is wound in one size alone."""
    made = with_charts(pattern(2), ISLAND, lies={})
    wound = [("navy", 10, 4.0), ("gold", 12, 1.0)], [("navy", 10, 5.0), ("navy", 30, 6.0)]
    sizes = tuple(
        replace(
            size, bobbins=tuple(p.BobbinUse("front", "trial", yarn, n, "L 3", row, m, "R 2", 40) for n, (yarn, row, m) in of_size)
        )
        for size, of_size in zip(made.proof.sizes, (list(enumerate(w, start=1)) for w in wound), strict=True)
    )
    summed, first, second = bobbins(LANGUAGE, made.design, replace(made.proof, sizes=sizes))
    assert [(row[1], row[-1]) for row in first.rows] == [("Navy", "4.0"), ("Gold", "1.0")]
    assert [(row[1], row[-1]) for row in second.rows] == [("Navy", "5.0"), ("Navy", "6.0")]
    assert summed.rows == (("Navy", "1 (2)", "4.0", "11.0"), ("Gold", "1 (0)", "1.0", "–"))
    alike = tuple(replace(size, bobbins=sizes[0].bobbins) for size in sizes)
    (one,) = bobbins(LANGUAGE, made.design, replace(made.proof, sizes=alike))
    assert [row[-2:] for row in one.rows] == [("4.0", "4.0"), ("1.0", "1.0")]


@pytest.mark.parametrize(
    ("first", "last", "middle"),
    [(-3, 3, "R 1"), (-4, 2, "L 1"), (-3, 2, "L 1 | R 1"), (4, 5, "R 5 | R 6"), (-6, -5, "L 6 | L 5"), (2, 2, "R 3")],
)
def test_the_middle_of_a_motif_is_a_needle_or_between_two(first: int, last: int, middle: str) -> None:
    assert chart_places._middle(lying(first, last, 0)) == middle


@pytest.mark.parametrize("name", [name for name in GARMENTS if "\nchart " in source(name)])
def test_where_charts_lie_agrees_with_the_counts(name: str) -> None:
    """In every size a motif takes as many rows as it is drawn with, and a charted fabric goes on as long as it is counted, or
    until the piece parts where it lies."""
    outcome = compiled(name)
    assert outcome.design is not None
    assert outcome.counts is not None
    for chart_ in outcome.design.charts:
        found = chart_places.uses(outcome.design, outcome.counts, chart_)
        for use in found:
            table = chart_places.places(LANGUAGE, chart_, (use,), outcome.design.sizes)
            assert table is not None
            begins, ends = (row.cells for row in table.groups[0].rows[:2])
            for at, begin, end in zip(use.sized, begins, ends, strict=True):
                if at is None:
                    assert begin.text == end.text == "–"
                    continue
                piece, lies = at
                assert int(begin.text) == piece.counter(lies.from_row)
                parted = any(lies.from_row < o.row < lies.to_row for o in piece.openings)
                assert parted or int(end.text) == piece.counter(lies.to_row)
                assert parted or chart_.repeat or int(end.text) - int(begin.text) == len(chart_.rows)
