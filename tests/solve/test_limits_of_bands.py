"""Bands at their limits: stitches by length or stitch for stitch, whole ribs, halves alike, buttonholes; reckoned by themselves."""

from __future__ import annotations

from itertools import pairwise
from math import floor

import pytest

from tests.solve.tiny import Tiny, tiny
from walewright.counted.model import SizedBand
from walewright.report.english import in_english


def fabric(name: str, across: float, up: float = 1.0, stitch: str = "stocking stitch", deep: str = "6 cm deep") -> str:
    return f"""\
fabric {name}
    {stitch} in rope at tension 3
    swatch 100 stitches by 100 rows = {100 / across:g} cm by {100 / up:g} cm
edging collar in {name}, {deep}, added after
"""


def strip(
    high: float, across: float, up: float = 1.0, stitch: str = "stocking stitch", holes: str = "", deep: str = "6 cm deep"
) -> Tiny:
    """A band up the left edge of a piece so high."""
    return tiny(
        fabric("fine", across, up, stitch, deep)
        + f"""\
piece back in plain
    levels hem 0 cm, top {high:g} cm
    start 10 cm wide with e-wrap
    left edge straight to top called side
    end cast off
band trim with collar along back side{holes}
""",
        needles=120,
    )


def band(made: Tiny) -> SizedBand:
    return made.garments[0].bands[0]


def nearest_even(wanted: float) -> int:
    return 2 * floor(wanted / 2 + 0.5)


@pytest.mark.parametrize("high", [9.0, 12.0, 20.0, 31.0])
@pytest.mark.parametrize("across", [0.4, 0.62, 0.75, 0.9, 1.0, 1.3])
def test_along_rows_as_many_as_the_length_has_and_one_for_each_place_at_the_most(high: float, across: float) -> None:
    made = strip(high, across)
    rows = made.piece.rows
    assert band(made).stitches == min(nearest_even(rows * across), rows)
    (edge,) = band(made).pick_ups
    assert edge.points == rows
    assert edge.cm == pytest.approx(rows)


@pytest.mark.parametrize("high", [20.0, 30.0, 58.0, 64.0])
@pytest.mark.parametrize("across", [0.78, 0.9, 0.97, 1.0])
@pytest.mark.parametrize("every", [2, 3, 4])
def test_a_rib_comes_out_whole_where_three_in_a_hundred_are_enough(high: float, across: float, every: int) -> None:
    """A multiple of twice the rib's repeat; else the nearest even number."""
    made = strip(high, across, stitch=f"latched rib every {every}{'nd' if every == 2 else 'rd' if every == 3 else 'th'} needle")
    rows = made.piece.rows
    wanted = rows * across
    whole = 2 * every * floor(wanted / (2 * every) + 0.5)
    suits = abs(whole - wanted) <= 0.03 * wanted and whole <= rows
    assert band(made).stitches == (whole if suits else min(nearest_even(wanted), rows))


@pytest.mark.parametrize("deep", [0.9, 2.0, 3.0, 5.0, 5.2, 7.0])
@pytest.mark.parametrize("up", [1.0, 1.25])
def test_a_band_has_the_nearest_even_number_of_rows(deep: float, up: float) -> None:
    made = band(strip(20, 1.0, up, deep=f"{deep} cm deep"))
    assert made.rows == max(2, nearest_even(deep * up))


@pytest.mark.parametrize("across", [0.6, 0.8, 0.84, 0.85, 0.86, 1.0, 1.4])
@pytest.mark.parametrize("wide", [14, 20, 26])
def test_along_stitches_stitch_for_stitch_while_the_band_is_no_coarser_than_fifteen_in_a_hundred(across: float, wide: int) -> None:
    made = tiny(
        fabric("fine", across)
        + f"""\
piece back in plain
    levels hem 0 cm, top 20 cm
    start {wide} cm wide with e-wrap
    end on waste yarn
band trim with collar along back end
"""
    )
    expected = wide if across >= 0.85 else min(wide, max(2, nearest_even(wide * across)))
    assert band(made).stitches == expected
    assert [p.live for p in band(made).pick_ups] == [True]


@pytest.mark.parametrize("across", [0.7, 0.9, 1.0, 1.12])
@pytest.mark.parametrize("deep", [7, 10, 12])
@pytest.mark.parametrize("rib", ["stocking stitch", "latched rib every 3rd needle"])
def test_the_halves_of_a_neck_get_the_same_and_the_centre_its_own(across: float, deep: int, rib: str) -> None:
    made = tiny(
        fabric("fine", across, stitch=rib)
        + f"""\
piece back in plain
    levels hem 0 cm, top 30 cm
    start 40 cm wide with e-wrap
    neck 20 cm wide, {deep} cm deep, square
    end cast off
band trim with collar along back neck
"""
    )
    left, centre, right = (p.stitches for p in band(made).pick_ups)
    rows = band(made).pick_ups[0].points
    assert rows == made.piece.openings[0].to_row - made.piece.openings[0].row
    assert left == right
    assert centre == (20 if across >= 0.85 else nearest_even(20 * across))
    wanted = 2 * rows * across + centre
    whole = 6 * floor(wanted / 6 + 0.5)
    goal = whole if "rib" in rib and abs(whole - wanted) <= 0.03 * wanted else nearest_even(wanted)
    assert left + centre + right == min(goal, 2 * rows + centre)


