"""Deep ribs in stages, and halves that wait: at which rows, and what hands do there."""

from __future__ import annotations

from typing import Any

import pytest

from walewright.counted.model import ShapingPhrase, SizedOpening, SizedSlot, SizedZone
from walewright.design.model import ShapingWay
from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.parting import MOST_HELD
from walewright.knit.stages import stage_rows

FINE, BULKY = (24, 30), (12, 15)


@pytest.mark.parametrize(
    ("begin", "cuts", "stage", "found"),
    [
        (0, (30,), FINE, (30,)),
        (0, (32,), FINE, (16, 32)),
        (0, (34,), FINE, (18, 34)),
        (0, (80,), FINE, (24, 48, 72, 80)),
        (0, (78,), FINE, (24, 48, 78)),
        (0, (224,), FINE, (24, 48, 72, 96, 120, 144, 168, 192, 216, 224)),
        (0, (108,), BULKY, (12, 24, 36, 48, 60, 72, 84, 96, 108)),
        (10, (20, 64), FINE, (20, 42, 64)),
        (0, (8, 8, 15), BULKY, (8, 15)),
    ],
)
def test_rows_of_stages(begin: int, cuts: tuple[int, ...], stage: tuple[int, int], found: tuple[int, ...]) -> None:
    assert stage_rows(begin, cuts, *stage) == found


@pytest.mark.parametrize("stage", [FINE, BULKY])
def test_no_stage_is_too_deep_and_all_but_the_last_are_even(stage: tuple[int, int]) -> None:
    for rows in range(1, 300):
        found = stage_rows(0, (rows,), *stage)
        deep = [z - a for a, z in zip((0, *found), found, strict=False)]
        assert sum(deep) == rows, rows
        assert max(deep) <= stage[1], rows
        assert all(d % 2 == 0 for d in deep[:-1]), rows


def latched(made: Any) -> list[tuple[int, int, bool]]:
    return [(m.slot, m.rows, m.goes_on) for m in made.works[0].blocks[0].operations if isinstance(m, op.LatchUp)]


def staged(made: Any) -> list[st.Step]:
    return [s for s in made.steps() if isinstance(s, st.LatchInStages | st.LatchPanelInStages | st.LatchRib | st.LatchPanel)]


def test_a_straight_strip_goes_on_from_stage_to_stage(room: Any) -> None:
    made = room.knit((room.piece("strip", 8, 40, fabric="rib"),))
    assert staged(made) == [st.LatchInStages(3, 1, (12, 24, 36, 40))]
    assert latched(made)[:4] == [(-2, 12, False), (1, 12, False), (-2, 12, True), (1, 12, True)]


def test_a_hole_parts_the_stages(room: Any) -> None:
    slot = SizedSlot("hole", 20, 1, 2, "cast-off", room.here)
    made = room.knit((room.piece("strip", 10, 40, fabric="rib", slots=(slot,)),))
    assert staged(made) == [st.LatchInStages(3, 1, (10, 20, 30, 40), "disturbed")]
    # The stitches of R 2 are closed at row 20: its column begins anew in what is cast on there.
    assert [told for told in latched(made) if told[0] == 1] == [(1, 10, False), (1, 10, True), (1, 10, False), (1, 10, True)]
    assert [told[2] for told in latched(made) if told[0] == -2] == [False, True, True, True]


def test_columns_are_latched_up_before_they_fall_out_of_the_width(room: Any) -> None:
    runs = (room.run(0, 40, ShapingPhrase((5,), (-1,), 7)),)
    made = room.knit((room.piece("yoke", 40, 40, fabric="rib", left=runs),))
    (step,) = staged(made)
    assert isinstance(step, st.LatchInStages)
    assert step.sooner == "disturbed"
    # L 20 is an end needle; at row 15 L 18 goes on to L 17, which is the end needle from there on.
    assert [told for told in latched(made) if told[0] in (-20, -17)] == [(-17, 12, False), (-17, 3, True)]
    assert sum(rows for slot, rows, _ in latched(made) if slot == -2) == 40


