"""Slopes with fewer rows than stitches, wedges with fewer stitches than steps: told with figures that were tried."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.solve.workshop import Workshop, origin, solve
from walewright.design.model import Design, Opening, PerSize, ShapingWay, Wedge
from walewright.report.english import in_english
from walewright.report.model import Diagnostic
from walewright.solve.conflict.changed import changed

SIMPLE = ShapingWay("simple")


def sloped(
    shop: Workshop, by: float | PerSize, way: ShapingWay = SIMPLE, high: float | PerSize = 10, left_only: bool = False
) -> Design:
    """2 stitches and 3 rows to the cm; the slope begins 5 cm up."""
    levels = shop.levels("front", hem=0, low=5, high=high, top=30)
    runs = (shop.run("low"), shop.run("high", by, way=way), shop.run("top"))
    straight = tuple(shop.run(run.to_level) for run in runs)
    return shop.design(shop.piece("front", 60, levels, runs, straight if left_only else runs))


def refused(design: Design) -> Diagnostic:
    counts, (told,) = solve(design)
    assert counts is None
    return told


@pytest.mark.parametrize(
    ("by", "way", "possible"),
    [
        # 15 rows: 15 stitches in by one a row, give or take one, 30 by two, 8 out without a tool, 15 with one.
        (-8.0, ShapingWay("simple"), True),
        (-8.6, ShapingWay("simple"), False),
        (-15.0, ShapingWay("fashioned", 2, 2), True),
        (-16.0, ShapingWay("fashioned", 2, 2), False),
        (4.0, ShapingWay("simple"), True),
        (4.6, ShapingWay("simple"), False),
        (7.0, ShapingWay("fashioned", 2), True),
        (8.6, ShapingWay("fashioned", 2), False),
    ],
)
def test_a_slope_moves_as_far_as_its_rows_go(workshop: type[Workshop], by: float, way: ShapingWay, possible: bool) -> None:
    counts, told = solve(sloped(workshop("M"), by, way))
    assert [d.code for d in told] == ([] if possible else ["slope-too-flat"])
    assert (counts is not None) == possible


@pytest.mark.parametrize(("least", "most", "possible"), [(-12.0, -8.0, True), (-12.0, -9.0, False), (-12.0, 2.0, True)])
def test_a_free_width_counts_at_its_nearest(workshop: type[Workshop], least: float, most: float, possible: bool) -> None:
    """15 rows: an edge that may go 8 cm in need not go 12; one that has to go 9 cannot, and no figure of it can be written."""
    shop = workshop("M")
    design = sloped(shop, least)
    free = replace(design.piece("front").left[1], most=shop.each(most))
    runs = (design.piece("front").left[0], free, design.piece("front").left[2])
    design = replace(design, pieces=(replace(design.piece("front"), left=runs, right=runs),))
    counts, told = solve(design)
    assert (counts is not None) == possible
    if not possible:
        (flat,) = told
        assert flat.code == "slope-too-flat"
        assert {change.figure for changes in flat.changes for change in changes} <= {"height", "most"}
        assert flat.changes


@pytest.mark.parametrize("left_only", [False, True])
@pytest.mark.parametrize("by", [-12.0, 7.0])
def test_what_is_proposed_for_a_slope_does(workshop: type[Workshop], by: float, left_only: bool) -> None:
    design = sloped(workshop("M L"), by, left_only=left_only)
    said = refused(design)
    assert len(said.changes) == 3
    assert len(in_english(said).helps) == (5 if by < 0 else 4)
    for change, help_ in zip(said.changes, in_english(said).helps, strict=False):
        otherwise = changed(design, change)
        assert otherwise is not None
        counts, told = solve(otherwise)
        assert counts is not None, (help_, told)
    assert any("`steps " in help_ for help_ in in_english(said).helps)


def test_only_the_sizes_concerned_are_told_and_changed(workshop: type[Workshop]) -> None:
    said = refused(sloped(workshop("S M"), (-9.0, -9.0), high=(9.0, 11.0)))
    assert said.sizes == ("S",)
    assert in_english(said).labels[0] == "by 9 cm over 12 rows (S), 18 rows (M)"
    assert in_english(said).notes == ("it moves by 3 cm too much, or its end is 2 cm too low",)
    sizes = [[size for size, _ in change[0].values] for change in said.changes if change[0].figure != "steps"]
    assert sizes == [["S"], ["S"]]


def test_a_statement_of_both_edges_is_told_once_and_one_of_a_gap_too(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    assert refused(sloped(shop, -12.0)).code == "slope-too-flat"
    levels = shop.levels("front", hem=0, low=5, high=6, top=30)
    edge = (shop.run("high", 6.0), shop.run("top"))
    gap = Opening("vent", shop.each(12), shop.each(0), shop.each(0), "edges", ShapingWay("simple"), origin("vent"), "low", "top",
                  shop.each(0), "waste", edge, edge)  # fmt: skip
    front = replace(shop.piece("front", 60, levels, (shop.run("top"),)), openings=(gap,))
    said = refused(shop.design(front))
    assert said.code == "slope-too-flat"
    assert "the edge to `high` moves by more stitches than its rows allow" in in_english(said).message


def test_a_free_level_is_taken_at_its_highest(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    design = sloped(shop, -12.0)
    (front,) = design.pieces
    free = tuple(replace(level, most=shop.each(15)) if level.name == "high" else level for level in front.levels)
    assert solve(replace(design, pieces=(replace(front, levels=free),)))[0] is not None


def wedged(shop: Workshop, wide: float, kind: str) -> Design:
    levels = shop.levels("front", hem=0, low=5, high=10, top=30)
    wedge = Wedge("left wedge at low", "left", "low", origin("wedge"), "high", shop.each(wide), kind)
    return shop.design(replace(shop.piece("front", 60, levels, (shop.run("top"),)), wedges=(wedge,)))


@pytest.mark.parametrize(("wide", "kind", "possible"), [(4, "in", True), (3, "in", False), (2, "both", True), (1, "both", False)])
def test_a_wedge_has_a_stitch_for_each_step(workshop: type[Workshop], wide: float, kind: str, possible: bool) -> None:
    design = wedged(workshop("M"), wide, kind)
    counts, told = solve(design)
    assert [d.code for d in told] == ([] if possible else ["wedge-too-steep"])
    assert (counts is not None) == possible
    for change in () if possible else told[0].changes:
        otherwise = changed(design, change)
        assert otherwise is not None
        assert solve(otherwise)[0] is not None
    assert possible or [change[0].figure for change in told[0].changes] == ["wedge", "height"]


def test_a_wedge_of_a_mirror_image_is_changed_with_its_models(workshop: type[Workshop]) -> None:
    shop = workshop("M")
    design = wedged(shop, 1, "in")
    (front,) = design.pieces
    (wedge,) = front.wedges
    other = replace(front, name="other", mirror_of="front", wedges=(replace(wedge, name="right wedge at low", edge="right"),))
    both = replace(design, pieces=(front, other))
    said = refused(both)
    otherwise = changed(both, said.changes[0])
    assert otherwise is not None
    one, image = otherwise.pieces
    assert one.wedges[0].width == image.wedges[0].width
    assert solve(otherwise)[0] is not None


@pytest.mark.parametrize(
    ("by", "far", "says", "way"),
    [(7.0, 9.0, "fashioned 1 in", ShapingWay("fashioned", 1)), (-12.0, -17.0, "two at once", ShapingWay("simple", 0, 2))],
)
def test_another_way_of_shaping_is_proposed_where_it_goes_far_enough(
    workshop: type[Workshop], by: float, far: float, says: str, way: ShapingWay
) -> None:
    assert any(f"write `{says}`" in line for line in in_english(refused(sloped(workshop("M"), by))).helps)
    counts, told = solve(sloped(workshop("M"), by, way))
    assert counts is not None, told
    assert not any(f"write `{says}`" in line for line in in_english(refused(sloped(workshop("M"), far))).helps)
