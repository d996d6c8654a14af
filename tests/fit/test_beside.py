"""Finished measurements beside what is wanted of them: by hand, in stitches of half a centimetre."""

from __future__ import annotations

import pytest

from tests.fit.tried_on import worn
from tests.fit.wardrobe import HEAD, TUBE, VEST
from walewright.report.english import in_english

GORES = """
piece gore in plain, knit {copies}
    levels hem 0 cm, waistline 40 cm
    start 12 cm wide with e-wrap
    edges slope to {wide} cm wide at waistline called side
    end cast off
join gore side to gore side, each to the next all round
"""


def test_what_is_wanted_stands_beside_what_is_knitted() -> None:
    made = worn(VEST + "finished low round back hem, wanted 86.5 cm\nfinished collar along neckband, wanted 59 cm\n")
    low, collar = made.fit.beside
    assert (low.name, low.wanted, low.knitted, low.off) == ("low", (86.5,), pytest.approx((86.0,)), pytest.approx((-0.5,)))
    # The neck is 20 cm wide, 2 and 8 cm deep: 60 cm; a stitch of the rib, too, is half a centimetre.
    assert (collar.knitted, collar.off) == (pytest.approx((60.0,)), pytest.approx((1.0,)))
    assert made.codes() == []
    assert dict(made.fit.stated) == {"low": pytest.approx((86.0,)), "collar": pytest.approx((60.0,))}


@pytest.mark.parametrize(("wanted", "codes"), [(85, []), (87, []), (84.9, ["whole-off"]), (87.1, ["whole-off"])])
def test_the_whole_may_be_off_by_two_stitches_as_a_piece_may(wanted: float, codes: list[str]) -> None:
    assert worn(VEST + f"finished low round back hem, wanted {wanted} cm\n").codes() == codes


def test_gores_that_are_right_each_come_to_too_little_in_all() -> None:
    """Eight gores of 10.4 cm: 20.8 stitches, knitted as 20, 3.2 cm less; and eight seams take 8 cm."""
    made = worn(GORES.format(copies=8, wide=10.4) + "finished waist round gore waistline, wanted 83.2 cm\n")
    (told,) = (d for d in made.told if d.code == "whole-off")
    assert in_english(told).notes == ("one: wanted 83.2 cm, knitted 72.0 cm: 11.2 cm too little",)
    assert len(in_english(told).helps) == 3
    (beside,) = made.fit.beside
    assert beside.off == pytest.approx((-11.2,))


def test_all_across_is_measured_from_free_edge_to_free_edge() -> None:
    ring, row = "gore side to gore side, each to the next all round", "gore side_right to gore side_left, each to the next"
    strips = GORES.format(copies=3, wide=12).replace(ring, row)
    made = worn(strips + "finished width across gore hem, wanted 34 cm\n")
    assert made.fit.beside[0].knitted == pytest.approx((36 - 2,))
    assert "nothing-to-measure" in worn(TUBE + "finished width across back hem, wanted 80 cm\n").codes()
    alone = TUBE.replace("join back side to front side\n", "")
    assert worn(alone + "finished width across back hem\n").fit.stated == (("width", pytest.approx((41.0,))),)


@pytest.mark.parametrize(
    ("line", "codes"), [("require across back hem >= 41 cm", []), ("require across back hem > 41 cm", ["require-fails"])]
)
def test_what_is_across_can_be_required(line: str, codes: list[str]) -> None:
    alone = TUBE.replace("join back side to front side\n", "")
    assert [code for code in worn(alone + line + "\n").codes() if code != "loops-left-open"] == codes


def test_each_size_has_its_own() -> None:
    head = HEAD.replace("sizes one\n    chest 80 cm, to fit", "sizes S M\n    chest 80 88 cm, to fit")
    text = TUBE.replace("41 cm wide", "chest / 2 + 1 cm wide") + "finished round_it round back top, wanted chest + 0.5 cm\n"
    (beside,) = worn(text, head).fit.beside
    assert (beside.wanted, beside.knitted) == ((80.5, 88.5), pytest.approx((80.0, 88.0)))


@pytest.mark.parametrize(
    ("change", "helps"),
    [
        (("knit {copies}", "knit {copies}"), 3),
        (("knit {copies}", "knit {copies}, odd or even"), 2),
        (
            (
                "    edges slope to {wide} cm wide",
                "    left edge slope by -1 cm at waistline called other\n    right edge slope by -0.6 cm",
            ),
            2,
        ),
    ],
)
def test_odd_or_even_is_proposed_where_a_piece_could_have_it(change: tuple[str, str], helps: int) -> None:
    """Not where it has it, nor where a piece has unlike edges."""
    text = GORES.replace(*change)
    if "left edge" in text:
        text = text.replace("gore side to gore side, each", "gore other to gore side, each")
    made = worn(text.format(copies=8, wide=10.4) + "finished waist round gore hem, wanted 100 cm\n")
    (told,) = (d for d in made.told if d.code == "whole-off")
    assert len(told.helps) == helps
