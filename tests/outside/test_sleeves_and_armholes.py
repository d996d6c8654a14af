"""Published worked examples of armholes, sleeves and sleeve heads, compiled from sources that state their figures."""

from __future__ import annotations

from itertools import pairwise

import pytest

from tests.outside.finished import length, width
from tests.outside.worked import INCH, cast_offs, compiled, garment, moves, proven
from walewright.counted.model import SizedRun


def sides(run: SizedRun) -> int:
    return sum(by for _, by in run.changes())


def test_underarm_cast_offs_fall_on_successive_rows() -> None:
    """Source: knitter-designer blog on drafting machine-knitted sweaters, 2007,
    http://designyourownsweater.blogspot.com/2007/01/set-in-sleeves.html: 3 cm on each side at 28 stitches to 10 cm are 8 stitches,
    cast off at the beginning of row 153 and of row 154; the body is 174 stitches wide and 152 rows high at the underarm."""
    body = """
piece back in plain
    levels hem 0 cm, underarm 38 cm, chest 45 cm, top 64 cm
    start 62 cm wide with e-wrap
    edges straight to underarm
    edges cast off 3 cm then curve to 46 cm wide at chest
    edges straight to top
    end cast off
"""
    outcome = compiled(body)
    assert outcome.proven
    assert outcome.counts is not None
    piece = outcome.counts.sizes[0].piece("back")
    assert piece.start == 174
    assert piece.row("underarm") == 152
    assert cast_offs(outcome, "back")[:2] == [(152, 8), (153, 8)]


def test_a_dropped_shoulder_sleeve() -> None:
    """Source: knitter-designer blog on drafting machine-knitted sweaters, 2007, http://designyourownsweater.blogspot.com/2007/01/
    sleeve.html: centre back to wrist 80 cm, body 62 cm wide: 49 cm are 196 rows at 40 to 10 cm; wrist 26 cm and top 56 cm are 72
    and 156 stitches at 28 to 10 cm (rounded down to even; 156.8 is as near to 156 as even numbers go)."""
    sleeve = garment(
        """
piece sleeve in plain
    levels cuff 0 cm, wide 80 cm - 62 cm / 2 - 3 cm, top 80 cm - 62 cm / 2
    start 26 cm wide with e-wrap
    edges slope to 2 * 28 cm wide at wide, fashioned 2 in
    edges straight to top
    end cast off
"""
    ).piece("sleeve")
    assert sleeve.rows == 196
    assert sleeve.start == 72
    assert sleeve.start + 2 * sides(sleeve.left[0]) == 156


def test_a_sleeve_that_ends_as_many_rows_above_as_its_armhole() -> None:
    """Source: knitter-designer blog on drafting machine-knitted sweaters, 2007, http://designyourownsweater.blogspot.com/: a sleeve
    64 cm long at 40 rows to 10 cm has 256 rows; with 64 rows of head, as the armhole has, 192 lie below it."""
    sized = garment(
        """
piece sleeve in plain
    levels cuff 0 cm, underarm 48 cm, head 48 cm + 16 cm
    start 26 cm wide with e-wrap
    edges straight to underarm
    edges slope to 10 cm wide at head, fashioned 2 in
    end cast off
"""
    ).piece("sleeve")
    assert (sized.row("underarm"), sized.rows) == (192, 256)


def test_a_raglan_sleeve_from_the_wrist() -> None:
    """Source: knitter blog, baby sweater design, http://slippedstitches.wordpress.com/category/baby-sweater-design/: 34 stitches
    grow to 40 over 48 rows; then 2 are cast off on each side and 40 become 6 over 30 rows: 1 at each end every 2nd row 15 times."""
    sleeve = garment(
        """
piece sleeve in plain
    levels cuff 0 cm, underarm 48 rows, top 78 rows
    start 34 stitches wide with e-wrap
    edges slope to 40 stitches wide at underarm, fashioned 2 in
    edges cast off 2 stitches then slope to 6 stitches wide at top, fashioned 2 in
    end cast off
"""
    ).piece("sleeve")
    grow, raglan = sleeve.left
    assert len(moves(grow)) == 3
    gaps = [b - a for (a, _), (b, _) in pairwise(moves(grow))]
    # Every 16th row there, the last on the last row; ours are as even, and leave the new width some rows.
    assert len(set(gaps)) == 1
    first, *rest = moves(raglan)
    assert first == (0, -2)
    assert [by for _, by in rest] == [-1] * 15
    # The last one a row earlier than there: a plain row follows it.
    assert [b - a for (a, _), (b, _) in pairwise(rest)] == [2] * 13 + [1]


