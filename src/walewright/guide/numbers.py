"""Figures as they are printed: centimetres, inches, and one figure a size in brackets."""

from __future__ import annotations

import math
from collections.abc import Sequence

from walewright.record import record

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


def difference(one_cm: float, other_cm: float, units: str) -> tuple[str, str]:
    """As `length`: what one figure is more than another one, both as they are printed. A smaller one has a minus sign."""
    quarters = round(one_cm / CM_PER_INCH * 4) - round(other_cm / CM_PER_INCH * 4)
    in_inches = inches(quarters * CM_PER_INCH / 4)
    if units == "in":
        first, second = in_inches, ""
    else:
        halves = round(one_cm / 0.5 + 1e-9) - round(other_cm / 0.5 + 1e-9)
        first, second = cm(halves * 0.5), in_inches if units == "both" else ""
    return first.replace("-", MINUS), second.replace("-", MINUS)


MINUS = "\N{MINUS SIGN}"


def graded(values: Sequence[str]) -> str:
    """One figure a size: "78 (84: 90)"; a single figure where all agree."""
    if len(set(values)) == 1:
        return values[0]
    return f"{values[0]} ({': '.join(values[1:])})"


@record
class SizedFigure:
    """One figure a size, as printed; `whole` where no line may break it."""

    text: str
    whole: bool

    @property
    def marked(self) -> str:
        """Its text with a private letter before and behind, which stays there while a sentence is put together; see `unmarked`."""
        return f"{_BEGINS}{self.text}{_ENDS}" if self.whole else self.text


_BEGINS, _ENDS = "\ue000", "\ue001"


def unmarked(text: str) -> tuple[str, tuple[tuple[int, int], ...]]:
    """The text without its marks, and where in it figures begin and end. A figure takes the mark of punctuation behind it."""
    plain, begins = "", 0
    spans: list[tuple[int, int]] = []
    for letter in text:
        if letter == _BEGINS:
            begins = len(plain)
        elif letter == _ENDS:
            spans.append((begins, len(plain)))
        else:
            if spans and letter in ",.;" and spans[-1][1] == len(plain):
                spans[-1] = (spans[-1][0], len(plain) + 1)
            plain += letter
    return plain, tuple(spans)


def figure(values: Sequence[str], before: str = "") -> SizedFigure:
    """As `graded`, with what stands before it and is not parted from it: "RC 10 (12: 14)"."""
    return SizedFigure(before + graded(values), len(values) >= SEVERAL and len(set(values)) > 1)


SEVERAL = 3
"""Sizes from which on a figure in brackets is kept whole."""


def whole_grams(*parts: float) -> tuple[int, ...]:
    """Parts in whole grams, then all of it: they add up, as a buyer adds them. All of it is rounded up, for too little yarn is
    worse than too much; of the parts those are, that have most to lose."""
    whole = math.ceil(sum(parts) - 1e-9)
    return *_shared(whole, parts), whole


def yarn_grams(garment: float, swatches: float, reserve: float) -> tuple[int, ...]:
    """The same of a yarn's garment, swatches and reserve. Swatches weigh the same for each size and are rounded up in each: in one
    table they would be 23 g here and 22 g there."""
    whole, of_swatches = whole_grams(garment, swatches, reserve)[-1], math.ceil(swatches - 1e-9)
    of_garment, of_reserve = _shared(whole - of_swatches, (garment, reserve))
    return of_garment, of_swatches, of_reserve, whole


def _shared(whole: int, parts: Sequence[float]) -> list[int]:
    """The parts rounded down, and up where most would be lost, until they are all of it."""
    found = [math.floor(part + 1e-9) for part in parts]
    for at in sorted(range(len(parts)), key=lambda at: found[at] - parts[at])[: whole - sum(found)]:
        found[at] += 1
    return found


def metres(value: float) -> str:
    """To the next 10 m."""
    return str(int(-(-value // 10) * 10))


def sentence(words: str) -> str:
    """First letter large, underscores as spaces: an author's name for a measurement as a reader sees it."""
    plain = words.replace("_", " ").strip()
    return plain[:1].upper() + plain[1:]
