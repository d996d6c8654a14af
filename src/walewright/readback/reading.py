"""Reading back: the printed text as one size's knitter works it.

Size number i takes the i-th reading of every graded number and skips what has a dash for it or stands under a head for
other sizes.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping

from walewright.knit.operations import Block, Join, SeamWay, Work
from walewright.readback.charts import ReadChart, Wrong, drawing
from walewright.readback.hands import Contradiction, Hands
from walewright.readback.language import ReadLanguage
from walewright.readback.layout import PrintedLine, PrintedSection, PrintedText, is_note, laid_out
from walewright.readback.phrases import (
    ReadCounts,
    ReadEvents,
    ReadForSome,
    ReadGraded,
    Reading,
    ReadPhrase,
    ReadRepeat,
    ReadRows,
    ReadSaid,
    ReadTrack,
    Seams,
)
from walewright.readback.sentences import Unreadable, said
from walewright.readback.together import Shapings
from walewright.report.model import Diagnostic, Span, diagnosed
from walewright.report.said import Fact

PRINTED = "printed words"
"""Name of the text in the spans of diagnostics."""

MOST_PHRASES = 100_000
"""In one section, repeats written out. A piece has some hundreds; see also `hands.MOST_MOVES`."""


def read_back(text: str, size: int, language: ReadLanguage) -> tuple[Work | None, tuple[Diagnostic, ...]]:
    """The work of size number `size` (from 0) as the printed `text` tells it in its `language`, or what is wrong with it."""
    page = laid_out(text, language)
    charts, torn = _charts(page, language)
    faults = (*torn, *_unreadable(page, language))
    if not faults and not 0 <= size < len(page.sizes):
        faults = (_fault("words-no-such-size", 0, 0, number=size + 1, sizes_known=len(page.sizes)),)
    return (None, faults) if faults else _worked(page, size, charts, language)


def read_back_all(text: str, language: ReadLanguage) -> tuple[tuple[Work, ...] | None, tuple[Diagnostic, ...]]:
    """The work of every size, in the order of the text's sizes; the text is looked through once."""
    page = laid_out(text, language)
    charts, torn = _charts(page, language)
    faults = (*torn, *_unreadable(page, language))
    if faults:
        return None, faults
    works: list[Work] = []
    for size in range(len(page.sizes)):
        work, wrong = _worked(page, size, charts, language)
        if work is None:
            faults += wrong
        else:
            works.append(work)
    return (None, faults) if faults else (tuple(works), ())


# ----------------------------------------------------------------- what cannot be read


def _fault(kind: str, start: int, end: int, *notes: str, sizes: tuple[str, ...] = (), **facts: Fact) -> Diagnostic:
    return diagnosed(kind, (Span(PRINTED, start, end), ""), notes=notes, sizes=sizes, facts=facts)


def _unreadable(page: PrintedText, language: ReadLanguage) -> tuple[Diagnostic, ...]:
    """Everything wrong with the text that no size is needed to see."""
    faults = [_fault("words-unreadable/line", start, end) for start, end in page.strange]
    if not page.sizes:
        return (*faults, _fault("words-no-sizes", 0, 0))
    if not page.sections:
        return (*faults, _fault("words-unreadable/no-sections", 0, 0))
    for section in page.sections:
        for line in section.lines:
            faults += _line_faults(line, len(page.sizes), language)
    return tuple(faults)


def _charts(page: PrintedText, language: ReadLanguage) -> tuple[dict[str, ReadChart], tuple[Diagnostic, ...]]:
    """The charts by name, and everything that is wrong with them."""
    charts: dict[str, ReadChart] = {}
    faults: list[Diagnostic] = []
    for sheet in page.sheets:
        drawn = drawing(sheet, language)
        if isinstance(drawn, Wrong):
            faults.append(_fault(f"{drawn.code}/chart", drawn.start, drawn.end, chart=sheet.name, fault=drawn.why))
        elif sheet.name in charts:
            faults.append(_fault("words-contradict/chart-twice", sheet.start, sheet.end, chart=sheet.name))
        else:
            charts[sheet.name] = drawn
    return charts, tuple(faults)


def _line_faults(line: PrintedLine, sizes: int, language: ReadLanguage) -> Iterator[Diagnostic]:
    if line.only is not None and not line.only <= set(range(sizes)):
        yield _fault("words-size-count/size", line.start, line.end, number=max(line.only) + 1, sizes_known=sizes)
    if is_note(line, language):
        return
    told = said(line.words, language)
    if isinstance(told, Unreadable):
        rest = line.words[told.at :]
        yield _fault("words-unreadable/sentence", line.start, line.end, "from-there", rest=rest)
        return
    for number in _numbers(told):
        if len(number.readings) not in (1, sizes):
            count = len(number.readings)
            yield _fault("words-size-count/readings", line.start, line.end, readings=count, sizes_known=sizes)
            return


