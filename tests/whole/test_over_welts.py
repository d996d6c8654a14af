"""Bands that go over the ends of welts and hems, from the source to the bed and back from the words."""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache

import pytest

from tests.in_english import plain_text
from tests.whole.glued_garments import caught, changed, made, misread, work_of
from walewright import bed
from walewright.bed import KnitFabric
from walewright.knit.operations import Block, HangFeet, Join, NameEdge, Operation, PickUpEdge, Rehang
from walewright.pipeline import Outcome, bed_of
from walewright.proof.sewing import seams_cm

SOURCE = """\
pattern "Over welts"
sizes {sizes}
    wide {wide} cm
machine standard
yarn wool "wool", 50 g = 150 m
yarn navy "navy wool", 50 g = 150 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14 cm by 15 cm
fabric turned
    stocking stitch in navy at tension 7
    right side purl
    swatch 40 stitches by 60 rows = 14 cm by 15 cm
fabric rib
    latched rib every 2nd needle in wool at tension 5
    swatch 40 stitches by 60 rows = 13 cm by 14 cm
edging welt in {welt}
edging top in {top}
edging border in rib, 2 cm deep, added after
piece cloth in plain
    levels hem 0 cm, upper 20 cm
    start {start}, with welt
    edges straight to upper called side
    end with top
band up with border along cloth welt_left + cloth side_left + cloth top_left
band down with border along cloth top_right + cloth side_right + cloth welt_right{holes}
"""
HOLES = ", buttonholes 3 over 1 stitch along cloth welt_right, 1 cm first, 0.5 cm last"
WELTS = {
    "rib": ("rib, 4 cm deep, added after", "wide wide on waste yarn"),
    "worn purl side out": ("turned, 4 cm deep, added after", "wide wide on waste yarn"),
    "plain, first": ("plain, 4 cm deep, knitted first", "wide wide with chain"),
    "rib, first": ("rib, 4 cm deep, knitted first", "wide wide with e-wrap"),
    "folded": ("plain, 4 cm deep, folded, fold row at tension 9, inside at tension 6, added after", "wide wide on waste yarn"),
    "folded, first": (
        "plain, 4 cm deep, folded, fold row at tension 9, inside at tension 6, knitted first",
        "wide wide on waste yarn",
    ),
    "picot": ("plain, 4 cm deep, picot, added after", "wide wide on waste yarn"),
    "picot, first": ("plain, 4 cm deep, picot, knitted first", "wide wide on waste yarn"),
    "mock rib": ("plain, 4 cm deep, mock rib 2 by 1, knitted first", "wide wide on waste yarn"),
    "rolled": ("plain, 4 cm deep, rolled, added after", "wide wide on waste yarn"),
}
TOPS = {
    "rib": "rib, 3 cm deep, added after, cast off sewn",
    "plain": "plain, 3 cm deep, added after",
    "folded": "plain, 3 cm deep, folded, fold row at tension 9, inside at tension 6, added after",
    "picot": "plain, 3 cm deep, picot, added after",
    "rolled": "plain, 3 cm deep, rolled, added after",
    "chained": "plain, chained, added after",
}
FOLDED = ("folded", "folded, first", "picot", "picot, first", "mock rib")
FIRST = ("plain, first", "rib, first", "folded, first", "picot, first", "mock rib")


def source(welt: str = "rib", top: str = "rib", sizes: str = "S M", wide: str = "30 33") -> str:
    made_of, start = WELTS[welt]
    return SOURCE.format(welt=made_of, top=TOPS[top], start=start, holes=HOLES, sizes=sizes, wide=wide)


def one_size(welt: str = "rib", top: str = "rib") -> str:
    return source(welt, top, "one", "30")


def outcome(text: str) -> Outcome:
    found = made(text)
    assert found.proven, found.diagnostics
    return found


@cache
def fabrics(text: str) -> dict[str, KnitFabric]:
    found = outcome(text)
    result = bed.knit(found.works[0], bed_of(found.result()[0]))
    return {fabric.name: fabric for fabric in result.fabrics}


