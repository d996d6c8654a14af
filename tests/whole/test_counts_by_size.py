"""Counts that differ from size to size, from the source to the bed and back from the words."""

from __future__ import annotations

import itertools
import re

import pytest

from tests.in_english import plain_text
from walewright import glue, pipeline, solve
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.pipeline import Outcome
from walewright.regrade import Trials, explained
from walewright.report.english import in_english

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


SHAPED = """\
pattern "Counted shaping"
sizes S M L
    length 30 32 34 cm
    treads 3 4 5
    pace 4 6 8
    cables 1 2 3
    thirds 3 5 7
machine standard
yarn wool "wool", 50 g = 150 m
chart rope
    key . knit
    key C cross 1 over 1, left first
    | . C C . |
    | . . . . |
    | . . . . |
    | . . . . |
    repeat 4 stitches
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14 cm by 15 cm
fabric roped
    chart rope in wool at tension 7
    swatch 40 stitches by 60 rows = 13 cm by 15 cm
piece stairs in plain
    levels hem 0 cm, low 10 cm, top length
    start 40 cm wide with e-wrap
    edges straight to low
    edges steps -4 stitches, treads times to top
    end cast off
piece slant in plain
    levels hem 0 cm, low 10 cm, top length
    start 40 cm wide with e-wrap
    edges straight to low
    edges in 1 stitch every pace rows to top
    end cast off
piece odd in plain
    levels hem 0 cm, low 10 cm, top length
    start 40 cm wide with e-wrap
    left edge in 1 stitch every thirds rows to top
    right edge straight to top
    end cast off
piece panel in plain
    levels hem 0 cm, top length
    start 40 cm wide with e-wrap
    fabric roped from hem to top, cables repeats wide
    end cast off
free stairs start + stairs end + slant start + slant end + odd start + odd end + panel start + panel end
"""


@pytest.fixture(scope="module")
def shaped() -> Outcome:
    made = pipeline.compile(SHAPED, "shaped.wale", shipped(), Changes())
    assert made.proven, made.diagnostics
    return made


def test_each_size_has_its_own_steps(shaped: Outcome) -> None:
    _, counts, _, _ = shaped.result()
    for size, treads in zip(counts.sizes, (3, 4, 5), strict=True):
        moves = [by for run in size.piece("stairs").left for _, by in run.changes()]
        assert moves == [-4] * treads


