"""Words for what is to be said: a language's table, and how facts are put into its sentences.

A sentence has places for facts in braces, `{name}`, and says how each is written where there is a choice:

    {piece}             as it is: a name, a count, a length with its unit, lengths by size, another phrase
    {names:and}         "a, b and c"
    {names:names}       "a, b, c", the first of many and how many more there are
    {names:and`}        the same with each in backquotes, as `or`` and `names``; one that is a phrase stays as it is
    {names:/ needs }    "a needs b needs c": the text between them; as "`/ needs " each in backquotes, as "term/ needs " each a term
    {clause:cannot}     a clause of a rule denied; as it is, it states what the rule asks for
    {n:stitch|stitches} "1 stitch", "3 stitches"; with a `#` for the number where it does not stand first, or not in both:
                        {n:a stitch|# stitches}
    {n:=one|more}       one of two texts, by whether it is one, without the number
    {n:word}            a small number as a word
    {kind:term}         a word of a closed kind, from the language's table of terms; `terms` for its plural. In place of the word
                        there can be a phrase, whose plural is the phrase of its key with `/many` behind it
    {kind:@der|die|das} one of three texts, by the gender of the word of a closed kind or of the phrase in its place: masculine,
                        feminine, neuter
    {flag:?yes|no}      one of two texts, by whether the fact holds; `{flag:?yes}` has nothing for no. Both may have places
    {x:source}          a number or an amount as an author writes it in a source, whatever the language
    {x:.1f}             a number written so, with its unit if it is a length
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import field
from string import Formatter
from typing import Any

from walewright.record import record
from walewright.report.model import Diagnostic
from walewright.report.said import Amount, BySize, Fact, Said, size_as_said

_SIZES = ("size", "sizes")
"""Facts that are names of sizes, or of something else in words."""

MOST_NAMES = 20
"""Names that are listed of many."""


@record
class Wording:
    """The words of a diagnostic: its message, and by their keys what stands at its places, its notes and its helps."""

    message: str
    labels: Mapping[str, str] = field(default_factory=dict)
    notes: Mapping[str, str] = field(default_factory=dict)
    helps: Mapping[str, str] = field(default_factory=dict)


@record
class Language:
    """A language's words. `wordings`: by code, or code/case where a code has several messages. `phrases`: parts of sentences.
    `terms`: words of closed kinds, each with its plural. `clauses`: what a rule asks for, stated and denied."""

    wordings: Mapping[str, Wording]
    phrases: Mapping[str, str]
    terms: Mapping[str, tuple[str, str]]
    clauses: Mapping[str, tuple[str, str]] = field(default_factory=dict)
    units: Mapping[str, str] = field(default_factory=dict)
    """What is counted, where a number stands with its unit: "rows"; or "row|rows" of one and of others."""
    words: tuple[str, ...] = ()
    """Of the numbers from nought."""
    joined: tuple[str, str] = (" and ", " or ")
    more: str = "and {count} more"
    point: str = "."
    thousands: str = ","
    """Between the thousands of a number where a sentence asks for it."""
    names: Mapping[str, str] = field(default_factory=dict)
    """What names of the author's are called, where messages are not for the author: by the name in the source."""
    genders: Mapping[str, str] = field(default_factory=dict)
    """"m", "f" or "n" of each term, and of each phrase that can stand in place of one, by its key; empty where words have none."""

    def number(self, value: float) -> str:
        """At most two decimals, no trailing noughts."""
        text = f"{value:.2f}".rstrip("0").rstrip(".")
        return ("0" if text == "-0" else text).replace(".", self.point)


_OF_SOURCES = Language({}, {}, {})
"""What numbers and units are written in within a source."""


@record
class Worded:
    """A diagnostic in words."""

    message: str
    labels: tuple[str, ...]
    """One for each of the diagnostic's labels; empty where a place says enough."""
    notes: tuple[str, ...]
    helps: tuple[str, ...]


MESSAGE = "message of "
"""Before a diagnostic's code and case, the key of its message."""


def message_of(diagnostic: Diagnostic) -> Said:
    """A diagnostic's message as a phrase of another one."""
    return Said(MESSAGE + kind_of(diagnostic), diagnostic.facts)


def kind_of(diagnostic: Diagnostic) -> str:
    """Where its words stand: its code, or code/case where the code has several messages."""
    return f"{diagnostic.code}/{diagnostic.case}" if diagnostic.case else diagnostic.code


def worded(diagnostic: Diagnostic, language: Language) -> Worded:
    """The diagnostic's message, labels, notes and helps in the words of a language."""
    wording = language.wordings[kind_of(diagnostic)]
    facts = dict(diagnostic.facts)
    message = _filled(wording.message, facts, language)
    if diagnostic.given is not None and not diagnostic.labels:
        option, name = diagnostic.given
        key = "by-option-of" if name else "by-option"
        message = phrased(Said(key, (("message", message), ("option", option), ("name", name))), language)
    return Worded(
        message,
        tuple(_text(label.said, wording.labels, facts, language) if label.said else "" for label in diagnostic.labels),
        tuple(_text(note, wording.notes, facts, language) for note in diagnostic.notes),
        tuple(_text(help_, wording.helps, facts, language) for help_ in diagnostic.helps),
    )


def phrased(phrase: Said, language: Language) -> str:
    """A phrase by itself."""
    return _text(phrase, {}, {}, language)


def _text(what: Said, own: Mapping[str, str], facts: Mapping[str, Fact], language: Language) -> str:
    template = own.get(what.key)
    if template is None:
        template = _shared(what.key, language)
    return _filled(template, {**facts, **dict(what.facts)}, language)


