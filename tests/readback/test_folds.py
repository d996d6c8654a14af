"""What is folded up: the garment's first row, which hangs on ravel cord, or that of an edging, which was knitted on loops."""

from __future__ import annotations

import pytest

from tests.readback.test_hands import moves, refused
from walewright.knit import operations as op

STARTED = "Cast on in waste yarn with the comb and knit 2 rows, then 1 row with ravel cord."
HUNG = "Purl side facing, pick up 10 sts along the back side, from bottom to top, on needles L 5 to R 5."
REHUNG = (
    "Purl side facing, hang the 10 loops of the first row of the back on these needles, its edge loop counted, and pull out the"
)
OPEN = (
    "Purl side facing, hang the 10 open loops along the last row of the back, from its left end to its right end, on needles"
    " L 5 to R 5, and take out their waste yarn."
)
FOLD = "Fold the work up in front, towards you, purl sides together, and hang the 10 loops of"
GARMENT = (
    f"{FOLD} the first garment row from left to right, each on the needle that knitted it, and pull out the ravel cord: 10 sts."
)
EDGING = f"{FOLD} the first row of this edging from left to right, each on the needle that knitted it: 10 sts."
BEGUN_ON_LOOPS = (HUNG, f"{REHUNG} ravel cord.", OPEN)


def test_a_start_is_folded_by_the_garments_first_row() -> None:
    made = moves(STARTED, "Knit 4 rows.", GARMENT)
    assert made[-1] == op.HangFeet(tuple(range(-5, 5)))
    assert "no loops were hung on" in refused(STARTED, "Knit 4 rows.", EDGING)


@pytest.mark.parametrize("begun", BEGUN_ON_LOOPS)
def test_what_is_hung_on_is_folded_by_its_own_first_row(begun: str) -> None:
    made = moves(begun, "Knit 4 rows.", EDGING)
    assert made[-1] == op.HangFeet(tuple(range(-5, 5)))
    assert "no ravel cord is there" in refused(begun, "Knit 4 rows.", GARMENT)


def test_open_loops_are_taken_off_their_waste_yarn() -> None:
    assert isinstance(moves(OPEN)[-1], op.PickUpEdge)
    assert refused(OPEN.replace(", and take out their waste yarn", ""))
    assert refused(HUNG.replace("R 5.", "R 5, and take out their waste yarn."))
