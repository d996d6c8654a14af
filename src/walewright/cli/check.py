"""`walewright check`: everything but printing."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.cli import console, options, sources
from walewright.cli.command_line import FILE, CommandLine
from walewright.cli.each import each
from walewright.cli.sources import unfit_names


def check(line: CommandLine, files: Sequence[str], asked: options.Asked) -> int:
    """Compile each file and print its table. Returns the exit code."""
    wanted = options.wanted(line, asked)
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
