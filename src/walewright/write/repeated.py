"""What repeats is said once: steps that say the same as steps of an earlier section are one line that refers to those.

The steps of a section are numbered from 1, and keep their numbers where others before them are said elsewhere. Only what an earlier
section says itself is referred to, never a line of it that refers on.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Hashable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache, partial
from itertools import count

from walewright.knit.steps import Now
from walewright.record import record, replace
from walewright.report.said import said
from walewright.write.as_far import AsFar, cut
from walewright.write.filling import filled, phrase
from walewright.write.grading import Graded
from walewright.write.language import PrintedLanguage
from walewright.write.mirrored import WhatHangs
from walewright.write.model import Paragraph, Run, Section, Sentence
from walewright.write.said import StepSaid, capital, prose, worded
from walewright.write.ticks import of_steps
from walewright.write.units import NOTHING_ELSE, Halves, Otherwise, SaidUnit, hangs, hung_in, numbered, once_mirrored, units_of
from walewright.write.words import check, edges_hung

FEWEST = 3
"""Steps from which on it is easier to look them up than to read them again."""


@record
class _Again:
    """Units `begin` to before `end` of a section say the same as as many of the earlier section `of`, from unit `at` on; they are
    so many `steps`. `mirrored`: it is the section itself, left and right changed."""

    begin: int
    end: int
    of: int
    at: int
    steps: int
    mirrored: bool = False
    on: WhatHangs = ""
    """What is hung in place of that of the earlier section."""


@dataclass(slots=True)
class _Own:
    """A section's units, and what each says, as a number: None where it is said elsewhere, or cannot be referred to."""

    units: tuple[SaidUnit, ...]
    keys: list[int | None]
    hung: WhatHangs = ""
    """The piece whose first row it hangs, or the edges."""
    cut: bool = False
    """Whether it says of some of its steps that they are those of an earlier section up to a reading of the counter."""


def once(
    sections: tuple[Section, ...],
    language: PrintedLanguage,
    otherwise: Sequence[Otherwise] = (),
    farther: Sequence[Sequence[AsFar]] = (),
) -> tuple[Section, ...]:
    """The sections with their steps numbered, and what an earlier one says already as references to it; `otherwise`: what else each
    would say; `farther`: as far as which earlier ones each goes the same way. Where halves that are told as mirrored leave more to
    say of others, they are told as they are."""
    of_each = otherwise or (NOTHING_ELSE,) * len(sections)
    as_far = farther or ((),) * len(sections)
    tellings = [_told(sections, language, of_each, as_far)]
    if any(one.halves for one in of_each):
        tellings.append(_told(sections, language, [replace(one, halves=None) for one in of_each], as_far))
    return min(tellings, key=lambda told: sum(len(section.sentences) for section in told))


def _told(
    sections: tuple[Section, ...],
    language: PrintedLanguage,
    otherwise: Sequence[Otherwise],
    farther: Sequence[Sequence[AsFar]],
) -> tuple[Section, ...]:
    names = Counter(section.called for section in sections)
    known: dict[Hashable, int] = {}
    own: list[_Own] = []
    made: list[Section] = []
    for section, other, as_far in zip(map(numbered, sections), otherwise, farther, strict=True):
        far = _farthest(as_far, section, own, names, sections)
        if far is not None:
            line = _as_far(section, far, (sections[far.of], own[far.of]), language)
            section, other = numbered(cut(section, far, line)), _cut_otherwise(other, far, line)
        units = tuple(units_of(section))
        told = _Own(units, [known.setdefault(unit.key, len(known)) for unit in units], other.hung, cut=far is not None)
        if far is not None:
            told.keys[far.begin] = None
        of_others = {hung: cache(partial(_keys, said_so, known)) for hung, said_so in other.of_others.items()}
        found = [] if section.joining else _references(told, own, other.halves, of_others)
        for again in found:
            told.keys[again.begin : again.end] = [None] * (again.end - again.begin)
        earlier = [*zip(sections, own, strict=False), (section, told)]
        made.append(_shortened(section, units, found, earlier, language))
        # Two of one name could not be told apart.
        if section.joining or names[section.called] > 1:
            told.keys[:] = [None] * len(units)
        own.append(told)
    return tuple(made)


OfOthers = Mapping[WhatHangs, Callable[[], list[int | None]]]
"""What a section would say of each other piece or of other edges, as numbers."""


def _keys(written: Callable[[], Section], known: Mapping[Hashable, int]) -> list[int | None]:
    return [known.get(unit.key) for unit in units_of(numbered(written()))]


def _references(told: _Own, earlier: Sequence[_Own], halves: Halves | None, of_others: OfOthers) -> list[_Again]:
    """In the order of the section: the other half of what parts, and what earlier sections say of the same or, by the keys
    `of_others`, of another piece or other edges."""
    found: list[_Again] = []
    free = list(told.keys)
    for begin, end, at in once_mirrored(told.units, halves, FEWEST):
        steps = _steps(told.units[begin:end])
        found.append(_Again(begin, end, len(earlier), at, steps, mirrored=True))
        for number in (*range(begin, end), *range(at, at + end - begin)):
            free[number] = None
    found += _found(_Own(told.units, free, told.hung), earlier, 0, len(free), of_others)
    return sorted(found, key=lambda again: again.begin)


