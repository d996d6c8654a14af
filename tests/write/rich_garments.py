"""Plans with every way of taking stitches off and back, and one with several shapings at the same time."""

from __future__ import annotations

from tests.write.garments import joined, joining
from walewright.knit import steps as st
from walewright.knit.steps import SizePlan, Step, StepBlock


def spread(first: int, last: int, old: int) -> st.SpreadEvenly:
    """From `old` stitches to the needles `first`..`last`, as evenly as can be."""
    new = last - first + 1
    changed = abs(old - new)
    singles = new // changed - 1
    spare = new - changed * (singles + 1)
    more = changed - min(changed, spare)
    what = "two together" if new < old else "an empty needle"
    # The needles left over make some groups one longer; those come first.
    return st.SpreadEvenly(first, last, new, what, singles + 1, changed - more, singles, more)


def hood(size: str, wide: int, narrow: int, group: int, groups: int, eyelets: int) -> SizePlan:
    """Spread, pierced, shaped with a wedge that opens, slit and closed again, gathered."""
    pierced = (
        st.SlotOnWaste(4, narrow - 10, narrow - 7, "pocket"),
        st.KnitRows(1),
        st.SlotClosed(group, -narrow + 4, -narrow + 3 + group),
        st.SlotClosed(1, 5, 5),
        st.KnitRows(1),
        st.EyeletAt(-1, "left"),
        st.EyeletAt(group, "right"),
        st.Repeat((st.KnitRows(2), st.EyeletAt(3, "right"), st.EyeletAt(-4, "left")), eyelets),
    )
    opening = (st.ReturnSome("left", group), st.KnitRows(1), st.WrapHeld("left"), st.KnitRows(1))
    wedge = (
        st.HoldAtEnd("left", group * groups),
        st.KnitRows(1),
        st.WrapHeld("left"),
        st.KnitRows(1),
        st.Repeat(opening, groups - 1),
        st.ReturnHeld("left"),
        st.KnitRows(2),
    )
    slit = (
        st.KnitTo(60),
        st.Now(2 * narrow, 60, "right"),
        st.CloseCentre(2, -1, 0),
        st.BreakOff(),
        st.HoldPart("right", 1, narrow - 1),
        st.CarriageAt("left"),
        st.UseYarnStep("wool", "4"),
        st.KnitTo(70),
        st.NowInHalf(narrow - 1, 70, "left", narrow - 1),
        st.HoldPart("left", -narrow, -2),
        st.BreakOff(),
        st.CarriageAt("right"),
        st.SetRowCounter(60),
        st.ReturnPart("right", 1, narrow - 1),
        st.UseYarnStep("wool", "4"),
        st.KnitTo(70),
        st.CastOnBetween(2, -1, 0),
        st.ReturnPart("left", -narrow, -2),
        st.KnitRows(2),
        st.Now(2 * narrow, 72, "right"),
    )
    crown = (
        st.CentreToWaste(1, 7, 7, "loop"),
        st.CastOnBetween(1, 7, 7),
        st.Decrease("both ends", 2, 3),
        spread(-wide, wide - 1, 2 * narrow - 4),
        st.KnitRows(2),
        st.LatchPanel(3, 1, 12, 2, narrow - 2),
        st.BreakOff(),
        st.GatherAll(),
    )
    edges = (
        st.EdgeIs("front", "left", 0, 60),
        st.EdgeIs("back", "right", 0, 72),
        st.EdgeIs("vent", "inner", 60, 70),
    )
    start = (
        st.CarriageAt("right"),
        st.NeedlesToWork(-wide, wide - 1, 2 * wide),
        st.UseYarnStep("wool", "4"),
        st.ClosedStart("chain"),
        st.SetRowCounter(0),
        st.KnitTo(10),
        st.Now(2 * wide, 10, "right"),
        spread(-narrow, narrow - 1, 2 * wide),
    )
    block = StepBlock(
        "hood",
        1,
        (("Cast on", start), ("Pierce", pierced), ("Wedge", wedge), ("Slit", slit), ("Crown", crown), ("Edges", edges)),
    )
    joins = joining(
        joined("hood start", "back neck", 10 * group, 20, "gathered", ends="left right"),
        joined("hood front", "front vent + hood vent", 10, 5 * (groups - 2)),
        joined("hood end", "front end", 0, 0, "grafted", ends="left right"),
        joined("hood pocket", "", 0, ends="left left"),
    )
    return SizePlan(size, (block, joins))


def hoods() -> tuple[SizePlan, ...]:
    """Sizes whose numbers all differ, one without eyelets."""
    return (hood("S", 40, 30, 3, 3, 2), hood("M", 44, 36, 4, 3, 0), hood("L", 50, 38, 4, 4, 3))


def yoke(size: str, half: int, armhole: int, neck: tuple[int, ...], late: int) -> SizePlan:
    """A half whose armhole and neck are shaped at the same time, while the other half waits."""
    events: dict[int, list[Step]] = {}
    for i in range(armhole):
        events.setdefault(22 + 2 * i, []).append(st.Decrease("right end", 1, 2, origin="armhole"))
    for i, stitches in enumerate(neck):
        events.setdefault(21 + 2 * i, []).append(st.CastOffAtCarriage(stitches, origin="neck"))
    for i in range(4):
        events.setdefault(21 + 2 * len(neck) + late + 3 * i, []).append(st.Decrease("left end", 1, 2, origin="neck"))
    woven: list[Step] = []
    at = 20
    for row in sorted(events):
        woven += [st.KnitRows(row - at), *events[row]]
        at = row
    start = (
        st.CarriageAt("right"),
        st.NeedlesToWork(-half, half - 1, 2 * half),
        st.UseYarnStep("wool", "4"),
        st.ClosedStart("e-wrap"),
        st.SetRowCounter(0),
        st.KnitTo(20),
        st.Now(2 * half, 20, "right"),
    )
    part = (st.CentreToWaste(8, -4, 3, "neck centre"), st.HoldPart("left", -half, -5))
    rest = (st.KnitTo(40), st.BreakOff(), st.OffOnWaste(8, "shoulder right"))
    back = (
        st.CarriageAt("left"),
        st.ReturnPart("left", -half, -5),
        st.UseYarnStep("wool", "4"),
        st.CastOffAll(),
        st.BreakOff(),
    )
    paragraphs = (("Cast on", start), ("Part", part), ("Right half", (*woven, *rest)), ("Left half", back))
    return SizePlan(size, (StepBlock("back", 1, paragraphs),))


def yokes(count: int) -> tuple[SizePlan, ...]:
    """Sizes whose shapings fall on different rows."""
    return tuple(yoke(f"{i}X", 30 + 2 * i, 5 + i // 2, (3, 2) if i < 5 else (3, 2, 2), i % 2) for i in range(count))
