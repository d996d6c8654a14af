"""Published worked examples of shoulders held in steps, compiled from sources: what the bed is given to hold, and when."""

from __future__ import annotations

import pytest

from tests.outside.worked import PER_INCH, garment, knitted, proven
from walewright.knit.operations import Hold, Pass, Release
from walewright.pipeline import Outcome


def turns(outcome: Outcome, block: str) -> list[tuple[int, int]]:
    """(rows knitted before it, stitches held) for every hold at the right end of a piece from its first pass on."""
    work = next(b for b in outcome.works[0].blocks if b.name == block)
    found, row = [], 0
    for op in work.operations:
        if isinstance(op, Pass):
            row += 1
        elif isinstance(op, Hold) and row and op.first > 0:
            found.append((row, op.last - op.first + 1))
    return found


SHOULDERS = """
piece back in plain{odd}
    levels hem 0 cm, tip {tip}, top {top}
    start {wide} wide with e-wrap
    neck {neck} stitches wide, {deep} rows deep, square, cast off
    shoulders held from tip
    end cast off
"""


def test_equal_holding_steps() -> None:
    """Source: a machine maker's help page on shoulders (as restated in a collection of worked examples; address withheld there): 15
    shoulder stitches in three groups of 5, carriage at the neck side: hold 5, 2 rows; hold 5, 2 rows; all back to work, 1 row: 4
    short rows and 1 over all. With the row that takes the carriage to the neck side the slope takes 6 rows."""
    body = SHOULDERS.format(odd="", tip="94 rows", top="100 rows", wide="60 stitches", neck=30, deep=10)
    outcome = proven(body)
    assert outcome.counts is not None
    (wedge,) = outcome.counts.sizes[0].piece("back").wedges
    assert wedge.groups == (5, 5, 5)
    assert turns(outcome, "back")[:2] == [(95, 5), (97, 5)]
    operations = next(b for b in outcome.works[0].blocks if b.name == "back").operations
    holds = [i for i, op in enumerate(operations) if isinstance(op, Hold) and op.first > 0]
    back = next(i for i, op in enumerate(operations) if isinstance(op, Release) and i > holds[0])
    assert len([op for op in operations[holds[0] : back] if isinstance(op, Pass)]) == 4
    # At its edge the right half has 96 rows, beside the neck 100.
    fabric = knitted(outcome, "back")
    assert (fabric.rows_in_wale(29), fabric.rows_in_wale(15)) == (96, 100)


@pytest.mark.parametrize(
    ("shoulder", "centre", "first", "last"),
    [(43, 45, 21, 22), (49, 45, 24, 25), (54, 47, 27, 27), (61, 47, 30, 31), (67, 49, 33, 34)],
)
def test_the_odd_stitch_goes_to_the_last_step(shoulder: int, centre: int, first: int, last: int) -> None:
    """Source: craft book excerpt, back neck and shoulders, https://www.knittingmagic.biz/simply-3/
    shape-back-neck-and-shoulders.html: shoulders of 43 (49, 54, 61, 67) in two steps, half down and half up: first 21 (24, 27, 30,
    33), then, next to the neck, 22 (25, 27, 31, 34); between them a centre of 39 (39, 41, 41, 43) and 3 and 3."""
    wide = f"{2 * shoulder + centre} stitches"
    body = SHOULDERS.format(odd=", centre stitch", tip="96 rows", top="100 rows", wide=wide, neck=centre, deep=10)
    outcome = proven(body.replace("held from tip", "held from tip, larger steps last"))
    assert outcome.counts is not None
    wedges = outcome.counts.sizes[0].piece("back").wedges
    assert {wedge.groups for wedge in wedges} == {(first, last)}
    if first != last:
        plain = proven(body).counts
        assert plain is not None
        assert {wedge.groups for wedge in plain.sizes[0].piece("back").wedges} == {(last, first)}


