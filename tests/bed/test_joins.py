"""How edges lie in a seam: round a piece's outline, one side for itself, loop to loop, and longer by so much."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.bed.by_hand import rows, seam_of, strip, welt
from tests.bed.words import told
from walewright.bed import Bed, KnitFabric, SewnSeam, knit, seam
from walewright.knit.operations import Join, NameEdge, Work

Fabrics = dict[str, KnitFabric]


def test_an_edge_on_both_sides_counts_once_and_round_the_piece_as_named(fabrics: Fabrics) -> None:
    once = seam(fabrics, (("sleeve", "side"),))
    round_it = seam(fabrics, (("sleeve", "side left"), ("sleeve", "end"), ("sleeve", "side right")))
    assert once is not None
    assert once.length_cm is not None
    assert once.rows == 12
    assert round_it == SewnSeam(24, 12, pytest.approx(2 * once.length_cm + 12 / 1.3), 2 * once.loose_mm)


def test_one_sided_edges_and_gaps_count_as_they_are(paired: Fabrics) -> None:
    assert seam(paired, (("mitten", "palm"), ("mitten", "start"))).rows == 14
    assert seam(paired, (("mitten", "back"),)).rows == 8
    assert seam(paired, (("mitten", "gap"),)).rows == 12
    assert seam(paired, (("mitten", "gap"),)).stitches == 2
    assert (
        seam(paired, (("mitten", "gap_upper"),))
        == seam(paired, (("mitten", "gap upper"),))
        == SewnSeam(0, 4, pytest.approx(4 / 1.3))
    )


ROWS = ("bottom", "bottom")
LOOPS = ("left", "right")
JOINS: dict[str, tuple[Join, str, tuple[str, ...]]] = {
    "grafting what is taken up": (
        seam_of("mitten 1 gap centre", "tab end", LOOPS, way="grafted"),
        "edge-taken",
        ("gap centre", "mitten"),
    ),
    "grafting closed stitches": (
        seam_of("mitten 1 end", "tab end", LOOPS, way="grafted"),
        "grafted-not-open-loops",
        ("end", "mitten", "closed stitches"),
    ),
    "other rows than told": (
        seam_of("mitten back", "mitten seam left", ROWS, rows=9),
        "join-told",
        ("8 rows", "9"),
    ),
    "too little yarn": (
        seam_of("mitten back", "mitten seam left", ROWS, thread_cm=1),
        "join-told",
        ("1 cm", "cm long"),
    ),
    "another length than told": (
        seam_of("mitten back", "mitten seam left", ROWS, 5, one_mm=10, other_mm=10),
        "join-told",
        ("10 mm", "mm long"),
    ),
    "grafting row ends": (
        seam_of("mitten 1 seam left", "tab end", ("bottom", "right"), way="grafted"),
        "grafted-not-open-loops",
        ("row ends",),
    ),
    "grafting twice": (seam_of("strip end", "tab end", LOOPS, way="grafted"), "edge-taken", ("strip", "end")),
    "an unknown join": (seam_of("strip end", "tab end", LOOPS, way="glued"), "join-way", ("glued", "grafted")),
    "linked away from the bed": (seam_of("strip end", "tab end", LOOPS, way="linked"), "join-way", ("linked", "grafted")),
    "an edge that is two": (seam_of("mitten seam", "thumb seam left", ROWS), "edge-unknown", ("seam", "mitten")),
    "one edge grafted upon itself": (
        replace(seam_of("tab end", "strip end", LOOPS, way="grafted"), other=()),
        "join-way",
        ("upon itself",),
    ),
    "not longer by so much": (
        seam_of("mitten seam left", "thumb seam right", ROWS, 1, longer_mm=50),
        "join-unequal",
        ("7.6 cm against 2.2 cm", "50 mm longer", "4 mm off", "1 mm can"),
    ),
    "shorter instead of longer": (
        seam_of("thumb seam right", "mitten seam left", ROWS, 1, longer_mm=54),
        "join-unequal",
        ("54 mm longer", "108 mm off"),
    ),
    "gathered too far": (
        seam_of("mitten start", "thumb seam right", ("left", "bottom"), 10, longer_mm=80, way="gathered"),
        "join-unequal",
        ("80 mm longer", "21 mm off"),
    ),
    "a copy that is not there": (seam_of("mitten 3 seam left", "thumb seam right", ROWS, 1), "no-such-copy", ("copy 3", "2 times")),
    "a copy of what is there once": (seam_of("strip 1 end", "tab end", LOOPS), "no-such-copy", ("copy 1", "once")),
    "at each copy to a single piece": (
        seam_of("strip start", "mitten gap upper", ("left", "left")),
        "copies-differ",
        ("1 times", "2 times"),
    ),
    "along edges that do not follow each other": (
        seam_of("mitten seam left + mitten start", "thumb seam right", ROWS, 500),
        "join-not-in-line",
        ("mitten seam left + mitten start", "bottom"),
    ),
    "from the end of an edge of rows": (
        seam_of("mitten seam left", "thumb seam right", ("left", "bottom"), 500),
        "join-not-in-line",
        ("left of the first",),
    ),
}


@pytest.mark.parametrize("what", JOINS)
def test_joins_that_do_not_fit(what: str, pair: Work, bed: Bed) -> None:
    """What takes something up again comes after all joins, the others in their place."""
    wrong, code, words = JOINS[what]
    joins = (*pair.joins, wrong) if code == "edge-taken" else (wrong,)
    (fault,) = knit(replace(pair, tasks=(*pair.blocks, *joins)), bed).faults
    assert (fault.block, fault.index, fault.code) == ("joins", len(joins) - 1, code)
    for word in words:
        assert word in told(fault)


def test_grafted_edges_must_have_equal_numbers(pair: Work, bed: Bed) -> None:
    wrong = seam_of("mitten 1 gap centre", "tab end", LOOPS, way="grafted")
    blocks = tuple(block for block in pair.blocks if block.name != "facing")
    (fault,) = knit(replace(pair, tasks=(*blocks, wrong)), bed).faults
    assert (fault.code, "2 stitches against 4" in told(fault)) == ("join-unequal", True)


def test_a_seam_round_a_piece_is_compared_both_sides(work: Work, bed: Bed) -> None:
    """Half of the sleeve's side, gone up and down, has as many rows as the whole of one side."""
    low, high = NameEdge("lower", "outer", 0, 6), NameEdge("upper", "outer", 6, 12)
    sleeve = replace(work.blocks[2], operations=(*work.blocks[2].operations[:-1], low, high))
    round_it = "sleeve 1 lower left + sleeve 1 upper left + sleeve 1 end + sleeve 1 upper right"
    (fault,) = knit(
        replace(work, tasks=(sleeve, welt("sleeve", -4, 3, 2), strip("tab"), seam_of(round_it, "tab end", ("bottom", "left")))), bed
    ).faults
    assert "18 rows against 0" in told(fault)
    half = seam_of("sleeve 1 lower left + sleeve 1 upper left", "sleeve 2 lower right + sleeve 2 upper right", ROWS)
    assert knit(replace(work, tasks=(sleeve, welt("sleeve", -4, 3, 2), half)), bed).faults == ()


