"""Needles that take no part over a stretch of rows: which, and where they cannot."""

from __future__ import annotations

import pytest

from tests.design.shaped import design, front, only, piece, told

OUT = "needles out every 8th from low to high"
"""40 cm wide, a stitch is 5 mm."""


def test_every_so_many_needles_or_those_at_places() -> None:
    made = front(OUT).needles_out[0]
    assert (made.every, made.places, made.from_level, made.to_level) == (8, (), "low", "high")
    placed = front("needles out at 6 cm from centre and 3 cm from the edge from low to high").needles_out[0]
    assert [p[0] for p in placed.places] == [-6.0, 6.0, -17.0, 17.0]
    assert [p[0] for p in front("needles out at 6 cm left of centre from low to high").needles_out[0].places] == [-6.0]


def test_how_wide_the_piece_is_when_it_is_folded_along_them() -> None:
    assert front(f"{OUT}, worn length / 4 wide").needles_out[0].worn == (10.0, 10.5)
    assert front(OUT).needles_out[0].worn is None
    model = piece(f"{OUT}, worn 10 cm wide", name="model")
    image = design(model, "piece image in plain, mirror of model\n", "join image end to model end").piece("image")
    assert image.needles_out[0].worn == (10.0, 10.0)


def test_places_are_counted_from_the_centre_of_the_piece() -> None:
    start = "20 cm left to 2 cm right of centre with e-wrap"
    assert front("needles out at 6 cm from centre from low to high", start=start).needles_out[0].places[0][0] == 3.0


def test_a_mirror_image_has_them_on_the_other_side() -> None:
    model = piece("needles out at 6 cm left of centre from low to high", name="model")
    made = design(model, "piece image in plain, mirror of model\n", "join image end to model end").piece("image")
    assert (made.needles_out[0].places[0][0], made.needles_out[0].turned) == (6.0, True)
    own = "piece image in plain, mirror of model\n    slot pocket 4 cm wide at high, 9 cm left of centre, cast off\n"
    assert told(model.replace("to high", "to middle"), own, "join image end to model end") == []


def test_a_piece_like_another_may_leave_them_out() -> None:
    made = design(piece(OUT, name="back"), "piece front like back\n    without needles\n", "join front end to back end")
    assert (len(made.piece("back").needles_out), made.piece("front").needles_out) == (1, ())


@pytest.mark.parametrize(
    ("written", "case"),
    [
        (("needles out every 2nd from low to high",), "every"),
        ((f"{OUT}, worn 40 cm wide",), "worn"),
        ((f"{OUT}, worn length + 2 cm wide",), "worn"),
        (("needles out every 80th from low to high",), "every"),
        (("needles out at 19 cm from centre from low to high",), "near"),
        (("needles out at 0.5 cm from centre from low to high",), "near"),
        (("needles out at 6 cm from centre and 6.5 cm from centre from low to high",), "near"),
        (("needles out at 25 cm from centre from low to high",), "near"),
        ((OUT, "edges straight to low", "edges slope to 34 cm wide at high"), "other-work"),
        ((OUT, "edges straight to high", "edges cast off 2 cm then curve to 30 cm wide at top"), "other-work"),
        ((OUT, "wedge 6 cm wide at the left edge from low to middle, held in"), "other-work"),
        ((OUT, "slot pocket 4 cm wide at high, cast off"), "other-work"),
        ((OUT, "fabric rib from high to top"), "other-work"),
        ((OUT, "opening vent 2 cm wide from high to top, cast off"), "other-work"),
        ((OUT, "opening vent 2 cm wide from middle to top, cast off"), "other-work"),
        ((OUT, "needles out at 3 cm from centre from high to top"), "other-work"),
        ((OUT, "needles out at 3 cm from centre from middle to high"), "other-work"),
        ((OUT, "repeat 2 times from low to high"), "other-work"),
        ((OUT, "edges straight to high", "across to 36 cm wide at high"), "other-work"),
    ],
)
def test_what_cannot_be(written: tuple[str, ...], case: str) -> None:
    said = only(piece(*written))
    assert (said.code, said.case) == ("needles-out", case)


def test_what_is_shaped_above_and_below_may_be() -> None:
    lines = ("edges slope to 36 cm wide at low", OUT, "edges straight to high", "edges slope to 30 cm wide at top")
    assert told(piece(*lines)) == []


def test_a_rib_is_worked_by_needles() -> None:
    ribbed = piece(OUT).replace("front in plain", "front in rib")
    assert [(d.code, d.case) for d in [only(ribbed)]] == [("needles-out", "fabric")]


@pytest.mark.parametrize("start", ["40 cm wide on waste yarn", "40 cm wide with e-wrap", "40 cm wide with chain"])
@pytest.mark.parametrize("rows", ["from hem to low", "from high to top", "from hem to top"])
def test_they_may_be_out_from_the_start_and_up_to_the_top(start: str, rows: str) -> None:
    for end in ("on waste yarn", "cast off", "cast off sewn", "gathered"):
        assert front(f"needles out every 8th {rows}", start=start, end=end).needles_out


@pytest.mark.parametrize("start", ["40 cm wide with e-wrap, with welt", "40 cm wide on waste yarn, with collar"])
def test_an_edging_takes_a_loop_on_every_needle_of_the_start(start: str) -> None:
    said = only(piece("needles out every 8th from hem to low", start=start))
    assert (said.code, said.case) == ("needles-out", "start")
    assert told(piece("needles out every 8th from low to top", start=start)) == []


def test_so_does_what_is_hung_on_edges() -> None:
    model = piece(name="model")
    said = only(model, piece("needles out every 8th from hem to low", start="40 cm wide along model end"))
    assert (said.code, said.case) == ("needles-out", "start")
