"""Fabrics at a knitter's tension: what is given, what is reckoned from it, and what is left."""

from __future__ import annotations

import pytest

from tests.design.shaped import HEAD, SHIPPED, piece
from walewright.design import Changes, understand
from walewright.design.model import Design
from walewright.report.english import in_english
from walewright.report.model import Diagnostic, Severity
from walewright.source import read

WEIGHED = HEAD.replace("20 cm by 15 cm", "20 cm by 15 cm, 12 g")
COTTON = """\
yarn cotton "cotton", 50 g = 110 m
yarn navy "navy wool", 100 g = 300 m
fabric trim
    stocking stitch in cotton at tension 5
    swatch 40 stitches by 60 rows = 20 cm by 20 cm
fabric border
    stocking stitch in navy at tension 4
    swatch 40 stitches by 60 rows = 20 cm by 15 cm
"""
BODY = piece("fabric trim from low to middle", "fabric border from middle to high", "fabric rib from high to top")


def regraded(changes: Changes) -> tuple[Design, tuple[Diagnostic, ...]]:
    """A piece in plain, cotton trim, navy border and rib; plain has 2 stitches and 4 rows to the centimetre and weighs 12 g."""
    tree, unread = read("trial.wale", "\n".join((WEIGHED, COTTON, BODY)))
    assert unread == ()
    design, told = understand(tree, SHIPPED, changes)
    assert design is not None, told
    return design, tuple(d for d in told if d.code != "unused-name")


def test_a_tension_keeps_the_block_and_says_what_it_measures() -> None:
    fabric = regraded(Changes(tensions={"plain": "16 st 36 rows"}))[0].fabric("plain")
    assert (fabric.stitches_per_cm, fabric.rows_per_cm) == (1.6, pytest.approx(3.6))
    assert (fabric.swatch_stitches, fabric.swatch_rows) == (40, 60)
    assert (fabric.swatch_width_cm, fabric.swatch_height_cm) == (25.0, pytest.approx(60 / 3.6))
    # As many loops, each longer by the root of the area: 25 by 16.67 cm for 20 by 15.
    assert fabric.swatch_grams == pytest.approx(12 * (25 * 60 / 3.6 / 300) ** 0.5)
    assert fabric.basis == "given, not weighed"


def test_other_fabrics_of_the_yarn_change_in_the_same_ratio() -> None:
    design, _ = regraded(Changes(tensions={"plain": "16 st 36 rows"}))
    rib = design.fabric("rib")
    assert (rib.stitches_per_cm, rib.rows_per_cm) == pytest.approx((2.5 * 16 / 20, 5 * 36 / 40))
    assert (rib.basis, rib.reckoned_from, rib.start_dial) == ("reckoned", "plain", True)


def test_another_colour_of_the_yarn_changes_too_and_another_yarn_is_named() -> None:
    design, (said,) = regraded(Changes(tensions={"plain": "16 st 36 rows"}))
    assert design.fabric("border").stitches_per_cm == pytest.approx(1.6)
    assert design.fabric("trim").stitches_per_cm == 2.0
    assert design.fabric("trim").basis == "source"
    assert said.code == "tension-not-yours"
    assert said.severity is Severity.WARNING
    assert "`trim`" in in_english(said).message
    assert "`border`" not in in_english(said).message


def test_a_fabric_that_is_given_is_not_reckoned() -> None:
    changes = Changes(tensions={"plain": "16 st 36 rows", "rib": "24 st 50 rows", "trim": "18 st 30 rows"})
    design, told = regraded(changes)
    assert told == ()
    assert (design.fabric("rib").stitches_per_cm, design.fabric("rib").basis) == (2.4, "given")
    assert design.fabric("border").reckoned_from == "plain"


def test_a_fabric_follows_the_one_with_its_own_stitch() -> None:
    design, _ = regraded(Changes(tensions={"rib": "20 st 40 rows", "plain": "22 st 44 rows"}))
    assert design.fabric("border").reckoned_from == "plain"
    assert design.fabric("border").stitches_per_cm == pytest.approx(2.2)


