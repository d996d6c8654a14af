"""One fault tried: the tests nearest to it run over a copy of the checkout, those first that pass through the faulty line."""

from __future__ import annotations

import importlib
import importlib.util
import os
import resource
import shutil
import signal
import subprocess
import sys
import time
from collections.abc import Iterator, Sequence
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path
from typing import NoReturn

import pytest

from tests.benchmarks.faults import Fault
from tests.benchmarks.passed_through import WRITTEN_TO, Notes

HERE = Path(__file__).resolve().parent
ROOT = HERE.parents[1]
CODE = Path("src/walewright")

LOADED = ("hypothesis", "syrupy", "xdist", "pint", "lark", "highspy", "numpy", "jinja2", "rich", "click", "weasyprint")
"""What tests of nearly all folders need and no fault is made in: loaded once, before anything is tried."""

THROUGH_S, OTHERS_S = 40.0, 15.0
"""Tests are chosen, quickest first, until they took about so much of the processor when their lines were noted:
those that pass through the line, and the others of the folder."""

PATIENCE_S, PATIENCE = 30.0, 3.0
"""What a run may take of the processor: this, and so many times what its tests took when their lines were noted."""

MEMORY_B = 6 << 30
NO_SUCH_TEST = 4


@dataclass(frozen=True, slots=True)
class Tried:
    outcome: str
    """caught, hung (caught by its time or memory), survived, or not run."""
    tests: int
    by: str = ""


