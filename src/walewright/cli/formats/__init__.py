"""formats: what a pattern can be built as, a file each.

A format's file has a `FORMAT`: how its files are named, and how their bytes are made of a proven pattern. What is slow to load it
imports in there. Its name goes into `NAMES`, and the rest of the commands know it.
"""

from __future__ import annotations

from importlib import import_module

from walewright.cli.formats.format import Format

__all__ = ["NAMES", "USUAL", "Format", "format_named"]

USUAL = ("pdf", "html", "text", "plan")
"""Those that are made where none is named."""

NAMES = (*USUAL, "bench", "cover")
"""In the order in which they are made and told; each is a module of this package."""


def format_named(name: str) -> Format:
    """The format of that name, one of `NAMES`."""
    found: Format = import_module(f"{__name__}.{name}").FORMAT
    return found
