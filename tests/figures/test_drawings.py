"""Measures, schematics and the cover drawing."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable
from dataclasses import replace
from itertools import combinations, pairwise, product
from typing import Any

import pytest

from tests.whole.shipped_once import GARMENTS, compiled
from walewright.figures.dimensions import AIR, NARROW, Ruler, overlap, through
from walewright.figures.garment import cover, middle_size
from walewright.figures.hung_names import WORD_MM
from walewright.figures.measures import measured
from walewright.figures.model import Drawing
from walewright.figures.pens import LETTER_MM, Paper
from walewright.figures.schematic import drawing, fitting_scale, labels, lettered
from walewright.guide.english import LANGUAGE
from walewright.sheet.legends import legend

Make = Callable[..., Any]


def points(drawing_: Drawing) -> list[tuple[float, float]]:
    """Corners of everything drawn, from the drawing's upper left corner."""
    found = []
    for stroke in drawing_.strokes:
        for x, y in re.findall(r"[ML](-?[\d.]+) (-?[\d.]+)", stroke.data):
            found.append((float(x) - drawing_.left, float(y) - drawing_.top))
    return found


def schematic(pattern: Any, name: str, units: str = "cm") -> Drawing:
    piece = measured(pattern.design, pattern.counts, name)
    at = pattern.design.at(middle_size(pattern.counts))
    return drawing(LANGUAGE, at, piece, units, fitting_scale(at, (piece,)))


def test_measures_of_a_body(pattern: Make) -> None:
    made = pattern(3)
    found = {m.label(LANGUAGE): m.values for m in measured(made.design, made.counts, "front").measures}
    per_stitch, per_row = 30.8 / 40, 32.4 / 60
    assert found["Width at hem"] == pytest.approx([n * per_stitch for n in (58, 64, 70)])
    assert found["Hem to underarm"] == pytest.approx([54 * per_row] * 3)
    assert found["Shoulder point to top"] == pytest.approx([6 * per_row] * 3)
    assert found["Depth of neck"] == pytest.approx([16 * per_row] * 3)
    assert found["Width of neck"] == pytest.approx([n * per_stitch for n in (22, 22, 24)])
    assert found["Shoulder"] == pytest.approx([n * per_stitch for n in (18, 21, 23)])
    assert found["Depth of welt"] == pytest.approx([12 * 29.4 / 60] * 3)
    assert found["Whole length, with welt"] == pytest.approx([n * per_row + 12 * 29.4 / 60 for n in (94, 96, 98)])


def test_a_sleeve_is_measured_where_it_is_widest_and_has_no_neck(pattern: Make) -> None:
    made = pattern(2)
    found = {m.label(LANGUAGE): m.values for m in measured(made.design, made.counts, "sleeve").measures}
    assert found["Width at widest"] == pytest.approx([n * 30.8 / 40 for n in (52, 54)])
    assert "Width of neck" not in found


def test_one_size_stands_on_the_drawing(pattern: Make) -> None:
    made = pattern(1)
    texts = [t.text for t in schematic(made, "front").letterings]
    assert "44.5 cm · 58 st" in texts
    assert [t for t in texts if t in ("29 cm", "54 rows")] == ["29 cm", "54 rows"]
    assert legend(LANGUAGE, measured(made.design, made.counts, "front"), made.design.sizes, "cm", False) is None


def test_many_sizes_have_letters_and_a_legend(pattern: Make) -> None:
    made = pattern(8)
    letters = {t.text for t in schematic(made, "front").letterings if t.kind == "letter"}
    table = legend(LANGUAGE, measured(made.design, made.counts, "front"), made.design.sizes, "cm", True)
    assert table is not None
    rows = table.groups[0].rows
    assert letters == {row.key for row in rows}
    assert all(len(row.cells) == 8 for row in rows)
    assert [c.text for c in rows[0].cells][:2] == ["44.5", "49.5"]


