"""Bands: as many stitches as the edge is long, in the order of the walk, both halves alike."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from workshop import Workshop

from walewright.design.model import Design, EdgeName, Piece
from walewright.solve import solve
from walewright.solve.bands import SUITS_RIB, _Part, shared_out
from walewright.solve.model import SizedBand


def necked(shop: Workshop, rib_across: float = 2.0, rib_every: int = 3) -> Design:
    def part(name: str, depth: float, flat: float) -> Piece:
        levels = shop.levels(name, hem=0, top=50)
        return shop.piece(name, 45, levels, (shop.run("top"),), neck=shop.neck(name, 18, depth, flat))

    rib = shop.fabric("rib", rib_across, 3.0, rib_every)
    return shop.design(part("back", 3, 12), part("front", 9, 9), bands=(shop.band("neckband", "back neck + front neck"),), rib=rib)


def band(design: Design) -> SizedBand:
    counts, told = solve(design)
    assert told == ()
    assert counts is not None
    return counts.sizes[0].bands[0]


def test_a_neck_is_walked_from_left_to_right_edge_by_edge(workshop: type[Workshop]) -> None:
    made = band(necked(workshop("M")))
    assert [(p.edge.piece, p.part) for p in made.pick_ups] == [
        ("back", "left"),
        ("back", "centre"),
        ("back", "right"),
        ("front", "left"),
        ("front", "centre"),
        ("front", "right"),
    ]


def test_halves_get_the_same_and_the_rib_comes_out_whole(workshop: type[Workshop]) -> None:
    made = band(necked(workshop("M")))
    stitches = [p.stitches for p in made.pick_ups]
    assert stitches[0] == stitches[2]
    assert stitches[3] == stitches[5]
    assert made.stitches % 6 == 0
    assert made.rows == 8


def test_loops_are_taken_one_for_one(workshop: type[Workshop]) -> None:
    made = band(necked(workshop("M"), rib_across=2.2))
    centres = [p for p in made.pick_ups if p.part == "centre"]
    assert all(p.stitches == p.points for p in centres)


def test_a_much_coarser_band_takes_fewer_loops(workshop: type[Workshop]) -> None:
    made = band(necked(workshop("M"), rib_across=1.5))
    centres = [p for p in made.pick_ups if p.part == "centre"]
    assert all(p.stitches == pytest.approx(p.points * 0.75, abs=1) for p in centres)


def test_a_band_along_a_start_takes_its_stitches(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    levels = shop.levels("cowl", hem=0, top=20)
    piece = shop.piece("cowl", 30, levels, (shop.run("top"),))
    made = band(shop.design(piece, bands=(shop.band("edge", "cowl start"),)))
    assert [(p.part, p.stitches) for p in made.pick_ups] == [("whole", 60)]


PARTS = st.lists(st.tuples(st.integers(1, 60), st.floats(0.5, 70), st.integers(0, 30)), min_size=1, max_size=3)


@settings(max_examples=200, deadline=None)
@given(PARTS, st.sampled_from([0, 4, 6]))
def test_shares_add_up_and_fit(necks: list[tuple[int, float, int]], repeat: int) -> None:
    parts: list[_Part] = []
    for points, wanted, centre in necks:
        edge = EdgeName("front", "neck")
        halves = [_Part(edge, side, points, 1.0, wanted, False) for side in ("left", "right")]
        parts += [halves[0], *([_Part(edge, "centre", 2 * centre, 1.0, 2.0 * centre, True)] if centre else []), halves[1]]
    counts = shared_out(parts, repeat)
    assert sum(counts) % 2 == 0
    for part, count in zip(parts, counts, strict=True):
        assert count == part.wanted if part.firm else 1 <= count <= part.points
    wanted = sum(p.wanted for p in parts)
    room = all(p.wanted * (1 - SUITS_RIB) >= 1 and p.wanted * (1 + SUITS_RIB) + 1 <= p.points for p in parts if not p.firm)
    if room:
        assert abs(sum(counts) - wanted) <= max(1.0, SUITS_RIB * wanted) + 1e-6
        whole = (
            [n for n in range(repeat, int(2 * wanted) + repeat, repeat) if abs(n - wanted) <= SUITS_RIB * wanted] if repeat else []
        )
        if whole:
            assert sum(counts) % repeat == 0
