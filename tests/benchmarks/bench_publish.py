"""What a run of `publish` costs. Run on demand: `python -m tests.benchmarks.bench_publish [CATALOGUE] [TIMES]`.

A catalogue (one of twelve small sources where none is named) is made whole with one job and with two, each into a new folder; then
it is run again with nothing to do, and once with a source that changed. Printed are seconds of wall clock and of processor time,
children included, and their shares of the whole run with one job. Of the run with nothing to do, the processor time beyond that
of an interpreter which does nothing is what counts: it is to be half a second at most.
"""

from __future__ import annotations

import os
import resource
import statistics
import subprocess
import sys
import tempfile
import time
from dataclasses import dataclass
from pathlib import Path

from tests.cli.publishing import SCARF, publisher

ROOT = Path(__file__).resolve().parents[2]
SOURCES = tuple(f"scarf_{at:02}" for at in range(12))
FORMATS = '["pdf", "html", "text", "plan"]'


@dataclass(frozen=True)
class Took:
    """Seconds."""

    wall: float
    processor: float


def took(command: list[str]) -> Took:
    """What a process and its children take."""
    environment = {**os.environ, "PYTHONPATH": str(ROOT / "src")}
    before, began = resource.getrusage(resource.RUSAGE_CHILDREN), time.monotonic()
    subprocess.run(command, env=environment, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=True)
    wall, after = time.monotonic() - began, resource.getrusage(resource.RUSAGE_CHILDREN)
    return Took(wall, after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime)


def publish(catalogue: Path, into: Path, jobs: int = 1) -> Took:
    """One run."""
    return took([sys.executable, "-m", "walewright", "publish", str(catalogue), "--into", str(into), "--jobs", str(jobs)])


def middle(runs: list[Took]) -> Took:
    """The median of several."""
    return Took(statistics.median(r.wall for r in runs), statistics.median(r.processor for r in runs))


def main() -> None:
    """Measure, and print."""
    named = Path(sys.argv[1]).resolve() if len(sys.argv) > 1 else None
    times = int(sys.argv[2]) if len(sys.argv) > 2 else 5
    with tempfile.TemporaryDirectory() as folder:
        place = Path(folder)
        own = publisher(place / "scarves", SOURCES)
        own.says(own.catalogue.read_text(encoding="utf-8").replace('["html", "text"]', FORMATS))
        catalogue = named or own.catalogue
        whole, two = publish(catalogue, place / "one"), publish(catalogue, place / "two", 2)
        idle = middle([publish(catalogue, place / "one") for _ in range(times)])
        bare = middle([took([sys.executable, "-c", "pass"]) for _ in range(times)])
        rows = {"whole, one job": whole, "whole, two jobs": two, "nothing to do": idle}
        if named is None:
            own.source(SOURCES[0]).write_text(SCARF.format(name="Other", length=71), encoding="utf-8")
            rows["one source of twelve"] = publish(catalogue, place / "one")
        for what, run in rows.items():
            shares = f"{run.wall / whole.wall:8.4f} {run.processor / whole.processor:8.4f}"
            print(f"{what:22} {run.wall:8.2f} s wall {run.processor:8.2f} s processor, of the whole {shares}")
        print(f"nothing to do, beyond an interpreter's start: {idle.processor - bare.processor:.3f} s of processor time")


if __name__ == "__main__":
    main()
