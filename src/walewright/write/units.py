"""The lines of a section as units that can be referred to, and what the halves beside an opening have alike."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterator, Mapping, Sequence
from dataclasses import field

from walewright.record import record, replace
from walewright.write.mirrored import ALONG, MIRRORED, WhatHangs
from walewright.write.model import Paragraph, Section, Sentence


@record
class SaidUnit:
    """Lines that are referred to as a whole: one as a rule, a table, shapings that are worked together. They are those of paragraph
    number `paragraph`, for the sizes of the head `only`."""

    paragraph: int
    only: str
    sentences: tuple[Sentence, ...]

    @property
    def key(self) -> Hashable:
        """Equal for units that say the same."""
        return self.only, tuple(replace(s, origin="", numbers=()) for s in self.sentences)

    @property
    def steps(self) -> int:
        return sum(bool(s.numbers) for s in self.sentences)


@record
class Halves:
    """What a section says without what waits, and what it says mirrored."""

    plain: Section
    mirrored: Section


@record
class Otherwise:
    """What else a section would say: the `halves` of one that parts; of one that has `hung` the first row of a piece, or edges,
    what it would say of each other piece, or of as many other edges, of which that is said before: written when it is asked for,
    for few are."""

    halves: Halves | None = None
    hung: WhatHangs = ""
    of_others: Mapping[WhatHangs, Callable[[], Section]] = field(default_factory=dict)


NOTHING_ELSE = Otherwise()


def once_mirrored(units: Sequence[SaidUnit], halves: Halves | None, fewest: int) -> Iterator[tuple[int, int, int]]:
    """Where units `begin` to before `end` say mirrored what those from unit `at` on have said, the longest first: (begin, end, at)
    of at least `fewest` steps, none of them in two."""
    if halves is None:
        return
    plain, other = (tuple(units_of(numbered(section))) for section in (halves.plain, halves.mirrored))
    shapes = {tuple((one.paragraph, one.steps) for one in told) for told in (units, plain, other)}
    if len(shapes) > 1:
        return
    can = [all(kind.partition(" ")[0] in MIRRORED for s in unit.sentences for kind in s.kinds) for unit in plain]
    here = [unit.key if told else None for unit, told in zip(other, can, strict=True)]
    there = [unit.key if told else None for unit, told in zip(plain, can, strict=True)]
    taken: set[int] = set()
    while best := max(_pairs(units, here, there, taken), key=lambda pair: pair[0], default=None):
        steps, begin, end, at = best
        if steps < fewest:
            return
        taken |= {*range(begin, end), *range(at, at + end - begin)}
        yield begin, end, at


_ALONG = frozenset(kind.__name__ for kind in ALONG)


def hangs(unit: SaidUnit) -> bool:
    """Whether something comes on the needles in it that a reader is told by its name."""
    return any(kind == "RehangStart" or kind in _ALONG for sentence in unit.sentences for kind in sentence.kinds)


def hung_in(units: Sequence[SaidUnit], hung: WhatHangs) -> bool:
    """Whether it is there that what is `hung` comes on the needles: all edges of several, for a reader counts them."""
    sentences = [s for unit in units for s in unit.sentences]
    if isinstance(hung, str):
        return any("RehangStart" in s.kinds for s in sentences)
    return sum(bool(_ALONG & set(s.kinds)) for s in sentences) == len(hung)


def _pairs(
    units: Sequence[SaidUnit], here: Sequence[Hashable], there: Sequence[Hashable], taken: set[int]
) -> Iterator[tuple[int, int, int, int]]:
    """(steps, begin, end, at) of all that say the same, each as long as it goes."""
    for begin in range(len(units)):
        for at in range(begin):
            length = 0
            while (
                at + length < begin
                and begin + length < len(units)
                and here[begin + length] is not None
                and here[begin + length] == there[at + length]
                and not taken & {begin + length, at + length}
            ):
                length += 1
            # A line that only states what is true ends none.
            while length and not (units[begin].steps and units[begin + length - 1].steps):
                length -= 1
            if length:
                yield sum(unit.steps for unit in units[begin : begin + length]), begin, begin + length, at


def numbered(section: Section) -> Section:
    """The section, its steps numbered from 1."""
    number = 0
    paragraphs: list[Paragraph] = []
    for paragraph in section.paragraphs:
        told: list[Sentence] = []
        for sentence in paragraph.sentences:
            number += not sentence.check
            told.append(sentence if sentence.check else replace(sentence, numbers=(number,)))
        paragraphs.append(replace(paragraph, sentences=tuple(told)))
    return replace(section, paragraphs=tuple(paragraphs))


def units_of(section: Section) -> Iterator[SaidUnit]:
    """The units of a section, in its order."""
    for number, paragraph in enumerate(section.paragraphs):
        lines: list[list[Sentence]] = []
        for sentence in paragraph.sentences:
            if sentence.goes_on and lines:
                lines[-1].append(sentence)
            else:
                lines.append([sentence])
        yield from (SaidUnit(number, paragraph.only, tuple(one)) for one in lines)
