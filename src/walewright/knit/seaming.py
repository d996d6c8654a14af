"""Seams in the order of work: those made by hand as sentences, those made on the bed as blocks of their own."""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Mapping, Sequence
from itertools import groupby
from typing import Any

from walewright.counted import counted_piece
from walewright.counted.edges import chained_along
from walewright.counted.model import SizedGarment, SizedSeam
from walewright.design.model import Design
from walewright.glue.model import Chain, Glued, Place, Seam
from walewright.knit import steps as st
from walewright.knit.copies import EACH, Copy
from walewright.knit.linking import link_block
from walewright.knit.manners import SeamChain, SeamEdges, SeamThread
from walewright.knit.sides_of_seams import edges_told, in_turns, names, seam_told, varies, within_a_copy
from walewright.knit.steps import Step, StepBlock
from walewright.knit.strips import end_cm, end_of_strip
from walewright.knit.tail_ends import graft_tail, open_end
from walewright.knit.tails import MOST_TAILS, NOBODY, SewnWith, places
from walewright.record import replace


def made_on_the_bed(design: Design, seam: Seam) -> bool:
    """Whether the seam is linked, and so a block of its own."""
    return design.joins[seam.join].way == "linked"


def links(design: Design, glued: Glued, garment: SizedGarment, numbers: Sequence[int]) -> Iterator[StepBlock]:
    """The blocks of seams that are linked, those that are the same at each copy as one."""
    for group in _alike(glued, numbers):
        seam = glued.seams[group[0]]
        worn = dict(glued.worn)[seam.one[0].owner]
        yield link_block(design, seam, garment.seams[group[0]], worn, copies=len(group) if len(group) > 1 else 1)


Sewing = Mapping[int, SewnWith]
"""What sews each seam, by number."""


def joins(design: Design, glued: Glued, garment: SizedGarment, numbers: Sequence[int], sewing: Sewing) -> Iterator[Step]:
    """Sentences for seams that follow each other: those of one join with equal numbers, and over ends
    of the same strips, are one sentence."""
    groups: list[list[list[int]]] = []
    for group in _alike(glued, numbers):
        last = groups[-1] if groups else None
        if last and _same(design, glued, garment, last[-1][0], group[0]):
            last.append(group)
        else:
            groups.append([group])
    for some in groups:
        sentence = _sentence(design, glued, garment, some)
        yield replace(sentence, **_thread([sewing[n] for group in some for n in group if n in sewing]))


def _thread(sewn: Sequence[SewnWith]) -> dict[str, Any]:
    """What these seams say about their yarn."""
    told = {one.thread for one in sewn}
    thread: SeamThread = "either" if len(told) > 1 else next(iter(told), "")
    owners = tuple(dict.fromkeys(one.of for one in sewn))
    return {
        "thread": thread,
        "tails": owners if thread == "tail" and NOBODY not in owners and len(owners) <= MOST_TAILS else (),
        "thread_cm": 0 if thread == "tail" else max((one.cm for one in sewn if one.thread != "tail"), default=0),
    }


def sewn_ends(design: Design, glued: Glued, garment: SizedGarment, numbers: Sequence[int], sewing: Sewing) -> Iterator[Step]:
    """Sentences for ends of strips sewn together, those of as many rows in one; of unlike ones what both measure."""
    for (origin, one, other), some in groupby(numbers, key=lambda n: _both_ends(design, glued, garment, n)):
        numbers_of = list(some)
        pairs = [glued.ends[n] for n in numbers_of]
        seams = tuple(st.SeamOf(*(edges_told((end,), ("bottom",)) for end in (pair.one, pair.other))) for pair in pairs)
        thread = _thread([sewing[n] for n in numbers_of])
        if one == other:
            yield st.JoinEdges(seams, 0, rows=one[0], origin=origin, **thread)
        else:
            yield st.JoinEdges(seams, _apart(one[1], other[1]), one_mm=one[1], other_mm=other[1], origin=origin, **thread)


def _both_ends(design: Design, glued: Glued, garment: SizedGarment, number: int) -> tuple[str, tuple[int, int], tuple[int, int]]:
    """The statement that two ends come from, and the rows and millimetres of each."""
    pair = glued.ends[number]
    one, other = (_rows_and_mm(design, garment, end) for end in (pair.one, pair.other))
    return pair.origin(design).path, one, other


def _rows_and_mm(design: Design, garment: SizedGarment, end: Place) -> tuple[int, int]:
    return end_of_strip(design, garment, end)[1], round(10 * end_cm(design, garment, end))


def _alike(glued: Glued, numbers: Sequence[int]) -> list[list[int]]:
    """Seams within one copy each, which are the same at every copy, together."""
    found: list[list[int]] = []
    for number in numbers:
        seam, last = glued.seams[number], glued.seams[found[-1][0]] if found else None
        if last is not None and seam.join == last.join and within_a_copy(seam) and names(seam) == names(last):
            found[-1].append(number)
        else:
            found.append([number])
    return found


def _same(design: Design, glued: Glued, garment: SizedGarment, one: int, other: int) -> bool:
    if glued.seams[one].join != glued.seams[other].join or not _over_the_same(design, glued, garment, one, other):
        return False
    return _told_of(design, glued, garment, one) == _told_of(design, glued, garment, other)


def _told_of(design: Design, glued: Glued, garment: SizedGarment, number: int) -> tuple[Hashable, Hashable]:
    numbers = _numbers(design, garment.seams[number])
    return numbers, _chained(design, garment, glued.seams[number], numbers[2])


