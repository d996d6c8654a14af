"""Every measurement of the body that a shipped table has is drawn, each by itself."""

from __future__ import annotations

import csv
import itertools
import re
from pathlib import Path

import pytest

from walewright import languages
from walewright.figures.bodies import SIDE, TAKEN, taken
from walewright.world import shipped_path

GUIDE = languages.printed("english").guide
OF_NO_BODY = {"finished_chest"}


def rows() -> set[str]:
    folder = Path(shipped_path("patterns", "tables/women.csv")).parent
    return {row["measurement"] for file in folder.glob("*.csv") for row in csv.DictReader(file.open(encoding="utf-8"))}


def test_every_row_of_the_shipped_tables_is_drawn() -> None:
    assert rows() - OF_NO_BODY == set(TAKEN)


@pytest.mark.parametrize("measure", sorted(TAKEN))
def test_a_drawing_says_what_it_shows_and_stays_on_its_paper(measure: str) -> None:
    drawn = taken(GUIDE, measure, "Somewhere")
    assert drawn is not None
    assert drawn.title.endswith(": Somewhere")
    body, line = drawn.strokes
    assert line.width > body.width
    for stroke in drawn.strokes:
        for point in re.findall(r"[ML](-?[\d.]+) (-?[\d.]+)", stroke.data):
            assert all(0 <= float(part) <= SIDE for part in point), measure


def test_no_two_measurements_are_drawn_alike() -> None:
    lines = {measure: taken(GUIDE, measure, "") for measure in TAKEN}
    for one, other in itertools.combinations(lines, 2):
        assert lines[one] != lines[other], (one, other)


def test_what_is_of_no_body_is_not_drawn() -> None:
    assert taken(GUIDE, "finished_chest", "") is None
