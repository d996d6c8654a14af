"""A stretch of work that a request to stop does not cut in two."""

from __future__ import annotations

import signal
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from types import FrameType

STOPPING = tuple(getattr(signal, name) for name in ("SIGTERM", "SIGINT", "SIGHUP") if hasattr(signal, name))


@contextmanager
def undisturbed() -> Iterator[None]:
    """While inside, requests to stop (SIGTERM, SIGINT, SIGHUP) wait; on leaving, the first of them is made again.

    Only the main thread of a program may do so; in others it does nothing, and requests reach the main thread only."""
    if threading.current_thread() is not threading.main_thread():
        yield
        return
    asked: list[int] = []

    def wait(number: int, _: FrameType | None) -> None:
        asked.append(number)

    # What is ignored stays ignored, and what was set by no Python code cannot be set again by it.
    before = {number: signal.getsignal(number) for number in STOPPING}
    mine = [number for number, handler in before.items() if handler not in (signal.SIG_IGN, None)]
    try:
        for number in mine:
            signal.signal(number, wait)
        yield
    finally:
        for number in mine:
            signal.signal(number, before[number])
        if asked:
            signal.raise_signal(asked[0])
