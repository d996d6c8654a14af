"""Shaping: the runs of an edge in all sizes, from counted stitches and rows to rows of moves."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.counted.model import ShapingPhrase, SizedRun
from walewright.design.model import EdgeRun
from walewright.record import replace
from walewright.solve.edges.curves import Curve, line_of, pinned, straight, targets
from walewright.solve.schedule.paced import paced
from walewright.solve.schedule.schedule import Taper
from walewright.solve.schedule.spans import GAP, LEFT, PAIR, RIGHT, ShapingSpan
from walewright.solve.schedule.stairs import Flight, flight_schedules
from walewright.solve.schedule.stepped import in_their_steps
from walewright.solve.schedule.structure import phrase_schedules
from walewright.trade.shaping import rows_inside

FILLED_FROM = 2
"""A fashioned increase is filled from the stitch below the last row's: at the start there is none after one row."""


def edge_runs(run: EdgeRun, whose: str, spans: Sequence[ShapingSpan]) -> tuple[SizedRun, ...] | None:
    """A run of an edge in every size; None if its moves do not fit into its rows in some size."""
    if run.path == "across":
        return tuple(_across(run, span) for span in spans)
    begin = [_cast_off_gap(whose, span) for span in spans]
    by_twos = run.way.at_once > 1 and run.path != "steps"
    if run.rates:
        rest: tuple[tuple[ShapingPhrase, ...], ...] | None = paced(run.rates, whose, spans, begin, run.ends_moving)
    else:
        rest = (_curved if line_of(run.path) is not straight and not by_twos else _even)(run, spans, begin, whose)
    if rest is None:
        return None
    first: list[tuple[ShapingPhrase, ...]] = [() for _ in spans]
    if any(span.cast_off for span in spans):
        first = [
            (ShapingPhrase((gap,), (-max(span.cast_off, 1),), 1 if span.cast_off else 0),)
            for span, gap in zip(spans, begin, strict=True)
        ]
    return tuple(
        SizedRun(name=run.name, from_row=span.from_row, to_row=span.to_row, phrases=(*head, *tail), way=run.way, origin=run.origin)
        for span, head, tail in zip(spans, first, rest, strict=True)
    )


def _across(run: EdgeRun, span: ShapingSpan) -> SizedRun:
    change = (ShapingPhrase((0,), (span.change or span.sign,), 1 if span.change else 0),)
    return SizedRun(
        name=run.name,
        from_row=span.from_row,
        to_row=span.to_row,
        phrases=change,
        way=run.way,
        origin=run.origin,
        across=True,
        half_gaps=run.half_gaps,
    )


# ----------------------------------------------------------------- when hands can work


def _cast_off_gap(whose: str, span: ShapingSpan) -> int:
    """A cast-off is made where the carriage stands: it begins the whole width at the right, and a part at its outer edge."""
    return 1 if whose == GAP or (whose == LEFT and not span.in_parts(0)) else 0


def _at_carriage(whose: str, span: ShapingSpan, first: int) -> tuple[int, ...]:
    """Counter values, from the run's beginning, at which the carriage is at the edge, not before `first`."""
    if whose == PAIR:
        # Even rows, so that either end comes to the carriage, with a row knitted after the second. Not where the piece parts
        # or rejoins: one end would belong to the whole width and the other to a part.
        ends = {row - span.from_row for between in span.parted for row in between}
        return tuple(t for t in _even_slots(span, first) if t not in ends)
    if whose == GAP:
        return tuple(range(first | 1, span.rows, 2))
    if whose == RIGHT:
        return tuple(range(max(2, first + first % 2), span.rows, 2))
    # The carriage is at the left at odd rows; a part at the left begins with it there.
    return tuple(t for t in range(max(1, first), span.rows) if (t % 2 == 1) != span.in_parts(t))


def _even_slots(span: ShapingSpan, first: int) -> tuple[int, ...]:
    return tuple(range(max(2, first + first % 2), span.rows - 1, 2))


def _any_slots(span: ShapingSpan, first: int) -> tuple[int, ...]:
    return tuple(range(max(1, first), span.rows))


def _after(span: ShapingSpan, begin: int, whose: str) -> int:
    """The first row at which a move may follow a cast-off, which takes two rows for two edges."""
    if not span.cast_off:
        return 1
    return begin + 2 if whose == PAIR or begin == 0 else begin + 1


def _stairs(slots: tuple[int, ...]) -> tuple[int, ...]:
    """The slots that are two rows apart at least."""
    kept: list[int] = []
    for slot in slots:
        if not kept or slot >= kept[-1] + 2:
            kept.append(slot)
    return tuple(kept)


# ----------------------------------------------------------------- moves


