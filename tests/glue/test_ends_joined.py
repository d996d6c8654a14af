"""Joins that name the ends of welts, hems and bands, and seams that stop at them."""

from __future__ import annotations

import pytest

from tests.glue.sewn import JACKET, SIDES, body, panel, seams, sewn, told
from walewright.glue import Glued
from walewright.report.english import in_english

WELTED = "".join(body(name, start="on waste yarn, with welt") for name in ("back", "front"))
BOTH = [
    "back welt left + back side left ~ front welt right + front side right",
    "front welt left + front side left ~ back welt right + back side right",
]


def over(made: Glued) -> set[str]:
    return {place.text for seam in made.seams for ends in seam.over for place in ends}


def in_any_order(found: list[str]) -> set[frozenset[str]]:
    return {frozenset(" + ".join(sorted(side.split(" + "))) for side in seam.split(" ~ ")) for seam in found}


@pytest.mark.parametrize(
    "join", ["back welt + back side to front welt + front side", "back side + back welt to front side + front welt"]
)
def test_a_seam_that_names_the_welts_goes_along_them(join: str) -> None:
    made = sewn(f"{WELTED}join {join}\n")
    assert in_any_order(seams(made)) == in_any_order(BOTH)
    assert over(made) == set()
    assert all(p.edge != "welt left" for opening in made.openings for p in opening.edges)


def test_one_that_does_not_goes_on_along_them_by_itself() -> None:
    assert over(sewn(WELTED + SIDES)) == {f"{piece} welt {side}" for piece in ("back", "front") for side in ("left", "right")}


def test_welts_that_are_meant_to_stay_free_are_vents() -> None:
    made = sewn(f"{WELTED}{SIDES}free back welt + front welt\n")
    assert over(made) == set()
    assert made.ends == ()
    at_hem = {p.text for opening in made.openings for p in opening.edges}
    assert {"back welt left", "front welt right"} <= at_hem
    # One side may have a vent and the other not.
    assert over(sewn(f"{WELTED}{SIDES}free back welt_left\n")) == {"back welt right", "front welt left"}


def test_the_ends_of_welts_alone() -> None:
    made = sewn(f"{WELTED}join back welt to front welt\n")
    assert in_any_order(seams(made)) == in_any_order(["back welt left ~ front welt right", "back welt right ~ front welt left"])


def test_their_partners_are_those_in_line_with_a_seam_wherever_they_are_written() -> None:
    fronts = JACKET.replace("start 22 cm wide with e-wrap", "start 22 cm wide on waste yarn, with welt")
    fronts = fronts.replace("start 44 cm wide with e-wrap", "start 44 cm wide on waste yarn, with welt")
    joins = "join back welt to right_front welt\njoin back welt to left_front welt\n"
    made = sewn(fronts.replace("piece back", f"{joins}piece back"))
    welts = [{s.one[0].text, s.other[0].text} for s in made.seams if "welt" in s.one[0].edge]
    assert welts == [{"back welt left", "right_front welt right"}, {"back welt right", "left_front welt left"}]
    free = {p.text for opening in made.openings for p in opening.edges}
    assert {"right_front welt left", "left_front welt right"} <= free


RING = panel("tube") + "band rim with collar along tube end\n"


@pytest.mark.parametrize("joins", [("tube side to tube side", "rim first_end to rim last_end"), ("rim first_end to rim last_end",)])
def test_the_ends_of_a_band_meet(joins: tuple[str, ...]) -> None:
    made = sewn(RING + "".join(f"join {join}\n" for join in joins))
    seam = next(s for s in made.seams if s.one[0].owner == "rim")
    assert {seam.one[0].edge, seam.other[0].edge} == {"first end", "last end"}
    kinds = [task.kind if task.kind != "seam" else made.seams[task.number].one[0].owner for task in made.order]
    assert kinds.index("band") < kinds.index("rim")


def test_a_seam_along_the_end_of_a_band_and_the_edge_beside_it() -> None:
    strap = panel("strap").replace("edges straight", "left edge straight")
    made = sewn(f"{RING}{strap}join tube side_right + rim last_end to strap side, easing 9 cm\n")
    assert seams(made) == ["rim 1 last end + tube side right ~ strap side"] or seams(made)[0].startswith("rim last end")
    assert made.order[-1].kind == "seam"


@pytest.mark.parametrize(
    ("more", "code", "words"),
    [
        ("join back welt_left to front welt_left\n", "seam-twisted", "both left edges"),
        ("join back welt to front welt\njoin back welt_left to front welt_right\n", "edge-used-twice", "back welt_left"),
        (
            "band rim with collar along back side_left\njoin rim first_end to rim last_end, each to the next\n",
            "join-not-in-line",
            "the band `rim` is knitted once",
        ),
        (
            "band rim with collar along back neck_left + front side_left\njoin rim first_end to rim last_end\n",
            "line-not-in-order",
            "",
        ),
    ],
)
def test_ends_that_cannot_be_joined(more: str, code: str, words: str) -> None:
    found = told(WELTED + more)
    assert [d.code for d in found] == [code]
    assert words in in_english(found[0]).message


# ----------------------------------------------------------------- ends that no join names


def test_ends_of_which_one_is_knitted_after_the_seam_are_sewn_by_themselves() -> None:
    late = (
        panel("cloth", copies=2).replace("with e-wrap", "on waste yarn, with welt")
        + "join cloth side to cloth side, each to the next\n"
    )
    made = sewn(f"{late}band one with collar along cloth end + cloth end\n")
    assert {place.owner for seam in made.seams for ends in seam.over for place in ends} == {"cloth"}


def test_ends_beside_a_seam_that_is_linked_are_sewn_after_it() -> None:
    shoulders = WELTED.replace("end cast off", "end on waste yarn") + "join back shoulder to front shoulder, linked\n"
    made = sewn(f"{shoulders}band neckband with collar along back neck + front neck\n")
    (ends,) = made.ends
    assert {ends.one.text, ends.other.text} == {"neckband first end", "neckband last end"}
    assert over(made) == set()
    assert [task.kind for task in made.order][-2:] == ["seam", "ends"]


POCKETED = """\
piece cape in plain
    levels hem 0 cm, low 10 cm, high 24 cm, top 40 cm
    start 40 cm wide with e-wrap
    edges straight to top called edge
    opening hand 6 cm wide from low to high, 8 cm left of centre, cast off
    end cast off
band rim with collar along cape {along}
free cape edge + cape start + cape end
"""


@pytest.mark.parametrize(
    ("along", "more", "closed"),
    [
        ("hand + cape hand_upper", "", True),
        ("hand_centre + cape hand_right + cape hand_upper + cape hand_left", "", True),
        ("hand + cape hand_upper", "free rim first_end + rim last_end\n", False),
        ("hand + cape hand_upper", "join rim first_end to rim last_end\n", False),
        ("hand", "free cape hand_upper\n", False),
    ],
)
def test_a_band_all_round_an_opening_is_closed_by_itself(along: str, more: str, closed: bool) -> None:
    """Unless its ends are meant to stay free, or a join of the author's closes it."""
    ends = {frozenset((pair.one.text, pair.other.text)) for pair in sewn(POCKETED.format(along=along) + more).ends}
    assert ends == ({frozenset(("rim first end", "rim last end"))} if closed else set())
