"""Every move that a shipped garment prints is told in a box of its pages, with its numbers, as the bed does it."""

from __future__ import annotations

import re

import pytest

from tests.whole.handwork_told import steps, untold, words_for
from tests.whole.shipped_once import GARMENTS, compiled
from walewright.figures.hands import TECHNIQUES
from walewright.figures.hands.scene import Scene
from walewright.guide.english import LANGUAGE
from walewright.knit import steps as st


@pytest.mark.parametrize("name", GARMENTS)
def test_every_move_has_a_box_that_says_it(name: str) -> None:
    assert untold(compiled(name)) == set()


def test_the_shipped_garments_ask_for_the_moves_that_differ_by_a_number() -> None:
    """So that the test above has something to look for."""
    made = [step for name in GARMENTS for step in steps(compiled(name))]
    ways = {(s.by, s.inset > 0) for s in made if isinstance(s, st.Decrease)}
    assert {(1, False), (1, True), (2, True)} <= ways
    assert {s.every for s in made if isinstance(s, st.EveryOutOfWork)} == {2, 3}
    assert words_for(st.Decrease("both ends", 2, 3)) != words_for(st.Decrease("both ends", 1, 3))


TURNED_UP = ("Folded hem", "Picot hem", "Mock rib 1 by 1", "Mock rib 2 by 1")


@pytest.mark.parametrize("title", TURNED_UP)
def test_a_fold_is_turned_up_towards_the_knitter(title: str) -> None:
    """The purl side faces the knitter and lies inside a hem, so that the first row comes up in front."""
    text = next(h.text for h in LANGUAGE.how_to.values() if h.title == title)
    assert re.search(r"up in front, towards you,.{0,20} purl sides", text)
    assert "behind" not in text


def test_the_fold_is_drawn_as_it_lies() -> None:
    scene = Scene(LANGUAGE)
    next(t for t in TECHNIQUES if t.key == "folded-hem").draw(scene)
    drawn = scene.finished("fold")
    at = {w.text: w.x for w in drawn.letterings}
    # The bed is at the left, the knitter at the right.
    assert at["outside"] < at["inside"] < at["your side"]
