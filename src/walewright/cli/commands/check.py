"""`walewright check`: everything but printing."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from walewright.cli import console, options, sources
from walewright.cli.command_line import FILE, CommandLine
from walewright.cli.each import each
from walewright.cli.parameters import FILES, GIVEN, HELP, LANGUAGE, MESSAGES, SIZES, command
from walewright.cli.sources import unfit_names


def _check(line: CommandLine, /, files: Sequence[str], **asked: Any) -> int:
    """Work out and prove every size, and print the counts. Writes nothing."""
    wanted = options.wanted(line, options.Asked(**asked))
    faults = (*wanted.faults, *unfit_names(line, files))
    if faults:
        console.report(faults, {FILE: line.text, **wanted.texts}, line.form)
        return 2

    def one(file: str) -> int:
        outcome = sources.compile_file(file, wanted)
        edits, texts = sources.edits(outcome, wanted), {FILE: line.text, **wanted.texts}
        console.report(line.placed(outcome.diagnostics), {file: outcome.text, **texts}, line.form, edits, wanted.printed)
        if not outcome.proven:
            return options.exit_code(outcome.diagnostics)
        from walewright.cli.summary import summary

        console.say(summary(outcome))
        return 0

    return each(line, files, one, "checking")


COMMAND = command("check", _check, FILES, SIZES, GIVEN, LANGUAGE, MESSAGES, HELP)
