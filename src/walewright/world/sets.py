"""The files of a pattern take their places together: after a build that ended in any way, all are new or all are old.

No system moves several files at once, so the set has a moment of decision instead, which is one move:

1. All files are written into a folder `.walewright-new` beside their places, and brought to the disk.
2. That folder is renamed `.walewright-whole`. This is the decision: before it the set is the old one, after it the new one.
3. Each file is moved out of it to its place, over the old one; then the empty folder is removed.

A process that is killed leaves one of the two folders, and the next that writes into the same folder finds it first (`settle`):
a `.walewright-new` was not decided, and is removed; a `.walewright-whole` was, and step 3 is done to its end, which gives
the same however often it is begun. Whoever writes holds the folder's lock, so what is found there belongs to nobody that
still runs. Nothing is read from these folders but names and files, so nothing in them leads elsewhere.

A kill that cannot be waited for (SIGKILL, or the power) between the first and the last move of step 3 leaves some places new and
some old until the next build; the folder `.walewright-whole` says so. Requests to stop wait from step 1 to step 3.
"""

from __future__ import annotations

import errno
import os
import stat
from collections.abc import Mapping

from walewright.report.model import Diagnostic
from walewright.report.said import said
from walewright.world.locks import LOCK, Busy, alone_in
from walewright.world.names import is_source_name
from walewright.world.refusals import Hindrance, reason, refusal, unwritable

NEW = ".walewright-new"
WHOLE = ".walewright-whole"

ELSEWHERE = "elsewhere"


class _At(Exception):
    """What the system refused, and of which path."""

    def __init__(self, path: str, fault: OSError, decided: bool = False) -> None:
        super().__init__(path)
        self.path, self.fault, self.decided = path, fault, decided


def write_set(folder: str, files: Mapping[str, bytes]) -> Diagnostic | None:
    """Write `files` (name -> bytes) into `folder`, all or none, and bring them to the disk. The folder is made if it is missing.

    None when all are in place; else what kept them from it. Names are plain, and none is a source's."""
    assert all(name == os.path.basename(name) and not is_source_name(name) for name in files)
    made: list[str] = []
    try:
        made = _make_folders(folder)
        with alone_in(folder):
            _settle(folder)
            _stage(folder, files)
            _decide(folder)
            _move_all(folder, first=True)
    except Busy as busy:
        return unwritable(folder, busy, "wait-for-it")
    except _At as refused:
        _remove_folders(made)
        notes = ("partly-in-place",) if refused.decided else ()
        return unwritable(refused.path, refused.fault, ELSEWHERE, notes=notes)
    except OSError as fault:
        _remove_folders(made)
        return unwritable(folder, fault, ELSEWHERE)
    return None


def settle(folder: str) -> Diagnostic | None:
    """Complete or clear what a killed build left in `folder`. A folder without leftovers is not touched; one in which another
    build is writing is left to it."""
    try:
        if not any(os.path.lexists(os.path.join(folder, name)) for name in (NEW, WHOLE, LOCK)):
            return None
        with alone_in(folder, patience_s=0):
            _settle(folder)
    except Busy:
        return None
    except _At as refused:
        return _unsettled(refused.path, refused.fault)
    except OSError as fault:
        return _unsettled(folder, fault)
    return None


def stage(folder: str, name: str, data: bytes) -> str:
    """Write one file aside, into a new `.walewright-new` of `folder`, and bring it to the disk; returns its path there. The
    caller holds the folder's lock, and clears with `clear` whatever comes of it. Raises OSError."""
    aside = os.path.join(folder, NEW)
    os.makedirs(aside, exist_ok=True)
    path = os.path.join(aside, name)
    handle = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0), 0o666)
    try:
        rest = memoryview(data)
        while rest:
            rest = rest[os.write(handle, rest) :]
        os.fsync(handle)
    finally:
        os.close(handle)
    return path


def clear(folder: str) -> None:
    """Remove `.walewright-new` of `folder` with the files in it, if it is there. Raises OSError."""
    aside = os.path.join(folder, NEW)
    for name in _held(aside):
        os.unlink(os.path.join(aside, name))
    if os.path.lexists(aside):
        os.rmdir(aside)


