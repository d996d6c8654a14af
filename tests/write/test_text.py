"""The whole text of a garment."""

from __future__ import annotations

from dataclasses import replace

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.in_english import plain_text, write
from tests.write.garments import joined, joining, sweater, three_sizes
from walewright.knit import steps as st
from walewright.knit.steps import SizePlan
from walewright.write.plain import WIDTH


def test_three_sizes(snapshot: SnapshotAssertion) -> None:
    assert plain_text(write(three_sizes(copies=2))) == snapshot


def test_one_size(snapshot: SnapshotAssertion) -> None:
    """A single-size copy is the same text without brackets."""
    text = plain_text(write((sweater("M", 102, 6, 6, 4),)))
    assert text == snapshot
    assert "(–" not in text


def test_lines_fit_the_page_and_keep_numbers_whole() -> None:
    text = plain_text(write(tuple(sweater(f"{n}X", 90 + 6 * n, 4 + n, 5, 3 + n % 2) for n in range(8))))
    assert max(len(line) for line in text.split("\n")) <= WIDTH
    # No bracket is open at the end of a line.
    assert [line for line in text.split("\n") if line.count("(") != line.count(")")] == []


@pytest.mark.parametrize("copies", [4, 8, 11])
def test_every_copy_has_a_pair_of_brackets(copies: int) -> None:
    """Eight stand before a line, those of more copies beneath it."""
    lines = plain_text(write((sweater("M", 90, 6, 5, 4, copies),))).split("\n")
    first = next(n for n, line in enumerate(lines) if line.startswith("[ ]"))
    second = next(n for n, line in enumerate(lines) if line.startswith("[ ]") and n > first)
    assert lines[first].count("[ ]") == min(copies, 8)
    assert sum(line.count("[ ]") for line in lines[first:second]) == copies


def test_names_of_the_sizes_can_be_told_apart_from_those_of_the_plans() -> None:
    assert write(three_sizes(), ("a", "b", "c")).sizes == ("a", "b", "c")
    assert write(three_sizes()).sizes == ("XS", "S", "M")
    for wrong in (("a", "b"), ()):
        with pytest.raises(ValueError, match="3 plans"):
            write(three_sizes(), wrong)
    with pytest.raises(ValueError, match="0 plans"):
        write(())


def test_sections_are_in_the_order_of_the_blocks() -> None:
    made = write(three_sizes(copies=2))
    assert [(s.name, s.title, s.copies) for s in made.sections] == [
        ("back", "Back (knit 2)", (2, 2, 2)),
        ("back welt", "Back welt", (1, 1, 1)),
        ("joining", "Making up", (1, 1, 1)),
    ]
    assert [s.joining for s in made.sections] == [False, False, True]


def test_a_block_of_some_sizes_only() -> None:
    small, middle, large = three_sizes()
    made = write((small, replace(middle, blocks=middle.blocks[:1]), large))
    assert {p.only for p in made.sections[1].paragraphs} == {"XS, M only"}


def test_only_abbreviations_that_occur_are_explained() -> None:
    assert [a for a, _ in write(three_sizes()).abbreviations] == ["COR", "L", "R", "RC", "st(s)", "–"]
    plan = SizePlan(
        "M", (joining(st.Say("RC and COR and 3 sts are the author's words"), joined("back side left", "front side right", 0)),)
    )
    assert write((plan,)).abbreviations == ()
