"""The words of shipped garments, in each language: read back, they are the work that was planned; what is no instruction (titles,
notes, keys of charts, what is said of a part) stands as ever."""

from __future__ import annotations

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.made_of import FEW, made, read

LANGUAGES = ("english", "german")


@pytest.mark.parametrize("name", FEW)
@pytest.mark.parametrize("language", LANGUAGES)
def test_the_words_are_the_plan(name: str, language: str) -> None:
    outcome = made(name, language)
    assert read(outcome, outcome.plain_text) == outcome.works


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", ["dunlin", "mooring", "barnacle", "breakwater", "turnstone"])
def test_a_whole_page_as_ever(name: str, language: str, snapshot: SnapshotAssertion) -> None:
    assert made(name, language).plain_text == snapshot


@pytest.mark.parametrize("name", ["dunlin", "turnstone"])
def test_what_is_mirrored_is_said_once(name: str) -> None:
    """The other half beside an opening is told by the steps of the first, in both languages, and so in fewer lines."""
    size = FEW[name][:1]
    english, german = (made(name, language, size).plain_text for language in LANGUAGES)
    assert ", mirrored." in english
    assert english.count("mirrored") == german.lower().count("gespiegelt wie")
