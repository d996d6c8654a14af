"""Yarn from stitch density, against published relations for plain knitting."""

from __future__ import annotations

import math

import pytest

from walewright.proof.yarn import KS_DRY, KS_WET, loop_length_cm


def test_loop_length_of_an_examination_question() -> None:
    """kc 5.5 and kw 4.2 at a loop of 0.5 cm give 92.4 loops to the square centimetre. Source: textile engineering entrance
    examination, 2015, https://www.textiletriangle.com/gate-textile/question-paper/2015-2/tf/54-2/"""
    kc, kw, loop = 5.5, 4.2, 0.5
    courses, wales = kc / loop, kw / loop
    assert courses * wales == pytest.approx(92.4)
    assert loop_length_cm(wales, courses, ks=kc * kw) == pytest.approx(loop)


def test_constants_are_those_of_relaxed_wool() -> None:
    """ks = kc x kw: 5.0 x 3.8 dry, 5.3 x 4.1 wet (printed as 21.6). Source: Munden 1959, Journal of the Textile Institute, as
    quoted in https://fr.scribd.com/presentation/143644499/Knitted-Fabric-Geometry"""
    assert pytest.approx(5.0 * 3.8) == KS_DRY
    assert pytest.approx(5.3 * 4.1, abs=0.15) == KS_WET


@pytest.mark.parametrize(("kc", "kw"), [(5.0, 3.8), (5.3, 4.1), (5.5, 4.2)])
def test_yarn_in_a_row_is_kw_times_its_width(kc: float, kw: float) -> None:
    """A row of relaxed plain knit takes 3.8 to 4.2 times its width of yarn, from w = kw / l. Source: the same lecture slides;
    a yarn shop's rule of 3 widths (https://blacksquirrelberkeley.com/pages/yarn-chicken) is low for relaxed fabric."""
    per_cm = 2.2
    # A fabric of the ratio that the constants imply.
    loop = loop_length_cm(per_cm, per_cm * kc / kw, ks=kc * kw)
    assert per_cm * loop == pytest.approx(kw)
    assert per_cm * loop > 3


def test_weight_of_an_area_from_its_loops() -> None:
    """S 11.7 loops to the square centimetre of 12.74 mm at 100 tex weigh S x l x tex / 100 = 149 g to the square metre. Source:
    textile handbook, knitting formulas, 2023, https://fliphtml5.com/iczwi/zyvh, page 150. With the loop length that the
    density gives by the plain-knit relation, the weight agrees within the spread of the constants."""
    density, tex = 11.7, 100
    published = density * 12.74 * tex / 100
    assert published == pytest.approx(149, abs=0.5)
    side = math.sqrt(density)
    ours = [density * loop_length_cm(side, side, ks) * 10 * tex / 100 for ks in (KS_DRY, KS_WET)]
    assert ours[0] <= published + 0.5
    assert published == pytest.approx(ours[0], rel=0.08)
