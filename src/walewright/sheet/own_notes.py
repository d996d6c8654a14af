"""Ruled space for a knitter's own notes, where a page would stay white: below what is left over on the last page, and below the end
of a section where what follows is too high for the rest of the page.

How much room a page leaves is known when all pages are laid out. So a section ends in ruled lines without height, which move
nothing; where they are the last thing on such a page they are given the height of the room, and everywhere else they are taken out.
"""

from __future__ import annotations

from contextlib import suppress
from typing import Any

CLASS = "own-notes"
"""The element of the ruled lines."""

PER_MM = 96 / 25.4
"""How much of the renderer's unit a millimetre is."""

ABOVE, HEAD, LINE = 4.0, 4.0, 8.0
"""mm: white above it all, the words that stand over the lines, and from line to line."""

PEN = 0.2
"""mm that a line may be thick."""

FEWEST = 3
"""Lines below which the room stays white."""

MOST_WHITE = 0.27
"""Part of a page that may stay white where another follows."""


def with_own_notes(document: Any) -> Any:
    """The renderer's laid-out `document`, in which each of them has its height or is gone.

    The boxes of a page are no documented part of the renderer; what is used of them is tried by `tests/sheet/test_own_notes.py`.
    Where they are gone, the lines stay without height, and are not seen."""
    with suppress(AttributeError, IndexError, TypeError):
        for page in document.pages:
            _on_page(page._page_box, page is document.pages[-1])
    return document


def _on_page(page: Any, last: bool) -> None:
    held = [(parent, box) for parent in page.descendants() for box in getattr(parent, "children", ()) if _ours(box)]
    if not held:
        return
    top, high = page.content_box_y(), page.height
    low = max((box.position_y + box.height for box in page.children[0].descendants() if _seen(box)), default=top)
    at_end = max((box for _, box in held), key=lambda box: box.position_y)
    room = top + high - low - (ABOVE + HEAD) * PER_MM
    lines = int(room / (LINE * PER_MM))
    wanted = last or top + high - low > MOST_WHITE * high
    ends_here = at_end.position_y > low - LINE * PER_MM
    for parent, box in held:
        if wanted and ends_here and lines >= FEWEST and box is at_end:
            box.position_y, box.height = low + ABOVE * PER_MM, (HEAD + LINE * lines + PEN) * PER_MM
        else:
            parent.children = [child for child in parent.children if child is not box]


def _ours(box: Any) -> bool:
    return box.element is not None and box.element.get("class") == CLASS


def _seen(box: Any) -> bool:
    """Whether something is set or drawn there; all other boxes hold some of these."""
    return not _ours(box) and (hasattr(box, "replacement") or bool(getattr(box, "text", "").strip()))
