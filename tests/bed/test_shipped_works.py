"""The work of shipped garments, knitted: no fault, and a fabric with all that was counted, in lengths, loops and joins."""

from __future__ import annotations

import pytest

from tests.made_of import FEW, faults_of, made


@pytest.mark.parametrize("name", FEW)
def test_what_is_knitted_is_what_was_counted(name: str) -> None:
    outcome = made(name)
    assert [r.faults for r in outcome.results] == [()] * len(outcome.works)
    assert faults_of(outcome, outcome.works, outcome.results) == []
