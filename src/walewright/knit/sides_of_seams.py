"""The sides of seams as they are told: from which end, and of which copies. Where the number of copies differs by size, seams at
one copy after the other are told as one, so that they are the same sentence in every size; so are many of them."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.design.model import Design
from walewright.glue.model import OPPOSITE, Chain, EndAt, Glued, Seam
from walewright.knit import steps as st
from walewright.knit.copies import EACH, NEXT, Copy, of_several
from walewright.knit.manners import SeamTurn
from walewright.record import record


def seam_told(seam: Seam, one: Copy | None = None, other: Copy | None = None, at_tail: bool | None = None) -> st.SeamOf:
    """Told from the bottom of rows upwards; of stitches, from the left end of the first ones; of a graft from where its tail hangs,
    at its beginning as the seam runs (`at_tail`) or at its end (False). `one` and `other`: the copies that are named on each side,
    where they are not those of the seam's own places."""
    first, second = (seam.one, seam.one_begins), (seam.other, seam.other_begins)
    if not seam.other:
        return st.SeamOf(edges_told(*first, one), ())
    turned = tuple((chain[::-1], tuple(OPPOSITE[end] for end in begins[::-1])) for chain, begins in (first, second))
    better = _better(turned[0][1][0], turned[1][1][0]) > _better(first[1][0], second[1][0])
    if better if at_tail is None else not at_tail:
        first, second = turned
    return st.SeamOf(edges_told(*first, one), edges_told(*second, other or one))


def _better(one: EndAt, other: EndAt) -> int:
    return 2 * (one == "bottom") + 2 * (other == "bottom") + (one == "left")


def edges_told(chain: Chain, begins: Sequence[EndAt], copy: Copy | None = None) -> tuple[st.EdgeInSeam, ...]:
    """One side, of each place the `copy`, or its own where it is one of several."""
    return tuple(
        st.EdgeInSeam(p.owner, p.edge, of_several(p.copy, p.copies) if copy is None else copy, end)
        for p, end in zip(chain, begins, strict=True)
    )


@record
class SeamsInTurn:
    """Seams at one copy after the other as one: `seam` names each copy, and the next one."""

    seam: st.SeamOf
    turn: SeamTurn
    times: int


MANY = 3
"""So many seams, each at another copy, are not told one by one."""


def in_turns(design: Design, glued: Glued, numbers: Sequence[int]) -> SeamsInTurn | None:
    """These seams as one, where they are made at every copy of pieces whose number of copies differs by size, or where they are
    many."""
    seams = [glued.seams[number] for number in numbers]
    first = seams[0]
    copies = first.one[0].copies
    if any((s.join, names(s)) != (first.join, names(first)) for s in seams):
        return None
    if len(seams) < MANY and not all(varies(design, place.owner) for place in (*first.one, *first.other)):
        return None
    own = design.joins[first.join].next_copy in ("", "own")
    if within_a_copy(first) and own:
        return None
    turn: SeamTurn = "own" if own else "round" if len(seams) == copies else "next"
    if len(seams) != (copies - 1 if turn == "next" else copies):
        return None
    for number, seam in enumerate(seams, 1):
        across = number if turn == "own" else number % copies + 1
        sides = ((seam.one, number), (seam.other, across))
        if any((p.copy, p.copies) != (copy, copies) for side, copy in sides for p in side):
            return None
    return SeamsInTurn(seam_told(first, EACH, EACH if turn == "own" else NEXT), turn, len(seams))


def within_a_copy(seam: Seam) -> bool:
    """Whether both its sides are edges of one copy of a piece."""
    return len({(p.owner, p.copy) for p in (*seam.one, *seam.other)}) == 1


def names(seam: Seam) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """The edges of both sides, whichever the copy."""
    return tuple(p.text for p in seam.one), tuple(p.text for p in seam.other)


def varies(design: Design, owner: str) -> bool:
    """Whether a piece, or a band on each copy of one, is knitted a number of times that differs by size."""
    band = next((band for band in design.bands if band.name == owner), None)
    if band is not None:
        return any(varies(design, edge.piece) for edge in band.along)
    return len(set(design.piece(owner).copies)) > 1
