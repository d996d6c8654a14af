"""How edges go and what hands need for it, against what the language and the solver's page say."""

from __future__ import annotations

from typing import get_args

from tests.trade.pages import says
from walewright.trade.relations import RELATIONS, Relation
from walewright.trade.shaping import NECKS, PATHS, WAYS, WEDGES, EdgePath, NeckShape, WayKind, WedgeKind, rows_inside
from walewright.trade.worn import BODY_PARTS, BodyPart


def test_every_kind_is_listed() -> None:
    assert get_args(EdgePath) == PATHS
    assert get_args(WayKind) == WAYS
    assert get_args(Relation) == RELATIONS
    assert get_args(BodyPart) == BODY_PARTS
    assert sorted(NECKS) == sorted(get_args(NeckShape))
    assert sorted(WEDGES) == sorted(get_args(WedgeKind))


def test_rows_from_one_move_to_the_next_along_a_line_inside() -> None:
    assert says("solver", "between two of them are at least 4 rows where stitches are lost and 3 where they are gained")
    assert says(
        "language", "at most [every 4th row](solver.md#on-which-rows) where stitches are lost, every 3rd where they are gained"
    )
    assert rows_inside(inwards=True) == 4
    assert rows_inside(inwards=False) == 3


def test_rows_of_a_step_of_a_wedge() -> None:
    """Held in and let out, a step is held and returned: the rows of both."""
    assert says(
        "solver", "Every two rows a group is held, or comes back; of one held in and let out, every four rows count for a group."
    )
    assert WEDGES["in"].rows_a_step == WEDGES["out"].rows_a_step == 2
    assert WEDGES["both"].rows_a_step == WEDGES["in"].rows_a_step + WEDGES["out"].rows_a_step


def test_what_is_taken_off_at_once_at_the_bottom_of_a_neck() -> None:
    assert says("language", "where it is not said, half the width of a round neck, nothing of a v, and all of a square one")
    assert {shape: facts.flat_share for shape, facts in NECKS.items()} == {"round": 1 / 2, "v": 0, "square": 1}


def test_how_the_edges_of_a_neck_go() -> None:
    """A v leads its edges evenly; a square one, whose width is all taken at once, leads them nowhere; what is left of a round one
    is a quarter of an ellipse at each side."""
    assert says("solver", "**Curves** (S9), of an armhole and of a round neck, are quarters of an ellipse")
    assert {shape: facts.path for shape, facts in NECKS.items()} == {"round": "curve", "v": "slope", "square": "straight"}
    assert all((facts.path == "straight") == (facts.flat_share == 1) for facts in NECKS.values())
