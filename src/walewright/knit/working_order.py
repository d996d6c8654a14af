"""The order in which the parts of a piece are worked: one after the other, each up to where it parts, rejoins or ends.

Of parts that rejoin, the one from which the yarn can go on is worked last, so that knitting goes on with the carriage there; of
parts that do not, it is worked first.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Literal

from walewright.counted.model import SizedOpening, SizedPiece
from walewright.counted.parts import SizedPart, above, below, parts_of
from walewright.record import record, replace

Then = Literal["parts", "waits", "rejoins", "ends"]
"""What becomes of a part at its last row: its stitches part | they wait for those that they are joined with | all of them are
there | they leave the bed."""


@record
class PutBy:
    """A part that waits `rows` rows for its turn."""

    part: SizedPart
    rows: int


@record
class WorkedPart:
    """`part` in its turn. `turned`: it has waited, and the counter is set back to its first row. `put_by` are the parts that wait
    from its last row on: others, in the order in which they are put by, or itself. `openings` are those that begin or end there,
    and `joined` what is joined, from left to right. `goes_on`: the yarn goes on with the next part."""

    part: SizedPart
    turned: bool
    then: Then
    put_by: tuple[PutBy, ...] = ()
    openings: tuple[SizedOpening, ...] = ()
    goes_on: bool = True
    joined: tuple[SizedPart, ...] = ()


def working_order(sized: SizedPiece) -> tuple[WorkedPart, ...]:
    """Every part of the piece, in the order worked."""
    turns = _turns(parts_of(sized))
    return tuple(replace(turn, put_by=_waiting(sized, turns, number)) for number, turn in enumerate(turns))


def _turns(parts: Sequence[SizedPart]) -> list[WorkedPart]:
    """In order; of those put by the rows are still to be counted."""
    made: list[WorkedPart] = []
    done: list[SizedPart] = []
    todo: list[tuple[SizedPart, bool]] = [(parts[0], False)]
    while todo:
        part, turned = todo.pop()
        done.append(part)
        following = above(part, parts)
        turn = WorkedPart(part, turned, "ends")
        if len(following) > 1:
            order = _one_by_one(part, following)
            others = tuple(PutBy(other, 0) for other in _inwards(order[0], following))
            todo += [(other, True) for other in reversed(order[1:])]
            todo.append((order[0], False))
            openings = tuple(p.right for p in following[:-1] if p.right is not None)
            turn = WorkedPart(part, turned, "parts", others, openings, _goes_on(part, order[0]))
        elif following and all(p in done for p in below(following[0], parts)):
            joined = below(following[0], parts)
            todo.append((following[0], False))
            openings = tuple(p.right for p in joined[:-1] if p.right is not None)
            turn = WorkedPart(part, turned, "rejoins", (), openings=openings, goes_on=_goes_on(part, following[0]), joined=joined)
        elif following:
            turn = WorkedPart(part, turned, "waits", (PutBy(part, 0),))
        made.append(turn)
    return made


def _one_by_one(part: SizedPart, following: Sequence[SizedPart]) -> list[SizedPart]:
    """The parts that it parts into, as they are worked: from the far side to the carriage's where any of them rejoin."""
    order = list(following) if part.home == "right" else list(reversed(following))
    rejoining = any(p.right is not None and p.right.rejoins for p in following[:-1])
    return order if rejoining else list(reversed(order))


def _inwards(first: SizedPart, following: Sequence[SizedPart]) -> Iterator[SizedPart]:
    """All but the part worked first, from the outer ones inwards."""
    at = following.index(first)
    yield from following[:at]
    yield from reversed(following[at + 1 :])


def _goes_on(part: SizedPart, following: SizedPart) -> bool:
    """Whether the yarn hangs at the end from which the part above is begun."""
    if part.home != following.home:
        return False
    return part.left == following.left if part.home == "left" else part.right == following.right


def _waiting(sized: SizedPiece, turns: Sequence[WorkedPart], number: int) -> tuple[PutBy, ...]:
    """Those put by after a turn, with the rows until they are worked, or until what they are joined into is."""
    found: list[PutBy] = []
    for put_by in turns[number].put_by:
        rows = 0
        for turn in turns[number + 1 :]:
            if turn.part == put_by.part or (turn.part.from_row == put_by.part.to_row and turn.part.meets(put_by.part)):
                break
            rows += sized.counter(turn.part.to_row) - sized.counter(turn.part.from_row)
        found.append(replace(put_by, rows=rows))
    return tuple(found)
