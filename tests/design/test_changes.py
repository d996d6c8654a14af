"""A knitter's changes: sizes, measurements and beds beside the source."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from tests.design.shaped import HEAD, SHIPPED, piece
from walewright.design import Changes, malformed, understand_all
from walewright.design.model import Design
from walewright.design.reading.called import folded, meant
from walewright.design.reading.given import (
    TensionCounts,
    read_bed,
    read_count,
    read_dial,
    read_measure,
    read_swatch,
    read_tension,
    read_yarn,
)
from walewright.report.english import in_english
from walewright.report.model import Diagnostic
from walewright.source import read as read_source
from walewright.source.syntax import Binary, Let, MachineBlock, MachineFact, Name, Number

Read = Callable[..., Any]


def copy(changes: Changes, head: str = HEAD) -> tuple[Design | None, tuple[Diagnostic, ...]]:
    """What a garment of one piece means with some changes."""
    tree, unread = read_source("trial.wale", f"{head}\n{piece()}")
    assert unread == ()
    return understand_all(tree, SHIPPED, changes)


def test_a_size_alone(read: Read) -> None:
    design, told = read(changes=Changes(sizes=("M",)))
    assert told == ()
    assert design.sizes == ("M",)
    assert design.measurements[1].values == (54.0,)
    assert design.pieces[0].start_width == (48.0,)


def test_sizes_keep_the_order_of_the_header(read: Read) -> None:
    assert read(changes=Changes(sizes=("M", "S")))[0].sizes == ("S", "M")


def test_a_tension_changes_what_stitches_measure(read: Read) -> None:
    let = Let("half", Number(96, "stitches"))
    assert read(let=let)[0].pieces[0].start_width == (48.0, 48.0)
    design, _ = read(let=Let("half", Number(96, "stitches")), changes=Changes(tensions={"plain": "20 st, 24 rows"}))
    assert design.pieces[0].start_width == (48.0, 48.0)
    design, _ = read(let=let, changes=Changes(tensions={"plain": "19.2 sts by 24 rows"}))
    assert design.pieces[0].start_width == pytest.approx((50.0, 50.0))


def test_own_measurements_stand_for_rows_and_what_follows_from_them(read: Read) -> None:
    half = Let("half", Binary("/", Name("bust"), Number(2)))
    design, told = read(let=half, changes=Changes(measures={"bust": "41 in"}))
    assert told == ()
    assert design.measurements[0].values == pytest.approx((104.14, 104.14))
    assert design.measurements[0].to_fit
    assert design.measurements[0].credit is None
    assert design.pieces[0].start_width == pytest.approx((52.07, 52.07))


def test_what_was_given_stands_beside_the_source(read: Read) -> None:
    half = Let("half", Binary("-", Name("length"), Number(6, "cm")))
    design, _ = read(let=half, changes=Changes(measures={"length": "60 cm"}, tensions={"plain": "17 st 24 rows"}))
    given = {(g.kind, g.name): g for g in design.given}
    assert set(given) == {("measure", "length"), ("tension", "plain")}
    assert given["measure", "length"].own_cm == 60.0
    assert given["measure", "length"].source_cm == (52.0, 54.0)
    assert (given["tension", "plain"].own, given["tension", "plain"].source) == ("17 st 24 rows", "20 st 40 rows")
    assert read()[0].given == ()


def test_a_row_that_moves_no_stitch_is_named(read: Read) -> None:
    design, (said,) = read(changes=Changes(measures={"Bust": "100 cm"}))
    assert design is not None
    assert said.code == "given-for-nothing"
    assert in_english(said).message.endswith("`bust` (option --measure Bust)")


# ----------------------------------------------------------------- what follows is not given


def test_a_let_is_refused_with_the_rows_that_it_follows_from(read: Read) -> None:
    half = Let("half", Binary("/", Name("bust"), Number(2)))
    quarter = Let("quarter", Binary("+", Binary("/", Name("half"), Number(2)), Name("length")))
    design, (said,) = read(quarter, let=half, changes=Changes(measures={"quarter": "30 cm"}))
    assert design is None
    assert said.code == "worked-out-measure"
    assert in_english(said).message.endswith("(option --measure quarter)")
    assert in_english(said).notes == ("it follows from `bust`, `length`",)


def test_a_let_that_follows_from_nothing_says_so(read: Read) -> None:
    _, (said,) = read(changes=Changes(measures={"half": "30 cm"}))
    assert (said.code, in_english(said).notes) == ("worked-out-measure", ("it is the same for every body",))


def test_a_row_goes_before_a_let_that_reads_alike(read: Read) -> None:
    half = Let("half", Binary("/", Name("bust"), Number(2)))
    design, told = read(Let("bust_", Number(4, "cm")), let=half, changes=Changes(measures={"Bust": "100 cm"}))
    assert told == ()
    assert design.measurements[0].values == (100.0, 100.0)


# ----------------------------------------------------------------- names as the page prints them


@pytest.mark.parametrize("typed", ["12_months", "12 months", "12-Months", " 12 MONTHS "])
def test_a_size_is_named_as_the_page_prints_it(typed: str) -> None:
    head = HEAD.replace("sizes S M", "sizes 6_months 12_months")
    design, told = copy(Changes(sizes=(typed,)), head)
    assert told == ()
    assert design is not None
    assert design.sizes == ("12_months",)


def test_a_row_is_named_as_its_table_or_a_page_calls_it() -> None:
    head = HEAD.replace("    length 40 42 cm\n", "    length 40 42 cm\n    reach from women centre_back_neck_to_wrist\n")
    described = (SHIPPED.tables, SHIPPED.machines, SHIPPED.shapes)
    shipped = type(SHIPPED)(*described, '[centre_back_neck_to_wrist]\nname = "back neck to wrist"\nabout = "over the shoulder"\n')
    tree, _ = read_source("trial.wale", f"{head}\n{piece()}")
    for typed in ("reach", "Reach", "back neck to wrist", "centre back neck to wrist"):
        design, _ = understand_all(tree, shipped, Changes(measures={typed: "80 cm"}))
        assert design is not None
        assert {m.name: m.values for m in design.measurements}["reach"] == (80.0, 80.0), typed
        assert next(m for m in design.measurements if m.name == "reach").about == "over the shoulder"


def test_names_that_could_be_two_are_not_guessed() -> None:
    known: dict[str, tuple[str, ...]] = {"Neck": (), "neck": (), "neck_edge": ("collar",), "hem": ("collar",)}
    assert meant("neck", known) == ("neck",)
    assert meant("NECK", known) == ("Neck", "neck")
    assert meant("collar", known) == ("neck_edge", "hem")
    assert meant("neck edge", known) == ("neck_edge",)
    assert folded(" Neck - Edge ") == "neck_edge"


def test_one_thing_under_two_names_is_given_twice(read: Read) -> None:
    _, (said,) = read(changes=Changes(measures={"length": "60 cm", "Length": "61 cm"}))
    assert said.code == "given-twice"


# ----------------------------------------------------------------- the bed


def test_a_shipped_bed_and_its_facts() -> None:
    design, told = copy(Changes(bed="standard, needles=180"))
    assert told == ()
    assert design is not None
    assert (design.machine.name, design.machine.needles, design.machine.pitch_mm) == ("standard", 180, 4.5)
    assert [(g.kind, g.source) for g in design.given] == [("bed", "100 needles, 8 mm apart")]


def test_facts_alone_stand_for_those_of_the_source() -> None:
    design, _ = copy(
        Changes(bed="needles=120"), HEAD.replace("machine bulky\n", "machine bulky\n    needles 110\n    prongs 1 2 7\n")
    )
    assert design is not None
    assert (design.machine.needles, design.machine.pitch_mm, design.machine.prongs) == (120, 8.0, (1, 2, 7))


def test_a_bed_that_a_file_describes() -> None:
    own = MachineBlock("mine", (MachineFact("needles", (Number(140),)), MachineFact("pitch", (Number(6.5, "mm"),))))
    design, told = copy(Changes(own_bed=own))
    assert told == ()
    assert design is not None
    assert (design.machine.name, design.machine.needles, design.machine.pitch_mm) == ("mine", 140, 6.5)


# ----------------------------------------------------------------- what cannot be used


@pytest.mark.parametrize(
    ("changes", "code", "option"),
    [
        (Changes(sizes=("XXL",)), "unknown-size", "--size"),
        (Changes(sizes=()), "unknown-size", "--size"),
        (Changes(tensions={"lace": "17 st 24 rows"}), "unknown-name", "--tension lace"),
        (Changes(tensions={"plain": "17 by 24"}), "bad-tension", "--tension plain"),
        (Changes(tensions={"plain": "24 rows 17 st"}), "bad-tension", "--tension plain"),
        (Changes(tensions={"plain": "0 st 24 rows"}), "bad-tension", "--tension plain"),
        (Changes(tensions={"plain": "900 st 24 rows"}), "bad-tension", "--tension plain"),
        (Changes(tensions={"plain": "17 cm 24 rows"}), "bad-tension", "--tension plain"),
        (Changes(swatches={"plain": "40 st 60 rows"}), "bad-swatch", "--swatch plain"),
        (Changes(swatches={"plain": "40 st 60 rows 2 cm 30 cm 20 g"}), "absurd-swatch", "--swatch plain"),
        (Changes(swatches={"plain": "40 st 60 rows 20 cm 0 cm 20 g"}), "not-positive", "--swatch plain"),
        (Changes(measures={"waist": "80 cm"}), "unknown-name", "--measure waist"),
        (Changes(measures={"bust": "wide"}), "bad-measure", "--measure bust"),
        (Changes(measures={"bust": "104"}), "bad-measure", "--measure bust"),
        (Changes(measures={"bust": "104 rows"}), "bad-measure", "--measure bust"),
        (Changes(measures={"bust": "104 ell"}), "bad-measure", "--measure bust"),
        (Changes(measures={"bust": "10 m"}), "bad-measure", "--measure bust"),
        (Changes(measures={"bust": "0 cm"}), "bad-measure", "--measure bust"),
        (Changes(yarns={"silk": "silk, 50 g = 200 m"}), "unknown-name", "--yarn silk"),
        (Changes(yarns={"wool": "silk"}), "bad-ball", "--yarn wool"),
        (Changes(yarns={"wool": "silk, 50 cm = 200 m"}), "wrong-unit", "--yarn wool"),
        (Changes(dials={"lace": "4"}), "unknown-name", "--dial lace"),
        (Changes(dials={"plain": "4 5"}), "bad-dial", "--dial plain"),
        (Changes(bed="bulkie"), "unknown-name", "--bed"),
        (Changes(bed="needles=181"), "odd-needles", "--bed"),
        (Changes(bed="needles=18000"), "bad-machine-fact", "--bed"),
        (Changes(bed="pitch"), "unknown-name", "--bed"),
        (Changes(bed="pitch=wide"), "bad-bed", "--bed"),
    ],
)
def test_what_cannot_be_used_is_told_with_its_option(read: Read, changes: Changes, code: str, option: str) -> None:
    design, (said,) = read(changes=changes)
    assert design is None
    assert said.code == code
    assert in_english(said).message.endswith(")")
    assert f"(option {option}" in in_english(said).message
    assert said.labels == ()


def test_what_is_beyond_a_bed_says_the_limit(read: Read) -> None:
    _, (said,) = read(changes=Changes(tensions={"plain": "17 st 240 rows"}))
    assert "240 rows" in in_english(said).message
    assert in_english(said).notes == ("a bed knits 3 to 100 rows to 10 cm",)


@pytest.mark.parametrize(
    ("typed", "close"),
    [("lenght", "`length` is close"), ("buts", "`bust` is close")],
)
def test_a_misspelt_name_is_helped(read: Read, typed: str, close: str) -> None:
    _, (said,) = read(changes=Changes(measures={typed: "60 cm"}))
    assert in_english(said).helps == (close,)


def test_malformed_texts_are_found_without_a_source() -> None:
    changes = Changes(tensions={"plain": "17"}, measures={"bust": "104 cm", "hip": "wide"}, dials={"plain": "6"}, bed="a b")
    assert [d.code for d in malformed(changes)] == ["bad-measure", "bad-tension", "bad-bed"]
    # What reads may still be impossible: that is asked with the source at hand.
    assert malformed(Changes(tensions={"plain": "900 st 24 rows"}, bed="needles=181")) == ()


@pytest.mark.parametrize(
    ("text", "tension"),
    [
        ("17 st 24 rows", TensionCounts(17.0, 24.0)),
        ("17.5 stitches by 24 rows", TensionCounts(17.5, 24.0)),
        ("17st,24rows", TensionCounts(17.0, 24.0)),
        ("17 st", None),
        ("17 st 24 rows to 10 cm", None),
        ("24 rows 17 st", None),
        ("17 st 24 rows 3 g", None),
    ],
)
def test_texts_of_tension(text: str, tension: TensionCounts | None) -> None:
    assert read_tension(text) == tension


def test_texts_of_swatches() -> None:
    swatch = read_swatch("40 st 60 rows = 9.25 in by 210 mm, 28 g")
    assert swatch is not None
    assert (swatch.width.value, swatch.height.value) == pytest.approx((23.495, 21.0))
    assert swatch.weight is not None
    assert swatch.weight.value == 28
    assert read_swatch("40 st 60 rows 20 cm 21 cm") is not None
    for text in (
        "40 st 60 rows 20 cm",
        "60 rows 40 st 20 cm 21 cm",
        "40 st 60 rows 20 cm 21 cm 3 g 4 g",
        "40 st 60 rows 20 cm 21 cm light",
    ):
        assert read_swatch(text) is None, text


def test_texts_of_yarns_dials_lengths_and_beds() -> None:
    yarn = read_yarn("soft wool, undyed, 50 g = 120 m")
    assert yarn is not None
    assert (yarn.label, yarn.weight, yarn.length) == ("soft wool, undyed", Number(50, "g"), Number(120, "m"))
    counted = read_yarn("500 g of 2/28 Nm")
    assert counted is not None
    assert counted.label is None
    assert counted.count is not None
    assert (counted.count.text, counted.count.system) == ("2/28", "Nm")
    for text in (
        "wool",
        ", 50 g = 120 m",
        "wool, 50 g",
        "wo\x1bol, 50 g = 120 m",
        "wool, 50 g = 120 m more",
        "w" * 200 + ", 50 g = 1 m",
    ):
        assert read_yarn(text) is None, text
    assert [read_dial(t) for t in ("6", " 4.5 ", "4..", "T", "", "4 5")] == ["6", "4.5", "4..", "T", None, None]
    assert [read_count(t) for t in ("7", "4 st", "12 rows", "80 %", "7 cm", "7 buttons", "", "many")] == [
        Number(7.0, None),
        Number(4.0, "st"),
        Number(12.0, "rows"),
        Number(80.0, "%"),
        *[None] * 4,
    ]
    assert [read_measure(t) for t in ("104 cm", "1.04 m", "10 in", "104", "4 st")] == [104, 104, 25.4, None, None]
    bed = read_bed("standard, needles=180, prongs=1 2 7, pitch = 4.5 mm")
    assert bed is not None
    assert bed.name == "standard"
    assert [(f.key, len(f.values)) for f in bed.facts] == [("needles", 1), ("prongs", 3), ("pitch", 1)]
    for text in ("", "a b", "standard, wide", "needles=", "needles=a lot", "=4"):
        assert read_bed(text) is None, text
