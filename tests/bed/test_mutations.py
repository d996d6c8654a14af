"""No slip of the pencil goes unseen: one operation lost, doubled or moved is refused or makes another fabric."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.bed.by_hand import sampler, with_blocks
from walewright.bed import Bed, knit
from walewright.bed.sameness import same
from walewright.knit.operations import (
    Block,
    BreakYarn,
    CastOn,
    Check,
    Gather,
    InFabric,
    IntoWork,
    MoveCarriage,
    NameEdge,
    Operation,
    Pass,
    Rehang,
    SetCounter,
    Spread,
    UseYarn,
    Work,
)

SILENT_WHEN_DOUBLED = (UseYarn, SetCounter, MoveCarriage, Check, InFabric)
"""Said twice, these are done once: the same yarn threaded, the counter set where it stands, a carriage that is there, a look, a
fabric named."""


@pytest.fixture(params=["pullover", "mittens", "sampler"])
def each(request: pytest.FixtureRequest, work: Work, pair: Work) -> Work:
    swatch = Work("S", (Block("sampler", tuple(sampler())),))
    return {"pullover": work, "mittens": pair, "sampler": swatch}[request.param]


def test_the_sampler_is_sound(bed: Bed) -> None:
    assert outcome(Work("S", (Block("sampler", tuple(sampler())),)), bed)[0] == ()


def outcome(work: Work, bed: Bed) -> tuple[object, ...]:
    """Anything but the same fabrics without a fault is a difference."""
    result = knit(work, bed)
    return (tuple(fault.code for fault in result.faults), tuple(fabric.digest for fabric in result.fabrics))


def changed(work: Work, block: int, operations: list[Operation]) -> Work:
    blocks = list(work.blocks)
    blocks[block] = replace(blocks[block], operations=tuple(operations))
    return with_blocks(work, blocks)


def places(work: Work) -> list[tuple[int, int]]:
    return [(b, i) for b, block in enumerate(work.blocks) for i in range(len(block.operations))]


def silent_when_lost(work: Work, block: int, index: int) -> bool:
    """What only repeats the state: a look, a fresh block's carriage, a counter at 0 or read by nothing, a cut at the very end."""
    ops = work.blocks[block].operations
    op = ops[index]
    if isinstance(op, Check):
        return True
    if isinstance(op, MoveCarriage):
        return index == 0
    if isinstance(op, SetCounter):
        return not any(isinstance(later, Check | NameEdge) for later in ops[index:]) or not any(
            isinstance(o, Pass) for o in ops[:index]
        )
    if isinstance(op, BreakYarn):
        return not any(isinstance(later, Pass | Gather) for later in ops[index:])
    return False


def test_every_loss_is_seen(each: Work, bed: Bed) -> None:
    sound = outcome(each, bed)
    unseen = []
    for block, index in places(each):
        if silent_when_lost(each, block, index):
            continue
        ops = list(each.blocks[block].operations)
        op = ops.pop(index)
        if outcome(changed(each, block, ops), bed) == sound:
            unseen.append((each.blocks[block].name, index, op))
    assert unseen == []


def test_every_doubling_is_seen(each: Work, bed: Bed) -> None:
    sound = outcome(each, bed)
    unseen = []
    for block, index in places(each):
        ops = list(each.blocks[block].operations)
        if isinstance(ops[index], SILENT_WHEN_DOUBLED):
            continue
        ops.insert(index, ops[index])
        if outcome(changed(each, block, ops), bed) == sound:
            unseen.append((each.blocks[block].name, index, ops[index]))
    assert unseen == []


INDIFFERENT = (Check, NameEdge, SetCounter, MoveCarriage, BreakYarn)
"""Operations that touch no loop: only what they say of the others can be wrong. `test_damages` has those cases."""


def test_an_operation_on_loops_moved_across_a_row_is_seen(each: Work, bed: Bed) -> None:
    """Each is put before the row before it, and after the row after it."""
    sound = outcome(each, bed)
    unseen = []
    for block, index in places(each):
        ops = list(each.blocks[block].operations)
        if isinstance(ops[index], (*INDIFFERENT, Pass)):
            continue
        rows = [i for i, op in enumerate(ops) if isinstance(op, Pass)]
        op = ops.pop(index)
        for to in (*[i for i in rows if i < index][-1:], *[i for i in rows if i > index][:1]):
            if outcome(changed(each, block, [*ops[:to], op, *ops[to:]]), bed) == sound:
                unseen.append((each.blocks[block].name, index, op, to))
    assert unseen == []


