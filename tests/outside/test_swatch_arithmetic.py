"""Published worked examples of swatch arithmetic, through expressions, swatches and a knitter's tension."""

from __future__ import annotations

import pytest

from tests.outside.worked import SHIPPED
from walewright.design import Changes
from walewright.design.findings import Findings
from walewright.design.model import Fabric, Origin, Yarn
from walewright.design.reading.given import read_tension
from walewright.design.reading.materials import fabric
from walewright.design.reading.places import AmountPlace
from walewright.design.reading.units import STITCHES
from walewright.design.reading.values import Scope
from walewright.pipeline import compile
from walewright.report.english import in_english
from walewright.report.said import said
from walewright.source import syntax
from walewright.source.syntax import Binary, Call, Number

YARN = Yarn("wool", "wool", 100, 120, Origin("yarn wool"))


def knitted(stitches: float, rows: float, width: float, height: float, unit: str = "cm") -> Fabric:
    """A fabric with that swatch, read as a source's swatch line is."""
    block = syntax.Swatch(Number(stitches, "stitches"), Number(rows, "rows"), Number(width, unit), Number(height, unit))
    findings = Findings()
    made = fabric(syntax.FabricBlock("plain", (syntax.Stitch("stocking stitch", "wool", "4"), block)), {"wool": YARN}, {}, findings)
    assert findings.all() == ()
    assert made is not None
    return made


def stitches(cloth: Fabric, width: float, unit: str = "cm") -> float:
    return across(cloth, Number(width, unit)) * cloth.stitches_per_cm


def rows(cloth: Fabric, height: float, unit: str = "cm") -> float:
    findings = Findings()
    height_cm = AmountPlace(Scope(findings, ("M",), {}, {}), findings, cloth).up(Number(height, unit), said("height"))
    assert height_cm is not None
    return height_cm[0] * cloth.rows_per_cm


def across(cloth: Fabric, expression: syntax.Expr) -> float:
    findings = Findings()
    width = AmountPlace(Scope(findings, ("M",), {}, {}), findings, cloth).across(expression, said("width"))
    assert width is not None
    return width[0]


def worked(expression: syntax.Expr) -> float:
    value = Scope(Findings(), ("M",), {}, {}).value(expression)
    assert value is not None
    assert value.dimension == STITCHES
    return value.amounts[0]


def test_width_to_stitches() -> None:
    """Source: online knitting handbook, chapter on tension, http://studioknits.com/bookpage22.htm: 22 stitches to 10 cm are 2.2 to
    the cm; 40 cm are 88 stitches, 90 with two for the seams."""
    cloth = knitted(22, 30, 10, 10)
    assert cloth.stitches_per_cm == pytest.approx(2.2)
    assert stitches(cloth, 40) == pytest.approx(88)
    assert across(cloth, Number(90, "stitches")) == pytest.approx(40 + 2 / 2.2)


def test_body_width_and_length_to_the_underarm() -> None:
    """Source: http://designyourownsweater.blogspot.com/2007/01/set-in-sleeves.html: 28 stitches and 40 rows to 10 cm; 62 cm are
    173.6 stitches, 64 cm less an armhole of 26 cm are 152 rows."""
    cloth = knitted(28, 40, 10, 10)
    assert stitches(cloth, 62) == pytest.approx(173.6)
    assert rows(cloth, 64 - 26) == pytest.approx(152)


def test_width_to_needles_in_inches() -> None:
    """Source: https://annsroost.wordpress.com/writing-a-pattern-from-a-schematic/: 6.26 stitches to the inch and 22 in come to
    138 needles (the product is 137.72)."""
    cloth = knitted(62.6, 80, 10, 10, "in")
    assert stitches(cloth, 22, "in") == pytest.approx(137.72)
    assert round(stitches(cloth, 22, "in")) == 138


