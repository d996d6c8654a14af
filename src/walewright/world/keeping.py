"""What a command keeps for its next run: small files in a folder of their own, read up to a size; and files it takes away again."""

from __future__ import annotations

import os
from collections.abc import Iterable, Mapping
from contextlib import suppress

from walewright.world.reading import read_bytes


def kept(folder: str, most: int, suffix: str) -> Mapping[str, bytes]:
    """The files of a folder that end in `suffix`, by their names. One that is larger than `most`, or cannot be read,
    is left out."""
    found: dict[str, bytes] = {}
    try:
        names = sorted(os.listdir(folder))
    except OSError:
        return found
    for name in names:
        if name.endswith(suffix) and not name.startswith("."):
            with suppress(OSError, ValueError):
                data, _, _ = read_bytes(os.path.join(folder, name), most)
                if len(data) <= most:
                    found[name] = data
    return found


def small_file(path: str, most: int) -> bytes | None:
    """The bytes of a file of at most so many; None where there are none."""
    try:
        data, _, _ = read_bytes(path, most)
    except (OSError, ValueError):
        return None
    return data if len(data) <= most else None


def forget(folder: str, names: Iterable[str]) -> tuple[str, ...]:
    """Remove files of a folder; returns those that were there and are gone."""
    gone = []
    for name in names:
        assert name == os.path.basename(name)
        with suppress(OSError):
            os.unlink(os.path.join(folder, name))
            gone.append(name)
    return tuple(gone)
