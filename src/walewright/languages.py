"""Printed languages: what writes, reads back and tells in one, together.

A language is a folder of its name in `write`, in `readback` and in `report`, each with its part as `LANGUAGE`; one that has all
three can be printed in. What is slow to load is loaded when it is asked for.
"""

from __future__ import annotations

from dataclasses import dataclass
from importlib import import_module
from importlib.resources import files
from importlib.resources.abc import Traversable
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from walewright.readback.language import ReadLanguage
    from walewright.report.wording import Language
    from walewright.write.language import PrintedLanguage

ENGLISH = "english"
"""What is printed in where nothing is said."""

STAGES = ("write", "readback", "report")


@dataclass(frozen=True, slots=True)
class PrintedIn:
    """A language as each stage has it: its words for steps, its grammar, and its words for diagnostics."""

    name: str
    writing: PrintedLanguage
    reading: ReadLanguage
    telling: Language


def known() -> tuple[str, ...]:
    """The languages that there are, alphabetically."""
    found = [{entry.name for entry in files(f"walewright.{stage}").iterdir() if _is_package(entry)} for stage in STAGES]
    return tuple(sorted(set.intersection(*found)))


def _is_package(entry: Traversable) -> bool:
    return entry.is_dir() and entry.joinpath("__init__.py").is_file()


def printed(name: str = ENGLISH) -> PrintedIn:
    """The language of that name, one of those known."""
    writing, reading, telling = (import_module(f"walewright.{stage}.{name}").LANGUAGE for stage in STAGES)
    return PrintedIn(name, writing, reading, telling)
