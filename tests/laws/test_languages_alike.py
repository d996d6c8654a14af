"""The law of printed languages: each has every key that English has and no other, and every sentence the same facts. That of
messages is held by `tests/report/test_languages.py`.

What a language only chooses a word by (`{count:=one|more}`) is no fact of its sentence: another may need one word for both.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping
from string import Formatter
from typing import Any

import pytest

from walewright.languages import ENGLISH, PrintedIn, known, printed
from walewright.readback.language import PARTS

OTHERS = tuple(name for name in known() if name != ENGLISH)


def facts(template: str) -> frozenset[str]:
    """What a sentence says of its facts, those within places included."""
    found: set[str] = set()
    for _, name, way, _ in Formatter().parse(template):
        if name is not None:
            found |= {name} if not (way or "").startswith(("=", "?", "@")) else set()
            found |= facts(way or "")
    return frozenset(found)


def fields(template: str) -> frozenset[str]:
    """The same of a sentence of the instructions: its fields and parts, and the counter; nouns and stitches are its grammar."""
    return frozenset(re.findall(r"\{(@?\w+(?::\w+)?)\}", template)) - {"ST", "STS"}


def unlike(what: str, one: Mapping[str, Any], other: Mapping[str, Any], of: Callable[[Any], object]) -> Iterator[str]:
    """Keys that only one has, and entries that are not the same in what is asked of them."""
    yield from (f"{what}: no {key}" for key in one.keys() - other.keys())
    yield from (f"{what}: {key} besides" for key in other.keys() - one.keys())
    yield from (f"{what}: {key}" for key in one.keys() & other.keys() if of(one[key]) != of(other[key]))


def _written(english: PrintedIn, other: PrintedIn) -> Iterator[str]:
    one, two = english.writing, other.writing
    yield from unlike("sentences", one.sentences, two.sentences, fields)
    yield from unlike("nouns", one.nouns, two.nouns, lambda noun: noun.short)
    yield from unlike("abbreviations", one.abbreviations, two.abbreviations, len)
    yield from unlike("edges", one.edges, two.edges, bool)
    yield from unlike("prose", one.prose.phrases, two.prose.phrases, facts)
    # A sentence of its own may bend a word in its own way.
    own = {name for name in two.terms.keys() - one.terms.keys() if name.partition(".")[2] in one.terms}
    terms = {name: words for name, words in two.terms.items() if name not in own}
    yield from unlike("terms", one.terms, terms, frozenset)
    yield from (f"terms: {name}" for name in own if two.terms[name].keys() != one.terms[name.partition(".")[2]].keys())


def _guided(english: PrintedIn, other: PrintedIn) -> Iterator[str]:
    one, two = english.guide, other.guide
    yield from unlike("guide", one.words.phrases, two.words.phrases, facts)
    yield from unlike("terms", one.words.terms, two.words.terms, len)
    yield from unlike("advice", one.advice, two.advice, lambda advice: (len(advice.lines), advice.ordered))
    yield from unlike("how-to", one.how_to, two.how_to, lambda text: all((text.title, text.text, text.shown)))


@pytest.mark.parametrize("name", OTHERS)
@pytest.mark.parametrize("part", [_written, _guided], ids=lambda part: part.__name__.strip("_"))
def test_a_language_has_what_english_has(name: str, part: Callable[[PrintedIn, PrintedIn], Iterator[str]]) -> None:
    assert sorted(part(printed(), printed(name))) == []


@pytest.mark.parametrize("name", OTHERS)
def test_a_language_is_written_and_read_alike(name: str) -> None:
    """The few words that writer and reader have apart from sentences."""
    tongue = printed(name)
    marks, reading = tongue.writing.marks, tongue.reading
    assert (marks.dash, marks.opening, marks.between, marks.closing) == (
        *(reading.dash, reading.opening, reading.between, reading.closing),
    )
    assert (marks.quotes, marks.point) == (reading.quotes, reading.point)
    # The word of a part is the language's own behind a name, and an author's before one.
    behind = {edge: word for edge, word in tongue.writing.edges.items() if edge in PARTS}
    assert {reading.edge(f"x {word}").removeprefix("x "): word for word in behind.values()} == behind
    own = {edge: word for edge, word in tongue.writing.edges.items() if edge not in PARTS}
    assert {reading.edge(word): word for word in own.values()} == own
    assert set(reading.edges) <= set(tongue.writing.edges.values())
    assert tongue.writing.prose.point == tongue.guide.words.point == tongue.telling.point == marks.point


def test_what_is_not_alike_is_seen() -> None:
    english = {"a": "{n:row|rows} of {piece}", "b": "{count:?{count} }x", "c": "y"}
    other = {"a": "{n:Reihe|Reihen}", "b": "{count:?x|y}", "d": "z"}
    assert sorted(unlike("s", english, other, facts)) == ["s: a", "s: b", "s: d besides", "s: no c"]
    assert facts("{tools:=one|more} {kind:@der|die|das}") == frozenset()
    assert fields("{rows} {rows|row} to {RC} {first:needle}{@span} {STS}") == {"rows", "RC", "first:needle", "@span"}
