"""Linking: the stitches of a second piece hung over those of a first, right sides together, to be knitted off as one."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from walewright.bed.loops import NOTHING, Kind
from walewright.bed.machine import Machine, Refusal
from walewright.bed.model import Edge
from walewright.bed.needles import needs_work
from walewright.knit.operations import PickUpEdge


def over_another(m: Machine, op: PickUpEdge) -> Refusal | None:
    """Each needle carries one stitch of a finished piece."""
    first, last = m.span(op.first, op.last)
    for i in range(first, last + 1):
        refusal = needs_work(m, i, "to take a stitch to be linked")
        if refusal is not None:
            return refusal
        if m.top[i] == NOTHING:
            return m.refuse("link-over-nothing", f"needle {m.name(i)} carries no stitch of another piece to link with", i)
        if i in m.more or m.top[i] < 0 or m.loops.kind[m.top[i]] != Kind.PICKED:
            return m.refuse("link-over-loops", f"needle {m.name(i)} carries another loop than one of a piece just hung there", i)
    return None


def turn_beneath(m: Machine, op: PickUpEdge, edges: Sequence[Edge]) -> None:
    """Right sides together, the piece beneath hangs with its right side to the knitter: its left and right change places, which
    only now can be known."""
    first, last = m.span(op.first, op.last)
    at = {link.loop: i for i, link in enumerate(m.links)}
    places = [at[m.top[i]] for i in range(first, last + 1)]
    beneath = [m.links[place] for place in places]
    for place, link, mirrored in zip(places, beneath, reversed(beneath), strict=True):
        m.links[place] = replace(link, piece=mirrored.piece, loops=mirrored.loops)
    for edge in edges:
        over = (op.piece, edge.name, edge.part)
        m.linked += [(below, over) for below, a, b in m.hung if a <= last and first <= b]
