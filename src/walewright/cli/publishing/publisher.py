"""A catalogue made into a folder: what has changed is made anew, in order, each making's files together; then
the manifest and the shelf.

Whenever a run ends, each making's files are old or new together, and its record says which: a record that does not agree with the
files counts for nothing. So runs can be ended at any moment, and two at once do no harm but work.
"""

from __future__ import annotations

import os
from collections.abc import Generator, Sequence
from contextlib import closing
from dataclasses import dataclass, field
from functools import partial
from typing import TYPE_CHECKING

from walewright import world
from walewright.catalogue.manifest import MadeFile
from walewright.catalogue.model import Catalogue
from walewright.cli import console
from walewright.cli.command_line import CommandLine
from walewright.cli.publishing.inputs import Inputs, asked, common, of_product
from walewright.cli.publishing.preparing import Preparing, ReadThemes
from walewright.cli.publishing.records import KeptProduct, Record, folder_of, record_bytes, record_name, records
from walewright.cli.publishing.stale import Stale, stale
from walewright.cli.publishing.told import KEPT, tell_of_all
from walewright.record import record, replace
from walewright.report.columns import named
from walewright.report.said import said
from walewright.report.wording import phrased

if TYPE_CHECKING:
    from walewright.cli.publishing.making import Job, MadeGarment


@record
class PublishRun:
    """A run as it was asked for. `text`: of the catalogue; `why`: whether reasons are told; `scheduler`: the address of the cluster
    that works, empty where this computer does."""

    line: CommandLine
    catalogue: Catalogue
    text: str
    into: str
    jobs: int
    why: bool
    scheduler: str = ""


@dataclass(slots=True)
class _Done:
    """How far a run has come."""

    records: dict[str, Record]
    code: int = 0
    made: int = 0
    failed: set[str] = field(default_factory=set)
    unwritable: bool = False
    unusable: bool = False
    """Whether the cluster that was to work cannot be used."""


def publish(run: PublishRun) -> int:
    """Make what has changed, and tell of all. Returns the exit code."""
    line, into = run.line, run.into
    unsettled = world.settle(into) or world.settle(folder_of(into))
    if unsettled is not None:
        line.report((unsettled,))
        return 1
    there, files = records(into)
    inputs = Inputs(os.path.dirname(run.catalogue.file))
    makings = run.catalogue.makings
    found = [stale(run.catalogue, m, there.get(m.name), _damaged(m.name, there, files), inputs, into) for m in makings]
    wanted = [one for one in found if one.products]
    if run.why:
        for one in wanted:
            for product, reasons in one.products:
                line.say(said("why-product", product=product.file, reasons=reasons))
    done = _Done(dict(there))
    if wanted:
        _make(run, wanted, inputs, done)
    if done.unwritable or done.unusable:
        return 2 if done.unusable else 1
    gone = _withdraw(run, done, there, files)
    fault = tell_of_all(run.catalogue, into, [done.records[m.name] for m in makings if m.name in done.records], inputs, done.failed)
    if fault is not None:
        line.report((fault,))
        return 1
    as_before = sum(len(one.making.products) - len(one.products) for one in found if _makes(there.get(one.making.name)))
    line.say(said("published", made=done.made, kept=as_before, withdrawn=gone, failed=len(done.failed)), done=True)
    return done.code


def _makes(record: Record | None) -> bool:
    return record is not None and record.garment is not None


def _damaged(making: str, there: dict[str, Record], files: frozenset[str]) -> bool:
    return making not in there and record_name(making) in files


def _make(run: PublishRun, wanted: Sequence[Stale], inputs: Inputs, done: _Done) -> None:
    preparing = Preparing(run.line, run.catalogue, run.text, inputs)
    preparing.look_at_shipped()
    themes = preparing.themes(list(wanted))
    if not themes.sound:
        done.code = 1
        wanted, unsound = _without_unsound(wanted, themes)
        done.failed |= {one.making.name for one in unsound}
    jobs: list[tuple[Stale, Job]] = []
    beside: dict[str, tuple[str, ...]] = {}
    for one in wanted:
        job, used = preparing.job(one, themes)
        if job is None:
            done.code = 1
            done.failed.add(one.making.name)
            continue
        jobs.append((one, job))
        beside[one.making.name] = used
    with console.progress(len(jobs)) as bar, closing(_worked(run, jobs, inputs, done)) as working:
        for one, made in working:
            bar.step(lambda of=one: phrased(said("built", name=of.making.name), run.line.words))  # type: ignore[misc]
            done.code = max(done.code, made.code)
            if made.code:
                done.failed.add(one.making.name)
            elif not _put(run, one, made, _Depends(inputs, beside[one.making.name], themes), done):
                return


def _without_unsound(wanted: Sequence[Stale], themes: ReadThemes) -> tuple[list[Stale], list[Stale]]:
    """What can be made, and what cannot for want of its theme."""
    sound = [one for one in wanted if all(p.theme in ("", *themes.themes) for p, _ in one.products)]
    return sound, [one for one in wanted if one not in sound]


