"""Placing: where on a bed with missing needles each block lies. It is moved by whole needles to the place nearest to the middle at
which it needs none of them; the steps name other needles then, and hands do the same.

What is counted from the centre mark outwards, as latched ribs are, cannot be told elsewhere: a block that has such a step stays,
and so does one with a chart, whose needles the pages name beside the steps.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import fields
from itertools import pairwise
from typing import Any

from walewright.design.model import Chart
from walewright.knit import expansion
from walewright.knit import operations as ops
from walewright.knit.operations import Block, Operation, Work
from walewright.knit.steps import Repeat, SizePlan, StartChart, Step, StepBlock, Together
from walewright.record import record, replace

NEEDLES = ("first", "last", "at", "needle", "start")
"""Fields of steps that are needles."""


@record
class NotPlaced:
    """A block that needs missing needles: of its needles `first`..`last` those; `room`: the longest row of needles without a
    missing one. None: it would have room elsewhere, but is counted from the centre mark."""

    block: str
    of: str
    first: int
    last: int
    missing: tuple[int, ...]
    room: int | None


@record
class PlacedPlan:
    """A size's plan as it lies on the bed, and its work there; `moved`: by how many needles to the right, by the blocks' names."""

    plan: SizePlan
    work: Work
    moved: Mapping[str, int]
    left_over: tuple[NotPlaced, ...]


def placed(plan: SizePlan, work: Work, charts: tuple[Chart, ...], needles: int, missing: Sequence[int]) -> PlacedPlan:
    """The plan, whose operations are `work`, on a bed of so many needles, those in `missing` (slots) not there."""
    half = needles // 2
    wanted = {block.name: _nearest(block, half, missing) for block in work.blocks}
    moved = {name: by for name, by in wanted.items() if by}
    there = replace(plan, blocks=tuple(_steps_moved(b, moved.get(b.name, 0)) for b in plan.blocks))
    done = expansion.expand(there, charts)
    asked = dict(zip((b.name for b in work.blocks), work_moved(work, moved).blocks, strict=True))
    charted = {b.name for b in plan.blocks if any(isinstance(s, StartChart) for _, steps in b.paragraphs for s in steps)}
    lost = {block.name for block in done.blocks if block != asked[block.name]} | (charted & moved.keys())
    if lost:
        moved = {name: by for name, by in moved.items() if name not in lost}
        there = replace(plan, blocks=tuple(_steps_moved(b, moved.get(b.name, 0)) for b in plan.blocks))
        done = expansion.expand(there, charts)
    room = max((last - first + 1 for first, last in _rooms(half, missing)), default=0)
    left = []
    for block in work.blocks:
        if wanted[block.name] is None or block.name in lost:
            first, last = _reach(block)
            within = tuple(slot for slot in missing if first <= slot <= last)
            left.append(NotPlaced(block.name, block.of, first, last, within, None if block.name in lost else room))
    return PlacedPlan(there, done, moved, tuple(left))


def _reach(block: Block) -> tuple[int, int]:
    """The outermost needles that the block uses."""
    named = [slot for op in block.operations for span in _spans(op) for slot in span]
    return min(named, default=0), max(named, default=-1)


def _rooms(half: int, missing: Iterable[int]) -> list[tuple[int, int]]:
    """Rows of needles without a missing one."""
    ends = sorted({-half - 1, half, *missing})
    return [(a + 1, z - 1) for a, z in pairwise(ends) if z - a > 1]


def _nearest(block: Block, half: int, missing: Sequence[int]) -> int | None:
    """By how much the block is moved, as little as can be; None where it has no room without a missing needle."""
    first, last = _reach(block)
    if last < first:
        return 0
    found = [
        min(max(0, low - first), high - last) if low - first > 0 else max(min(0, high - last), low - first)
        for low, high in _rooms(half, missing)
        if high - low >= last - first
    ]
    return min(found, key=lambda by: (abs(by), -by), default=None)


# ----------------------------------------------------------------- steps and moves elsewhere


def _steps_moved(block: StepBlock, by: int) -> StepBlock:
    if not by:
        return block
    return replace(block, paragraphs=tuple((title, tuple(_step(s, by) for s in steps)) for title, steps in block.paragraphs))


def _step(step: Step, by: int) -> Step:
    match step:
        case Repeat(body=body):
            return replace(step, body=tuple(_step(s, by) for s in body))
        case Together(tracks=tracks):
            return replace(step, tracks=tuple(replace(t, steps=tuple(_step(s, by) for s in t.steps)) for t in tracks))
    at: dict[str, Any] = {
        f.name: getattr(step, f.name) + by for f in fields(step) if f.name in NEEDLES and isinstance(getattr(step, f.name), int)
    }
    return replace(step, **at) if at else step


def work_moved(work: Work, moved: Mapping[str, int]) -> Work:
    """The work with each of these blocks so many needles further right."""
    return replace(work, tasks=tuple(_block(t, moved) if isinstance(t, Block) else t for t in work.tasks))


def _block(block: Block, moved: Mapping[str, int]) -> Block:
    by = moved.get(block.name, 0)
    return replace(block, operations=tuple(_move(op, by) for op in block.operations)) if by else block


def _move(op: Operation, by: int) -> Operation:
    match op:
        case ops.Wrap() | ops.LatchUp() | ops.Drop() | ops.DrawLong():
            return replace(op, slot=op.slot + by)
        case ops.LayIn():
            return replace(op, needles=tuple(slot + by for slot in op.needles))
        case ops.HangFeet():
            return replace(op, onto=tuple(slot + by for slot in op.onto))
        case ops.PictureRow():
            return replace(op, blocks=tuple((yarn, first + by, last + by) for yarn, first, last in op.blocks))
        case ops.FillFromBelow():
            return replace(op, target=op.target + by, source=op.source + by)
        case ops.Spread():
            return replace(op, first=op.first + by, last=op.last + by, to_first=op.to_first + by)
        case ops.InFabric() if op.first > op.last:
            return op
    ends: dict[str, Any] = {name: getattr(op, name) + by for name in ("first", "last") if hasattr(op, name)}
    return replace(op, **ends)


def _spans(op: Operation) -> tuple[tuple[int, int], ...]:
    """The needles that a move names."""
    match op:
        case ops.Wrap(slot=slot) | ops.LatchUp(slot=slot) | ops.Drop(slot=slot) | ops.DrawLong(slot=slot):
            return ((slot, slot),)
        case ops.LayIn(needles=slots) | ops.HangFeet(onto=slots):
            return tuple((slot, slot) for slot in slots)
        case ops.PictureRow(blocks=blocks):
            return tuple((first, last) for _, first, last in blocks)
        case ops.FillFromBelow(target=target, source=source):
            return ((target, target), (source, source))
        case ops.Transfer(first=first, last=last, by=by):
            return ((first, last), (first + by, last + by))
        case ops.Spread(first=first, last=last, to_first=to, counts=counts):
            return ((first, last), (to, to + len(counts) - 1))
        case ops.InFabric(first=first, last=last) if first > last:
            return ()
        case _ if hasattr(op, "first") and hasattr(op, "last"):
            return ((op.first, op.last),)
        case _:
            return ()
