"""How many tick boxes stand abreast."""

from __future__ import annotations

import pytest

from walewright.sheet.model import SheetPart
from walewright.sheet.stage import RowLine, Stage, StepLine


def part(*boxes: int, rows: int = 0) -> SheetPart:
    lines = tuple(StepLine((), count, "", "", check=count == 0, sizes="") for count in boxes)
    of_rows = (RowLine((), (), (), rows, "1"),) if rows else ()
    stages = (Stage("", "", lines, of_rows),)
    return SheetPart(
        "skirt", "Skirt", (), (), None, None, stages, piece=False, short=False, headed=False, counted=False, sided=False
    )


@pytest.mark.parametrize(("made", "abreast"), [(part(0), 0), (part(0, 2, 2), 2), (part(0, rows=3), 3), (part(4), 4), (part(9), 4)])
def test_one_a_copy_and_four_at_most(made: SheetPart, abreast: int) -> None:
    assert made.boxes == abreast