@pytest.mark.parametrize("welt", WELTS)
def test_a_band_goes_over_the_end_of_every_kind_of_welt(welt: str) -> None:
    found = outcome(source(welt))
    design, counts, _, _ = found.result()
    for size, garment in enumerate(counts.sizes):
        rows = garment.piece("cloth").edging_rows
        deep = rows / design.edged_in("welt").rows_per_cm
        assert deep == pytest.approx(4, abs=0.4)
        picked = garment.bands[0].pick_ups[0]
        assert (picked.edge.edge, picked.part, picked.points, picked.rows) == ("welt", "left", rows, rows)
        # In the tension of the band, by the length that the welt has in its own.
        assert picked.cm == pytest.approx(deep)
        assert picked.stitches == pytest.approx(min(deep * 40 / 13, rows), abs=1.5), size


@pytest.mark.parametrize("top", TOPS)
def test_and_over_that_of_every_edging_at_the_end(top: str) -> None:
    found = outcome(source("rib", top))
    for garment in found.result()[1].sizes:
        picked = garment.bands[0].pick_ups[-1]
        assert (picked.edge.edge, picked.part) == ("top", "left")
        assert picked.points == picked.rows == garment.piece("cloth").end_rows


@pytest.mark.parametrize("welt", WELTS)
def test_the_bed_takes_the_rows_that_are_seen_from_the_outer_edge_up_to_the_piece(welt: str) -> None:
    """The loops of the first rows hung lie at the outer edge of the welt, those of the last ones beside the piece."""
    made_of = fabrics(one_size(welt))
    home = "cloth" if welt in FIRST else "cloth welt"
    own = made_of[home]
    links = [link for link in made_of["up"].links if link.piece == home]
    places = outcome(one_size(welt)).result()[1].sizes[0].bands[0].pick_ups[0]
    links = links[: places.stitches]
    rows = [own.course_of(link.loops[0]).counter for link in links]
    # What hangs from the piece was knitted downwards; of a folded one that is knitted first the outside is.
    assert rows == sorted(rows, reverse=welt not in FIRST)
    assert len(set(rows)) == len(rows)
    assert {len(link.loops) for link in links} == ({2} if welt in FOLDED else {1})
    turned = welt in ("worn purl side out",) or welt in FIRST
    ends = {link.loops[0] for link in links} == {own.course_of(x).first_loop for link in links for x in link.loops[:1]}
    assert ends == turned, "the piece hangs with its purl side to the knitter when its first row is hung: left is right then"


@pytest.mark.parametrize("welt", FOLDED)
def test_both_layers_of_a_fold_are_taken_up_row_upon_row(welt: str) -> None:
    made_of = fabrics(one_size(welt))
    home = made_of["cloth" if welt in FIRST else "cloth welt"]
    design, counts, _, _ = outcome(one_size(welt)).result()
    rows = counts.sizes[0].piece("cloth").edging_rows
    fold = 1 if design.edging("welt").fold_tension else 0
    (edge,) = home.edge("welt left")
    assert edge.count == len(edge.points) == rows
    for outside, inside in edge.points:
        assert home.course_of(outside).counter + home.course_of(inside).counter == 2 * rows + fold + 1


def test_the_words_say_which_rows_make_the_end_and_where_it_hangs() -> None:
    text = " ".join(plain_text(outcome(source("rib")).result()[2]).split())
    assert "The outer edges from RC 0 to RC 18 are called “welt”." in text
    assert "along the left side of the cloth welt, about 3 sts for every 4 rows, from bottom to top" in text
    assert "along the right side of the cloth top" in text
    first = " ".join(plain_text(outcome(source("folded, first")).result()[2]).split())
    assert "The outer edges from RC 17 to RC 33 are called “welt”." in first
    assert "RC 33 are called “welt”. [ ] 14. Set the row counter to 000." in first.replace(" - ", " ")


def test_nothing_is_named_that_nothing_comes_to() -> None:
    alone = "\n".join(line for line in source("rib").splitlines() if not line.startswith("band"))
    assert "called “welt”" not in plain_text(outcome(alone).result()[2])


