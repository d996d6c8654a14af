"""A counted piece asked row by row: fabric, yarn, width and height, each worked by hand."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as some

from tests.draws import draws
from tests.solve.workshop import Workshop, origin
from walewright.counted import CountedPiece, counted_piece
from walewright.counted.model import SizedChart, SizedPiece, SizedZone
from walewright.design.model import Cell, CellKey, Edging

# 2 stitches and 3 rows a cm; the rib 4 and 6; the cable 5 and 3; bands as the plain one.
SHOP = Workshop("M", 2.0, 3.0)
RIB = SHOP.fabric("rib", 4.0, 6.0, rib_every=3)
CABLE = SHOP.fabric("cable", 5.0, 3.0)
BANDS = SHOP.striped("bands", 2, 3)


def zone(fabric: str, low: int, high: int, first: int = 0, last: int = -1) -> SizedZone:
    return SizedZone(fabric, low, high, first, last, origin(f"zone {fabric} {low}"))


def asked(*zones: SizedZone, fabric: str = "plain", rows: int = 60, start: int = 40, **more: object) -> CountedPiece:
    levels = SHOP.levels("back", hem=0, top=rows / 3)
    piece = SHOP.piece("back", start / 2, levels, (SHOP.run("top"),), fabric=fabric)
    design = replace(SHOP.design(piece), fabrics=(SHOP.plain, RIB, CABLE, BANDS))
    sized = SizedPiece("back", start, (("hem", 0), ("top", rows)), rows, (), (), (), (), 0, start, zones=zones)
    return counted_piece(design, replace(sized, **more))  # type: ignore[arg-type]


# ----------------------------------------------------------------- which fabric


def test_a_row_is_in_the_fabric_that_its_zone_says_and_else_in_the_pieces_own() -> None:
    of = asked(zone("rib", 0, 6), zone("bands", 20, 30))
    named = [(layer.low, layer.high, layer.fabric.name) for layer in of.layers]
    assert named == [(0, 6, "rib"), (6, 20, "plain"), (20, 30, "bands"), (30, 60, "plain")]
    assert [of.fabric(row).name for row in (0, 1, 6, 7, 20, 21, 30, 31, 60)] == [
        *("rib", "rib", "rib"),
        *("plain", "plain"),
        *("bands", "bands"),
        *("plain", "plain"),
    ]


def test_above_a_row_is_the_fabric_of_the_next_one() -> None:
    of = asked(zone("rib", 0, 6))
    assert [of.fabric(row, above=True).name for row in (0, 5, 6, 60)] == ["rib", "rib", "plain", "plain"]


def test_a_zone_without_a_row_in_this_size_is_nowhere() -> None:
    assert [(layer.low, layer.high) for layer in asked(zone("rib", 20, 20)).layers] == [(0, 60)]


def test_a_panel_leaves_the_fabric_beside_it_as_it_is() -> None:
    of = asked(zone("cable", 6, 60, -4, 5))
    assert {of.fabric(row).name for row in range(61)} == {"plain"}
    assert of.sized.zones[0].panel == (-4, 5)


# ----------------------------------------------------------------- which yarn


def test_stripes_begin_with_the_rows_that_they_are_knitted_in() -> None:
    """2 rows and 3 rows: from row 1 on, from row 8 on above a zone of 7 rows, and in a zone from its own first row."""
    first = ["wool 0", "wool 0", "wool 1", "wool 1", "wool 1", "wool 0"]
    assert [asked(fabric="bands").yarn(row) for row in range(1, 7)] == first
    above = asked(zone("rib", 0, 7), fabric="bands")
    assert [above.yarn(row) for row in range(7, 14)] == ["wool", *first]
    assert [asked(zone("bands", 7, 60)).yarn(row) for row in range(7, 14)] == ["wool", *first]


def test_a_picture_lends_its_yarns_to_its_own_rows() -> None:
    scale = CellKey("#", Cell("knit", "navy"), origin("chart fish"))
    chart = replace(SHOP.chart("fish", 4, 6, motif=True), picture=True, key=(scale,))
    fish = SizedChart("fish", "", "panel", 10, 16, -2, 1, 1, -2, 0, origin("fish"))
    of = asked(charts=(fish,))
    of = replace(of, design=replace(of.design, charts=(chart,)))
    assert of.yarns(10) == ("wool",)
    assert of.yarns(11) == of.yarns(16) == ("wool", "navy")
    assert of.yarns(17) == ("wool",)


# ----------------------------------------------------------------- centimetres


def test_heights_add_up_through_the_fabrics() -> None:
    of = asked(zone("rib", 30, 60))
    assert of.height_cm(30) == pytest.approx(10)
    assert of.height_cm(60) == pytest.approx(10 + 5)
    assert (of.row_cm(30), of.row_cm(31)) == pytest.approx((1 / 3, 1 / 6))


def test_a_width_is_measured_in_the_row_below_with_its_panels() -> None:
    """40 stitches at 2 a cm; 10 of them in a panel at 5 a cm: 15 + 2 cm."""
    of = asked(zone("cable", 0, 30, -4, 5))
    assert [of.width_cm(40, row) for row in (0, 1, 30, 31)] == pytest.approx([17, 17, 17, 20])
    assert [of.panels_cm(row) for row in (30, 31)] == pytest.approx([2 - 5, 0])
    assert asked(zone("rib", 30, 60)).width_cm(40, 30) == pytest.approx(20)
    assert asked(zone("rib", 30, 60)).width_cm(40, 31) == pytest.approx(10)


def test_a_point_lies_as_far_out_as_the_stitches_between_it_and_the_middle_are_wide() -> None:
    """Slots -2 to 7 are the panel's: 2 of its stitches lie left of the middle, 8 right of it."""
    of = asked(zone("cable", 0, 60, -2, 7))
    assert of.point(0, 3) == pytest.approx((0, 1))
    assert of.point(8, 3)[0] == pytest.approx(8 / 5)
    assert of.point(20, 3)[0] == pytest.approx(8 / 5 + 12 / 2)
    assert of.point(-20, 3)[0] == pytest.approx(-2 / 5 - 18 / 2)
    ended = asked(zone("cable", 0, 30, -2, 7))
    assert [ended.point(8, 30, above)[0] for above in (False, True)] == pytest.approx([8 / 5, 8 / 2])
    assert [ended.point(8, row)[0] for row in (0, 31)] == pytest.approx([8 / 5, 8 / 2])
    assert asked(lean=6).point(-26, 0) == (-10, 0)
    assert asked(start=41).point(-20, 0)[0] == pytest.approx(-10.25)


