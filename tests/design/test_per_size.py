"""A design in one of its sizes, and sums of what has a value for each."""

from __future__ import annotations

import pytest

from tests.whole.shipped_once import design_of
from walewright.design.model.per_size import minus, plus, times


def test_a_size_is_a_view() -> None:
    design = design_of("bollard")
    assert [at.size for at in design.each_size] == list(design.sizes)
    assert [at.number for at in design.each_size] == list(range(len(design.sizes)))
    last = design.at(len(design.sizes) - 1)
    assert last == design.each_size[-1]
    assert last.design is design
    measured = design.measurements[0].values
    assert len(set(measured)) > 1
    assert last.of(measured) == measured[-1]
    assert last.each([measured, measured[::-1]]) == (measured[-1], measured[0])


def test_what_has_no_value_for_a_size_is_a_fault() -> None:
    design = design_of("bollard")
    with pytest.raises(IndexError):
        design.at(1).of((1.0,))


def test_sums_size_by_size() -> None:
    assert plus((1.0, 2.0), (3.0, 5.0)) == (4.0, 7.0)
    assert minus((1.0, 2.0), (3.0, 5.0)) == (-2.0, -3.0)
    assert times((1.5, 2.0), (2, 3)) == (3.0, 6.0)


@pytest.mark.parametrize("summed", [plus, minus, times])
def test_both_have_the_same_sizes(summed: object) -> None:
    with pytest.raises(ValueError, match="shorter"):
        summed((1.0, 2.0), (3.0,))  # type: ignore[operator]
