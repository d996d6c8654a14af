"""What a printed line says: phrases and repeats with their graded numbers, for all sizes at once."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache, lru_cache
from typing import Any, cast

from lark import Lark
from lark.exceptions import UnexpectedInput

from walewright.readback.language import ReadLanguage
from walewright.readback.phrases import ReadPhrase, ReadSaid
from walewright.readback.rules import ReadRules
from walewright.readback.sizes import of_sizes, strangers
from walewright.readback.terminals import whole_words
from walewright.record import record
from walewright.world.tables import Grammar, made

_DEEPEST = 20
"""Square brackets in a line. No plan nests its repeats so deep; it is a limit for damaged texts."""


@record
class Unreadable:
    """Character `at` of the line is where the words stop making sense; or they are for a `size` that the text has not."""

    at: int
    size: str = ""


def said(line: str, language: ReadLanguage) -> tuple[ReadSaid, ...] | Unreadable:
    """The phrases of a printed line, in order."""
    if line.count("[") > _DEEPEST:
        return Unreadable(line.index("["))
    return cast("tuple[ReadSaid, ...] | Unreadable", _parsed(line, "start", language))


class LinesSaid:
    """The lines of one printed text of these `sizes` in its `language`. A line is parsed when it is first asked for, and once,
    however long the text is and however many sizes work it."""

    def __init__(self, language: ReadLanguage, sizes: tuple[str, ...]) -> None:
        self.language, self.sizes = language, sizes
        self._parsed: dict[str, tuple[ReadSaid, ...] | Unreadable] = {}

    def read(self, words: str) -> tuple[ReadSaid, ...] | Unreadable:
        """The phrases of a line, in order."""
        if words not in self._parsed:
            told = said(words, self.language)
            if not isinstance(told, Unreadable):
                strange = sorted(strangers(told, self.sizes))
                told = Unreadable(0, strange[0]) if strange else of_sizes(told, self.sizes)
            self._parsed[words] = told
        return self._parsed[words]


@lru_cache(maxsize=1024)
def chart_line(line: str, language: ReadLanguage) -> ReadPhrase | Unreadable:
    """What a line of a chart's section says beside its key: what is repeated, a picture's way."""
    return cast("ReadPhrase | Unreadable", _parsed(line, "chart_line", language))


@lru_cache(maxsize=1024)
def meaning(words: str, language: ReadLanguage) -> ReadPhrase | Unreadable:
    """What a symbol of a chart means."""
    return cast("ReadPhrase | Unreadable", _parsed(words, "meaning", language))


def _parsed(words: str, start: str, language: ReadLanguage) -> object:
    try:
        return parser(language).parse(words, start=start)
    except UnexpectedInput as fault:
        return Unreadable(fault.pos_in_stream if fault.pos_in_stream is not None else len(words))


def grammar(language: ReadLanguage) -> Grammar:
    """The language's grammar, as its parser is made."""

    def options() -> Mapping[str, Any]:
        return {"transformer": ReadRules(language)}

    starts = ("start", "chart_line", "meaning")
    return Grammar(language.grammar, "readback/terminals.py", starts, whole_words, options, language.text)


@cache
def parser(language: ReadLanguage) -> Lark:
    """The LALR parser of a language's grammar; its results are tuples of `ReadSaid`, or a `ReadPhrase` of a chart's line."""
    return made(grammar(language))
