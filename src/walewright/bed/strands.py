"""Ends of yarn: threading, breaking, leaving one to hang and taking it up again, and what is knitted counting as which fabric."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.bed.loops import HELPERS
from walewright.bed.machine import Machine
from walewright.bed.pending import Strand, Tail
from walewright.bed.refusals import Refusal
from walewright.knit.operations import BreakYarn, InFabric, Side, UseYarn
from walewright.report.said import Amount

REACH = 5
"""Needles from where an end hangs to where it is taken up: the usual limit of floats, "5 sts" (alessandrina.com, fair-isle)."""
CARRY_ROWS = 8
"""Rows that an end may be taken up the edge or the fabric; over more it would draw in (common practice)."""


def use_yarn(m: Machine, op: UseYarn) -> Refusal | None:
    """The same unbroken yarn at another tension goes on, and so does an end that hangs within reach, if that is asked for;
    anything else is a fresh end. A bed with plates knits by one of them; waste yarn and cord take any."""
    if m.bed.settings and op.yarn not in HELPERS and op.tension not in m.bed.settings:
        return m.refuse("no-such-plate", plate=op.tension, plates=m.bed.settings)
    if m.yarn != op.yarn or m.fastened:
        m.settle_chain(goes_on=False)
        if op.carried:
            leave_hanging(m)
        m.new_end()
        m.yarn = op.yarn
        ends = m.working_ends()
        if op.carried and ends is not None and m.side is not None:
            take_up(m, m.side, ends[1] if m.side == "right" else ends[0])
    m.tension = op.tension
    return None


def break_yarn(m: Machine, op: BreakYarn) -> Refusal | None:
    """The yarn is cut: a chain begun by a cast-off is fastened off with it."""
    if m.yarn is None:
        return m.refuse("no-yarn/to-break")
    if op.tail_cm < 0:
        return m.refuse("tail-too-short/negative", tail=Amount(op.tail_cm), yarn=m.yarn)
    m.settle_chain(goes_on=False)
    hangs = None if m.fastened else m.yarn_side
    m.pending.tail = Tail(m.yarn, m.tension, m.run, op.tail_cm, hangs, m.yarn_at)
    m.kept.tails.append((m.yarn, op.tail_cm))
    m.new_end()
    m.yarn = None
    m.tension = ""
    return None


def leave_hanging(m: Machine) -> None:
    """The end in the carriage hangs where it is, if anything was knitted with it."""
    if m.yarn is None or m.fastened or m.yarn_side is None or m.helper() is not None:
        return
    m.pending.strands.append(Strand(m.yarn, m.run, m.yarn_side, m.yarn_at, m.counter, m.section))


def take_up(m: Machine, side: Side, at: int) -> None:
    """The end of the yarn in use that hangs at `side` nearest needle `at`, if one is within reach."""
    near = [s for s in m.pending.strands if within_reach(m, s, m.yarn, side, at)]
    if near:
        strand = min(near, key=lambda s: abs(s.at - at))
        m.pending.strands.remove(strand)
        m.run = strand.run
        m.yarn_side, m.yarn_at = side, strand.at


def within_reach(m: Machine, strand: Strand, yarn: str | None, side: Side, at: int) -> bool:
    """Can the end be knitted on with from needle `at`, beside which it hangs at `side`, in the part in work?"""
    # What was knitted before the piece was parted belongs to every part.
    same_part = strand.section == m.section or m.parting is None or strand.counter <= m.parting
    rows = m.counter - strand.counter
    return (strand.yarn, strand.side) == (yarn, side) and abs(strand.at - at) <= REACH and same_part and 0 <= rows <= CARRY_ROWS


def ends_for(m: Machine, side: Side, wanted: Sequence[tuple[str, int]]) -> list[int]:
    """Runs to knit each of `wanted` (yarn, needle it begins at) with: ends that hang within reach, the nearest first, else fresh
    ones. Those taken hang no longer."""
    pairs = sorted(
        (abs(strand.at - at), i, j)
        for i, (yarn, at) in enumerate(wanted)
        for j, strand in enumerate(m.pending.strands)
        if within_reach(m, strand, yarn, side, at)
    )
    given: dict[int, int] = {}
    for _, i, j in pairs:
        if i not in given and j not in given.values():
            given[i] = j
    runs = []
    for i in range(len(wanted)):
        if i in given:
            runs.append(m.pending.strands[given[i]].run)
        else:
            m.runs += 1
            runs.append(m.runs)
    m.pending.strands = [s for j, s in enumerate(m.pending.strands) if j not in given.values()]
    return runs


def in_fabric(m: Machine, op: InFabric) -> Refusal | None:
    """Said of the whole width, or of needles; the last that was said of the same needles counts."""
    if op.first > op.last:
        m.fabric = op.fabric
        return None
    others = tuple(panel for panel in m.panels if panel[1:] != (op.first, op.last))
    m.panels = (*others, (op.fabric, op.first, op.last)) if op.fabric else others
    return None
