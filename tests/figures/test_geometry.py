"""What drawings are made of: shapes that meet, cut and lie in one another, sheets of paper, pens, yarns and crossings."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as some

from tests.draws import draws
from tests.figures.surveyed import lines
from tests.figures.test_loops import plain, shown
from walewright.design import model as d
from walewright.figures import pens, yarns
from walewright.figures.cables import NEXT, cables
from walewright.figures.chart_sheets import LARGER, LEAST, MOST, OVERLAP, RATIO, ROOM, cut, large, letter
from walewright.figures.dimensions import Ruler, box_round, lanes, overlap
from walewright.figures.model import Lettering
from walewright.figures.shapes import inside, meet
from walewright.figures.worked import _ceiling, clipped

Point = tuple[float, float]


def box(x: float, y: float, wide: float, high: float) -> list[Point]:
    return [(x, y), (x + wide, y), (x + wide, y + high), (x, y + high)]


def area(shape: list[Point]) -> float:
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in pairwise([*shape, shape[0]])) / 2 if shape else 0.0


# ----------------------------------------------------------------- shapes

U = [(0, 0), (6, 0), (6, 4), (4, 4), (4, 1), (2, 1), (2, 4), (0, 4)]
"""A U: two uprights and what joins them below."""

whole = some.integers(-8, 8)
boxes = some.builds(box, whole, whole, some.integers(1, 6), some.integers(1, 6))


def test_what_lies_in_a_shape() -> None:
    within = {(x / 2, y / 2) for x in range(-2, 15) for y in range(-2, 11) if inside((x / 2 + 0.1, y / 2 + 0.1), U)}
    for x, y in ((x / 2, y / 2) for x in range(-2, 15) for y in range(-2, 11)):
        px, py = x + 0.1, y + 0.1
        in_it = 0 < px < 6 and 0 < py < 4 and not (2 < px < 4 and py > 1)
        assert ((x, y) in within) == in_it


@given(boxes, boxes)
@settings(max_examples=draws(300))
def test_two_boxes_meet_where_they_share_more_than_an_edge(one: list[Point], other: list[Point]) -> None:
    (a, b), (c, e) = one[0], one[2]
    (f, g), (h, k) = other[0], other[2]
    # Boxes that share sides have no corner within each other and no sides that cross: pieces do not lie so.
    assume(not {a, c} & {f, h} and not {b, e} & {g, k})
    shares = a < h and f < c and b < k and g < e
    assert meet(one, other) == shares
    assert meet(other, one) == shares
    assert overlap((a, b, c, e), (f, g, h, k)) == shares


def test_boxes_side_by_side_do_not_overlap() -> None:
    assert not overlap((0, 0, 1, 1), (1, 0, 2, 1))
    assert not overlap((0, 0, 1, 1), (0, 1, 1, 2))
    assert overlap((0, 0, 1, 1), (0.9, 0.9, 2, 2))


def test_shapes_that_cross_without_a_corner_in_each_other() -> None:
    assert meet(box(0, 2, 10, 2), box(4, 0, 2, 10))
    assert not meet(U, box(2.5, 2, 1, 5)), "it lies between the uprights"
    assert meet(U, box(2.5, 0.5, 1, 5))
    assert not meet(box(0, 0, 2, 2), box(3, 0, 2, 2))
    assert meet(box(0, 0, 2, 2), box(3, 0, 2, 2), air=2.0), "nearer than that"
    assert not meet(box(0, 0, 2, 2), box(3, 0, 2, 2), air=1.0)


@given(some.sampled_from([U, box(0, 0, 6, 4), [(0.0, 0.0), (6.0, 1.0), (2.0, 4.0)]]), some.floats(-1, 7), some.floats(-1, 7))
@settings(max_examples=draws(200))
def test_a_shape_is_cut_into_parts_that_are_all_of_it(shape: list[Point], one: float, other: float) -> None:
    low, high = sorted((one, other))
    for axis in (0, 1):
        parts = [clipped(shape, axis, *between) for between in ((-9, low), (low, high), (high, 9))]
        assert sum(map(area, parts)) == pytest.approx(area(list(shape)), abs=1e-6)
        for part, (least, most) in zip(parts, ((-9, low), (low, high), (high, 9)), strict=True):
            assert all(least - 1e-9 <= p[axis] <= most + 1e-9 for p in part)
            assert part == [] or len(part) > 2
    assert clipped(shape, 0, 8, 9) == []


def test_the_outline_above_a_point() -> None:
    assert _ceiling(U, 1.0, 0.5) == 4
    assert _ceiling(U, 3.0, 0.5) == 1
    assert _ceiling(U, 3.0, 2.0) == 2.0, "nothing is above it"
    assert _ceiling(box(0, 0, 4, 4), 2.0, 0.0) == 4, "where it stands is not above it"
    assert _ceiling([(0, 0), (4, 0), (4, 2), (0, 6)], 1.0, 0.0) == 5


# ----------------------------------------------------------------- sheets of paper


@given(some.integers(1, 200), some.integers(1, 300), some.floats(0.3, 2.0), some.booleans())
@settings(max_examples=draws(200))
def test_a_chart_is_cut_into_sheets_that_are_all_of_it(columns: int, rows: int, ratio: float, in_large: bool) -> None:
    found = large(columns, rows, ratio) if in_large else cut(columns, rows, ratio)
    assert sorted((x, y) for s in found.sheets for x in range(s.left, s.right) for y in range(s.low, s.high)) == sorted(
        (x, y) for x in range(columns) for y in range(rows)
    )
    assert [s.letter for s in found.sheets] == [letter(n) for n in range(len(found.sheets))]
    room = tuple(side / LARGER for side in (138.0, 182.0)) if in_large else ROOM
    assert (LARGER if in_large else 1.0) == found.scale
    least = 3.0 if in_large else LEAST
    assert found.height / found.width == pytest.approx(min(max(ratio, RATIO[0]), RATIO[1]))
    assert min(found.width, found.height) >= least - 1e-9
    assert in_large or found.width <= MOST
    for s in found.sheets:
        left, below = found.at(s.across - 1, s.up), found.at(s.across, s.up - 1)
        assert s.again_left == (OVERLAP if left else 0)
        assert s.again_low == (OVERLAP if below else 0)
        assert (s.first, s.lowest) == (s.left - s.again_left, s.low - s.again_low)
        assert (s.columns, s.rows) == (range(s.first, s.right), range(s.lowest, s.high))
        assert len(s.columns) * found.width <= room[0] + 1e-6
        assert len(s.rows) * found.height <= room[1] + 1e-6
        assert left is None or left.right == s.left
        assert below is None or below.high == s.low
        assert found.at(s.across, s.up) is s
    # Sheets are of one size, but for a row or column.
    for across in {s.across for s in found.sheets}:
        widths = {s.right - s.left for s in found.sheets}
        assert max(widths) - min(widths) <= 1, across


def test_letters_of_sheets() -> None:
    assert [letter(n) for n in (0, 25, 26, 27, 51, 52, 701, 702)] == ["A", "Z", "AA", "AB", "AZ", "BA", "ZZ", "AAA"]


def test_large_print_is_seven_millimetres_a_cell() -> None:
    assert abs(LARGER * 3.0 - 7.0) < 1e-9
    assert OVERLAP == 4


# ----------------------------------------------------------------- pens


def test_path_data_has_two_decimals_at_most() -> None:
    assert pens.path([(0.004, -0.001), (1.5, 2.25), (3.126, 10.0)]) == "M0 0L1.5 2.25L3.13 10"
    assert pens.path([(0, 0), (1, 0)], closed=True) == "M0 0L1 0Z"


def test_rib_lines_divide_a_band_evenly_from_edge_to_edge() -> None:
    found = [next(lines(data)) for data in pens.hatched(((0, 0), (9, 0)), ((-3, 6), (12, 6)), 1.5)]
    assert [line[0] for line in found] == [(1.5 * n, 0) for n in range(1, 6)]
    assert [line[1] for line in found] == [(-3 + 2.5 * n, 6) for n in range(1, 6)]
    assert len(pens.hatched(((0, 0), (0.1, 0)), ((0, 1), (0.1, 1)), 1.5)) == 1
    assert len(pens.hatched(((9, 0), (0, 0)), ((9, 1), (0, 1)), 1.5)) == 5


def test_stitches_and_loops() -> None:
    assert next(lines(pens.stitch(10, 20, 5))) == [(10.6, 20), (12.5, 23.1), (14.4, 20)]
    made = [next(lines(data)) for data in pens.stitches(10, 0, (2, 3), 2)]
    assert [line[1][0] for line in made] == [9, 11, 8, 10, 12]
    assert [line[0][1] for line in made] == [0, 0, 1.6, 1.6, 1.6]
    loops = [next(lines(data)) for data in pens.loops(0, 8, 3)]
    assert len(loops) == 5
    assert [(line[0][0] + line[-1][0]) / 2 for line in loops] == pytest.approx([0.8, 2.4, 4.0, 5.6, 7.2])
    assert {line[0][1] for line in loops} == {3}
    assert len(pens.loops(0, 0.5, 3)) == 2
    (zigzag,) = lines(pens.zigzag(2, 8, 5, 1.0))
    assert zigzag == [(2, 4.5), (3.5, 5.5), (5, 4.5), (6.5, 5.5), (8, 4.5)]


def test_points_turned() -> None:
    (x, y), about = pens.turned([(3, 1), (1, 1)], (1, 1), 90)
    assert (x, y) == pytest.approx((1, 3))
    assert about == pytest.approx((1, 1))
    assert pens.turned([(2, 1)], (1, 1), -90)[0] == pytest.approx((1, 0))


def test_paper_gathers_the_runs_of_one_pen() -> None:
    paper = pens.Paper()
    paper.draw("a", "M0 0", "M1 1")
    paper.draw("a", "M2 2")
    paper.draw("a")
    paper.draw("a", "M3 3", colour="#000000", width=0.456)
    paper.draw("b", "M4 4")
    paper.letter(1.234, 5.678, "x")
    made = paper.finished("t", 10.04, 20.06, -1.04, -2.06)
    assert [(s.data, s.kind, s.colour, s.width) for s in made.strokes] == [
        ("M0 0M1 1M2 2", "a", "", 0.0), ("M3 3", "a", "#000000", 0.46), ("M4 4", "b", "", 0.0)
    ]  # fmt: skip
    assert (made.title, made.width, made.height, made.left, made.top, made.scale) == ("t", 10.0, 20.1, -1.0, -2.1, 1.0)
    assert made.letterings == (Lettering(1.23, 5.68, "x"),)
    assert (made.letterings[0].anchor, made.letterings[0].turn, made.letterings[0].kind) == ("middle", 0, "figure")


# ----------------------------------------------------------------- yarns


def test_colours_of_yarns(pattern: object) -> None:
    design = pattern(1).design  # type: ignore[operator]
    named = [d.Yarn(f"y{n}", "", 50, 100, d.Origin("by hand"), "#123456" if n == 2 else "") for n in range(10)]
    design = replace(design, yarns=tuple(named))
    assert [yarns.colour(design, f"y{n}") for n in (0, 1, 2, 3, 8, 9)] == [
        yarns.PALETTE[0], yarns.PALETTE[1], "#123456", yarns.PALETTE[3], yarns.PALETTE[0], yarns.PALETTE[1]
    ]  # fmt: skip
    assert yarns.colour(design, "other") == yarns.PALETTE[0]
    assert yarns.yarn_named(design, "y3") is named[3]
    with pytest.raises(StopIteration):
        yarns.yarn_named(design, "other")


def test_how_light_a_colour_is() -> None:
    """The weights of Rec. 709, which add up to one; green is the lightest of the three, blue the darkest."""
    assert yarns.lightness("#000000") == 0
    assert yarns.lightness("#ffffff") == pytest.approx(1)
    red, green, blue = (yarns.lightness(c) for c in ("#ff0000", "#00ff00", "#0000ff"))
    assert (red, green, blue) == pytest.approx((0.2126, 0.7152, 0.0722))
    assert yarns.lightness("#808080") == pytest.approx(128 / 255)


def test_darker_and_lighter() -> None:
    assert yarns.darker("#204060") == "#102030"
    assert yarns.darker("#204060", 0.25) == "#183048"
    assert yarns.lighter("#ffffff") == "#ffffff"
    assert yarns.lighter("#000000", 0.5) == "#808080"
    assert yarns.lightness(yarns.lighter("#204060")) > 0.78
    assert yarns.lighter("#204060", 0.0) == "#204060" == yarns.darker("#204060", 0.0)


def test_neighbours_in_the_palette_differ_in_lightness() -> None:
    shades = [yarns.lightness(c) for c in yarns.PALETTE]
    assert min(abs(a - b) for a, b in pairwise([*shades, shades[0]])) > 0.2


def test_hatches_are_told_apart_and_shown_on_dark_yarns_too() -> None:
    drawn = [yarns.hatch(n, 0, 0, 10, 10) for n in range(20)]
    assert len(set(drawn)) == 20
    for data in drawn:
        assert all(0 <= v <= 10 for line in lines(data) for p in line for v in p)
    assert [line[0] for line in lines(yarns.hatch(1, 5, 20, 10, 100))] == [(5, 40), (5, 70), (5, 100)]
    assert len(list(lines(yarns.hatch(8, 0, 0, 1, 1)))) == len(yarns.HATCHES[0]) + len(yarns.HATCHES[1])
    assert [yarns.hatch_pen(c) for c in ("#000000", "#737373", "#707070", "#ffffff")] == ["light", "mark", "light", "mark"]
    assert yarns.hatch_ink("#000000") == ("paper", 0.26)
    assert yarns.hatch_ink("#ffffff") == ("ink", 0.3)


# ----------------------------------------------------------------- crossings


@pytest.mark.parametrize("count", [1, 2, 3])
@pytest.mark.parametrize("over", [True, False])
@pytest.mark.parametrize("mirrored", [True, False])
def test_groups_of_a_cross_change_places(count: int, over: bool, mirrored: bool) -> None:
    """So many stitches go to the right, over or under as many others, between rows 5 and 6, from column 2 on."""
    loops = plain(10, 12)
    for at in range(count):
        loops[2 + count + at, 6] = replace(loops[2 + count + at, 6], through=((2 + at, 5),), over=over)
        loops[2 + at, 6] = replace(loops[2 + at, 6], through=((2 + count + at, 5),), over=not over)
    (cable,), aside = cables(shown(loops), mirrored=mirrored)
    rows, low, high = range(6 - count, 6 + count), range(2, 2 + count), range(2 + count, 2 + 2 * count)
    going_right = {(c, r) for r in rows for c in (low if r < 6 else high)}
    going_left = {(c, r) for r in rows for c in (high if r < 6 else low)}
    front, behind = (going_right, going_left) if over != mirrored else (going_left, going_right)
    assert (cable.front, cable.behind) == (frozenset(front), frozenset(behind))
    assert set(aside) == front | behind
    for c, r in going_right | going_left:
        way = count if (c, r) in going_right else -count
        near = (r - (6 - count) + 1) / count if r < 6 else (6 + count - r) / count
        gone = NEXT * near * math.sqrt(near)
        assert aside[c, r] == pytest.approx(way * gone if r < 6 else -way * gone)


def test_loops_moved_one_way_only_are_no_crossing() -> None:
    loops = plain(6, 4)
    for at in (2, 3):
        loops[at, 2] = replace(loops[at, 2], through=((at - 1, 1),))
    assert cables(shown(loops), mirrored=False) == ((), {})


# ----------------------------------------------------------------- dimension lines


def test_lanes_and_boxes() -> None:
    assert list(lanes(2.0, -3.0))[:4] == [2, -1, -4, -7]
    assert len(list(lanes(0, 1))) == 16
    assert box_round([(1, 5), (3, 2)], 0.5) == (0.5, 1.5, 3.5, 5.5)


def test_hairlines_are_broken_where_lettering_stands() -> None:
    paper = pens.Paper()
    ruler = Ruler(paper, "figure", texts=[(4, -1, 6, 1), (20, 4, 22, 6)])
    ruler.guide((0, 0), (10, 0))
    ruler.guide((21, 10), (21, 0))
    ruler.guide((30, 0), (30, 0.4))
    ruler.draw_guides()
    (stroke,) = paper.finished("", 1, 1).strokes
    assert stroke.kind == "guide"
    assert list(lines(stroke.data)) == [
        [(0, 0), (4, 0)], [(6, 0), (10, 0)], [(21, 0), (21, 4)], [(21, 6), (21, 10)]
    ]  # fmt: skip


def test_lettering_takes_the_first_free_place() -> None:
    paper = pens.Paper()
    ruler = Ruler(paper, "figure", texts=[(-20, -5, 20, 5)], lines=[(-20, 28, 20, 32)])
    assert ruler.write_free([(0, 0, "middle"), (0, 30, "middle"), (0, 50, "end")], ("abc", "de"), "word")
    assert not ruler.write_free([(0, 0, "middle"), (0, 31, "middle")], ("abc",), "word")
    made = paper.finished("", 1, 1).letterings
    assert [(t.x, t.y, t.text, t.anchor, t.kind) for t in made] == [(0, 50, "abc", "end", "word"), (0, 53.6, "de", "end", "word")]
    assert ruler.texts[-1] == pytest.approx((-3 * 1.55 - 0.5, 50 - 2.4 - 0.5, 0.5, 53.6 + 0.7 + 0.5))
    assert ruler.box(10, 20, ("ab",), "start") == pytest.approx((9.5, 17.1, 10 + 3.1 + 0.5, 21.2))
    assert ruler.box(10, 20, ("ab",), "middle") == pytest.approx((10 - 1.55 - 0.5, 17.1, 10 + 1.55 + 0.5, 21.2))
    assert ruler.box(10, 20, ("ab",), "middle", turn=-90) == pytest.approx((7.1, 20 - 1.55 - 0.5, 11.2, 20 + 1.55 + 0.5))
    assert ruler.free((100, 100, 101, 101))
    assert not ruler.free((0, 29, 1, 30))
    assert ruler.free((0, 29, 1, 30), of_lines=False)
