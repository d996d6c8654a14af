"""Sections: the blocks of all sizes as one graded text."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from functools import partial
from itertools import groupby

from walewright.design.model import Chart
from walewright.knit.pattern_steps import ColumnsLatched
from walewright.knit.steps import Linked, SizePlan, Step, StepBlock, Together, Words
from walewright.record import record
from walewright.report.said import said
from walewright.write.align import Column, align
from walewright.write.as_far import as_far
from walewright.write.charts import worked_charts
from walewright.write.columns import NO_COLUMNS, Columns
from walewright.write.heads import only
from walewright.write.holes import told_by_rows, uneven
from walewright.write.in_mind import InMind, in_mind
from walewright.write.language import PrintedLanguage
from walewright.write.lines import Line, grouped, lines, sentence
from walewright.write.listed import Going, listed, told_briefly
from walewright.write.mirrored import WhatHangs, along_of, along_others, hung_of, hung_on, mirrored, nothing_waiting, waits
from walewright.write.model import Abbreviation, Instructions, Paragraph, Section, Sentence
from walewright.write.own_tops import own_tops_told
from walewright.write.repeated import once
from walewright.write.row_by_row import Rows, closeness, folded, likeness, only_several, titles
from walewright.write.row_order import TitlesAtOnce, crowds, in_row_order
from walewright.write.said import SPACE, prose, spelt
from walewright.write.table import tabled
from walewright.write.tally import RowTally
from walewright.write.together import side_by_side
from walewright.write.units import Halves, Otherwise
from walewright.write.words import worked


def write(
    plans: tuple[SizePlan, ...],
    language: PrintedLanguage,
    sizes: Sequence[str] | None = None,
    charts: Sequence[Chart] = (),
    columns: Sequence[Sequence[Sequence[ColumnsLatched]]] = (),
) -> Instructions:
    """The graded instructions of `plans` in a `language`, one plan a size. `sizes` are the names to print, those of the plans by
    default; `charts` has at least those that the plans work, and `columns` of each block of each plan when purl columns are
    latched up.

    Raises ValueError without plans, or when there are not as many names as plans; KeyError for a chart that is not there.
    """
    names = tuple(p.size for p in plans) if sizes is None else tuple(sizes)
    if not plans or len(names) != len(plans):
        raise ValueError(f"{len(plans)} plans for {len(names)} sizes")
    language = (language.on_plates() if plans[0].plates else language).for_sizes(map(spelt, names))
    aligned = align([p.blocks for p in own_tops_told(plans)], lambda block: block.name)
    drawn = ChartsWorked({chart.name: chart for chart in charts}, _by_name(plans, columns))
    told = tuple(_section(column, drawn, language) for column in aligned)
    sections = once(told, language, _otherwise(aligned, drawn, language), as_far(aligned, told))
    return Instructions(names, sections, abbreviations(sections, language), worked_charts(plans, charts, language))


@record
class ChartsWorked:
    """The charts by their names, and for each size of each block, by its name, when purl columns are latched up."""

    charts: Mapping[str, Chart]
    columns: Sequence[Mapping[str, Columns]]


def own_columns(latched: Sequence[ColumnsLatched]) -> Columns:
    """When the columns of a block are latched up: in rows, and before steps."""
    in_rows = {(one.nth, one.row): one.needles for one in latched if not one.line}
    return Columns(in_rows, {(one.nth, one.row, one.line): one.needles for one in latched if one.line})


def _by_name(plans: Sequence[SizePlan], columns: Sequence[Sequence[Sequence[ColumnsLatched]]]) -> list[dict[str, Columns]]:
    if not columns:
        return [{} for _ in plans]
    return [
        {block.name: own_columns(own) for block, own in zip(plan.blocks, of_plan, strict=True)}
        for plan, of_plan in zip(plans, columns, strict=True)
    ]


Copies = tuple[int, ...]
"""How often something is knitted in each size."""


def heading(name: str, copies: Copies, language: PrintedLanguage) -> str:
    """A block's name as a heading from which it can be told: "Back welt", "Sleeve (knit 2)". A name that does not begin as the
    language's names do stands in quotes as it is, and so does one that would look like another heading."""
    told = spelt(name[:1].upper() + name[1:]) if _as_words(name, language) else _as_written(name, language)
    return _several(told, copies, language)


def called(name: str, language: PrintedLanguage) -> str:
    """The same name as it stands in a sentence: "back welt"."""
    return spelt(name) if _as_words(name, language) else _as_written(name, language)


def _as_words(name: str, language: PrintedLanguage) -> bool:
    first, words = name[:1], name.replace("_", " ").lower()
    own = language.small is not None and not language.small.fullmatch(words.partition(" ")[0])
    usual = first.isupper() if own else first.islower() and first.upper().lower() == first
    return usual and not words.startswith(_before_a_chart(language)) and name != prose(said("making-up"), language)


def _as_written(name: str, language: PrintedLanguage) -> str:
    return prose(said("as-written", name=name), language, SPACE)


