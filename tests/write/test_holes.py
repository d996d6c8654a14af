"""Holes above each other: told by the readings of the counter at which they are made."""

from __future__ import annotations

from tests.in_english import plain_text, read_back_all, write
from walewright.knit import expand
from walewright.knit import steps as st
from walewright.knit.steps import SizePlan, Step, StepBlock
from walewright.write.model import Section

BEGUN = (
    *(st.CarriageAt("right"), st.NeedlesToWork(-4, 3, 8), st.UseYarnStep("wool", "4"), st.ClosedStart("e-wrap")),
    *(st.SetRowCounter(0), st.Now(8, 0, "right")),
)
ENDED = (st.CastOffAll(), st.BreakOff())
HOLE = st.EyeletAt(-1, "right")


def printed(*sizes: tuple[Step, ...]) -> Section:
    """The section of a band; the words are read back to the moves of the plan."""
    blocks = (StepBlock("band", 1, (("Cast on", BEGUN), ("Knit", steps), ("Finish", ENDED))) for steps in sizes)
    plans = tuple(SizePlan(f"{n}X", (block,)) for n, block in enumerate(blocks))
    made = write(plans)
    works, faults = read_back_all(plain_text(made))
    assert works is not None
    assert not faults
    for work, plan in zip(works, plans, strict=True):
        assert [knitted(block.operations) for block in work.blocks] == [knitted(block.operations) for block in expand(plan).blocks]
    return made.sections[0]


def knitted(operations: tuple[object, ...]) -> list[object]:
    """What is done; what must be true may be said elsewhere."""
    return [one for one in operations if type(one).__name__ != "Check"]


def band(*runs: tuple[int, int], end: int) -> tuple[Step, ...]:
    """A hole at RC 6, and then every so many rows so many times."""
    row = 6
    steps: list[Step] = [st.KnitTo(6), st.Now(8, 6, "right"), HOLE]
    for rows, times in runs:
        row += rows * times
        steps += [st.Repeat((st.KnitRows(rows), HOLE), times), st.Now(8, row, "right")]
    return (*steps, st.KnitTo(end), st.Now(8, end, "right"))


def test_holes_that_sizes_space_otherwise_are_one_line_each_for_all_sizes() -> None:
    made = printed(band((10, 1), (12, 2), end=46), band((12, 3), end=48))
    knit = [p for p in made.paragraphs if p.table]
    assert [(p.title, p.only) for p in knit] == [("Knit", "")]
    assert knit[0].sentences[0].text.startswith("Note: buttonholes in the order of the rows.")
    rows = [s.text.partition(":")[0] for s in knit[0].sentences[1:]]
    assert rows == ["RC 6", "RC 16 (18), then every 12 rows to RC 40 (42)"]
    assert not any(p.only for p in made.paragraphs)
    assert any(s.text == "Knit to RC 46 (48). 8 sts, COR." for s in made.sentences)


def test_holes_that_all_sizes_space_alike_are_counted() -> None:
    made = printed(band((10, 3), end=46), band((12, 3), end=48))
    assert not any(p.table for p in made.paragraphs)
    assert any("work this 3 times in all" in s.text for s in made.sentences)


def test_buttonholes_beside_shaping_are_looked_up() -> None:
    """Two shapings can go on beside them: nobody counts rows for holes."""
    tracks = (
        st.Track("left edge", (st.Repeat((st.KnitRows(4), st.IncreaseFashioned("left end", 1)), 5),)),
        st.Track("right edge", (st.Repeat((st.KnitRows(5), st.IncreaseFashioned("right end", 1)), 4),)),
        st.Track("buttonholes", (st.KnitRows(3), HOLE, st.Repeat((st.KnitRows(7), HOLE), 2), st.KnitRows(3))),
    )
    few = (*tracks[:2], st.Track("buttonholes", (st.KnitRows(3), HOLE, st.KnitRows(9), HOLE, st.KnitRows(8))))
    made = printed(*((st.Together(0, 20, told), st.Now(17, 20, "right")) for told in (tracks, few)))
    assert not any(p.table for p in made.paragraphs)
    (holes,) = [s.text for s in made.sentences if s.kinds == ("EyeletAt",)]
    assert holes == (
        "For the buttonholes: at RC (0X) 3, 10 and 17; (1X) 3 and 12 move the st of L 1 one needle to the right and leave"
        " the empty needle in work."
    )
