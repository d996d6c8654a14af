"""Every shipped garment put on pages in another language: nothing English is left but what its author wrote."""

from __future__ import annotations

import html as entities
import re
from typing import Literal

import pytest

from tests.draws import few_of
from tests.guide.turned import TURNED, every_text, undotted
from tests.whole.shipped_once import GARMENTS, compiled
from walewright import world
from walewright.sheet import PageOptions, ProvenPattern, compose, html

PROGRAM = {"walewright", "build", "size", "tension", "swatch", "measure", "dial", "yarn", "bed", "choose", "or", "rows", "wale"}
"""What is typed: the program's name, its command and options, and the form of a tension's value."""

SIGNS = {"jis", "col", "cor"}
"""A standard, and abbreviations of the instructions, which are not of this language."""


def authors(name: str) -> set[str]:
    """Every word of the source, and of the beds and tables that it may name."""
    outcome = compiled(name)
    shipped = [
        world.shipped_text("patterns", f"{folder}/{file}")
        for folder, suffix in (("machines", ".wale"), ("tables", ".csv"), ("tables", ".toml"), ("shapes", ".wale"))
        for file in world.shipped_names("patterns", folder, suffix)
    ]
    return undotted(" ".join((outcome.text, name, *shipped)).replace("_", " "))


PAGES = [(name, ("cm", "both")[(turn + at) % 2]) for turn in range(2) for at, name in enumerate(GARMENTS)]
"""Each garment with each way to tell lengths: first every garment once, with one or the other in turn."""


@pytest.mark.parametrize("page", few_of(PAGES, len(GARMENTS)), ids="-".join)
def test_no_word_of_english_is_left(page: tuple[str, Literal["cm", "both"]]) -> None:
    name, units = page
    outcome = compiled(name)
    design, counts, instructions, proof = outcome.result()
    turned = every_text(instructions)
    options = PageOptions(units=units)  # type: ignore[arg-type]
    made = html(compose(TURNED, ProvenPattern(design, counts, turned, proof, outcome.fit), options))
    assert '<html lang="en-x-dotted">' in made
    text = entities.unescape(re.sub(r"<[^>]*>", " ", re.sub(r"<style>.*?</style>", "", made, flags=re.DOTALL)))
    assert "Mätërïäls" in text
    assert sorted(undotted(text.replace("_", " ")) - authors(name) - PROGRAM - SIGNS) == []


def test_a_word_of_english_would_be_seen() -> None:
    assert undotted("Rows in all, RC 84, dräwn üp") == {"rows", "in", "all"}
