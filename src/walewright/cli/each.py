"""Several files in one command: each for itself, so that one file's faults do not stop the others."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from traceback import clear_frames

from walewright.cli import console
from walewright.cli.collecting import between_sources
from walewright.cli.command_line import CommandLine
from walewright.report.columns import named
from walewright.report.said import said


def each(line: CommandLine, files: Sequence[str], work: Callable[[str], int], doing: str) -> int:
    """Run `work` (file -> exit code), which is `doing` something ("building"), on every file; the worst code is returned.
    Exceptions are reported, see `mishaps`; only where nobody listens any more, or can, the rest is left."""
    worst = 0
    for at, file in enumerate(files):
        if at:
            between_sources()
        try:
            code = work(file)
        except (BrokenPipeError, console.OutputLost):
            raise
        except Exception as fault:
            if isinstance(fault, MemoryError):
                # What the stages still hold is let go first: to say what happened takes memory too.
                clear_frames(fault.__traceback__)
            from walewright.cli import mishaps

            code = mishaps.told(fault, said(doing, file=named(file)), line)
        worst = max(worst, code)
    return worst
