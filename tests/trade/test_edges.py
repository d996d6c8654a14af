"""Left and right, and the names of edges with the part that is meant."""

from __future__ import annotations

from typing import get_args

import pytest

from tests.trade.pages import says
from walewright.trade.edge_names import BAND_ENDS, OWN_EDGES, UPPER, OwnEdge, PartOfEdge, part_of_edge, strip_name
from walewright.trade.sides import GAP_PARTS, OTHER_END, OTHER_SIDE, SIDES, WHICH_EDGES, EdgeEnd, EdgePart, EdgeSide, WhichEdges


def test_the_other_side_and_the_other_end() -> None:
    """Each has another one, whose other one it is; rows end at the bottom and the top, stitches at the left and the right."""
    assert sorted(OTHER_SIDE) == sorted(get_args(EdgeSide))
    assert sorted(OTHER_END) == sorted(get_args(EdgeEnd))
    assert all(OTHER_SIDE[other] == side != other for side, other in OTHER_SIDE.items())
    assert all(OTHER_END[other] == end != other for end, other in OTHER_END.items())
    assert {side: OTHER_END[side] for side in SIDES} == dict(OTHER_SIDE)


def test_edges_and_parts_go_from_left_to_right() -> None:
    assert SIDES == ("left", "right")
    assert WHICH_EDGES == ("both", "left", "right")
    assert sorted(WHICH_EDGES) == sorted(get_args(WhichEdges))
    assert GAP_PARTS == ("left", "centre", "right")
    assert {*GAP_PARTS, "whole"} == set(get_args(EdgePart))
    assert says("language", "`neck_left`, `neck_centre`, `neck_right`")


def test_the_trades_own_names_are_those_that_no_author_can_give() -> None:
    assert sorted(OWN_EDGES) == sorted(get_args(OwnEdge))
    names = ", ".join(f"`{name}`" for name in ("start", "end", "neck", "shoulder"))
    assert says("language", f"Names that every piece has ({names}) cannot be given.")
    assert set(OWN_EDGES) == {"start", "end", "neck", "shoulder"}


def test_the_ends_of_an_edging_are_called_as_it_is() -> None:
    """With more behind its name where an edge of the piece has that, and as the upper one where both ends have the same edging."""
    assert strip_name("welt", ("side", "neck"), "start", "") == "welt"
    assert strip_name("welt", ("side", "welt"), "start", "") == "welt_edging"
    assert strip_name("welt", ("welt", "welt_edging"), "start", "") == "welt_edging_edging"
    assert strip_name("welt", (), "start", "welt") == "welt"
    assert strip_name("welt", (), "end", "welt") == "welt upper"
    assert strip_name("welt", (), "end", "hem") == "welt"
    assert strip_name("welt", ("welt",), "end", "welt") == "welt_edging upper"


def test_the_ends_of_a_band() -> None:
    assert BAND_ENDS == ("first end", "last end")


NAMES = (*OWN_EDGES, "thumb", "armhole_left", "left", "upper", "centre")


@pytest.mark.parametrize("part", GAP_PARTS)
@pytest.mark.parametrize("name", NAMES)
def test_a_part_stands_behind_the_name(name: str, part: EdgePart) -> None:
    assert part_of_edge(f"{name} {part}") == PartOfEdge(name, part, upper=False)


@pytest.mark.parametrize("name", NAMES)
def test_a_name_by_itself_is_the_whole_edge_and_upper_the_one_above_it(name: str) -> None:
    assert part_of_edge(name) == PartOfEdge(name, "whole", upper=False)
    assert part_of_edge(name + UPPER) == PartOfEdge(name, "whole", upper=True)
    assert part_of_edge(name) == PartOfEdge(name)
