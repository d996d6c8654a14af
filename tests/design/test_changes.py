"""A knitter's changes: sizes, tensions and measurements beside the source."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from walewright.design import Changes
from walewright.design.changes import read_tension
from walewright.source.syntax import Binary, Let, Name, Number

Read = Callable[..., Any]


def test_a_size_alone(read: Read) -> None:
    design, told = read(changes=Changes(sizes=("M",)))
    assert told == ()
    assert design.sizes == ("M",)
    assert design.measurements[1].values == (54.0,)
    assert design.pieces[0].start_width == (48.0,)


def test_sizes_keep_the_order_of_the_header(read: Read) -> None:
    assert read(changes=Changes(sizes=("M", "S")))[0].sizes == ("S", "M")


def test_a_tension_is_a_swatch_of_ten_centimetres_with_its_weight_by_area(read: Read) -> None:
    design, told = read(changes=Changes(tensions={"plain": "17 st 24 rows"}))
    assert told == ()
    fabric = design.fabric("plain")
    assert (fabric.stitches_per_cm, fabric.rows_per_cm) == (1.7, 2.4)
    # The author's swatch is 20 cm by 15 cm and weighs 30 g: a tenth of a gram to the square centimetre.
    assert fabric.swatch_grams == pytest.approx(10.0)


def test_a_tension_changes_what_stitches_measure(read: Read) -> None:
    let = Let("half", Number(96, "stitches"))
    assert read(let=let)[0].pieces[0].start_width == (48.0, 48.0)
    design, _ = read(let=Let("half", Number(96, "stitches")), changes=Changes(tensions={"plain": "20 st, 24 rows"}))
    assert design.pieces[0].start_width == (48.0, 48.0)
    design, _ = read(let=let, changes=Changes(tensions={"plain": "19.2 sts by 24 rows"}))
    assert design.pieces[0].start_width == pytest.approx((50.0, 50.0))


def test_own_measurements_stand_for_rows_and_lets_and_what_follows_from_them(read: Read) -> None:
    follows = Let("quarter", Binary("/", Name("half"), Number(2)))
    design, told = read(follows, changes=Changes(measures={"bust": "41 in", "half": "60 cm"}))
    assert told == ()
    assert design.measurements[0].values == pytest.approx((104.14, 104.14))
    assert design.measurements[0].to_fit
    assert design.measurements[0].source == ""
    assert design.pieces[0].start_width == (60.0, 60.0)


@pytest.mark.parametrize(
    ("changes", "code", "option"),
    [
        (Changes(sizes=("XXL",)), "unknown-size", "--size"),
        (Changes(sizes=()), "unknown-size", "--size"),
        (Changes(tensions={"lace": "17 st 24 rows"}), "unknown-name", "--tension lace"),
        (Changes(tensions={"plain": "17 by 24"}), "bad-tension", "--tension plain"),
        (Changes(tensions={"plain": "24 rows 17 st"}), "bad-tension", "--tension plain"),
        (Changes(tensions={"plain": "0 st 24 rows"}), "bad-tension", "--tension plain"),
        (Changes(tensions={"plain": "17 cm 24 rows"}), "bad-tension", "--tension plain"),
        (Changes(measures={"waist": "80 cm"}), "unknown-name", "--measure waist"),
        (Changes(measures={"bust": "wide"}), "bad-measure", "--measure bust"),
        (Changes(measures={"bust": "104"}), "bad-measure", "--measure bust"),
        (Changes(measures={"bust": "104 rows"}), "bad-measure", "--measure bust"),
        (Changes(measures={"bust": "104 ell"}), "bad-measure", "--measure bust"),
        (Changes(measures={"bust": "10 m"}), "bad-measure", "--measure bust"),
        (Changes(measures={"half": "3 rows"}), "bad-measure", "--measure half"),
        (Changes(measures={"half": "9" * 400 + " cm"}), "bad-measure", "--measure half"),
    ],
)
def test_what_cannot_be_used_is_told_with_its_option(read: Read, changes: Changes, code: str, option: str) -> None:
    design, (said,) = read(changes=changes)
    assert design is None
    assert said.code == code
    assert option in said.message
    assert said.labels == ()


@pytest.mark.parametrize(
    ("text", "tension"),
    [
        ("17 st 24 rows", (17.0, 24.0)),
        ("17.5 stitches by 24 rows", (17.5, 24.0)),
        ("17st,24rows", (17.0, 24.0)),
        ("17 st", None),
        ("17 st 24 rows to 10 cm", None),
        ("900 st 24 rows", None),
    ],
)
def test_texts_of_tension(text: str, tension: tuple[float, float] | None) -> None:
    assert read_tension(text) == tension
