"""Requests to stop: whatever is unfinished is left, and nothing half done stays behind."""

from __future__ import annotations

import signal
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from types import FrameType

STOPPED = 128
"""What a shell adds to a signal's number for the exit code of what it ended."""

REQUESTS = tuple(getattr(signal, name) for name in ("SIGTERM", "SIGHUP") if hasattr(signal, name))


class Stopped(BaseException):
    """Somebody asked the program to stop. No `except Exception` holds it up, as with KeyboardInterrupt."""

    def __init__(self, number: int) -> None:
        super().__init__(number)
        self.number = number

    @property
    def exit_code(self) -> int:
        return STOPPED + self.number


def asked() -> BaseException:
    """What asked to stop, where a library has taken the exception for itself: `stoppable` gives a signal that came its usual
    meaning back."""
    came = next((number for number in REQUESTS if signal.getsignal(number) == signal.SIG_DFL), None)
    return KeyboardInterrupt() if came is None else Stopped(came)


@contextmanager
def stoppable() -> Iterator[None]:
    """Inside, SIGTERM and SIGHUP raise Stopped where the program is; a second one, should the first be lost in a library, ends the
    program as it does any other. What is ignored stays ignored."""
    if threading.current_thread() is not threading.main_thread():
        yield
        return

    def stop(number: int, _: FrameType | None) -> None:
        signal.signal(number, signal.SIG_DFL)
        raise Stopped(number)

    mine = {n: signal.getsignal(n) for n in REQUESTS if signal.getsignal(n) not in (signal.SIG_IGN, None)}
    try:
        for number in mine:
            signal.signal(number, stop)
        yield
    finally:
        for number, handler in mine.items():
            signal.signal(number, handler)
