"""A language asked: sentences with their facts, edges and measures by name, figures marked."""

from __future__ import annotations

import pytest

from walewright.counted.model import MeasureKey
from walewright.guide.english import LANGUAGE
from walewright.guide.model import Advice
from walewright.guide.numbers import SizedFigure, figure, unmarked
from walewright.report.said import Said


def test_a_sentence_gets_its_facts() -> None:
    assert LANGUAGE.say("fact/repeats", rows=8, times=3) == "8 rows, 3 times in all"
    assert LANGUAGE.said(Said("fact/repeats", (("rows", 8), ("times", 3)))) == "8 rows, 3 times in all"
    with pytest.raises(KeyError):
        LANGUAGE.say("no such sentence")
    with pytest.raises(KeyError):
        LANGUAGE.say("fact/repeats", rows=8)


def test_lists_and_needles() -> None:
    assert [LANGUAGE.listed(names) for names in ((), ("a",), ("a", "b"))] == ["", "a", "a and b"]
    assert LANGUAGE.needles("L 20", "R 18") == "L 20 to R 18"


OWN = {"start": "first row", "end": "last row", "shoulder": "shoulder", "neck": "neck"}
AUTHORS = {"armhole_left": "armhole left", "thumb": "thumb", "waist_to_hip": "waist to hip"}


@pytest.mark.parametrize("part", ["", "left", "centre", "right", "upper"])
@pytest.mark.parametrize("name", [*OWN, *AUTHORS])
def test_an_edge_is_called_as_its_author_called_it(name: str, part: str) -> None:
    """Its part behind it, and a blank for each stroke."""
    said = LANGUAGE.edge(f"{name} {part}".strip())
    assert said == " ".join(({**OWN, **AUTHORS}[name], part)).strip()


NAMED = MeasureKey("width", "level", "hem")


@pytest.mark.parametrize(
    ("key", "said"),
    [
        (MeasureKey("width", "start"), "width at start"),
        (NAMED, "width at hem"),
        (MeasureKey("width", "level", "hem", across=True), "width at hem across"),
        (MeasureKey("width", "opening", "neck"), "width of neck"),
        (MeasureKey("depth", "opening", "neck"), "depth of neck"),
        (MeasureKey("height", "slot", "pocket"), "height of pocket"),
        (MeasureKey("width", "wedge", "dart"), "width of dart"),
        (MeasureKey("height", "wedge", "dart"), "height of dart inside"),
        (MeasureKey("height", "level", "hem"), "height of hem"),
        (MeasureKey("height", "start"), "height of "),
        (MeasureKey("height", "stretch", "hem", to="top"), "hem to top"),
        (MeasureKey("width", "stretch", "hem", to="top"), "hem to top"),
        (MeasureKey("height", "stretch", "hem", to="top", times=4), "hem to top, 4 times"),
        (MeasureKey("height", "stretch", "hem", to="top", times=0), "hem to top, all together"),
    ],
)
def test_measures_are_named(key: MeasureKey, said: str) -> None:
    assert LANGUAGE.measure(key) == said


def test_advice_has_no_order_unless_it_is_said() -> None:
    assert not Advice("a", ()).ordered


@pytest.mark.parametrize("same", [True, False])
@pytest.mark.parametrize("count", [1, 2, 3, 8])
def test_a_figure_of_three_sizes_and_more_is_kept_whole(count: int, same: bool) -> None:
    values = [str(10 if same else 10 + n) for n in range(count)]
    made = figure(values, "RC ")
    assert made.text.startswith("RC 10")
    assert made.whole == (count >= 3 and not same)
    said, spans = LANGUAGE.figured("fact/repeats", rows=made, times=3)
    assert said == f"{made.text} rows, 3 times in all"
    assert spans == (((0, len(made.text)),) if made.whole else ())


def test_a_figure_takes_the_punctuation_behind_it() -> None:
    one, two = SizedFigure("4 (5: 6)", True), SizedFigure("9", False)
    for mark in ",.;":
        assert unmarked(f"a {one.marked}{mark} b") == (f"a 4 (5: 6){mark} b", ((2, 11),))
    assert unmarked(f"a {one.marked} b") == ("a 4 (5: 6) b", ((2, 10),))
    assert unmarked(f"{one.marked}: {two.marked}, {one.marked}.") == ("4 (5: 6): 9, 4 (5: 6).", ((0, 8), (13, 22)))
    assert unmarked(f"{one.marked} {one.marked},") == ("4 (5: 6) 4 (5: 6),", ((0, 8), (9, 18)))
    assert unmarked("1, 2.") == ("1, 2.", ())
