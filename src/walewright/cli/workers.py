"""Several files at once, each in a process of its own; what they say comes out as if they had been worked one after another.

A process that ends by itself, or is ended, costs its own file and no other.
"""

from __future__ import annotations

import io
import multiprocessing
import os
from collections.abc import Callable, Sequence
from concurrent.futures import Future
from contextlib import redirect_stderr, redirect_stdout
from dataclasses import dataclass
from typing import TYPE_CHECKING

from walewright.cli import console
from walewright.cli.command_line import CommandLine
from walewright.report.columns import named
from walewright.report.model import diagnosed

if TYPE_CHECKING:
    from pebble import ProcessPool

FILES_A_PROCESS = 12
"""A process is replaced after so many files, so that what libraries keep does not add up."""

OneFile = Callable[[str], int]
"""Works one file and returns its exit code; it can be sent to another process."""


@dataclass(frozen=True, slots=True)
class Worked:
    """What working a file came to: the exit code, and what was said, in its order, as (whether it is a result, the text)."""

    code: int
    spoken: tuple[tuple[bool, str], ...]


def cores() -> int:
    """How many processes can run at once here."""
    allowed = getattr(os, "sched_getaffinity", None)
    return len(allowed(0)) if allowed is not None else os.cpu_count() or 1


def at_once(line: CommandLine, files: Sequence[str], work: OneFile, jobs: int, finished: Callable[[str], None]) -> int:
    """OneFile every file in one of `jobs` processes and say what each said, in the order of the files; the worst exit code is
    returned. `finished` is told each file when it is done."""
    from pebble import ProcessPool

    # A fresh interpreter a process: a fork would take along threads of libraries in whatever state they are.
    context = multiprocessing.get_context("spawn")
    pool = ProcessPool(max_workers=min(jobs, len(files)), max_tasks=FILES_A_PROCESS, context=context)
    try:
        return _gathered(line, files, work, pool, finished)
    except BaseException:
        pool.stop()  # type: ignore[no-untyped-call]
        raise
    finally:
        pool.close()  # type: ignore[no-untyped-call]
        pool.join()


def _gathered(line: CommandLine, files: Sequence[str], work: OneFile, pool: ProcessPool, finished: Callable[[str], None]) -> int:
    colour = console.on_terminal()
    waiting = [(file, pool.schedule(_worked, args=(work, file, colour))) for file in files]
    worst = 0
    for file, future in waiting:
        code = _told(line, file, future)
        finished(file)
        worst = max(worst, code)
    return worst


def _told(line: CommandLine, file: str, future: Future[Worked]) -> int:
    """Waits for a file's answer, and says what it said."""
    from pebble import ProcessExpired

    try:
        answer = future.result()
    except ProcessExpired as fault:
        # The system counts signals downwards from 0.
        facts = {"signal": max(0, -fault.exitcode), "code": fault.exitcode}
        line.report((diagnosed("process-lost", helps=("one-job",), file=named(file), **facts),))
        return 1
    for result, text in answer.spoken:
        if result:
            console.say(text, done=True)
        else:
            console.relay(text)
    return answer.code


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


def _worked(work: OneFile, file: str, colour: bool) -> Worked:
    """In the other process: the file worked, and what was said on the way."""
    from walewright.cli import stops
    from walewright.cli.collecting import spare_the_collector

    spare_the_collector()
    spoken: list[tuple[bool, str]] = []
    with redirect_stdout(_Kept(spoken, True, False)), redirect_stderr(_Kept(spoken, False, colour)), stops.stoppable():
        try:
            code = work(file)
        except stops.Stopped as stopped:
            code = stopped.exit_code
    return Worked(code, tuple((result, text.removesuffix("\n")) for result, text in spoken))
