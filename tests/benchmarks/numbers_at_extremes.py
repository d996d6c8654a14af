"""Each number of a shipped garment made extreme, through everything. Run by hand:

    python -m tests.benchmarks.numbers_at_extremes N [SEED [FOLDER]]

A draw is one number of one source put to one of `EXTREMES`, in one of the source's sizes; N draws of all there are, in an order
that SEED shuffles. Each is compiled in a process with the limits of `mutated_sources.py`, and what is no fault of the author's is
written to FOLDER as there.
"""

from __future__ import annotations

import random
import re
import sys
from collections import Counter
from pathlib import Path

from tests.benchmarks.mutated_sources import in_a_process, kept, ready
from tests.benchmarks.mutating import NUMBER, ROOT, TEXT
from tests.benchmarks.variants_at_random import one_size
from walewright.cli.sources import shipped

SOURCES = ("tidewrack", "shoal", "hawser", "halyard", "breakwater", "mooring", "saltmarsh", "teasel", "peatbank", "fulmar")
"""Garments that between them have every kind of statement with a number."""
EXTREMES = ("0", "1", "2", "0.001", "1000", "100000", "1000000000", "-5", "999999999", "0.5")


def draws() -> list[tuple[str, int, int, str]]:
    """(garment, where its number begins and ends, what is put there), texts and comments left out."""
    found = []
    for name in SOURCES:
        text = (ROOT / "patterns" / f"{name}.wale").read_text(encoding="utf-8")
        bare = re.sub(r"#[^\n\"]*$", _blank, TEXT.sub(_blank, text), flags=re.MULTILINE)
        found += [(name, *one.span(), other) for one in NUMBER.finditer(bare) for other in EXTREMES if other != one[0]]
    return found


def _blank(one: re.Match[str]) -> str:
    return " " * len(one[0])


def main() -> None:
    """Draw, compile, count; a line for whatever is a fault, and a summary every hundred."""
    count = int(sys.argv[1])
    seed = int(sys.argv[2]) if len(sys.argv) > 2 else 1
    folder = Path(sys.argv[3]) if len(sys.argv) > 3 else None
    every, data, chance = draws(), shipped(), random.Random(seed)
    chance.shuffle(every)
    ready()
    found, codes, slowest, largest = Counter[str](), Counter[str](), 0.0, 0
    for done, (name, begin, end, other) in enumerate(every[:count], 1):
        text = (ROOT / "patterns" / f"{name}.wale").read_text(encoding="utf-8")
        made = text[:begin] + other + text[end:]
        changes = one_size(made, random.Random(done))
        result = in_a_process(made, changes, data)
        found[result.what] += 1
        codes.update(result.codes)
        slowest, largest = max(slowest, result.seconds), max(largest, result.mib)
        if result.what not in ("proven", "refused"):
            line = text.count("\n", 0, begin) + 1
            kept(
                f"{done} {name} {changes.sizes} line {line}, {text[begin:end]} made {other}", f"{seed}_{done}", result, made, folder
            )
        if done % 100 == 0 or done == count:
            told = ", ".join(f"{what} {n}" for what, n in found.most_common())
            print(f"-- {done} of {len(every)}: {told}; slowest {slowest:.1f} s, largest {largest} MiB", flush=True)
    print("codes: " + ", ".join(f"{code} {n}" for code, n in codes.most_common()))


if __name__ == "__main__":
    main()
