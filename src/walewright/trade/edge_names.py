"""Names of edges: an author's or the trade's own, and behind it, after a blank, which part of the edge is meant.

An author's names have no blanks. Whoever has to know the part asks here; bed and reader know by themselves.
"""

from __future__ import annotations

from collections.abc import Container
from dataclasses import dataclass
from typing import Literal, get_args

from walewright.trade.sides import GAP_PARTS, EdgePart

OwnEdge = Literal["start", "end", "shoulder", "neck"]
"""Edges that have their name from the trade, not from an author."""

OWN_EDGES: tuple[OwnEdge, ...] = get_args(OwnEdge)

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


@dataclass(frozen=True, slots=True)
class PartOfEdge:
    """An edge's name, the part of it that is meant, and whether it is the edge above what has that name."""

    name: str
    part: EdgePart = "whole"
    upper: bool = False


def part_of_edge(edge: str) -> PartOfEdge:
    """What an edge's full name says: "neck centre", "shoulder left", "pocket upper"."""
    head, _, tail = edge.rpartition(" ")
    for part in GAP_PARTS:
        if head and tail == part:
            return PartOfEdge(head, part)
    return PartOfEdge(edge.removesuffix(UPPER), upper=True) if edge.endswith(UPPER) else PartOfEdge(edge)
