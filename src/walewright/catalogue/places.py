"""Where everything stands in a text of TOML 1.0 (toml.io/en/v1.0.0): each key and each value, to the character.

The reader that comes with Python gives values without places. The text has been read by it before, so that it is known to be
TOML, and all that is left is to find where its parts begin and end.
"""

from __future__ import annotations

import re
import tomllib

from walewright.record import record

TomlPath = tuple[str | int, ...]
"""Where a value stands: ("garments", 1, "sources", 0) is the first source of the second garment."""

TomlStretch = tuple[int, int]

_BARE = re.compile(r"[A-Za-z0-9_-]+")
_BLANK = re.compile(r"[ \t]*")
_EMPTY = re.compile(r"(?:[ \t\r\n]|#[^\n]*)*")
_SCALAR = re.compile(r"[^,\]}#\n]*")
_LONG = {'"""': re.compile(r'"""(?:[^\\]|\\.)*?"""("{0,2})', re.DOTALL), "'''": re.compile(r"'''.*?'''('{0,2})", re.DOTALL)}
_SHORT = {'"': re.compile(r'"(?:[^"\\]|\\.)*"'), "'": re.compile(r"'[^']*'")}


@record
class TomlPlace:
    """A key and its value; the key of an element of a list is the element itself. The value of a table that has a line of its own
    is that line."""

    key: TomlStretch
    value: TomlStretch


def places(text: str) -> dict[TomlPath, TomlPlace]:
    """The places of all keys and values of `text`, which is TOML, by where they stand."""
    return _Scanner(text).scanned()


class _Scanner:
    def __init__(self, text: str) -> None:
        self._toml, self.at = text, 0
        self.found: dict[TomlPath, TomlPlace] = {}
        self._tables: dict[TomlPath, int] = {}
        """Of each list of tables, the number of the last."""

    def scanned(self) -> dict[TomlPath, TomlPlace]:
        within: TomlPath = ()
        while self._skip(_EMPTY) < len(self._toml):
            if self._toml[self.at] == "[":
                within = self._head()
            else:
                self._pair(within)
        return self.found

    def _skip(self, what: re.Pattern[str]) -> int:
        found = what.match(self._toml, self.at)
        self.at = found.end() if found else self.at
        return self.at

    def _head(self) -> TomlPath:
        """A line in brackets: the table that the lines below it belong to."""
        start = self.at
        several = self._toml.startswith("[[", start)
        self.at += 2 if several else 1
        parts = self._key()
        self.at += 2 if several else 1
        line = (start, self.at)
        path = self._with_numbers(parts[:-1])
        last = (*path, parts[-1])
        self.found.setdefault(last, TomlPlace(line, line))
        if not several:
            return self._numbered(last)
        self._tables[last] = self._tables.get(last, -1) + 1
        path = self._numbered(last)
        self.found[path] = TomlPlace(line, line)
        return path

    def _with_numbers(self, parts: tuple[str, ...]) -> TomlPath:
        path: TomlPath = ()
        for part in parts:
            path = self._numbered((*path, part))
        return path

    def _numbered(self, path: TomlPath) -> TomlPath:
        return (*path, self._tables[path]) if path in self._tables else path

    def _key(self) -> tuple[str, ...]:
        """The parts of a key with stops between them; what is left behind it is blank."""
        parts = []
        while True:
            self._skip(_BLANK)
            start, mark = self.at, self._toml[self.at]
            self._skip(_SHORT.get(mark, _BARE))
            raw = self._toml[start : self.at]
            parts.append(str(tomllib.loads(f"x = {raw}")["x"]) if mark in _SHORT else raw)
            self._skip(_BLANK)
            if self._toml[self.at] != ".":
                return tuple(parts)
            self.at += 1

    def _pair(self, within: TomlPath) -> None:
        start = self.at
        parts = self._key()
        key = (start, len(self._toml[: self.at].rstrip(" \t")))
        # The sign between the two.
        self.at += 1
        value = self._value((*within, *parts))
        for end in range(1, len(parts) + 1):
            self.found.setdefault((*within, *parts[:end]), TomlPlace(key, value))

    def _value(self, path: TomlPath) -> TomlStretch:
        self._skip(_BLANK)
        start = self.at
        mark = self._toml[start : start + 1]
        if self._toml[start : start + 3] in _LONG:
            self._skip(_LONG[self._toml[start : start + 3]])
        elif mark in _SHORT:
            self._skip(_SHORT[mark])
        elif mark == "[":
            self._list(path)
        elif mark == "{":
            self._braced(path)
        else:
            self._skip(_SCALAR)
            self.at = start + len(self._toml[start : self.at].rstrip())
        return start, self.at

    def _list(self, path: TomlPath) -> None:
        self.at, number = self.at + 1, 0
        while self._toml[self._skip(_EMPTY)] != "]":
            self.found[(*path, number)] = TomlPlace(*[self._value((*path, number))] * 2)
            number += 1
            if self._toml[self._skip(_EMPTY)] == ",":
                self.at += 1
        self.at += 1

    def _braced(self, path: TomlPath) -> None:
        self.at += 1
        while self._toml[self._skip(_EMPTY)] != "}":
            self._pair(path)
            if self._toml[self._skip(_EMPTY)] == ",":
                self.at += 1
        self.at += 1
