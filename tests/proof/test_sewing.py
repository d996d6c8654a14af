"""How much is sewn with which yarn."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.proof.charted_by_hand import DESIGN, END, HERE, knitted, lace
from walewright.design.model import EdgeJoin, EdgeName
from walewright.glue.model import Glued, Place, Seam
from walewright.knit.operations import NameEdge
from walewright.proof.sewing import seams_cm


def sewn(*pairs: tuple[str, str], way: str = "sewn", copies: int = 1) -> dict[str, float]:
    """Yarn of seams between edges such as "cloth side left", made at each copy."""
    ops = [*lace()[: -len(END)], *END, NameEdge("side", "outer", 0, 10)]
    fabrics = {name: replace(knitted(ops, name), copies=copies) for name in ("cloth", "back")}
    name = (EdgeName("cloth", "side"),)
    design = replace(DESIGN, joins=(EdgeJoin(name, name, (0.0,), HERE, None, way),))

    def place(text: str, copy: int) -> Place:
        owner, edge = text.split(" ", 1)
        return Place(owner, edge, copy, copies)

    seams = [
        Seam(0, (place(one, copy),), (place(other, copy),), ("bottom",), ("bottom",), HERE)
        for one, other in pairs
        for copy in range(1, copies + 1)
    ]
    return seams_cm(design, Glued(tuple(seams), (), (), (), 1, {}), fabrics)


def test_a_seam_at_both_sides_is_sewn_twice() -> None:
    both = ("cloth side left", "cloth side right"), ("cloth side right", "cloth side left")
    assert sewn(*both) == {"wool": pytest.approx(2 * 10 / 1.85)}


def test_a_piece_closed_to_a_tube_has_one_seam_a_copy() -> None:
    assert sewn(("cloth side left", "cloth side right")) == {"wool": pytest.approx(10 / 1.85)}
    assert sewn(("cloth side left", "cloth side right"), copies=2) == {"wool": pytest.approx(2 * 10 / 1.85)}


def test_what_is_knitted_or_grafted_together_takes_no_yarn_of_its_own() -> None:
    assert sewn(("cloth side left", "cloth side right"), way="linked") == {}
    assert sewn(("cloth end", "cloth end"), way="grafted") == {}


def test_a_graft_where_no_tail_hangs_takes_four_widths() -> None:
    sewn_there = sewn(("cloth start", "cloth start"))["wool"]
    assert sewn(("cloth start", "cloth start"), way="grafted") == {"wool": pytest.approx(4 / 3 * sewn_there)}
    assert sewn_there > 0
