"""Latched ribs: which wales of a width are re-formed."""

from __future__ import annotations


def rib_begin(every: int, first: int, last: int, panel: tuple[int, int] | None = None) -> int | None:
    """From which slot outwards every `every`th wale of the width `first`..`last` (of a `panel` in it, those on its slots) is
    latched up: from the half of `every`, or, where no wale but an end needle's would lie there, from the nearest that has one. The
    end needles are never latched up: where there are no others it is None."""
    low, high = max(first + 1, panel[0] if panel else first + 1), min(last - 1, panel[1] if panel else last - 1)
    found = {(x if x >= 0 else -1 - x) % every for x in range(low, high + 1)}
    return min(found, key=lambda begin: (abs(begin - every // 2), begin), default=None)
