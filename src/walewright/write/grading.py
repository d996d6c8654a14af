"""Graded numbers: one number a size, printed as `78 (84: 90: 96)`.

Where all sizes that work the line agree, the number stands alone. A dash stands where a size skips what the number belongs to.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from walewright.knit.operations import needle
from walewright.write.model import Abbreviation, Run, RunKind

SKIPPED = Abbreviation.SKIPPED.value

SEVERAL = 3
"""Sizes from which on a figure in brackets is kept whole."""


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

    @property
    def alone(self) -> bool:
        """Whether one number stands for all."""
        printed = {self.values[i] for i in self.group}
        return len(printed) == 1 and None not in printed

    @property
    def whole(self) -> bool:
        """Whether the text is one figure that no line may break."""
        return len(self.values) >= SEVERAL and not self.alone

    @property
    def short(self) -> frozenset[Abbreviation]:
        """The dash, where `text` has one."""
        if self.alone:
            return frozenset()
        return frozenset({Abbreviation.SKIPPED} if any(v is None or i not in self.group for i, v in enumerate(self.values)) else ())

    def run(self, text: str, kind: RunKind = "number", short: frozenset[Abbreviation] = frozenset()) -> Run:
        """The number as printed in `text`."""
        return Run(text, kind, self.short | short, ((0, len(text)),) if self.whole else ())

    def number(self) -> Run:
        return self.run(self.text())

    def counter(self) -> Run:
        """As the row counter's three drums show it."""
        return self.run(self.text(lambda rows: f"{rows:03}"))

    def needle(self) -> Run:
        printed = (v for i, v in enumerate(self.values) if v is not None and i in self.group)
        sides = frozenset(Abbreviation.LEFT if v < 0 else Abbreviation.RIGHT for v in printed)
        return self.run(self.text(needle), "needle", sides)

    def ordinal(self) -> Run:
        return self.run(self.text(ordinal))

    def of(self, one: str, many: str) -> str:
        """`one` where every size's number is 1, else `many`."""
        return one if self.of_one else many

    @property
    def of_one(self) -> bool:
        """Whether every size's number is 1."""
        return {v for v in self.values if v is not None} == {1}

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
