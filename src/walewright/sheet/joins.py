"""Making up in a picture: the pieces opened out, put into the last section of making up, and its numbers at the steps they name."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from math import ceil

from walewright.counted.outline import Point
from walewright.figures.drawn import DrawnGarment, drawn
from walewright.figures.joints import Numbered
from walewright.figures.making_up import ACROSS, BESIDE, FEW, JoinsDrawn, making_up
from walewright.figures.measures import MeasuredPiece
from walewright.figures.model import Drawing
from walewright.glue.model import GluedSizes
from walewright.guide.model import Guide
from walewright.guide.numbers import sentence
from walewright.record import record, replace
from walewright.sheet.model import JoinsPicture, SheetPart
from walewright.sheet.proven import ProvenPattern
from walewright.sheet.stage import Stage
from walewright.write.model import Instructions, Section

PAGE, BETWEEN, NUMBER, SEVERAL = 180.0, 6.0, 8.0, 12.5
"""mm of paper: the width of a page's words, what stays white beside a drawing, and what the number of an entry takes, and what
several labels take."""

LETTER, LINE, ENTRY = 1.75, 5.2, 5.2
"""mm of paper: the width of a character of the list, about, a line's height, and that of an entry of one line."""

BESIDE_WIDE, BESIDE_HIGH, BESIDE_LOW = 112.0, 61.0, 40.0
"""mm of paper: how wide and how high a drawing beside its list is at most, and how high beside few numbers."""

HIGHER = 1.15
"""By how much a list may be higher than the drawing that it stands beside."""

FILLED = 0.9
"""Of the width beside a list: a drawing that takes more is held by it, and becomes larger across the page."""

LARGER = 1.72
"""By how much all type of the drawing is larger in large print: as large as what is read there, 14 pt."""

LARGE = (PAGE - 2) / LARGER, 130.0 / LARGER
"""mm that a drawing is wide and high at most that is printed so: its list stands beneath it."""

JOINING = "JoinEdges"
"""The step by which edges are joined off the bed."""


def with_joins(
    guide: Guide, pattern: ProvenPattern, pieces: Sequence[MeasuredPiece], parts: tuple[SheetPart, ...], large_print: bool = False
) -> tuple[SheetPart, ...]:
    """`parts`, one a section of the instructions, with the pictures and their numbers; as they are where nothing is joined."""
    glued, instructions = pattern.glued, pattern.instructions
    joining = [at for at, section in enumerate(instructions.sections) if section.joining]
    found = list(_opened_out(guide, pattern, glued, pieces, LARGE if large_print else BESIDE)) if glued is not None else []
    if not found or not joining:
        return parts
    numbers = _by_line(_by_origin([one.made for one in found]), instructions)
    drawn_in = parts[joining[-1]].anchor
    told = [
        _pointing(replace(part, stages=_numbered(part.stages, section, numbers)), drawn_in) if section.joining else part
        for part, section in zip(parts, instructions.sections, strict=True)
    ]
    last = told[joining[-1]]
    done = _done(last.stages)
    told[joining[-1]] = replace(last, joins=tuple(_picture(guide, one, done, large_print) for one in found), short=False)
    return tuple(told)


_NUMBER = re.compile(r"\d+")


def _done(stages: Sequence[Stage]) -> int:
    """How many of the numbers, which are in the order of work, are joined when these stages begin; 0 where they join none."""
    numbers = (_NUMBER.match(line.joint) for stage in stages for line in stage.lines)
    return min((int(number[0]) for number in numbers if number is not None), default=1) - 1


@record
class _OpenedOut:
    """A garment that is drawn for the sizes that are put together like it, and for which, where there are others."""

    garment: DrawnGarment
    made: JoinsDrawn
    sizes: str


