"""Reading back: the printed text as one size's knitter works it.

Size number i takes the i-th reading of every graded number and skips what has a dash for it or stands under a head for
other sizes.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from typing import Any, cast

from walewright.knit.operations import NEXT_COPY, Block, Join, SeamEnd, SeamWay, Side, Work
from walewright.readback.charts import ReadChart, Wrong, drawing
from walewright.readback.hands import Contradiction, Hands
from walewright.readback.language import ReadLanguage
from walewright.readback.layout import PrintedLine, PrintedText, is_note, laid_out
from walewright.readback.phrases import (
    Listed,
    ReadForSome,
    ReadGraded,
    Reading,
    ReadPhrase,
    ReadRepeat,
    ReadRows,
    ReadRun,
    ReadSaid,
    ReadTrack,
    SeamEdgesRead,
    Seams,
    StripsRead,
)
from walewright.readback.sentences import LinesSaid, Unreadable
from walewright.readback.working import SectionAtWork
from walewright.record import record, replace
from walewright.report.model import PRINTED_WORDS, Diagnostic, Span, diagnosed
from walewright.report.said import Fact

PRINTED = PRINTED_WORDS
"""Name of the text in the spans of diagnostics."""


def read_back(text: str, size: int, language: ReadLanguage) -> tuple[Work | None, tuple[Diagnostic, ...]]:
    """The work of size number `size` (from 0) as the printed `text` tells it in its `language`, or what is wrong with it."""
    page = laid_out(text, language)
    said = LinesSaid(language, page.sizes)
    charts, torn = _charts(page, language)
    faults = (*torn, *_unreadable(page, said))
    if not faults and not 0 <= size < len(page.sizes):
        faults = (_fault("words-no-such-size", 0, 0, number=size + 1, sizes_known=len(page.sizes)),)
    return (None, faults) if faults else _worked(page, size, charts, said)


def read_back_all(text: str, language: ReadLanguage) -> tuple[tuple[Work, ...] | None, tuple[Diagnostic, ...]]:
    """The work of every size, in the order of the text's sizes; the text is looked through once."""
    page = laid_out(text, language)
    said = LinesSaid(language, page.sizes)
    charts, torn = _charts(page, language)
    faults = (*torn, *_unreadable(page, said))
    if faults:
        return None, faults
    works: list[Work] = []
    for size in range(len(page.sizes)):
        work, wrong = _worked(page, size, charts, said)
        if work is None:
            faults += wrong
        else:
            works.append(work)
    return (None, faults) if faults else (tuple(works), ())


# ----------------------------------------------------------------- what cannot be read


def _fault(kind: str, start: int, end: int, *notes: str, sizes: tuple[str, ...] = (), **facts: Fact) -> Diagnostic:
    return diagnosed(kind, (Span(PRINTED, start, end), ""), notes=notes, sizes=sizes, facts=facts)


def _unreadable(page: PrintedText, said: LinesSaid) -> tuple[Diagnostic, ...]:
    """Everything wrong with the text that no size is needed to see."""
    faults = [_fault("words-unreadable/line", start, end) for start, end in page.strange]
    if not page.sizes:
        return (*faults, _fault("words-no-sizes", 0, 0))
    if not page.sections:
        return (*faults, _fault("words-unreadable/no-sections", 0, 0))
    for section in page.sections:
        if len(section.copies) not in (1, len(page.sizes)):
            faults.append(_readings(len(section.copies), len(page.sizes), section.start, section.end))
        for line in section.lines:
            faults += _line_faults(line, said)
    # A line that cannot be read takes its number with it.
    return tuple(faults or _numbering(page, said))


def _numbering(page: PrintedText, said: LinesSaid) -> Iterator[Diagnostic]:
    """Steps that are not numbered from 1 on, and what is ticked off below them and is not what they say."""
    for section in page.sections:
        number = 0
        for line in section.lines:
            if line.first and (line.first != number + 1 or line.last < line.first):
                printed = line.first
                yield _fault(
                    "words-contradict/step", line.start, line.end, section=section.name, printed=printed, number=number + 1
                )
            number = line.last or number
            if line.ticks and not _ticked(line, said):
                yield _fault("words-contradict/ticks", line.start, line.end, section=section.name, number=line.first)


