"""Several files at once, each in a process of its own; what they say comes out as if they had been worked one after another.

A process that ends by itself, or is ended, costs its own file and no other.
"""

from __future__ import annotations

import io
import multiprocessing
import os
from collections.abc import Callable, Generator, Iterator, Sequence
from concurrent.futures import Future
from contextlib import redirect_stderr, redirect_stdout
from functools import partial
from typing import TYPE_CHECKING, Generic, TypeVar

from walewright.cli import console
from walewright.cli.command_line import CommandLine
from walewright.record import record
from walewright.report.columns import named
from walewright.report.model import diagnosed
from walewright.report.said import Fact

if TYPE_CHECKING:
    from pebble import ProcessPool

FILES_A_PROCESS = 12
"""A process is replaced after so many files, so that what libraries keep does not add up."""

OneFile = Callable[[str], int]
"""Works one file and returns its exit code; it can be sent to another process."""


Result = TypeVar("Result")


@record
class Worked(Generic[Result]):
    """What a piece of work came to, and what was said, in its order, as (whether it is a result, the text). `stopped`: the
    exit code where somebody asked the process to stop; then there is no result."""

    result: Result | None
    spoken: tuple[tuple[bool, str], ...]
    stopped: int = 0


@record
class ProcessTask(Generic[Result]):
    """A piece of work that can be sent to another process, and what it is called where that process is lost."""

    name: str
    work: Callable[[], Result]


def cores() -> int:
    """How many processes can run at once here."""
    allowed = getattr(os, "sched_getaffinity", None)
    return len(allowed(0)) if allowed is not None else os.cpu_count() or 1


def at_once(line: CommandLine, files: Sequence[str], work: OneFile, jobs: int, finished: Callable[[str], None]) -> int:
    """Work every file in one of `jobs` processes and say what each said, in the order of the files; the worst exit code is
    returned. `finished` is told each file when it is done."""
    worst = 0
    for task, answer in in_processes(tuple(ProcessTask(file, partial(work, file)) for file in files), jobs):
        told = say_it(line, task.name, answer)
        finished(task.name)
        worst = max(worst, 1 if told is None else told)
    return worst


def in_processes(tasks: Sequence[ProcessTask[Result]], jobs: int) -> Generator[tuple[ProcessTask[Result], Worked[Result] | int]]:
    """Every task worked in one of `jobs` processes, in the order of the tasks; of one whose process was lost, its exit code."""
    from pebble import ProcessPool

    # A fresh interpreter a process: a fork would take along threads of libraries in whatever state they are.
    context = multiprocessing.get_context("spawn")
    pool = ProcessPool(max_workers=min(jobs, len(tasks)), max_tasks=FILES_A_PROCESS, context=context)
    try:
        yield from _gathered(tasks, pool)
    except BaseException:
        pool.stop()  # type: ignore[no-untyped-call]
        raise
    finally:
        pool.close()  # type: ignore[no-untyped-call]
        pool.join()


def _gathered(
    tasks: Sequence[ProcessTask[Result]], pool: ProcessPool
) -> Iterator[tuple[ProcessTask[Result], Worked[Result] | int]]:
    from pebble import ProcessExpired

    colour = console.on_terminal()
    waiting: list[tuple[ProcessTask[Result], Future[Worked[Result]]]] = [
        (task, pool.schedule(worked, args=(task.work, colour))) for task in tasks
    ]
    waiting.reverse()
    while waiting:
        # What has been handed on is not kept.
        task, future = waiting.pop()
        try:
            yield task, future.result()
        except ProcessExpired as fault:
            yield task, fault.exitcode


def say_it(line: CommandLine, name: str, answer: Worked[Result] | int) -> Result | int | None:
    """Says what was said while a task was worked, and gives its result; None where its process was lost, which is reported, and the
    exit code where it was asked to stop."""
    if isinstance(answer, int):
        # The system counts signals downwards from 0.
        facts: dict[str, Fact] = {"signal": max(0, -answer), "code": answer}
        line.report((diagnosed("process-lost", helps=("one-job",), facts=facts, file=named(name)),))
        return None
    for result, text in answer.spoken:
        if result:
            console.say(text, done=True)
        else:
            console.relay(text)
    return answer.stopped if answer.result is None else answer.result


class _Kept(io.StringIO):
    """What is written to one of the two streams, kept among what is written to both."""

    def __init__(self, spoken: list[tuple[bool, str]], result: bool, terminal: bool) -> None:
        super().__init__()
        self._spoken, self._result, self._terminal = spoken, result, terminal

    def write(self, text: str) -> int:
        if self._spoken and self._spoken[-1][0] == self._result:
            self._spoken[-1] = (self._result, self._spoken[-1][1] + text)
        else:
            self._spoken.append((self._result, text))
        return len(text)

    def isatty(self) -> bool:
        return self._terminal


def worked(work: Callable[[], Result], colour: bool) -> Worked[Result]:
    """In the other process: what the work came to, and what was said on the way."""
    from walewright.cli import stops
    from walewright.cli.collecting import between_sources, spare_the_collector

    spare_the_collector()
    between_sources()
    spoken: list[tuple[bool, str]] = []
    result, stopped = None, 0
    with redirect_stdout(_Kept(spoken, True, False)), redirect_stderr(_Kept(spoken, False, colour)), stops.stoppable():
        try:
            result = work()
        except stops.Stopped as fault:
            stopped = fault.exit_code
    return Worked(result, tuple((of_result, text.removesuffix("\n")) for of_result, text in spoken), stopped)
