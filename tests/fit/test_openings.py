"""Openings: which they are, how far they stretch, and what goes through them."""

from __future__ import annotations

import pytest
from jsonschema import Draft202012Validator

from tests.fit.tried_on import Worn, walkers, worn
from tests.fit.wardrobe import BAG_HEAD, CARDIGAN, FRONTS, HEAD, ONE_BAND, PULLOVER, RAGLAN, SOCK, SOCK_HEAD, TUBE, VEST, body
from walewright.cli.worn_tables import as_worn, openings, passages
from walewright.fit import Ring
from walewright.guide.english import LANGUAGE
from walewright.plan import schema
from walewright.plan.worn import worn as as_json
from walewright.report.english import in_english
from walewright.report.model import Severity
from walewright.sheet.fitting import buttons_note
from walewright.trade.sides import SIDES


def ring(made: Worn, role: str) -> Ring:
    (found,) = [r for r in made.fit.rings if r.role == role]
    return found


def with_head(cm: str, source: str = HEAD) -> str:
    return source.replace("80 cm, to fit", f"80 cm, to fit\n    head {cm} cm, to fit")


def test_the_openings_of_a_pullover() -> None:
    made = worn(PULLOVER)
    assert sorted((r.role, *r.copies) for r in made.fit.rings) == [("", 1), ("cuff", 2), ("neck", 1)]
    # 60 cm of neckband and 20 cm of cuff, each less the two stitches of its seam; a latched rib with a chain comes to 1.3 of its
    # length.
    assert ring(made, "neck").relaxed == pytest.approx((59.0,))
    assert ring(made, "neck").stretched == pytest.approx((59 * 1.3,))
    assert ring(made, "cuff").relaxed == pytest.approx((19.0,))
    assert ring(made, "cuff").stretched == pytest.approx((19 * 1.3,))


def test_an_opening_and_what_goes_round_there_are_as_wide() -> None:
    """The first rows of a tube of 82 cm are an opening of it; two seams take four stitches of both."""
    made = worn(TUBE)
    assert made.fit.rings[0].relaxed == pytest.approx((80.0,))
    assert made.fit.rings[0].relaxed == pytest.approx(made.fit.girths[0].values)


V_NECK = VEST.replace("neck 20 cm wide, 8 cm deep, square", "neck 20 cm wide, 8 cm deep, v").replace(
    "back neck + front neck\n", "back neck + front neck_left\nband right_neckband with collar along front neck_right\n"
)


def test_ends_lapped_at_the_point_of_a_neck_make_it_no_wider() -> None:
    """What is picked up counts, less two stitches at the shoulder where the ends of the two bands are sewn together; the ends at
    the point are 2 cm each, and lie one upon the other."""
    made = worn(V_NECK)
    neck = ring(made, "neck")
    (walker,) = walkers(V_NECK)
    rims = sum(walker.cloth.length(place) or 0.0 for place in neck.edges if place.edge == "rim")
    ends = [place for place in neck.edges if place.edge != "rim"]
    assert [walker.cloth.length(place) for place in ends] == pytest.approx([2.0, 2.0])
    assert neck.relaxed == pytest.approx((rims - 1.0,))


def test_ends_beside_a_slit_are_a_part_of_the_opening() -> None:
    """At a slit that goes on below the band, its ends and the edges of the slit stay open."""
    slit = VEST.replace("back neck + front neck\n", "front neck_right + back neck + front neck_left\n").replace(
        "neck 20 cm wide, 8 cm deep, square\n", "neck 20 cm wide, 8 cm deep, square, cast off\n"
    )
    (walker,) = walkers(slit)
    neck = ring(worn(slit), "neck")
    foot = next(place for place in neck.edges if place.edge == "neck centre")
    assert walker.cloth.length(foot) == pytest.approx(20.0), "wider than the ends of the band together"
    assert neck.relaxed == pytest.approx((sum(walker.cloth.length(place) or 0.0 for place in neck.edges),))
    narrow = slit.replace("neck 20 cm wide", "neck 3 cm wide")
    (covered,) = walkers(narrow)
    closed = ring(worn(narrow), "neck")
    rim = next(place for place in closed.edges if place.edge == "rim")
    assert closed.relaxed == pytest.approx((covered.cloth.length(rim),)), "the ends lie on the foot of the slit"


