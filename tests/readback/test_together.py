"""Shapings that go on at the same time, as they are read and worked."""

from __future__ import annotations

import pytest

from tests.in_english import read_back
from walewright.knit import operations as op
from walewright.report.english import in_english

START = (
    "[ ] Take the carriage to the right without knitting.",
    "[ ] Bring needles L 5 to R 5 to working position: 10 sts.",
    "[ ] Set the row counter to 008.",
)
HEAD = "-   At the same time, from RC 8 to RC 10:"
NECK = "[ ] For the neck: knit 1 row, cast off 2 sts at the carriage side, knit 1 row."
RAGLAN = "[ ] For the raglan: knit 2 rows, decrease 1 st at the right end."


def text(*lines: str, sizes: str = "M") -> str:
    body = "\n".join((*START, *lines))
    return f"Sizes {sizes}\n\nBack\n====\n\n{body}\n\nJoining\n=======\n"


def moves(*lines: str, sizes: str = "M", size: int = 0) -> tuple[op.Operation, ...]:
    work, faults = read_back(text(*lines, sizes=sizes), size)
    assert faults == ()
    assert work is not None
    return work.blocks[0].operations[3:]


WORKED = (op.Pass("left"), op.CastOff(-5, -4, "left"), op.Pass("right"), op.Transfer(4, 4, -1), op.OutOfWork(4, 4))


def test_each_row_is_knitted_once() -> None:
    assert moves(HEAD, NECK, RAGLAN) == moves(HEAD, RAGLAN, NECK) == WORKED


def test_the_counter_goes_on_from_there() -> None:
    assert moves(HEAD, NECK, RAGLAN, "-   7 sts, RC 10, COR.")[-1] == op.Check(7, 10, "right")


def test_at_one_row_wraps_come_first_and_holds_before_the_rest() -> None:
    held = "[ ] At the left end hold 1 st, carriage set to hold."
    tracks = (
        "[ ] For the neck: knit 1 row, decrease 1 st at the right end, knit 1 row.",
        "[ ] For the shoulder: knit 1 row, at the left end hold 2 sts, knit 1 row.",
        "[ ] For the rest: knit 1 row, wrap the innermost needle held at the left, knit 1 row.",
    )
    made = moves(held, HEAD, *tracks)
    assert [type(m) for m in made] == [op.Hold, op.Pass, op.Wrap, op.Hold, op.Transfer, op.OutOfWork, op.Pass]


def test_a_size_without_a_track_skips_it() -> None:
    dashed = "[ ] For the raglan: knit – (2) rows, [decrease 1 st at the right end: work this – (1) time in all]."
    assert moves(HEAD, NECK, dashed, sizes="S (M)") == WORKED[:3]
    assert moves(HEAD, NECK, dashed, sizes="S (M)", size=1) == WORKED


@pytest.mark.parametrize(
    ("lines", "message"),
    [
        ((HEAD, NECK.replace("knit 1 row.", "knit 2 rows."), RAGLAN), "the neck takes 3 rows of 2"),
        ((HEAD, NECK, RAGLAN.replace("knit 2", "knit 1")), "the raglan takes 1 rows of 2"),
        ((HEAD.replace("8", "6").replace("10", "8"), NECK, RAGLAN), "the counter is at 8, not at 6"),
        ((HEAD.replace("10", "7"),), "the counter cannot go from 8 to 7"),
        ((NECK, RAGLAN), "no rows are named for it"),
        ((HEAD, "[ ] For the neck: knit to RC 10."), "the counter is named in the midst"),
        ((HEAD.replace("RC 8", "RC – (8)").replace("RC 10", "RC – (10)"), NECK), "no rows for it"),
    ],
)
def test_damage_is_found(lines: tuple[str, ...], message: str) -> None:
    work, faults = read_back(text(*lines, sizes="S (M)"), 0)
    assert work is None
    assert [f.code for f in faults] == ["words-contradict"]
    assert message in in_english(faults[0]).message


def test_a_fault_points_at_the_tracks() -> None:
    words = text(HEAD, NECK, RAGLAN.replace("knit 2", "knit 3"), "[ ] Knit to RC 20.")
    _, (fault,) = read_back(words, 0)
    span = fault.labels[0].span
    told = words[span.start : span.end]
    assert told.startswith(HEAD)
    assert told.endswith("right end.")


ROW = "[ ] RC 9, COL: cast off 2 sts at the carriage side; 8 sts."
RUN = "[ ] RC 10, then every 2 rows to RC 12, COR: cast off 2 sts at the carriage side; 6 sts."


def test_a_row_says_where_the_carriage_stands() -> None:
    assert moves(ROW) == (op.Pass("left"), op.CastOff(-5, -4, "left"))
    assert [type(m) for m in moves(RUN)] == [op.Pass, op.Pass, op.CastOff] * 2


@pytest.mark.parametrize("wrong", [ROW.replace("COL", "COR"), RUN.replace("COR", "COL"), RUN.replace("every 2", "every 1")])
def test_a_row_with_the_carriage_elsewhere_is_refused(wrong: str) -> None:
    work, faults = read_back(text(wrong), 0)
    assert work is None
    assert "carriage" in in_english(faults[0]).message
