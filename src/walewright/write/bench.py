"""The bench copy in words: its lines, which are read back, with what stands in the columns of each."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from walewright.design.model import Chart
from walewright.knit import bench_steps as bs
from walewright.knit.bench_steps import BenchBlock, BenchLine, BenchPart
from walewright.knit.operations import Side
from walewright.knit.steps import SizePlan, Step, StepBlock
from walewright.record import replace
from walewright.write.charts import worked_charts
from walewright.write.filling import FilledIn, Part, Parts, filled
from walewright.write.filling import phrase as filled_phrase
from walewright.write.grading import Graded
from walewright.write.in_mind import PLAIN as IN_MIND
from walewright.write.in_mind import InMind, written_out_in_mind
from walewright.write.language import PrintedLanguage
from walewright.write.lines import Line, sentence
from walewright.write.model import Abbreviation, BenchCells, BenchPlace, Instructions, Paragraph, Run, Section, Sentence
from walewright.write.needles import listed, needle_run
from walewright.write.said import SPACE, Phrase, StepSaid, between, capital, prose, spelt, worded
from walewright.write.sections import abbreviations, section_heading
from walewright.write.words import named, phrase


def write_bench(
    plan: SizePlan, blocks: Sequence[BenchBlock], language: PrintedLanguage, charts: Sequence[Chart] = ()
) -> Instructions:
    """The bench copy of one size: each block of its `plan` with the lines that it was unrolled into, in the same order. `charts`
    has at least those that it works. Raises KeyError for a chart that is not there."""
    language = language.on_plates() if plan.plates else language
    sections = tuple(_section(block, unrolled, language) for block, unrolled in zip(plan.blocks, blocks, strict=True))
    short, in_columns = (abbreviations(sections, language, but) for but in (_IN_COLUMNS, frozenset(Abbreviation) - _IN_COLUMNS))
    return Instructions((plan.size,), sections, short, worked_charts((plan,), charts, language), in_columns)


_IN_COLUMNS = frozenset({Abbreviation.COL, Abbreviation.COR})
"""What a column says in full."""


def _section(block: StepBlock, unrolled: BenchBlock, language: PrintedLanguage) -> Section:
    paragraphs: list[Paragraph] = []
    mind = InMind()
    for title, parts in unrolled.paragraphs:
        said: list[BenchPart] = []
        for part in parts:
            one, mind = _with_what_is_known(part, mind)
            said.append(one)
        told = tuple(_sentence(part, language) for part in said)
        if not told:
            continue
        if paragraphs and not title:
            paragraphs[-1] = Paragraph(paragraphs[-1].title, "", (*paragraphs[-1].sentences, *told))
        else:
            paragraphs.append(Paragraph(spelt(prose(title, language, SPACE)), "", told))
    copies = (1 if block.joining else block.copies,)
    return Section(block.name, section_heading(block, copies, language), copies, tuple(paragraphs), block.joining)


def _with_what_is_known(part: BenchPart, mind: InMind) -> tuple[BenchPart, InMind]:
    """The line as it is said after what is in mind, and what is after it."""
    if isinstance(part, BenchLine):
        body, mind = written_out_in_mind(part.body, mind)
        return replace(part, body=body), mind
    (step,), mind = written_out_in_mind((part,), mind)
    return step, mind


def _sentence(part: BenchPart, language: PrintedLanguage) -> Sentence:
    if not isinstance(part, BenchLine):
        return sentence(Line((((part,),),), (0,)), (0,), language)
    cells = _cells(part, language)
    given: dict[str, FilledIn] = {
        "rows": Graded((part.rows,), (0,)),
        "row": Graded((part.row,), (0,)),
        "carriage": (_carriage(part.side, language),) if part.side else (),
        "steps": tuple(_in_line((*cells.charts, *cells.what), language)),
        "counts": filled_phrase("bench/counts", language, in_work=part.in_work, held=part.held, waiting=part.waiting),
    }
    if part.side is None:
        key = "bench/first"
    elif part.row is None:
        key = "bench/uncounted"
    else:
        key = "bench/rows" if part.rows else "bench/counter"
    return Sentence(
        runs=filled_phrase(key, language, **given),
        sizes=(0,),
        row="" if part.row is None else str(part.row),
        side=part.side or "",
        origin=next((step.origin for step in part.body if step.origin), ""),
        check=False,
        kinds=tuple(IN_MIND.get(type(step), type(step)).__name__ for step in part.body),
        bench=replace(cells, stretches=_stretches(key, language, given)),
    )


_PLACES: Mapping[str, BenchPlace] = {"steps": "what", "counts": "counts"}


def _stretches(key: str, language: PrintedLanguage, given: Mapping[str, FilledIn]) -> tuple[tuple[BenchPlace, Phrase], ...]:
    """The sentence, cut where another column begins; what stands between two of them goes with the one before."""
    marks = {name: Run(name) for name in _PLACES}
    made: list[tuple[BenchPlace, list[Part]]] = [("where", [])]
    for part in filled(key, language, **{**given, **{name: (mark,) for name, mark in marks.items()}}):
        name = next((name for name, mark in marks.items() if part is mark), None)
        if name is None:
            made[-1][1].append(part)
        else:
            made.append((_PLACES[name], list(_parts(given[name]))))
    return tuple((place, worded(*parts)) for place, parts in made if parts)


def _parts(given: FilledIn) -> tuple[Part, ...]:
    assert isinstance(given, tuple)
    return given


def _cells(part: BenchLine, language: PrintedLanguage) -> BenchCells:
    told = tuple(capital(_phrase(step, language)) for step in part.body)
    charts = sum(isinstance(step, bs.OfChart) for step in part.body)
    rows = tuple((step.chart, step.row) for step in part.body if isinstance(step, bs.OfChart))
    what = told[charts:]
    counts = part.in_work, part.held, part.waiting
    return BenchCells(part.rows, part.row, part.side or "", told[:charts], what, *counts, chart_rows=rows)


def _in_line(phrases: Sequence[Phrase], language: PrintedLanguage) -> list[Part]:
    """The phrases as sentences, one after the other."""
    return list(between(" ", (filled("bench/step", language, step=one) for one in phrases)))


def _phrase(step: Step, language: PrintedLanguage) -> Phrase:
    said = StepSaid((step,), (0,))
    if type(step) in _KEYS:
        return worded(*filled(_KEYS[type(step)](said), language, said, BENCH_PARTS))
    return phrase(said, language)


_CARRIAGES: Mapping[Side, Abbreviation] = {"left": Abbreviation.COL, "right": Abbreviation.COR}


def _carriage(side: Side, language: PrintedLanguage) -> Run:
    at = _CARRIAGES[side]
    return Run(language.short(at), "check", frozenset({at}))


# ----------------------------------------------------------------- single moves


def _plain(said: StepSaid) -> str:
    return named(type(said.any))


_KEYS: Mapping[type[Step], Callable[[StepSaid], str]] = {
    bs.PlainRows: _plain,
    bs.OfChart: lambda said: "of_chart/itself" if said.any.itself else "of_chart",
    bs.FabricBegins: _plain,
    bs.MotifBegins: _plain,
    bs.ChartEnds: _plain,
    bs.StripesBegin: _plain,
    bs.StripesEnd: _plain,
    bs.TakeUp: _plain,
    bs.HoldNeedles: _plain,
    bs.ReturnNeedles: _plain,
    bs.FloatPast: _plain,
    bs.DrawLongOn: _plain,
    bs.KnitNeedles: _plain,
    bs.LayColours: lambda said: "lay_colours" if said.any.yarns else "lay_colours/one",
    bs.MoveStitches: _plain,
    bs.CrossStitches: _plain,
    bs.DropRows: _plain,
    bs.LatchColumns: _plain,
    bs.LatchOn: _plain,
    bs.SetToHold: _plain,
    bs.SetToKnit: _plain,
    bs.HangFirstRow: _plain,
}
"""The templates of the steps that only a bench copy has."""


def _listed(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    return listed(said.any.needles, language)


def _laid(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    told: list[Part] = []
    for yarn, needles in zip(said.any.yarns, said.any.places, strict=True):
        told += filled("laid", language, yarn=yarn, listed=tuple(listed(needles, language)))
    return told


def _crossed(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    half = said.any.half
    groups = ((_group(first, half, language), _group(first + half, half, language)) for first in said.any.firsts)
    told = (filled("crossed", language, left=left, right=right) for left, right in groups)
    return list(between(language.sentences["between"], told))


def _group(first: int, count: int, language: PrintedLanguage) -> tuple[Part, ...]:
    if count == 1:
        return tuple(filled("listed/needle", language, first=(needle_run(first, language),)))
    ends = (needle_run(first, language),), (needle_run(first + count - 1, language),)
    return tuple(filled("listed/run", language, first=ends[0], last=ends[1]))


def _over(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    return list(filled("over_needles", language, said)) if said.any.first <= said.any.last else []


BENCH_PARTS: Parts = {"listed": _listed, "laid": _laid, "crossed": _crossed, "over_needles": _over}
