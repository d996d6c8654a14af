"""Floats longer than are left loose: found by stitches and by length, and told where the author can mend them."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.proof.charted_by_hand import DESIGN, LACE_PLACE, MOTIF_PLACE, PLACED, SIZED, garment, knitted, lace
from walewright.bed import KnitFabric
from walewright.bed.model import Float
from walewright.counted.model import SizedPiece
from walewright.proof.floats import LONGEST_CM, LONGEST_STITCHES, LongFloat, float_warnings, long_floats
from walewright.report.english import in_english
from walewright.report.model import Severity


def with_floats(*floats: Float, fabric: str = "") -> KnitFabric:
    made = knitted(lace())
    return replace(made, floats=floats, courses=tuple(replace(c, fabric=fabric) for c in made.courses))


def found(*floats: Float, fabric: str = "", sized: SizedPiece = SIZED, stitches: float = 26.0) -> tuple[LongFloat, ...]:
    design = replace(DESIGN, fabrics=tuple(replace(f, swatch_stitches=stitches) for f in DESIGN.fabrics))
    return long_floats(design, garment(sized), [with_floats(*floats, fabric=fabric)])


def test_five_stitches_are_left_and_six_are_not() -> None:
    assert found(Float(3, "navy", -4, 0)) == ()
    (long,) = found(Float(3, "navy", -4, 1))
    assert (long.found.stitches, long.found.first, long.found.last, long.found.row) == (6, "L 4", "R 2", 3)
    assert long.found.cm == pytest.approx(6 / 2.6)
    assert LONGEST_STITCHES == 5


def test_on_a_coarse_bed_the_length_counts() -> None:
    """At 13 stitches to 10 cm, 3 needles are 2.3 cm and 4 are 3.1 cm."""
    assert found(Float(3, "navy", 0, 2), stitches=13) == ()
    assert [long.found.stitches for long in found(Float(3, "navy", 0, 3), stitches=13)] == [4]
    assert LONGEST_CM == 2.5


def test_the_place_is_the_fabric_s_or_the_motif_s() -> None:
    (in_fabric,) = found(Float(3, "navy", -4, 1), fabric="lace")
    assert (in_fabric.within, in_fabric.origin) == ("lace", LACE_PLACE)
    motif = replace(PLACED, chart="spot", fabric="", area="panel", origin=MOTIF_PLACE)
    (in_motif,) = found(Float(3, "navy", -4, 1), sized=replace(SIZED, charts=(motif,)))
    assert (in_motif.within, in_motif.origin) == ("spot", MOTIF_PLACE)
    # The motif begins above row 2.
    (below,) = found(Float(2, "navy", -4, 1), sized=replace(SIZED, charts=(motif,)))
    assert below.within == "plain"


def test_one_warning_for_all_sizes_with_rows_and_needles() -> None:
    small = found(Float(3, "navy", -4, 1), Float(5, "navy", -4, 2), fabric="lace")
    (warning,) = float_warnings([("S", ()), ("M", small), ("L", small[:1])])
    assert (warning.code, warning.severity, warning.sizes) == ("long-float", Severity.WARNING, ("M", "L"))
    assert "navy floats over 7 needles" in in_english(warning).message
    assert (
        "M: cloth, 2 floats: the first at RC 2, before row 3, past needles L 4 to R 2; the last at RC 4"
        in in_english(warning).notes
    )
    assert "L: cloth, at RC 2, before row 3, past needles L 4 to R 2" in in_english(warning).notes
    assert "catch" in in_english(warning).helps[0]


def test_many_floats_of_a_row_are_counted() -> None:
    many = found(*(Float(3, "navy", at, at + 5) for at in (-40, -30, -20, -10, 0)), fabric="lace")
    assert len(many) == 1, "floats beyond the row are none of it"
    row = [replace(many[0], found=replace(many[0].found, first=f"L {at}")) for at in (5, 4, 3, 2)]
    (warning,) = float_warnings([("S", row)])
    assert (
        in_english(warning).notes[1]
        == "S: cloth, at RC 2, before row 3, past needles L 5 to R 6, L 4 to R 6, L 3 to R 6 and 1 more"
    )


def test_each_yarn_and_place_has_its_own_warning() -> None:
    floats = found(Float(3, "navy", -4, 1), Float(4, "wool", -4, 1))
    assert [in_english(w).message.split()[0] for w in float_warnings([("S", floats)])] == ["navy", "wool"]
    assert list(float_warnings([("S", ())])) == []
