"""Published ease, reach and grading, against garments compiled for the shipped tables and measured as they were knitted."""

from __future__ import annotations

from itertools import pairwise

import pytest

from tests.outside.finished import girth, printed_ease, reach, width, worn_girth
from tests.outside.worked import INCH, WIDE, knitted, proven

BODY = """
piece back in plain
    levels hem 0 cm, underarm 20 cm, top 40 cm
    start {half} wide with e-wrap
    edges straight to underarm called side
    edges straight to top called armhole
    end cast off

piece front in plain
    levels hem 0 cm, underarm 20 cm, top 40 cm
    start {half} wide with e-wrap
    edges straight to underarm called side
    edges straight to top called armhole
    end cast off

join back side to front side
"""

A_STITCH_EACH = 2 / 2.8 + 0.01
"""cm. At 28 stitches to 10 cm both halves may be a stitch from what was wanted."""

SEAMS = "2 * 10 cm / 28"
"""Two stitches of each half: one at each seam goes into it (common practice)."""

WOMEN = "XS S M L XL 2X 3X 4X"
BUST_IN = ((28, 30), (32, 34), (36, 38), (40, 42), (44, 46), (48, 50), (52, 54), (56, 58))
REACH_IN = ((26, 26.5), (27, 27.5), (28, 28.5), (29, 29.5), (29, 29.5), (30, 30.5), (30.5, 31), (31.5, 32))
UPPER_ARM_IN = (9.75, 10.25, 11, 12, 13.5, 15.5, 17, 18.5)


def middle_cm(inches: tuple[float, float]) -> float:
    return sum(inches) / 2 * INCH


def sized(names: str, *rows: str) -> str:
    return "\n    ".join([f"sizes {names}", *rows]) + "\n"


FITS = [("very close fitting", -10, -5), ("close fitting", 0, 0), ("classic", 5, 10), ("loose", 10, 15), ("oversized", 15, 30)]


@pytest.mark.parametrize(("low", "high"), [fit[1:] for fit in FITS], ids=[fit[0] for fit in FITS])
def test_the_ease_of_a_fit(low: float, high: float) -> None:
    """Source: Craft Yarn Council's www.YarnStandards.com, fit and ease: very close fitting 10 to 5 cm less than the bust, close
    fitting as the bust, classic 5 to 10 cm more, loose 10 to 15, oversized 15 and more; busts of its woman sizes XS 28-30 in to 4X
    56-58 in."""
    rows = sized(WOMEN, "bust from women bust, to fit")
    outcome = proven(BODY.format(half=f"(bust + {(low + high) / 2:g} cm) / 2 + {SEAMS}"), bed=WIDE, sizes=rows)
    for size, ease in enumerate(printed_ease(outcome)):
        assert low - A_STITCH_EACH <= ease <= high + A_STITCH_EACH
        body = middle_cm(BUST_IN[size])
        # The council rounds its centimetres to a half.
        assert worn_girth(outcome, size) - body == pytest.approx(ease, abs=0.5)


@pytest.mark.parametrize(("ease", "finished"), [(2, 42), (4, 44)])
def test_standard_ease(ease: float, finished: float) -> None:
    """Source: craft book excerpt, ease, https://www.knittingmagic.biz/patterns-7/factoring-in-ease.html: a chest of 40 in and 2 to
    4 in of ease: 42 to 44 in."""
    rows = sized("one", "chest 40 in, to fit")
    outcome = proven(BODY.format(half=f"(chest + {ease} in) / 2 + {SEAMS}"), sizes=rows)
    assert worn_girth(outcome) == pytest.approx(finished * INCH, abs=A_STITCH_EACH)
    assert printed_ease(outcome)[0] == pytest.approx(ease * INCH, abs=A_STITCH_EACH)


@pytest.mark.parametrize(("low", "high", "size"), [(2, 3, 2), (-2, -1, 1)])
def test_a_size_is_chosen_by_its_ease(low: float, high: float, size: int) -> None:
    """Source: pattern maker blog, ease, 2013, http://notsogranny.com/2013/09/tidkt-what-is-ease.html: finished 33.5 (37, 41, 46,
    49, 53, 57) in; for a chest of 39 in and 2 to 3 in of ease that of 41 in, the third; for 1 to 2 in less than the chest that of
    37 in, the second."""
    chest = " ".join(["39"] * 7)
    rows = sized("XS S M L XL 2X 3X", f"chest {chest} in, to fit", "finished 33.5 37 41 46 49 53 57 in")
    outcome = proven(BODY.format(half=f"finished / 2 + {SEAMS}"), bed=WIDE, sizes=rows)
    fits = [i for i, ease in enumerate(printed_ease(outcome)) if low * INCH - 0.8 <= ease <= high * INCH + 0.8]
    assert fits == [size]


