"""Lines: consecutive steps that a knitter reads as one, and the heads over lines that only some sizes work.

A line is a row of sentences, a sentence a row of steps said with commas between. What belongs to one stretch of rows is
one sentence; what is one turn of the hands (yarn in and counter back, off and yarn broken) is one line.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Literal

from walewright.knit import steps as st
from walewright.knit.manners import SayManner
from walewright.knit.operations import Side
from walewright.knit.steps import Step
from walewright.record import record
from walewright.report.said import said as said_of
from walewright.report.wording import phrased
from walewright.write.align import Column
from walewright.write.columns import ColumnsUp
from walewright.write.heads import varies
from walewright.write.language import PrintedLanguage
from walewright.write.model import Manner, Run, Sentence
from walewright.write.row_by_row import SHAPING, Rows
from walewright.write.said import Phrase, StepSaid, between, capital, joined, plain, prose, worded
from walewright.write.ticks import of_rounds
from walewright.write.words import check, has_number, kinds, phrase, repeated

SizeNumbers = tuple[int, ...]

_ONE_SENTENCE = (st.KnitRows, *SHAPING)
_ONE_LINE = (
    (st.UseYarnStep, st.SetRowCounter),
    (st.UseLooser, st.SetRowCounter),
    (st.UseYarnStep, st.ClosedStart),
    (st.ClosedStart, st.SetRowCounter),
    (st.CarriageAt, st.SetRowCounter),
    (st.BreakOff, st.OffOnWaste),
    (st.BreakOff, st.GatherAll),
    (st.BreakOff, st.SewOffAll),
    (st.NeedlesToWork, st.EveryOutOfWork),
    (st.NeedlesToWork, st.LeaveOutEvery),
    (st.CastOffAll, st.BreakOff),
    (st.ReturnHeld, st.KnitRows),
)
"""Pairs of steps where the second follows the first on the same line."""

_STATED = (st.Now, st.EdgeIs, st.Say)

_KEEPING = (
    *(st.Say, st.EdgeIs, st.MarkEdges, st.UseYarnStep, st.UseLooser, st.BreakOff),
    *(st.StartChart, st.StopChart, st.StopChartOn, st.StartStripes, st.StopStripes),
    *(st.WrapHeld, st.LatchRib, st.LatchPanel, ColumnsUp),
)
"""Steps after which the stitches of the part in work, the counter and the carriage are as before."""


@record
class Line:
    """Sentences of one printed line, each a row of columns; `sizes` are those that work any of it."""

    sentences: tuple[tuple[Column[Step], ...], ...]
    sizes: SizeNumbers

    @property
    def columns(self) -> tuple[Column[Step], ...]:
        return tuple(c for s in self.sentences for c in s)


def present(column: Column[Step]) -> SizeNumbers:
    """The sizes that have something in the column."""
    return tuple(i for i, step in enumerate(column) if step is not None)


def _step(column: Column[Step]) -> Step:
    return next(s for s in column if s is not None)


def lines(columns: Iterable[Column[Step]]) -> list[Line]:
    """The printed lines of a paragraph's columns."""
    made: list[Line] = []
    for column in columns:
        last = made[-1] if made else None
        if last is not None and _same_sentence(last, column):
            made[-1] = Line((*last.sentences[:-1], (*last.sentences[-1], column)), last.sizes)
        elif last is not None and _same_line(last, column):
            made[-1] = Line((*last.sentences, (column,)), last.sizes)
        else:
            made.append(Line(((column,),), present(column)))
    return made


def _same_sentence(line: Line, column: Column[Step]) -> bool:
    before = _step(line.columns[-1])
    return isinstance(before, _ONE_SENTENCE) and isinstance(_step(column), SHAPING) and line.sizes == present(column)


def _same_line(line: Line, column: Column[Step]) -> bool:
    before, step = _step(line.columns[-1]), _step(column)
    if isinstance(step, st.Now):
        return not isinstance(before, (*_STATED, Rows, st.Together)) and set(present(column)) <= set(line.sizes)
    return line.sizes == present(column) and any(isinstance(before, a) and isinstance(step, b) for a, b in _ONE_LINE)


def grouped(printed: Sequence[Line], sizes: int, language: PrintedLanguage) -> list[tuple[SizeNumbers, list[Line]]]:
    """Runs of lines under one head: (sizes named in the head, lines). A single line that less than half of the sizes skip
    stays among the others where each of its phrases has a graded number to be a dash; else it goes under a head of its own."""
    everybody = tuple(range(sizes))
    groups: list[tuple[SizeNumbers, list[Line]]] = []
    for i, line in enumerate(printed):
        head = everybody
        if line.sizes != everybody:
            beside = {n.sizes for n in (*printed[max(0, i - 1) : i], *printed[i + 1 : i + 2])}
            graded = all(varies(c) and all(has_number(s, language) for s in c if s) for c in line.columns)
            dashes = 2 * len(line.sizes) > sizes and graded
            if line.sizes in beside or not dashes:
                head = line.sizes
        if groups and groups[-1][0] == head:
            groups[-1][1].append(line)
        else:
            groups.append((head, [line]))
    return _headed(groups, everybody)