def test_a_marked_machine_swatch() -> None:
    """Source: http://machineknitting101.blogspot.com/2008/09/how-to-measure-swatch.html: a block of 40 stitches by 60 rows reads
    30 stitches and 39 rows to 10 cm, so it is 13.3 cm wide and 15.4 cm high."""
    cloth = knitted(40, 60, 13.3, 15.4)
    assert round(cloth.stitches_per_cm * 10) == 30
    assert round(cloth.rows_per_cm * 10) == 39
    tension = read_tension("30 st 39 rows")
    assert tension is not None
    assert (round(40 / tension.stitches * 10, 1), round(60 / tension.rows * 10, 1)) == (13.3, 15.4)


def test_armhole_rows() -> None:
    """Source: https://knittingkonrad.com/2014/04/09/sheknitsheknits-a-kal2-with-kristen-konrad-3/: 34 rows to 10 cm and an
    armhole of 20 cm are 68 rows."""
    assert rows(knitted(24, 34, 10, 10), 20) == pytest.approx(68)


@pytest.mark.parametrize(("written", "own"), [(100, 112.5), (7, 7.875), (24, 27)])
def test_stitches_at_another_tension(written: float, own: float) -> None:
    """Source: http://www.cara4webshopping.com/convert_patterns.html: from 8 stitches and 15 rows to the inch to 9 and 12, stitches
    are multiplied by 1.125: 100, 7 and 24 stitches become 112.5, 7.875 and 27; 7.875 are made 8."""
    in_language = Binary("*", Number(written, "stitches"), Binary("/", Number(9, "stitches"), Number(8, "stitches")))
    assert worked(in_language) == pytest.approx(own)
    assert worked(Call("round", (in_language, Number(1, "stitch")))) == int(own + 0.5)


def test_a_much_thicker_yarn() -> None:
    """Source: http://www.knittinghelp.com/forum/showpost.php?p=411292&postcount=6: a pattern at 30 stitches to 4 in, knitted at 19:
    the factor is 0.633, and 114 stitches become 72.2, made 72."""
    factor = Binary("/", Number(19, "stitches"), Number(30, "stitches"))
    exact = Binary("*", Number(114, "stitches"), factor)
    assert worked(exact) == pytest.approx(72.2)
    assert worked(Call("round", (exact, Number(1, "stitch")))) == 72


SHEET = """pattern "Sheet"

sizes one
    figure 10 cm

machine wide
    needles 300
    pitch 4.5 mm
    prongs 1 2 3
    waste rows 8

yarn wool "wool", 100 g = 200 m

fabric plain
    stocking stitch in wool at tension 5
    swatch 8 stitches by 15 rows = 1 in by 1 in

piece sheet in plain
    levels hem 0 cm, wide 10 / 15 * 1 in, top 100 / 15 * 1 in
    start 100 / 8 * 1 in wide with e-wrap
    edges straight to wide
    edges slope to 124 / 8 * 1 in wide at top, fashioned 2 in
    end cast off
"""


@pytest.mark.parametrize(
    ("tension", "widths", "heights"),
    [(None, {100}, (10, 100)), (f"{9 / 0.254:.4f} st {12 / 0.254:.4f} rows", {112, 113}, (8, 80))],
    ids=["as written", "as knitted"],
)
def test_a_piece_at_another_tension(tension: str | None, widths: set[int], heights: tuple[int, int]) -> None:
    """Source: http://www.cara4webshopping.com/convert_patterns.html: from 8 stitches and 15 rows to the inch to 9 and 12: 100
    stitches become 112.5, made 112 or 113; 24 become 27; 10 rows become 8."""
    outcome = compile(SHEET, "sheet.wale", SHIPPED, Changes(tensions={"plain": tension} if tension else {}))
    assert outcome.proven, [(d.code, in_english(d).message) for d in outcome.diagnostics]
    assert outcome.counts is not None
    piece = outcome.counts.sizes[0].piece("sheet")
    assert piece.start in widths
    assert (piece.row("wide"), piece.rows) == heights
    made = outcome.results[0].fabrics[0]
    assert made.stitches_at(piece.rows) - made.stitches_at(1) == pytest.approx(27 if tension else 24, abs=1)
