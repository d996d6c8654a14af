"""Every key and value of a text of TOML has its place: what stands there alone reads as the value that the whole has there."""

from __future__ import annotations

import tomllib
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from walewright.catalogue.places import TomlPath, places

TEXT = r"""# A head
title = "One # and \"two\""   # a remark
'quoted key' = 'it is'
date = 2026-03-01
moment = 1979-05-27 07:32:00
long = LONGsome # text \"LONG
literal = '''raw \ " '''
many = [ "one", # first
  [1, 2.5], { a = true, b.c = [ ] },
]
empty = []
[ table . "in side" ]
x.y = -1
[[garments]]
sources = ["*.wale"]
  [garments.choices]
  sleeves = "short"
[[garments]]
sources = ["a.wale", 'b.wale'] # last
[[garments.parts]]
n = 0xff
""".replace("LONG", '"""')


def leaves(value: Any, path: TomlPath = ()) -> dict[TomlPath, Any]:
    """Every value that is no table, by where it stands; elements of lists too."""
    found: dict[TomlPath, Any] = {}
    if isinstance(value, dict):
        for name, inner in value.items():
            found |= leaves(inner, (*path, name))
        return found
    if path:
        found[path] = value
    if isinstance(value, list):
        for at, inner in enumerate(value):
            found |= leaves(inner, (*path, at))
    return found


def held(text: str) -> None:
    placed = places(text)
    for path, value in leaves(tomllib.loads(text)).items():
        start, end = placed[path].value
        if text[start:end].startswith("[["):
            continue
        assert tomllib.loads(f"x = {text[start:end]}")["x"] == value, path
        start, end = placed[path].key
        if isinstance(path[-1], str):
            assert path[-1] in text[start:end].replace("\\", "")


def test_what_stands_at_a_place_is_the_value() -> None:
    held(TEXT)


def test_tables_have_the_place_of_their_line() -> None:
    placed = places(TEXT)
    for path, line in {
        ("table", "in side"): '[ table . "in side" ]',
        ("garments", 0): "[[garments]]",
        ("garments", 0, "choices"): "[garments.choices]",
        ("garments", 1, "parts", 0): "[[garments.parts]]",
    }.items():
        start, end = placed[path].key
        assert TEXT[start:end] == line
    first, second = placed["garments", 0].key, placed["garments", 1].key
    assert first < second


NAMES = st.sampled_from(["a", "b-c", '"d e"', "'f.g'", "h_1"])
TEXTS = st.sampled_from(['"x"', "'y # z'", '"\\"]"', '"""\n,\n"""', "'''}'''", '"\\\\"'])
SCALARS = st.one_of(TEXTS, st.sampled_from(["1", "-2.5", "true", "2026-03-01", "07:32:00", "inf", "0x1f", "1e3"]))
VALUES = st.recursive(
    SCALARS,
    lambda inner: st.one_of(
        st.lists(inner, max_size=3).map(lambda parts: f"[ {', '.join(parts)} ]"),
        st.lists(inner, min_size=1, max_size=3).map(lambda parts: "[\n" + "".join(f"  {p}, # ]\n" for p in parts) + "]"),
        st.lists(inner, max_size=3).map(lambda parts: "{" + ", ".join(f"k{at} = {p}" for at, p in enumerate(parts)) + "}"),
    ),
    max_leaves=6,
)
BLANKS = st.sampled_from(["", " ", "\t", "  "])


@st.composite
def written(draw: st.DrawFn) -> str:
    """A text of TOML in some layout."""
    lines = []
    for at in range(draw(st.integers(0, 3))):
        heads = ["", f"[t{at}]", f"[t{at}.{draw(NAMES)}]", "[[list]]", f"  [[ l{at} . m ]] # here"]
        lines.append(draw(st.sampled_from(heads[1:] if at else heads)))
        for name in draw(st.lists(NAMES, unique=True, max_size=3)):
            lines.append(
                f"{draw(BLANKS)}{name}{draw(BLANKS)}={draw(BLANKS)}{draw(VALUES)}{draw(BLANKS)}{draw(st.sampled_from(['', '# x']))}"
            )
        lines.append(draw(BLANKS))
    return "\n".join(lines)


@given(written())
def test_in_any_layout(text: str) -> None:
    try:
        tomllib.loads(text)
    except tomllib.TOMLDecodeError:
        # A table that stands in two places, or a name behind a value.
        return
    held(text)


@pytest.mark.parametrize("text", ["", "\n# nothing\n"])
def test_nothing_has_no_places(text: str) -> None:
    assert places(text) == {}
