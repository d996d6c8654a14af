"""The shipped garments, each compiled once for all tests of a run, whichever worker they run in."""

from __future__ import annotations

import os
import pickle
from functools import cache
from pathlib import Path

from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.design.model import Design
from walewright.pipeline import Outcome, compile
from walewright.world import shipped_names, shipped_text

SHIPPED = shipped()
GARMENTS = tuple(name.removesuffix(".wale") for name in shipped_names("patterns", suffix=".wale"))
_FOLDERS: list[Path] = []
"""The run's own temporary folder, when there is one. What lies there was written by this run, so it may be unpickled."""


def keep_in(folder: Path) -> None:
    """From now on outcomes are shared through this folder."""
    _FOLDERS[:] = [folder]


def source(name: str) -> str:
    return shipped_text("patterns", f"{name}.wale")


@cache
def compiled(name: str) -> Outcome:
    """A garment in all its sizes."""
    kept = [folder / f"{name}.outcome" for folder in _FOLDERS]
    for path in kept:
        if path.is_file():
            found: Outcome = pickle.loads(path.read_bytes())
            return found
    outcome = compile(source(name), f"{name}.wale", SHIPPED, Changes())
    for path in kept:
        # Another worker may read at any moment: the file is whole as soon as it has its name.
        whole = path.with_suffix(f".{os.getpid()}")
        whole.write_bytes(pickle.dumps(outcome))
        whole.replace(path)
    return outcome


def design_of(name: str) -> Design:
    design = compiled(name).design
    assert design is not None
    return design
