"""What a statement stands for where the author left a part of it out, and where what was said stands."""

from __future__ import annotations

import pytest

from walewright import source
from walewright.source.syntax import Node


def node(kind: str, line: str) -> tuple[Node, str]:
    """The statement of a line in such a block, and all of the text."""
    text = f"{kind}\n    {line}" if kind else line
    tree, told = source.read("", text)
    assert told == ()
    return (tree.statements[0].body[0] if kind else tree.statements[0]), text  # type: ignore[union-attr]


@pytest.mark.parametrize(
    ("kind", "line", "unsaid"),
    [
        ("", "band a with b along c neck", {"holes": 0, "hole_stitches": 0, "first": None, "last": None, "facing": ""}),
        (
            "",
            "join a side to b side",
            {"easing": None, "longer": None, "way": "sewn", "matching": False, "next_copy": ""},
        ),
        (
            "",
            "edging e in f, chained",
            {"depth": None, "when": "after", "cast_off": "chain", "mock": 0, "fold_tension": None, "inside_tension": None},
        ),
        ("", "edging e in f, 3 cm deep", {"kind": "plain"}),
        ("", "piece a in b", {"copies": 1, "mirror_of": None, "body": (), "parity": "even", "purpose": "", "like": None}),
        ("", 'yarn f "w", 50 g = 82 m', {"count": None, "colour": None}),
        ("", "require a <= b", {"because": None}),
        ("", "machine bulky", {"body": ()}),
        ("sizes S", "length 54 cm", {"table": None, "table_row": None, "to_fit": False, "own": (), "about": ""}),
        ("sizes S", "length from women bust", {"values": (), "unit": None, "to_fit": False}),
        ("fabric f", "stocking stitch in wool at tension 4", dict.fromkeys(("every", "chart", "fit", "edge")) | {"stripes": ()}),
        ("fabric f", "swatch 4 stitches by 6 rows = 3 cm by 3 cm", {"weight": None, "loop": None}),
        ("chart c", "key X knit", dict.fromkeys(("yarn", "cross", "over", "hung_first"))),
        ("chart c", "repeat 6 stitches", {"after": 0}),
        (
            "piece a in b",
            "start 3 cm wide on waste yarn",
            {"way": "waste", "edging": None, "along": (), "most": None, "facing": ""},
        ),
        (
            "piece a in b",
            "edges straight to top",
            dict.fromkeys(("width", "by", "cast_off", "times", "called", "way", "inset", "width_most", "every"))
            | {"at_once": 1, "in_turn": (), "larger": "", "begins_moving": False, "ends_moving": False},
        ),
        ("piece a in b", "slot s 3 cm wide at palm", {"offset": None, "taken": "waste"}),
        (
            "piece a in b",
            "neck 3 cm wide, 3 cm deep, round",
            {"flat": None, "way": None, "inset": None, "taken": "waste", "ends_moving": False},
        ),
        ("piece a in b", "shoulders held from tip", {"edge": "both"}),
        ("piece a in b", "fabric rib from hem to hip", {"width": None, "offset": None, "repeats": None}),
        ("piece a in b", "motif anchor at yoke", {"offset": None}),
        ("piece a in b", "wedge 3 cm wide at both edges from a to b, held in", {"rest": None}),
    ],
)
def test_what_is_left_out_has_one_meaning(kind: str, line: str, unsaid: dict[str, object]) -> None:
    found, _ = node(kind, line)
    assert {field: getattr(found, field) for field in unsaid} == unsaid


def test_the_place_of_a_part_is_its_own() -> None:
    found, text = node("", "edging e in f, 3 cm deep, cast off sewn, added after")
    for field, words in (("cast_off", "cast off sewn"), ("when", "added after"), ("depth", "3 cm deep")):
        place = found.place_of(field)
        assert place is not None
        assert text[place.start : place.end] == words
    assert found.place_of("fold_tension") is None
    assert found.place_of("nothing that is a field") is None
