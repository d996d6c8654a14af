"""One order of work: pieces, seams, bands and steps as they are done."""

from __future__ import annotations

from tests.glue.sewn import HEAD, MITTENS, NECKBAND, PULLOVER, SHOULDERS, SIDES, SLEEVE, SLEEVES, VEST, panel, sewn, work

RIGHT, LEFT = "back shoulder right ~ front shoulder left", "back shoulder left ~ front shoulder right"


def test_the_band_comes_between_the_shoulders() -> None:
    order = work(sewn(PULLOVER))
    assert order[:3] == ["back", "front", "sleeve"]
    assert order[3:6] == [RIGHT, "neckband", LEFT]


def test_a_join_that_a_band_does_not_need_comes_after_it() -> None:
    order = work(sewn(VEST + NECKBAND + "join front side_left to back side_right\n" + SHOULDERS))
    assert order[2:5] == [RIGHT, "neckband", "front side left ~ back side right"]
    assert order[5:] == [LEFT]


def test_a_join_stays_before_the_step_that_follows_it() -> None:
    making = 'making up\n    join front side_left to back side_right\n    step "Press."\n    join back shoulder to front shoulder\n'
    order = work(sewn(VEST + NECKBAND + making))
    assert order[2:] == ["front side left ~ back side right", "step 0", RIGHT, "neckband", LEFT]


def test_of_two_bands_each_has_the_joins_that_it_needs() -> None:
    hem = "band hem_band with collar along front start + back start\n"
    order = work(sewn(VEST + NECKBAND + hem + "join front side_left to back side_right\n" + SHOULDERS))
    assert order[2:6] == ["front side left ~ back side right", "hem_band", RIGHT, "neckband"]
    order = work(sewn(VEST + NECKBAND + hem + SHOULDERS + "join front side_left to back side_right\n"))
    assert order[2:] == [RIGHT, "neckband", "front side left ~ back side right", "hem_band", LEFT]


def test_without_a_band_the_author_s_order_holds() -> None:
    order = work(sewn(VEST + SIDES + SHOULDERS))
    assert order[2:] == ["back side left ~ front side right", "back side right ~ front side left", LEFT, RIGHT]


def test_a_seam_waits_for_those_that_make_its_edges_one_line() -> None:
    order = work(sewn(VEST + SLEEVE + SLEEVES + SIDES + SHOULDERS))
    assert order.index("sleeve 1 end ~ front armhole right + back armhole left") > order.index(LEFT)
    assert order.index("sleeve 2 end ~ back armhole right + front armhole left") > order.index(RIGHT)


def test_a_piece_is_hung_before_its_seams() -> None:
    hood = """\
piece hood in plain
    levels seam 0 cm, top 30 cm
    start 40 cm wide along back neck + front neck
    edges straight to top called face
    end cast off
"""
    order = work(sewn(VEST + hood + "join hood face to hood face\n" + SHOULDERS + SIDES))
    assert order.index(RIGHT) < order.index("hood") < order.index("hood face left ~ hood face right")
    assert order.index("hood") < order.index(LEFT)


def test_armbands_are_knitted_before_the_sides_are_joined() -> None:
    armbands = (
        "band one_armband with collar along back armhole_left + front armhole_right\n"
        "band other_armband with collar along front armhole_left + back armhole_right\n"
    )
    order = work(sewn(VEST + armbands + NECKBAND + SHOULDERS + SIDES))
    sides = [i for i, task in enumerate(order) if "side" in task]
    assert max(order.index("one_armband"), order.index("other_armband")) < min(sides)


def test_bands_on_single_edges_come_after_the_pieces() -> None:
    order = work(sewn(panel("panel") + panel("other") + "band edge with collar along panel end\njoin panel side to other side\n"))
    assert order[:3] == ["panel", "other", "edge"]


def test_a_first_step_is_of_bands_on_single_edges_too() -> None:
    making = 'making up\n    step "Block all of it."\n    join panel side to other side\n'
    order = work(sewn(panel("panel") + panel("other") + "band edge with collar along panel end\n" + making))
    assert order[:4] == ["panel", "other", "edge", "step 0"]


def test_steps_stay_between_the_joins_they_were_written_between() -> None:
    text = """\
making up
    step "Block."
    join back shoulder to front shoulder
    step "Press."
    join back side to front side
    step "Wash."
"""
    order = work(sewn(VEST + text))
    assert order[2] == "step 0"
    assert order.index(RIGHT) < order.index("step 1") < order.index("back side left ~ front side right") < order.index("step 2")


def test_thumbs_follow_their_mittens() -> None:
    assert work(sewn(MITTENS))[:4] == ["right_mitten", "left_mitten", "right_thumb", "left_thumb"]
    assert "slot" not in HEAD
