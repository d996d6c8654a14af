"""Shaping: the runs of an edge and of a neck in all sizes, from counted stitches and rows to rows of moves."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from walewright.design.model import EdgeRun, Opening, Piece, Way
from walewright.solve.curves import Curve, quarter_ellipse, straight, targets
from walewright.solve.model import Phrase, SizedOpening, SizedRun
from walewright.solve.schedule import Taper
from walewright.solve.stairs import Flight, flight_schedules
from walewright.solve.structure import phrase_schedules


@dataclass(frozen=True, slots=True)
class Span:
    """One run of an edge in one size, counted: rows `from_row`..`to_row`, `change` stitches outwards, the first `cast_off`
    of an inward change at once; `steps` are that many moves alike (0: moves as the path has them). `parting`: where the
    piece parts (beyond the top if it does not)."""

    from_row: int
    to_row: int
    change: int
    cast_off: int
    steps: int
    parting: int

    @property
    def rows(self) -> int:
        return self.to_row - self.from_row

    @property
    def sign(self) -> int:
        return -1 if self.change < 0 else 1

    @property
    def rest(self) -> int:
        """Stitches to move after the cast-off."""
        return abs(self.change) - self.cast_off


def edge_runs(piece: Piece, side: str, number: int, spans: Sequence[Span]) -> tuple[SizedRun, ...] | None:
    """Run `number` of an edge in every size; None if its moves do not fit into its rows in some size."""
    run = (piece.left if side == "left" else piece.right)[number]
    at_carriage = _pair_slots if piece.symmetric else _left_slots if side == "left" else _right_slots
    begin = [_cast_off_gap(piece, side, span) for span in spans]
    rest = (_curved if run.path == "curve" else _even)(run, spans, begin, at_carriage)
    if rest is None:
        return None
    first: list[tuple[Phrase, ...]] = [() for _ in spans]
    if any(span.cast_off for span in spans):
        first = [
            (Phrase((gap,), (-max(span.cast_off, 1),), 1 if span.cast_off else 0),) for span, gap in zip(spans, begin, strict=True)
        ]
    return tuple(
        SizedRun(run.name, span.from_row, span.to_row, (*head, *tail), run.way, run.origin)
        for span, head, tail in zip(spans, first, rest, strict=True)
    )


Slots = Callable[[Span, int], tuple[int, ...]]
"""Counter values, from the run's beginning, at which hands can work at the edge, not before the second argument."""


def _cast_off_gap(piece: Piece, side: str, span: Span) -> int:
    """A cast-off is made where the carriage stands: the left edge's, below the parting, a row later."""
    return 1 if not piece.symmetric and side == "left" and span.from_row < span.parting else 0


def _pair_slots(span: Span, first: int) -> tuple[int, ...]:
    """For both edges, one after the other: even rows, so that either end comes to the carriage, with a row knitted after
    the second. Not at the parting itself, where one end would belong to the whole width and the other to a half."""
    return tuple(t for t in _even_slots(span, first) if span.from_row + t != span.parting)


def _even_slots(span: Span, first: int) -> tuple[int, ...]:
    return tuple(range(max(2, first + first % 2), span.rows - 1, 2))


def _right_slots(span: Span, first: int) -> tuple[int, ...]:
    return tuple(range(max(2, first + first % 2), span.rows, 2))


def _left_slots(span: Span, first: int) -> tuple[int, ...]:
    """Odd rows with the carriage at the left; in the left half, which starts with the carriage there, even ones."""
    rows = range(max(1, first), span.rows)
    return tuple(t for t in rows if (t % 2 == 1) == (span.from_row + t < span.parting))


def _any_slots(span: Span, first: int) -> tuple[int, ...]:
    return tuple(range(max(1, first), span.rows))


def _after(span: Span, begin: int, both: bool) -> int:
    """The first row at which a move may follow a cast-off, which takes two rows for two edges."""
    if not span.cast_off:
        return 1
    return begin + 2 if both or begin == 0 else begin + 1


