"""What the commands say: results to standard output, diagnostics and progress to standard error.

Both may be closed, full, or written in an encoding that lacks letters. What standard output is for must not be lost unseen:
that is `OutputLost`. Where standard error cannot be written, there is nowhere left to say so, and the exit code speaks alone.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Callable, Iterable, Iterator, Mapping
from contextlib import contextmanager
from typing import TYPE_CHECKING, Literal, TextIO

from walewright import __version__
from walewright.report.columns import harmless, named
from walewright.report.model import Diagnostic
from walewright.report.said import Said, said
from walewright.report.wording import phrased

if TYPE_CHECKING:
    from walewright.report.as_json import Edits
    from walewright.report.wording import Language

MessageForm = Literal["text", "json"]
"""How messages are written: for people, or for programs."""


class OutputLost(Exception):
    """Standard output cannot be written. `reason` is the system's; `done` tells what was done before and could not be said."""

    def __init__(self, reason: str, done: str = "") -> None:
        super().__init__(reason)
        self.reason, self.done = reason, done


def prepare() -> None:
    """To be called first. A letter that an encoding lacks becomes a question mark; and where a stream was closed by whoever
    started the program, its number is taken, so that no file opened later gets it and is written to by mistake."""
    for number in (0, 1, 2):
        try:
            os.fstat(number)
        except OSError:
            os.open(os.devnull, os.O_RDWR)
    for stream in (sys.stdout, sys.stderr):
        change = getattr(stream, "reconfigure", None)
        if change is not None:
            change(errors="replace")


def say(text: str, *, done: bool = False) -> None:
    """One line or table of results, written at once; with `done`, it says what was done. Raises OutputLost, or BrokenPipeError
    when nobody listens any more."""
    untold = text if done else ""
    if _stream(sys.stdout) is None:
        raise OutputLost("it is closed", untold)
    try:
        print(harmless(text))
        sys.stdout.flush()
    except BrokenPipeError:
        raise
    except OSError as fault:
        raise lost_by(fault, untold) from fault


def report(
    diagnostics: Iterable[Diagnostic],
    sources: Mapping[str, str],
    form: MessageForm = "text",
    edits: Edits | None = None,
    words: Language | None = None,
) -> None:
    """Diagnostics with the places they speak of, in colour on a terminal, or for programs; `sources` maps file names to their
    texts, `edits` tells what helps change in them; `words`, what they are told in if not in English."""
    from walewright.report.english import ENGLISH

    words = words or ENGLISH
    told = tuple(diagnostics)
    if not told:
        return
    if form == "json":
        from walewright.report.as_json import as_json, no_edits

        _tell(as_json(told, sources, edits or no_edits, words))
        return
    from walewright.report.render import terminal

    if not on_terminal():
        _tell(terminal(told, sources, language=words))
        return
    from rich.console import Console

    try:
        Console(stderr=True, highlight=False, soft_wrap=True).print(terminal(told, sources, markup=True, language=words))
    except OSError:
        _abandon(sys.stderr)


def confess(fault: BaseException, doing: Said, words: Language) -> None:
    """An exception nobody foresaw: a fault of the compiler, told without a traceback."""
    place = ("", 0, "")
    trace = fault.__traceback__
    while trace is not None:
        code = trace.tb_frame.f_code
        place = (code.co_filename.rsplit("walewright/", 1)[-1], trace.tb_lineno, code.co_name)
        trace = trace.tb_next
    failed = f"{type(fault).__name__}: {fault}"
    facts = said(
        "bug",
        version=__version__,
        doing=doing,
        fault=failed,
        file=place[0],
        line=place[1],
        function=place[2],
        python=sys.version.split()[0],
        platform=sys.platform,
    )
    _tell(phrased(facts, words))


def finish() -> None:
    """To be called last: whatever still waits to be written. Raises OutputLost."""
    try:
        if _stream(sys.stdout) is not None:
            sys.stdout.flush()
    except BrokenPipeError:
        abandon_output()
    except OSError as fault:
        raise lost_by(fault) from fault


def lost_by(fault: OSError, done: str = "") -> OutputLost:
    """What a refused write to standard output comes to; nothing more is written there."""
    abandon_output()
    return OutputLost((fault.strerror or str(fault)).lower(), done)


def abandon_output() -> None:
    """Standard output is lost: let Python's own flush at the end find nothing to do."""
    _abandon(sys.stdout)


def relay(text: str) -> None:
    """Messages that were made ready elsewhere, colours included, to standard error, if it can be written."""
    if _stream(sys.stderr) is None:
        return
    try:
        print(text, file=sys.stderr)
        sys.stderr.flush()
    except OSError:
        _abandon(sys.stderr)


def _tell(text: str) -> None:
    """One message to standard error, if it can be written."""
    relay(harmless(text))


def _abandon(stream: TextIO) -> None:
    try:
        number = stream.fileno()
        nowhere = os.open(os.devnull, os.O_WRONLY)
        os.dup2(nowhere, number)
        os.close(nowhere)
    except (OSError, ValueError):
        # A stream without a number (in a test) has nothing to be flushed at the end.
        return


def _stream(stream: TextIO | None) -> TextIO | None:
    """The stream, if it can be written to at all: Python has None for one that was closed before it started."""
    return None if stream is None or stream.closed else stream


def on_terminal() -> bool:
    """Whether messages are read on a terminal, and so may be in colour."""
    stream = _stream(sys.stderr)
    return stream is not None and stream.isatty()


@contextmanager
def progress(total: int) -> Iterator[Progress]:
    """A bar on standard error, on a terminal only."""
    if not on_terminal():
        yield Progress()
        return
    from rich.console import Console
    from rich.progress import BarColumn, MofNCompleteColumn, TextColumn
    from rich.progress import Progress as Bar

    columns = (TextColumn("{task.description}"), BarColumn(), MofNCompleteColumn())
    with Bar(*columns, console=Console(stderr=True), transient=True) as bar:
        yield Progress(bar, bar.add_task("", total=total))


class Progress:
    """Steps of a progress bar; without a bar it does nothing."""

    def __init__(self, bar: object = None, task: object = None) -> None:
        self._bar = bar
        self._task = task

    def step(self, doing: Callable[[], str]) -> None:
        """Say what is being done now, and count the last thing as done."""
        if self._bar is None:
            return
        from rich.markup import escape
        from rich.progress import Progress as Bar

        if isinstance(self._bar, Bar):
            self._bar.update(self._task, description=escape(named(doing())), advance=1)  # type: ignore[arg-type]
