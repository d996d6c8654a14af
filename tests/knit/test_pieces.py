"""Whole pieces, counted by hand, planned and knitted by the bed."""

from __future__ import annotations

from typing import Any

import pytest

from walewright.counted.model import (
    PickUp,
    ShapingPhrase,
    SizedBand,
    SizedJoin,
    SizedOpening,
    SizedRepeat,
    SizedSlot,
    SizedWedge,
    SizedZone,
)
from walewright.design.model import Band, EdgeJoin, EdgeName, ShapingWay
from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.stages import rib_slots
from walewright.knit.steps import shape
from walewright.report.said import said

FULL = ShapingWay("fashioned", 3)
TWO = ShapingWay("fashioned", 3, 2)


def kinds(steps: Any) -> list[str]:
    return [type(s).__name__ for s in steps]


def repeats(steps: Any) -> list[st.Repeat]:
    return [s for s in steps if isinstance(s, st.Repeat)]


def opening(room: Any, row: int, to_row: int, first: int, flat: int, left: Any, right: Any, **fields: Any) -> SizedOpening:
    runs = tuple((room.run(row, to_row, *phrases),) for phrases in (left, right))
    given = {"name": "slit", "width": flat, **fields}
    return SizedOpening(
        row=row, flat=flat, run=runs[0][0], origin=room.here, to_row=to_row, first=first, left=runs[0], right=runs[1], **given
    )


# ----------------------------------------------------------------- short rows


def test_a_curved_hem_is_held_at_both_ends_from_the_start(room: Any) -> None:
    wedge = SizedWedge("hem", "both", 0, (4, 4, 4, 3), room.here, "out")
    runs = (room.run(0, 30, name="side"),)
    made = room.knit((room.piece("back", 40, 30, wedges=(wedge,), left=runs),))
    # Held and returned, the ends knit 2 of the wedge's 8 rows.
    assert made.edge("back", "side") == (24,)
    assert [s.times for s in repeats(made.steps())] == [2]
    assert [s for s in made.steps() if isinstance(s, st.HoldAtEnd)] == [st.HoldAtEnd("left", 12), st.HoldAtEnd("right", 12)]
    (two,) = repeats(made.steps())
    assert kinds(two.body) == ["ReturnSome", "KnitRows", "WrapHeld"] * 2


def test_a_dart_in_mid_piece_goes_on_to_straight_rows(room: Any) -> None:
    wedge = SizedWedge("dart", "both", 10, (5, 5, 4), room.here)
    made = room.knit((room.piece("front", 40, 40, wedges=(wedge,), left=(room.run(0, 40, name="side"),)),))
    assert made.edge("front", "side") == (36,)
    back = [s for s in made.steps() if isinstance(s, st.ReturnHeld)]
    assert back == [st.ReturnHeld("left"), st.ReturnHeld("right")]


def test_a_heel_turns_on_half_the_stitches_while_the_others_rest(room: Any) -> None:
    left = SizedWedge("heel left", "left", 10, (1,) * 6, room.here, "both")
    right = SizedWedge("heel right", "right", 10, (1,) * 6, room.here, "both", rest=20)
    made = room.knit((room.piece("sock", 40, 60, wedges=(left, right), left=(room.run(0, 60, name="seam"),)),))
    assert made.edge("sock", "seam") == (60 - 22,)
    heel = repeats(made.steps())
    assert [r.times for r in heel] == [5, 5]
    assert kinds(heel[0].body) == ["HoldAtEnd", "KnitRows", "WrapHeld", "HoldAtEnd", "KnitRows", "WrapHeld"]
    assert kinds(heel[1].body) == ["ReturnSome", "KnitRows", "WrapHeld", "ReturnSome", "KnitRows", "WrapHeld"]
    assert st.HoldAtEnd("right", 21) in made.steps()


@pytest.mark.parametrize("kind", ["in", "out", "both"])
@pytest.mark.parametrize("edge", ["left", "right"])
@pytest.mark.parametrize("groups", [(5,), (6, 5), (6, 6, 5, 5, 5)])
@pytest.mark.parametrize("rest", [0, 3])
def test_any_wedge_leaves_two_rows_at_its_edge(room: Any, kind: str, edge: str, groups: tuple[int, ...], rest: int) -> None:
    wedge = SizedWedge("wedge", edge, 4, groups, room.here, kind, rest)
    held = kind == "both" or len(groups) > 1
    rows = wedge.to_row + 6
    left, right = ((room.run(0, rows, name=name),) for name in ("one", "other"))
    made = room.knit((room.piece("piece", 50, rows, wedges=(wedge,), left=left, right=right),))
    gone = wedge.to_row - wedge.from_row - 2 if held else 0
    assert made.edge("piece", "one") == (rows - (gone if edge == "left" else 0),)
    assert made.edge("piece", "other") == (rows - (gone if edge == "right" else 0),)


