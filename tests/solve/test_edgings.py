"""Edgings of all kinds: the rows that are seen, and stitches in the multiple that each kind asks for."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.draws import draws
from tests.solve.workshop import Workshop, origin, solve
from walewright.counted.model import SizedGarment
from walewright.design.model import Band, Design, EdgeName, Edging, Zone
from walewright.solve.edges.edgings import needles_of
from walewright.solve.joins.shares import SUITS_RIB, BandPart, shared_out


def edging(shop: Workshop, kind: str, mock: int = 0, when: str = "first", depth: float = 3.0) -> Edging:
    return Edging("hem", "plain", shop.each(depth), when, "chain", origin("edging hem"), kind, mock)


def solved(design: Design) -> SizedGarment:
    counts, told = solve(design)
    assert told == ()
    assert counts is not None
    return counts.sizes[0]


def hemmed(shop: Workshop, made: Edging, width: float = 40, odd: bool = False) -> Design:
    body = shop.piece("body", width, shop.levels("body", hem=0, top=40), (shop.run("top"),), start_edging="hem", odd=odd)
    return shop.design(body, edgings=(made,))


@pytest.mark.parametrize(
    ("kind", "rows"), [("plain", 10), ("folded", 10), ("picot", 10), ("rolled", 10), ("facing", 10), ("chained", 1)]
)
def test_rows_of_an_edging_are_those_that_are_seen(workshop: type[Workshop], kind: str, rows: int) -> None:
    """3.2 cm of 3 rows are 9.6."""
    shop = workshop("M")
    assert solved(hemmed(shop, edging(shop, kind, when="after", depth=3.2))).pieces[0].edging_rows == rows
    body = shop.piece("body", 40, shop.levels("body", hem=0, top=40), (shop.run("top"),))
    band = Band("rim", "hem", (EdgeName("body", "end"),), origin("band"))
    made = solved(shop.design(body, bands=(band,), edgings=(edging(shop, kind, depth=3.2),))).bands[0]
    assert made.rows == rows


@pytest.mark.parametrize(("odd", "rest"), [(False, 2), (True, 5)])
@pytest.mark.parametrize("width", [38.0, 39.0, 40.0, 41.0])
def test_a_mock_rib_of_two_and_one_begins_and_ends_with_two(workshop: type[Workshop], odd: bool, rest: int, width: float) -> None:
    shop = workshop("M")
    start = solved(hemmed(shop, edging(shop, "mock rib", 3), width, odd)).pieces[0].start
    assert start % 6 == rest
    assert abs(start - 2 * width) <= 3


@pytest.mark.parametrize(("kind", "mock"), [("mock rib", 2), ("picot", 0)])
def test_a_piece_of_even_stitches_is_not_made_odd(workshop: type[Workshop], kind: str, mock: int) -> None:
    shop = workshop("M")
    assert solved(hemmed(shop, edging(shop, kind, mock))).pieces[0].start == 80
    assert solved(hemmed(shop, edging(shop, kind, mock), odd=True)).pieces[0].start in (79, 81)


def test_an_edging_hung_on_later_asks_nothing_of_the_start(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    assert solved(hemmed(shop, edging(shop, "mock rib", 3, "after"), 39)).pieces[0].start == 78


def test_repeats_above_a_mock_rib_win_where_both_cannot_be(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    for repeat, edge, start in ((6, 0, 78), (6, 1, 80), (10, 0, 80)):
        chart = shop.chart("waves", repeat, 8)
        charted = shop.charted(chart, 2, 3, edge=edge)
        made = hemmed(shop, edging(shop, "mock rib", 3), 39.5)
        made = replace(made, pieces=(replace(made.pieces[0], fabric="waves"),), charts=(chart,), fabrics=(*made.fabrics, charted))
        assert solved(made).pieces[0].start == start


def test_repeats_begun_higher_up_on_the_same_width_win_too(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    chart = shop.chart("waves", 6, 8)
    charted = shop.charted(chart, 2, 3, edge=0)
    body = shop.piece(
        "body",
        39.5,
        shop.levels("body", hem=0, low=10, top=40),
        (shop.run("low"), shop.run("top")),
        start_edging="hem",
        zones=(Zone("waves", "low", "top", None, shop.each(0), origin("zone")),),
    )
    design = shop.design(body, edgings=(edging(shop, "mock rib", 3),), charts=(chart,), fabrics=(charted,))
    assert solved(design).pieces[0].start == 78


@pytest.mark.parametrize(("kind", "mock", "step", "rest"), [("mock rib", 2, 2, 1), ("mock rib", 3, 3, 2), ("picot", 0, 2, 1)])
def test_a_band_along_a_slope_suits_its_kind(workshop: type[Workshop], kind: str, mock: int, step: int, rest: int) -> None:
    shop = workshop("M")
    for high in (38, 39, 40, 41, 42, 43):
        levels = shop.levels("front", hem=0, top=high)
        model = shop.piece("front", 40, levels, (shop.run("top"),), (shop.run("top", -6, name="slope"),))
        band = Band("front_band", "hem", (EdgeName("front", "slope"),), origin("band"))
        made = solved(shop.design(model, bands=(band,), edgings=(edging(shop, kind, mock),))).bands[0]
        assert made.stitches % step == rest
        (edge,) = made.pick_ups
        assert abs(made.stitches - edge.cm * 2) <= step / 2 + 1e-6


@settings(max_examples=draws(200))
@given(
    st.lists(st.tuples(st.integers(20, 80), st.floats(0.5, 0.95)), min_size=1, max_size=3),
    st.integers(0, 30),
    st.sampled_from(
        [Edging("e", "plain", (), "after", "chain", origin("e"), *k) for k in (("picot", 0), ("mock rib", 2), ("mock rib", 3))]
    ),
)
def test_any_edges_suit_an_edging_or_stay_as_they_are(soft: list[tuple[int, float]], firm: int, made: Edging) -> None:
    step, rest = needles_of(made)
    parts = [
        BandPart(EdgeName("body", f"edge {n}"), "whole", points, points / 3, points * share, False)
        for n, (points, share) in enumerate(soft)
    ]
    parts += [BandPart(EdgeName("body", "end"), "whole", firm, firm / 2, float(firm), True)] if firm else []
    counts = shared_out(parts, step, rest)
    assert sum(counts) % step == rest
    wanted = sum(p.wanted for p in parts)
    assert abs(sum(counts) - wanted) <= max(SUITS_RIB * wanted, step / 2) + 1e-6
    assert all(count == p.wanted if p.firm else 1 <= count <= p.points for count, p in zip(counts, parts, strict=True))


def test_halves_that_are_alike_stay_alike(workshop: type[Workshop]) -> None:
    """Of a neck with an even centre an odd sum cannot be had, and a mock rib of two and one takes every sixth."""
    neck = [BandPart(EdgeName("body", "neck"), part, 40, 14.0, 27.6, False) for part in ("left", "right")]
    centre = BandPart(EdgeName("body", "neck"), "centre", 20, 10.0, 20.0, True)
    for step, rest, total in ((2, 1, 76), (3, 2, 74)):
        left, right, firm = shared_out([*neck, centre], step, rest)
        assert (left, firm) == (right, 20)
        assert left + right + firm == total
