"""The printed words, read back, are the operations of the plan, for every size."""

from __future__ import annotations

from hypothesis import HealthCheck, given, settings

from tests.draws import draws
from tests.in_english import plain_text, read_back, read_back_all, write
from tests.write.garments import size_plans, three_sizes
from walewright.knit import expand
from walewright.knit.steps import SizePlan


def test_a_garment() -> None:
    text = plain_text(write(three_sizes(copies=2)))
    for i, plan in enumerate(three_sizes(copies=2)):
        assert read_back(text, i) == (expand(plan), ())


def test_all_sizes_at_once() -> None:
    works, faults = read_back_all(plain_text(write(three_sizes())))
    assert faults == ()
    assert works == tuple(expand(p) for p in three_sizes())


@settings(max_examples=draws(120), deadline=None, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
@given(size_plans())
def test_any_plan(plans: tuple[SizePlan, ...]) -> None:
    works, faults = read_back_all(plain_text(write(plans)))
    assert faults == ()
    assert works == tuple(expand(p) for p in plans)


def test_the_words_are_plain_values() -> None:
    """Nothing of the parser's own gets into the operations."""
    work, _ = read_back(plain_text(write(three_sizes())), 0)
    assert "Token" not in repr(work)
