"""What is measured on the finished fabric: stitches, rows, edges, lengths, and the joins made of them."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from math import hypot

import pytest

from walewright.bed import Bed, BedResult, Fabric, Seam, knit, seam
from walewright.knit.operations import (
    CastOn,
    Hold,
    IntoWork,
    Join,
    MoveCarriage,
    NameEdge,
    OntoWaste,
    Pass,
    Release,
    UseYarn,
    Work,
    Wrap,
)

Fabrics = dict[str, Fabric]


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
    assert back.rows_between(20, 26) == 6
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
    assert (side.along, side.count, side.each, len(side.points)) == ("rows", 14, True, 15)
    assert side.length_cm == pytest.approx(14 / 1.85)
    (armhole,) = back.edge("armhole right")
    assert (armhole.count, len(armhole.points)) == (8, 9)
    ops = tuple(
        NameEdge("armhole", "outer", 14, 26) if op == NameEdge("armhole", "outer", 14, 22) else op
        for op in work.blocks[0].operations
    )
    wider = knit(replace(work, blocks=(replace(work.blocks[0], operations=ops),), joins=()), bed).fabrics[0]
    assert wider.edge("armhole")[0].count == 10, "rows 24 and 25 end at the held needles; rows 23 and 26 reach the edge"


def test_a_sloping_edge_is_as_long_as_its_polyline(fabrics: Fabrics) -> None:
    (side,) = fabrics["sleeve"].edge("side")
    assert side.length_cm == pytest.approx(10 / 1.85 + 2 * hypot(1 / 1.3, 1 / 1.85))


def test_neck_parts(fabrics: Fabrics) -> None:
    left, centre, right = fabrics["back"].edge("neck")
    assert [(edge.part, edge.along, edge.count, len(edge.points)) for edge in (left, centre, right)] == [
        ("left", "rows", 6, 9),
        ("centre", "stitches", 4, 4),
        ("right", "rows", 6, 9),
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


def test_seams(fabrics: Fabrics) -> None:
    assert seam(fabrics, (("back", "shoulder"),)) == Seam(0, 12, pytest.approx(12 / 1.3))
    assert seam(fabrics, (("back", "armhole"), ("front", "armhole"))) == Seam(16, 0, pytest.approx(16 / 1.85))
    assert seam(fabrics, (("back", "neck"),)) == Seam(12, 4, pytest.approx(4 / 1.3 + 2 * (5 / 1.85 + hypot(2 / 1.3, 1 / 1.85))))
    assert seam(fabrics, (("back", "hood"),)) is None
    assert seam(fabrics, (("hood", "end"),)) is None


JOINS: dict[str, tuple[Join, str, tuple[str, ...]]] = {
    "unequal rows": (
        Join((("back", "side"),), (("back", "armhole"),), 0),
        "join-unequal",
        ("14 rows against 8", "back side to back armhole"),
    ),
    "unequal stitches": (Join((("sleeve", "end"),), (("back", "start"),), 0), "join-unequal", ("12 stitches against 20",)),
    "rows against stitches": (Join((("sleeve", "end"),), (("back", "side"),), 0), "join-unequal", ("0 rows against 14",)),
    "beyond easing": (
        Join((("sleeve", "end"),), (("back", "armhole"), ("front", "armhole")), 5),
        "join-unequal",
        ("9.2 cm against 8.6 cm", "6 mm apart", "5 mm can"),
    ),
    "unknown piece": (Join((("hood", "end"),), (("back", "side"),), 0), "piece-unknown", ("hood",)),
    "unknown edge": (
        Join((("back", "hem"),), (("back", "side"),), 0),
        "edge-unknown",
        ("hem", "armhole, neck, shoulder, side, start"),
    ),
}


@pytest.mark.parametrize("what", JOINS)
def test_joins_that_do_not_fit(what: str, work: Work, bed: Bed) -> None:
    wrong, code, words = JOINS[what]
    (fault,) = knit(replace(work, joins=(*work.joins, wrong)), bed).faults
    assert (fault.block, fault.index, fault.code) == ("joins", 3, code)
    for word in words:
        assert word in fault.message


def test_easing_needs_gauges(work: Work, bed: Bed) -> None:
    result = knit(work, replace(bed, gauges={}))
    assert [(fault.code, fault.index) for fault in result.faults] == [("no-gauge", 2)]
    back = result.fabrics[0]
    assert back.width_cm(20) is back.height_cm(0, 20) is back.edge("side")[0].length_cm is back.edge("start")[0].length_cm is None


def test_live_edges_that_nothing_takes_up_are_told(work: Work, bed: Bed) -> None:
    result = knit(replace(work, joins=work.joins[1:]), bed)
    assert result.faults == ()
    assert result.open_edges == (
        ("back", "shoulder right"),
        ("back", "shoulder left"),
        ("front", "shoulder right"),
        ("front", "shoulder left"),
    )


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
    assert "4 rows on the left and 2 on the right" in fault.message
