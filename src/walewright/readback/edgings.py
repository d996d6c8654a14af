"""Hands at edgings and bands: needles out of work, folds and picots, what is hung on again, ribs latched up."""

from __future__ import annotations

import re
from collections.abc import Sequence

from walewright.knit import operations as op
from walewright.readback.mind import Contradiction, Mind, needle, within


class Edgings(Mind):
    """Methods are named for the grammar's phrases."""

    def use_looser(self, yarn: str, named: str, by: tuple[int, ...] | str = (), than: str = "") -> None:
        """`named`: the tension, where it is said by how many numbers it is looser than which, or that it is a looser plate; else
        the setting before the next one."""
        tension = named if by else f"looser than {named}"
        if by and not isinstance(by, str) and not by[0] <= _turns(tension) - _turns(than) <= by[-1]:
            raise Contradiction("contradiction/numbers-looser", tension=tension, by=tuple(by), than=than)
        yarn = yarn or self._threaded()
        self.made.append(op.UseYarn(yarn, tension))
        self._yarn = (yarn, tension)

    def every_out_of_work(self, every: int, stitches: int) -> None:
        part = self._part()
        if every < 2:
            raise Contradiction("contradiction/none-left-in-work", every=every)
        for s in part[every - 1 : -1 : every]:
            self.made.append(op.OutOfWork(s, s))
            self._empty(s, s)
        if len(self._part()) != stitches:
            raise Contradiction("contradiction/stitches-stay", stitches=stitches, there=len(self._part()))

    def picot_row(self) -> None:
        self.made += [op.Transfer(s, s, 1) for s in self._working()[1:-1:2]]

    def fold_up(self, onto: str, way: str, loops: int, *rest: int | str) -> None:
        """`rest`: what the counter read at the row that is hung, or that it is the first one of an "edging" that was hung on, where
        either is said, and the stitches afterwards."""
        *at, stitches = rest
        row = at[0] if at and isinstance(at[0], int) else 0
        if not row and self._begun_on_loops() != ("edging" in at):
            raise Contradiction("contradiction/first-row-on-cord" if at else "contradiction/first-row-on-loops")
        if row and not 0 < row < self._row:
            raise Contradiction("contradiction/row-not-knitted", row=row, counter=self._row)
        feet = self._working()
        if loops != len(feet):
            raise Contradiction("contradiction/loops-knitted", loops=loops, there=len(feet))
        if onto == "all needles":
            empty = [s for s in range(feet[0], feet[-1]) if s not in self._needles]
            if not empty:
                raise Contradiction("contradiction/none-out-of-work")
            for s in empty:
                self.made.append(op.IntoWork(s, s))
                self._state(s, s, "work")
            feet = [s + 1 if s + 1 in empty else s for s in feet]
        self.made.append(op.HangFeet(tuple(feet), way == "behind", row))
        if len(self._working()) != stitches:
            raise Contradiction("contradiction/stitches-in-work", stitches=stitches, there=len(self._working()))

    def _begun_on_loops(self) -> bool:
        """Whether the first row was knitted on loops that hang from what is there already."""
        return any(isinstance(move, op.Rehang | op.PickUpEdge) for move in self.made)

    def hang_to_link(self, facing: op.HungFace, stitches: int, part: op.HungPart, piece: str, *rest: int | str) -> None:
        over = rest[-1] == "over"
        self._pick_up(facing, stitches, part, piece, rest[:-1] if over else rest, over)

    def rehang_start(self, facing: op.HungFace, loops: int, piece: str) -> None:
        part = self._part()
        self._count(loops, part[0], part[-1])
        self.made.append(op.Rehang(piece, part[0], part[-1], facing))

    def pick_up_along(self, facing: op.HungFace, stitches: int, part: op.HungPart, piece: str, *rest: int | str) -> None:
        self._pick_up(facing, stitches, part, piece, rest, over=False)

    def _pick_up(
        self, facing: op.HungFace, stitches: int, part: op.HungPart, piece: str, rest: Sequence[int | str], over: bool
    ) -> None:
        """`rest`: which copy, if that is said, the edge, the ends of a stretch of it, "about" how many stitches for how many rows,
        its end at the left, the first and the last needle."""
        which, (low, high), ratio = 0, (0, 0), (0, 0)
        told = list(rest)
        if isinstance(told[0], int):
            which = told.pop(0)  # type: ignore[assignment]
        if "about" in told[1:]:
            at = told.index("about", 1)
            _, per, every = told[at : at + 3]
            ratio = per, every  # type: ignore[assignment]
            del told[at : at + 3]
        match told:
            case [str(edge), ("bottom" | "top" | "left" | "right") as left_end, int(first), int(last)]:
                pass
            case [str(edge), int(low), int(high), ("bottom" | "top" | "left" | "right") as left_end, int(first), int(last)]:
                pass
            case _:
                raise TypeError(f"the grammar gives other words: {rest}")
        self._count(stitches, first, last)
        self._all(first, last, ("work",))
        self.made.append(
            op.PickUpEdge(
                piece, edge, part, first, last, over, facing=facing, left_end=left_end, copy=which, low=low, high=high, ratio=ratio
            )
        )

    def latch_rib(self, left: int, right: int, every: int, rows: int, *plain: int) -> None:
        """`plain`: the first and the last needle between both, if they are named."""
        within(left, right, plain)
        self.made += [op.LatchUp(s, rows) for s in self._wales(left, right, every)]

    def latch_panel(self, *told: int | tuple[int, ...]) -> None:
        """`told`: the needles one by one; or every how many, the two that are counted from, the first and the last; the rows."""
        match told:
            case [tuple() as named, int(rows)]:
                part = self._part()
                self._all_named(named)
                columns = [s for s in named if part[0] < s < part[-1]]
            case [int(every), int(left), int(right), int(first), int(last), int(rows)]:
                self._all(first, last, ("work", "held"))
                columns = [s for s in self._wales(left, right, every) if first <= s <= last]
            case _:
                raise TypeError(f"the grammar gives other words: {told}")
        self.made += [op.LatchUp(s, rows) for s in columns]

    def _all_named(self, named: Sequence[int]) -> None:
        for s in named:
            self._all(s, s, ("work", "held"))

    def _wales(self, left: int, right: int, every: int) -> list[int]:
        """Every so many needles outwards from both, without those at the ends, from left to right."""
        if every < 1 or right < 0 or left != -1 - right:
            raise Contradiction("contradiction/not-mirrored", left=needle(left), right=needle(right))
        part = self._part()
        outwards = {*range(right, part[-1], every), *range(left, part[0], -every)}
        return [s for s in sorted(outwards) if part[0] < s < part[-1]]


def _turns(tension: str) -> int:
    """The whole number of a dial's label."""
    found = re.match(r"[0-9]+", tension)
    if found is None:
        raise Contradiction("contradiction/tension-without-number", tension=tension)
    return int(found[0])
