"""Every shipped garment put on pages in another language: nothing English is left but what its author wrote."""

from __future__ import annotations

import html as entities
import re

import pytest

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


@pytest.mark.parametrize("units", ["cm", "both"])
@pytest.mark.parametrize("name", GARMENTS)
def test_no_word_of_english_is_left(name: str, units: str) -> None:
    outcome = compiled(name)
    design, counts, instructions, proof = outcome.result()
    turned = every_text(instructions)
    options = PageOptions(units=units)  # type: ignore[arg-type]
    page = html(compose(TURNED, ProvenPattern(design, counts, turned, proof, outcome.fit), options))
    assert '<html lang="en-x-dotted">' in page
    text = entities.unescape(re.sub(r"<[^>]*>", " ", re.sub(r"<style>.*?</style>", "", page, flags=re.DOTALL)))
    assert "Mätërïäls" in text
    assert sorted(undotted(text.replace("_", " ")) - authors(name) - PROGRAM - SIGNS) == []


def test_a_word_of_english_would_be_seen() -> None:
    assert undotted("Rows in all, RC 84, dräwn üp") == {"rows", "in", "all"}
