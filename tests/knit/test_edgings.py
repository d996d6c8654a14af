"""Edgings of every kind, knitted first and hung on after; what hands do for them; the ways off the bed; links."""

from __future__ import annotations

from itertools import pairwise
from typing import Any

import pytest

from walewright.counted.model import PickUp, SizedBand, SizedJoin, SizedOpening
from walewright.design.model import Band, EdgeJoin, EdgeName, Fabric, Origin
from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.dial import HEM, LINKING, Looser, looser
from walewright.knit.hands import perform
from walewright.knit.lengths import tail_cm
from walewright.knit.state import State

PLAIN = Fabric("plain", "stocking stitch", 0, "wool", "4", 20, 30, 10, 10, 0, Origin("here"))
NEEDLES = st.NeedlesToWork(-8, 7, 16)


def cast_on(room: Any, edging: str, way: str = "waste", start: int = 16, rows: int = 6) -> tuple[st.Step, ...]:
    """The edging's sentences: what follows is the piece's own counter."""
    made = room.knit((room.piece("back", start, 20, start_way=way, start_edging=edging, edging_rows=rows),))
    steps: tuple[st.Step, ...] = made.paragraph("Cast on")
    assert steps[-2:] == (st.SetRowCounter(0), st.Now(start, 0, "right"))
    return steps[:-2]


def band(room: Any, edging: str, stitches: int = 20, rows: int = 6) -> Any:
    along = (EdgeName("back", "side"),)
    sized = SizedBand("band", stitches, rows, (PickUp(along[0], "left", stitches, 30, 10.0),), room.here)
    piece = room.piece("back", 30, 30, left=(room.run(0, 30, name="side"),))
    work = room.plan if edging == "mock band" else room.knit
    return work((piece,), bands=((Band("band", edging, along, room.here), sized),))


def passes(steps: tuple[st.Step, ...]) -> list[str]:
    """The sides that the carriage goes to, from the first step on."""
    state, found = State("back"), list[str]()
    for step in steps:
        made, state = perform(state, step)
        found += (m.to for m in made if isinstance(m, op.Pass))
    return found


# ----------------------------------------------------------------- knitted first


def test_a_folded_hem_is_knitted_from_waste_yarn_and_hung_up(room: Any) -> None:
    steps = cast_on(room, "fold")
    # 8 rows of waste yarn, the ravel cord's, 13 of the hem and the one that joins it: from the left to the right.
    assert steps == (
        st.CarriageAt("left"),
        NEEDLES,
        st.WasteStart(8, "comb"),
        st.UseYarnStep("wool", "3"),
        st.SetRowCounter(0),
        st.KnitTo(6),
        st.Now(16, 6, "right"),
        st.UseYarnStep("wool", "7"),
        st.KnitTo(7),
        st.Now(16, 7, "left"),
        st.UseYarnStep("wool", "4"),
        st.KnitTo(13),
        st.Now(16, 13, "left"),
        st.FoldUp(16, "the same needles", 16),
        st.UseLooser("wool", "6", "4", (2,)),
        st.KnitTo(14),
        st.Now(16, 14, "right"),
        st.UseYarnStep("wool", "4"),
    )
    assert passes(steps)[-1] == "right"


def test_a_picot_hem_folds_along_its_eyelets(room: Any) -> None:
    assert cast_on(room, "points", "hand waste", 17)[2:] == (
        st.WasteStart(8, "by hand"),
        st.UseYarnStep("wool", "4"),
        st.SetRowCounter(0),
        st.KnitTo(6),
        st.Now(17, 6, "left"),
        st.PicotRow(),
        st.KnitTo(12),
        st.Now(17, 12, "left"),
        st.FoldUp(17, "the same needles", 17),
        st.UseLooser("wool", "6", "4", (2,)),
        st.KnitTo(13),
        st.Now(17, 13, "right"),
        st.UseYarnStep("wool", "4"),
    )


def test_a_mock_rib_takes_its_needles_out_before_the_waste_yarn_and_back_at_the_fold(room: Any) -> None:
    steps = cast_on(room, "mock", start=17)
    assert steps[1:4] == (st.NeedlesToWork(-8, 8, 17), st.EveryOutOfWork(2, 9), st.WasteStart(8, "comb"))
    assert steps[-6:] == (
        st.Now(9, 12, "left"),
        st.FoldUp(9, "all needles", 17),
        st.UseLooser("wool", "6", "4", (2,)),
        st.KnitTo(13),
        st.Now(17, 13, "right"),
        st.UseYarnStep("wool", "4"),
    )


