"""What a printed line says: phrases and repeats with their graded numbers, for all sizes at once."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any, cast

from lark import Lark, Token, Transformer, Tree
from lark.exceptions import UnexpectedInput

from walewright.knit.operations import NEXT_COPY, SeamEnd, Side, slot
from walewright.readback.terminals import NAME_SPACE, whole_words
from walewright.world.tables import Grammar, made

SKIPPED = "–"

_DEEPEST = 20
"""Square brackets in a line. No plan nests its repeats so deep; it is a limit for damaged texts."""


@dataclass(frozen=True, slots=True)
class ReadGraded:
    """A number's readings: one for all sizes, or one a size; None is a dash. Needles are slots, carriage sides 0 left, 1 right."""

    readings: tuple[int | None, ...]

    def of(self, size: int) -> int | None:
        """The reading of size number `size` (from 0)."""
        return self.readings[size] if len(self.readings) > 1 else self.readings[0]


SeamEdgesRead = tuple[tuple[str, str, int], ...]
"""(piece, edge, copy) along a seam."""
Seams = tuple[tuple[SeamEdgesRead, SeamEdgesRead, tuple[SeamEnd, SeamEnd]], ...]
"""Both sides of each seam, and the end of the first edge of each at which it begins."""
ReadStripes = tuple[tuple[str, int], ...]
"""(yarn, rows) from the first knitted on."""


@dataclass(frozen=True, slots=True)
class ReadRows:
    """Rows in a list, of which a size may have fewer than another: a dash is one that it has not."""

    rows: tuple[ReadGraded, ...]

    def of(self, size: int) -> tuple[int, ...]:
        return tuple(row for row in (graded.of(size) for graded in self.rows) if row is not None)


Argument = ReadGraded | ReadRows | str | int | Seams | ReadStripes | tuple[int, int] | tuple[str, ...]
Reading = str | int | Seams | ReadStripes | tuple[int, ...] | tuple[str, ...] | None
"""An argument as one size reads it."""


@dataclass(frozen=True, slots=True)
class Several:
    """Arguments that are told together, taken apart again in the phrase they belong to."""

    arguments: tuple[ReadGraded | str, ...]


@dataclass(frozen=True, slots=True)
class ReadPhrase:
    """`kind` is the grammar's rule, the arguments stand in the order of its words."""

    kind: str
    arguments: tuple[Argument, ...]


@dataclass(frozen=True, slots=True)
class ReadRepeat:
    """The body is worked `times` times in all."""

    body: tuple[ReadSaid, ...]
    times: ReadGraded


@dataclass(frozen=True, slots=True)
class ReadTrack:
    """One of several shapings that go on at the same time."""

    title: str
    body: tuple[ReadSaid, ...]


ReadSaid = ReadPhrase | ReadRepeat | ReadTrack


@dataclass(frozen=True, slots=True)
class Unreadable:
    """Character `at` of the line is where the words stop making sense."""

    at: int


@lru_cache(maxsize=8192)
def said(line: str) -> tuple[ReadSaid, ...] | Unreadable:
    """The phrases of a printed line, in order."""
    if line.count("[") > _DEEPEST:
        return Unreadable(line.index("["))
    try:
        return cast("tuple[ReadSaid, ...]", parser().parse(line, start="start"))
    except UnexpectedInput as fault:
        return Unreadable(fault.pos_in_stream if fault.pos_in_stream is not None else len(line))


@lru_cache(maxsize=1024)
def chart_line(line: str) -> ReadPhrase | Unreadable:
    """What a line of a chart's section says, of a key without its symbol: what is repeated, a picture's way, a meaning."""
    try:
        return cast(ReadPhrase, parser().parse(line, start="chart_line"))
    except UnexpectedInput as fault:
        return Unreadable(fault.pos_in_stream if fault.pos_in_stream is not None else len(line))


GRAMMAR = Grammar(
    "instructions", "readback/terminals.py", ("start", "chart_line"), whole_words, lambda: {"transformer": _Phrases()}
)


@cache
def parser() -> Lark:
    """The LALR parser of `grammar/instructions.lark`; its results are tuples of `ReadSaid`, or a `ReadPhrase` of a chart's line."""
    return made(GRAMMAR)


def _graded(written: str, read: Callable[[str], int]) -> ReadGraded:
    first, _, rest = written.partition(" (")
    parts = [first, *rest.removesuffix(")").split(": ")] if rest else [first]
    return ReadGraded(tuple(None if p == SKIPPED else read(p) for p in parts))


