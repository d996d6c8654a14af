"""Options with a meaning of their own, from their text to the values that the pipeline takes."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Literal, cast, get_args

from walewright.cli.command_line import CommandLine
from walewright.report.model import Diagnostic

if TYPE_CHECKING:
    from walewright.design import Changes
    from walewright.source.syntax import Machine

PaperSize = Literal["a4", "letter"]
Units = Literal["cm", "in", "both"]

FORMATS = ("pdf", "html", "text", "plan")
PAPERS = get_args(PaperSize)
UNITS = get_args(Units)


@dataclass(frozen=True, slots=True)
class Printing:
    """How pages are wanted: `paper` a4 | letter, `units` cm | in | both, `formats` of FORMATS in that order."""

    paper: PaperSize = "a4"
    units: Units = "cm"
    formats: tuple[str, ...] = FORMATS


@dataclass(frozen=True, slots=True)
class Asked:
    """The texts of the options that say what a knitter gives, as they were typed."""

    sizes: Sequence[str] = ()
    tensions: Sequence[str] = ()
    swatches: Sequence[str] = ()
    measures: Sequence[str] = ()
    yarns: Sequence[str] = ()
    dials: Sequence[str] = ()
    bed: str = ""


@dataclass(frozen=True, slots=True)
class Wanted:
    """What is given, or, with None, why it cannot be taken. `texts`: the text of a bed's file by its name, for its messages."""

    changes: Changes | None
    faults: tuple[Diagnostic, ...]
    texts: Mapping[str, str] = field(default_factory=dict)


PAIRS = (
    ("--tension", "tensions", "plain=17 st 24 rows"),
    ("--swatch", "swatches", "plain=40 st 60 rows 23.5 cm 21 cm 28 g"),
    ("--measure", "measures", "length=60 cm"),
    ("--yarn", "yarns", "wool=my wool, 50 g = 120 m"),
    ("--dial", "dials", "plain=6"),
)
"""Options that give something by its name: the option, its field, an example."""


def wanted(line: CommandLine, asked: Asked) -> Wanted:
    """The knitter's own sizes, tensions, swatches, measurements, yarns, dials and bed. What does not read is told here, with its
    place in the command line; whether it suits the source is asked when the source is read."""
    from walewright.design import Changes, malformed

    faults: list[Diagnostic] = []
    sizes = tuple(name for text in asked.sizes for name in _listed(text))
    if asked.sizes and not sizes:
        help_ = "write a size of the source, as --size M"
        faults.append(line.fault("option-value", "no size is named", at=("--size",), helps=(help_,)))
    pairs = {name: _pairs(line, option, getattr(asked, name), example, faults) for option, name, example in PAIRS}
    own, texts = _own_bed(line, asked.bed, faults) if asked.bed.endswith(BED_FILE) else (None, {})
    changes = Changes(sizes=sizes or None, **pairs, bed="" if own or texts else asked.bed, own_bed=own)
    faults += line.placed(malformed(changes)) if not faults else ()
    return Wanted(None if faults else changes, tuple(faults), texts)


BED_FILE = ".wale"


def _own_bed(line: CommandLine, file: str, faults: list[Diagnostic]) -> tuple[Machine | None, dict[str, str]]:
    """The one bed that a file describes, as a source would."""
    from walewright import world
    from walewright.source import read
    from walewright.source.syntax import Machine, Text

    text, fault = world.read_source(file)
    if text is None:
        faults += (fault,) if fault is not None else ()
        return None, {file: ""}
    tree, unread = read(file, text)
    faults += unread
    beds = [s for s in tree.statements if isinstance(s, Machine)]
    if not unread and (len(beds) != 1 or any(not isinstance(s, Machine | Text) for s in tree.statements)):
        what = "no bed" if not beds else "more than a bed"
        help_ = "write one `machine` block in it, such as `machine mine` with `needles 180` and `pitch 4.5 mm`"
        faults.append(line.fault("option-value", f"--bed: {file} describes {what}", at=(file, "--bed"), helps=(help_,)))
    return (beds[0] if beds else None), {file: text}


MALFORMED = frozenset({"bad-ball", "bad-bed", "bad-dial", "bad-measure", "bad-swatch", "bad-tension"})
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
    return Printing(cast(PaperSize, paper), cast(Units, units), tuple(f for f in FORMATS if f in asked)), ()


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
