"""What is the body of a garment, and what only looks like one: tubes that open further up."""

from __future__ import annotations

import pytest

from tests.whole.shipped_once import SHIPPED, source
from walewright.design import Changes
from walewright.fit import Fit
from walewright.pipeline import compile

KITTIWAKE = source("kittiwake").replace("finished bust 2 * half, fits bust\n", "")


def fit_of(text: str, size: str) -> Fit:
    made = compile(text, "worn.wale", SHIPPED, Changes((size,)))
    assert made.proven
    assert made.fit is not None
    return made.fit


@pytest.mark.parametrize(("text", "size"), [(source("driftline"), "woman_shoe_7"), (KITTIWAKE, "M")])
def test_a_sock_s_leg_and_sleeves_knitted_from_cuff_to_cuff_are_no_body(text: str, size: str) -> None:
    found = fit_of(text, size)
    assert found.girths
    assert [g.at for g in found.girths if g.body] == []
    assert found.eases == ()


def test_a_pullover_has_one() -> None:
    found = fit_of(source("tidewrack"), "M")
    assert [g.piece for g in found.girths if g.body] == ["back"]
    assert found.eases


LEG = """pattern "Legs"
sizes one
    chest 60 cm, to fit
machine standard
yarn wool "wool", 50 g = 200 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 20 stitches by 30 rows = 10 cm by 10 cm
piece leg in plain{copies}
    levels foot 0 cm, crotch 30 cm, waist 50 cm
    start 24 cm wide with e-wrap
    edges slope to 34 cm wide at crotch called inner
    edges straight to waist called centre
    end cast off
{other}join leg inner to leg inner
"""
TWICE = LEG.format(copies=", knit 2", other="") + "join leg centre to leg centre, each to the next all round\n"
MIRRORED = (
    LEG.format(copies="", other="piece other in plain, mirror of leg\n")
    + "join other inner to other inner\njoin leg centre_left to other centre_right\njoin leg centre_right to other centre_left\n"
)


@pytest.mark.parametrize("text", [TWICE, MIRRORED])
def test_two_legs_are_no_body(text: str) -> None:
    """Each is a tube that is open further up, and neither has a chest or armholes."""
    found = fit_of(text, "one")
    assert {round(g.values[0], 1) for g in found.girths} == {23.0, 33.0}
    assert [g.at for g in found.girths if g.body] == []
    assert (found.eases, found.reaches) == ((), ())


def test_of_several_openings_at_the_top_the_one_in_the_middle_is_the_neck() -> None:
    cuts = "".join(
        f"    opening {side}_cut 3 cm wide from cut to tip, 18 cm {side} of centre, cast off\n" for side in ("left", "right")
    )
    body = """piece {name} in plain
    levels hem 0 cm, underarm 20 cm, cut 38 cm, tip 42 cm
    start 50 cm wide with e-wrap
    edges straight to underarm called side
    edges straight to tip called armhole
    neck 24 cm wide, 6 cm deep, round, cast off
{cuts}    end cast off
"""
    head = LEG[: LEG.index("piece leg")]
    joins = "join back shoulder to front shoulder\njoin back side to front side\n"
    text = head + "".join(body.format(name=name, cuts=cuts) for name in ("back", "front")) + joins
    assert [ring.role for ring in fit_of(text, "one").rings].count("neck") == 1
