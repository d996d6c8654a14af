"""Published worked examples of stitches and rows for a width and a length, compiled from a swatch and centimetres or inches."""

from __future__ import annotations

from itertools import pairwise

import pytest

from tests.outside.worked import INCH, PER_INCH, WIDE, garment, knitted, proven
from walewright.counted.model import SizedPiece
from walewright.guide.english import LANGUAGE

PANEL = """
piece panel in plain{odd}
    levels hem 0 cm, top {high}
    start {wide} wide with e-wrap
    end cast off
"""


def panel(wide: str, high: str, stitches: float, rows: float, bed: str = "fine", odd: bool = False) -> SizedPiece:
    """A plain panel of that size; `odd`: with a stitch at its centre."""
    outcome = proven(PANEL.format(wide=wide, high=high, odd=", centre stitch" if odd else ""), stitches, rows, bed)
    assert outcome.counts is not None
    piece = outcome.counts.sizes[0].piece("panel")
    fabric = knitted(outcome, "panel")
    assert (fabric.stitches_at(0), fabric.stitches_at(piece.rows), fabric.rows) == (piece.start, piece.start, piece.rows)
    return piece


def test_the_rule_of_three_from_an_odd_swatch() -> None:
    """Source: knitting tutorial site, 2016, https://www.watchknitting.com/2016/05/measure-required-stitches-project/: 20 stitches
    measure 30 cm; 40 cm are 26.67, made 27."""
    body = """
fabric measured
    stocking stitch in wool at tension 6
    swatch 20 stitches by 30 rows = 30 cm by 30 cm, 30 g
""" + PANEL.replace("in plain", "in measured").format(wide="40 cm", high="20 cm", odd=", centre stitch")
    assert garment(body, bed="bulky").piece("panel").start == 27


def test_two_systems_of_units_do_not_agree() -> None:
    """Source: craft book excerpt, tips on altering garments, https://www.knittingmagic.biz/guide-8/knit-perfect-jea.html: 18
    stitches and 24 rows to 4 in, or to 10 cm; a sleeve of 21 in (53.5 cm) less a cuff of 2 in (5 cm) is 114 rows by inches and
    116.4 by centimetres."""
    in_inches = panel("10 in", "21 in - 2 in", 18 / 4 * PER_INCH, 24 / 4 * PER_INCH, "standard")
    in_cm = panel("25 cm", "53.5 cm - 5 cm", 18, 24, "standard")
    assert in_inches.rows == 114
    assert in_cm.rows == 116


def test_one_tension_behind_three_printed_widths() -> None:
    """Source: craft magazine site, planning a raglan, https://www.interweave.com/article/crochet/fof-plan-top-down-raglan/: 102
    stitches are 22 in, 184 are 40 in and 60 are 13 in: one tension of about 4.6 to the inch, with rounding."""
    counts = [panel(f"{inches} in", "20 cm", 4.62 * PER_INCH, 24, "fine").start for inches in (22, 40, 13)]
    assert counts == [102, 184, 60]


def test_a_skirt_s_hem_from_an_odd_swatch() -> None:
    """Source: designer blog, skirt from a schematic, 2018, https://knittingunplugged.com/2018/07/15/
    design-and-knit-a-skirt-from-a-style-in-your-closet-step-3-converting-gauge-to-stitches-and-rows/: 42 stitches are 6.25 in and
    41 rows 4.5 in; a hem of 30 in is 201.6 stitches, made 202; 9.11 rows to the inch."""
    body = """
fabric measured
    stocking stitch in wool at tension 6
    swatch 42 stitches by 41 rows = 6.25 in by 4.5 in, 20 g
""" + PANEL.replace("in plain", "in measured").format(wide="30 in", high="20 in", odd="")
    piece = garment(body, bed=WIDE).piece("panel")
    assert piece.start == 202
    assert piece.rows == pytest.approx(20 * 9.11, abs=1)


def test_a_body_width_in_stitches_and_rows() -> None:
    """Source: knitter-designer blog on drafting machine-knitted sweaters, 2007,
    http://designyourownsweater.blogspot.com/2007/01/set-in-sleeves.html: 28 stitches and 40 rows to 10 cm: 62 cm are 174 stitches,
    and 64 cm less an armhole of 26 cm are 152 rows."""
    piece = panel("62 cm", "64 cm - 26 cm", 28, 40)
    assert (piece.start, piece.rows) == (174, 152)


def test_seam_stitches_are_added_to_the_width() -> None:
    """Source: online knitting handbook, chapter on tension, http://studioknits.com/bookpage22.htm: 22 stitches to 10 cm; 40 cm are
    88 stitches, 90 with two for the seams."""
    assert panel("40 cm", "20 cm", 22, 30).start == 88
    assert panel("40 cm * 22 stitches / 10 cm + 2 stitches", "20 cm", 22, 30).start == 90


