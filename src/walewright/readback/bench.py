"""Hands at a bench copy: lines with what stands in their columns, and single moves on needles that are named one by one."""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Callable, Iterable, Mapping

from walewright.knit import operations as op
from walewright.knit.operations import Side
from walewright.readback.carriage import Carriage
from walewright.readback.mind import Contradiction, in_reach, needle
from walewright.readback.phrases import Listed, Reading, ReadPhrase
from walewright.readback.stretches import ranges


class AtBench(Carriage, ABC):
    """Methods are named for the grammar's phrases. Lists of needles come as phrases of their own."""

    def __init__(self) -> None:
        super().__init__()
        self._apart: set[int] = set()
        """Needles that a pattern holds; those held for shaping are not among them."""
        self._begun: dict[str, set[int]] = {}
        """What the counter read when a chart was begun, in one place and in others."""
        self._fabrics: dict[tuple[str, int, int], str] = {}
        self._turn_of_line: list[op.LatchUp] = []
        """The columns that the line has latched up so far."""
        self._out_for_pattern = False
        """Whether the needles that were right out last were held for a pattern, and no others were."""

    @abstractmethod
    def obey(self, phrase: str, *arguments: Reading) -> None:
        """Do what the phrase of that name says."""

    def bench_row(self, *told: ReadPhrase) -> None:
        """The rows of the line, its steps, and then what is said to be there. Where the line sets the counter anew, it is named as
        it reads after the rows."""
        said = {one.kind: _numbers(one) for one in told}
        self._turn_of_line = []
        set_anew = "bench_rows" in said and "set_row_counter" in said
        for one in told:
            if set_anew and one.kind == "set_row_counter":
                self.obey("reads", *said["bench_counter"])
            if one.kind == "bench_rows":
                self._refuse_setting("slip")
                self.obey("knit_rows", *_numbers(one))
            elif one.kind not in _COLUMNS:
                self.obey(one.kind, *_numbers(one))
            if one.kind == "carriage_at" and "slip" in one.arguments:
                self._set = "slip"
        if "bench_counter" in said and not set_anew:
            self.obey("reads", *said["bench_counter"])
        if "bench_side" in said:
            (right,) = said["bench_side"]
            if self._at(self._carriage) != ("right" if right else "left"):
                raise Contradiction("contradiction/carriage-elsewhere", side=self._at(self._carriage))
        self._on_bed(*(n if isinstance(n, int) else 0 for n in said["bench_counts"]))
        self._line_ends()

    def _line_ends(self) -> None:
        """The setting is that which the needles want, also where no row is knitted before the next line; and whatever is begun
        next finds it set to knit all."""
        if in_reach(self._needles):
            self._rightly_set()
        if not self._needles:
            self._refuse_setting("hold", "slip")

    def _rightly_set(self) -> None:
        """As in other words; but between the rows of a pattern that goes on the carriage stays set to hold."""
        if self._apart:
            self._out_for_pattern = not self._right_out()
            self._refuse_setting("knit all")
            return
        if self._right_out() or not self._fabrics:
            self._out_for_pattern = False
        if not self._out_for_pattern:
            super()._rightly_set()

    def _on_bed(self, in_work: int, held: int, waiting: int) -> None:
        states = list(self._needles.values())
        by_pattern = len(self._apart)
        there = (
            states.count("work") - by_pattern,
            states.count("held") + by_pattern,
            sum(state.startswith("waiting") for state in states),
        )
        if (in_work, held, waiting) != there:
            raise Contradiction("contradiction/on-bed", in_work=there[0], held=there[1], waiting=there[2])

    def plain_rows(self) -> None:
        """The rows of the line are all there is."""

    # ------------------------------------------------------------- charts and stripes begun and ended

    def of_chart(self, row: int, chart: str) -> None:
        """Rows of a chart follow each other as the counter does."""
        if chart not in self._begun:
            raise Contradiction("contradiction/chart-not-worked", chart=chart, on="")
        height = self._height(chart)
        if not height or row - 1 not in {(self._row - begun) % height for begun in self._begun[chart]}:
            raise Contradiction("contradiction/chart-row", chart=chart, row=row)

    @abstractmethod
    def _height(self, chart: str) -> int:
        """Rows of a chart that is drawn."""

    def fabric_begins(self, fabric: str, chart: str, *span: int) -> None:
        self._begin(chart, span, fabric)
        self.made.append(op.InFabric(fabric, *span))
        self._fabric = self._fabric if span else ""

    def motif_begins(self, chart: str, *span: int) -> None:
        self._begin(chart, span, "")

    def _begin(self, chart: str, span: tuple[int, ...], fabric: str) -> None:
        self._begun.setdefault(chart, set()).add(self._row)
        self._fabrics[_place(chart, span)] = fabric

    def chart_ends(self, chart: str, *span: int) -> None:
        place = _place(chart, span)
        if place not in self._fabrics:
            raise Contradiction("contradiction/chart-not-worked", chart=chart, on="")
        if self._fabrics.pop(place):
            self.made.append(op.InFabric("", *span))

    def stripes_begin(self, fabric: str) -> None:
        self._fabric = ""
        self.made.append(op.InFabric(fabric))

    def stripes_end(self, fabric: str) -> None:
        self.made.append(op.InFabric(""))

    def take_up(self, yarn: str, tension: str) -> None:
        self.made.append(op.UseYarn(yarn, tension, carried=True))
        self._yarn = (yarn, tension)

    # ------------------------------------------------------------- needles held for a row or some

    def _there(self, listed: Iterable[ReadPhrase], apart: bool) -> list[int]:
        """The needles of a list, which are held for a pattern or are not."""
        slots = _slots(listed)
        for slot in slots:
            if self._needles.get(slot) != "work" or (slot in self._apart) != apart:
                raise Contradiction("contradiction/needle-not-so", needle=needle(slot))
        return slots

    def hold_needles(self, *listed: ReadPhrase) -> None:
        slots = self._there(listed, apart=False)
        self.made += [op.Hold(*r) for r in ranges(slots)]
        self._apart |= set(slots)

    def return_needles(self, *listed: ReadPhrase) -> None:
        self._back(self._there(listed, apart=True))

    def _back(self, slots: list[int]) -> None:
        self.made += [op.Release(*r) for r in ranges(slots)]
        self._apart -= set(slots)

    def float_past(self, *listed: ReadPhrase) -> None:
        slots = self._there(listed, apart=True)
        self.made += [op.LiftOff(*r) for r in ranges(slots)]
        self._back(slots)

    def draw_long_on(self, *listed: ReadPhrase) -> None:
        slots = self._there(listed, apart=True)
        self.made += [op.DrawLong(slot) for slot in slots]
        self._back(slots)

    def knit_needles(self, *told: ReadPhrase | str) -> None:
        yarn = next(one for one in told if isinstance(one, str))
        slots = self._there((one for one in told if isinstance(one, ReadPhrase)), apart=True)
        self.made += [op.LiftOff(*r) for r in ranges(slots)]
        self.made.append(op.LayIn(yarn, self._tension(), tuple(slots), self._at(self._carriage)))
        self._back(slots)

    def _tension(self) -> str:
        if self._yarn is None:
            raise Contradiction("contradiction/no-yarn")
        return self._yarn[1]

    def lay_colours(self, *told: ReadPhrase | str) -> None:
        """A row by hand: blocks of neighbours in one yarn, from left to right."""
        rest = next(one for one in told if isinstance(one, str))
        yarns: dict[int, str] = {}
        for one in told:
            if isinstance(one, ReadPhrase):
                yarn = next(a for a in one.arguments if isinstance(a, str))
                yarns |= dict.fromkeys(self._there(_lists(one), apart=False), yarn)
        blocks: list[tuple[str, int, int]] = []
        for slot in self._working():
            yarn = yarns.get(slot, rest)
            if blocks and blocks[-1][0] == yarn:
                blocks[-1] = (yarn, blocks[-1][1], slot)
            else:
                blocks.append((yarn, slot, slot))
        self._carriage = op.other(self._at(self._carriage))
        self.made.append(op.PictureRow(self._carriage, self._tension(), tuple(blocks)))
        self._row += 1
        self._knitted += 1

    # ------------------------------------------------------------- loops hung on

    def hang_first_row(self, facing: op.HungFace, loops: int, piece: str, between: int) -> None:
        """Between so many stitches as there are loops there is one loop less."""
        if between != loops - 1:
            raise Contradiction("contradiction/loops-between", loops=loops, between=between)
        self.obey("rehang_start", facing, loops, piece)

    # ------------------------------------------------------------- stitches moved, columns dropped and latched up

    def move_stitches(self, *told: ReadPhrase | Side) -> None:
        (side,) = (one for one in told if isinstance(one, str))
        by = -1 if side == "left" else 1
        for first, last in ranges(self._there((one for one in told if isinstance(one, ReadPhrase)), apart=False)):
            self.made.append(op.Transfer(first, last, by))

    def cross_stitches(self, *told: object) -> None:
        *crosses, side, stitches = told
        for one in crosses:
            assert isinstance(one, ReadPhrase)
            left, right = (_slots((group,)) for group in _lists(one))
            if len(left) != stitches or len(right) != stitches or left[-1] + 1 != right[0]:
                raise Contradiction("contradiction/cross-uneven", needle=needle(left[0]))
            self.made.append(op.Cross(left[0], right[-1], len(left), "left" if side == "left" else "right"))

    def drop_rows(self, rows: int, *listed: ReadPhrase) -> None:
        self.made += [op.Drop(slot, rows) for slot in _slots(listed)]

    def latch_columns(self, rows: int, *listed: ReadPhrase) -> None:
        self._along_bed(op.LatchUp(slot, rows) for slot in _slots(listed))

    def latch_on(self, rows: int, *listed: ReadPhrase) -> None:
        self._along_bed(op.LatchUp(slot, rows, goes_on=True) for slot in _slots(listed))

    def _along_bed(self, columns: Iterable[op.LatchUp]) -> None:
        """Along the bed, whatever the depths in which a line tells them."""
        found = list(columns)
        while self._turn_of_line and self.made[-1:] == [self._turn_of_line[-1]]:
            found.append(self._turn_of_line.pop())
            self.made.pop()
        self._turn_of_line = sorted(found, key=lambda move: move.slot)
        self.made += self._turn_of_line


