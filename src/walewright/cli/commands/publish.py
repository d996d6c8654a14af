"""`walewright publish`: a catalogue of garments in all its forms, of which only what has changed is made."""

from __future__ import annotations

import json
import os
from collections.abc import Iterator
from functools import partial

import click

from walewright import languages, world
from walewright.catalogue.model import MANIFEST, SHELF, Catalogue, FormatFacts, Nameable
from walewright.cli import options
from walewright.cli.command_line import CommandLine
from walewright.cli.formats import NAMES, USUAL, format_named
from walewright.cli.parameters import HELP, MESSAGES, command
from walewright.cli.publishing.records import folder_of
from walewright.cli.publishing.told import LARGEST
from walewright.report.columns import named
from walewright.report.model import Diagnostic

SUFFIX = ".toml"
CLUSTER = "dask"
EXECUTORS = ("local", CLUSTER)


def _publish(
    line: CommandLine,
    /,
    catalogue: str,
    into: str,
    jobs: str,
    executor: str,
    scheduler: str,
    why: bool,
    watch: bool,
    language: str,
    messages: str,
) -> int:
    """Make a catalogue: every garment that it names, in every language, paper, units and theme, and beside them a manifest and a
    page to leaf through. Only what has changed since the last time is made."""
    most = options.jobs(line, jobs)
    unknown = options.unknown_language(line, languages.named(language))
    faults = [*options.unfit_form(line, messages), *unknown, *_unfit_executor(line, executor, scheduler)]
    faults += [most] if isinstance(most, Diagnostic) else []
    if not catalogue.endswith(SUFFIX):
        file, suffix = named(catalogue), SUFFIX
        faults.append(line.fault("option-value/catalogue-file", "name-a-catalogue", at=(catalogue,), file=file, suffix=suffix))
    if faults or isinstance(most, Diagnostic):
        line.report(faults)
        return 2
    into = into or os.curdir
    run = partial(_run, line, catalogue, into, jobs=most, why=why, scheduler=scheduler)
    if not watch:
        return run()
    from walewright.cli.publishing import watching

    return watching.watch(line, os.path.dirname(catalogue), into, run)


def _run(line: CommandLine, catalogue: str, into: str, jobs: int, why: bool, scheduler: str) -> int:
    """One run, with the catalogue as it is now."""
    text, fault = world.read_source(catalogue)
    if text is None:
        line.report((fault,) if fault is not None else ())
        return 1
    from walewright.catalogue.reading import read

    found, wrong = read(catalogue, text, known(os.path.dirname(catalogue)))
    line.report(wrong, {catalogue: text})
    if found is None:
        return 1
    taken = _taken(line, found, into)
    if taken is not None:
        line.report((taken,))
        return 2
    from walewright.cli.publishing.publisher import PublishRun, publish

    return publish(PublishRun(line=line, catalogue=found, text=text, into=into, jobs=jobs, why=why, scheduler=scheduler))


def _unfit_executor(line: CommandLine, executor: str, scheduler: str) -> Iterator[Diagnostic]:
    """Whether it is said who works, and where."""
    if executor not in EXECUTORS:
        yield options.not_one_of(line, "--executor", executor, EXECUTORS)
    elif (executor == CLUSTER) != bool(scheduler):
        yield line.fault("option-value/scheduler", "both-or-none", at=("--scheduler", "--executor"))


def known(folder: str) -> Nameable:
    """What a catalogue in a folder can name."""
    formats = {name: FormatFacts(format_named(name).suffix, format_named(name).varies_with) for name in NAMES}
    return Nameable(world.sources_below(folder), languages.known(), options.PAPERS, options.UNITS, formats, USUAL)


def _taken(line: CommandLine, catalogue: Catalogue, into: str) -> Diagnostic | None:
    """What speaks against a folder for the products: another catalogue's are in it, or files that no catalogue made."""
    there = tuple(name for name in (MANIFEST, SHELF) if os.path.lexists(os.path.join(into, name)))
    if there and not os.path.isdir(folder_of(into)):
        folder = named(into)
        return line.fault("catalogue-folder/taken", "other-folder", at=(into, "--into"), folder=folder, there=there)
    data = world.small_file(os.path.join(into, MANIFEST), LARGEST)
    own = os.path.basename(catalogue.file)
    try:
        other = json.loads(data)["catalogue"] if data is not None else own
    except (ValueError, KeyError, TypeError, RecursionError):
        return None
    if other == own:
        return None
    folder, other = named(into), named(str(other))
    return line.fault("catalogue-folder/other", "other-folder", at=(into, "--into"), folder=folder, other=other, own=named(own))


COMMAND = command(
    "publish",
    _publish,
    [
        click.argument("catalogue", metavar="CATALOGUE", help="A catalogue, ending in .toml, in the folder of its sources."),
        click.option(
            "--into", default="out", show_default=True, metavar="DIR", help="Folder for all that is made; made if missing."
        ),
        click.option("--watch", is_flag=True, help="Go on, and make what a saved file changes, until stopped."),
        click.option("--why", is_flag=True, help="Say of each file that is made why it is."),
        click.option(
            "--jobs", default="", metavar="NUMBER", help="How many processes work at most; as many as there are cores if not given."
        ),
        click.option(
            "--executor",
            default="local",
            show_default=True,
            metavar="NAME",
            help="Who works: local, or dask for a cluster that runs.",
        ),
        click.option("--scheduler", default="", metavar="ADDRESS", help="The cluster's scheduler, as tcp://10.0.0.7:8786."),
        click.option(
            "--language",
            default=languages.ENGLISH,
            show_default=True,
            metavar="NAME",
            help="The language that is told in: its name, or its tag, such as de. That of the patterns is said by the catalogue.",
        ),
        MESSAGES,
        HELP,
    ],
)