def _numbers(told: tuple[ReadSaid, ...]) -> Iterator[ReadGraded]:
    for one in told:
        if isinstance(one, ReadRepeat):
            yield one.times
        if isinstance(one, ReadRepeat | ReadForSome | ReadTrack):
            yield from _numbers(one.body)
        else:
            for argument in one.arguments:
                if isinstance(argument, ReadGraded):
                    yield argument
                elif isinstance(argument, ReadRows | ReadCounts | ReadEvents):
                    yield from argument.numbers


# ----------------------------------------------------------------- what is worked


def _worked(
    page: PrintedText, size: int, charts: Mapping[str, ReadChart], language: ReadLanguage
) -> tuple[Work | None, tuple[Diagnostic, ...]]:
    name = page.sizes[size]
    tasks: list[Block | Join] = []
    for section in page.sections:
        if section.joining:
            fault = _obeyed(section, size, lambda phrase: _sew(tasks, phrase, size), name, language)
        else:
            hands = Hands(charts)
            fault = _obeyed(section, size, lambda phrase, hands=hands: _obey(hands, phrase, size), name, language)  # type: ignore[misc]
            if hands.made:
                tasks.append(Block(section.name, tuple(hands.made), section.copies))
        if fault is not None:
            return None, (fault,)
    return Work(name, tuple(tasks)), ()


def _obeyed(
    section: PrintedSection, size: int, obey: Callable[[ReadPhrase], None], name: str, language: ReadLanguage
) -> Diagnostic | None:
    done = 0

    def counted(phrases: Iterable[ReadPhrase]) -> Iterator[ReadPhrase]:
        nonlocal done
        for phrase in phrases:
            done += 1
            if done > MOST_PHRASES:
                raise Contradiction("contradiction/things-to-do", most=MOST_PHRASES)
            yield phrase

    together: Shapings | None = None
    start, end = section.start, section.end
    try:
        for line in section.lines:
            if is_note(line, language) or (line.only is not None and size not in line.only):
                continue
            told = said(line.words, language)
            assert not isinstance(told, Unreadable), "lines are looked through before"
            first = told[0]
            if isinstance(first, ReadTrack):
                start, end = line.start, line.end
                if together is None:
                    raise Contradiction("contradiction/track-without-rows")
                together.tracks.append((first.title, list(counted(_phrases(told, size)))))
                together.stop = line.end
                continue
            if together is not None:
                start, end = together.start, together.stop
                for phrase in together.in_rows(size):
                    obey(phrase)
                together = None
            start, end = line.start, line.end
            if isinstance(first, ReadPhrase) and first.kind == "together":
                begin, last = (a.of(size) for a in first.arguments if isinstance(a, ReadGraded))
                together = Shapings(begin, last, line.start, line.end)
                continue
            for phrase in counted(_phrases(told, size)):
                obey(phrase)
        if together is not None:
            start, end = together.start, together.stop
            for phrase in together.in_rows(size):
                obey(phrase)
    except Contradiction as fault:
        return _fault("words-contradict/section", start, end, sizes=(name,), section=section.name, fault=fault.why)
    return None


def _phrases(told: tuple[ReadSaid, ...], size: int) -> Iterator[ReadPhrase]:
    """The phrases that the size works, repeats written out."""
    for one in told:
        if isinstance(one, ReadRepeat):
            # The body's numbers mean nothing to a size that skips the repeat.
            for _ in range(one.times.of(size) or 0):
                anything = False
                for phrase in _phrases(one.body, size):
                    anything = True
                    yield phrase
                if not anything:
                    break
        elif isinstance(one, ReadForSome):
            yield from _phrases(one.body, size) if size in one.sizes else ()
        elif isinstance(one, ReadTrack):
            yield from _phrases(one.body, size)
        elif not _skipped(one, size):
            yield one


def _skipped(phrase: ReadPhrase, size: int) -> bool:
    dashes = {a.of(size) is None for a in phrase.arguments if isinstance(a, ReadGraded) and len(a.readings) > 1}
    if len(dashes) > 1:
        raise Contradiction("contradiction/some-dashes")
    return True in dashes


def _arguments(phrase: ReadPhrase, size: int) -> list[Reading]:
    return [a.of(size) if isinstance(a, ReadGraded | ReadRows | ReadCounts | ReadEvents) else a for a in phrase.arguments]


def _obey(hands: Hands, phrase: ReadPhrase, size: int) -> None:
    if phrase.kind == "join_edges":
        raise Contradiction("contradiction/join-among-steps")
    hands.obey(phrase.kind, *_arguments(phrase, size))


def _sew(tasks: list[Block | Join], phrase: ReadPhrase, size: int) -> None:
    if phrase.kind != "join_edges":
        raise Contradiction("contradiction/step-among-joins")
    joins: Callable[..., Iterator[Join]] = _joins
    tasks += joins(*_arguments(phrase, size))


def _joins(
    way: SeamWay,
    seams: Seams,
    rows: int,
    one_mm: int,
    other_mm: int,
    easing_mm: int = 0,
    longer_mm: int = 0,
    ratio_rows: int = 0,
    ratio_stitches: int = 0,
) -> Iterator[Join]:
    for one, other, ends in seams:
        yield Join(one, other, ends, easing_mm, longer_mm, way, rows, one_mm, other_mm, (ratio_rows, ratio_stitches))
