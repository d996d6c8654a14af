"""Pictures, carried ends, tails and what is said to be knitted: which end of which yarn is in which loop."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from tests.bed.by_hand import BED, Ops, fabric, refusal, rows
from walewright.bed import Bed, BedResult, Gauge, KnitFabric, LoopKind, knit
from walewright.knit.operations import (
    Block,
    BreakYarn,
    CastOff,
    CastOn,
    Gather,
    Hold,
    InFabric,
    IntoWork,
    MoveCarriage,
    NameEdge,
    OntoWaste,
    Operation,
    Pass,
    PictureRow,
    Release,
    SetCounter,
    SewOff,
    Side,
    Transfer,
    UseYarn,
    Work,
    Wrap,
)

One = Callable[..., BedResult]
START = (MoveCarriage("right"), IntoWork(0, 9), UseYarn("wool", "4"), CastOn("e-wrap", 0, 9))
"""Loops 0..9 on R 1 .. R 10, the carriage at the right."""
OFF = OntoWaste(0, 9, 8, "end")
Blocks = tuple[tuple[str, int, int], ...]


def knitted(*ops: Operation, bed: Bed) -> KnitFabric:
    return fabric(knit(Work("S", (Block("swatch", ops),)), bed))


def runs(made: KnitFabric) -> list[list[int]]:
    """Row by row the runs of its blocks, from left to right."""
    found: dict[int, list[int]] = {}
    for course in made.courses:
        if course.kind == "knit":
            found.setdefault(course.counter, []).append(course.run)
    return list(found.values())


# ------------------------------------------------------------------ pictures

BLOCKS: Blocks = (("wool", 0, 3), ("navy", 4, 6), ("wool", 7, 9))


def test_a_picture_row_is_one_course_a_block(one: One) -> None:
    made = fabric(one(*START, PictureRow("left", "4", BLOCKS), OFF))
    blocks = [course for course in made.courses if course.kind == "knit"]
    assert [(c.yarn, c.tension, c.first, c.last, c.count, c.counter, c.to) for c in blocks] == [
        ("wool", "4", 0, 3, 4, 1, "left"),
        ("navy", "4", 4, 6, 3, 1, "left"),
        ("wool", "4", 7, 9, 3, 1, "left"),
    ]
    assert [made.parents_of(blocks[0].first_loop + i) for i in range(10)] == [(i,) for i in range(10)]
    assert all(made.course_of(blocks[0].first_loop + i).yarn == "navy" for i in (4, 5, 6))
    assert made.crossings == ((1, 4), (1, 7))
    assert made.loops_by_yarn == {("wool", "4"): 17, ("navy", "4"): 3}


def test_a_picture_row_is_measured_over_its_whole_width(one: One) -> None:
    two = (PictureRow("left", "4", BLOCKS), PictureRow("right", "4", BLOCKS))
    wool_only = replace(BED, gauges=BED.gauges, fabrics={"picture": Gauge(2.0, 3.0)})
    made = knitted(*START, InFabric("picture"), *two, OFF, NameEdge("side", "outer", 0, 2), bed=wool_only)
    assert made.rows == 2
    assert len(made.passes()) == len(made.passes(1)) + 1 == 2
    assert made.stitches_at(1) == 10
    assert made.extent_at(1) == (0, 9)
    assert made.width_cm(1) == made.width_cm(0) == pytest.approx(5.0)
    assert made.height_cm(0, 2) == pytest.approx(2 / 3)
    assert [made.outer_end(2, side) for side in ("left", "right")] == [0, 9]
    assert made.rows_in_wale(5) == made.rows_in_wale(0) == 2
    assert made.edge_rows("right", 0, 2) == 2
    assert [(edge.count, edge.length_cm) for edge in made.edges if edge.name == "side"] == [(2, pytest.approx(2 / 3))] * 2
    assert fabric(one(*START, *two, OFF)).stitches_at(2) == 10


def test_each_block_goes_on_with_the_end_beside_it(one: One) -> None:
    shifted: Blocks = (("wool", 0, 4), ("navy", 5, 7), ("wool", 8, 9))
    made = fabric(one(*START, PictureRow("left", "4", BLOCKS), PictureRow("right", "4", shifted), Pass("left"), OFF))
    first, second, third = runs(made)
    assert len(set(first)) == 3
    assert second == first
    assert third == [first[2]], "the carriage goes on with the end that hangs at its side"
    assert made.courses[0].run == first[2], "the block at the carriage took the yarn that hung there"


def test_an_end_out_of_reach_or_of_another_yarn_is_a_fresh_one(one: One) -> None:
    far: Blocks = (("navy", 0, 0), ("wool", 1, 9))
    made = fabric(one(*START, PictureRow("left", "4", (("wool", 0, 5), ("navy", 6, 9))), PictureRow("right", "4", far), OFF))
    first, second = runs(made)
    assert second[0] not in first, "6 needles away"
    assert second[1] == first[0]


def test_a_block_grown_by_an_empty_needle_gets_a_bar(one: One) -> None:
    grown: Blocks = (("navy", -1, 4), ("wool", 5, 9))
    made = fabric(one(*START, Pass("left"), IntoWork(-1, -1), PictureRow("right", "4", grown), OntoWaste(-1, 9, 8, "end")))
    assert [(bar.slot, bar.counter, bar.at_edge) for bar in made.bars] == [(-1, 2, True)]
    assert made.course_of(made.bars[0].loop).yarn == "navy"


@pytest.mark.parametrize(
    ("blocks", "crossed", "code"),
    [
        (BLOCKS, False, "block-uncrossed"),
        ((("wool", 0, 3), ("navy", 5, 9)), True, "picture-gap"),
        ((("wool", 0, 5), ("navy", 5, 9)), True, "picture-gap"),
        ((("wool", 1, 4), ("navy", 5, 9)), True, "picture-gap"),
        ((("wool", 0, 4), ("navy", 5, 8)), True, "picture-gap"),
        ((("wool", 0, 4), ("navy", 5, 10)), True, "picture-gap"),
        ((("wool", 0, 4), ("waste", 5, 9)), True, "only-waste-yarn"),
        ((("wool", 0, 4), ("navy", 5, 20)), True, "beyond-bed"),
        ((), True, "picture-gap"),
    ],
)
def test_what_is_no_picture_row(one: One, blocks: Blocks, crossed: bool, code: str) -> None:
    assert refusal(one(*START, PictureRow("left", "4", blocks, crossed), OFF)) == code


def test_a_picture_row_goes_where_the_carriage_is_not(one: One) -> None:
    assert refusal(one(*START, PictureRow("right", "4", BLOCKS))) == "carriage-already-there"
    assert refusal(one(*START, Hold(4, 4), PictureRow("left", "4", BLOCKS))) == "picture-gap"
    fabric(one(*START, PictureRow("left", "4", (("wool", 0, 9),), crossed=False), OFF))


def test_a_wedge_in_a_picture_is_wrapped_with_the_end_at_its_edge(one: One) -> None:
    def wedge(*wrap: Operation) -> BedResult:
        lower, upper = (("wool", 0, 3), ("navy", 4, 6)), (("wool", 0, 3), ("navy", 4, 9))
        rows_ = (Hold(7, 9), PictureRow("right", "4", lower), *wrap, PictureRow("left", "4", lower))
        return one(*START, PictureRow("left", "4", upper), *rows_, Release(7, 9), PictureRow("right", "4", upper), OFF)

    made = fabric(wedge(Wrap(7)))
    (wrap,) = (course for course in made.courses if course.kind == "wrap")
    assert (wrap.yarn, wrap.run) == ("navy", runs(made)[1][1])
    assert refusal(wedge()) == "held-edge-unwrapped"


# ------------------------------------------------------------------ carried ends


def stripes(*parts: tuple[str, int], carried: bool = True) -> Ops:
    """Stripes from the right, an even number of rows each."""
    made: Ops = []
    for yarn, count in parts:
        made += [UseYarn(yarn, "4", carried), *rows(count, "left")]
    return made


def test_a_carried_end_is_the_same_yarn_all_the_way(one: One) -> None:
    made = fabric(one(*START, *stripes(("wool", 2), ("navy", 2), ("wool", 4), ("navy", 2)), OFF))
    found = [run for (run,) in runs(made)]
    assert found[:2] == found[4:8] == [made.courses[0].run] * 2 or len(set(found[:2] + found[4:8])) == 1
    assert len(set(found[2:4] + found[8:])) == 1
    assert found[0] != found[2]


def test_an_end_that_is_not_carried_is_cut(one: One) -> None:
    carried = fabric(one(*START, *stripes(("wool", 2), ("navy", 2), ("wool", 2)), OFF))
    cut = fabric(one(*START, *stripes(("wool", 2), ("navy", 2), ("wool", 2), carried=False), OFF))
    assert len({run for (run,) in runs(carried)}) == 2
    assert len({run for (run,) in runs(cut)}) == 3
    assert carried != cut


@pytest.mark.parametrize(("between", "ends"), [(8, 2), (10, 3)])
def test_an_end_is_carried_over_eight_rows_at_most(one: One, between: int, ends: int) -> None:
    made = fabric(one(*START, *stripes(("wool", 2), ("navy", between), ("wool", 2)), OFF))
    assert len({run for (run,) in runs(made)}) == ends


def test_an_end_is_taken_up_at_the_carriages_side_only(one: One) -> None:
    made = fabric(one(*START, *stripes(("wool", 2), ("navy", 1)), UseYarn("wool", "4", True), Pass("right"), OFF))
    assert len({run for (run,) in runs(made)}) == 3


@pytest.mark.parametrize(("off", "ends"), [(5, 2), (6, 3)])
def test_an_end_is_taken_up_within_five_needles_of_the_edge(one: One, off: int, ends: int) -> None:
    narrower: Ops = [CastOff(10 - off, 9, "right")]
    ops = (*START, *stripes(("wool", 2), ("navy", 2)), *narrower, *stripes(("wool", 2)), OntoWaste(0, 9 - off, 8, "end"))
    assert len({run for (run,) in runs(fabric(one(*ops)))}) == ends


def test_an_end_of_one_part_is_not_taken_up_in_the_other(one: One) -> None:
    """The right part leaves an end hanging within reach of the narrow left part's outer edge; the left part begins another."""

    def ends_of_navy(left_behind: str) -> int:
        right: Ops = [Hold(0, 4), *stripes((left_behind, 1)), UseYarn("wool", "4", True), Pass("right")]
        off: Ops = [BreakYarn(), OntoWaste(5, 9, 8, "end right"), MoveCarriage("left"), SetCounter(0), Release(0, 4)]
        left: Ops = [UseYarn("wool", "4"), *rows(2, "right"), UseYarn("navy", "4", True), *rows(2, "right")]
        made = fabric(one(*START, *right, *off, *left, OntoWaste(0, 4, 8, "end left")))
        return len({course.run for course in made.courses if course.yarn == "navy"})

    assert ends_of_navy("navy") == 2
    assert ends_of_navy("green") == 1


