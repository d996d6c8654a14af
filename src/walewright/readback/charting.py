"""Charts worked by hand on the bed: what is done before, in and after each row, needle by needle.

Several charts can be in force: a needle goes by a motif before a panel, by a panel before what goes over the whole width, and
of two alike by the one that came last. What has been begun on a needle (a
column to latch up or to drop, a held needle) is kept in mind with the chart that began it.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass, field

from walewright.knit import operations as op
from walewright.knit.operations import Operation, Side
from walewright.readback.charts import Mark, ReadChart
from walewright.readback.groups import Found, groups
from walewright.readback.mind import Contradiction
from walewright.readback.stretches import blocks, ranges

Moves = list[Operation]
YarnAtTension = tuple[str, str]
"""Yarn and tension."""
_WITHOUT_SLACK = 2
"""Stitches over as many that can be crossed with stitches close beside them on both sides."""


@dataclass(slots=True)
class MarksInForce:
    """A chart laid on the needles: its first row is knitted when the counter reads `begun`."""

    chart: ReadChart
    fabric: str
    whole: bool
    first: int
    last: int
    edge: int
    start: int
    begun: int
    purl: dict[int, int] = field(default_factory=dict)
    """Slots of columns to be latched up, and how many rows they have come."""
    ladder: dict[int, int] = field(default_factory=dict)
    tucked: set[int] = field(default_factory=set)

    def row(self, counter: int) -> int | None:
        """The chart's row that is knitted next when the counter reads so; None when there is none, before its first one too."""
        y, height = counter - self.begun, len(self.chart.rows)
        if y < 0:
            return None
        if self.chart.repeat:
            return y % height
        return y if y < height else None

    def marks(self, counter: int) -> tuple[Mark, ...]:
        """All of the row that is knitted next when the counter reads so."""
        row = self.row(counter)
        return () if row is None else self.chart.rows[row]

    def mark(self, slot: int, row: int) -> Mark | None:
        column = self._column(slot)
        return None if column is None else self.chart.rows[row][column]

    def _column(self, slot: int) -> int | None:
        chart = self.chart
        if not chart.repeat:
            column = slot - self.start
            return column if 0 <= column < len(chart.rows[0]) else None
        if self.first <= slot < self.first + chart.before:
            return slot - self.first
        if self.last - chart.after < slot <= self.last:
            return chart.before + chart.repeat + slot - (self.last - chart.after + 1)
        return chart.before + (slot - self.start) % chart.repeat

    def reaches(self, working: Sequence[int]) -> set[int]:
        """Those of the needles in working position that go by the chart, as far as no later one takes them."""
        if not working:
            return set()
        low, high = working[0] + self.edge, working[-1] - self.edge
        if not self.whole:
            low, high = max(low, self.first), min(high, self.last)
        return {s for s in working if low <= s <= high and self._column(s) is not None}

    @property
    def precedence(self) -> int:
        """The lower, the sooner a needle goes by it: a motif has no fabric of its own."""
        if not self.fabric and not self.whole:
            return 0
        return 2 if self.whole else 1

    @property
    def placed(self) -> tuple[bool, int, int, int, int, int]:
        return self.whole, self.first, self.last, self.edge, self.start, self.begun

    @property
    def place(self) -> tuple[str, tuple[int, int] | None]:
        """Name and needles; over the whole width a chart is in force once, whichever needles it was begun on."""
        return self.chart.name, None if self.whole else (self.first, self.last)

    @property
    def begun_on(self) -> set[int]:
        return {*self.purl, *self.ladder, *self.tucked}