def test_a_rolled_edge_is_plain_from_a_closed_one(room: Any) -> None:
    assert cast_on(room, "roll", "e-wrap") == (
        st.CarriageAt("right"),
        NEEDLES,
        st.UseYarnStep("wool", "4"),
        st.ClosedStart("e-wrap"),
        st.SetRowCounter(0),
        st.KnitTo(6),
        st.Now(16, 6, "right"),
    )


def test_a_striped_edging_has_its_stripes(room: Any) -> None:
    steps = cast_on(room, "bars", "e-wrap")
    assert steps[5] == st.StartStripes("lined", (("wool", 1), ("navy", 1)), "4", ())
    assert steps[-2:] == (st.StopStripes("lined"), st.UseYarnStep("wool", "4"))


def test_waste_yarn_by_hand_needs_no_edging(room: Any) -> None:
    made = room.plan((room.piece("back", 16, 20, start_way="hand waste"),))
    assert [s for s in made.steps() if isinstance(s, st.WasteStart)] == [st.WasteStart(8, "by hand")]
    casts = [m for m in made.works[0].blocks[0].operations if isinstance(m, op.CastOn)]
    assert casts == [op.CastOn("e-wrap", -8, 7)]


# ----------------------------------------------------------------- hung on after


def test_a_folded_band_hangs_its_first_row_and_is_sewn_off(room: Any) -> None:
    made = band(room, "folded band")
    assert made.paragraph("Knit", block=1) == (
        st.UseYarnStep("wool", "4"),
        st.SetRowCounter(0),
        st.KnitTo(6),
        st.Now(20, 6, "right"),
        st.UseYarnStep("wool", "7"),
        st.KnitTo(7),
        st.Now(20, 7, "left"),
        st.UseYarnStep("wool", "3"),
        st.KnitTo(13),
        st.Now(20, 13, "left"),
        st.FoldUp(20, "the same needles", 20, begun="on loops"),
    )
    # 20 stitches of 2 to the cm are 10 cm wide; three times that.
    assert made.paragraph("Finish", block=1) == (st.BreakOff(30), st.SewOffAll())
    assert made.works[0].blocks[1].operations[-2:] == (op.BreakYarn(30), op.SewOff(-10, 9, "left"))


def test_a_picot_band_folds_after_its_outside(room: Any) -> None:
    kinds = [type(s).__name__ for s in band(room, "picot band", 21).paragraph("Knit", block=1)]
    assert kinds == ["UseYarnStep", "SetRowCounter", "KnitTo", "Now", "PicotRow", "KnitTo", "Now", "FoldUp"]


def test_a_mock_ribbed_band_picks_up_on_the_needles_in_work(room: Any) -> None:
    made = band(room, "mock band", 20)
    hang = made.paragraph("Hang on", block=1)
    # Of 20 needles from L 10 on, the 3rd, 6th ... 18th are out.
    assert hang[2:] == (st.EveryOutOfWork(3, 14), st.PickUpAlong("back", "side", "left", 14, -10, 9, "purl", ""))
    assert made.paragraph("Knit", block=1)[-1] == st.FoldUp(14, "the same needles", 14, begun="on loops")


def test_a_facing_begins_with_its_fold(room: Any) -> None:
    assert band(room, "turning").paragraph("Knit", block=1) == (
        st.UseYarnStep("wool", "7"),
        st.SetRowCounter(0),
        st.KnitTo(1),
        st.Now(20, 1, "left"),
        st.UseYarnStep("wool", "4"),
        st.KnitTo(7),
        st.Now(20, 7, "left"),
    )


@pytest.mark.parametrize("rows", [0, 1])
def test_a_chained_edge_has_one_row(room: Any, rows: int) -> None:
    made = band(room, "chain edge", rows=rows)
    assert made.paragraph("Knit", block=1)[1:] == (st.SetRowCounter(0), st.KnitTo(1), st.Now(20, 1, "left"))
    assert made.paragraph("Finish", block=1) == (st.CastOffAll(), st.BreakOff(20))


