"""From the middle of the back neck to the end of the sleeve."""

from __future__ import annotations

import pytest

from tests.fit.tried_on import worn
from tests.fit.wardrobe import CARDIGAN, DOLMAN, HEAD, PULLOVER, RAGLAN, SLEEVE, VEST


@pytest.mark.parametrize(
    ("source", "way", "cm"),
    [
        # Half of 44 cm, a sleeve of 40 cm and its welt of 4 cm.
        (PULLOVER, "over the shoulder", 66.0),
        # Half the back neck of 20 cm, and the whole sleeve of 64 cm.
        (RAGLAN, "from the neck", 74.0),
        # Half of the 70 cm at the wrists.
        (DOLMAN, "half the span", 35.0),
    ],
)
def test_each_construction(source: str, way: str, cm: float) -> None:
    (reach,) = worn(source).fit.reaches
    assert (reach.way, reach.values) == (way, pytest.approx((cm,)))


def test_a_cardigan_has_the_reach_of_a_pullover() -> None:
    sleeve = SLEEVE.replace("join sleeve end to back armhole + front armhole, easing 2 cm\n", "")
    joined = "".join(f"join sleeve end to back armhole + {side}_front armhole, easing 2 cm\n" for side in ("left", "right"))
    (reach,) = worn(CARDIGAN + sleeve + joined).fit.reaches
    assert reach.values == pytest.approx((66.0,))


def test_a_vest_has_none() -> None:
    assert worn(VEST).fit.reaches == ()


@pytest.mark.parametrize(("arm", "codes"), [("68.9", []), ("69.1", ["reach-too-short"])])
def test_three_centimetres_short_are_too_short(arm: str, codes: list[str]) -> None:
    """The pullover reaches 66 cm; only a row that is the body's reach is compared."""
    head = HEAD.replace("80 cm, to fit", f"80 cm, to fit\n    centre_back_neck_to_wrist {arm} cm, to fit")
    assert worn(PULLOVER, head).codes() == codes
    assert worn(PULLOVER, head.replace("centre_back_neck_to_wrist", "some_other_row")).codes() == []


def test_the_table_of_the_arm_tells_the_reach() -> None:
    """Source: Craft Yarn Council's www.YarnStandards.com: woman M, back of neck to wrist 71 to 72.5 cm; an arm from it means
    sleeves to the wrist. A source that names neither may have short sleeves."""
    head = HEAD.replace("sizes one", "sizes M").replace(
        "80 cm, to fit", "80 cm, to fit\n    arm from women arm_length_to_underarm, to fit"
    )
    made = worn(PULLOVER, head)
    (reach,) = made.fit.reaches
    assert reach.body == pytest.approx((71.75,))
    assert "reach-too-short" in made.codes()
    short = HEAD.replace("sizes one", "sizes M").replace(
        "80 cm, to fit", "80 cm, to fit\n    neck_to_waist from women back_waist_length, to fit"
    )
    assert "reach-too-short" not in worn(PULLOVER, short).codes()
