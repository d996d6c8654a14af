"""Hands at stitch patterns: rows knitted by charts and in stripes."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.knit import operations as op
from walewright.knit.operations import Operation
from walewright.readback.charting import Charting, MarksInForce
from walewright.readback.charts import ReadChart
from walewright.readback.mind import MOST_MOVES, Contradiction, Mind, in_reach, needle
from walewright.readback.phrases import ReadStripes
from walewright.record import record
from walewright.report.said import Said, said


@record
class _Striped:
    fabric: str
    stripes: ReadStripes
    tension: str
    carried: tuple[str, ...]
    begun: int

    def yarn(self, counter: int) -> str | None:
        """Of the row that is knitted when the counter reads so; None before their first row."""
        if counter < self.begun:
            return None
        at = (counter - self.begun) % sum(rows for _, rows in self.stripes)
        return [yarn for yarn, rows in self.stripes for _ in range(rows)][at]

    def changes(self, counter: int) -> bool:
        """Whether that row has another yarn than the one before."""
        return self.yarn(counter - 1) not in (None, self.yarn(counter))


_EVENTS: Mapping[str, type[Operation]] = {"cross": op.Cross, "move": op.Transfer, "drop": op.Drop, "hold": op.Hold}
"""What is made in a row of which that is told."""


class Patterns(Mind):
    """Methods are named for the grammar's phrases."""

    def __init__(self, charts: Mapping[str, ReadChart]) -> None:
        super().__init__()
        self._drawings = charts
        self._charting = Charting()
        self._striped: _Striped | None = None
        self._columns_at: dict[int, tuple[int, ...]] = {}
        """Needles whose purl columns have been latched up in this line and are not said yet, by the counter's readings."""

    # ------------------------------------------------------------- charts

    def start_chart(self, chart: str, fabric: str, area: str, first: int, last: int, edge: int, start: int) -> None:
        if chart not in self._drawings:
            raise Contradiction("contradiction/no-chart", chart=chart)
        if first > last:
            raise Contradiction("contradiction/wrong-way-round", last=needle(last), first=needle(first))
        self._working()
        whole = area == "whole"
        self.made += self._charting.begin(
            MarksInForce(
                self._drawings[chart], fabric=fabric, whole=whole, first=first, last=last, edge=edge, start=start, begun=self._row
            )
        )
        # A needle that another chart began something on goes by the new one.
        self.made += self._leaving()
        if fabric:
            self._fabric = "" if whole else self._fabric
            self.made.append(op.InFabric(fabric) if whole else op.InFabric(fabric, first, last))
        self._gone_on()

    def stop_chart(self, chart: str) -> None:
        self._ended(self._charting.end(chart), chart)

    def stop_chart_on(self, chart: str, first: int, last: int) -> None:
        where = said("contradiction/on-needles", first=needle(first), last=needle(last))
        self._ended(self._charting.end(chart, (first, last)), chart, where)

    def _ended(self, ended: tuple[MarksInForce, list[Operation]] | None, chart: str, where: Said | str = "") -> None:
        if ended is None:
            raise Contradiction("contradiction/chart-not-worked", chart=chart, on=where)
        was, settled = ended
        self.made += settled
        if was.fabric:
            self.made.append(op.InFabric("") if was.whole else op.InFabric("", was.first, was.last))

    def _leaving(self) -> list[Operation]:
        """What is done for stitches that do not go by a chart any more."""
        if not self._charting.any:
            return []
        waiting = {s for s, state in self._needles.items() if state in ("waiting", "waiting on cord")}
        return self._charting.leaving(self._row, in_reach(self._needles), waiting)

    def _gone_on(self) -> None:
        self.made += self._charting.gone_on(self._row, in_reach(self._needles))

    def _hung_on(self, slot: int) -> None:
        self.made += self._charting.hung_on(slot)

    def columns_up(self, needles: tuple[int, ...]) -> None:
        """The purl columns that wait on these needles, latched up before they are disturbed."""
        moves = self._charting.settled({*needles})
        if {move.slot for move in moves if isinstance(move, op.LatchUp)} != {*needles}:
            raise Contradiction("contradiction/events-of-charts", counter=self._row)
        self.made += moves

    def _height(self, chart: str) -> int:
        return len(self._drawings[chart].rows) if chart in self._drawings else 0

    # ------------------------------------------------------------- stripes

    def start_stripes(self, fabric: str, tension: str, stripes: ReadStripes, carried: tuple[str, ...]) -> None:
        if not sum(rows for _, rows in stripes):
            raise Contradiction("contradiction/no-stripes")
        stranger = next((yarn for yarn in carried if yarn not in {y for y, _ in stripes}), None)
        if stranger is not None:
            raise Contradiction("contradiction/carried-in-no-stripe", stranger=stranger)
        self._striped = _Striped(fabric, stripes, tension, carried, self._row)
        self._fabric = ""
        self.made.append(op.InFabric(fabric))

    def stop_stripes(self, fabric: str) -> None:
        if self._striped is None or self._striped.fabric != fabric:
            raise Contradiction("contradiction/stripes-not-knitted", fabric=fabric)
        self._striped = None
        self.made.append(op.InFabric(""))

    def _change_stripe(self, striped: _Striped) -> None:
        wanted = striped.yarn(self._row)
        if wanted is None or (self._yarn is not None and self._yarn[0] == wanted):
            return
        if self._yarn is not None and self._yarn[0] in striped.carried:
            self.made.append(op.UseYarn(wanted, striped.tension, carried=True))
        else:
            if self._yarn is not None:
                self.made.append(op.BreakYarn())
            self.made.append(op.UseYarn(wanted, striped.tension, carried=wanted in striped.carried))
        self._yarn = (wanted, striped.tension)

    # ------------------------------------------------------------- rows

    def _asked(self, what: str, counter: int) -> bool:
        """Whether a chart or the stripes ask for it in the row after `counter`."""
        if what == "change":
            return self._striped is not None and self._striped.changes(counter)
        return self._charting.asks(counter, what)

    def _by_pattern(self, what: str, rows: tuple[int, ...]) -> None:
        """Raises `Contradiction` where the rows of the line that are not told of yet are not those in which that is done."""
        knitted = dict(self._rows_of_line[self._told_of.get(what, 0) :])
        self._told_of[what] = len(self._rows_of_line)
        for counter in rows:
            if counter not in knitted or not self._asked(what, counter):
                raise Contradiction("contradiction/events-of-charts", counter=counter)
        for counter, done in knitted.items():
            # Moves are made for ladders too, and needles held for other yarns.
            if counter not in rows and (what in ("change", "again") or what in done) and self._asked(what, counter):
                raise Contradiction("contradiction/events-of-charts", counter=counter)

    def _as_said(self, what: str) -> None:
        """Raises `Contradiction` where nothing that was said before, and still holds, could ask for it."""
        if not (self._charting.any if what != "change" else self._striped is not None):
            raise Contradiction("contradiction/events-of-charts", counter=self._row)
        self._told_of[what] = len(self._rows_of_line)

    def _columns_told(self, rows: tuple[int, ...], needles: tuple[int, ...]) -> None:
        """Raises `Contradiction` where columns have been latched up at other readings, or on others than the needles named."""
        wrong = {*rows} ^ {*self._columns_at}
        wrong |= {row for row, on in self._columns_at.items() if needles and {*on} != {*needles}}
        if wrong:
            raise Contradiction("contradiction/events-of-charts", counter=min(wrong))
        self._columns_at.clear()

    def _one_row(self) -> None:
        """The carriage crosses, as the charts and stripes in force want it, and the counter counts."""
        self._row_begins()
        counter, done = self._row, len(self.made)
        if self._striped is not None:
            self._change_stripe(self._striped)
        self._carriage = op.other(self._at(self._carriage))
        if self._charting.any:
            self.made += self._charting.knit(self._row, in_reach(self._needles), self._carriage, self._yarn)
        else:
            self.made.append(op.Pass(self._carriage))
        moved = self.made[done:] if self._charting.any else ()
        self._rows_of_line.append((counter, frozenset(k for k, of in _EVENTS.items() if any(isinstance(m, of) for m in moved))))
        self._row += 1
        self._knitted += 1
        knitted = next((i for i, m in enumerate(moved) if isinstance(m, op.Pass | op.PictureRow)), 0)
        if up := tuple(m.slot for m in moved[knitted:] if isinstance(m, op.LatchUp)):
            self._columns_at[self._row] = (*self._columns_at.get(self._row, ()), *up)
        self._row_done()
        if len(self.made) > MOST_MOVES:
            raise Contradiction("contradiction/moves", most=MOST_MOVES)