@pytest.mark.parametrize("name", ["back", "front", "sleeve"])
@pytest.mark.parametrize("count", [1, 3, 8])
def test_nothing_is_drawn_off_the_paper(pattern: Make, name: str, count: int) -> None:
    made = schematic(pattern(count), name)
    assert all(0 <= x <= made.width and 0 <= y <= made.height for x, y in points(made))
    assert made.width < 130
    assert all(made.left <= t.x <= made.left + made.width and made.top <= t.y <= made.top + made.height for t in made.letterings)


def test_the_title_of_a_schematic_says_its_measurements(pattern: Make) -> None:
    assert "in size S: width at hem 49.5 centimetres, 64 stitches; " in schematic(pattern(3), "front").title
    assert "front: width at hem 44.5 centimetres" in schematic(pattern(1), "front").title


def test_the_cover_hangs_two_sleeves_on_the_body(pattern: Make) -> None:
    made = pattern(3)
    pieces = tuple(measured(made.design, made.counts, p.name) for p in made.design.pieces)
    whole = cover(LANGUAGE, made.design, made.counts, pieces)
    bare = cover(LANGUAGE, replace(made.design, joins=()), made.counts, pieces)
    found = points(whole)
    assert all(0 <= x <= whole.width and 0 <= y <= whole.height for x, y in found)
    # With sleeves the garment is wider than it is high, without them the body alone is not.
    assert whole.width / whole.height > 1.4
    assert bare.width / bare.height < 1.1
    # The drawing is the same on both sides.
    left, right = min(x for x, _ in found), max(x for x, _ in found)
    assert left + right == pytest.approx(whole.width, abs=0.1)
    assert "size S" in whole.title


def test_a_drawing_has_few_paths(pattern: Make) -> None:
    assert len(schematic(pattern(8), "front").strokes) < 25


@pytest.mark.parametrize("name", GARMENTS)
def test_letters_of_shipped_garments_are_read_with_ease(name: str) -> None:
    made = compiled(name)
    design, counts = made.design, made.counts
    assert design is not None
    assert counts is not None
    pieces = tuple(measured(design, counts, p.name) for p in design.pieces)
    at = design.at(middle_size(counts))
    for piece in pieces:
        of = drawing(LANGUAGE, at, piece, "cm", fitting_scale(at, pieces))
        ruler = Ruler(Paper(), "letter")
        boxes = [ruler.box(t.x, t.y, (t.text,), t.anchor, t.turn) for t in of.letterings]
        # Two lines of one measure stand closer than two measures may.
        boxes = [(x0 + AIR, y0 + AIR, x1 - AIR, y1 - AIR) for x0, y0, x1, y1 in boxes]
        assert not [(a, b) for a, b in combinations(boxes, 2) if overlap(a, b)]
        # Printed 66 mm wide at most; letters are drawn 3.1 mm high (`sheet/theme.py`).
        if lettered(piece, design.sizes):
            assert 3.1 / 25.4 * 72 * min(1.0, 66 / of.width) >= 6.5


def test_no_lettering_lies_across_an_edge() -> None:
    ruler = Ruler(Paper(), "letter", edges=[((5.0, -9.0), (5.0, 9.0))])
    assert not ruler.write_free([(5.0, 0.0, "middle")], ("A",), "letter", clear=True)
    assert ruler.write_free([(5.0, 0.0, "middle"), (9.0, 0.0, "middle")], ("A",), "letter", clear=True)
    assert ruler.paper.finished("", 9, 9).letterings[0].x == 9


