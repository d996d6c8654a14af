"""What is said of a line that the grammar does not read: how far it read, what can stand there, and what was meant."""

from __future__ import annotations

import re
from typing import Any

from lark.exceptions import UnexpectedInput

from walewright.record import record
from walewright.report.model import Diagnostic, Span, diagnosed
from walewright.report.near import near
from walewright.report.said import Said, said
from walewright.source.grammar import expected, first_words, literals, parser
from walewright.source.layout import SourceLine
from walewright.source.spelling import mark_fault, marked_name
from walewright.source.words import PLACES, after, beginnings, example, places_of

_WORD = re.compile(r"\w+|\S")
_DECIMAL_COMMA = re.compile(r"\d,\d")
_TYPOGRAPHIC = frozenset("“”„«»‟″")
LONGEST_UNIT = 2
"""Letters of `cm`; of longer words of the language none is a likely name of a measurement."""
LONGEST_QUOTE = 40
"""Characters of a line that a message quotes."""


@record
class Stop:
    """How far a line was read: the terminals before, and the place and extent of the word that could not follow."""

    read: tuple[str, ...]
    start: int
    word: str


def stop(kind: str, content: str) -> Stop:
    """Where reading the line stops. `word` is empty when the line ends too soon."""
    state: Any = parser().parse_interactive(content, start=kind)
    read: list[str] = []
    place = len(content)
    try:
        for token in state.lexer_thread.lex(state.parser_state):
            place = token.start_pos or 0
            state.feed_token(token)
            read.append(token.type)
            place = len(content)
    except UnexpectedInput as fault:
        place = fault.pos_in_stream if fault.pos_in_stream is not None else place
    found = _WORD.match(content, place)
    return Stop(tuple(read), place, found[0] if found else "")


def unreadable(kind: str, line: SourceLine, file: str) -> Diagnostic:
    """One diagnostic for the line."""
    halt = stop(kind, line.content)
    marked = marked_name(line.content, halt.start)
    if marked is not None:
        begin, word = marked
        return mark_fault(word, Span(file, line.start + begin, line.start + begin + len(word)))
    halt = _before_a_word(kind, line.content, halt)
    if not halt.read:
        return _unknown_line(kind, line, file, halt)
    first = literals().get(halt.read[0], "")
    open_here = expected(kind, halt.read)
    words = after(kind, halt.read)
    before = _quoted(line.content[: halt.start].rstrip())
    helps = _meant(line.content, halt, open_here) or _meant_before(kind, line.content, halt)
    sample = example(kind, first, literals().get(halt.read[1], "") if len(halt.read) > 1 else "")
    if sample:
        helps.append(said("reads", sample=sample))
    return diagnosed(
        "unreadable-line/cannot-follow" if halt.word else "unreadable-line/ends-too-soon",
        (_place(file, line, halt), "stopped" if halt.word else "ends"),
        notes=("can-stand",),
        helps=helps,
        word=halt.word,
        before=before,
        words=words,
    )


def _before_a_word(kind: str, content: str, halt: Stop) -> Stop:
    """The stop before the last word read, where that is a word of the language and was taken for the name of an amount: nobody has
    called a measurement `with`, and what could follow that is of no use."""
    if not halt.read or halt.read[-1] != "NAME":
        return halt
    before = halt.read[:-1]
    last = list(_WORD.finditer(content[: halt.start]))[-1]
    # Units and articles are names of measurements as often as not.
    known = len(last[0]) > LONGEST_UNIT and last[0] in literals().values()
    return Stop(before, last.start(), last[0]) if before and known and "NUMBER" in expected(kind, before) else halt


def _unknown_line(kind: str, line: SourceLine, file: str, halt: Stop) -> Diagnostic:
    """For a line whose first word begins no line of this kind."""
    here = first_words(kind)
    place = _place(file, line, halt)
    elsewhere = places_of(halt.word)
    if elsewhere:
        return diagnosed(
            "misplaced-line",
            (place, "begins"),
            notes=("stands",),
            helps=("move-it",),
            word=halt.word,
            place=PLACES[kind],
            elsewhere=elsewhere,
        )
    meant = near(halt.word, here)
    sample = example(kind, meant or "")
    helps = [said("close", meant=meant)] if meant else []
    helps += [said("reads", sample=sample)] if sample else []
    beginning = tuple(begun for w in sorted(here) for begun in beginnings(kind, w))
    return diagnosed(
        "unreadable-line/unknown-beginning",
        (place, "begins"),
        notes=("beginnings" if beginning else "name-begins",),
        helps=helps,
        place=PLACES[kind],
        word=halt.word,
        beginnings=beginning,
    )


def _meant(content: str, halt: Stop, open_here: frozenset[str]) -> list[Said]:
    """Proposals for slips that are made again and again."""
    helps: list[Said] = []
    meant = near(halt.word, _words(open_here)) if halt.word else None
    if meant and meant != halt.word:
        helps.append(said("close", meant=meant))
    if halt.word in _TYPOGRAPHIC:
        helps.append(said("straight-quotes"))
    # The comma itself may have been read, as one before an option.
    if _DECIMAL_COMMA.match(content, max(0, halt.start - 1)) or _DECIMAL_COMMA.match(content, max(0, halt.start - 2)):
        helps.append(said("decimal-point"))
    return helps


def _meant_before(kind: str, content: str, halt: Stop) -> list[Said]:
    """A proposal for the last word read, where it was taken for a name and is nearly a word that could stand in its place."""
    if halt.read[-1] != "NAME":
        return []
    word = _WORD.findall(content[: halt.start])[-1]
    meant = near(word, _words(expected(kind, halt.read[:-1])))
    return [said("close", meant=meant)] if meant and meant != word else []


def _words(terminals: frozenset[str]) -> list[str]:
    return [w for t in terminals if (w := literals().get(t, "")).isalpha()]


def _place(file: str, line: SourceLine, halt: Stop) -> Span:
    start = line.start + halt.start
    return Span(file, start, start + len(halt.word))


def _quoted(read: str) -> str:
    """The end of what was read."""
    return read if len(read) <= LONGEST_QUOTE else f"…{read[-LONGEST_QUOTE:].lstrip()}"
