"""How much is sewn with which yarn."""

from __future__ import annotations

from dataclasses import replace

import pytest
from charted_by_hand import DESIGN, END, HERE, SIZED, knitted, lace

from walewright.design.model import EdgeName
from walewright.knit.operations import NameEdge
from walewright.proof.sewing import seams_cm
from walewright.solve.model import SizedGarment, SizedJoin


def sewn(edge: str, other: str = "cloth", way: str = "sewn", copies: int = 1) -> dict[str, float]:
    ops = [*lace()[: -len(END)], *END, NameEdge("side", "outer", 0, 10)]
    fabrics = {name: replace(knitted(ops, name), copies=copies) for name in ("cloth", "back")}
    join = SizedJoin((EdgeName("cloth", edge),), (EdgeName(other, edge),), None, None, 5.4, 5.4, 0.0, HERE, way=way)
    return seams_cm(DESIGN, SizedGarment("one", (SIZED,), (), (join,), ()), fabrics)


def test_a_seam_at_both_sides_is_sewn_twice() -> None:
    assert sewn("side", "back") == {"wool": pytest.approx(2 * 10 / 1.85)}


def test_a_piece_closed_to_a_tube_has_one_seam_a_copy() -> None:
    assert sewn("side") == {"wool": pytest.approx(10 / 1.85)}
    assert sewn("side", copies=2) == {"wool": pytest.approx(2 * 10 / 1.85)}


def test_what_is_knitted_or_grafted_together_takes_no_yarn_of_its_own() -> None:
    assert sewn("side", way="linked") == {}
    assert sewn("end", "back", way="grafted") == {}


def test_a_graft_where_no_tail_hangs_takes_four_widths() -> None:
    assert sewn("start", "back", way="grafted") == {"wool": pytest.approx(4 / 3 * sewn("start", "back")["wool"])}
    assert sewn("start", "back")["wool"] > 0
