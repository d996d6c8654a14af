"""`walewright show`: what a stage of the compiler made of a source, as JSON, for whoever looks for the stage that is at fault."""

from __future__ import annotations

import json
from array import array
from collections.abc import Callable, Iterator, Mapping, Set
from dataclasses import fields, is_dataclass
from enum import Enum
from typing import TYPE_CHECKING, Any

import click

from walewright import __version__
from walewright.cli import console, options, sources
from walewright.cli.command_line import CommandLine
from walewright.cli.parameters import GIVEN, HELP, LANGUAGE, MESSAGES, SIZES, command
from walewright.report.model import Diagnostic, Span, has_errors

if TYPE_CHECKING:
    from walewright.pipeline import Outcome


RESULTS: dict[str, Callable[[Outcome], object]] = {
    "source": lambda o: o.tree,
    "design": lambda o: o.design,
    "glue": lambda o: o.glued,
    "solve": lambda o: o.counts,
    "knit": lambda o: o.plans,
    "hands": lambda o: o.works,
    "bed": lambda o: o.results,
    "fit": lambda o: o.fit,
    "write": lambda o: o.instructions,
    "readback": lambda o: o.read,
    "proof": lambda o: o.proof,
}
"""Stage -> its result, or None (or nothing) where the source did not come so far. `knit` has the steps, `hands` the operations they
stand for. In the order of the pipeline."""

UNDERSTOOD = ("source", "design")
"""Stages for which no stitch has to be counted."""


def _show(line: CommandLine, /, stage: str, file: str, **asked: Any) -> int:
    """Print what a stage of the compiler made of a source, as JSON. Writes nothing."""
    # The exit code is not 0 where the source did not come so far, or has an error all the same.
    (file,) = sources.meant((file,))
    wanted = options.wanted(line, options.Asked(**asked))
    faults = (*wanted.faults, *sources.unfit_names(line, (file,)), *_unknown(line, stage))
    if faults:
        line.report(faults, wanted.texts)
        return 2
    reach = sources.understand_file if stage in UNDERSTOOD else sources.compile_file
    outcome = reach(file, wanted)
    line.report(
        line.placed(outcome.diagnostics), {**outcome.shared, file: outcome.text, **wanted.texts}, sources.edits(outcome, wanted)
    )
    result = RESULTS[stage](outcome)
    if result:
        console.say(document(stage, file, result))
    return sources.not_made(line, outcome) if not result or has_errors(outcome.diagnostics) else 0


def _unknown(line: CommandLine, stage: str) -> tuple[Diagnostic, ...]:
    if stage in RESULTS:
        return ()
    return (line.fault("command-line/stage", "stages", at=(stage,), label="no-stage", stage=stage, stages=tuple(RESULTS)),)


def document(stage: str, file: str, result: object) -> str:
    """The result of a stage with its frame. Its shape is that of the dataclasses of the version named, and changes with them."""
    frame = {"walewright": __version__, "stage": stage, "file": file, "result": data(result)}
    return json.dumps(frame, ensure_ascii=True, indent=1)


def data(value: Any) -> Any:
    """A value of any stage as JSON has it. A dataclass becomes an object with its name under `is`; a place in the source
    becomes its begin and end. A mapping whose keys are not texts becomes a list of pairs; a set is sorted."""
    match value:
        case None | bool() | int() | float() | str():
            return value
        case Enum():
            return value.name.lower()
        case Span():
            return [value.start, value.end]
        case Mapping():
            if all(isinstance(key, str) for key in value):
                return {key: data(item) for key, item in value.items()}
            return [[data(key), data(item)] for key, item in value.items()]
        case Set():
            return sorted((data(item) for item in value), key=repr)
        case tuple() | list() | array() | bytes():
            return [data(item) for item in value]
    if is_dataclass(value) and not isinstance(value, type):
        return {"is": type(value).__name__, **dict(_fields(value))}
    raise TypeError(f"{type(value).__name__} is not data")


def _fields(value: Any) -> Iterator[tuple[str, Any]]:
    # What begins with an underscore is how a value keeps house, no part of it.
    for field in fields(value):
        if not field.name.startswith("_"):
            yield field.name, data(getattr(value, field.name))


COMMAND = command(
    "show",
    _show,
    [
        click.argument("stage", metavar="STAGE", help="A stage of the compiler, such as solve or knit."),
        click.argument("file", metavar="FILE", help="A source, ending in .wale."),
        SIZES,
        GIVEN,
        LANGUAGE,
        MESSAGES,
        HELP,
    ],
)