_COLUMNS = ("bench_rows", "bench_counter", "bench_side", "bench_counts")
"""What is no step of a line."""


def _numbers(phrase: ReadPhrase) -> list[Reading]:
    """The arguments, in the one size that a bench copy has."""
    return [a.of(0) if isinstance(a, Listed) else a for a in phrase.arguments]


def _lists(phrase: ReadPhrase) -> list[ReadPhrase]:
    """Its lists of needles."""
    arguments: tuple[object, ...] = phrase.arguments
    return [one for one in arguments if isinstance(one, ReadPhrase)]


def _place(chart: str, span: tuple[int, ...]) -> tuple[str, int, int]:
    return (chart, *span) if len(span) == 2 else (chart, 0, -1)


def _slots(listed: Iterable[ReadPhrase]) -> list[int]:
    """The slots of a list, rising; each once."""
    found: set[int] = set()
    for one in listed:
        numbers = [n for n in _numbers(one) if isinstance(n, int)]
        *how, first, last = numbers if len(numbers) > 1 else numbers * 2
        if one.kind == "needle_every":
            found |= set(range(first, last + 1, max(how[0], 1)))
        elif one.kind == "needle_groups":
            count, every = how
            found |= {s for begin in range(first, last + 1, max(every, 1)) for s in range(begin, begin + count) if s <= last}
        else:
            found |= set(range(first, last + 1))
    if not found:
        raise Contradiction("contradiction/none-in-work")
    return sorted(found)


BENCH_OBEYED: Mapping[str, Callable[..., None]] = {
    "bench_row": AtBench.bench_row,
    "plain_rows": AtBench.plain_rows,
    "of_chart": AtBench.of_chart,
    "fabric_begins": AtBench.fabric_begins,
    "motif_begins": AtBench.motif_begins,
    "chart_ends": AtBench.chart_ends,
    "stripes_begin": AtBench.stripes_begin,
    "stripes_end": AtBench.stripes_end,
    "take_up": AtBench.take_up,
    "hold_needles": AtBench.hold_needles,
    "return_needles": AtBench.return_needles,
    "float_past": AtBench.float_past,
    "draw_long_on": AtBench.draw_long_on,
    "knit_needles": AtBench.knit_needles,
    "lay_colours": AtBench.lay_colours,
    "move_stitches": AtBench.move_stitches,
    "cross_stitches": AtBench.cross_stitches,
    "drop_rows": AtBench.drop_rows,
    "latch_columns": AtBench.latch_columns,
    "latch_on": AtBench.latch_on,
    "set_to_hold": AtBench.set_to_hold,
    "set_to_knit": AtBench.set_to_knit,
    "hang_first_row": AtBench.hang_first_row,
}
"""The method for each phrase that only a bench copy has."""
