"""The page on the printed words shows sentences that are printed so and read so."""

from __future__ import annotations

from pathlib import Path

import pytest

from walewright.readback.sentences import Loop, Phrase, Unreadable, parser, said

PAGE = (Path(__file__).parents[2] / "docs" / "words.md").read_text(encoding="utf-8")
CELLS = [
    row.split("|")[1].strip() for row in PAGE.split("\n") if row.startswith("| ") and row.split("|")[1].strip().endswith((".", ":"))
]


@pytest.mark.parametrize("words", CELLS)
def test_sentences_of_the_page_are_read(words: str) -> None:
    assert not isinstance(said(words), Unreadable)


def test_the_page_has_every_sentence() -> None:
    shown: set[str] = {"loop", "repeat", "now", "say", "track"}
    for words in CELLS:
        told = said(words)
        assert not isinstance(told, Unreadable)
        for one in told:
            shown |= {one.kind} if isinstance(one, Phrase) else {p.kind for p in one.body if not isinstance(p, Loop)}
    rules = {r.origin.name for r in parser().rules if not r.origin.name.startswith("_")}
    assert rules - {"start", "edges", "edge", "edge_name", "eased", "round", "span", "stretched", "row"} == shown
