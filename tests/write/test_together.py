"""Shapings that go on at the same time, in words for several sizes."""

from __future__ import annotations

from tests.in_english import write
from walewright.knit import steps as st
from walewright.knit.steps import SizePlan, Step, StepBlock
from walewright.write import shared


def plan(size: str, *steps: Step) -> SizePlan:
    return SizePlan(size, (StepBlock("back", 1, (("Knit and shape", steps),)),))


def raglan(times: int, rest: int) -> st.Track:
    return st.Track("outer edge", (st.Repeat((st.KnitRows(2), st.Decrease("right end", 1, 2)), times), st.KnitRows(rest)))


def shoulder(*steps: Step, rows: int) -> st.Track:
    return st.Track("short rows at the left", (st.HoldAtEnd("left", 5), *steps, st.KnitRows(rows)))


SMALL = plan("S", st.Together(20, 24, (raglan(2, 0), shoulder(rows=4))), st.Now(30, 24, "right"))
LARGE = plan("L", st.Together(24, 30, (raglan(2, 2), shoulder(st.ReturnHeld("left"), rows=6))), st.Now(34, 30, "right"))


def lines(*plans: SizePlan) -> list[str]:
    return [s.text for section in write(plans).sections for p in section.paragraphs for s in p.sentences]


def test_one_line_a_track_under_their_rows() -> None:
    assert lines(SMALL, LARGE) == [
        "At the same time, from RC 20 (24) to RC 24 (30):",
        "For the outer edge: [knit 2 rows, decrease 1 st at the right end, 2 sts in: work this 2 times in all], "
        "[L only: knit 2 rows].",
        "For the short rows at the left: at the left end hold 5 sts, carriage set to hold, "
        "[L only: return the needles held at the left to work, carriage set to knit all if none is held any more],"
        " knit 4 (6) rows.",
        "25 (34) sts in work, 5 (0) held, RC 24 (30), COR.",
    ]


def test_words_all_sizes_work_are_shared() -> None:
    assert shared(write((SMALL, LARGE))) == 1.0


def test_what_a_track_of_one_size_says_without_a_number_is_said_of_that_size() -> None:
    """A dash would leave out the stitches that are held, and not how the carriage is set."""
    alone = plan("S", st.Together(20, 24, (raglan(2, 0),)), st.Now(30, 24, "right"))
    *_, track, _ = lines(alone, LARGE)
    assert track.startswith("For the short rows at the left: [L only: at the left end hold 5 sts, carriage set to hold], ")
    assert shared(write((alone, LARGE))) < 1.0


def test_a_size_that_begins_with_a_decrease_knits_no_0_rows_first() -> None:
    """What few of the sizes do is said of them."""

    def at_once(rows: int, times: int) -> st.Together:
        return st.Together(20, 24, (st.Track("outer edge", decreases(rows, times)), shoulder(rows=4)))

    def decreases(rows: int, times: int) -> tuple[st.Step, ...]:
        step = st.Decrease("right end", 1, 2)
        return (st.Repeat((st.KnitRows(rows), step), 1), *([st.Repeat((st.KnitRows(2), step), times)] if times else []))

    told = [plan(size, at_once(rows, times)) for size, rows, times in (("S", 0, 2), ("M", 1, 0), ("L", 2, 0))]
    track = lines(*told)[1]
    assert track == (
        "For the outer edge: [S only: decrease 1 st at the right end, 2 sts in], "
        "[knit 2 (1: 2) rows, decrease 1 st at the right end, 2 sts in: work this 2 (1: 1) times in all]."
    )


def test_tracks_line_up_by_their_titles() -> None:
    turned = plan("L", st.Together(24, 30, (shoulder(rows=6), raglan(2, 2))), st.Now(34, 30, "right"))
    assert sum("outer edge" in line for line in lines(turned, turned)) == 1
