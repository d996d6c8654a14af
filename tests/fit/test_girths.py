"""What goes round: every figure is worked out by hand from stitches of half a centimetre and rows of a third."""

from __future__ import annotations

import pytest

from tests.fit.tried_on import Worn, worn
from tests.fit.wardrobe import CARDIGAN, DOLMAN, FRONTS, GORES, HAT, HEAD, ONE_BAND, PULLOVER, RAGLAN, TUBE, VEST
from tests.fit.wardrobe import body as body_piece
from walewright.fit import Girth


def girth(made: Worn, piece: str, at: str) -> Girth:
    (found,) = [g for g in made.fit.girths if (g.piece, g.at) == (piece, at)]
    return found


def body(made: Worn) -> Girth:
    (found,) = [g for g in made.fit.girths if g.body]
    return found


def test_a_tube_loses_a_stitch_at_each_edge_of_a_seam() -> None:
    made = worn(TUBE)
    (only,) = made.fit.girths
    # Twice 41 cm, less two seams of two stitches of half a centimetre.
    assert only.values == pytest.approx((80.0,))
    assert sorted(only.over) == ["back", "front"]


def test_linked_sides_would_take_nothing() -> None:
    """A hat's brim of 46 cm is sewn: 45 cm. Its edges are row edges, so that there is nothing to link; four gores are grafted."""
    assert girth(worn(HAT), "hat", "brim").values == pytest.approx((45.0,))
    grafted = (
        GORES.replace("with e-wrap", "on waste yarn")
        .replace("end cast off", "end on waste yarn")
        .replace("all round", "all round, grafted")
    )
    assert girth(worn(grafted), "gore", "waist").values == pytest.approx((80.0,))


def test_gores_knitted_sideways_are_measured_by_their_rows() -> None:
    """Four gores of 60 rows, 20 cm each; eight edges lose a row of a third of a centimetre."""
    made = girth(worn(GORES), "gore", "hem")
    assert made.values == pytest.approx((80 - 8 / 3,))
    assert made.over == ("gore",) * 4


def test_an_open_blanket_has_no_girth() -> None:
    assert worn(TUBE.replace("join back side to front side", "join back side_left to front side_right")).fit.girths == ()


def test_bust_is_below_the_armholes() -> None:
    for source in (VEST, PULLOVER, RAGLAN):
        made = worn(source)
        assert body(made).values == pytest.approx((86.0,)), "twice 44 cm less two seams"
        assert (body(made).at, made.fit.eases[0].ease) == ("under", pytest.approx((6.0,)))


def test_a_facing_lies_behind_the_front_and_makes_it_no_wider() -> None:
    """44 cm of back and twice 21 of front, less two seams, lapped by 8 cm; a band of 2 cm would add twice as much."""
    bands = "\n".join(f"band {side}_facing with turned along {side}_front edge" for side in ("left", "right"))
    lap = "\nlap left_facing over right_facing, 8 cm wide\n"
    fronts = body_piece("back", 2).replace("square", "square, cast off") + FRONTS + bands + lap
    faced = HEAD + "edging turned in plain, 2 cm deep, facing, added after, cast off chain\n"
    plain = HEAD + "edging turned in plain, 2 cm deep, added after, cast off chain\n"
    assert body(worn(fronts, faced)).values == pytest.approx((44 + 42 - 2 - 8,))
    assert body(worn(fronts, plain)).values == pytest.approx((44 + 42 - 2 - 8 + 4,))


def test_a_sleeve_is_no_body_and_has_its_own_girths() -> None:
    made = worn(PULLOVER)
    assert girth(made, "sleeve", "cuff").values == pytest.approx((19.0,))
    assert girth(made, "sleeve", "wide").values == pytest.approx((39.0,))


def test_sleeves_one_with_the_body_are_not_its_chest() -> None:
    assert (body(worn(DOLMAN)).at, body(worn(DOLMAN)).values) == ("under", pytest.approx((86.0,)))


def test_a_lapped_cardigan_counts_one_band() -> None:
    """44 + 21 + 21 cm and two bands of 2 cm, less two side seams of 1 cm and the overlap of 2 cm."""
    said = body(worn(CARDIGAN + "lap buttonhole_band over button_band\n"))
    assert (said.closing, said.values) == ("lapped", pytest.approx((86.0,)))
    # Where one of the bands has buttonholes, it is known without being said.
    assert body(worn(CARDIGAN)).values == said.values


