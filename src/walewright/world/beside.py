"""Files that a source names: in its own folder or below, wherever links lead."""

from __future__ import annotations

import os
from pathlib import PurePosixPath
from typing import Literal

from walewright.report.model import Diagnostic
from walewright.world.names import is_source_name
from walewright.world.reading import read_source

NoText = Literal["", "outside", "not-source", "missing", "unreadable", "too-many"]
"""Why there is no text of a file that a source names; empty where there is."""


def path_beside(source: str, name: str) -> str | None:
    """The path of what the source in the file `source` names; None where that is outside of the source's folder. Raises OSError
    or ValueError as the system does."""
    folder = os.path.realpath(os.path.dirname(source) or os.curdir)
    parts = PurePosixPath(name).parts
    if not parts or ".." in parts or PurePosixPath(name).is_absolute() or any(c in name for c in "\\:\0"):
        return None
    path = os.path.realpath(os.path.join(folder, *parts))
    return path if os.path.commonpath((folder, path)) == folder else None


def read_beside(source: str, name: str) -> tuple[str, NoText, Diagnostic | None]:
    """The text of another source that the one in the file `source` names; or why it cannot be read, as far as that is known."""
    try:
        path = path_beside(source, name)
    except (OSError, ValueError):
        return "", "unreadable", None
    if path is None:
        return "", "outside", None
    if not is_source_name(path) or not is_source_name(name):
        return "", "not-source", None
    if not os.path.exists(path):
        return "", "missing", None
    text, fault = read_source(path)
    return ("", "unreadable", fault) if text is None else (text, "", None)