def test_a_deep_band_s_end_is_sewn_with_its_tail(room: Any) -> None:
    # 54 rows of 3 to the cm are 18 cm deep; one and a half times that.
    assert band(room, "turning", rows=54).paragraph("Finish", block=1) == (st.CastOffAll(), st.BreakOff(30))


def test_a_band_may_stay_open(room: Any) -> None:
    # To be grafted: 20 stitches of 2 to the cm are 10 cm wide; four times that.
    assert band(room, "open band").paragraph("Finish", block=1) == (st.BreakOff(40), st.OffOnWaste(8, "end"))


# ----------------------------------------------------------------- hands


def test_every_second_needle_out_of_work_is_not_counted() -> None:
    _, state = perform(State("back", side="right"), st.NeedlesToWork(0, 6, 7))
    made, state = perform(state, st.EveryOutOfWork(2, 4))
    assert made == (op.OutOfWork(1, 1), op.OutOfWork(3, 3), op.OutOfWork(5, 5))
    assert state.stitches == 4
    made, state = perform(state, st.FoldUp(4, "all needles", 7))
    # The loop left of an empty needle goes on it; the last has none at its right.
    assert made == (op.IntoWork(1, 1), op.IntoWork(3, 3), op.IntoWork(5, 5), op.HangFeet((1, 3, 5, 6)))
    assert state.stitches == 7


def test_of_two_loops_between_empty_needles_the_second_moves_on() -> None:
    _, state = perform(State("back", side="right"), st.NeedlesToWork(0, 7, 8))
    made, state = perform(state, st.EveryOutOfWork(3, 6))
    assert made == (op.OutOfWork(2, 2), op.OutOfWork(5, 5))
    made, _ = perform(state, st.FoldUp(6, "all needles", 8))
    assert made[-1] == op.HangFeet((0, 2, 3, 5, 6, 7))
    made, after = perform(state, st.FoldUp(6, "the same needles", 6))
    assert made == (op.HangFeet((0, 1, 3, 4, 6, 7)),)
    assert after.stitches == 6


def test_the_last_needle_stays_in_work() -> None:
    _, state = perform(State("back", side="right"), st.NeedlesToWork(0, 5, 6))
    assert perform(state, st.EveryOutOfWork(2, 4))[0] == (op.OutOfWork(1, 1), op.OutOfWork(3, 3))


def test_eyelets_begin_at_the_second_needle_and_leave_the_last() -> None:
    state = State("back", first=-2, last=3, side="right")
    assert perform(state, st.PicotRow())[0] == (op.Transfer(-1, -1, 1), op.Transfer(1, 1, 1))


def test_the_second_piece_to_link_hangs_over_the_first() -> None:
    one = st.HangToLink("front", "shoulder", "right", 20, -10, 9, "knit", "empty needles", "right")
    two = st.HangToLink("back", "shoulder", "left", 20, -10, 9, "purl", "the other piece", "left")
    state = State("link", first=-10, last=9, side="right")
    assert perform(state, one)[0] == (op.PickUpEdge("front", "shoulder", "right", -10, 9, False, "knit", "right"),)
    assert perform(state, two)[0] == (op.PickUpEdge("back", "shoulder", "left", -10, 9, True, "purl", "left"),)


def test_a_carried_yarn_is_said_to_be() -> None:
    assert perform(State("back"), st.UseYarnStep("navy", "4", "carried"))[0] == (op.UseYarn("navy", "4", carried=True),)


# ----------------------------------------------------------------- off the bed


@pytest.mark.parametrize(("stitches", "cm"), [(40, 60), (41, 65), (10, 20), (14, 25), (1, 20)])
def test_tails_are_three_widths_in_steps_of_five_and_never_too_short_to_sew_in(stitches: int, cm: int) -> None:
    assert tail_cm(PLAIN, stitches) == cm


def test_a_piece_is_sewn_off_with_its_tail(room: Any) -> None:
    made = room.knit((room.piece("back", 40, 20, end_way="sewn-off"),))
    assert made.paragraph("Finish") == (st.BreakOff(60), st.SewOffAll())
    assert made.works[0].blocks[0].operations[-2:] == (op.BreakYarn(60), op.SewOff(-20, 19, "right"))


