"""Free levels: a cap comes out as long as the armholes it is sewn to, or the message says what would do."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.solve.workshop import Workshop, solve
from walewright.counted import counted_piece
from walewright.counted.edges import edge_length
from walewright.counted.in_size import in_size
from walewright.design.model import Design, EdgeJoin, EdgeRun, Level, Piece, ShapingWay
from walewright.guide.english import LANGUAGE
from walewright.report.english import in_english
from walewright.solve.joins.matching import movers
from walewright.solve.joins.seams import side_length
from walewright.solve.model import Counts

DOUBLE = ShapingWay("fashioned", 2)


def body(shop: Workshop, name: str, armhole: float | tuple[float, ...] = 22.0) -> Piece:
    """Straight to the armhole, then 3 cm cast off, a curve of 3 cm more, and straight on."""
    tall = shop.each(armhole)
    levels = shop.levels(name, hem=0, underarm=40, chest=46, top=tuple(40 + a for a in tall))
    runs = (
        shop.run("underarm", name="side"),
        shop.run("chest", -6, "curve", name="armhole", cast_off=3),
        shop.run("top", name="armhole"),
    )
    return shop.piece(name, 50, levels, runs)


def sleeve(shop: Workshop, least: float = 6.0, most: float = 18.0, widest: float | tuple[float, ...] = 36.0) -> Piece:
    """A cap: cast off, curve, slope, arch, and the rest cast off; its last three levels are free."""
    wide = shop.each(widest)

    def free(level: str, share: float) -> Level:
        made = shop.levels("sleeve", **{level: 44 + share * least})[0]
        return replace(made, most=shop.each(44 + share * most))

    levels = (*shop.levels("sleeve", cuff=0, widest=44), free("curved", 0.3), free("sloped", 0.7), free("top", 1.0))
    rest = tuple((w - 8) / 2 for w in wide)
    runs: tuple[EdgeRun, ...] = (
        shop.run("widest", tuple((w - 24) / 2 for w in wide), way=DOUBLE, name="under"),
        shop.run("curved", tuple(-0.4 * r for r in rest), "curve", name="cap", cast_off=2),
        shop.run("sloped", tuple(-0.25 * r for r in rest), name="cap"),
        shop.run("top", tuple(-0.35 * r for r in rest), "arch", name="cap"),
    )
    return shop.piece("sleeve", 24, levels, runs, end_way="cast-off")


def set_in(shop: Workshop, cap: Piece, armhole: float | tuple[float, ...] = 22.0, easing: float = 0.0) -> Design:
    join = replace(shop.join("sleeve cap + sleeve end", "back armhole + front armhole", easing), longer=shop.each(2.0))
    return shop.design(body(shop, "back", armhole), body(shop, "front", armhole), cap, joins=(join,))


def counted(design: Design) -> Counts:
    counts, told = solve(design)
    assert told == ()
    assert counts is not None
    return counts


@pytest.mark.parametrize(("across", "up"), [(1.3, 1.85), (2.0, 3.0), (2.8, 4.1)])
def test_a_cap_comes_as_near_as_rows_allow(workshop: type[Workshop], across: float, up: float) -> None:
    shop = workshop("M", across, up)
    design = set_in(shop, sleeve(shop))
    (garment,) = counted(design).sizes
    (join,) = garment.joins
    off = abs(join.one_cm - join.other_cm - 2.0)
    # Two rows more are four row ends more round the cap, which goes up one side and down the other.
    assert off <= 2 / up + 0.05
    assert join.longer_cm == 2.0
    assert off <= join.easing_cm + 1e-9 <= off + 0.1


def test_the_cap_is_nearest_of_all_its_heights(workshop: type[Workshop]) -> None:
    """Pinned two rows higher or lower, it is no nearer."""
    shop = workshop("M")
    design = set_in(shop, sleeve(shop))
    (garment,) = counted(design).sizes
    made = garment.piece("sleeve")
    chosen = abs(garment.joins[0].one_cm - garment.joins[0].other_cm - 2.0)
    for rows in (made.rows - 2, made.rows + 2):
        share = (rows / 3.0 - 44 - 6) / 12
        heights = {"curved": 44 + 0.3 * (6 + share * 12), "sloped": 44 + 0.7 * (6 + share * 12), "top": rows / 3.0}
        pinned = tuple(
            replace(level, height=(heights.get(level.name, level.height[0]),), most=None) for level in design.piece("sleeve").levels
        )
        other = replace(design, pieces=(*design.pieces[:2], replace(design.piece("sleeve"), levels=pinned)), joins=())
        (beside,) = counted(other).sizes
        one, armholes = (
            side_length(in_size(other.at(0), beside.pieces), side) for side in (design.joins[0].one, design.joins[0].other)
        )
        assert abs(one.cm - armholes.cm - 2.0) >= chosen - 0.2


def test_each_size_gets_its_own_height_and_the_table_says_so(workshop: type[Workshop]) -> None:
    shop = workshop()
    garments = counted(set_in(shop, sleeve(shop), (20.0, 22.0, 24.0), easing=1.0)).sizes
    tops = [g.piece("sleeve").rows for g in garments]
    assert tops[0] < tops[1] < tops[2]
    for garment in garments:
        (join,) = garment.joins
        assert abs(join.one_cm - join.other_cm - 2.0) <= 1.0
        (height,) = [d for d in garment.deviations if d.piece == "sleeve" and LANGUAGE.measure(d.key) == "height of top"]
        assert height.wanted == pytest.approx(height.solved)


def test_a_cap_that_cannot_be_high_enough(workshop: type[Workshop]) -> None:
    shop = workshop()
    design = set_in(shop, sleeve(shop, most=8.0), (16.0, 22.0, 24.0))
    counts, (told,) = solve(design)
    assert counts is None
    assert told.code == "cap-cannot-meet"
    assert told.sizes == ("M", "L")
    assert [note[:3] for note in in_english(told).notes] == ["M: ", "L: "]
    assert in_english(told).helps[0].startswith("let `top` of the sleeve be ")
    assert in_english(told).helps[0].endswith("at the most")
    assert in_english(told).helps[1].startswith("make the sleeve ")
    assert in_english(told).helps[1].endswith("wide at `widest`")


def test_both_changes_proposed_do(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    _, (told,) = solve(set_in(shop, sleeve(shop, most=8.0)))
    high = float(in_english(told).helps[0].split(" be ")[1].split(" cm")[0])
    wide = float(in_english(told).helps[1].removeprefix("make the sleeve ").split(" cm")[0])
    low = sleeve(shop, most=8.0)
    higher = replace(low, levels=(*low.levels[:-1], replace(low.levels[-1], most=shop.each(high))))
    counted(set_in(shop, higher))
    under, curved, *rest = low.left
    more = (wide - 36) / 2
    runs = (
        replace(under, change=shop.each(under.change[0] + more)),
        replace(curved, change=shop.each(curved.change[0] - more)),
        *rest,
    )
    counted(set_in(shop, replace(low, left=runs, right=runs)))


def test_a_cap_that_cannot_be_low_enough(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    _, (told,) = solve(set_in(shop, sleeve(shop, least=17.0, most=20.0), 18.0))
    assert told.code == "cap-cannot-meet"
    assert in_english(told).helps[0].split("`")[1::2] == ["curved", "sloped", "top"]
    assert in_english(told).helps[0].endswith("at the least")


def test_levels_free_of_any_join_stay_with_the_programme(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    design = shop.design(sleeve(shop))
    assert movers(design, EdgeJoin((), (), (0.0,), design.pieces[0].origin)) == ()
    (garment,) = counted(design).sizes
    assert 44 + 6 <= garment.piece("sleeve").rows / 3.0 <= 44 + 18


def test_the_first_side_moves_if_it_can(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    design = set_in(shop, sleeve(shop))
    (join,) = design.joins
    assert movers(design, join) == ("sleeve",)
    assert movers(design, replace(join, one=join.other, other=join.one)) == ("sleeve",)


def test_a_side_that_goes_round_a_piece_counts_both_its_edges(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    design = set_in(shop, sleeve(shop))
    (garment,) = counted(design).sizes
    made = garment.piece("sleeve")
    cap, end = (edge_length(counted_piece(design, made), name) for name in ("cap", "end"))
    side = side_length(in_size(design.at(0), garment.pieces), design.joins[0].one)
    assert side.rows == 2 * cap.rows
    assert side.stitches == end.stitches
    assert side.cm == pytest.approx(2 * cap.cm + end.cm)
    alone = side_length(in_size(design.at(0), garment.pieces), design.joins[0].one[:1])
    assert alone.cm == pytest.approx(cap.cm)
