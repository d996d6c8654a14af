"""How long sources at the limits take. Run on demand: `python -m tests.benchmarks.bench_limits [KIND ...]`.

Each is compiled in a process of its own; printed are the seconds of processor time from the command to the last word said, the
peak of memory, and what came of it. No source that is not refused early is to take more than ten seconds and 500 MiB.
"""

from __future__ import annotations

import resource
import subprocess
import sys
import time
from collections.abc import Callable

from tests.benchmarks.bench_growth import HEAD, _piece, pieces, rows, sizes
from tests.benchmarks.bench_sizes import SOURCE, with_sizes
from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.report.render import terminal

BED = 250
KEYS = "    key . knit\n    key r knit in red\n"
RED = 'yarn red "red", 100 g = 400 m\n'


def _pictured(count: int, repeat: int, blocks: str) -> str:
    """So many rows over the whole bed, in two yarns that change at every stitch."""
    chart = "\n".join(f"    | {' '.join('.r'[(row + stitch) % 2] for stitch in range(repeat))} |" for row in range(2))
    cloth = HEAD.replace("machine standard", "machine fine").replace("40 cm", f"{count / 4:g} cm")
    cloth = cloth.replace(
        "fabric plain\n    stocking stitch in wool at tension 6", "fabric plain\n    chart dots in wool at tension 6, 1 edge stitch"
    )
    return cloth.replace("fabric plain", f"{RED}\nchart dots\n{KEYS}{chart}\n{blocks}\nfabric plain") + _piece(width="87")


def floats() -> str:
    """A second yarn floats behind every other stitch."""
    return _pictured(470, 2, "")


def blocks() -> str:
    """Yarns laid block by block, crossed at every third stitch."""
    chart = "    | " + "   ".join([". . .   r r r"] * 41) + " |"
    return _pictured(470, 2, "").replace("    | . r |\n    | r . |", f"{chart}\n    colours laid in blocks")


def free_levels() -> str:
    """Twenty sizes of a garment with levels that are found for its joins."""
    return with_sizes(SOURCE.read_text(encoding="utf-8"), 20)


def tall() -> str:
    """A piece of 2,000 rows."""
    return rows(334).replace("by 15 cm", "by 10 cm")


def many_pieces() -> str:
    """Sixty pieces, the most there can be."""
    return pieces(60)


def too_many_pieces() -> str:
    """A hundred pieces, which are too many."""
    return pieces(100)


def many_sizes() -> str:
    """Twenty sizes of a scarf."""
    return sizes(20)


def most_stitches() -> str:
    """As many plain stitches as the limit lets pass, in sixty sizes."""
    text = HEAD.replace("machine standard", "machine fine").replace(
        "sizes      one", "sizes " + " ".join(f"s{i}" for i in range(60))
    )
    return text.replace("length 40 cm", "length " + " ".join(f"{60 + i / 10:g}" for i in range(60)) + " cm") + _piece(width="87")


KINDS: tuple[Callable[[], str], ...] = (
    floats,
    blocks,
    free_levels,
    tall,
    many_pieces,
    too_many_pieces,
    many_sizes,
    most_stitches,
)


def _one(kind: str) -> None:
    text = next(make for make in KINDS if make.__name__ == kind)()
    outcome = pipeline.compile(text, f"{kind}.wale", shipped(), Changes())
    terminal(outcome.diagnostics, {f"{kind}.wale": text})
    loops = sum(size.loops for size in outcome.proof.sizes) if outcome.proof else 0
    errors = [d.code for d in outcome.diagnostics if d.severity.name == "ERROR"]
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024
    came = f"proven, {loops:,} loops" if outcome.proven else ", ".join(errors[:3])
    print(f"{kind:16} {time.process_time():6.2f} s {peak:4} MiB  {came}", flush=True)


def main() -> None:
    """Each of those named, or all."""
    if sys.argv[1:2] == ["--one"]:
        _one(sys.argv[2])
        return
    for make in KINDS:
        if not sys.argv[1:] or make.__name__ in sys.argv[1:]:
            subprocess.run([sys.executable, "-m", "tests.benchmarks.bench_limits", "--one", make.__name__], check=True)


if __name__ == "__main__":
    main()