def test_measures_that_are_alike_have_one_letter() -> None:
    made = compiled("kittiwake")
    assert made.design is not None
    assert made.counts is not None
    back = measured(made.design, made.counts, "back")
    letters = [letter for (letter,) in labels(LANGUAGE, back, "cm", letters=True)]
    assert len(letters) == 24
    assert len(set(letters)) == 18, "one half is the mirror image of the other one"
    values: dict[str, set[tuple[tuple[float, ...], tuple[int, ...]]]] = {}
    for letter, measure in zip(letters, back.measures, strict=True):
        values.setdefault(letter, set()).add((tuple(round(cm, 3) for cm in measure.values), measure.counts))
    assert all(len(same) == 1 for same in values.values())
    table = legend(LANGUAGE, back, made.design.sizes, "cm", lettered=True)
    assert table is not None
    rows = {row.key: row.label for group in table.groups for row in group.rows}
    assert list(rows) == list(dict.fromkeys(letters))
    assert rows["J"] == "Underarm to hem start and hem end to second underarm"
    drawn = Counter(t.text for t in schematic(made, "back").letterings if t.kind == "letter")
    assert drawn == Counter(letters), "it stands at each of them"


@pytest.mark.parametrize(("name", "piece"), [("turnstone", "left_front"), ("teasel", "right_front")])
def test_heights_that_happen_to_be_the_same_have_letters_of_their_own(name: str, piece: str) -> None:
    design, counts, _, _ = compiled(name).result()
    found = measured(design, counts, piece)
    letters = [letter for (letter,) in labels(LANGUAGE, found, "cm", letters=True)]
    heights = [letter for letter, m in zip(letters, found.measures, strict=True) if m.place == "rise"]
    assert len({m.values for m in found.measures if m.place == "rise"}) < len(heights), "two of them are the same"
    assert len(set(heights)) == len(heights)


@pytest.mark.parametrize(("name", "piece"), [("turnstone", "left_front"), ("spindrift", "front")])
def test_a_short_measure_is_pointed_at_from_outside(name: str, piece: str) -> None:
    """Its line between two ticks would be read as a letter H."""
    of = schematic(compiled(name), piece)
    data = " ".join(stroke.data for stroke in of.strokes if stroke.kind == "measure")
    lines = re.findall(r"M(-?[\d.]+) (-?[\d.]+)L(-?[\d.]+) (-?[\d.]+)(?=M|$| )", data)
    level = [(*sorted((float(a), float(c))), float(b)) for a, b, c, d in lines if b == d]
    ticks = [(float(a), (float(b) + float(d)) / 2) for a, b, c, d in lines if a == c]
    ruled = [(x0, x1) for x0, x1, y in level if {x0, x1} <= {x for x, at in ticks if abs(at - y) < 0.02}]
    assert all(x1 - x0 >= NARROW for x0, x1 in ruled)
    outside = [y for _, _, y in level if sum(abs(y - other) < 0.01 for _, _, other in level) == 2]
    assert outside, "two arrows on one line"


def test_a_piece_beside_a_long_legend_is_drawn_as_high_as_that() -> None:
    short, long = schematic(compiled("spindrift"), "front"), schematic(compiled("kittiwake"), "back")
    assert long.height > short.height * 1.4


@pytest.mark.parametrize(
    ("name", "one", "other"), [("samphire", "left_front", "right_front"), ("turnstone", "right_front", "left_front")]
)
def test_a_level_that_only_the_mirror_image_uses_parts_no_height(name: str, one: str, other: str) -> None:
    design, counts, _, _ = compiled(name).result()
    with_it, without = (measured(design, counts, piece) for piece in (one, other))
    heights = [[m for m in of.measures if m.place == "rise"] for of in (with_it, without)]
    assert len(heights[0]) == len(heights[1]) + 1
    for laid, *stretches in zip(without.laid, *(m.values for m in heights[1]), strict=True):
        assert sum(stretches) == pytest.approx(laid.shape.height)


def test_the_width_at_the_top_stands_above_the_piece() -> None:
    """Beneath its neck the piece is wider."""
    design, counts, _, _ = compiled("spindrift").result()
    piece = measured(design, counts, "front")
    of = schematic(compiled("spindrift"), "front")
    (at_top,) = (n for n, m in enumerate(piece.measures) if m.place == "across" and m.at == (piece.piece.levels[-1].name,))
    (letter,) = labels(LANGUAGE, piece, "cm", letters=True)[at_top]
    outline = next(stroke for stroke in of.strokes if stroke.kind == "outline" and stroke.data.endswith("Z"))
    top = min(float(y) for y in re.findall(r"[ML]-?[\d.]+ (-?[\d.]+)", outline.data))
    (y,) = (t.y for t in of.letterings if t.text == letter)
    assert y < top


