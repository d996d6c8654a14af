"""Limits of floats, tucks, cables and bobbins: published, or common practice; pieces within and beyond them are compiled."""

from __future__ import annotations

import pytest

from tests.outside.worked import INCH, knitted, proven
from tests.outside.worked import compiled as plain_compiled
from walewright.knit.operations import Cross, Drop
from walewright.pipeline import Outcome

SECOND = 'yarn navy "navy", 100 g = 200 m\n'

CHARTED = """
fabric charted
    chart figure in wool at tension 5, centred, 4 edge stitches
    swatch {stitches:g} stitches by {rows:g} rows = 10 cm by 10 cm, 10 g

piece panel in charted
    levels hem 0 cm, top {high} rows
    start 60 stitches wide with e-wrap
    end cast off
"""


def compiled(chart: str, stitches: float = 28, rows: float = 40, bed: str = "fine", high: int = 40) -> Outcome:
    body = f"\n{SECOND}\n{chart}\n{CHARTED.format(stitches=stitches, rows=rows, high=high)}"
    return plain_compiled(body, stitches, rows, bed)


def floating(past: int, stitches: float, bed: str = "fine") -> Outcome:
    """Rows of wool in which every so many and one needle is knitted in navy, which floats past the others."""
    chart = f"""
chart figure
    key . knit
    key N knit in navy
    | {". " * (past + 1)}|
    | N {". " * past}|
    repeat {past + 1} stitches
"""
    outcome = compiled(chart, stitches, 40, bed)
    assert outcome.proven, [(d.code, d.message, d.notes) for d in outcome.diagnostics]
    longest = max(run.needles for run in knitted(outcome, "panel").floats if run.yarn == "navy")
    assert longest == past
    return outcome


def told(outcome: Outcome) -> list[str]:
    assert outcome.proof is not None
    assert bool(outcome.proof.sizes[0].floats) == ("long-float" in [d.code for d in outcome.diagnostics])
    return [d.message for d in outcome.diagnostics if d.code == "long-float"]


def test_the_longest_float_in_stitches() -> None:
    """Source: http://alessandrina.com/category/machine-knitting/fair-isle/: 5 stitches is the usual recommendation. At 40 stitches
    to 10 cm, where 6 are far from an inch."""
    assert told(floating(5, 40)) == []
    (message,) = told(floating(6, 40))
    assert "6 needles" in message


def test_the_longest_float_in_length() -> None:
    """Source: https://zpag.net/Artisanat/patterns/english/length_of_floats.htm: 1 in, so fewer stitches on a coarse bed. Four
    stitches that are a twentieth less than an inch, and a twentieth more."""
    assert told(floating(4, 40 / (INCH * 0.95))) == []
    assert len(told(floating(4, 40 / (INCH * 1.05)))) == 1


def test_six_is_long_on_a_bulky_bed() -> None:
    """Source: https://machineknittingmonthly.net/helpline/float-on/: a float over six is long on a bulky bed. At 13 stitches to
    10 cm it is beyond both limits."""
    (message,) = told(floating(6, 13, "bulky"))
    assert "6 needles (4.6 cm)" in message


def tucked(rows: int) -> Outcome:
    drawn = "\n".join(["    | . . . . |"] * 2 + ["    | . T . . |"] * rows + ["    | . . . . |"])
    chart = f"chart figure\n    key . knit\n    key T tuck\n{drawn}\n    repeat 4 stitches\n"
    return compiled(chart, high=6 * (rows + 3))


@pytest.mark.parametrize(("rows", "possible"), [(2, True), (4, True), (6, False)])
def test_rows_tucked_on_a_needle(rows: int, possible: bool) -> None:
    """Source: http://fastlane.ojolly.net/2012/09/the-good-tuck.html?m=1: limited by the hook; the number, 2 to 4 rows, is common
    practice."""
    outcome = tucked(rows)
    assert outcome.proven == possible
    assert ("tuck-too-long" in [d.code for d in outcome.diagnostics]) == (not possible)
    if possible:
        # A stitch is drawn through its own loop and the bars of all those rows; a chain's through one loop.
        assert {len(more) for more in knitted(outcome, "panel").more_parents.values()} == {1, rows}


def crossed(over: int, beside: str) -> Outcome:
    """A cable with a column beside it."""
    cells = {kind: f"    | . {beside} {f'{kind} ' * (2 * over)}{beside} . |" for kind in ".C"}
    keys = f"    key . knit\n    key - purl\n    key C cross {over} over {over}, left first\n"
    drawn = "\n".join([cells["C"], *[cells["."]] * 7])
    return compiled(f"chart figure\n{keys}{drawn}\n    repeat {2 * over + 4} stitches\n")


@pytest.mark.parametrize(("over", "beside", "possible"), [(2, ".", True), (3, ".", False), (3, "-", True)])
def test_cables_wide_enough_to_need_slack(over: int, beside: str, possible: bool) -> None:
    """Common practice: from three over three on, a wale beside a crossing is let down first."""
    outcome = crossed(over, beside)
    assert outcome.proven == possible
    assert ("cross-without-slack" in [d.code for d in outcome.diagnostics]) == (not possible)
    if possible:
        assert knitted(outcome, "panel").crosses
        operations = next(b for b in outcome.works[0].blocks if b.name == "panel").operations
        first = next(i for i, op in enumerate(operations) if isinstance(op, Cross))
        assert any(isinstance(op, Drop) for op in operations[:first]) == (over >= 3)


def test_tails_of_bobbins() -> None:
    """Common practice: 10 to 15 cm and more to darn in, and a tenth more than reckoned. A swatch of 28 by 40 stitches that weighs
    10 g of 200 m to 100 g has 20 m in it: the yarn in one stitch, and so in a block of known size, follows."""
    outcome = proven(
        f"""
{SECOND}
chart square
    key . knit
    key N knit in navy
{chr(10).join(["    | . N N N N N N N N N N . |"] * 20)}
    colours laid in blocks

piece panel in plain
    levels hem 0 cm, low 10 rows, top 60 rows
    start 60 stitches wide with e-wrap
    motif square at low
    end cast off
"""
    )
    assert outcome.proof is not None
    block = next(b for b in outcome.proof.sizes[0].bobbins if b.yarn == "navy")
    stitches = 10 * 20 * 20.0 / (28 * 40)
    tail = (block.metres / 1.10 - stitches) / 2
    assert 0.10 <= tail <= 0.20