def test_an_edging_along_the_start_is_measured_in_its_own_fabric() -> None:
    of = asked(edging_rows=12)
    assert (of.edging, of.edging_cm, of.edging_width_cm) == (None, 0.0, 0.0)
    welt = Edging("welt", "rib", (2.0,), "after", "chain", origin("welt"))
    edged = replace(of, design=replace(of.design, edgings=(welt,)), piece=replace(of.piece, start_edging="welt"))
    assert edged.edging_cm == pytest.approx(12 / 6)
    assert edged.edging_width_cm == pytest.approx(40 / 4)


# ----------------------------------------------------------------- whatever it is made of


def zones(rows: list[int], names: list[str]) -> tuple[SizedZone, ...]:
    return tuple(zone(name, low, high) for (low, high), name in zip(pairwise(sorted(rows)), names, strict=False))


layers = some.builds(
    zones, some.lists(some.integers(0, 60), max_size=6), some.lists(some.sampled_from(["rib", "cable", "bands"]), max_size=4)
)


@given(layers, some.integers(-20, 19), some.integers(0, 10), some.integers(0, 60), some.booleans())
@settings(max_examples=draws(100))
def test_rows_and_stitches_add_up_to_the_whole(found: tuple[SizedZone, ...], first: int, more: int, row: int, beside: bool) -> None:
    panel = zone("cable", 12, 48, first, min(first + more, 19))
    of = asked(*found, *(panel,) if beside else ())
    assert [layer.low for layer in of.layers] == [0, *(layer.high for layer in of.layers[:-1])]
    assert of.layers[-1].high == 60
    assert of.height_cm(row) == pytest.approx(sum(of.row_cm(at) for at in range(1, row + 1)))
    assert of.point(20, row)[0] - of.point(-20, row)[0] == pytest.approx(of.width_cm(40, row))
    single = sum(of.point(x + 1, row)[0] - of.point(x, row)[0] for x in range(-20, 20))
    assert single == pytest.approx(of.width_cm(40, row))