def test_a_folded_edge_brings_its_two_ends_together(pair: Work, bed: Bed) -> None:
    """What is sewn on over the fold goes from one side of the piece to the other."""
    folded = replace(seam_of("tab end", "tab end", ("left", "left")), other=())
    over = seam_of("tab one + tab other", "thumb 1 seam right", ("bottom", "bottom"), 100)
    plain = strip("tab").operations
    higher = (*plain[:-1], *rows(6, "left"), plain[-1], NameEdge("one", "left", 0, 8), NameEdge("other", "right", 0, 8))
    tab = replace(strip("tab"), operations=higher)
    blocks = (*(block for block in pair.blocks if block.name != "tab"), tab)
    assert knit(replace(pair, tasks=(*blocks, folded, over)), bed).faults == ()
    (fault,) = knit(replace(pair, tasks=(*blocks, over)), bed).faults
    assert fault.code == "join-not-in-line"
    (fault,) = knit(replace(pair, tasks=(*blocks, folded, folded)), bed).faults
    assert fault.code == "edge-taken"


def test_what_a_live_edge_hangs_on_is_knitted_as_often(pair: Work, bed: Bed) -> None:
    blocks = tuple(replace(block, copies=1) if block.name == "thumb" else block for block in pair.blocks)
    faults = knit(replace(pair, tasks=blocks), bed).faults
    assert [(fault.block, fault.code) for fault in faults] == [("thumb", "copies-differ")]
