"""Short rows: the held edge of a wedge as moves of hands.

A wedge is a chain of turns two rows apart: stitches held, or returned, a row over the rest, the innermost held needle wrapped
as the yarn comes to it, a row back. The last turn returns all.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import groupby
from typing import Literal

from walewright.counted.model import SizedWedge
from walewright.knit import steps as st
from walewright.knit.operations import Side
from walewright.knit.order import Group, Move, Rank
from walewright.record import record


@record
class HoldingTurn:
    """`kind` "hold", "return" (some) or "all"."""

    kind: Literal["hold", "return", "all"]
    stitches: int


def turns(wedge: SizedWedge) -> tuple[HoldingTurn, ...]:
    """What happens at the held edge, turn by turn; the resting stitches go and come back with the outermost group."""
    groups = wedge.groups
    if wedge.kind == "both":
        held, back = groups, groups[:0:-1]
    elif wedge.kind == "out":
        held, back = (sum(groups[:-1]),) if groups[:-1] else (), groups[-2:0:-1]
    else:
        held, back = groups[:-1], ()
    if not held:
        return ()
    outermost = (held[0] + wedge.rest, *held[1:])
    return (*(HoldingTurn("hold", n) for n in outermost), *(HoldingTurn("return", n) for n in back), HoldingTurn("all", 0))


@record
class HeldEnd:
    """A `side` of a part in work at rows `first_row`..`last_row`. `lead` is 1 where the carriage is at that side at even rows,
    so that the first hold is a row later, else 0."""

    side: Side
    lead: int
    first_row: int
    last_row: int


def is_uneven(wedge: SizedWedge) -> bool:
    """Whether the groups that are held are not all alike."""
    return len({turn.stitches for turn in turns(wedge) if turn.kind == "hold"}) > 1


def wedge_groups(track: str, wedge: SizedWedge, end: HeldEnd, origin: str, both_sorts: bool = False) -> Iterator[Group]:
    """The groups of a wedge's edge with the turns that fall into the part's rows. `both_sorts`: another size holds larger groups
    first and then smaller ones; where all are alike here, the larger ones are held no times."""
    mine = [(k, turn) for k, turn in enumerate(turns(wedge)) if end.first_row <= wedge.from_row + 2 * k < end.last_row]
    row = wedge.from_row + end.lead
    if both_sorts and mine and not is_uneven(wedge):
        larger = _begin(HoldingTurn("hold", mine[0][1].stitches + 1), end.side, origin)
        body = _round(larger, end.side, origin)
        yield Group((track, 1), row, row, (), st.Repeat(body, 0, origin=origin))
    for number, (turn, some) in enumerate(groupby(mine, key=lambda m: m[1])):
        found = [k for k, _ in some]
        first = row + 2 * found[0]
        key = (track, _class(wedge, turn, number))
        if turn.kind == "all":
            back = Move(first, Rank.RETURN, st.ReturnHeld(end.side, origin=origin))
            yield Group(key, first, first, (back,), None)
            continue
        body = _round(_begin(turn, end.side, origin), end.side, origin)
        rank = Rank.HOLD if turn.kind == "hold" else Rank.RETURN
        moves = [m for k in found for m in (Move(row + 2 * k, rank, body[0]), Move(row + 2 * k + 1, Rank.WRAP, body[2]))]
        yield Group(key, first, first + 2 * len(found), tuple(moves), st.Repeat(body, len(found), origin=origin))


def _round(begin: st.Step, side: Side, origin: str) -> tuple[st.Step, ...]:
    """A row to the held edge and one back."""
    return begin, st.KnitRows(1, origin=origin), st.WrapHeld(side, origin=origin), st.KnitRows(1, origin=origin)


def _begin(turn: HoldingTurn, side: Side, origin: str) -> st.Step:
    if turn.kind == "hold":
        return st.HoldAtEnd(side, turn.stitches, origin=origin)
    return st.ReturnSome(side, turn.stitches, origin=origin)


def _class(wedge: SizedWedge, turn: HoldingTurn, number: int) -> int:
    """The same number for the same stage in every size: groups differ by one stitch at most, and a size may have but one kind."""
    if turn.kind == "all":
        return 9
    larger = turn.stitches == max(wedge.groups)
    if turn.kind == "hold":
        return 0 if number == 0 and (wedge.rest or wedge.kind == "out") else 1 if larger else 2
    return 4 if larger else 3
