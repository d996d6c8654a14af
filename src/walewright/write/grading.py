"""Graded numbers: one number a size, printed as `78 (84: 90: 96)`.

Where all sizes that work the line agree, the number stands alone. A dash stands where a size skips what the number belongs to.
"""

from __future__ import annotations

from collections.abc import Callable

from walewright.record import record
from walewright.write.language import PrintedLanguage
from walewright.write.model import Abbreviation, Run, RunKind

SEVERAL = 3
"""Sizes from which on a figure in brackets is kept whole."""


@record
class Graded:
    """`values` holds one number a size, None where the size skips the step. `group` are the sizes the line is printed for."""

    values: tuple[int | None, ...]
    group: tuple[int, ...]

    def text(self, language: PrintedLanguage, spell: Callable[[int], str] = str) -> str:
        """The number as printed, each size's spelt by `spell`."""
        told = {self.values[i] for i in self.group}
        if len(told) == 1:
            (only,) = told
            if only is not None:
                return spell(only)
        dash = language.marks.dash
        return language.bracketed(tuple(dash if v is None or i not in self.group else spell(v) for i, v in enumerate(self.values)))

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

    def number(self, language: PrintedLanguage) -> Run:
        return self.run(self.text(language))

    def counter(self, language: PrintedLanguage) -> Run:
        """As the row counter's three drums show it."""
        return self.run(self.text(language, lambda rows: f"{rows:03}"))

    def cm(self, language: PrintedLanguage) -> Run:
        """Millimetres told in centimetres."""
        return self.run(self.text(language, lambda mm: f"{mm / 10:g}".replace(".", language.marks.point)))

    @property
    def unless_none(self) -> Graded:
        """With a dash where the number is 0."""
        return Graded(tuple(v or None for v in self.values), self.group)

    def needle(self, language: PrintedLanguage) -> Run:
        printed = (v for i, v in enumerate(self.values) if v is not None and i in self.group)
        sides = frozenset(Abbreviation.LEFT if v < 0 else Abbreviation.RIGHT for v in printed)
        return self.run(self._needles(language), "needle", sides)

    def _needles(self, language: PrintedLanguage) -> str:
        """ "L 45 (48: R 2: 5)": behind the first size's needle a side is named where it changes."""
        if self.alone or self.values[0] is None or 0 not in self.group:
            return self.text(language, language.needle)
        dash, last = language.marks.dash, ""
        texts = []
        for size, slot in enumerate(self.values):
            if slot is None or size not in self.group:
                texts.append(dash)
                continue
            side, number = language.needle_parts(slot)
            texts.append(number if side == last else f"{side} {number}")
            last = side
        return language.bracketed(tuple(texts))

    def ordinal(self, language: PrintedLanguage) -> Run:
        return self.run(self.text(language, language.ordinal))

    @property
    def of_one(self) -> bool:
        """Whether every size's number is 1."""
        return {v for v in self.values if v is not None} == {1}

    @property
    def only(self) -> int | None:
        """The number of all sizes that have one; None where they differ."""
        told = {v for v in self.values if v is not None}
        return told.pop() if len(told) == 1 else None

    def always(self, value: int) -> bool:
        """Whether no size has another number."""
        return all(v in (None, value) for v in self.values)
