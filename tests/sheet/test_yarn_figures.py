"""Yarn as a buyer reads it: whole grams that add up, whole balls, and what they are for."""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.whole.shipped_once import compiled
from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.guide.english import LANGUAGE
from walewright.guide.numbers import whole_grams, yarn_grams
from walewright.sheet.supplies import tensions, yarn_notes, yarn_table
from walewright.world import shipped_text


@given(st.lists(st.floats(0, 3000), min_size=1, max_size=4))
def test_grams_add_up_and_are_enough(parts: list[float]) -> None:
    *found, whole = whole_grams(*parts)
    assert sum(found) == whole
    assert sum(parts) - 1e-6 <= whole < sum(parts) + 1
    assert all(abs(rounded - part) < 1.001 for rounded, part in zip(found, parts, strict=True))


def test_what_has_most_to_lose_is_rounded_up() -> None:
    assert whole_grams(9.4, 8.3, 1.8) == (10, 8, 2, 20)
    assert whole_grams(84.0, 12.0, 4.8) == (84, 12, 5, 101)
    assert whole_grams(0.0, 0.0, 0.0) == (0, 0, 0, 0)


@given(st.floats(0, 3000), st.floats(0, 300), st.floats(0, 300))
def test_swatches_weigh_the_same_whatever_the_garment_weighs(garment: float, swatches: float, reserve: float) -> None:
    *found, whole = yarn_grams(garment, swatches, reserve)
    assert sum(found) == whole == whole_grams(garment, swatches, reserve)[-1]
    assert found[1] == yarn_grams(0, swatches, 0)[1]
    assert all(abs(rounded - part) < 1.001 for rounded, part in zip(found, (garment, swatches, reserve), strict=True))


@pytest.mark.parametrize("name", ["tidewrack", "dunlin", "avocet"])
def test_a_swatch_is_as_heavy_in_each_size(name: str) -> None:
    design, _, _, proof = compiled(name).result()
    rows = [row for group in yarn_table(LANGUAGE, design, proof).groups for row in group.rows]
    of_swatches = [{cell.text for cell in row.cells} for row in rows if row.label == LANGUAGE.say("yarn/swatches")]
    assert of_swatches
    assert all(len(grams) == 1 for grams in of_swatches)


@pytest.mark.parametrize("name", ["tidewrack", "limpet"])
def test_the_page_tells_garment_swatches_and_reserve(name: str) -> None:
    text = shipped_text("patterns", f"{name}.wale")
    size = text.partition("\nsizes")[2].split()[0]
    outcome = pipeline.compile(
        text,
        f"{name}.wale",
        shipped(),
        Changes(sizes=(size,), tensions={"plain": "17.3 st 23.7 rows"} if name == "tidewrack" else {}),
    )
    design, _, _, proof = outcome.result()
    table = yarn_table(LANGUAGE, design, proof)
    cells = {row.label: int(row.cells[0].text) for row in table.groups[0].rows}
    assert list(cells) == [
        "Balls to buy",
        "Metres",
        "Grams in all",
        "Grams for the garment",
        "Grams for swatches",
        "Grams in reserve",
    ]
    assert cells["Grams in all"] == cells["Grams for the garment"] + cells["Grams for swatches"] + cells["Grams in reserve"]
    assert cells["Balls to buy"] * design.yarns[0].ball_grams >= cells["Grams in all"]
    for tension in tensions(LANGUAGE, design, "cm"):
        weighed = re.search(r"weigh ([\d.]+) g", tension.text)
        assert weighed is None or len(weighed[1]) <= 3, tension.text


@pytest.mark.parametrize("name", ["tidewrack", "anemone"])
def test_the_table_has_as_much_cord_as_its_note_tells_to_cut(name: str) -> None:
    design, _, _, proof = compiled(name).result()
    (row,) = (row for group in yarn_table(LANGUAGE, design, proof).groups for row in group.rows if row.label == "Ravel cord")
    (note,) = (note for note in yarn_notes(LANGUAGE, design, proof) if note.startswith("Ravel cord"))
    told = re.findall(r"one length of (\d+) \(([\d: ]+)\) cm", note)
    # A part that waits on cord has its own beside that of the starts.
    assert len(told) == (2 if name == "anemone" else 1), note
    lengths = [[int(cm) for cm in (first, *others.split(": "))] for first, others in told]
    assert [round(float(cell.text) * 100) for cell in row.cells] == [sum(of) for of in zip(*lengths, strict=True)]
