"""What the proof says of a join whose sides are not alike: each side has its own rows and its own length."""

from __future__ import annotations

import pytest

from tests.glue.sewn import HEAD, SHIPPED
from walewright.design import Changes
from walewright.pipeline import compile

PANEL = """\
piece {name} in plain
    levels foot 0 cm, top {long} cm
    start 20 cm wide with e-wrap
    edges straight to top called side
    end cast off

"""


@pytest.mark.parametrize(("one", "other"), [(40, 44), (44, 40)])
def test_each_side_of_a_join_has_its_own_rows(one: int, other: int) -> None:
    pieces = PANEL.format(name="front", long=one) + PANEL.format(name="back", long=other)
    made = compile(HEAD + pieces + "join front side to back side, easing 5 cm\n", "sewn.wale", SHIPPED, Changes())
    assert made.proof is not None, made.diagnostics
    assert made.counts is not None
    rows = {p.name: p.rows for p in made.counts.sizes[0].pieces}
    (join,) = made.proof.sizes[0].joins
    assert (join.one_rows, join.other_rows) == (rows["front"], rows["back"])
    assert join.one_cm == pytest.approx(rows["front"] * 32.4 / 60)
    assert join.other_cm == pytest.approx(rows["back"] * 32.4 / 60)
    assert (join.easing_cm, join.way, join.times) == (5, "sewn", 2)
