"""`--watch`: a run whenever a file of the catalogue's folder is saved, until somebody asks to stop."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path
from typing import Any

from walewright import world
from walewright.catalogue.model import MANIFEST, SHELF
from walewright.cli import stops
from walewright.cli.command_line import CommandLine
from walewright.cli.publishing.records import folder_of
from walewright.report.columns import named
from walewright.report.said import said

SETTLED_MS = 200
"""What is saved within so long is one change: editors write a file in several steps."""
LOOK_MS = 250
"""How often it is looked whether somebody asks to stop."""
MARK = "made.svg"
"""By its size the shelf sees that something was made since."""


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
    try:
        for changed in changes:
            if fresh or changed:
                fresh = False
                run()
                line.say(said("watching", folder=named(folder or os.curdir), page=_marked(into)))
    finally:
        world.forget(folder_of(into), (MARK,))
    raise stops.asked()


def _marked(into: str) -> str:
    """Leave a mark of what was made last, by which the shelf sees that it is no longer what it shows. Returns the shelf's address;
    empty where none was made yet."""
    shelf = os.path.join(into, SHELF)
    made = "".join(world.file_fingerprint(os.path.join(into, name)) for name in (MANIFEST, SHELF))
    if not os.path.isfile(shelf):
        return ""
    of_all = world.fingerprint(made.encode())
    # A picture with a size is all that a page opened from a file may ask of what lies beside it.
    wide, high = (int(of_all[at : at + 3], 16) + 1 for at in (0, 3))
    mark = world.package_text(f"catalogue/templates/{MARK}").format(wide=wide, high=high).encode()
    if world.small_file(os.path.join(folder_of(into), MARK), len(mark)) != mark:
        world.write_set(folder_of(into), {MARK: mark})
    return f"{Path(os.path.abspath(shelf)).as_uri()}#watch"