def _even(run: EdgeRun, spans: Sequence[Span], begin: Sequence[int], at_carriage: Slots) -> tuple[tuple[Phrase, ...], ...] | None:
    """Moves of one size along a straight line: single stitches of a slope, or equal steps."""
    tapers: list[Taper] = []
    by: list[int] = []
    for span, gap in zip(spans, begin, strict=True):
        moves = min(span.steps, span.rest) if span.steps else span.rest
        size = span.rest // moves if moves else 1
        needs_carriage = size > 1 or (span.sign > 0 and run.way.kind != "fashioned")
        first = _after(span, gap, at_carriage is _pair_slots)
        if span.sign > 0 and span.from_row == 0:
            # A fashioned increase is filled from the stitch below the last row's: at the start there is none after one row.
            first = max(first, 2)
        slots = (at_carriage if needs_carriage else _any_slots)(span, first)
        line = targets(straight(moves, span.rows), span.rows)
        tapers.append(Taper(moves, span.rows, line, slots, 2 if needs_carriage else 1, gap if span.cast_off else 0))
        by.append(span.sign * size)
    return phrase_schedules(tapers, by)


def _curved(run: EdgeRun, spans: Sequence[Span], begin: Sequence[int], at_carriage: Slots) -> tuple[tuple[Phrase, ...], ...] | None:
    flights: list[Flight] = []
    both = at_carriage is _pair_slots
    for span, gap in zip(spans, begin, strict=True):
        first = _after(span, gap, both)
        slots = several = at_carriage(span, first)
        if both and (span.sign < 0 or run.way.kind == "fashioned"):
            # One stitch goes at both ends at once, at the parting too.
            slots = _even_slots(span, first)
        line = targets(quarter_ellipse(span.rest, span.rows), span.rows)
        flights.append(
            Flight(span.rest, span.rows, line, _stairs(slots), frozenset(slots) - frozenset(several), gap if span.cast_off else 0)
        )
    return flight_schedules(flights, [span.sign for span in spans])


def _stairs(slots: tuple[int, ...]) -> tuple[int, ...]:
    """The slots that are two rows apart at least."""
    kept: list[int] = []
    for slot in slots:
        if not kept or slot >= kept[-1] + 2:
            kept.append(slot)
    return tuple(kept)


# ----------------------------------------------------------------- necks


@dataclass(frozen=True, slots=True)
class Gap:
    """An opening in one size, counted: the parting row, the top row, and stitches of half its width and half its flat part."""

    row: int
    top: int
    half: int
    half_flat: int


def openings(opening: Opening, gaps: Sequence[Gap]) -> tuple[SizedOpening, ...] | None:
    """An opening in every size; None if its moves do not fit in some size.

    The moves are those of the half that is worked first: it begins with the carriage at its outer edge, so that casting off at
    the neck is possible after one row and then after every second."""
    phrases: tuple[tuple[Phrase, ...], ...] | None
    if opening.shape == "v":
        tapers = [Taper(g.half - g.half_flat, g.top - g.row, _line(straight, g), tuple(range(1, g.top - g.row))) for g in gaps]
        phrases = phrase_schedules(tapers, [-1] * len(gaps))
    else:
        flights = [
            Flight(g.half - g.half_flat, g.top - g.row, _line(quarter_ellipse, g), tuple(range(1, g.top - g.row, 2))) for g in gaps
        ]
        phrases = flight_schedules(flights, [-1] * len(gaps))
    if phrases is None:
        return None
    return tuple(_opening(opening, g, p, opening.way) for g, p in zip(gaps, phrases, strict=True))


def _line(curve: Callable[[int, int], Curve], gap: Gap) -> tuple[float, ...]:
    rows = gap.top - gap.row
    return targets(curve(gap.half - gap.half_flat, rows), rows)


def _opening(opening: Opening, gap: Gap, phrases: tuple[Phrase, ...], way: Way) -> SizedOpening:
    run = SizedRun(opening.name, gap.row, gap.top, phrases, way, opening.origin)
    return SizedOpening(opening.name, gap.row, 2 * gap.half_flat, 2 * gap.half, run, opening.origin)
