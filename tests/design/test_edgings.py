"""Edgings of all kinds: what they need, where they may be, and what does not go together; starts, ends and joins by hand."""

from __future__ import annotations

import pytest

from tests.design.drawing import FRAME, chart, lacy, piece, plain, said, sound
from tests.design.shaped import only
from walewright.design.model import EdgeJoin, Edging
from walewright.report.english import in_english

RIB = plain("latched rib every 3rd needle in wool at tension 4", name="rib")
STRIPED = plain("stripes of 4 rows wool, 2 rows navy at tension 4", name="striped")


def welt(more: str, cloth: str = "plain") -> str:
    return f"edging welt in {cloth}, {more}\n"


def codes(more: str, start: str = "40 cm wide on waste yarn, with welt", cloth: str = "plain") -> list[str]:
    text = piece(start="{}", way="on waste yarn").replace("{} on waste yarn", start)
    return [
        d.code for d in said(plain(), RIB, STRIPED, chart("..O/..", "......"), plain(lacy(), name="lacy"), welt(more, cloth), text)
    ]


def edging(more: str, cloth: str = "plain") -> Edging:
    return sound(plain(), STRIPED, welt(more, cloth), piece()).edging("welt")


def test_a_hem_with_all_that_can_be_said_of_it() -> None:
    made = edging("3 cm deep, folded, fold row at tension 8, inside at tension 3, knitted first")
    assert (made.kind, made.when, made.fold_tension, made.inside_tension, made.depth) == ("folded", "first", "8", "3", (3.0, 3.0))


@pytest.mark.parametrize(("words", "mock"), [("mock rib 1 by 1", 2), ("mock rib 2 by 1", 3)])
def test_a_mock_rib(words: str, mock: int) -> None:
    made = edging(f"3 cm deep, {words}, knitted first")
    assert (made.kind, made.mock) == ("mock rib", mock)


def test_a_chained_edging_has_no_depth() -> None:
    assert edging("chained, added after").depth == (0.0, 0.0)


def test_a_striped_edging() -> None:
    assert edging("3 cm deep, folded, knitted first", "striped").fabric == "striped"


@pytest.mark.parametrize("kind", ["folded", "picot", "mock rib 1 by 1"])
def test_what_is_folded_first_begins_on_waste_yarn(kind: str) -> None:
    more = f"3 cm deep, {kind}, knitted first"
    assert codes(more) == []
    assert codes(more, "40 cm wide on waste yarn by hand, with welt") == []
    assert codes(more, "40 cm wide with e-wrap, with welt") == ["edging-needs-waste-start"]
    assert codes(more, "40 cm wide with chain, with welt") == ["edging-needs-waste-start"]


@pytest.mark.parametrize("kind", ["", "rolled, "])
def test_what_is_not_folded_first_begins_closed(kind: str) -> None:
    more = f"3 cm deep, {kind}knitted first"
    assert codes(more, "40 cm wide with chain, with welt") == []
    assert codes(more) == ["edging-needs-closed-start"]


@pytest.mark.parametrize(
    "kind", ["3 cm deep, folded", "3 cm deep, picot", "3 cm deep, rolled", "3 cm deep, facing", "chained", "3 cm deep"]
)
def test_what_is_added_after_hangs_on_loops(kind: str) -> None:
    assert codes(f"{kind}, added after, cast off chain") == []
    assert codes(f"{kind}, added after, cast off chain", "40 cm wide on waste yarn by hand, with welt") == []
    assert codes(f"{kind}, added after, cast off chain", "40 cm wide with e-wrap, with welt") == ["edging-needs-loops"]


@pytest.mark.parametrize("ribs", ["1 by 1", "2 by 1"])
@pytest.mark.parametrize("added", ["", ", added after"])
def test_a_mock_rib_is_not_added_after(ribs: str, added: str) -> None:
    (told,) = said(plain(), STRIPED, welt(f"3 cm deep, mock rib {ribs}{added}", "plain"), piece())
    assert told.code == "edging-only-first"
    assert in_english(told).helps


