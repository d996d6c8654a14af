"""Moves at a rate: on which rows they come, all of them one gap apart.

Moves that need the carriage are scheduled on even rows, counted from the beginning of the run, as those of a pair are. A left
edge by itself, and the edge of a gap, have the carriage a row earlier; a left edge of a part has it there. So the edges of a piece
and of its mirror image move in the same rows, or one apart, and a gap is a row longer or shorter where the piece parts.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Sequence
from itertools import groupby, pairwise

from walewright.counted.model import ShapingPhrase, SizedPiece
from walewright.design.model import Design, EdgeRun, Piece, Rate
from walewright.record import replace
from walewright.report.model import Diagnostic, diagnosed
from walewright.report.said import only, said
from walewright.solve.schedule.spans import GAP, LEFT, PAIR, RIGHT, ShapingSpan

EVEN = 2


def paced(
    rates: Sequence[Rate], whose: str, spans: Sequence[ShapingSpan], begin: Sequence[int], ends: bool = False
) -> tuple[tuple[ShapingPhrase, ...], ...]:
    """The phrases of every size at its rate. `begin` is where the first gap is counted from. All sizes begin alike if they can:
    after a whole gap, so that it is read as all others are, or else after half of one, where the line of that rate has come to
    half a move. Pinned rates begin in the first row they can, or, where one `ends` with a move, in the last."""
    firsts = [_firsts(rate, whose, span, ends) for rate, span in zip(rates, spans, strict=True)]
    begins = _begins(rates, firsts)
    made: list[list[ShapingPhrase]] = []
    for rate, span, first, start in zip(rates, spans, begins, begin, strict=True):
        rows = [_made_at(rate, whose, span, first + n * rate.rows, ends) for n in range(_moves(rate, span))]
        gaps = [after - before for before, after in pairwise([start if span.cast_off else 0, *rows])]
        by = span.sign * rate.stitches
        # The first gap of a pinned rate is like no other: in every size it stands alone.
        alone, alike = (gaps[:1], gaps[1:]) if rate.pinned else ([], gaps)
        made.append([ShapingPhrase((gap,), (by,), 1) for gap in alone])
        made[-1] += [ShapingPhrase((gap,), (by,), len(list(same))) for gap, same in groupby(alike)]
    longest = max(len(phrases) for phrases in made)
    for rate, span, phrases in zip(rates, spans, made, strict=True):
        phrases += [ShapingPhrase((rate.rows,), (span.sign * rate.stitches,), 0)] * (longest - len(phrases))
    return tuple(map(tuple, made))


def _begins(rates: Sequence[Rate], firsts: Sequence[Sequence[int]]) -> list[int]:
    """After which row each size begins: all after the same one; or, of rates that differ, all after a whole gap, or else none, so
    that one text can have them."""
    if any(rate.pinned for rate in rates):
        return [own[0] for own in firsts]
    if len(set(rates)) == 1:
        common = next((at for at in firsts[0] if all(at in of_size for of_size in firsts)), None)
        return [own[0] if common is None else common for own in firsts]
    if all(rate.rows in own for rate, own in zip(rates, firsts, strict=True)):
        return [rate.rows for rate in rates]
    return [next((at for at in own if at != rate.rows), own[0]) for rate, own in zip(rates, firsts, strict=True)]


def _moves(rate: Rate, span: ShapingSpan) -> int:
    return span.rest // rate.stitches


def _firsts(rate: Rate, whose: str, span: ShapingSpan, ends: bool) -> list[int]:
    """Rows after which the first move can be made, the best first."""
    step, moves = EVEN if rate.at_carriage else 1, _moves(rate, span)
    half = max(rate.first, rate.rows // 2 // step * step)
    able = sorted(_able(rate, span.rows, moves), key=lambda at: (at != rate.rows, abs(at - half), at))
    if rate.pinned:
        able = sorted(able, reverse=ends)
    spoilt = _ends(whose, span.parted)
    return [at for at in able if not _spoilt(rate, span.from_row + at, moves, spoilt)] or able


def _able(rate: Rate, rows: int, moves: int) -> range:
    return range(rate.first, rows - rate.last - (moves - 1) * rate.rows + 1, EVEN if rate.at_carriage else 1)


def _ends(whose: str, parted: Iterable[tuple[int, int]]) -> frozenset[int]:
    """Rows where no move can be made at the carriage: one end of it would belong to the whole width and the other to a part. A left
    or right edge by itself can move where the piece parts, not where it rejoins."""
    if whose == GAP:
        return frozenset()
    return frozenset(row for between in parted for row in (between if whose == PAIR else between[1:]))


def _spoilt(rate: Rate, first: int, moves: int, ends: Collection[int]) -> list[int]:
    """The rows of moves, from the first, that fall there."""
    return [row for row in range(first, first + moves * rate.rows, rate.rows) if rate.at_carriage and row in ends]


def _made_at(rate: Rate, whose: str, span: ShapingSpan, at: int, ends: bool) -> int:
    if not rate.at_carriage:
        return at
    if ends and whose == LEFT and not span.in_parts(at):
        # The row after the last one of a pair: the carriage is at the left there.
        return at + 1
    return at - 1 if whose == GAP or (whose == LEFT and not span.in_parts(at)) else at


# ----------------------------------------------------------------- what hands cannot do

OTHERS = (2, 4, -2, 6, 8)
"""Rows more that are tried in place of a rate that cannot be kept."""


def rates_not_kept(design: Design, garments: Sequence[Sequence[SizedPiece]]) -> Iterator[Diagnostic]:
    """A message for each rate that asks for a move at the carriage in the very row where the piece parts or rejoins, whichever row
    it begins with; `garments[i]` are the pieces of size i."""
    for number, piece in enumerate(design.pieces):
        told: set[str] = set()
        for index, run, whose in _outer_runs(piece):
            if not run.rates or run.origin.path in told:
                continue
            sized = [pieces[number] for pieces in garments]
            own = tuple(zip(run.rates, sized, strict=True))
            rows = [_in_the_way(rate, whose, of_size, index) for rate, of_size in own]
            if any(rows):
                told.add(run.origin.path)
                rate = next(r for r, where in zip(run.rates, rows, strict=True) if where)
                # Of rates that differ by size none is proposed: each has another.
                more = OTHERS if len(set(run.rates)) == 1 else ()
                tried = (replace(rate, rows=rate.rows + by) for by in more if rate.rows + by > 0)
                other = next((r for r in tried if not any(_in_the_way(r, whose, of_size, index) for of_size in sized)), None)
                yield _not_kept(design, piece, run, rate, rows, other)


def _outer_runs(piece: Piece) -> Iterator[tuple[int, EdgeRun, str]]:
    """(number, run, whose it is) of both outer edges; of a mirror image none."""
    if piece.mirror_of is None:
        yield from ((index, run, PAIR if piece.symmetric else LEFT) for index, run in enumerate(piece.left))
        yield from ((index, run, RIGHT) for index, run in enumerate(() if piece.symmetric else piece.right))


def _in_the_way(rate: Rate, whose: str, sized: SizedPiece, index: int) -> list[int]:
    """Rows where the piece parts or rejoins and a move of that rate would come; none if some first row spares them."""
    run = (sized.right if whose == RIGHT else sized.left)[index]
    moves = rate.moves(run.to_row - run.from_row)
    ends = _ends(whose, ((o.row, o.to_row) for o in sized.openings))
    spoilt = [_spoilt(rate, run.from_row + at, moves, ends) for at in _able(rate, run.to_row - run.from_row, moves)]
    return min(spoilt, key=len, default=[])


def _not_kept(
    design: Design, piece: Piece, run: EdgeRun, rate: Rate, rows: Sequence[Sequence[int]], other: Rate | None
) -> Diagnostic:
    found = {size: where for size, where in zip(design.sizes, rows, strict=True) if where}
    helps = [said("write-rate", rows=other.rows)] if other is not None else []
    return diagnosed(
        "rate-not-kept/where-it-parts",
        (run.origin.span, "rate"),
        notes=tuple(said("counter", size=size, row=where[0]) for size, where in found.items()),
        helps=(*helps, "end-at-the-level"),
        sizes=only(design.sizes, found),
        piece=piece.name,
        level=run.to_level,
        rows=rate.rows,
    )
