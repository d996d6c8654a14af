"""Files of a folder that an option names: plain files within it, wherever links lead, up to a size."""

from __future__ import annotations

import os

from walewright.report.model import Diagnostic
from walewright.world.beside import path_beside
from walewright.world.pictures import NoPicture, read_plain
from walewright.world.reading import read_source

NoFile = NoPicture
"""Why a file of a folder cannot be had."""

_ANY = "theme"
"""A name in the folder: files are looked for beside it."""


def is_folder(path: str) -> bool:
    """Whether a path is that of a folder; nothing is opened for it."""
    try:
        return os.path.isdir(path)
    except ValueError:
        return False


def bytes_within(folder: str, name: str, most: int) -> tuple[bytes, NoFile | None]:
    """The bytes of the file `name` of a folder, at most so many; or why they cannot be read."""
    return read_plain(os.path.join(folder, _ANY), name, most)


def text_within(folder: str, name: str) -> tuple[str | None, NoFile | None, Diagnostic | None]:
    """The text of the file `name` of a folder; why it is not there or not within the folder; or what is wrong with it, reported for
    the path `folder`/`name`."""
    shown = os.path.join(folder, name)
    try:
        path = path_beside(os.path.join(folder, _ANY), name)
        if path is None:
            return None, "outside", None
        if not os.path.lexists(path):
            return None, "missing", None
    except (OSError, ValueError):
        return None, "refused", None
    text, fault = read_source(shown)
    return text, None, fault
