"""`walewright check`: everything but printing."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

import click

from walewright.cli import console, options, sources
from walewright.cli.command_line import CommandLine
from walewright.cli.each import each
from walewright.cli.parameters import FILES, FROM, GIVEN, HELP, LANGUAGE, MESSAGES, SIZES, command
from walewright.cli.sources import meant, unfit_names

if TYPE_CHECKING:
    from walewright.pipeline import Outcome
    from walewright.report.model import Diagnostic


def _check(line: CommandLine, /, files: Sequence[str], everything: bool, every_choice: bool, **asked: Any) -> int:
    """Work out and prove every size, and print what came of it. Writes nothing."""
    files = meant(files)
    wanted = options.wanted(line, options.Asked(**asked))
    faults = (*wanted.faults, *unfit_names(line, files))
    if faults:
        line.report(faults, wanted.texts)
        return 2

    def one(file: str) -> int:
        outcome = sources.compile_file(file, wanted)
        _report(line, outcome, outcome.diagnostics, wanted)
        code = _said(line, outcome, wanted, everything)
        if every_choice:
            from walewright.cli.ways import only_there, other_ways, what_is_told

            told = what_is_told(outcome)
            # One at a time: an outcome is large, and nothing of it is needed when it has been said.
            for way in other_ways(outcome, wanted):
                outcome = sources.compile_file(file, way)
                _report(line, outcome, only_there(outcome, told), way)
                code = max(code, _said(line, outcome, way, everything))
        return code

    return each(line, files, one, "checking")


def _report(line: CommandLine, outcome: Outcome, told: Sequence[Diagnostic], wanted: options.Wanted) -> None:
    line.report(
        line.placed(tuple(told)), {**outcome.shared, outcome.file: outcome.text, **wanted.texts}, sources.edits(outcome, wanted)
    )


def _said(line: CommandLine, outcome: Outcome, wanted: options.Wanted, everything: bool) -> int:
    if not outcome.proven:
        return sources.not_made(line, outcome)
    from walewright.cli.summary import summary

    console.say(summary(outcome, wanted.guide, line.words, everything))
    return 0


COMMAND = command(
    "check",
    _check,
    [
        FILES,
        click.option("--all", "everything", is_flag=True, help="Every count beside what was wanted, every opening and join too."),
        SIZES,
        GIVEN,
        FROM,
        click.option(
            "--every-choice", is_flag=True, help="Every way to choose among the alternatives of a source, one after another."
        ),
        LANGUAGE,
        MESSAGES,
        HELP,
    ],
)
