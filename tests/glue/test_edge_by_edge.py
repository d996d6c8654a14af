"""One join for both sides of a back: each front lies along one of them, and none is added to the other."""

from __future__ import annotations

from tests.glue.sewn import HEAD, JACKET, SHIPPED
from walewright.design import Changes
from walewright.pipeline import compile

APART = "join back side to right_front side\njoin back side to left_front side\n"


def test_two_fronts_joined_in_one_line_are_measured_one_by_one() -> None:
    together = HEAD + JACKET.replace(APART, "join back side to right_front side + left_front side\n")
    assert together != HEAD + JACKET
    made = compile(together, "sewn.wale", SHIPPED, Changes())
    assert made.proven, [d.message for d in made.diagnostics]


def test_and_so_where_the_fronts_are_named_first() -> None:
    together = HEAD + JACKET.replace(APART, "join right_front side + left_front side to back side\n")
    made = compile(together, "sewn.wale", SHIPPED, Changes())
    assert made.proven, [d.message for d in made.diagnostics]


def test_a_band_that_names_the_edge_of_both_copies_is_shown_how_each_has_its_own() -> None:
    cuffs = (
        "piece glove in plain, knit 2\n    levels hem 0 cm, top 10 cm\n    start 20 cm wide with chain\n"
        "    edges straight to top called side\n    end on waste yarn\n\n"
        "join glove side to glove side\nband cuff with collar along {}\n"
    )
    twice = compile(HEAD + cuffs.format("glove end + glove end"), "sewn.wale", SHIPPED, Changes())
    (refused,) = [d for d in twice.diagnostics if d.code == "line-not-in-order"]
    assert refused.helps[0] == "if each copy of the glove is to have its own, name its edge once"
    assert compile(HEAD + cuffs.format("glove end"), "sewn.wale", SHIPPED, Changes()).proven
