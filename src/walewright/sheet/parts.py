"""The working pages: each section of the instructions with its drawing, facts and lines."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from itertools import groupby

from walewright.figures.measures import name_of
from walewright.figures.model import Drawing
from walewright.guide.model import Guide
from walewright.record import replace
from walewright.sheet.facts import long_loops, section_facts
from walewright.sheet.handwork import by_hand
from walewright.sheet.images import images
from walewright.sheet.model import Fact, SheetPart, SizesTable
from walewright.sheet.proven import ProvenPattern
from walewright.sheet.stage import RowLine, Stage, StepLine
from walewright.sheet.unbroken import longest
from walewright.write.model import Manner, Paragraph, Run, Section, Sentence

Schematic = tuple[Drawing | None, SizesTable | None]
"""The schematic of a piece and its legend, as far as there are any."""

Drawings = dict[str, Schematic]
"""By the piece's name."""


FEW = 12
"""Lines. The steps of a section without a drawing and with no more lines than this need no headings of their own."""

SHORT = 4
"""Lines. A section without a drawing and with no more lines than this is kept on one page."""

COLUMN = 16
"""Characters that the counter's column and a table of rows take in one line."""

BESIDE = 20
"""Characters of a graded figure that go beside a drawing; facts with longer ones stand beneath it."""


def parts(
    guide: Guide, pattern: ProvenPattern, drawings: Drawings, narrow: bool = False, together: Mapping[str, str] | None = None
) -> tuple[SheetPart, ...]:
    """One part a section, in the order of work; `narrow`: no columns are kept for what the lines say themselves. `together`: the
    pieces that are drawn with another one, and which that is."""
    made, design = [], pattern.design
    image_of = images(design.pieces, pattern.instructions.sections)
    for section in pattern.instructions.sections:
        shown = drawings.get(section.name, (None, None))
        beside = (together or {}).get(section.name, "")
        found = section_facts(
            guide, design, pattern.counts, section, shown[0] is not None, beside, image_of=image_of.get(section.name, "")
        )
        facts = (*found, *long_loops(guide, pattern.proof, section.name))
        whole = any(piece.name == section.name for piece in design.pieces)
        part = _part(guide, section, pattern.instructions.sizes, facts, shown, narrow=narrow, piece=whole)
        made.append(replace(part, by_hand=by_hand(guide, design, section)))
    return tuple(made)


def _part(
    guide: Guide,
    section: Section,
    sizes: tuple[str, ...],
    facts: tuple[Fact, ...],
    shown: Schematic,
    *,
    narrow: bool,
    piece: bool,
) -> SheetPart:
    drawing, legend = shown
    drawn = drawing is not None
    stages = _stages(guide, section, sizes, narrow)
    count = sum(len(s.lines) + len(s.rows) for s in stages)
    return SheetPart(
        anchor=anchor(section.name),
        title=name_of(section.title),
        facts=tuple(f for f in facts if not drawn or longest(f.figures) <= BESIDE),
        details=tuple(f for f in facts if drawn and longest(f.figures) > BESIDE),
        drawing=drawing,
        legend=legend,
        stages=stages,
        short=not piece and count <= SHORT,
        piece=piece,
        headed=piece or count > FEW,
        counted=any(line.row for s in stages for line in s.lines),
        sided=any(line.side for s in stages for line in s.lines),
    )


def anchor(name: str) -> str:
    """The place of a section on the pages."""
    # Piece names are words of letters, digits and underscores; a section's name may join two with a space.
    return "part-" + re.sub(r"[^A-Za-z0-9_]+", "-", name)


def _stages(guide: Guide, section: Section, sizes: tuple[str, ...], narrow: bool) -> tuple[Stage, ...]:
    """The paragraphs under their heads. Few lines of some sizes name these themselves, and stand with the lines before and after
    them: no head is for a line or two, and none says that all sizes go on."""
    stages: list[Stage] = []
    for paragraph in section.paragraphs:
        if not paragraph.sentences:
            continue
        stage = _stage(guide, paragraph, section.most, sizes, narrow)
        before = stages[-1] if stages else None
        on_its_own = bool(stage.only or stage.rows) or bool(paragraph.title and not paragraph.resumes)
        if before is None or on_its_own or before.only or before.rows:
            stages.append(stage)
        else:
            stages[-1] = replace(before, lines=(*before.lines, *stage.lines))
    return tuple(stages)


FEW_LINES = 4
"""Lines of some sizes that need no head."""


def _stage(guide: Guide, paragraph: Paragraph, copies: int, sizes: tuple[str, ...], narrow: bool) -> Stage:
    only = "" if len(paragraph.sentences) <= FEW_LINES and not paragraph.table else paragraph.only
    named = bool(only)
    if paragraph.table and _fits(paragraph):
        lines = tuple(_line(guide, s, copies, sizes, named, narrow) for s in paragraph.sentences if s.cells is None)
        return Stage(
            paragraph.title, only, lines, tuple(_row_line(guide, s, copies) for s in paragraph.sentences if s.cells is not None)
        )
    lines = tuple(_line(guide, s, copies, sizes, named, narrow) for s in paragraph.sentences)
    kept = _beside(paragraph.sentences)
    return Stage(paragraph.title, only, tuple(replace(line, kept=at in kept) for at, line in enumerate(lines)))


