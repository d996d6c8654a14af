"""Names of edges: an author's or the trade's own, and behind it, after a blank, which part of the edge is meant.

An author's names have no blanks. Whoever has to know the part asks here; bed and reader know by themselves.
"""

from __future__ import annotations

from collections.abc import Container, Mapping
from typing import Literal, get_args

from walewright.record import record
from walewright.trade.sides import GAP_PARTS, OTHER_SIDE, SIDES, EdgePart

OwnEdge = Literal["start", "end", "shoulder", "neck"]
"""Edges that have their name from the trade, not from an author."""

OWN_EDGES: tuple[OwnEdge, ...] = get_args(OwnEdge)

TOPS = ("end", "shoulder")
"""The last row of a piece, and what is called so of one that is parted to its top."""

OWN_TOPS: Mapping[str, str] = {"shoulder left": "end left", "shoulder right": "end right"}
"""What a shoulder that is joined to another one of its own piece is called: a part of the last row."""

_BETWEEN = "shoulder "
"""Before the number of a part of the last row that lies between two openings."""

UPPER = " upper"
"""Behind the name of an opening or slot: the edge above it."""

StripAt = Literal["start", "end"]
"""Where an edging lies along a piece."""

BAND_ENDS = ("first end", "last end")
"""The ends of a band, at its first and at its last needle."""


def strip_name(edging: str, own: Container[str], at: StripAt, other: str) -> str:
    """What the two ends of an edging along a piece are called, but for " left" and " right": by the edging's name, with "_edging"
    behind it where an edge of the piece has that already (`own`); where the piece has the same edging at both ends, that of the end
    with `UPPER`."""
    name = edging
    while name in own:
        name += "_edging"
    return f"{name}{UPPER}" if at == "end" and other == edging else name


@record
class PartOfEdge:
    """An edge's name, the part of it that is meant, and whether it is the edge above what has that name."""

    name: str
    part: EdgePart = "whole"
    upper: bool = False


def top_between(number: int) -> str:
    """The last row of the part between two openings that is the `number`th from the left: those beside them are the left and the
    right shoulder."""
    return f"{_BETWEEN}{number}"


def number_of_top(edge: str) -> int:
    """Of such a part's last row its number, 0 of every other edge."""
    number = edge.removeprefix(_BETWEEN)
    return int(number) if edge.startswith(_BETWEEN) and number.isdecimal() else 0


def mirrored(edge: str, tops: int) -> str:
    """What an edge is called that is the mirror image of another, on a piece whose last row is parted into so many `tops`."""
    if number := number_of_top(edge):
        return top_between(tops + 1 - number)
    if edge in BAND_ENDS:
        return BAND_ENDS[edge == BAND_ENDS[0]]
    head, _, side = edge.rpartition(" ")
    return f"{head} {OTHER_SIDE[side]}" if head and side in SIDES else edge


def is_top(edge: str) -> bool:
    """Whether an edge is the last row of a piece, or a part of it."""
    return part_of_edge(edge).name in TOPS or number_of_top(edge) > 0


def part_of_edge(edge: str) -> PartOfEdge:
    """What an edge's full name says: "neck centre", "shoulder left", "pocket upper"."""
    head, _, tail = edge.rpartition(" ")
    for part in GAP_PARTS:
        if head and tail == part:
            return PartOfEdge(head, part)
    return PartOfEdge(edge.removesuffix(UPPER), upper=True) if edge.endswith(UPPER) else PartOfEdge(edge)


def worded_edge(name: str, others: Mapping[str, str]) -> str:
    """An edge's full name with the trade's words in it as one of the `others` has them: an own name, and what tells parts apart. An
    author's name stays as it is, also where it is such a word."""
    own = next((one for one in (*BAND_ENDS, *OWN_EDGES) if name == one or name.startswith(f"{one} ")), None)
    base = name.partition(" ")[0] if own is None else own
    parts = name.removeprefix(base).split(" ")[1:]
    return " ".join((base if own is None else others[own], *(others.get(part, part) for part in parts)))
