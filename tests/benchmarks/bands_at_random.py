"""Edgings, bands and strips drawn at random, by hand: each is proven or truly told.

    python -m tests.benchmarks.bands_at_random N [SEED]

N draws from SEED (0) on. Prints what is neither, and counts by kind and what was told.
"""

from __future__ import annotations

import sys
import time
from collections import Counter

from tests.whole.bands_at_random import drawn
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.pipeline import compile
from walewright.report.model import Severity

FAULTS = {"bed-refuses", "knitted-otherwise", "lace-unpaired"}
"""Codes that tell of a fault of the compiler's."""


def main() -> int:
    count, first = int(sys.argv[1]), int(sys.argv[2]) if len(sys.argv) > 2 else 0
    known = shipped()
    found: Counter[tuple[str, str]] = Counter()
    wrong = 0
    begun = time.monotonic()
    for seed in range(first, first + count):
        kind, text = drawn(seed)
        try:
            outcome = compile(text, "drawn.wale", known, Changes())
        except Exception as fault:
            wrong += 1
            print(f"{seed} {kind}: {fault!r}"[:600], flush=True)
            continue
        errors = [d for d in outcome.diagnostics if d.severity is Severity.ERROR]
        found[kind, " ".join(sorted({d.code for d in errors})) or "proven"] += 1
        bad = [d for d in errors if d.code in FAULTS or d.code.startswith("words-")]
        if bad or not (outcome.proven or all(d.labels and d.helps for d in errors)):
            wrong += 1
            print(f"{seed} {kind}: {errors[0].code}: {errors[0].message}"[:600], flush=True)
    for (kind, told), number in sorted(found.items()):
        print(f"{number:6} {kind}: {told}")
    proven = sum(n for (_, told), n in found.items() if told == "proven")
    print(f"{count} sources: {proven} proven, {count - proven - wrong} told, {wrong} wrong, {time.monotonic() - begun:.0f} s")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