def test_the_middle_of_a_sleeve_head() -> None:
    """Source: knitter blog, sleeve caps, https://slippedstitches.wordpress.com/2014/03/: an armhole 8.5 in deep and a head 5.5 in
    high at 6.5 rows to the inch, 36 rows; 66 stitches, 10 cast off at the underarms, 8 and 16 at the top: 32 are lost
    between, 16 on each side."""
    sleeve = garment(
        """
piece sleeve in plain
    levels underarm 0 cm, head 5.5 in
    start 66 stitches - 10 stitches wide with e-wrap
    edges slope to 24 stitches wide at head, fashioned 2 in
    end cast off
""",
        stitches=20,
        rows=65 / 2.54,
    ).piece("sleeve")
    assert sleeve.rows == 36
    assert [by for _, by in moves(sleeve.left[0])] == [-1] * 16


def test_a_skirt_that_narrows_to_the_hip() -> None:
    """Source: knitter blog, a skirt in rounds, https://vickieshouse1.wordpress.com/2013/07/: 16 in at 8.5 rows to the inch are 136
    rows; 44 stitches in all, 4 every 12th row 11 times, on four lines. One line on each edge: 11 moves about 12 rows apart."""
    skirt = garment(
        """
piece skirt in plain
    levels hem 0 cm, hip 16 in
    start 150 stitches wide with e-wrap
    edges slope to 128 stitches wide at hip, fashioned 2 in
    end cast off
""",
        stitches=62.5 / 2.54,
        rows=85 / 2.54,
    ).piece("skirt")
    assert skirt.rows == 136
    rows = [row for row, _ in moves(skirt.left[0])]
    assert len(rows) == 11
    assert {b - a for a, b in pairwise(rows)} <= {12, 13}


def test_a_v_neck_with_and_without_a_stitch_at_its_point() -> None:
    """Source: knitting article collection, 2015,
    https://knit1knitall.blogspot.com/2015/08/convert-top-down-crew-scoop-or-square.html: 30 stitches across the back neck are 15
    shapings on each side; 31 are 15 on each side and the centre stitch."""
    piece = """
piece front in plain{odd}
    levels hem 0 cm, top 120 rows
    start {wide} stitches wide with e-wrap
    neck {neck} stitches wide, 60 rows deep, v{flat}
    end cast off
"""
    for odd, wide, neck, flat, centre in ((("", 90, 30, "", 0)), (", centre stitch", 91, 31, ", 1 stitch flat, cast off", 1)):
        sized = garment(piece.format(odd=odd, wide=wide, neck=neck, flat=flat)).piece("front")
        opening = sized.openings[0]
        assert opening.flat == centre
        for inner in (opening.left, opening.right):
            assert sum(-by for run in inner for _, by in run.changes()) == 15


def test_an_armhole_whose_last_part_is_the_sleeve_s() -> None:
    """Source: designer blog, writing a raglan, 2013: 4 in of sleeve at the neck and a raglan of 5.5 in: the back neck is 2 in deep,
    half of what the sleeves lay over the shoulder, and the armhole 7.5 in."""
    outcome = proven(
        """
let line = 5.5 in
let over_shoulder = 4 in

piece back in plain, knit 2
    levels hem 0 cm, underarm 10 in, top 10 in + line
    start 18 in wide with e-wrap
    edges straight to underarm called side
    use raglan_line, top top, off 2 cm, across 7 in
    end cast off

piece sleeve in plain, knit 2
    levels cuff 0 cm, underarm 12 in, top 12 in + line
    start 12 in wide with e-wrap
    edges straight to underarm called seam
    use raglan_line, top top, off 2 cm, across over_shoulder
    end cast off

join back raglan to sleeve raglan
"""
    )
    line = length(outcome, "back", "underarm", "top")
    neck = width(outcome, "sleeve", "top") / 2
    assert line == pytest.approx(5.5 * INCH, abs=0.25)
    assert neck == pytest.approx(2 * INCH, abs=0.25)
    assert line + neck == pytest.approx(7.5 * INCH, abs=0.4)
    (join,) = outcome.counts.sizes[0].joins if outcome.counts else ()
    assert join.one_rows == join.other_rows == pytest.approx(5.5 * INCH * 4, abs=1)
