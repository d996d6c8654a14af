"""How many tick boxes stand abreast."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from walewright.sheet import html
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


def test_more_than_are_abreast_stand_beneath(pattern: Callable[..., Any]) -> None:
    """A column that is four boxes wide holds nine of them in three rows."""
    sheet = pattern(1).sheet()
    page = html(replace(sheet, parts=(part(9),)))
    (cell,) = re.findall(r'<td class="tick">(.*?)</td>', page)
    assert [row.count("□") for row in cell.split("<br />")] == [4, 4, 1]
