"""What a printed garment costs beside another checkout of this project, such as one of an earlier commit.

Run on demand: `python -m tests.benchmarks.bench_printed CHECKOUT PYTHON [GARMENT...]`, for all garments that both have where none
is named, each with its own source of them. PYTHON is an interpreter that the other checkout is installed for. Each garment is built
by the command line, as a PDF, as text and as HTML, in both by turns, and timed by the processor's time of these processes: what
else the machine does meanwhile is done to both. What a page costs is what the PDF takes longer than the text, by the page; what the
printing of the HTML costs is what the PDF takes longer than the HTML.
"""

from __future__ import annotations

import resource
import subprocess
import sys
import tempfile
from dataclasses import dataclass
from pathlib import Path

import pypdf

HERE = Path(__file__).resolve().parents[2]
ROUNDS = 2


@dataclass(frozen=True)
class Cost:
    """Processor time of a PDF, of the text and of the HTML of one garment, s, and the PDF's pages."""

    printed: float
    text: float
    html: float
    pages: int

    def __add__(self, other: Cost) -> Cost:
        return Cost(self.printed + other.printed, self.text + other.text, self.html + other.html, self.pages + other.pages)

    @property
    def printing(self) -> float:
        """What the printer takes for the HTML, s."""
        return self.printed - self.html

    @property
    def page(self) -> float:
        """What a page takes, s."""
        return (self.printed - self.text) / self.pages


def seconds(python: str, checkout: Path, garment: str, kind: str, out: Path) -> float:
    """Processor time of one build, with all its processes."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    command = [python, "-c", "import sys; from walewright.cli import main; sys.exit(main())", "build"]
    command += [str(checkout / "patterns" / f"{garment}.wale"), "--as", kind, "--out", str(out)]
    subprocess.run(
        command, cwd=checkout, env={"PATH": "/usr/bin:/bin", "PYTHONPATH": str(checkout / "src")}, check=True, capture_output=True
    )
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime


def cost(python: str, checkout: Path, garment: str) -> Cost:
    """Of one garment in one checkout."""
    with tempfile.TemporaryDirectory() as folder:
        out = Path(folder)
        printed, text, page = (seconds(python, checkout, garment, kind, out) for kind in ("pdf", "text", "html"))
        return Cost(printed, text, page, len(pypdf.PdfReader(out / f"{garment}.pdf").pages))


def least(costs: list[Cost]) -> Cost:
    """The least of each, of several rounds."""
    return Cost(min(one.printed for one in costs), min(one.text for one in costs), min(one.html for one in costs), costs[0].pages)


def told(name: str, here: Cost, there: Cost) -> None:
    """One line: both in seconds and pages, then the ratios of the whole, of it to the other's printing alone, and of a page."""
    print(
        f"{name:14} {here.printed:6.2f} s {here.pages:3}  {there.printed:6.2f} s {there.pages:3}"
        f"  {here.printed / there.printed:5.2f} {here.printed / there.printing:5.2f} {here.page / there.page:5.2f}",
        flush=True,
    )


def main() -> None:
    """Time both for each garment; print what each takes, the ratios, and those of all."""
    there, python = Path(sys.argv[1]).resolve(), sys.argv[2]
    shared = sorted(p.stem for p in (HERE / "patterns").glob("*.wale") if (there / "patterns" / p.name).exists())
    sums = (Cost(0.0, 0.0, 0.0, 0), Cost(0.0, 0.0, 0.0, 0))
    for garment in sys.argv[3:] or shared:
        rounds = [(cost(sys.executable, HERE, garment), cost(python, there, garment)) for _ in range(ROUNDS)]
        ours, theirs = (least(list(costs)) for costs in zip(*rounds, strict=True))
        sums = (sums[0] + ours, sums[1] + theirs)
        told(garment, ours, theirs)
    told("in all", *sums)


if __name__ == "__main__":
    main()
