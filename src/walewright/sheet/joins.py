"""Making up in a picture: the pieces opened out, put into the last section of making up, and its numbers at the steps they name."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from walewright.design.model import Design
from walewright.figures.making_up import JoinsDrawn, Numbered, making_up
from walewright.figures.measures import MeasuredPiece
from walewright.glue.model import Glued
from walewright.guide.model import Guide
from walewright.guide.numbers import sentence
from walewright.sheet.model import JoinsPicture, SheetPart, Stage
from walewright.solve.model import Counts
from walewright.write.model import Instructions, Section

JOINING = "JoinEdges"
"""The step by which edges are joined off the bed."""


def with_joins(
    guide: Guide,
    design: Design,
    counts: Counts,
    instructions: Instructions,
    glued: Glued | None,
    pieces: Sequence[MeasuredPiece],
    size: int,
    parts: tuple[SheetPart, ...],
) -> tuple[SheetPart, ...]:
    """`parts`, one a section of the instructions, with the picture and its numbers; as they are where nothing is joined."""
    made = making_up(guide, design, counts, glued, pieces, size) if glued is not None else None
    joining = [at for at, section in enumerate(instructions.sections) if section.joining]
    if made is None or not joining:
        return parts
    numbers = _by_origin(made)
    told = [
        replace(part, stages=_numbered(part.stages, section, numbers)) if section.joining else part
        for part, section in zip(parts, instructions.sections, strict=True)
    ]
    told[joining[-1]] = replace(told[joining[-1]], joins=_picture(guide, made), short=False)
    return tuple(told)


def _picture(guide: Guide, made: JoinsDrawn) -> JoinsPicture:
    numbers = tuple((str(n.number), sentence(guide.said(n.what))) for n in made.numbers)
    return JoinsPicture(made.drawing, guide.say("joined/reading"), numbers)


def _by_origin(made: JoinsDrawn) -> dict[str, list[Numbered]]:
    found: dict[str, list[Numbered]] = {}
    for number in (n for n in made.numbers if n.sewn):
        found.setdefault(number.origin, []).append(number)
    return found


def _numbered(stages: tuple[Stage, ...], section: Section, numbers: Mapping[str, Sequence[Numbered]]) -> tuple[Stage, ...]:
    """Each line that joins edges with the numbers of the statement that it was written from."""
    paragraphs = [p for p in section.paragraphs if p.sentences]
    made = []
    for stage, paragraph in zip(stages, paragraphs, strict=True):
        sentences = [s for s in paragraph.sentences if not (stage.rows and s.cells is not None)]
        lines = tuple(
            replace(line, joint=", ".join(str(n.number) for n in numbers.get(sentence.origin, ())))
            if JOINING in sentence.kinds
            else line
            for line, sentence in zip(stage.lines, sentences, strict=True)
        )
        made.append(replace(stage, lines=lines))
    return tuple(made)
