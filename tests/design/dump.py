"""The canonical text of a design: one datum a line, numbers to a hundredth of a millimetre, spans left out.

Two designs that mean the same have the same text, so texts can be compared and kept as snapshots.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields, is_dataclass
from typing import Any

from walewright.design.model import Design, Origin


def dump(design: Design) -> str:
    """The design as indented lines, ending in a newline."""
    return "\n".join(_lines("design", design, 0)) + "\n"


def _lines(name: str, value: Any, depth: int) -> Iterator[str]:
    indent = "    " * depth
    if isinstance(value, Origin):
        yield f"{indent}{name}: {value.path}"
    elif is_dataclass(value):
        yield f"{indent}{name}:"
        for f in fields(value):
            yield from _lines(f.name, getattr(value, f.name), depth + 1)
    elif isinstance(value, tuple) and any(is_dataclass(v) or isinstance(v, tuple) for v in value):
        for item in value:
            yield from _lines(name, item, depth)
    elif isinstance(value, tuple):
        yield f"{indent}{name}: {' | '.join(_text(v) for v in value)}"
    else:
        yield f"{indent}{name}: {_text(value)}".rstrip()


def _text(value: Any) -> str:
    if isinstance(value, float):
        # Adding nought turns -0.0 into 0.0.
        return f"{round(value, 3) + 0.0:g}"
    return "-" if value is None else str(value)
