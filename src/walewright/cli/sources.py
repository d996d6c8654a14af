"""Sources and shipped data, from the files to what the pipeline takes."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from walewright import world
from walewright.cli.command_line import CommandLine
from walewright.pipeline import Outcome
from walewright.report.columns import named
from walewright.report.model import Diagnostic

if TYPE_CHECKING:
    from walewright.design import Changes, Shipped
    from walewright.languages import PrintedIn
    from walewright.report.as_json import Edits


def shipped() -> Shipped:
    """Every size table, machine profile and shape of this installation, by its file's name."""
    from walewright.design import Shipped

    return Shipped(
        tables=_folder("tables", ".csv"),
        machines=_folder("machines", ".toml"),
        shapes=_folder("shapes", ".wale"),
        measures=world.shipped_text("patterns", "tables/measures.toml"),
    )


def compile_file(file: str, given: Shipped, wanted: Changes, language: PrintedIn | None = None) -> Outcome:
    """Read `file` and take it through the pipeline, printed in the language (English, if none is named)."""
    from walewright import pipeline, regrade
    from walewright.regrade import Trials

    text, fault = world.read_source(file)
    if text is None:
        return Outcome(file, "", diagnostics=_only(fault))
    outcome = pipeline.compile(text, file, given, wanted, language)
    trials = Trials(
        lambda changes: pipeline.counted(text, file, given, changes),
        lambda changes: pipeline.compile(text, file, given, changes, language),
    )
    return regrade.explained(outcome, wanted, trials)


def understand_file(file: str, given: Shipped, wanted: Changes) -> Outcome:
    """Read `file` and understand it, without counting a stitch."""
    from walewright import pipeline

    text, fault = world.read_source(file)
    if text is None:
        return Outcome(file, "", diagnostics=_only(fault))
    return pipeline.understood(text, file, given, wanted)


def edits(outcome: Outcome, given: Shipped, wanted: Changes) -> Edits:
    """What the helps of an outcome's diagnostics change in its source."""
    from walewright import pipeline
    from walewright.cli.edits import edits_of

    def again(text: str) -> Outcome:
        return pipeline.understood(text, outcome.file, given, wanted)

    return lambda diagnostic, number: edits_of(outcome, again, diagnostic, number)


def edits_of_text(file: str, text: str) -> Edits:
    """The same of a text that is only read."""
    from walewright import source
    from walewright.cli.edits import edits_of

    def again(other: str) -> Outcome:
        return Outcome(file, other, diagnostics=source.read(file, other)[1])

    return lambda diagnostic, number: edits_of(Outcome(file, text), again, diagnostic, number)


def unfit_names(line: CommandLine, files: Sequence[str]) -> tuple[Diagnostic, ...]:
    """Of the files named on the command line, those that cannot be sources, whatever is in them."""
    return tuple(_unfit_name(line, file) for file in files if not world.is_source_name(file))


def _unfit_name(line: CommandLine, file: str) -> Diagnostic:
    suffix = world.SOURCE_SUFFIX
    return line.fault("source-name", "name-or-rename", at=(file,), label="no-name", file=named(file), suffix=suffix)


def _folder(folder: str, suffix: str) -> dict[str, str]:
    names = world.shipped_names("patterns", folder, suffix)
    return {name.removesuffix(suffix): world.shipped_text("patterns", f"{folder}/{name}") for name in names}


def _only(fault: Diagnostic | None) -> tuple[Diagnostic, ...]:
    return () if fault is None else (fault,)