SHORT_BLOCK = 900
"""Characters of lines that are worked at the same time, about nine lines of paper, up to which they are not parted."""


def _beside(sentences: Sequence[Sentence]) -> set[int]:
    """Lines that stay with the one before them: of a short block of what goes on at the same time all but the first."""
    kept: set[int] = set()
    for goes_on, some in groupby(range(len(sentences)), key=lambda at: sentences[at].goes_on):
        block = list(some)
        if goes_on and sum(len(run.text) for at in block for run in sentences[at].runs) <= SHORT_BLOCK:
            kept |= {*block[1:]}
    return kept


def _fits(paragraph: Paragraph) -> bool:
    """Whether the figures of a table of rows go into its columns."""
    cells = [s.cells for s in paragraph.sentences if s.cells is not None]
    return all(len("".join(r.text for r in runs)) <= COLUMN for c in cells for runs in (c.row, c.stitches))


def _row_line(guide: Guide, sentence: Sentence, copies: int) -> RowLine:
    cells = sentence.cells
    assert cells is not None
    row, what, stitches = (tuple(_stretches(runs)) for runs in (cells.row, cells.what, cells.stitches))
    return RowLine(row, what, stitches, copies, _number(guide, sentence), tuple(_stretches(cells.carriage)))


REFERRING = frozenset({"Again", "Mirrored"})
"""The kinds of lines that stand for other steps."""


def _number(guide: Guide, sentence: Sentence) -> str:
    """Which step it is, or which steps it stands for."""
    match sentence.numbers:
        case (first, last):
            return guide.say("step/several", first=first, last=last)
        case (number,):
            return guide.say("step/one", number=number)
    return ""


def _line(guide: Guide, sentence: Sentence, copies: int, sizes: tuple[str, ...], named: bool, narrow: bool) -> StepLine:
    some = len(sentence.sizes) < len(sizes) and not named
    # In many sizes most counters are rows of figures, which the words have where they are needed: no column is kept for them.
    fits = len(sizes) == 1 and not narrow
    # What the line says itself need not be said beneath it.
    said = fits or not sentence.row or sentence.row_said or sentence.row.lstrip("0") == ""
    below = "" if said else f"{guide.say('rc')} {sentence.row}"
    return StepLine(
        pieces=tuple(_stretches(sentence.runs)),
        boxes=0 if sentence.check else copies,
        row=sentence.row if fits else "",
        side="" if sentence.state else sentence.side,
        check=sentence.check,
        sizes=", ".join(sizes[i] for i in sentence.sizes) if some else "",
        below=below,
        row_figures=((0, len(sentence.row)),) if fits and sentence.row_graded else (),
        below_figures=((0, len(below)),) if below and sentence.row_graded else (),
        number=_number(guide, sentence),
        refers=anchor(sentence.refers) if sentence.refers else "",
        ticks=sentence.ticks,
        ticked="round" if REFERRING.isdisjoint(sentence.kinds) else "as-step",
        note=sentence.manner is Manner.NOTE,
    )


def _stretches(runs: tuple[Run, ...]) -> Iterator[Run]:
    """A sentence's runs as they are set: what must be true takes its full stop with it, since it stands on a line of its own;
    a needle's letter stays with its number; and a blank before a figure is set with the figure, because the renderer may
    break a line that ends in a blank at its first word."""
    made: list[Run] = []
    for run in runs:
        text, figures, last = run.text, run.figures, made[-1] if made else None
        if run.kind == "needle":
            text = re.sub(r"\b([LR]) (?=\d)", "\\1\N{NO-BREAK SPACE}", text)
        if run.kind == "word":
            if last is not None and last.kind == "check":
                stop = re.match(r"[.,;:]?\s*", text)
                assert stop is not None
                made[-1] = _stopped(last, stop.group().rstrip())
                text = text[stop.end() :]
        elif run.kind != "section" and last is not None and last.kind == "word" and last.text.endswith(" "):
            made[-1] = replace(last, text=last.text.rstrip())
            if run.kind != "check":
                text, figures = " " + text, tuple((begin + 1, end + 1) for begin, end in figures)
        if text:
            made.append(replace(run, text=text, figures=figures))
    yield from made


def _stopped(check: Run, stop: str) -> Run:
    """With the full stop, which goes with a figure at the end."""
    *most, last = check.figures or ((0, 0),)
    ends = last[1] == len(check.text)
    figures = (*most, (last[0], last[1] + len(stop))) if ends else check.figures
    return replace(check, text=check.text + stop, figures=figures)
