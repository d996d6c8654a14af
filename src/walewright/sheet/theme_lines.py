"""The description in a theme's folder, `theme.toml`: its lines as values, each with its place. It is TOML 1.0.

What it may have is in docs/themes.md. Files that it names are not looked at here.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Collection, Mapping
from dataclasses import field
from typing import Any, cast, get_args

from walewright.record import record
from walewright.report.model import Diagnostic, Span, diagnosed
from walewright.report.said import Fact
from walewright.sheet.fonts import FACES
from walewright.sheet.theme_contrast import channels, hexadecimal
from walewright.sheet.themed import FontStyle

MOST_LINES = 6
"""Lines that a publisher prints of itself; more would push the cover's list of contents onto the next page."""
LONGEST_LINE = 120
"""Letters; as much as two lines of small print."""
MOST_FONTS = 12
LONGEST_FAMILY = 40
HEAVIEST = 1000
"""The heaviest weight of a font (CSS Fonts Module Level 4, section 2.2)."""
USUAL_WEIGHT = 400

HOUSE_FAMILIES = frozenset(face.family.lower() for face in FACES)
STYLES: tuple[str, ...] = get_args(FontStyle)

WHOLE = ("colours", "font", "imprint", "logo")
LOGO = ("alternative", "file")
FONT = ("family", "file", "style", "weight")

Within = tuple[str | int, ...]
"""Where a value stands: ("font", 1, "file") is the file of the second font."""


@record
class LogoLine:
    file: str
    alternative: str
    span: Span
    """Of the line that names the file."""


@record
class FontLine:
    file: str
    family: str
    weight: int
    style: FontStyle
    span: Span
    """Of the line that names the file."""


@record
class Description:
    """What a theme's description says; `colours` as "#rrggbb" by the names of docs/themes.md, and where each stands."""

    imprint: tuple[str, ...] = ()
    logo: LogoLine | None = None
    colours: Mapping[str, str] = field(default_factory=dict)
    places: Mapping[str, Span] = field(default_factory=dict)
    fonts: tuple[FontLine, ...] = ()


def described(file: str, text: str, names: Collection[str]) -> tuple[Description | None, tuple[Diagnostic, ...]]:
    """The description in the text of `file`, or everything that is wrong in it. `names`: of the colours that a sheet has."""
    try:
        lines = tomllib.loads(text)
    except tomllib.TOMLDecodeError as unread:
        return None, (_unread(file, text, str(unread)),)
    except (ValueError, RecursionError):
        # Numbers of thousands of digits, and brackets within brackets without end.
        return None, (diagnosed("theme-line/no-toml", (Span(file, 0, 0), ""), helps=("as-in",)),)
    reading = _Described(file, text)
    reading.only((), lines, WHOLE)
    imprint = reading.imprint(lines)
    logo = reading.logo(lines)
    colours = reading.colours(lines, names)
    fonts = reading.fonts(lines)
    if reading.faults:
        return None, tuple(reading.faults)
    places = {name: reading.span("colours", name) for name in colours}
    return Description(imprint, logo, colours, places, fonts), ()


def _unread(file: str, text: str, said: str) -> Diagnostic:
    """What the reader of TOML stopped at: it gives the place at the end of its sentence only."""
    found = re.search(r"\(\D+(\d+),\D+(\d+)\)$", said)
    at = len(text.rstrip())
    if found is not None:
        line, column = int(found[1]), int(found[2])
        at = min(at, sum(len(one) + 1 for one in text.split("\n")[: line - 1]) + column - 1)
    return diagnosed("theme-line/no-toml", (Span(file, at, min(at + 1, len(text))), "stopped"), helps=("as-in",))


