"""Pictures come in: plain files beside the source or below, up to a size. Nothing is fetched from anywhere."""

from __future__ import annotations

import os
import stat
from pathlib import PurePosixPath
from typing import Literal

from walewright.world.reading import read_bytes

LARGEST_PICTURE = 40 * 1024 * 1024
"""Bytes. What a camera takes is below."""

NoPicture = Literal["outside", "missing", "not-file", "too-large", "refused"]
"""Why a picture cannot be had."""


def read_picture(source: str, name: str) -> tuple[bytes, NoPicture | None]:
    """The bytes of the picture that the source in the file `source` names, or why there are none. A link that leads out of the
    source's folder is outside, as a name that does so is."""
    folder = os.path.realpath(os.path.dirname(source) or os.curdir)
    parts = PurePosixPath(name).parts
    if not parts or ".." in parts or PurePosixPath(name).is_absolute() or any(c in name for c in "\\:\0"):
        return b"", "outside"
    try:
        path = os.path.realpath(os.path.join(folder, *parts))
        if os.path.commonpath((folder, path)) != folder:
            return b"", "outside"
        facts = os.stat(path)
        if not stat.S_ISREG(facts.st_mode):
            return b"", "not-file"
        data, _, _ = read_bytes(path, LARGEST_PICTURE)
    except FileNotFoundError:
        return b"", "missing"
    except (OSError, ValueError):
        return b"", "refused"
    return (data, None) if len(data) <= LARGEST_PICTURE else (b"", "too-large")
