"""Published worked examples of stitch patterns that come out whole, compiled from charts: where the bed knitted each mark."""

from __future__ import annotations

import pytest

from tests.outside.worked import PER_INCH, WIDE, knitted, proven
from walewright.bed import KnitFabric


def charted(row: str, repeat: str, wide: str, odd: bool, edge: int = 0, stitches: float = 28, bed: str = "fine") -> KnitFabric:
    """A panel in a chart of one kind of row, knitted in whole repeats."""
    outcome = proven(
        f"""
chart marks
    key . knit
    key - purl
    | {" ".join(row)} |
    repeat {repeat}

fabric charted
    chart marks in wool at tension 5, whole repeats{f", {edge} edge stitches" if edge else ""}
    swatch {stitches:g} stitches by 40 rows = 10 cm by 10 cm, 10 g

piece panel in charted{", centre stitch" if odd else ""}
    levels hem 0 cm, top 40 rows
    start {wide} wide with e-wrap
    end cast off
""",
        stitches,
        40,
        bed,
    )
    return knitted(outcome, "panel")


def marked(fabric: KnitFabric, row: int = 20) -> str:
    """A row as it was knitted, "-" for each wale that was re-formed on the other face."""
    (course,) = fabric.passes(row)
    return "".join("-" if fabric.faces[loop] else "." for loop in range(course.first_loop, course.first_loop + course.count))


def test_a_cuff_in_whole_repeats() -> None:
    """Source: designer blog, series on converting gauge, 2018, http://knittingrobin.blogspot.com/2018/04: a cuff of 9 in at 4.5
    stitches to the inch is 40.5; of a repeat of 6 with 2 seam stitches there may be 6 repeats, 38 stitches, 8 in of pattern, or 7,
    44 stitches, 9.33 in. The nearer is taken: 38, and 44 for a cuff of 9.5 in."""
    assert marked(charted("...---", "6 stitches", "9 in", False, 1, 4.5 * PER_INCH)) == "." + "...---" * 6 + "."
    assert marked(charted("...---", "6 stitches", "9.5 in", False, 1, 4.5 * PER_INCH)) == "." + "...---" * 7 + "."


def test_a_hem_on_a_lace_repeat() -> None:
    """Source: knitter blog, lace skirt, 2010, http://pureandstrange.blogspot.com/2010/03/blog-post.html: 42 in at 5 stitches to the
    inch are 210; of a repeat of 22 and 1 stitch more, 9 are 199 and 10 are 221. Halfway between, the page takes the larger; ours
    is the nearer one on either side."""
    row = "-" + "." * 21 + "-"
    assert charted(row, "22 stitches", "42 in", True, 0, 5 * PER_INCH, WIDE).stitches_at(1) in (199, 221)
    assert charted(row, "22 stitches", "41.8 in", True, 0, 5 * PER_INCH, WIDE).stitches_at(1) == 199
    assert charted(row, "22 stitches", "42.2 in", True, 0, 5 * PER_INCH, WIDE).stitches_at(1) == 221


def test_repeats_and_a_stitch_at_each_edge() -> None:
    """Source: stitch dictionary stored as a scan, https://ro.scribd.com/document/24524683/Mon-Tricott-Knitting-Dictionary: 11
    repeats of 3 knit and 3 purl, with a selvedge stitch at each end: 66 + 2 = 68."""
    assert marked(charted("...---", "6 stitches", "68 stitches", False, 1)) == "." + "...---" * 11 + "."


def test_repeats_and_what_balances_them() -> None:
    """Source: stitch dictionary stored as a scan, https://ro.scribd.com/document/24524683/Mon-Tricott-Knitting-Dictionary: knit 4,
    * purl 1, knit 7 *, purl 1, knit 4: a multiple of 8 and 9 more, and 2 for the edges: with 10 repeats 91 stitches."""
    knit_4, repeat, purl_1_knit_4 = "....", "-.......", "-...."
    row = marked(charted(knit_4 + repeat + purl_1_knit_4, "8 stitches, after 4 stitches", "90 stitches", True, 1))
    assert row == "." + knit_4 + repeat * 10 + purl_1_knit_4 + "."
    assert len(row) == 91


@pytest.mark.parametrize(("cables", "stitches"), [(1, 12), (2, 21), (3, 30)])
def test_ground_shared_between_cables(cables: int, stitches: int) -> None:
    """Source: knitting technique blog, 2011, http://techknitting.blogspot.com/2011/10/multiple-of-x-plus-y-stitch-pattern.html:
    cables of 6 with a ground of 3 between and beside them: a multiple of 9 and 3 more: 12, 21, 30 for 1, 2, 3 cables."""
    row = marked(charted("---......---", "9 stitches", f"{stitches + 1} stitches", bool(stitches % 2)))
    assert row == "---......" * cables + "---"
    assert len(row) == stitches


def test_an_odd_motif_at_the_centre() -> None:
    """Source: knitting maths blog, 2011, http://knittingwithkarma.blogspot.com/2011/06/knitting-math-3-long-pattern-repeats.html: a
    motif of 17 on 51 stitches leaves 34, 17 on each side: both counts are odd."""
    outcome = proven(
        """
chart square
    key . knit
    key - purl
    | - - - - - - - - - - - - - - - - - |
    | - - - - - - - - - - - - - - - - - |

piece panel in plain, centre stitch
    levels hem 0 cm, low 10 rows, top 40 rows
    start 51 stitches wide with e-wrap
    motif square at low
    end cast off
"""
    )
    assert marked(knitted(outcome, "panel"), 11) == "." * 17 + "-" * 17 + "." * 17
