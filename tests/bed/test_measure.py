"""What is measured on the finished fabric: stitches, rows, edges, lengths, and the joins made of them."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from math import hypot

import pytest

from tests.bed.by_hand import seam_of
from tests.bed.words import told
from walewright.bed import Bed, BedResult, KnitFabric, LoopKind, SewnSeam, knit, seam
from walewright.knit.operations import (
    BreakYarn,
    CastOff,
    CastOn,
    Hold,
    IntoWork,
    Join,
    MoveCarriage,
    NameEdge,
    OntoWaste,
    OutOfWork,
    Pass,
    PickUpEdge,
    Release,
    SetCounter,
    Transfer,
    UseYarn,
    Work,
    Wrap,
)

Fabrics = dict[str, KnitFabric]


def test_stitches_and_widths_by_row(fabrics: Fabrics) -> None:
    back = fabrics["back"]
    assert [back.stitches_at(row) for row in (0, 1, 20, 21, 22, 23, 24, 25, 26, 27)] == [20, 20, 20, 16, 12, 12, 6, 6, 12, 0]
    assert back.extent_at(22) == (-10, 9)
    assert back.extent_at(24) == (-7, 6)
    assert back.extent_at(99) is None
    assert back.width_cm(0) == back.width_cm(20) == pytest.approx(20 / 1.3)
    assert back.width_cm(22) == pytest.approx(12 / 1.3)
    assert back.width_cm(99) is None
    assert (back.first_slot, back.last_slot, back.most_stitches) == (-10, 9, 20)


def test_rows_of_both_halves_count_once(fabrics: Fabrics) -> None:
    back = fabrics["back"]
    assert back.rows == 26
    assert back.height_cm(20, 26) == pytest.approx(6 / 1.85)
    assert back.height_cm(0, 20) == pytest.approx(20 / 1.85)


def test_a_wedge_lengthens_only_the_wales_it_covers(fabrics: Fabrics) -> None:
    back = fabrics["back"]
    assert {slot: back.rows_in_wale(slot) for slot in (9, 7, 6, 4, 3, 0, -7, -8)} == {
        9: 24,
        7: 24,
        6: 26,
        4: 26,
        3: 21,
        0: 20,
        -7: 26,
        -8: 24,
    }


def test_loops_by_yarn(fabrics: Fabrics) -> None:
    back, sleeve = fabrics["back"], fabrics["sleeve"]
    assert back.loops == 20 * 20 + 2 * (8 + 6 + 6 + 3 + 3 + 6 + 2 + 1)
    assert back.loops_by_yarn == {("wool", "4"): back.loops}
    assert (back.wraps, back.chains) == (2, 4)
    assert sleeve.loops == 4 * 8 + 4 * 10 + 4 * 12 + 12


def test_outer_edges_stop_at_the_wedge(fabrics: Fabrics, work: Work, bed: Bed) -> None:
    back = fabrics["back"]
    (side,) = back.edge("side")
    assert (side.along, side.count, side.each, len(side.points)) == ("rows", 14, True, 14)
    assert side.length_cm == pytest.approx(14 / 1.85)
    for part in ("left", "right"):
        (armhole,) = back.edge(f"armhole {part}")
        assert (armhole.count, len(armhole.points)) == (8, 8), "the neck's chains are on no armhole"
    ops = tuple(
        NameEdge("armhole", "outer", 14, 26) if op == NameEdge("armhole", "outer", 14, 22) else op
        for op in work.blocks[0].operations
    )
    wider = knit(replace(work, tasks=(replace(work.blocks[0], operations=ops),)), bed).fabrics[0]
    assert wider.edge("armhole")[0].count == 10, "rows 24 and 25 end at the held needles; rows 23 and 26 reach the edge"


def test_a_sloping_edge_is_straight(fabrics: Fabrics) -> None:
    (side,) = fabrics["sleeve"].edge("side")
    assert side.length_cm == pytest.approx(hypot(2 / 1.3, 12 / 1.85), rel=0.002)
    assert side.loose_cm == 0.5 / 1.85


def test_neck_parts(fabrics: Fabrics) -> None:
    left, centre, right = fabrics["back"].edge("neck")
    assert [(edge.part, edge.along, edge.count, len(edge.points)) for edge in (left, centre, right)] == [
        ("left", "rows", 6, 8),
        ("centre", "stitches", 4, 4),
        ("right", "rows", 6, 8),
    ]
    slope = 5 / 1.85 + hypot(2 / 1.3, 1 / 1.85)
    assert (left.length_cm, right.length_cm) == (pytest.approx(slope), pytest.approx(slope))
    assert centre.live


def test_the_ends_of_halves_are_shoulders(fabrics: Fabrics) -> None:
    back = fabrics["back"]
    assert [(edge.part, edge.count) for edge in back.edge("shoulder")] == [("left", 6), ("right", 6)]
    assert back.edge("end") == back.edge("shoulder")
    assert back.edge("end left") == back.edge("shoulder left")
    assert back.edge("hood") == ()


def test_a_start_is_all_that_was_hung_before_the_first_row(fabrics: Fabrics) -> None:
    (start,) = fabrics["neckband"].edge("start")
    assert (start.count, start.length_cm) == (32, pytest.approx(32 / 1.4))
    assert fabrics["neckband"].stitches_at(0) == 32
    assert {fabrics["neckband"].kinds[point[0]] for point in start.points} == {LoopKind.PICKED}
    assert fabrics["back welt"].edge("start")[0].count == 20


def test_seams(fabrics: Fabrics) -> None:
    assert seam(fabrics, (("back", "shoulder"),)) == SewnSeam(0, 12, pytest.approx(12 / 1.3))
    assert seam(fabrics, (("back", "armhole"), ("front", "armhole"))) == SewnSeam(16, 0, pytest.approx(16 / 1.85))
    assert seam(fabrics, (("back", "neck"),)) == SewnSeam(
        12, 4, pytest.approx(4 / 1.3 + 2 * (5 / 1.85 + hypot(2 / 1.3, 1 / 1.85))), chained=4
    )
    assert seam(fabrics, (("back", "hood"),)) is None
    assert seam(fabrics, (("hood", "end"),)) is None


JOINS: dict[str, tuple[Join, str, tuple[str, ...]]] = {
    "unequal rows": (
        seam_of("back side left", "back armhole right", ("bottom", "bottom")),
        "join-unequal",
        ("14 rows against 8", "back side left to back armhole right"),
    ),
    "unequal stitches": (
        seam_of("sleeve 1 end", "back neck centre", ("left", "left")),
        "join-unequal",
        ("12 stitches against 4",),
    ),
    "rows against stitches": (
        seam_of("sleeve 1 end", "back side left", ("left", "bottom")),
        "join-unequal",
        ("0 rows against 14",),
    ),
    "beyond easing": (
        seam_of("sleeve 1 end", "back armhole right + front armhole left", ("left", "bottom"), 5),
        "join-unequal",
        ("9.2 cm against 8.6 cm", "6 mm apart", "5 mm can"),
    ),
    "unknown piece": (seam_of("hood end", "back side left", ("left", "bottom")), "piece-unknown", ("hood",)),
    "unknown edge": (
        seam_of("back hem", "back side left", ("left", "bottom")),
        "edge-unknown",
        ("hem", "armhole", "neck centre", "shoulder left", "side left", "start"),
    ),
}


@pytest.mark.parametrize("what", JOINS)
def test_joins_that_do_not_fit(what: str, work: Work, bed: Bed) -> None:
    wrong, code, words = JOINS[what]
    shoulder = work.joins[0]
    bodies = [block for block in work.blocks if block.name != "neckband"]
    (fault,) = knit(replace(work, tasks=(*bodies, shoulder, wrong)), bed).faults
    assert (fault.block, fault.index, fault.code) == ("joins", 1, code)
    for word in words:
        assert word in told(fault)


def test_an_edge_of_several_parts_is_hung_in_one_go_with_its_corners(work: Work, bed: Bed) -> None:
    """The whole neck of the back, then that of the front: they meet at the shoulder that is joined, and nowhere else."""

    def hung(first: str, second: str) -> Work:
        picks = (PickUpEdge(first, "neck", "whole", -16, -1), PickUpEdge(second, "neck", "whole", 0, 15))
        (band,) = (block for block in work.blocks if block.name == "neckband")
        begin = next(n for n, op in enumerate(band.operations) if isinstance(op, PickUpEdge))
        others = tuple(op for op in band.operations[begin:] if not isinstance(op, PickUpEdge))
        whole = replace(band, operations=(*band.operations[:begin], *picks, *others))
        return replace(work, tasks=tuple(whole if task is band else task for task in work.tasks))

    made = knit(hung("back", "front"), bed)
    assert made.faults == ()
    (start,) = next(fabric for fabric in made.fabrics if fabric.name == "neckband").edge("start")
    assert start.count == 32
    codes = [fault.code for fault in knit(hung("front", "back"), bed).faults if fault.block == "neckband"]
    assert codes == ["edges-do-not-meet"]


def test_easing_needs_gauges(work: Work, bed: Bed) -> None:
    result = knit(work, replace(bed, gauges={}))
    assert [(fault.code, fault.index) for fault in result.faults] == [("no-gauge", 4), ("no-gauge", 5)]
    back = result.fabrics[0]
    assert back.width_cm(20) is back.height_cm(0, 20) is back.edge("side")[0].length_cm is back.edge("start")[0].length_cm is None


def test_live_edges_that_nothing_takes_up_are_told(work: Work, bed: Bed) -> None:
    result = knit(replace(work, tasks=tuple(t for t in work.tasks if t not in (work.joins[1], work.joins[-1]))), bed)
    assert result.faults == ()
    assert result.open_edges == (("back", "shoulder left"), ("front", "shoulder right"))


def test_sides_that_differ_share_no_name(one: Callable[..., BedResult]) -> None:
    result = one(
        MoveCarriage("right"),
        IntoWork(0, 5),
        UseYarn("wool", "4"),
        CastOn("e-wrap", 0, 5),
        Pass("left"),
        Hold(4, 5),
        Pass("right"),
        Wrap(4),
        Pass("left"),
        Release(4, 5),
        Pass("right"),
        OntoWaste(0, 5, 8, "end"),
        NameEdge("side", "outer", 0, 4),
    )
    (fault,) = result.faults
    assert fault.code == "edge-sides-differ"
    assert "4 rows on the left and 2 on the right" in told(fault)


START = (MoveCarriage("right"), IntoWork(-4, 3), UseYarn("wool", "4"), CastOn("e-wrap", -4, 3), *(Pass("left"), Pass("right")) * 2)


def parted(*neck: object, centre: bool) -> tuple[object, ...]:
    """Two halves of two rows each from RC 4, off on waste; `neck` is done before the right half's first row."""
    off = (OntoWaste(-1, 0, 8, "neck centre"),) if centre else ()
    left = -2 if centre else -1
    right = 1 + sum(isinstance(op, OutOfWork) for op in neck) if centre else 0
    return (
        *START,
        *off,
        Hold(-4, left),
        *neck,
        *(Pass("left"), Pass("right")),
        OntoWaste(right, 3, 8, "shoulder right"),
        BreakYarn(),
        MoveCarriage("left"),
        SetCounter(4),
        Release(-4, left),
        UseYarn("wool", "4"),
        *(Pass("right"), Pass("left")),
        OntoWaste(-4, left, 8, "shoulder left"),
        NameEdge("neck", "inner", 4, 6),
    )