def test_buttonholes_lie_on_the_part_over_the_welt() -> None:
    for garment in outcome(source("rib")).result()[1].sizes:
        band = garment.bands[1]
        begin = band.stitches - band.pick_ups[-1].stitches
        assert band.holed == (begin, band.stitches)
        assert all(begin < hole.first + band.stitches // 2 < band.stitches for hole in band.holes)


# ----------------------------------------------------------------- what cannot be said


def test_what_is_turned_in_has_no_end_to_pick_up_along() -> None:
    text = source("rib").replace("rib, 4 cm deep, added after\n", "plain, 4 cm deep, facing, added after\n")
    assert {(d.code, d.case) for d in made(text).diagnostics} == {("no-such-edge", "turned-in")}
    band = (
        source("rib")
        .replace("edging border in rib", "edging border in plain")
        .replace("2 cm deep, added", "2 cm deep, facing, added")
    )
    band = band.replace(HOLES, "") + "band over with border along up first_end\n"
    assert [(d.code, d.case) for d in made(band).diagnostics] == [("no-such-edge", "turned-in")]


def test_the_same_edging_at_both_ends_is_told_apart() -> None:
    text = (
        source("rib")
        .replace("end with top", "end with welt")
        .replace("edging top in rib, 3 cm deep, added after, cast off sewn\n", "")
    )
    text = text.replace("cloth top_", "cloth welt_upper_")
    found = outcome(text)
    assert "along the left side of the cloth welt upper" in " ".join(plain_text(found.result()[2]).split())


def test_an_end_in_the_wrong_place_is_told_with_the_order_that_can_be_hung() -> None:
    text = source("rib").replace("cloth welt_left + cloth side_left", "cloth side_left + cloth welt_left")
    (told,) = [d for d in made(text).diagnostics if d.code == "line-not-in-order"]
    assert any("cloth welt_left + cloth side_left + cloth top_left" in str(help_) for help_ in told.helps)


def test_an_end_is_taken_up_once() -> None:
    text = source("rib") + "band again with border along cloth welt_left\n"
    assert "edge-used-twice" in [d.code for d in made(text).diagnostics]


# ----------------------------------------------------------------- damage


def _named(op: Operation, low: int, high: int) -> Operation:
    return (
        replace(op, from_row=op.from_row + low, to_row=op.to_row + high) if isinstance(op, NameEdge) and op.edge == "welt" else op
    )


@pytest.mark.parametrize(("low", "high"), [(0, -2), (2, 0), (-1, -1)])
@pytest.mark.parametrize("welt", ["rib", "plain, first", "folded", "folded, first"])
def test_other_rows_than_those_that_are_seen_are_found(welt: str, low: int, high: int) -> None:
    text = one_size(welt)
    block = "cloth" if welt in FIRST else "cloth welt"
    if welt not in FOLDED and low < 0:
        pytest.skip("there is no row before the first")
    assert caught(text, changed(work_of(text), block, lambda op: _named(op, low, high))) != set()


def test_an_end_picked_up_from_its_other_end_or_at_the_other_side_is_found() -> None:
    text = one_size("rib")

    def turned(op: Operation) -> Operation:
        return replace(op, left_end="top") if isinstance(op, PickUpEdge) and op.edge == "welt" else op

    def across(op: Operation) -> Operation:
        return replace(op, part="right") if isinstance(op, PickUpEdge) and op.edge == "welt" else op

    assert caught(text, changed(work_of(text), "up", turned)) == {"edge-lies-otherwise"}
    assert caught(text, changed(work_of(text), "up", across)) != set()


def test_a_first_row_hung_with_its_other_side_is_found() -> None:
    text = one_size("rib")

    def turned(op: Operation) -> Operation:
        return replace(op, facing="knit") if isinstance(op, Rehang) else op

    assert caught(text, changed(work_of(text), "cloth welt", turned)) != set()


def test_a_fold_that_is_not_hung_up_leaves_one_layer() -> None:
    text = one_size("folded")
    assert caught(text, changed(work_of(text), "cloth welt", lambda op: None if isinstance(op, HangFeet) else op)) != set()


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("The outer edges from RC 0 to RC 18 are called “welt”", "The outer edges from RC 0 to RC 16 are called “welt”"),
        ("left side of the cloth welt", "right side of the cloth welt"),
        ("are called “welt”", "are called “well”"),
    ],
)
def test_other_words_are_other_fabric(old: str, new: str) -> None:
    text = one_size("rib")
    printed = made(text).plain_text
    assert old in printed
    assert misread(text, printed.replace(old, new)) != set()


