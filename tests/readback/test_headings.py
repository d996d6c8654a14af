"""Headings of pieces in a language whose nouns have capitals: plain for the names that a reader expects, and read back for all."""

from __future__ import annotations

import pytest

from tests.write.test_repeated import ENDED, block, cast_on, knitted
from walewright.knit import expand
from walewright.knit.steps import SizePlan
from walewright.readback import read_back_all
from walewright.readback.german import LANGUAGE as READ
from walewright.write import plain_text, write
from walewright.write.german import LANGUAGE


@pytest.mark.parametrize(
    ("name", "heading"),
    [
        ("Rückenteil", "Rückenteil"),
        ("Ärmel_Bund", "Ärmel\N{NO-BREAK SPACE}Bund"),
        ("linkes_Vorderteil", "Linkes\N{NO-BREAK SPACE}Vorderteil"),
        ("zweite_Blende", "Zweite\N{NO-BREAK SPACE}Blende"),
        ("Linkes_Vorderteil", "„Linkes\N{NO-BREAK SPACE}Vorderteil“"),
        ("linksrum", "„linksrum“"),
        ("sleeve", "„sleeve“"),
        ("Ausarbeitung", "„Ausarbeitung“"),
        ("Strickschrift_Rauten", "„Strickschrift\N{NO-BREAK SPACE}Rauten“"),
    ],
)
def test_a_name_is_read_back_from_its_german_heading(name: str, heading: str) -> None:
    """The second piece ends as the first, and names it in a sentence."""
    first = block(name, cast_on(20), ("Knit", knitted(20, 54)), ("Finish", ENDED))
    second = block("Vorderteil", cast_on(22), ("Knit", knitted(22, 54)), ("Finish", (*knitted(22, 60), *ENDED)))
    third = block("Ärmel", *first.paragraphs)
    plans = (SizePlan("S", (first, second, third)),)
    made = write(plans, LANGUAGE)
    assert made.sections[0].title == heading
    assert made.sections[2].sentences[0].refers == name
    assert read_back_all(plain_text(made, LANGUAGE), READ) == ((expand(plans[0]),), ())
