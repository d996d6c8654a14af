"""Which of a thing's copies is meant: the 1st of two sleeves, the next one, each."""

from __future__ import annotations

from walewright.knit.manners import SeamTurn
from walewright.knit.operations import NEXT_COPY
from walewright.record import record


@record
class Copy:
    """The copy of that `number`, from 1; of -1 (`operations.NEXT_COPY`) the next one, whichever it is. `each`: it is done at each
    of them. Neither: none has to be named."""

    number: int = 0
    each: bool = False

    def __bool__(self) -> bool:
        return self.each or self.number != 0


NONE = Copy()
EACH = Copy(each=True)
NEXT = Copy(NEXT_COPY)


def in_turn(copy: Copy, turn: SeamTurn, number: int, times: int) -> int:
    """The copy that is meant in seam `number` of as many as there are `times`; 0 where none has to be named."""
    if not turn or not copy:
        return copy.number
    copies = times + 1 if turn == "next" else times
    meant = number if copy.each else number % copies + 1
    return meant if copies > 1 else 0


def of_several(number: int, copies: int) -> Copy:
    """Copy `number` where there are several."""
    return Copy(number) if copies > 1 else NONE