# ----------------------------------------------------------------- over the ends of other bands

FRONTS = """\
piece back in plain
    levels hem 0 cm, top 24 cm
    start 40 cm wide on waste yarn, with welt
    edges straight to top called side
    neck 12 cm wide, 2 cm deep, square, cast off
    end on waste yarn
piece left_front in plain
    levels hem 0 cm, throat 12 cm, top 24 cm
    start 20 cm left to 1 cm left of centre on waste yarn, with welt
    left edge straight to top called side
    right edge straight to throat called edge
    right edge slope to 6 cm from centre at top called neckline
    end on waste yarn
piece right_front in plain, mirror of left_front
join back shoulder to right_front end + left_front end
join back side to right_front side
join back side to left_front side
"""
NECK = "right_front neckline + back neck + left_front neckline"
RIGHT, LEFT = "right_front welt_left + right_front edge", "left_front edge + left_front welt_right"
ORDERS = {
    "in one": f"band all_round with border along {RIGHT} + {NECK} + {LEFT}\n",
    "neckband first": (
        f"band neckband with collar along {NECK}\n"
        f"band right_band with border along {RIGHT} + neckband first_end\n"
        f"band left_band with border along neckband last_end + {LEFT}\n"
    ),
    "fronts first": (
        f"band right_band with collar along {RIGHT}\nband left_band with collar along {LEFT}\n"
        f"band neckband with border along right_band last_end + {NECK} + left_band first_end\n"
    ),
}
COLLARS = {
    "rib": "rib, 3 cm deep, added after",
    "folded": "plain, 3 cm deep, folded, fold row at tension 9, added after",
    "chained": "plain, chained, added after",
}


def cardigan(order: str, collar: str = "rib", needles: int = 300) -> str:
    head = source("rib", "rib", "one", "30").partition("piece cloth")[0]
    head = head.replace("edging top", f"edging collar in {COLLARS[collar]}\nedging top")
    head = head.replace("machine standard", f"machine mine\n    needles {needles}\n    pitch 4.5 mm")
    return head + FRONTS + ORDERS[order]


@pytest.mark.parametrize("order", ORDERS)
@pytest.mark.parametrize("collar", COLLARS)
def test_bands_lie_along_the_ends_of_those_before_them(order: str, collar: str) -> None:
    found = outcome(cardigan(order, collar))
    design, counts, _, _ = found.result()
    picked = [pick for band in counts.sizes[0].bands for pick in band.pick_ups if pick.edge.edge.endswith(" end")]
    assert len(picked) == (0 if order == "in one" else 2)
    rows = next((band.rows for band in counts.sizes[0].bands if picked and band.name == picked[0].edge.piece), 0)
    assert all(pick.points == pick.rows == rows for pick in picked)
    assert all(pick.cm == pytest.approx(rows / design.edged_in("collar").rows_per_cm) for pick in picked)


def test_a_band_on_which_others_hang_is_parted_and_they_hang_on_its_outermost_parts() -> None:
    found = outcome(cardigan("neckband first", needles=124))
    bands = {band.name: band for band in found.result()[1].sizes[0].bands}
    assert "neckband" not in bands
    assert bands["right_band"].pick_ups[-1].edge.piece == "neckband_1"
    last = max(name for name in bands if name.startswith("neckband_"))
    assert bands["left_band"].pick_ups[0].edge.piece == last


def test_both_layers_of_a_folded_band_are_told_and_taken() -> None:
    text = cardigan("neckband first", "folded")
    printed = " ".join(plain_text(outcome(text).result()[2]).split())
    assert "What is folded is picked up through both layers, row upon row: left end of the neckband." in printed
    made_of = fabrics(text)
    links = [link for link in made_of["right_band"].links if link.piece == "neckband"]
    assert links
    assert {len(link.loops) for link in links} == {2}


@pytest.mark.parametrize(("low", "high"), [(0, -1), (1, 0), (1, 1)])
def test_other_rows_of_a_band_than_those_at_its_end_are_found(low: int, high: int) -> None:
    text = cardigan("neckband first", "folded")

    def other(op: Operation) -> Operation:
        end = isinstance(op, NameEdge) and op.edge == "first end"
        return replace(op, from_row=op.from_row + low, to_row=op.to_row + high) if end else op  # type: ignore[type-var, union-attr]

    assert caught(text, changed(work_of(text), "neckband", other)) != set()


