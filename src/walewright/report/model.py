"""What every stage may say to the author: spans and diagnostics, as plain values.

A stage never prints and never raises for a fault of the author's: it returns `Diagnostic`s.
Wording conventions: the message stands alone (lower case, no blame, numbers with units); labels say
what is there; notes give facts; only helps propose a change.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import field
from enum import Enum
from typing import Literal

from walewright.record import record
from walewright.report.said import Fact, Said


@record
class Span:
    """Half-open range of code points `start..end` in the source named `file`."""

    file: str
    start: int
    end: int

    def to(self, other: Span) -> Span:
        """The smallest span over both."""
        return Span(self.file, min(self.start, other.start), max(self.end, other.end))


NOWHERE = Span("", 0, 0)
"""For values that no source text stands behind (command-line options, defaults)."""
COMMAND_LINE, PRINTED_WORDS = "command line", "printed words"
"""What is typed, and what is printed, as the file of a span."""


class Severity(Enum):
    ERROR = "error"
    WARNING = "warning"


@record
class Label:
    """A place and what is there."""

    span: Span
    said: Said | None = None
    """Nothing where the place says enough."""


WrittenFigure = Literal[
    "width",
    "widest",
    "left edge",
    "right edge",
    "height",
    "least",
    "most",
    "cast-off",
    "steps",
    "wedge",
    "easing",
    "needles",
    "stitches",
]
"""Which figure of a source: `least` and `most` of a level's range."""

EDGE_FIGURES: Mapping[Literal["left", "right"], WrittenFigure] = {"left": "left edge", "right": "right edge"}


@record
class Change:
    """One figure to be written otherwise, as data: which (`figure` of `owner`, at `at`), and to what, by size. `name` is what a
    message calls it. Lengths are in cm; "needles" of a bed and "stitches" to 10 cm of a fabric are numbers."""

    figure: WrittenFigure
    owner: str
    at: str
    values: tuple[tuple[str, float], ...]
    name: Said | None = None
    exact: bool = False
    """Whether it is reckoned exactly, and no truer farther away: of the bed, and how often a step is made."""


@record
class Diagnostic:
    """One mistake, one message, as facts; `report.wording` has its words. `labels[0]` is the primary place; `code` is a slug from
    `report.codes`."""

    code: str
    case: str = ""
    """Which of the messages of its code it is; empty where the code has one."""
    facts: tuple[tuple[str, Fact], ...] = ()
    labels: tuple[Label, ...] = ()
    notes: tuple[Said, ...] = ()
    helps: tuple[Said, ...] = ()
    severity: Severity = Severity.ERROR
    sizes: tuple[str, ...] = field(default=())
    """Names of the sizes concerned, where not all are."""
    changes: tuple[tuple[Change, ...], ...] = field(default=())
    """What the first helps change, one after the other: of those that name a figure. They have been tried."""
    other_ways: bool = False
    """Whether its helps without a figure name another way, which stays beside those that have one."""
    given: tuple[str, str] | None = None
    """The option of the command line that brought in what is wrong, and the name it was given for (empty where it has none)."""


def has_errors(diagnostics: Iterable[Diagnostic]) -> bool:
    """Whether one of them forbids going on (warnings do not)."""
    return any(d.severity is Severity.ERROR for d in diagnostics)


def diagnosed(
    kind: str,
    /,
    *labels: tuple[Span, str | Said] | Label,
    notes: Iterable[str | Said] = (),
    helps: Iterable[str | Said] = (),
    severity: Severity = Severity.ERROR,
    sizes: tuple[str, ...] = (),
    facts: Mapping[str, Fact] | None = None,
    given: tuple[str, str] | None = None,
    **more: Fact,
) -> Diagnostic:
    """A diagnostic of a `kind`: its code, or code/case where the code has several messages. Labels, notes and helps are given by
    their keys in the table of words; one with facts of its own as a `Said`. All share the `facts`, which can be given by their
    names as well. `given`: the option that brought in what is wrong, and the name it was given for."""
    code, _, case = kind.partition("/")
    return Diagnostic(
        code=code,
        case=case,
        facts=tuple({**(facts or {}), **more}.items()),
        labels=tuple(
            label if isinstance(label, Label) else Label(label[0], _said(label[1]) if label[1] else None) for label in labels
        ),
        notes=tuple(_said(note) for note in notes),
        helps=tuple(_said(help_) for help_ in helps),
        severity=severity,
        sizes=sizes,
        given=given,
    )


def _said(key: str | Said) -> Said:
    return Said(key) if isinstance(key, str) else key