def test_a_neck_without_a_band_is_found_too() -> None:
    cast_off = "square, cast off"
    bare = VEST.replace("band neckband with collar along back neck + front neck\n", "").replace("square", cast_off)
    assert ring(worn(bare), "neck").relaxed == pytest.approx((60.0,))


def test_the_neck_of_a_raglan_runs_over_four_pieces() -> None:
    """20 cm and 20 cm of body, 6 cm and 6 cm of sleeve, less a stitch at each side of four seams, closed with an ordinary chain."""
    neck = ring(worn(RAGLAN), "neck")
    assert (neck.relaxed, neck.stretched) == (pytest.approx((48.0,)), pytest.approx((48 * 1.15,)))


def test_armholes_and_hems_are_no_necks() -> None:
    assert [r.role for r in worn(VEST).fit.rings].count("neck") == 1
    assert {r.role for r in worn(TUBE).fit.rings} == {""}
    assert {r.role for r in worn(CARDIGAN).fit.rings} == {""}


@pytest.mark.parametrize(("head", "codes"), [("74.7", []), ("74.9", ["opening-too-tight"])])
def test_a_neck_is_held_against_the_head(head: str, codes: list[str]) -> None:
    """76.7 cm stretched pass a head of 74.7 cm, with the 2 cm that it needs."""
    made = worn(VEST, with_head(head))
    assert made.codes() == codes
    assert all(d.severity is Severity.WARNING for d in made.told)


def test_a_neck_too_tight_for_a_child_is_an_error() -> None:
    child = HEAD.replace("sizes one\n    chest 80 cm", "sizes 8_years\n    chest from child chest")
    narrow = VEST.replace("20 cm wide", "8 cm wide").replace("8 cm deep", "3 cm deep")
    (told,) = worn(narrow, child).told
    assert (told.code, told.severity) == ("too-tight", Severity.ERROR)
    # 8 + 4 + 8 + 6 = 26 cm, 52 stitches, and two more for whole threes, two go into the seam; a head of 54.25 cm by
    # the table, and 3 cm.
    assert "26.0 cm at rest, 33.8 cm stretched; the head is 54.2 cm, and 57.2 cm are needed" in in_english(told).notes[0]
    assert worn(VEST, child).codes() == []


def test_the_authors_share_goes_before_the_table() -> None:
    narrow = VEST.replace("20 cm wide", "10 cm wide")
    # 10 + 4 + 10 + 16 = 40 cm, 39 in whole threes, less a seam: 49.4 stretched by the table, 57 by the author's swatch.
    assert worn(narrow, with_head("54")).codes() == ["opening-too-tight"]
    assert worn(narrow + "through neckband passes head, stretches to 150 %\n", with_head("54")).codes() == []
    assert worn(narrow + "through neckband passes head of 46 cm\n", with_head("54")).codes() == []


@pytest.mark.parametrize(
    ("edging", "share"),
    [
        ("in rib, 2 cm deep, cast off sewn", 1.4),
        ("in plain, 2 cm deep, cast off chain", 1.15),
        ("in plain, 2 cm deep, rolled", 1.2),
        ("in plain, 2 cm deep, folded, cast off sewn", 1.3),
        ("in plain, 2 cm deep, folded, cast off chain", 1.2),
        ("in plain, 2 cm deep, picot", 1.25),
        ("in plain, chained", 1.1),
    ],
)
def test_how_far_each_edging_stretches(edging: str, share: float) -> None:
    head = HEAD.replace("edging collar in rib, 2 cm deep, added after, cast off chain", f"edging collar {edging}")
    neck = ring(worn(VEST, head), "neck")
    assert neck.stretched[0] / neck.relaxed[0] == pytest.approx(share)


def test_a_cuff_is_held_against_the_hand() -> None:
    """19 cm stretch to 24.7; 1.15 of a hand of 21.6 cm is 24.8."""
    hand = HEAD.replace("80 cm, to fit", "80 cm, to fit\n    hand 21.6 cm, to fit")
    assert worn(PULLOVER, hand).codes() == ["opening-too-tight"]
    assert worn(PULLOVER, hand.replace("21.6", "21.4")).codes() == []


