"""A large catalogue: what a source costs, and the largest process, by how many sources there are.

    nice -n 19 python -m tests.benchmarks.bench_many [JOBS] [COUNT ...]

Sources are garments drawn at random, twenty in all, each varied as often as is needed: so what a source costs in the middle is
the same in a catalogue of any size, and any growth is the program's. Text and plan are made of each, into a new folder; then the
catalogue is run again with nothing to do. Printed are seconds of processor time, children included, by the source, and the memory
of the largest process; the last line compares the largest catalogue with the smallest.
"""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
from dataclasses import dataclass
from pathlib import Path

from tests.whole.garments_at_random import drawn

ROOT = Path(__file__).resolve().parents[2]
GARMENTS = 20
CATALOGUE = """\
title = "Many"
date = 2026-03-01

[usual]
formats = ["text", "plan"]

[[garments]]
sources = ["*.wale"]
"""


@dataclass(frozen=True)
class Run:
    """Seconds of processor time, and MiB of the largest process."""

    processor: float
    memory: float


def run(catalogue: Path, into: Path, jobs: int) -> Run:
    """One run, in a process of its own, so that its memory is not that of an earlier one."""
    command = [sys.executable, "-m", "walewright", "publish", str(catalogue), "--into", str(into), "--jobs", str(jobs)]
    measured = (
        "import resource, subprocess, sys; code = subprocess.run(sys.argv[1:], stdout=subprocess.DEVNULL).returncode;"
        "used = resource.getrusage(resource.RUSAGE_CHILDREN); print(code, used.ru_utime + used.ru_stime, used.ru_maxrss)"
    )
    environment = {**os.environ, "PYTHONPATH": str(ROOT / "src")}
    done = subprocess.run(
        [sys.executable, "-c", measured, *command], env=environment, stdout=subprocess.PIPE, text=True, check=True
    )
    code, processor, kib = done.stdout.split()
    if code != "0":
        raise SystemExit(f"the run ended with {code}")
    return Run(float(processor), float(kib) / 1024)


def sources(folder: Path, count: int) -> Path:
    """So many sources and their catalogue."""
    folder.mkdir()
    for at in range(count):
        text = drawn(at % GARMENTS).text
        varied = text.replace('pattern "', f'pattern "{at}. ', 1)
        assert varied != text
        (folder / f"garment_{at:05}.wale").write_text(varied, encoding="utf-8")
    catalogue = folder / "many.toml"
    catalogue.write_text(CATALOGUE, encoding="utf-8")
    return catalogue


def main() -> None:
    """Measure, and print."""
    jobs = int(sys.argv[1]) if len(sys.argv) > 1 else 1
    counts = [int(text) for text in sys.argv[2:]] or [100, 1000]
    by_source = {}
    for count in counts:
        with tempfile.TemporaryDirectory() as folder:
            catalogue = sources(Path(folder) / "sources", count)
            whole, idle = run(catalogue, Path(folder) / "shelf", jobs), run(catalogue, Path(folder) / "shelf", jobs)
        by_source[count] = whole.processor / count
        told = f"{count:6} sources, {jobs} jobs: {whole.processor:9.1f} s, {by_source[count]:.3f} s each, {whole.memory:.0f} MiB"
        print(f"{told}; nothing to do: {idle.processor:.2f} s, {idle.memory:.0f} MiB", flush=True)
    print(f"a source of {max(counts)} against one of {min(counts)}: {by_source[max(counts)] / by_source[min(counts)]:.3f}")


if __name__ == "__main__":
    main()
