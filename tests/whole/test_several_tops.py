"""Several openings that go to the top of a piece, from source to proof; the parts between them; and what is damaged."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from tests.whole.garment import SHIPPED
from tests.whole.glued_garments import misread
from tests.whole.test_side_by_side import HEAD, titles
from walewright.bench_copies import bench_copy
from walewright.counted import counted_piece
from walewright.counted.edge_lines import edge_line, length
from walewright.counted.edges import edge_length
from walewright.counted.needles import tops
from walewright.counted.outline import outline
from walewright.design import Changes
from walewright.pipeline import Outcome, compile
from walewright.proof.counted import as_counted
from walewright.report.english import in_english
from walewright.report.model import Severity

STRAPS = """\
piece front in plain
    levels hem 0 cm, low 20 cm, tip length - 2 cm, top length
    start width wide on waste yarn, with welt
    edges straight to tip called side
    opening a 6 cm wide from low to top, 13 cm left of centre, cast off
        edges slope to 9 cm wide at top
    opening b 6 cm wide from low to top, 13 cm right of centre, cast off
        edges slope to 9 cm wide at top
    neck 8 cm wide, 10 cm deep, round
    shoulders held from tip
    end on waste yarn
piece back like front
    neck 8 cm wide, 4 cm deep, round
band neckband with collar along front neck + back neck
join front shoulder to back shoulder, linked
join front side to back side
"""
BIB = """\
piece bib in plain
    levels hem 0 cm, low 8 cm, mid 18 cm, high 20 cm, top length
    start width wide with e-wrap
    edges slope by -2 cm at top called side
    opening a 0 cm wide from low to top, 14 cm left of centre
    opening b 4 cm wide from high to top, cast off
        left edge straight to top
        right edge steps 1 cm 2 times to top
    opening c 2 cm wide from low to mid, 14 cm right of centre, cast off
    end on waste yarn
band one with collar along bib shoulder_left
band two with collar along bib shoulder_2
band three with collar along bib shoulder_right
free bib side
"""
TAILS = """\
piece tabard in plain
    levels hem 0 cm, low 30 cm, top length
    start width wide with e-wrap
    edges straight to top called side
    opening a 1 cm wide from low to top, 15 cm left of centre, cast off
    opening b 1 cm wide from low to top, 5 cm left of centre, cast off
    opening c 1 cm wide from low to top, 5 cm right of centre, cast off
    opening d 1 cm wide from low to top, 15 cm right of centre, cast off
    end {end}