def test_counting_anew_does_not_lose_an_end(one: One) -> None:
    ops = (*START, *stripes(("wool", 2), ("navy", 2)), SetCounter(0), *stripes(("wool", 2)), OFF)
    made = fabric(one(*ops))
    assert len({course.run for course in made.courses if course.yarn == "wool"}) == 1


# ------------------------------------------------------------------ tails and sewing off


def sewn(tail_cm: int, *, start: Side = "right", before: Ops | None = None, op: SewOff | None = None) -> Ops:
    ends: Ops = [*(before or []), BreakYarn(tail_cm), op or SewOff(0, 9, start)]
    return [*START, *rows(2, "left"), *ends]


def test_sewn_off_each_loop_has_a_back_stitch_through_it(one: One) -> None:
    made = fabric(one(*sewn(25)))
    last = made.passes()[-1].first_loop
    (course,) = (c for c in made.courses if c.kind == "sew off")
    ids = range(course.first_loop, course.first_loop + course.count)
    assert [made.slots[i] for i in ids] == list(range(9, -1, -1))
    assert all(made.kinds[i] == LoopKind.SEWN for i in ids)
    assert made.parents_of(ids[0]) == (last + 9,)
    assert made.parents_of(ids[1]) == (last + 8, ids[0])
    assert (course.yarn, course.run) == ("wool", made.passes()[-1].run)
    (end,) = made.edge("end")
    assert (end.count, end.live, end.points[0]) == (10, False, (ids[9],))
    assert end.length_cm == pytest.approx(10 / 1.3)
    assert made.tails_cm == {"wool": 25}
    assert made.loops == 30 == sum(made.loops_by_yarn.values())


