"""The lines of source that a diagnostic speaks of, with a mark and its words under each place."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from walewright.record import record
from walewright.report.columns import WIDEST, harmless, named, shown, width
from walewright.report.model import COMMAND_LINE, PRINTED_WORDS, Diagnostic, Label, Severity
from walewright.report.paint import Paint
from walewright.report.places import Source, TextPlace
from walewright.report.said import Said, said
from walewright.report.wording import Language, phrased

PRIMARY, FURTHER = "^", "-"
CUT = "…"


@record
class MarkedText:
    """A label where it begins: from column to column of one line, counted from 1, the last not marked."""

    line: int
    start: int
    end: int
    text: str
    primary: bool


@record
class View:
    """The part of a line that is shown: letters `first..last` of it (counted from 0, the last not shown)."""

    text: str
    first: int
    last: int

    def column(self, letter: int) -> int:
        """Terminal columns before that letter (counted from 0)."""
        cut = width(CUT) if self.first else 0
        inside = min(max(letter, self.first), self.last)
        return cut + _columns(self.text[self.first : inside])

    def shown(self) -> str:
        """The letters, with dots where some are cut off."""
        inside = "".join(shown(c) for c in self.text[self.first : self.last])
        return f"{CUT if self.first else ''}{inside}{CUT if self.last < len(self.text) else ''}"


def called(file: str, language: Language) -> str:
    """A file by its name; what is read in place of one by the language's word for it."""
    if file == COMMAND_LINE:
        return phrased(said("shown/command-line"), language)
    return phrased(said("shown/printed-words"), language) if file == PRINTED_WORDS else named(file)


def excerpt(
    diagnostic: Diagnostic, words: Sequence[str], known: Mapping[str, Source], paint: Paint, language: Language
) -> list[str]:
    """Lines of the report: for every file a heading and its marked lines. The file of the first label comes first.
    `words`: what stands at each of its labels."""
    lines: list[str] = []
    by_file: dict[str, list[tuple[Label, str]]] = {}
    for label, text_of in zip(diagnostic.labels, words, strict=True):
        if label.span.file:
            by_file.setdefault(label.span.file, []).append((label, text_of))
    for file, labels in by_file.items():
        name = called(file, language)
        if file not in known:
            lines.append(_place(said("shown/in", file=_NAME), name, language, paint))
            lines += [f"  {paint.plain(harmless(words))}" for _, words in labels if words]
            continue
        text = known[file]
        begin = text.place(labels[0][0].span.start)
        at = said("shown/at", file=_NAME, line=begin.line, column=begin.column)
        lines.append(_place(at, name, language, paint))
        marks = [_mark(label, words, text, label is diagnostic.labels[0], language) for label, words in labels]
        lines += _marked(text, marks, diagnostic.severity, paint)
    return lines


_NAME = "\ue000"
"""Stands for the name of a file while its line is put together: the name is painted otherwise."""


def _place(at: Said, name: str, language: Language, paint: Paint) -> str:
    before, _, after = phrased(at, language).partition(_NAME)
    return f"  {paint.faint(before.rstrip())} {paint.plain(name)}{paint.faint(after) if after else ''}"


def _mark(label: Label, told: str, text: Source, primary: bool, language: Language) -> MarkedText:
    start, end = text.place(label.span.start), text.place(label.span.end)
    words = harmless(told)
    if end.line > start.line:
        words = f"{words} {phrased(said('shown/to-line', line=end.line), language)}".strip()
        end = TextPlace(start.line, len(text.line(start.line)) + 1)
    # An empty place, such as the end of a line, gets a mark of one column.
    return MarkedText(start.line, start.column, max(end.column, start.column + 1), words, primary)


def _marked(text: Source, marks: list[MarkedText], severity: Severity, paint: Paint) -> list[str]:
    numbers = sorted({m.line for m in marks})
    margin = len(str(numbers[-1]))
    bar = paint.faint(f"{' ' * margin} |")
    lines = [bar]
    for before, number in zip((None, *numbers), numbers, strict=False):
        if before is not None and number > before + 1:
            lines.append(paint.faint(f"{' ' * margin} :"))
        here = sorted((m for m in marks if m.line == number), key=lambda m: (m.start, not m.primary))
        view = _view(text.line(number), here[0])
        lines.append(f"{paint.faint(f'{number:>{margin}} |')} {paint.plain(view.shown())}".rstrip())
        for mark in here:
            begin = view.column(mark.start - 1)
            long = max(1, view.column(mark.end - 1) - begin)
            sign = (PRIMARY if mark.primary else FURTHER) * long
            words = f" {mark.text}" if mark.text else ""
            lines.append(f"{bar} {' ' * begin}{paint.mark(sign + words, mark.primary, severity)}")
    return lines


def _view(line: str, mark: MarkedText) -> View:
    """All of a line, or as much of it around its first mark as is wide enough to understand it."""
    if _columns(line) <= WIDEST:
        return View(line, 0, len(line))
    first = last = min(mark.start - 1, len(line))
    taken = 0
    # A third of the room goes to what stands before the mark.
    while first > 0 and (step := _columns(line[first - 1])) + taken <= WIDEST // 3:
        first, taken = first - 1, taken + step
    while last < len(line) and (step := _columns(line[last])) + taken <= WIDEST:
        last, taken = last + 1, taken + step
    return View(line, first, last)


def _columns(text: str) -> int:
    return width("".join(shown(c) for c in text))