def _several(told: str, copies: Copies, language: PrintedLanguage) -> str:
    if set(copies) == {1}:
        return told
    graded = str(copies[0]) if len(set(copies)) == 1 else language.bracketed(tuple(map(str, copies)))
    return prose(said("several", name=told, copies=graded), language)


def _before_a_chart(language: PrintedLanguage) -> str:
    """What headings of charts begin with, in small letters."""
    return prose(said("chart", chart=""), language).lower()


_PARTS = ("left", "right", "centre", "upper")
"""What tells the parts of an edge apart, said before its name."""


def linked_edge(linked: Linked, language: PrintedLanguage) -> str:
    """What is joined: the right shoulder of the back on the bed."""
    number = linked.copy.number
    copy = language.ordinal(number) if number else ""
    edge, _, part = linked.edge.rpartition(" ")
    told = said("link-part", part=part, edge=edge) if edge and part in _PARTS else said("link-part/whole", edge=linked.edge)
    key = "link-edge-of-copy" if number else "link-edge"
    return prose(said(key, owner=linked.owner, edge=told, copy=copy), language, SPACE)


def link_name(linked: Linked, language: PrintedLanguage) -> str:
    """What the link of an edge is called."""
    return prose(said("link", what=linked_edge(linked, language)), language)


def _section(column: Column[StepBlock], drawn: ChartsWorked, language: PrintedLanguage) -> Section:
    block = next(b for b in column if b is not None)
    crowd, by_rows = crowds(column), uneven(column)
    parts = [
        () if b is None else _folded(_titled(b), drawn.charts, crowd, Going(columns=columns.get(b.name, NO_COLUMNS)), by_rows)
        for b, columns in zip(column, drawn.columns, strict=True)
    ]
    paragraphs: list[Paragraph] = []
    for row in _paired(align(parts, lambda part: part[0])):
        # Of two titles for one paragraph, the longer one says more.
        title = max((prose(p[0], language, SPACE) for p in row if p is not None), key=len)
        paragraphs += _graded(title, [() if p is None else p[1] for p in row], paragraphs[-1] if paragraphs else None, language)
    copies = tuple(1 if b is None or b.joining else b.copies for b in column)
    title = section_heading(block, copies, language)
    return Section(
        block.name, title, copies, tuple(paragraphs), block.joining, called=_called(block, language), link=block.linked is not None
    )


def section_heading(block: StepBlock, copies: Copies, language: PrintedLanguage) -> str:
    """What stands over the steps of a block that is knitted so often in each size."""
    if block.joining:
        return _put_together(block, language)
    if block.linked is not None:
        return _several(link_name(block.linked, language), copies, language)
    if block.runs:
        told = prose(said("runs", name=heading(block.name, (1,), language), where=block.runs), language)
        return _several(told, copies, language)
    return heading(block.name, copies, language)


def _called(block: StepBlock, language: PrintedLanguage) -> str:
    """What a sentence calls its section; nothing refers to one of joining."""
    if block.joining:
        return ""
    if block.linked is not None:
        return prose(said("as-written", name=link_name(block.linked, language)), language)
    return called(block.name, language)


def _put_together(block: StepBlock, language: PrintedLanguage) -> str:
    """The heading with the name of what comes next as words; plain spaces tell it from the name of a piece."""
    if block.opening:
        return prose(said("before-joining"), language)
    if not block.before:
        return prose(said("making-up"), language)
    if isinstance(block.before, Linked):
        return prose(said("before-link", what=linked_edge(block.before, language)), language)
    return prose(said("before", what=block.before.replace(" ", SPACE)), language, SPACE)


def _otherwise(columns: Sequence[Column[StepBlock]], drawn: ChartsWorked, language: PrintedLanguage) -> tuple[Otherwise, ...]:
    """What else each section would say, in the order of the columns."""
    made: list[Otherwise] = []
    before: list[WhatHangs] = []
    for column in columns:
        of = _hung(column)
        others = {
            other: partial(_section_on, other, column, drawn, language)
            for other in dict.fromkeys(before)
            if other != of and isinstance(other, str) == isinstance(of, str) and (isinstance(of, str) or len(of) == len(other))
        }
        made.append(Otherwise(_halves(column, drawn, language), of, others if of else {}))
        before += [of] if of else []
    return tuple(made)


def _section_on(other: WhatHangs, column: Column[StepBlock], drawn: ChartsWorked, language: PrintedLanguage) -> Section:
    return _section(tuple(None if b is None else _hung_other(b, other) for b in column), drawn, language)


def _hung(column: Column[StepBlock]) -> WhatHangs:
    """What a section hangs on the needles: the first row of a piece, or edges, if they are the same in every size."""
    piece = next((hung_of(block) for block in column if block is not None), "")
    edges = {along_of(block) for block in column if block is not None}
    return piece or (edges.pop() if len(edges) == 1 else ()) or ""


