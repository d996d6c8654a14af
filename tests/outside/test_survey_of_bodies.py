"""The shipped size tables against a survey of grown people.

Source of the figures in bodies_by_chest.csv: medians by 5 cm of chest, worked out from the US Army survey of 2012 (1986 women, 4082
men; public domain, openICPSR project 120028). They are soldiers, so lean for their chest; upper arms are flexed; shoulders are
measured from bone to bone, and the reach from the spine along the bent arm.
"""

from __future__ import annotations

import csv
from collections.abc import Iterator
from pathlib import Path

import pytest

from walewright.design.reading.tables import SizeTable, size_table

HERE = Path(__file__).parent
TABLES = HERE.parents[1] / "patterns" / "tables"


def shipped(name: str) -> SizeTable:
    return size_table(name, (TABLES / f"{name}.csv").read_text())


def compared(table: str, chest: str, measurement: str, measured: str) -> Iterator[tuple[str, float, float]]:
    """(size, the table's figure, the survey's median of people of that chest)."""
    sex = {"women": "woman", "men": "man"}[table]
    with (HERE / "bodies_by_chest.csv").open(newline="") as file:
        classes = [c for c in csv.DictReader(file) if c["sex"] == sex]
    rows = shipped(table)
    for size, entry in rows.row(chest).items():
        near = [c for c in classes if float(c["low_cm"]) <= entry.middle_cm < float(c["high_cm"])]
        if near and size in rows.row(measurement):
            yield size, rows.row(measurement)[size].middle_cm, float(near[0][measured])


@pytest.mark.parametrize(
    ("table", "chest", "measurement", "measured", "least", "most"),
    [
        ("women", "bust", "upper_arm", "upper_arm_cm", -2.5, 1.0),
        ("men", "chest", "upper_arm", "upper_arm_cm", -1.0, 2.5),
        ("women", "bust", "cross_back", "shoulders_cm", 1.5, 7.5),
        ("men", "chest", "cross_back", "shoulders_cm", -0.5, 5.5),
        ("women", "bust", "centre_back_neck_to_wrist", "spine_to_wrist_cm", -9.5, -7.0),
        ("men", "chest", "centre_back_neck_to_wrist", "spine_to_wrist_cm", -4.0, -2.0),
        ("women", "bust", "back_waist_length", "waist_back_cm", -0.5, 2.5),
    ],
)
def test_a_table_keeps_to_the_bodies_of_its_chest(
    table: str, chest: str, measurement: str, measured: str, least: float, most: float
) -> None:
    """Source: the survey named above. The tables' women have the arms of shorter people: their reach is 7 to 9 cm less."""
    found = list(compared(table, chest, measurement, measured))
    assert len(found) >= 4
    assert [(size, round(said - seen, 2)) for size, said, seen in found if not least <= said - seen <= most] == []


def test_heads_of_grown_people_lie_in_the_published_ranges() -> None:
    """Half a centimetre is what rounding explains.

    Source: the survey named above, and Craft Yarn Council's www.YarnStandards.com, head circumference."""
    heads = shipped("head").row("head")
    with (HERE / "bodies_by_chest.csv").open(newline="") as file:
        for line in csv.DictReader(file):
            entry = heads[line["sex"]]
            assert entry.low_cm - 0.5 <= float(line["head_cm"]) <= entry.high_cm + 0.5, line
