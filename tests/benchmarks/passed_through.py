"""Which tests pass through which lines, and how long they take: what `single_faults.py` chooses tests by.

Given to pytest as a plugin (`-p passed_through`), under `coverage`, it notes both. A fixture, or a result kept for all tests, is
made by the first test that asks for it and is noted as that test's.
"""

from __future__ import annotations

import hashlib
import json
import os
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import asdict, dataclass, field
from pathlib import Path

import pytest
from coverage import Coverage, CoverageData

WRITTEN_TO = "TIMES_OF_TESTS"
"""The environment variable that names the file to write times to."""

FILE_S = 10.0
"""Of a file of tests so much of the processor's time is spent; those that come later are not noted, and so not chosen."""

_times: dict[str, float] = {}
_failed: set[str] = set()
_left_out: set[str] = set()


def _used() -> float:
    """Seconds of the processor, here and in processes that were waited for: how busy the machine is does not matter."""
    return sum(os.times()[:4])


@pytest.hookimpl(hookwrapper=True)
def pytest_runtest_protocol(item: pytest.Item) -> Iterator[None]:
    watching = Coverage.current()
    assert watching is not None, "run by coverage"
    began = _used()
    watching.switch_context(item.nodeid)
    yield
    watching.switch_context("")
    _times[item.nodeid] = _used() - began


@pytest.hookimpl(tryfirst=True)
def pytest_runtest_setup(item: pytest.Item) -> None:
    file = item.nodeid.partition("::")[0]
    if sum(taken for test, taken in _times.items() if test.startswith(f"{file}::")) > FILE_S:
        _left_out.add(item.nodeid)
        pytest.skip("its file has had its time")


def pytest_runtest_logreport(report: pytest.TestReport) -> None:
    if report.failed:
        _failed.add(report.nodeid)


def pytest_sessionfinish() -> None:
    if WRITTEN_TO in os.environ:
        told = {"seconds": {t: taken for t, taken in _times.items() if t not in _left_out}, "failed": sorted(_failed)}
        Path(os.environ[WRITTEN_TO]).write_text(json.dumps(told, ensure_ascii=False), encoding="utf-8")


@dataclass(frozen=True, slots=True)
class Run:
    """One run under `coverage` of some files of tests, each with the digest of what it ran over."""

    data: str
    root: str
    seconds: dict[str, float]
    files: dict[str, str]


@dataclass(slots=True)
class Notes:
    """What the tests of a folder are known to do, gathered from runs; of a file of tests the last one counts."""

    path: Path
    folder: str
    runs: list[Run]
    now: dict[str, str] = field(default_factory=dict)

    @classmethod
    def kept(cls, work: Path, folder: str) -> Notes:
        path = work / f"{folder}.noted.json"
        runs = [Run(**run) for run in json.loads(path.read_text(encoding="utf-8"))] if path.exists() else []
        return cls(path, folder, runs)

    def stale(self, root: Path, modules: Sequence[Path]) -> list[str]:
        """The files of tests that were not yet run over these modules, as they are."""
        inside = sorted(p for p in (root / "tests" / self.folder).rglob("*.py"))
        shared = _digest([*(root / m for m in modules), *(p for p in inside if not p.name.startswith("test_"))])
        tests = [p for p in inside if p.name.startswith("test_")]
        self.now = {str(p.relative_to(root)): shared + _digest([p]) for p in tests}
        return [file for file, digest in self.now.items() if not any(run.files.get(file) == digest for run in self.runs)]

    def add(self, data: Path, times: Path, files: Iterable[str], root: Path) -> None:
        told = json.loads(times.read_text(encoding="utf-8"))
        if told["failed"]:
            raise SystemExit(f"without any fault these fail: {told['failed'][:5]}")
        self.runs.append(Run(str(data), str(root), told["seconds"], {file: self.now[file] for file in files}))
        self.path.write_text(json.dumps([asdict(run) for run in self.runs], ensure_ascii=False))

    def owned(self) -> Iterator[tuple[Run, set[str]]]:
        """Each run with the tests that it is the last to have run as they are."""
        left = dict(self.now)
        for run in reversed(self.runs):
            files = {file for file, digest in run.files.items() if left.get(file) == digest}
            left = {file: digest for file, digest in left.items() if file not in files}
            yield run, {test for test in run.seconds if test.partition("::")[0] in files}

    @property
    def seconds(self) -> dict[str, float]:
        return {test: run.seconds[test] for run, tests in self.owned() for test in tests}

    def through(self, module: Path, lines: Sequence[int]) -> set[str]:
        """The tests that pass through any of the lines; "" stands for the loading of the module."""
        found: set[str] = set()
        for run, tests in self.owned():
            data = CoverageData(run.data)
            data.read()
            noted = data.contexts_by_lineno(str(Path(run.root) / module))
            found |= {test for line in lines for test in noted.get(line, ())} & {"", *tests}
        return found


def _digest(paths: Iterable[Path]) -> str:
    made = hashlib.sha256()
    for path in paths:
        made.update(path.name.encode() + b"\0" + path.read_bytes())
    return made.hexdigest()[:16]
