"""Pictures come in: plain files beside the source or below, up to a size. Nothing is fetched from anywhere."""

from __future__ import annotations

import os
import stat
from typing import Literal

from walewright.world.beside import path_beside
from walewright.world.reading import read_bytes

LARGEST_PICTURE = 40 * 1024 * 1024
"""Bytes. What a camera takes is below."""

NoPicture = Literal["outside", "missing", "not-file", "too-large", "refused"]
"""Why a picture cannot be had."""


def read_picture(source: str, name: str) -> tuple[bytes, NoPicture | None]:
    """The bytes of the picture that the source in the file `source` names, or why they cannot be read. A link that leads out of the
    source's folder is outside, as a name that does so is."""
    return read_plain(source, name, LARGEST_PICTURE)


def read_plain(source: str, name: str, most: int) -> tuple[bytes, NoPicture | None]:
    """The same of any plain file beside `source` or below, of at most so many bytes."""
    try:
        path = path_beside(source, name)
        if path is None:
            return b"", "outside"
        facts = os.stat(path)
        if not stat.S_ISREG(facts.st_mode):
            return b"", "not-file"
        data, _, _ = read_bytes(path, most)
    except FileNotFoundError:
        return b"", "missing"
    except (OSError, ValueError):
        return b"", "refused"
    return (data, None) if len(data) <= most else (b"", "too-large")
