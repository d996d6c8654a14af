"""Garments with patterned fabrics drawn at random, many of them.

Run on demand: `python -m tests.benchmarks.charted_at_random [N [FIRST]]`, for N draws from number FIRST on. Prints, by family of
technique, how many came to a proven pattern and which codes refused the others. The first that is neither proven nor honestly
refused stops the run, with its number and its source. The draws are those of `tests/whole/test_charted_at_random.py`.
"""

from __future__ import annotations

import sys
import time
from collections import Counter, defaultdict

from tests.whole.test_charted_at_random import came_to, compiled


def main() -> None:
    """Draw, compile and count."""
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 500
    begin = int(sys.argv[2]) if len(sys.argv) > 2 else 0
    found: defaultdict[str, Counter[str]] = defaultdict(Counter)
    begun = time.perf_counter()
    for number in range(begin, begin + count):
        try:
            drawn, outcome = compiled(number)
            found[drawn.family][came_to(drawn, outcome)] += 1
        except BaseException:
            print(f"draw {number} is neither proven nor honestly refused", flush=True)
            raise
    for family, what in sorted(found.items()):
        print(f"{family:8}", ", ".join(f"{code} {n}" for code, n in what.most_common()))
    proven = sum(what["proven"] for what in found.values())
    print(f"{proven} of {count} proven, {(time.perf_counter() - begun) / count:.2f} s a draw")


if __name__ == "__main__":
    main()
