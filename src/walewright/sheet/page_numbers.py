"""Page numbers of the contents, and of drawings that are named before they come, written in when all pages are laid out.

The renderer lays out a page that asks for the numbers of others three times: without them, with them, and once more to see that
they hold. The first page, with cover and contents, is the dearest. So room for a number is kept there, and the number written into
it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

ROOM = "00"
"""What keeps room for a number. The contents are set in digits of one width."""

FIGURE_SPACE = "\u2007"
"""As wide as a digit."""

KEEPING_ROOM = f'.contents a::after, a.drawn::after {{ content: "{ROOM}" !important; }}'
"""Style sheet for a page whose numbers are written in later."""


def numbered(document: Any, asked: int) -> bool:
    """Writes the numbers into the renderer's laid-out `document`, over the room that was kept; whether all of so many could be.

    The boxes of a page and the text in them are no documented part of the renderer; what is used of them is tried by
    `tests/sheet/test_page_numbers.py`. Where it is gone, or a number has more digits than there is room for, nothing may be taken
    of the document."""
    try:
        on = _pages(document.pages)
        rooms = [box for page in document.pages for box in page._page_box.descendants() if _keeps_room(box)]
        for box in rooms:
            number = str(on[box.element.get("href")[1:]])
            if len(number) > len(ROOM):
                return False
            drawn = box.pango_layout
            # At the end of a line of words nothing is to be seen of the room that is left.
            box.text = drawn.text = (number.ljust if box.element.get("class") else number.rjust)(len(ROOM), FIGURE_SPACE)
    except (AttributeError, KeyError):
        return False
    return len(rooms) == asked


def _pages(pages: Any) -> Mapping[str, int]:
    """Anchor to the number of the page that it is on, the first of several."""
    on: dict[str, int] = {}
    for number, page in enumerate(pages, 1):
        for anchor in page.anchors:
            on.setdefault(anchor, number)
    return on


def _keeps_room(box: Any) -> bool:
    return box.element_tag == "a::after" and getattr(box, "text", None) == ROOM
