"""A published text whose figures do not add up: reading it back finds that out, and finds nothing once it is mended."""

from __future__ import annotations

from tests.in_english import plain_text, read_back, write
from walewright.bed import Bed, knit
from walewright.knit import steps as st


def printed(name: str, steps: tuple[st.Step, ...]) -> str:
    """One piece of one size as it is printed."""
    block = st.StepBlock(name, 1, (("Shape", steps),))
    return plain_text(write((st.SizePlan("M", (block,)),), ("M",)))


def armhole(left: int) -> str:
    """The printed text of 162 stitches that lose 9 on each side at once, then 1 at each end 9 times and every 2nd row 9 times,
    and have `left` left."""
    both = st.Decrease("both ends", 1, 0)
    steps: tuple[st.Step, ...] = (
        st.CarriageAt("right"),
        st.NeedlesToWork(-81, 80, 162),
        st.UseYarnStep("wool", "5"),
        st.ClosedStart("e-wrap"),
        st.SetRowCounter(0),
        st.CastOffAtCarriage(9),
        st.KnitRows(1),
        st.CastOffAtCarriage(9),
        st.KnitRows(1),
        st.Repeat((both, st.KnitRows(1)), 9),
        st.Repeat((both, st.KnitRows(2)), 9),
        st.Now(left, 29, "left"),
        st.CastOffAll(),
        st.BreakOff(),
    )
    return printed("back", steps)


def faults(text: str) -> list[str]:
    work, unread = read_back(text, 0)
    if work is None:
        return [f.code for f in unread]
    return [f.code for f in knit(work, Bed(200, (1, 2, 3))).faults]


def test_an_armhole_that_loses_four_stitches_too_few() -> None:
    """Source: machine knitter blog, 2012, http://ozlorna.blogspot.com/2012/09/: 58 stitches are to go, 29 on each side, and the
    text takes off 9, 9 and 9 on each side and says 104 are left: 108 are."""
    assert faults(armhole(104)) != []
    assert faults(armhole(108)) == []


CAP = [(2, 2, 1), (2, 1, 2), (4, 1, 2), (2, 1, 5), (2, 2, 2)]
"""Rows, stitches at each end, times."""


def cap(left: int) -> str:
    """The printed text of a sleeve cap that begins with 45 stitches and has `left` left after 28 rows."""
    shaping = tuple(
        st.Repeat((st.KnitRows(rows), *[st.Decrease("both ends", 1, 0)] * stitches), times) for rows, stitches, times in CAP
    )
    steps: tuple[st.Step, ...] = (
        st.CarriageAt("right"),
        st.NeedlesToWork(-23, 21, 45),
        st.UseYarnStep("wool", "5"),
        st.ClosedStart("e-wrap"),
        st.SetRowCounter(0),
        *shaping,
        st.Now(left, 28, "right"),
        st.CastOffAll(),
        st.BreakOff(),
    )
    return printed("sleeve", steps)


def test_a_cap_whose_text_adds_up() -> None:
    """Source: knitting forum thread, sleeve cap, https://forum.knittinghelp.com/t/binding-off-for-sleeve-cap/3939: at each end
    every 2nd row 2 once and 1 twice, every 4th row 1 twice, every 2nd row 1 five times and 2 twice, and 15 left: 15 on each side of
    45 stitches, in 28 rows."""
    assert faults(cap(15)) == []
    assert faults(cap(17)) != []
    assert faults(cap(15).replace("RC 28", "RC 30")) != []