CHILDREN = "3_months 6_months 9_months 12_months 18_months 2_years 4_years 6_years 8_years 10_years 12_years"
CHEST_IN = (16, 17, 18, 19, 20, 22, 24, 25, 27, 29, 31)
FINISHED_IN = (18, 19, 20, 22, 24, 26, 28, 30, 32, 34, 36)


def test_a_child_s_finished_chest() -> None:
    """Source: yarn shop's size table, http://www.yarnfwd.com/childsiz.html: from 3 months, chest 16 in and finished 18 in, to 12
    years, 31 and 36 in."""
    rows = sized(CHILDREN, "chest from child chest, to fit", "finished from child finished_chest")
    outcome = proven(BODY.format(half=f"finished / 2 + {SEAMS}"), sizes=rows)
    eases = printed_ease(outcome)
    for size, (chest, finished) in enumerate(zip(CHEST_IN, FINISHED_IN, strict=True)):
        assert worn_girth(outcome, size) == pytest.approx(finished * INCH, abs=A_STITCH_EACH + 0.5)
        assert eases[size] == pytest.approx((finished - chest) * INCH, abs=A_STITCH_EACH + 1)


def test_steps_between_sizes() -> None:
    """Source: the size coding of EN 13402-4 as https://www.liquisearch.com/en_13402/en_13402-4_-_coding_system has it: busts of 68
    to 104 cm by 4, then 110 to 152 by 6. The finished girth steps as the bodies do, each to a stitch of each half."""
    busts = [*range(68, 108, 4), *range(110, 158, 6)]
    names = " ".join(f"B{bust}" for bust in busts)
    rows = sized(names, f"bust {' '.join(map(str, busts))} cm, to fit")
    outcome = proven(BODY.format(half="bust / 2 + 4 cm"), bed=WIDE, sizes=rows)
    girths = [girth(outcome, "underarm", "back", "front", size=size) for size in range(len(busts))]
    assert len(girths) == 18
    for (before, after), (small, large) in zip(pairwise(girths), pairwise(busts), strict=True):
        assert after - before == pytest.approx(large - small, abs=2 * A_STITCH_EACH)
    assert girths[-1] - girths[0] == pytest.approx(152 - 68, abs=2 * A_STITCH_EACH)


SHIRTS = [(14 + step / 2, 42 + 2 * step, 19.5 + step / 2) for step in range(9)]


def test_shirts_by_the_size_of_the_neck() -> None:
    """Source: US government standard for men's shirts of the 1950s as https://www.sizes.com/people/mens_shirts.htm has it: neck 14
    in, chest 42, armhole 19.5 round; each half inch of neck adds 2 in to the chest and half an inch to the armhole."""
    names = " ".join(f"N{number}" for number in range(len(SHIRTS)))
    rows = sized(
        names,
        *(f"{what} {' '.join(f'{shirt[at]:g}' for shirt in SHIRTS)} in" for at, what in enumerate(("neck", "chest", "armhole"))),
    )
    body = BODY.replace("levels hem 0 cm, underarm 20 cm, top 40 cm", "levels hem 0 cm, underarm 20 cm, top 20 cm + armhole / 2")
    seam = (
        "\npiece sleeve in plain, knit 2\n    levels cuff 0 cm, top 20 cm\n    start armhole wide with e-wrap\n    end cast off\n"
    )
    join = "\njoin sleeve end to back armhole + front armhole, easing 1 cm\n"
    outcome = proven(body.format(half="chest / 2") + seam + join, bed=WIDE, sizes=rows)
    assert outcome.proof is not None
    for size, (_, chest, armhole) in enumerate(SHIRTS):
        assert girth(outcome, "underarm", "back", "front", size=size) == pytest.approx(chest * INCH, abs=A_STITCH_EACH)
        joined = next(j for j in outcome.proof.sizes[size].joins if "sleeve" in {e.piece for e in (*j.one, *j.other)})
        assert joined.other_cm == pytest.approx(armhole * INCH, abs=0.5)
        assert joined.one_cm == pytest.approx(armhole * INCH, abs=0.5)