def test_a_number_one_off_is_seen(each: Work, bed: Bed) -> None:
    """Any needle, count or row of any operation, one too high or too low."""
    sound = outcome(each, bed)
    unseen = []
    for block, index in places(each):
        ops = list(each.blocks[block].operations)
        op = ops[index]
        if isinstance(op, SetCounter) and not any(isinstance(later, Check | NameEdge) for later in ops[index:]):
            continue
        for field in [name for name in op.__slots__ if type(getattr(op, name)) is int]:
            for by in (-1, 1):
                ops[index] = replace(op, **{field: getattr(op, field) + by})
                if isinstance(op, InFabric) and op.first > op.last and ops[index].first > ops[index].last:
                    # No needles are named either way: the whole width is meant.
                    continue
                if outcome(changed(each, block, ops), bed) == sound:
                    unseen.append((each.blocks[block].name, index, ops[index]))
    assert unseen == []


def test_every_number_hung_back_matters(pair: Work, bed: Bed) -> None:
    """Another sharing out of the same stitches is another fabric."""
    sound = outcome(pair, bed)
    ops = list(pair.blocks[0].operations)
    (index,) = (i for i, op in enumerate(ops) if isinstance(op, Spread))
    counts = ops[index].counts
    for i in range(len(counts) - 1):
        moved = (*counts[:i], counts[i] - 1, counts[i + 1] + 1, *counts[i + 2 :])
        changed_ops = [*ops[:index], replace(ops[index], counts=moved), *ops[index + 1 :]]
        assert outcome(changed(pair, 0, changed_ops), bed) != sound


@pytest.mark.parametrize("way", ["forwards", "backwards"])
def test_the_same_operations_make_the_same_fabric(work: Work, bed: Bed, way: str) -> None:
    blocks = work.blocks[:3] if way == "forwards" else work.blocks[:3][::-1]
    once = {fabric.name: fabric for fabric in knit(replace(work, tasks=blocks), bed).fabrics}
    again = {fabric.name: fabric for fabric in knit(work, bed).fabrics}
    assert len(once) == 3
    assert all(again[name] == fabric for name, fabric in once.items())
    assert len({fabric.digest for fabric in again.values()}) == len(again)


def test_what_does_not_touch_the_fabric_does_not_change_it(work: Work, bed: Bed) -> None:
    """The counter's readings and the order of independent hand work are no part of a fabric."""
    ops = list(work.blocks[3].operations)
    kinds = [type(op) for op in ops[:5]]
    assert kinds == [MoveCarriage, IntoWork, Rehang, UseYarn, SetCounter]
    reordered = [ops[4], ops[1], ops[3], ops[2], ops[0], SetCounter(0), *ops[5:]]
    reordered[reordered.index(SetCounter(0), 1)] = SetCounter(40)
    assert outcome(changed(work, 3, reordered), bed) == outcome(work, bed)


def test_more_waste_rows_are_told_apart(work: Work, bed: Bed) -> None:
    ops = list(work.blocks[0].operations)
    ops[4:4] = [Pass("right"), Pass("left")]
    codes, digests = outcome(changed(work, 0, ops), bed)
    assert codes == ()
    assert digests != outcome(work, bed)[1]


def test_another_way_to_cast_on_is_another_fabric(pair: Work, bed: Bed) -> None:
    """An e-wrap and a chain hold the same loops, and are not the same edge."""
    cast_on = [(b, i, op) for b, i in places(pair) if isinstance(op := pair.blocks[b].operations[i], CastOn) and op.way != "comb"]
    block, at, _ = cast_on[0]
    ways = []
    for way in ("e-wrap", "chain"):
        operations = list(pair.blocks[block].operations)
        operations[at] = replace(operations[at], way=way)  # type: ignore[call-arg]
        ways.append(knit(changed(pair, block, operations), bed).fabrics[block])
    one, other = ways
    assert one != other
    assert one.digest != other.digest
    assert not same(one, other)
    assert same(one, one)