def _opened_out(
    guide: Guide, pattern: ProvenPattern, glued: GluedSizes, pieces: Sequence[MeasuredPiece], room: Point
) -> Iterator[_OpenedOut]:
    """One for all sizes that are put together alike, of a size in their middle."""
    for group, sizes in zip(glued.groups, glued.sizes, strict=True):
        garment = drawn(pattern.design, pattern.counts, pieces, sizes[(len(sizes) - 1) // 2], group)
        made = making_up(guide, garment, room)
        if made is not None:
            names = tuple(pattern.design.at(size).size for size in sizes)
            named = guide.say("joined/sizes", sizes=names, many=len(names) > 1) if len(glued.groups) > 1 else ""
            yield _OpenedOut(garment, made, named)


def _picture(guide: Guide, of: _OpenedOut, done: int, large_print: bool) -> JoinsPicture:
    """With its list; so many of the numbers are `done` already."""
    numbers = tuple((n.shown, sentence(guide.said(n.what))) for n in of.made.numbers)
    picture = JoinsPicture(of.made.drawing, of.sizes, _reading(guide, of.made, done), numbers)
    if large_print:
        return replace(picture, drawing=replace(of.made.drawing, scale=LARGER), columns=1)
    return _placed(guide, of.garment, picture)


def _reading(guide: Guide, made: JoinsDrawn, done: int) -> str:
    """How the picture is read, and which of its numbers are not to be looked for among the steps beside it."""
    key = {1: "joined/done/one", 2: "joined/done/two"}.get(done, "joined/done")
    facts = {"last": done} if done == 1 else {"first": 1, "last": done}
    told = guide.say(key, **facts) if done else ""
    return guide.say("joined/reading", meeting=made.meeting, alone=made.alone, done=told)


def _placed(guide: Guide, garment: DrawnGarment, picture: JoinsPicture) -> JoinsPicture:
    """The picture beside its list, as high as that lets it be, or across the page with the list beneath."""
    beside = _beside(picture, BESIDE_LOW if len(picture.numbers) <= FEW else BESIDE_HIGH)
    if _list_high(beside) <= beside.drawing.height * beside.drawing.scale * HIGHER:
        high = _lines(beside) * LINE + len(picture.numbers) * ENTRY
        if high <= BESIDE_HIGH:
            return beside
        higher = making_up(guide, garment, (BESIDE[0], high / BESIDE_HIGH * BESIDE[1]))
        larger = _beside(picture, high) if higher is None else _beside(replace(picture, drawing=higher.drawing), high)
        return larger if _list_high(larger) <= high * HIGHER else beside
    wide = beside
    if picture.drawing.width > BESIDE[0] * FILLED:
        made = making_up(guide, garment, ACROSS)
        wide = picture if made is None else replace(picture, drawing=made.drawing)
        wide = replace(wide, drawing=_scaled(wide.drawing, PAGE - 2, BESIDE_HIGH))
    return replace(wide, columns=_columns(wide))


def _beside(picture: JoinsPicture, high: float) -> JoinsPicture:
    """As large as it is printed beside its list, so high at most."""
    return replace(picture, drawing=_scaled(picture.drawing, BESIDE_WIDE, high))


def _scaled(drawing: Drawing, wide: float, high: float) -> Drawing:
    return replace(drawing, scale=min(1.0, wide / drawing.width, high / drawing.height))


def _room(picture: JoinsPicture) -> float:
    """mm of paper: how wide the words beside a drawing are."""
    return PAGE - BETWEEN - picture.drawing.width * picture.drawing.scale


def _number_wide(picture: JoinsPicture) -> float:
    """mm of paper that the numbers of a list take before its words: those of the style sheet."""
    return SEVERAL if max(len(number) for number, _ in picture.numbers) > len("10a") else NUMBER


def _lines(picture: JoinsPicture) -> int:
    """Those above the list."""
    return ceil(len(picture.reading) * LETTER / _room(picture)) + bool(picture.sizes)


def _list_high(picture: JoinsPicture) -> float:
    """mm of paper that the words beside a drawing take."""
    wide = _room(picture) - _number_wide(picture)
    return (_lines(picture) + sum(ceil(len(what) * LETTER / wide) for _, what in picture.numbers)) * LINE


def _columns(picture: JoinsPicture) -> int:
    """As many as its entries have room in, on two lines each."""
    room = PAGE / 3 - _number_wide(picture) - BETWEEN
    return 3 if all(len(what) * LETTER <= 2 * room for _, what in picture.numbers) else 2


def _by_origin(pictures: Sequence[JoinsDrawn]) -> dict[str, dict[int, Numbered]]:
    """The numbers that are made of each statement; in every drawing the same, as the joins are taken in one order."""
    found: dict[str, dict[int, Numbered]] = {}
    for number in (number for made in pictures for number in made.numbers if number.sewn):
        found.setdefault(number.origin, {}).setdefault(number.number, number)
    return found


def _by_line(numbers: Mapping[str, Mapping[int, Numbered]], instructions: Instructions) -> dict[str, Iterator[str]]:
    """What stands at each line that joins edges, by the statement that it was written from, in the order of the lines. A statement
    that is worked in as many lines as it has labels, or numbers, has one at each; else all of them at each."""
    joining = [s for of in instructions.sections if of.joining for p in of.paragraphs for s in p.sentences if JOINING in s.kinds]
    lines = Counter(of for sentence in joining for of in (sentence.origin, *sentence.also_of))
    return {origin: iter(_at_lines(list(found.values()), lines[origin])) for origin, found in numbers.items()}


def _at_lines(found: Sequence[Numbered], lines: int) -> list[str]:
    """What stands at each of so many lines that are written from one statement."""
    labels = [label for number in found for label in number.labels]
    if len(labels) == lines:
        return labels
    shown = [number.shown for number in found]
    return shown if len(found) == lines else [", ".join(shown)] * lines


def _pointing(part: SheetPart, drawn_in: str) -> SheetPart:
    """A section whose joins have numbers, with the one that has their drawing."""
    ahead = part.anchor != drawn_in and any(line.joint for stage in part.stages for line in stage.lines)
    return replace(part, drawn=drawn_in) if ahead else part


def _numbered(stages: tuple[Stage, ...], section: Section, numbers: Mapping[str, Iterator[str]]) -> tuple[Stage, ...]:
    """Each line that joins edges with its number."""
    paragraphs = [p for p in section.paragraphs if p.sentences]
    made = []
    for stage, paragraph in zip(stages, paragraphs, strict=True):
        sentences = [s for s in paragraph.sentences if not (stage.rows and s.cells is not None)]
        lines = tuple(
            replace(line, joint=", ".join(next(numbers[of]) for of in (sentence.origin, *sentence.also_of) if of in numbers))
            if JOINING in sentence.kinds
            else line
            for line, sentence in zip(stage.lines, sentences, strict=True)
        )
        made.append(replace(stage, lines=lines))
    return tuple(made)
