"""A name that stands for several edges of a piece: told with the lines that are meant, or one line with all of them."""

from __future__ import annotations

import pytest

from tests.glue.sewn import FRONT_NECK, SHOULDERS, SIDES, VEST, body, panel, sewn, told
from walewright.report.english import in_english

SLEEVES = """\
piece sleeve in plain, knit 2
    levels seam 0 cm, cuff 20 cm
    start 30 cm wide along {along}
    edges straight to cuff called under
    end cast off
"""
BAND = "band trim with collar along {along}\n"
ARMHOLES = "`along front armhole_left + back armhole_right` and `along back armhole_left + front armhole_right`"
BOTH_SHOULDERS = "`along front shoulder_left` and `along front shoulder_right`"


@pytest.mark.parametrize(
    ("text", "helps"),
    [
        (
            body("front", FRONT_NECK) + BAND.format(along="front shoulder"),
            (f"write 2 bands, {BOTH_SHOULDERS}", "or only one, `along front shoulder_left`"),
        ),
        # Loops on waste yarn are taken up at both.
        (
            body("front", FRONT_NECK, end="on waste yarn") + BAND.format(along="front shoulder"),
            (f"write 2 bands, {BOTH_SHOULDERS}",),
        ),
        (
            panel("rug", copies=2) + BAND.format(along="rug side"),
            ("write 2 bands, `along rug side_left` and `along rug side_right`", "or only one, `along rug side_left`"),
        ),
        (
            VEST + BAND.format(along="front armhole + back armhole") + SHOULDERS + SIDES,
            (f"write 2 bands, {ARMHOLES}", "or only one, `along front armhole_left + back armhole_right`"),
        ),
    ],
)
def test_a_band_has_one_line(text: str, helps: tuple[str, ...]) -> None:
    (found,) = told(text)
    assert found.code == "band-up-both-sides"
    assert in_english(found).helps == helps


def test_the_name_that_stands_for_several_is_told_with_what_it_stands_for() -> None:
    (found,) = told(body("front", FRONT_NECK) + BAND.format(along="front shoulder"))
    meant = "`front shoulder`, which is not one edge but 2: `front shoulder_left` and `front shoulder_right`"
    assert in_english(found).message == f"band `trim` is to run along {meant}"


def test_copies_of_a_piece_have_lines_that_are_alike() -> None:
    text = VEST + SLEEVES.format(along="front armhole + back armhole") + SHOULDERS + SIDES + "join sleeve under to sleeve under\n"
    (found,) = told(text)
    assert found.code == "start-on-both-sides"
    assert in_english(found).helps == (f"write 2 pieces, {ARMHOLES}",)
    (found,) = told(panel("rug", copies=2) + SLEEVES.format(along="rug side"))
    assert in_english(found).helps == (
        "write 2 pieces, `along rug side_left` and `along rug side_right`",
        "or only one, `along rug side_left`",
    )
    lines = sewn(panel("rug", copies=2) + SLEEVES.format(along="rug side_left")).lines_of("sleeve")
    assert [[(place.edge, place.copy) for place in line.along] for line in lines] == [[("side left", 1)], [("side left", 2)]]


def test_the_copies_are_shared_out_among_the_lines() -> None:
    """Eight sleeves on four rugs are four at each side; of four, two would be at each, and the rugs have four such edges."""
    (found,) = told(panel("rug", copies=4) + SLEEVES.format(along="rug side").replace("knit 2", "knit 8"))
    assert in_english(found).helps[0] == "write 2 pieces, `along rug side_left` and `along rug side_right`"
    (found,) = told(panel("rug", copies=4) + SLEEVES.format(along="rug side").replace("knit 2", "knit 4"))
    assert not any("write 2 pieces" in text for text in in_english(found).helps)


def test_where_no_way_to_name_the_lines_leads_on_none_is_proposed() -> None:
    (found,) = told(
        body("front", FRONT_NECK, start="on waste yarn").replace("piece front", "piece other")
        + panel("rug", end="on waste yarn")
        + BAND.format(along="rug side")
    )[:1]
    assert not any("`along" in text for text in in_english(found).helps)


def test_the_edges_of_both_sides_may_be_parts_of_one_line() -> None:
    (line,) = sewn(panel("rug") + BAND.format(along="rug side + rug end + rug side")).lines_of("trim")
    assert [place.edge for place in line.along] == ["side left", "end", "side right"]
    text = body("front", FRONT_NECK) + BAND.format(along="front shoulder + front neck + front shoulder")
    (line,) = sewn(text).lines_of("trim")
    assert [place.edge for place in line.along] == ["shoulder left", "neck left", "neck centre", "neck right", "shoulder right"]
    two = sewn(body("front", FRONT_NECK).replace("in plain", "in plain, knit 2", 1) + BAND.format(along="front neck")).lines_of(
        "trim"
    )
    assert len(two) == 2
