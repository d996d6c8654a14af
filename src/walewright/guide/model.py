"""A language of the guide: everything printed that is not a sentence of the instructions, as one value.

Its sentences are templates by their keys, in which facts have their places as `report.wording` has them. Who prints gets the value
and asks it; nobody else knows which language it is.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import TypeVar

from walewright.counted.model import MeasureKey
from walewright.guide import numbers
from walewright.guide.numbers import SizedFigure, unmarked
from walewright.record import record, replace
from walewright.report.said import Fact, Said, said
from walewright.report.wording import Language, phrased
from walewright.trade.edge_names import OWN_EDGES, part_of_edge

PLATE = "/plate"
"""Ends the key of what is said in place of another text where the tension is set by plates."""

KeyedText = TypeVar("KeyedText")


@record
class Advice:
    """A short heading and what to do, in order where `ordered`."""

    title: str
    lines: tuple[str, ...]
    ordered: bool = False


@record
class HowToText:
    """What hands do, in a box: `shown` says what its drawing shows."""

    title: str
    text: str
    shown: str


@dataclass(frozen=True, slots=True, eq=False)
class Guide:
    """`code`: the language as HTML names it (BCP 47). `words`: templates of labels, facts and sentences. `advice` and `how_to`:
    whole texts, by their keys and by those of `figures.hands`. `ordinal`: "1st". `small`: whether labels begin with a small letter
    within a line. `months`: their names, where days are printed with them."""

    code: str
    words: Language
    advice: Mapping[str, Advice]
    how_to: Mapping[str, HowToText]
    ordinal: Callable[[int], str]
    small: bool = True
    months: tuple[str, ...] = ()

    def on_plates(self) -> Guide:
        """The same where plates set the tension: of what has words for them (`page/mine/plate`), those."""
        words = replace(self.words, phrases=_for_plates(self.words.phrases))
        return replace(self, words=words, advice=_for_plates(self.advice), how_to=_for_plates(self.how_to))

    def say(self, key: str, **facts: Fact) -> str:
        """The sentence of that key with its facts. Raises KeyError for a key, or a fact, that is not there."""
        return self.said(Said(key, tuple(facts.items())))

    def said(self, phrase: Said) -> str:
        """The same of a phrase that a drawing or a table carries as data."""
        return phrased(phrase, self.words)

    def figured(self, key: str, **facts: Fact | SizedFigure) -> tuple[str, tuple[tuple[int, int], ...]]:
        """The sentence, and where in it figures begin and end; a fact may be a sentence with marked figures of its own."""
        return unmarked(self.say(key, **{name: f.marked if isinstance(f, SizedFigure) else f for name, f in facts.items()}))

    def date(self, iso: str) -> str:
        """A day as the language writes it: by the number and the month's name, where it has names for them; else as it is."""
        parts = iso.split("-")
        if not self.months or len(parts) != 3 or not all(part.isdecimal() for part in parts):
            return iso
        year, month, day = parts
        return f"{int(day)}. {self.months[int(month) - 1]} {year}" if 1 <= int(month) <= len(self.months) else iso

    def within(self, label: str) -> str:
        """A label as it stands within a line."""
        return f"{label[:1].lower()}{label[1:]}" if self.small else label

    def decimal(self, figure: str) -> str:
        """A figure with the language's own sign before its decimals."""
        return figure.replace(".", self.words.point)

    def cm(self, value: float, step: float = 0.5) -> str:
        """As `numbers.cm`, in the language's figures."""
        return self.decimal(numbers.cm(value, step))

    def length(self, value_cm: float, units: str) -> tuple[str, str]:
        """As `numbers.length`, in the language's figures."""
        first, second = numbers.length(value_cm, units)
        return self.decimal(first), second

    def difference(self, one_cm: float, other_cm: float, units: str) -> tuple[str, str]:
        """As `numbers.difference`, in the language's figures."""
        first, second = numbers.difference(one_cm, other_cm, units)
        return self.decimal(first), self.decimal(second)

    def listed(self, names: Sequence[str]) -> str:
        """ "a", "a and b", "a, b and c"."""
        return self.say("listed", names=tuple(names))

    def needles(self, first: str, last: str) -> str:
        """ "L 20 to R 20"."""
        return self.say("from-to", first=first, last=last)

    def edge(self, name: str) -> str:
        """An edge as words: the name that its author gave it, or the trade's own, and which part of it."""
        return self._called(edge_said(name))

    def hung(self, name: str) -> str:
        """An edge as words for who hangs it on the bed."""
        return self._called(edge_hung(name))

    def _called(self, edge: Said | str) -> str:
        return self.said(edge) if isinstance(edge, Said) else edge

    def measure(self, key: MeasureKey) -> str:
        """ "width at hem", "depth of neck", "height of underarm, 4 times"; names stand as their author wrote them."""
        name: Fact = key.called or (self.edge(key.name) if key.at in ("opening", "slot") else key.name)
        one = self.say(_measured(key), name=name, to=key.to, across=key.across, extent=key.extent)
        if key.times is None:
            return one
        return self.say("measured/times", what=one, times=key.times) if key.times else self.say("measured/together", what=one)


def _for_plates(told: Mapping[str, KeyedText]) -> dict[str, KeyedText]:
    return {**told, **{key.removesuffix(PLATE): text for key, text in told.items() if key.endswith(PLATE)}}


def _measured(key: MeasureKey) -> str:
    match key.extent, key.at:
        case "width", "start":
            return "measured/start"
        case "width", "level":
            return "measured/level"
        case "height", "wedge":
            return "measured/wedge"
        case _, "stretch":
            return "measured/stretch"
    return "measured/of"


def edge_hung(name: str) -> Said | str:
    """An edge as who hangs it sees it: above an opening there is what was cast on again."""
    of = part_of_edge(name)
    return said("edge/cast-on", edge=edge_said(of.name)) if of.upper else edge_said(name)


def edge_said(name: str) -> Said | str:
    """An edge, as `Guide.edge` says it."""
    of = part_of_edge(name)
    own = said(f"edge/{of.name}") if of.name in OWN_EDGES else of.name.replace("_", " ")
    if of.upper:
        return said("edge/of-upper", edge=own)
    return own if of.part == "whole" else said(f"edge/of-{of.part}", edge=own)
