"""Published worked estimates of yarn."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.outside.spending import Panel, more
from tests.outside.worked import INCH, PER_INCH, compiled, proven
from walewright.proof.yarn import CHAIN_LOOPS

SQUARE = """
piece square in plain
    levels hem 0 cm, top 24 in
    start 20 in wide with e-wrap
    end cast off
"""


def test_a_piece_weighs_as_much_of_the_swatch_as_it_has_of_its_area() -> None:
    """Yarn = area x swatch weight / swatch area. Source: knitting podcast notes,
    http://autumnbreezedesigns.com/blog/knitwit-60-how-much-yarn-part-2/. Here 20 in by 24 in of a swatch of 10 cm by 10 cm and
    10 g; what is added for ends, the swatch itself and the cast-off is taken off again."""
    stitches, rows = 28.0, 40.0
    outcome = compiled(SQUARE, stitches, rows, "standard")
    assert outcome.proof is not None, outcome.diagnostics
    area = 20 * INCH * 24 * INCH
    published = area * 10 / 100
    use = next(u for u in outcome.proof.sizes[0].yarn if u.kind == "yarn")
    each = 10 / (stitches * rows)
    counts = outcome.counts
    assert counts is not None
    width = counts.sizes[0].pieces[0].start
    beside = ((stitches + 10) * rows + (1 + CHAIN_LOOPS) * width) * each
    assert use.grams / 1.1 - beside == pytest.approx(published, rel=0.01)


def test_a_row_never_takes_less_than_the_rule_of_thumb() -> None:
    """Source: yarn shop page, https://blacksquirrelberkeley.com/pages/yarn-chicken: a row of 40 in takes 3 x 40 in of yarn, casting
    it off 6 x 40 in and 6 in to hold. By the plain-knit relation a row takes more than 3 widths: nobody runs out."""
    row = more(Panel(40 * INCH, 40), Panel(40 * INCH, 80)).metres / 160
    assert 3 * 40 * INCH <= row * 100 < 1.5 * 3 * 40 * INCH
    # Once in two halves: as many rows, and one cast-on, of a loop a stitch, and one cast-off more, with its end.
    in_halves = more(Panel(40 * INCH, 80), Panel(40 * INCH, 40, copies=2)).metres
    assert (in_halves - row) / row == pytest.approx((6 * 40 + 6) / (3 * 40), rel=0.01)


def test_a_rule_for_medium_yarn_is_near_the_relation() -> None:
    """Source: general craft site, https://petiterepublic.com/crocheter/how-do-you-calculate-yarn-in-knitting.html: 48 in x 8 in at
    5 stitches to the inch: length x width x stitches / 6 = 320 yd. The estimate, at the row ratio of relaxed plain knit (1.3), is
    within what such a rule is good for."""
    wide, stitches = 8 * INCH, 5 * PER_INCH
    yards = more(Panel(wide, 10, stitches, 1.3 * stitches), Panel(wide, 10 + 48 * INCH, stitches, 1.3 * stitches)).metres / 0.9144
    assert yards == pytest.approx(320, rel=0.25)


def test_the_weight_of_an_area_is_as_published() -> None:
    """Source: textile handbook, knitting formulas, 2023, https://fliphtml5.com/iczwi/zyvh, page 150: 11.7 loops to the square cm of
    12.74 mm in a yarn of 100 tex weigh 149 g to the square metre."""
    panel = Panel(40, 50, 30, 39, ", 12.74 mm to a stitch", "100 g of 100 tex")
    assert more(panel, replace(panel, high=150)).grams / 0.40 == pytest.approx(149, rel=0.01)


def test_the_area_of_a_sweater() -> None:
    """Source: designer blog, swatching for yardage, 2020, https://www.lindysknitslaces.com/2020/08/24/knitting/
    how-to-knit-a-helpful-swatch-part-4-swatching-to-estimate-yardage-needed/: back and front of 20 by 28 in, sleeves of 8 to 15 in
    over 18 in: 1120 and twice 207 are 1534 square inches. The loops that the bed knitted, at so many to the inch, cover that."""
    outcome = proven(
        """
piece body in plain, knit 2
    levels hem 0 cm, top 28 in
    start 20 in wide with e-wrap
    end cast off

piece sleeve in plain, knit 2
    levels cuff 0 cm, top 18 in
    start 8 in wide with e-wrap
    edges slope to 15 in wide at top, fashioned 2 in
    end cast off
"""
    )
    assert outcome.proof is not None
    square_inch = 28 / PER_INCH * 40 / PER_INCH
    area = {piece.name: piece.loops * piece.copies / square_inch for piece in outcome.proof.sizes[0].pieces}
    assert area["body"] == pytest.approx(1120, rel=0.01)
    assert area["sleeve"] == pytest.approx(2 * 207, rel=0.01)
    assert sum(area.values()) == pytest.approx(1534, rel=0.01)


def test_yarn_from_counts_of_stitches() -> None:
    """Source: knitting article, yarn quantities, http://getknitting.com/ak_yarnquantity.aspx: a swatch of 100 by 100 stitches
    weighs 70 g; back and front of 150 by 260 and sleeves of 110 by 240 are 130800 stitches, 13.08 swatches: 915.6 g."""
    swatch = Panel(150, 12, 100, 100, ", 70 g", counted=True)
    body = more(swatch, replace(swatch, high=272)).grams
    sleeve = more(replace(swatch, wide=110), replace(swatch, wide=110, high=252)).grams
    assert 2 * body + 2 * sleeve == pytest.approx(915.6, rel=1e-3)


def test_a_cast_on_by_wraps_is_measured_like_any_stitch() -> None:
    """11 cast-on stitches used 18 in, so 70 take 114.5 in. Source: designer blog,
    https://www.jillwolcottknits.com/how-much-yarn-will-take/. As a measured length of yarn in a stitch it is multiplied by the
    stitches in the same way."""
    from walewright.proof.spent import Spent, Tally
    from walewright.proof.yarn import SPARE, yarn_uses

    outcome = compiled(SQUARE)
    assert outcome.design is not None
    knit = replace(outcome.design.fabric("plain"), swatch_grams=0.0, loop_cm=18 / 11 * INCH)
    design = replace(outcome.design, fabrics=(knit,))

    def metres(loops: int) -> float:
        return yarn_uses(design, Spent({("plain", "wool"): Tally(loops)}))[0].metres

    inches = (metres(170) - metres(100)) / (1 + SPARE) * 100 / INCH
    assert inches == pytest.approx(114.5, abs=0.1)
