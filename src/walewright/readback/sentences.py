"""What a printed line says: phrases and repeats with their graded numbers, for all sizes at once."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any, cast

from lark import Lark, Token, Transformer, Tree
from lark.exceptions import UnexpectedInput

from walewright.knit.operations import NEXT_COPY, Side, slot
from walewright.readback.language import ReadLanguage
from walewright.readback.phrases import (
    ReadCounts,
    ReadEvents,
    ReadForSome,
    ReadGraded,
    ReadPhrase,
    ReadRepeat,
    ReadRows,
    ReadSaid,
    ReadStages,
    ReadStrips,
    ReadTrack,
    SeamEdgesRead,
    Several,
    figure,
    tenths,
)
from walewright.readback.terminals import NAME_SPACE, whole_words
from walewright.world.tables import Grammar, made

_DEEPEST = 20
"""Square brackets in a line. No plan nests its repeats so deep; it is a limit for damaged texts."""


@dataclass(frozen=True, slots=True)
class Unreadable:
    """Character `at` of the line is where the words stop making sense."""

    at: int


@lru_cache(maxsize=8192)
def said(line: str, language: ReadLanguage) -> tuple[ReadSaid, ...] | Unreadable:
    """The phrases of a printed line, in order."""
    if line.count("[") > _DEEPEST:
        return Unreadable(line.index("["))
    return cast("tuple[ReadSaid, ...] | Unreadable", _parsed(line, "start", language))


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
        return {"transformer": _Phrases(language)}

    starts = ("start", "chart_line", "meaning")
    return Grammar(language.grammar, "readback/terminals.py", starts, whole_words, options, language.text)


@cache
def parser(language: ReadLanguage) -> Lark:
    """The LALR parser of a language's grammar; its results are tuples of `ReadSaid`, or a `ReadPhrase` of a chart's line."""
    return made(grammar(language))


def as_name(written: str) -> str:
    """A name as all stages have it."""
    return written.replace(NAME_SPACE, "_")


MEANT: Mapping[str, str | int | ReadGraded] = {
    **{"LEFT": "left", "RIGHT": "right", "BOTH_ENDS": "both ends", "THE_LEFT_END": "left end", "THE_RIGHT_END": "right end"},
    **{"LEFT_PART": "left", "CENTRE_PART": "centre", "RIGHT_PART": "right", "CENTRE": "centre", "UPPER": "upper"},
    **{"LEFT_END": "left", "RIGHT_END": "right", "BOTTOM": "bottom", "TOP": "top", "FROM_BOTTOM": "bottom", "FROM_TOP": "top"},
    **{"LEFT_SHOULDER": "left", "RIGHT_SHOULDER": "right", "FROM_LEFT": "left", "FROM_RIGHT": "right"},
    **{"START": "start", "END": "end", "SHOULDER": "shoulder", "NECK": "neck", "FIRST_END": "first end", "LAST_END": "last end"},
    **{"JOIN": "sewn", "GATHER": "gathered", "GRAFT": "grafted", "PURL_FACING": "purl", "KNIT_FACING": "knit"},
    **{"EACH": 0, "NEXT": NEXT_COPY, "TO_ITS_OWN": "own", "TO_THE_NEXT": "next", "ALL_ROUND": "round"},
    **{"BESIDE": "whole", "ALONE": "panel", "OUTER": "outer", "INNER": "inner", "MIDDLE": "middle"},
    **{"BY_E_WRAP": "e-wrap", "BY_CHAIN": "chain", "WITH_COMB": "comb", "E_WRAPPED": "e-wrap", "HEM_HUNG": "hem"},
    **{"ON_SLIP": "slip", "LIFTED_OFF": "lift", "ON_HOLD": "hold", "LOOSER_PLATE": "plate"},
    **{"TWO_LOOPS": ReadGraded((2,)), "NO_LOOP": ReadGraded((0,)), "LAST_NEEDLE": ReadGraded((1,))},
    **{"SAME": "the same needles", "ALL": "all needles", "IN_FRONT": "in front", "BEHIND": "behind"},
    **{"OVER": "over", "SOONER": "sooner", "LEFT_HANGING": "carried", "AS_BEFORE": "threaded", "MORE": "more"},
}
"""What a terminal stands for, whatever its words are in a language."""


class _Phrases(Transformer[Token, Any]):
    """Reads the words of a grammar; each rule becomes a `ReadPhrase` of its name."""

    def __init__(self, language: ReadLanguage) -> None:
        super().__init__()
        self._language = language
        marks = (language.dash, language.opening, language.between, language.closing)
        dash, opening, between, closing = (re.escape(mark) for mark in marks)
        number = rf"(?:[0-9]{{1,4}}|{dash})"
        self._numbers = re.compile(rf"{number}(?:{opening}{number}(?:{between}{number})*{closing})?")
        for terminal, meant in MEANT.items():
            setattr(self, terminal, lambda _, meant=meant: meant)

    def __default__(self, data: Any, children: list[Any], meta: Any) -> ReadPhrase | Tree[Any]:
        # Rules with an underscore only put others together: the parser takes their trees apart again.
        if data.startswith("_"):
            return Tree(data, children, meta)
        apart = ((c.arguments if isinstance(c, Several) else (c,)) for c in children)
        arguments = tuple(argument for told in apart for argument in told)
        order = self._language.order.get(str(data))
        return ReadPhrase(str(data), tuple(arguments[at] for at in order if at < len(arguments)) if order else arguments)

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

    crossing, moving, holding = map(ReadEvents.of_rule, ("cross", "move", "hold"))

    def every(self, children: list[Any]) -> Any:
        return tuple(children)

    def stage_rows(self, children: list[Any]) -> ReadStages:
        return ReadStages(children[0], tuple(children[1:]))

    def for_some(self, children: list[Any]) -> ReadForSome:
        sizes, *body = children
        return ReadForSome(tuple(body), sizes)

    def SIZES_ONLY(self, token: Token) -> frozenset[int]:
        return frozenset(int(number) - 1 for number in re.findall(r"[0-9]+", token))

    def span(self, children: list[Any]) -> Several:
        return Several((children[0], children[-1]))

    def spread_evenly(self, children: list[Any]) -> ReadPhrase:
        first, last, stitches, *rounds = children
        told = tuple(
            n for one in rounds for n in (one.arguments if isinstance(one, Several) else (one,)) if isinstance(n, ReadGraded)
        )
        return ReadPhrase("spread_evenly", (first, last, stitches, ReadCounts(told)))

    def round(self, children: list[Any]) -> Several:
        singles, changed, *times = children
        return Several((singles, changed, *(times or [ReadGraded((1,))])))

    def round_of_one(self, children: list[Any]) -> Several:
        return self.round([ReadGraded((1,)), *children])

    def round_changed(self, children: list[Any]) -> Several:
        return self.round([ReadGraded((0,)), *children])

    def latch_panel(self, children: list[Any]) -> ReadPhrase:
        *needles, rows = children
        return ReadPhrase("latch_panel", (ReadRows(tuple(needles)), rows))

    def latch_every_of_panel(self, children: list[Any]) -> ReadPhrase:
        return ReadPhrase("latch_panel", tuple(children))

    def latch_panel_in_stages(self, children: list[Any]) -> ReadPhrase:
        needles = [c for c in children if isinstance(c, ReadGraded)]
        return ReadPhrase("latch_panel_in_stages", (ReadRows(tuple(needles)), *children[len(needles) :]))

    def latch_every_of_panel_in_stages(self, children: list[Any]) -> ReadPhrase:
        return ReadPhrase("latch_panel_in_stages", tuple(children))

    def edge_told(self, children: list[Any]) -> Several:
        """The part comes before the piece, where one is named."""
        names = sum(isinstance(c, str) for c in children)
        return Several(tuple(children) if names > 2 else ("whole", *children))

    def NTH_SHOULDER(self, words: Token) -> str:
        return f"shoulder {words.rpartition(' ')[2]}"

    def shoulder_told(self, children: list[Any]) -> Several:
        return Several((*children, "shoulder"))

    def upper_told(self, children: list[Any]) -> Several:
        opening, *piece = children
        return Several(("whole", *piece, f"{opening} upper"))

    def use_yarn_step(self, children: list[Any]) -> ReadPhrase:
        if children[-1] == "threaded":
            fabric = next((str(c.arguments[0]) for c in children if isinstance(c, Several)), "")
            return ReadPhrase("use_yarn_step", ("", children[0], fabric))
        yarn, tension, *rest = children
        if not rest:
            return ReadPhrase("use_yarn_step", (yarn, tension))
        said = next((c.arguments[0] for c in rest if isinstance(c, Several)), "")
        return ReadPhrase("use_yarn_step", (yarn, tension, said, next((c for c in rest if isinstance(c, str)), "")))

    def use_looser(self, children: list[Any]) -> ReadPhrase:
        told = ["", *children[:-1]] if children[-1] == "threaded" else children
        return ReadPhrase("use_looser", tuple(told))

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

    meaning = chart_line

    def kept(self, children: list[Any]) -> str:
        return str(children[0])

    def columns(self, children: list[Any]) -> tuple[int, int]:
        return children[0], children[-1]

    rows = columns

    def stretched(self, children: list[Any]) -> ReadGraded:
        return ReadGraded(tuple(None if r is None else -r for r in children[0].readings))

    reaching = stretched

    def row_for_row(self, children: list[Any]) -> Several:
        return Several((children[0], ReadGraded((0,)), ReadGraded((0,))))

    def in_ratio(self, children: list[Any]) -> Several:
        return Several((*(ReadGraded((0,)),) * 3, ReadGraded((0,)), ReadGraded((0,)), *children))

    def lengths(self, children: list[Any]) -> Several:
        return Several((ReadGraded((0,)), *children))

    def join_edges(self, children: list[Any]) -> ReadPhrase:
        way, *told = children
        seams = tuple(c for c in told if isinstance(c, tuple))
        over = next((c for c in told if isinstance(c, ReadStrips)), ReadStrips((), ()))
        numbers = [several.arguments for several in told if isinstance(several, Several)]
        matched = next((n for n in numbers if len(n) == 3), (ReadGraded((0,)),) * 3)
        eased = next((n for n in numbers if len(n) < 3 and not isinstance(n[0], str)), ())
        turn = next((n for n in numbers if isinstance(n[0], str)), ("", ReadGraded((0,))))
        ratio = next((n for n in numbers if len(n) > 3), ())
        return ReadPhrase("join_edges", (way, seams, over, *turn, *(ratio or (*matched, *eased))))

    def ratio(self, children: list[Any]) -> Several:
        return Several(("about", *children))

    def stretch_of_rows(self, children: list[Any]) -> Several:
        return Several(tuple(children))

    turn = stretch_of_rows

    def stretch_of_stitches(self, children: list[Any]) -> Several:
        first, last = children
        return Several((ReadGraded(tuple(None if r is None else r - 1 for r in first.readings)), last))

    def seam(self, children: list[Any]) -> tuple[SeamEdgesRead, SeamEdgesRead, tuple[str, str]]:
        """Where nothing is said of it, a side begins at the bottom of its rows."""
        (one, begin), (other, beside) = children
        return one, other, (begin or "bottom", beside or "bottom")

    def closed_seam(self, children: list[Any]) -> tuple[SeamEdgesRead, SeamEdgesRead, tuple[str, str]]:
        return (children[0],), (), ("", "")

    def side(self, children: list[Any]) -> tuple[SeamEdgesRead, str]:
        edges = tuple(c for c in children if isinstance(c, tuple))
        return edges, next((c for c in children if isinstance(c, str)), "")

    def strips(self, children: list[Any]) -> ReadStrips:
        return ReadStrips(tuple(name for name, _ in children), tuple(rows for _, rows in children))

    def strip(self, children: list[Any]) -> tuple[tuple[str, str], ReadGraded]:
        rows, owner, *edging = children
        return (owner, edging[0] if edging else ""), rows

    def eased(self, children: list[Any]) -> Several:
        *longer, easing = children
        return Several((easing, *longer))

    def edge(self, children: list[Any]) -> tuple[str, str, int]:
        piece, *copy, name = children
        return piece, name, copy[0] if copy else 0

    def edge_name(self, children: list[Any]) -> str:
        return " ".join(children)

    # ------------------------------------------------------------- words and numbers

    def _graded(self, written: str, read: Callable[[str], int]) -> ReadGraded:
        language = self._language
        first, _, rest = written.partition(language.opening)
        parts = [first, *rest.removesuffix(language.closing).split(language.between)] if rest else [first]
        return ReadGraded(tuple(None if p == language.dash else read(p) for p in parts))

    def _within(self, token: str) -> ReadGraded:
        """The graded number in a stretch of words."""
        (found,) = self._numbers.findall(token)
        return self._graded(found, int)

    def NUMBER(self, token: Token) -> ReadGraded:
        return self._graded(token, int)

    def INSET(self, token: Token) -> ReadGraded:
        return self._within(token)

    def ONE_CM(self, token: Token) -> ReadGraded:
        return self._graded(token.removeprefix(",").strip(), lambda cm: tenths(cm, self._language.point))

    LENGTH = ONE_CM

    def EDGE_STS(self, token: Token) -> ReadGraded:
        return self._within(token)

    def AT_ROWS(self, token: Token) -> ReadRows:
        return ReadRows(tuple(self._graded(row, int) for row in self._numbers.findall(token)))

    EVENT_ROWS = AT_ROWS

    def ORDINAL(self, token: Token) -> ReadGraded:
        return self._graded(token, figure)

    def NTH(self, token: Token) -> int:
        return figure(token)

    def NEEDLE(self, token: Token) -> ReadGraded:
        side: Side = "right"

        def needle(name: str) -> int:
            # A number alone is on the side of the one before it.
            nonlocal side
            words = name.split(" ")
            side = "left" if self._language.left in words else "right" if self._language.right in words else side
            return slot(side, figure(name))

        return self._graded(token, needle)

    def CARRIAGE(self, token: Token) -> ReadGraded:
        return self._graded(token, self._language.carriage.index)

    def NAME(self, token: Token) -> str:
        return as_name(token)

    def QUOTED_NAME(self, token: Token) -> str:
        return as_name(token[1:-1])

    def SAID_FOR(self, token: Token) -> Several:
        return Several((as_name(token[token.index(self._language.quotes[0]) + 1 : -1]),))

    def COUNT(self, token: Token) -> int:
        return int(token)

    def LOOSER(self, token: Token) -> tuple[int, ...]:
        return tuple(int(n) for n in token if n.isdecimal())

    def TRACK(self, token: Token) -> str:
        return str(token)

    TENSION = QUOTED = TRACK
