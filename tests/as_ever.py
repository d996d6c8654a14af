"""Whatever the tests of a folder have a stage make, kept: a test looks at one thing of what it makes, and this looks at the rest.

A folder's `conftest.py` says which functions of its stage are watched. Of each test that calls them a snapshot has how often, the
codes of what is refused, and a digest of everything that they gave. What is asked for before a test begins, as by a fixture of a
whole run, is not watched, nor is what is made for all tests at once (`shipped_once.kept`): it would belong to whichever test comes
first.

To see what is otherwise, run the tests before and after a change with a folder named by WRITTEN_WHOLE, which gets a file for each
test with all that is digested, and compare the folders.
"""

from __future__ import annotations

import hashlib
import os
import re
from collections import Counter
from collections.abc import Callable, Iterator, Mapping
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.kept import written
from tests.whole.shipped_once import is_made_for_all

WHOLE = "WRITTEN_WHOLE"
Picked = Callable[[Any], object]


def watched(monkeypatch: pytest.MonkeyPatch, module: ModuleType, functions: Mapping[str, Picked]) -> list[str]:
    """What the functions of a module give from now on, in words: of each what `functions` picks of it. They are watched where the
    module itself calls them by their names."""
    made: list[str] = []

    def watch(name: str, pick: Picked) -> None:
        called = getattr(module, name)

        def noted(*values: Any, **more: Any) -> Any:
            given = called(*values, **more)
            given = tuple(given) if isinstance(given, Iterator) else given
            if not is_made_for_all():
                made.append(f"{name}: {written(pick(given), places=True)}")
            return given

        monkeypatch.setattr(module, name, noted)

    for name, pick in functions.items():
        watch(name, pick)
    return made


def kept_as_ever(made: list[str], request: pytest.FixtureRequest, snapshot: SnapshotAssertion) -> None:
    """A test's results are those of the snapshot; not of a file whose tests share what they look at (`NOT_WATCHED = True`), so that
    the first of them makes it and the others nothing."""
    # Which examples a property test draws is its library's affair.
    drawn = getattr(request.function, "is_hypothesis_test", False)
    if not made or drawn or getattr(request.module, "NOT_WATCHED", False):
        return
    folder = os.environ.get(WHOLE)
    if folder:
        name = re.sub(r"[^-\w.]+", "_", request.node.nodeid)
        path = Path(folder) / f"{name[-200:]}.txt"
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text("\n".join(made) + "\n", encoding="utf-8")
    times = Counter(one.partition(":")[0] for one in made)
    codes = Counter(code for one in made for code in re.findall(r"Diagnostic\(code='([-\w]+)'", one))
    counted = ", ".join(f"{many} {what}" for what, many in (*times.items(), *sorted(codes.items())))
    assert f"{counted}: {digest(made)}" == snapshot(name="made")


def digest(lines: list[str]) -> str:
    return hashlib.blake2s("\n".join(lines).encode(), digest_size=5).hexdigest()
