"""What a counted piece answers of its needles, held against a walk over them row by row."""

from __future__ import annotations

from itertools import product

from hypothesis import given, settings
from hypothesis import strategies as some

from tests.counted.test_needles import GAP, NECK
from tests.counted.test_piece import asked, zone
from tests.counted.walked import MIDDLE, ROWS, beds, expanded, pieces
from tests.draws import draws
from tests.solve.workshop import origin
from walewright.counted import CountedPiece
from walewright.counted.model import SizedChart, SizedNeedlesOut, SizedOpening, SizedPiece, SizedSlot, SizedWedge
from walewright.counted.needles import (
    InWork,
    come,
    ends,
    last_row,
    moved,
    moved_in,
    moves,
    stitches_at,
    to_the_top,
    top_width,
    tops,
    widest_of,
)
from walewright.counted.ribs import rib_begin

rows = some.integers(0, ROWS)


@given(pieces())
@settings(max_examples=draws(150))
def test_after_every_row_the_needles_are_those_that_moves_left(of: CountedPiece) -> None:
    seen = beds(of)
    for row in range(ROWS + 1):
        assert InWork(of.sized).at(row) == (min(seen[row]), max(seen[row]))
        near = [seen[at] for at in (row - 2, row - 1, row, row + 1)]
        stays = set.intersection(*near)
        assert InWork(of.sized).about(row) == (min(stays), max(stays))
        assert InWork(of.sized).fewest(row) == min(len(bed) for bed in near[1:])
    assert top_width(of.sized) == len(seen[ROWS])


@given(pieces(), rows, rows)
@settings(max_examples=draws(150))
def test_the_widest_of_some_rows(of: CountedPiece, one: int, other: int) -> None:
    low, high = min(one, other), max(one, other)
    seen = beds(of)
    # What is moved at the last row is knitted after it.
    knitted = [seen[row] for row in range(low, high)] or [seen[low]]
    first, last = widest_of(of.sized, low, high)
    assert last - first + 1 == max(len(bed) for bed in knitted)
    assert set(range(first, last + 1)) in knitted


@given(pieces(), rows)
@settings(max_examples=draws(150))
def test_what_is_moved_at_a_row_belongs_to_what_ends_or_begins_there(of: CountedPiece, row: int) -> None:
    sized = of.sized
    sides = {side: expanded(runs) for side, runs in (("left", sized.left), ("right", sized.right))}
    both = [move for found in sides.values() for move in found]
    # Before what is moved at the beginning of a run.
    assert stitches_at(sized, row) == sized.start + sum(m.by for m in both if m.row < row or (m.row == row and m.low < row))
    # Before what is moved on the way further, of an even row.
    there = {side: sum(m.by for m in found if m.row < row or m.high == row) for side, found in sides.items()}
    assert {side: come(runs, row) for side, runs in (("left", sized.left), ("right", sized.right))} == there
    first, last = ends(sized, row)
    assert (first, last) == (-sized.start_left - there["left"], sized.start - sized.start_left - 1 + there["right"])
    # In the very row, on the way further.
    for names in ((), ("left",), ("right",)):
        here = [m.by for side in names or ("left", "right") for m in sides[side] if m.row == row and m.high > row]
        assert moved_in(sized, row, *names) == (tuple(here), 0)


@given(pieces())
@settings(max_examples=draws(100))
def test_moves_add_up(of: CountedPiece) -> None:
    for runs in (of.sized.left, of.sized.right):
        found = expanded(runs)
        assert moved(runs) == sum(move.by for move in found)
        by_row = moves(runs)
        assert {row: by for row, by in by_row.items() if by} == {
            row: by for row in {m.row for m in found} if (by := sum(m.by for m in found if m.row == row))
        }
        for run in runs:
            assert [(m.row, m.by) for m in found if m.low == run.from_row] == list(run.changes())
            for row in range(ROWS + 1):
                assert run.moved(row) == sum(m.by for m in found if m.low == run.from_row and m.row <= row)
            for phrase in run.phrases:
                assert phrase.rows == sum(phrase.gaps[at % len(phrase.gaps)] for at in range(phrase.times * len(phrase.gaps)))
                assert phrase.change == sum(by for _, by in product(range(phrase.times), phrase.by))


def test_runs_across_the_work_are_no_move_on_the_way() -> None:
    of = asked()
    wedges = tuple(SizedWedge(side, side, 20, (4, 3, 2), origin(side), "in", 5) for side in ("left", "right"))
    sized: SizedPiece = asked(wedges=(*wedges, SizedWedge("b", "both", 20, (6, 2), origin("both"), "out"))).sized
    assert moved_in(of.sized, 20) == ((), 0)
    assert moved_in(sized, 20) == ((), 9 + 9 + 6)
    assert moved_in(sized, 20, "left") == ((), 9 + 6)
    assert moved_in(sized, 20, "right") == ((), 9 + 6)
    assert moved_in(sized, 19) == moved_in(sized, 21) == ((), 0)


def test_shoulders_beside_an_opening_off_the_centre() -> None:
    """40 stitches; the gap begins with slots -10 to -7, and 3 of the left part and 3 of the right part follow it."""
    gap = SizedOpening("neck", 40, 4, 10, GAP, origin("neck"), 60, -10, left=(GAP,), right=(GAP,))
    sized = asked(openings=(gap,)).sized
    assert tops(sized) == ((-20, 20 - 10 - 3), (-6 + 3, 20 + 6 - 3))
    assert [part.at(60) for part in (InWork(sized, right=gap), InWork(sized, left=gap))] == [(-20, -14), (-3, 19)]
    # Edges that are alike need not be told twice: the odd stitch is at the right.
    like = SizedOpening("neck", 40, 4, 10, GAP, origin("neck"), 60, -2)
    assert [stitches for _, stitches in tops(asked(start=41, openings=(like,)).sized)] == [15, 16]
    assert NECK.depth == 20


