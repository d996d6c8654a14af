"""A knitter's hands, obeying printed words: the needles they have in mind, and the moves they make.

The hands keep the state of each needle with a loop, the carriage side and the counter, and know nothing of a plan. Words
that cannot be obeyed, or whose numbers disagree with what is on the bed, raise `Contradiction`.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import cast

from walewright.knit import operations as op
from walewright.knit.operations import Side
from walewright.readback.bench import BENCH_OBEYED, AtBench
from walewright.readback.charts import ReadChart
from walewright.readback.edgings import Edgings
from walewright.readback.inside import Inside
from walewright.readback.mind import MOST_MOVES as MOST_MOVES
from walewright.readback.mind import Contradiction as Contradiction
from walewright.readback.mind import in_reach
from walewright.readback.partings import Partings
from walewright.readback.patterns import Patterns
from walewright.readback.phrases import Reading
from walewright.readback.resting import Resting
from walewright.readback.ribs import Ribs


class Hands(Partings, Edgings, Patterns, Ribs, Inside, Resting, AtBench):
    """One block's worth of work: from an empty bed on, the carriage anywhere. Methods are named for the grammar's phrases."""

    def __init__(self, charts: Mapping[str, ReadChart] | None = None) -> None:
        super().__init__(charts or {})

    def obey(self, phrase: str, *arguments: Reading) -> None:
        """Do what the phrase of that name says. Stitches of charts and columns of deep ribs that it disturbs are settled before."""
        if self._come_so_far and phrase != "so_far":
            return
        done = len(self.made)
        columns, ribs = self._columns_before(), len(self._deep)
        there = dict(self._needles) if self._charting.any else self._needles
        OBEYED[phrase](self, *arguments)
        if self._needles != there and in_reach(self._needles) != in_reach(there):
            self.made[done:done] = self._leaving()
        if columns and phrase not in _ROWS and len(self._deep) == ribs:
            self.made[done:done] = self._disturbed(self.made[done:], columns)

    # ------------------------------------------------------------- setting up

    def needles_to_work(self, first: int, last: int, stitches: int) -> None:
        self._count(stitches, first, last)
        self._state(first, last, "work")
        self.made.append(op.IntoWork(first, last))

    def waste_start(self, way: op.CastOnWay, rows: int) -> None:
        part = self._part()
        if way == "hem":
            self.made += [op.UseYarn("ravel", "ravel"), op.CastOn(way, part[0], part[-1])]
            self._cross(1)
            self.made.append(op.UseYarn("waste", "waste"))
        else:
            self.made += [op.UseYarn("waste", "waste"), op.CastOn(way, part[0], part[-1])]
        self._cross(rows)
        self.made.append(op.UseYarn("ravel", "ravel"))
        self._cross(1)

    def closed_start(self, way: op.CastOnWay) -> None:
        part = self._part()
        self.made.append(op.CastOn(way, part[0], part[-1]))

    def use_yarn_step(self, yarn: str, tension: str, fabric: str = "", before: str = "") -> None:
        yarn = yarn or self._threaded()
        self.made.append(op.UseYarn(yarn, tension, carried=before == "carried"))
        if fabric != self._fabric:
            self.made.append(op.InFabric(fabric))
        self._yarn, self._fabric = (yarn, tension), fabric

    def set_row_counter(self, rows: int) -> None:
        self._row = rows
        self.made.append(op.SetCounter(rows))

    # ------------------------------------------------------------- knitting and shaping

    def _few_enough(self, rows: int) -> None:
        if len(self.made) + rows > MOST_MOVES:
            raise Contradiction("contradiction/moves", most=MOST_MOVES)

    def _cross(self, rows: int) -> None:
        """Rows of waste yarn or ravel cord, which the counter does not count."""
        self._few_enough(rows)
        for _ in range(rows):
            self._carriage = op.other(self._at(self._carriage))
            self.made.append(op.Pass(self._carriage))

    def knit_rows(self, rows: int) -> None:
        rows = self._no_farther(rows)
        self._few_enough(rows)
        for _ in range(rows):
            self._one_row()

    def knit_to(self, row: int) -> None:
        if row < self._row:
            raise Contradiction("contradiction/counter-beyond", counter=self._row, row=row)
        self.knit_rows(row - self._row)

    def line(self, step: int = 0) -> None:
        """Another line of the text begins, that of a step of an earlier section where one is named."""
        self._step = step or self._step
        self._rows_of_line.clear()
        self._told_of.clear()
        self._latched_at.clear()
        self._columns_at.clear()

    def on_the_way(self, told: tuple[str, tuple[int, ...] | None], needles: tuple[int, ...] = ()) -> None:
        """Before which of the rows that the line has knitted so far a chart asks for crosses, moves, ladders to be dropped or
        needles to be held, or stripes for another yarn; or at which readings a rib is latched up, or purl columns, on `needles` if
        they are named. Without rows it is done as it was said before."""
        what, rows = told
        if what == "columns":
            self._columns_told(rows or (), needles)
        elif what == "latch":
            self._latched_told(rows)
        elif rows is None:
            self._as_said(what)
        else:
            self._by_pattern(what, rows)

    def reads(self, row: int) -> None:
        """The counter as it is."""
        if row != self._row:
            raise Contradiction("contradiction/counter-elsewhere", counter=self._row, row=row)

    def at(self, row: int, *right: int) -> None:
        """Then the carriage stands on the right, if it is told: 1; on the left: 0."""
        self.knit_to(row)
        for told in right:
            self._stands_at("right" if told else "left")

    def stands(self, stitches: int, held: int = 0) -> None:
        """So many are in the part being worked; if any are counted apart, so many of them are held for shaping."""
        there = len(self._part()) - held
        if held and there != len(self._working()):
            raise Contradiction("contradiction/stitches-held", held=held, there=len(self._part()) - len(self._working()))
        if there != stitches:
            raise Contradiction("contradiction/stitches-in-part", stitches=stitches, there=there)

    def decrease(self, by: int, ends: str, inset: int = 0) -> None:
        for side in _sides(ends):
            if inset == 0:
                for _ in range(by):
                    self._move_in(side, 1, 1)
            else:
                self._move_in(side, inset, by)

    def _move_in(self, side: Side, prongs: int, by: int) -> None:
        part = self._part()
        first, last = self._outermost(side, prongs, part)
        emptied = self._outermost(side, by, part)
        self.made += [op.Transfer(first, last, by if side == "left" else -by), op.OutOfWork(*emptied)]
        self._empty(*emptied)

    def increase_fashioned(self, by: int, ends: str, inset: int) -> None:
        _one(by)
        for side in _sides(ends):
            outwards = -1 if side == "left" else 1
            first, last = self._outermost(side, inset, self._part())
            # Of the loops that move, the one nearest the middle of the bed leaves its needle empty.
            edge, inner = (first, last) if side == "left" else (last, first)
            self.made.append(op.IntoWork(edge + outwards, edge + outwards))
            self.made.append(op.Transfer(first, last, outwards))
            self.made.append(op.FillFromBelow(inner, inner - outwards))
            self._state(edge + outwards, edge + outwards, "work")

    def increase_at_carriage(self, by: int) -> None:
        _one(by)
        self._further(1)

    def _further(self, count: int) -> tuple[int, int]:
        part = self._part()
        at_left = self._at(self._carriage) == "left"
        first, last = (part[0] - count, part[0] - 1) if at_left else (part[-1] + 1, part[-1] + count)
        self._state(first, last, "work")
        self.made.append(op.IntoWork(first, last))
        return first, last

    def cast_off_at_carriage(self, stitches: int) -> None:
        side = self._at(self._carriage)
        first, last = self._outermost(side, stitches, self._part())
        self.made.append(op.CastOff(first, last, side))
        self._empty(first, last)

    def cast_on_at_carriage(self, stitches: int) -> None:
        first, last = self._further(stitches)
        self.made.append(op.CastOn("e-wrap", first, last))

    def hold_at_end(self, side: Side, stitches: int, more: str = "") -> None:
        if more:
            self._held(side)
        first, last = self._outermost(side, stitches, self._working())
        self.made.append(op.Hold(first, last))
        self._state(first, last, "held")

    def wrap_held(self, side: Side) -> None:
        held = self._held(side)
        self.made.append(op.Wrap(held[-1] if side == "left" else held[0]))

    def return_held(self, side: Side) -> None:
        held = self._held(side)
        self.made.append(op.Release(held[0], held[-1]))
        self._state(held[0], held[-1], "work")

    def return_some(self, stitches: int, side: Side) -> None:
        held = self._held(side)
        # The innermost are those nearest to the needles in work.
        inner: Side = op.other(side)
        first, last = self._outermost(inner, stitches, held)
        self.made.append(op.Release(first, last))
        self._state(first, last, "work")

    def mark_edges(self, ends: str, what: str) -> None:
        """A thread at the ends: the knitting stays as it is."""

    def now(self, stitches: int, *told: int) -> None:
        """`told` is the counter, unless its value has just been named, and 1 for the carriage on the right, 0 for the left."""
        *row, right = told
        self.made.append(op.Check(stitches, row[0] if row else self._row, "right" if right else "left"))

    def now_held(self, stitches: int, held: int, *told: int) -> None:
        """The same, those that are held for shaping counted apart."""
        there = sum(1 for state in self._needles.values() if state == "held")
        if there != held:
            raise Contradiction("contradiction/stitches-held", held=held, there=there)
        self.now(stitches + held, *told)

    def now_in_half_held(self, stitches: int, held: int, waiting: int, *told: int) -> None:
        self._waiting(waiting)
        self.now_held(stitches + waiting, held, *told)

    def now_in_half(self, stitches: int, waiting: int, *told: int) -> None:
        """The same in one part; so many stitches of others wait."""
        self._waiting(waiting)
        self.now(stitches + waiting, *told)

    def now_in_part(self, stitches: int, *told: int) -> None:
        """The same in the part being worked, whatever waits."""
        self.now(stitches + self._there_waiting(), *told)

    def now_held_in_part(self, stitches: int, held: int, *told: int) -> None:
        self.now_held(stitches + self._there_waiting(), held, *told)

    def _there_waiting(self) -> int:
        return sum(1 for state in self._needles.values() if state.startswith("waiting"))

    def _waiting(self, waiting: int) -> None:
        there = self._there_waiting()
        if there != waiting:
            raise Contradiction("contradiction/stitches-wait", waiting=waiting, there=there)

    def now_reached(self, stitches: int, *told: int) -> None:
        """What is said to be true after steps that stand elsewhere, where they have said it themselves."""
        *row, right = told
        there = len(self._needles)
        if stitches != there:
            raise Contradiction("contradiction/stitches-on-bed", stitches=stitches, there=there)
        for value in row:
            self.reads(value)
        self._stands_at("right" if right else "left")

    def _stands_at(self, side: Side) -> None:
        if self._carriage != side:
            raise Contradiction("contradiction/carriage-elsewhere", side=self._at(self._carriage))

    def now_held_reached(self, stitches: int, held: int, *told: int) -> None:
        there = sum(1 for state in self._needles.values() if state == "held")
        if there != held:
            raise Contradiction("contradiction/stitches-on-bed", stitches=held, there=there)
        self.now_reached(stitches + held, *told)

    def now_in_half_held_reached(self, stitches: int, held: int, waiting: int, *told: int) -> None:
        self._waiting(waiting)
        self.now_held_reached(stitches + waiting, held, *told)

    def now_in_half_reached(self, stitches: int, waiting: int, *told: int) -> None:
        self._waiting(waiting)
        self.now_reached(stitches + waiting, *told)

    def edge_is(self, where: op.NamedRows, from_row: int, to_row: int, edge: str) -> None:
        self.made.append(op.NameEdge(edge, where, from_row, to_row))

    def gap_is(self, where: op.NamedRows, gap: int, from_row: int, to_row: int, edge: str) -> None:
        self.made.append(op.NameGap(edge, where, from_row, to_row, gap))

    def say(self, text: str) -> None:
        """Words that nothing follows from."""


OBEYED: Mapping[str, Callable[..., None]] = {
    "needles_to_work": Hands.needles_to_work,
    "carriage_at": Hands.carriage_at,
    "waste_start": Hands.waste_start,
    "closed_start": Hands.closed_start,
    "use_yarn_step": Hands.use_yarn_step,
    "set_row_counter": Hands.set_row_counter,
    "knit_rows": Hands.knit_rows,
    "knit_to": Hands.knit_to,
    "line": Hands.line,
    "on_the_way": Hands.on_the_way,
    "reads": Hands.reads,
    "at": Hands.at,
    "stands": Hands.stands,
    "decrease": Hands.decrease,
    "increase_fashioned": Hands.increase_fashioned,
    "needle_out": Hands.needle_out,
    "needles_out_every": Hands.needles_out_every,
    "columns_up": Hands.columns_up,
    "leave_out": Hands.leave_out,
    "leave_out_every": Hands.leave_out_every,
    "needle_back": Hands.needle_back,
    "needles_back_every": Hands.needles_back_every,
    "decrease_on": Hands.decrease_on,
    "decrease_outer": Hands.decrease_outer,
    "increase_beside": Hands.increase_beside,
    "increase_outer": Hands.increase_outer,
    "increase_at_carriage": Hands.increase_at_carriage,
    "cast_off_at_carriage": Hands.cast_off_at_carriage,
    "cast_on_at_carriage": Hands.cast_on_at_carriage,
    "hold_at_end": Hands.hold_at_end,
    "wrap_held": Hands.wrap_held,
    "return_held": Hands.return_held,
    "return_some": Hands.return_some,
    "mark_edges": Hands.mark_edges,
    "now": Hands.now,
    "now_held": Hands.now_held,
    "now_in_half": Hands.now_in_half,
    "now_in_half_held": Hands.now_in_half_held,
    "now_in_part": Hands.now_in_part,
    "now_held_in_part": Hands.now_held_in_part,
    "now_reached": Hands.now_reached,
    "now_in_half_reached": Hands.now_in_half_reached,
    "now_held_reached": Hands.now_held_reached,
    "now_in_half_held_reached": Hands.now_in_half_held_reached,
    "edge_is": Hands.edge_is,
    "gap_is": Hands.gap_is,
    "say": Hands.say,
    "spread_evenly": Hands.spread_evenly,
    "slot_on_waste": Hands.slot_on_waste,
    "slot_closed": Hands.slot_closed,
    "eyelet_at": Hands.eyelet_at,
    "centre_to_waste": Hands.centre_to_waste,
    "close_centre": Hands.close_centre,
    "cast_on_between": Hands.cast_on_between,
    "hold_part": Hands.hold_part,
    "part_on_cord": Hands.part_on_cord,
    "draw_parts_cord": Hands.draw_parts_cord,
    "off_on_waste": Hands.off_on_waste,
    "cast_off_all": Hands.cast_off_all,
    "gather_all": Hands.gather_all,
    "sew_off_all": Hands.sew_off_all,
    "break_off": Hands.break_off,
    "return_part": Hands.return_part,
    "carriage_to_hold": Hands.set_to_hold,
    "carriage_to_knit": Hands.set_to_knit,
    "use_looser": Hands.use_looser,
    "every_out_of_work": Hands.every_out_of_work,
    "picot_row": Hands.picot_row,
    "as_far_as": Hands.as_far_as,
    "so_far": Hands.so_far,
    "fold_up": Hands.fold_up,
    "hang_to_link": Hands.hang_to_link,
    "rehang_start": Hands.rehang_start,
    "pick_up_along": Hands.pick_up_along,
    "latch_rib": Hands.latch_rib,
    "latch_panel": Hands.latch_panel,
    "start_chart": Hands.start_chart,
    "stop_chart": Hands.stop_chart,
    "stop_chart_on": Hands.stop_chart_on,
    "start_stripes": Hands.start_stripes,
    "stop_stripes": Hands.stop_stripes,
    "latch_in_stages": Hands.latch_in_stages,
    "latch_panel_in_stages": Hands.latch_panel_in_stages,
    **BENCH_OBEYED,
}
"""The method for each phrase of the grammar; for `reads`, which stands for rows that are named together, and for what is true after
steps that stand elsewhere. Its arguments are those of the words, in their order."""

_ROWS = ("knit_rows", "knit_to", "at")
"""Phrases that knit rows: charts move stitches in them, where no rib is."""


def _sides(ends: str) -> tuple[Side, ...]:
    """The left end comes first."""
    return ("left", "right") if ends == "both ends" else (cast(Side, ends.removesuffix(" end")),)


def _one(stitches: int) -> None:
    if stitches != 1:
        raise Contradiction("contradiction/increase-by-one", stitches=stitches)
