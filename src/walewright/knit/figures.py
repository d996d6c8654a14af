"""Figures: charts and stripes over some rows of a piece, and in which of its parts each is begun and ended.

The counter tells a knitter the chart's row. Where it is set back for another part, a figure begun below the parting goes on
there by itself; one begun above it is begun again, and one that ended in the first part has to be taken up where it stood.
"""

from __future__ import annotations

from collections.abc import Sequence

from walewright.counted.model import SizedChart, SizedPiece
from walewright.counted.needles import last_row
from walewright.counted.parts import SizedPart, parts_at
from walewright.design.model import Fabric
from walewright.knit import steps as st
from walewright.knit.order import Group, GroupKey, Move, Rank, alone
from walewright.knit.working_order import WorkedPart
from walewright.knit.zones import Fabrics
from walewright.record import record

MOST_CARRIED = 4
"""Rows that a yarn is carried past at the side. Common practice: carry every 2 or 4 rows, else break it off."""


@record
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

    def touches(self, part: SizedPart) -> bool:
        """Whether any of it lies in a part, as the width parts."""
        return self.needles is None or part.touches(*self.needles)

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
    sized = fabrics.of.sized
    found = [_chart(number, chart, _several(chart, charts), _plain_ends(sized, chart)) for number, chart in enumerate(charts)]
    striped = [(at.low, at.high, at.fabric) for at in fabrics.of.layers if at.fabric.stripes]
    found += (_stripes(fabrics, number, *span) for number, span in enumerate(striped))
    return tuple(found)


def _several(chart: SizedChart, charts: tuple[SizedChart, ...]) -> bool:
    """Whether a chart can be in force on some needles when it ends on others, so that it has to be said on which it does."""
    alike = [c for c in charts if c.chart == chart.chart]
    return len(alike) > 1 and any(c.area == "panel" for c in alike)


def _plain_ends(sized: SizedPiece, c: SizedChart) -> int:
    """The edge stitches that are plain: none of a panel that never comes to an end of what is knitted, where short rows end too."""
    to_row = last_row(sized, c.first, c.last, c.from_row, c.to_row)
    if c.area != "panel" or any(w.from_row < to_row and c.from_row <= w.to_row for w in sized.wedges):
        return c.edge
    for row in range(c.from_row, to_row):
        for first, last in (part.about(row) for part in parts_at(sized, row)):
            beside = last < c.first or c.last < first
            if not beside and not first + c.edge <= c.first <= c.last <= last - c.edge:
                return c.edge
    return 0


def _chart(number: int, c: SizedChart, several: bool, edge: int) -> Figure:
    origin = c.origin.path
    start = st.StartChart(c.chart, c.fabric, area=c.area, first=c.first, last=c.last, edge=edge, start=c.start, origin=origin)
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


@record
class FiguresOfPart:
    """What begins and ends in a part, and what has to be taken up where it stood as the part is turned to: it was ended in
    another, to whose rows the counter had come."""

    groups: tuple[Group, ...]
    taken_up: tuple[Figure, ...]


def figures_of_parts(found: Sequence[Figure], turns: Sequence[WorkedPart], top: int, edged: bool) -> tuple[FiguresOfPart, ...]:
    """Of each part in the order worked. `edged`: an edging is knitted on to the last row of the piece, `top`."""
    groups: list[list[Group]] = [[] for _ in turns]
    again: list[list[Figure]] = [[] for _ in turns]
    for figure in found:
        touched = [number for number, turn in enumerate(turns) if figure.touches(turn.part)]
        going = begun = False
        for at, number in enumerate(touched):
            turn, part = turns[number], turns[number].part
            if not going and _to_take_up(figure, turn, begun):
                again[number].append(figure)
                going = True
            elif not going and _begins(figure, turn, begun):
                groups[number].append(figure.begin())
                begun = True
                # In a size without its rows there is no end to it.
                going = figure.from_row < figure.to_row
            if going and _ends(figure, turn, top, edged):
                # One that ends where parts have just rejoined is ended over both.
                joined = figure.to_row == part.from_row
                groups[number].append(figure.end(Rank.RETURN) if joined else figure.end())
                going = False
            elif going and any(turns[other].part.from_row < figure.from_row for other in touched[at + 1 : at + 2]):
                # The counter is set back to rows in which it is not worked yet.
                groups[number].append(figure.end(at=part.to_row))
                going = False
    return tuple(FiguresOfPart(tuple(some), tuple(taken)) for some, taken in zip(groups, again, strict=True))


def _to_take_up(figure: Figure, turn: WorkedPart, begun: bool) -> bool:
    """Whether it was begun below the part, or in its first row in a part worked before, and goes on in it."""
    row = turn.part.from_row
    return turn.turned and begun and figure.from_row <= row < figure.to_row


def _begins(figure: Figure, turn: WorkedPart, begun: bool) -> bool:
    """Whether its first row lies in the part; one that begins with several of them goes on in those that are worked later."""
    row, part = figure.from_row, turn.part
    return part.from_row <= row < part.to_row and not (begun and turn.turned and row == part.from_row)


def _ends(figure: Figure, turn: WorkedPart, top: int, edged: bool) -> bool:
    """Whether its last row lies in the part. One that ends with the last row to be knitted needs no end; one that ends with parts
    that rejoin is ended over all of them."""
    row, part = figure.to_row, turn.part
    if row >= top:
        return edged and part.to_row == top
    return part.from_row <= row < part.to_row or (row == part.to_row and turn.then == "parts")
