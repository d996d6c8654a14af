"""Options with a meaning of their own, from their text to the values that the pipeline takes."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import field
from typing import TYPE_CHECKING, Any, Literal, cast, get_args

from walewright import languages
from walewright.cli.command_line import MESSAGES, CommandLine
from walewright.cli.console import MessageForm
from walewright.cli.formats import NAMES as FORMATS
from walewright.cli.formats import USUAL
from walewright.languages import ENGLISH, PrintedIn
from walewright.record import record, replace
from walewright.report.model import Diagnostic, has_errors
from walewright.report.near import near
from walewright.trade.papers import PAPERS as PAPERS
from walewright.trade.papers import PaperSize as PaperSize

if TYPE_CHECKING:
    from walewright.cli.theme import ThemeAsked
    from walewright.design import Changes
    from walewright.guide.model import Guide
    from walewright.sheet.themed import Theme
    from walewright.source.syntax import MachineBlock

Units = Literal["cm", "in", "both"]

UNITS = get_args(Units)
FORMS = get_args(MessageForm)


@record
class Printing:
    """How pages are wanted: `paper` of those there are, `units` cm | in | both, `formats` of those there are, in their order."""

    paper: PaperSize = "a4"
    units: Units = "cm"
    formats: tuple[str, ...] = USUAL
    theme: Theme | None = None
    """A publisher's own, looked through."""
    large_print: bool = False


@record
class Asked:
    """The texts of the options that say what a knitter gives, as they were typed."""

    sizes: Sequence[str] = ()
    chosen: Sequence[str] = ()
    tensions: Sequence[str] = ()
    swatches: Sequence[str] = ()
    measures: Sequence[str] = ()
    yarns: Sequence[str] = ()
    dials: Sequence[str] = ()
    bed: str = ""
    figures: str = ""
    """A file that remembers such figures."""
    messages: str = "text"
    """In which form messages are wanted."""
    language: str = ENGLISH
    """In which language it is printed and told."""


@record
class Wanted:
    """What a knitter gives, as `design.Changes` has it by the names of its `fields`, or why it cannot be taken. `texts`: the text
    of a bed's file by its name, for its messages."""

    fields: Mapping[str, Any]
    faults: tuple[Diagnostic, ...]
    texts: Mapping[str, str] = field(default_factory=dict)
    language: str = ENGLISH
    """One of those that there are."""

    @property
    def printed(self) -> PrintedIn | None:
        """What is printed and told in, where it is not English."""
        return None if self.language == ENGLISH else languages.printed(self.language)

    @property
    def guide(self) -> Guide:
        """All that is printed besides the instructions, in that language."""
        return languages.printed(self.language).guide

    @property
    def changes(self) -> Changes:
        """For the pipeline, without faults only. What reads them is loaded with it, which nobody waits for who gives nothing."""
        from walewright.design import Changes

        return Changes(**self.fields)


PAIRS = (
    ("--choose", "chosen", "sleeves=short"),
    ("--tension", "tensions", "plain=17 st 24 rows"),
    ("--swatch", "swatches", "plain=40 st 60 rows 23.5 cm 21 cm 28 g"),
    ("--measure", "measures", "length=60 cm"),
    ("--yarn", "yarns", "wool=my wool, 50 g = 120 m"),
    ("--dial", "dials", "plain=6"),
)
"""Options that give something by its name: the option, its field, an example."""


def wanted(line: CommandLine, asked: Asked) -> Wanted:
    """The knitter's own choices, sizes, tensions, swatches, measurements, yarns, dials and bed. What does not read is told here,
    with its place in the command line; whether it suits the source is asked when the source is read."""
    language = languages.named(asked.language)
    faults = [*unfit_form(line, asked.messages), *unknown_language(line, language)]
    sizes = tuple(name for text in asked.sizes for name in _listed(text))
    if asked.sizes and not sizes:
        faults.append(line.fault("option-value/no-size", "name-a-size", at=("--size",)))
    pairs = {name: _pairs(line, option, getattr(asked, name), example, faults) for option, name, example in PAIRS}
    own, texts = _own_bed(line, asked.bed, faults) if asked.bed.endswith(BED_FILE) else (None, {})
    given = {"sizes": sizes or None, **pairs, "bed": "" if own or texts else asked.bed, "own_bed": own}
    fields = _with_remembered(line, asked.figures, given, faults) if asked.figures else given
    found = Wanted(fields, tuple(faults), texts, language)
    others = any(value for name, value in fields.items() if name != "sizes")
    return found if faults or not others else replace(found, faults=_malformed(line, found))


def _with_remembered(line: CommandLine, file: str, given: Mapping[str, Any], faults: list[Diagnostic]) -> Mapping[str, Any]:
    # What reads such a file is loaded for those who have one.
    from walewright.cli.remembered import from_file, over

    return over(from_file(line, file, faults), given)