def test_a_third_of_the_rows_may_be_shoulder() -> None:
    """Source: machine knitter blog, 2012, http://ozlorna.blogspot.com/2012/09/: 26 stitches and 36 rows to 10 cm; an armhole of 25
    cm is 90 rows, a back 40 cm wide 104 stitches, and a third of the rows, 30, are the shoulder's."""
    body = SHOULDERS.format(odd="", tip="25 cm - 25 cm / 3", top="25 cm", wide="40 cm", neck=30, deep=40)
    outcome = proven(body, stitches=26, rows=36)
    assert outcome.counts is not None
    piece = outcome.counts.sizes[0].piece("back")
    assert (piece.start, piece.rows, piece.rows - piece.row("tip")) == (104, 90, 30)
    (wedge,) = piece.wedges
    # 37 stitches in 15 steps of two rows, the larger ones outside.
    assert (sum(wedge.groups), len(wedge.groups)) == ((104 - 30) // 2, 30 // 2)
    assert max(wedge.groups) - min(wedge.groups) == 1
    fabric = knitted(outcome, "back")
    assert fabric.rows_in_wale(16) - fabric.rows_in_wale(51) == 28


@pytest.mark.parametrize(("stitches", "times", "published"), [(16, 3, [5, 5, 6]), (43, 2, [21, 22]), (49, 2, [24, 25])])
def test_a_shoulder_cast_off_in_stairs(stitches: int, times: int, published: list[int]) -> None:
    """Sources: technical knitting blog, shoulders in stairs, 2012,
    http://techknitting.blogspot.ca/2012/01/sweater-shoulders-transform-stair-steps.html: of 16 stitches 5, 5 and the last 6; craft
    book excerpt, https://www.knittingmagic.biz/simply-3/shape-back-neck-and-shoulders.html: of 43 (49) 21 (24) and the
    rest. What is left is the last step there; here the edge is led to the neck in steps."""
    for order in ("first", "last"):
        back = garment(
            f"""
piece back in plain
    levels hem 0 cm, tip 60 rows, top {60 + 2 * times + 2} rows
    start {2 * stitches + 40} stitches wide with e-wrap
    edges straight to tip
    edges steps {-stitches / times:.6f} stitches {times} times to top, larger steps {order}
    end cast off
"""
        ).piece("back")
        made = [-by for run in back.left for _, by in run.changes()]
        assert made == (published if order == "last" else published[::-1])


@pytest.mark.parametrize(
    ("back", "centre", "side", "first", "last"),
    [(137, 39, 49, 21, 22), (149, 39, 55, 24, 25), (161, 41, 60, 27, 27), (175, 41, 67, 30, 31), (189, 43, 73, 33, 34)],
)
def test_a_shoulder_in_two_steps_in_five_sizes(back: int, centre: int, side: int, first: int, last: int) -> None:
    """Source: craft book excerpt, https://www.knittingmagic.biz/simply-3/shape-back-neck-and-shoulders.html: of each side of 49
    (55, 60, 67, 73) stitches 6 go at the neck, and the shoulder of 43 (49, 54, 61, 67) is worked in two steps, 21 (24, 27, 30, 33)
    and the rest; the centre is 39 (39, 41, 41, 43). There the odd stitch goes to the step at the neck, here to the outer one."""
    body = SHOULDERS.format(
        odd=", centre stitch", tip="96 rows", top="100 rows", wide=f"{back} stitches", neck=centre + 12, deep=10
    )
    (wedge,) = garment(body).piece("back").wedges
    assert sum(wedge.groups) == side - 6
    assert sorted(wedge.groups) == [first, last]


def test_six_equal_steps_on_each_side() -> None:
    """Source: knitter blog, shoulders and neck by short rows,
    https://megapteraknits.com/how-to-shape-shoulders-and-neck-with-short-rows-with-video/: 93 stitches; 3 at each end, six times
    over 12 rows: 18 on each side and 57 in the centre."""
    outcome = proven(
        """
piece back in plain, centre stitch
    levels hem 0 cm, tip 60 rows, top 72 rows
    start 93 stitches wide with e-wrap
    wedge 18 stitches wide at both edges from tip to top, held in
    end cast off
"""
    )
    assert outcome.counts is not None
    (wedge,) = outcome.counts.sizes[0].piece("back").wedges
    assert wedge.groups == (3,) * 6
    fabric = knitted(outcome, "back")
    rows = [fabric.rows_in_wale(slot) for slot in range(-46, 47)]
    # The whole slope in the 57 of the centre, and 3 stitches at each end that all but two rows of it leave out.
    assert rows.count(72) >= 57
    assert rows[18:-18] == [72] * 57
    assert (min(rows), rows.count(min(rows))) == (62, 6)
    assert sorted(set(rows)) == [62, 64, 66, 68, 70, 72]


def test_a_slope_in_inches_becomes_an_even_number_of_rows() -> None:
    """Source: designer blog, shoulder slope, 2013, https://knittingrobin.blogspot.com/2013/09/shoulder-slope-fitting-part-2.html: a
    slope of 0.75 in at 7 rows to the inch is 5.25 rows, made 6; 21 stitches in steps of 7, so the short rows go over 14 and 7."""
    body = SHOULDERS.format(odd="", tip="14 in - 0.75 in", top="14 in", wide="72 stitches", neck=30, deep=10)
    outcome = proven(body, stitches=5 * PER_INCH, rows=7 * PER_INCH, bed="mid")
    assert outcome.counts is not None
    piece = outcome.counts.sizes[0].piece("back")
    assert (piece.rows, piece.rows - piece.row("tip")) == (98, 6)
    assert piece.wedges[0].groups == (7, 7, 7)
    last = [course for course in knitted(outcome, "back").passes() if course.first > 0 and course.counter > 92]
    assert {course.count for course in last} == {21, 14, 7}


@pytest.mark.parametrize(("stitches", "rows", "groups"), [(100, 36, {6: 10, 5: 8}), (100, 40, {5: 20}), (90, 36, {5: 18})])
def test_a_wedge_with_a_remainder(stitches: int, rows: int, groups: dict[int, int]) -> None:
    """Source: machine knitting teacher notes on wedges and spirals, http://alessandrina.com/category/miters-and-spirals/page/2/: a
    wedge of 36 rows over 100 stitches is drawn as a line over squares of a stitch and two rows, which shows what to hold each
    time: 18 groups, 10 of 6 and 8 of 5."""
    outcome = proven(
        f"""
piece panel in plain
    levels hem 0 cm, low 20 rows, high {20 + rows} rows, top {40 + rows} rows
    start 140 stitches wide with e-wrap
    wedge {stitches} stitches wide at the right edge from low to high, held in
    end cast off
"""
    )
    assert outcome.counts is not None
    (wedge,) = outcome.counts.sizes[0].piece("panel").wedges
    assert {size: wedge.groups.count(size) for size in set(wedge.groups)} == groups
    # All but the last group are held, each for two rows less than the one before it.
    fabric = knitted(outcome, "panel")
    short = [40 + rows - fabric.rows_in_wale(69 - at) for at in range(stitches)]
    drawn = [rows - 2 * (1 + (at * (rows // 2)) // stitches) for at in range(stitches)]
    assert all(abs(ours - line) <= 2 for ours, line in zip(short, drawn, strict=True))
    assert short[0] == rows - 2
    assert short[-1] == 0
