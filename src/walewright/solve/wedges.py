"""Wedges: the groups in which stitches are held, one for every two rows."""

from __future__ import annotations


def groups(stitches: int, rows: int) -> tuple[int, ...]:
    """`stitches` in rows/2 groups that differ by one at most, the larger ones first (outermost)."""
    count = rows // 2
    size, more = divmod(stitches, count)
    return (size + 1,) * more + (size,) * (count - more)
