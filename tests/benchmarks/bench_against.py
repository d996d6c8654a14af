"""How long text to proven plan takes beside another checkout of this project, such as one of an earlier commit.

Run on demand: `python -m tests.benchmarks.bench_against CHECKOUT [GARMENT...]`, for all garments that both have where none is
named, each with its own source of them. Both are timed by turns, each time in a process of its own, and by the processor's time:
what else the machine does meanwhile is done to both.
"""

from __future__ import annotations

import math
import os
import subprocess
import sys
from pathlib import Path

HERE = Path(__file__).resolve().parents[2]
ROUNDS = 3

TIMED = """
import sys, time
from pathlib import Path
from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes

try:
    from walewright.cli.collecting import spare_the_collector
    spare_the_collector()
except ImportError:
    pass

source = Path(sys.argv[1])
text, given = source.read_text(encoding="utf-8"), shipped()
outcome = pipeline.compile(text, source.name, given, Changes())
assert outcome.proven, outcome.diagnostics
begun = time.process_time()
pipeline.compile(text, source.name, given, Changes())
print(time.process_time() - begun)
"""
"""Once to warm up, then timed; with the collector of garbage as the checkout's own commands have it."""


def seconds(checkout: Path, garment: str) -> float:
    """Processor time of one garment in one checkout."""
    source = checkout / "patterns" / f"{garment}.wale"
    environment = {**os.environ, "PYTHONPATH": str(checkout / "src")}
    run = subprocess.run(
        [sys.executable, "-c", TIMED, str(source)], env=environment, cwd=checkout, capture_output=True, text=True, check=True
    )
    return float(run.stdout)


def main() -> None:
    """Time both for each garment; print what each takes, the ratios, and those of all."""
    there = Path(sys.argv[1]).resolve()
    shared = sorted(p.stem for p in (HERE / "patterns").glob("*.wale") if (there / "patterns" / p.name).exists())
    here_in_all = there_in_all = 0.0
    ratios = []
    for garment in sys.argv[2:] or shared:
        rounds = [(seconds(HERE, garment), seconds(there, garment)) for _ in range(ROUNDS)]
        here, other = (min(times) for times in zip(*rounds, strict=True))
        here_in_all, there_in_all = here_in_all + here, there_in_all + other
        ratios.append(here / other)
        print(f"{garment:14} {here:6.2f} s  {other:6.2f} s  {here / other:5.2f}", flush=True)
    mean = math.exp(sum(map(math.log, ratios)) / len(ratios))
    print(f"in all         {here_in_all:6.2f} s  {there_in_all:6.2f} s  {here_in_all / there_in_all:5.2f}")
    print(f"geometric mean of {len(ratios)} ratios: {mean:.2f}, from {min(ratios):.2f} to {max(ratios):.2f}")


if __name__ == "__main__":
    main()