def test_a_parted_half_that_waits_wants_no_wrap(one: Callable[..., BedResult]) -> None:
    """The yarn turns at the waiting half's needle, but both never knit on in one row: a neck edge, or a slit."""
    for centre in (True, False):
        result = one(*parted(centre=centre))
        assert result.faults == ()
        (made,) = result.fabrics
        assert [(turn.counter, turn.wrapped) for turn in made.turns] == [(5, False)]
        assert [edge.part for edge in made.edge("neck")] == ["left", "centre", "right"][:: 1 if centre else 2]


def test_halves_that_go_on_together_over_an_unwrapped_turn_leave_a_hole(one: Callable[..., BedResult]) -> None:
    (fault,) = one(*START, Hold(-4, -1), Pass("left"), Pass("right"), Release(-4, -1), Pass("left")).faults
    assert fault.code == "held-edge-unwrapped"
    assert "L 1" in told(fault)


def test_a_slit_closes_again_without_a_wrap(one: Callable[..., BedResult]) -> None:
    """Both halves have had their own rows by then: the slit's edges are real edges."""
    result = one(
        *START,
        Hold(-4, -1),
        *(Pass("left"), Pass("right")),
        BreakYarn(),
        MoveCarriage("left"),
        SetCounter(4),
        Hold(0, 3),
        Release(-4, -1),
        UseYarn("wool", "4"),
        *(Pass("right"), Pass("left")),
        Release(0, 3),
        Pass("right"),
        OntoWaste(-4, 3, 8, "end"),
    )
    assert result.faults == ()
    assert {result.fabrics[0].rows_in_wale(slot) for slot in range(-4, 4)} == {7}


