"""What repeats is said once: steps that say the same as steps of an earlier section are one line that refers to those.

The steps of a section are numbered from 1, and keep their numbers where others before them are said elsewhere. Only what an earlier
section says itself is referred to, never a line of it that refers on.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Hashable, Iterator, Sequence
from dataclasses import dataclass, replace

from walewright.knit.steps import Now
from walewright.report.said import said
from walewright.write.filling import phrase
from walewright.write.language import PrintedLanguage
from walewright.write.model import Paragraph, Run, Section, Sentence
from walewright.write.said import StepSaid, capital, prose, worded
from walewright.write.words import check

FEWEST = 3
"""Steps from which on it is easier to look them up than to read them again."""


@dataclass(frozen=True, slots=True)
class _Unit:
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


@dataclass(frozen=True, slots=True)
class _Again:
    """Units `begin` to before `end` of a section say the same as as many of the earlier section `of`, from unit `at` on; they are
    so many `steps`."""

    begin: int
    end: int
    of: int
    at: int
    steps: int


@dataclass(slots=True)
class _Own:
    """A section's units, and what each says, as a number: None where it is said elsewhere, or cannot be referred to."""

    units: tuple[_Unit, ...]
    keys: list[int | None]


def once(sections: tuple[Section, ...], language: PrintedLanguage) -> tuple[Section, ...]:
    """The sections with their steps numbered, and what an earlier one says already as references to it."""
    names = Counter(section.called for section in sections)
    known: dict[Hashable, int] = {}
    own: list[_Own] = []
    made: list[Section] = []
    for section in map(_numbered, sections):
        units = tuple(_units(section))
        told = _Own(units, [known.setdefault(unit.key, len(known)) for unit in units])
        found = [] if section.joining else sorted(_found(told, own, 0, len(units)), key=lambda again: again.begin)
        for again in found:
            told.keys[again.begin : again.end] = [None] * (again.end - again.begin)
        made.append(_shortened(section, units, found, [*zip(sections, own, strict=False)], language))
        # Two of one name could not be told apart.
        if section.joining or names[section.called] > 1:
            told.keys[:] = [None] * len(units)
        own.append(told)
    return tuple(made)


def label(sentence: Sentence, language: PrintedLanguage) -> str:
    """The numbers of its steps as printed; empty where it has none."""
    match sentence.numbers:
        case (only,):
            return prose(said("step", first=only), language)
        case (first, last):
            return prose(said("steps", first=first, last=last), language)
    return ""


def _numbered(section: Section) -> Section:
    number = 0
    paragraphs: list[Paragraph] = []
    for paragraph in section.paragraphs:
        told: list[Sentence] = []
        for sentence in paragraph.sentences:
            number += not sentence.check
            told.append(sentence if sentence.check else replace(sentence, numbers=(number,)))
        paragraphs.append(replace(paragraph, sentences=tuple(told)))
    return replace(section, paragraphs=tuple(paragraphs))


def _units(section: Section) -> Iterator[_Unit]:
    for number, paragraph in enumerate(section.paragraphs):
        lines: list[list[Sentence]] = []
        for sentence in paragraph.sentences:
            if sentence.goes_on and lines:
                lines[-1].append(sentence)
            else:
                lines.append([sentence])
        yield from (_Unit(number, paragraph.only, tuple(one)) for one in lines)


# ----------------------------------------------------------------- what is said already


def _found(told: _Own, earlier: Sequence[_Own], begin: int, end: int) -> list[_Again]:
    """The references for units `begin` to before `end`: the longest first, then what is left before and after it."""
    best: _Again | None = None
    for of, one in enumerate(earlier):
        for again in _alike(told, one, of, begin, end):
            if again.steps >= FEWEST and (best is None or again.steps > best.steps):
                best = again
    if best is None:
        return []
    return [best, *_found(told, earlier, begin, best.begin), *_found(told, earlier, best.end, end)]


def _alike(told: _Own, one: _Own, of: int, begin: int, end: int) -> Iterator[_Again]:
    """Stretches of units that say the same, each as long as it goes, from a step to a step."""
    before = [0] * (len(one.keys) + 1)
    for here in range(begin, end):
        reach = [0] * (len(one.keys) + 1)
        for there, key in enumerate(one.keys):
            if key is not None and key == told.keys[here]:
                reach[there + 1] = before[there] + 1
                yield from _trimmed(told.units, here + 1 - reach[there + 1], here + 1, of, there + 1)
        before = reach


