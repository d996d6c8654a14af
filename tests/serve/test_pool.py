"""The processes that work: where none can be started now, that is told, and later ones are."""

from __future__ import annotations

import asyncio
from typing import Any

import pytest
from pebble.pool import process

from walewright.serve.pool import Asker, Limits, Unfinished, WorkPool


async def _never() -> None:
    await asyncio.Event().wait()


ASKER = Asker(_never)


def test_a_system_without_room_for_a_process_is_no_end(monkeypatch: pytest.MonkeyPatch) -> None:
    """The system refuses to start processes for a while, and then does not."""
    honest, refused = process.launch_process, [0]

    def refusing(*arguments: Any, **named: Any) -> Any:
        refused[0] += 1
        if refused[0] <= 4:
            raise BlockingIOError(11, "Resource temporarily unavailable")
        return honest(*arguments, **named)

    monkeypatch.setattr(process, "launch_process", refusing)

    async def worked() -> list[object]:
        pool = WorkPool(Limits(processes=1))
        pool.start()
        try:
            return [await pool.work(ASKER, abs, -number) for number in (1, 2, 3, 4)]
        finally:
            pool.stop()

    found = asyncio.run(worked())
    assert found[0] == Unfinished("memory")
    assert found[-1] == 4
    assert all(one == Unfinished("memory") or one == at for at, one in enumerate(found, 1))


def test_work_is_done() -> None:
    async def worked() -> object:
        pool = WorkPool(Limits(processes=1))
        pool.start()
        try:
            return await pool.work(ASKER, abs, -5)
        finally:
            pool.stop()

    assert asyncio.run(worked()) == 5
