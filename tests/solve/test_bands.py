"""Bands: as many stitches as the edge is long, in the order of the walk, both halves alike."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.draws import draws
from tests.solve.workshop import Workshop, origin, solve
from walewright.counted.model import SizedBand
from walewright.design.model import Design, EdgeName, Piece, Slot
from walewright.report.english import in_english
from walewright.solve.joins.shares import SUITS_RIB, BandPart, shared_out


def necked(shop: Workshop, rib_across: float = 2.0, rib_every: int = 3) -> Design:
    def part(name: str, depth: float, flat: float) -> Piece:
        levels = shop.levels(name, hem=0, top=50)
        return shop.piece(name, 45, levels, (shop.run("top"),), neck=shop.neck(name, 18, depth, flat))

    rib = shop.fabric("rib", rib_across, 3.0, rib_every)
    return shop.design(
        part("back", 3, 12),
        part("front", 9, 9),
        joins=(shop.join("back shoulder", "front shoulder"),),
        bands=(shop.band("neckband", "back neck + front neck"),),
        rib=rib,
    )


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


def one_sided(shop: Workshop, holes: int = 0, stitches: int = 2, depth: float = 3.0) -> Design:
    """A band up the right edge of a front."""
    levels = shop.levels("front", hem=0, top=40)
    piece = shop.piece("front", 30, levels, (shop.run("top"),), (shop.run("top", name="edge"),))
    button = replace(
        shop.band("button", "front edge"),
        holes=shop.counts(holes) if holes else (),
        hole_stitches=stitches,
        first=shop.each(2),
        last=shop.each(3),
    )
    design = shop.design(piece, bands=(button,), rib=shop.fabric("rib", 2.0, 3.0))
    return replace(design, edgings=(replace(design.edgings[0], depth=shop.each(depth)),))


def test_a_band_up_one_edge_takes_its_length_at_its_own_tension(workshop: type[Workshop]) -> None:
    made = band(one_sided(workshop("M")))
    (pick_up,) = made.pick_ups
    assert pick_up.part == "whole"
    assert pick_up.points == 120
    assert pick_up.stitches == 80
    assert pick_up.cm == pytest.approx(40)


@pytest.mark.parametrize("stitches", [1, 2, 3])
def test_buttonholes_lie_evenly_between_the_first_and_the_last(workshop: type[Workshop], stitches: int) -> None:
    made = band(one_sided(workshop("M"), 5, stitches))
    assert made.rows == 10
    assert {hole.row for hole in made.holes} == {6}
    assert {hole.taken for hole in made.holes} == {"eyelet" if stitches == 1 else "cast-off"}
    begin, end = -(made.stitches // 2), made.stitches // 2 - 1
    assert made.holes[0].first - begin == 4
    assert end - made.holes[-1].last == 6
    assert all(hole.last - hole.first + 1 == stitches for hole in made.holes)
    gaps = {after.first - before.last for before, after in pairwise(made.holes)}
    assert max(gaps) - min(gaps) <= 1


@pytest.mark.parametrize(("holes", "depth", "help_"), [(40, 3.0, "work 23 buttonholes"), (5, 0.5, "make the band deeper")])
def test_buttonholes_that_do_not_fit(workshop: type[Workshop], holes: int, depth: float, help_: str) -> None:
    counts, (told,) = solve(one_sided(workshop("M"), holes, depth=depth))
    assert counts is None
    assert told.code == "buttonholes-crowded"
    assert in_english(told).helps[0].startswith(help_)


def test_a_chained_edge_cannot_be_deeper_for_its_buttonholes(workshop: type[Workshop]) -> None:
    design = one_sided(workshop("M"), 3)
    chained = replace(design.edgings[0], kind="chained", depth=(0.0,))
    _, (told,) = solve(replace(design, edgings=(chained,)))
    assert in_english(told).helps[0].startswith("give the band an edging that has a depth")


def test_as_many_buttonholes_as_proposed_fit(workshop: type[Workshop]) -> None:
    assert len(band(one_sided(workshop("M"), 23)).holes) == 23


def thumb(shop: Workshop, width: float) -> Design:
    levels = shop.levels("mitten", cuff=0, palm=10, tip=20)
    slot = Slot("hole", "palm", shop.each(7), shop.each(4), "waste", origin("hole"))
    palm = shop.piece("mitten", 24, levels, (shop.run("tip"),), slots=(slot,))
    made = shop.piece("thumb", width, shop.levels("thumb", base=0, end=6), (shop.run("end"),))
    along = (EdgeName("mitten", "hole"), EdgeName("mitten", "hole upper"))
    return shop.design(palm, replace(made, start_way="along", start_along=along))


@pytest.mark.parametrize(("width", "hung"), [(14.0, [14, 14]), (12.0, [12, 12])])
def test_a_piece_is_begun_along_edges(workshop: type[Workshop], width: float, hung: list[int]) -> None:
    counts, told = solve(thumb(workshop("M"), width))
    assert told == ()
    assert counts is not None
    made = counts.sizes[0].piece("thumb")
    assert [p.stitches for p in made.start_pick_ups] == hung
    assert sum(hung) == made.start
    assert [p.points for p in made.start_pick_ups] == [14, 14]


def test_a_piece_begun_along_edges_has_no_more_stitches_than_places(workshop: type[Workshop]) -> None:
    counts, (told,) = solve(thumb(workshop("M"), 16.0))
    assert counts is None
    assert told.code == "start-longer-than-edges"
    assert in_english(told).helps[0] == "start it 14 cm wide at the most"


def collared(shop: Workshop, least: float, most: float | None) -> Design:
    """A collar begun along an edge of 12 cm that casts off 3 cm on the way."""
    edge = (shop.run("low", name="edge"), shop.run("top", -6.0, name="edge", cast_off=3.0))
    front = shop.piece("front", 40, shop.levels("front", hem=0, low=4, top=12), edge)
    made = shop.piece("collar", least, shop.levels("collar", seam=0, rim=6), (shop.run("rim"),))
    begun = replace(made, start_way="along", start_along=(EdgeName("front", "edge left"),))
    return shop.design(front, begun if most is None else replace(begun, start_most=shop.each(most)))


@pytest.mark.parametrize(("rows_per_cm", "start"), [(3.0, 28), (1.5, 24)])
def test_a_free_start_has_as_many_stitches_as_there_are_places(workshop: type[Workshop], rows_per_cm: float, start: int) -> None:
    """Row ends, and what the edge casts off at once: as wide as the middle of the range, or as there are places."""
    shop = workshop("M", up=rows_per_cm)
    counts, told = solve(collared(shop, 11, 17))
    assert told == ()
    assert counts is not None
    collar = counts.sizes[0].piece("collar")
    assert collar.start == start
    assert sum(p.stitches for p in collar.start_pick_ups) == start
    _, fixed = solve(collared(shop, 14, None))
    assert [d.code for d in fixed] == ([] if start == 28 else ["start-longer-than-edges"])


def test_what_a_free_start_has_no_places_for_is_told(workshop: type[Workshop]) -> None:
    counts, (told,) = solve(collared(workshop("M", up=1.0), 11, 17))
    assert counts is None
    assert told.code == "counts-conflict"
    assert in_english(told).message.endswith(
        "the stitches of the start of the collar cannot have a place each along front edge left"
    )


def test_halves_that_differ_get_each_their_own(workshop: type[Workshop]) -> None:
    edge = EdgeName("front", "slit")
    parts = [BandPart(edge, "left", 40, 14.0, 28.0, False), BandPart(edge, "right", 40, 12.0, 24.0, False)]
    assert shared_out(parts, 0) == (28, 24)


PARTS = st.lists(st.tuples(st.integers(1, 60), st.floats(0.5, 70), st.integers(0, 30)), min_size=1, max_size=3)


@settings(max_examples=draws(200), deadline=None)
@given(PARTS, st.sampled_from([0, 4, 6]))
def test_shares_add_up_and_fit(necks: list[tuple[int, float, int]], repeat: int) -> None:
    parts: list[BandPart] = []
    for points, wanted, centre in necks:
        edge = EdgeName("front", "neck")
        halves = [BandPart(edge, side, points, 1.0, wanted, False) for side in ("left", "right")]
        parts += [halves[0], *([BandPart(edge, "centre", 2 * centre, 1.0, 2.0 * centre, True)] if centre else []), halves[1]]
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
