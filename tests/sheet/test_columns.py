"""Columns made before the page is laid out."""

from __future__ import annotations

from walewright.figures.model import Drawing
from walewright.guide.model import Advice
from walewright.sheet.columns import in_columns, in_rows
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


def test_boxes_stand_beside_others_about_as_high_the_lowest_first() -> None:
    def way(title: str, height: float) -> HowTo:
        return HowTo(title, title, ("",), Drawing(title, 50, height, (), ()))

    ways = [way("a", 30), way("b", 10), way("c", 31), way("d", 11), way("e", 32), way("f", 12), way("g", 1)]
    rows = [[w.title for w in row] for row in in_rows(ways, 3)]
    assert rows == [["b", "d", "f"], ["a", "c", "e"], ["g"]]
    assert [[w.title for w in row] for row in in_rows(ways[::-1], 3)][-1] == ["g"]
