"""What the documentation says of the trade, for tests that hold the tables against it."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path

DOCS = Path(__file__).resolve().parents[2] / "docs"


@cache
def page(name: str) -> str:
    """The words of a page, each run of blanks as one."""
    return re.sub(r"\s+", " ", (DOCS / f"{name}.md").read_text(encoding="utf-8"))


def says(name: str, words: str) -> bool:
    return words in page(name)


@cache
def rows(name: str, head: str) -> tuple[tuple[str, str], ...]:
    """The rows of a page's table with that head, of two columns: what stands in each as code, and what is told of it."""
    lines = iter((DOCS / f"{name}.md").read_text(encoding="utf-8").splitlines())
    for line in lines:
        if line == head:
            next(lines)
            break
    found: list[tuple[str, str]] = []
    for line in lines:
        if not line.startswith("|"):
            break
        of, told = (cell.strip() for cell in line.strip("|").split("|"))
        found += [(code, told) for code in re.findall(r"`([^`]+)`", of)]
    return tuple(found)
