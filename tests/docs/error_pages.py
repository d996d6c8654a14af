"""The pages of codes: what a page shows, what the compiler says to it, and the page as it has to be.

A page has its code, its weight and its summary; in words what it means; a source that causes it (`wale wrong`, in a frame or
whole) or commands that do (`sh wrong`, run beside the frame or the page's own source); the message; and what mends it.
"""

from __future__ import annotations

import os
import re
import subprocess
import sys
import tempfile
from dataclasses import dataclass
from functools import cache
from pathlib import Path

import walewright
from tests.docs.blocks import FENCE, ROOT, Block, blocks_of, frames
from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.pipeline import Outcome
from walewright.report import codes
from walewright.report.model import Diagnostic
from walewright.report.render import terminal

FOLDER = ROOT / "docs" / "errors"
INDEX = FOLDER / "README.md"
FILE = "pattern.wale"
"""What the sources of the pages are called in their messages."""
COMMANDS_FILE = "panel.wale"
"""What the source is called that commands are given."""
MESSAGE = "text message"
COUNT = re.compile(r"\n*^\d+ (?:error|warning)s?(?:, \d+ warnings?)?\n*\Z", re.MULTILINE)
INDEXED = re.compile(r"(?<=^## Codes\n).*", re.MULTILINE | re.DOTALL)
KINDS = {
    "What lines say": codes.SOURCE,
    "What a garment is made of": codes.DESIGN,
    "How pieces are put together": codes.GLUE,
    "Counts, bed and printed words": codes.MAKING,
    "The garment as it is worn": codes.FIT,
    "A knitter's own copy": codes.REGRADE,
    "Commands and files": codes.COMMANDS,
}


@dataclass(frozen=True, slots=True)
class Page:
    code: str
    text: str
    blocks: tuple[Block, ...]

    def the(self, *infos: str) -> Block | None:
        """The first block of a kind: `infos` are the first words behind its fence."""
        return next((b for b in self.blocks if any(b.info == i or b.info.startswith(f"{i} in ") for i in infos)), None)

    @property
    def wrong(self) -> Block | None:
        return self.the("wale wrong")

    @property
    def mended(self) -> Block | None:
        """What stands below the wrong source; below commands there are commands."""
        return self.the("wale mended") or (self.the("wale") if self.wrong else None)

    @property
    def commands(self) -> tuple[str, str] | None:
        """Commands that cause the code, and commands that do not."""
        wrong, right = self.the("sh wrong"), self.the("sh")
        return (wrong.text, right.text) if wrong and right else None

    @property
    def source(self) -> str:
        """What commands are given."""
        own = self.the("wale")
        return own.source if own else frames()["panel"]

    @property
    def message(self) -> str | None:
        shown = self.the(MESSAGE)
        return shown.text if shown else None


def page(code: str) -> Page:
    path = FOLDER / f"{code}.md"
    return Page(code, path.read_text(encoding="utf-8"), blocks_of(path))


def codes_with_page() -> tuple[str, ...]:
    return tuple(sorted(path.stem for path in FOLDER.glob("*.md") if path != INDEX))


@cache
def compiled(text: str) -> Outcome:
    return pipeline.compile(text, FILE, shipped(), Changes())


@dataclass(frozen=True, slots=True)
class Run:
    """What commands wrote to standard error, and the exit code of the last."""

    errors: str
    exit: int


def run(shown: Page, *, mended: bool = False) -> Run:
    """The commands of a page that cause its code, in a folder of their own; with `mended`, after them those that do not."""
    assert shown.commands
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        (folder / "work").mkdir()
        (folder / "work" / COMMANDS_FILE).write_text(shown.source, encoding="utf-8")
        command = folder / "walewright"
        command.write_text(f'#!/bin/sh\nexec "{sys.executable}" -m walewright "$@"\n', encoding="utf-8")
        command.chmod(0o755)
        wrong, right = shown.commands
        done = _run(wrong, folder)
        return _run(right, folder) if mended else done


def _run(commands: str, folder: Path) -> Run:
    package = str(Path(walewright.__file__).parents[1])
    own = os.environ | {"PATH": f"{folder}:{os.environ['PATH']}", "PYTHONPATH": package, "LC_ALL": "C.UTF-8"}
    done = subprocess.run(
        ["sh", "-c", commands], cwd=folder / "work", env=own, capture_output=True, text=True, timeout=300, check=False
    )
    return Run(done.stderr, done.returncode)


def printed(text: str, diagnostics: tuple[Diagnostic, ...]) -> str:
    """What the terminal shows of a source, without its count at the end."""
    return COUNT.sub("", terminal(diagnostics, {FILE: text})) + "\n"


def told(shown: Page) -> str:
    """What the compiler prints to the wrong source or the wrong commands of a page, without its count at the end."""
    if shown.wrong:
        return printed(shown.wrong.source, compiled(shown.wrong.source).diagnostics)
    return COUNT.sub("", run(shown).errors) + "\n"


def as_it_should_be(shown: Page) -> str:
    """The page with its head and its message as the code and the compiler have them."""
    info = codes.CODES[shown.code]
    head = f"# {shown.code}\n\n{info.severity.value.capitalize()}. {info.summary}\n"
    text = head + "\n".join(shown.text.split("\n")[3:])
    if shown.message is None:
        return text
    message = told(shown)
    return FENCE.sub(lambda m: f"```{MESSAGE}\n{message}```" if m["info"] == MESSAGE else m[0], text)


def index() -> str:
    """The list of codes, for the end of the index."""
    lines = []
    for kind, those in KINDS.items():
        lines += ["", f"### {kind}", "", "| code | what it says |", "|---|---|"]
        for code, info in sorted(those.items()):
            weight = "" if info.severity.value == "error" else f"*{info.severity.value.capitalize()}.* "
            lines.append(f"| [{code}]({code}.md) | {weight}{info.summary} |")
    return "\n".join(lines) + "\n"


def index_as_it_should_be() -> str:
    return INDEXED.sub(lambda _: index(), INDEX.read_text(encoding="utf-8"))