def test_gores_are_one_repeat_and_the_counter_goes_on(room: Any) -> None:
    wedge = SizedWedge("gore", "right", 10, (6, 6, 5), room.here)
    left, right = (room.run(0, 30, name="lower"),), (room.run(0, 30, name="upper"),)
    again = (SizedRepeat(10, 20, 8, room.here),)
    made = room.knit((room.piece("yoke", 40, 30, wedges=(wedge,), repeats=again, left=left, right=right),))
    knit = made.paragraph("Knit and shape")
    (gores,) = (s for s in knit if isinstance(s, st.Repeat))
    assert gores.times == 8
    assert not any(isinstance(s, st.Now | st.KnitTo) for s in gores.body)
    assert st.Repeat((st.HoldAtEnd("right", 6), st.KnitRows(1), st.WrapHeld("right"), st.KnitRows(1)), 2) in gores.body
    assert knit[knit.index(gores) + 1] == st.Now(40, 90, "right")
    assert knit[-1] == st.Now(40, 100, "right")
    assert made.edge("yoke", "lower") == (100,)
    assert made.edge("yoke", "upper") == (100 - 8 * 4,)
    assert st.EdgeIs("lower", "left", 0, 100) in made.steps()


# ----------------------------------------------------------------- openings


def test_a_keyhole_rejoins_and_the_neck_goes_on_above_it(room: Any) -> None:
    keyhole = opening(
        room, 10, 30, -2, 4, [ShapingPhrase((5,), (-1,), 2)], [ShapingPhrase((5,), (-1,), 2)], name="keyhole", width=8, rejoins=True
    )
    neck = opening(room, 40, 60, -6, 12, [ShapingPhrase((2,), (-1,), 3)], [ShapingPhrase((2,), (-1,), 3)], name="neck", width=18)
    piece = room.piece(
        "back", 40, 60, openings=(keyhole, neck), end_way="waste", start_way="waste", start_edging="welt", edging_rows=12
    )
    made = room.knit((piece,))
    assert made.titles() == [
        "Cast on",
        "Knit",
        "Part for the keyhole",
        "Left part",
        "Return to the right part",
        "Right part",
        "Close the keyhole",
        "Over the whole width",
        "Part for the neck",
        "Right half",
        "",
        "Return to the left half",
        "Left half",
        "",
        "Edges for making up",
    ]
    assert st.CastOnBetween(8, -4, 3, 40) in made.steps()
    assert made.paragraph("Close the keyhole")[-1] == st.Now(40, 30, "right")
    assert st.EdgeIs("keyhole", "inner", 10, 30) in made.steps()
    assert made.edge("back", "keyhole left") == (20,)
    assert made.edge("back", "shoulder right") == (11,)


def test_a_slit_without_stitches_rejoins_without_a_cast_on(room: Any) -> None:
    slit = opening(room, 10, 20, 0, 0, [], [], rejoins=True)
    made = room.knit((room.piece("back", 40, 30, openings=(slit,)),))
    assert not any(isinstance(s, st.CastOnBetween | st.CentreToWaste | st.CloseCentre) for s in made.steps())
    assert made.edge("back", "end") == (40,)


def test_a_closed_centre_goes_towards_the_right_part(room: Any) -> None:
    pocket = opening(room, 10, 20, 4, 8, [], [], rejoins=True, taken="cast-off")
    made = room.knit((room.piece("front", 40, 30, openings=(pocket,)),))
    assert st.CloseCentre(8, 4, 11) in made.steps()
    assert made.edge("front", "end") == (40,)


def test_a_vent_off_the_centre_closes_inwards(room: Any) -> None:
    vent = opening(
        room, 2, 22, -9, 2, [ShapingPhrase((9,), (1,), 1)], [ShapingPhrase((9,), (1,), 1)], name="vent", width=0, rejoins=True
    )
    made = room.knit((room.piece("skirt", 40, 32, openings=(vent,)),))
    assert not any(isinstance(s, st.CastOnBetween) for s in made.steps())
    assert made.edge("skirt", "end") == (40,)


