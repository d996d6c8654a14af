"""Several files in one command: each for itself, so that one file's faults do not stop the others."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from walewright.cli import console
from walewright.cli.app import BUG


def each(files: Sequence[str], work: Callable[[str], int], doing: str) -> int:
    """Run `work` (file -> exit code) on every file; the worst code is returned. An unforeseen exception counts as BUG."""
    worst = 0
    for file in files:
        try:
            code = work(file)
        except BrokenPipeError:
            raise
        except Exception as fault:  # a fault of the compiler in one file must not lose the others
            console.confess(fault, f"{doing} {file}")
            code = BUG
        worst = max(worst, code)
    return worst