SLEEVE = """
piece sleeve in plain, knit 2
    levels cuff 0 cm, wide {long} - 3 cm, top {long}
    start {cuff} wide with e-wrap
    edges slope to {wide} wide at wide, fashioned 2 in
    edges straight to top
    end cast off
"""


def test_the_reach_of_a_dropped_shoulder() -> None:
    """Source: knitter-designer blog on drafting machine-knitted sweaters, 2007,
    http://designyourownsweater.blogspot.com/2007/01/sleeve.html: centre back to wrist 80 cm and a body 62 cm wide leave 49 cm of
    sleeve."""
    body = BODY.format(half="62 cm") + SLEEVE.format(long="80 cm - 62 cm / 2", cuff="26 cm", wide="56 cm")
    outcome = proven(body)
    assert reach(outcome, "back", "top", "sleeve", "cuff", "top") == pytest.approx(80, abs=0.5)


def test_the_reach_of_the_woman_sizes() -> None:
    """Source: Craft Yarn Council's www.YarnStandards.com, centre back neck to wrist: XS 26-26.5 in, M 28-28.5 in, 4X 31.5-32 in.
    What the body leaves of it is the sleeve's, in every size."""
    rows = sized(WOMEN, "bust from women bust, to fit", "reach from women centre_back_neck_to_wrist")
    body = BODY.format(half="bust / 2 + 4 cm") + SLEEVE.format(long="reach - (bust / 2 + 4 cm) / 2", cuff="22 cm", wide="40 cm")
    outcome = proven(body, bed=WIDE, sizes=rows)
    for size, inches in enumerate(REACH_IN):
        found = reach(outcome, "back", "top", "sleeve", "cuff", "top", size)
        assert found == pytest.approx(middle_cm(inches), abs=1.0), WOMEN.split()[size]


MEASURED_ARMS = {(75, 80): 25.9, (80, 85): 27.3, (90, 95): 30.0, (100, 105): 32.3, (110, 115): 35.2, (115, 120): 36.5}


def test_a_sleeve_goes_round_the_arms_of_a_measured_population() -> None:
    """Source: US Army survey of 2012 (ANSUR II, public domain, openICPSR project 120028), women: median upper arm, flexed, by
    chest: 25.9 cm at 75 to 80 cm, 36.5 cm at 115 to 120. A sleeve with the 5 cm of the classic fit on the table's upper arm goes
    round it, and is not twice as much too wide."""
    rows = sized(WOMEN, "bust from women bust", "biceps from women upper_arm")
    body = BODY.format(half="bust / 2 + 4 cm") + SLEEVE.format(long="44 cm", cuff="22 cm", wide="biceps + 5 cm")
    outcome = proven(body, bed=WIDE, sizes=rows)
    compared = 0
    for size, (inches, arm) in enumerate(zip(BUST_IN, UPPER_ARM_IN, strict=True)):
        knit = width(outcome, "sleeve", "top", size)
        assert knit == pytest.approx(arm * INCH + 5, abs=A_STITCH_EACH + 0.5)
        bust = middle_cm(inches)
        for (low, high), measured in MEASURED_ARMS.items():
            if low - 2 <= bust <= high + 2:
                compared += 1
                assert 0 < knit - measured < 10
    assert compared >= 4


def test_fronts_under_an_overlapping_band() -> None:
    """Source: knitting forum thread, https://forum.knittinghelp.com/t/cardigan-bands/84562: half the width of bands that overlap is
    taken from each front: of a back of 120 stitches and a band of 6, each front has 57, and 57 + 6 + 57 = 120."""
    outcome = proven(
        """
let back_width = 120 stitches
let lap = 6 stitches
edging button_edge in plain, 6 / 28 * 10 cm deep, added after, cast off chain

piece back in plain
    levels hem 0 cm, underarm 20 cm, top 40 cm
    start back_width wide with e-wrap
    edges straight to underarm called side
    end cast off

piece right_front in plain, centre stitch
    levels hem 0 cm, underarm 20 cm, top 40 cm
    start (back_width - lap) / 2 wide with e-wrap
    right edge straight to underarm called side
    left edge straight to top called front
    end cast off

piece left_front in plain, mirror of right_front

band right_band with button_edge along right_front front
band left_band with button_edge along left_front front
join back side_left to right_front side
join back side_right to left_front side
"""
    )
    assert outcome.counts is not None
    assert [piece.start for piece in outcome.counts.sizes[0].pieces] == [120, 57, 57]
    fronts = girth(outcome, "underarm", "right_front", "left_front")
    # Both bands lie one on the other, so one of them counts.
    band = knitted(outcome, "right_band").height_cm(0, knitted(outcome, "right_band").rows)
    assert band is not None
    assert fronts + band == pytest.approx(width(outcome, "back", "underarm"), abs=0.25)


