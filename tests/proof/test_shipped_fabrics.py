"""Shipped garments as the bed knits them: proven as they are, and not where a size's fabric stands in the place of another's, or is
knitted in other moves."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.made_of import FEW, faults_of, made
from walewright import bed
from walewright.knit import operations as op
from walewright.knit.operations import Block, Work
from walewright.pipeline import bed_of


@pytest.mark.parametrize("name", FEW)
def test_what_was_counted_is_proven(name: str) -> None:
    outcome = made(name)
    assert faults_of(outcome, outcome.works, outcome.results) == []


@pytest.mark.parametrize("name", [name for name, sizes in FEW.items() if len(sizes) > 1])
def test_the_fabric_of_another_size_is_told_in_each(name: str) -> None:
    outcome = made(name)
    found = faults_of(outcome, outcome.works, outcome.results[::-1])
    assert found
    told = {size for d in found for size in d.sizes or FEW[name]}
    assert told == set(FEW[name])


def otherwise(work: Work, name: str) -> Work:
    """With two rows more in the middle of a block, of which nothing is stated."""
    tasks = []
    for task in work.tasks:
        if isinstance(task, Block) and task.name == name:
            moves = [o for o in task.operations if not isinstance(o, op.Check)]
            passes = [i for i, o in enumerate(moves) if isinstance(o, op.Pass)]
            if len(passes) > 1:
                before, at = passes[len(passes) // 2 - 1], passes[len(passes) // 2]
                moves[at:at] = [moves[at], moves[before]]
            task = replace(task, operations=tuple(moves))
        tasks.append(task)
    return replace(work, tasks=tuple(tasks))


@pytest.mark.parametrize("name", ["bollard", "dotterel", "turnstone", "barnacle"])
def test_two_rows_more_are_told(name: str) -> None:
    """In each block of the first size that can be knitted so."""
    outcome = made(name)
    assert outcome.design is not None
    machine = bed_of(outcome.design)
    tried = 0
    for block in outcome.works[0].blocks:
        work = otherwise(outcome.works[0], block.name)
        result = bed.knit(work, machine)
        if result.faults or result == outcome.results[0]:
            continue
        tried += 1
        found = faults_of(outcome, (work, *outcome.works[1:]), (result, *outcome.results[1:]))
        assert found, block.name
        assert all(not d.sizes or FEW[name][0] in d.sizes for d in found)
    assert tried
