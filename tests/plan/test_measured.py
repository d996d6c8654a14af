"""What a measure is called, in the plan document and on pages."""

from __future__ import annotations

import pytest

from walewright.counted.model import MeasureKey
from walewright.guide.english import LANGUAGE
from walewright.plan.measured import measured

CALLED = {
    MeasureKey("width", "start"): "width at start",
    MeasureKey("width", "start", times=4): "width at start, 4 times",
    MeasureKey("width", "level", "hem"): "width at hem",
    MeasureKey("width", "level", "crown", across=True): "width at crown across",
    MeasureKey("height", "level", "top"): "height of top",
    MeasureKey("height", "level", "top", times=3): "height of top, 3 times",
    MeasureKey("width", "opening", "hem"): "width of hem",
    MeasureKey("depth", "opening", "neck"): "depth of neck",
    MeasureKey("width", "slot", "thumb"): "width of thumb",
    MeasureKey("width", "wedge", "dart"): "width of dart",
    MeasureKey("height", "wedge", "dart"): "height of dart inside",
    MeasureKey("height", "stretch", "low", to="high", times=1): "low to high, 1 times",
}


@pytest.mark.parametrize("key", CALLED, ids=CALLED.values())
def test_the_plan_document_and_the_pages_call_a_measure_so(key: MeasureKey) -> None:
    assert (measured(key), LANGUAGE.measure(key)) == (CALLED[key],) * 2
