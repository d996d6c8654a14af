"""The lines of a catalogue: its text as TOML with places, and what takes values out of it and keeps what is wrong with them."""

from __future__ import annotations

import bisect
import re
import tomllib
from collections.abc import Mapping, Sequence
from typing import Any

from walewright.catalogue.places import TomlPath, TomlPlace, places
from walewright.report.model import Diagnostic, Span, diagnosed
from walewright.report.near import near
from walewright.report.said import Fact

LONGEST = 200
"""Letters of a text that is printed in a line, or names something."""
MOST_UNREAD = 8
"""Lines that are passed over because they are no TOML; a text with more of them is something else."""
MOST_LISTED = 500


def toml_lines(file: str, text: str) -> tuple[CatalogueLines, bool]:
    """The lines of the text of `file`, and whether all of it is TOML. Other lines are reported and passed over, as long as
    others between them can be read."""
    faults: list[Diagnostic] = []
    left, before = text, -2
    for _ in range(MOST_UNREAD):
        try:
            return CatalogueLines(file, tomllib.loads(left), places(left), faults), not faults
        except tomllib.TOMLDecodeError as unread:
            at, line = _stopped(left, str(unread))
        except (ValueError, RecursionError):
            # Numbers of thousands of digits, and brackets within brackets without end: the reader does not say where.
            at, line = _unbounded(left)
        if line <= before + 1:
            break
        faults.append(diagnosed("catalogue-line/no-toml", (_to_end(file, left, at), "stopped"), helps=("as-in",)))
        before = line
        rows = left.split("\n")
        rows[line] = " " * len(rows[line])
        left = "\n".join(rows)
    if not faults:
        faults.append(diagnosed("catalogue-line/no-toml", (Span(file, 0, 0), "stopped"), helps=("as-in",)))
    return CatalogueLines(file, {}, {}, faults), False


def _unbounded(text: str) -> tuple[int, int]:
    """The first line with which the reader of TOML gives up, from 0, and where it begins: whatever follows does not matter."""
    rows = text.split("\n")
    line = bisect.bisect_left(range(len(rows)), True, key=lambda last: _gives_up("\n".join(rows[: last + 1])))
    return sum(len(row) + 1 for row in rows[:line]), line


def _gives_up(text: str) -> bool:
    try:
        tomllib.loads(text)
    except tomllib.TOMLDecodeError:
        return False
    except (ValueError, RecursionError):
        return True
    return False


def _stopped(text: str, said: str) -> tuple[int, int]:
    """Where the reader of TOML stopped, and the number of that line from 0: it says so at the end of its sentence only."""
    found = re.search(r"\(\D+(\d+),\D+(\d+)\)$", said)
    if found is None:
        at = len(text.rstrip())
        return at, text.count("\n", 0, at)
    line, column = int(found[1]) - 1, int(found[2]) - 1
    # A text without its closing quote is found out at the end of its line.
    return sum(len(one) + 1 for one in text.split("\n")[:line]) + column, line


def _to_end(file: str, text: str, at: int) -> Span:
    """From there to the end of the line; the whole line where nothing is left of it."""
    start = text.rfind("\n", 0, at) + 1
    end = text.find("\n", at)
    end = len(text) if end < 0 else end
    return Span(file, at, end) if text[at:end].strip() else Span(file, start, max(start, end))