@pytest.mark.parametrize(("piece", "paces"), [("slant", (4, 6, 8)), ("odd", (3, 5, 7))])
def test_each_size_has_its_own_rate(shaped: Outcome, piece: str, paces: tuple[int, ...]) -> None:
    _, counts, _, _ = shaped.result()
    for size, pace in zip(counts.sizes, paces, strict=True):
        rows = [row for run in size.piece(piece).left for row, _ in run.changes()]
        assert {after - before for before, after in itertools.pairwise(rows)} == {pace}
        # As many as there are so many rows, from the level to the top.
        assert len(rows) in {(size.piece(piece).rows - from_) // pace for from_ in (0, 38, 40, 42)}


def test_each_size_has_its_own_repeats(shaped: Outcome) -> None:
    _, counts, _, _ = shaped.result()
    assert [size.piece("panel").zones[0].last - size.piece("panel").zones[0].first + 1 for size in counts.sizes] == [4, 8, 12]


def test_the_words_say_a_rate_a_size(shaped: Outcome) -> None:
    text = " ".join(plain_text(shaped.result()[2]).split())
    assert "Knit 4 (6: 8) rows, decrease 1 st at both ends: work this" in text
    assert "Knit 3 (5: 7) rows, decrease 1 st at the left end: work this" in text


@pytest.mark.parametrize(
    ("line", "wrong"),
    [
        ("treads 3 4 5", "treads 0 4 5"),
        ("treads 3 4 5", "treads 3 4 500"),
        ("pace 4 6 8", "pace 4 0 8"),
        ("pace 4 6 8", "pace 4 6.5 8"),
        ("pace 4 6 8", "pace 4 6 8 rows"),
        ("cables 1 2 3", "cables 1 2 0"),
    ],
)
def test_a_count_that_cannot_be_is_told_for_its_size(line: str, wrong: str) -> None:
    made = pipeline.compile(SHAPED.replace(line, wrong), "shaped.wale", shipped(), Changes())
    codes = [d.code for d in made.diagnostics]
    assert len(codes) == 1
    assert codes[0] in {"not-positive", "absurd-count", "rate-not-kept", "count-not-whole", "wrong-unit"}


def test_sizes_that_are_scheduled_apart_keep_their_own_counts() -> None:
    """As they are where no form of a schedule serves all of them."""
    design = pipeline.understood(SHAPED, "shaped.wale", shipped(), Changes()).design
    assert design is not None
    glued, _ = glue.glue(design)
    assert glued is not None
    counts, _ = solve.apart(design, glued, lambda other: glue.glue(other)[0])
    assert counts is not None
    for size, treads, pace in zip(counts.sizes, (3, 4, 5), (4, 6, 8), strict=True):
        assert [by for run in size.piece("stairs").left for _, by in run.changes()] == [-4] * treads
        rows = [row for run in size.piece("slant").left for row, _ in run.changes()]
        assert {after - before for before, after in itertools.pairwise(rows)} == {pace}


# ----------------------------------------------------------------- given by a knitter


def given(**measures: str) -> Outcome:
    return pipeline.compile(SOURCE, "counted.wale", shipped(), Changes(measures=measures))


def test_a_row_that_counts_can_be_given() -> None:
    made = given(buttons="7", far="4 st")
    assert made.proven, made.diagnostics
    design, counts, _, _ = made.result()
    assert [len(size.pieces[0].slots) for size in counts.sizes] == [7, 7, 7]
    edges = [size.pieces[0].start // 2 for size in counts.sizes]
    assert [edge - size.pieces[0].slots[0].last - 1 for edge, size in zip(edges, counts.sizes, strict=True)] == [4, 4, 4]
    assert [(g.kind, g.name, g.own, g.source) for g in design.given] == [
        ("measure", "buttons", "7", "5, 6, 7"),
        ("measure", "far", "4 st", "3 st, 4 st, 5 st"),
    ]


@pytest.mark.parametrize(
    ("name", "text", "case"),
    [
        ("buttons", "6.5", "bad-measure/count-out-of-range"),
        ("buttons", "0", "bad-measure/count-out-of-range"),
        ("buttons", "-2", "bad-measure/count-out-of-range"),
        ("buttons", "1001", "bad-measure/count-out-of-range"),
        ("buttons", "6 cm", "bad-measure/other-count"),
        ("buttons", "6 st", "bad-measure/other-count"),
        ("buttons", "60 %", "bad-measure/other-count"),
        ("far", "4", "bad-measure/other-count"),
        ("far", "4 rows", "bad-measure/other-count"),
        ("bust", "96", "bad-measure/unreadable"),
        ("holes", "6", "worked-out-measure"),
    ],
)
def test_what_cannot_be_given_for_a_count_is_told(name: str, text: str, case: str) -> None:
    (told,) = given(**{name: text}).diagnostics
    assert f"{told.code}/{told.case}".rstrip("/") == case


def test_a_count_that_has_no_room_is_told_with_its_limit() -> None:
    changes = Changes(measures={"buttons": "90"})

    def trial(other: Changes) -> Outcome:
        return pipeline.compile(SOURCE, "counted.wale", shipped(), other)

    (told,) = explained(trial(changes), changes, Trials(trial, trial)).diagnostics
    assert told.code == "given-too-far"
    message = in_english(told)
    found = re.search(r'--measure "buttons=(\d+)"` was tried and works, (\d+) does not', " ".join(message.helps))
    assert found is not None, message
    assert int(found[2]) == int(found[1]) + 1
    assert given(buttons=found[1]).proven
    assert not given(buttons=found[2]).proven
