"""`--watch`: a run whenever a file of the catalogue's folder is saved, until somebody asks to stop."""

from __future__ import annotations

import os
from collections.abc import Callable
from typing import Any

from walewright.cli import stops
from walewright.cli.command_line import CommandLine
from walewright.report.columns import named
from walewright.report.said import said

SETTLED_MS = 200
"""What is saved within so long is one change: editors write a file in several steps."""
LOOK_MS = 250
"""How often it is looked whether somebody asks to stop."""


def watch(line: CommandLine, folder: str, into: str, run: Callable[[], int]) -> int:
    """Run at once, and again after every change in `folder` or below, but in the folder of the products. It ends when it is
    stopped; the exit code is that of what is missing for it."""
    try:
        import watchfiles
    except ImportError:
        line.report((line.fault("option-value/not-installed", "install-extra", at=("--watch",), option="--watch", extra="watch"),))
        return 2
    library: Any = watchfiles
    here, products = os.path.realpath(folder or os.curdir), os.path.realpath(into)

    def of_ours(_: object, path: str) -> bool:
        within = os.path.relpath(path, here).split(os.sep)
        return not any(part.startswith(".") for part in within) and os.path.commonpath((products, path)) != products

    # The folder is watched from before the first run, so that nothing that is saved meanwhile is missed.
    changes = library.watch(
        here, watch_filter=of_ours, debounce=SETTLED_MS, rust_timeout=LOOK_MS, yield_on_timeout=True, raise_interrupt=False
    )
    fresh = True
    for changed in changes:
        if fresh or changed:
            fresh = False
            run()
            line.say(said("watching", folder=named(folder or os.curdir)))
    raise stops.asked()
