"""One writer at a time in a folder."""

from __future__ import annotations

import errno
import os
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager, suppress

from walewright.report.said import said
from walewright.world.refusals import Hindrance
from walewright.world.undisturbed import undisturbed

LOCK = ".walewright-lock"
PATIENCE_S = 30.0
"""A writer holds a folder for as long as some files take; one that holds it longer hangs."""

_PAUSE_S = 0.02


class Busy(Hindrance):
    """Another writer holds the folder."""

    def __init__(self) -> None:
        super().__init__(errno.EBUSY, said("another-build"))


@contextmanager
def alone_in(folder: str, patience_s: float = PATIENCE_S) -> Iterator[None]:
    """Hold `folder` against all other writers of this compiler, undisturbed by requests to stop: those wait until it is released
    again. Raises Busy after `patience_s`, OSError when the folder lets nobody in.

    The lock is the system's, on an open file, so it goes with the process that holds it, however that ends. Its file goes when
    it is released; a killed process leaves it, empty, to the next. Where a file system has no locks (some network folders),
    two writers are not kept apart."""
    until = time.monotonic() + patience_s
    while True:
        with undisturbed():
            handle = _held(folder)
            if handle is not None:
                try:
                    yield
                finally:
                    _release(folder, handle)
                return
        if time.monotonic() >= until:
            raise Busy
        time.sleep(_PAUSE_S)


def _release(folder: str, handle: int) -> None:
    # While it is still held: whoever waits for this file will see that it has gone, and make the next. A file that cannot be
    # removed is left to the next writer.
    with suppress(OSError):
        os.unlink(os.path.join(folder, LOCK))
    with suppress(OSError):
        os.close(handle)


def _held(folder: str) -> int | None:
    """The open lock file, locked; None when somebody else has it."""
    path = os.path.join(folder, LOCK)
    not_by_link = getattr(os, "O_NOFOLLOW", 0)
    try:
        handle = os.open(path, os.O_RDWR | os.O_CREAT | not_by_link, 0o666)
    except PermissionError:
        # Another user's; to lock a file it is enough to read it.
        handle = os.open(path, os.O_RDONLY | not_by_link)
    try:
        if _locked(handle) and _is_at(handle, path):
            return handle
    except BaseException:
        os.close(handle)
        raise
    os.close(handle)
    return None


def _locked(handle: int) -> bool:
    if sys.platform == "win32":
        return True
    import fcntl

    try:
        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except BlockingIOError:
        return False
    except OSError as fault:
        if fault.errno not in (errno.ENOLCK, errno.ENOTSUP, errno.EOPNOTSUPP, errno.ENOSYS):
            raise
    return True


def _is_at(handle: int, path: str) -> bool:
    """Whether the open file still is the one at `path`: its last holder may have removed it."""
    try:
        there = os.stat(path, follow_symlinks=False)
    except FileNotFoundError:
        return False
    return os.path.samestat(os.fstat(handle), there)