def test_no_hand_passes_a_thumb() -> None:
    """A tube begun on a slot of another is open at its end, and no cuff."""
    mitt = """piece mitt in plain
    levels wrist 0 cm, base 6 cm, top 12 cm
    start 24 cm wide with e-wrap
    edges straight to top called side
    slot thumb 3 cm wide at base, on waste yarn
    end cast off
piece thumb in plain
    levels foot 0 cm, tip 3 cm
    start 6 cm wide along mitt thumb + mitt thumb_upper
    edges straight to tip called side
    end cast off
join mitt side to mitt side
join thumb side to thumb side
"""
    hand = HEAD.replace("80 cm, to fit", "80 cm, to fit\n    hand 18 cm, to fit")
    assert worn(mitt, hand).codes() == []


def test_a_sock_is_held_against_heel_and_instep() -> None:
    """19 cm less a seam stretch to 23.4; a foot of 20.3 cm needs 26.4."""
    assert worn(SOCK, SOCK_HEAD).codes() == ["opening-too-tight"]
    assert worn(SOCK.replace("19 cm wide", "22 cm wide"), SOCK_HEAD).codes() == []


def test_a_skirt_has_to_pass_the_hips() -> None:
    """82 cm less two seams, with an ordinary chain, come to 92: hips of 90 cm and 2 cm pass."""
    hips = HEAD.replace("80 cm, to fit", "80 cm, to fit\n    hips {} cm, to fit")
    assert worn(TUBE, hips.replace("{}", "90")).codes() == []
    assert worn(TUBE, hips.replace("{}", "90.4")).codes() == ["opening-too-tight"]


def test_a_sleeping_bag_must_not_let_the_head_through() -> None:
    """The neckband is as long as 20 + 2 * 2 cm of back and twice the line over 9 and 8 cm of front, 12.04 cm: 48 cm.
    The bands' ends at the neck are 2 cm each and lap by 2: 50 cm. A head at 3 months is 40 cm."""
    closed = "lap buttonhole_band over button_band\nthrough neckband never passes head\n"
    made = worn(CARDIGAN + closed, BAG_HEAD)
    assert made.codes() == ["lets-through"]
    (passing,) = made.fit.passings
    assert passing.relaxed == pytest.approx((50.0,))
    narrow = (
        CARDIGAN.replace("neck 20 cm wide", "neck 8 cm wide")
        .replace("throat 42 cm", "throat 48 cm")
        .replace("by -9 cm", "by -3 cm")
    )
    assert worn(narrow + closed, BAG_HEAD).codes() == []


def test_a_bag_buttoned_at_both_shoulders_has_a_neck_and_two_armholes() -> None:
    """Round the neck 2 + 20 + 2 cm of back, 8 + 20 + 8 of front, and at each shoulder two ends of 2 cm that lap by 2: 64 cm.
    Round an armhole 20 + 20 cm and one such shoulder: 42."""
    tabs = "".join(
        f"band {piece}_tab_{side} with collar along {piece} shoulder_{side}\n" for piece in ("back", "front") for side in SIDES
    )
    laps = "lap front_tab_left over back_tab_right\nlap front_tab_right over back_tab_left\n"
    closed = "".join(f"through front {edge} never passes head of 40 cm\n" for edge in ("neck", "armhole_left", "armhole_right"))
    pieces = (body("back", 2) + body("front", 8)).replace("square", "square, cast off")
    bag = pieces + "join back side to front side\njoin back start to front start\n" + tabs
    assert [p.relaxed[0] for p in worn(bag + laps + closed).fit.passings] == pytest.approx([64.0, 42.0, 42.0])
    one_side = worn(bag + laps.splitlines()[0] + "\n" + closed).fit.passings[0].relaxed[0]
    assert one_side > 64.0 + 40.0


