"""Hands at deep ribs: columns counted row by row, latched up at the named rows, and before their stitches are disturbed."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

from walewright.knit import operations as op
from walewright.knit.operations import Operation
from walewright.readback.mind import Contradiction, Mind, needle, within


@dataclass(slots=True)
class _Deep:
    """What one sentence asks for. `open` has the rows of each needle that were knitted since it was latched up last; on the needles
    `on` the last stitch below those is a re-formed one."""

    right: int
    every: int
    rows: tuple[int, ...]
    panel: tuple[int, int] | None
    sooner: bool
    begun: int
    named: frozenset[int] = frozenset()
    """The needles, where they were named one by one."""
    open: dict[int, int] = field(default_factory=dict)
    on: set[int] = field(default_factory=set)

    @property
    def told(self) -> tuple[object, ...]:
        return self.right, self.every, self.rows, self.panel, self.sooner, self.begun, self.named

    def counts(self, slot: int) -> bool:
        """Whether the needle is one of those that were named or are counted off."""
        if self.named:
            return slot in self.named
        outwards = slot if slot >= 0 else -1 - slot
        counted = outwards >= self.right and (outwards - self.right) % self.every == 0
        return counted and (self.panel is None or self.panel[0] <= slot <= self.panel[1])


class Ribs(Mind):
    """Methods are named for the grammar's phrases."""

    def __init__(self) -> None:
        super().__init__()
        self._deep: list[_Deep] = []
        self._latched_at: set[int] = set()
        """Readings in this line at which a rib was to be latched up."""

    def latch_in_stages(self, every: int, left: int, right: int, rows: tuple[int, ...], *more: str | int) -> None:
        """`more`: "sooner", if it is said; the first and the last needle between both, if they are named."""
        self._mirrored(every, left, right)
        within(left, right, tuple(told for told in more if isinstance(told, int)))
        self._begin_rib(_Deep(right, every, rows, None, any(isinstance(told, str) for told in more), self._row))

    def latch_panel_in_stages(self, *told: int | str | tuple[int, ...]) -> None:
        """`told`: the needles one by one; or every how many, the two that are counted from, the first and the last; then the rows
        and, if it is said, "sooner"."""
        match told:
            case [tuple() as named, tuple() as rows, *sooner]:
                if named:
                    self._begin_rib(_Deep(0, 1, rows, panel=None, sooner=bool(sooner), begun=self._row, named=frozenset(named)))
            case [int(every), int(left), int(right), int(first), int(last), tuple() as rows, *sooner]:
                self._mirrored(every, left, right)
                self._begin_rib(_Deep(right, every, rows, (first, last), bool(sooner), self._row))
            case _:
                raise TypeError(f"the grammar gives other words: {told}")

    def _mirrored(self, every: int, left: int, right: int) -> None:
        if every < 1 or right < 0 or left != -1 - right:
            raise Contradiction("contradiction/not-mirrored", left=needle(left), right=needle(right))

    def _begin_rib(self, rib: _Deep) -> None:
        rows = rib.rows
        if not rows or list(rows) != sorted({*rows}) or rows[0] <= self._row:
            raise Contradiction("contradiction/rows-of-rib", counter=self._row)
        # Said again where another part begins with the same rib, it is the same one.
        if all(one.told != rib.told for one in self._deep):
            self._deep.append(rib)

    def _rib_columns(self, rib: _Deep) -> list[int]:
        """The needles in working position whose columns are re-formed: no end needle of the part in work."""
        part = sorted(s for s, state in self._needles.items() if state in ("work", "held"))
        found: list[int] = []
        for s in part[1:-1]:
            if rib.counts(s) and self._needles[s] == "work":
                found.append(s)
        return found

    def _latched(self, rib: _Deep, columns: Iterable[int]) -> list[Operation]:
        made: list[Operation] = []
        for s in columns:
            rows = rib.open.get(s, 0)
            if rows:
                made.append(op.LatchUp(s, rows, s in rib.on))
                rib.on.add(s)
                rib.open[s] = 0
        return made

    def _row_done(self) -> None:
        """A row has been knitted, and the counter reads it."""
        if not self._deep:
            return
        self._latched_at |= {self._row for rib in self._deep if rib.begun < self._row and self._row in rib.rows}
        waiting = any(state.startswith("waiting") for state in self._needles.values())
        for rib in list(self._deep):
            if not rib.begun < self._row <= rib.rows[-1]:
                continue
            for s, state in self._needles.items():
                if state == "work":
                    rib.open[s] = rib.open.get(s, 0) + 1
            if self._row in rib.rows:
                self.made += self._latched(rib, self._rib_columns(rib))
                # Later no column is dropped deeper than to here, not even one that was at an end now.
                left_out = sorted(s for s, state in self._needles.items() if state in ("work", "held"))
                for s in left_out[:1] + left_out[-1:]:
                    rib.open[s] = 0
                    rib.on.discard(s)
            if self._row == rib.rows[-1] and not waiting:
                self._deep.remove(rib)

    def _latched_told(self, rows: tuple[int, ...] | None) -> None:
        """Raises `Contradiction` where ribs have been latched up at other readings; without rows it is as it was said before."""
        if rows is not None and {*rows} != self._latched_at:
            raise Contradiction("contradiction/events-of-charts", counter=min({*rows} ^ self._latched_at))
        self._latched_at.clear()

    def _columns_before(self) -> list[list[int]]:
        """Of each deep rib, the columns as they are before something is done."""
        return [self._rib_columns(rib) for rib in self._deep]

    def _disturbed(self, moves: Iterable[Operation], columns: list[list[int]]) -> list[Operation]:
        """What goes before these moves: of the `columns` that were there, those whose stitch they take, move, hold or hang another
        on. What is put by with its part waits as it is."""
        touched = {s for move in moves for s in _touched(move)}
        touched = {s for s in touched if not self._needles.get(s, "").startswith("waiting")}
        made: list[Operation] = []
        for rib, there in zip(self._deep, columns, strict=True):
            if rib.sooner:
                made += self._latched(rib, [s for s in there if s in touched])
            for s in touched:
                rib.open.pop(s, None)
                rib.on.discard(s)
        return made


def _touched(move: Operation) -> Iterable[int]:
    match move:
        case op.Transfer(first=first, last=last, by=by):
            return (*range(first, last + 1), *range(first + by, last + by + 1))
        case op.FillFromBelow(source=source):
            return (source,)
        case op.CastOff(first=first, last=last, start=start):
            return range(first, last + 2) if start == "left" else range(first - 1, last + 1)
        case op.Close(first=first, last=last, towards=towards):
            return range(first, last + 2) if towards == "right" else range(first - 1, last + 1)
        case op.OntoWaste() | op.Gather() | op.SewOff() | op.Spread() | op.Hold():
            return range(move.first, move.last + 1)
    return ()
