"""Where bands wider than the bed are parted: at the centre back, at seams, between names, and only else within an edge."""

from __future__ import annotations

from fractions import Fraction

import pytest

from tests.solve.tiny import Tiny, tiny
from walewright.counted.model import PickUp, SizedBand
from walewright.design.model import EdgeName
from walewright.report.said import Said
from walewright.solve.joins.ratios import _ratio

COLLAR = """\
fabric fine
    stocking stitch in rope at tension 3
    swatch 100 stitches by 100 rows = 100 cm by 100 cm
edging collar in fine, 6 cm deep, added after
"""


def jacket(front: int, needles: int, holes: str = "", calls: str = "", sizes: str = "") -> Tiny:
    """A band up a front so high, round the neck and down the other front: 20 stitches up each neckline and 20 round the back."""
    called = calls or "    right edge straight to throat called edge\n"
    along = [name for name in ("edge", "above") if f"called {name}" in called]
    down = " + ".join(f"left_front {name}" for name in reversed(along))
    up = " + ".join(f"right_front {name}" for name in along)
    return tiny(
        f"""{sizes}{COLLAR}piece back in plain
    levels hem 0 cm, top {front + 20} cm
    start 40 cm wide with e-wrap
    edges straight to top called side
    neck 16 cm wide, 2 cm deep, square
    end cast off
piece left_front in plain
    levels hem 0 cm, half {front // 2 // 2 * 2} cm, throat {front} cm, top {front + 20} cm
    start 20 cm wide with e-wrap
    left edge straight to top called side
{called}    right edge slope by -8 cm at top called neckline
    end cast off
piece right_front in plain, mirror of left_front
join back shoulder to right_front end + left_front end
join back side to right_front side
join back side to left_front side
band trim with collar along {up} + right_front neckline + back neck + left_front neckline + {down}{holes}
""",
        needles=needles,
    )


def parts(made: Tiny) -> list[SizedBand]:
    return list(made.garments[0].bands)


def told(made: Tiny) -> list[str]:
    (warning,) = (d for d in made.warnings if d.code == "band-parted")
    return [note.key if isinstance(note, Said) else str(note) for note in warning.notes]


def stretches(made: Tiny, piece: str, edge: str, part: str = "whole") -> list[PickUp]:
    return [p for b in parts(made) for p in b.pick_ups if (p.edge.piece, p.edge.edge, p.part) == (piece, edge, part)]


def test_at_the_centre_back_where_that_will_do() -> None:
    """Two halves that are each other's mirror image."""
    made = jacket(40, needles=76)
    one, other = parts(made)
    assert one.stitches == other.stitches
    left, right = stretches(made, "back", "neck", "centre")
    assert (left.between, right.between) == ((0, 8), (8, 16))
    assert [p.edge.piece for p in one.pick_ups] == ["right_front", "right_front", "back", "back"]
    assert told(made) == ["part", "part", "cut-stitches", "ends-sewn"]


def test_at_seams_where_the_halves_have_no_room() -> None:
    made = jacket(40, needles=66)
    assert [{p.edge.piece for p in band.pick_ups} for band in parts(made)] == [{"right_front"}, {"back"}, {"left_front"}]
    assert told(made) == ["part", "part", "part", "ends-sewn"]


def test_between_two_names_of_a_front_where_its_author_has_given_them() -> None:
    calls = "    right edge straight to half called edge\n    right edge straight to throat called above\n"
    made = jacket(60, needles=58, calls=calls)
    edges = [[p.edge.edge for p in band.pick_ups] for band in parts(made)]
    assert edges[:2] == [["edge"], ["above"]]
    assert all(p.between is None for p in stretches(made, "right_front", "edge"))
    assert "cut-rows" not in told(made)


@pytest.mark.parametrize(("front", "needles"), [(70, 60), (100, 60), (130, 60), (150, 44), (200, 60)])
def test_within_an_edge_evenly_and_an_even_number_of_rows_up(front: int, needles: int) -> None:
    """Alike on both fronts, all of the edge, and each row once."""
    made = jacket(front, needles)
    assert all(band.stitches <= needles for band in parts(made))
    bottom_up: list[list[tuple[int, int]]] = []
    for piece in ("right_front", "left_front"):
        found = sorted(p.between for p in stretches(made, piece, "edge") if p.between is not None)
        assert [low for low, _ in found] == [0, *(high for _, high in found[:-1])]
        assert found[-1][1] == front
        assert all(high % 2 == 0 for _, high in found)
        sizes = [high - low for low, high in found]
        assert max(sizes) - min(sizes) <= 2
        bottom_up.append(found)
    assert bottom_up[0] == bottom_up[1]
    assert sum(p.points for p in stretches(made, "left_front", "edge")) == front