def _even(
    run: EdgeRun, spans: Sequence[ShapingSpan], begin: Sequence[int], whose: str
) -> tuple[tuple[ShapingPhrase, ...], ...] | None:
    """Moves of one size: single stitches of a slope, two at once along any line, or equal steps."""
    tapers: list[Taper] = []
    by: list[int] = []
    for span, gap in zip(spans, begin, strict=True):
        size, moves = _size(run, span)
        by_twos = size > 1 and not span.steps
        several = max((n for n, _ in span.in_turn), default=size) > 1
        needs_carriage = not run.way.inside and ((several and not by_twos) or (span.sign > 0 and run.way.kind != "fashioned"))
        first = max(_after(span, gap, whose), FILLED_FROM if span.sign > 0 and span.from_row == 0 else 1)
        slots = _at_carriage(whose, span, first) if needs_carriage else _any_slots(span, first)
        # Steps of several sizes are made in even rows: the line is one of moves.
        stitches = moves if span.in_turn else span.rest
        line = targets(_line(run, stitches, span.rows, slots), span.rows)
        in_moves = tuple(far / size for far in line)
        tapers.append(
            Taper(
                moves=moves,
                rows=span.rows,
                line=in_moves,
                slots=slots,
                least_gap=2 if needs_carriage else rows_inside(span.sign < 0) if run.way.inside else 1,
                begin=gap if span.cast_off else 0,
                size=size,
                stitches=stitches,
                first=run.begins_moving,
                last=run.ends_moving,
            )
        )
        by.append(span.sign * size)
    phrases = phrase_schedules(tapers, by)
    if phrases and any(span.in_turn for span in spans):
        return in_their_steps(phrases, spans)
    return phrases and _less_last(phrases, [t.moves * t.size - t.stitches for t in tapers])


def _line(run: EdgeRun, stitches: int, rows: int, slots: Sequence[int]) -> Curve:
    """The line that moves are made along. One that begins or ends with a move has a whole gap at its other end."""
    if not slots or not (run.begins_moving or run.ends_moving):
        return line_of(run.path)(stitches, rows)
    return pinned(
        stitches, (slots[0] if run.begins_moving else 0, slots[-1] if run.ends_moving else rows), run.begins_moving, run.ends_moving
    )


def _size(run: EdgeRun, span: ShapingSpan) -> tuple[int, int]:
    """(stitches a move, moves)."""
    if span.in_turn:
        return 1, sum(times for _, times in span.in_turn)
    if span.steps:
        moves = min(span.steps, span.rest)
        return (span.rest // moves if moves else 1), moves
    size = run.way.at_once if span.sign < 0 or run.way.inside else 1
    return size, -(-span.rest // size)


def _less_last(phrases: tuple[tuple[ShapingPhrase, ...], ...], less: Sequence[int]) -> tuple[tuple[ShapingPhrase, ...], ...]:
    """The last move of a size is so many stitches less than the others: in every size it stands alone then."""
    if not any(less):
        return phrases
    made: list[tuple[ShapingPhrase, ...]] = []
    for of_size, few in zip(phrases, less, strict=True):
        worked = [n for n, phrase in enumerate(of_size) if phrase.times]
        alone = ShapingPhrase((2,), (-1,), 0)
        some = list(of_size)
        if few and worked:
            last = some[worked[-1]]
            *gaps, gap = last.gaps
            sign = -1 if last.by[-1] < 0 else 1
            alone = ShapingPhrase((gap,), (last.by[-1] - sign * few,), 1)
            some[worked[-1]] = replace(last, times=last.times - 1)
            if gaps:
                some[worked[-1] + 1 : worked[-1] + 1] = [ShapingPhrase(tuple(gaps), last.by[:-1], 1)]
        made.append((*some, alone))
    return tuple(made)


def _curved(
    run: EdgeRun, spans: Sequence[ShapingSpan], begin: Sequence[int], whose: str
) -> tuple[tuple[ShapingPhrase, ...], ...] | None:
    flights: list[Flight] = []
    for span, gap in zip(spans, begin, strict=True):
        fashioned = span.sign > 0 and run.way.kind == "fashioned"
        first = max(_after(span, gap, whose), FILLED_FROM if fashioned and span.from_row == 0 else 1)
        slots = several = _at_carriage(whose, span, first)
        if whose == PAIR and (span.sign < 0 or fashioned):
            # One stitch goes at both ends at once, where the piece parts too.
            slots = _even_slots(span, first)
        line = targets(line_of(run.path)(span.rest, span.rows), span.rows)
        single = frozenset(slots) - frozenset(several)
        flights.append(
            Flight(
                stitches=span.rest,
                rows=span.rows,
                line=line,
                slots=_stairs(slots),
                single=single,
                begin=gap if span.cast_off else 0,
                steepens=run.path == "arch",
            )
        )
    return flight_schedules(flights, [span.sign for span in spans])
