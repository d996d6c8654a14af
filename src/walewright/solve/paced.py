"""Moves at a rate: on which rows they come, all of them one gap apart.

Moves that need the carriage are scheduled on even rows, counted from the beginning of the run, as those of a pair are. A left edge by
itself, and the edge of a gap, have the carriage a row earlier; a left edge of a part has it there. So the edges of a piece and of its
mirror image move in the same rows, or one apart, and a gap is a row longer or shorter where the piece parts.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby, pairwise

from walewright.design.model import Design, Piece, Rate
from walewright.report.model import Diagnostic, Label
from walewright.solve.model import Phrase, SizedPiece
from walewright.solve.spans import GAP, LEFT, PAIR, Span

EVEN = 2


def paced(rate: Rate, whose: str, spans: Sequence[Span], begin: Sequence[int]) -> tuple[tuple[Phrase, ...], ...]:
    """The phrases of every size. `begin` is where the first gap is counted from. All sizes begin alike if they can: after a whole gap,
    so that it is read as all others are, or else after half of one, where the line of that rate has come to half a move."""
    firsts = [_firsts(rate, whose, span) for span in spans]
    common = next((at for at in firsts[0] if all(at in of_size for of_size in firsts)), None)
    made: list[list[Phrase]] = []
    for span, own, start in zip(spans, firsts, begin, strict=True):
        first = common if common is not None else own[0]
        rows = [_made_at(rate, whose, span, first + n * rate.rows) for n in range(_moves(rate, span))]
        gaps = [after - before for before, after in pairwise([start if span.cast_off else 0, *rows])]
        by = span.sign * rate.stitches
        made.append([Phrase((gap,), (by,), len(list(alike))) for gap, alike in groupby(gaps)])
    longest = max(len(phrases) for phrases in made)
    for span, phrases in zip(spans, made, strict=True):
        phrases += [Phrase((rate.rows,), (span.sign * rate.stitches,), 0)] * (longest - len(phrases))
    return tuple(map(tuple, made))


def _moves(rate: Rate, span: Span) -> int:
    return span.rest // rate.stitches


def _firsts(rate: Rate, whose: str, span: Span) -> list[int]:
    """Rows after which the first move can be made, the best first. A pair makes none where the piece parts or rejoins, if another
    first row spares it that."""
    step = EVEN if rate.at_carriage else 1
    latest = span.rows - rate.last - (_moves(rate, span) - 1) * rate.rows
    able = range(rate.first, latest + 1, step)
    half = max(rate.first, rate.rows // 2 // step * step)
    preferred = sorted(able, key=lambda at: (at != rate.rows, abs(at - half), at))
    free = [at for at in preferred if not any(_spoilt(rate, whose, span, at + n * rate.rows) for n in range(_moves(rate, span)))]
    return free or preferred


def _spoilt(rate: Rate, whose: str, span: Span, at: int) -> bool:
    """Whether no hands can make a move there: one end of it would belong to the whole width and the other to a part."""
    if not rate.at_carriage or whose == GAP:
        return False
    ends = {row for between in span.parted for row in (between if whose == PAIR else between[1:])}
    return span.from_row + at in ends


def _made_at(rate: Rate, whose: str, span: Span, at: int) -> int:
    if not rate.at_carriage:
        return at
    return at - 1 if whose == GAP or (whose == LEFT and not span.in_parts(at)) else at


# ----------------------------------------------------------------- what hands cannot do


def rates_not_kept(design: Design, garments: Sequence[Sequence[SizedPiece]]) -> Iterator[Diagnostic]:
    """A message for each rate that asks for a move at the carriage in the very row where the piece parts or rejoins, whichever row
    it begins with; `garments[i]` are the pieces of size i."""
    for number, piece in enumerate(design.pieces):
        for index, run in enumerate(piece.left):
            rate = run.rate
            if rate is None or not rate.at_carriage or piece.mirror_of is not None:
                continue
            where = [_parted_at(piece, pieces[number], index, rate) for pieces in garments]
            sizes = [size for size, row in zip(design.sizes, where, strict=True) if row is not None]
            if sizes:
                yield Diagnostic(
                    "rate-not-kept",
                    f"the edge of the {piece.name} to `{run.to_level}` cannot move every {rate.rows} rows: one of its moves comes in the "
                    "row where the piece parts or rejoins",
                    (Label(run.origin.span, f"every {rate.rows} rows"),),
                    tuple(f"{size}: RC {row}" for size, row in zip(design.sizes, where, strict=True) if row is not None),
                    (f"write `every {rate.rows + EVEN} rows`, or lead the edge to a level two rows higher",),
                    sizes=tuple(sizes) if len(sizes) < len(design.sizes) else (),
                )


def _parted_at(piece: Piece, sized: SizedPiece, index: int, rate: Rate) -> int | None:
    ends = {row for o in sized.openings for row in ((o.row, o.to_row) if piece.symmetric else (o.to_row,)) if row < sized.rows}
    moves = (row for row, by in sized.left[index].changes() if abs(by) == rate.stitches)
    return next((row for row in moves if row in ends), None)