@pytest.mark.parametrize("count", [2, 3, 5, 9])
def test_no_buttonhole_lies_across_two_parts(count: int) -> None:
    """They keep their places, but for a stitch or two at the end of a part."""
    holes = f", buttonholes {count} over 3 stitches, 2 cm first, 2 cm last"
    made = jacket(100, 60, holes)
    whole = jacket(100, 400, holes)
    (band,) = parts(whole)
    wanted = [hole.first + band.stitches // 2 for hole in band.holes]
    found, before = [], 0
    for part in parts(made):
        for hole in part.holes:
            first = hole.first + part.stitches // 2
            assert 1 <= first <= part.stitches - 4
            found.append(before + first)
        before += part.stitches
    assert len(found) == count
    assert max(abs(a - b) for a, b in zip(found, wanted, strict=True)) <= 6


@pytest.mark.parametrize("needles", [400, 76, 60, 40])
@pytest.mark.parametrize("count", [1, 2, 4])
def test_buttonholes_along_an_edge_lie_there_alone_however_the_band_is_parted(needles: int, count: int) -> None:
    """So far from the ends of that edge as is written; 40 stitches are picked up along it."""
    made = jacket(40, needles, f", buttonholes {count} over 2 stitches along left_front edge, 5 cm first, 3 cm last")
    found, before = [], 0
    for part in parts(made):
        found += [before + hole.first + part.stitches // 2 for hole in part.holes]
        before += part.stitches
    begin = before - 40
    wanted = [begin + 5 + round((40 - 5 - 3 - 2) * n / max(count - 1, 1)) for n in range(count)]
    assert len(found) == count
    assert max(abs(a - b) for a, b in zip(found, wanted, strict=True)) <= 2


def test_buttonholes_that_do_not_fit_on_their_part_are_told() -> None:
    made = jacket(40, 400, ", buttonholes 9 over 4 stitches along left_front edge, 5 cm first, 3 cm last")
    assert made.error.code == "buttonholes-crowded"
    assert jacket(40, 400, ", buttonholes 9 over 4 stitches, 5 cm first, 3 cm last").counts is not None


def test_clear_of_what_is_cast_off_held_or_repeated_there() -> None:
    made = tiny(
        COLLAR
        + """piece back in plain
    levels hem 0 cm, again 20 cm, in_way 38 cm, over 42 cm, top 80 cm
    start 30 cm wide with e-wrap
    left edge straight to in_way called side
    left edge cast off 4 cm then curve by -4 cm at over called side
    left edge straight to top called side
    repeat 2 times from hem to again
    end cast off
band trim with collar along back side
""",
        needles=60,
    )
    one, other = (p.between for p in stretches(made, "back", "side"))
    # Of 100 rows and what is cast off; row 38 is reading 58.
    assert one is not None
    assert other is not None
    assert one[1] == other[0]
    assert one[1] % 2 == 0
    assert 44 <= one[1] <= 60
    assert abs(one[1] - 58) > 1


def test_an_edge_on_both_sides_is_no_edge_to_cut() -> None:
    made = tiny(
        COLLAR
        + """piece back in plain
    levels hem 0 cm, top 90 cm
    start 30 cm wide with e-wrap
    edges straight to top called side
    end cast off
band trim with collar along back side_left
""",
        needles=60,
    )
    assert [p.part for p in stretches(made, "back", "side", "left")] == ["left", "left"]


def test_each_size_is_cut_at_its_own_row() -> None:
    made = tiny(
        f"""sizes S L
    long 80 100 cm
{COLLAR}piece back in plain
    levels hem 0 cm, top long
    start 30 cm wide with e-wrap
    left edge straight to top called side
    end cast off
band trim with collar along back side
""",
        needles=60,
    )
    cuts = [garment.bands[0].pick_ups[0].between for garment in made.garments]
    assert cuts == [(0, 40), (0, 50)]


def test_a_band_of_each_copy_is_parted_at_each() -> None:
    made = tiny(
        COLLAR
        + """piece panel in plain, knit 2
    levels hem 0 cm, top 90 cm
    start 30 cm wide with e-wrap
    left edge straight to top called side
    end cast off
band trim with collar along panel side
""",
        needles=60,
    )
    assert [(band.name, band.copies) for band in parts(made)] == [("trim_1", 2), ("trim_2", 2)]
    assert made.counts is not None
    assert made.counts.parted is not None
    glued = made.counts.parted.glued.groups[0]
    assert {(pair.one.copy, pair.other.copy) for pair in glued.ends} == {(1, 1), (2, 2)}


@pytest.mark.parametrize(("across", "ratio"), [(0.75, (3, 4)), (0.667, (2, 3)), (0.8, (4, 5)), (0.5, (1, 2)), (1.0, (0, 0))])
def test_a_simple_ratio_is_told_where_it_comes_to_the_stitches_of_every_size(across: float, ratio: tuple[int, int]) -> None:
    """A stitch for every row needs no ratio."""
    fine = COLLAR.replace("100 cm by 100 cm", f"{100 / across:g} cm by 100 cm")
    made = tiny(
        f"""sizes S M L
    long 40 48 60 cm
{fine}piece back in plain
    levels hem 0 cm, top long
    start 30 cm wide with e-wrap
    left edge straight to top called side
    end cast off
band trim with collar along back side
""",
        needles=100,
    )
    assert [garment.bands[0].pick_ups[0].ratio for garment in made.garments] == [ratio] * 3


def test_a_band_is_knitted_for_each_copy_mirrored_ones_too() -> None:
    made = tiny(
        COLLAR
        + """piece left in plain, knit 2
    levels hem 0 cm, top 30 cm
    start 30 cm wide with e-wrap
    left edge straight to top called side
    end cast off
piece right in plain, mirror of left, knit 2
band trim with collar along left side
band other with collar along right side, buttonholes 2 over 2 stitches, 3 cm first, 3 cm last
""",
        needles=60,
    )
    trim, other = parts(made)
    assert (trim.copies, other.copies) == (2, 2)
    assert trim.stitches == other.stitches
    assert [p.left_end for p in (*trim.pick_ups, *other.pick_ups)] == ["bottom", "top"]


@pytest.mark.parametrize(
    ("needles", "high", "count"), [(40, 68, 2), (40, 72, 2), (40, 74, 3), (42, 76, 2), (42, 78, 3), (40, 110, 4)]
)
def test_a_part_leaves_four_needles_of_the_bed_free(needles: int, high: int, count: int) -> None:
    """A stitch to a row along one straight edge: as few parts as have room, each as long as the others."""
    made = tiny(
        f"""{COLLAR}piece scarf in plain
    levels hem 0 cm, top {high} cm
    start 20 cm wide with e-wrap
    left edge straight to top called one
    right edge straight to top
    end cast off
band trim with collar along scarf one
""",
        needles=needles,
    )
    each = [band.stitches for band in parts(made)]
    assert len(each) == count
    assert sum(each) == high
    assert max(each) - min(each) <= 2
    assert max(each) <= needles


@pytest.mark.parametrize("rows", [10, 50, 96, 150])
def test_a_ratio_is_the_simplest_that_is_near_enough(rows: int) -> None:
    """Half a stitch off, and one more in a hundred rows: against every ratio of up to ten rows, at its limit and one beyond."""
    allowed = Fraction(1, 2) + Fraction(rows, 100)
    ratios = [(per, every) for every in range(2, 11) for per in range(1, every)]

    def picked(stitches: int, points: int = rows) -> PickUp:
        return PickUp(EdgeName("back", "side"), "whole", stitches, points, 20.0, rows=rows)

    limits = 0
    for stitches in range(1, rows + 3):
        near = [(p, e) for p, e in ratios if abs(stitches - rows * Fraction(p, e)) <= allowed]
        limits += any(abs(stitches - rows * Fraction(p, e)) == allowed for p, e in ratios)
        assert _ratio([picked(stitches)]) == (near[0] if near else (0, 0))
        # It has to hold in every size, and where chains lie between the rows it is none.
        both = [r for r in near if abs(stitches + 1 - rows * Fraction(*r)) <= allowed]
        assert _ratio([picked(stitches), picked(stitches + 1)]) == (both[0] if both else (0, 0))
        assert _ratio([picked(stitches, rows + 2)]) == (0, 0)
    assert limits or rows != 50
