"""`walewright check`: everything but printing."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import click

from walewright.cli import console, options, sources
from walewright.cli.command_line import CommandLine
from walewright.cli.each import each
from walewright.cli.parameters import FILES, GIVEN, HELP, LANGUAGE, MESSAGES, SIZES, command
from walewright.cli.sources import unfit_names


def _check(line: CommandLine, /, files: Sequence[str], everything: bool, **asked: Any) -> int:
    """Work out and prove every size, and print what came of it. Writes nothing."""
    wanted = options.wanted(line, options.Asked(**asked))
    faults = (*wanted.faults, *unfit_names(line, files))
    if faults:
        line.report(faults, wanted.texts)
        return 2

    def one(file: str) -> int:
        outcome = sources.compile_file(file, wanted)
        line.report(line.placed(outcome.diagnostics), {file: outcome.text, **wanted.texts}, sources.edits(outcome, wanted))
        if not outcome.proven:
            return options.exit_code(outcome.diagnostics)
        from walewright.cli.summary import summary

        console.say(summary(outcome, wanted.guide, line.words, everything))
        return 0

    return each(line, files, one, "checking")


COMMAND = command(
    "check",
    _check,
    FILES,
    click.option("--all", "everything", is_flag=True, help="Every count beside what was wanted, every opening and join too."),
    SIZES,
    GIVEN,
    LANGUAGE,
    MESSAGES,
    HELP,
)