@pytest.mark.parametrize("side", SIDES)
def test_buttons_of_a_strip_along_a_shoulder_are_counted_from_the_neck(side: str) -> None:
    """24 stitches of shoulder, two holes over 2 of them, 1 cm and 3 cm from the ends of the band: their middles are 1.5 cm from the
    one and 3.5 cm from the other end."""
    other = "right" if side == "left" else "left"
    near, far = ("1 cm first, 3 cm last", "3 cm first, 1 cm last")
    places = []
    for ends in (near, far):
        tabs = f"band upper_tab with collar along front shoulder_{side}, buttonholes 2 over 2 stitches, {ends}\n"
        tabs += f"band lower_tab with collar along back shoulder_{other}\nlap upper_tab over lower_tab\n"
        pieces = (
            (body("back", 2) + body("front", 8)).replace("square", "square, cast off").replace("end on waste yarn", "end cast off")
        )
        (buttons,) = worn(pieces + "join back side to front side\n" + tabs).fit.buttons
        assert buttons.counted_from == "neck"
        assert "from the end at the neck, at " in buttons_note(LANGUAGE, buttons, "cm")
        places.append([column[0] for column in buttons.places])
    # The purl side faces: the left shoulder is hung from its armhole end on, the right one from the neck.
    first, last = pytest.approx([1.5, 8.5]), pytest.approx([3.5, 10.5])
    assert places == ([last, first] if side == "left" else [first, last])


def test_buttons_on_a_front_are_counted_from_the_edge_of_its_welt() -> None:
    """Holes in the front itself, the first 2 cm above its start; a welt of 4 cm lies below that."""
    holes = "    buttonholes 3 over 1 stitch from low to throat, 2 cm from the right edge\n    end on waste yarn\n"
    fronts = FRONTS.replace("    end on waste yarn\n", holes, 1).replace("hem 0 cm, under", "hem 0 cm, low 2 cm, under", 1)
    lap = "lap left_front edge over right_front edge, 4 cm wide\n"
    pieces = body("back", 2).replace("square", "square, cast off") + fronts + lap
    welted = pieces.replace("start 21 cm wide with e-wrap", "start 21 cm wide on waste yarn, with welt")
    (bare,), (long,) = worn(pieces).fit.buttons, worn(welted).fit.buttons
    assert bare.counted_from == long.counted_from == "lower"
    both = zip(bare.places, long.places, strict=True)
    assert [(b[0] or 0.0) - (a[0] or 0.0) for a, b in both] == pytest.approx([4.0, 4.0, 4.0])


def test_buttons_are_told_from_the_overlap() -> None:
    """Three eyelets on 84 stitches, the first and last 2 cm from the ends: their middles are 2.25 and 39.75 cm up."""
    (buttons,) = worn(CARDIGAN + "lap buttonhole_band over button_band\n").fit.buttons
    assert (buttons.over, buttons.under, buttons.overlap) == ("buttonhole_band", "button_band", pytest.approx((2.0,)))
    assert [p[0] for p in buttons.places] == pytest.approx([2.25, 21.0, 39.75], abs=0.3)
    assert buttons.across == pytest.approx((1.0,))


def test_buttons_are_told_of_what_laps_though_nothing_is_said_of_it() -> None:
    """What has buttonholes lies over what meets it: so the girth is reckoned, and so the buttons are sewn on."""
    said = worn(CARDIGAN + "lap buttonhole_band over button_band\n").fit
    assert worn(CARDIGAN).fit.buttons == said.buttons


@pytest.mark.parametrize(("over", "under"), [("right_front", "left_front"), ("left_front", "right_front")])
def test_buttons_of_one_band_on_both_fronts_are_told_by_the_front(over: str, under: str) -> None:
    """Three eyelets up one front edge, 2 cm from its foot and from its neckline, counted from the foot on either front."""
    holes = f"left_front edge, buttonholes 3 over 1 stitch along {over} edge, 2 cm first, 2 cm last\n"
    (found,) = worn(ONE_BAND.replace("left_front edge\n", holes)).fit.buttons
    assert (found.over, found.under, found.over_on, found.under_on) == ("border", "border", over, under)
    assert found.counted_from == "lower"
    assert (found.places[0][0] or 0.0) == pytest.approx(2.25, abs=0.6)
    note = buttons_note(LANGUAGE, found, "cm")
    called = {name: f"border ({name.replace('_', ' ')})" for name in (over, under)}
    assert note.startswith(f"The {called[over]} laps over the {called[under]} by 2 cm. Sew 3 buttons on the {called[under]}, ")


