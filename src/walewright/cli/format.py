"""`walewright format`: sources written anew from their trees."""

from __future__ import annotations

from collections.abc import Sequence

from walewright import world
from walewright.cli import console
from walewright.cli.each import each
from walewright.pipeline import has_errors


def format_sources(files: Sequence[str], check_only: bool) -> int:
    """Rewrite each file whose spacing differs, or only tell. A file that cannot be read whole is left as it is."""
    from walewright import source

    def one(file: str) -> int:
        text, fault = world.read_source(file)
        if text is None:
            console.report((fault,) if fault else (), {})
            return 1
        tree, faults = source.read(file, text)
        console.report(faults, {file: text})
        if has_errors(faults):
            return 1
        tidy = source.tidy(tree)
        if tidy == text:
            return 0
        if check_only:
            console.say(f"{file} would change")
            return 1
        unwritable = world.write_atomic(file, tidy.encode())
        if unwritable is not None:
            console.report((unwritable,), {})
            return 1
        console.say(f"rewrote {file}")
        return 0

    return each(files, one, "formatting")
