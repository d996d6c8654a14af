"""A bench copy's lines, column by column: what stands in them is what the line says, and no line of it is a row of a table."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from tests.made_of import FEW, made
from walewright import knit, write
from walewright.knit.bench_steps import BenchLine
from walewright.languages import printed
from walewright.write.model import Instructions, Sentence

LANGUAGES = ("english", "german")


def copy_of(name: str, language: str) -> tuple[Instructions, list[BenchLine]]:
    """The copy, and the lines of its plan in their order."""
    outcome = made(name, language, FEW[name][:1])
    assert outcome.design is not None
    charts = outcome.design.charts
    unrolled = knit.unrolled(outcome.plans[0], charts)
    lines = [part for block in unrolled for _, parts in block.paragraphs for part in parts if isinstance(part, BenchLine)]
    return write.write_bench(outcome.plans[0], unrolled, printed(language).writing, charts), lines


def sentences(copy: Instructions) -> Iterator[Sentence]:
    return (s for section in copy.sections for paragraph in section.paragraphs for s in paragraph.sentences)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", ["mooring", "dunlin", "curlew", "shoal", "turnstone"])
def test_columns_have_what_the_line_says(name: str, language: str) -> None:
    copy, lines = copy_of(name, language)
    told = [s for s in sentences(copy) if s.bench is not None]
    assert len(told) == len(lines)
    for sentence, line in zip(told, lines, strict=True):
        cells = sentence.bench
        assert cells is not None
        assert (cells.rows, cells.row, cells.side) == (line.rows, line.row, line.side or "")
        assert (cells.in_work, cells.held, cells.waiting) == (line.in_work, line.held, line.waiting)
        assert (sentence.row, sentence.side) == ("" if line.row is None else str(line.row), line.side or "")
        assert (sentence.sizes, sentence.check) == ((0,), False)
        # Cut where another column begins, the words are the sentence still.
        cut = "".join(run.text for _, runs in cells.stretches for run in runs)
        assert cut.split() == sentence.text.split()
        assert [place for place, _ in cells.stretches] in (["where", "what", "counts"], ["what", "counts"])
        phrases = (*cells.charts, *cells.what)
        assert len(phrases) == len(line.body) == len(sentence.kinds)
        assert all("".join(run.text for run in phrase) in sentence.text for phrase in phrases)
    assert not any(paragraph.table for section in copy.sections for paragraph in section.paragraphs)


@pytest.mark.parametrize("language", LANGUAGES)
def test_each_word_that_is_counted_has_its_plural(language: str) -> None:
    """One of a thing, and several: as a dictionary has them; abbreviations, and the German "Mal" of times, are alike."""
    words = {
        "english": {
            **{"st": ("st", "sts"), "row": ("row", "rows"), "time": ("time", "times"), "loop": ("loop", "loops")},
            **{"open_loop": ("open loop", "open loops"), "needle": ("needle", "needles"), "number": ("number", "numbers")},
            "seam": ("seam", "seams"),
            "its": ("its", "their"),
        },
        "german": {
            **{"st": ("M", "M"), "row": ("Reihe", "Reihen"), "time": ("Mal", "Mal"), "loop": ("Masche", "Maschen")},
            **{"open_loop": ("offene Masche", "offenen Maschen"), "needle": ("Nadel", "Nadeln"), "number": ("Zahl", "Zahlen")},
            "seam": ("Naht", "Nähte"),
            "its": ("ihr", "ihr"),
        },
    }[language]
    nouns = printed(language).writing.nouns
    assert {name: (noun.one, noun.many) for name, noun in nouns.items()} == words