class Charting:
    """The charts in force, in the order in which they came."""

    def __init__(self) -> None:
        self._charts: list[MarksInForce] = []
        self._waiting: dict[tuple[str, int], int] = {}
        """Columns of parts that wait their turn: rows by chart and slot."""
        # Rows are many and alike: what was found out is kept as long as the same needles go by the same charts.
        self._alike: tuple[tuple[int, ...], tuple[int, ...]] | None = None
        self._by: dict[int, set[int]] = {}
        self._groups: dict[tuple[int, int], Found] = {}

    @property
    def any(self) -> bool:
        return bool(self._charts)

    def asks(self, counter: int, what: str) -> bool:
        """Whether any chart has a mark in the row after `counter` by which stitches cross, or move and leave a hole or the place
        of a ladder, or needles do not knit; or ladders that have ended below it; or row 1 of one in several yarns once more."""
        kinds = {"cross": ("cross",), "move": ("hole",), "hold": ("tuck", "slip", "long")}.get(what, ())
        for chart in self._charts:
            now, before = chart.marks(counter), chart.marks(counter - 1)
            if any(mark.kind in kinds for mark in now):
                return True
            if what == "again" and chart.chart.in_yarns and counter > chart.begun and chart.row(counter) == 0:
                return True
            if what == "move" and any(mark.kind == "ladder" for mark in _beside(now, before)):
                return True
            if what == "drop" and now and any(mark.kind == "ladder" for mark in _beside(before, now)):
                return True
        return False

    def begin(self, chart: MarksInForce) -> Moves:
        """The chart is in force from the next row on, in one place once: if it was so there, it begins anew. What comes of that."""
        same = next((c for c in self._charts if c.place == chart.place), None)
        if same is not None and same.placed == chart.placed:
            return []
        self._charts.append(chart)
        self._alike = None
        if same is None:
            return []
        self._charts.remove(same)
        return _settled([same], {id(same): same.begun_on})

    def end(self, name: str, on: tuple[int, int] | None = None) -> tuple[MarksInForce, Moves] | None:
        """The last begun chart of that name, of those begun on the needles `on` where that is said, and what puts its needles in
        order; None if none is in force."""
        for chart in reversed(self._charts):
            if chart.chart.name == name and on in (None, (chart.first, chart.last)):
                self._charts.remove(chart)
                self._alike = None
                return chart, _settled([chart], {id(chart): chart.begun_on})
        return None

    def leaving(self, counter: int, working: Sequence[int], waiting: Collection[int]) -> Moves:
        """What has to be done before no more than the needles `working` are in working position: columns are latched up, held
        needles return. A ladder stays as it is, and a column on a needle of the part that is `waiting` waits with it."""
        owned = self._owned(counter, working)
        lost = {id(c): c.begun_on - owned[id(c)] for c in self._charts}
        for chart in self._charts:
            for slot in lost[id(chart)].intersection(waiting, chart.purl):
                self._waiting[chart.chart.name, slot] = chart.purl.pop(slot)
        made = _settled(self._charts, lost)
        for chart in self._charts:
            for slot in lost[id(chart)]:
                chart.ladder.pop(slot, None)
        return made

    def gone_on(self, counter: int, working: Sequence[int]) -> Moves:
        """Columns that have waited, on needles in work again: those that the chart reaches go on, the others are latched up. Until
        their chart is begun again they wait on."""
        owned = self._owned(counter, working)
        up: dict[int, int] = {}
        for name, slot in [at for at in self._waiting if at[1] in working]:
            charts = [c for c in self._charts if c.chart.name == name]
            if not charts:
                continue
            rows = self._waiting.pop((name, slot))
            own = next((c for c in charts if slot in owned[id(c)]), None)
            if own is None:
                up[slot] = rows
            else:
                own.purl[slot] = rows
        return [op.LatchUp(slot, rows) for slot, rows in sorted(up.items())]

    def settled(self, slots: set[int]) -> Moves:
        """What waits on these needles, done now."""
        return _settled(self._charts, {id(c): c.begun_on & slots for c in self._charts})

    def hung_on(self, slot: int) -> Moves:
        """What has to be done before a further loop is hung on a needle that stays in work: nothing drops through two."""
        made = self.settled({slot})
        for chart in self._charts:
            chart.ladder.pop(slot, None)
        return made

    def _owned(self, counter: int, working: Sequence[int]) -> dict[int, set[int]]:
        """Of each chart, by its id: the needles that go by it in the row after `counter`."""
        going = [c for c in self._charts if c.row(counter) is not None]
        alike = tuple(working), tuple(id(c) for c in going)
        if alike != self._alike:
            self._alike = alike
            self._groups = {}
            self._by = {}
            taken: set[int] = set()
            latest_first = going[::-1]
            # Sorting keeps that order among charts of one kind.
            for chart in sorted(latest_first, key=lambda c: c.precedence):
                reached = chart.reaches(working)
                self._by[id(chart)] = reached - taken
                taken |= reached
        return {id(c): self._by.get(id(c), set()) for c in self._charts}

    def _found(self, chart: MarksInForce, row: int, active: set[int]) -> Found:
        if (id(chart), row) not in self._groups:
            self._groups[id(chart), row] = groups(lambda s: chart.mark(s, row), active, chart.start)
        return self._groups[id(chart), row]

    # ------------------------------------------------------------- one row

    def knit(self, counter: int, working: Sequence[int], to: Side, yarn: YarnAtTension | None) -> Moves:
        """The row after `counter`, over the needles in working position. Raises Contradiction where a yarn is needed and there
        is none."""
        owned = self._owned(counter, working)
        at: dict[int, tuple[MarksInForce, Mark]] = {}
        moves: list[tuple[int, Operation]] = []
        crosses: list[tuple[int, Mark]] = []
        pictures = False
        for chart in self._charts:
            row = chart.row(counter)
            if row is None or not owned[id(chart)]:
                continue
            pictures = pictures or chart.chart.picture
            found = self._found(chart, row, owned[id(chart)])
            moves += found.moves
            crosses += found.crosses
            at.update({s: (chart, mark) for s, mark in found.singles.items()})
        # A ladder's loop needs a needle to go to.
        at = {s: (c, m) for s, (c, m) in at.items() if m.kind != "ladder" or s + 1 in working}
        made = self._before(at, moves, crosses, self._run_down(counter, owned))
        made += self._across(at, working, to, yarn, pictures)
        for slot, (chart, mark) in at.items():
            if mark.kind == "purl":
                chart.purl[slot] = chart.purl.get(slot, 0) + 1
            elif mark.kind == "ladder":
                chart.ladder[slot] += 1
        return made + self._after(counter + 1, working)

    def _before(
        self,
        at: dict[int, tuple[MarksInForce, Mark]],
        moves: list[tuple[int, Operation]],
        crosses: list[tuple[int, Mark]],
        drops: Moves,
    ) -> Moves:
        back = {s for c in self._charts for s in c.tucked if _kind(at, s) != "tuck" or at[s][0] is not c}
        for chart in self._charts:
            chart.tucked -= back
        made: Moves = [*(op.Release(*r) for r in ranges(back)), *drops]
        made += [move for _, move in sorted(moves, key=lambda m: m[0])]
        made += self._crossed(sorted(crosses, key=lambda c: c[0]))
        for slot in sorted(at):
            chart, mark = at[slot]
            if mark.kind == "ladder" and slot not in chart.ladder:
                made.append(op.Transfer(slot, slot, 1))
                chart.ladder[slot] = 0
        return made

    def _run_down(self, counter: int, owned: dict[int, set[int]]) -> Moves:
        """Ladders that have no mark in the row after `counter` are dropped before it; where the chart does not go on they stay."""
        down: dict[int, int] = {}
        for chart in self._charts:
            row = chart.row(counter)
            for slot in sorted(chart.ladder):
                mark = chart.mark(slot, row) if row is not None and slot in owned[id(chart)] else None
                if mark is not None and mark.kind != "ladder":
                    down[slot] = chart.ladder.pop(slot)
        return [op.Drop(slot, rows) for slot, rows in sorted(down.items()) if rows]

    def _crossed(self, crosses: list[tuple[int, Mark]]) -> Moves:
        """From left to right. The columns beside a cross that will be latched up are dropped for it, which gives the slack; one
        that two crosses share stays down for both."""
        made: Moves = []
        deep: dict[int, int] = {}
        lefts = {first - 1 for first, _ in crosses}
        for first, mark in crosses:
            last = first + 2 * mark.half - 1
            if mark.half > _WITHOUT_SLACK and not any(self._unlatched(s) or s in deep for s in (first - 1, last + 1)):
                continue
            for slot in (first - 1, last + 1):
                rows = self._unlatched(slot)
                if rows:
                    deep[slot] = rows
                    made.append(op.Drop(slot, rows))
                    for chart in self._charts:
                        chart.purl[slot] = 0
            side: Side = "left" if mark.first == "left" else "right"
            made.append(op.Cross(first, last, mark.half, side))
            made += [op.LatchUp(s, deep.pop(s)) for s in (first - 1, last + 1) if s in deep and not (s > last and s in lefts)]
        return made

    def _unlatched(self, slot: int) -> int:
        """Rows of the column on a needle that are to be latched up; 0 for none."""
        return max((c.purl.get(slot, 0) for c in self._charts), default=0)

    def _across(
        self, at: dict[int, tuple[MarksInForce, Mark]], working: Sequence[int], to: Side, yarn: YarnAtTension | None, pictures: bool
    ) -> Moves:
        slips, longs = (sorted(s for s in at if _kind(at, s) == kind) for kind in ("slip", "long"))
        tucks = [s for s in at if _kind(at, s) == "tuck" and s not in at[s][0].tucked]
        others: dict[str, list[int]] = {}
        for slot in sorted(at):
            # Where a picture is laid, every other yarn of the row is laid with it.
            if _kind(at, slot) == "by hand" and not pictures:
                others.setdefault(at[slot][1].yarn, []).append(slot)
        by_hand = [s for slots in others.values() for s in slots]
        if (others or pictures) and yarn is None:
            raise Contradiction("contradiction/no-yarn")
        made: Moves = [op.Hold(*r) for r in ranges({*tucks, *slips, *longs, *by_hand})]
        for slot in tucks:
            at[slot][0].tucked.add(slot)
        if pictures and yarn is not None:
            laid = ((at[s][1].yarn if s in at else "") or yarn[0] for s in working)
            made.append(op.PictureRow(to, yarn[1], blocks(laid, working)))
        else:
            made.append(op.Pass(to))
        made += [op.LiftOff(*r) for r in ranges(slips)] + [op.Release(*r) for r in ranges(slips)]
        made += [op.DrawLong(s) for s in longs] + [op.Release(*r) for r in ranges(longs)]
        for name, slots in others.items():
            assert yarn is not None
            made += [op.LiftOff(*r) for r in ranges(slots)]
            made.append(op.LayIn(name, yarn[1], tuple(slots), to))
            made += [op.Release(*r) for r in ranges(slots)]
        return made

    def _after(self, counter: int, working: Sequence[int]) -> Moves:
        """Columns that do not go on in the next row are latched up, and those of as many rows as their marks say."""
        owned = self._owned(counter, working)
        up: dict[int, int] = {}
        beside: set[int] | None = None
        for chart in self._charts:
            row = chart.row(counter)
            for slot in sorted(chart.purl):
                mark = chart.mark(slot, row) if row is not None and slot in owned[id(chart)] else None
                if mark is not None and mark.kind == "purl" and 0 < mark.stage <= chart.purl[slot]:
                    beside = self._beside_crosses(counter, owned) if beside is None else beside
                    if slot not in beside:
                        up[slot] = chart.purl.pop(slot)
                elif mark is None or mark.kind != "purl":
                    up[slot] = chart.purl.pop(slot)
        return [op.LatchUp(slot, rows) for slot, rows in sorted(up.items()) if rows]

    def _beside_crosses(self, counter: int, owned: dict[int, set[int]]) -> set[int]:
        """Needles next to a cross in the row after `counter`."""
        found: set[int] = set()
        for chart in self._charts:
            row = chart.row(counter)
            if row is not None and owned[id(chart)]:
                for first, mark in self._found(chart, row, owned[id(chart)]).crosses:
                    found |= {first - 1, first + 2 * mark.half}
        return found


def _beside(row: Sequence[Mark], other: Sequence[Mark]) -> list[Mark]:
    """The marks of a row that are of another kind in the other row, or not there."""
    return [mark for i, mark in enumerate(row) if i >= len(other) or other[i].kind != mark.kind]


def _kind(at: dict[int, tuple[MarksInForce, Mark]], slot: int) -> str:
    return at[slot][1].kind if slot in at else ""


def _settled(charts: Iterable[MarksInForce], lost: dict[int, set[int]]) -> Moves:
    """Columns latched up as far as they have come, then held needles returned, on the slots `lost` by each chart."""
    up: list[tuple[int, int]] = []
    back: set[int] = set()
    for chart in charts:
        gone = lost[id(chart)]
        up += ((s, chart.purl.pop(s)) for s in sorted(gone) if s in chart.purl)
        back |= gone & chart.tucked
        chart.tucked -= gone
    return [*(op.LatchUp(s, rows) for s, rows in sorted(up) if rows), *(op.Release(*r) for r in ranges(back))]
