"""Moves told one by one: what hands do before, in and after a row, as the sentences of a bench copy.

Moves of one kind that follow each other are one sentence. Stitches are moved to one side first and then to the other, as far as
no needle is in the way; all else stays in its order.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby

from walewright.knit import bench_steps as bs
from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.operations import Operation
from walewright.knit.step import Step


def told(moves: Sequence[Operation]) -> Iterator[Step]:
    """The sentences of `moves`, which no step tells. Raises TypeError for a move that no chart, stripes or rib asks for."""
    at = 0
    while at < len(moves):
        kind = type(moves[at])
        end = at + 1
        while end < len(moves) and type(moves[end]) is kind:
            end += 1
        if kind in (op.LiftOff, op.DrawLong):
            step, at = _returned(moves, at, end)
            yield step
        elif kind is op.BreakYarn and end < len(moves):
            yield st.BreakOff()
            yield _threaded(moves[end], broken=True)
            at = end + 1
        else:
            yield from _alike(moves[at:end])
            at = end


def _alike(moves: Sequence[Operation]) -> Iterator[Step]:
    """The sentences of moves of one kind."""
    match moves[0]:
        case op.Transfer():
            yield from _moved([m for m in moves if isinstance(m, op.Transfer)])
        case op.Cross():
            crosses = (m for m in moves if isinstance(m, op.Cross))
            for (left, side), some in groupby(crosses, lambda m: (m.left, m.hung_first)):
                yield bs.CrossStitches(tuple(m.first for m in some), left, side)
        case op.Drop():
            for rows, dropped in groupby((m for m in moves if isinstance(m, op.Drop)), lambda m: m.rows):
                yield bs.DropRows(_rising(m.slot for m in dropped), rows)
        case op.LatchUp():
            yield from _latched([m for m in moves if isinstance(m, op.LatchUp)])
        case op.Hold():
            yield bs.HoldNeedles(_spread(moves))
        case op.Release():
            yield bs.ReturnNeedles(_spread(moves))
        case op.PictureRow():
            yield from (_laid(m) for m in moves if isinstance(m, op.PictureRow))
        case op.UseYarn():
            yield from (_threaded(m, broken=False) for m in moves)
        case _:
            raise TypeError(f"no sentence tells {moves[0]!r}")


def _returned(moves: Sequence[Operation], at: int, end: int) -> tuple[Step, int]:
    """What is done on needles that were held for one row, with their return; and where the moves go on."""
    first = moves[at]
    laid = moves[end] if end < len(moves) and isinstance(moves[end], op.LayIn) else None
    back = end + 1 if laid is not None else end
    after = back
    while after < len(moves) and isinstance(moves[after], op.Release):
        after += 1
    needles = _spread(moves[back:after])
    if isinstance(laid, op.LayIn):
        return bs.KnitNeedles(needles, laid.yarn), after
    return (bs.DrawLongOn(needles) if isinstance(first, op.DrawLong) else bs.FloatPast(needles)), after


def _latched(moves: list[op.LatchUp]) -> Iterator[Step]:
    """Along the bed, as far as the needles rise, those columns together that are equally deep."""
    while moves:
        end = next((i for i in range(1, len(moves)) if moves[i].slot <= moves[i - 1].slot), len(moves))
        depths: dict[tuple[int, bool], list[int]] = {}
        for move in moves[:end]:
            depths.setdefault((move.rows, move.goes_on), []).append(move.slot)
        for number, ((rows, on), slots) in enumerate(depths.items()):
            kind = bs.LatchOn if on else bs.LatchColumns
            yield kind(tuple(slots), rows, along=number > 0)
        moves = moves[end:]


def _threaded(move: Operation, broken: bool) -> Step:
    """A yarn of stripes; `broken`: the one before it has just been cut."""
    if not isinstance(move, op.UseYarn):
        raise TypeError(f"no sentence tells {move!r}")
    if broken and move.carried:
        return bs.TakeUp(move.yarn, move.tension)
    return st.UseYarnStep(move.yarn, move.tension, "carried" if move.carried else "")


def _laid(move: op.PictureRow) -> bs.LayColours:
    """The yarn that lies in the most blocks goes into all hooks that are not named."""
    blocks: dict[str, list[tuple[int, int]]] = {}
    for yarn, first, last in move.blocks:
        blocks.setdefault(yarn, []).append((first, last))
    rest = max(blocks, key=lambda yarn: (len(blocks[yarn]), sum(z - a for a, z in blocks[yarn])))
    named = [yarn for yarn in blocks if yarn != rest]
    return bs.LayColours(tuple(named), tuple(_rising(s for a, z in blocks[y] for s in range(a, z + 1)) for y in named), rest)


# ----------------------------------------------------------------- stitches moved


def _moved(moves: list[op.Transfer]) -> Iterator[Step]:
    """Side by side, as far as the order of moves that meet on a needle stays."""
    left = list(moves)
    while left:
        by = left[0].by
        now: list[op.Transfer] = []
        others: list[op.Transfer] = []
        for move in left:
            meets = any(_meet(move, other) for other in others)
            # Two tools side by side would be read as one.
            beside = any(move.first in (m.last + 1, m.last) or m.first == move.last + 1 for m in now)
            if move.by == by and not meets and not beside:
                now.append(move)
            else:
                others.append(move)
        yield bs.MoveStitches(_spread(now), "right" if by > 0 else "left")
        left = others


def _meet(one: op.Transfer, other: op.Transfer) -> bool:
    """Whether a needle has to do with both."""
    spans = [(min(m.first, m.first + m.by), max(m.last, m.last + m.by)) for m in (one, other)]
    (a, z), (first, last) = spans
    return a <= last and first <= z


def _spread(moves: Sequence[Operation]) -> bs.Needles:
    """The needles of moves that have a first and a last one."""
    spans = [(m.first, m.last) for m in moves if isinstance(m, op.Transfer | op.Hold | op.Release)]
    return _rising(s for a, z in spans for s in range(a, z + 1))


def _rising(slots: Iterator[int]) -> bs.Needles:
    return tuple(sorted(slots))
