"""Printed languages: what writes, reads back, tells and guides in one, together.

A language is a folder of its name in `write`, `readback`, `report` and `guide`, each with its part as `LANGUAGE`; one that has all
four can be printed in. What is slow to load is loaded when it is asked for.
"""

from __future__ import annotations

from importlib import import_module
from importlib.resources import files
from importlib.resources.abc import Traversable
from typing import TYPE_CHECKING

from walewright.record import record

if TYPE_CHECKING:
    from walewright.guide.model import Guide
    from walewright.readback.language import ReadLanguage
    from walewright.report.wording import Language
    from walewright.write.language import PrintedLanguage

ENGLISH = "english"
"""What is printed in where nothing is said."""

STAGES = ("write", "readback", "report", "guide")


@record
class PrintedIn:
    """A language as each stage has it: its words for steps, its grammar, its words for diagnostics, and for all else that is
    printed."""

    name: str
    writing: PrintedLanguage
    reading: ReadLanguage
    telling: Language
    guide: Guide


def known() -> tuple[str, ...]:
    """The languages that there are, alphabetically."""
    # The stages themselves are not loaded for it.
    here = files("walewright")
    found = [{entry.name for entry in here.joinpath(stage).iterdir() if _is_package(entry)} for stage in STAGES]
    return tuple(sorted(set.intersection(*found)))


def _is_package(entry: Traversable) -> bool:
    return entry.is_dir() and entry.joinpath("__init__.py").is_file()


def named(asked: str) -> str:
    """The language of that name, or of that tag of BCP 47, its guide's `code`; what no language is called stays as it is."""
    there = known()
    if asked in there:
        return asked
    return next((name for name in there if printed(name).guide.code == asked), asked)


def printed(name: str = ENGLISH) -> PrintedIn:
    """The language of that name, one of those known."""
    writing, reading, telling, guide = (import_module(f"walewright.{stage}.{name}").LANGUAGE for stage in STAGES)
    return PrintedIn(name, writing, reading, telling, guide)


def telling(name: str = ENGLISH) -> Language:
    """What is told in, alone; in English where there is no language of that name or tag: that itself is told."""
    meant = name if name == ENGLISH else named(name)
    found: Language = import_module(f"walewright.report.{meant if meant in known() else ENGLISH}").LANGUAGE
    return found
