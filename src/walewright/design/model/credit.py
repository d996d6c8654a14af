"""Where the figures of a size table's row are from."""

from __future__ import annotations

from walewright.record import record


@record
class Credit:
    """The `published` sources of the figures; whether some of them are `recalled`, from memory; and the sizes for which the figure
    is the author's `own`."""

    published: tuple[str, ...]
    recalled: bool = False
    own: tuple[str, ...] = ()
