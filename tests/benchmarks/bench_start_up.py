"""How long until the first character of a source is read. Run on demand: `python -m tests.benchmarks.bench_start_up [TREE ...]`.

Each TREE is a checkout (this one where none is named). `walewright check` runs in each by turns, in processes of their own, and
ends where it opens its source; printed are the median and the least milliseconds of processor time, from the start of the
process, and the median's share of the first tree's. A machine's load falls on all trees alike that way. First with the code
compiled to bytecode beforehand, as it is once installed; then with none kept, as in a checkout that is never written to.

Last, for the last tree, which packages that time went to: the milliseconds of their own modules, from `-X importtime`.
"""

from __future__ import annotations

import os
import re
import statistics
import subprocess
import sys
import tempfile
from collections import Counter
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
TIMES = 15
MOST = 12
"""Packages that are listed."""

UNTIL_READ = """
import os, sys, time
def ends(event, about):
    if event == "open" and str(about[0]).endswith("bollard.wale"):
        os.write(1, f"{time.process_time() * 1000:.1f}".encode())
        os._exit(0)
sys.addaudithook(ends)
from walewright.cli import main
main(("check", "patterns/bollard.wale"))
"""


def run(tree: Path, kept: str, *options: str) -> subprocess.CompletedProcess[str]:
    """One start in a tree; bytecode is `kept` in that folder, or nowhere where it is empty."""
    own = {"PYTHONPATH": str(tree / "src"), **({"PYTHONPYCACHEPREFIX": kept} if kept else {"PYTHONDONTWRITEBYTECODE": "1"})}
    around = {k: v for k, v in os.environ.items() if k not in ("PYTHONDONTWRITEBYTECODE", "PYTHONPYCACHEPREFIX")}
    command = [sys.executable, *options, "-c", UNTIL_READ]
    return subprocess.run(command, cwd=tree, env=around | own, capture_output=True, text=True, check=True)


def measured(trees: list[Path], kept: str) -> list[list[float]]:
    """Milliseconds of each start, by tree."""
    found: list[list[float]] = [[] for _ in trees]
    for turn in range(TIMES + 1):
        for times, tree in zip(found, trees, strict=True):
            took = float(run(tree, kept).stdout)
            if turn:
                # The first compiles.
                times.append(took)
    return found


def own_times(tree: Path, kept: str) -> Counter[str]:
    """Milliseconds of the modules of each package, and of each of ours."""
    found: Counter[str] = Counter()
    for own, name in re.findall(r"import time: *(\d+) \| *\d+ \| *(\S+)", run(tree, kept, "-X", "importtime").stderr):
        package = ".".join(name.split(".")[: 2 if name.startswith("walewright") else 1])
        found[package] += int(own)
    return found


def main() -> None:
    """Measure, and print."""
    trees = [Path(name).resolve() for name in sys.argv[1:]] or [ROOT]
    with tempfile.TemporaryDirectory() as folder:
        for words, kept in (("bytecode kept", folder), ("none kept", "")):
            found = measured(trees, kept)
            first = statistics.median(found[0])
            for tree, times in zip(trees, found, strict=True):
                middle = statistics.median(times)
                print(f"{words:14} {middle:7.0f} ms, least {min(times):7.0f} ms, {middle / first:5.2f}  {tree}", flush=True)
        print()
        for package, took in own_times(trees[-1], folder).most_common(MOST):
            print(f"{took / 1000:7.1f} ms  {package}")


if __name__ == "__main__":
    main()
