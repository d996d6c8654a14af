"""`walewright format`: sources written anew from their trees. What is no part of a text (line ends, permissions) stays."""

from __future__ import annotations

from collections.abc import Sequence

import click

from walewright import languages, world
from walewright.cli.command_line import CommandLine
from walewright.cli.each import each
from walewright.cli.options import unfit_form, unknown_language
from walewright.cli.parameters import FILES, HELP, LANGUAGE, MESSAGES, command
from walewright.cli.sources import edits_of_text, unfit_names
from walewright.report.columns import named
from walewright.report.model import has_errors
from walewright.report.said import said


def _format(line: CommandLine, /, files: Sequence[str], check_only: bool, language: str, messages: str) -> int:
    """Write sources anew with even spacing and indents. Their meaning and comments stay."""
    unfit = (*unfit_form(line, messages), *unknown_language(line, languages.named(language)), *unfit_names(line, files))
    if unfit:
        line.report(unfit)
        return 2

    def one(file: str) -> int:
        held, fault = world.read_held(file)
        if held is None:
            line.report((fault,) if fault else ())
            return 1
        from walewright import source

        tree, faults = source.read(file, held.text)
        line.report(faults, {file: held.text}, edits_of_text(file, held.text))
        if has_errors(faults):
            return 1
        tidy = held.bytes_of(source.tidy(tree))
        if tidy == held.data:
            return 0
        mixed = not held.line_end
        if check_only:
            line.say(said("would-change", file=named(file), mixed=mixed))
            return 1
        unwritable = world.rewrite(held, tidy)
        if unwritable is not None:
            line.report((unwritable,))
            return 1
        line.say(said("rewrote", file=named(file), mixed=mixed), done=True)
        return 0

    return each(line, files, one, "formatting")


COMMAND = command(
    "format",
    _format,
    [
        FILES,
        click.option("--check", "check_only", is_flag=True, help="Only say which files would change; exit 1 if any would."),
        LANGUAGE,
        MESSAGES,
        HELP,
    ],
)
