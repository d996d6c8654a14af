"""Names of the source on the page: as words, whatever they are names of."""

from __future__ import annotations

import re

import pytest

from tests.whole.shipped_once import compiled
from walewright.languages import known, printed
from walewright.sheet import PageOptions, ProvenPattern, compose
from walewright.sheet.text_copy import text_copy
from walewright.write import plain_text, write

TYPED = re.compile(r"--size (\"[^\"]*\"|\S+)")
"""What is typed has to be as the source has it."""


@pytest.mark.parametrize("language", known())
@pytest.mark.parametrize("name", ["teasel", "driftline", "shoal"])
def test_no_name_is_printed_as_the_source_spells_it(name: str, language: str) -> None:
    outcome, words = compiled(name), printed(language)
    design, counts, _, proof = outcome.result()
    assert any("_" in size for size in design.sizes)
    instructions = write(outcome.plans, words.writing, design.sizes, design.charts)
    pattern = ProvenPattern(design, counts, instructions, proof, outcome.fit)
    sheet = compose(words.guide, pattern, PageOptions())
    text = text_copy(words.guide, sheet, pattern, plain_text(instructions, words.writing), "cm")
    assert not re.findall(r"\w*[^\W_]_[^\W_]\w*", TYPED.sub("", text))
