"""Words for stitches taken off and back, waiting parts and tables, read back as the plan's operations."""

from __future__ import annotations

import re

import pytest

from tests.in_english import plain_text, read_back_all, write
from tests.write.rich_garments import hoods, yokes
from walewright.knit import expand
from walewright.knit import operations as op
from walewright.knit.steps import SizePlan
from walewright.report.english import in_english


@pytest.mark.parametrize("plans", [hoods(), hoods()[:1], yokes(1), yokes(3), yokes(8)], ids=["3 hoods", "hood", "1", "3", "8"])
def test_the_words_are_the_plan(plans: tuple[SizePlan, ...]) -> None:
    works, faults = read_back_all(plain_text(write(plans)))
    assert faults == ()
    assert works == tuple(expand(p) for p in plans)


def test_the_hood_has_every_new_way() -> None:
    """So that the comparison above is about something."""
    works, _ = read_back_all(plain_text(write(hoods())))
    assert works is not None
    for work in works:
        made = {type(o) for block in work.blocks for o in block.operations}
        assert made >= {op.Spread, op.Close, op.Gather, op.OntoWaste, op.LatchUp, op.Release, op.Wrap}
        assert {j.way for j in work.joins} == {"sewn", "gathered", "grafted"}
        assert any(not j.other for j in work.joins)


@pytest.mark.parametrize(
    ("there", "instead", "why"),
    [
        ("22 (24: 26) sts.", "22 (24: 27) sts.", "27 stitches should be in the part being worked, and 26 are"),
        ("RC 22:", "RC 20:", "the counter is at 21 already, beyond 20"),
        (
            "cast off 3 sts at the carriage side;",
            "cast off 2 sts at the carriage side;",
            "being worked, and 24 are",
        ),
    ],
)
def test_a_table_that_is_wrong_is_refused(there: str, instead: str, why: str) -> None:
    text = plain_text(write(yokes(3)))
    assert there in text
    works, faults = read_back_all(text.replace(there, instead, 1))
    assert works is None
    assert {f.code for f in faults} == {"words-contradict"}
    assert any(why in in_english(f).message for f in faults)


@pytest.mark.parametrize(
    ("there", "instead", "why"),
    [
        ("1 loop on each of 2 (4: 3) needles", "1 loop on each of 3 (4: 3) needles", "80 needles are asked for and 60 are there"),
        ("20 (8: 4) times", "19 (8: 4) times", "3 needles are left for 1 loop each, not 0"),
        ("put the right part, R 2", "put the right part, R 1", "needle R 1 is not work"),
        ("e-wrap on L 1 to R 1 between", "e-wrap on L 2 to R 1 between", "3 needles, not 2"),
        ("cast on 2 sts by e-wrap on L 1 to R 1", "cast on 2 sts by e-wrap on R 1 to R 2", "needle R 2 is not empty"),
        ("return the innermost 3 (4: 4)", "return the innermost 30 (4: 4)", "30 stitches are asked for and 9 are there"),
        ("close the centre 2 sts, L 1 to R 1", "close the centre 3 sts, L 1 to R 1", "2 needles, not 3"),
        ("close 1 st, R 6", "close 1 st, R 30", "no stitch beside R 30"),
        ("move the st of R 4 (5: 5)", "move the st of R 40 (5: 5)", "needle R 40 is not work"),
    ],
)
def test_words_that_cannot_be_done_are_refused(there: str, instead: str, why: str) -> None:
    text = plain_text(write(hoods()))
    for old, new in ((there, instead), (there[:1].upper() + there[1:], instead[:1].upper() + instead[1:])):
        damaged = re.sub(re.escape(old).replace(r"\ ", r"\s+"), new, text, count=1)
        if damaged != text:
            break
    works, faults = read_back_all(damaged)
    assert works is None
    assert {f.code for f in faults} == {"words-contradict"}
    assert any(why in in_english(f).message for f in faults), faults
