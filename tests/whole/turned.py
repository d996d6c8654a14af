"""A second printed language, made of English by rule: every word is turned round and marked, and some stand in another order.

A number comes after what it counts (`sts 80`), the counter's name after its value (`34 RC`), and in one sentence the side before
the stitches. The grammar and the layout are made of the English ones by the same rule, so that reading back is tried in a language
whose writer and reader know no word of English.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import fields, replace
from functools import cache
from string import Formatter
from typing import Any

from walewright.guide.model import Advice, Guide, HowToText
from walewright.languages import PrintedIn, printed
from walewright.readback.language import PageLayout, ReadLanguage
from walewright.report.wording import Language, Wording
from walewright.world import shipped_text
from walewright.write.language import Noun, PrintedLanguage

MARK = "ö"
"""At the end of every word of the language."""

AS_IN_ENGLISH = {"inset", "plain_ends", "looser", "looser/range", "stages/at"}
"""Sentences whose numbers stand where they stand in English: a word of the grammar looks ahead to what is counted."""


def turned(text: str) -> str:
    """Every word of a text turned round: "Knit 2 rows" is "Tinkö 2 sworö"."""
    return re.sub(r"[A-Za-z]+", lambda found: _word(found[0]), text)


def _word(word: str) -> str:
    mirrored = word[::-1] + MARK
    return mirrored.lower().capitalize() if word[0].isupper() and word[1:].islower() else mirrored


def outside(pattern: str, text: str, change: Callable[[str], str]) -> str:
    """The text changed wherever the pattern does not match."""
    at, made = 0, []
    for found in re.finditer(pattern, text):
        made += [change(text[at : found.start()]), found[0]]
        at = found.end()
    return "".join((*made, change(text[at:])))


# ----------------------------------------------------------------- what is written


def template(key: str, words: str) -> str:
    if key not in AS_IN_ENGLISH:
        words = re.sub(r"(\{(\w+)\}) (\{\2\|\w+\})", r"\3 \1", words)
        words = re.sub(r"(\{RC\}) (\{\w+\})", r"\2 \1", words)
    if key == "return_some":
        words = "return held at the {side} the {stitches|st} {stitches} to work"
    return outside(r"\{[^}]*\}", words, turned)


def sentence(words: str) -> str:
    """Of prose: between braces there can be words too, one for one and one for many."""
    words = outside(r"\{[^}]*\}", words, turned)
    return re.sub(r"\{(\w+):(\w+)\|(\w+)\}", lambda m: f"{{{m[1]}:{turned(m[2])}|{turned(m[3])}}}", words)


def written(english: PrintedLanguage) -> PrintedLanguage:
    prose = Language(
        wordings={},
        phrases={key: sentence(words) for key, words in english.prose.phrases.items()},
        terms={key: (turned(one), turned(many)) for key, (one, many) in english.prose.terms.items()},
        joined=(turned(english.prose.joined[0]), turned(english.prose.joined[1])),
    )
    return replace(
        english,
        name="turned",
        sentences={key: template(key, words) for key, words in english.sentences.items()},
        terms={name: _each(words) for name, words in english.terms.items()},
        nouns={key: Noun(turned(n.one), turned(n.many), n.short) for key, n in english.nouns.items()},
        abbreviations={key: (turned(short), turned(meaning)) for key, (short, meaning) in english.abbreviations.items()},
        prose=prose,
        ordinal=lambda number: turned(english.ordinal(number)),
        edges=_each(english.edges),
        unbroken=re.compile(r"(?!)"),
    )


def _each(words: Mapping[str, str]) -> dict[str, str]:
    return {key: turned(word) for key, word in words.items()}


# ----------------------------------------------------------------- what is read

_OF_A_PATTERN = r"\\u[0-9a-f]{4}|\\.|\(\?P<\w+>|\(\?[:=!<]+|\[[^\]]*\]"
"""What stands in a regular expression besides words."""

_OF_A_GRAMMAR = re.compile(r'(?P<comment>//[^\n]*)|(?P<words>"[^"\n]*")|(?P<pattern>(?<=[:|(] )/(?:\\.|[^/\n])+/)')


def pattern(words: str) -> str:
    return outside(_OF_A_PATTERN, words, turned)


def grammar(english: str) -> str:
    lines = [_reordered(line) for line in english.split("\n")]
    return _OF_A_GRAMMAR.sub(_token, "\n".join(lines))


def _reordered(line: str) -> str:
    if line.startswith("return_some:"):
        return 'return_some: "return held at the"i _side_of "the" _STS NUMBER "to work"'
    if line.startswith(("worked_once:", "chained:")):
        return line
    if line.startswith("_STS:"):
        # It can begin a sentence.
        return f"{line}i"
    line = re.sub(r"\b(NUMBER|COUNT) (_[A-Z]\w*)", r"\2 \1", line)
    line = re.sub(r"^(EVENT_ROWS(?:_BY_SIZE\.1)?: /at) RC (.*)(\(\?!.*)$", r"\1 \2 RC\3", line)
    # Of several values the name stands after the last one.
    line = re.sub(r'"from RC" (NUMBER \(\("," NUMBER\)\* "and" NUMBER\)\?)', r'"from" \1 "RC"', line)
    return re.sub(r'"([^"]*?) ?RC"(i?) NUMBER', lambda m: f'{_quoted(m[1], m[2])}NUMBER "RC"', line)


def _quoted(words: str, flag: str) -> str:
    return f'"{words}"{flag} ' if words else ""


def _token(found: re.Match[str]) -> str:
    if found["words"] is not None:
        return turned(found[0])
    return pattern(found[0]) if found["pattern"] is not None else ""


def read(english: ReadLanguage) -> ReadLanguage:
    layout: dict[str, Any] = {f.name: re.compile(pattern(getattr(english.layout, f.name).pattern)) for f in fields(PageLayout)}
    return replace(
        english,
        name="turned",
        grammar="turned",
        text=grammar(shipped_text("grammar", "english.lark")),
        layout=PageLayout(**layout),
        left=turned(english.left),
        right=turned(english.right),
        carriage=(turned(english.carriage[0]), turned(english.carriage[1])),
        edges={turned(word): edge for edge, word in printed().writing.edges.items()},
        order={"return_some": (1, 0)},
    )


# ----------------------------------------------------------------- what is told


def filled(words: str) -> str:
    """A sentence of messages and of the guide: its places stay, and what stands in them as text is turned."""
    made = ""
    for text, name, way, _ in Formatter().parse(words):
        made += turned(text).replace("{", "{{").replace("}", "}}")
        if name is not None:
            made += f"{{{name}{':' + _way(way) if way else ''}}}"
    return made


def _way(way: str) -> str:
    """How a fact is written: texts to choose from are turned, all else stays."""
    if way.startswith(("?", "=")):
        return way[0] + filled(way[1:])
    if "/" in way and "|" not in way:
        kind, _, between = way.partition("/")
        return f"{kind}/{turned(between)}"
    return filled(way) if "|" in way else way


def told(english: Language) -> Language:
    return replace(
        english,
        wordings={key: _wording(wording) for key, wording in english.wordings.items()},
        phrases={key: filled(words) for key, words in english.phrases.items()},
        terms={key: (turned(one), turned(many)) for key, (one, many) in english.terms.items()},
        clauses={key: (filled(one), filled(other)) for key, (one, other) in english.clauses.items()},
        units={unit: turned(word) for unit, word in english.units.items()},
        words=tuple(turned(word) for word in english.words),
        joined=(turned(english.joined[0]), turned(english.joined[1])),
        more=filled(english.more),
    )


def _wording(english: Wording) -> Wording:
    parts = ({key: filled(words) for key, words in group.items()} for group in (english.labels, english.notes, english.helps))
    return Wording(filled(english.message), *parts)


def guided(english: Guide) -> Guide:
    return replace(
        english,
        code="en-x-turned",
        words=told(english.words),
        advice={key: Advice(turned(a.title), tuple(map(turned, a.lines)), a.ordered) for key, a in english.advice.items()},
        how_to={key: HowToText(turned(h.title), turned(h.text), turned(h.shown)) for key, h in english.how_to.items()},
        ordinal=lambda number: turned(english.ordinal(number)),
    )


@cache
def language() -> PrintedIn:
    """The language, in all that is printed and told."""
    english = printed()
    return PrintedIn("turned", written(english.writing), read(english.reading), told(english.telling), guided(english.guide))
