"""Work in other processes, with bounds: how long, how much memory, and how much of it may wait. What is hopeless, or no longer
wanted, is stopped, and costs nobody else anything."""

from __future__ import annotations

import asyncio
import multiprocessing
from collections.abc import Awaitable, Callable
from concurrent.futures import CancelledError as TakenBack
from concurrent.futures import TimeoutError as TookTooLong
from dataclasses import field
from multiprocessing.connection import Connection
from typing import TYPE_CHECKING, Any, ParamSpec, TypeVar

from walewright.cli.workers import FILES_A_PROCESS, cores
from walewright.record import record
from walewright.serve.model import ResultState
from walewright.serve.progress import PageProgress, listening

if TYPE_CHECKING:
    from pebble import ProcessFuture, ProcessPool

TaskGiven = ParamSpec("TaskGiven")
TaskFound = TypeVar("TaskFound")


CONTEXT = multiprocessing.get_context("spawn")
"""A fresh interpreter a process: a fork would take along threads of libraries in whatever state they are."""


@record
class Limits:
    """`seconds` for one piece of work, and `unwanted` for one that nobody waits for any longer; `memory` in bytes for a process,
    where the system can bound it; how many pieces of work may be `waiting`; `processes` at once, two at least, so that a cover does
    not keep a form waiting."""

    seconds: float = 150.0
    unwanted: float = 5.0
    memory: int = 3 * 1024**3
    waiting: int = 24
    processes: int = field(default_factory=lambda: max(2, cores()))


@record
class Unfinished:
    """Why work came to nothing."""

    why: ResultState


@record
class Asker:
    """Who waits for work: `gone` comes to its end when they do not any longer; `at_once`: then it is stopped, even when begun."""

    gone: Callable[[], Awaitable[None]]
    at_once: bool = False


class WorkPool:
    """The processes. Begins with `start`; `stop` ends whatever is left."""

    def __init__(self, limits: Limits) -> None:
        self.limits = limits
        self.progress = PageProgress()
        self._pool: ProcessPool | None = None
        self._told: tuple[Connection, Connection] | None = None
        self._there = 0
        self._background = asyncio.Semaphore(max(1, limits.processes - 1))

    def start(self) -> None:
        """Make the pool; a process is started when there is work for it."""
        self._told = reading, writing = CONTEXT.Pipe(duplex=False)
        asyncio.get_running_loop().add_reader(reading.fileno(), self.progress.heard, reading)
        self._pool = self._made(writing)

    def _made(self, writing: Connection) -> ProcessPool:
        from pebble import ProcessPool

        return ProcessPool(
            max_workers=self.limits.processes,
            max_tasks=FILES_A_PROCESS,
            initializer=_begun,
            initargs=(self.limits.memory, writing),
            context=CONTEXT,
        )

    def stop(self) -> None:
        """End it, and what it is at."""
        if self._pool is not None:
            self._pool.stop()  # type: ignore[no-untyped-call]
            self._pool.join()
            self._pool = None
        if self._told is not None:
            asyncio.get_running_loop().remove_reader(self._told[0].fileno())
            for end in self._told:
                end.close()
            self._told = None

    async def work(
        self, asker: Asker, task: Callable[TaskGiven, TaskFound], *arguments: TaskGiven.args, **named: TaskGiven.kwargs
    ) -> TaskFound | Unfinished:
        """What `task` finds, or why it did not."""
        if self._there >= self.limits.waiting:
            return Unfinished("busy")
        self._there += 1
        try:
            return await self._worked(asker, task, arguments, named)
        finally:
            self._there -= 1

    async def in_the_background(
        self, task: Callable[TaskGiven, TaskFound], *arguments: TaskGiven.args, **named: TaskGiven.kwargs
    ) -> TaskFound | Unfinished:
        """The same for what nobody waits for at a desk: one process is always left for what somebody does."""
        async with self._background:
            return await self._worked(None, task, arguments, named)

    async def _worked(
        self, asker: Asker | None, task: Callable[..., TaskFound], arguments: tuple[object, ...], named: dict[str, object]
    ) -> TaskFound | Unfinished:
        from pebble import ProcessExpired

        try:
            future = self._begin(task, arguments, named)
        except (OSError, RuntimeError):
            return Unfinished("memory")
        watched = asyncio.ensure_future(self._until_gone(asker, future)) if asker is not None else None
        try:
            return await asyncio.wrap_future(future)
        except (TakenBack, asyncio.CancelledError):
            current = asyncio.current_task()
            if current is not None and current.cancelling():
                future.cancel()  # type: ignore[no-untyped-call]
                raise
            return Unfinished("cancelled")
        except (TookTooLong, TimeoutError):
            return Unfinished("stopped")
        except (MemoryError, ProcessExpired):
            return Unfinished("memory")
        except Exception:
            # A fault of the program costs this answer, and no other.
            return Unfinished("failed")
        finally:
            if watched is not None:
                watched.cancel()

    def _begin(
        self, task: Callable[..., TaskFound], arguments: tuple[object, ...], named: dict[str, object]
    ) -> ProcessFuture[TaskFound]:
        """Hand a piece of work to the pool. Raises OSError or RuntimeError where no process can be started."""
        assert self._pool is not None
        try:
            return self._pool.schedule(task, args=arguments, kwargs=named, timeout=self.limits.seconds)
        except (OSError, RuntimeError):
            # Where the system once had no room for a process, the pool takes no more work, ever. A new one may find room.
            self._pool.stop()  # type: ignore[no-untyped-call]
            assert self._told is not None
            self._pool = self._made(self._told[1])
            return self._pool.schedule(task, args=arguments, kwargs=named, timeout=self.limits.seconds)

    async def _until_gone(self, asker: Asker, future: ProcessFuture[Any]) -> None:
        """Take the work back when nobody waits for it. What was begun is given a little time: a new process takes longer to be
        there than most work, and what it finds is kept."""
        await asker.gone()
        if future.running() and not asker.at_once:
            await asyncio.sleep(self.limits.unwanted)
        future.cancel()  # type: ignore[no-untyped-call]


def _begun(memory: int, told: Connection) -> None:
    """In the other process: no more memory than that, where the system knows such a bound; and pages are told as they are set."""
    from walewright.cli.collecting import spare_the_collector

    spare_the_collector()
    listening(told)
    try:
        import resource
    except ImportError:
        return
    _, most = resource.getrlimit(resource.RLIMIT_AS)
    if most != resource.RLIM_INFINITY:
        memory = min(memory, most)
    resource.setrlimit(resource.RLIMIT_AS, (memory, most))
