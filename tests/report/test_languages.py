"""The words of messages in every language: each says what English says, with the same facts, and has all words of closed kinds."""

from __future__ import annotations

from collections.abc import Iterator
from importlib import import_module
from string import Formatter

import pytest

from tests.laws.code_tree import LANGUAGES, PACKAGE
from tests.laws.reported import GROUPS
from walewright.report.english import ENGLISH
from walewright.report.wording import Language

OTHERS = sorted(name for name in LANGUAGES - {"english"} if (PACKAGE / "report" / name).is_dir())
"""Languages that are told besides English."""


def told(name: str) -> Language:
    found: Language = import_module(f"walewright.report.{name}").LANGUAGE
    return found


def texts(language: Language) -> dict[str, str]:
    """Every sentence and part of one, by where it stands."""
    found = {f"phrase {key}": words for key, words in language.phrases.items()}
    for key, (stated, denied) in language.clauses.items():
        found |= {f"clause {key}": stated, f"clause {key}, denied": denied}
    for kind, entry in language.wordings.items():
        found[f"message {kind}"] = entry.message
        found |= {f"{group} {kind} {key}": words for group in GROUPS for key, words in getattr(entry, group).items()}
    return found


def places(words: str) -> Iterator[tuple[str, str]]:
    """(fact, how it is written) of every place, those within the choices of another too."""
    for _, name, way, _ in Formatter().parse(words):
        if name:
            yield name, way or ""
            yield from places(way or "")


@pytest.mark.parametrize("name", OTHERS)
def test_a_language_has_each_sentence_of_english_and_no_other(name: str) -> None:
    assert sorted(texts(told(name)).keys() ^ texts(ENGLISH).keys()) == []


@pytest.mark.parametrize("name", OTHERS)
def test_a_sentence_has_the_facts_that_it_has_in_english(name: str) -> None:
    english = {where: {fact for fact, _ in places(words)} for where, words in texts(ENGLISH).items()}
    own = {where: {fact for fact, _ in places(words)} for where, words in texts(told(name)).items()}
    assert {where: sorted(facts ^ english[where]) for where, facts in own.items() if facts != english[where]} == {}


@pytest.mark.parametrize("name", OTHERS)
def test_a_fact_is_a_term_only_where_it_is_one_in_english(name: str) -> None:
    """Any other is no word that the table has."""
    ways = ("term", "terms", "@")
    english = {where: {fact for fact, way in places(words) if way.startswith(ways)} for where, words in texts(ENGLISH).items()}
    own = {where: {fact for fact, way in places(words) if way.startswith(ways)} for where, words in texts(told(name)).items()}
    assert {where: sorted(facts - english[where]) for where, facts in own.items() if facts - english[where]} == {}


@pytest.mark.parametrize("name", OTHERS)
def test_a_language_has_all_words_of_closed_kinds(name: str) -> None:
    language = told(name)
    assert language.terms.keys() == ENGLISH.terms.keys()
    assert language.units.keys() == ENGLISH.units.keys()
    assert len(language.words) == len(ENGLISH.words)
    named = {key.removesuffix("/many") for key in language.phrases if key.endswith("/many")}
    if language.genders:
        assert language.genders.keys() == language.terms.keys() | named
        assert set(language.genders.values()) <= set("mfn")
    chosen = [words for words in texts(language).values() for _, way in places(words) if way.startswith("@")]
    assert bool(chosen) == bool(language.genders)
    assert all(way.count("|") == 2 for words in chosen for _, way in places(words) if way.startswith("@"))