def test_a_loop_beside_a_closed_slit_is_moved_before_the_first_row(one: Callable[..., BedResult]) -> None:
    """A lace hole at the border of two parts that have met: nothing was left open there."""
    halves = (
        *(Hold(-4, -1), Pass("left"), Pass("right"), BreakYarn(), MoveCarriage("left"), SetCounter(4)),
        *(Hold(0, 3), Release(-4, -1), UseYarn("wool", "4"), Pass("right"), Pass("left"), Release(0, 3)),
    )
    assert one(*START, *halves, Transfer(0, 0, 1), Pass("right"), OntoWaste(-4, 3, 8, "end")).faults == ()
    assert one(*START, *halves, Transfer(0, 0, -1), Pass("right"), OntoWaste(-4, 3, 8, "end")).faults == ()


def test_a_loop_moved_away_does_not_hide_an_open_turn(one: Callable[..., BedResult]) -> None:
    halves = (Hold(-4, -1), Pass("left"), Pass("right"), Release(-4, -1))
    (fault,) = one(*START, *halves, Transfer(-1, -1, -1), Pass("left")).faults
    assert fault.code == "held-edge-unwrapped"


def test_an_inner_edge_begins_beside_the_centre(one: Callable[..., BedResult]) -> None:
    plain = one(*parted(centre=True)).fabrics[0].edge("neck right")[0]
    shaped = one(*parted(Transfer(1, 1, 1), OutOfWork(1, 1), centre=True)).fabrics[0].edge("neck right")[0]
    assert plain.length_cm == pytest.approx(2 / 1.85)
    assert shaped.length_cm == pytest.approx(hypot(0.5 / 1.3, 0.25 / 1.85) + hypot(0.5 / 1.3, 1.75 / 1.85))


def test_an_underarm_cast_off_is_part_of_the_armhole(one: Callable[..., BedResult]) -> None:
    result = one(
        *START,
        CastOff(2, 3, "right"),
        Pass("left"),
        CastOff(-4, -3, "left"),
        *(Pass("right"), Pass("left"), Pass("right")),
        OntoWaste(-2, 1, 8, "end"),
        NameEdge("armhole", "outer", 4, 8),
    )
    assert result.faults == ()
    left, right = (result.fabrics[0].edge(f"armhole {part}")[0] for part in ("left", "right"))
    assert (left.count, right.count) == (4, 4)
    assert (len(left.points), len(right.points)) == (6, 6)
    assert left.length_cm == right.length_cm == pytest.approx(3 / 1.85 + hypot(2 / 1.3, 1 / 1.85))


def test_rows_counted_twice_over_the_same_needles_cannot_be_named(one: Callable[..., BedResult]) -> None:
    result = one(*START, SetCounter(2), Pass("left"), Pass("right"), OntoWaste(-4, 3, 8, "end"), NameEdge("side", "outer", 0, 2))
    assert [fault.code for fault in result.faults] == ["rows-ambiguous"]
