"""System libraries that a Python package loads by name."""

from __future__ import annotations

import ctypes
import ctypes.util
import sys
from collections.abc import Iterator, Sequence
from contextlib import contextmanager


@contextmanager
def loaded_by_name(names: Sequence[str]) -> Iterator[None]:
    """While a package is imported that tries several names for each library: only those are tried that the system's loader knows
    as they are. For each other name, Python would run the cache's lister, the compiler and the linker, one after the other.

    Only where the loader has all of the libraries `names` ("libpango-1.0.so.0"); elsewhere nothing changes."""
    if not (sys.platform == "linux" and all(_known(name) for name in names)):
        yield
        return
    search = ctypes.util.find_library
    ctypes.util.find_library = _not_searched
    try:
        yield
    finally:
        ctypes.util.find_library = search


def _known(name: str) -> bool:
    try:
        ctypes.CDLL(name)
    except OSError:
        return False
    return True


def _not_searched(name: str) -> None:
    return None
