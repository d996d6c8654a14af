"""Plans of shipped garments: knitted, they are what was counted, and so they are unrolled, move by move."""

from __future__ import annotations

import pytest

from tests.made_of import FEW, bench_text, faults_of, made, read, without_checks


@pytest.mark.parametrize("name", FEW)
def test_what_is_planned_is_what_was_counted(name: str) -> None:
    outcome = made(name)
    assert [r.faults for r in outcome.results] == [()] * len(outcome.works)
    assert faults_of(outcome, outcome.works, outcome.results) == []


@pytest.mark.parametrize("name", [name for name in FEW if name != "anemone"])
def test_what_is_unrolled_is_the_same_moves(name: str) -> None:
    """Told move by move and read back. Of lace the moves come in another order, which the bed is asked of elsewhere."""
    outcome = made(name)
    told = [read(outcome, bench_text(outcome, size))[0] for size in range(len(outcome.plans))]
    assert without_checks(told) == without_checks(outcome.works)
