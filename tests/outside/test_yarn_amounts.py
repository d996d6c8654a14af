"""Published worked estimates of yarn."""

from __future__ import annotations

import pytest
from worked import compiled

from walewright.proof.plain_knit import KW_DRY, KW_WET, grams_per_square_metre, loop_length_cm
from walewright.proof.yarn import CHAIN_LOOPS

INCH = 2.54

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
    beside = ((stitches + 10) * (rows + 34) + (1 + CHAIN_LOOPS) * width) * each
    assert use.grams / 1.1 - beside == pytest.approx(published, rel=0.01)


def test_a_row_never_takes_less_than_the_rule_of_thumb() -> None:
    """A row of 40 in takes 3 x 40 in of yarn, casting it off 6 x 40 in (and 6 in to hold). Source: yarn shop page,
    https://blacksquirrelberkeley.com/pages/yarn-chicken. By the plain-knit relation a row takes kw widths: more, so nobody runs
    out; and a chain is reckoned at the rule's ratio."""
    row, cast_off = 3 * 40, 6 * 40
    assert cast_off / row == CHAIN_LOOPS
    for kw in (KW_DRY, KW_WET):
        assert kw * 40 >= row
        assert kw * 40 < 1.5 * row


def test_a_rule_for_medium_yarn_is_near_the_relation() -> None:
    """48 in x 8 in at 5 stitches to the inch: length x width x stitches / 6 = 320 yd. Source: general craft site,
    https://petiterepublic.com/crocheter/how-do-you-calculate-yarn-in-knitting.html. The relation, with the row ratio of relaxed
    plain knit (1.3), gives the same within what an estimate is said to be good for."""
    stitches = 5 / INCH
    rows = 1.3 * stitches
    loops = 48 * 5 * 8 * INCH * rows
    yards = loops * loop_length_cm(stitches, rows) / 91.44
    assert yards == pytest.approx(320, rel=0.25)


def test_the_weight_of_an_area_is_as_published() -> None:
    """S 11.7 loops to the square cm, 12.74 mm, 100 tex: 149 g to the square metre. Source: textile handbook, knitting formulas,
    2023, https://fliphtml5.com/iczwi/zyvh, page 150."""
    assert grams_per_square_metre(11.7, 1.274, 100) == pytest.approx(149, abs=0.5)


def test_a_cast_on_by_wraps_is_measured_like_any_stitch() -> None:
    """11 cast-on stitches used 18 in, so 70 take 114.5 in. Source: designer blog,
    https://www.jillwolcottknits.com/how-much-yarn-will-take/. As a measured length of yarn in a stitch it is multiplied by the
    stitches in the same way."""
    from dataclasses import replace

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
