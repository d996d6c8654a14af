"""What is left of the boundary, how many parts there are, and whether seams cross."""

from __future__ import annotations

import pytest

from tests.glue.sewn import JACKET, MITTENS, NECKBAND, PULLOVER, SHOULDERS, SIDES, VEST, codes, panel, sewn, understood
from walewright.glue.model import right_side
from walewright.glue.rings import rings
from walewright.glue.surface import Surface

ROUND = "join skirt side_right to skirt side_left, each to the next all round\n"


@pytest.mark.parametrize(
    ("text", "openings", "parts"),
    [
        pytest.param(PULLOVER, 4, 1, id="pullover: hem, neck, two cuffs"),
        pytest.param(VEST + NECKBAND + SHOULDERS + SIDES, 4, 1, id="vest: hem, neck, two armholes"),
        pytest.param(JACKET, 1, 1, id="jacket without sleeves: one edge all round"),
        pytest.param(panel("scarf"), 1, 1, id="scarf"),
        pytest.param(panel("cowl") + "join cowl start to cowl end\n", 2, 1, id="cowl"),
        pytest.param(panel("bag", end="gathered") + "join bag side to bag side\n", 1, 1, id="bag"),
        pytest.param(MITTENS, 2, 2, id="a pair of mittens"),
        pytest.param(panel("skirt", copies=4) + ROUND, 2, 1, id="skirt"),
        pytest.param(
            panel("back")
            + panel("front")
            + "join back side to front side\njoin back start to front start\njoin back end to front end\n",
            0,
            1,
            id="a cushion, closed",
        ),
    ],
)
def test_openings_and_parts(text: str, openings: int, parts: int) -> None:
    made = sewn(text)
    assert (len(made.openings), made.parts) == (openings, parts)


def test_the_rings_of_openings_are_whole() -> None:
    edges = [{p.text for p in opening.edges} for opening in sewn(PULLOVER).openings]
    assert {"back start", "front start"} in edges
    assert {"neckband rim"} in edges
    assert edges.count({"sleeve start"}) == 2


def surface(text: str, *seams: tuple[str, str]) -> Surface:
    """Pieces put together edge by edge, whatever comes of it."""
    design = understood(text)
    made = Surface()
    for piece in design.pieces:
        made.add(piece.name, rings(design, piece, right_side(design, piece.fabric) == "purl"), piece.copies[0])
    number = {edge.place.text: i for i, edge in enumerate(made.edges)}
    for i, (one, other) in enumerate(seams):
        made.glue((number[one],), (number[other],), i)
    return made


def test_handles_are_counted() -> None:
    two = panel("back") + panel("front")
    tube = (("back side left", "front side right"), ("back side right", "front side left"))
    assert surface(two).handles() == 0
    assert surface(two, *tube).handles() == 0
    torus = (("back side left", "back side right"), ("back start", "back end"))
    assert surface(panel("back"), *torus).handles() == 1
    assert surface(panel("back"), *torus).openings() == []


def test_a_way_names_the_seams_that_bring_corners_together() -> None:
    made = surface(panel("back") + panel("front"), ("back side right", "front side left"))
    at = {edge.place.text: edge for edge in made.edges}
    corners = at["back end"].end, at["front end"].begin
    assert made.way(*corners, {0}) == (0,)
    assert made.way(*corners, ()) is None
    assert made.corner(corners[0]) == made.corner(corners[1])


def test_seams_that_cross_are_told() -> None:
    crossed = SHOULDERS.replace("shoulder to front shoulder", "shoulder_left to front shoulder_left") + SHOULDERS.replace(
        "shoulder to front shoulder", "shoulder_right to front shoulder_right"
    )
    assert codes(VEST + crossed + SIDES) == ["seams-cross"]