@pytest.mark.parametrize(
    ("name", "piece"), [("hawser", "front"), ("peatbank", "right_collar"), ("mooring", "left_thumb"), ("teasel", "right_front")]
)
def test_no_name_lies_across_the_outline_or_a_panel_s_border(name: str, piece: str) -> None:
    design, counts, _, _ = compiled(name).result()
    found = measured(design, counts, piece)
    of = schematic(compiled(name), piece)
    named = [t for t in of.letterings if t.kind == "word"]
    assert named, found.piece.name
    for stroke in of.strokes:
        if stroke.kind not in ("outline", "seam"):
            continue
        for line in re.findall(r"M[^M]+", stroke.data):
            points = [(float(x), float(y)) for x, y in re.findall(r"[ML](-?[\d.]+) (-?[\d.]+)", line)]
            for t, edge in product(named, pairwise([*points, points[0]] if line.strip().endswith("Z") else points)):
                wide = len(t.text) * WORD_MM
                left = t.x - {"start": 0.0, "middle": wide / 2, "end": wide}[t.anchor]
                box = (left, t.y - 2, left + wide, t.y) if not t.turn else (t.x - 2, t.y - wide / 2, t.x, t.y + wide / 2)
                assert not through(box, edge), t.text


def test_a_name_beside_a_narrow_piece_runs_into_no_letter() -> None:
    of = schematic(compiled("marram"), "buttonhole_band")
    (name,) = (t for t in of.letterings if t.kind == "word")
    assert all(abs(t.y - name.y) > 2.4 for t in of.letterings if t is not name and name.anchor == "start")


def test_a_slot_s_name_that_is_wider_than_its_piece_stands_on_no_outline() -> None:
    """It is parted between its words, or stands beside the piece with a line that leads to its slot."""
    design, counts, _, _ = compiled("samphire").result()
    piece = measured(design, counts, "left_front")
    made = drawing(LANGUAGE, design.at(middle_size(counts)), piece, "cm", 1.0)
    outline = next(stroke for stroke in made.strokes if stroke.kind == "outline" and stroke.data.endswith("Z"))
    xs = [float(x) for x in re.findall(r"[ML](-?[\d.]+) ", outline.data)]
    names = [t for t in made.letterings if t.kind == "word" and t.text in ("breast pocket", "breast", "pocket")]
    assert {"pocket"} < {t.text for t in names}
    for t in names:
        wide = len(t.text) * LETTER_MM
        left = t.x - {"start": 0.0, "middle": wide / 2, "end": wide}[t.anchor]
        assert not any(left < x < left + wide for x in (min(xs), max(xs))), t.text


def test_the_name_of_a_slot_stands_above_it_and_across_no_edge() -> None:
    made = compiled("mooring")
    mitten = schematic(made, "right_mitten")
    (name,) = (t for t in mitten.letterings if t.kind == "word" and t.text == "thumb")
    assert name.anchor == "middle"
    (slit,) = (stroke for stroke in mitten.strokes if stroke.kind == "slit")
    xs, ys = zip(*((float(x), float(y)) for x, y in re.findall(r"[ML](-?[\d.]+) (-?[\d.]+)", slit.data)), strict=True)
    assert name.x == pytest.approx((min(xs) + max(xs)) / 2, abs=0.5)
    assert -6 < name.y - min(ys) < 6
    outline = next(stroke for stroke in mitten.strokes if stroke.kind == "outline")
    right = max(float(x) for x in re.findall(r"[ML](-?[\d.]+) -?[\d.]+", outline.data))
    assert name.x + len(name.text) * LETTER_MM / 2 < right
