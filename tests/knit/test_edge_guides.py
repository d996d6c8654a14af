"""Guides at the outermost needles: a bed that has them is reminded of wherever the width changes, and nowhere else."""

from __future__ import annotations

import pytest

from tests.design.shaped import HEAD, SHIPPED
from walewright import pipeline
from walewright.design import Changes
from walewright.pipeline import Outcome

REMINDER = "move the edge guides"
STRAIGHT = "piece front in plain\n    levels hem 0 cm, top length\n    start 40 cm wide with e-wrap\n    end cast off\n"
SHAPED = STRAIGHT.replace("    end", "    edges slope to 30 cm wide at top\n    end")
NECK = STRAIGHT.replace("    end", "    neck 16 cm wide, 6 cm deep, round, cast off\n    end")


def made(piece: str, bed: str = "bulky, edge guides") -> Outcome:
    outcome = pipeline.compile(HEAD + piece, "it.wale", SHIPPED, Changes(sizes=("S",), bed=bed))
    assert outcome.proven, outcome.diagnostics
    return outcome


@pytest.mark.parametrize(("piece", "times"), [(STRAIGHT, 0), (SHAPED, 1), (NECK, 2)])
def test_the_steps_say_where_guides_are_moved(piece: str, times: int) -> None:
    assert made(piece).plain_text.count(REMINDER) == times
    assert REMINDER not in made(piece, "bulky").plain_text


def test_it_is_said_and_changes_no_move() -> None:
    assert made(SHAPED).works == made(SHAPED, "bulky").works


def test_a_source_and_a_file_say_it_as_a_fact() -> None:
    head = HEAD.replace("machine bulky\n", "machine bulky\n    edge guides\n")
    design = pipeline.understood(head + SHAPED, "it.wale", SHIPPED, Changes()).design
    assert design is not None
    assert design.machine.edge_guides
    assert design.machine.words == "100 needles, 8 mm apart, edge guides"


@pytest.mark.parametrize("fact", ["edge guides 2", "needles", "edge guide"])
def test_what_is_no_such_fact_is_told(fact: str) -> None:
    head = HEAD.replace("machine bulky\n", f"machine bulky\n    {fact}\n")
    outcome = pipeline.understood(head + SHAPED, "it.wale", SHIPPED, Changes())
    assert outcome.design is None
    assert [d.code for d in outcome.diagnostics if d.code != "unused-name"] in (["bad-machine-fact"], ["unknown-name"])


@pytest.mark.parametrize("bed", ["edge guides", "needles=112, edge guides", "standard, edge guides"])
def test_it_is_given_on_the_command_line(bed: str) -> None:
    design = pipeline.understood(HEAD + SHAPED, "it.wale", SHIPPED, Changes(bed=bed)).design
    assert design is not None
    assert design.machine.edge_guides