@pytest.mark.parametrize("kind", ["3 cm deep, facing", "chained"])
def test_what_is_worked_on_loops_is_not_knitted_first(kind: str) -> None:
    assert codes(f"{kind}, knitted first", "40 cm wide with e-wrap, with welt") == ["edging-only-after"]


def test_what_an_edging_may_be_knitted_in() -> None:
    assert codes("3 cm deep, added after, cast off chain", cloth="lacy") == ["edging-charted"]
    assert codes("3 cm deep, added after, cast off chain", cloth="rib") == []
    assert codes("3 cm deep, folded, added after, cast off chain", cloth="rib") == ["edging-latched"]


def test_what_is_said_of_a_fold_belongs_to_one() -> None:
    assert codes("3 cm deep, picot, fold row at tension 8, added after, cast off chain") == ["edging-without-fold"]
    assert codes("3 cm deep, facing, fold row at tension 8, added after, cast off chain") == []
    assert codes("3 cm deep, facing, inside at tension 3, added after, cast off chain") == ["edging-without-fold"]
    assert codes("3 cm deep, picot, inside at tension 3, added after, cast off chain") == []


# ----------------------------------------------------------------- left open, and joined


def test_an_edging_left_open_is_told_of_where_it_is_used() -> None:
    open_welt = welt("3 cm deep, added after, cast off waste")
    told = only(plain(), open_welt, piece(way="on waste yarn, with welt"), head=FRAME)
    assert told.code == "edging-left-open"
    assert list(in_english(told).labels) == ["the start of piece `front`", "left on waste yarn"]
    band = only(plain(), open_welt, piece(), "band collar with welt along front end", head=FRAME)
    assert band.code == "edging-left-open"
    assert said(plain(), open_welt, piece()) == ()


def test_an_edging_left_open_may_be_grafted() -> None:
    start = piece(way="on waste yarn, with welt")
    join = "join front start to front end, grafted"
    assert said(plain(), welt("3 cm deep, added after, cast off waste"), start, join) == ()
    told = said(plain(), welt("3 cm deep, added after, cast off chain"), start, join)
    assert [d.code for d in told] == ["join-needs-loops"]


def test_a_hem_leaves_no_loops_at_the_start() -> None:
    start = piece(way="on waste yarn, with welt")
    hem = welt("3 cm deep, folded, knitted first, cast off waste")
    assert "join-needs-loops" in [d.code for d in said(plain(), hem, start, "join front start to front end, grafted")]


def test_ends_cast_off_by_back_stitch_and_starts_by_hand() -> None:
    text = piece(way="on waste yarn").replace("start 40 cm wide on waste yarn", "start 40 cm wide on waste yarn by hand")
    made = sound(plain(), text.replace("end on waste yarn", "end cast off sewn")).piece("front")
    assert (made.start_way, made.end_way) == ("hand waste", "sewn-off")


def matched(words: str) -> EdgeJoin:
    (made,) = sound(plain(), piece("edges straight to top called side"), f"join front side_left to front side_right{words}").joins
    return made


def test_joins_that_match() -> None:
    assert matched(", matching").matching
    assert not matched("").matching


# ----------------------------------------------------------------- stripes


def test_stripes_have_the_yarn_of_the_first() -> None:
    made = sound(plain(), STRIPED, piece("fabric striped from low to high")).fabric("striped")
    assert made.stripes == (("wool", 4), ("navy", 2))
    assert made.yarn == "wool"


def test_stripes_in_a_yarn_that_is_not_there_or_of_no_rows() -> None:
    missing = said(plain("stripes of 4 rows wool, 2 rows green at tension 4"), piece())
    assert [d.code for d in missing] == ["unknown-name"]
    nothing = said(plain("stripes of 4 rows wool, 0 rows navy at tension 4"), piece())
    assert [d.code for d in nothing] == ["not-positive"]


def test_the_right_side_of_a_fabric() -> None:
    assert sound(plain() + "    right side purl\n", piece()).fabric("plain").right_side == "purl"
    assert sound(plain(), piece()).fabric("plain").right_side == "knit"
