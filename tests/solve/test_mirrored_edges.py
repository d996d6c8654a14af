"""Edges that are mirror images of each other take as many stitches, in one band or in two, in every size."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from tests.draws import draws
from tests.whole.shipped_once import GARMENTS, SHIPPED, source
from walewright.counted.model import PickUp, SizedBand, SizedGarment
from walewright.design import Changes
from walewright.design.model import Design, EdgeName
from walewright.pipeline import counted
from walewright.solve.joins.mirrored import evened
from walewright.solve.joins.shares import BandPart, Shares, begun_on, shared_out
from walewright.trade.sides import EdgePart

NOT_WATCHED = True

NECKS = {
    "v": ("v", ("one", "two", "three")),
    "v with a stitch": ("v, 1 stitch flat", ("one", "two")),
    "square": ("square", ("one", "two", "three", "four")),
    "round": ("round", ("one", "two", "three", "four")),
}
"""How each is written, and into how many bands it can be parted: a stitch alone is none."""

BANDS = {
    "two": ("back neck + front neck_left + front neck_centre", "front neck_right"),
    "three": ("back neck + front neck_left", "front neck_centre", "front neck_right"),
    "four": ("back neck", "front neck_left", "front neck_centre", "front neck_right"),
    "one": ("back neck + front neck",),
}
"""What the neckband is made of; a V without a stitch in its point has no middle."""


def pullover(neck: str, bands: str, wide: float, deep: float, across: float, up: float, every: str) -> str:
    lines = [[edge for edge in line.split(" + ") if neck != "v" or "centre" not in edge] for line in BANDS[bands]]
    along = [" + ".join(line) for line in lines if line]
    drawn = "\n".join(f"band band_{n} with collar along {line}" for n, line in enumerate(along))
    return f"""\
pattern "Neck"
sizes     S  M  L
    half 44 48 52 cm
    neck {wide:g} {wide + 0.5:g} {wide + 1:g} cm
machine standard
yarn wool "wool", 100 g = 200 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = {across:g} cm by {up:g} cm
fabric rib
    latched rib every {every} needle in wool at tension 5
    swatch 40 stitches by 60 rows = {across * 0.94:g} cm by {up * 0.95:g} cm
edging collar in rib, 3 cm deep, added after, cast off chain
piece back in plain
    levels hem 0 cm, top 40 cm
    start half wide with chain
    edges straight to top called side
    neck neck wide, 3 cm deep, round
    end on waste yarn
piece front like back
    neck neck wide, {deep:g} cm deep, {NECKS[neck][0]}
{drawn}
making up
    join back shoulder to front shoulder, linked
