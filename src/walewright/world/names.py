"""Which names mean one file: for the system at hand, and for any other that the files may be taken to.

A file has more names than one: by links, by other ways to write its path, and on many systems in capitals or small letters
or with accents composed or apart.
"""

from __future__ import annotations

import os
import unicodedata
from collections.abc import Iterable, Mapping

SOURCE_SUFFIX = ".wale"
"""What every source's name ends in, and nothing that is written."""

Identity = tuple[int, int]
"""A file's device and number there: the same for all names of a file."""


def is_source_name(path: str) -> bool:
    """Whether a path names a source: it ends in .wale, in capitals or not, and has something before that."""
    name = os.path.basename(path)
    return len(name) > len(SOURCE_SUFFIX) and name.casefold().endswith(SOURCE_SUFFIX)


def alike(name: str) -> str:
    """A key that two names share when some file system takes them for one: those that do not tell capitals from small letters,
    or letters with accents from letters and accents (Unicode, canonical caseless matching, definition D145)."""
    apart = unicodedata.normalize("NFD", name)
    return unicodedata.normalize("NFD", unicodedata.normalize("NFD", apart).casefold())


def sources_known(files: Iterable[str], folders: Iterable[str]) -> Mapping[Identity, str]:
    """The identity of each of the sources `files`, and of every source right inside `folders`, to its path. What cannot be
    looked at is left out: who reads it will tell of it."""
    paths = list(files)
    for folder in dict.fromkeys(folders):
        try:
            paths += [os.path.join(folder, name) for name in sorted(os.listdir(folder or ".")) if is_source_name(name)]
        except (OSError, ValueError):
            continue
    found: dict[Identity, str] = {}
    for path in paths:
        identity = _identity(path)
        if identity is not None:
            found.setdefault(identity, path)
    return found


def source_behind(path: str, known: Mapping[Identity, str]) -> str | None:
    """The source that would be lost if `path` were written: one of `known` under another name, or the file ending in .wale that
    the path leads to by links. None when there is none."""
    identity = _identity(path)
    if identity is not None and identity in known:
        return known[identity]
    try:
        end = os.path.realpath(path)
    except (OSError, ValueError):
        return None
    return end if is_source_name(end) else None


def _identity(path: str) -> Identity | None:
    try:
        facts = os.stat(path)
    except (OSError, ValueError):
        return None
    return facts.st_dev, facts.st_ino
