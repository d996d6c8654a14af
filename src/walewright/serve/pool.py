"""Work in other processes, with bounds: how long, how much memory, and how much of it may wait. What is hopeless is stopped, and
costs nobody else anything."""

from __future__ import annotations

import asyncio
import multiprocessing
from collections.abc import Callable
from concurrent.futures import TimeoutError as TookTooLong
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, ParamSpec, TypeVar

from walewright.cli.workers import FILES_A_PROCESS, cores
from walewright.serve.model import ResultState

if TYPE_CHECKING:
    from pebble import ProcessPool

TaskGiven = ParamSpec("TaskGiven")
TaskFound = TypeVar("TaskFound")


@dataclass(frozen=True, slots=True)
class Limits:
    """`seconds` for one piece of work; `memory` in bytes for a process, where the system can bound it; how many pieces of work may
    be `waiting`; `processes` at once, two at least, so that a cover does not keep a form waiting."""

    seconds: float = 150.0
    memory: int = 3 * 1024**3
    waiting: int = 24
    processes: int = field(default_factory=lambda: max(2, cores()))


@dataclass(frozen=True, slots=True)
class Unfinished:
    """Why work came to nothing."""

    why: ResultState


class WorkPool:
    """The processes. Begins with `start`; `stop` ends whatever is left."""

    def __init__(self, limits: Limits) -> None:
        self.limits = limits
        self._pool: ProcessPool | None = None
        self._there = 0
        self._background = asyncio.Semaphore(max(1, limits.processes - 1))

    def start(self) -> None:
        """Make the pool; a process is started when there is work for it."""
        from pebble import ProcessPool

        # A fresh interpreter a process: a fork would take along threads of libraries in whatever state they are.
        context = multiprocessing.get_context("spawn")
        self._pool = ProcessPool(
            max_workers=self.limits.processes,
            max_tasks=FILES_A_PROCESS,
            initializer=_bounded,
            initargs=(self.limits.memory,),
            context=context,
        )

    def stop(self) -> None:
        """End it, and what it is at."""
        if self._pool is not None:
            self._pool.stop()  # type: ignore[no-untyped-call]
            self._pool.join()
            self._pool = None

    async def work(
        self, task: Callable[TaskGiven, TaskFound], *arguments: TaskGiven.args, **named: TaskGiven.kwargs
    ) -> TaskFound | Unfinished:
        """What `task` finds, or why it did not."""
        if self._there >= self.limits.waiting:
            return Unfinished("busy")
        self._there += 1
        try:
            return await self._worked(task, arguments, named)
        finally:
            self._there -= 1

    async def in_the_background(
        self, task: Callable[TaskGiven, TaskFound], *arguments: TaskGiven.args, **named: TaskGiven.kwargs
    ) -> TaskFound | Unfinished:
        """The same for what nobody waits for at a desk: one process is always left for what somebody does."""
        async with self._background:
            return await self._worked(task, arguments, named)

    async def _worked(
        self, task: Callable[..., TaskFound], arguments: tuple[object, ...], named: dict[str, object]
    ) -> TaskFound | Unfinished:
        from pebble import ProcessExpired

        assert self._pool is not None
        future = self._pool.schedule(task, args=arguments, kwargs=named, timeout=self.limits.seconds)
        try:
            return await asyncio.wrap_future(future)
        except (TookTooLong, TimeoutError):
            return Unfinished("stopped")
        except (MemoryError, ProcessExpired):
            return Unfinished("memory")
        except Exception:
            # A fault of the program costs this answer, and no other.
            return Unfinished("failed")


def _bounded(memory: int) -> None:
    """In the other process: no more memory than that, where the system knows such a bound."""
    from walewright.cli.collecting import spare_the_collector

    spare_the_collector()
    try:
        import resource
    except ImportError:
        return
    _, most = resource.getrlimit(resource.RLIMIT_AS)
    if most != resource.RLIM_INFINITY:
        memory = min(memory, most)
    resource.setrlimit(resource.RLIMIT_AS, (memory, most))