def test_a_gathered_end_has_two_widths_and_an_end_to_hold(room: Any) -> None:
    made = room.knit((room.piece("hat", 40, 20, end_way="gathered"),))
    assert made.paragraph("Finish") == (st.BreakOff(60), st.GatherAll())
    few = room.knit((room.piece("hat", 8, 20, end_way="gathered"),))
    assert few.paragraph("Finish") == (st.BreakOff(30), st.GatherAll())


def seams(made: Any) -> list[tuple[str, str, str, str]]:
    """(edge, edge, way, what kind of edges) of each sentence that joins two edges."""
    steps = joined(made)
    return [
        (*(" + ".join(f"{e.piece} {e.edge}" for e in side) for side in (s.seams[0].one, s.seams[0].other)), s.way, s.edges)
        for s in steps
    ]


def joined(made: Any) -> list[st.JoinEdges]:
    return [s for block in made.plans[0].blocks for _, row in block.paragraphs for s in row if isinstance(s, st.JoinEdges)]


def grafted(room: Any, way: str, *edges: str, **fields: Any) -> Any:
    names = tuple((EdgeName(piece, edge),) for piece, edge in zip(("front", "back"), edges, strict=True))
    joins = ((EdgeJoin(*names, (0.0,), room.here, None, way), SizedJoin(*names, None, None, 10.0, 10.0, 0.0, room.here, 0.0, way)),)
    necks, starts = fields.pop("openings", {}), fields.pop("starts", {})
    pieces = tuple(
        room.piece(
            name,
            40,
            20,
            openings=(necks[name],) if necks else (),
            **{"end_way": "waste", **fields, "start_way": starts.get(name, "e-wrap")},
        )
        for name in ("front", "back")
    )
    return room.knit(pieces, joins=joins)


def test_the_first_side_of_a_graft_keeps_a_tail(room: Any) -> None:
    made = grafted(room, "grafted", "end", "end")
    assert made.paragraph("Finish", block=0)[0] == st.BreakOff(80)
    assert made.paragraph("Finish", block=1)[0] == st.BreakOff(20)


def test_a_graft_to_a_first_row_has_the_tail_of_the_last_one(room: Any) -> None:
    made = grafted(room, "grafted", "start", "end", starts={"front": "waste"})
    assert [made.paragraph("Finish", block=b)[0] for b in (0, 1)] == [st.BreakOff(20), st.BreakOff(80)]
    assert seams(made) == [("front start", "back end", "grafted", "at tail")]
    # After an even number of rows the carriage is at the right, and so is the tail.
    assert joined(made)[0].seams[0].other[0].begin == "right"


def test_a_graft_of_two_first_rows_has_no_tail_to_be_sewn_with(room: Any) -> None:
    made = grafted(room, "grafted", "start", "start", starts={"front": "waste", "back": "waste"}, end_way="cast-off")
    assert [s for b in (0, 1) for s in made.steps(block=b) if isinstance(s, st.BreakOff)] == [st.BreakOff(20)] * 2
    assert seams(made) == [("front start", "back start", "grafted", "no tail")]


def test_halves_that_are_grafted_to_each_other_have_the_tail_of_the_one_named_first(room: Any) -> None:
    """The halves beside an opening end apart, and one of them is sewn to the other."""
    runs = ((room.run(10, 20),), (room.run(10, 20),))
    neck = SizedOpening("neck", 10, 8, 8, runs[0][0], room.here, 20, -4, "waste", False, *runs)
    names = ((EdgeName("sock", "shoulder right"),), (EdgeName("sock", "shoulder left"),))
    sized = SizedJoin(*names, None, None, 8.0, 8.0, 0.0, room.here, 0.0, "grafted")
    sock = room.piece("sock", 40, 20, end_way="waste", openings=(neck,))
    made = room.knit((sock,), joins=((EdgeJoin(*names, (0.0,), room.here, None, "grafted"), sized),))
    off = {s.edge: broken for broken, s in pairwise(made.steps()) if isinstance(s, st.OffOnWaste)}
    # 16 stitches of 2 to the cm: 8 cm, four times.
    assert off == {"shoulder right": st.BreakOff(35), "shoulder left": st.BreakOff(20)}
    # Each half ends with the carriage at its outer end, where the yarn is broken.
    assert joined(made)[0].edges == "at tail"
    assert [side[0].begin for side in (joined(made)[0].seams[0].one, joined(made)[0].seams[0].other)] == ["right", "left"]