class Bench:
    """A copy of the checkout in which faults are made one at a time, and what is noted of its tests."""

    def __init__(self, work: Path) -> None:
        self.work = work
        self.copy = work / "copy"
        self._noted: dict[str, Notes] = {}
        for name in LOADED:
            importlib.import_module(name)
        work.mkdir(parents=True, exist_ok=True)
        shutil.rmtree(self.copy, ignore_errors=True)
        listed = subprocess.run(
            ["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"], cwd=ROOT, check=True, capture_output=True
        )
        for name in filter(None, listed.stdout.decode().split("\0")):
            if (ROOT / name).is_file():
                (self.copy / name).parent.mkdir(parents=True, exist_ok=True)
                shutil.copy2(ROOT / name, self.copy / name)

    def noted(self, folder: str, modules: Sequence[Path]) -> Notes:
        """What the tests of a folder do. Files of tests that are new, or were noted of another state of the modules, run once."""
        if folder not in self._noted:
            self._noted[folder] = Notes.kept(self.work, folder)
            stale = self._noted[folder].stale(self.copy, modules)
            if stale:
                began = time.monotonic()
                data, times = (self.work / f"{folder}-{time.time_ns()}.{end}" for end in ("lines", "json"))
                command = [sys.executable, "-m", "coverage", "run", f"--data-file={data}", f"--source={self.copy / CODE}"]
                command += ["-m", "pytest", "-p", "no:cacheprovider", "-p", "tests.benchmarks.passed_through", *stale]
                environment = self.environment() | {WRITTEN_TO: str(times)}
                subprocess.run(command, cwd=self.copy, env=environment, stdout=subprocess.DEVNULL, check=False)
                self._noted[folder].add(data, times, stale, self.copy)
                print(f"{folder}: lines of {len(stale)} files of tests noted in {time.monotonic() - began:.0f} s", flush=True)
        return self._noted[folder]

    def environment(self) -> dict[str, str]:
        others = [str(Path(p).resolve()) for p in os.environ.get("PYTHONPATH", "").split(os.pathsep) if p]
        return os.environ | {"PYTHONPATH": os.pathsep.join([str(self.copy / "src"), str(self.copy), *others])}

    def tried(self, module: Path, fault: Fault, noted: Notes) -> Tried:
        """Whether the tests of a folder catch a fault: those that pass through it, then the others of the folder, since what
        one test's fixture made is looked at by others."""
        passing = noted.through(module, fault.lines)
        if not passing:
            return Tried("not run", 0)
        if passing == {""}:
            # What is made when the module is loaded is used wherever the module is.
            passing = noted.through(module, range(1, 100_000))
        seconds = noted.seconds
        first = quickest(passing - {""}, seconds, THROUGH_S)
        beside = {t.partition("::")[0] for t in passing}
        others = quickest({t for t in seconds if t.partition("::")[0] in beside} - set(first), seconds, OTHERS_S)
        others += quickest(set(seconds) - {*first, *others}, seconds, OTHERS_S - sum(seconds[t] for t in others))
        with self.faulty(module, fault):
            for tests in filter(None, (first, others)):
                found = self.run(tests, PATIENCE_S + PATIENCE * sum(seconds[t] for t in tests))
                if found.outcome != "survived":
                    return found
        return Tried("survived", len(first) + len(others))

    @contextmanager
    def faulty(self, module: Path, fault: Fault) -> Iterator[None]:
        path = self.copy / module
        whole, facts = path.read_bytes(), path.stat()
        compiled = Path(importlib.util.cache_from_source(str(path)))
        compiled.unlink(missing_ok=True)
        path.write_text(fault.made_in(whole.decode()), encoding="utf-8")
        try:
            yield
        finally:
            # A compiled module is told from an older one by size and time, which can be the same.
            compiled.unlink(missing_ok=True)
            path.write_bytes(whole)
            os.utime(path, ns=(facts.st_atime_ns, facts.st_mtime_ns))

    def run(self, tests: Sequence[str], limit_s: float) -> Tried:
        code, said = self.pytest(tests, limit_s)
        if code == NO_SUCH_TEST and "not found:" in said:
            # A fault can change which cases a test has; that alone is not caught.
            code, said = self.pytest(list(dict.fromkeys(t.partition("::")[0] for t in tests)), 2 * limit_s)
        by = next((line for line in said.splitlines() if line.startswith(("FAILED", "ERROR"))), "")
        if code == 0:
            return Tried("survived", len(tests))
        return Tried("hung" if code is None else "caught", len(tests), by[:200])

    def pytest(self, tests: Sequence[str], limit_s: float) -> tuple[int | None, str]:
        """The exit code, None when it was ended, and what was printed. In a process begun where the libraries are loaded."""
        listed, printed = self.work / "tests.txt", self.work / "printed.txt"
        listed.write_text("\n".join(tests), encoding="utf-8")
        child = os.fork()
        if not child:
            self.be_pytest(["-x", "-q", "--tb=no", "-p", "no:cacheprovider", f"@{listed}"], printed, limit_s)
        until = time.monotonic() + 8 * limit_s
        while (done := os.waitpid(child, os.WNOHANG))[0] == 0:
            if time.monotonic() > until:
                with suppress(ProcessLookupError):
                    os.killpg(child, signal.SIGKILL)
                done = os.waitpid(child, 0)
                break
            time.sleep(0.05)
        code = os.waitstatus_to_exitcode(done[1])
        return (None if code < 0 else code), printed.read_text(encoding="utf-8", errors="replace")

    def be_pytest(self, arguments: list[str], printed: Path, limit_s: float) -> NoReturn:
        code = 99
        try:
            os.setsid()
            resource.setrlimit(resource.RLIMIT_CPU, (int(limit_s) + 1, int(limit_s) + 5))
            resource.setrlimit(resource.RLIMIT_AS, (MEMORY_B, MEMORY_B))
            out = os.open(printed, os.O_WRONLY | os.O_CREAT | os.O_TRUNC)
            os.dup2(out, 1)
            os.dup2(out, 2)
            os.chdir(self.copy)
            os.environ.update(self.environment())
            # The tests are those of the copy, though this module is one of the checkout's.
            for name in [name for name in sys.modules if name.partition(".")[0] == "tests"]:
                del sys.modules[name]
            sys.path[:] = [str(self.copy / "src"), str(self.copy), *(p for p in sys.path if p not in ("", str(ROOT)))]
            code = int(pytest.main(arguments))
            sys.stdout.flush()
        finally:
            os._exit(code)


def quickest(tests: set[str], seconds: dict[str, float], most_s: float) -> list[str]:
    """As many of the tests as take no longer together; if there is any time for them, at least one."""
    chosen: list[str] = []
    left = most_s
    for test in sorted(tests, key=lambda t: (seconds[t], t)):
        if left <= 0:
            break
        left -= seconds[test]
        chosen.append(test)
    return chosen