def _worked(
    run: PublishRun, jobs: Sequence[tuple[Stale, Job]], inputs: Inputs, done: _Done
) -> Generator[tuple[Stale, MadeGarment]]:
    """Every job worked, in order; what was said on the way is said."""
    from walewright.cli.publishing.making import MadeGarment, make

    if run.scheduler:
        yield from _on_cluster(run, jobs, inputs, done)
        return
    if run.jobs == 1 or len(jobs) < 2:
        yield from ((one, make(job)) for one, job in jobs)
        return
    from walewright.cli.workers import ProcessTask, in_processes, say_it

    stales = {job.making.name: one for one, job in jobs}
    with closing(in_processes([ProcessTask(job.making.name, partial(make, job)) for _, job in jobs], run.jobs)) as answers:
        for task, answer in answers:
            made = say_it(run.line, task.name, answer)
            yield stales[task.name], made if isinstance(made, MadeGarment) else MadeGarment(1 if made is None else made)


def _on_cluster(
    run: PublishRun, jobs: Sequence[tuple[Stale, Job]], inputs: Inputs, done: _Done
) -> Generator[tuple[Stale, MadeGarment]]:
    from walewright.cli.publishing.cluster import on_cluster
    from walewright.cli.publishing.making import MadeGarment
    from walewright.cli.workers import say_it

    stales = {job.making.name: one for one, job in jobs}
    answers = on_cluster(run.line, [job for _, job in jobs], run.scheduler, inputs, console.on_terminal())
    with closing(answers):
        while True:
            try:
                task, answer = next(answers)
            except StopIteration as end:
                if end.value is not None:
                    run.line.report((end.value,))
                    done.unusable = True
                return
            made = say_it(run.line, task.name, answer)
            yield stales[task.name], made if isinstance(made, MadeGarment) else MadeGarment(1 if made is None else made)


@record
class _Depends:
    """What the products of a making depend on: the files beside its source, and its themes."""

    inputs: Inputs
    beside: tuple[str, ...]
    themes: ReadThemes


def _put(run: PublishRun, one: Stale, made: MadeGarment, depends: _Depends, done: _Done) -> bool:
    """Put the files of a making in place, and then what is kept of it; False where that cannot be."""
    names = common(one.making.source, one.making.language, depends.beside, made.shipped)
    shared = depends.inputs.all_now(names)
    fresh = {}
    for product in made.products:
        of = product.product
        own = depends.inputs.all_now(of_product(of, depends.themes.files.get(of.theme, ())))
        facts = dict(asked(run.catalogue, one.making, of))
        file = MadeFile(of, world.fingerprint(product.data), len(product.data), product.pages)
        fresh[of.file] = KeptProduct(file, {**shared, **own, **facts})
    before = done.records.get(one.making.name)
    old = {kept.file: kept for kept in before.products} if before else {}
    kept = tuple(fresh.get(p.file) or old[p.file] for p in one.making.products if p.file in fresh or p.file in old)
    record = Record(one.making.name, made.garment, shared, () if made.only_defines else kept)
    files = {product.product.file: product.data for product in made.products}
    fault = world.write_set(run.into, files) if files else None
    record_file = {record_name(record.making): record_bytes(record)}
    fault = fault or world.write_set(folder_of(run.into), record_file)
    if fault is not None:
        run.line.report((fault,))
        done.unwritable = True
        return False
    done.records[record.making] = record
    done.made += len(files)
    if files:
        told = (said("wrote", file=named(os.path.join(run.into, name))) for name in files)
        console.say("\n".join(phrased(line, run.line.words) for line in told), done=True)
    return True


def _withdraw(run: PublishRun, done: _Done, there: dict[str, Record], files: frozenset[str]) -> int:
    """Take away what is no longer in the catalogue, as far as it still is as it was made; returns how many files."""
    makings = {making.name: making for making in run.catalogue.makings}
    made = [making for name, making in makings.items() if name not in done.records or done.records[name].garment is not None]
    wanted = {product.file for making in made for product in making.products}
    left = [one for record in there.values() for one in record.products if one.file not in wanted]
    unchanged = [one.file for one in left if world.file_fingerprint(os.path.join(run.into, one.file)) == one.made.sha256]
    gone = world.forget(run.into, unchanged)
    for file in gone:
        run.line.say(said("withdrew", file=named(os.path.join(run.into, file))), done=True)
    for name, kept in tuple(done.records.items()):
        if name not in makings:
            del done.records[name]
        elif any(one.file not in wanted for one in kept.products):
            pruned = replace(kept, products=tuple(one for one in kept.products if one.file in wanted))
            done.records[name] = pruned
            # Where that cannot be written, the next run prunes it again.
            world.write_set(folder_of(run.into), {record_name(name): record_bytes(pruned)})
    world.forget(folder_of(run.into), files - {record_name(name) for name in makings} - {KEPT})
    return len(gone)