def label(sentence: Sentence, language: PrintedLanguage) -> str:
    """The numbers of its steps as printed; empty where it has none."""
    match sentence.numbers:
        case (only,):
            return prose(said("step", first=only), language)
        case (first, last):
            return prose(said("steps", first=first, last=last), language)
    return ""


# ----------------------------------------------------------------- as far as another


def _farthest(
    as_far: Sequence[AsFar], section: Section, own: Sequence[_Own], names: Mapping[str, int], sections: Sequence[Section]
) -> AsFar | None:
    """That which says most, of an earlier section that says all of it itself, where fewer steps are said already."""
    units = tuple(units_of(section))
    found: AsFar | None = None
    for far in as_far:
        of = own[far.of]
        if names[sections[far.of].called] > 1 or of.cut or None in of.keys[far.since : far.until]:
            continue
        if found is None or _steps(units[far.begin : far.end]) > _steps(units[found.begin : found.end]):
            found = far
    return found


def _steps(units: Sequence[SaidUnit]) -> int:
    return sum(unit.steps for unit in units)


def _cut_otherwise(other: Otherwise, far: AsFar, line: Sentence) -> Otherwise:
    halves = other.halves
    return replace(
        other,
        halves=None if halves is None else Halves(cut(halves.plain, far, line), cut(halves.mirrored, far, line)),
        of_others={hung: partial(_cut_too, said_so, far, line) for hung, said_so in other.of_others.items()},
    )


def _cut_too(written: Callable[[], Section], far: AsFar, line: Sentence) -> Section:
    return cut(written(), far, line)


def _as_far(section: Section, far: AsFar, earlier: tuple[Section, _Own], language: PrintedLanguage) -> Sentence:
    """The line that says so."""
    of, own = earlier
    sentences = [s for unit in tuple(units_of(section))[far.begin : far.end] for s in unit.sentences]
    state = sentences[-1].state
    told = StepSaid(state, tuple(range(len(state))))
    row = told.graded("row")
    key = "again/link/far" if of.link else "again/far"
    step = Graded(far.within, told.group)
    within = tuple(filled("again/within", language, step=step)) if far.within else ()
    words = capital(phrase(key, language, section=(Run(of.called, "section"),), first=str(far.first), row=row, within=within))
    stop = Run(language.sentences["stop"])
    sides = {now.side for now in state if now is not None}
    return Sentence(
        runs=worded(*words, Run(f"{stop.text} "), *check(told, language, counter=False), stop),
        sizes=told.working,
        row=row.text(language),
        side=sides.pop() if len(sides) == 1 else "",
        origin=next((s.origin for s in sentences if s.origin), ""),
        check=False,
        kinds=("Again", *(kind for s in sentences for kind in s.kinds)),
        row_said=True,
        row_graded=row.whole,
        state=state,
        refers=of.name,
        ticks=of_steps(s for unit in own.units[far.since : far.until] for s in unit.sentences),
    )


# ----------------------------------------------------------------- what is said already


def _found(told: _Own, earlier: Sequence[_Own], begin: int, end: int, of_others: OfOthers) -> list[_Again]:
    """The references for units `begin` to before `end`: the longest first, then what is left before and after it."""
    best: _Again | None = None
    for of, one in enumerate(earlier):
        for again in (*_alike(told, one, of, begin, end), *_alike_but(told, one, of, begin, end, of_others)):
            if again.steps >= FEWEST and (best is None or again.steps > best.steps):
                best = again
    if best is None:
        return []
    before, after = (_found(told, earlier, *ends, of_others) for ends in ((begin, best.begin), (best.end, end)))
    return [best, *before, *after]


def _alike_but(told: _Own, one: _Own, of: int, begin: int, end: int, of_others: OfOthers) -> Iterator[_Again]:
    """Stretches that say of another piece, or of other edges, what the earlier section says of its own."""
    if one.hung in of_others and _enough_beside(told, one, begin, end):
        keys = of_others[one.hung]()
        if len(keys) != len(told.units):
            return
        for again in _alike(_Own(told.units, keys), one, of, begin, end):
            if hung_in(told.units[again.begin : again.end], told.hung):
                yield replace(again, on=told.hung)


def _enough_beside(told: _Own, one: _Own, begin: int, end: int) -> bool:
    """Whether lines beside those that hang something are alike in both, so that enough steps could be if those are too: only then
    need it be written what the section would say of the other."""
    there = [at for at, unit in enumerate(one.units) if hangs(unit)]
    return any(
        _steps_beside(told, one, (begin, end), (here, at)) >= FEWEST
        for here in range(begin, end)
        if hangs(told.units[here])
        for at in there
    )


