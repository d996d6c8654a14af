"""What is known of each kind of cell, against the table of the language that tells what is done with its needle, and against what
holds of a row of needles anyway: it has no preferred side, and no loop is lost in it."""

from __future__ import annotations

import re
from typing import get_args

import pytest

from tests.trade.pages import rows, says
from walewright.trade.cells import CELLS, CellFacts, CellKind, Working

TOLD = dict(rows("language", "| meaning | what is done with the needle |"))


def told(kind: CellKind) -> str:
    written = {"three": "three together", "cross": "cross N over N, left first"}
    return TOLD[written.get(kind, kind)]


def with_(**asked: object) -> set[CellKind]:
    return {kind for kind, facts in CELLS.items() if all(getattr(facts, name) == value for name, value in asked.items())}


def test_the_language_tells_of_every_kind() -> None:
    assert sorted(CELLS) == sorted(get_args(CellKind))
    assert {kind for kind in CELLS if told(kind)} == set(CELLS)
    assert len(TOLD) == len(CELLS) + 1, "a stitch in another yarn is a plain one"


MEANS: dict[Working, str] = {
    "by the carriage": r"^it knits$",
    "moved": r"\bloops? of\b.*\b(moved here|laid on its own)\b|^its loop has been moved away\b",
    "crossed": r"\bit is exchanged\b",
    "held for a row": r"^it is held and\b|\bdrawn long by hand$",
    "over rows": r"\bdropped\b|\bwhile the yarn is laid over it\b",
}
"""By what the table of the language says of a cell, when it is worked."""


@pytest.mark.parametrize("working", get_args(Working))
@pytest.mark.parametrize("kind", CELLS)
def test_a_cell_is_worked_when_the_language_says(kind: CellKind, working: Working) -> None:
    assert (CELLS[kind].working == working) == bool(re.search(MEANS[working], told(kind)))


@pytest.mark.parametrize("kind", CELLS)
def test_loops_come_from_the_neighbours_that_the_language_names(kind: CellKind) -> None:
    if "loops of both neighbours" in told(kind):
        from_where = ("left", "right")
    elif "the loop of that neighbour" in told(kind):
        from_where = (kind.rpartition(" ")[2],)
    else:
        from_where = ()
    assert CELLS[kind].takes_from == from_where
    left_it = re.search("moved away|its own one further", told(kind))
    assert CELLS[kind].keeps_own == (left_it is None)


def mirrored(kind: CellKind) -> CellKind:
    other = {"left": "right", "right": "left"}
    found = " ".join(other.get(word, word) for word in kind.split())
    assert found in CELLS
    return found  # type: ignore[return-value]


@pytest.mark.parametrize("kind", CELLS)
def test_a_row_has_no_preferred_side(kind: CellKind) -> None:
    facts, other = CELLS[kind], CELLS[mirrored(kind)]
    assert {*other.takes_from} == {"left" if side == "right" else "right" for side in facts.takes_from}
    same = ("working", "keeps_own", "on_waste", "needs_edge", "of_groups", "single")
    assert [getattr(facts, name) for name in same] == [getattr(other, name) for name in same]


def test_loops_are_neither_lost_nor_made() -> None:
    """Of a decrease beside its hole, and of a run of moves between the two, all loops lie somewhere in the end."""
    for runs in (("hole", "two from left"), ("two from right", "hole"), ("hole", "from left", "from left", "two from left")):
        own = sum(CELLS[kind].keeps_own for kind in runs)
        assert own + sum(len(CELLS[kind].takes_from) for kind in runs) == len(runs), runs
    three = ("hole", "three", "hole")
    assert sum(CELLS[kind].keeps_own + len(CELLS[kind].takes_from) for kind in three) == 3


def test_a_loop_is_passed_on_in_the_middle_of_a_run_only() -> None:
    assert {kind: facts.passes_on for kind, facts in CELLS.items() if facts.passes_on} == {
        "from left": "left",
        "from right": "right",
    }


def test_cells_worked_by_themselves() -> None:
    """A hold, a latched column and a ladder ask nothing of the needles beside them; what is moved or crossed does."""
    assert {kind for kind, facts in CELLS.items() if facts.single} == {"purl", "tuck", "slip", "long", "ladder"}


def test_what_can_be_worked_on_waste_yarn() -> None:
    """No stitch of the first row there can be moved, crossed or held; a stitch re-formed later is knitted plain in that row."""
    assert says("language", "no stitch of that row can be moved, crossed or held")
    assert with_(on_waste=True) == {"knit", "purl"}
    assert all(CELLS[kind].working in ("by the carriage", "over rows") for kind in with_(on_waste=True))


def test_what_an_end_needle_cannot_have() -> None:
    """A float and a bar need a stitch on both sides, a hole and a ladder too, or the edge comes undone (common practice)."""
    assert with_(needs_edge=True) == {"hole", "tuck", "slip", "long", "ladder"}


def test_only_crosses_are_groups() -> None:
    assert says("language", "Of a cross all 2N symbols are drawn")
    assert with_(of_groups=True) == {"cross"}


def test_a_kind_of_which_nothing_is_said_stays_on_its_needle() -> None:
    plain = CellFacts("by the carriage")
    assert (plain.takes_from, plain.keeps_own) == ((), True)
    assert not any((plain.on_waste, plain.needs_edge, plain.of_groups, plain.passes_on, plain.single))
