"""Two shoulders, two armbands, two pockets: the second is said as the first along other edges, and read back as its own."""

from __future__ import annotations

import re

import pytest

from tests.in_english import plain_text, read_back_all, write
from tests.write.test_repeated import ENDED, block, graded, lines, printed
from walewright.knit import expand
from walewright.knit import steps as st
from walewright.knit.copies import Copy
from walewright.knit.steps import SizePlan, Step, StepBlock
from walewright.report.english import in_english

Edge = tuple[str, str, str]


def band(name: str, *edges: Edge, each: int = 10, copy: Copy | None = None) -> StepBlock:
    """So many stitches of each edge, from the left needle to the right."""
    whole = each * len(edges)
    first = -(whole // 2)
    hung: list[Step] = []
    for number, (piece, edge, part) in enumerate(edges):
        at = first + each * number
        picked = st.PickUpAlong(piece, edge, part, each, at, at + each - 1, "purl", "bottom")  # type: ignore[arg-type]
        hung.append(picked if copy is None else st.PickUpAlong(piece, edge, part, each, at, at + each - 1, "purl", "bottom", copy))  # type: ignore[arg-type]
    on = (st.CarriageAt("right"), st.NeedlesToWork(first, first + whole - 1, whole), *hung)
    rows = (st.UseYarnStep("wool", "4"), st.SetRowCounter(0), st.KnitTo(8), st.Now(whole, 8, "right"))
    return block(name, ("Hang on", on), ("Knit", rows), ("Finish", ENDED))


LEFT = band("left_armband", ("front", "armhole", "left"), ("back", "armhole", "right"))
RIGHT = band("right_armband", ("back", "armhole", "left"), ("front", "armhole", "right"))
SAID = (
    "As the left armband, steps 1 to 7, but along the left side of the back armhole,"
    " then the right side of the front armhole. 20 sts, RC 8, COR."
)


def said(*blocks: StepBlock) -> str:
    made = printed(*blocks)
    return "\n".join(text for _, _, text in lines(made[blocks[-1].name])).replace("\N{NO-BREAK SPACE}", " ")


def test_the_second_of_two_bands_is_one_line() -> None:
    assert said(LEFT, RIGHT).startswith("As the left armband, steps 1 to 7, but along the left side of the back armhole,")
    assert "\n" not in said(LEFT, RIGHT)


def test_edges_stand_in_the_order_in_which_they_are_hung() -> None:
    turned = band("right_armband", ("front", "armhole", "right"), ("back", "armhole", "left"))
    assert "but along the right side of the front armhole, then the left side of the back armhole" in said(LEFT, turned)


def test_which_copy_is_told() -> None:
    one, two = (band(name, ("sleeve", "end", "whole"), copy=Copy(number)) for name, number in (("one_cuff", 1), ("other_cuff", 2)))
    assert "but along the last row of the sleeve (2nd)" in said(one, two)


@pytest.mark.parametrize(
    "other",
    [
        band("right_armband", ("back", "armhole", "left"), ("front", "armhole", "right"), each=11),
        band("right_armband", ("back", "armhole", "left"), ("front", "armhole", "right"), ("back", "neck", "centre")),
    ],
    ids=["more stitches", "more edges"],
)
def test_what_else_differs_is_said(other: StepBlock) -> None:
    assert "but along" not in said(LEFT, other)


def test_sizes_that_hang_other_edges_have_their_own_lines() -> None:
    other = band("right_armband", ("back", "armhole", "left"), ("front", "neck", "right"))
    told = lines(graded(((LEFT, RIGHT), (LEFT, other)))["right_armband"])
    assert not any("but along" in text for _, _, text in told)


def test_graded_figures_are_those_of_the_first() -> None:
    sizes = tuple(
        (
            band("left_armband", ("front", "armhole", "left"), ("back", "armhole", "right"), each=each),
            band("right_armband", ("back", "armhole", "left"), ("front", "armhole", "right"), each=each),
        )
        for each in (10, 12)
    )
    ((_, numbers, text),) = lines(graded(sizes)["right_armband"])
    assert numbers == (1, 7)
    assert "but along" in text


# ----------------------------------------------------------------- read back

PLAN = SizePlan("S", (LEFT, RIGHT))


def flat(text: str) -> str:
    """Each line on one row, the spaces of names as any others are typed."""
    return re.sub(r"\n {4,}", " ", text)


@pytest.mark.parametrize(
    ("old", "new", "message"),
    [
        (
            ", then the right side of the front armhole",
            "",
            "right armband: 1 edge named here, and the steps that are referred to hang 2",
        ),
        (
            ", then the right",
            ", then the back end, then the right",
            "right armband: 3 edges named here, and the steps that are referred to hang 2",
        ),
    ],
)
def test_as_many_edges_are_named_as_are_hung(old: str, new: str, message: str) -> None:
    text = flat(plain_text(write((PLAN,))))
    assert old in text
    works, (fault,) = read_back_all(text.replace(old, new))
    assert works is None
    assert in_english(fault).message.replace("_", " ") == message


def test_another_edge_is_another_work() -> None:
    text = flat(plain_text(write((PLAN,))))
    assert read_back_all(text) == ((expand(PLAN),), ())
    works, faults = read_back_all(text.replace("the left side of the back", "the left side of the front"))
    assert faults == ()
    assert works != (expand(PLAN),)