def _trimmed(units: Sequence[_Unit], begin: int, end: int, of: int, stop: int) -> Iterator[_Again]:
    """From the first unit with a step on, if the last one has any; `stop` is where the earlier ones end."""
    while begin < end and not units[begin].steps:
        begin += 1
    if begin < end and units[end - 1].steps:
        yield _Again(begin, end, of, stop - (end - begin), sum(unit.steps for unit in units[begin:end]))


# ----------------------------------------------------------------- what is printed instead


def _shortened(
    section: Section,
    units: Sequence[_Unit],
    found: Sequence[_Again],
    earlier: Sequence[tuple[Section, _Own]],
    language: PrintedLanguage,
) -> Section:
    """The section with references in the place of what was `found`. A reference stands where its first line stood; one that begins
    a paragraph and goes on beyond it stands by itself, without a title."""
    if not found:
        return section
    made: list[Paragraph] = []
    begins = {again.begin: again for again in found}
    gone = {at for again in found for at in range(again.begin, again.end)}
    opened = -1
    for at, unit in enumerate(units):
        again = begins.get(at)
        own = section.paragraphs[unit.paragraph]
        if again is None:
            if at in gone:
                continue
            if opened != unit.paragraph:
                made.append(replace(own, sentences=()))
                opened = unit.paragraph
            made[-1] = replace(made[-1], sentences=(*made[-1].sentences, *unit.sentences))
            continue
        stood = units[again.begin : again.end]
        heads = list(dict.fromkeys(one.only for one in stood))
        head = heads[0] if len(heads) == 1 else ""
        line = _reference(stood, *earlier[again.of], again, head, language)
        within = stood[-1].paragraph == unit.paragraph
        if opened != unit.paragraph or made[-1].only != head:
            title = own.title if within else _untitled(head, made, language)
            made.append(Paragraph(title, head, ()))
            opened = unit.paragraph if within else -1
        made[-1] = replace(made[-1], sentences=(*made[-1].sentences, line))
    told = tuple(replace(p, table=any(s.cells for s in p.sentences)) for p in made)
    return replace(section, paragraphs=told)


def _untitled(head: str, before: Sequence[Paragraph], language: PrintedLanguage) -> str:
    """The title of a reference to lines of several paragraphs: none, but where the head before it would go on."""
    return prose(said("all-sizes"), language) if before and before[-1].only and not head else ""


def _reference(stood: Sequence[_Unit], of: Section, own: _Own, again: _Again, head: str, language: PrintedLanguage) -> Sentence:
    """The line that stands for the lines of units `stood`."""
    sentences = [s for unit in stood for s in unit.sentences]
    referred = [s for unit in own.units[again.at : again.at + len(stood)] for s in unit.sentences]
    (first, last), (begin, end) = _ends(sentences), _ends(referred)
    sizes = tuple(sorted({i for s in sentences for i in s.sizes}))
    state = _state(sentences, sizes)
    group = sizes if head else tuple(range(len(state)))
    name = Run(of.called, "section")
    words = capital(phrase("again/link" if of.link else "again", language, section=(name,), first=str(begin), last=str(end)))
    stop = Run(language.sentences["stop"])
    told = StepSaid(state, group)
    said_so = (Run(f"{stop.text} "), *check(told, language), stop) if state else (stop,)
    sides = {now.side for now in state if now is not None}
    return Sentence(
        worded(*words, *said_so),
        sizes,
        told.graded("row").text(language) if state else "",
        sides.pop() if len(sides) == 1 else "",
        next((s.origin for s in sentences if s.origin), ""),
        False,
        ("Again", *(kind for s in sentences for kind in s.kinds)),
        row_said=bool(state),
        row_graded=bool(state) and told.graded("row").whole,
        state=state,
        numbers=(first, last),
        refers=of.name,
    )


def _ends(sentences: Sequence[Sentence]) -> tuple[int, int]:
    numbers = [number for s in sentences for number in s.numbers]
    return numbers[0], numbers[-1]


def _state(sentences: Sequence[Sentence], sizes: Sequence[int]) -> tuple[Now | None, ...]:
    """What is true after them, for each size; empty where that is not known of all `sizes`, or is of two kinds."""
    told: dict[int, Now | None] = {}
    for sentence in reversed(sentences):
        for i in sentence.sizes:
            if i not in told and not sentence.keeps:
                told[i] = sentence.state[i] if sentence.state else None
    known = [told.get(i) for i in sizes]
    if None in known or len({type(now) for now in known}) != 1:
        return ()
    of = next(len(s.state) for s in sentences if s.state)
    return tuple(told.get(i) for i in range(of))
