"""The pages of codes: what a page shows, what the compiler says to it, and the page as it has to be.

A page has its code, its weight and its summary; in words what it means; a source that causes it (`wale wrong`, in a frame or
whole) or commands that do (`sh wrong`, run beside the frame or the page's own source); the message; and what mends it.
"""

from __future__ import annotations

import importlib
import os
import pkgutil
import re
import shlex
import subprocess
import sys
import tempfile
from dataclasses import dataclass
from functools import cache
from pathlib import Path

import walewright
from tests.docs.blocks import FENCE, ROOT, Block, blocks_of, frames
from walewright import pipeline
from walewright.cli import commands, formats, main
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


@cache
def runs(shown: Page) -> tuple[Run, Run]:
    """The commands of a page that cause its code, and after them those that do not, in a folder of their own."""
    assert shown.commands
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        (folder / "work").mkdir()
        (folder / "work" / COMMANDS_FILE).write_text(shown.source, encoding="utf-8")
        command = folder / "walewright"
        command.write_text(f'#!/bin/sh\nexec "{sys.executable}" -m walewright "$@"\n', encoding="utf-8")
        command.chmod(0o755)
        wrong, right = (_run(lines, folder) for lines in shown.commands)
        return wrong, right


def _run(lines: str, folder: Path) -> Run:
    """Each line by itself, in the same folder."""
    done = [_own(line, folder) or _by_shell(line, folder) for line in lines.splitlines()]
    return Run("".join(run.errors for run in done), done[-1].exit)


def _by_shell(line: str, folder: Path) -> Run:
    package = str(Path(walewright.__file__).parents[1])
    own = os.environ | {"PATH": f"{folder}:{os.environ['PATH']}", "PYTHONPATH": package, "LC_ALL": "C.UTF-8"}
    done = subprocess.run(
        ("sh", "-c", line), cwd=folder / "work", env=own, capture_output=True, text=True, timeout=300, check=False
    )
    return Run(done.stderr, done.returncode)


def _own(line: str, folder: Path) -> Run | None:
    """A line that is a command of our own and nothing else, done by a child that has loaded all it needs; None if it is more."""
    program, *arguments = shlex.split(line)
    if program != "walewright" or re.search(r"[|&;<>$`*?\\]", line):
        return None
    _load()
    with (folder / "errors").open("w+", encoding="utf-8") as errors:
        child = os.fork()
        if not child:
            code = 99
            try:
                code = _done_here(arguments, folder / "work", errors.fileno())
            finally:
                os._exit(code)
        code = os.waitstatus_to_exitcode(os.waitpid(child, 0)[1])
        return Run((folder / "errors").read_text(encoding="utf-8"), code)


@cache
def _load() -> None:
    """What commands load when they need it."""
    for package in (commands, formats):
        for module in pkgutil.iter_modules(package.__path__, f"{package.__name__}."):
            importlib.import_module(module.name)
    for name in ("rich.table", "walewright.regrade", "walewright.sheet"):
        importlib.import_module(name)
    compiled(frames()["panel"])


def _done_here(arguments: list[str], folder: Path, errors: int) -> int:
    """A command in this process, with its streams as a process of its own would have them."""
    os.chdir(folder)
    os.environ["LC_ALL"] = "C.UTF-8"
    for number, stream in ((0, os.open(os.devnull, os.O_RDWR)), (1, os.open(os.devnull, os.O_RDWR)), (2, errors)):
        os.dup2(stream, number)
    sys.stdin, sys.stdout, sys.stderr = (open(n, "w" if n else "r", encoding="utf-8", closefd=False) for n in range(3))  # noqa: SIM115
    code = main(arguments)
    sys.stdout.flush()
    sys.stderr.flush()
    return code


def printed(text: str, diagnostics: tuple[Diagnostic, ...]) -> str:
    """What the terminal shows of a source, without its count at the end."""
    return COUNT.sub("", terminal(diagnostics, {FILE: text})) + "\n"


def told(shown: Page) -> str:
    """What the compiler prints to the wrong source or the wrong commands of a page, without its count at the end."""
    if shown.wrong:
        return printed(shown.wrong.source, compiled(shown.wrong.source).diagnostics)
    return COUNT.sub("", runs(shown)[0].errors) + "\n"


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