class _Described:
    """Takes values out of the description, and keeps what is wrong with them."""

    def __init__(self, file: str, text: str) -> None:
        self.file = file
        self.faults: list[Diagnostic] = []
        self._places = _places(text)

    def span(self, *path: str | int) -> Span:
        """Of the line that a value stands in, or of what it lies in."""
        known = next((self._places[path[:end]] for end in range(len(path), 0, -1) if path[:end] in self._places), (0, 0))
        return Span(self.file, *known)

    def only(self, path: Within, table: Mapping[str, Any], known: tuple[str, ...]) -> None:
        for name in table:
            if name not in known:
                at = (self.span(*path, name), "unknown")
                self.faults.append(diagnosed("theme-line/unknown", at, helps=("known",), name=name, known=known))

    def table(self, value: Any, path: Within) -> Mapping[str, Any] | None:
        if not isinstance(value, dict):
            name = str(path[0])
            self.faults.append(diagnosed("theme-line/no-table", (self.span(*path), ""), helps=("write-table",), name=name))
            return None
        return value

    def text(self, value: Any, path: Within, most: int) -> str:
        """A text that is printed in a line, or names something; "" for anything else."""
        if not isinstance(value, str) or not value.strip() or not value.isprintable() or len(value) > most:
            name = str(next(part for part in reversed(path) if isinstance(part, str)))
            facts: dict[str, Fact] = {"name": name, "most": most}
            self.faults.append(diagnosed("theme-line/no-text", (self.span(*path), ""), helps=("write-text",), facts=facts))
            return ""
        return value.strip()

    def needed(self, table: Mapping[str, Any], name: str, path: Within, most: int) -> str:
        if name not in table:
            within = str(path[0])
            at = (self.span(*path), "")
            self.faults.append(diagnosed("theme-line/lacking", at, helps=("add-it",), name=name, within=within))
            return ""
        return self.text(table[name], (*path, name), most)

    def imprint(self, lines: Mapping[str, Any]) -> tuple[str, ...]:
        value = lines.get("imprint", [])
        if not isinstance(value, list) or len(value) > MOST_LINES:
            at = (self.span("imprint"), "")
            self.faults.append(diagnosed("theme-line/no-list", at, helps=("write-list",), most=MOST_LINES))
            return ()
        return tuple(self.text(one, ("imprint",), LONGEST_LINE) for one in value)

    def logo(self, lines: Mapping[str, Any]) -> LogoLine | None:
        table = self.table(lines["logo"], ("logo",)) if "logo" in lines else None
        if table is None:
            return None
        self.only(("logo",), table, LOGO)
        file = self.needed(table, "file", ("logo",), 200)
        return LogoLine(file, self.needed(table, "alternative", ("logo",), 200), self.span("logo", "file"))

    def colours(self, lines: Mapping[str, Any], names: Collection[str]) -> dict[str, str]:
        found = {}
        for name, value in (self.table(lines.get("colours", {}), ("colours",)) or {}).items():
            at = (self.span("colours", name), "")
            colour = channels(value) if isinstance(value, str) else None
            if name not in names:
                known = tuple(sorted(names))
                self.faults.append(diagnosed("theme-line/colour-unknown", at, helps=("colours-are",), name=name, known=known))
            elif colour is None:
                self.faults.append(diagnosed("theme-line/no-colour", at, helps=("write-colour",), name=name))
            else:
                found[name] = hexadecimal(colour)
        return found

    def fonts(self, lines: Mapping[str, Any]) -> tuple[FontLine, ...]:
        value = lines.get("font", [])
        if not isinstance(value, list) or len(value) > MOST_FONTS or not all(isinstance(one, dict) for one in value):
            at = (self.span("font"), "")
            self.faults.append(diagnosed("theme-line/no-fonts", at, helps=("write-fonts",), most=MOST_FONTS))
            return ()
        found = [self.font(one, ("font", number)) for number, one in enumerate(value)]
        seen: set[tuple[str, int, str]] = set()
        for font in found:
            face = (font.family.lower(), font.weight, font.style)
            if font.family and face in seen:
                facts: dict[str, Fact] = {"family": font.family, "weight": str(font.weight), "style": font.style}
                self.faults.append(diagnosed("theme-line/face-twice", (font.span, ""), helps=("leave-one-out",), facts=facts))
            seen.add(face)
        return tuple(found)

    def font(self, table: Mapping[str, Any], path: Within) -> FontLine:
        self.only(path, table, FONT)
        file = self.needed(table, "file", path, 200)
        family = self.needed(table, "family", path, LONGEST_FAMILY)
        at = (self.span(*path, "family"), "")
        if any(not (c.isalnum() or c in " -") for c in family):
            self.faults.append(diagnosed("theme-line/family", at, helps=("write-family",), family=family))
        if family.lower() in HOUSE_FAMILIES:
            self.faults.append(diagnosed("theme-line/house-family", at, helps=("other-name",), family=family))
        weight, style = table.get("weight", USUAL_WEIGHT), table.get("style", STYLES[0])
        if type(weight) is not int or not 1 <= weight <= HEAVIEST:
            at = (self.span(*path, "weight"), "")
            self.faults.append(diagnosed("theme-line/weight", at, helps=("write-weight",), most=HEAVIEST))
            weight = USUAL_WEIGHT
        if style not in STYLES:
            at = (self.span(*path, "style"), "")
            self.faults.append(diagnosed("theme-line/style", at, helps=("write-style",), styles=STYLES))
            style = STYLES[0]
        return FontLine(file, family, weight, cast(FontStyle, style), self.span(*path, "file"))


_HEAD = re.compile(r"\s*(\[\[?)\s*([\w-]+)\s*\]")
_KEY = re.compile(r"""\s*(?:"([^"]*)"|'([^']*)'|([\w.-]+))\s*=""")


def _places(text: str) -> dict[Within, tuple[int, int]]:
    """Where tables begin and keys stand, as far as lines show it: what is written within braces has the place of its line."""
    found: dict[Within, tuple[int, int]] = {}
    within: Within = ()
    counts: dict[str, int] = {}
    at = 0
    for line in text.split("\n"):
        start, end = at + len(line) - len(line.lstrip()), at + len(line.rstrip())
        head, key = _HEAD.match(line), _KEY.match(line)
        if head is not None:
            name = head[2]
            within = (name,)
            if head[1] == "[[":
                within = (name, counts.get(name, 0))
                counts[name] = counts.get(name, 0) + 1
            found.setdefault((name,), (start, end))
            found.setdefault(within, (start, end))
        elif key is not None:
            parts = (key[1] or key[2],) if key[3] is None else tuple(key[3].split("."))
            found.setdefault((*within, *parts), (start, end))
        at += len(line) + 1
    return found