def test_what_ends_between_two_openings_is_between_their_edges() -> None:
    """40 stitches; 4 are taken from slot -10 on, and 4 from slot 6 on; then each part beside them loses 3."""
    gaps = [
        SizedOpening(name, 40, 4, 10, GAP, origin(name), 60, at, left=(GAP,), right=(GAP,)) for name, at in (("b", 6), ("a", -10))
    ]
    sized = asked(openings=tuple(gaps)).sized
    assert [gap.name for gap in to_the_top(sized)] == ["a", "b"]
    assert tops(sized) == ((-20, 7), (-6 + 3, 12 - 6), (10 + 3, 7))
    assert top_width(sized) == 40


def test_the_first_of_several_gaps_ends_a_chart_or_a_panel() -> None:
    """It takes all its needles, at the row where it begins; one that takes some of them, or none, does not."""

    def gap(row: int, first: int, flat: int) -> SizedOpening:
        return SizedOpening(f"gap {row}", row, flat, 10, GAP, origin(f"gap {row}"), row + 4, first)

    openings = (gap(30, -4, 8), gap(20, -3, 8), gap(10, -3, 4), gap(12, -3, 0), gap(40, -4, 8))
    sized = asked(openings=openings).sized
    assert last_row(sized, -3, 3, 0, 60) == 20
    assert last_row(sized, -3, 4, 0, 60) == 20
    assert last_row(sized, -4, 3, 0, 60) == 30
    assert last_row(sized, -4, 3, 30, 60) == 40
    assert last_row(sized, -4, 4, 0, 60) == 60
    assert last_row(sized, -3, 3, 0, 0) == 0, "what has no end has none here either"


# ----------------------------------------------------------------- counter, needles out of work, stitches of a chart


def test_needles_out_of_work_in_the_rows_between_two() -> None:
    outs = (SizedNeedlesOut(10, 20, (-3, 3), 6, origin("out")), SizedNeedlesOut(18, 30, (3, 5), 0, origin("more")))
    sized = asked(needles_out=outs).sized
    wanted = {9: set(), 10: {-3, 3}, 17: {-3, 3}, 18: {-3, 3, 5}, 19: {-3, 3, 5}, 20: {3, 5}, 29: {3, 5}, 30: set()}
    assert {row: set(sized.out(row)) for row in wanted} == wanted


def test_stitches_from_the_first_to_the_last() -> None:
    assert SizedSlot("slot", 4, -2, 3, "waste", origin("slot")).stitches == 6
    assert SizedChart("c", "", "panel", 0, 4, -2, 3, 0, 0, 1, origin("chart")).stitches == 6
    assert zone("rib", 0, 4, 3, 3).panel == (3, 3)
    assert zone("rib", 0, 4, 3, 2).panel is None


def test_where_a_piece_begins() -> None:
    assert [asked(start=start, lean=lean).sized.start_left for start in (40, 41) for lean in (-4, 0, 4)] == [16, 20, 24] * 2
    sized = asked().sized
    assert (sized.row("hem"), sized.row("top")) == (0, 60)


def test_a_part_goes_on_to_where_the_gap_ends() -> None:
    sized = asked(openings=(SizedOpening("gap", MIDDLE, 4, 4, GAP, origin("gap"), 30, -2, rejoins=True), NECK)).sized
    assert [o.name if (o := sized.parted(row)) else "" for row in (17, 18, 29, 30, 39, 40, 59, 60)] == [
        *("", "gap", "gap", ""),
        *("", "neck", "neck", ""),
    ]


# ----------------------------------------------------------------- wales of a rib


def outwards(slot: int) -> int:
    """Needles from the centre mark, from 0: R 1 and L 1 are both the first."""
    return slot if slot >= 0 else -slot - 1


@given(some.integers(2, 6), some.integers(-12, 6), some.integers(1, 18), some.integers(-12, 12), some.integers(0, 12))
@settings(max_examples=draws(300))
def test_a_rib_begins_as_near_to_the_half_of_its_step_as_a_wale_can_be(
    every: int, first: int, many: int, at: int, wide: int
) -> None:
    last = first + many - 1
    for panel in (None, (at, at + wide)):
        wales = [x for x in range(first, last + 1) if panel is None or panel[0] <= x <= panel[1]]
        inner = [x for x in wales if x not in (first, last)]
        begin = rib_begin(every, first, last, panel)
        if not inner:
            assert begin is None
            continue
        assert begin in {outwards(x) % every for x in inner}
        nearest = min(abs(outwards(x) % every - every // 2) for x in inner)
        assert abs(begin - every // 2) == nearest
        if begin > every // 2:
            assert every // 2 - nearest not in {outwards(x) % every for x in inner}, "of two as near the inner one"


def test_ribs_of_which_an_end_needle_is_a_part() -> None:
    """An end needle is never latched up, also where a panel begins or ends with it."""
    assert rib_begin(3, 0, 8, (0, 0)) is None
    assert rib_begin(3, 0, 8, (8, 12)) is None
    assert rib_begin(3, 0, 8, (-4, 2)) == 1
    assert rib_begin(4, 3, 9, (3, 4)) == 0, "slot 4, not slot 3, whose place in the step would be the nearer one"
    assert rib_begin(4, -12, -4, (-5, -3)) == 0, "slot -5, not slot -4"
    assert rib_begin(3, 0, 1) is None
    assert rib_begin(3, 0, 2) == 1
    assert rib_begin(4, 0, 30, (16, 16)) == 0
