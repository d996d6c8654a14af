"""What a build is going to write: no two products of one name, and none over a source."""

from __future__ import annotations

import os
from collections.abc import Mapping, Sequence
from pathlib import PurePath

from walewright import world
from walewright.cli.command_line import CommandLine
from walewright.cli.formats import format_named
from walewright.report.columns import named
from walewright.report.model import Diagnostic


def product_names(file: str, formats: Sequence[str]) -> Mapping[str, str]:
    """format -> name of the file that is written for the source `file`."""
    stem = PurePath(file).stem
    return {form: stem + format_named(form).suffix for form in formats}


def unfit_outputs(line: CommandLine, files: Sequence[str], out: str, formats: Sequence[str]) -> tuple[Diagnostic, ...]:
    """Everything that is wrong with where the products of `files` would go, told before anything is written."""
    if world.is_source_name(os.path.normpath(out)):
        place, suffix = (out, "--out"), world.SOURCE_SUFFIX
        return (line.fault("option-value/source-folder", "name-a-folder", at=place, out=named(out), suffix=suffix),)
    return (*_clashes(line, files, formats), *_over_sources(line, files, out, formats))


def _clashes(line: CommandLine, files: Sequence[str], formats: Sequence[str]) -> tuple[Diagnostic, ...]:
    first: dict[str, tuple[int, str]] = {}
    found = []
    for at, file in enumerate(files):
        for name in product_names(file, formats).values():
            of, other = first.setdefault(world.alike(name), (at, name))
            if of == at:
                continue
            case, notes = ("same", ()) if name == other else ("alike", ("one-name",))
            found.append(
                line.fault(
                    f"output-clash/{case}",
                    "other-folders",
                    at=(file,),
                    notes=notes,
                    one=named(files[of]),
                    other=named(file),
                    product=named(other),
                    other_product=named(name),
                )
            )
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
                names = named(path), named(lost)
                fault = line.fault("output-is-source", "other-folder", at=(file,), product=names[0], source=names[1])
                found.append(fault)
    return tuple(found)
