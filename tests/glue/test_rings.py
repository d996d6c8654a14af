"""The ring of a piece: which edges it has, walked clockwise."""

from __future__ import annotations

import pytest

from tests.glue.sewn import body, panel, understood
from tests.whole.shipped_once import GARMENTS, SHIPPED, source
from walewright import pipeline
from walewright.design import Changes
from walewright.glue.rings import ALONG_ROWS, RingEdge, rings, strip


def ring(text: str, number: int = 0, purl_out: bool = False) -> tuple[RingEdge, ...]:
    design = understood(text)
    return rings(design, design.pieces[-1], purl_out)[number]


def names(text: str, number: int = 0, purl_out: bool = False) -> list[str]:
    return [f"{e.edge or '?'} {e.first}-{e.last}" for e in ring(text, number, purl_out)]


def states(text: str) -> dict[str, str]:
    return {e.edge: e.state for edges in rings(understood(text), understood(text).pieces[-1], False) for e in edges}


def test_up_the_left_over_the_top_down_the_right_and_back_along_the_start() -> None:
    assert names(panel("panel")) == [
        "side left bottom-top",
        "end left-right",
        "side right top-bottom",
        "start right-left",
    ]


def test_a_neck_is_walked_down_across_and_up() -> None:
    assert names(body("back")) == [
        "side left bottom-top",
        "armhole left bottom-top",
        "shoulder left left-right",
        "neck left top-bottom",
        "neck centre left-right",
        "neck right bottom-top",
        "shoulder right left-right",
        "armhole right top-bottom",
        "side right top-bottom",
        "start right-left",
    ]


def test_a_slit_has_no_foot() -> None:
    assert "neck centre left-right" not in names(body("back", "20 cm deep, v"))


def test_edges_of_one_side_have_no_side_in_their_name() -> None:
    one_sided = panel("panel").replace("edges straight", "left edge straight")
    assert [e.split()[0] for e in names(one_sided)] == ["side", "end", "?", "start"]


def test_runs_of_one_name_are_one_edge() -> None:
    two = panel("panel").replace("levels hem 0 cm,", "levels hem 0 cm, mid 20 cm,")
    run = "    edges straight to top called side\n"
    two = two.replace(run, run.replace("top", "mid") + run)
    assert names(two) == names(panel("panel"))


def test_an_edging_at_the_start_lies_below_it() -> None:
    assert names(panel("panel", "on waste yarn, with welt")) == [
        "welt left bottom-top",
        "side left bottom-top",
        "end left-right",
        "side right top-bottom",
        "welt right top-bottom",
        "start right-left",
    ]


def test_an_opening_that_closes_again_is_a_ring_of_its_own() -> None:
    text = """\
piece front in plain
    levels hem 0 cm, low 10 cm, high 20 cm, top length
    start 30 cm wide with e-wrap
    opening vent 6 cm wide from low to high, cast off
    end cast off
"""
    assert names(text, 1) == ["vent centre left-right", "vent right bottom-top", "vent upper right-left", "vent left top-bottom"]


def test_a_slot_is_a_ring_of_two_lips() -> None:
    text = """\
piece front in plain
    levels hem 0 cm, low 10 cm, top length
    start 30 cm wide with e-wrap
    slot pocket 6 cm wide at low
    end cast off
"""
    assert names(text, 1) == ["pocket left-right", "pocket upper right-left"]
    assert states(text)["pocket"] == "live"
    assert states(text)["pocket upper"] == "closed"


def test_what_is_held_has_no_edge_of_rows() -> None:
    held = body("back").replace("top length", "tip 48 cm, top length").replace("edges straight to top", "edges straight to tip")
    held = held.replace("    end cast", "    shoulders held from tip\n    end cast")
    assert names(held) == names(body("back"))


@pytest.mark.parametrize(
    ("start", "end", "states_of_both"),
    [
        ("with e-wrap", "cast off", ("closed", "closed")),
        ("on waste yarn", "on waste yarn", ("live", "live")),
        ("on waste yarn by hand", "gathered", ("live", "drawn")),
        ("on waste yarn, with welt", "cast off sewn", ("closed", "closed")),
    ],
)
def test_open_and_closed_loops(start: str, end: str, states_of_both: tuple[str, str]) -> None:
    found = states(panel("panel", start, end))
    assert (found["start"], found["end"]) == states_of_both


def test_worn_with_the_purl_side_out_all_is_the_other_way_round() -> None:
    assert names(panel("panel"), purl_out=True) == [
        "start left-right",
        "side right bottom-top",
        "end right-left",
        "side left top-bottom",
    ]


def test_corners_know_their_level() -> None:
    side, armhole = ring(body("back"))[:2]
    assert "level underarm" in side.end & armhole.begin
    assert "level hem" in side.begin
    assert "inner" in ring(body("back"))[3].begin


def test_a_strip_has_two_ends_and_a_rim() -> None:
    ((*edges,),) = strip(purl_out=False)
    assert [e.edge for e in edges] == ["first end", "rim", "last end", "start"]
    ((*turned,),) = strip(purl_out=True)
    assert [e.edge for e in turned] == ["start", "last end", "rim", "first end"]


@pytest.mark.parametrize("name", GARMENTS)
def test_what_ends_at_the_bottom_and_the_top_lies_along_rows(name: str) -> None:
    """And every ring is closed: each edge begins where the one before it ends."""
    design = pipeline.understood(source(name), "rings.wale", SHIPPED, Changes()).design
    assert design is not None
    for piece in design.pieces:
        for purl_out in (False, True):
            for edges in rings(design, piece, purl_out):
                assert all((e.first in ("bottom", "top")) == (e.state in ALONG_ROWS) for e in edges)
                assert all({e.first, e.last} in ({"bottom", "top"}, {"left", "right"}) for e in edges)
                assert all(a.end & b.begin or not a.end or not b.begin for a, b in zip(edges, edges[1:] + edges[:1], strict=True))