def _ticked(line: PrintedLine, said: LinesSaid) -> bool:
    """Whether what is ticked off are the steps that a line refers to, or its rounds, once for each of its boxes."""
    told = said.read(line.words)
    first = None if isinstance(told, Unreadable) else told[0]
    if isinstance(first, ReadRepeat):
        begin, end = 1, max(times or 0 for times in first.times.readings)
    elif isinstance(first, ReadPhrase):
        steps = [a for a in first.arguments if isinstance(a, int)]
        begin, end = (steps[0], steps[-1] if len(steps) > 1 else max(line.ticks)) if steps else (0, 0)
    else:
        return False
    once = tuple(range(begin, end + 1))
    return bool(once) and line.ticks == once * (len(line.ticks) // len(once))


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


def _line_faults(line: PrintedLine, said: LinesSaid) -> Iterator[Diagnostic]:
    sizes = len(said.sizes)
    strange = sorted((line.only or frozenset()) - {*said.sizes})
    if strange:
        yield _fault("words-size-count/size", line.start, line.end, size=strange[0], known=said.sizes)
    if is_note(line, said.language):
        return
    told = said.read(line.words)
    if isinstance(told, Unreadable) and told.size:
        yield _fault("words-size-count/size", line.start, line.end, size=told.size, known=said.sizes)
        return
    if isinstance(told, Unreadable):
        rest = line.words[told.at :]
        yield _fault("words-unreadable/sentence", line.start, line.end, "from-there", rest=rest)
        return
    for number in _numbers(told):
        if len(number.readings) not in (1, sizes):
            yield _readings(len(number.readings), sizes, line.start, line.end)
            return


def _readings(count: int, sizes: int, start: int, end: int) -> Diagnostic:
    return _fault("words-size-count/readings", start, end, readings=count, sizes_known=sizes)


def _numbers(told: tuple[ReadSaid, ...]) -> Iterator[ReadGraded]:
    for one in told:
        if isinstance(one, ReadRepeat):
            yield one.times
        if isinstance(one, ReadRun):
            yield from one.numbers
            yield from _numbers((*one.body, *one.on_the_way, one.stands))
        elif isinstance(one, ReadRepeat | ReadForSome | ReadTrack):
            yield from one.at.numbers if isinstance(one, ReadTrack) and isinstance(one.at, ReadRows) else ()
            yield from _numbers(one.body)
        else:
            for argument in one.arguments:
                if isinstance(argument, ReadGraded):
                    yield argument
                elif isinstance(argument, Listed):
                    yield from argument.numbers
            yield from _numbers(tuple(a for a in one.arguments if isinstance(a, ReadPhrase)))


# ----------------------------------------------------------------- what is worked


def _worked(
    page: PrintedText, size: int, charts: Mapping[str, ReadChart], said: LinesSaid
) -> tuple[Work | None, tuple[Diagnostic, ...]]:
    name = page.sizes[size]
    tasks: list[Block | Join] = []
    tails: TailsRead = {}

    def sew(phrase: ReadPhrase) -> None:
        _sew(tasks, tails, phrase, size)

    for number, section in enumerate(page.sections):
        if section.joining:
            fault = _obeyed(page, number, size, sew, said)
        else:
            hands = Hands(charts)
            fault = _obeyed(page, number, size, lambda phrase, hands=hands: _obey(hands, phrase, size), said)  # type: ignore[misc]
            if hands.made:
                copies = section.copies[size if len(section.copies) > 1 else 0]
                tasks.append(Block(section.name, tuple(hands.made), copies))
                tails.update({(section.name, _as_last(edge)): side for edge, side in hands.tails.items()})
        if fault is not None:
            return None, (fault,)
    return Work(name, tuple(tasks)), ()


def _obeyed(page: PrintedText, number: int, size: int, obey: Callable[[ReadPhrase], None], said: LinesSaid) -> Diagnostic | None:
    section = page.sections[number]
    working = SectionAtWork(section, size, obey, said)
    try:
        working.all_of_it(page.sections[:number])
    except Contradiction as fault:
        sizes = (page.sizes[size],)
        return _fault("words-contradict/section", working.start, working.end, sizes=sizes, section=section.name, fault=fault.why)
    return None


def _arguments(phrase: ReadPhrase, size: int) -> list[Reading]:
    return [a.of(size) if isinstance(a, Listed) else a for a in phrase.arguments]


def _obey(hands: Hands, phrase: ReadPhrase, size: int) -> None:
    if phrase.kind == "join_edges":
        raise Contradiction("contradiction/join-among-steps")
    hands.obey(phrase.kind, *_arguments(phrase, size))


TailsRead = dict[tuple[str, str], Side]
"""At which end of a piece's last rows its tail hangs."""


def _sew(tasks: list[Block | Join], tails: TailsRead, phrase: ReadPhrase, size: int) -> None:
    if phrase.kind != "join_edges":
        raise Contradiction("contradiction/step-among-joins")
    joins: Callable[..., Iterator[Join]] = _joins
    *told, first_row, hung, thread_cm, owners, one, other = _arguments(phrase, size)
    of_thread = {"thread_cm": thread_cm, "chained": (one, other), "tails": owners}
    made = tuple(replace(join, **cast(Any, of_thread)) for join in joins(*told))
    for join in made:
        # A first row has a loop less than stitches, and hangs on ravel cord.
        there = any(edge == "start" for _, edge, _ in (*join.one, *join.other))
        if there != bool(first_row) and (first_row or join.way == "grafted"):
            raise Contradiction("contradiction/graft-of-first-row")
    for join in made if hung else ():
        at = [tails.get((piece, _as_last(edge))) for (piece, edge, _), *_ in (join.one, join.other)]
        if not any(side == begin for side, begin in zip(at, join.ends, strict=True)):
            raise Contradiction("contradiction/tail-elsewhere", edge=f"{join.one[0][0]} {join.one[0][1]}")
    tasks += made


def _as_last(edge: str) -> str:
    """A last row by one name, which may be called either."""
    return f"end{edge.removeprefix('shoulder')}" if edge.startswith("shoulder") else edge


@record
class _SewnLengths:
    """What a sentence says of the lengths of a seam, in its order; what it does not say is nothing."""

    one_mm: int
    other_mm: int
    eased_mm: int | None = None
    longer_mm: int | None = None
    second_mm: int | None = None
    """What is eased in of the second."""
    beyond_mm: int | None = None
    """What is longer, whichever it is, lies along the ends of strips."""

    @property
    def further_mm(self) -> int:
        """By how much the first is meant to be longer."""
        beyond = self.beyond_mm or 0
        return (self.longer_mm or 0) + (beyond if self.one_mm >= self.other_mm else -beyond)

    @property
    def easing_mm(self) -> int:
        """Both lengths are rounded. Where nothing is said of easing them in, they differ by less than is told."""
        if not self.one_mm or self.longer_mm is not None or self.beyond_mm is not None:
            return self.eased_mm or 0
        apart, told = self.one_mm - self.other_mm, (self.eased_mm or 0) - (self.second_mm or 0)
        if told != apart if told else abs(apart) >= UNTOLD_MM:
            raise Contradiction("contradiction/eased-otherwise")
        return abs(apart) + 1


UNTOLD_MM = 10
"""Two sides whose lengths differ by so much are eased, and the words say which of them and by how much."""


def _joins(
    way: SeamWay,
    seams: Seams,
    over: StripsRead,
    turn: str,
    times: int,
    rows: int,
    *lengths: Any,
) -> Iterator[Join]:
    one_mm, other_mm, eased, *ratio = lengths
    of = _SewnLengths(one_mm, other_mm, *eased)
    for one, other, ends in _in_turn(seams, turn, times):
        yield Join(
            one,
            other,
            ends,
            easing_mm=of.easing_mm,
            longer_mm=of.further_mm,
            way=way,
            rows=rows,
            one_mm=of.one_mm,
            other_mm=of.other_mm,
            ratio=(ratio[0], ratio[1]) if ratio else (0, 0),
            over=over,
        )


MOST_SEAMS = 1_000
"""Made at one copy after the other."""


def _in_turn(seams: Seams, turn: str, times: int) -> Iterator[tuple[SeamEdgesRead, SeamEdgesRead, tuple[SeamEnd, SeamEnd]]]:
    """The seams; one that is made at one copy after the other as often as it is told."""
    if not turn:
        yield from seams
        return
    if times > MOST_SEAMS:
        raise Contradiction("contradiction/things-to-do", most=MOST_SEAMS)
    if any(copy == NEXT_COPY for one, other, _ in seams for _, _, copy in (*one, *other)) == (turn == "own"):
        raise Contradiction("contradiction/copies-of-seams")
    copies = times + 1 if turn == "next" else times
    for number in range(1, times + 1):
        meant = {0: number, NEXT_COPY: number + 1 if number < copies else 1} if copies > 1 else {}
        for one, other, ends in seams:
            sides = (tuple((piece, edge, meant.get(copy, 0)) for piece, edge, copy in side) for side in (one, other))
            yield next(sides), next(sides), ends
