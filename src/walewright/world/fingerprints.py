"""What files hold, as fingerprints (SHA-256, FIPS 180-4), and which sources lie in a folder."""

from __future__ import annotations

import hashlib
import os
import stat
from collections.abc import Iterable, Iterator

from walewright.world.names import is_source_name
from walewright.world.shipped import package_path, shipped_names, shipped_text

MISSING = "missing"
"""What stands for the fingerprint of a file that is not there, or cannot be read."""

MOST_SOURCES = 5000
"""Sources that are looked for below a folder; a publisher has fewer."""

_BLOCK = 1 << 20


def fingerprint(data: bytes) -> str:
    """Of some bytes."""
    return hashlib.sha256(data).hexdigest()


def file_fingerprint(path: str) -> str:
    """Of what a plain file holds."""
    try:
        handle = os.open(path, os.O_RDONLY | getattr(os, "O_BINARY", 0) | getattr(os, "O_NONBLOCK", 0))
    except (OSError, ValueError):
        return MISSING
    try:
        if not stat.S_ISREG(os.fstat(handle).st_mode):
            return MISSING
        found = hashlib.sha256()
        while part := os.read(handle, _BLOCK):
            found.update(part)
        return found.hexdigest()
    except OSError:
        return MISSING
    finally:
        os.close(handle)


def shipped_fingerprint(relative: str) -> str:
    """Of a shipped file of the patterns, such as "tables/women.csv"."""
    try:
        return fingerprint(shipped_text("patterns", relative).encode())
    except OSError:
        return MISSING


def names_fingerprint(folders: Iterable[str]) -> str:
    """Of the names of all that is shipped in folders of the patterns."""
    return fingerprint("\n".join(name for folder in folders for name in (folder, *shipped_names("patterns", folder))).encode())


def program_fingerprint() -> str:
    """Of the compiler itself: its code, its templates and style sheets, and its grammars."""
    found = hashlib.sha256()
    package = str(package_path("."))
    for path in _program(package):
        found.update(os.path.relpath(path, package).encode())
        with open(path, "rb") as file:
            found.update(file.read())
    for name in shipped_names("grammar"):
        found.update(name.encode() + shipped_text("grammar", name).encode())
    return found.hexdigest()


def _program(package: str) -> Iterator[str]:
    for folder, folders, files in os.walk(package):
        folders[:] = sorted(name for name in folders if not name.startswith(("_", ".")))
        yield from (os.path.join(folder, name) for name in sorted(files) if not name.startswith(".") and not name.endswith(".pyc"))


def sources_below(folder: str) -> tuple[str, ...]:
    """All sources in a folder and below, by their paths from there, in the order of the alphabet. Links to folders are not
    followed, and hidden folders not looked into."""
    found: list[str] = []
    for within, folders, files in os.walk(folder or os.curdir):
        folders[:] = sorted(name for name in folders if not name.startswith("."))
        for name in files:
            if is_source_name(name) and not name.startswith("."):
                found.append(os.path.relpath(os.path.join(within, name), folder or os.curdir).replace(os.sep, "/"))
        if len(found) > MOST_SOURCES:
            break
    return tuple(sorted(found)[:MOST_SOURCES])
