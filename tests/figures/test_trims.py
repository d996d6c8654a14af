"""What is seen of edgings and bands on a cover, and in which colour cloth lies."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest

from tests.figures.test_worn import garment, stages
from walewright.figures import worn, yarns
from walewright.figures.banded import rims, round_opening
from walewright.figures.garment import cover
from walewright.figures.model import Drawing
from walewright.figures.pens import Paper
from walewright.figures.rims import inner_rim
from walewright.figures.trims import Trim, finish, finishes, lay, rule, shade_of
from walewright.figures.trunks import trunk_of
from walewright.figures.tubes import tube
from walewright.guide.english import LANGUAGE


def drawn(name: str) -> Drawing:
    made, pieces = stages(name)
    assert made.design is not None
    assert made.counts is not None
    return cover(LANGUAGE, made.design, made.counts, pieces, made.glued)


def pens(trim: Trim) -> list[str]:
    paper = Paper()
    finish(paper, trim, [(0, 0), (30, 0)], [(0, 9), (30, 9)], ["M1 0L1 9"])
    return [stroke.kind for stroke in paper.finished("", 30, 9).strokes for _ in range(stroke.data.count("M"))]


def test_ribs_are_drawn_of_a_rib_alone() -> None:
    assert pens(Trim("rib")) == ["hatch"]
    assert pens(Trim("plain")) == []
    assert pens(Trim("fold")) == ["hatch"]
    assert pens(Trim("rolled")) == ["hatch"] * 2
    assert len(pens(Trim("picot"))) > 9


@pytest.mark.parametrize(("name", "seen"), [("plover", {"rib"}), ("dunlin", {"fold", "rib"}), ("anemone", {"picot", "plain"})])
def test_an_edging_shows_what_it_is(name: str, seen: set[str]) -> None:
    made, _ = stages(name)
    assert made.design is not None
    assert {trim.finish for trim in finishes(made.design).values()} == seen


def test_cloth_in_one_colour_is_white_and_in_several_its_yarns() -> None:
    for name, shades in (("plover", {""}), ("shoal", {"#3d6f8f"})):
        made, _ = stages(name)
        assert made.design is not None
        assert {shade_of(made.design, made.design.fabric(p.fabric)) for p in made.design.pieces} == shades
    filled = {s.colour for s in drawn("shoal").strokes if s.kind == "fill"}
    assert filled == {"#3d6f8f", "#e0cfa6", "#d2694f"}
    assert not [s for s in drawn("plover").strokes if s.kind == "fill"]


@pytest.mark.parametrize("shade", ["#102030", "#f0eadc", "#3d6f8f"])
def test_lines_stand_out_from_their_cloth(shade: str) -> None:
    paper = Paper()
    lay(paper, shade, "M0 0h9v9z")
    rule(paper, "hatch", shade, "M0 0h9")
    line = paper.finished("", 9, 9).strokes[-1]
    assert abs(yarns.lightness(line.colour) - yarns.lightness(shade)) > 0.2


@pytest.mark.parametrize("name", ["plover", "fairlead", "lapwing", "dunlin", "greylag"])
def test_a_neckband_in_parts_is_a_neckband(name: str) -> None:
    depth, trim = round_opening(garment(name), "front", "neck")
    assert depth > 1
    assert trim.finish == "rib"


@pytest.mark.parametrize("name", ["plover", "greylag"])
def test_armbands_lie_outside_both_armholes(name: str) -> None:
    found = rims(garment(name), garment(name).piece("front"), {"neck"})
    assert len(found) == 2
    for rim in found:
        top, outer = max(rim.line, key=lambda p: p[1]), max(rim.outer, key=lambda p: abs(p[0]))
        assert abs(outer[0]) > abs(top[0]) + 0.5


def test_a_neckband_on_open_loops_does_not_stand_up_from_them() -> None:
    made = garment("spindrift")
    assert any(e.edge == "shoulder left" for band in made.design.bands for e in band.along), "the band is hung on them"
    assert not rims(made, made.piece("front"), {"neck"})


@pytest.mark.parametrize(("name", "open_"), [("dotterel", True), ("mooring", False)])
def test_a_thumb_is_open_where_it_is_not_closed(name: str, open_: bool) -> None:
    insides = sum(stroke.data.count("M") for stroke in drawn(name).strokes if stroke.kind == "inside")
    # The mitts are open at their ends as well.
    assert insides == (4 if open_ else 0)


@pytest.mark.parametrize(("name", "piece"), [("avocet", "scarf"), ("breakwater", "panel")])
def test_what_has_a_border_at_both_ends_is_drawn_with_both(name: str, piece: str) -> None:
    of = garment(name).piece(piece)
    (rim,) = rims(garment(name), of)
    assert min(y for _, y in rim.outer) == pytest.approx(of.shape.height + of.of.edging_cm, rel=0.02)


def test_the_band_of_a_v_does_not_cross_itself() -> None:
    line = [(at / 5, abs(at) / 2) for at in range(-45, 46)]
    rim = inner_rim(line, 2.5)
    low = min(rim, key=lambda p: p[1])
    # Square to both sides the rim is 2.5 cm deep: they meet as far above the point as the slant makes of that.
    assert low == pytest.approx((0.0, 2.5 / math.sin(math.atan(0.4))), abs=0.05)
    assert all(b[0] >= a[0] - 1e-6 for a, b in pairwise(rim[8:-8]))


def test_a_strap_over_the_shoulder_is_one_cloth_with_its_sleeve() -> None:
    made = garment("halyard")
    trunk = trunk_of(made)
    assert trunk is not None
    (sleeve,) = worn.sleeves_of(made, trunk)
    neck = trunk.fronts[0].piece.shape.neckline[-1]
    # It reaches the neck along the front's shoulder, half as high as the strap is wide.
    reached = [p for p in sleeve.shape if abs(p[0] - neck[0]) < 1]
    assert len(reached) == 2
    assert reached[1][1] - reached[0][1] == pytest.approx(-made.piece("sleeve").shape.left[-1][0], rel=0.05)
    assert min(y for _, y in reached) == pytest.approx(neck[1], abs=0.5)


def test_a_beret_lies_flat_and_a_cap_stands() -> None:
    for name, least, most in (("skerry", 0.0, 0.5), ("limpet", 0.6, 2.0)):
        made = garment(name)
        found = tube(made, frozenset({made.pieces[0].name}))
        assert found is not None
        assert found.closed
        assert least < found.height / (2 * found.widest) < most
