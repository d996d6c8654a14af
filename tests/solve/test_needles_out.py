"""Needles out of work, counted: at places left and right of the centre, and every so many from the mark on to both sides."""

from __future__ import annotations

import pytest

from tests.solve.tiny import tiny
from walewright.counted.model import SizedNeedlesOut

PIECE = """\
piece back in plain{more}
    levels hem 0 cm, low 6 cm, high 12 cm, top 20 cm
    start {start} cm wide with e-wrap
    needles out {where} from low to high
    end cast off
"""


def out(where: str, start: int = 16, more: str = "", mirror: bool = False) -> SizedNeedlesOut:
    text = PIECE.format(where=where, start=start, more=more)
    if mirror:
        text += "piece front in plain, mirror of back\n"
    made = tiny(text)
    piece = made.garments[0].pieces[1 if mirror else 0]
    (found,) = piece.needles_out
    assert (found.from_row, found.to_row) == (piece.row("low"), piece.row("high"))
    return found


@pytest.mark.parametrize(
    ("where", "slots"),
    [
        ("at 3 cm right of centre", (3,)),
        ("at 3 cm left of centre", (-4,)),
        ("at 0 cm right of centre", (0,)),
        ("at 3.9 cm right of centre", (3,)),
        ("at 3.9 cm left of centre", (-4,)),
        ("at 4 cm left of centre and 2 cm right of centre", (-5, 2)),
        ("at 2 cm right of centre and 4 cm left of centre", (-5, 2)),
    ],
)
def test_a_place_is_the_needle_that_it_lies_on(where: str, slots: tuple[int, ...]) -> None:
    assert out(where).slots == slots
    assert out(where).every == 0


@pytest.mark.parametrize(("side", "slot"), [("right", 3), ("left", -3)])
def test_beside_a_centre_stitch_it_is_counted_from_the_middle_of_that(side: str, slot: int) -> None:
    """Which is half a stitch right of the mark."""
    assert out(f"at 3 cm {side} of centre", 17, ", centre stitch").slots == (slot,)


@pytest.mark.parametrize(
    ("every", "start", "slots"),
    [
        ("3rd", 16, (-5, -2, 1, 4)),
        ("4th", 16, (-6, -2, 2)),
        # Two stitches stand between a needle out and the edge, at the least.
        ("4th", 14, (-2, 2)),
        ("4th", 18, (-6, -2, 2, 6)),
        ("5th", 16, (-3, 2)),
    ],
)
def test_every_so_many_begin_half_as_many_from_the_mark(every: str, start: int, slots: tuple[int, ...]) -> None:
    found = out(f"every {every}", start)
    assert (found.slots, found.every) == (slots, int(every[0]))


@pytest.mark.parametrize(
    ("where", "slots"), [("every 4th", (-6, -2, 2)), ("every 5th", (-3, 2)), ("at 3 cm left of centre", (-4,))]
)
def test_in_a_mirror_image_they_are_counted_from_the_other_side(where: str, slots: tuple[int, ...]) -> None:
    assert out(where).slots == slots
    assert out(where, mirror=True).slots == tuple(sorted(-1 - slot for slot in slots))
