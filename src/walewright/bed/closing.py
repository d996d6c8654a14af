"""Stitches leaving the bed: chain cast-off and waste yarn."""

from __future__ import annotations

from walewright.bed.carriage import unwrapped_across
from walewright.bed.fabric import split_name
from walewright.bed.loops import NOTHING, LoopKind
from walewright.bed.machine import CORDED, HELD, NON_WORKING, WORKING, Machine
from walewright.bed.model import BedEdge, BedPart
from walewright.bed.needles import needs_work
from walewright.bed.refusals import Empty, Purpose, Refusal, purpose_of
from walewright.knit.operations import CastOff, OntoWaste


def cast_off(m: Machine, op: CastOff) -> Refusal | None:
    """A chain per needle, drawn through the needle's loops and the chain before; the last one goes on the next live needle.

    If that needle is held, only what the yarn does next shows whether it belongs to the same part (`settle_chain`).
    """
    m.settle_chain(goes_on=True)
    first, last = m.span(op.first, op.last)
    refusal = m.yarn_missing("cast-off") or stitches_there(m, first, last, "be-cast-off", "cast-off-empty") or _at_yarn(m, op)
    if refusal is not None:
        return refusal
    order = with_stitches(m, first, last)
    if op.start == "right":
        order.reverse()
    begin = len(m.loops.parent)
    helper = m.helper()
    chains: list[int] = []
    for i in order:
        through = m.lift(i)
        if helper is None:
            chains.append(m.loops.add(i - m.half, LoopKind.CHAIN, (*through, *chains[-1:])))
    m.set_position(first, last, NON_WORKING)
    beyond = first - 1 if op.start == "right" else last + 1
    live = 0 <= beyond < len(m.top) and m.top[beyond] != NOTHING and m.position[beyond] != CORDED
    m.yarn_side = m.side = op.start
    m.over = -1
    if live and m.position[beyond] == WORKING:
        m.hang(beyond, tuple(chains[-1:]) or (helper or NOTHING,))
        m.yarn_at = beyond
    elif live and chains:
        m.waiting_chain = (chains[-1], beyond)
    else:
        m.fastened = True
        m.fastened_loops += chains[-1:]
    if chains:
        m.course("cast off", first, last, begin, op.start)
        if m.working_ends() is None:
            ended_by(m, chains, first)
    return None


def stitches_there(m: Machine, first: int, last: int, purpose: Purpose, code: Empty) -> Refusal | None:
    """All needles are in work and carry loops, but single ones out of work between two of those; `purpose` is what for, `code` that
    of an empty one."""
    for i in range(first, last + 1):
        if passed_over(m, i, first, last):
            continue
        if m.position[i] in (HELD, CORDED):
            return needs_work(m, i, purpose)
        if m.top[i] == NOTHING:
            return m.refuse(code, needle=m.at(i), purpose=purpose_of(purpose))
    return unwrapped_across(m, first, last)


def passed_over(m: Machine, index: int, first: int, last: int) -> bool:
    """Whether a needle is out of work between two that carry loops: what takes those off the bed reaches over one needle."""
    return first < index < last and m.position[index] == NON_WORKING and NOTHING not in (m.top[index - 1], m.top[index + 1])


def with_stitches(m: Machine, first: int, last: int) -> list[int]:
    """The needles from the first to the last, in order, without those that are passed over."""
    return [i for i in range(first, last + 1) if not passed_over(m, i, first, last)]


def _at_yarn(m: Machine, op: CastOff) -> Refusal | None:
    """The chain begins where the yarn hangs: at the carriage's side, at the outermost working stitch."""
    first, last = m.span(op.first, op.last)
    ends = m.working_ends()
    outermost = ends is not None and (last == ends[1] if op.start == "right" else first == ends[0])
    if (m.side is not None and m.side != op.start) or (m.yarn_side is not None and m.yarn_side != op.start) or not outermost:
        return (
            m.refuse("cast-off-away-from-carriage/placed", first=m.at(first), last=m.at(last), start=op.start, side=m.side)
            if m.side
            else m.refuse("cast-off-away-from-carriage/not-placed", first=m.at(first), last=m.at(last), start=op.start)
        )
    return None


def ended_by(m: Machine, chains: list[int], first: int) -> None:
    """The whole row, or that of a part, is off, closed by `chains`: that is the edge "end", or a part of it. Of more than two parts
    it is known in the end which of them each was."""
    part: BedPart = "whole"
    held = m.waits_at()
    if held >= 0:
        part = "right" if held < first else "left"
    else:
        for edge, _ in m.ended:
            if edge.name in ("end", "shoulder") and edge.part in ("left", "right"):
                part = "left" if edge.part == "right" else "right"
    ordered = sorted(chains, key=lambda chain: m.loops.slot[chain])
    points = tuple((chain,) for chain in ordered)
    m.ended.append((BedEdge("end", part, "stitches", len(points), None, points), first - m.half))


def onto_waste(m: Machine, op: OntoWaste) -> Refusal | None:
    """The stitches stay live under the edge's name; a needle's loops together are one stitch."""
    first, last = m.span(op.first, op.last)
    if m.waiting_chain is not None and first <= m.waiting_chain[1] <= last:
        m.settle_chain(goes_on=True)
    refusal = stitches_there(m, first, last, "be-knitted-off", "waste-empty/no-loop")
    if refusal is not None:
        return refusal
    if op.rows < 1:
        return m.refuse("waste-rows", rows=op.rows)
    name, part = split_name(op.edge)
    if any(edge.name == name and edge.part == part for edge, _ in m.ended):
        return m.refuse("edge-named-twice/on-waste", edge=op.edge)
    at = with_stitches(m, first, last)
    for i in at:
        if m.top[i] < NOTHING:
            return m.refuse("waste-empty/waste-yarn", needle=m.at(i))
    m.waste.append((op.edge, "", op.rows))
    m.kept.helpers["waste"] += op.rows * len(at)
    points = tuple(m.lift(i) for i in at)
    m.set_position(first, last, NON_WORKING)
    m.ended.append((BedEdge(name, part, "stitches", len(points), None, points, live=True), op.first))
    return None
