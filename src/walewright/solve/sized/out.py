"""Needles out of work over a stretch of rows, counted."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from math import floor

from walewright.counted.model import SizedNeedlesOut, SizedRun
from walewright.counted.needles import come
from walewright.design.model import DesignInSize, NeedlesOut, Piece
from walewright.solve.edges.gauge import fabric_below

BESIDE = 2
"""Stitches at least between a needle out and the edge: the rows lay their yarn round something."""


def sized_out(
    at: DesignInSize,
    piece: Piece,
    middle: float,
    rows: Mapping[str, int],
    begin: tuple[int, int],
    edges: tuple[tuple[SizedRun, ...], tuple[SizedRun, ...]],
) -> Iterator[SizedNeedlesOut]:
    """In one size of a piece whose start's middle is `middle` stitches right of the centre mark and which begins on needles
    `begin`. The edges go straight where needles are out."""
    for out in piece.needles_out:
        row = rows[out.from_level]
        first, last = begin[0] - come(edges[0], row), begin[1] + come(edges[1], row)
        slots = _every(out, first, last) if out.every else _placed(at, piece, out, middle)
        yield SizedNeedlesOut(row, rows[out.to_level], tuple(sorted(slots)), out.every, out.origin)


def _every(out: NeedlesOut, first: int, last: int) -> Iterator[int]:
    """Half of so many from the centre mark, and so on to both sides."""
    for slot in range(first + BESIDE, last - BESIDE + 1):
        # Counted from the other side, the needle left of the mark takes the place of the one right of it.
        if ((-1 - slot) if out.turned else slot) % out.every == out.every // 2:
            yield slot


def _placed(at: DesignInSize, piece: Piece, out: NeedlesOut, middle: float) -> Iterator[int]:
    per_cm = fabric_below(at.design, piece, out.to_level).stitches_per_cm
    for place in out.places:
        right = floor(middle + abs(at.of(place)) * per_cm + 1e-9)
        yield right if at.of(place) >= 0 else floor(2 * middle) - 1 - right
