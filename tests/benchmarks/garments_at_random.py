"""Garments drawn at random, by hand: each has to be proven, none of its damages may be.

    python -m tests.benchmarks.garments_at_random common|other FROM TO

Prints what does not hold with its number, and counts by kind, damage and what was told.
"""

from __future__ import annotations

import sys
import time
from collections import Counter

from tests.whole.garments_at_random import drawn
from tests.whole.more_garments_at_random import more
from tests.whole.test_garments_at_random import looked_at


def main() -> int:
    which = {"common": drawn, "other": more}[sys.argv[1]]
    counts: Counter[tuple[str, str, str]] = Counter()
    wrong = 0
    begun = time.monotonic()
    for seed in range(int(sys.argv[2]), int(sys.argv[3])):
        one = which(seed)
        try:
            found = looked_at(one)
        except Exception as fault:
            wrong += 1
            print(f"{seed} {one.kind}: {fault!r}"[:600])
            continue
        counts[one.kind, "", "proven"] += 1
        for damage, told in found.items():
            counts[one.kind, damage, told] += 1
    for (kind, damage, told), number in sorted(counts.items()):
        print(f"{number:6} {kind}{': ' if damage else ''}{damage}: {told}")
    damages = sum(number for (_, damage, _), number in counts.items() if damage)
    drawn_well = sum(number for (_, damage, _), number in counts.items() if not damage)
    print(f"{drawn_well} garments proven, {damages} damages caught, {wrong} wrong, {time.monotonic() - begun:.0f} s")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
