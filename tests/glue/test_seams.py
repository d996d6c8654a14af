"""Joins as seams: the partner is the one whose ends meet, whatever stands first in the source."""

from __future__ import annotations

import pytest

from tests.glue.sewn import JACKET, MITTENS, PULLOVER, SHOULDERS, SIDES, SLEEVE, SLEEVES, STRIP, VEST, body, panel, seams, sewn

RAGLAN = """\
piece back in plain
    levels hem 0 cm, underarm 28 cm, top length
    start 44 cm wide with e-wrap
    edges straight to underarm called side
    edges slope to 20 cm wide at top called raglan
    end cast off

piece front in plain
    levels hem 0 cm, underarm 28 cm, top length
    start 44 cm wide with e-wrap
    edges straight to underarm called side
    edges slope to 20 cm wide at top called raglan
    end cast off

piece sleeve in plain, knit 2
    levels cuff 0 cm, underarm 40 cm, top 62 cm
    start 24 cm wide with e-wrap
    edges slope to 34 cm wide at underarm called seam
    edges slope to 6 cm wide at top called raglan
    end cast off
"""
SADDLE = """\
piece back in plain
    levels hem 0 cm, underarm 28 cm, top length
    start 44 cm wide with e-wrap
    edges straight to underarm called side
    edges straight to top called armhole
    neck 20 cm wide, 2.5 cm deep, round, cast off
    end cast off

piece front in plain
    levels hem 0 cm, underarm 28 cm, top length
    start 44 cm wide with e-wrap
    edges straight to underarm called side
    edges straight to top called armhole
    neck 20 cm wide, 9 cm deep, round, cast off
    end cast off

piece sleeve in plain, knit 2
    levels cuff 0 cm, cap 40 cm, head 60 cm, neck 72 cm
    start 24 cm wide with e-wrap
    edges slope to 40 cm wide at cap called seam
    edges slope to 8 cm wide at head called head
    edges straight to neck called strap
    end cast off
"""


def test_a_pullover_is_told_no_sides() -> None:
    assert seams(sewn(PULLOVER)) == [
        "back shoulder left ~ front shoulder right",
        "back shoulder right ~ front shoulder left",
        "sleeve 1 end ~ front armhole right + back armhole left",
        "sleeve 2 end ~ back armhole right + front armhole left",
        "sleeve 1 seam left ~ sleeve 1 seam right",
        "sleeve 2 seam left ~ sleeve 2 seam right",
        "back side left ~ front side right",
        "back side right ~ front side left",
    ]


@pytest.mark.parametrize("joins", [SHOULDERS + SLEEVES + SIDES, SLEEVES + SHOULDERS + SIDES, SIDES + SHOULDERS + SLEEVES])
def test_in_whatever_order_the_joins_stand(joins: str) -> None:
    assert sorted(seams(sewn(VEST + SLEEVE + joins))) == sorted(seams(sewn(PULLOVER)))


def test_fronts_meet_the_side_of_the_back_that_they_are_worn_at() -> None:
    assert seams(sewn(JACKET)) == [
        "back shoulder left ~ right_front end",
        "back shoulder right ~ left_front end",
        "back side left ~ right_front side",
        "back side right ~ left_front side",
    ]


def test_each_raglan_sleeve_lies_between_back_and_front() -> None:
    joins = "join back raglan to sleeve raglan\njoin front raglan to sleeve raglan\njoin sleeve seam to sleeve seam\n"
    made = seams(sewn(RAGLAN + SIDES + joins))
    of_back = {s.split(" ~ ")[1].split()[1] for s in made if s.startswith("back raglan")}
    of_front = {s.split(" ~ ")[1].split()[1] for s in made if s.startswith("front raglan")}
    assert of_back == of_front == {"1", "2"}
    for copy in ("1", "2"):
        at = [s for s in made if f"sleeve {copy} raglan" in s]
        back, front = (next(s for s in at if s.startswith(name)) for name in ("back", "front"))
        sides = {back.split()[2], front.split()[2]}
        assert sides == {"left", "right"}, "at the back's left it is at the front's right"


def test_straps_of_a_saddle_lie_between_the_shoulders() -> None:
    joins = """\
join sleeve head to back armhole, easing 20 cm
join sleeve head to front armhole, easing 20 cm
join sleeve strap + sleeve strap to back shoulder, easing 5 cm
join sleeve strap + sleeve strap to front shoulder, easing 5 cm
join sleeve seam to sleeve seam
"""
    made = seams(sewn(SADDLE + joins + SIDES))
    heads = {(s.split(" ~ ")[1], s.split()[1], s.split()[3]) for s in made if " head " in s}
    straps = {(s.split(" ~ ")[1].replace("shoulder", "armhole"), s.split()[1], s.split()[3]) for s in made if " strap " in s}
    assert len(heads) == 4
    assert straps == heads, "each strap goes on from the head below it"


def test_a_piece_from_side_to_side_and_its_mirror_image() -> None:
    text = """\
piece back in plain
    levels cuff 0 cm, underarm 20 cm, other 60 cm, wrist 80 cm
    start 12 cm wide with e-wrap
    left edge straight to underarm called underarm
    left edge straight to other called hem
    left edge straight to wrist called second_underarm
    right edge straight to underarm called shoulder_line
    right edge straight to other called neckline
    right edge straight to wrist called second_shoulder
    end cast off

piece front in plain, mirror of back

join back shoulder_line to front shoulder_line
join back second_shoulder to front second_shoulder
join back underarm to front underarm
join back second_underarm to front second_underarm
"""
    made = sewn(text)
    assert len(made.seams) == 4
    assert len(made.openings) == 4, "two cuffs, hem and neck"