def test_buttons_of_two_columns_are_told_one_by_one() -> None:
    """Middles of holes over 2 stitches 2 cm and 9 cm in from the edge, and 2 cm of band: 4.5 and 11.5 cm, of 14 cm of overlap."""
    columns = "".join(f"    buttonholes 2 over 2 stitches from first to last, {far} cm from the right edge\n" for far in (2, 9))
    double = (
        ONE_BAND.replace("levels hem 0 cm,", "levels hem 0 cm, first 6 cm, last 24 cm,")
        .replace("    right edge straight to throat", columns + "    right edge straight to throat", 1)
        .replace(
            "piece right_front in plain, mirror of left_front\n",
            "piece right_front in plain, mirror of left_front\n    without buttonholes\n",
        )
    )
    found = worn(double + "lap left_front edge over right_front edge, 14 cm wide\n").fit.buttons
    assert [(b.over, b.under) for b in found] == [("left_front", "right_front")] * 2
    assert [b.across[0] for b in found] == pytest.approx([14 - 4.5, 14 - 11.5])
    assert [p[0] for b in found for p in b.places] == pytest.approx([6.0, 24.0] * 2, abs=0.4)


def test_buttons_whose_number_differs_by_size() -> None:
    head = HEAD.replace("sizes one\n    chest 80 cm, to fit", "sizes S L\n    chest 80 80 cm, to fit\n    buttons 2 3")
    counted = CARDIGAN.replace("buttonholes 3 over", "buttonholes buttons over")
    fit = worn(counted + "lap buttonhole_band over button_band\n", head).fit
    (found,) = fit.buttons
    assert [p is not None for p in found.places[2]] == [False, True]
    note = buttons_note(LANGUAGE, found, "cm")
    assert "Sew 2 (3) buttons on the button band" in note
    assert "from the lower end, at 2.5 cm, 40 (21.5) cm and – (40) cm." in note
    assert set(as_json(fit, ("S", "L"))["buttons"][0]["at_cm"][2]) == {"L"}


def test_row_edges_that_nothing_joins_are_listed_unless_they_are_meant() -> None:
    assert set(worn(VEST).fit.free) == {(p, f"armhole {s}") for p in ("back", "front") for s in ("left", "right")}
    assert worn(VEST + "free back armhole + front armhole\n").fit.free == ()
    assert worn(PULLOVER).fit.free == ()


def test_only_parts_of_the_body_pass() -> None:
    assert worn(VEST + "through neckband passes foot of 20 cm\n").codes() == []
    with pytest.raises(AssertionError, match="unknown-name"):
        worn(VEST + "through neckband passes elbow\n")
    assert worn(VEST + "through neckband passes calf\n").codes() == ["nothing-to-measure"]
    assert worn(VEST + "through back shoulder passes head of 56 cm\n").codes() == ["nothing-to-measure"]


def test_the_check_and_the_plan_document_show_it() -> None:
    found = worn(PULLOVER, with_head("56")).fit
    made = [table(LANGUAGE, found, ("one",)) for table in (as_worn, openings, passages)]
    tables = {str(t.title): [list(column.cells) for column in t.columns] for t in made}
    assert tables["openings"][0] == ["back start + front start", "2 times cuff: sleeve start", "neck: neckband"]
    assert tables["openings"][2] == ["86.0", "19.0/24.7", "59.0/76.7"]
    assert tables["what passes what"][2] == ["76.7/58.0"]
    assert tables["as worn"][2][tables["as worn"][0].index("Middle of the back neck to the end of the sleeve")] == "66.0"
    document = as_json(found, ("one",))
    assert document["reach"] == [{"sleeve": "sleeve", "way": "over the shoulder", "cm": {"one": 66.0}, "body_cm": {}}]
    shape = {**schema()["properties"]["worn"], "$defs": schema()["$defs"]}
    assert list(Draft202012Validator(shape).iter_errors(document)) == []
    assert list(Draft202012Validator(shape).iter_errors({**document, "girths": [{}]}))
