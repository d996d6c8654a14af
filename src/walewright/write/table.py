"""Tables: a stretch of several shapings in words, one sentence for each row at which something is done."""

from __future__ import annotations

from walewright.report.said import said
from walewright.write.align import Column
from walewright.write.filling import phrase as filled_phrase
from walewright.write.grading import Graded
from walewright.write.language import PrintedLanguage
from walewright.write.listed import KnitToListed
from walewright.write.model import Cells, Manner, Run, Sentence
from walewright.write.on_the_way import on_the_way
from walewright.write.row_by_row import Entry, Rows, announced, table, titles
from walewright.write.runs import EntryRun, in_runs
from walewright.write.said import Phrase, StepSaid, between, capital, prose, titled, worded
from walewright.write.words import carriage, kinds, phrase


def tabled(stretches: Column[Rows], group: tuple[int, ...], language: PrintedLanguage) -> tuple[Sentence, ...]:
    """What is announced first, then the rows. `group` are the sizes that the table is printed for."""
    going_on = tuple(titled(title, language) for title in titles(stretches))
    key = "at-once/note" if not going_on else "by-rows/note" if len(going_on) == 1 else "at-once/in-row-order"
    note = prose(said(key, what=going_on or announced(stretches)), language)
    working = tuple(i for i, s in enumerate(stretches) if s is not None)
    head = Sentence((Run(note),), working, "", "", "", True, manner=Manner.NOTE)
    return (head, *(_row(entries, group, language) for entries in in_runs(table(stretches))))


def in_columns(at: Phrase, what: Phrase, stands: Phrase, language: PrintedLanguage) -> tuple[Phrase, Phrase, Phrase]:
    """What stands in the columns of a row, with the signs between them; one after the other they are a sentence."""
    return (
        filled_phrase("row/at", language, at=at),
        filled_phrase("row/steps", language, steps=what),
        filled_phrase("row/stands", language, stands=stands),
    )


def _row(told_of: Column[Entry] | EntryRun, group: tuple[int, ...], language: PrintedLanguage) -> Sentence:
    entries, last = (told_of.first, told_of.last) if isinstance(told_of, EntryRun) else (told_of, told_of)
    steps = next(e.steps for e in entries if e is not None)
    working = tuple(i for i, e in enumerate(entries) if e is not None)
    told: list[str] = []
    on_way = StepSaid(tuple(None if e is None else KnitToListed(e.row, way=e.way) for e in entries), working)
    phrases: list[Phrase] = [worded(*one) for one in on_the_way(on_way, language)]
    for number in range(len(steps)):
        # The dash of a size that has nothing to do stands with the counter; the other numbers are for those who have.
        step = StepSaid(tuple(None if e is None else e.steps[number] for e in entries), working)
        phrases.append(phrase(step, language))
        told += kinds(step)
    what = worded(*between(language.sentences["between"], phrases))
    first, row = (Graded(tuple(None if e is None else e.row for e in of), group) for of in (entries, last))
    if isinstance(told_of, EntryRun):
        at = filled_phrase("at/run", language, row=first, every=Graded(told_of.every, group), last=row)
    else:
        at = filled_phrase("at", language, row=row)
    side = _carriage(told_of, working, language)
    if side:
        at = filled_phrase("at/side", language, at=at, carriage=side)
    stands = _stands(last, working, language)
    return Sentence(
        runs=capital(worded(*between(" ", in_columns(at, what, stands, language)))),
        sizes=working,
        row=row.text(language),
        side="",
        origin=next((s.origin for e in entries if e is not None for s in e.steps if s.origin), ""),
        check=False,
        kinds=("KnitTo", *told),
        cells=Cells(at if isinstance(told_of, EntryRun) else (row.number(language),), capital(what), stands, at, side),
        row_said=True,
        row_graded=row.whole,
        goes_on=True,
    )


def _carriage(told_of: Column[Entry] | EntryRun, working: tuple[int, ...], language: PrintedLanguage) -> Phrase:
    """Where the carriage stands at that row, if something is done by its side; of a run, if it stands there each time."""
    entries = told_of.first if isinstance(told_of, EntryRun) else told_of
    sides = tuple(None if e is None else e.by_carriage for e in entries)
    turns = isinstance(told_of, EntryRun) and any((every or 0) % 2 for every in told_of.every)
    return () if turns or any(sides[i] is None for i in working) else (carriage(sides, working, language),)


def _stands(entries: Column[Entry], working: tuple[int, ...], language: PrintedLanguage) -> Phrase:
    """The stitches of the part being worked, those held for shaping counted apart."""
    counted = Graded(tuple(None if e is None else e.stitches for e in entries), working)
    held = Graded(tuple(None if e is None else e.held for e in entries), working)
    if held.always(0):
        return filled_phrase("stands", language, stitches=counted)
    at_work = Graded(tuple(None if e is None else e.stitches - e.held for e in entries), working)
    return filled_phrase("stands/held", language, working=at_work, held=held)
