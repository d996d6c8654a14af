"""Facts for a sentence's places, by what each place asks for: once many of everything and all that is said in passing, once one of
everything and nothing in passing."""

from __future__ import annotations

from collections.abc import Iterator
from string import Formatter

from walewright.guide.english import LANGUAGE
from walewright.report.said import Fact

OF_KIND = {"side": ("left", "right"), "part": ("head", "foot"), "way": ("linked", "sewn"), "extent": ("width", "depth")}
"""Words of closed kinds, by the places that ask for one."""


def places(template: str) -> Iterator[tuple[str, str]]:
    """Name and way of each place, those within places included."""
    for _, name, way, _ in Formatter().parse(template):
        if name:
            yield name, way or ""
            yield from places(way or "")


def sample(template: str, many: bool) -> dict[str, Fact]:
    ways: dict[str, list[str]] = {}
    for name, way in places(template):
        ways.setdefault(name, []).append(way)
    return {name: _fact(name, asked, many) for name, asked in ways.items()}


def _fact(name: str, ways: list[str], many: bool) -> Fact:
    optional = any(way.startswith("?") for way in ways)
    if any(way in ("and", "or") or way.startswith("/") for way in ways):
        fewest: tuple[Fact, ...] = () if optional else (f"<{name}>",)
        return (f"<{name} 1>", f"<{name} 2>", f"<{name} 3>") if many else fewest
    if optional:
        return f"<{name}>" if many else ""
    if "term" in ways:
        return OF_KIND.get(name, ("neck", "waist"))[not many]
    if any("|" in way for way in ways):
        return 3 if many else 1
    if any(way.endswith("f") for way in ways):
        return 2.75
    return f"<{name}>"


def every_sentence() -> Iterator[str]:
    """Each sentence of the guide behind its key, with facts; twice where they make a difference."""
    for key, template in sorted(LANGUAGE.words.phrases.items()):
        said = [LANGUAGE.say(key, **sample(template, many)) for many in (True, False)]
        yield from (f"{key:24} {text}" for text in dict.fromkeys(said))
