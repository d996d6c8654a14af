"""The fenced blocks of the documentation."""

from __future__ import annotations

import re
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
EXAMPLE_PAGES = tuple(sorted(page for folder in ("constructions", "techniques") for page in (ROOT / "docs" / folder).glob("*.md")))
"""The pages whose examples stand below a common frame."""
FENCE = re.compile(r"^```(?P<info>[^\n]*)\n(?P<text>.*?)^```$", re.MULTILINE | re.DOTALL)


@dataclass(frozen=True, slots=True)
class Block:
    """A fenced block: `info` stands behind the fence, `line` is its place in the page."""

    page: str
    line: int
    info: str
    text: str

    @property
    def name(self) -> str:
        return f"{self.page}:{self.line}"


def pages() -> tuple[Path, ...]:
    """Every page a reader may come to."""
    return (ROOT / "README.md", ROOT / "DEVELOPERS.md", *sorted((ROOT / "docs").rglob("*.md")))


def blocks(language: str) -> tuple[Block, ...]:
    """All blocks in `language`, such as "wale"."""
    found = []
    for page in pages():
        text = page.read_text(encoding="utf-8")
        for match in FENCE.finditer(text):
            info = match["info"].strip()
            if info.split(" ")[0] == language:
                line = text.count("\n", 0, match.start()) + 1
                found.append(Block(page.relative_to(ROOT).as_posix(), line, info, match["text"]))
    return tuple(found)
