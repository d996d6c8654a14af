"""Columns made before the page is laid out."""

from __future__ import annotations

from walewright.figures.model import Drawing
from walewright.guide.model import Advice
from walewright.sheet.columns import in_boxes, in_columns
from walewright.sheet.model import HowTo


def advice(title: str, characters: int) -> Advice:
    return Advice(title, ("x" * characters,))


def test_the_longest_run_is_as_short_as_can_be() -> None:
    long, short = advice("long", 400), [advice(str(i), 40) for i in range(4)]
    assert in_columns([long, *short], 2) == [[long], short]
    assert in_columns([*short, long], 2) == [short, [long]]


def test_runs_keep_their_order_and_leave_nothing_out() -> None:
    items = [("anchor", str(i)) for i in range(14)]
    runs = in_columns(items, 3)
    assert [len(r) for r in runs] == [5, 5, 4] or [len(r) for r in runs] == [4, 5, 5]
    assert [item for run in runs for item in run] == items
    assert in_columns(items[:1], 2) == [items[:1]]


def way(title: str, height: float, text: str = "") -> HowTo:
    return HowTo(title, title, (text,), Drawing(title, 36, height, (), ()))


def titles(runs: list[list[HowTo]]) -> list[list[str]]:
    return [[w.title for w in run] for run in runs]


def test_boxes_keep_their_order_and_none_begins_above_the_one_before_it() -> None:
    ways = [way("a", 30), way("b", 10), way("c", 31), way("d", 11), way("e", 32), way("f", 12)]
    first, others = in_boxes(ways, 2)
    assert titles(first) == [["a"], ["b"]]
    assert titles(others) == [["c", "f"], ["d", "e"]]
    first, others = in_boxes(ways, 1)
    assert (titles(first), titles(others)) == ([["a"]], [["b", "c", "d", "e", "f"]])
    assert in_boxes(ways[:2], 2)[1] == []


def test_a_box_is_as_high_as_its_words_need_beside_and_beneath_its_drawing() -> None:
    long, short = way("long", 10, "word " * 120), way("short", 10, "word")
    assert titles(in_columns([long, short, short, short], 2)) == [["long"], ["short"] * 3]
    assert titles(in_columns([way("tall", 90), short, short, short], 2)) == [["tall"], ["short"] * 3]
