"""How long an edge is as it is worn: a string drawn taut along it.

The row ends of a slope are a saw, one stitch out of line and back; the edge that is sewn, or picked up along, lies straight through
its teeth. So a string is drawn: wherever the edge moved by a stitch it goes through the middle of that stitch, a quarter of a row
higher or lower as suits it, and it is as short as can be. It is held fast at the beginning and the end, where the edge turns
back, and at a step: stitches cast off or on at once, which it crosses within the height of one row.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import hypot, inf

from walewright.record import record

ROOM = 0.25
"""Share of a row by which the string may pass higher or lower than where a stitch was moved: rows come whole, the line does not."""

CurvePoint = tuple[float, float]
"""(across, up), in cm."""


@record
class RowEnd:
    """One row that reaches the edge: `across` lies its end from that of the row before (outwards or inwards, as signed), `up` it is
    high. `step`: because stitches were cast off or on at once."""

    across: float
    up: float
    step: bool = False


@record
class _Gate:
    """The string passes `at` (across) between two heights."""

    at: float
    low: float
    high: float


def length_as_worn(rows: Sequence[RowEnd]) -> float:
    """The length of the string from below the first row to above the last."""
    return sum(_taut(begin, gates, end) for begin, gates, end in _spans(rows))


def loose_cm(rows: Sequence[RowEnd], length: float) -> float:
    """By how much a slope's length may be reckoned otherwise: half a row, since what is shaped at both ends is a row later at one,
    or a hundredth where that is more. Steps and straight edges are as long as they are."""
    sloping = any(row.across and not row.step for row in rows)
    return max(max(row.up for row in rows) / 2, length / 100) if sloping else 0.0


def _spans(rows: Sequence[RowEnd]) -> Iterator[tuple[CurvePoint, list[_Gate], CurvePoint]]:
    """Stretches between points where the string is held fast, each with the gates on its way, which only go one way."""
    begin: CurvePoint = (0.0, 0.0)
    gates: list[_Gate] = []
    across = up = turned = 0.0
    for row in rows:
        if row.step:
            before = across, up
            across, up = across + row.across, up + row.up
            yield begin, gates, before
            yield before, [], (across, up)
            begin, gates, turned = (across, up), [], 0.0
            continue
        if row.across:
            if row.across * turned < 0:
                held = (across, (gates[-1].low + gates[-1].high) / 4 + up / 2)
                yield begin, gates, held
                begin, gates = held, []
            turned = row.across
            gates.append(_Gate(across + row.across / 2, up - ROOM * row.up, up + ROOM * row.up))
        across, up = across + row.across, up + row.up
    yield begin, gates, (across, up)


def _taut(begin: CurvePoint, gates: Sequence[_Gate], end: CurvePoint) -> float:
    """The shortest way through the gates, which lie one beyond the other. From where it last bent, the string sees a wedge of
    directions that all gates so far leave open; where the next gate lies outside, it bends around the one in its way."""
    ways = [*gates, _Gate(end[0], end[1], end[1])]
    if not gates:
        return hypot(end[0] - begin[0], end[1] - begin[1])
    length, at, number = 0.0, begin, 0
    while number < len(ways):
        low, high, by_low, by_high = -inf, inf, number, number
        bend: tuple[int, float] | None = None
        for i in range(number, len(ways)):
            away = abs(ways[i].at - at[0])
            least, most = (ways[i].low - at[1]) / away, (ways[i].high - at[1]) / away
            if least > high:
                bend = by_high, ways[by_high].high
                break
            if most < low:
                bend = by_low, ways[by_low].low
                break
            if least >= low:
                low, by_low = least, i
            if most <= high:
                high, by_high = most, i
        gate, height = bend or (len(ways) - 1, end[1])
        to = ways[gate].at, height
        length += hypot(to[0] - at[0], to[1] - at[1])
        at, number = to, gate + 1
    return length
