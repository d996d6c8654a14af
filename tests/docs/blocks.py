"""The fenced blocks of the documentation."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from tests.docs import framing

ROOT = Path(__file__).resolve().parents[2]
EXAMPLE_PAGES = tuple(sorted(page for folder in ("constructions", "techniques") for page in (ROOT / "docs" / folder).glob("*.md")))
"""The pages whose examples stand below a common frame."""
FENCE = re.compile(r"^```(?P<info>[^\n]*)\n(?P<text>.*?)^```$", re.MULTILINE | re.DOTALL)
LINE = re.compile(r"^Mended: `(?P<text>[^`\n]+)`$", re.MULTILINE)
"""A single line that mends the source above it, in the running text of a page."""
SOUND = re.compile(r"wale(?: example| mended| mended in \w+| frame \w+)?")
"""Kinds of sources that are proven, each whole with its frame."""
FRAMED = re.compile(r"wale (?:(?:wrong|mended) )?in (?P<frame>\w+)")


@dataclass(frozen=True, slots=True)
class Block:
    """A fenced block: `info` stands behind the fence, `line` is its place in the page, `source` is its text with its frame."""

    page: str
    line: int
    info: str
    text: str
    source: str

    @property
    def name(self) -> str:
        return f"{self.page}:{self.line}"


def pages() -> tuple[Path, ...]:
    """Every page a reader may come to."""
    return (ROOT / "README.md", ROOT / "DEVELOPERS.md", *sorted((ROOT / "docs").rglob("*.md")))


def blocks(language: str) -> tuple[Block, ...]:
    """All blocks in `language`, such as "wale"."""
    return tuple(b for page in pages() for b in blocks_of(page) if b.info.split(" ")[0] == language)


def blocks_of(page: Path) -> tuple[Block, ...]:
    """All blocks of a page, in their order."""
    content = page.read_text(encoding="utf-8")
    places = [(m.start(), m["info"].strip(), m["text"]) for m in FENCE.finditer(content)]
    places += [(m.start(), "wale mended", f" {m['text']}\n") for m in LINE.finditer(content)]
    found: list[Block] = []
    for start, info, text in sorted(places):
        wrong = next((b for b in reversed(found) if b.info.startswith("wale wrong")), None)
        line = content.count("\n", 0, start) + 1
        found.append(Block(page.relative_to(ROOT).as_posix(), line, info, text, _whole(info, text, wrong)))
    return tuple(found)


def _whole(info: str, text: str, wrong: Block | None) -> str:
    """`wrong`: the wrong source above on the page, which a mended one says only the difference to."""
    framed = FRAMED.fullmatch(info)
    if framed:
        return framing.above(text, frames()[framed["frame"]])
    if info == "wale mended" and wrong:
        if text[:1].isspace():
            return _whole(wrong.info, framing.exchanged(text, wrong.text), None)
        return framing.within(text, wrong.source)
    if info == "wale example":
        return f"{frames()['']}\n{text}"
    return text


@cache
def frames() -> dict[str, str]:
    """Name of each frame to its text; that of the examples has none."""
    fences = [(m["info"].strip(), m["text"]) for page in pages() for m in FENCE.finditer(page.read_text(encoding="utf-8"))]
    return {info.removeprefix("wale frame").strip(): text for info, text in fences if re.fullmatch(r"wale frame( \w+)?", info)}
