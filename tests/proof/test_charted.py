"""Where charts lie, and whether patterns go on across joins: counts against the bed's rows."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.proof.charted_by_hand import DESIGN, HERE, PLACED, SIZED, knitted, lace
from walewright.counted.model import ShapingPhrase, SizedChart, SizedGarment, SizedJoin, SizedPiece, SizedRun, SizedWedge
from walewright.counted.needles import moved_in
from walewright.design.model import Design, EdgeName, ShapingWay
from walewright.proof.charted import charts, matches
from walewright.report.english import ENGLISH
from walewright.report.wording import phrased


def differences(design: Design = DESIGN, **changed: object) -> list[str]:
    sized = replace(SIZED, charts=(replace(PLACED, **changed),))
    return [phrased(where, ENGLISH) for where, counted, made in charts(design, sized, knitted(lace())) if counted != made]


def test_a_chart_that_lies_as_counted_is_silent() -> None:
    assert differences() == []


@pytest.mark.parametrize(
    "changed",
    [{"first": -4}, {"last": 5}, {"edge": 2}, {"repeats": 3}, {"from_row": 20}, {"edge": 0, "first": -6, "last": 5}],
    ids=str,
)
def test_a_chart_that_lies_otherwise_is_told(changed: dict[str, object]) -> None:
    assert differences(**changed)


def test_only_a_fabric_of_whole_repeats_has_to_fill_the_width() -> None:
    centred = replace(DESIGN, fabrics=tuple(replace(f, fit="centred") for f in DESIGN.fabrics))
    assert differences(centred, repeats=1) == []
    assert differences(repeats=1) == ["row 3, under the chart eyelets: stitches"]


def test_borders_are_of_the_width() -> None:
    bordered = replace(DESIGN, charts=(replace(DESIGN.charts[0], before=1, repeat=2, after=2),))
    assert differences(bordered, repeats=2) == ["row 3, under the chart eyelets: stitches"]
    assert differences(bordered, repeats=3) == ["row 3, under the chart eyelets: stitches"]
    four = replace(DESIGN, charts=(replace(DESIGN.charts[0], before=2, repeat=2, after=2),))
    assert differences(four, repeats=3) == []


def test_a_panel_lies_within_the_row() -> None:
    assert differences(area="panel", first=-5, last=4) == []
    assert differences(area="panel", first=-5, last=5)
    assert differences(area="panel", first=-8, last=1) == ["row 3, under the chart eyelets: needles in work"]


def test_an_end_moved_in_the_very_row_lies_where_it_was_or_where_it_goes() -> None:
    run = SizedRun("", 2, 10, (ShapingPhrase((0,), (-2,), 1),), ShapingWay("simple"), HERE)
    moved, held = replace(SIZED, left=(run,)), replace(SIZED, wedges=(SizedWedge("wedge", "left", 2, (2, 2), HERE),))
    for sized in (moved, held):
        # The bed has the end two stitches further in than counted, as after the move; or where it is counted, as before it.
        for first, silent in ((-5, True), (-7, True), (-8, False), (-4, False)):
            placed = replace(sized, charts=(replace(PLACED, first=first, repeats=2),))
            told = [phrased(where, ENGLISH) for where, counted, made in charts(DESIGN, placed, knitted(lace())) if counted != made]
            assert (not told) == silent, (first, told)
    assert (moved_in(moved, 2, "left"), moved_in(held, 2, "left"), moved_in(held, 2)) == (((-2,), 0), ((), 2), ((), 2))
    assert moved_in(moved, 2, "right") == moved_in(moved, 4, "left") == moved_in(held, 2, "right") == ((), 0)


# ----------------------------------------------------------------- across joins


def joined(one: SizedChart, other: SizedChart, matching: bool = True) -> list[str]:
    back, front = (replace(SIZED, name=name, charts=(placed,)) for name, placed in (("back", one), ("front", other)))
    pieces: tuple[SizedPiece, ...] = (back, front)
    join = SizedJoin((EdgeName("back", "side"),), (EdgeName("front", "side"),), 10, 10, 5.4, 5.4, 0.0, HERE, matching=matching)
    fabrics = {name: knitted(lace(), name) for name in ("back", "front")}
    told = matches(DESIGN, SizedGarment("one", pieces, (), (join,), ()), join, fabrics)
    return [phrased(where, ENGLISH) for where, counted, made in told if counted != made]


def test_whole_repeats_from_one_row_match() -> None:
    assert joined(PLACED, PLACED) == []


def test_a_phase_that_is_off_is_told_at_both_seams() -> None:
    assert len(joined(PLACED, replace(PLACED, start=-4))) == 2


def test_other_rows_and_other_charts_are_told() -> None:
    assert joined(PLACED, replace(PLACED, from_row=4))
    assert joined(PLACED, replace(PLACED, chart="other"))
    assert joined(PLACED, replace(PLACED, fabric=""))


def test_edge_stitches_of_other_widths_are_told() -> None:
    assert joined(PLACED, replace(PLACED, edge=2))


def test_a_join_that_need_not_match_is_not_asked() -> None:
    assert joined(PLACED, replace(PLACED, start=-4), matching=False) == []