@pytest.mark.parametrize(("share", "inches"), [(85, 18.7), (90, 19.8)])
def test_negative_ease_of_a_hat(share: int, inches: float) -> None:
    """Source: knitting pattern blog, head sizes, https://www.knitgrammer.com/blog/head-size-chart-for-knitting-hats/: a head of 22
    in and a hat 10 to 15 % less: 19.8 to 18.7 in. The middle of the woman's head in the shipped table is that."""
    outcome = proven(
        f"""
piece hat in plain
    levels brim 0 cm, top 20 cm
    start head * {share} % wide with e-wrap
    left edge straight to top called one
    right edge straight to top called other
    end gathered

join hat one to hat other
""",
        sizes=sized("woman", "head from head head, to fit"),
    )
    assert girth(outcome, "top", "hat") == pytest.approx(inches * INCH, abs=A_STITCH_EACH / 2 + 0.2)


FEET = [("toddler_shoe_5", 5.5), ("child_shoe_10", 6.0), ("woman_shoe_7", 8.0), ("man_shoe_12", 10.0)]


@pytest.mark.parametrize(("size", "inches"), FEET)
def test_a_sock_is_a_tenth_less_than_the_foot(size: str, inches: float) -> None:
    """Source: Craft Yarn Council's www.YarnStandards.com, foot and sock sizes: round the foot 5.5 in for a toddler to 10 in for a
    man's shoe 12; a sock is a tenth less (common practice)."""
    outcome = proven(
        """
piece sock in plain
    levels cuff 0 cm, top 20 cm
    start foot * 90 % wide with e-wrap
    end cast off
""",
        sizes=sized(size, "foot from foot foot_circumference, to fit"),
    )
    assert girth(outcome, "top", "sock") == pytest.approx(inches * 0.9 * INCH, abs=A_STITCH_EACH / 2 + 0.1)


IN_FOURS = """
let exact = {inches} in * {stitches} stitches / 1 in * {share} %
piece tube in plain
    levels cuff 0 cm, top 10 cm
    start round(exact to 4 stitches) wide with e-wrap
    end cast off
"""


def fours(inches: float, stitches: float, share: float = 100) -> int:
    outcome = proven(IN_FOURS.format(inches=inches, stitches=stitches, share=share), stitches / INCH * 10, 40)
    return knitted(outcome, "tube").stitches_at(1)


def test_a_sock_in_a_multiple_of_four() -> None:
    """Source: knitting board blog, https://blog.knittingboard.com/archives/883: a foot of 8.5 in at 9.5 stitches to 2 in is 40.375;
    10 % less is 36.34, made 36, a multiple of 4."""
    assert fours(8.5, 9.5 / 2, 90) == 36


@pytest.mark.parametrize(("inches", "stitches"), [(4.75, 44), (6.25, 56), (5.25, 48)])
def test_a_child_s_mitten_in_multiples_of_four(inches: float, stitches: int) -> None:
    """Source: mitten blog, calculations, 2016, http://masneedles.blogspot.com/2016/04/c-is-for-calculations.html: 8.5 stitches to
    the inch and 0.5 in of ease: a wrist of 4.75 in is 44.6, made 44; a hand of 6.25 in at the thumb 56, of 5.25 in above it 48."""
    assert fours(inches + 0.5, 8.5) == stitches


def test_a_mitten_for_any_hand() -> None:
    """Source: generic mitten pattern page, 2002, http://tiajudy.com/forepaws.htm: a hand of 7.5 in at 6 stitches to the inch is 45;
    the cuff, a tenth less to a multiple of 4, is 40; 41 begin the hand, and 4 cast on over the thumb's gap make it 45."""
    assert fours(7.5, 6, 90) == 40
    outcome = proven(
        """
piece mitten in plain, centre stitch
    levels wrist 0 cm, thumb 20 rows, top 60 rows
    start 7.5 in * 6 stitches / 1 in - 4 stitches wide with e-wrap
    left edge straight to thumb
    left edge steps 4 stitches 1 times to top
    right edge straight to top
    end cast off
""",
        6 / INCH * 10,
        30,
    )
    fabric = knitted(outcome, "mitten")
    assert (fabric.stitches_at(1), fabric.stitches_at(60)) == (41, 45)
