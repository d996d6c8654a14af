"""A value of the compiler's as text, briefly: what is as it would be if nothing were said of it is left out, and what one line has
room for stands in one. Numbers to a hundredth of a millimetre, places in the source left out."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import MISSING, fields, is_dataclass
from typing import Any

from walewright.design.model import Origin

ROOM, SHORT = 130, 40
"""Letters of a line, and of what stands beside others in one."""


def brief(name: str, value: Any, without: frozenset[str] = frozenset()) -> str:
    """`without` fields of these names."""
    return "\n".join(_lines(name, value, 0, without)) + "\n"


def _lines(name: str, value: Any, depth: int, without: frozenset[str]) -> Iterator[str]:
    pad = "  " * depth
    short = _short(value, without)
    if len(pad) + len(name) + len(short) <= ROOM:
        yield f"{pad}{name} {short}".rstrip()
    elif isinstance(value, Mapping):
        yield f"{pad}{name}"
        for key, one in value.items():
            yield from _lines(str(key), one, depth + 1, without)
    elif isinstance(value, tuple) and any(is_dataclass(v) or isinstance(v, tuple) for v in value):
        for one in value:
            yield from _lines(name, one, depth, without)
    elif is_dataclass(value):
        said = [(field, one, _one(field, one, bare, without)) for field, one, bare in _said(value, without)]
        beside = [text for _, _, text in said if len(text) <= SHORT]
        yield f"{pad}{name} {type(value).__name__} {' '.join(beside)}".rstrip()
        for field, one, text in said:
            if len(text) > SHORT:
                yield from _lines(field, one, depth + 1, without)
    else:
        yield f"{pad}{name} {short}"


def _one(name: str, value: Any, bare: bool, without: frozenset[str]) -> str:
    """A field: without its name where it always has to be given."""
    return _short(value, without) if bare else f"{name}={_short(value, without)}"


def _said(value: Any, without: frozenset[str]) -> Iterator[tuple[str, Any, bool]]:
    """The fields that are not as they would be anyway, and whether they have to be given."""
    for field in fields(value):
        one = getattr(value, field.name)
        bare = field.default is MISSING and field.default_factory is MISSING
        default = field.default_factory() if field.default_factory is not MISSING else field.default
        if field.name not in without and not isinstance(one, Origin) and one != default:
            yield field.name, one, bare


def _short(value: Any, without: frozenset[str]) -> str:
    if is_dataclass(value) and not isinstance(value, type):
        told = (_one(name, one, bare, without) for name, one, bare in _said(value, without))
        return f"{type(value).__name__}({' '.join(told)})"
    if isinstance(value, tuple):
        return f"[{' '.join(_short(one, without) for one in value)}]"
    if isinstance(value, Mapping):
        return f"{{{', '.join(f'{key}: {_short(one, without)}' for key, one in value.items())}}}"
    if isinstance(value, float):
        return f"{round(value, 3) + 0.0:g}"
    return "-" if value is None else repr(value) if isinstance(value, str) and " " in value else str(value) or "''"