def unknown_language(line: CommandLine, name: str) -> Iterator[Diagnostic]:
    """Whether a language is asked for that there is not."""
    if name == ENGLISH:
        return
    there = languages.known()
    if name not in there:
        meant = near(name, there)
        help_ = "did-you-mean" if meant else "one-of"
        place, label = (name, "--language"), "not-known"
        yield line.fault("language-unknown", help_, at=place, label=label, name=repr(name), near=meant or "", known=there)


def _malformed(line: CommandLine, given: Wanted) -> tuple[Diagnostic, ...]:
    from walewright.design import malformed

    return line.placed(malformed(given.changes))


BED_FILE = ".wale"


def _own_bed(line: CommandLine, file: str, faults: list[Diagnostic]) -> tuple[MachineBlock | None, dict[str, str]]:
    """The one bed that a file describes, as a source would."""
    from walewright import world
    from walewright.source import read
    from walewright.source.syntax import MachineBlock, TextLine

    text, fault = world.read_source(file)
    if text is None:
        faults += (fault,) if fault is not None else ()
        return None, {file: ""}
    tree, unread = read(file, text)
    faults += unread
    beds = [s for s in tree.statements if isinstance(s, MachineBlock)]
    if not unread and (len(beds) != 1 or any(not isinstance(s, MachineBlock | TextLine) for s in tree.statements)):
        faults.append(line.fault("option-value/bed-file", "one-machine", at=(file, "--bed"), file=file, several=bool(beds)))
    return (beds[0] if beds else None), {file: text}


MALFORMED = frozenset({"bad-ball", "bad-bed", "bad-dial", "bad-measure", "bad-swatch", "bad-tension"})
"""Codes of values that are not what their option takes; told by `design`, which reads them."""


def exit_code(diagnostics: Sequence[Diagnostic]) -> int:
    """Of a source that is not proven: 2 when a value on the command line is not what its option takes, as for every other mistake
    in the command line; 1 when the source, or the source with a value that reads well, cannot be made."""
    return 2 if any(d.code in MALFORMED or d.code == "option-value" for d in diagnostics) else 1


def unfit_form(line: CommandLine, messages: str) -> Iterator[Diagnostic]:
    """Whether messages are wanted in a form that there is not."""
    if messages not in FORMS:
        yield not_one_of(line, MESSAGES, messages, FORMS)


def not_one_of(line: CommandLine, option: str, text: str, known: tuple[str, ...]) -> Diagnostic:
    """An option has a value that is none of those that it takes."""
    place, label = (text, option), "not-known"
    return line.fault("option-value/not-one-of", "one-of", at=place, label=label, option=option, text=repr(text), known=known)


def printing(
    line: CommandLine, paper: str, units: str, formats: Sequence[str], theme: str, large_print: bool = False
) -> tuple[Printing | None, tuple[Diagnostic, ...], dict[str, str]]:
    """Paper, units and formats, each of the known ones, and a theme that fetches nothing, or why not; what there is to warn of; and
    the texts of the theme by the names of their files, for its messages."""
    faults: list[Diagnostic] = []
    asked = [name for text in formats for name in _listed(text)] or list(USUAL)
    for option, value, known in (
        ("--paper", paper, PAPERS),
        ("--units", units, UNITS),
        *(("--as", name, FORMATS) for name in asked),
    ):
        if value not in known:
            faults.append(not_one_of(line, option, value, known))
    found = _theme(line, theme) if theme else None
    faults += found.faults if found else ()
    texts = found.texts if found else {}
    if has_errors(faults):
        return None, tuple(faults), texts
    in_order = tuple(form for form in FORMATS if form in asked)
    own = found.theme if found else None
    return Printing(cast(PaperSize, paper), cast(Units, units), in_order, own, large_print), tuple(faults), texts


def _theme(line: CommandLine, name: str) -> ThemeAsked:
    # What looks through it is loaded for those who have one.
    from walewright.cli.theme import asked

    return asked(line, name)


MOST_JOBS = 256
"""More processes than any computer that builds patterns has cores."""


def jobs(line: CommandLine, text: str) -> int | Diagnostic:
    """How many processes may work at once: as many as there are cores, where nothing is said."""
    if not text:
        from walewright.cli.workers import cores

        return cores()
    if text.isascii() and text.isdecimal() and len(text) <= len(str(MOST_JOBS)) and 1 <= int(text) <= MOST_JOBS:
        return int(text)
    return line.fault("option-value/jobs", "count-of-jobs", at=(text, "--jobs"), text=repr(text), most=MOST_JOBS)


def _listed(text: str) -> list[str]:
    return [part.strip() for part in text.split(",") if part.strip()]


def _pairs(line: CommandLine, option: str, texts: Sequence[str], example: str, faults: list[Diagnostic]) -> dict[str, str]:
    found: dict[str, str] = {}
    for text in texts:
        name, equals, value = (part.strip() for part in text.partition("="))
        if not (name and equals and value):
            faults.append(line.fault("option-value/no-pair", "as-in", at=(text, option), option=option, example=example))
        elif name in found:
            faults.append(line.fault("option-value/given-twice", "leave-one-out", at=(text, option), option=option, name=name))
        else:
            found[name] = value
    return found
