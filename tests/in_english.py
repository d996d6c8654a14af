"""Writing and reading back in English, for tests that are about something else than the language."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright import readback
from walewright import write as writing
from walewright.design.model import Chart
from walewright.knit.operations import Work
from walewright.knit.steps import SizePlan, Step, Words
from walewright.readback import sentences
from walewright.readback.charts import ReadChart, Wrong
from walewright.readback.charts import drawing as drawing_in
from walewright.readback.english import LANGUAGE as READING
from walewright.readback.layout import PrintedLine as PrintedLine
from walewright.readback.layout import PrintedSheet, PrintedText
from walewright.readback.layout import is_note as is_note_in
from walewright.readback.layout import laid_out as laid_out_in
from walewright.report.model import Diagnostic
from walewright.write import charts, grid, lines, sections, words
from walewright.write.english import LANGUAGE as WRITING
from walewright.write.model import ChartText, Instructions, Sentence
from walewright.write.said import Phrase, StepSaid, prose


def write(plans: tuple[SizePlan, ...], sizes: Sequence[str] | None = None, charts: Sequence[Chart] = ()) -> Instructions:
    return writing.write(plans, WRITING, sizes, charts)


def plain_text(instructions: Instructions) -> str:
    return writing.plain_text(instructions, WRITING)


def read_back(text: str, size: int) -> tuple[Work | None, tuple[Diagnostic, ...]]:
    return readback.read_back(text, size, READING)


def read_back_all(text: str) -> tuple[tuple[Work, ...] | None, tuple[Diagnostic, ...]]:
    return readback.read_back_all(text, READING)


def said(line: str) -> tuple[sentences.Said, ...] | sentences.Unreadable:
    return sentences.said(line, READING)


def chart_line(words: str) -> sentences.Phrase | sentences.Unreadable:
    return sentences.chart_line(words, READING)


def key_meaning(words: str) -> sentences.Phrase | sentences.Unreadable:
    return sentences.meaning(words, READING)


def rules() -> tuple[tuple[str, tuple[str, ...]], ...]:
    """The rules of the grammar: (name, what it expands to)."""
    return tuple((r.origin.name, tuple(symbol.name for symbol in r.expansion)) for r in sentences.parser(READING).rules)


def laid_out(text: str) -> PrintedText:
    return laid_out_in(text, READING)


def is_note(line: PrintedLine) -> bool:
    return is_note_in(line, READING)


def drawing(sheet: PrintedSheet) -> ReadChart | Wrong:
    return drawing_in(sheet, READING)


def heading(name: str, copies: tuple[int, ...]) -> str:
    return sections.heading(name, copies, WRITING)


def phrase(told: StepSaid) -> Phrase:
    return words.phrase(told, WRITING.for_sizes(("S", "M", "L")))


def title(of: Words) -> str:
    """What a paragraph or a track is called."""
    return prose(of, WRITING)


def has_number(step: Step) -> bool:
    return words.has_number(step, WRITING)


def sentence(line: lines.Line, group: tuple[int, ...]) -> Sentence:
    return lines.sentence(line, group, WRITING)


def chart_text(chart: Chart) -> ChartText:
    return charts.chart_text(chart, WRITING)


def grid_lines(chart: ChartText) -> Iterator[str]:
    return grid.grid_lines(chart, WRITING)
