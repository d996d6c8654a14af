"""Hand work on needles: into and out of work, casting on, moving loops, holding."""

from __future__ import annotations

from walewright.bed.carriage import unwrapped_moved
from walewright.bed.density import Density
from walewright.bed.loops import NOTHING, LoopKind
from walewright.bed.machine import CORDED, HELD, NON_WORKING, WORKING, Machine, Thread
from walewright.bed.refusals import OverLoops, Purpose, Refusal, purpose_of
from walewright.knit.operations import (
    CastOn,
    FillFromBelow,
    Hold,
    IntoWork,
    OutOfWork,
    Release,
    Side,
    Transfer,
)
from walewright.record import replace
from walewright.report.said import Amount

WAYS = ("comb", "hem", "e-wrap", "chain")

WRAPPED = 4
"""Widths of the stitches in a separate length that casts them on (common practice)."""


def into_work(m: Machine, op: IntoWork) -> Refusal | None:
    """Empty needles come forward; a needle that has loops, or works already, refuses."""
    first, last = m.span(op.first, op.last)
    for i in range(first, last + 1):
        if m.position[i] != NON_WORKING:
            state = {HELD: "already-in-work/held", CORDED: "already-in-work/on-cord"}
            return m.refuse(state.get(m.position[i], "already-in-work/in-work"), needle=m.at(i))
    m.set_position(first, last, WORKING)
    return None


def out_of_work(m: Machine, op: OutOfWork) -> Refusal | None:
    """Empty needles go back; one that has a loop refuses, for the loop would fall."""
    first, last = m.span(op.first, op.last)
    for i in range(first, last + 1):
        if m.top[i] != NOTHING:
            return m.refuse("stitch-dropped", needle=m.at(i))
        refusal = needs_work(m, i, "be-pushed-back")
        if refusal is not None:
            return refusal
    m.set_position(first, last, NON_WORKING)
    return None


def needs_work(m: Machine, index: int, purpose: Purpose) -> Refusal | None:
    """The needle must be in working position."""
    if m.position[index] == NON_WORKING:
        return m.refuse("not-in-work", needle=m.at(index), purpose=purpose_of(purpose))
    if m.position[index] == CORDED:
        return m.refuse("needle-on-cord", needle=m.at(index))
    if m.position[index] == HELD:
        return m.refuse("needle-held", needle=m.at(index))
    return None


def needs_empty(m: Machine, first: int, last: int, code: OverLoops, purpose: Purpose) -> Refusal | None:
    """All needles must be in work and empty."""
    for i in range(first, last + 1):
        refusal = needs_work(m, i, purpose)
        if refusal is not None:
            return refusal
        if m.top[i] != NOTHING:
            return m.refuse(code, needle=m.at(i), purpose=purpose_of(purpose))
    return None


def cast_on(m: Machine, op: CastOn) -> Refusal | None:
    """First loops. Beside live stitches they continue the row, so they go where the carriage is; a length of yarn of their own
    makes them anywhere, and leaves the yarn in use where it hangs. On an otherwise empty bed needles between the ends may be out
    of work (a mock rib); they are passed over."""
    if op.way not in WAYS:
        return m.refuse("cast-on-way", way=op.way, ways=WAYS)
    if op.length_cm and not op.own_length:
        return m.refuse("length-unused", length=Amount(op.length_cm))
    if not op.own_length:
        m.settle_chain(goes_on=True)
    refusal = m.yarn_missing("cast-on")
    if refusal is not None:
        return refusal
    first, last = m.span(op.first, op.last)
    ends = m.working_ends()
    beside_others = op.own_length or ends is not None
    at = [i for i in range(first, last + 1) if beside_others or i in (first, last) or m.position[i] != NON_WORKING]
    for i in at:
        refusal = needs_empty(m, i, i, "cast-on-over-loops", "be-cast-on")
        if refusal is not None:
            return refusal
    helper = m.helper()
    refusal = _not_so_begun(m, op)
    if refusal is not None:
        return refusal
    if ends is not None and not op.own_length:
        beside: Side | None = "right" if first == ends[1] + 1 else "left" if last == ends[0] - 1 else None
        if beside is None or op.way in ("comb", "hem") or (m.side is not None and m.side != beside):
            return (
                m.refuse("cast-on-away-from-carriage/side-known", first=m.at(first), last=m.at(last), side=m.side)
                if m.side
                else m.refuse("cast-on-away-from-carriage/side-unknown", first=m.at(first), last=m.at(last))
            )
    begin = len(m.loops.parent)
    if helper is not None:
        m.waste.append((op.way, op.first, op.last))
        for i in at:
            m.top[i] = helper
    else:
        for i in at:
            m.top[i] = m.loops.add(i - m.half, LoopKind.CAST_ON)
        if op.own_length:
            m.runs += 1
            made = m.course("cast on", first, last, begin, thread=Thread(m.runs, m.yarn or "", m.tension))
            m.courses[-1] = replace(made, cast_on=op.way, apart=True)
            return _length_spent(m, op, begin)
        m.courses[-1] = replace(m.course("cast on", first, last, begin), cast_on=op.way)
    if m.side is not None and not op.own_length:
        m.yarn_side = m.side
        m.yarn_at = last if m.side == "right" else first
    if not op.own_length:
        m.over = -1
    return None


