"""The shipped garments, each compiled once for all tests of a run, whichever worker they run in."""

from __future__ import annotations

import os
import pickle
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from functools import cache
from pathlib import Path
from typing import Any

from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.design.model import Design
from walewright.pipeline import Outcome, compile
from walewright.world import shipped_names, shipped_text

SHIPPED = shipped()
GARMENTS = tuple(name.removesuffix(".wale") for name in shipped_names("patterns", suffix=".wale"))
_FOLDERS: list[Path] = []
"""The run's own temporary folder, when there is one. What lies there was written by this run, so it may be unpickled."""

_FOR_ALL: list[bool] = []
"""An entry for each making under way whose result is all tests', and so no test's own."""


def is_made_for_all() -> bool:
    """Whether what is made now is made for every test of the run: which test asks for it first is chance."""
    return bool(_FOR_ALL)


@contextmanager
def made_for_all() -> Iterator[None]:
    _FOR_ALL.append(True)
    try:
        yield
    finally:
        _FOR_ALL.pop()


def keep_in(folder: Path) -> None:
    """From now on outcomes are shared through this folder."""
    _FOLDERS[:] = [folder]


def source(name: str) -> str:
    return shipped_text("patterns", f"{name}.wale")


def kept(name: str, make: Callable[[], Any]) -> Any:
    """What is made under a name, once in a run: another worker's, if there is one."""
    paths = [folder / name for folder in _FOLDERS]
    for path in paths:
        if path.is_file():
            return pickle.loads(path.read_bytes())
    with made_for_all():
        made = make()
    for path in paths:
        # Another worker may read at any moment: the file is whole as soon as it has its name.
        whole = path.with_name(f"{name}.{os.getpid()}")
        whole.write_bytes(pickle.dumps(made))
        whole.replace(path)
    return made


@cache
def compiled(name: str) -> Outcome:
    """A garment in all its sizes."""
    outcome: Outcome = kept(f"{name}.outcome", lambda: compile(source(name), f"{name}.wale", SHIPPED, Changes()))
    return outcome


def design_of(name: str) -> Design:
    design = compiled(name).design
    assert design is not None
    return design
