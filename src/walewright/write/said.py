"""What is said: one step as all sizes have it, and how words and numbers are put together."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Any

from walewright.knit import steps as st
from walewright.knit.steps import Step
from walewright.record import record, replace
from walewright.report.said import Fact
from walewright.report.said import Said as Prose
from walewright.report.wording import phrased
from walewright.write.grading import Graded
from walewright.write.language import PrintedLanguage
from walewright.write.model import Abbreviation, Run, RunKind


@record
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


def between(mark: str, phrases: Iterable[Iterable[str | Run]], last: str = "") -> Iterator[str | Run]:
    """The parts of all phrases, with the mark between two phrases; another before the last, where one is given."""
    told = [tuple(phrase) for phrase in phrases]
    for number, phrase in enumerate(told):
        if number:
            yield last if last and number == len(told) - 1 else mark
        yield from phrase


def together(kind: RunKind, parts: Iterable[str | Run]) -> Run:
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
    """The words, the first with a capital, which may have a square bracket before it."""
    first, *rest = words
    at = len(first.text) - len(first.text.lstrip("["))
    return (replace(first, text=first.text[:at] + first.text[at : at + 1].upper() + first.text[at + 1 :]), *rest)


def small(words: Phrase) -> Phrase:
    """The words, the first without a capital."""
    first, *rest = words
    return (replace(first, text=first.text[:1].lower() + first.text[1:]), *rest)


def plain(text: str) -> str:
    """An author's text on one line."""
    return " ".join(text.split())


def prose(words: st.Words, language: PrintedLanguage, space: str = " ") -> str:
    """What is said without graded numbers: the author's text, or a phrase of the language with the names in it as words, `space`
    between them."""
    return words if isinstance(words, str) else phrased(_named(words, language, space), language.prose)


def titled(title: st.Words, language: PrintedLanguage) -> str:
    """What goes on beside something else: at an edge, which may be the trade's own."""
    return language.edge(title) if isinstance(title, str) else prose(title, language)


EDGE_FACTS = ("edge", "opening", "openings")
"""Facts that are names of edges, which may be the trade's own."""


def _named(words: Prose, language: PrintedLanguage, space: str) -> Prose:
    return Prose(words.key, tuple((name, _fact(name, fact, language, space)) for name, fact in words.facts))


def _fact(name: str, fact: Fact, language: PrintedLanguage, space: str) -> Fact:
    match fact:
        case Prose():
            return _named(fact, language, space)
        case tuple():
            return tuple(_fact(name, one, language, space) for one in fact)
        case str():
            return (language.edge_of(fact) if name in EDGE_FACTS else fact).replace("_", space)
    return fact
