"""Yarn counts as grams to 1000 m, against published definitions and conversion tables."""

from __future__ import annotations

import pytest

from tests.design.drawing import piece, plain, said, sound
from tests.design.shaped import only, understood
from walewright.design.findings import Findings
from walewright.design.reading.changes import Changes
from walewright.design.reading.counts import tex
from walewright.design.reading.regauged import changed_fabrics
from walewright.report.english import in_english
from walewright.report.model import NOWHERE
from walewright.report.said import Said
from walewright.source.syntax import YarnCount

HEAD = 'pattern "Trial"\nsizes S M\n    length 40 42 cm\nmachine bulky\n'


def grams(text: str, system: str) -> float | None:
    findings = Findings()
    found = tex(YarnCount(text, system), Said("yarn"), NOWHERE, findings)
    assert (found is None) == findings.failed
    return found


@pytest.mark.parametrize(
    ("text", "system", "grams_to_1000_m"),
    [
        ("83", "tex", 83.0),
        ("830", "dtex", 83.0),
        ("90", "denier", 10.0),
        ("1", "Nm", 1000.0),
        ("12", "Nm", 83.333),
        ("20", "Ne", 29.525),
        ("16", "NeK", 55.3625),
        ("10", "lea", 165.35),
    ],
)
def test_each_system(text: str, system: str, grams_to_1000_m: float) -> None:
    assert grams(text, system) == pytest.approx(grams_to_1000_m, abs=5e-4)


@pytest.mark.parametrize("written", ["2/24", "24/2"])
def test_two_plies_of_24_metric_are_12_metric_either_way_round(written: str) -> None:
    assert grams(written, "Nm") == pytest.approx(1000 / 12)


def test_a_published_cotton() -> None:
    # 3/2 cotton has 3 x 840 / 2 = 1260 yards to the pound: 394 tex (machine knitting teacher's notes, alessandrina.com).
    assert grams("3/2", "Ne") == pytest.approx(394, abs=0.5)


def test_plies_of_a_direct_count_add_up() -> None:
    assert grams("2/40", "tex") == 80.0
    assert grams("167/2", "dtex") == pytest.approx(33.4)


@pytest.mark.parametrize(
    ("text", "system"), [("0", "Nm"), ("2.5/28", "Nm"), ("40/30", "Nm"), ("a", "tex"), ("", "Nm"), ("0.01", "Nm")]
)
def test_what_is_no_count(text: str, system: str) -> None:
    assert grams(text, system) is None


def test_an_unknown_system_is_told_with_those_that_are_known() -> None:
    findings = Findings()
    assert tex(YarnCount("2/28", "worsted"), Said("yarn"), NOWHERE, findings) is None
    (told,) = findings.all()
    assert "NeK" in in_english(told).notes[0]


def test_a_cone_is_as_long_as_its_count_says() -> None:
    yarn = 'yarn wool "28/2 wool", 500 g of 2/28 Nm, shown "#23395d"\n'
    made, told = understood(yarn, plain(), piece(), head=HEAD)
    assert told == ()
    assert made is not None
    assert made.yarns[0].ball_metres == pytest.approx(7000)
    assert made.yarns[0].tex == pytest.approx(71.43, abs=0.01)
    assert made.yarns[0].colour == "#23395d"


def test_a_colour_that_is_none() -> None:
    yarn = 'yarn wool "wool", 100 g = 120 m, shown "#2339"\n'
    assert only(yarn, plain(), piece(), head=HEAD).code == "bad-colour"


def test_yarn_to_a_stitch_is_a_length() -> None:
    swatch = "    swatch 40 stitches by 60 rows = 20 cm by 15 cm, {} to a stitch\n"
    assert sound(plain(swatch=swatch.format("14 mm")), piece()).fabric("plain").loop_cm == pytest.approx(1.4)
    assert [d.code for d in said(plain(swatch=swatch.format("14 cm")), piece())] == ["absurd-swatch"]


def test_at_another_tension_a_loop_is_longer_by_the_root_of_a_stitchs_area() -> None:
    fabric = sound(plain(swatch="    swatch 40 stitches by 60 rows = 20 cm by 15 cm, 14 mm to a stitch\n"), piece()).fabric("plain")
    changes = Changes(tensions={"plain": "16 st 20 rows"})
    changed = changed_fabrics({"plain": fabric}, {}, changes, ("plain",), Findings())["plain"]
    assert changed is not None
    before, after = (f.loop_cm**2 * f.stitches_per_cm * f.rows_per_cm for f in (fabric, changed))
    assert after == pytest.approx(before)
