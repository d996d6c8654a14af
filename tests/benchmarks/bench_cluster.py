"""What a second worker of a cluster saves. `python -m tests.benchmarks.bench_cluster [SOURCES] [TIMES] [GARMENT...]`.

A catalogue of small sources, text and HTML of each, or of the shipped garments that are named, as PDF, is made whole by a
cluster of one worker and by one of two, each time into a new folder with workers that have just been started, in turn and as
often as asked. Printed are the seconds of wall clock from the command to its end, and the share that two workers take of one's:
it is to be 0.65 at most. One job on this computer stands beside.
"""

from __future__ import annotations

import logging
import shutil
import statistics
import sys
import tempfile
import time
from collections import defaultdict
from pathlib import Path
from typing import Any

import distributed

from tests.cli.publishing import CATALOGUE, in_process, publisher

PATTERNS = Path(__file__).resolve().parents[2] / "patterns"


def timed(arguments: list[str], folder: Path) -> float:
    """Seconds of wall clock of a command."""
    began = time.monotonic()
    done = in_process(arguments, folder)
    if done.returncode:
        raise SystemExit(done.stderr)
    return time.monotonic() - began


def main() -> None:
    """Measure, and print."""
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 24
    times = int(sys.argv[2]) if len(sys.argv) > 2 else 3
    garments = sys.argv[3:]
    cluster: Any = distributed.LocalCluster
    seconds: dict[str, list[float]] = defaultdict(list)
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        made_of = publisher(folder / "sources", tuple(f"scarf_{at:03}" for at in range(0 if garments else count)))
        for garment in garments:
            shutil.copy(PATTERNS / f"{garment}.wale", made_of.folder)
        if garments:
            made_of.says(CATALOGUE.replace('["html", "text"]', '["pdf"]'))
        catalogue = made_of.catalogue
        for turn in range(times):
            for workers in (0, 1, 2):
                asked = ["publish", str(catalogue), "--into", str(folder / f"shelf-{turn}-{workers}"), "--jobs", "1"]
                if not workers:
                    seconds["one job here"].append(timed(asked, folder))
                    continue
                with cluster(
                    n_workers=workers,
                    threads_per_worker=1,
                    processes=True,
                    dashboard_address=None,
                    silence_logs=logging.CRITICAL,
                ) as made:
                    asked += ["--executor", "dask", "--scheduler", made.scheduler_address]
                    seconds[f"workers: {workers}"].append(timed(asked, folder))
    for what, found in seconds.items():
        print(f"{what:14} {statistics.median(found):7.2f} s, of {', '.join(f'{one:.2f}' for one in found)}")
    two = statistics.median(seconds["workers: 2"])
    for what in ("workers: 1", "one job here"):
        print(f"two workers against {what}: {two / statistics.median(seconds[what]):.3f}")


if __name__ == "__main__":
    main()
