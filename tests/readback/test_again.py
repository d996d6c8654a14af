"""Steps of an earlier section, read where they stand and worked where they are referred to; and references that are broken."""

from __future__ import annotations

import re

import pytest

from tests.in_english import plain_text, read_back_all, write
from tests.write.test_repeated import BACK, ENDED, MARKED, begun, block, cast_on, knitted
from walewright.bed import Bed, knit
from walewright.knit import expand
from walewright.knit import steps as st
from walewright.knit.steps import SizePlan, StepBlock
from walewright.report.english import in_english

BED = Bed(100, (1, 2, 3))


def halves(name: str, last: int) -> StepBlock:
    """A piece that parts, its right part knitted first; the left one waits."""
    off = (st.BreakOff(), st.OffOnWaste(8, "shoulder right"))
    parted = (st.CentreToWaste(4, -2, 1, "neck centre"), st.HoldPart("left", -20, -3))
    right = (*parted, st.KnitTo(60), st.NowInHalf(18, 60, "right", 18), MARKED, st.KnitTo(last), *off)
    left = (
        *(st.CarriageAt("left"), st.SetRowCounter(54), st.ReturnPart("left", -20, -3), st.UseYarnStep("wool", "4")),
        *(st.KnitTo(last), st.BreakOff(), st.OffOnWaste(8, "shoulder left")),
    )
    return block(name, cast_on(20), ("Knit", (*knitted(20, 54), MARKED)), ("Right half", right), ("Left half", left))


PLANS = (
    SizePlan("S", (BACK, block("front", cast_on(20), ("Knit", (*knitted(20, 54), MARKED, *knitted(20, 80))), ("Finish", ENDED)))),
)
PARTED = (SizePlan("S", (halves("one", 64), halves("two", 66))),)
TEXT = plain_text(write(PLANS))
LINE = "[ ] 1 to 6. As the back, steps 1 to 6. 40 sts, RC 54, COR."


def test_the_steps_are_worked_where_they_are_referred_to() -> None:
    assert LINE in TEXT
    assert read_back_all(TEXT) == (tuple(expand(plan) for plan in PLANS), ())


def test_what_is_said_of_a_part_while_another_waits() -> None:
    text = plain_text(write(PARTED))
    assert "As the one, steps 1 to 10. 18 sts, and 18 waiting, RC 60, COR." in " ".join(text.split())
    assert read_back_all(text) == (tuple(expand(plan) for plan in PARTED), ())
    works, (fault,) = read_back_all(text.replace("steps 1 to 10. 18 sts, and 18 waiting", "steps 1 to 10. 18 sts, and 17 waiting"))
    assert works is None
    assert in_english(fault).message == "two: 17 stitches should wait, and 18 do"


@pytest.mark.parametrize(
    ("instead", "message"),
    [
        (LINE.replace("the back", "the hood"), "front: no section before this one is called hood"),
        (LINE.replace("the back", "the front"), "front: no section before this one is called front"),
        (LINE.replace("steps 1 to 6", "steps 3 to 9"), "front: the back has no steps 3 to 9"),
        (LINE.replace("steps 1 to 6", "steps 6 to 1"), "front: the back has no steps 6 to 1"),
        (LINE.replace("steps 1 to 6", "steps 1 to 5"), "front: this is 6 steps, and 5 are referred to"),
        (LINE.replace("1 to 6.", "1 to 5.", 1), "front: this is step 6, not 7"),
        (LINE.replace("1 to 6.", "2 to 6.", 1), "front: this is step 1, not 2"),
        (LINE.replace("40 sts", "41 sts"), "front: 41 stitches should be on the bed, and 40 are"),
        (LINE.replace("RC 54", "RC 56"), "front: the counter is at 54, not at 56"),
        (LINE.replace("COR", "COL"), "front: the carriage is on the right"),
    ],
)
def test_broken_references_are_refused(instead: str, message: str) -> None:
    damaged = TEXT.replace(LINE, instead)
    assert damaged != TEXT
    works, (fault,) = read_back_all(damaged)
    assert works is None
    assert (fault.code, in_english(fault).message) == ("words-contradict", message)
    # The place is that of the line that refers, or of the step that is out of its number.
    span = fault.labels[0].span
    assert damaged[span.start : span.end].startswith("[ ] ")


