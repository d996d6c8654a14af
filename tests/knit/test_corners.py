"""Inner corners of bands: what is to be drawn in there, told before the cast-off."""

from __future__ import annotations

from typing import Any

import pytest

from tests import in_english
from walewright.counted.model import PickUp, ShapingPhrase, SizedBand, SizedOpening
from walewright.design.model import Band, EdgeName
from walewright.knit import steps as st


def notes(room: Any, flat: int, *phrases: ShapingPhrase, rows: int = 6, arm: float = 10.0) -> list[str]:
    """Of a band, 2 cm deep with 6 rows, round a gap `flat` stitches wide, 2 to the cm, whose edges move by `phrases`."""
    runs = ((room.run(10, 40, *phrases),), (room.run(10, 40, *phrases),))
    neck = SizedOpening("neck", 10, flat, flat, runs[0][0], room.here, 40, -(flat // 2), "waste", False, *runs)
    edge = EdgeName("front", "neck")
    arms = [
        PickUp(edge, part, cm * 2, cm * 2, float(cm)) for part, cm in (("left", arm), ("centre", flat // 2), ("right", arm)) if cm
    ]
    picked = tuple(PickUp(p.edge, p.part, int(p.stitches), int(p.points), p.cm) for p in arms)
    sized = SizedBand("neckband", sum(p.stitches for p in picked), rows, picked, room.here)
    made = room.plan(
        (room.piece("front", 80, 40, end_way="waste", openings=(neck,)),),
        bands=((Band("neckband", "chain edge" if rows == 1 else "folded band", (edge,), room.here), sized),),
    )
    steps = made.paragraph("Finish", block=1)
    assert isinstance(steps[-1], st.BreakOff | st.SewOffAll)
    return [in_english.title(s.text) for s in steps if isinstance(s, st.Say)]


def test_at_a_right_angle_twice_the_depth_is_too_much(room: Any) -> None:
    # 2 cm deep, 2 stitches to the cm: 2 x 2 cm.
    assert notes(room, 24) == [
        "At each of the 2 inner corners of the neck of the front the last row is 8 sts longer than the line it comes to lie on. "
        "Take that in as you cast off: beside the corner 2 sts together, 4 times on each side of it."
    ]
    # 3 cm deep: 12 stitches.
    assert "12 sts longer" in notes(room, 32, rows=9)[0]


def test_a_corner_that_has_not_the_stitches_is_said_to_have_none(room: Any) -> None:
    assert "more than can be drawn in" in notes(room, 14)[0]
    assert "more than can be drawn in" in notes(room, 24, arm=3)[0]


@pytest.mark.parametrize("phrases", [(ShapingPhrase((2,), (-2,), 6),), (ShapingPhrase((1,), (-1,), 12),)])
def test_a_round_or_slanted_edge_has_no_corner(room: Any, phrases: tuple[ShapingPhrase, ...]) -> None:
    assert notes(room, 24, *phrases) == []


def test_nearly_upright_is_a_corner_all_the_same(room: Any) -> None:
    """One stitch outwards in the first 2 cm: 76 degrees, 2 x 2 cm x tan 38 degrees, 6 stitches."""
    assert "6 sts longer" in notes(room, 24, ShapingPhrase((4,), (-1,), 3))[0]


def test_what_has_no_depth_has_no_corners(room: Any) -> None:
    assert notes(room, 24, rows=1) == []


def test_where_the_edge_is_shorter_than_the_band_is_deep_there_is_none(room: Any) -> None:
    assert notes(room, 24, arm=1) == []


def around(room: Any, *phrases: ShapingPhrase) -> list[str]:
    """Of the same band all round an opening 12 cm wide and high, whose edges move by `phrases`."""
    runs = ((room.run(10, 46, *phrases),), (room.run(10, 46, *phrases),))
    hole = SizedOpening("face", 10, 24, 24, runs[0][0], room.here, 46, -12, "waste", True, *runs)
    edge, upper = EdgeName("front", "face"), EdgeName("front", "face upper")
    picked = tuple(PickUp(e, p, 24, 24, 12.0) for e, p in ((edge, "left"), (edge, "centre"), (edge, "right"), (upper, "whole")))
    sized = SizedBand("rim", 96, 6, picked, room.here)
    made = room.plan(
        (room.piece("front", 80, 60, end_way="waste", openings=(hole,)),),
        bands=((Band("rim", "folded band", (edge, upper), room.here), sized),),
    )
    return [in_english.title(s.text) for s in made.paragraph("Finish", block=1) if isinstance(s, st.Say)]


def test_a_band_all_round_an_opening_has_a_corner_at_its_ends_too(room: Any) -> None:
    (note,) = around(room)
    assert "each of the 4 inner corners of the face of the front the last row is 8 sts longer" in note


def test_an_opening_that_narrows_has_none_above(room: Any) -> None:
    """Six stitches inwards on the last 2 cm at each side: under 60 degrees."""
    (note,) = around(room, ShapingPhrase((30,), (0,), 1), ShapingPhrase((1,), (1,), 6))
    assert "each of the 2 inner corners" in note