def test_seam_stitches_show_a_printed_slip() -> None:
    """Source: large-size knitting blog, waist shaping, 2011, http://blog.knittingatlarge.com/2011/03/how-to-waist-shaping.html: at
    6 stitches to the inch with 2 for the seams a waist of 27 in has 164 stitches; a hem of 218 belongs to 36 in, not to the printed
    26; 27 are lost at each edge over 42 rows, in every row or every second."""
    outcome = proven(
        """
piece skirt in plain
    levels hem 0 cm, waist 42 rows, top 60 rows
    start 36 in * 6 stitches / 1 in + 2 stitches wide with e-wrap
    edges slope to 27 in * 6 stitches / 1 in + 2 stitches wide at waist, fashioned 2 in
    end cast off
""",
        6 * PER_INCH,
        8 * PER_INCH,
        WIDE,
    )
    fabric = knitted(outcome, "skirt")
    assert (fabric.stitches_at(0), fabric.stitches_at(60)) == (218, 164)
    widths = [fabric.stitches_at(row) for row in range(1, 44)]
    lost = [a - b for a, b in pairwise(widths)]
    assert {n for n in lost if n} == {2}
    assert sum(lost) == 2 * 27
    assert all(lost[i] or lost[i + 1] for i in range(1, 40)), "no two plain rows follow each other"


KEYED = "\nlet key = {inches} in\n" + PANEL


@pytest.mark.parametrize(("share", "published"), [(100, {210}), (90, {188, 190}), (20, {42}), (25, {52}), (35, {73, 74})])
def test_shares_of_a_key_number(share: int, published: set[int]) -> None:
    """Source: general craft site retelling the percentage method, 2019, http://diydiy.info/knitting/
    easy-dual-remote-caddy-free-crochet-pattern/: 42 in at 5 stitches to the inch is a key number of 210; a rib of 90 % 189, made
    188 or 190; a cuff of 20 to 25 % 42 to 52; an upper arm of 35 % 73 (of 73.5, as near to 74)."""
    parities = (", centre stitch", "") if any(number % 2 for number in published) else ("",)
    sources = [KEYED.format(inches=42, wide=f"key * {share} %", high="20 cm", odd=centre) for centre in parities]
    assert {garment(source, 5 * PER_INCH, 30, WIDE).piece("panel").start for source in sources} <= published


def test_a_key_number() -> None:
    """Source: knitter blog, https://heleninhobart.blogspot.com: 50 in at 5 stitches to the inch are 250."""
    assert garment(KEYED.format(inches=50, wide="key", high="20 cm", odd=""), 5 * PER_INCH, 30, WIDE).piece("panel").start == 250


@pytest.mark.parametrize(("inches", "cm"), [(36, 91.44), (60, 152.4)])
def test_an_inch_is_not_two_and_a_half_centimetres(inches: int, cm: float) -> None:
    """Source: designer blog, conversion mistakes, https://frasierknits.net/post/common-conversion-mistakes: 36 and 60 in are 91.4
    and 152.4 cm, not 90 and 150."""
    outcome = proven(PANEL.format(wide=f"{inches} in", high="20 cm", odd=""), 10, 15, WIDE)
    assert outcome.proof is not None
    (start,) = [m for m in outcome.proof.sizes[0].pieces[0].measures if LANGUAGE.measure(m.key) == "width at start"]
    assert start.wanted_cm == pytest.approx(cm)
    # Ten stitches to 10 cm: each is 1 cm.
    assert knitted(outcome, "panel").stitches_at(1) == pytest.approx(cm, abs=1)
    assert start.knitted_cm / INCH == pytest.approx(inches, abs=0.4)


def test_a_hip_with_its_ease() -> None:
    """Source: craft magazine site, waist shaping series, http://www.knittingdaily.com/blogs/knitting-daily/
    waist-shaping-the-math-hem-to-hip/: a hip of 44 in and 1.5 in of ease at 7 stitches to the inch: 45.5 in, 318.5 stitches, made
    319; 2 in are 26 rounds at 13 to the inch. Flat in two halves, each of an even number."""
    half = panel("(44 in + 1.5 in) / 2", "2 in", 7 * PER_INCH, 13 * PER_INCH)
    assert 2 * half.start == pytest.approx(319, abs=1)
    assert half.rows == 26


def test_a_gored_skirt_s_waist() -> None:
    """Source: page of old patterns, skirt knitted from the waist down, http://grandmotherspatternbook.com/?p=1273: 168 stitches at
    6 to the inch are 28 in: 48 in front and at the back, and four sides of 18."""
    pieces = """
piece front in plain, knit 2
    levels waist 0 cm, top 10 cm
    start 48 stitches wide with e-wrap
    end cast off

piece gore in plain, knit 4
    levels waist 0 cm, top 10 cm
    start 18 stitches wide with e-wrap
    end cast off
"""
    outcome = proven(pieces, 6 * PER_INCH, 8 * PER_INCH)
    assert outcome.proof is not None
    widths = [
        (p.copies, m.knitted_cm)
        for p in outcome.proof.sizes[0].pieces
        for m in p.measures
        if LANGUAGE.measure(m.key) == "width at start"
    ]
    assert sum(copies * cm for copies, cm in widths) / INCH == pytest.approx(28, abs=0.01)
