"""The words are knitted again only where they are other moves than the plan's; other moves are never taken for the same."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from tests.whole.garment import regraded
from walewright import bed, readback
from walewright.bed import Bed, BedResult
from walewright.knit.operations import Block, Join, Pass, SetCounter, Work
from walewright.pipeline import Outcome, _prove


@pytest.fixture(scope="module")
def sound() -> Outcome:
    outcome = regraded(13, 18.5, sizes=("M", "L"))
    assert outcome.proven
    return outcome


@pytest.fixture
def knitted(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """The sizes that the bed knits from here on."""
    sizes: list[str] = []
    honest = bed.knit

    def noted(work: Work, machine: Bed) -> BedResult:
        sizes.append(work.size)
        return honest(work, machine)

    monkeypatch.setattr(bed, "knit", noted)
    return sizes


def words_tell(monkeypatch: pytest.MonkeyPatch, *works: Work) -> None:
    monkeypatch.setattr(readback, "read_back_all", lambda *_: (works, ()))


def with_block(work: Work, name: str, block: Block) -> Work:
    return replace(work, tasks=tuple(block if isinstance(t, Block) and t.name == name else t for t in work.tasks))


def codes(outcome: Outcome) -> set[str]:
    return {d.code for d in outcome.diagnostics}


def test_the_same_moves_are_not_knitted_again(sound: Outcome, knitted: list[str]) -> None:
    again = _prove(replace(sound, proof=None))
    assert again.proof == sound.proof
    assert again.proven
    assert knitted == []


def test_other_moves_of_one_size_are_knitted_and_may_make_the_same_fabric(
    sound: Outcome, knitted: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    first, second = sound.works
    sleeve = next(b for b in second.blocks if b.name == "sleeve")
    at = next(i for i, o in enumerate(sleeve.operations) if isinstance(o, SetCounter))
    twice = replace(sleeve, operations=(*sleeve.operations[: at + 1], *sleeve.operations[at:]))
    words_tell(monkeypatch, first, with_block(second, "sleeve", twice))
    again = _prove(replace(sound, proof=None))
    assert again.proven
    assert knitted == [second.size]


def _without_two_rows(work: Work) -> Work:
    sleeve = next(b for b in work.blocks if b.name == "sleeve")
    rows = [i for i, o in enumerate(sleeve.operations) if isinstance(o, Pass)][:2]
    return with_block(
        work, "sleeve", replace(sleeve, operations=tuple(o for i, o in enumerate(sleeve.operations) if i not in rows))
    )


def _with_other_copies(work: Work) -> Work:
    sleeve = next(b for b in work.blocks if b.name == "sleeve")
    return with_block(work, "sleeve", replace(sleeve, copies=sleeve.copies + 1))


def _without_a_seam(work: Work) -> Work:
    last = next(t for t in reversed(work.tasks) if isinstance(t, Join))
    return replace(work, tasks=tuple(t for t in work.tasks if t is not last))


def _one_number_of_a_seam(work: Work) -> Work:
    last = next(t for t in reversed(work.tasks) if isinstance(t, Join))
    return replace(work, tasks=tuple(replace(t, easing_mm=t.easing_mm + 1) if t is last else t for t in work.tasks))


@pytest.mark.parametrize("damage", [_without_two_rows, _with_other_copies, _without_a_seam, _one_number_of_a_seam])
def test_what_is_not_the_same_work_is_caught(
    sound: Outcome, monkeypatch: pytest.MonkeyPatch, damage: Callable[[Work], Work]
) -> None:
    first, second = sound.works
    words_tell(monkeypatch, first, damage(second))
    again = _prove(replace(sound, proof=None))
    assert not again.proven
    assert "words-knit-otherwise" in codes(again)
    assert {size for d in again.diagnostics for size in d.sizes} == {second.size}
