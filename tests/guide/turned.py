"""A second language of the guide, made of English by rule: each vowel has two dots. Whoever prints in it and says a word of English
shows it by a vowel without dots."""

from __future__ import annotations

import re
from dataclasses import fields, is_dataclass, replace
from string import Formatter
from typing import Any

from walewright.guide.english import LANGUAGE
from walewright.guide.model import Advice, Guide, HowToText

DOTTED = str.maketrans("aeiouyAEIOUY", "äëïöüÿÄËÏÖÜŸ")


def dotted(text: str) -> str:
    return text.translate(DOTTED)


def turned(template: str) -> str:
    """A sentence turned, its places kept; what a place has as text is turned as well."""
    made = ""
    for text, name, within, _ in Formatter().parse(template):
        made += dotted(text)
        if name is None:
            continue
        made += f"{{{name}{':' + _within(within) if within else ''}}}"
    return made


def _within(way: str) -> str:
    """What stands behind a place's colon: texts to choose from, or how a fact is written."""
    if way.startswith("?") or "|" in way:
        return turned(way)
    kind, slash, between = way.partition("/")
    return f"{kind}/{dotted(between)}" if slash else way


def every_text(value: Any) -> Any:
    """The words of a frozen dataclass turned, of those within it too; its kinds stay."""
    if isinstance(value, tuple):
        return tuple(every_text(v) for v in value)
    if not is_dataclass(value) or isinstance(value, type):
        return value
    words = {"text", "title", "only", "plain", "row", "meaning"}
    changed = {
        f.name: tuple((sign, dotted(told)) for sign, told in old)
        if f.name in ("key", "abbreviations")
        else dotted(old)
        if isinstance(old, str) and f.name in words
        else every_text(old)
        for f in fields(value)
        if f.init and ((old := getattr(value, f.name)) is not None)
    }
    return replace(value, **changed)


def _ordinal(number: int) -> str:
    return f"{number}."


_ENGLISH = LANGUAGE.words

TURNED = Guide(
    code="en-x-dotted",
    words=replace(
        _ENGLISH,
        phrases={key: turned(text) for key, text in _ENGLISH.phrases.items()},
        terms={key: (dotted(one), dotted(many)) for key, (one, many) in _ENGLISH.terms.items()},
        joined=(dotted(_ENGLISH.joined[0]), dotted(_ENGLISH.joined[1])),
        more=turned(_ENGLISH.more),
    ),
    advice={key: Advice(dotted(a.title), tuple(dotted(line) for line in a.lines), a.ordered) for key, a in LANGUAGE.advice.items()},
    how_to={key: HowToText(dotted(h.title), dotted(h.text), dotted(h.shown)) for key, h in LANGUAGE.how_to.items()},
    ordinal=_ordinal,
)


def undotted(text: str) -> set[str]:
    """Words of more than a letter in which no vowel has dots."""
    words = (word.lower() for word in re.findall(r"[^\W\d_]{2,}", text))
    return {word for word in words if word.isascii() and re.search("[aeiouy]", word)}
