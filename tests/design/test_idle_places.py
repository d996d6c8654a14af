"""Levels that nothing goes to or stands at, and named edges that nothing is joined to: told of, unless anything names them."""

from __future__ import annotations

import pytest

from tests.design.shaped import HEAD, SHIPPED, piece
from walewright.design import Changes, understand
from walewright.design.pieces.shapes import NAMES
from walewright.design.used.idle_places import AT_EDGES, AT_LEVELS
from walewright.report.english import in_english
from walewright.report.model import Severity
from walewright.source import read, syntax

BACK = "hem 0 cm, low 10 cm, top length"
"""Levels with one between the first and the last."""
LEVEL = "nothing goes to the level `low` of piece `front` or stands at it"
EDGE = "nothing is joined to the edge `side` of piece `front`, and no statement names it"


def warned(*parts: str) -> list[tuple[str, str]]:
    """What is told of levels and edges in a source that has no error, each with the words it is told at."""
    text = "\n".join((HEAD, *parts))
    tree, unread = read("trial.wale", text)
    assert unread == ()
    design, found = understand(tree, SHIPPED, Changes())
    assert [d for d in found if d.severity is Severity.ERROR] == []
    assert design is not None
    told = [d for d in found if d.code == "unused-name" and in_english(d).message.startswith(("nothing goes", "nothing is joined"))]
    return [(in_english(d).message, text[d.labels[0].span.start : d.labels[0].span.end]) for d in told]


def test_a_level_that_nothing_comes_to() -> None:
    assert warned(piece(levels=BACK)) == [(LEVEL, "low 10 cm")]


@pytest.mark.parametrize(
    "line",
    [
        "edges straight to low",
        "left edge slope by 2 cm at low",
        "opening slit 2 cm wide from low to top\n        edges out 1 stitch every 4 rows to top",
        "slot thumb 4 cm wide at low",
        "buttonholes 2 over 2 stitches from low to middle, 2 cm from the right edge\n    edges straight to middle",
        "wedge 12 cm wide at the left edge from low to middle, held in",
        "fabric dense from low to top",
        "repeat 2 times from low to middle",
        "left shoulder held from low",
    ],
)
def test_a_level_that_a_line_of_the_piece_names(line: str) -> None:
    text = piece(*line.split("\n    "), levels="hem 0 cm, low 10 cm, middle 20 cm, top length")
    assert LEVEL not in [message for message, _ in warned(text)]


def test_a_level_that_an_edge_of_an_opening_goes_to() -> None:
    opening = "opening slit 2 cm wide from low to top"
    levels = "hem 0 cm, low 10 cm, middle 20 cm, top length"
    assert [m for m, _ in warned(piece(opening, levels=levels))] == [LEVEL.replace("low", "middle")]
    assert warned(piece(opening, "    edges out 1 stitch every 4 rows to middle", levels=levels)) == []


def test_a_level_at_which_the_garment_is_measured() -> None:
    side = "edges straight to top called side"
    both = piece(side, levels=BACK) + piece(side, levels="hem 0 cm, top length", name="back") + "join front side to back side\n"
    assert [m for m, _ in warned(both)] == [LEVEL]
    assert warned(both + "finished chest round front low, fits 70 cm\n") == []


def test_a_level_that_another_piece_shares_has_its_rows() -> None:
    def two(levels: str, more: str = "") -> list[str]:
        return [message for message, _ in warned(piece(levels=BACK) + piece(levels=levels, name="back", more=more))]

    assert two(BACK) == []
    assert two(BACK.replace("low 10 cm", "low 12 cm")) == [LEVEL, LEVEL.replace("front", "back")]
    dense = piece(levels=BACK) + piece(levels=BACK, name="back").replace("in plain", "in dense")
    assert [message for message, _ in warned(dense)] == [LEVEL, LEVEL.replace("front", "back")]


def test_a_mirror_image_shares_nothing_with_its_model() -> None:
    assert [m for m, _ in warned(piece(levels=BACK) + "piece two in plain, mirror of front\n")] == [LEVEL]


def test_an_edge_that_nothing_is_joined_to() -> None:
    levels = "hem 0 cm, top length"
    called = piece("edges straight to top called side", levels=levels)
    assert warned(called) == [(EDGE, "called side")]


@pytest.mark.parametrize(
    "line",
    [
        "free front side",
        "free front side_left",
        "join front side_left to front side_right",
        "band strip with collar along front side_right",
        "finished rim along front side",
        "require along front side > 10 cm",
        "lap front side_left over front side_right, 3 cm wide",
    ],
)
def test_an_edge_that_a_statement_names(line: str) -> None:
    assert warned(piece("edges straight to top called side", levels="hem 0 cm, top length") + line + "\n") == []


def test_an_edge_of_the_mirror_image_is_that_of_its_model() -> None:
    model = piece("edges straight to top called side", levels="hem 0 cm, top length")
    assert warned(model + "piece two in plain, mirror of front\nfree two side\n") == []


def test_an_edge_that_goes_on_over_several_lines_is_told_of_once() -> None:
    text = piece("edges straight to low called side", "edges straight to top called side", levels=BACK)
    assert [message for message, _ in warned(text)] == [EDGE]


def test_of_what_a_shape_names_nothing_is_told() -> None:
    shape = "shape plain_side(to)\n    edges straight to to called side\n"
    assert warned(shape + piece("use plain_side, to top", levels="hem 0 cm, top length")) == []


def test_every_field_that_names_a_level_or_an_edge_is_looked_at() -> None:
    """A new statement that stands at a level, or names a piece's edge, has to be entered in one of the tables."""
    levels = {(kind, f) for kind, names in NAMES.items() for f in names if f == "level" or f.endswith("_level")}
    assert levels == {(kind, f) for kind, names in AT_LEVELS.items() for f in names}
    owners = {
        kind
        for kind in vars(syntax).values()
        if isinstance(kind, type)
        and issubclass(kind, syntax.Node)
        and {"piece", "owner"} & set(getattr(kind, "__match_args__", ()))
    }
    assert owners - {syntax.CordLine} == set(AT_EDGES)