def test_a_fashioned_edge_disturbs_as_many_columns_as_the_tool_moves(room: Any) -> None:
    runs = (room.run(0, 40, ShapingPhrase((10,), (-1,), 2), way=ShapingWay("fashioned", 3)),)
    made = room.knit((room.piece("yoke", 40, 40, fabric="rib", left=runs),))
    # At row 10 the tool moves L 20 to L 18 on to L 17: that column can be dropped no deeper afterwards.
    assert [told for told in latched(made) if told[0] == -17][:2] == [(-17, 10, False), (-17, 2, False)]
    assert [rows for slot, rows, _ in latched(made) if slot == -14][:1] == [12]


def test_columns_that_come_to_work_are_as_deep_as_they_are(room: Any) -> None:
    runs = (room.run(0, 30, ShapingPhrase((5,), (3,), 2)),)
    made = room.knit((room.piece("yoke", 40, 30, fabric="rib", left=runs),))
    assert sum(rows for slot, rows, _ in latched(made) if slot == -2) == 30
    assert 0 < sum(rows for slot, rows, _ in latched(made) if slot == -23) < 30


def parted(room: Any, rows: int, **fields: Any) -> Any:
    gap = (room.run(20, 20 + rows),)
    neck = SizedOpening("neck", 20, 4, 4, gap[0], room.here, 20 + rows, -2, "waste", left=gap, right=gap)
    return room.knit((room.piece("back", 40, 20 + rows, openings=(neck,), end_way="waste", **fields),))


def test_both_halves_are_latched_up_at_the_rows_named(room: Any) -> None:
    made = parted(room, 14, fabric="rib")
    (step,) = staged(made)
    assert step == st.LatchInStages(3, 1, (10, 20, 34), "disturbed")
    for slot in (-5, 4):
        assert [told for told in latched(made) if told[0] == slot] == [(slot, 10, False), (slot, 10, True), (slot, 14, True)]


@pytest.mark.parametrize(("rows", "cord"), [(MOST_HELD, False), (MOST_HELD + 1, True), (MOST_HELD + 40, True)])
def test_a_half_waits_right_out_or_on_cord(room: Any, rows: int, cord: bool) -> None:
    made = parted(room, rows)
    kinds = [type(s) for s in made.steps()]
    assert (st.PartOnCord in kinds, st.HoldPart in kinds) == (cord, not cord)
    told = [s for s in made.steps() if isinstance(s, st.PartOnCord)]
    assert told == ([st.PartOnCord("left", -20, -3, rows)] if cord else [])
    assert (st.DrawPartsCord("left", -20, -3) in made.steps()) == cord
    assert bool(made.results[0].fabrics[0].corded) == cord


def test_parts_that_rejoin_wait_on_cord_one_after_the_other(room: Any) -> None:
    gap = (room.run(20, 60),)
    vent = SizedOpening("vent", 20, 4, 4, gap[0], room.here, 60, -2, "cast-off", rejoins=True, left=gap, right=gap)
    made = room.knit((room.piece("back", 40, 70, openings=(vent,)),))
    assert [(s.side, s.rows) for s in made.steps() if isinstance(s, st.PartOnCord)] == [("right", 40), ("left", 40)]
    assert sum(isinstance(m, op.DrawCord) for m in made.works[0].blocks[0].operations) == 2


def test_a_panel_beside_it_is_latched_up_in_stages_too(room: Any) -> None:
    zone = SizedZone("rib", 0, 40, -14, -5, room.here)
    made = room.knit((room.piece("back", 40, 40, zones=(zone,)),))
    (step,) = staged(made)
    assert isinstance(step, st.LatchPanelInStages)
    assert (step.first, step.last, step.sooner) == (-14, -5, "")
    assert {slot for slot, *_ in latched(made)} <= set(range(-14, -4))