def _not_so_begun(m: Machine, op: CastOn) -> Refusal | None:
    """Whether the bed has what the way takes, and the yarn in use is one that it is meant for."""
    if op.way == "comb" != m.bed.start:
        return m.refuse("no-such-start/comb")
    if op.way == "hem" != m.bed.start:
        return m.refuse("no-such-start/hem")
    if op.way == "comb" and m.helper() is None:
        return m.refuse("comb-in-garment-yarn", yarn=m.yarn or "")
    if op.way == "hem" and m.yarn != "ravel":
        return m.refuse("hem-knitted-on", yarn=m.yarn or "")
    return None


def _length_spent(m: Machine, op: CastOn, begin: int) -> Refusal | None:
    """The length that was asked for is cut whole, whatever is left of it; 0 asks for none."""
    first, last = m.span(op.first, op.last)
    course = m.course_of(begin)
    width = Density(m.bed.gauges, m.bed.fabrics).width_cm(course, range(op.first, op.last + 1), last - first + 1)
    if op.length_cm < 0 or (op.length_cm and width is not None and op.length_cm < WRAPPED * width):
        return m.refuse(
            "length-too-short",
            length=Amount(op.length_cm),
            yarn=course.yarn,
            first=m.at(first),
            last=m.at(last),
            width=Amount(round(width)) if width is not None else "",
            widths=WRAPPED,
        )
    m.kept.tails.append((course.yarn, op.length_cm))
    return None


def transfer(m: Machine, op: Transfer) -> Refusal | None:
    """Loops go over to other needles, on top of what hangs there; a tool must be at hand that has so many prongs."""
    first, last = m.span(op.first, op.last)
    prongs = last - first + 1
    if op.by == 0:
        return m.refuse("moved-nowhere", needle=m.at(first))
    if prongs > max(m.bed.prongs, default=0):
        return m.refuse("tool-too-narrow", loops=prongs, first=m.at(first), last=m.at(last), prongs=max(m.bed.prongs, default=0))
    for i in range(min(first, first + op.by), max(last, last + op.by) + 1):
        if m.position[i] == CORDED:
            return needs_work(m, i, "be-moved-over")
        if m.position[i] == HELD:
            return m.refuse("transfer-across-held", needle=m.at(i))
    for i in range(first, last + 1):
        if m.top[i] == NOTHING:
            return m.refuse("no-loop-to-move", needle=m.at(i))
        if m.position[i + op.by] != WORKING:
            return m.refuse("onto-idle-needle", needle=m.at(i), other=m.at(i + op.by))
    refusal = unwrapped_moved(m, first, last)
    if refusal is not None:
        return refusal
    lifted = [(i, m.lift(i)) for i in range(first, last + 1)]
    for i, loops in lifted:
        m.hang(i + op.by, loops)
    return None


def fill_from_below(m: Machine, op: FillFromBelow) -> Refusal | None:
    """The bar hung is the head of the stitch below the source's: no new yarn, but a second needle holds that stitch."""
    target, source = op.target + m.half, op.source + m.half
    refusal = needs_empty(m, target, target, "fill-over-loop", "be-filled")
    if refusal is not None:
        return refusal
    if abs(target - source) != 1:
        return m.refuse("fill-too-far", source=m.at(source), target=m.at(target))
    loop = m.top[source]
    below = m.loops.parent[loop] if loop >= 0 else NOTHING
    if below < 0:
        return m.refuse("nothing-below", needle=m.at(source))
    begin = len(m.loops.parent)
    m.hang(target, (m.loops.add(op.target, LoopKind.FILL, (below,)),))
    m.course("fill", target, target, begin)
    return None


def hold(m: Machine, op: Hold) -> Refusal | None:
    """On the carriage's side at most one needle between two passes (university handout, creativemachineknitting.blogspot.co.uk):
    the yarn hangs there. With the yarn broken off nothing hangs anywhere."""
    first, last = m.span(op.first, op.last)
    for i in range(first, last + 1):
        if m.position[i] == HELD:
            return m.refuse("already-held", needle=m.at(i))
        refusal = needs_work(m, i, "be-held")
        if refusal is not None:
            return refusal
        if m.top[i] == NOTHING:
            return m.refuse("hold-empty", needle=m.at(i))
    ends = m.working_ends()
    if ends is not None and m.side is not None and m.yarn_side is not None and (first, last) != ends:
        here = last == ends[1] if m.side == "right" else first == ends[0]
        if here:
            if last - first + 1 + len(m.held_here) > 1:
                return m.refuse("held-at-carriage", first=m.at(first), last=m.at(last), side=m.side)
            m.held_here.append(first)
    m.set_position(first, last, HELD)
    return None


def release(m: Machine, op: Release) -> Refusal | None:
    """Held needles will knit again on the next pass."""
    first, last = m.span(op.first, op.last)
    for i in range(first, last + 1):
        if m.position[i] != HELD:
            return m.refuse("not-held/to-return", needle=m.at(i))
        under = m.over >= 0 and m.side == m.yarn_side and (i >= m.over if m.side == "right" else i <= m.over)
        if under and i not in m.held_here:
            return m.refuse("returned-under-yarn", needle=m.at(i))
    m.set_position(first, last, WORKING)
    m.held_here = [i for i in m.held_here if not first <= i <= last]
    return None
