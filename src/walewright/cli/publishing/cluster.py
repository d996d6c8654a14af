"""`--executor dask`: the same jobs, handed to the workers of a cluster that runs already.

A worker that is lost is no loss: the cluster gives its jobs to another. Each worker does one job at a time, for what a job says is
caught by the streams of its process. A worker whose compiler, libraries or shipped files are not those of whoever asks makes
nothing, for its bytes could be others.
"""

from __future__ import annotations

import logging
from collections.abc import Generator, Mapping, Sequence
from functools import cache, partial
from threading import Lock
from typing import Any

from walewright.cli.command_line import CommandLine
from walewright.cli.publishing.inputs import FOLDERS, MEASURES, NAMES, PRINTERS, PROGRAM, PYTHON, READERS, Inputs
from walewright.cli.publishing.making import Job, MadeGarment, make
from walewright.cli.workers import ProcessTask, Worked, worked
from walewright.report.model import Diagnostic
from walewright.world import shipped_names

PATIENCE_S = 5
"""How long a scheduler may take to answer."""

LOST = -9
"""The exit code of a process that was ended, as the system counts: whichever worker took a job was lost, again and again."""

ClusterAnswer = tuple[ProcessTask[MadeGarment], Worked[MadeGarment] | int]


def made_with() -> tuple[str, ...]:
    """What has to be the same wherever a job is worked, by the names of `inputs`."""
    shipped = (f"shipped:{folder}/{name}" for folder in FOLDERS for name in shipped_names("patterns", folder))
    return (PROGRAM, PYTHON, NAMES, MEASURES, *(f"package:{name}" for name in (*READERS, *PRINTERS)), *shipped)


def on_cluster(
    line: CommandLine, jobs: Sequence[Job], address: str, inputs: Inputs, terminal: bool
) -> Generator[ClusterAnswer, None, Diagnostic | None]:
    """Every job worked by a cluster, in the order of the jobs. Returns why it cannot be."""
    try:
        import distributed
    except ImportError:
        option = "--executor"
        return line.fault("option-value/not-installed", "install-extra", at=("dask", option), option=option, extra="cluster")
    logging.getLogger("distributed").setLevel(logging.CRITICAL)
    try:
        library: Any = distributed
        client = library.Client(address, timeout=PATIENCE_S, set_as_default=False)
    except (OSError, ValueError, TypeError):
        return line.fault("executor-unusable/unreachable", "start-it", at=(address, "--scheduler"), address=address)
    here = inputs.all_now(made_with())
    with client:
        tasks = [ProcessTask(job.making.name, partial(make_there, job, here)) for job in jobs]
        futures = [client.submit(_one_at_a_time, task.work, terminal, pure=False) for task in tasks]
        for task, future in zip(tasks, futures, strict=True):
            try:
                yield task, future.result()
            except library.KilledWorker:
                yield task, LOST
            future.release()
    return None


def make_there(job: Job, here: Mapping[str, str]) -> MadeGarment:
    """Work a job where a cluster has put it: with what is there, if it is the same as `here`."""
    there = _there()
    differ = tuple(sorted(name.removeprefix("package:").removeprefix("shipped:") for name in here if there.get(name) != here[name]))
    if differ:
        fault = job.line.fault("executor-unusable/differs", "install-the-same", at=("dask", "--executor"), differ=differ)
        job.line.report((fault,))
        return MadeGarment(1)
    return make(job)


@cache
def _there() -> Mapping[str, str]:
    """What a worker works with, looked at once."""
    return Inputs("").all_now(made_with())


@cache
def _alone() -> Lock:
    """Held by the one job that a worker works."""
    return Lock()


def _one_at_a_time(work: partial[MadeGarment], terminal: bool) -> Worked[MadeGarment]:
    with _alone():
        return worked(work, terminal)
