"""Yarn for a size: by the swatch's weight where it was weighed, by a measured loop, else by the estimated loop."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.draws import draws
from tests.whole.garment import regraded, tidewrack
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.design.findings import Findings
from walewright.design.model import Design, Yarn
from walewright.design.reading.regauged import changed_fabrics
from walewright.guide.english import LANGUAGE
from walewright.pipeline import compile
from walewright.proof.model import AsInFabric, FromLoops, OneLength
from walewright.proof.plain_knit import KW_WET, loop_length_cm
from walewright.proof.spent import Spent, Tally
from walewright.proof.yarn import CHAIN_LOOPS, RAVEL_ENDS_CM, SEAM_WIDTHS, SPARE, loop_cm, yarn_uses
from walewright.sheet.reckoned import reckoned
from walewright.world import shipped_text


@pytest.fixture(scope="module")
def design() -> Design:
    found = compile(tidewrack(), "tidewrack.wale", shipped(), Changes(sizes=("M",))).design
    assert found is not None
    return found


def of(*tallies: tuple[str, str, Tally], **more: object) -> Spent:
    return replace(Spent({(knit, yarn): tally for knit, yarn, tally in tallies}), **more)


def plain(loops: int, **more: int) -> Spent:
    return of(("plain", "wool", Tally(loops, **more)))


def unweighed(design: Design, **changed: object) -> Design:
    return replace(design, fabrics=tuple(replace(f, swatch_grams=0.0, **changed) for f in design.fabrics))


def two_colours(design: Design, **changed: object) -> Design:
    """Only the plain fabric, and a yarn that is half as heavy."""
    navy = replace(design.yarns[0], name="navy", ball_metres=2 * design.yarns[0].ball_metres)
    return replace(design, yarns=(design.yarns[0], navy), fabrics=(replace(design.fabric("plain"), **changed),))


def test_a_swatch_of_loops_weighs_a_swatch(design: Design) -> None:
    one = yarn_uses(design, Spent())[0].grams
    two = yarn_uses(design, plain(40 * 60))[0].grams
    assert two - one == pytest.approx(62 * (1 + SPARE))
    # Both swatches, with the stitches and rows round the measured block, are knitted from the same yarn before the garment.
    assert one == pytest.approx((62 + 56) * (50 * 60) / (40 * 60) * (1 + SPARE))


def test_balls_are_whole_and_enough(design: Design) -> None:
    for loops in (0, 10_000, 23_000, 41_000):
        (use,) = yarn_uses(design, plain(loops))
        assert use.balls * 100 >= use.grams > (use.balls - 1) * 100
        assert use.metres == pytest.approx(use.grams * 1.2)


def test_the_way_and_its_error_are_said(design: Design) -> None:
    spent = plain(30_000)
    (weighed,) = yarn_uses(design, spent)
    (measured,) = yarn_uses(unweighed(design, loop_cm=2.0), spent)
    (guessed,) = yarn_uses(unweighed(design), spent)
    assert weighed.way == FromLoops((("weighed", ()),), SPARE)
    assert measured.way == FromLoops((("measured", ()),), SPARE)
    assert guessed.way == FromLoops((("estimated", ()),), SPARE)
    told = [reckoned(LANGUAGE, (use,)) for use in (weighed, measured, guessed)]
    assert "weight of the swatch" in told[0][0]
    assert "measured" in told[1][0]
    assert "estimated" in told[2][0]
    assert ["weigh a swatch" in way for (way,) in told] == [False, False, True]
    assert weighed.error == pytest.approx(0.05)
    assert measured.error == pytest.approx(0.08)
    # The rib's swatch is a small part of it, and less sure than the plain knitting.
    assert 0.15 < guessed.error < 0.20
    assert f"about {guessed.error * 100:.0f} %" in told[2][0]
    # The example's yarn is an ordinary one, so the estimate is not wild.
    assert guessed.grams == pytest.approx(weighed.grams, rel=0.4)


def test_one_fabric_weighed_and_one_not_are_told_apart(design: Design) -> None:
    half = replace(design, fabrics=tuple(replace(f, swatch_grams=f.swatch_grams * (f.name == "plain")) for f in design.fabrics))
    (use,) = yarn_uses(half, of(("plain", "wool", Tally(30_000)), ("rib", "wool", Tally(3_000))))
    assert use.way == FromLoops((("weighed", ("plain",)), ("estimated", ("rib",))), SPARE)
    assert "plain from the weight of the swatch; rib estimated" in reckoned(LANGUAGE, (use,))[0]
    assert 0.05 < use.error < 0.10


def test_a_measured_loop_is_multiplied(design: Design) -> None:
    measured = unweighed(design, loop_cm=2.0)
    more = yarn_uses(measured, plain(20_000))[0].metres - yarn_uses(measured, plain(10_000))[0].metres
    assert more == pytest.approx(10_000 * 0.02 * (1 + SPARE))
    assert loop_cm(measured, measured.fabric("plain")) == 2.0


def test_the_estimate_is_the_relation_of_plain_knitting(design: Design) -> None:
    knit = design.fabric("plain")
    guess = loop_cm(unweighed(design), unweighed(design).fabric("plain"))
    assert guess == loop_length_cm(knit.stitches_per_cm, knit.rows_per_cm)
    assert guess**2 * knit.stitches_per_cm * knit.rows_per_cm == pytest.approx(21.6)


def test_larger_sizes_take_more() -> None:
    outcome = regraded(13, 18.5)
    assert outcome.proof is not None
    grams = [s.yarn[0].grams for s in outcome.proof.sizes]
    assert grams == sorted(grams)


# ----------------------------------------------------------------- several yarns in a fabric


def test_yarns_share_the_weight_by_loops_and_thickness(design: Design) -> None:
    both = two_colours(design)
    spent = of(("plain", "wool", Tally(6_000)), ("plain", "navy", Tally(4_000)))
    wool, navy = yarn_uses(both, spent)
    # Together they weigh what as many loops weigh, swatch included, and navy has half the weight to a metre.
    swatch = 50 * 60
    assert wool.grams + navy.grams == pytest.approx((10_000 + swatch) * 62 / 2400 * (1 + SPARE))
    assert wool.grams / navy.grams == pytest.approx(6_000 * 2 / 4_000)
    assert wool.metres / navy.metres == pytest.approx(6 / 4)


def test_floats_take_yarn_of_their_width(design: Design) -> None:
    both = two_colours(design, swatch_grams=0.0, loop_cm=2.0)
    per_cm = both.fabrics[0].stitches_per_cm

    def metres(passed: int) -> float:
        spent = of(("plain", "wool", Tally(9_000)), ("plain", "navy", Tally(1_000, passed=passed)))
        return yarn_uses(both, spent)[1].metres

    swatch = 50 * 60 / 10_000
    assert metres(3_000) - metres(0) == pytest.approx(3_000 / per_cm / 100 * (1 + swatch) * (1 + SPARE))


def test_a_weighed_fabric_shares_its_floats(design: Design) -> None:
    both = two_colours(design)

    def grams(passed: int) -> tuple[float, float]:
        spent = of(("plain", "wool", Tally(5_000)), ("plain", "navy", Tally(5_000, passed=passed)))
        return tuple(use.grams for use in yarn_uses(both, spent))  # type: ignore[return-value]

    (wool, navy), (less, more) = grams(0), grams(5_000)
    assert more > navy
    assert less + more == pytest.approx(wool + navy)
    assert (more / less) / (navy / wool) == pytest.approx(1 + 1 / KW_WET)


def test_slipped_needles_are_of_the_weighed_area(design: Design) -> None:
    """A needle that was slipped is a stitch of the swatch as well, though no loop is on it."""
    slipped = yarn_uses(design, plain(9_000, passed=1_000, empty=1_000))[0].grams
    assert slipped == pytest.approx(yarn_uses(design, plain(10_000))[0].grams)


def test_long_stitches_and_chains_take_double(design: Design) -> None:
    measured = replace(unweighed(design, loop_cm=2.0), fabrics=(replace(design.fabric("plain"), swatch_grams=0.0, loop_cm=2.0),))
    swatch = 1 + 50 * 60 / 10_000
    none, longs, chains = (
        yarn_uses(measured, plain(10_000, longs=longs, chains=chains))[0].metres for longs, chains in ((0, 0), (100, 0), (0, 100))
    )
    assert longs - none == pytest.approx(100 * 0.02 * swatch * (1 + SPARE))
    assert chains - none == pytest.approx(CHAIN_LOOPS * 100 * 0.02 * (1 + SPARE))


# ----------------------------------------------------------------- beside the loops


def test_tails_and_seams_take_their_length(design: Design) -> None:
    none = yarn_uses(design, plain(10_000))[0].metres
    tails = yarn_uses(design, replace(plain(10_000), tails_cm=Counter(wool=250)))[0].metres
    seams = yarn_uses(design, plain(10_000), {"wool": 300.0})[0].metres
    assert tails - none == pytest.approx(2.5 * (1 + SPARE))
    assert seams - none == pytest.approx(SEAM_WIDTHS * 3.0 * (1 + SPARE))


def test_waste_and_ravel_are_no_yarn_of_the_garment(design: Design) -> None:
    cm = loop_cm(design, design.fabric("plain"))
    uses = yarn_uses(design, replace(plain(10_000), waste=1_000, ravel=(60, 80, 80)))
    assert [use.kind for use in uses] == ["yarn", "waste", "ravel"]
    assert uses[1].metres == pytest.approx(1_000 * cm / 100)
    assert uses[1].grams == pytest.approx(uses[1].metres * design.yarns[0].tex / 1000)
    assert isinstance(uses[1].way, AsInFabric)
    assert "as long as those of the garment" in reckoned(LANGUAGE, uses[1:2])[0]
    assert 0 <= uses[2].metres * 100 - (80 * cm + RAVEL_ENDS_CM) < 5
    assert isinstance(uses[2].way, OneLength)
    assert uses[2].way.times == 3
    assert "it is used 3 times" in reckoned(LANGUAGE, uses[2:])[0]
    assert [use.balls for use in uses[1:]] == [0, 0]
    assert len(yarn_uses(design, plain(10_000))) == 1


def test_the_garment_s_own_waste_is_reckoned() -> None:
    outcome = regraded(13, 18.5)
    assert outcome.proof is not None
    for size in outcome.proof.sizes:
        assert [use.kind for use in size.yarn] == ["yarn", "waste", "ravel"]


def test_a_yarn_of_the_design_that_is_not_knitted_is_told(design: Design) -> None:
    spare: Yarn = replace(design.yarns[0], name="spare")
    use = yarn_uses(replace(design, yarns=(*design.yarns, spare)), plain(100))[1]
    assert (use.yarn, use.balls, use.metres) == ("spare", 0, 0)


# ----------------------------------------------------------------- what is for what


def test_garment_swatches_and_reserve_are_told_apart(design: Design) -> None:
    spent = replace(plain(30_000), tails_cm=Counter(wool=250))
    (use,) = yarn_uses(design, spent, {"wool": 100.0})
    assert use.swatch_grams == pytest.approx((62 + 56) * (50 * 60) / (40 * 60))
    assert use.garment_grams == pytest.approx(30_000 * 62 / 2400 + (250 + 300) * design.yarns[0].tex / 1e5)
    assert use.reserve_grams == pytest.approx(SPARE * (use.garment_grams + use.swatch_grams))
    assert use.grams == pytest.approx(use.garment_grams + use.swatch_grams + use.reserve_grams)


def test_of_several_yarns_each_has_its_own_swatches(design: Design) -> None:
    both = two_colours(design)
    wool, navy = yarn_uses(both, of(("plain", "wool", Tally(6_000)), ("plain", "navy", Tally(4_000))))
    assert wool.swatch_grams + navy.swatch_grams == pytest.approx(50 * 60 * 62 / 2400)
    assert wool.swatch_grams / navy.swatch_grams == pytest.approx(wool.garment_grams / navy.garment_grams)


def test_waste_yarn_has_no_parts(design: Design) -> None:
    waste = yarn_uses(design, replace(plain(10_000), waste=1_000))[1]
    assert (waste.garment_grams, waste.swatch_grams, waste.reserve_grams) == (0, 0, 0)


@settings(max_examples=draws(60), deadline=None)
@given(
    tighter=st.floats(1.0, 1.6),
    taller=st.floats(1.0, 1.6),
    looser=st.floats(0.7, 1.0),
    way=st.sampled_from(("weighed", "measured", "estimated")),
)
def test_a_swatch_stays_as_large_at_any_tension(design: Design, tighter: float, taller: float, looser: float, way: str) -> None:
    """A garment that is tighter and no smaller takes no less, however much of it is swatches."""
    knit = replace(
        design.fabric("plain"), swatch_grams=62.0 if way == "weighed" else 0.0, loop_cm=2.9 if way == "measured" else 0.0
    )
    needed, swatches = [], []
    for by, up in ((looser, looser), (1.0, 1.0), (tighter, taller)):
        asked = f"{10 * knit.stitches_per_cm * by:.3f} st {10 * knit.rows_per_cm * up:.3f} rows"
        told = Findings()
        (regraded_knit,) = changed_fabrics({"plain": knit}, {}, Changes(tensions={"plain": asked}), ("plain",), told).values()
        assert told.all() == ()
        assert regraded_knit is not None
        # A piece of half a square metre.
        loops = 5_000 * regraded_knit.stitches_per_cm * regraded_knit.rows_per_cm
        (use,) = yarn_uses(replace(design, fabrics=(regraded_knit,)), plain(round(loops)))
        needed.append(use.grams)
        swatches.append(use.swatch_grams)
    assert swatches == [pytest.approx(swatches[0])] * 3
    assert needed[0] <= needed[1] * 1.0005
    assert needed[1] <= needed[2] * 1.0005


def test_a_tighter_longer_pair_of_mittens_takes_no_less() -> None:
    """Much of what mittens take is swatches."""
    text = shipped_text("patterns", "mooring.wale")
    size = text.partition("sizes")[2].split()[0]
    author, tighter = (
        compile(text, "mooring.wale", shipped(), Changes(sizes=(size,), tensions=tensions)).proof
        for tensions in ({}, {"plain": "23 st 31 rows"})
    )
    assert author is not None
    assert tighter is not None
    (before, *_), (after, *_) = author.sizes[0].yarn, tighter.sizes[0].yarn
    assert after.swatch_grams == pytest.approx(before.swatch_grams)
    assert before.swatch_grams > before.garment_grams / 2
    assert after.grams >= before.grams * 0.98


def test_strands_are_as_long_as_what_they_are_knitted_into(design: Design) -> None:
    """Two of one and one of another: each strand lies along every loop, so metres count strands and grams their thickness."""
    fine = replace(design.yarns[0], name="fine", ball_grams=50.0, ball_metres=200.0)
    silk = replace(design.yarns[0], name="silk", ball_grams=25.0, ball_metres=210.0)
    both = replace(design.yarns[0], ball_grams=2 * fine.tex + silk.tex, ball_metres=1000.0, strands=("fine", "silk", "fine"))
    held = replace(design, yarns=(fine, both, silk))
    single = replace(design, yarns=(replace(both, strands=()),))
    spent = of(("plain", "wool", Tally(9000, chains=80)), ("rib", "wool", Tally(3000)), tails_cm=Counter(wool=400))
    of_fine, of_silk = yarn_uses(held, spent, {"wool": 250.0})
    (whole,) = yarn_uses(single, spent, {"wool": 250.0})
    assert (of_fine.yarn, of_silk.yarn) == ("fine", "silk")
    assert of_fine.metres == pytest.approx(2 * whole.metres)
    assert of_silk.metres == pytest.approx(whole.metres)
    assert of_fine.grams + of_silk.grams == pytest.approx(whole.grams)
    assert of_fine.garment_grams + of_silk.garment_grams == pytest.approx(whole.garment_grams)
    assert of_fine.swatch_grams / of_silk.swatch_grams == pytest.approx(2 * fine.tex / silk.tex)


def test_a_yarn_by_itself_and_together_is_bought_once(design: Design) -> None:
    double = replace(
        design.yarns[0], name="double", ball_grams=2 * design.yarns[0].tex, ball_metres=1000.0, strands=("wool", "wool")
    )
    held = replace(design, yarns=(design.yarns[0], double))
    (plain_only,) = yarn_uses(held, plain(1000))
    (both,) = yarn_uses(held, of(("plain", "wool", Tally(1000)), ("plain", "double", Tally(1000))))
    assert both.yarn == "wool"
    # A weighed fabric weighs by its cells: twice as many, whatever they are of.
    assert both.garment_grams == pytest.approx(2 * plain_only.garment_grams)
