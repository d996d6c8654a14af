"""Figures as they are printed: centimetres, inches, and one figure a size in brackets."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

CM_PER_INCH = 2.54

_QUARTERS = ("", "¼", "½", "¾")


def cm(value: float, step: float = 0.5) -> str:
    """`value` cm to the nearest `step`, without a useless ".0"."""
    rounded = round(value / step + 1e-9) * step
    text = f"{rounded:.2f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text


def inches(value_cm: float) -> str:
    """`value_cm` in inches, to the nearest quarter: "18½"."""
    quarters = round(value_cm / CM_PER_INCH * 4)
    whole, part = divmod(abs(quarters), 4)
    sign = "-" if quarters < 0 else ""
    return sign + (f"{whole}{_QUARTERS[part]}" if whole or not part else _QUARTERS[part])


def length(value_cm: float, units: str) -> tuple[str, str]:
    """(figure, smaller figure under it) in the units "cm" | "in" | "both"."""
    if units == "in":
        return inches(value_cm), ""
    return cm(value_cm), inches(value_cm) if units == "both" else ""


def unit(units: str) -> str:
    """The unit that a table's caption names."""
    return {"cm": "cm", "in": "inches", "both": "cm, with inches in small type"}[units]


def graded(values: Sequence[str]) -> str:
    """One figure a size: "78 (84: 90)"; a single figure where all agree."""
    if len(set(values)) == 1:
        return values[0]
    return f"{values[0]} ({': '.join(values[1:])})"


@dataclass(frozen=True, slots=True)
class SizedFigure:
    """One figure a size, as printed; `whole` where no line may break it."""

    text: str
    whole: bool


def figure(values: Sequence[str], before: str = "") -> SizedFigure:
    """As `graded`, with what stands before it and is not parted from it: "RC 10 (12: 14)"."""
    return SizedFigure(before + graded(values), len(values) >= SEVERAL and len(set(values)) > 1)


SEVERAL = 3
"""Sizes from which on a figure in brackets is kept whole."""


def words(*parts: str | SizedFigure) -> tuple[str, tuple[tuple[int, int], ...]]:
    """The parts as one text, and where in it figures begin and end. A figure takes the mark behind it."""
    text = ""
    spans: list[tuple[int, int]] = []
    for part in parts:
        if isinstance(part, SizedFigure):
            if part.whole:
                spans.append((len(text), len(text) + len(part.text)))
            text += part.text
            continue
        if spans and spans[-1][1] == len(text) and part.startswith((",", ".", ";")):
            spans[-1] = (spans[-1][0], len(text) + 1)
        text += part
    return text, tuple(spans)


def whole_grams(*parts: float) -> tuple[int, ...]:
    """Parts in whole grams, then all of it: they add up, as a buyer adds them. All of it is rounded up, for too little yarn is
    worse than too much; of the parts those are, that have most to lose."""
    whole = math.ceil(sum(parts) - 1e-9)
    found = [math.floor(part + 1e-9) for part in parts]
    for at in sorted(range(len(parts)), key=lambda at: found[at] - parts[at])[: whole - sum(found)]:
        found[at] += 1
    return *found, whole


def metres(value: float) -> str:
    """To the next 10 m."""
    return str(int(-(-value // 10) * 10))


def ordinal(number: int) -> str:
    """1 -> "1st"."""
    if number % 100 in (11, 12, 13):
        return f"{number}th"
    return f"{number}{ {1: 'st', 2: 'nd', 3: 'rd'}.get(number % 10, 'th') }"


def listed(words: Sequence[str]) -> str:
    """ "a", "a and b", "a, b and c"."""
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} and {words[-1]}"


def sentence(words: str) -> str:
    """First letter large, underscores as spaces: an author's name for a measurement as a reader sees it."""
    plain = words.replace("_", " ").strip()
    return plain[:1].upper() + plain[1:]
