"""Names that a reader would take for one another."""

from __future__ import annotations

import pytest

from tests.design.shaped import HEAD, LEVELS, only, piece, told
from walewright.design.lookalikes import CONFUSABLE, skeleton


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("M", "М"),  # Cyrillic
        ("cape", "саре"),  # all four letters Cyrillic
        ("front", "frοnt"),  # a Greek o
        ("front", "Front"),
        ("size1", "sizel"),
        ("size0", "sizeO"),
        ("fin", "ﬁn"),
        ("é", "e\u0301"),
        ("Ӏ", "l"),
    ],
)
def test_alike(one: str, other: str) -> None:
    assert one != other
    assert skeleton(one) == skeleton(other)


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("side_left", "side_right"),
        ("a1", "a2"),
        ("back", "black"),
        ("left_front", "leftfront"),
        ("e", "é"),
        ("XS", "XL"),
        ("д", "a"),
    ],
)
def test_unlike(one: str, other: str) -> None:
    assert skeleton(one) != skeleton(other)


def test_the_table_leads_to_latin_letters_only() -> None:
    assert all(letter.isascii() and letter.isalpha() for letter in CONFUSABLE.values())
    assert not any(chr(code).isascii() for code in CONFUSABLE)


@pytest.mark.parametrize(
    ("parts", "what"),
    [
        ((piece(), piece(name="Front")), "piece"),
        (("let chest = 3 cm", "let сhest = 4 cm", piece()), "measurement"),
        (("shape a(to)\n    edges straight to to\nshape а(to)\n    edges straight to to\n", piece("use a, to low")), "shape"),
        ((piece(levels=LEVELS.replace("middle", "hіgh")),), "level"),
        ((piece(), piece(name="back", levels=LEVELS.replace("low", "Low"))), "level"),
        ((piece("edges straight to low called side", "edges straight to high called Side"),), "edge"),
    ],
)
def test_a_name_like_another_is_told(parts: tuple[str, ...], what: str) -> None:
    said = only(*parts)
    assert said.code == "names-look-alike"
    assert said.message.startswith(f"the {what}s ")
    assert "U+" in said.notes[0]
    assert len(said.labels) == 2


def test_sizes_that_look_alike_are_told_at_the_sizes() -> None:
    said = only(piece(), head=HEAD.replace("sizes S M", "sizes M М"))
    assert said.code == "names-look-alike"
    assert said.notes == ("`M` is U+004D latin capital letter m, `М` is U+041C cyrillic capital letter em",)


def test_one_pair_is_told_once_and_kinds_are_apart() -> None:
    levels = LEVELS.replace("middle", "hіgh")
    assert told(piece(levels=levels), piece(name="back", levels=levels)).count("names-look-alike") == 1
    assert told("let Wool = 3 cm", piece()) == []
