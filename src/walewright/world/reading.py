"""Sources come in: plain files only, up to a size, with what a formatter has to keep of them."""

from __future__ import annotations

import os
import stat

from walewright.record import record
from walewright.report.model import Diagnostic
from walewright.report.said import Amount
from walewright.world.names import SOURCE_SUFFIX, is_source_name
from walewright.world.refusals import reason, refusal

LARGEST_SOURCE = 2 * 1024 * 1024
"""Bytes. A garment is some kilobytes; a file beyond this is something else, given by mistake."""

MARK = b"\xef\xbb\xbf"
"""A byte order mark in UTF-8, as some editors leave it. It says nothing."""

_BYTES = getattr(os, "O_BINARY", 0)
"""Where a system changes line ends unless it is told not to."""

KINDS = (
    (stat.S_ISFIFO, "pipe"),
    (stat.S_ISSOCK, "socket"),
    (stat.S_ISCHR, "device"),
    (stat.S_ISBLK, "device"),
)


@record
class Held:
    """A source as it was found. `text` has "\\n" for line ends and no mark; `line_end` is the one that all lines of the file
    have, None where they differ; `marked` says if it has a byte order mark; `data` are the bytes of the file, `facts` those of the
    system when it was read."""

    path: str
    text: str
    line_end: str | None
    marked: bool
    data: bytes
    facts: os.stat_result

    def bytes_of(self, text: str) -> bytes:
        """Another text as this file would hold it: with its line ends ("\\n" where they differ), and its mark."""
        return (MARK if self.marked else b"") + text.replace("\n", self.line_end or "\n").encode()


def read_source(path: str) -> tuple[str | None, Diagnostic | None]:
    """Text of the author's file, or the diagnostic that says why there is none. Line ends come back as "\\n"."""
    held, fault = read_held(path)
    return (None if held is None else held.text), fault


def read_held(path: str) -> tuple[Held | None, Diagnostic | None]:
    """The author's file, or the diagnostic that says why it cannot be had. Nothing but a plain file is opened, for opening
    already does something to a pipe or a device; no more than the largest source is read, whatever the file says of itself."""
    try:
        fault = _unfit(path, os.stat(path))
        if fault is not None:
            return None, fault
        data, before, after = read_bytes(path, LARGEST_SOURCE)
    except FileNotFoundError:
        return None, refusal(path, "source-missing", "check-the-name")
    except (OSError, ValueError) as failed:
        return None, refusal(path, "source-unreadable/refused", "check-permissions", reason=reason(failed))
    fault = _unfit(path, before)
    if fault is None and len(data) > LARGEST_SOURCE:
        fault = _too_large(path, max(len(data), after.st_size))
    if fault is None and (len(data) != before.st_size or not unchanged(before, after)):
        fault = refusal(path, "source-unreadable/changed-while-read", "run-again")
    if fault is not None:
        return None, fault
    return _understood(path, data, before)


def unchanged(before: os.stat_result, after: os.stat_result) -> bool:
    """Whether two looks at a path saw one file with one content."""
    return _state(before) == _state(after)


def _state(facts: os.stat_result) -> tuple[int, ...]:
    return facts.st_dev, facts.st_ino, facts.st_size, facts.st_mtime_ns


def _suffix(path: str) -> str:
    """What a file's name ends in that can be named instead: another source, or another file of the kind that was named."""
    own = os.path.splitext(path)[1]
    return own if own and not is_source_name(path) else SOURCE_SUFFIX


def _unfit(path: str, facts: os.stat_result) -> Diagnostic | None:
    """Why a file is not to be read, by what the system says of it."""
    if stat.S_ISDIR(facts.st_mode):
        return refusal(path, "source-is-folder", "name-a-file", suffix=_suffix(path))
    if not stat.S_ISREG(facts.st_mode):
        kind = next((name for test, name in KINDS if test(facts.st_mode)), "other")
        return refusal(path, f"source-not-file/{kind}", "save-plain")
    return _too_large(path, facts.st_size) if facts.st_size > LARGEST_SOURCE else None


def _too_large(path: str, size: int) -> Diagnostic:
    most = Amount(LARGEST_SOURCE / 1e6, "MB")
    return refusal(path, "source-too-large", "right-file", size=Amount(size / 1e6, "MB"), most=most)


def read_bytes(path: str, most: int) -> tuple[bytes, os.stat_result, os.stat_result]:
    """Up to a byte more than the `most`, and what the system said of the open file before and after."""
    # Not blocking, in case that a pipe has taken the file's place since it was looked at.
    handle = os.open(path, os.O_RDONLY | _BYTES | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_NOCTTY", 0))
    try:
        before = os.fstat(handle)
        if not stat.S_ISREG(before.st_mode):
            return b"", before, before
        parts, room = [], most + 1
        while room > 0 and (part := os.read(handle, room)):
            parts.append(part)
            room -= len(part)
        return b"".join(parts), before, os.fstat(handle)
    finally:
        os.close(handle)


def _understood(path: str, data: bytes, facts: os.stat_result) -> tuple[Held | None, Diagnostic | None]:
    if b"\0" in data:
        return None, refusal(path, "source-not-text/binary", "name-a-text", suffix=_suffix(path))
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as failed:
        return None, refusal(path, "source-not-text/encoding", "save-as-utf-8", byte=failed.start + 1)
    both = text.count("\r\n")
    ends = {"\r\n": both, "\r": text.count("\r") - both, "\n": text.count("\n") - both}
    used = [end for end, times in ends.items() if times]
    plain = text.replace("\r\n", "\n").replace("\r", "\n")
    line_end = used[0] if len(used) == 1 else "\n" if not used else None
    return Held(path, plain, line_end, data.startswith(MARK), data, facts), None