SEAMS = [
    ("back", "side", ("front", "side"), {"back": 60, "back welt": 65}),
    ("sleeve", "end", ("back", "side"), {"sleeve": 60, "back welt": 20}),
    ("sleeve", "cap", ("sleeve", "cap"), {"sleeve": 60}),
    ("sleeve", "seam", ("sleeve", "seam"), {"sleeve": 20}),
]


@pytest.mark.parametrize(("piece", "edge", "other", "tails"), SEAMS)
def test_a_seam_begins_with_the_tail_that_hangs_there(
    room: Any, piece: str, edge: str, other: tuple[str, str], tails: dict[str, int]
) -> None:
    """40 cm of seam: along a last edge, above a welt, 3 cm deep, below a last edge; and one at whose ends no yarn is broken.

    Of the two seams at the sides of the back one begins above the welt, the other below the last row."""
    back = room.piece(
        "back", 40, 120, start_way="waste", start_edging="welt", edging_rows=10, left=(room.run(0, 120, name="side"),)
    )
    front = room.piece("front", 40, 120, left=(room.run(0, 120, name="side"),))
    own = (room.run(0, 60, name="seam"), room.run(60, 120, name="cap"))
    sleeve = room.piece("sleeve", 80, 120, left=own)
    names = ((EdgeName(piece, edge),), (EdgeName(*other),))
    sized = SizedJoin(*names, None, None, 40.0, 40.0, 5.0, room.here)
    made = room.plan((back, front, sleeve), joins=((EdgeJoin(*names, (5.0,), room.here), sized),))
    blocks = {block.name: block for block in made.plans[0].blocks}
    broken = {
        name: [s.tail_cm for _, steps in blocks[name].paragraphs for s in steps if isinstance(s, st.BreakOff)] for name in tails
    }
    assert broken == {name: [cm] for name, cm in tails.items()}


def test_what_no_tail_sews_is_sewn_with_a_new_length(room: Any) -> None:
    """A tail hangs at the left end of a chained-off last row, and none at that of one that is gathered with it."""
    pieces = tuple(room.piece(name, 40, 120, left=(room.run(0, 120, name="side"),)) for name in ("front", "back"))
    ends = ((EdgeName("front", "side"),), (EdgeName("back", "side"),))
    sized = SizedJoin(*ends, None, None, 40.0, 40.0, 0.0, room.here)
    chained = room.plan(pieces, joins=((EdgeJoin(*ends, (0.0,), room.here), sized),))
    assert (joined(chained)[0].thread, joined(chained)[0].thread_cm) == ("tail", 0)
    gathered = room.plan(
        tuple(room.piece(name, 40, 120, left=(room.run(0, 120, name="side"),), end_way="gathered") for name in ("front", "back")),
        joins=((EdgeJoin(*ends, (0.0,), room.here), sized),),
    )
    assert (joined(gathered)[0].thread, joined(gathered)[0].thread_cm) == ("new", 60)


def test_a_tail_sews_one_seam(room: Any) -> None:
    names = ((EdgeName("front", "end"),), (EdgeName("back", "end"),))
    joined = (EdgeJoin(*names, (5.0,), room.here), SizedJoin(*names, None, None, 40.0, 40.0, 5.0, room.here))
    made = room.plan((room.piece("front", 80, 20), room.piece("back", 80, 20)), joins=(joined, joined))
    assert [made.paragraph("Finish", block=b)[-1] for b in (0, 1)] == [st.BreakOff(60), st.BreakOff(60)]


def test_linked_ends_are_a_block_of_their_own(room: Any) -> None:
    made = grafted(room, "linked", "end", "end")
    assert [block.name for block in made.plans[0].blocks] == ["front", "back", "front end link"]
    assert made.steps(block=2) == (
        st.CarriageAt("right"),
        st.NeedlesToWork(-20, 19, 40),
        st.HangToLink("front", "end", "whole", 40, -20, 19, "knit", "empty needles", "right"),
        st.HangToLink("back", "end", "whole", 40, -20, 19, "purl", "the other piece", "left"),
        st.UseLooser("wool", "6", "4", (2, 3)),
        st.SetRowCounter(0),
        st.KnitRows(1),
        st.Now(40, 1, "left"),
        st.CastOffAll(),
        st.BreakOff(20),
    )
    assert made.works[0].joins == ()
    assert made.paragraph("Finish", block=0)[0] == st.BreakOff(20)


