"""What is known of each kind of edging, against what the language says of it."""

from __future__ import annotations

from typing import get_args

from tests.trade.pages import says
from walewright.trade.edgings import (
    CAST_OFFS,
    EDGINGS,
    ENDED,
    WHENS,
    EdgingCastOff,
    EdgingFacts,
    EdgingKind,
    EdgingWhen,
)
from walewright.trade.ends import ENDS


def that_are(feature: str) -> set[EdgingKind]:
    return {kind for kind, facts in EDGINGS.items() if getattr(facts, feature)}


def test_every_kind_has_its_row() -> None:
    assert sorted(EDGINGS) == sorted(get_args(EdgingKind))
    assert get_args(EdgingWhen) == WHENS
    assert get_args(EdgingCastOff) == CAST_OFFS


def test_when_each_is_knitted() -> None:
    assert says("language", "It begins on such needles, so it is always knitted first.")
    assert says("techniques/edges", "it begins on needles out of work, so it is always knitted first")
    first = {kind for kind, facts in EDGINGS.items() if "first" in facts.when}
    after = {kind for kind, facts in EDGINGS.items() if "after" in facts.when}
    assert after == set(EDGINGS) - {"mock rib"}
    # A facing is sewn down and a chained edge is a cast-off: both come at the end of what is finished.
    assert first == set(EDGINGS) - {"facing", "chained"}


def test_what_is_folded_and_what_is_turned_in() -> None:
    for words in (
        "- `folded`: so deep outside, then as deep again inside, and its two rows of loops put together.",
        "- `picot`: the same, folded along a row of eyelets.",
        "- `mock rib 1 by 1`, `mock rib 2 by 1`: folded, with every second or every third needle out of work.",
        "- `facing`: turned in whole along a fold row, and sewn down.",
    ):
        assert says("language", words)
    assert that_are("folded") == {"folded", "picot", "mock rib"}
    assert that_are("turned_in") == {"facing"}
    assert that_are("eyelets") == {"picot"}
    assert that_are("idle_needles") == {"mock rib"}
    # Two layers, between which a cord goes through.
    assert that_are("channel") == that_are("folded") | that_are("turned_in")


def test_what_has_a_fold_row() -> None:
    """What is folded or turned in along a row; a picot folds along its eyelets."""
    assert that_are("fold_row") == that_are("channel") - that_are("eyelets")


def test_a_rib_is_latched_in_what_is_simply_so_deep() -> None:
    assert says("language", "- `rolled`: plain, and left to roll by itself; a latched rib does not.")
    assert that_are("latched") == {"plain"}


def test_a_chained_edge_has_no_depth() -> None:
    assert says("language", "- `chained`: one row, cast off. It has no depth.")
    assert set(EDGINGS) - that_are("has_depth") == {"chained"}


def test_what_nothing_is_said_of_is_simply_so_deep() -> None:
    assert EdgingFacts() == EdgingFacts(WHENS, False, False, False, False, False, False, True)


def test_a_piece_that_ends_with_an_edging_ends_as_that_is_closed() -> None:
    """By back-stitch or a chain its stitches are an edge; on waste yarn they are open."""
    assert says("language", "`sewn`, by back-stitch with the yarn's tail")
    assert sorted(ENDED) == sorted(CAST_OFFS)
    assert ENDED["chain"] == "cast-off"
    assert ENDED["sewn"] == "sewn-off"
    assert ENDED["waste"] == "waste"
    assert [way for way in CAST_OFFS if ENDS[ENDED[way]].open] == ["waste"]
