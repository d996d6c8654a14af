"""Counts that differ from size to size, from the source to the bed and back from the words."""

from __future__ import annotations

import pytest

from tests.in_english import plain_text
from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.pipeline import Outcome

SOURCE = """\
pattern "Counted"
sizes S M L
    bust 88 96 104 cm, to fit
    length 56 58 60 cm
    buttons 5 6 7
    gores 6 8 8
    far 3 4 5 stitches
machine standard
yarn wool "wool", 50 g = 150 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14 cm by 15 cm
edging collar in plain, 3 cm deep, added after, cast off chain
let holes = round(length / 10 cm to 1)
piece front in plain
    levels hem 0 cm, first 3 cm, last length - 3 cm, top length
    start bust / 4 wide with e-wrap
    left edge straight to top called side
    right edge straight to top called front
    buttonholes buttons over 2 stitches from first to last, far from the right edge
    end cast off
piece skirt in plain
    levels hem 0 cm, gore 4 cm, top 10 cm
    start 20 cm wide with e-wrap
    repeat gores times from hem to gore
    end cast off
band border with collar along front side, buttonholes holes over 2 stitches, 2 cm first, 2 cm last
free front front
"""


@pytest.fixture(scope="module")
def outcome() -> Outcome:
    made = pipeline.compile(SOURCE, "counted.wale", shipped(), Changes())
    assert made.diagnostics == ()
    assert made.proven
    return made


def test_each_size_has_its_own_buttonholes(outcome: Outcome) -> None:
    _, counts, _, _ = outcome.result()
    front = [size.pieces[0] for size in counts.sizes]
    assert [len(piece.slots) for piece in front] == [5, 6, 7]
    # `far` stitches of fabric stay between the hole and the edge.
    edges = [piece.start // 2 for piece in front]
    assert [edge - piece.slots[0].last - 1 for edge, piece in zip(edges, front, strict=True)] == [3, 4, 5]
    assert [len(size.bands[0].holes) for size in counts.sizes] == [6, 6, 6]


def test_each_size_repeats_its_own_number_of_times(outcome: Outcome) -> None:
    _, counts, _, _ = outcome.result()
    skirts = [size.pieces[1] for size in counts.sizes]
    assert [piece.repeats[0].times for piece in skirts] == [6, 8, 8]
    assert [piece.counter(piece.rows) for piece in skirts] == [6 * 16 + 24, 8 * 16 + 24, 8 * 16 + 24]


def test_the_words_say_a_number_a_size(outcome: Outcome) -> None:
    text = " ".join(plain_text(outcome.result()[2]).split())
    assert "work this 6 (8: 8) times in all" in text