def test_other_steps_are_another_fabric() -> None:
    """As many steps of the right section, but not these."""
    moved = TEXT.replace(LINE, "[ ] 1 to 4. As the back, steps 1 to 4.\n[ ] 5. Knit to RC 52.\n[ ] 6. Note: none.")
    works, faults = read_back_all(moved)
    assert faults == ()
    assert works is not None
    assert knit(works[0], BED).fabrics == knit(expand(PLANS[0]), BED).fabrics
    other = moved.replace("[ ] 7. Knit to RC 80.", "[ ] 7. Knit to RC 82.")
    works, faults = read_back_all(other)
    assert works is not None
    assert knit(works[0], BED).fabrics != knit(expand(PLANS[0]), BED).fabrics


def test_a_change_in_the_steps_referred_to_is_a_change_here() -> None:
    """There and here: a reader has nothing else to go by."""
    changed = re.sub(r"(?<=\[ \] 5\. )Knit to RC 54\. 40 sts, COR\.", "Knit to RC 56. 40 sts, COR.", TEXT)
    works, (fault,) = read_back_all(changed)
    assert works is None
    assert in_english(fault).message == "front: the counter is at 56, not at 54"


def test_a_reference_to_a_reference_is_refused() -> None:
    text = plain_text(write((SizePlan("S", (*PLANS[0].blocks, block("third", *PLANS[0].blocks[1].paragraphs))),)))
    assert "As the back, steps 1 to 6. 40 sts, RC 54, COR." in text.partition("Third")[2]
    works, (fault,) = read_back_all(
        text[: text.index("Third")] + text[text.index("Third") :].replace("As the back", "As the front")
    )
    assert works is None
    assert in_english(fault).message == "third: steps 1 to 6 of the front refer to others themselves"


def test_two_sections_of_one_name_cannot_be_told_apart() -> None:
    head, back, front = re.split(r"(?=^Back\n|^Front\n)", TEXT, flags=re.MULTILINE)
    works, (fault,) = read_back_all(head + back + back + front)
    assert works is None
    assert in_english(fault).message == "front: 2 sections before this one are called back"


@pytest.mark.parametrize("number", [1, 3, 7])
def test_a_wrong_number_of_a_step_is_told_once(number: int) -> None:
    damaged = TEXT.replace("[ ] 5. Knit", f"[ ] {number}. Knit", 1)
    _, faults = read_back_all(damaged)
    assert in_english(faults[0]).message == f"back: this is step 5, not {number}"


def test_what_goes_on_together_is_referred_to_with_its_rows() -> None:
    left = st.Track("left edge", (st.Repeat((st.KnitRows(2), st.Decrease("left end", 1, 2)), 2), st.KnitRows(2)))
    right = st.Track("right edge", (st.Repeat((st.KnitRows(3), st.Decrease("right end", 1, 2)), 2),))

    def piece(name: str, half: int) -> StepBlock:
        start = (*begun(half), *knitted(half, 20), st.Together(20, 26, (left, right)))
        return block(name, ("Knit", (*start, MARKED, *ENDED)))

    plans = tuple(SizePlan(size, (piece("one", 20 + n), piece("two", 20 + n))) for n, size in enumerate(("S", "M")))
    text = plain_text(write(plans))
    # The rows stand above the first of the steps that are referred to.
    whole = text.replace(
        f"[ ] 1 to 9. As the one, steps 1 to 9.\n{' ' * 12}[1] [2] [3] [4] [5] [6] [7] [8] [9]",
        "[ ] 1 to 5. As the one, steps 1 to 5.\n[ ] 6 to 9. As the one, steps 6 to 9.",
    )
    assert whole != text
    for told in (text, whole):
        assert read_back_all(told) == (tuple(expand(plan) for plan in plans), ())