def _shared(key: str, language: Language) -> str:
    """The template of a phrase, of a clause that states what a rule asks for, or of another diagnostic's message."""
    if key.startswith(MESSAGE):
        return language.wordings[key.removeprefix(MESSAGE)].message
    return language.phrases[key] if key in language.phrases else language.clauses[key][0]


def _filled(template: str, facts: Mapping[str, Fact], language: Language) -> str:
    return _Filling(language).vformat(template, (), facts)


class _Filling(Formatter):
    """Puts facts into a sentence, each as its place asks for."""

    def __init__(self, language: Language) -> None:
        self.language = language

    def parse(self, format_string: str) -> Iterator[tuple[str, str | None, str | None, str | None]]:
        quotes = 0
        for before, name, spec, conversion in super().parse(format_string):
            # In backquotes a size stands as it is typed.
            quotes += before.count("`")
            as_typed = quotes % 2 == 1 or "`" in (spec or "")
            yield before, name, spec, "n" if name in _SIZES and not as_typed else conversion

    def convert_field(self, value: Any, conversion: Any) -> Any:
        """Names of sizes as words."""
        if conversion != "n":
            return super().convert_field(value, conversion)
        names = tuple(map(size_as_said, value)) if isinstance(value, tuple) and all(isinstance(v, str) for v in value) else value
        return size_as_said(names) if isinstance(names, str) else names

    def format_field(self, value: Any, format_spec: str) -> str:
        fact: Fact = value
        if format_spec.startswith("?"):
            yes, _, no = format_spec[1:].partition("|")
            return yes if fact else no
        if format_spec.startswith("="):
            one, _, many = format_spec[1:].partition("|")
            return one if fact == 1 else many
        if format_spec.startswith("@"):
            return format_spec[1:].split("|")["mfn".index(self.gender(fact))]
        if "/" in format_spec and isinstance(fact, tuple):
            way, _, between = format_spec.partition("/")
            return between.join(self.format_field(f, way) if way == "term" else self.named(f, way == "`") for f in fact)
        if "|" in format_spec:
            one, _, many = format_spec.partition("|")
            text = one if fact == 1 else many
            return text.replace("#", self.plain(fact)) if "#" in format_spec else f"{self.plain(fact)} {text}"
        if isinstance(fact, tuple) and format_spec:
            return self.listed(fact, format_spec)
        match format_spec:
            case "":
                return self.plain(fact)
            case "cannot" if isinstance(fact, Said):
                return _filled(self.language.clauses[fact.key][1], dict(fact.facts), self.language)
            case "source":
                return _Filling(_OF_SOURCES).plain(fact)
            case "word" if isinstance(fact, int):
                return self.language.words[fact] if fact < len(self.language.words) else str(fact)
            case "term" | "terms" if isinstance(fact, str):
                return self.language.terms[fact][format_spec == "terms"] if fact else ""
            case "term" | "terms" if isinstance(fact, Said):
                return self.plain(fact if format_spec == "term" else Said(f"{fact.key}/many", fact.facts))
        if isinstance(fact, Amount):
            return self.counted(self.format_field(fact.value, format_spec), fact.unit)
        signs = {ord("."): self.language.point, ord(","): self.language.thousands}
        return format(value, format_spec).translate(signs)

    def gender(self, fact: Fact) -> str:
        """That of the word which a fact is told by."""
        return self.language.genders[fact.key if isinstance(fact, Said) else str(fact)]

    def plain(self, fact: Fact) -> str:
        """A fact where the sentence says nothing of how it is written."""
        match fact:
            case Amount(value, unit):
                return self.amount(value, unit)
            case BySize(sizes, values, unit):
                texts = [self.amount(v, unit) for v in values]
                return ", ".join(f"{size_as_said(s)} {t}" for s, t in zip(sizes, texts, strict=True)) if sizes else texts[0]
            case Said():
                return _text(fact, {}, {}, self.language)
            case tuple():
                return ", ".join(self.plain(f) for f in fact)
            case float():
                return self.language.number(fact)
            case str():
                return self.language.names.get(fact, fact)
        return str(fact)

    def amount(self, value: float, unit: str) -> str:
        return self.counted(self.language.number(value), unit)

    def counted(self, number: str, unit: str) -> str:
        """With the unit as the language has it; signs of measures, such as cm, are the same in all."""
        one, _, many = self.language.units.get(unit, unit).partition("|")
        return f"{number} {one if number == '1' or not many else many}".strip()

    def named(self, fact: Fact, quoted: bool) -> str:
        return f"`{self.plain(fact)}`" if quoted and isinstance(fact, str) else self.plain(fact)

    def listed(self, facts: tuple[Fact, ...], way: str) -> str:
        texts = [self.named(fact, way.endswith("`")) for fact in facts]
        match way.removesuffix("`"):
            case "names":
                return self.names(texts)
            case "and" | "or" as last:
                return self.joined(texts, self.language.joined[last == "or"])
        raise ValueError(f"several facts cannot be written as {way!r}")

    def joined(self, texts: list[str], last: str) -> str:
        return last.join((", ".join(texts[:-1]), texts[-1])) if len(texts) > 1 else "".join(texts)

    def names(self, texts: list[str]) -> str:
        more = len(texts) - MOST_NAMES
        if more <= 1:
            return ", ".join(texts)
        return f"{', '.join(texts[:MOST_NAMES])} {self.language.more.format(count=more)}"


__all__ = ["Language", "Worded", "Wording", "kind_of", "message_of", "phrased", "worded"]
