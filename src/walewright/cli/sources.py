"""Sources and shipped data, from the files to what the pipeline takes."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from functools import cache
from pathlib import PurePath
from typing import TYPE_CHECKING

from walewright import world
from walewright.cli.command_line import CommandLine
from walewright.record import replace
from walewright.report.columns import named
from walewright.report.model import Diagnostic, diagnosed, has_errors
from walewright.report.said import said

if TYPE_CHECKING:
    from walewright.cli.edits import Again
    from walewright.cli.options import Wanted
    from walewright.design import SharedFile, Shipped
    from walewright.pipeline import Outcome
    from walewright.report.as_json import Edit, Edits
    from walewright.world.pictures import NoPicture

    ReadPicture = Callable[[str], tuple[bytes, NoPicture | None]]

_MAY_USE = re.compile(r"^\s*use\b.*\bfrom\b", re.MULTILINE)
"""A source without such a line uses no other file."""


@cache
def shipped() -> Shipped:
    """Every size table, machine profile and shape of this installation, by its file's name."""
    from walewright.design import Shipped

    return Shipped(
        tables=_folder("tables", ".csv"),
        machines=_folder("machines", ".toml"),
        shapes=_folder("shapes", ".wale"),
        charts=_folder("charts", ".wale"),
        names=_folder("names", ".toml"),
        measures=world.shipped_text("patterns", "tables/measures.toml"),
    )


def _given(file: str, text: str) -> Shipped:
    """What the source in that file can name: what is shipped, and the files beside it that it uses."""
    return replace(shipped(), files=files_used(file, text)) if _MAY_USE.search(text) else shipped()


def files_used(file: str, text: str) -> dict[str, SharedFile]:
    """The files beside a source that it uses, and those that these use, by their paths from its folder."""
    if not _MAY_USE.search(text):
        return {}
    from walewright import source
    from walewright.design import MOST_FILES, SharedFile, file_key, used_files

    found: dict[str, SharedFile] = {}
    left = [("", text)]
    while left:
        user, its = left.pop(0)
        for line in used_files(source.read("", its)[0]):
            key = file_key(user, line.file)
            if key in found or len(found) >= MOST_FILES:
                continue
            read, fault, _ = world.read_beside(file, key)
            found[key] = SharedFile(str(PurePath(file).parent / key), read, fault)
            if not fault:
                left.append((key, read))
    return found


def not_made(line: CommandLine, outcome: Outcome) -> int:
    """Says of a file that has only definitions that nothing is made of it; returns the exit code of what is not proven."""
    from walewright.cli.options import exit_code
    from walewright.design import only_definitions

    if outcome.tree is None or has_errors(outcome.diagnostics) or not only_definitions(outcome.tree):
        return exit_code(outcome.diagnostics)
    line.say(said("only-definitions", file=named(outcome.file)), done=True)
    return 0


def compile_file(file: str, wanted: Wanted) -> Outcome:
    """Read `file` and take it through the pipeline, printed in the language wanted."""
    text, fault = world.read_source(file)
    # Only now, so that a source that cannot be had is told at once.
    from walewright import pipeline

    if text is None:
        return pipeline.Outcome(file, "", diagnostics=_only(fault))
    return compile_text(file, text, _given(file, text), wanted, lambda name: world.read_picture(file, name))


def compile_text(file: str, text: str, given: Shipped, wanted: Wanted, read: ReadPicture) -> Outcome:
    """Take the text of a source through the pipeline, with what it can name and what reads its photograph."""
    from walewright import pipeline, regrade, renaming
    from walewright.regrade import Trials

    outcome = pipeline.compile(text, file, given, wanted.changes, wanted.printed)
    # What is tried is tried by the names of the source, as messages have them.
    own = renaming.as_in_source(wanted.changes, outcome.renamed)
    trials = Trials(
        lambda changes: pipeline.counted(text, file, given, changes),
        lambda changes: pipeline.compile(text, file, given, changes, wanted.printed),
    )
    return _with_photograph(regrade.explained(outcome, own, trials), read)


def _with_photograph(outcome: Outcome, read: ReadPicture) -> Outcome:
    """The outcome with the picture that its source names, made ready; or with why it cannot be."""
    line = outcome.design.photograph if outcome.design is not None else None
    if line is None:
        return outcome
    from walewright.sheet.photograph import ready

    data, why = read(line.file)
    picture, unfit = ready(data) if why is None else (None, why)
    if picture is not None:
        return replace(outcome, picture=picture)
    told = diagnosed(f"photograph-unusable/{unfit}", (line.origin.span, "named"), helps=("which",), file=named(line.file))
    return replace(outcome, diagnostics=(*outcome.diagnostics, told))


def understand_file(file: str, wanted: Wanted) -> Outcome:
    """Read `file` and understand it, without counting a stitch."""
    text, fault = world.read_source(file)
    from walewright import pipeline

    if text is None:
        return pipeline.Outcome(file, "", diagnostics=_only(fault))
    return pipeline.understood(text, file, _given(file, text), wanted.changes, wanted.printed)


def count_file(file: str, wanted: Wanted) -> Outcome:
    """Read `file` and count its stitches and rows, for a drawing of it. Nothing is knitted."""
    text, fault = world.read_source(file)
    from walewright import pipeline

    if text is None:
        return pipeline.Outcome(file, "", diagnostics=_only(fault))
    return pipeline.counted(text, file, _given(file, text), wanted.changes)


def edits(outcome: Outcome, wanted: Wanted) -> Edits:
    """What the helps of an outcome's diagnostics change in its source."""

    def again(text: str) -> Outcome:
        from walewright import pipeline

        return pipeline.understood(text, outcome.file, _given(outcome.file, text), wanted.changes)

    return _edits(outcome, again)


def edits_of_text(file: str, text: str) -> Edits:
    """The same of a text that is only read."""

    from walewright.pipeline import Outcome

    def again(other: str) -> Outcome:
        from walewright import source

        return Outcome(file, other, diagnostics=source.read(file, other)[1])

    return _edits(Outcome(file, text), again)


def _edits(outcome: Outcome, again: Again) -> Edits:
    def edits(diagnostic: Diagnostic, number: int) -> tuple[Edit, ...]:
        from walewright.cli.edits import edits_of

        return edits_of(outcome, again, diagnostic, number)

    return edits


def meant(files: Sequence[str]) -> tuple[str, ...]:
    """The files named on the command line; a shipped garment by its name alone, from wherever it is asked for. No source of
    anybody's is called so, for those end in .wale."""
    bare = [file for file in files if not world.is_source_name(file)]
    if not bare:
        return tuple(files)
    there = {name.removesuffix(world.SOURCE_SUFFIX) for name in world.shipped_names("patterns", "", world.SOURCE_SUFFIX)}
    by_name = {name: str(world.shipped_path("patterns", name + world.SOURCE_SUFFIX)) for name in bare if name in there}
    return tuple(by_name.get(file, file) for file in files)


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
