"""How edges lie in a seam: round a piece's outline, one side for itself, loop to loop, and longer by so much."""

from __future__ import annotations

from dataclasses import replace

import pytest

from walewright.bed import Bed, Fabric, Seam, knit, seam
from walewright.knit.operations import Join, NameEdge, Work

Fabrics = dict[str, Fabric]


def test_an_edge_on_both_sides_counts_once_but_twice_round_the_piece(fabrics: Fabrics) -> None:
    once = seam(fabrics, (("sleeve", "side"),))
    round_it = seam(fabrics, (("sleeve", "side"), ("sleeve", "end")))
    assert once is not None
    assert once.length_cm is not None
    assert once.rows == 12
    assert round_it == Seam(24, 12, pytest.approx(2 * once.length_cm + 12 / 1.3), 2 * once.loose_mm)
    assert seam(fabrics, (("sleeve", "start"), ("sleeve", "side"))) == Seam(
        24, 8, pytest.approx(2 * once.length_cm + 8 / 1.3), 2 * once.loose_mm
    )


def test_only_the_piece_gone_round_is_doubled(fabrics: Fabrics) -> None:
    assert seam(fabrics, (("back", "side"), ("sleeve", "end"))) == Seam(14, 12, pytest.approx(14 / 1.85 + 12 / 1.3))
    assert seam(fabrics, (("sleeve", "side left"), ("sleeve", "end"))).rows == 12, "one side asked for by name"


def test_one_sided_edges_and_gaps_count_as_they_are(paired: Fabrics) -> None:
    assert seam(paired, (("mitten", "palm"), ("mitten", "start"))).rows == 14
    assert seam(paired, (("mitten", "back"),)).rows == 8
    assert seam(paired, (("mitten", "gap"),)).rows == 12
    assert seam(paired, (("mitten", "gap"),)).stitches == 2
    assert (
        seam(paired, (("mitten", "gap_upper"),)) == seam(paired, (("mitten", "gap upper"),)) == Seam(0, 4, pytest.approx(4 / 1.3))
    )


STRIP = (("strip", "end"),)
TAB = (("tab", "end"),)
JOINS: dict[str, tuple[Join, str, tuple[str, ...]]] = {
    "grafting unequal numbers": (
        Join((("mitten", "gap centre"),), TAB, 0, way="grafted"),
        "edge-taken",
        ("gap centre", "mitten"),
    ),
    "grafting closed stitches": (
        Join((("mitten", "end"),), TAB, 0, way="grafted"),
        "grafted-not-open-loops",
        ("end", "mitten", "closed stitches"),
    ),
    "other rows than told": (Join((("mitten", "back"),), (("mitten", "back"),), 0, rows=9), "join-told", ("8 rows", "9")),
    "another length than told": (
        Join((("mitten", "back"),), (("mitten", "back"),), 5, one_mm=10, other_mm=10),
        "join-told",
        ("10 mm", "mm long"),
    ),
    "grafting row ends": (Join((("mitten", "palm"),), TAB, 0, way="grafted"), "grafted-not-open-loops", ("row ends",)),
    "linking row ends": (Join((("mitten", "palm"),), TAB, 0, way="linked"), "linked-not-stitches", ("row ends",)),
    "linking unequal numbers": (
        Join((("mitten", "end"),), TAB, 0, way="linked"),
        "join-unequal",
        ("8 stitches against 4",),
    ),
    "grafting twice": (Join(STRIP, TAB, 0, way="grafted"), "edge-taken", ("strip", "end")),
    "an unknown join": (Join(STRIP, TAB, 0, way="glued"), "join-way", ("glued", "grafted")),
    "not longer by so much": (
        Join((("mitten", "seam"),), (("thumb", "seam"),), 1, longer_mm=50),
        "join-unequal",
        ("7.6 cm against 2.2 cm", "50 mm longer", "4 mm off", "1 mm can"),
    ),
    "shorter instead of longer": (
        Join((("thumb", "seam"),), (("mitten", "seam"),), 1, longer_mm=54),
        "join-unequal",
        ("54 mm longer", "108 mm off"),
    ),
    "gathered too far": (
        Join((("mitten", "start"),), (("thumb", "seam"),), 10, longer_mm=80, way="gathered"),
        "join-unequal",
        ("80 mm longer", "21 mm off"),
    ),
}


@pytest.mark.parametrize("what", JOINS)
def test_joins_that_do_not_fit(what: str, pair: Work, bed: Bed) -> None:
    wrong, code, words = JOINS[what]
    joins = (*pair.joins, wrong) if code == "edge-taken" else (*pair.joins[1:], wrong)
    (fault,) = knit(replace(pair, joins=joins), bed).faults
    assert (fault.block, fault.index, fault.code) == ("joins", len(joins) - 1, code)
    for word in words:
        assert word in fault.message


def test_grafted_edges_must_have_equal_numbers(pair: Work, bed: Bed) -> None:
    joins = (Join((("mitten", "gap centre"),), TAB, 0, way="grafted"),)
    blocks = tuple(block for block in pair.blocks if block.name != "facing")
    (fault,) = knit(replace(pair, blocks=blocks, joins=joins), bed).faults
    assert (fault.code, "2 stitches against 4" in fault.message) == ("join-unequal", True)


def test_a_seam_round_a_piece_is_compared_both_sides(work: Work, bed: Bed) -> None:
    """Half of the sleeve's side, gone up and down, has as many rows as the whole of one side."""
    sleeve = replace(work.blocks[2], operations=(*work.blocks[2].operations, NameEdge("upper", "outer", 0, 6)))
    blocks = (*work.blocks[:2], sleeve, *work.blocks[3:])
    fits = Join((("sleeve", "upper"), ("sleeve", "end")), (("sleeve", "side"), ("sleeve", "end")), 0)
    (fault,) = knit(replace(work, blocks=blocks, joins=(*work.joins, fits)), bed).faults
    assert "12 rows against 24" in fault.message
    once = Join((("sleeve", "side left"), ("sleeve", "end")), (("sleeve", "upper"), ("sleeve", "end")), 0)
    assert knit(replace(work, blocks=blocks, joins=(*work.joins, once)), bed).faults == ()


def test_what_a_live_edge_hangs_on_is_knitted_as_often(pair: Work, bed: Bed) -> None:
    blocks = tuple(replace(block, copies=1) if block.name == "thumb" else block for block in pair.blocks)
    faults = knit(replace(pair, blocks=blocks, joins=()), bed).faults
    assert [(fault.block, fault.code) for fault in faults] == [("thumb", "copies-differ")]