def _hung_other(block: StepBlock, other: WhatHangs) -> StepBlock:
    return hung_on(block, other) if isinstance(other, str) else along_others(block, other)


def _halves(column: Column[StepBlock], drawn: ChartsWorked, language: PrintedLanguage) -> Halves | None:
    """What the section of a piece that parts says without what waits, and what it says mirrored; None of others."""
    if not any(waits(block) for block in column if block is not None):
        return None
    plain, other = (
        _section(tuple(None if b is None else made(b) for b in column), drawn, language) for made in (nothing_waiting, mirrored)
    )
    return Halves(plain, other)


SectionPart = tuple[Words, tuple[Step, ...]]


def _paired(rows: list[Column[SectionPart]]) -> list[Column[SectionPart]]:
    """The rows, where every size has just one of two neighbours those two as one: it goes by another title in some sizes."""
    made: list[Column[SectionPart]] = []
    for row in rows:
        if made and all((a is None) != (b is None) for a, b in zip(made[-1], row, strict=True)):
            made[-1] = tuple(a if b is None else b for a, b in zip(made[-1], row, strict=True))
        else:
            made.append(row)
    return made


def _titled(block: StepBlock) -> list[SectionPart]:
    """The paragraphs, one without a title joined to the one before it."""
    parts: list[SectionPart] = []
    for title, steps in block.paragraphs:
        if parts and not title:
            parts[-1] = (parts[-1][0], (*parts[-1][1], *steps))
        else:
            parts.append((title, steps))
    return parts


def _folded(
    parts: list[SectionPart], charts: Mapping[str, Chart], crowd: Collection[TitlesAtOnce], going: Going, holes_by_rows: bool
) -> list[SectionPart]:
    """The paragraphs without steps that do nothing, stretches of shaping as one; a `crowd` goes by its rows, and so do holes if
    they shall."""
    tally, mind = RowTally(), InMind()
    made: list[SectionPart] = []
    for title, steps in parts:
        ordered = in_row_order(told_by_rows(steps, tally) if holes_by_rows else steps, crowd)
        with_rows, going = listed(ordered, charts, going)
        said_now, mind = in_mind(with_rows, mind)
        rows, tally = folded([s for s in said_now if worked(s)], tally)
        made.append((title, rows))
    return made


def _graded(title: str, lists: Sequence[Sequence[Step]], before: Paragraph | None, language: PrintedLanguage) -> list[Paragraph]:
    """The lists of steps of all sizes as paragraphs, the first with the `title`; `before` is the one that they come after."""
    columns = [told_briefly(column) for column in align(only_several(lists), likeness, closeness)]
    made: list[Paragraph] = []
    for group, printed in grouped(lines(columns), len(lists), language):
        head = only(group, len(lists), language)
        for is_table, of_kind in groupby(printed, key=_is_table):
            some = list(of_kind)
            told = tuple(s for line in some for s in _told(line, group, language))
            last = made[-1] if made else before
            own = not made and spelt(title)
            resumes = not own and _resumes(is_table, head, last)
            of_table = "" if not is_table else "at-once" if any(_at_once(_stretches(line)) for line in some) else "by-rows"
            made.append(Paragraph(own or _going_on(of_table, resumes, last, language), head, told, is_table, resumes))
    return made


def _told(line: Line, group: tuple[int, ...], language: PrintedLanguage) -> tuple[Sentence, ...]:
    if _is_table(line):
        return tabled(_stretches(line), group, language)
    together = tuple(step if isinstance(step, Together) else None for step in line.columns[0])
    return side_by_side(together, group, language) if any(together) else (sentence(line, group, language),)


def _is_table(line: Line) -> bool:
    return any(isinstance(step, Rows) for step in line.columns[0])


def _at_once(stretches: Column[Rows]) -> bool:
    """Whether more than one thing goes on in a table."""
    return len(titles(stretches)) != 1


def _stretches(line: Line) -> Column[Rows]:
    return tuple(step if isinstance(step, Rows) else None for step in line.columns[0])


def _resumes(is_table: bool, head: str, before: Paragraph | None) -> bool:
    """Whether all sizes go on after lines of some."""
    return not is_table and before is not None and bool(before.only) and not head


def _going_on(of_table: str, resumes: bool, before: Paragraph | None, language: PrintedLanguage) -> str:
    """Title of a paragraph that has none of its own; a table has that of its kind."""
    if of_table:
        return prose(said(of_table), language)
    if resumes:
        return prose(said("all-sizes"), language)
    return prose(said("afterwards"), language) if before is not None and before.table else ""


def abbreviations(
    sections: Sequence[Section], language: PrintedLanguage, but: frozenset[Abbreviation] = frozenset()
) -> tuple[tuple[str, str], ...]:
    """Those that occur, with their meanings, `but` some."""
    used = {short for section in sections for p in section.paragraphs for s in p.sentences for short in s.short}
    return tuple(printed for short, printed in language.abbreviations.items() if short in used - but)
