"""How a piece begins and ends, and how edges are joined, against what the language says of each."""

from __future__ import annotations

from typing import get_args

from tests.trade.pages import says
from walewright.trade.ends import ENDS, STARTS, TAKEN, EndFacts, EndWay, StartFacts, StartWay, Taken
from walewright.trade.joins import JOINS, JoinFacts, JoinWay


def test_every_way_has_its_row() -> None:
    assert sorted(STARTS) == sorted(get_args(StartWay))
    assert sorted(ENDS) == sorted(get_args(EndWay))
    assert sorted(JOINS) == sorted(get_args(JoinWay))
    assert get_args(Taken) == TAKEN


def test_how_a_piece_begins() -> None:
    assert says("language", "- `on waste yarn`: the loops of the first row stay open.")
    assert says("language", "- `on waste yarn by hand`: the same, with the waste yarn wound on by hand in place of the comb.")
    assert says("language", "- `with e-wrap`, `with chain`: a closed start.")
    assert {way for way, facts in STARTS.items() if facts.open} == {"waste", "hand waste"}
    closed = {way: facts.cast_on for way, facts in STARTS.items() if facts.cast_on is not None}
    assert closed == {"e-wrap": "e-wrap", "chain": "chain"}
    assert STARTS["along"] == StartFacts(), "hung on loops that are there"


def test_how_a_piece_ends() -> None:
    assert says("language", "`end on waste yarn` keeps the last loops open")
    assert says("language", "`end gathered` draws the yarn through them and pulls them together")
    assert {way for way, facts in ENDS.items() if facts.open} == {"waste"}
    assert {way for way, facts in ENDS.items() if facts.edge} == {"cast-off", "sewn-off"}
    assert ENDS["gathered"] == EndFacts(), "neither open nor side by side"


def test_which_joins_are_loop_by_loop() -> None:
    for way in ("grafted", "linked"):
        told = [line for line in JOINED if line.startswith(f"- `{way}`")]
        assert len(told) == 1
        assert "the numbers of stitches are equal" in told[0]
    assert {way for way, facts in JOINS.items() if facts.by_loops} == {"grafted", "linked"}
    assert {way for way, facts in JOINS.items() if facts.by_needle} == {"sewn", "gathered", "pleated"}
    assert JoinFacts() == JoinFacts(by_loops=False, by_needle=False)


JOINED = (
    "- `grafted`: open loops to open loops, with a needle; the numbers of stitches are equal.",
    "- `linked`: on the bed, open loops with open loops or with a cast-off edge; the numbers of stitches are equal.",
    "- `gathered`: sewn, the fullness of the longer one drawn in.",
    "- `pleated`: sewn, the fullness of the longer one laid in folds.",
)


def test_the_language_says_so() -> None:
    assert [line for line in JOINED if not says("language", line)] == []