def test_the_opening_goes_along_the_rim_of_the_band_and_its_ends() -> None:
    found = outcome(cardigan("in one"))
    assert found.fit is not None
    ring = next(ring for ring in found.fit.rings if any(p.edge == "rim" for p in ring.edges))
    assert not any("welt" in p.edge and p.owner != "back" for p in ring.edges)


def test_a_piece_is_begun_along_the_end_of_a_welt_too() -> None:
    text = source("rib").partition("band up")[0] + (
        "piece flap in plain\n    levels foot 0 cm, top 5 cm\n"
        "    start along cloth welt_left + cloth side_left\n    edges straight to top called edge\n    end cast off\n"
    )
    found = outcome(text)
    for garment in found.result()[1].sizes:
        flap = garment.piece("flap")
        assert [pick.edge.edge for pick in flap.start_pick_ups] == ["welt", "side"]
        # 4 and 20 cm, in the fabric of the flap.
        assert flap.start == pytest.approx(24 * 40 / 14, abs=2)


# ----------------------------------------------------------------- seams over welts


SEWN = """\
piece skirt in plain
    levels hem 0 cm, upper 20 cm
    start {start}, with welt
    edges straight to upper called side
    end with top
join skirt side to skirt side
"""


def sewn(welt: str, top: str = "rib", sizes: str = "one", wide: str = "30") -> str:
    return source(welt, top, sizes, wide).partition("piece cloth")[0] + SEWN.format(start=WELTS[welt][1])


@pytest.mark.parametrize("welt", WELTS)
def test_a_seam_says_how_many_rows_of_the_welt_it_goes_on_along(welt: str) -> None:
    found = outcome(sewn(welt, sizes="S M", wide="30 33"))
    _, counts, instructions, _ = found.result()
    rows, ended = counts.sizes[0].piece("skirt").edging_rows, counts.sizes[0].piece("skirt").end_rows
    printed = " ".join(plain_text(instructions).split())
    ends = f"{rows} rows of skirt welt and {ended} rows of skirt top, with "
    assert f"row for row, 80 rows, and on along the ends of {ends}" in printed
    (join,) = found.works[0].joins
    assert join.over == (("skirt", "welt", rows), ("skirt", "top", ended))


@pytest.mark.parametrize("top", TOPS)
@pytest.mark.parametrize("welt", ["rib", "folded, first"])
def test_other_rows_than_the_ends_have_are_refused(welt: str, top: str) -> None:
    text = sewn(welt, top)
    work = work_of(text)
    for number in (0, 1):
        tasks = tuple(_with_rows(task, number) for task in work.tasks)
        assert caught(text, replace(work, tasks=tasks)) == {"join-told"}
    printed = made(text).plain_text
    rows = made(text).result()[1].sizes[0].piece("skirt").edging_rows
    told = f"{rows} rows of skirt welt"
    words = " ".join(printed.split())
    assert told in words
    assert misread(text, _reworded(printed, told, f"{rows + 2} rows of skirt welt")) != set()


def _with_rows(task: Block | Join, number: int) -> Block | Join:
    if not isinstance(task, Join):
        return task
    over = tuple((*strip[:2], strip[2] + (number == n)) for n, strip in enumerate(task.over))
    return replace(task, over=over)


def _reworded(printed: str, old: str, new: str) -> str:
    """Wherever the line is broken."""
    return re.sub(r"\s+".join(map(re.escape, old.split())), new, printed)


def test_the_yarn_of_a_seam_is_for_its_welts_too() -> None:
    design = outcome(sewn("rib")).result()[0]
    along = fabrics(sewn("rib"))
    glued = outcome(sewn("rib")).glued
    assert glued is not None
    cm = seams_cm(design, glued.groups[0], along)["wool"]
    deep = along["skirt welt"].end_rows / design.edged_in("welt").rows_per_cm
    upper = outcome(sewn("rib")).result()[1].sizes[0].piece("skirt").end_rows / design.edged_in("top").rows_per_cm
    assert cm == pytest.approx(80 / 4 + deep + upper)