@pytest.mark.parametrize(
    ("ops", "code"),
    [
        (sewn(23), "tail-too-short"),
        (sewn(0), "tail-too-short"),
        (sewn(-1), "tail-too-short"),
        (sewn(25, start="left"), "sew-off-away-from-tail"),
        (sewn(25, op=SewOff(1, 9, "right")), "sew-off-not-all"),
        (sewn(25, op=SewOff(0, 10, "right")), "sew-off-empty"),
        ([*START, *rows(2, "left"), SewOff(0, 9, "right")], "sew-off-yarn-unbroken"),
        ([*START, *rows(2, "left"), BreakYarn(25), Hold(9, 9), SewOff(0, 9, "right")], "needle-held"),
        ([*START, BreakYarn(25), UseYarn("navy", "4"), BreakYarn(25), SewOff(0, 9, "right")], "sew-off-away-from-tail"),
    ],
)
def test_what_cannot_be_sewn_off(one: One, ops: Ops, code: str) -> None:
    assert refusal(one(*ops)) == code


def test_without_a_gauge_the_tail_is_not_measured() -> None:
    assert knitted(*sewn(1), bed=replace(BED, gauges={})).edge("end")[0].length_cm is None


def test_tails_are_added_up_by_yarn_and_told_apart(one: One) -> None:
    def made(*tails: int) -> KnitFabric:
        first, second, third = tails
        ops: Ops = [Pass("left"), BreakYarn(first), UseYarn("navy", "4"), Pass("right"), BreakYarn(second), UseYarn("wool", "4")]
        return fabric(one(*START, *ops, Pass("left"), BreakYarn(third), Gather(0, 9)))

    assert made(20, 15, 30).tails_cm == {"wool": 50, "navy": 15}
    assert made(0, 0, 0).tails_cm == {}
    assert made(20, 15, 30) != made(30, 15, 20)


