"""Graded numbers: one number a size, printed as `78 (84: 90: 96)`.

Where all sizes that work the line agree, the number stands alone. A dash stands where a size skips what the number belongs to.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from walewright.knit.operations import needle
from walewright.write.model import Run

SKIPPED = "–"


@dataclass(frozen=True, slots=True)
class Graded:
    """`values` holds one number a size, None where the size skips the step. `group` are the sizes the line is printed for."""

    values: tuple[int | None, ...]
    group: tuple[int, ...]

    def text(self, spell: Callable[[int], str] = str) -> str:
        """The number as printed, each size's spelt by `spell`."""
        told = {self.values[i] for i in self.group}
        if len(told) == 1:
            (only,) = told
            if only is not None:
                return spell(only)
        return bracketed([SKIPPED if v is None or i not in self.group else spell(v) for i, v in enumerate(self.values)])

    def number(self) -> Run:
        return Run(self.text(), "number")

    def counter(self) -> Run:
        """As the row counter's three drums show it."""
        return Run(self.text(lambda rows: f"{rows:03}"), "number")

    def needle(self) -> Run:
        return Run(self.text(needle), "needle")

    def ordinal(self) -> Run:
        return Run(self.text(ordinal), "number")

    def of(self, one: str, many: str) -> str:
        """`one` where every size's number is 1, else `many`."""
        return one if {v for v in self.values if v is not None} == {1} else many

    def always(self, value: int) -> bool:
        """Whether no size has another number."""
        return all(v in (None, value) for v in self.values)


def bracketed(texts: Sequence[str]) -> str:
    """The first size's text, then the others' in brackets: "XS (S: M: L)"."""
    first, *rest = texts
    return f"{first} ({': '.join(rest)})" if rest else first


def ordinal(number: int) -> str:
    """1st, 2nd, 3rd, 4th ... 11th, 12th, 13th ... 21st."""
    tail = "th" if number % 100 in (11, 12, 13) else {1: "st", 2: "nd", 3: "rd"}.get(number % 10, "th")
    return f"{number}{tail}"


def only(sizes: Sequence[int], of: int) -> str:
    """ "1st and 2nd sizes only" for the indices `sizes`; nothing when they are all `of` them."""
    if len(sizes) == of:
        return ""
    *most, last = [ordinal(i + 1) for i in sizes]
    named = f"{', '.join(most)} and {last}" if most else last
    return f"{named} size{'s' if most else ''} only"
