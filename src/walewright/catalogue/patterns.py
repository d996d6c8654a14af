"""Patterns of names: which of the sources that are there a line of a catalogue means."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fnmatch import fnmatchcase
from typing import Any

from walewright.catalogue.lines import CatalogueLines
from walewright.catalogue.places import TomlPath
from walewright.report.columns import named
from walewright.report.near import near


def matches(pattern: str, name: str) -> bool:
    """Whether a path fits a pattern: `*` and `?` stand for letters of one name, `**` for any number of folders."""
    return _fits(pattern.split("/"), name.split("/"))


def _fits(pattern: Sequence[str], parts: Sequence[str]) -> bool:
    if not pattern or not parts:
        return not parts and all(part == "**" for part in pattern)
    if pattern[0] == "**":
        return _fits(pattern[1:], parts) or _fits(pattern, parts[1:])
    return fnmatchcase(parts[0], pattern[0]) and _fits(pattern[1:], parts[1:])


def _is_text(name: str) -> bool:
    """Whether a path is one in UTF-8; the system takes others as well."""
    try:
        name.encode()
    except UnicodeEncodeError:
        return False
    return True


class Matching:
    """Finds the sources that patterns mean, each once, in the order of the patterns."""

    def __init__(self, lines: CatalogueLines, there: Sequence[str]) -> None:
        self._lines, self._there = lines, there

    def sources(self, path: TomlPath, table: Mapping[str, Any], whole: bool) -> tuple[str, ...]:
        """The sources of a table, which has to name some."""
        if "sources" in table:
            return self.named((*path, "sources"), table["sources"])
        if whole:
            self._lines.fault("catalogue-line/no-sources", self._lines.key(*path), "add-sources", name=str(path[0]))
        return ()

    def named(self, path: TomlPath, value: Any) -> tuple[str, ...]:
        """The sources that a list of patterns means; a pattern that means none is a slip."""
        found: dict[str, None] = {}
        for at, one in self._lines.listed(path, value):
            pattern = self._lines.text(at, one)
            fitting = [name for name in self._there if matches(pattern, name)]
            unfit = next((name for name in fitting if not _is_text(name)), None)
            if unfit is not None:
                # What a catalogue says about its sources is text in UTF-8, and so are the names of what it makes.
                self._lines.fault("catalogue-line/name-no-text", self._lines.value(*at), "rename-source", name=named(unfit))
            found |= dict.fromkeys(name for name in fitting if _is_text(name))
            if pattern and not fitting:
                meant = near(pattern, self._there)
                help_ = "did-you-mean" if meant else "in-folder"
                self._lines.fault(
                    "catalogue-line/no-match", self._lines.value(*at), help_, label="meant-here", name=pattern, near=meant or ""
                )
        return tuple(found)
