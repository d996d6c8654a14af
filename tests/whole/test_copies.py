"""Pieces knitted several times: which copy meets which, and what lies on two of them."""

from __future__ import annotations

import pytest

from tests.whole.glued_garments import CARDIGAN, PULLOVER, errors, made
from walewright.knit.operations import NEXT_COPY, PickUpEdge
from walewright.pipeline import Outcome

STRIPS = CARDIGAN.replace(
    "band left_band with collar along left_front edge\n",
    """piece strip in plain, knit 2
    levels foot 0 cm, top 24 cm
    start 4 cm wide with e-wrap
    edges straight to top called edge
    end cast off
join strip edge to left_front edge
join strip edge to right_front edge
""",
).replace("band right_band with collar along right_front edge, buttonholes 4 over 1 stitch, 2 cm first, 2 cm last\n", "")

TWINS = PULLOVER[: PULLOVER.index("piece front")].replace("piece back in plain", "piece body in plain, knit 2")
TWINS += """band armband with collar along body armhole_left + body armhole_right
band neckband with collar along body neck + body neck
join body shoulder to body shoulder, each to the next all round
join body side to body side, each to the next all round
"""


def test_a_copy_that_nothing_is_joined_to_has_its_turn_first() -> None:
    """One strip for each front, though both sides of one strip would do."""
    outcome = made(STRIPS)
    assert outcome.proven, outcome.diagnostics
    joined = [j for j in outcome.works[0].joins if any(piece == "strip" for piece, _, _ in j.one)]
    assert sorted(copy for j in joined for _, _, copy in j.one) == [1, 2]
    assert "edge-half-joined" in {d.code for d in outcome.diagnostics}


def test_an_armband_lies_on_a_body_and_on_the_next() -> None:
    outcome = made(TWINS)
    assert outcome.proven, outcome.diagnostics
    (armband,) = (b for b in outcome.works[0].blocks if b.name == "armband")
    picked = [op for op in armband.operations if isinstance(op, PickUpEdge)]
    assert armband.copies == 2
    assert [op.copy for op in picked] == [0, NEXT_COPY]
    assert "body (next) armhole" in " ".join(outcome.plain_text.split())


def test_other_copies_cannot_be_told() -> None:
    panels = TWINS[: TWINS.index("piece body")] + (
        "piece panel in plain, knit 4\n    levels hem 0 cm, top 20 cm\n    start 14 cm wide with e-wrap\n"
        "    left edge straight to top called one\n    right edge straight to top called other\n    end on waste yarn\n"
        "band top with collar along panel end + panel end\njoin panel other to panel one, each to the next\n"
    )
    assert errors(made(panels)) == {"copies-mixed"}


GORES = """pattern "Gores"
sizes S L
    gores {gores}
machine standard
yarn wool "fine wool", 50 g = 200 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm, 9 g
piece gore in plain, knit gores
    levels hem 0 cm, top 20 cm
    start 12 cm wide with e-wrap
    edges straight to top called side
    end cast off
piece pleat in plain, knit gores
    levels hem 0 cm, top 20 cm
    start 9 cm wide with e-wrap
    edges straight to top called side
    end cast off
join gore side_right to pleat side_left{first}
join pleat side_right to gore side_left{second}
"""


def rings_of(outcome: Outcome, size: int) -> list[int]:
    """How many edges go round each opening, two to a ring of gores."""
    assert outcome.proven, outcome.diagnostics
    assert outcome.glued is not None
    return sorted(len(opening.edges) for opening in outcome.glued.in_size(size).openings)


@pytest.mark.parametrize("gores", ["3 3", "4 5"])
def test_two_pieces_in_turn_are_one_ring(gores: str) -> None:
    outcome = made(GORES.format(gores=gores, first="", second=", each to the next all round"))
    for size, count in enumerate(map(int, gores.split())):
        assert rings_of(outcome, size) == [2 * count, 2 * count]
    if gores == "4 5":
        assert "and the last one to the first, 4 (5) seams" in " ".join(outcome.plain_text.split())


@pytest.mark.parametrize("gores", ["3 3", "2 4"])
def test_two_pieces_each_to_its_own_are_pairs(gores: str) -> None:
    outcome = made(GORES.format(gores=gores, first="", second=", each to its own"))
    for size, count in enumerate(map(int, gores.split())):
        assert rings_of(outcome, size) == [2] * (2 * count)


def test_not_all_round_the_first_and_the_last_stay_open() -> None:
    outcome = made(GORES.format(gores="3 3", first=", each to its own", second=", each to the next"))
    assert rings_of(outcome, 0) == [14]


def test_of_two_pieces_joined_twice_it_has_to_be_said_which_copy_meets_which() -> None:
    assert errors(made(GORES.format(gores="3 3", first="", second=""))) == {"copies-in-doubt"}


def test_two_pieces_in_turn_are_knitted_equally_often() -> None:
    text = GORES.format(gores="3 3", first="", second=", each to the next").replace(
        "pleat in plain, knit gores", "pleat in plain, knit 4"
    )
    assert errors(made(text)) == {"next-of-one"}
