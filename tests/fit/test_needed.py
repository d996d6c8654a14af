"""What is listed beside the yarn: counted, measured along edges and bands, for each buttonhole; buttons on strips and bands."""

from __future__ import annotations

import pytest

from tests.fit.tried_on import Worn, worn
from tests.fit.wardrobe import CARDIGAN, HEAD, PULLOVER, TUBE, body
from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.design.model import Origin
from walewright.fit.model import Passing


@pytest.mark.parametrize(
    ("what", "amount"),
    [
        ("6", (6.0,)),
        ("0.5 * chest", (40.0,)),
        ("for each buttonhole of buttonhole_band", (3.0,)),
        # Up to 42 cm, in rows of a third of a centimetre; of both fronts' edges one is named.
        ("along left_front edge", (42.0,)),
        # As long as the stitches that are picked up along it, half a centimetre each.
        ("along button_band", (42.0,)),
        # Back and fronts, 44 + 21 + 21 cm, less two seams of a centimetre, and the bands; all round they overlap by 2 cm.
        ("across back under", (88.0,)),
        ("round back under", (86.0,)),
    ],
)
def test_what_is_needed_is_counted_or_measured(what: str, amount: tuple[float, ...]) -> None:
    lap = "lap buttonhole_band over button_band\n"
    made = worn(CARDIGAN + lap + f'needed "things", {what}\n')
    assert made.codes() == []
    (found,) = made.fit.needed
    assert found == pytest.approx(amount, abs=0.01)


def test_what_is_named_alone_has_no_amount() -> None:
    assert worn(CARDIGAN + 'needed "a press stud"\n').fit.needed == ((),)


def test_a_band_with_buttonholes_on_each_copy_needs_as_many_again() -> None:
    """A cuff along the start of a sleeve that is knitted twice; two slots of a piece, three of its mirror image's."""
    cuffs = PULLOVER.replace("on waste yarn, with welt", "on waste yarn") + "band cuff with collar along sleeve start, "
    made = worn(cuffs + 'buttonholes 2 over 1 stitch, 2 cm first, 2 cm last\nneeded "buttons", for each buttonhole of cuff\n')
    assert made.fit.needed == ((4.0,),)


def test_what_cannot_be_measured_is_told_where_it_is_written() -> None:
    """Nothing goes round pieces that are not joined."""
    text = TUBE.replace("join back side to front side\n", "") + 'needed "tape", round back top\n'
    made = worn(text)
    assert made.codes() == ["nothing-to-measure"]
    assert made.fit.needed == ((),)
    (told,) = made.told
    begins = (HEAD + text).index("round back top")
    assert (HEAD + text).rfind("\n", 0, told.labels[0].span.start) == (HEAD + text).rfind("\n", 0, begins)


LONG = """\
pattern "Long"
sizes one
    length 100 cm
machine standard
yarn wool "wool", 50 g = 200 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14 cm by 15 cm
edging border in plain, 2 cm deep, added after, cast off chain
piece scarf in plain{copies}
    levels hem 0 cm, top length
    start 20 cm wide with e-wrap
    left edge straight to top called one
    right edge straight to top called other
    end cast off
band long_band with border along scarf one, buttonholes 4 over 2 stitches, 3 cm first, 3 cm last
needed "ribbon", along long_band
needed "buttons", for each buttonhole of long_band
free scarf start + scarf other + scarf end
"""


@pytest.mark.parametrize(("copies", "times"), [("", 1), (", knit 2", 2)])
def test_a_band_in_parts_is_measured_and_counted_over_all_of_them(copies: str, times: int) -> None:
    """It goes on from the one part to the next: what is needed along it is as long as the whole of it."""
    made = pipeline.compile(LONG.format(copies=copies), "long.wale", shipped(), Changes())
    assert made.proven, made.diagnostics
    _, counts, _, _ = made.result()
    parts = counts.sizes[0].bands
    assert len(parts) > 1
    words = " ".join((made.plain_text or "").split())
    assert f"Part 1 of {len(parts)} of the long band: along one stretch of the one of the scarf." in words
    assert made.fit is not None
    ribbon, buttons = made.fit.needed
    assert abs(ribbon[0] - sum(part.stitches for part in parts) * 14 / 40) < 0.01
    assert buttons == (4.0 * times,)


# ----------------------------------------------------------------- what passes, at its limit


@pytest.mark.parametrize(
    ("never", "stretched", "good"),
    [(False, 10.0, True), (False, 9.95, True), (False, 9.94, False), (True, 9.99, True), (True, 10.0, False), (True, 10.1, False)],
)
def test_half_a_millimetre_too_little_passes_and_what_must_not_pass_is_larger(never: bool, stretched: float, good: bool) -> None:
    made = Passing("neck", "head", never, (9.0, 9.0), (stretched, 20.0), (8.0, 8.0), (10.0, 20.0), None, Origin("through"))
    assert made.good == (good, not never)