def _needle(name: str) -> int:
    side: Side = "left" if name[0] == "L" else "right"
    return slot(side, int(name[2:]))


def _word(_: object, token: Token) -> str:
    return str(token)


def as_name(written: str) -> str:
    """A name as all stages have it."""
    return written.replace(NAME_SPACE, "_")


class _Phrases(Transformer[Token, Any]):
    """Reads the words of the grammar; each rule becomes a `ReadPhrase` of its name."""

    def __default__(self, data: Any, children: list[Any], meta: Any) -> ReadPhrase | Tree[Any]:
        # Rules with an underscore only put others together: the parser takes their trees apart again.
        if data.startswith("_"):
            return Tree(data, children, meta)
        apart = ((c.arguments if isinstance(c, Several) else (c,)) for c in children)
        return ReadPhrase(str(data), tuple(argument for told in apart for argument in told))

    def start(self, children: list[Any]) -> tuple[ReadSaid, ...]:
        return tuple(children)

    def loop(self, children: list[Any]) -> ReadRepeat:
        return ReadRepeat(tuple(children[:-1]), children[-1])

    def row(self, children: list[Any]) -> ReadRepeat:
        # A size whose counter value is a dash has nothing to do in the whole row.
        (at,) = children[0].arguments
        return ReadRepeat(tuple(children), ReadGraded(tuple(None if r is None else 1 for r in at.readings)))

    def track(self, children: list[Any]) -> ReadTrack:
        title, *body = children
        return ReadTrack(title, tuple(body))

    def repeat(self, children: list[Any]) -> ReadRepeat:
        return ReadRepeat(tuple(children), ReadGraded((1,)))

    def span(self, children: list[Any]) -> Several:
        return Several((children[0], children[-1]))

    def round(self, children: list[Any]) -> Several:
        *singles, changed, times = children
        return Several((*(singles or (ReadGraded((0,)),)), changed, times))

    def use_yarn_step(self, children: list[Any]) -> ReadPhrase:
        yarn, tension, *rest = children
        if not rest:
            return ReadPhrase("use_yarn_step", (yarn, tension))
        said = next((c.arguments[0] for c in rest if isinstance(c, Several)), "")
        return ReadPhrase("use_yarn_step", (yarn, tension, said, next((c for c in rest if isinstance(c, str)), "")))

    def start_chart(self, children: list[Any]) -> ReadPhrase:
        # A motif is no fabric of its own; without plain stitches at the ends there are none.
        fabric = [] if isinstance(children[1], ReadGraded) else children[:1]
        chart, first, last, area, *edge, start = children[len(fabric) :]
        return ReadPhrase("start_chart", (chart, *(fabric or [""]), area, first, last, *(edge or [ReadGraded((0,))]), start))

    def start_stripes(self, children: list[Any]) -> ReadPhrase:
        fabric, tension, *rest = children
        carried = rest.pop() if isinstance(rest[-1], Several) else Several(())
        return ReadPhrase("start_stripes", (fabric, tension, tuple(rest), tuple(str(c) for c in carried.arguments)))

    def stripe(self, children: list[Any]) -> tuple[str, int]:
        rows, yarn = children
        return yarn, rows

    def carried(self, children: list[Any]) -> Several:
        return Several(tuple(children))

    def chart_line(self, children: list[Any]) -> ReadPhrase:
        return cast(ReadPhrase, children[0])

    def columns(self, children: list[Any]) -> tuple[int, int]:
        return children[0], children[-1]

    rows = columns

    def stretched(self, children: list[Any]) -> ReadGraded:
        return ReadGraded(tuple(None if r is None else -r for r in children[0].readings))

    reaching = stretched

    def row_for_row(self, children: list[Any]) -> Several:
        return Several((children[0], ReadGraded((0,)), ReadGraded((0,))))

    def lengths(self, children: list[Any]) -> Several:
        return Several((ReadGraded((0,)), *children))

    def join_edges(self, children: list[Any]) -> ReadPhrase:
        way, *told = children
        seams = tuple(c for c in told if isinstance(c, tuple))
        numbers = [several.arguments for several in told if isinstance(several, Several)]
        matched = next((n for n in numbers if len(n) == 3), (ReadGraded((0,)),) * 3)
        eased = next((n for n in numbers if len(n) != 3), ())
        return ReadPhrase("join_edges", (way, seams, *matched, *eased))

    def seam(self, children: list[Any]) -> tuple[SeamEdgesRead, SeamEdgesRead, tuple[str, str]]:
        """Where nothing is said of it, a side begins at the bottom of its rows."""
        (one, begin), (other, beside) = children
        return one, other, (begin or "bottom", beside or "bottom")

    def closed_seam(self, children: list[Any]) -> tuple[SeamEdgesRead, SeamEdgesRead, tuple[str, str]]:
        return (children[0],), (), ("", "")

    def side(self, children: list[Any]) -> tuple[SeamEdgesRead, str]:
        edges = tuple(c for c in children if isinstance(c, tuple))
        return edges, next((c for c in children if isinstance(c, str)), "")

    def strips(self, children: list[Any]) -> str:
        return " ".join(children)

    def eased(self, children: list[Any]) -> Several:
        *longer, easing = children
        return Several((easing, *longer))

    def edge(self, children: list[Any]) -> tuple[str, str, int]:
        piece, *copy, name = children
        return piece, name, copy[0] if copy else 0

    def edge_name(self, children: list[Any]) -> str:
        return " ".join(children)

    def NUMBER(self, token: Token) -> ReadGraded:
        return _graded(token, int)

    def INSET(self, token: Token) -> ReadGraded:
        return _graded(token.removeprefix(", "), int)

    def ONE_MM(self, token: Token) -> ReadGraded:
        return _graded(token.removeprefix(", "), int)

    def ORDINAL(self, token: Token) -> ReadGraded:
        return _graded(token, lambda word: int(word[:-2]))

    def AT_ROWS(self, token: Token) -> ReadRows:
        return ReadRows(tuple(_graded(row, int) for row in re.split(r", | and ", token.removeprefix(", at RC "))))

    def SOONER(self, token: Token) -> str:
        return "sooner"

    def NEEDLE(self, token: Token) -> ReadGraded:
        return _graded(token, _needle)

    def NAME(self, token: Token) -> str:
        return as_name(token)

    def EDGE(self, token: Token) -> str:
        return as_name(token[1:-1])

    def ENDS(self, token: Token) -> str:
        return str(token).removeprefix("the ")

    def PART(self, token: Token) -> str:
        return str(token).removesuffix(" part")

    def WAY(self, token: Token) -> str:
        return {"e-wrap": "e-wrap", "latch-tool chain": "chain"}[str(token)]

    def CARRIAGE(self, token: Token) -> ReadGraded:
        return _graded(token, lambda word: word == "COR")

    def CHANGED(self, token: Token) -> ReadGraded:
        return ReadGraded((2 if token.startswith("2") else 0,))

    def JOINED(self, token: Token) -> str:
        return {"join": "sewn", "gather": "gathered", "graft": "grafted"}[token.lower()]

    def FACING(self, token: Token) -> str:
        return token.lower().split()[0]

    def END_AT(self, token: Token) -> str:
        return token.removesuffix(" end")

    def COPY(self, token: Token) -> int:
        """0 stands for each copy."""
        return 0 if token == "(each)" else NEXT_COPY if token == "(next)" else int(re.sub(r"\D", "", token))

    def WASTE_WAY(self, token: Token) -> str:
        return "comb" if token == "with the comb" else "e-wrap"

    def AREA(self, token: Token) -> str:
        return "panel" if token == "alone" else "whole"

    def EDGE_STS(self, token: Token) -> ReadGraded:
        return _graded(token.removeprefix(", plain on the "), int)

    def QUOTED_NAME(self, token: Token) -> str:
        return as_name(token[1:-1])

    def COUNT(self, token: Token) -> int:
        return int(token)

    def SAID_FOR(self, token: Token) -> Several:
        return Several((as_name(token.split("“")[1].removesuffix("”")),))

    def LEFT_HANGING(self, token: Token) -> str:
        return "carried"

    def LOOSER(self, token: Token) -> tuple[int, ...]:
        return tuple(int(n) for n in token if n.isdecimal())

    def OVER(self, token: Token) -> str:
        return "over"

    def FOLDED(self, token: Token) -> str:
        return "behind" if token.startswith("behind") else "in front"

    def SAME(self, token: Token) -> str:
        return "the same needles"

    def ALL(self, token: Token) -> str:
        return "all needles"

    SIDE = WHERE = EDGE_PART = TRACK = TENSION = QUOTED = _word
