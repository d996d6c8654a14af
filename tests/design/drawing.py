"""Sources with a chart, written as text, and where in them a cell stands."""

from __future__ import annotations

import re
from collections.abc import Iterable

from tests.design.shaped import understood
from walewright.design.model import Chart, Design
from walewright.report.model import Diagnostic

KEYS = {
    ".": "knit", "O": "hole", "/": "two from left", "\\": "two from right", ">": "from left", "<": "from right",
    "A": "three together", "-": "purl", "T": "tuck", "V": "slip", "L": "long", "H": "ladder", "N": "knit in navy",
    "R": "knit in red", "C": "cross 2 over 2, left first", "D": "cross 3 over 3, right first", "E": "cross 4 over 4, left first",
}  # fmt: skip

FRAME = """\
pattern "Trial"
sizes S M
    length 40 42 cm
machine bulky
yarn wool "wool", 100 g = 300 m
yarn navy "navy wool", 100 g = 300 m
yarn red "red wool", 100 g = 300 m
"""

SWATCH = "    swatch 40 stitches by 60 rows = 20 cm by 15 cm\n"
"""2 stitches and 4 rows to the centimetre."""

PIECE = """\
piece front in plain{more}
    levels hem 0 cm, low 10 cm, middle 20 cm, high 30 cm, top length
    start {start} {way}
{lines}    end on waste yarn
"""


def chart(*rows: str, name: str = "lace", lines: Iterable[str] = (), keys: Iterable[str] | None = None) -> str:
    """A chart; rows from the top down, symbols without blanks. Its key is that of the symbols in it unless it is given."""
    used = [f"key {s} {m}" for s, m in KEYS.items() if any(s in r for r in rows)] if keys is None else keys
    grid = [f"| {' '.join(row)} |" for row in rows]
    return "".join(f"{line}\n" for line in (f"chart {name}", *(f"    {x}" for x in (*used, *lines, *grid))))


def plain(stitch: str = "stocking stitch in wool at tension 4", name: str = "plain", swatch: str = SWATCH) -> str:
    """A fabric."""
    return f"fabric {name}\n    {stitch}\n{swatch}"


def lacy(more: str = ", 4 edge stitches", name: str = "lace") -> str:
    """The stitch of a fabric worked from a chart."""
    return f"chart {name} in wool at tension 4{more}"


def piece(*lines: str, start: str = "40 cm wide", way: str = "with e-wrap", more: str = "") -> str:
    """A straight piece in `plain`, 80 stitches wide, with these lines in its block."""
    return PIECE.format(start=start, way=way, more=more, lines="".join(f"    {line}\n" for line in lines))


def source(*parts: str) -> str:
    """The text of a source of these parts."""
    return "\n".join((FRAME, *parts))


def said(*parts: str) -> tuple[Diagnostic, ...]:
    """Everything told of a source of these parts."""
    return understood(*parts, head=FRAME)[1]


def said_of(*rows: str, **options: Iterable[str]) -> tuple[Diagnostic, ...]:
    """Everything told of a fabric worked from such a chart."""
    return said(chart(*rows, **options), plain(lacy()), piece())


def marked(*rows: str, **options: Iterable[str]) -> list[tuple[str, int, int]]:
    """What is told of a fabric worked from such a chart: code, and row (from the bottom) and column (both from 1) of its mark."""
    parts = (chart(*rows, **options), plain(lacy()), piece())
    return places(source(*parts), said(*parts))


def places(text: str, told: Iterable[Diagnostic]) -> list[tuple[str, int, int]]:
    """Code, row and column of each diagnostic that is marked at a cell of the only chart of a text."""
    grid = list(re.finditer(r"^ +\|(.*)\|$", text, re.MULTILINE))
    found: list[tuple[str, int, int]] = []
    for said_now in told:
        start = said_now.labels[0].span.start
        line = next(g for g in grid if g.start() <= start <= g.end())
        column = len(line[1][: start - line.start(1)].replace(" ", "")) + 1
        found.append((said_now.code, len(grid) - grid.index(line), column))
    return found


def drawn(*parts: str) -> Chart:
    """The one chart of a sound source."""
    (found,) = sound(*parts).charts
    return found


def sound(*parts: str) -> Design:
    """The design of a source of which nothing is told."""
    made, told = understood(*parts, head=FRAME)
    assert told == ()
    assert made is not None
    return made