def test_a_neck_goes_to_the_top_while_the_raglan_goes_on(room: Any) -> None:
    raglan = (room.run(0, 20, name="side"), room.run(20, 60, ShapingPhrase((2,), (-1,), 19), name="raglan", way=FULL))
    edges = [
        ShapingPhrase((1,), (-3,), 1),
        ShapingPhrase((2,), (-2,), 2),
        ShapingPhrase((3,), (-1,), 1),
        ShapingPhrase((2,), (-1,), 2),
    ]
    neck = opening(room, 44, 60, -3, 6, edges, edges, name="neck", width=26)
    made = room.knit((room.piece("front", 84, 60, left=raglan, openings=(neck,), end_way="waste"),))
    knit = made.paragraph("Knit and shape")
    assert st.Repeat((st.KnitRows(2), st.Decrease("both ends", 1, 3)), 11) in knit or any(
        r.body == (st.KnitRows(2), st.Decrease("both ends", 1, 3)) for r in repeats(knit)
    )
    assert made.edge("front", "raglan") == (40,)
    half = made.paragraph("Right half")
    assert len(half) <= 22
    assert any(st.CastOffAtCarriage(2) in r.body and st.Decrease("right end", 1, 3) in r.body for r in repeats(half))


def test_a_v_neck_takes_the_odd_stitch_of_the_centre(room: Any) -> None:
    slope = [ShapingPhrase((2,), (-1,), 8)]
    neck = opening(room, 20, 40, 0, 1, slope, slope, name="neck", width=17)
    made = room.knit((room.piece("front", 41, 40, openings=(neck,), parity="odd", end_way="waste"),))
    assert st.NeedlesToWork(-20, 20, 41) in made.steps()
    assert st.CentreToWaste(1, 0, 0, "neck centre") in made.steps()
    assert made.edge("front", "shoulder left") == (12,)
    assert made.edge("front", "shoulder right") == (12,)


def test_a_wedge_over_a_parting_is_held_on_in_both_parts(room: Any) -> None:
    wedge = SizedWedge("shoulders", "both", 30, (4, 4, 4, 4, 3), room.here)
    neck = opening(room, 34, 40, -6, 12, [], [], name="neck")
    made = room.knit((room.piece("back", 50, 40, wedges=(wedge,), openings=(neck,), end_way="waste"),))
    assert made.edge("back", "shoulder left") == (19,)


# ----------------------------------------------------------------- slots, fabrics, spreading


def test_a_thumb_is_hung_on_its_slot(room: Any) -> None:
    slot = SizedSlot("thumb", 20, 4, 11, "waste", room.here)
    hand = room.piece("hand", 40, 40, slots=(slot,))
    edges = (EdgeName("hand", "thumb"), EdgeName("hand", "thumb upper"))
    picked = tuple(PickUp(edge, "whole", 8, 8, 4.0) for edge in edges)
    thumb = room.piece("thumb", 16, 20, start_way="along", start_along=edges, start_pick_ups=picked)
    made = room.knit((hand, thumb))
    assert st.SlotOnWaste(8, 4, 11, "thumb", 40) in made.steps()
    assert st.PickUpAlong("hand", "thumb upper", "whole", 8, 0, 7, "purl", "") in made.steps(block=1)
    assert made.results[0].open_edges == ()
    assert made.edge("thumb", "end") == (16,)


def test_a_column_of_buttonholes_is_one_repeat(room: Any) -> None:
    column = tuple(SizedSlot("buttonhole", row, 14, 15, "cast-off", room.here) for row in range(4, 40, 8))
    made = room.knit((room.piece("front", 40, 44, slots=column),))
    knit = made.paragraph("Knit and shape")
    assert kinds(knit) == ["KnitTo", "Now", "SlotClosed", "Repeat", "Now", "KnitTo", "Now"]
    assert knit[3] == st.Repeat((st.KnitRows(8), st.SlotClosed(2, 14, 15, 25)), 4)


