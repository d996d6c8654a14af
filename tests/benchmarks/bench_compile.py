"""How long the compiler takes beside the page printer it ends in.

Run on demand: `python -m tests.benchmarks.bench_compile [GARMENT...]`, for a plain garment and a charted one, where none is named.
Both are timed in one run on one machine, so that the ratio means something where seconds would not: the time from text to proven
plan for all sizes, over the time WeasyPrint alone takes to print the HTML that came of it.
"""

from __future__ import annotations

import statistics
import sys
import time
from collections.abc import Callable
from pathlib import Path

from walewright import pipeline, sheet
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.guide.english import LANGUAGE
from walewright.sheet import PageOptions

PATTERNS = Path(__file__).resolve().parents[2] / "patterns"
GARMENTS = ("tidewrack", "anemone")
ROUNDS = 3


def seconds(work: Callable[[], object]) -> float:
    """Median over a few rounds, after one to warm up."""
    work()
    taken = []
    for _ in range(ROUNDS):
        begun = time.perf_counter()
        work()
        taken.append(time.perf_counter() - begun)
    return statistics.median(taken)


def main() -> None:
    """Time both for each garment and print them."""
    for name in sys.argv[1:] or GARMENTS:
        _time(PATTERNS / f"{name}.wale")


def _time(source: Path) -> None:
    text = source.read_text(encoding="utf-8")
    given = shipped()

    def compiled() -> pipeline.Outcome:
        return pipeline.compile(text, source.name, given, Changes())

    outcome = compiled()
    assert outcome.proven
    made = sheet.compose(LANGUAGE, sheet.ProvenPattern(*outcome.result()), PageOptions())
    html = sheet.html(made)
    proving = seconds(compiled)
    printing = seconds(lambda: sheet.pdf(html, made))
    composing = seconds(lambda: sheet.html(made))
    print(f"{source.stem}, {len(outcome.plans)} sizes")
    print(f"  text to proven plan: {proving:.2f} s")
    print(f"  HTML from the plan:  {composing:.2f} s")
    print(f"  PDF from the HTML:   {printing:.2f} s")
    print(f"  proven plan / PDF:   {proving / printing:.2f}", flush=True)


if __name__ == "__main__":
    main()