def _headed(groups: Sequence[tuple[SizeNumbers, list[Line]]], everybody: SizeNumbers) -> list[tuple[SizeNumbers, list[Line]]]:
    """The groups; what follows lines of some sizes and is not for all of them either has a head that says so, not "All sizes"."""
    made: list[tuple[SizeNumbers, list[Line]]] = []
    for head, some in groups:
        if made and made[-1][0] != everybody and head == everybody:
            head = tuple(size for size in everybody if any(size in line.sizes for line in some))
        if made and made[-1][0] == head:
            made[-1] = head, [*made[-1][1], *some]
        else:
            made.append((head, some))
    return made


def sentence(line: Line, group: SizeNumbers, language: PrintedLanguage) -> Sentence:
    """The line in words, for the sizes `group`."""
    runs: list[Run] = []
    for before, columns in zip((None, *line.sentences), line.sentences, strict=False):
        runs += ([Run(" ")] if runs else []) + list(_spoken(columns, group, before[-1] if before else None, language))
    last = line.columns[-1]
    row, side = _reached(last, group, language)
    return Sentence(
        runs=joined(runs),
        sizes=line.sizes,
        row=row,
        side=side,
        origin=next((s.origin for c in line.columns for s in c if s is not None and s.origin), ""),
        check=all(_is_stated(_step(c)) for c in line.columns),
        kinds=tuple(kind for c in line.columns for kind in kinds(StepSaid(c, group))),
        manner=_manner(_step(line.columns[0])),
        row_said=bool(row) and _row_said(line, group),
        row_graded=bool(row) and StepSaid(last, group).graded("row").whole,
        state=tuple(s if isinstance(s, st.Now) else None for s in last) if isinstance(_step(last), st.Now) else (),
        also_of=tuple(of for c in line.columns for of in _further(_step(c))),
        keeps=all(isinstance(_step(c), _KEEPING) for c in line.columns),
        ticks=of_rounds(line.columns),
    )


def _further(step: Step) -> tuple[str, ...]:
    """The statements that seams come from besides the step's own."""
    seams = step.seams if isinstance(step, st.JoinEdges) else ()
    return tuple(dict.fromkeys(seam.origin for seam in seams if seam.origin not in ("", step.origin)))


def _row_said(line: Line, group: SizeNumbers) -> bool:
    """Whether the counter value that the line ends with stands in it: in the check itself, or as the row that is knitted to."""
    *_, before, last = (None, *line.columns)
    if before is None or len(line.sentences[-1]) > 1 or not _counter_said(before, last):
        return True
    return isinstance(_step(before), st.KnitTo) and StepSaid(before, group).graded("row") == StepSaid(last, group).graded("row")


_MANNERS: Mapping[SayManner, Manner] = {"note": Manner.NOTE, "by hand": Manner.BY_HAND}
"""Of `steps.Say`, which stands alone on its line."""


def _manner(step: Step) -> Manner:
    return _MANNERS[step.manner] if isinstance(step, st.Say) else Manner.STEPS


def _is_stated(step: Step) -> bool:
    return isinstance(step, _STATED) and not (isinstance(step, st.Say) and step.manner == "by hand")


def _spoken(
    columns: tuple[Column[Step], ...], group: SizeNumbers, before: Column[Step] | None, language: PrintedLanguage
) -> Phrase:
    step = _step(columns[0])
    if isinstance(step, st.Say):
        text = plain(prose(step.text, language))
        return (Run(text if step.manner == "by hand" else phrased(said_of(step.manner, text=text), language.prose)),)
    phrases: list[Phrase] = []
    for column in columns:
        said = StepSaid(column, group)
        if isinstance(step, st.Repeat):
            phrases.append(repeated(said, language))
        elif before is not None and _counter_said(before, column):
            phrases.append(check(said, language, counter=False))
        else:
            phrases.append(phrase(said, language))
    return (*capital(worded(*between(language.sentences["between"], phrases))), Run(language.sentences["stop"]))


def _counter_said(before: Column[Step], column: Column[Step]) -> bool:
    """Whether `column` states the very counter values that the step before it has named."""
    for step, now in zip(before, column, strict=True):
        named = step.row if isinstance(step, st.KnitTo) else step.rows if isinstance(step, st.SetRowCounter) else None
        if now is not None and not (isinstance(now, st.Now) and now.row == named):
            return False
    return True


def _reached(column: Column[Step], group: SizeNumbers, language: PrintedLanguage) -> tuple[str, Side | Literal[""]]:
    step = _step(column)
    if not isinstance(step, st.Now):
        return "", ""
    sides = {s.side for s in column if isinstance(s, st.Now)}
    return StepSaid(column, group).graded("row").text(language), sides.pop() if len(sides) == 1 else ""
