"""Edges hung side by side: clockwise with the side to the knitter that is worn inside, anticlockwise with the other."""

from __future__ import annotations

import pytest

from tests.glue.sewn import JACKET, MITTENS, NECKBAND, SHOULDERS, SIDES, VEST, body, codes, lines, panel, sewn, told, understood
from walewright.glue.model import Face, facing, right_side
from walewright.report.english import in_english


def test_the_neckband_of_a_pullover() -> None:
    made = sewn(VEST + NECKBAND + SHOULDERS + SIDES)
    assert lines(made) == {
        "neckband": ["back neck left + back neck centre + back neck right + front neck left + front neck centre + front neck right"]
    }
    (line,) = made.lines
    assert line.left_ends == ("top", "left", "bottom", "top", "left", "bottom")
    assert line.facing == "purl"


def test_a_neckband_may_begin_at_either_shoulder() -> None:
    other = NECKBAND.replace("back neck + front neck", "front neck + back neck")
    (said,) = lines(sewn(VEST + other + SHOULDERS + SIDES))["neckband"]
    assert said.startswith("front neck left")


def test_right_side_facing_it_is_hung_the_other_way_round() -> None:
    wrong = NECKBAND.replace("\n", ", right side facing\n")
    made = sewn(VEST + wrong + SHOULDERS + SIDES)
    (said,) = lines(made)["neckband"]
    assert said.startswith("back neck right + back neck centre + back neck left + front neck right")
    assert made.lines[0].facing == "knit"
    assert made.lines[0].left_ends[0] == "top"


def test_a_band_in_a_fabric_worn_purl_side_out_has_the_right_side_facing() -> None:
    purl = NECKBAND.replace("with collar", "with edge") + "edging edge in knobs, 2 cm deep, added after\n"
    (line,) = sewn(VEST + purl + SHOULDERS + SIDES).lines
    assert line.facing == "knit"


@pytest.mark.parametrize(
    ("along", "fits"),
    [
        ("right_front neckline + back neck + left_front neckline", True),
        ("left_front neckline + back neck + right_front neckline", False),
        ("left_front neckline + back neck + right_front neckline, right side facing", True),
        ("back neck + left_front neckline", True),
        ("right_front neckline + left_front neckline", False),
        ("right_front front + right_front neckline + back neck", True),
        ("right_front neckline + right_front front + back neck", False),
    ],
)
def test_lines_round_a_jacket(along: str, fits: bool) -> None:
    text = JACKET.replace("right_front neckline + back neck + left_front neckline", along)
    assert codes(text) == ([] if fits else ["line-not-in-order"])


def test_the_order_that_works_is_proposed() -> None:
    mixed = "back neck + right_front neckline + left_front neckline"
    (said,) = told(JACKET.replace("right_front neckline + back neck + left_front neckline", mixed))
    assert in_english(said).helps[0] == "write `along right_front neckline + back neck + left_front neckline`"


def test_a_band_is_knitted_once_for_each_copy() -> None:
    made = sewn(panel("panel", copies=3) + "band edge with collar along panel end\n")
    assert lines(made)["edge"] == ["panel 1 end", "panel 2 end", "panel 3 end"]
    assert [(line.copy, line.copies) for line in made.lines] == [(1, 3), (2, 3), (3, 3)]


def test_a_band_over_both_halves_of_an_armhole() -> None:
    armbands = (
        "band one_armband with collar along back armhole_left + front armhole_right\n"
        "band other_armband with collar along front armhole_left + back armhole_right\n"
    )
    assert lines(sewn(VEST + armbands + SHOULDERS + SIDES)) == {
        "one_armband": ["back armhole left + front armhole right"],
        "other_armband": ["front armhole left + back armhole right"],
    }
    down_first = armbands.replace("back armhole_left + front armhole_right", "front armhole_right + back armhole_left")
    # Down the one and up the other is a line round the underarm, and needs the sides first.
    assert codes(VEST + down_first + SHOULDERS + SIDES) == ["line-closed"]


def test_a_thumb_is_hung_all_round_its_slot() -> None:
    made = sewn(MITTENS)
    assert lines(made) == {
        "right_thumb": ["right_mitten thumb + right_mitten thumb upper"],
        "left_thumb": ["left_mitten thumb upper + left_mitten thumb"],
    }
    assert [line.left_ends for line in made.lines] == [("left", "right"), ("right", "left")]


