"""Which needles of a counted piece have stitches, and which of them a rib re-forms."""

from __future__ import annotations

from dataclasses import replace

from tests.counted.test_piece import asked, zone
from tests.solve.workshop import SIMPLE, origin
from walewright.counted.model import ShapingPhrase, SizedChart, SizedOpening, SizedRepeat, SizedRun, SizedWedge
from walewright.counted.needles import InWork, ends, last_row, meets_edge, moved_in, moves, stitches_at, top_width, tops, widest_of
from walewright.counted.ribs import ribs


def run(low: int, high: int, *phrases: ShapingPhrase) -> SizedRun:
    return SizedRun("", low, high, phrases, SIMPLE, origin("run"))


NARROWING = (run(0, 20, ShapingPhrase((4,), (-1,), 5)), run(20, 60, ShapingPhrase((0,), (-3,), 1)))
GAP = run(40, 60, ShapingPhrase((2,), (-1,), 3))
NECK = SizedOpening("neck", 40, 4, 10, GAP, origin("neck"), 60, -2, left=(GAP,), right=(GAP,))


def test_an_edge_is_where_its_moves_have_brought_it() -> None:
    """40 stitches; one less at each side at rows 4, 8, 12, 16, 20, and three more at row 20."""
    sized = asked(left=NARROWING, right=NARROWING).sized
    assert moves(sized.left) == {4: -1, 8: -1, 12: -1, 16: -1, 20: -4}
    assert [InWork(sized).at(row) for row in (3, 4, 19, 20)] == [(-20, 19), (-19, 18), (-16, 15), (-12, 11)]
    assert top_width(sized) == 24
    assert widest_of(sized, 4, 20) == (-19, 18)
    assert InWork(sized).about(20) == (-12, 11)
    assert InWork(sized).fewest(20) == 24
    # At row 20 one run ends and the next one casts off at once; at row 16 the first is on its way.
    assert [ends(sized, row) for row in (16, 20, 22)] == [(-17, 16), (-15, 14), (-12, 11)]
    assert [stitches_at(sized, row) for row in (16, 20, 22)] == [32, 30, 24]
    assert moved_in(sized, 20) == ((-3, -3), 0)


def test_the_parts_beside_an_opening_lose_what_it_gains() -> None:
    sized = asked(openings=(NECK,)).sized
    parts = InWork(sized, right=NECK), InWork(sized, left=NECK)
    assert [part.at(40) for part in parts] == [(-20, -3), (2, 19)]
    assert [part.at(60) for part in parts] == [(-20, -6), (5, 19)]
    assert tops(sized) == ((-20, 15), (5, 15))
    assert [last_row(sized, first, 1, 20, 60) for first in (-2, -3)] == [40, 60]
    assert last_row(sized, -2, 1, 40, 60) == 60
    # What ends below the opening is not ended by it.
    assert last_row(sized, -2, 1, 20, 36) == 36
    assert [sized.parted(row) is NECK for row in (39, 40, 59, 60)] == [False, True, True, False]


def test_a_panel_meets_an_edge_where_its_columns_are_knitted_plain() -> None:
    """40 stitches that become 24 by row 20: -12 to 11, of which 2 at each end are plain."""
    narrowing = asked(left=NARROWING, right=NARROWING).sized

    def meets(first: int, to_row: int = 60) -> bool:
        return meets_edge(narrowing, SizedChart("", "", "panel", 0, to_row, first, 9, 2, first, 1, origin("panel")))

    assert not meets(-10)
    assert meets(-11)
    assert not meets(-11, 12)
    inside = SizedChart("", "", "panel", 0, 60, -10, 9, 2, -10, 1, origin("panel"))
    assert meets_edge(asked(openings=(NECK,)).sized, inside)
    assert not meets_edge(asked(openings=(NECK,)).sized, replace(inside, to_row=40))
    wedge = SizedWedge("dart", "left", 20, (4, 3, 2), origin("dart"), "in", 5)
    assert meets_edge(asked(wedges=(wedge,)).sized, inside)


def test_the_counter_counts_every_time_of_a_repeat() -> None:
    """Rows 10 to 16 three times: 12 rows more from row 16 on; before it is over the counter has them not yet."""
    sized = asked(repeats=(SizedRepeat(10, 16, 3, origin("again")),)).sized
    assert [sized.counter(row) for row in (10, 15, 16, 60)] == [10, 15, 28, 72]
    assert [sized.within(10, 16, counter) for counter in (10, 11, 28, 29)] == [False, True, True, False]


def test_what_a_wedge_holds_at_most() -> None:
    wedge = SizedWedge("dart", "left", 20, (4, 3, 2), origin("dart"), "in", 5)
    assert wedge.reach == 5 + 4 + 3
    assert replace(wedge, kind="both").reach == 5 + 4 + 3 + 2
    assert [replace(wedge, kind=kind).at_once for kind in ("in", "both", "out")] == [5 + 4, 5 + 4, 5 + 4 + 3]


def test_ribs_lie_in_their_zones_and_between_them_in_the_pieces_own_fabric() -> None:
    """Every 3rd wale, from the second outwards on both sides alike."""
    of = asked(zone("plain", 10, 20), zone("cable", 30, 40, -3, 3), fabric="rib", left=NARROWING, right=NARROWING)
    found = [(rib.low, rib.high, rib.widest, rib.panel) for rib in ribs(of)]
    assert found == [(0, 10, (-20, 19), None), (20, 60, (-12, 11), None)]
    first = next(ribs(of))
    assert [slot for slot in range(-6, 6) if first.has(slot)] == [-5, -2, 1, 4]


def test_a_rib_in_a_zone_of_a_piece_in_rib_is_one_of_its_own() -> None:
    found = [(rib.low, rib.high, rib.zone is None) for rib in ribs(asked(zone("rib", 10, 20), fabric="rib"))]
    assert found == [(10, 20, False), (0, 10, True), (20, 60, True)]


def test_a_panel_of_rib_has_only_its_own_wales() -> None:
    (rib,) = ribs(asked(zone("rib", 0, 60, -3, 3)))
    assert [slot for slot in range(-20, 20) if rib.has(slot)] == [-2, 1]
    assert not rib.over(4)