def test_without_buttonholes_the_edges_meet() -> None:
    plain = CARDIGAN.replace(", buttonholes 3 over 1 stitch, 2 cm first, 2 cm last", "")
    found = body(worn(plain))
    assert (found.closing, found.values) == ("edge to edge", pytest.approx((88.0,)))


def test_a_wider_lap_is_the_authors() -> None:
    found = body(worn(CARDIGAN + "lap buttonhole_band over button_band, 8 cm wide\n"))
    assert found.values == pytest.approx((80.0,))


@pytest.mark.parametrize(("lap", "overlap"), [("", 2.0), (", 8 cm wide", 8.0)])
def test_edges_under_one_band_are_lapped(lap: str, overlap: float) -> None:
    """By so much, or by the depth of the band: both its ends lie in the one loop."""
    apart = body(worn(ONE_BAND))
    assert (apart.closing, apart.values) == ("edge to edge", pytest.approx((88.0,)))
    made = worn(ONE_BAND + f"lap right_front edge over left_front edge{lap}\n")
    assert made.codes() == []
    assert (body(made).closing, body(made).values) == ("lapped", pytest.approx((88.0 - overlap,)))


def test_buttonholes_on_one_side_of_a_band_lap_over_the_other() -> None:
    holes = ", buttonholes 3 over 1 stitch along right_front edge, 2 cm first, 2 cm last\n"
    buttoned = ONE_BAND.replace("left_front edge\n", "left_front edge" + holes)
    assert buttoned != ONE_BAND
    assert (body(worn(buttoned)).closing, body(worn(buttoned)).values) == ("lapped", pytest.approx((86.0,)))


def test_what_is_lapped_lies_at_one_opening() -> None:
    assert "lap-apart" in worn(CARDIGAN + "lap back armhole over left_front edge\n").codes()
    assert "lap-apart" not in worn(CARDIGAN + "lap buttonhole_band over button_band\n").codes()


# ----------------------------------------------------------------- what the author states


def test_a_stated_measurement_is_printed_with_its_ease() -> None:
    made = worn(VEST + "finished bust 85 cm, fits chest\nfinished low round back hem\nfinished collar along neckband\n")
    assert [(e.name, e.ease) for e in made.fit.eases] == [("bust", (5.0,))]
    # The neck is 20 cm wide, 2 and 8 cm deep: 20 + 2 * 2 + 20 + 2 * 8 = 60 cm.
    assert dict(made.fit.stated) == {"low": pytest.approx((86.0,)), "collar": pytest.approx((60.0,))}
    assert made.codes() == []


def test_a_stated_bust_is_compared_with_the_pieces() -> None:
    assert worn(VEST + "finished bust 95 cm, fits chest\n").codes() == ["finished-otherwise"]


def test_negative_ease_is_warned_of_unless_it_stretches() -> None:
    tight = HEAD.replace("chest 80 cm", "chest 90 cm")
    assert worn(VEST, tight).codes() == ["smaller-than-body"]
    assert worn(VEST + "finished snug round back under, fits chest, stretches\n", tight).codes() == []
    assert worn(VEST + "finished snug round back under, fits chest\n", tight).codes() == ["smaller-than-body"]


def test_nothing_goes_round_an_open_piece() -> None:
    assert "nothing-to-measure" in worn(VEST + "finished top round back top, fits chest\n").codes()


@pytest.mark.parametrize(
    ("line", "codes"),
    [
        ("require along neckband >= 60 cm", []),
        ("require along neckband >= 61 cm", ["require-fails"]),
        ("require along back armhole_left <= 20 cm", []),
        ("require along back armhole_left < 19.9 cm", ["require-fails"]),
        ("require round back under > chest", []),
        ("require round back under > chest + 6 cm", ["require-fails"]),
        ("finished collar along neckband\nrequire collar >= 61 cm", ["require-fails"]),
    ],
)
def test_what_is_knitted_can_be_required(line: str, codes: list[str]) -> None:
    assert worn(VEST + line + "\n").codes() == codes