def test_an_eyelet_is_moved_towards_the_centre(room: Any) -> None:
    column = tuple(SizedSlot("eye", row, at, at, "eyelet", room.here) for row, at in ((4, 14), (10, -15)))
    made = room.knit((room.piece("front", 40, 20, slots=column),))
    assert [s for s in made.steps() if isinstance(s, st.EyeletAt)] == [st.EyeletAt(14, "left"), st.EyeletAt(-15, "right")]


def test_a_crown_is_halved_twice_and_gathered(room: Any) -> None:
    crown = (
        room.run(0, 20),
        room.run(20, 20, ShapingPhrase((0,), (-10,), 1), across=True),
        room.run(20, 26),
        room.run(26, 26, ShapingPhrase((0,), (-5,), 1), across=True),
    )
    made = room.knit((room.piece("hat", 40, 26, left=crown, end_way="gathered"),))
    spread = [s for s in made.steps() if isinstance(s, st.SpreadEvenly)]
    assert [(s.first, s.last, s.changed) for s in spread] == [(-10, 9, "two together"), (-5, 4, "two together")]
    assert made.edge("hat", "end") == (10,)
    assert kinds(made.paragraph("Finish")) == ["BreakOff", "GatherAll"]


def test_gathers_let_out_leave_empty_needles(room: Any) -> None:
    runs = (room.run(0, 10), room.run(10, 10, ShapingPhrase((0,), (7,), 1), across=True), room.run(10, 30))
    made = room.knit((room.piece("frill", 40, 30, left=runs),))
    assert made.edge("frill", "end") == (54,)


def test_a_waist_in_rib_is_latched_when_its_last_row_is_knitted(room: Any) -> None:
    zone = SizedZone("rib", 10, 20, 0, -1, room.here)
    made = room.knit((room.piece("back", 40, 30, zones=(zone,)),))
    knit = [s for s in made.paragraph("Knit and shape") if not isinstance(s, st.Now)]
    assert knit == [
        st.KnitTo(10),
        st.UseYarnStep("wool", "2"),
        st.KnitTo(20),
        st.LatchRib(3, 1, 10),
        st.UseYarnStep("wool", "4"),
        st.KnitTo(30),
    ]


def test_a_rib_is_latched_before_its_width_parts_and_again_after(room: Any) -> None:
    zone = SizedZone("rib", 10, 30, 0, -1, room.here)
    neck = opening(room, 20, 40, -4, 8, [], [], name="neck")
    made = room.knit((room.piece("back", 40, 40, zones=(zone,), openings=(neck,)),))
    # The stitches of the centre leave it at the parting: their columns are latched up before.
    assert [s for s in made.steps() if isinstance(s, st.LatchInStages)] == [st.LatchInStages(3, 1, (20, 30), "disturbed")]
    latched = [(m.slot, m.rows, m.goes_on) for m in made.works[0].blocks[0].operations if isinstance(m, op.LatchUp)]
    wales = rib_slots(-20, 19, 3, 1)
    beside = rib_slots(-20, -5, 3, 1) + rib_slots(4, 19, 3, 1)
    assert sorted(latched) == sorted([*((x, 10, False) for x in wales), *((x, 10, True) for x in beside)])
    assert st.UseYarnStep("wool", "2") in made.paragraph("Return to the left half")


def test_a_panel_is_latched_within_its_needles(room: Any) -> None:
    zone = SizedZone("rib", 0, 14, -14, -5, room.here)
    made = room.knit((room.piece("back", 40, 20, zones=(zone,)),))
    assert st.LatchPanel(3, 1, 14, -14, -5) in made.steps()
    assert any(made.results[0].fabrics[0].faces)


def test_ribs_within_a_repeat_change_yarn_each_time(room: Any) -> None:
    zone = SizedZone("rib", 10, 14, 0, -1, room.here)
    made = room.knit((room.piece("scarf", 40, 30, zones=(zone,), repeats=(SizedRepeat(10, 18, 5, room.here),)),))
    (again,) = repeats(made.steps())
    assert kinds(again.body) == ["UseYarnStep", "KnitRows", "LatchRib", "UseYarnStep", "KnitRows"]
    assert made.paragraph("Knit and shape")[-1] == st.Now(40, 30 + 4 * 8, "right")


# ----------------------------------------------------------------- edges, starts, bands