class CatalogueLines:
    """Takes values out of a catalogue by where they stand; what is wrong with them goes into `faults`."""

    def __init__(
        self, file: str, values: Mapping[str, Any], placed: Mapping[TomlPath, TomlPlace], faults: list[Diagnostic]
    ) -> None:
        self.file, self.values, self.faults = file, values, faults
        self._placed = placed

    def _nearest(self, path: TomlPath) -> TomlPlace:
        return next(
            (self._placed[path[:end]] for end in range(len(path), 0, -1) if path[:end] in self._placed), TomlPlace((0, 0), (0, 0))
        )

    def value(self, *path: str | int) -> Span:
        """The place of a value, or of what it would lie in."""
        return Span(self.file, *self._nearest(path).value)

    def key(self, *path: str | int) -> Span:
        """The place of a key, or of what it would lie in."""
        return Span(self.file, *self._nearest(path).key)

    def fault(self, kind: str, place: Span, *helps: str, label: str = "", **facts: Fact) -> None:
        """Report something at a place."""
        self.faults.append(diagnosed(kind, (place, label), helps=helps, facts=facts))

    def only(self, path: TomlPath, table: Mapping[str, Any], known: Sequence[str]) -> None:
        """Refuses every key of a table but the `known` ones."""
        for name in table:
            if name not in known:
                meant = near(name, known)
                help_ = "did-you-mean" if meant else "known"
                facts: dict[str, Fact] = {"name": name, "near": meant or "", "known": tuple(known)}
                self.faults.append(
                    diagnosed("catalogue-line/unknown", (self.key(*path, name), "unknown"), helps=(help_,), facts=facts)
                )

    def tables(self, name: str) -> list[Mapping[str, Any]]:
        """A list of tables, `[[name]]` each; empty where it is something else."""
        value = self.values.get(name, [])
        if not isinstance(value, list) or not all(isinstance(one, dict) for one in value):
            self.fault("catalogue-line/no-tables", self.value(name), "write-tables", name=name)
            return []
        return value

    def table(self, name: str) -> Mapping[str, Any]:
        """A table `[name]`; empty where it is something else."""
        return self.in_table((name,), self.values.get(name, {}))

    def in_table(self, path: TomlPath, value: Any) -> Mapping[str, Any]:
        """A value that has to be a table."""
        if not isinstance(value, dict):
            self.fault("catalogue-line/no-table", self.value(*path), "write-table", name=_name(path))
            return {}
        return value

    def text(self, path: TomlPath, value: Any, most: int = LONGEST) -> str:
        """A text of one line; "" for anything else."""
        if not isinstance(value, str) or not value.strip() or not value.isprintable() or len(value) > most:
            self.fault("catalogue-line/no-text", self.value(*path), "write-text", name=_name(path), most=most)
            return ""
        return value.strip()

    def listed(self, path: TomlPath, value: Any, most: int = MOST_LISTED) -> tuple[tuple[TomlPath, Any], ...]:
        """The elements of a list, each with where it stands; none of what is no list, or empty."""
        if not isinstance(value, list) or not 0 < len(value) <= most:
            self.fault("catalogue-line/no-list", self.value(*path), "write-list", name=_name(path), most=most)
            return ()
        return tuple(((*path, at), one) for at, one in enumerate(value))

    def texts(self, path: TomlPath, value: Any, most: int = MOST_LISTED, longest: int = LONGEST) -> tuple[str, ...]:
        """A list of texts."""
        return tuple(self.text(at, one, longest) for at, one in self.listed(path, value, most))

    def some_of(self, path: TomlPath, value: Any, known: Sequence[str]) -> tuple[str, ...]:
        """A list of names of those that are known, each once."""
        found: list[str] = []
        for at, one in self.listed(path, value):
            if not isinstance(one, str) or one not in known:
                meant = near(one, known) if isinstance(one, str) else None
                help_ = "did-you-mean" if meant else "one-of"
                what, shown = _name(path), self.shown(at)
                facts: dict[str, Fact] = {"name": what, "text": shown, "near": meant or "", "known": tuple(known)}
                place = (self.value(*at), "not-known")
                self.faults.append(diagnosed("catalogue-line/not-one-of", place, helps=(help_,), facts=facts))
            elif one in found:
                self.fault("catalogue-line/twice", self.value(*at), "leave-one-out", name=one)
            else:
                found.append(one)
        return tuple(found)

    def shown(self, path: TomlPath) -> str:
        """A value as messages show it."""
        value: Any = self.values
        for part in path:
            value = value[part]
        return repr(value) if isinstance(value, str) else str(value)


def _name(path: TomlPath) -> str:
    return next((part for part in reversed(path) if isinstance(part, str)), "")