# ----------------------------------------------------------------- buttonholes


@pytest.mark.parametrize("count", [1, 2, 3, 5, 6])
@pytest.mark.parametrize("over", [1, 2])
@pytest.mark.parametrize(
    ("high", "first", "last"), [(20, 2.0, 3.0), (24, 1.4, 1.6), (30, 1.0, 1.0), (20, 0.4, 2.0), (14, 1.0, 1.5)]
)
def test_buttonholes_lie_evenly_and_as_far_from_the_ends_as_is_written(
    count: int, over: int, high: int, first: float, last: float
) -> None:
    stitches = "stitch" if over == 1 else "stitches"
    made = strip(high, 1.0, holes=f", buttonholes {count} over {over} {stitches}, {first} cm first, {last} cm last")
    begin, end = floor(first + 0.5), high - floor(last + 0.5) - over
    places = [begin] if count == 1 else [begin + floor((end - begin) * k / (count - 1) + 0.5) for k in range(count)]
    apart = all(b - a - over >= 1 for a, b in pairwise(places))
    inside = places[0] >= 1 and places[-1] + over <= high - 1
    if not (apart and inside):
        assert made.error.code == "buttonholes-crowded"
        assert made.line().startswith("band trim")
        return
    found = band(made)
    assert [(h.first + high // 2, h.last - h.first + 1) for h in found.holes] == [(p, over) for p in places]
    # Half the depth of six rows, on an even row: the carriage is at the right.
    assert {h.row for h in found.holes} == {4}


@pytest.mark.parametrize(("deep", "row"), [(2, None), (4, 2), (6, 4), (8, 4), (10, 6), (12, 6)])
def test_a_buttonhole_lies_at_half_the_depth(deep: int, row: int | None) -> None:
    """A band of two rows has none below it and above it."""
    made = strip(20, 1.0, holes=", buttonholes 2 over 2 stitches, 3 cm first, 3 cm last", deep=f"{deep} cm deep")
    if row is None:
        assert made.error.code == "buttonholes-crowded"
        assert in_english(made.error).helps[0].startswith("make the band deeper")
        return
    assert {h.row for h in band(made).holes} == {row}


@pytest.mark.parametrize("fold", ["", ", fold row at tension 8"])
@pytest.mark.parametrize("over", [1, 2])
def test_a_folded_band_has_its_buttonholes_as_far_beyond_the_fold(fold: str, over: int) -> None:
    stitches = "stitch" if over == 1 else "stitches"
    made = strip(20, 1.0, holes=f", buttonholes 2 over {over} {stitches}, 3 cm first, 3 cm last", deep=f"6 cm deep, folded{fold}")
    found = band(made)
    # Six rows and six, a row of the fold between; the bar of an eyelet lies in the row after its own.
    assert [h.row for h in found.behind] == [12 + bool(fold) - h.row - (over == 1) for h in found.holes]
    assert [(h.first, h.last) for h in found.behind] == [(h.first, h.last) for h in found.holes]


# ----------------------------------------------------------------- pieces begun along edges


@pytest.mark.parametrize(("wide", "fits"), [(8, True), (12, True), (13, True), (14, False)])
def test_a_piece_is_begun_on_no_more_stitches_than_there_are_places(wide: int, fits: bool) -> None:
    """Six loops and six: what is shared out is as even as the edges are long."""
    made = tiny(f"""\
piece palm in plain
    levels hem 0 cm, hole 8 cm, top 20 cm
    start 20 cm wide with e-wrap
    slot thumb 6 cm wide at hole, on waste yarn
    end cast off
piece thumb in plain
    levels base 0 cm, top 8 cm
    start {wide} cm wide along palm thumb + palm thumb_upper
    end cast off
""")
    if not fits:
        assert made.error.code == "start-longer-than-edges"
        assert in_english(made.error).helps[0] == "start it 12 cm wide at the most"
        return
    thumb = made.garments[0].piece("thumb")
    assert [p.stitches for p in thumb.start_pick_ups] == [thumb.start // 2] * 2


def test_a_band_that_the_bed_has_no_room_for_is_parted() -> None:
    for high, parted in ((20, False), (22, True)):
        made = tiny(
            fabric("fine", 1.0)
            + f"""\
piece back in plain
    levels hem 0 cm, top {high} cm
    start 10 cm wide with e-wrap
    left edge straight to top called side
    end cast off
band trim with collar along back side
""",
            needles=20,
        )
        bands = made.garments[0].bands
        assert len(bands) == 1 + parted
        assert sum(own.stitches for own in bands) == high


def test_a_band_that_something_measures_stays_one_and_is_refused() -> None:
    made = tiny(
        fabric("fine", 1.0)
        + """piece back in plain
    levels hem 0 cm, top 22 cm
    start 10 cm wide with e-wrap
    left edge straight to top called side
    end cast off
band trim with collar along back side
finished trim along trim
""",
        needles=20,
    )
    assert made.error.code == "wider-than-bed"
    assert made.line().startswith("band trim")
    assert "knit it on a bed of 22 needles or more" in in_english(made.error).helps
