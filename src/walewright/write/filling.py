"""Filling in: a template of a language and a step become runs of words and numbers.

A place in a template names a field of the step, or what is given for it:

    {piece}          a text: the language's word for it, where the field has one of a few values, else a name
    {rows}           a graded number; `{1}` is a number that is the same for all who work the step
    {rows:counter}   as the row counter shows it; `:ordinal` the 2nd, `:needle` a needle, `:cm` millimetres in centimetres
    {rows|row}       the noun for what is counted, in the singular where it is 1 for all
    {RC}, {ST}, {STS} an abbreviation by itself
    {@span}          a part that is put together by itself, see `words.PARTS`: one of several templates, a list, or nothing
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Mapping

from walewright.knit.steps import Copy
from walewright.write.grading import Graded
from walewright.write.language import PrintedLanguage
from walewright.write.model import Abbreviation, Run
from walewright.write.said import Phrase, StepSaid, plain, worded

Part = str | Run
FilledIn = str | int | Graded | tuple[Part, ...]
"""What can be given for a place: a word, a number that is no graded one, or parts of their own."""
Parts = Mapping[str, Callable[[StepSaid, PrintedLanguage], Iterable[Part]]]

_PLACE = re.compile(r"\{(@?)(\w+)(?::(\w+)|\|(\w+))?\}")

_GRADINGS: Mapping[str, Callable[[Graded, PrintedLanguage], Run]] = {
    "counter": Graded.counter,
    "ordinal": Graded.ordinal,
    "needle": Graded.needle,
    "cm": Graded.cm,
}


def filled(
    key: str, language: PrintedLanguage, said: StepSaid | None = None, parts: Parts | None = None, /, **given: FilledIn
) -> Iterator[Part]:
    """The parts of a sentence, its plain text as it stands. Raises KeyError for a template or a part that is not there."""
    template = language.sentences[key]
    at = 0
    for place in _PLACE.finditer(template):
        if place.start() > at:
            yield template[at : place.start()]
        at = place.end()
        part, name, way, noun = place.groups()
        if part:
            assert said is not None
            yield from (parts or {})[name](said, language)
        elif name in _SHORT:
            yield _SHORT[name](language)
        else:
            yield from _placed(key, name, way=way, noun=noun, language=language, said=said, given=given)
    if at < len(template):
        yield template[at:]


def line(key: str, language: PrintedLanguage, **given: FilledIn) -> str:
    """A sentence without a step, as text."""
    return "".join(run.text for run in worded(*filled(key, language, **given)))


def phrase(
    key: str, language: PrintedLanguage, said: StepSaid | None = None, parts: Parts | None = None, /, **given: FilledIn
) -> Phrase:
    """The sentence as runs."""
    return worded(*filled(key, language, said, parts, **given))


def _placed(
    key: str,
    name: str,
    way: str | None,
    noun: str | None,
    language: PrintedLanguage,
    said: StepSaid | None,
    given: Mapping[str, FilledIn],
) -> Iterator[Part]:
    what = given[name] if name in given else _field(name, said)
    if noun is not None:
        yield _noun(noun, language, what == 1 if isinstance(what, int) else isinstance(what, Graded) and what.of_one)
        return
    match what:
        case Graded():
            yield _GRADINGS[way](what, language) if way else what.number(language)
        case int():
            yield language.ordinal(what) if way == "ordinal" else str(what)
        case tuple():
            yield from what
        case str() if name == "edge":
            yield language.edge(what)
        case _:
            terms = language.terms.get(f"{key.partition('/')[0]}.{name}") or language.terms.get(name, {})
            yield terms.get(what, what)


def _field(name: str, said: StepSaid | None) -> FilledIn:
    if said is None:
        raise KeyError(name)
    if name.isdecimal():
        return said.constant(int(name))
    if name in _RECKONED:
        return Graded(tuple(None if step is None else _RECKONED[name](step) for step in said.steps), said.group)
    value = getattr(said.any, name)
    if isinstance(value, int):
        return said.graded(name)
    assert isinstance(value, str)
    return value


_RECKONED: Mapping[str, Callable[..., int]] = {
    "lowest": lambda step: step.low + 1,
    "left": lambda step: -1 - step.begin,
    "plain_left": lambda step: -step.begin,
    "plain_right": lambda step: step.begin - 1,
    "beyond": lambda step: abs(step.longer_mm),
    "rest": lambda step: step.left,
    "working": lambda step: step.stitches - getattr(step, "held", 0),
    "held": lambda step: getattr(step, "held", 0),
}
"""Numbers that no field has: the first stitch of a stretch; the needle opposite to that a rib begins with, and those within both;
by how much one side is longer; needles that get one loop each after the last changed one; of the stitches that are there those in
work, and those held for shaping."""


def _noun(noun: str, language: PrintedLanguage, one: bool) -> Run:
    named = language.nouns[noun]
    return Run(named.one if one else named.many, short=named.short)


_SHORT: Mapping[str, Callable[[PrintedLanguage], Run]] = {
    "RC": lambda language: Run(language.short(Abbreviation.RC), short=frozenset({Abbreviation.RC})),
    "ST": lambda language: _noun("st", language, one=True),
    "STS": lambda language: _noun("st", language, one=False),
}


def copy_word(copy: Copy, language: PrintedLanguage) -> str:
    """Which of a thing's copies."""
    if copy.each:
        return language.terms["copy"]["each"]
    return language.ordinal(copy.number) if copy.number > 0 else language.terms["copy"]["next"]


__all__ = ["FilledIn", "Part", "Parts", "copy_word", "filled", "line", "phrase", "plain"]