def test_an_edging_knitted_first_is_below_row_0(room: Any) -> None:
    runs = (room.run(0, 30, name="side"),)
    made = room.knit((room.piece("back", 40, 30, left=runs, start_edging="hem", edging_rows=12),))
    assert [b.name for b in made.plans[0].blocks] == ["back"]
    assert [type(s).__name__ for s in made.paragraph("Cast on")][-5:] == ["Now", "LatchRib", "UseYarnStep", "SetRowCounter", "Now"]
    assert made.edge("back", "side") == (30,)


def test_two_stitches_go_at_once_and_a_last_one_alone(room: Any) -> None:
    runs = (room.run(0, 30, ShapingPhrase((4,), (-2,), 4), ShapingPhrase((4,), (-1,), 1), way=TWO),)
    made = room.knit((room.piece("sleeve", 40, 30, left=runs),))
    assert repeats(made.steps())[0] == st.Repeat((st.KnitRows(4), st.Decrease("both ends", 2, 3)), 4)
    assert made.edge("sleeve", "end") == (22,)


def test_two_at_once_with_one_prong_go_one_after_the_other(room: Any) -> None:
    runs = (room.run(0, 30, ShapingPhrase((4,), (-2,), 4), way=ShapingWay("fashioned", 1, 2)),)
    made = room.knit((room.piece("sleeve", 40, 30, left=runs),))
    assert repeats(made.steps())[0].body[1] == st.Decrease("both ends", 2, 0)


def asymmetric(room: Any, side: str) -> Any:
    """A front whose inner edge slopes and whose outer one has an armhole; casting off needs the carriage at the edge."""
    late = 1 if side == "left" else 0
    armhole = (
        room.run(0, 20, name="side"),
        room.run(
            20, 50, ShapingPhrase((late,), (-4,), 1), ShapingPhrase((2,), (-2,), 2), ShapingPhrase((3,), (-1,), 3), name="armhole"
        ),
    )
    slope = (room.run(0, 50, ShapingPhrase((5,), (-1,), 6), name="front", way=FULL),)
    left, right = (armhole, slope) if side == "left" else (slope, armhole)
    return room.piece(f"{side} front", 40, 50, left=left, right=right)


def test_a_front_and_its_mirror_image(room: Any) -> None:
    made = room.knit((asymmetric(room, "right"), asymmetric(room, "left")))
    for front, block in (("right front", 0), ("left front", 1)):
        assert made.edge(front, "armhole") == (30,)
        assert made.edge(front, "end") == (40 - 11 - 6,)
        assert st.EdgeIs("armhole", front.split()[0], 20, 50) in made.steps(block=block)
        assert [s for s in made.steps(block=block) if isinstance(s, st.MarkEdges)] == []


def test_edges_named_apart_but_shaped_alike_are_shaped_in_one_sentence(room: Any) -> None:
    shaping = (ShapingPhrase((6,), (-1,), 4),)
    left, right = ((room.run(0, 40, *shaping, name=name),) for name in ("one", "other"))
    made = room.knit((room.piece("panel", 40, 40, left=left, right=right),))
    assert repeats(made.steps()) == [st.Repeat((st.KnitRows(6), st.Decrease("both ends", 1, 0)), 4)]


def test_a_band_with_buttonholes_is_latched_below_and_above_them(room: Any) -> None:
    right = (room.run(0, 40, name="edge"),)
    piece = room.piece("front", 30, 40, left=(room.run(0, 40),), right=right)
    holes = tuple(SizedSlot("hole", 4, at, at + 1, "cast-off", room.here) for at in (-12, -4, 6))
    along = (EdgeName("front", "edge"),)
    sized = SizedBand("button band", 30, 8, (PickUp(along[0], "whole", 30, 41, 13.0),), room.here, holes)
    made = room.knit((piece,), bands=((Band("button band", "welt", along, room.here, (3,), 2), sized),))
    knit = made.paragraph("Knit", block=1)
    assert kinds(knit) == [
        *("UseYarnStep", "SetRowCounter", "KnitTo", "Now", "LatchRib", "SlotClosed", "SlotClosed", "SlotClosed"),
        *("KnitTo", "Now", "LatchRib"),
    ]
    assert made.edge("button band", "end") == (30,)


