"""How much of a text is for all sizes."""

from __future__ import annotations

import pytest

from tests.in_english import write
from tests.write.garments import three_sizes
from tests.write.rich_garments import hoods, yokes
from walewright.knit import steps as st
from walewright.knit.steps import SizePlan, StepBlock
from walewright.write import shared


def plan(*steps: st.Step) -> SizePlan:
    return SizePlan("s", (StepBlock("back", 1, (("Knit", steps),)),))


def test_the_share_is_of_phrases() -> None:
    common, mine = (st.KnitRows(2), st.Decrease("left end", 1, 0), st.KnitTo(9)), (st.BreakOff(),)
    assert shared(write((plan(*common), plan(*common)))) == 1.0
    assert shared(write((plan(*common, *mine), plan(*common)))) == pytest.approx(3 / 4)
    # What a repeat says is counted with it.
    repeat = st.Repeat((st.KnitRows(2), st.Decrease("left end", 1, 0)), 3)
    assert shared(write((plan(*common, repeat), plan(*common)))) == pytest.approx(3 / 6)


def test_nothing_said_is_nothing_apart() -> None:
    assert shared(write((plan(st.Say("Rest.")),))) == 3 / 3
    assert shared(write((SizePlan("s", ()),))) == 1.0


def test_garments_share_their_phrases() -> None:
    """Sizes of one plan read as one text, even where a size leaves a shaping out."""
    assert shared(write(three_sizes())) > 0.9
    assert shared(write(hoods())) > 0.9


def test_a_table_of_many_sizes_shares_less() -> None:
    whole, table = write(yokes(1)), write(yokes(8))
    assert shared(whole) == 1.0
    assert 0.4 < shared(table) < 0.9