def _steps_beside(told: _Own, one: _Own, within: tuple[int, int], pair: tuple[int, int]) -> int:
    """Of the longest stretch round a `pair` of units that are taken to be alike."""
    begin, end = within

    def alike(by: int) -> bool:
        here, at = pair[0] + by, pair[1] + by
        if not (begin <= here < end and 0 <= at < len(one.keys)) or one.keys[at] is None:
            return False
        return told.keys[here] in (None, one.keys[at]) or (hangs(told.units[here]) and hangs(one.units[at]))

    before = next(by for by in count() if not alike(-by))
    after = next(by for by in count() if not alike(by))
    return _steps(told.units[pair[0] - before + 1 : pair[0] + after]) if before and after else 0


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


def _trimmed(units: Sequence[SaidUnit], begin: int, end: int, of: int, stop: int) -> Iterator[_Again]:
    """From the first unit with a step on, if the last one has any; `stop` is where the earlier ones end."""
    while begin < end and not units[begin].steps:
        begin += 1
    if begin < end and units[end - 1].steps:
        yield _Again(begin, end, of, stop - (end - begin), _steps(units[begin:end]))


# ----------------------------------------------------------------- what is printed instead


def _shortened(
    section: Section,
    units: Sequence[SaidUnit],
    found: Sequence[_Again],
    earlier: Sequence[tuple[Section, _Own]],
    language: PrintedLanguage,
) -> Section:
    """The section with references in the place of what was `found`. A reference stands where its first line stood; one that begins
    a paragraph and goes on beyond it stands by itself, without a title; the other half, said mirrored, keeps its own."""
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
            kept = within or again.mirrored
            resumes = own.resumes if kept else bool(made) and bool(made[-1].only) and not head
            title = own.title if kept else prose(said("all-sizes"), language) if resumes else ""
            made.append(Paragraph(title, head, (), resumes=resumes))
            opened = unit.paragraph if within else -1
        made[-1] = replace(made[-1], sentences=(*made[-1].sentences, line))
    told = tuple(replace(p, table=any(s.cells for s in p.sentences)) for p in made)
    return replace(section, paragraphs=told)


def _reference(stood: Sequence[SaidUnit], of: Section, own: _Own, again: _Again, head: str, language: PrintedLanguage) -> Sentence:
    """The line that stands for the lines of units `stood`."""
    sentences = [s for unit in stood for s in unit.sentences]
    referred = [s for unit in own.units[again.at : again.at + len(stood)] for s in unit.sentences]
    (first, last), (begin, end) = _ends(sentences), _ends(referred)
    sizes = tuple(sorted({i for s in sentences for i in s.sizes}))
    state = _state(sentences, sizes)
    group = sizes if head else tuple(range(len(state)))
    name = Run(of.called, "section")
    if again.mirrored:
        words = capital(phrase("again/mirrored", language, first=str(begin), last=str(end)))
    elif isinstance(again.on, tuple):
        key = "again/link/edges" if of.link else "again/edges"
        edges = tuple(edges_hung(again.on, language))
        words = capital(phrase(key, language, section=(name,), first=str(begin), last=str(end), edges=edges))
    elif again.on:
        words = capital(phrase("again/on", language, section=(name,), first=str(begin), last=str(end), piece=again.on))
    else:
        words = capital(phrase("again/link" if of.link else "again", language, section=(name,), first=str(begin), last=str(end)))
    stop = Run(language.sentences["stop"])
    told = StepSaid(state, group)
    said_so = (Run(f"{stop.text} "), *check(told, language), stop) if state else (stop,)
    if again.mirrored and not state and (before := _state_before_last(sentences, sizes)):
        begun = capital(phrase("again/before", language, last=str(last)))
        at = StepSaid(before, sizes if head else tuple(range(len(before))))
        said_so = (Run(f"{stop.text} "), *begun, *check(at, language), stop)
    sides = {now.side for now in state if now is not None}
    return Sentence(
        runs=worded(*words, *said_so),
        sizes=sizes,
        row=told.graded("row").text(language) if state else "",
        side=sides.pop() if len(sides) == 1 else "",
        origin=next((s.origin for s in sentences if s.origin), ""),
        check=False,
        kinds=("Mirrored" if again.mirrored else "Again", *(kind for s in sentences for kind in s.kinds)),
        row_said=bool(state),
        row_graded=bool(state) and told.graded("row").whole,
        state=state,
        numbers=(first, last),
        refers="" if again.mirrored else of.name,
        ticks=of_steps(referred),
    )


def _ends(sentences: Sequence[Sentence]) -> tuple[int, int]:
    numbers = [number for s in sentences for number in s.numbers]
    return numbers[0], numbers[-1]


def _state_before_last(sentences: Sequence[Sentence], sizes: Sequence[int]) -> tuple[Now | None, ...]:
    """What is true before the last of them, after which nothing is on the bed, for each size; empty where that is not known."""
    *before, final = sentences
    return _state(before, sizes) if before and final.numbers and not final.state else ()


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
