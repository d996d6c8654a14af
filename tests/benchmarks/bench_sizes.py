"""How the time to a proven plan grows with the number of sizes. Run on demand: `python -m tests.benchmarks.bench_sizes`.

The cardigan, the largest garment that is shipped, is given 5, 10, 20 and 40 sizes drawn evenly between its smallest and its
largest. Ratios in one run: seconds per size over those of 5 sizes, and, for 10 sizes, the proven plan over the time
WeasyPrint alone takes to print the HTML that came of it.
"""

from __future__ import annotations

import re
import time
from pathlib import Path

from walewright import pipeline, sheet
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.guide.english import LANGUAGE
from walewright.report.english import in_english
from walewright.sheet import PageOptions

SOURCE = Path(__file__).resolve().parents[2] / "patterns" / "marram.wale"
COUNTS = (5, 10, 20, 40)
BODY = {"bust": (73.5, 124.5), "back": (36.0, 45.5), "biceps": (25.0, 38.0), "arm": (42.0, 45.0)}
"""Smallest and largest of the measurements that come from a table by the names of its sizes, in cm."""


def with_sizes(text: str, count: int) -> str:
    """The source with so many sizes."""

    def row(low: float, high: float) -> str:
        return " ".join(f"{low + (high - low) * i / (count - 1):.2f}" for i in range(count)) + " cm"

    lines = []
    for line in text.splitlines():
        name = line.split()[0] if line.split() else ""
        if name == "sizes":
            lines.append("sizes " + " ".join(f"s{i}" for i in range(count)))
        elif name in BODY and " from " in line:
            lines.append(f"    {name} {row(*BODY[name])}, to fit")
        elif re.fullmatch(r"    \w+( +[\d.]+){6} cm( \".*\")?", line):
            figures = [float(f) for f in re.findall(r"[\d.]+", line.partition('"')[0].split(maxsplit=1)[1])]
            lines.append(f"    {name} {row(figures[0], figures[-1])}")
        else:
            lines.append(line)
    return "\n".join(lines) + "\n"


def main() -> None:
    """Time them and print them."""
    text, given = SOURCE.read_text(encoding="utf-8"), shipped()
    pipeline.compile(text, SOURCE.name, given, Changes())
    per_size = 0.0
    for count in COUNTS:
        source = with_sizes(text, count)
        begun = time.perf_counter()
        outcome = pipeline.compile(source, SOURCE.name, given, Changes())
        taken = time.perf_counter() - begun
        assert outcome.proven, [in_english(d).message for d in outcome.diagnostics]
        per_size = per_size or taken / count
        line = f"{count:3} sizes: {taken:6.2f} s, per size {taken / count / per_size:.2f} of that with {COUNTS[0]}"
        if count == 10:
            made = sheet.compose(LANGUAGE, sheet.ProvenPattern(*outcome.result()), PageOptions())
            html = sheet.html(made)
            begun = time.perf_counter()
            sheet.pdf(html, made)
            line += f"; proven plan / PDF {taken / (time.perf_counter() - begun):.2f}"
        print(line)


if __name__ == "__main__":
    main()