# ----------------------------------------------------------------- strips and laps

STRIPS = (
    body("back", 2).replace("square", "square, cast off")
    + """
piece left_front in plain
    levels hem 0 cm, under 30 cm, top 50 cm
    start 21 cm wide with e-wrap
    left edge straight to under called side
    left edge straight to top called armhole
    right edge straight to top called edge
    end on waste yarn
piece right_front in plain, mirror of left_front
join back shoulder to right_front end + left_front end, easing 30 cm
join back side to left_front side
join back side to right_front side
piece upper in plain
    levels foot 0 cm, head 50 cm
    start {over} cm wide with e-wrap
    left edge straight to head called {upper_sewn}
    right edge straight to head called {upper_open}
    buttonholes 3 over 1 stitch from low to high, {in_from} cm from the {side} edge
    end cast off
piece lower in plain
    levels foot 0 cm, head 50 cm
    start {under} cm wide with e-wrap
    left edge straight to head called {lower_open}
    right edge straight to head called {lower_sewn}
    end cast off
join upper sewn to {upper_front} edge
join lower sewn to {lower_front} edge
lap upper over lower
"""
)


def strips(over: float, under: float, in_from: float) -> Worn:
    """The upper strip is sewn to the right front by its left or its right edge, whichever is beside it."""
    text = STRIPS.format(
        over=over,
        under=under,
        in_from=in_from,
        side="right",
        upper_sewn="sewn",
        upper_open="open",
        lower_sewn="sewn",
        lower_open="open",
        upper_front="left_front",
        lower_front="right_front",
    )
    return worn(text.replace("levels foot 0 cm, head", "levels foot 0 cm, low 5 cm, high 45 cm, head"))


@pytest.mark.parametrize(("over", "under", "overlap"), [(4.0, 4.0, 4.0), (4.0, 3.0, 3.0), (3.0, 4.0, 3.0)])
def test_strips_knitted_lengthways_overlap_by_the_narrower_and_have_buttons(over: float, under: float, overlap: float) -> None:
    """Three buttonholes, 5, 25 and 45 cm up, a stitch wide: their middles are in_from and half a stitch from the outer edge."""
    (buttons,) = strips(over, under, 1.0).fit.buttons
    assert (buttons.over, buttons.under) == ("upper", "lower")
    assert buttons.overlap == pytest.approx((overlap,))
    assert [p[0] for p in buttons.places] == pytest.approx([5.0, 25.0, 45.0], abs=0.4)
    assert buttons.across == pytest.approx((overlap - 1.25,))


def test_a_lap_without_buttonholes_has_no_buttons() -> None:
    plain = CARDIGAN.replace(", buttonholes 3 over 1 stitch, 2 cm first, 2 cm last", "")
    assert worn(plain + "lap buttonhole_band over button_band\n").fit.buttons == ()
    assert worn(CARDIGAN + "lap button_band over buttonhole_band\n").fit.buttons == ()


def test_buttons_of_a_band_that_begins_at_the_top_are_counted_from_below_all_the_same() -> None:
    """The first buttonhole is 2 cm from the band's beginning, the last one 10 cm from its end."""
    for edge, other in (("right_front", "left_front"), ("left_front", "right_front")):
        text = CARDIGAN.replace("2 cm last", "10 cm last").replace("along left_front edge", f"along {other} edge")
        text = text.replace("along right_front edge, buttonholes", f"along {edge} edge, buttonholes")
        (buttons,) = worn(text + "lap buttonhole_band over button_band\n").fit.buttons
        places = [p[0] for p in buttons.places]
        assert places == sorted(places)
        from_below, from_above = places[0], 42.0 - places[-1]
        # A neckband goes up the right front and down the left one; so does a band along one of them.
        first, last = (from_below, from_above) if edge == "right_front" else (from_above, from_below)
        assert (first, last) == (pytest.approx(2.25, abs=0.4), pytest.approx(10.25, abs=0.4))


def test_a_stated_overlap_is_taken() -> None:
    (buttons,) = worn(CARDIGAN + "lap buttonhole_band over button_band, 1.5 cm wide\n").fit.buttons
    assert buttons.overlap == (1.5,)
    assert buttons.across == pytest.approx((0.5,))


def test_strips_of_a_lap_are_no_body() -> None:
    """However many levels they have: what goes round is told at the levels of what is no strip."""
    found = strips(4.0, 3.0, 1.0).fit.girths
    assert {g.piece for g in found} <= {"back", "left_front", "right_front"}
    (own,) = (g for g in found if g.body)
    assert (own.at, own.closing) == ("under", "lapped")
    # 44 + 21 + 21 cm and strips of 4 and 3 cm, less four seams of a centimetre and the lap of 3.
    assert own.values == pytest.approx((44 + 42 + 7 - 4 - 3,))
