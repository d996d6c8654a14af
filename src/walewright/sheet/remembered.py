"""What the renderer works out of a style anew for each piece of text that has it, remembered with the style.

How high a line is at least, and the description of its font, depend on the style alone, and most pieces of text share theirs with a
hundred others. The functions are no documented part of the renderer. Where one is gone, it is asked for in vain, and printing takes
longer, no more (`tests/sheet/test_remembered.py`).
"""

from __future__ import annotations

from collections.abc import Callable
from importlib import import_module
from typing import Any

OF_A_STYLE = (
    ("weasyprint.text.line_break", "strut"),
    ("weasyprint.layout.inline", "strut"),
    ("weasyprint.text.line_break", "get_font_description"),
)
"""Where a function of a style alone is known, by its module, and its name there."""

NUMBERS = ("weasyprint.svg", "size")
"""Where drawings have their lengths from: as numbers, nearly all of them."""


def remember() -> None:
    """From now on, in this process."""
    for module, name in (*OF_A_STYLE, NUMBERS):
        within = import_module(module)
        worked_out = getattr(within, name, None)
        if worked_out is not None and not hasattr(worked_out, "__wrapped__"):
            setattr(within, name, _plain(worked_out) if (module, name) == NUMBERS else _once(worked_out))


def _once(worked_out: Callable[[Any], Any]) -> Callable[[Any], Any]:
    place = f"_{worked_out.__name__}_remembered"

    def remembered(style: Any) -> Any:
        try:
            return style.__dict__[place]
        except KeyError:
            made = style.__dict__[place] = worked_out(style)
            return made

    remembered.__wrapped__ = worked_out  # type: ignore[attr-defined]
    return remembered


def _plain(read: Callable[..., Any]) -> Callable[..., Any]:
    """Reads a plain number without a look at its unit, which it has none of."""

    def length(text: Any, *of: Any, **named: Any) -> Any:
        try:
            return float(text)
        except (TypeError, ValueError):
            return read(text, *of, **named)

    length.__wrapped__ = read  # type: ignore[attr-defined]
    return length
