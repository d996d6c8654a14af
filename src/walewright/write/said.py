"""What is said: one step as all sizes have it, and the turns of phrase that many templates share."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import Any

from walewright.knit.steps import Step
from walewright.write.grading import Graded
from walewright.write.model import Abbreviation, Run, RunKind


@dataclass(frozen=True, slots=True)
class StepSaid:
    """One step as all sizes have it (None: skipped there), printed for the sizes `group`."""

    steps: tuple[Step | None, ...]
    group: tuple[int, ...]

    @property
    def any(self) -> Any:
        """A size's step, for its text fields: they agree in all."""
        return next(s for s in self.steps if s is not None)

    @property
    def working(self) -> tuple[int, ...]:
        """Those of the group that work the step."""
        return tuple(i for i in self.group if self.steps[i] is not None)

    def graded(self, field: str) -> Graded:
        return Graded(tuple(None if s is None else getattr(s, field) for s in self.steps), self.group)

    def constant(self, value: int) -> Graded:
        """`value` in every size that works the step, so that a dash can say who does not."""
        return Graded(tuple(None if s is None else value for s in self.steps), self.group)


Phrase = tuple[Run, ...]

SPACE = "\N{NO-BREAK SPACE}"
"""Between the words of a name: it shows the reader of the printed text where a name ends."""

ST, STS = (Run(word, short=frozenset({Abbreviation.STITCH})) for word in ("st", "sts"))
"""A stitch, and stitches, where no number stands before them."""

RC = Run("RC ", short=frozenset({Abbreviation.RC}))
"""Before a counter value."""


def spelt(text: str) -> str:
    """The names of the source in a text as words: `left_front` is "left front"."""
    return text.replace("_", SPACE)


def worded(*parts: str | Run) -> Phrase:
    """The parts as runs, plain text as words."""
    return joined(Run(spelt(p)) if isinstance(p, str) else p for p in parts if p)


def joined(runs: Iterable[Run]) -> Phrase:
    """Neighbouring runs of plain words as one."""
    made: list[Run] = []
    for run in runs:
        if made and made[-1].kind == run.kind == "word":
            made[-1] = Run(made[-1].text + run.text, run.kind, made[-1].short | run.short)
        else:
            made.append(run)
    return tuple(made)


def together(kind: RunKind, *parts: str | Run) -> Run:
    """The parts as one run. A figure takes the mark behind it: "RC 10 (12: 14),"."""
    text, short = "", frozenset[Abbreviation]()
    figures: list[tuple[int, int]] = []
    for part in parts:
        if isinstance(part, Run):
            figures += ((begin + len(text), end + len(text)) for begin, end in part.figures)
            text, short = text + part.text, short | part.short
            continue
        if figures and figures[-1][1] == len(text) and part.startswith((",", ".", ";")):
            figures[-1] = (figures[-1][0], len(text) + 1)
        text += part
    return Run(text, kind, short, tuple(figures))


def capital(words: Phrase) -> Phrase:
    """The words, the first with a capital."""
    first, *rest = words
    return (replace(first, text=first.text[:1].upper() + first.text[1:]), *rest)


def counted(number: Graded, one: str, many: str) -> tuple[Run, str]:
    """A number and what it counts, in the singular where it is 1 for all."""
    return number.number(), f" {number.of(one, many)}"


def sts(number: Graded) -> tuple[Run, str, Run]:
    """A number of stitches."""
    return number.number(), " ", ST if number.of_one else STS


def rows(number: Graded) -> tuple[Run, str]:
    """A number of rows."""
    return counted(number, "row", "rows")


def span(said: StepSaid) -> tuple[Run, str, Run]:
    """The outermost two of several needles."""
    return said.graded("first").needle(), " to ", said.graded("last").needle()


def needles(said: StepSaid) -> tuple[str | Run, ...]:
    """The needles of a few stitches; one needle, where it is only one for every size, is named once."""
    first, last = said.graded("first"), said.graded("last")
    return (first.needle(),) if first.values == last.values else span(said)


def plain(text: str) -> str:
    """An author's text on one line."""
    return " ".join(text.split())