def test_gaps_between_neighbours_are_no_line() -> None:
    gap = body("back").replace("edges straight to underarm called side", "edges straight to underarm")
    assert codes(gap + "band edge with collar along back armhole_left + back neck\n") == ["line-not-in-order"]


def test_a_line_needs_and_spares_seams() -> None:
    made = sewn(VEST + NECKBAND + SHOULDERS + SIDES)
    (line,) = made.lines
    joins = [[p.text for p in (*made.seams[n].one, *made.seams[n].other)] for n in (*line.needs, *line.spares)]
    assert joins == [["back shoulder right", "front shoulder left"], ["back shoulder left", "front shoulder right"]]


def test_no_order_is_proposed_where_something_else_stays_wrong() -> None:
    mixed = "back neck + right_front neckline + left_front neckline"
    twice = "join back side to right_front side\n"
    said = told(JACKET.replace("right_front neckline + back neck + left_front neckline", mixed) + twice)
    assert {d.code for d in said} == {"line-not-in-order", "edge-used-twice"}
    assert not any(text.startswith("write `along") for d in said for text in in_english(d).helps)


KNOBBLY = panel("rug").replace("in plain", "in knobs")


@pytest.mark.parametrize(("fabric", "right_side_is"), [("plain", "knit"), ("knobs", "purl")])
def test_the_purl_side_is_to_the_knitter(fabric: str, right_side_is: str) -> None:
    design = understood(VEST + KNOBBLY)
    assert right_side(design, fabric) == right_side_is
    # Worn as its fabric is meant, a piece is knitted with its purl side to the knitter; worn inside out, with the other.
    assert facing(design, right_side(design, fabric), fabric) == "purl"
    assert facing(design, "knit" if right_side_is == "purl" else "purl", fabric) == "knit"


@pytest.mark.parametrize("worn", ["knit", "purl"])
def test_the_author_can_say_which_side_faces(worn: Face) -> None:
    design = understood(VEST + KNOBBLY)
    for fabric in ("plain", "knobs"):
        assert facing(design, worn, fabric, "right") == worn
        assert facing(design, worn, fabric, "wrong") == ("purl" if worn == "knit" else "knit")


# ----------------------------------------------------------------- over welts and ends of bands

WELTED = JACKET.replace("start 22 cm wide with e-wrap", "start 22 cm wide on waste yarn, with welt")
FRONTS = "band right_band with collar along {right}\nband left_band with collar along {left}\n"


def test_a_line_goes_over_the_end_of_a_welt() -> None:
    made = sewn(
        WELTED + FRONTS.format(right="right_front welt_left + right_front front", left="left_front front + left_front welt_right")
    )
    assert lines(made)["right_band"] == ["right_front welt left + right_front front"]
    assert lines(made)["left_band"] == ["left_front front + left_front welt right"]
    (right,) = made.lines_of("right_band")
    assert right.left_ends == ("bottom", "bottom")
    assert made.lines_of("left_band")[0].left_ends == ("top", "top")
    # What is picked up is sewn to nothing.
    assert {place for seam in made.seams for ends in seam.over for place in ends} == set()


def test_and_over_the_ends_of_a_band_that_is_knitted_before_it() -> None:
    front = FRONTS.format(right="right_front front + neckband first_end", left="neckband last_end + left_front front")
    made = sewn(JACKET + front)
    assert lines(made)["right_band"] == ["right_front front + neckband first end"]
    assert made.lines_of("right_band")[0].left_ends == ("bottom", "bottom")
    assert made.lines_of("left_band")[0].left_ends == ("top", "top")
    order = [task.name for task in made.order if task.kind == "band"]
    assert order.index("neckband") < min(order.index("right_band"), order.index("left_band"))


@pytest.mark.parametrize(
    ("right", "code"),
    [
        ("right_front front + right_front welt_left", "line-not-in-order"),
        ("right_front welt_right + right_front front", "line-not-in-order"),
        ("right_front front + neckband last_end", "line-not-in-order"),
        ("right_front welt", ""),
    ],
)
def test_ends_that_do_not_lie_beside_the_edge(right: str, code: str) -> None:
    found = codes(WELTED + FRONTS.format(right=right, left="left_front front"))
    assert found[:1] == ([code] if code else found[:1])
    assert found
