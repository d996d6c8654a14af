"""Pages of shipped garments and their bench copies, in each language: what is read is the work that was planned."""

from __future__ import annotations

import pytest

from tests.made_of import FEW, bench_text, made, read, without_checks
from walewright import readback
from walewright.languages import printed
from walewright.readback.language import PARTS

LANGUAGES = ("english", "german")
BENCH = ("mooring", "dunlin", "hawser", "barnacle", "limpet", "curlew")


@pytest.mark.parametrize("name", ["barnacle", *(n for n in FEW if n != "barnacle")])
def test_what_is_read_is_the_plan(name: str) -> None:
    """Of all sizes at once, and of each by itself."""
    for language in LANGUAGES:
        outcome = made(name, language)
        assert read(outcome, outcome.plain_text) == outcome.works
    size = len(outcome.works) - 1
    assert readback.read_back(outcome.plain_text, size, printed(LANGUAGES[1]).reading) == (outcome.works[size], ())


@pytest.mark.parametrize("name", BENCH)
@pytest.mark.parametrize("language", LANGUAGES)
def test_what_is_read_of_a_bench_copy_is_the_moves_of_the_plan(name: str, language: str) -> None:
    outcome = made(name, language, FEW[name][:1])
    assert without_checks(read(outcome, bench_text(outcome))) == without_checks(outcome.works)


@pytest.mark.parametrize("language", LANGUAGES)
def test_an_edge_is_read_by_the_words_that_it_is_written_with(language: str) -> None:
    tongue = printed(language)
    for edge, words in tongue.writing.edges.items():
        if edge in PARTS:
            # Which part is meant stands behind the name, and where such a word comes first it is an author's name.
            assert tongue.reading.edge(f"sleeve_2 {words}") == f"sleeve_2 {edge}"
            assert tongue.reading.edge(f"{words} {words}") == f"{words} {edge}"
            assert tongue.writing.edge(f"{edge} {edge}") == f"{edge} {words}"
            continue
        assert tongue.reading.edge(words) == edge
        assert tongue.reading.edge(f"{words} sleeve_2") == f"{edge} sleeve_2"
    assert tongue.reading.edge("of_my_own") == "of_my_own"
