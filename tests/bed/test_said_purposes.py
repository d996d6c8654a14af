"""What a refusal says a needle was wanted for, of every work of hands; and refusals that come second."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from tests.bed.by_hand import refusal, rows
from tests.bed.words import told
from walewright.bed import BedResult
from walewright.knit.operations import (
    BreakYarn,
    CastOn,
    Cross,
    Drop,
    Gather,
    Hold,
    IntoWork,
    LatchUp,
    MoveCarriage,
    OntoWaste,
    OutOfWork,
    PictureRow,
    Release,
    Spread,
    UseYarn,
)

One = Callable[..., BedResult]
START = (MoveCarriage("right"), IntoWork(0, 5), UseYarn("wool", "4"), CastOn("e-wrap", 0, 5), *rows(6, "left"))


@pytest.mark.parametrize(
    ("work", "purpose"),
    [
        (Drop(9, 2), "to let its wale run down"),
        (LatchUp(9, 2), "to be latched up"),
        (Cross(4, 7, 2, "left"), "to be crossed"),
        (Hold(6, 7), "to be held"),
        (OutOfWork(8, 9), "to be pushed back"),
        (Spread(8, 9, 8, (1, 1)), "to have its loop taken off and hung back"),
    ],
    ids=lambda given: type(given).__name__ if not isinstance(given, str) else "",
)
def test_a_needle_out_of_work_is_refused_for_what_it_was_wanted_for(one: One, work: object, purpose: str) -> None:
    made = one(*START, work)
    assert refusal(made) == "not-in-work"
    assert purpose in told(made.faults[0])


def test_a_piece_has_one_end(one: One) -> None:
    """Half of it goes onto waste yarn as its end: what is left of it cannot be gathered to another."""
    made = one(*START, BreakYarn(60), Hold(0, 2), OntoWaste(3, 5, 8, "end"), Release(0, 2), Gather(0, 2))
    assert refusal(made) == "edge-named-twice"


@pytest.mark.parametrize(("blocks", "refused"), [((("wool", 0, 5),), ""), ((("wool", 0, 2), ("navy", 3, 5)), "block-uncrossed")])
def test_blocks_of_a_picture_row_cross_where_there_are_two(
    one: One, blocks: tuple[tuple[str, int, int], ...], refused: str
) -> None:
    made = one(*START, PictureRow("left", "4", blocks, crossed=False), OntoWaste(0, 5, 8, "end"))
    assert ([f.code for f in made.faults if f.code == "block-uncrossed"] or [""]) == [refused]
