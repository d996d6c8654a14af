"""`walewright format`: sources written anew from their trees. What is no part of a text (line ends, permissions) stays."""

from __future__ import annotations

from collections.abc import Sequence

from walewright import world
from walewright.cli import console
from walewright.cli.command_line import FILE, CommandLine
from walewright.cli.each import each
from walewright.cli.options import unfit_form
from walewright.cli.sources import edits_of_text, unfit_names
from walewright.report.columns import named
from walewright.report.model import has_errors


def format_sources(line: CommandLine, files: Sequence[str], check_only: bool, messages: str = "text") -> int:
    """Rewrite each file whose spacing differs, or only tell. A file that cannot be read whole is left as it is."""
    unfit = (*unfit_form(line, messages), *unfit_names(line, files))
    if unfit:
        console.report(unfit, {FILE: line.text}, line.form)
        return 2

    def one(file: str) -> int:
        held, fault = world.read_held(file)
        if held is None:
            console.report((fault,) if fault else (), {}, line.form)
            return 1
        from walewright import source

        tree, faults = source.read(file, held.text)
        console.report(faults, {file: held.text}, line.form, edits_of_text(file, held.text))
        if has_errors(faults):
            return 1
        tidy = held.bytes_of(source.tidy(tree))
        if tidy == held.data:
            return 0
        mixed = "" if held.line_end else " (its line ends were mixed)"
        if check_only:
            console.say(f"{named(file)} would change{mixed}")
            return 1
        unwritable = world.rewrite(held, tidy)
        if unwritable is not None:
            console.report((unwritable,), {}, line.form)
            return 1
        console.say(f"rewrote {named(file)}{mixed}", done=True)
        return 0

    return each(line, files, one, "formatting")
