"""Laws of printed words: each title, note and mark that the planner or the writer names has its words in each language, and each
word its use. The code is read, not run."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from tests.laws.code_tree import breaches, each_stage
from tests.laws.reported import fields_of, literals, of_package, phrases
from walewright.knit import steps as st
from walewright.languages import known, printed
from walewright.report.english import ENGLISH
from walewright.write.bench import BENCH_PARTS
from walewright.write.words import PARTS, named

NAMING = tuple(path for package in ("knit", "write") for path in of_package(package))
NAMING += tuple(path for path in of_package("glue") if path.name == "model.py")
"""What a glued garment says of itself is printed too."""

WORKED_OUT = {
    *(f"{side}-{part}" for side in ("left", "right") for part in ("half", "part")),
    "middle-part",
    *(f"return-to-{part}" for part in ("half", "part")),
    *(f"{what}/one" for what in ("columns", "rows")),
    *(f"{what} at {ends}" for what in ("increase", "decrease") for ends in ("both ends", "left end", "right end")),
    *(f"hold at {side}" for side in ("left", "right")),
}
"""Keys that are put together of parts; those of marks are of the kinds of cells."""


def lacking(path: Path, language: str) -> list[str]:
    """What a file names that has no words in a language, or words with places for other facts."""
    words = printed(language).writing.prose.phrases
    found = []
    made = [phrase for phrase in phrases(path) if phrase.key]
    # A key that is put together is every key that it can be: those are in `WORKED_OUT`.
    several = {phrase.line for phrase in made if len({p.key for p in made if p.line == phrase.line}) > 1}
    for phrase in made:
        if phrase.key not in words and phrase.key not in ENGLISH.phrases and phrase.line not in several:
            found.append(f"line {phrase.line}: no words for {phrase.key}")
        elif phrase.key in words and phrase.line not in several and not fields_of(words[phrase.key]) <= phrase.facts:
            found.append(f"line {phrase.line}: {phrase.key} takes {sorted(fields_of(words[phrase.key]))}")
    return found


@each_stage(NAMING)
@pytest.mark.parametrize("language", known())
def test_what_is_named_has_words_that_take_its_facts(paths: list[Path], language: str) -> None:
    assert breaches(lambda path: lacking(path, language), paths) == {}


@pytest.mark.parametrize("language", known())
def test_every_word_has_its_use(language: str) -> None:
    words = printed(language).writing.prose.phrases
    written = frozenset().union(*(literals(path) for path in NAMING))
    assert {key for key in words if not key.startswith("mark/")} - written - WORKED_OUT == set()
    assert set(words) >= WORKED_OUT


@pytest.mark.parametrize("language", known())
def test_every_kind_of_step_has_a_sentence(language: str) -> None:
    sentences = printed(language).writing.sentences
    steps = [kind for kind in vars(st).values() if isinstance(kind, type) and issubclass(kind, st.Step)]
    parts = {st.Step, st.EdgeInSeam, st.SeamOf, st.Track}
    assert {named(kind) for kind in steps if kind not in parts} - set(sentences) == set()


@pytest.mark.parametrize("language", known())
def test_every_part_of_a_sentence_is_one_that_is_put_together(language: str) -> None:
    used = {name for words in printed(language).writing.sentences.values() for name in re.findall(r"\{@(\w+)\}", words)}
    assert used == {*PARTS, *BENCH_PARTS}
