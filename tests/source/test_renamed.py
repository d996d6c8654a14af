"""Names in the language that is printed: which fields hold names, and what becomes of them."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import fields
from typing import Any

import pytest

from walewright import source
from walewright.source import syntax
from walewright.source.quantities import Node
from walewright.source.renamed import FIELDS, NOT_NAMED, Words, renamed, renaming

WORDS: Words = {
    "size": {"small": "klein"},
    "value": {"waist": "Taillenumfang", "back": "Rückenbreite"},
    "level": {"waist": "Taille", "top": "Oberkante"},
    "piece": {"back": "Rückenteil", "front": "Vorderteil"},
    "edge": {"side": "Seite", "neck": "Hals", "welt": "Bund", "armhole": "Armausschnitt", "armhole_left": "linker Armausschnitt"},
    "yarn": {"wool": "Wolle"},
    "fabric": {"plain": "glatt"},
}

SOURCE = """\
sizes small M
    waist 60 70 cm
    back 40 50 cm
yarn wool "wool", 100 g = 120 m
fabric plain
    stocking stitch in wool at tension 4
edging welt in plain, 5 cm deep, added after, cast off chain
shape fitted(waist, wide)
    edges straight to waist called side
    edges slope to wide wide at top called side
piece back in plain
    levels hem 0 cm, waist waist / 3, top waist
    start back wide on waste yarn, with welt
    use fitted, waist waist, wide waist
    end cast off
piece front like back
    neck back / 3 wide, 5 cm deep, round
join back side_left to front side_right
join back welt_left to front welt_right
join back neck to front neck_centre
"""


def _kinds(of: type) -> Iterator[type]:
    for kind in of.__subclasses__():
        yield kind
        yield from _kinds(kind)


def test_every_field_of_text_is_a_name_or_is_known_to_be_none() -> None:
    told = []
    for node in set(_kinds(Node)):
        if node.__module__.startswith("walewright.source"):
            known = {*FIELDS.get(node, {}), *NOT_NAMED.get(node, ())}
            for field in fields(node):
                if str(field.type) in ("str", "str | None", "tuple[str, ...]") and field.name not in known:
                    told.append(f"{node.__name__}.{field.name}")
    # Dataclasses with slots are made twice: the first is no node that is ever made.
    assert [name for name in told if name.partition(".")[0] not in {k.__name__ for k in {*FIELDS, *NOT_NAMED}}] == []
    for node in {*FIELDS, *NOT_NAMED}:
        known = {*FIELDS.get(node, {}), *NOT_NAMED.get(node, ())}
        texts = {f.name for f in fields(node) if str(f.type) in ("str", "str | None", "tuple[str, ...]") and f.name != "said"}
        assert texts - known == set(), node


def spoken(text: str = SOURCE, words: Words = WORDS) -> str:
    tree, faults = source.read("", text)
    assert faults == ()
    by = renaming(tree.statements, words)
    # Without the blanks that put its columns under each other.
    return re.sub(r"(?<=\S) +", " ", source.tidy(syntax.Tree("", renamed(tree.statements, by))))


def test_a_name_is_another_one_by_what_it_is_the_name_of() -> None:
    told = spoken()
    for line in (
        "sizes klein M",
        "fabric glatt",
        "piece Rückenteil in glatt",
        "levels hem 0 cm, Taille Taillenumfang / 3, Oberkante Taillenumfang",
        "start Rückenbreite wide on waste yarn, with Bund",
        "piece Vorderteil like Rückenteil",
        "join Rückenteil Seite_left to Vorderteil Seite_right",
        "join Rückenteil Bund_left to Vorderteil Bund_right",
    ):
        assert line in told


def test_edges_of_the_trade_stay() -> None:
    assert "join Rückenteil neck to Vorderteil neck_centre" in spoken()


def test_what_a_shape_is_given_is_named_as_what_it_stands_for() -> None:
    told = spoken()
    assert "shape fitted(waist, wide)" in told
    assert "edges straight to waist called Seite" in told
    # The level, and then the measurement, of one name.
    assert "use fitted, waist Taille, wide Taillenumfang" in told


def test_a_part_of_an_edge_is_told_from_an_edge_of_that_name() -> None:
    own = "piece a in b\n    edges straight to top called armhole_left\nfree a armhole_left\n"
    assert "free a linker_Armausschnitt" in spoken(own)
    part = own.replace("called armhole_left", "called armhole")
    assert "free a Armausschnitt_left" in spoken(part)


@pytest.mark.parametrize(
    "words",
    [
        {"front": "back"},
        {"front": "side to side!"},
        {"front": "Teil_1"},
        {"front": ""},
        {"back": "Teil", "front": "Teil"},
    ],
)
def test_no_two_names_become_one_and_each_stays_a_name(words: dict[str, str]) -> None:
    tree, _ = source.read("", SOURCE)
    made: dict[str, Any] = dict(renaming(tree.statements, {"piece": words}).names["piece"])
    assert made == ({"back": "Teil"} if "back" in words else {})


def test_without_words_the_tree_is_the_same() -> None:
    tree, _ = source.read("", SOURCE)
    assert renamed(tree.statements, renaming(tree.statements, {})) == tree.statements
