"""What a build is going to write: no two products of one name, and none over a source."""

from __future__ import annotations

import os
from collections.abc import Mapping, Sequence
from dataclasses import replace
from pathlib import PurePath

from walewright import world
from walewright.cli.command_line import CommandLine
from walewright.report.columns import named
from walewright.report.model import Diagnostic

SUFFIXES = {"pdf": ".pdf", "html": ".html", "text": ".txt", "plan": ".plan.json"}


def product_names(file: str, formats: Sequence[str]) -> Mapping[str, str]:
    """format -> name of the file that is written for the source `file`."""
    stem = PurePath(file).stem
    return {form: stem + SUFFIXES[form] for form in formats}


def unfit_outputs(line: CommandLine, files: Sequence[str], out: str, formats: Sequence[str]) -> tuple[Diagnostic, ...]:
    """Everything that is wrong with where the products of `files` would go, told before anything is written."""
    if world.is_source_name(os.path.normpath(out)):
        message = f"--out cannot be {named(out)}: a name that ends in {world.SOURCE_SUFFIX} is a source's"
        return (line.fault("option-value", message, at=(out, "--out"), helps=("name a folder, as --out out",)),)
    return (*_clashes(line, files, formats), *_over_sources(line, files, out, formats))


def _clashes(line: CommandLine, files: Sequence[str], formats: Sequence[str]) -> tuple[Diagnostic, ...]:
    first: dict[str, tuple[int, str]] = {}
    found = []
    for at, file in enumerate(files):
        for name in product_names(file, formats).values():
            of, other = first.setdefault(world.alike(name), (at, name))
            if of == at:
                continue
            before = files[of]
            shown, shown_other = named(name), named(other)
            if name == other:
                message = f"{named(before)} and {named(file)} would both be written to {shown}"
            else:
                message = f"{named(before)} and {named(file)} would be written to {shown_other} and {shown}"
            note = "on many systems these are one name: capitals count as small letters, and accents written apart as composed"
            fault = line.fault("output-clash", message, at=(file,), helps=("build them into different folders, or rename one",))
            found.append(fault if name == other else _with_note(fault, note))
            # One message for two sources, however many products they share.
            break
    return tuple(found)


def _over_sources(line: CommandLine, files: Sequence[str], out: str, formats: Sequence[str]) -> tuple[Diagnostic, ...]:
    known = world.sources_known(files, (out, *(os.path.dirname(file) for file in files)))
    found = []
    for file in files:
        for name in product_names(file, formats).values():
            path = os.path.join(out, name)
            lost = world.source_behind(path, known)
            if lost is not None:
                message = f"{named(path)} would be written over a source: it is another name of {named(lost)}"
                helps = ("choose another folder with --out, or rename what has that name",)
                found.append(line.fault("output-is-source", message, at=(file,), helps=helps))
    return tuple(found)


def _with_note(fault: Diagnostic, note: str) -> Diagnostic:
    return replace(fault, notes=(*fault.notes, note))
