"""Garments drawn at random, by hand: each has to be proven, none of its damages may be.

    python -m tests.benchmarks.garments_at_random common|other|parted|copies|around FROM TO [EVERY]

Damages are tried on every EVERY-th garment, on each where it is not given. Prints what does not hold with its number, and counts by
kind, damage and what was told.
"""

from __future__ import annotations

import sys
import time
from collections import Counter
from collections.abc import Callable, Mapping

from tests.whole.copies_at_random import copied
from tests.whole.garments_at_random import Drawn, drawn
from tests.whole.more_garments_at_random import more
from tests.whole.parted_at_random import parted
from tests.whole.said_around_at_random import said_around
from tests.whole.test_garments_at_random import looked_at

DRAWERS: Mapping[str, Callable[[int], Drawn]] = {
    "common": drawn,
    "other": more,
    "parted": parted,
    "copies": lambda seed: copied(seed).drawn,
    "around": said_around,
}


def main() -> int:
    which = DRAWERS[sys.argv[1]]
    every = int(sys.argv[4]) if len(sys.argv) > 4 else 1
    counts: Counter[tuple[str, str, str]] = Counter()
    wrong = 0
    begun = time.monotonic()
    for seed in range(int(sys.argv[2]), int(sys.argv[3])):
        one = which(seed)
        if seed % every:
            one = Drawn(one.kind, one.text, {})
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
