"""Options with a meaning of their own, from their text to the values that the pipeline takes."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal, cast, get_args

from walewright.cli.command_line import CommandLine
from walewright.report.model import Diagnostic

if TYPE_CHECKING:
    from walewright.design import Changes

Paper = Literal["a4", "letter"]
Units = Literal["cm", "in", "both"]

FORMATS = ("pdf", "html", "text", "plan")
PAPERS = get_args(Paper)
UNITS = get_args(Units)


@dataclass(frozen=True, slots=True)
class Printing:
    """How pages are wanted: `paper` a4 | letter, `units` cm | in | both, `formats` of FORMATS in that order."""

    paper: Paper = "a4"
    units: Units = "cm"
    formats: tuple[str, ...] = FORMATS


def changes(
    line: CommandLine, sizes: Sequence[str], tensions: Sequence[str], measures: Sequence[str]
) -> tuple[Changes | None, tuple[Diagnostic, ...]]:
    """The knitter's own sizes, tensions ("plain=17 st 24 rows") and measurements ("bust=104 cm")."""
    from walewright.design import Changes

    faults: list[Diagnostic] = []
    wanted = tuple(name for text in sizes for name in _listed(text))
    if sizes and not wanted:
        help_ = "write a size of the source, as --size M"
        faults.append(line.fault("option-value", "no size is named", at=("--size",), helps=(help_,)))
    tension_of = _pairs(line, "--tension", tensions, "plain=17 st 24 rows", faults)
    measure_of = _pairs(line, "--measure", measures, "length=60 cm", faults)
    if faults:
        return None, tuple(faults)
    return Changes(sizes=wanted or None, tensions=tension_of, measures=measure_of), ()


MALFORMED = frozenset({"bad-tension", "bad-measure"})
"""Codes of values that are not what their option takes; told by `design`, which reads them."""


def exit_code(diagnostics: Sequence[Diagnostic]) -> int:
    """Of a source that is not proven: 2 when a value on the command line is not what its option takes, as for every other mistake
    in the command line; 1 when the source, or the source with a value that reads well, cannot be made."""
    return 2 if any(d.code in MALFORMED for d in diagnostics) else 1


def printing(line: CommandLine, paper: str, units: str, formats: Sequence[str]) -> tuple[Printing | None, tuple[Diagnostic, ...]]:
    """Paper, units and formats, each of the known ones."""
    faults: list[Diagnostic] = []
    asked = [name for text in formats for name in _listed(text)] or list(FORMATS)
    for option, value, known in (
        ("--paper", paper, PAPERS),
        ("--units", units, UNITS),
        *(("--as", name, FORMATS) for name in asked),
    ):
        if value not in known:
            faults.append(
                line.fault(
                    "option-value",
                    f"{option} cannot be {value!r}",
                    at=(value, option),
                    label="not known",
                    helps=(f"write one of {', '.join(known)}",),
                )
            )
    if faults:
        return None, tuple(faults)
    return Printing(cast(Paper, paper), cast(Units, units), tuple(f for f in FORMATS if f in asked)), ()


def _listed(text: str) -> list[str]:
    return [part.strip() for part in text.split(",") if part.strip()]


def _pairs(line: CommandLine, option: str, texts: Sequence[str], example: str, faults: list[Diagnostic]) -> dict[str, str]:
    found: dict[str, str] = {}
    for text in texts:
        name, equals, value = (part.strip() for part in text.partition("="))
        if not (name and equals and value):
            what = "a name, an equals sign and a value are wanted"
            faults.append(
                line.fault("option-value", f"{option}: {what}", at=(text, option), helps=(f'write {option} "{example}"',))
            )
        elif name in found:
            faults.append(
                line.fault("option-value", f"{option}: {name} is given twice", at=(text, option), helps=("leave one of them out",))
            )
        else:
            found[name] = value
    return found