"""


def lopsided(garment: SizedGarment, edgings: Mapping[str, str]) -> Iterator[tuple[str, set[int]]]:
    """Edges of one piece that bands of one edging take unequally, though they have as many rows and are as long."""
    taken: dict[tuple[str, str, int, float], set[int]] = defaultdict(set)
    for band in garment.bands:
        for pick in _along_rows(band):
            taken[edgings[band.name], pick.edge.piece, pick.points, round(pick.cm, 6)].add(pick.stitches)
    return ((f"{piece}, {rows} places", counts) for (_, piece, rows, _), counts in taken.items() if len(counts) > 1)


def _along_rows(band: SizedBand) -> Iterable[PickUp]:
    return (pick for pick in band.pick_ups if pick.rows)


def images(garment: SizedGarment, design: Design) -> Iterator[tuple[str, set[int]]]:
    """Edges of a front that take otherwise than those of its mirror image."""
    models = {piece.name: piece.mirror_of for piece in design.pieces if piece.mirror_of}
    edges = {band.name: band.edging for band in design.bands}
    taken: dict[tuple[str, str, str], list[tuple[bool, EdgePart, int]]] = defaultdict(list)
    for band in (band for band in garment.bands if band.name in edges):
        for pick in _along_rows(band):
            if pick.between is None:
                model = models.get(pick.edge.piece, pick.edge.piece)
                own = (pick.edge.piece in models, pick.part, pick.stitches)
                taken[edges[band.name], model, pick.edge.edge].append(own)
    for (_, model, edge), found in taken.items():
        counts = {stitches for _, part, stitches in found if part == "whole"}
        if len(counts) > 1 and {mirrored for mirrored, _, _ in found} == {True, False}:
            yield f"{model} {edge}", counts


@settings(max_examples=draws(75), deadline=None)
@given(
    st.sampled_from([(neck, bands) for neck in sorted(NECKS) for bands in NECKS[neck][1]]),
    st.floats(14, 24).map(lambda x: round(x, 1)),
    st.floats(5, 24).map(lambda x: round(x, 1)),
    st.floats(16, 22).map(lambda x: round(x, 1)),
    st.floats(16, 24).map(lambda x: round(x, 1)),
    st.sampled_from(["2nd", "3rd", "4th", "5th"]),
)
def test_both_sides_of_any_neck(kind: tuple[str, str], wide: float, deep: float, across: float, up: float, every: str) -> None:
    outcome = counted(pullover(*kind, wide, deep, across, up, every), "neck.wale", SHIPPED, Changes())
    assume(outcome.counts is not None)
    for garment in outcome.counts.sizes if outcome.counts is not None else ():
        assert not list(lopsided(garment, defaultdict(str))), garment.size


def test_a_neckband_in_two_parts_has_whole_ribs_in_both_where_the_back_can_give() -> None:
    """By itself the right one would have 48, and the left one 46 along the same edge for the sake of its own rib."""
    outcome = counted(pullover("v", "two", 20, 20, 20, 21.4, "3rd"), "neck.wale", SHIPPED, Changes())
    assert outcome.counts is not None
    for garment in outcome.counts.sizes:
        left, right = garment.bands
        assert left.stitches % 6 == right.stitches % 6 == 0
        assert left.pick_ups[-1].stitches == right.stitches


@pytest.mark.parametrize("name", GARMENTS)
def test_both_sides_of_every_shipped_garment(name: str) -> None:
    outcome = counted(source(name), f"{name}.wale", SHIPPED, Changes())
    assert outcome.counts is not None
    assert outcome.design is not None
    edgings = {band.name: band.edging for band in (*outcome.design.bands, *(outcome.counts.parted or outcome.design).bands)}
    for garment in outcome.counts.sizes:
        assert not list(lopsided(garment, edgings)), garment.size
        assert not list(images(garment, outcome.design)), garment.size


# ----------------------------------------------------------------- shares alone


def part(name: str, side: EdgePart, points: int, wanted: float, firm: bool = False, model: str = "") -> BandPart:
    piece, edge = name.split()
    image = (model, side) if model else (piece, side)
    return BandPart(EdgeName(piece, edge), side, points, wanted / 2, wanted, firm, image=image)


def shares(*parts: BandPart, repeat: int = 6, rest: int = 0) -> Shares:
    return Shares("collar", parts, shared_out(parts, repeat, rest), repeat, rest)


def test_what_is_even_already_is_left_as_it_is() -> None:
    bands = (shares(part("front neck", "left", 60, 47.3)), shares(part("front neck", "right", 60, 47.3)))
    assert evened(bands) == bands


def test_fronts_that_are_mirror_images_take_as_many_though_one_is_a_row_longer() -> None:
    left = shares(part("left_front edge", "whole", 60, 40.6), part("back neck", "centre", 11, 11.0, firm=True), repeat=0)
    right = shares(part("right_front edge", "whole", 60, 41.2, model="left_front"), repeat=0)
    made = evened((left, right))
    assert left.counts[0] != right.counts[0]
    assert made[0].counts[0] == made[1].counts[0]


def test_bands_of_other_edgings_are_left_alone() -> None:
    left, right = shares(part("front neck", "left", 60, 46.7)), shares(part("front neck", "right", 60, 46.7), repeat=0)
    made = evened((left, Shares("border", right.parts, (46,), 0)))
    assert [own.counts for own in made] == [(48,), (46,)]


WANTED = st.floats(3, 80).map(lambda x: round(x, 2))


@settings(max_examples=draws(100), deadline=None)
@given(WANTED, WANTED, st.integers(0, 30), st.sampled_from([(0, 0), (4, 0), (6, 0), (2, 1), (3, 2)]))
def test_two_bands_with_one_edge_in_common(front: float, back: float, centre: int, ask: tuple[int, int]) -> None:
    repeat, rest = ask
    middle = [part("back neck", "centre", centre, float(centre), firm=True)] if centre else []
    halves = [part("back neck", side, 90, back) for side in ("left", "right")]
    left = shares(halves[0], *middle, halves[1], part("front neck", "left", 90, front), repeat=repeat, rest=rest)
    right = shares(part("front neck", "right", 90, front), repeat=repeat, rest=rest)
    one, other = evened((left, right))
    assert one.counts[0] == one.counts[-2]
    assert one.counts[-1] == other.counts[0]
    assert all(count == p.wanted if p.firm else 1 <= count <= p.points for p, count in zip(one.parts, one.counts, strict=True))
    for own in (one, other):
        for p, count in zip(own.parts, own.counts, strict=True):
            assert abs(count - p.wanted) <= 0.03 * p.wanted + 2.5 or own in (left, right)


@pytest.mark.parametrize(("stitches", "hung"), [(45, (13, 19, 13)), (46, (14, 18, 14)), (48, (14, 20, 14)), (54, (16, 22, 16))])
def test_a_piece_begun_round_a_neck_takes_as_many_on_both_sides(stitches: int, hung: tuple[int, ...]) -> None:
    left, right = (part("back neck", side, 30, 14.1) for side in ("left", "right"))
    middle = part("back neck", "centre", 24, 18.4)
    counts = begun_on([left, middle, right], stitches)
    assert (counts[0], sum(counts)) == (counts[2], stitches)
    assert counts == hung