# ------------------------------------------------------------------ what is said to be knitted

TWO = Bed(40, (1, 2, 3), {("wool", "4"): Gauge(2.0, 3.0)}, {"moss": Gauge(1.0, 4.0), "cable": Gauge(4.0, 8.0)})


def test_fabrics_named_are_measured_and_counted_by_their_own_gauge() -> None:
    ops = (*START, Pass("left"), InFabric("moss"), Pass("right"), InFabric(""), Pass("left"), OFF)
    made = knitted(*ops, NameEdge("side", "outer", 0, 3), bed=TWO)
    assert [made.width_cm(row) for row in (0, 1, 2, 3)] == [5.0, 5.0, 10.0, 5.0]
    assert made.height_cm(0, 3) == pytest.approx(1 / 3 + 1 / 4 + 1 / 3)
    assert made.edge("side")[0].length_cm == pytest.approx(1 / 3 + 1 / 4 + 1 / 3)
    assert made.loops_by_fabric == {("", "wool", "4"): 30, ("moss", "wool", "4"): 10}


def test_panels_are_measured_within_their_needles() -> None:
    ops = (*START, InFabric("moss"), InFabric("cable", 2, 5), Pass("left"), InFabric("", 2, 5), Pass("right"), OFF)
    made = knitted(*ops, bed=TWO)
    assert made.courses[1].panels == (("cable", 2, 5),)
    assert made.width_cm(1) == pytest.approx(6 / 1.0 + 4 / 4.0)
    assert made.width_cm(2) == pytest.approx(10.0)
    assert made.loops_by_fabric == {("", "wool", "4"): 10, ("moss", "wool", "4"): 16, ("cable", "wool", "4"): 4}
    assert made.height_cm(0, 1) == pytest.approx(1 / 4)


def test_a_live_edge_across_a_panel_is_as_wide_as_both() -> None:
    made = knitted(*START, InFabric("cable", 2, 5), *rows(2, "left"), OFF, bed=TWO)
    assert made.edge("end")[0].length_cm == pytest.approx(6 / 2.0 + 4 / 4.0)


def test_what_was_said_makes_another_fabric(one: One) -> None:
    plain = fabric(one(*START, *rows(2, "left"), OFF))
    said = fabric(one(*START, InFabric("moss"), *rows(2, "left"), OFF))
    panel = fabric(one(*START, InFabric("moss", 2, 5), *rows(2, "left"), OFF))
    moved = fabric(one(*START, InFabric("moss", 2, 6), *rows(2, "left"), OFF))
    assert len({plain, said, panel, moved}) == 4
    assert refusal(one(*START, InFabric("moss", 2, 25))) == "beyond-bed"


def test_a_tucked_row_in_a_panel_is_not_narrower() -> None:
    tuck: Ops = [Hold(3, 3), Pass("left"), Release(3, 3), Pass("right")]
    made = knitted(*START, InFabric("cable", 2, 5), *tuck, OFF, bed=TWO)
    assert made.width_cm(1) == made.width_cm(2) == pytest.approx(6 / 2.0 + 4 / 4.0)


def test_eyelets_leave_no_tail(one: One) -> None:
    made = fabric(one(*START, Transfer(3, 3, 1), *rows(2, "left"), OFF))
    assert made.tails_cm == {}