def test_nothing_given_changes_nothing() -> None:
    design, told = regraded(Changes())
    assert told == ()
    assert {f.basis for f in design.fabrics} == {"source"}
    assert not any(f.start_dial for f in design.fabrics)
    assert [y.label for y in design.yarns] == ["wool", "cotton", "navy wool"]


def test_a_swatch_as_measured() -> None:
    design, _ = regraded(Changes(swatches={"plain": "50 st 70 rows 30 cm 20 cm 41 g"}))
    plain = design.fabric("plain")
    assert (plain.swatch_stitches, plain.swatch_rows, plain.swatch_width_cm, plain.swatch_height_cm) == (50, 70, 30, 20)
    assert (plain.swatch_grams, plain.basis) == (41, "given")
    assert design.fabric("rib").stitches_per_cm == pytest.approx(2.5 * (50 / 30) / 2)
    unweighed = regraded(Changes(swatches={"plain": "50 st 70 rows 30 cm 20 cm"}))[0].fabric("plain")
    # 3500 loops for 2400, each longer by the root of the area of a stitch.
    area = (30 * 20 / 3500) / (20 * 15 / 2400)
    assert unweighed.swatch_grams == pytest.approx(12 * 3500 / 2400 * area**0.5)
    assert unweighed.basis == "given, not weighed"


def test_a_yarn_of_ones_own_weighs_by_its_ball() -> None:
    design, told = regraded(
        Changes(yarns={"wool": "my wool, 50 g = 300 m"}, tensions={"plain": "20 st 40 rows", "trim": "20 st 30 rows"})
    )
    wool = next(y for y in design.yarns if y.name == "wool")
    assert (wool.label, wool.ball_grams, wool.ball_metres) == ("my wool", 50, 300)
    assert design.fabric("plain").swatch_grams == pytest.approx(6)
    # Navy is as thick as the source's wool, not as the knitter's: it cannot be reckoned from it.
    assert [d.code for d in told] == ["tension-not-yours"]
    assert "`border`" in in_english(told[0]).message


def test_a_yarn_without_a_tension_is_warned_of() -> None:
    _, told = regraded(Changes(yarns={"cotton": "thick cotton, 50 g = 75 m"}))
    assert [d.code for d in told] == ["tension-not-yours"]
    assert "`trim`" in in_english(told[0]).message
    assert "(option --yarn cotton)" in in_english(told[0]).message


def test_the_same_yarn_in_other_balls_is_no_other_yarn() -> None:
    assert regraded(Changes(yarns={"cotton": "cotton, 100 g = 220 m"}))[1] == ()


def test_a_dial_given_alone_leaves_the_other_numbers_as_a_start() -> None:
    design, _ = regraded(Changes(dials={"plain": "6"}))
    assert {f.name: (f.tension, f.start_dial) for f in design.fabrics} == {
        "plain": ("6", False),
        "rib": ("4", True),
        "trim": ("5", True),
        "border": ("4", True),
    }
    as_it_is, _ = regraded(Changes(dials={"plain": "4"}))
    assert not any(f.start_dial for f in as_it_is.fabrics)


def test_a_dial_is_the_knitters_or_a_start() -> None:
    design, _ = regraded(Changes(tensions={"plain": "16 st 36 rows"}, dials={"plain": "6", "trim": "4.."}))
    plain, trim, rib = (design.fabric(n) for n in ("plain", "trim", "rib"))
    assert (plain.tension, plain.start_dial) == ("6", False)
    assert (trim.tension, trim.start_dial) == ("4..", False)
    assert (rib.tension, rib.start_dial) == ("4", True)


def test_a_yarn_at_another_tension_is_not_called_by_its_name_alone() -> None:
    named = {y.name: y.label for y in regraded(Changes(tensions={"plain": "16 st 36 rows"}))[0].yarns}
    assert named == {"wool": "yarn like wool", "cotton": "cotton", "navy": "yarn like navy wool"}
    own = Changes(tensions={"plain": "16 st 36 rows"}, yarns={"wool": "wool, 50 g = 150 m"})
    assert next(y.label for y in regraded(own)[0].yarns if y.name == "wool") == "wool"