def test_joins_carry_how_and_how_much_longer(room: Any) -> None:
    one, other = (room.piece(name, 40, rows, left=(room.run(0, rows, name="side"),)) for name, rows in (("one", 36), ("other", 30)))
    names = (EdgeName("one", "side"),), (EdgeName("other", "side"),)
    join = EdgeJoin(*names, (0.5,), room.here, (2.0,), "gathered")
    sized = SizedJoin(*names, 36, 30, 12.0, 10.0, 0.5, room.here, 2.0, "gathered")
    made = room.knit((one, other), joins=((join, sized),))
    assert {(sewn.easing_mm, sewn.longer_mm, sewn.way) for sewn in made.works[0].joins} == {(5, 20, "gathered")}


def test_all_sizes_keep_one_structure(room: Any) -> None:
    def front(rounds: int, gap: int) -> Any:
        raglan = (room.run(0, 20, name="side"), room.run(20, 60, ShapingPhrase((2,), (-1,), rounds), name="raglan", way=FULL))
        edges = [ShapingPhrase((1,), (-3,), 1), ShapingPhrase((gap,), (-1,), 3)]
        return room.piece(
            "front", 66, 60, left=raglan, openings=(opening(room, 44, 60, -3, 6, edges, edges, name="neck", width=18),)
        )

    made = room.knit((front(19, 4),), (front(18, 4),), (front(14, 4),), (front(17, 6),))
    halves = [made.paragraph("Right half", size) for size in range(4)]
    found = [[s for s in half if isinstance(s, st.Together)] for half in halves]
    assert [[t.title for t in one.tracks] for (one,) in found] == [[said("outer-edge"), "neck"]] * 4
    # Each edge is told by itself, so that the one has the same sentences whatever the other does meanwhile.
    neck = [next(t.steps for t in one.tracks if t.title == "neck") for (one,) in found]
    assert len({tuple(shape(s) for s in steps if not isinstance(s, st.KnitRows)) for steps in neck}) == 1
    assert [[s.times for s in steps if isinstance(s, st.Repeat)] for steps in neck] == [[1, 3], [1, 3], [1, 3], [1, 2]]


def test_one_size_alone_is_told_row_by_row(room: Any) -> None:
    raglan = (room.run(0, 20, name="side"), room.run(20, 60, ShapingPhrase((2,), (-1,), 19), name="raglan", way=FULL))
    edges = [ShapingPhrase((1,), (-3,), 1), ShapingPhrase((4,), (-1,), 3)]
    front = room.piece("front", 66, 60, left=raglan, openings=(opening(room, 44, 60, -3, 6, edges, edges, name="neck", width=18),))
    alone, among = room.knit((front,)), room.knit((front,), (front,))
    assert not any(isinstance(s, st.Together) for s in alone.paragraph("Right half", 0))
    assert any(isinstance(s, st.Together) for s in among.paragraph("Right half", 0))


def marked(made: Any) -> list[st.Step]:
    return [step for step in made.steps() if isinstance(step, st.MarkEdges)]


def joined(room: Any, *edges: str) -> tuple[tuple[EdgeJoin, SizedJoin], ...]:
    """Each edge of the front sewn to itself: all that counts here is that it is named."""
    found = []
    for edge in edges:
        names = ((EdgeName("front", edge),), (EdgeName("front", edge),))
        sized = SizedJoin(*names, None, None, 10.0, 10.0, 0.0, room.here, 0.0, "sewn")
        found.append((EdgeJoin(*names, (0.0,), room.here, None, "sewn"), sized))
    return tuple(found)


def test_an_edge_that_is_looked_for_is_marked_at_its_own_end(room: Any) -> None:
    left = (room.run(0, 20, name="side"), room.run(20, 40, name="armhole_left"))
    right = (room.run(0, 20, name="side"), room.run(20, 40, name="armhole_right"))
    front = (room.piece("front", 40, 40, left=left, right=right),)
    assert marked(room.knit(front)) == []
    only_left = room.knit(front, joins=joined(room, "armhole_left"))
    assert marked(only_left) == [st.MarkEdges("armhole_left", "left end")]
    both = room.knit(front, joins=joined(room, "side"))
    assert marked(both) == [st.MarkEdges("side", "both ends", "end")]


def test_an_edge_of_one_name_is_marked_once(room: Any) -> None:
    runs = (room.run(0, 10, name="side"), room.run(10, 20, name="gusset"), room.run(20, 40, name="gusset"))
    made = room.knit((room.piece("front", 40, 40, left=runs),), joins=joined(room, "side", "gusset right"))
    assert marked(made) == [st.MarkEdges("side", "left end", "end"), st.MarkEdges("gusset", "right end")]
