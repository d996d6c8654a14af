"""Bobbins of a picture: every end that begins in it, in order, long enough."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.bed.by_hand import rows
from tests.proof.charted_by_hand import BEGIN, DESIGN, END, HERE, PLACED, SIZED, garment, key, knitted
from walewright.bed import KnitFabric
from walewright.design.model import Chart, Design
from walewright.knit.operations import PictureRow, UseYarn
from walewright.proof.bobbins import SPARE, TAIL_CM, bobbins
from walewright.proof.model import BobbinUse
from walewright.proof.yarn import loop_cm

SPOT = Chart("spot", ("nn", "nn"), (key("n", "knit", yarn="navy"),), 0, 0, 0, True, HERE)
DRAWN: Design = replace(DESIGN, charts=(SPOT,))
AT = replace(PLACED, chart="spot", fabric="", area="panel", from_row=2, to_row=6, first=-2, last=1, start=-2)


def picture() -> KnitFabric:
    blocks = (("wool", -6, -3), ("navy", -2, 1), ("wool", 2, 5))
    drawn = [PictureRow("left" if i % 2 == 0 else "right", "4", blocks) for i in range(4)]
    return knitted([*BEGIN, *rows(2, "left"), *drawn, *rows(4, "left"), *END])


def found(from_row: int = 2) -> tuple[BobbinUse, ...]:
    return bobbins(DRAWN, garment(replace(SIZED, charts=(replace(AT, from_row=from_row),))), {"cloth": picture()})


def test_each_end_that_begins_there_has_a_bobbin() -> None:
    """The wool in use at the carriage's side goes on; the block beyond the spot and the spot itself need ends of their own."""
    uses = found()
    assert [(u.piece, u.chart, u.yarn, u.number, u.first, u.row) for u in uses] == [
        ("cloth", "spot", "wool", 1, "L 6", 3),
        ("cloth", "spot", "navy", 2, "L 2", 3),
    ]


def test_it_is_told_which_block_it_is_and_when_it_hangs() -> None:
    navy = found()[1]
    assert (navy.first, navy.last, navy.row, navy.last_row, navy.rests) == ("L 2", "R 2", 3, 6, ())
    blocks = (("wool", -6, -3), ("navy", -2, 1), ("wool", 2, 5))
    whole = (("wool", -6, 5),)
    drawn = [PictureRow("left" if i % 2 == 0 else "right", "4", whole if i in (1, 2) else blocks) for i in range(4)]
    made = knitted([*BEGIN, *rows(2, "left"), *drawn, *rows(4, "left"), *END])
    uses = bobbins(DRAWN, garment(replace(SIZED, charts=(AT,))), {"cloth": made})
    assert [u.rests for u in uses if u.yarn == "navy"] == [((4, 5),)]


def test_it_is_long_enough_for_its_stitches_and_two_tails() -> None:
    plain = DRAWN.fabric("plain")
    navy = found()[1]
    assert navy.metres == pytest.approx((16 * loop_cm(DRAWN, plain) + 2 * TAIL_CM) * (1 + SPARE) / 100)


def test_without_a_picture_there_are_none() -> None:
    plain = replace(DRAWN, charts=(replace(SPOT, picture=False),))
    assert bobbins(plain, garment(replace(SIZED, charts=(AT,))), {"cloth": picture()}) == ()
    assert bobbins(DRAWN, garment(replace(SIZED, charts=())), {"cloth": picture()}) == ()


def test_ends_that_begin_before_the_picture_are_not_wound() -> None:
    assert found(from_row=4) == ()


def test_the_end_that_knits_on_after_the_picture_is_not_wound() -> None:
    """Begun with the picture or before it: the ball in the carriage has it."""
    blocks = (("wool", -6, -3), ("navy", -2, 1), ("wool", 2, 5))
    drawn = [PictureRow("left" if i % 2 == 0 else "right", "4", blocks) for i in range(4)]
    begun = [UseYarn("navy", "4"), *rows(2, "left"), UseYarn("wool", "4"), *drawn, *rows(4, "left"), *END]
    made = knitted([*BEGIN, *begun])
    uses = bobbins(DRAWN, garment(replace(SIZED, charts=(AT,))), {"cloth": made})
    assert [(u.yarn, u.first, u.number) for u in uses] == [("wool", "L 6", 1), ("navy", "L 2", 2)]


def test_what_its_yarn_wraps_in_its_first_row_is_not_of_its_block() -> None:
    """A needle beyond the block that the yarn is laid around, and one within it that is cast off in the same row."""
    made = picture()
    (at, block) = next((n, c) for n, c in enumerate(made.courses) if c.yarn == "navy")
    beyond = replace(block, kind="wrap", first=block.last + 1, last=block.last + 1, count=1)
    within = replace(block, kind="cast off", last=block.first, count=1)
    courses = (*made.courses[: at + 1], beyond, within, *made.courses[at + 1 :])
    found = bobbins(DRAWN, garment(replace(SIZED, charts=(AT,))), {"cloth": replace(made, courses=courses)})
    (navy,) = (use for use in found if use.yarn == "navy")
    assert (navy.first, navy.last, navy.row, navy.last_row) == ("L 2", "R 2", 3, 6)
    plain = DRAWN.fabric("plain")
    assert navy.metres == pytest.approx(((16 + 2) * loop_cm(DRAWN, plain) + 2 * TAIL_CM) * (1 + SPARE) / 100)
