"""Figures: charts and stripes over some rows of a piece, and in which of its parts each is begun and ended.

The counter tells a knitter the chart's row. Where it is set back for another part, a figure begun below the parting goes on
there by itself; one begun above it is begun again, and one that ended in the first part has to be taken up where it stood.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from walewright.counted.model import SizedChart, SizedOpening
from walewright.design.model import Fabric
from walewright.knit import steps as st
from walewright.knit.operations import Side, other
from walewright.knit.order import Group, GroupKey, Move, Rank, alone
from walewright.knit.zones import Fabrics

MOST_CARRIED = 4
"""Rows that a yarn is carried past at the side. Common practice: carry every 2 or 4 rows, else break it off."""


@dataclass(frozen=True, slots=True)
class Figure:
    """From `from_row` to `to_row`; a panel or a motif lies on `needles`, else it goes over the whole width."""

    number: int
    from_row: int
    to_row: int
    needles: tuple[int, int] | None
    start: st.Step
    stop: st.Step

    @property
    def stripes(self) -> bool:
        return isinstance(self.start, st.StartStripes)

    def touches(self, side: Side, opening: SizedOpening) -> bool:
        """Whether any of it lies in the part at `side` of the opening, as the width parts."""
        if self.needles is None:
            return True
        return self.needles[0] < opening.first if side == "left" else self.needles[1] >= opening.first + opening.flat

    def begin(self) -> Group:
        return alone(self._key(0), Move(self.from_row, Rank.CHART, self.start))

    def end(self, rank: Rank = Rank.END, at: int | None = None) -> Group:
        """Its end, at its last row or sooner."""
        return alone(self._key(1), Move(self.to_row if at is None else at, rank, self.stop))

    def _key(self, end: int) -> GroupKey:
        return ("stripes" if self.stripes else "chart", 2 * self.number + end)


def figures(fabrics: Fabrics) -> tuple[Figure, ...]:
    """Those of a piece: its charts by rising first row, and its stripes."""
    charts = fabrics.of.sized.charts
    found = [_chart(number, chart, _several(chart, charts)) for number, chart in enumerate(charts)]
    striped = [(at.low, at.high, at.fabric) for at in fabrics.of.layers if at.fabric.stripes]
    found += (_stripes(fabrics, number, *span) for number, span in enumerate(striped))
    return tuple(found)


def _several(chart: SizedChart, charts: tuple[SizedChart, ...]) -> bool:
    """Whether a chart can be in force on some needles when it ends on others, so that it has to be said on which it does."""
    alike = [c for c in charts if c.chart == chart.chart]
    return len(alike) > 1 and any(c.area == "panel" for c in alike)


def _chart(number: int, c: SizedChart, several: bool) -> Figure:
    origin = c.origin.path
    start = st.StartChart(c.chart, c.fabric, c.area, c.first, c.last, c.edge, c.start, origin=origin)
    needles = (c.first, c.last) if c.area == "panel" else None
    stop = st.StopChartOn(c.chart, c.first, c.last, origin=origin) if several else st.StopChart(c.chart, origin=origin)
    return Figure(number, c.from_row, c.to_row, needles, start, stop)


def _stripes(fabrics: Fabrics, number: int, from_row: int, to_row: int, fabric: Fabric) -> Figure:
    origin = fabrics.origin(from_row)
    return Figure(number, from_row, to_row, None, start_stripes(fabric, origin), st.StopStripes(fabric.name, origin=origin))


def start_stripes(fabric: Fabric, origin: str) -> st.StartStripes:
    """The sentence that begins a striped fabric."""
    return st.StartStripes(fabric.name, fabric.stripes, fabric.tension, carried(fabric.stripes), origin=origin)


def carried(stripes: tuple[tuple[str, int], ...]) -> tuple[str, ...]:
    """The yarns that are carried up the side: all stripes have even rows, so that each begins and ends at one side, and there are
    never more than so many rows of others between two stripes of the yarn."""
    if any(rows % 2 for _, rows in stripes):
        return ()
    return tuple(yarn for yarn in dict.fromkeys(y for y, _ in stripes) if _longest_wait(stripes, yarn) <= MOST_CARRIED)


def _longest_wait(stripes: tuple[tuple[str, int], ...], yarn: str) -> int:
    """The most rows of other yarns between two stripes of `yarn`, the stripes being worked again and again."""
    first = next(i for i, (y, _) in enumerate(stripes) if y == yarn)
    longest = wait = 0
    for y, rows in (*stripes[first:], *stripes[:first], stripes[first]):
        wait = 0 if y == yarn else wait + rows
        longest = max(longest, wait)
    return longest


# ----------------------------------------------------------------- in the parts of a piece


def whole_width(found: tuple[Figure, ...], first_row: int, last_row: int, top: int) -> Iterator[Group]:
    """What begins and ends in rows of the whole width. One that ends with the piece needs no end; one that ends where parts
    have just rejoined is ended over both."""
    for figure in found:
        if first_row <= figure.from_row < last_row:
            yield figure.begin()
        if figure.from_row < figure.to_row < top:
            if first_row < figure.to_row <= last_row:
                yield figure.end()
            elif figure.to_row == first_row and first_row > 0:
                yield figure.end(Rank.RETURN)


def beside(found: tuple[Figure, ...], side: Side, opening: SizedOpening, last_row: int) -> Iterator[Group]:
    """What begins and ends in the part at `side` of an opening, which goes on to `last_row`. What begins in the first part and has
    to begin in the other too is ended with it: the counter is set back to rows in which it is not worked yet."""
    for figure in found:
        if not figure.touches(side, opening):
            continue
        again = figure.from_row == opening.row and not _first(side, opening) and figure.touches(other(side), opening)
        if opening.row <= figure.from_row < last_row and not again:
            yield figure.begin()
        if opening.row < figure.to_row < last_row and figure.from_row < figure.to_row:
            yield figure.end()
        elif _first(side, opening) and opening.row < figure.from_row < last_row and figure.touches(other(side), opening):
            yield figure.end(at=last_row)


def taken_up(found: tuple[Figure, ...], side: Side, opening: SizedOpening, last_row: int) -> tuple[Figure, ...]:
    """What has to be taken up where it stood at the parting, as the part at `side` is turned to: it was ended in the other."""
    return tuple(
        figure
        for figure in found
        if figure.from_row <= opening.row < figure.to_row < last_row
        and not _first(side, opening)
        and all(figure.touches(one, opening) for one in (side, other(side)))
    )


def _first(side: Side, opening: SizedOpening) -> bool:
    """Whether the part is the one worked first."""
    return side == ("left" if opening.rejoins else "right")