def to_disk(folder: str) -> None:
    """Bring the names in `folder` to the disk, where the system does that for folders."""
    try:
        handle = os.open(folder, os.O_RDONLY)
    except OSError:
        # A folder that may be written to and not listed; its files are on the disk, its names follow when the system likes.
        return
    try:
        os.fsync(handle)
    except OSError as fault:
        if fault.errno not in (errno.EINVAL, errno.ENOTSUP, errno.EBADF):
            raise
    finally:
        os.close(handle)


def _settle(folder: str) -> None:
    """With the lock held."""
    whole = os.path.join(folder, WHOLE)
    if os.path.lexists(whole):
        _move_all(folder)
    try:
        clear(folder)
    except OSError as fault:
        raise _At(os.path.join(folder, NEW), fault) from fault


def _stage(folder: str, files: Mapping[str, bytes]) -> None:
    path = folder
    try:
        for name, data in files.items():
            path = os.path.join(folder, name)
            _refuse_folder(path)
            stage(folder, name, data)
        path = folder
        to_disk(os.path.join(folder, NEW))
    except OSError as fault:
        _clear_quietly(folder)
        raise _At(path, fault) from fault


def _decide(folder: str) -> None:
    try:
        os.rename(os.path.join(folder, NEW), os.path.join(folder, WHOLE))
        to_disk(folder)
    except OSError as fault:
        _clear_quietly(folder)
        raise _At(folder, fault) from fault


def _move_all(folder: str, first: bool = False) -> None:
    """Step 3. With `first`, for a set decided just now: when not even the first file can be moved, the decision is taken back."""
    whole = os.path.join(folder, WHOLE)
    path, moved = whole, 0
    try:
        for name in _held(whole):
            path = os.path.join(folder, name)
            if is_source_name(name):
                raise Hindrance(errno.EPERM, said("source-has-its-name"))
            _refuse_folder(path)
            os.replace(os.path.join(whole, name), path)
            moved += 1
        path = folder
        to_disk(folder)
        os.rmdir(whole)
    except OSError as fault:
        if first and moved == 0:
            os.rename(whole, os.path.join(folder, NEW))
            _clear_quietly(folder)
        raise _At(path, fault, decided=not first or moved > 0) from fault


def _held(aside: str) -> list[str]:
    """Names in a folder of ours; none where it is not there. Raises OSError for what is no such folder."""
    try:
        facts = os.lstat(aside)
    except FileNotFoundError:
        return []
    if not stat.S_ISDIR(facts.st_mode):
        raise Hindrance(errno.ENOTDIR, said("kept-for-builds"))
    names = sorted(os.listdir(aside))
    for name in names:
        if not stat.S_ISREG(os.lstat(os.path.join(aside, name)).st_mode):
            raise Hindrance(errno.EEXIST, said("holds-another", name=repr(name)))
    return names


def _refuse_folder(path: str) -> None:
    if os.path.isdir(path) and not os.path.islink(path):
        raise Hindrance(errno.EISDIR, said("folder-has-its-name"))


def _clear_quietly(folder: str) -> None:
    """After a refusal: what cannot be cleared now is cleared by the next build."""
    try:
        clear(folder)
    except OSError:
        return


def _make_folders(folder: str) -> list[str]:
    """Make what is missing of a path; the folders made, the innermost first."""
    missing: list[str] = []
    at = os.path.abspath(folder)
    while not os.path.lexists(at):
        missing.append(at)
        at = os.path.dirname(at)
    try:
        os.makedirs(folder, exist_ok=True)
    except FileExistsError as fault:
        raise Hindrance(errno.ENOTDIR, said("file-has-its-name")) from fault
    return missing


def _remove_folders(made: list[str]) -> None:
    """Folders made for a set that did not come; one that holds something by now stays."""
    for folder in made:
        try:
            os.rmdir(folder)
        except OSError:
            return


def _unsettled(path: str, fault: OSError) -> Diagnostic:
    return refusal(
        path, "output-unwritable/left-behind", "free-the-way", "delete-what-was-left", reason=reason(fault), new=NEW, whole=WHOLE
    )
