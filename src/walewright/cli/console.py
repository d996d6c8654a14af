"""What the commands say: results to standard output, diagnostics and progress to standard error."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager

from walewright import __version__
from walewright.report.model import Diagnostic


def say(text: str) -> None:
    """One line or table of results."""
    print(text)


def report(diagnostics: Iterable[Diagnostic], sources: Mapping[str, str]) -> None:
    """Diagnostics with the places they speak of, in colour on a terminal; `sources` maps file names to their texts."""
    told = tuple(diagnostics)
    if not told:
        return
    from walewright.report.render import terminal

    if not sys.stderr.isatty():
        print(terminal(told, sources), file=sys.stderr)
        return
    from rich.console import Console

    Console(stderr=True, highlight=False, soft_wrap=True).print(terminal(told, sources, markup=True))


def confess(fault: BaseException, doing: str) -> None:
    """An exception nobody foresaw: a fault of the compiler, told without a traceback."""
    place = ""
    trace = fault.__traceback__
    while trace is not None:
        code = trace.tb_frame.f_code
        place = f"{code.co_filename.rsplit('walewright/', 1)[-1]}, line {trace.tb_lineno}, in {code.co_name}"
        trace = trace.tb_next
    print(
        f"bug[compiler-fault]: walewright {__version__} failed while {doing}\n"
        f"  {type(fault).__name__}: {fault}\n"
        f"  at {place}\n"
        f"  Python {sys.version.split()[0]} on {sys.platform}\n"
        "  note: the fault is in the compiler, not in your pattern; nothing was written for it\n"
        "  help: report it to the maintainers of your copy with these lines and the source file",
        file=sys.stderr,
    )


def abandon_output() -> None:
    """The reader of standard output has gone (a closed pipe): let Python's own flush at the end find nothing to do."""
    os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


@contextmanager
def progress(total: int) -> Iterator[Progress]:
    """A bar on standard error, on a terminal only."""
    if not sys.stderr.isatty():
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

    def step(self, doing: str) -> None:
        """Say what is being done now, and count the last thing as done."""
        from rich.progress import Progress as Bar

        if isinstance(self._bar, Bar):
            self._bar.update(self._task, description=doing, advance=1)  # type: ignore[arg-type]