free tabard side
"""
KINDS = {"straps": STRAPS, "bib": BIB, "tails": TAILS.format(end="cast off"), "tails sewn off": TAILS.format(end="cast off sewn")}


def compiled(text: str) -> Outcome:
    return compile(HEAD + text, "tops.wale", SHIPPED, Changes())


@pytest.fixture(scope="module")
def outcomes() -> dict[str, Outcome]:
    return {kind: compiled(text) for kind, text in KINDS.items()}


@pytest.mark.parametrize("kind", KINDS)
def test_several_openings_to_the_top_are_proven(outcomes: dict[str, Outcome], kind: str) -> None:
    outcome = outcomes[kind]
    assert outcome.proven, [(d.code, in_english(d).message) for d in outcome.diagnostics]
    assert outcome.read == outcome.works


def test_each_part_ends_by_itself(outcomes: dict[str, Outcome]) -> None:
    assert [t for t in titles(outcomes["straps"]) if "Return" not in t][1:-1] == [
        "Knit",
        "Part for the a and the b",
        "Right part",
        "Middle part",
        "Part for the neck",
        "Part 3 from the left",
        "Part 2 from the left",
        "Left part",
    ]


def test_what_ends_between_openings_is_called_by_its_number(outcomes: dict[str, Outcome]) -> None:
    """On the bed and in the counts, closed as well as open, each has its own stitches."""
    for kind, piece, number in (("straps", "front", 4), ("tails", "tabard", 5), ("tails sewn off", "tabard", 5)):
        outcome = outcomes[kind]
        assert outcome.counts is not None
        assert outcome.design is not None
        for garment, result in zip(outcome.counts.sizes, outcome.results, strict=True):
            fabric = next(f for f in result.fabrics if f.name == piece)
            of = counted_piece(outcome.design, garment.piece(piece))
            names = ["shoulder left", *(f"shoulder {n}" for n in range(2, number)), "shoulder right"]
            counted = [stitches for _, stitches in tops(of.sized)]
            assert [edge_length(of, name).stitches for name in names] == counted
            assert [edge.count for name in names for edge in fabric.edge(name)] == counted
            assert [edge.count for edge in fabric.edge("shoulder")] == [
                counted[at] for at in (0, *range(1, number - 1), number - 1)
            ]
            assert edge_length(of, "shoulder").stitches == sum(counted)


def test_the_outline_goes_down_and_up_at_each_opening(outcomes: dict[str, Outcome]) -> None:
    outcome = outcomes["tails"]
    assert outcome.counts is not None
    assert outcome.design is not None
    of = counted_piece(outcome.design, outcome.counts.sizes[0].piece("tabard"))
    shape = outline(of)
    assert [gap.name for gap in shape.tops] == ["a", "b", "c", "d"]
    # Each of the four gaps is 1 cm wide at its foot and at its top: eight corners beside those of a rectangle.
    assert len(shape.polygon) == 4 + 4 * 4
    for name, (_, stitches) in zip(("shoulder 2", "shoulder 3", "shoulder 4"), tops(of.sized)[1:-1], strict=True):
        assert length(edge_line(of, shape, name)) == pytest.approx(stitches * of.stitch_cm(of.sized.rows))


def test_shoulders_meet_those_that_lie_opposite(outcomes: dict[str, Outcome]) -> None:
    outcome = outcomes["straps"]
    assert outcome.glued is not None
    met = {seam.one[0].edge: seam.other[0].edge for seam in outcome.glued.in_size(0).seams if "shoulder" in seam.one[0].edge}
    assert met == {
        "shoulder left": "shoulder right",
        "shoulder 2": "shoulder 3",
        "shoulder 3": "shoulder 2",
        "shoulder right": "shoulder left",
    }


def test_every_size_can_be_followed_move_by_move(outcomes: dict[str, Outcome]) -> None:
    for kind in ("straps", "bib"):
        copy, faults = bench_copy(compile(HEAD + KINDS[kind], "tops.wale", SHIPPED, Changes(sizes=("M",))))
        assert (faults, copy is not None) == ((), True)


@pytest.mark.parametrize(
    ("there", "instead", "code"),
    [
        ("along bib shoulder_2", "along bib shoulder_3", "no-such-edge"),
        ("along bib shoulder_2", "along bib shoulder_left", "edge-used-twice"),
        ("band two with collar along bib shoulder_2\n", "", "loops-left-open"),
        ("to top, 5 cm left of centre", "to top, 14.2 cm left of centre", "openings-overlap"),
    ],
)
def test_what_is_wrong_with_tops_is_told(there: str, instead: str, code: str) -> None:
    text = BIB if there in BIB else KINDS["tails"]
    assert there in text
    at = text.index(there)
    told = compiled(text[:at] + instead + text[at + len(there) :])
    assert not told.proven
    assert {d.code for d in told.diagnostics if d.severity is Severity.ERROR} == {code}


IN_WORDS: tuple[tuple[str, Callable[[str], str]], ...] = (
    ("straps", lambda text: text.replace("(shoulder 2)", "(shoulder 3)")),
    ("straps", lambda text: text.replace("front shoulder 3", "front shoulder 2")),
    ("bib", lambda text: text.replace("(shoulder 2)", "(shoulder right)")),
    ("bib", lambda text: text.replace("bib shoulder 2", "bib shoulder left")),
    ("tails", lambda text: text.replace("The inner edges of the 3rd gap", "The inner edges of the 4th gap")),
)


@pytest.mark.parametrize(("kind", "damage"), IN_WORDS)
def test_words_that_say_another_top_are_found(outcomes: dict[str, Outcome], kind: str, damage: Callable[[str], str]) -> None:
    text = outcomes[kind].plain_text or ""
    other = damage(text)
    assert other != text
    assert misread(HEAD + KINDS[kind], other)


def test_a_gap_that_lies_elsewhere_is_found(outcomes: dict[str, Outcome]) -> None:
    outcome = outcomes["tails"]
    assert outcome.design is not None
    assert outcome.counts is not None
    sized = outcome.counts.sizes[0].piece("tabard")
    for number, gap in enumerate(sized.openings):
        moved = (*sized.openings[:number], replace(gap, first=gap.first + 1), *sized.openings[number + 1 :])
        told = as_counted(counted_piece(outcome.design, replace(sized, openings=moved)), outcome.results[0].fabrics[0])
        assert any(counted != knitted for _, counted, knitted in told)