@pytest.mark.parametrize("end_way", ["waste", "cast-off"])
def test_linked_shoulders_are_two_blocks_crosswise(room: Any, end_way: str) -> None:
    runs = ((room.run(10, 20),), (room.run(10, 20),))
    necks = {
        name: SizedOpening("neck", 10, 8, 8, runs[0][0], room.here, 20, first, "waste", False, *runs)
        for name, first in (("front", -6), ("back", -2))
    }
    made = grafted(room, "linked", "shoulder", "shoulder", openings=necks, end_way=end_way)
    assert [block.name for block in made.plans[0].blocks[2:]] == ["front shoulder right link", "front shoulder left link"]
    hung = [[s for s in made.steps(block=b) if isinstance(s, st.HangToLink)] for b in (2, 3)]
    # The gaps are off the centre, so that the front's left part has 14 stitches and its right one 18; the back's the other way.
    assert [(s.piece, s.part) for s in hung[0]] == [("front", "right"), ("back", "left")]
    assert [(s.piece, s.part) for s in hung[1]] == [("front", "left"), ("back", "right")]
    assert [s.stitches for s in (*hung[0], *hung[1])] == [18, 18, 14, 14]


def test_a_neckband_comes_between_the_shoulders(room: Any) -> None:
    runs = ((room.run(10, 20),), (room.run(10, 20),))
    neck = SizedOpening("neck", 10, 8, 8, runs[0][0], room.here, 20, -4, "waste", False, *runs)
    names = ((EdgeName("front", "shoulder"),), (EdgeName("back", "shoulder"),))
    sized_join = SizedJoin(*names, None, None, 10.0, 10.0, 0.0, room.here, 0.0, "linked")
    along = (EdgeName("front", "neck"), EdgeName("back", "neck"))
    sized = SizedBand("neckband", 20, 6, tuple(PickUp(edge, "whole", 10, 28, 10.0) for edge in along), room.here)
    pieces = tuple(room.piece(name, 40, 20, end_way="waste", openings=(neck,)) for name in ("front", "back"))
    made = room.knit(
        pieces,
        bands=((Band("neckband", "welt", along, room.here), sized),),
        joins=((EdgeJoin(*names, (0.0,), room.here, None, "linked"), sized_join),),
        order=("seam 0", "neckband", "seam 1"),
    )
    names_of = [block.name for block in made.plans[0].blocks[2:]]
    assert names_of == ["front shoulder right link", "neckband", "front shoulder left link"]


# ----------------------------------------------------------------- the dial


@pytest.mark.parametrize(
    ("label", "linked", "hung"),
    [
        ("4", Looser("4", "6", (2, 3)), Looser("4", "6", (2,))),
        ("4..", Looser("4..", "6..", (2, 3)), Looser("4..", "6..", (2,))),
        ("4.5", Looser("4.5", "6.5", (2, 3)), Looser("4.5", "6.5", (2,))),
        ("8.", Looser("8.", "10", (2,)), Looser("8.", "10", (2,))),
        ("9", Looser("9", "10", (1,)), Looser("9", "10", (1,))),
        ("10", Looser("10"), Looser("10")),
        ("12", Looser("12", "14", (2, 3)), Looser("12", "14", (2,))),
        ("B", Looser("B"), Looser("B")),
        ("T4", Looser("T4"), Looser("T4")),
    ],
)
def test_a_setting_so_many_numbers_looser(label: str, linked: Looser, hung: Looser) -> None:
    assert (looser(label, LINKING), looser(label, HEM)) == (linked, hung)


def test_where_labels_are_no_numbers_the_dial_shows_the_next() -> None:
    step = st.UseLooser("wool", "", "B", "")
    assert perform(State("link"), step)[0] == (op.UseYarn("wool", "looser than B"),)
    assert looser("B", HEM).setting == step.setting
