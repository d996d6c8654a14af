"""What the terminals of a printed grammar stand for: words of one meaning, names, needles and graded numbers."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from typing import Any

from lark import Token, Transformer

from walewright.knit.operations import NEXT_COPY, Side, slot
from walewright.readback.language import ReadLanguage
from walewright.readback.phrases import ReadGraded, ReadRows, ReadRowsBySize, Several, figure, tenths
from walewright.readback.terminals import NAME_SPACE


def as_name(written: str) -> str:
    """A name as all stages have it."""
    return written.replace(NAME_SPACE, "_")


def sizes_named(written: str) -> frozenset[str]:
    """The sizes in a list of their names."""
    return frozenset(map(as_name, written.split(", ")))


MEANT: Mapping[str, str | int | ReadGraded] = {
    **{"LEFT": "left", "RIGHT": "right", "BOTH_ENDS": "both ends", "THE_LEFT_END": "left end", "THE_RIGHT_END": "right end"},
    **{"OUTSIDE_BOTH": "both ends", "TO_ITS_LEFT": "left end", "TO_ITS_RIGHT": "right end"},
    **{"LEFT_PART": "left", "CENTRE_PART": "centre", "RIGHT_PART": "right", "CENTRE": "centre", "UPPER": "upper"},
    **{"LEFT_END": "left", "RIGHT_END": "right", "BOTTOM": "bottom", "TOP": "top", "FROM_BOTTOM": "bottom", "FROM_TOP": "top"},
    **{"LEFT_SHOULDER": "left", "RIGHT_SHOULDER": "right", "FROM_LEFT": "left", "FROM_RIGHT": "right"},
    **{
        "START_OF": "start",
        "END_OF": "end",
        "START": "start",
        "END": "end",
        "SHOULDER": "shoulder",
        "NECK": "neck",
        "FIRST_END": "first end",
        "LAST_END": "last end",
    },
    **{"JOIN": "sewn", "GATHER": "gathered", "PLEAT": "pleated", "GRAFT": "grafted", "PURL_FACING": "purl", "KNIT_FACING": "knit"},
    **{"EACH": 0, "OF_EACH": 0, "NEXT": NEXT_COPY, "OF_NEXT_ONE": NEXT_COPY},
    **{"TO_ITS_OWN": "own", "TO_THE_NEXT": "next", "ALL_ROUND": "round"},
    **{"CAST_OFF_STS": "off", "CAST_ON_STS": "on", "CAST_EITHER_WAY": "mixed"},
    **{"OUTER": "outer", "INNER": "inner", "MIDDLE": "middle"},
    **{"BY_E_WRAP": "e-wrap", "BY_CHAIN": "chain", "WITH_COMB": "comb", "E_WRAPPED": "e-wrap", "HEM_HUNG": "hem"},
    **{"ON_SLIP": "slip", "LIFTED_OFF": "lift", "ON_HOLD": "hold", "LOOSER_PLATE": "plate"},
    **{"TWO_LOOPS": ReadGraded((2,)), "NO_LOOP": ReadGraded((0,)), "LAST_NEEDLE": ReadGraded((1,))},
    **{"SAME": "the same needles", "ALL": "all needles", "IN_FRONT": "in front", "BEHIND": "behind"},
    **{"OVER": "over", "SOONER": "sooner", "LEFT_HANGING": "carried", "AS_BEFORE": "threaded", "MORE": "more"},
    **{"AT_TAIL": "at tail", "ON_FIRST_ROW": "start", "PAST_HELD": "held", "IF_FREE": "free", "FIRST_OF_EDGING": "edging"},
}
"""What a terminal stands for, whatever its words are in a language."""


class ReadTokens(Transformer[Token, Any]):
    """Each terminal becomes what it stands for."""

    def __init__(self, language: ReadLanguage) -> None:
        super().__init__()
        self._language = language
        marks = (language.dash, language.opening, language.between, language.closing)
        dash, opening, between, closing = (re.escape(mark) for mark in marks)
        number = rf"(?:[0-9]{{1,4}}|{dash})"
        self._numbers = re.compile(rf"{number}(?:{opening}{number}(?:{between}{number})*{closing})?")
        for terminal, meant in MEANT.items():
            setattr(self, terminal, lambda _, meant=meant: meant)

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

    def EDGE_STS(self, token: Token) -> Several:
        """Told from the needles before it."""
        return Several((self._within(token),))

    def AT_ROWS(self, token: Token) -> ReadRows:
        return ReadRows(tuple(self._graded(row, int) for row in self._numbers.findall(token)))

    EVENT_ROWS = AT_ROWS

    def ROWS_BY_SIZE(self, token: Token) -> ReadRowsBySize:
        told = (of.partition("(")[2].split(")") for of in token.split(";"))
        return ReadRowsBySize(tuple((sizes_named(sizes), tuple(map(int, re.findall(r"[0-9]+", rows)))) for sizes, rows in told))

    EVENT_ROWS_BY_SIZE = ROWS_BY_SIZE

    def CM_BY_SIZE(self, token: Token) -> ReadRowsBySize:
        told = re.findall(r"([0-9][0-9.,]*) \S+ \((.+?)\)", token)
        return ReadRowsBySize(tuple((sizes_named(sizes), (tenths(cm, self._language.point),)) for cm, sizes in told))

    def ORDINAL(self, token: Token) -> ReadGraded:
        return self._graded(token, figure)

    def NTH(self, token: Token) -> int:
        return figure(token)

    NTH_ONE = NTH

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

    def SIZES_ONLY(self, token: Token) -> frozenset[str]:
        # A head over lines says it in the same words.
        found = self._language.layout.only.fullmatch(token)
        return sizes_named(found["sizes"]) if found is not None else frozenset()

    def NTH_SHOULDER(self, words: Token) -> str:
        return f"shoulder {words.rpartition(' ')[2]}"