def test_one_piece_is_closed_to_a_tube() -> None:
    made = sewn(panel("hat", end="gathered") + "join hat side to hat side\n")
    assert seams(made) == ["hat side left ~ hat side right"]
    assert len(made.openings) == 1


def test_the_thumb_and_its_hand_are_closed_each_by_itself() -> None:
    made = sewn(MITTENS)
    assert (made.parts, len(made.openings), len(made.seams)) == (2, 2, 4)


def test_panels_each_to_the_next_and_all_round() -> None:
    row = seams(sewn(panel("panel", copies=3) + "join panel side_right to panel side_left, each to the next\n"))
    assert row == ["panel 1 side right ~ panel 2 side left", "panel 2 side right ~ panel 3 side left"]
    ring = seams(sewn(panel("panel", copies=3) + "join panel side_right to panel side_left, each to the next all round\n"))
    assert ring == [*row, "panel 3 side right ~ panel 1 side left"]


def test_a_pair_is_closed_copy_by_copy() -> None:
    made = sewn(panel("sock", copies=2) + "join sock side to sock side\n")
    assert seams(made) == ["sock 1 side left ~ sock 1 side right", "sock 2 side left ~ sock 2 side right"]
    assert made.parts == 2


def test_an_edge_is_closed_upon_itself() -> None:
    made = sewn(panel("sock") + "join sock side to sock side\njoin sock end to sock end\n")
    assert [(s.one[0].edge, s.other) for s in made.seams][1] == ("end", ())
    assert len(made.openings) == 1


def test_a_seam_goes_round_one_piece() -> None:
    cap = SLEEVE.replace("levels cuff 0 cm, top 40 cm", "levels cuff 0 cm, wide 34 cm, top 40 cm").replace(
        "at top called seam", "at wide called seam\n    edges slope to 30 cm wide at top called cap"
    )
    joins = SHOULDERS + SIDES + "join sleeve cap + sleeve end to back armhole + front armhole, easing 20 cm\n"
    made = [s for s in seams(sewn(VEST + cap + joins)) if s.startswith("sleeve")]
    assert made == [
        "sleeve 1 cap left + sleeve 1 end + sleeve 1 cap right ~ front armhole right + back armhole left",
        "sleeve 2 cap left + sleeve 2 end + sleeve 2 cap right ~ back armhole right + front armhole left",
    ]


def test_ends_of_strips_are_sewn_in_the_seam_that_they_lie_in_line_with() -> None:
    back, front = (body(name, start="on waste yarn, with welt") for name in ("back", "front"))
    made = sewn(back + front + SIDES)
    over = {tuple(sorted(place.text for place in ends)) for seam in made.seams for ends in seam.over if ends}
    assert over == {("back welt left", "front welt right"), ("back welt right", "front welt left")}


def over(longer: str, front_first: bool = False) -> tuple[tuple[tuple[str, ...], tuple[str, ...]], bool]:
    """The strips whose ends lie beside a front band, beyond the front's edge at the top and the hem; and whether there are any."""
    welted = JACKET.replace("start 22 cm wide with e-wrap", "start 22 cm wide on waste yarn, with welt")
    band = STRIP.format(high="length - 8 cm").replace(
        "edges straight to head called seam", "right edge straight to head called seam"
    )
    sides = "right_front front to strip seam" if front_first else "strip seam to right_front front"
    seam = sewn(welted + band + f"join {sides}, easing 1 cm, longer by {longer}\n").seams[-1]
    assert {seam.one[0].owner, seam.other[0].owner} == {"strip", "right_front"}
    assert seam.one_begins == seam.other_begins
    top, hem = (tuple(place.owner for place in ends) for ends in seam.over[:: 1 if seam.one_begins == ("top",) else -1])
    return (top, hem), seam.beyond


@pytest.mark.parametrize(
    ("longer", "top", "hem"),
    [
        # The welt is 4 cm deep, the collar 2.5 cm: what comes nearest to the difference lies along the strip.
        ("0.5 cm", (), ()),
        ("2.5 cm", ("neckband",), ()),
        ("3 cm", ("neckband",), ()),
        ("4 cm", (), ("right_front",)),
        ("5 cm", (), ("right_front",)),
        ("6.5 cm", ("neckband",), ("right_front",)),
        ("9 cm", ("neckband",), ("right_front",)),
    ],
)
def test_a_longer_strip_lies_along_the_ends_of_edgings_and_bands(longer: str, top: tuple[str, ...], hem: tuple[str, ...]) -> None:
    assert over(longer) == ((top, hem), bool(top or hem))
    assert over(f"-{longer}", front_first=True) == ((top, hem), bool(top or hem))


def test_a_strip_that_is_no_longer_ends_with_the_edge() -> None:
    assert over("0 cm") == (((), ()), False)


def test_an_edge_grafted_to_itself_joins_its_copies_two_and_two() -> None:
    rugs = panel("half", end="on waste yarn", copies=4) + "join half end to half end, grafted\n"
    assert seams(sewn(rugs)) == ["half 1 end ~ half 2 end", "half 3 end ~ half 4 end"]
    # Sewn, it is folded: each copy is closed by itself.
    sides = "join half start to half start\n"
    assert [(s.one[0].copy, s.other) for s in sewn(panel("half", copies=2) + sides).seams] == [(1, ()), (2, ())]