def _over_the_same(design: Design, glued: Glued, garment: SizedGarment, one: int, other: int) -> bool:
    """Whether two seams pass ends of the same strips, in whatever order: told together, each would seem to pass all."""
    return _strips(design, glued, garment, [one]) == _strips(design, glued, garment, [other])


def _numbers(design: Design, sized: SizedSeam) -> tuple[int, int, int, int, int]:
    """(easing, longer, rows, one, other): in mm, 0 where it is not told."""
    easing, longer = round(sized.easing_cm * 10), round(sized.longer_cm * 10)
    if not any(sized.other_stitches) and not sized.other_cm:
        # An edge closed upon itself has no other side.
        return 0, 0, 0, 0, 0
    if easing or longer:
        one, other = round(sized.one_cm * 10), round(sized.other_cm * 10)
        return easing if longer else _apart(one, other), longer, 0, one, other
    if sized.one_rows is not None and sized.one_rows == sized.other_rows:
        return easing, longer, sized.one_rows, 0, 0
    return easing, longer, 0, 0, 0


def _apart(one_mm: int, other_mm: int) -> int:
    """What is eased in of two sides whose lengths are told: what these differ by, and a millimetre for rounding both."""
    return abs(one_mm - other_mm) + 1


def _sentence(design: Design, glued: Glued, garment: SizedGarment, some: Sequence[Sequence[int]]) -> st.JoinEdges:
    first = glued.seams[some[0][0]]
    join = design.joins[first.join]
    easing, longer, rows, one, other = _numbers(design, garment.seams[some[0][0]])
    if join.way == "grafted":
        rows = one = other = 0
    turn = in_turns(design, glued, [n for group in some for n in group])
    at_tails = () if turn else _at_tails(design, glued, garment, some)
    told_from = at_tails or (None,) * len(some)
    seams = (
        (turn.seam,)
        if turn
        else tuple(
            seam_told(glued.seams[group[0]], _at_each(design, glued, group), at_tail=at)
            for group, at in zip(some, told_from, strict=True)
        )
    )
    open_ends = [open_end(design, p) for group in some for p in places(glued.seams[group[0]])]
    if join.way == "linked":
        raise ValueError("what is linked is knitted, not sewn")
    edges: SeamEdges = (
        "open" if join.way == "sewn" and all(open_ends) else "no tail" if join.way == "grafted" and not any(open_ends) else ""
    )
    if first.beyond:
        edges = "beyond"
    elif at_tails:
        edges = "at tail"
    strips = _strips(design, glued, garment, [n for group in some for n in group])
    ratio = join.ratio or (0, 0)
    told = easing, longer, join.way, rows, one, other, edges, tuple(strips), tuple(strips.values()), *ratio
    in_turn = (turn.turn, turn.times) if turn else ()
    chained, one_chain, other_chain = _chained(design, garment, first, rows)
    sentence = st.JoinEdges(seams, *told, *in_turn, origin=join.origin.path)
    return replace(sentence, chained=chained, one_chain=one_chain, other_chain=other_chain)


_NONE_CHAINED: tuple[SeamChain, int, int] = ("", 0, 0)


def _chained(design: Design, garment: SizedGarment, seam: Seam, rows: int) -> tuple[SeamChain, int, int]:
    """Of a seam row for row: what lies on each other of stitches cast off or on at once, and how many of each side; nothing where
    one side has none."""
    if not rows:
        return _NONE_CHAINED
    off, on = zip(*(_along(design, garment, chain) for chain in (seam.one, seam.other)), strict=True)
    one, other = (a + b for a, b in zip(off, on, strict=True))
    if not one or not other:
        return _NONE_CHAINED
    return "mixed" if any(off) and any(on) else "off" if any(off) else "on", one, other


def _along(design: Design, garment: SizedGarment, chain: Chain) -> tuple[int, int]:
    """Stitches cast off, and cast on, along one side of a seam."""
    names = {piece.name for piece in design.pieces}
    pieces = [(place, design.piece(place.owner)) for place in chain if place.owner in names]
    own = [
        chained_along(counted_piece(design, garment.piece(piece.name)), place.edge)
        for place, piece in pieces
        if piece.strip_at(place.edge) is None
    ]
    return sum(off for off, _ in own), sum(on for _, on in own)


def _at_tails(design: Design, glued: Glued, garment: SizedGarment, some: Sequence[Sequence[int]]) -> tuple[bool, ...]:
    """Of grafts that each have a tail at an end: whether it is the end where the seam begins as it runs. Nothing where one has
    none."""
    seams = [glued.seams[group[0]] for group in some]
    if any(design.joins[seam.join].way != "grafted" for seam in seams):
        return ()
    tails = [graft_tail(design, garment, seam) for seam in seams]
    return tuple(tail.first for tail in tails if tail is not None) if None not in tails else ()


def _at_each(design: Design, glued: Glued, group: Sequence[int]) -> Copy | None:
    """Whether a seam within a copy is made at each: also where there is one in this size and more in another."""
    seam = glued.seams[group[0]]
    several = len(group) > 1 or (within_a_copy(seam) and varies(design, seam.one[0].owner))
    return EACH if several else None


def _strips(design: Design, glued: Glued, garment: SizedGarment, numbers: Sequence[int]) -> dict[st.Strip, int]:
    """The edgings and bands whose ends are sewn on in these seams, and how many rows are at each end."""
    return dict(end_of_strip(design, garment, end) for n in numbers for side in glued.seams[n].over for end in side)
