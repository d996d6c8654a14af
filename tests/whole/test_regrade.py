"""Any tension, any bed: a proven pattern, or a diagnostic that is true. Never a traceback, never a wrong pattern."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as hs

from tests.draws import draws, few_of
from tests.whole.garment import BEDS, SHIPPED, proven_or_true, regraded, tidewrack
from tests.whole.shipped_once import source
from walewright.design import Changes
from walewright.pipeline import compile, from_design
from walewright.report.english import in_english
from walewright.report.model import Severity
from walewright.solve.conflict.changed import changed

STITCHES = (10, 11.5, 13, 14.5, 16, 17.5, 19, 21, 23.5, 26)
ROWS = (14, 15.5, 17, 18.5, 20, 21.5, 23, 24.5, 26, 27.5, 29, 30.5, 32, 33, 34, 35, 36, 37, 38.5, 40)
"""Ten by twenty: the grid of 200 tensions, to 10 cm, each on every bed in the smallest, a middle and the largest size."""

ENDS = ("XS", "L", "4X")
DRAWN_IN = None if draws(100) == 100 else ENDS
"""Sizes of the patterns that are drawn at random: all of them in a campaign."""


FEW = (STITCHES[0], STITCHES[4], STITCHES[-1])
CORNERS = [
    (bed, stitches, (ROWS[1], ROWS[-2])[(turn + one + other) % 2])
    for turn in range(2)
    for one, bed in enumerate(BEDS)
    for other, stitches in enumerate(FEW)
]
"""All with all others: the first half has each of two with each other."""


@pytest.mark.parametrize("corner", few_of(CORNERS, len(BEDS) * len(FEW)), ids=lambda corner: "-".join(map(str, corner)))
def test_corners_of_the_grid_of_tensions(corner: tuple[str, float, float]) -> None:
    bed, stitches, rows = corner
    proven_or_true(regraded(stitches, rows, bed, sizes=ENDS), stitches, rows, bed)


@pytest.mark.campaign
@pytest.mark.parametrize("bed", BEDS)
@pytest.mark.parametrize("stitches", STITCHES)
def test_grid_of_tensions(bed: str, stitches: float) -> None:
    for rows in ROWS:
        proven_or_true(regraded(stitches, rows, bed, sizes=ENDS), stitches, rows, bed)


def test_the_grid_has_both_proven_patterns_and_refusals() -> None:
    for stitches, rows, bed, found in (
        (13, 18.5, "bulky", "proven"),
        (26, 40, "bulky", "wider-than-bed"),
        (26, 40, "fine", "proven"),
    ):
        assert proven_or_true(regraded(stitches, rows, bed, sizes=ENDS), stitches, rows, bed) == found


def test_helps_that_are_followed_lead_to_a_proven_pattern() -> None:
    refused = regraded(26, 40, "bulky", sizes=("XS",))
    told = [d for d in refused.diagnostics if d.severity is Severity.ERROR]
    assert told
    assert refused.design is not None
    narrower = changed(refused.design, [change for d in told for change in d.changes[0]])
    assert narrower is not None
    assert from_design(replace(refused, design=narrower, diagnostics=())).proven
    assert not from_design(replace(refused, diagnostics=())).proven


def test_simple_increases_at_the_carriage_side_are_proven_too() -> None:
    simple = tidewrack().replace(", fashioned 2 in", "")
    outcome = compile(simple, "tidewrack.wale", SHIPPED, Changes(sizes=ENDS))
    assert outcome.proven, [in_english(d).message for d in outcome.diagnostics]
    assert "at the carriage side" in outcome.plain_text.split("Sleeve (knit 2)")[1]


def test_a_height_gives_way_before_a_width() -> None:
    """The sleeve of one size could be a stitch too narrow at its widest, or its rows further off than they need be: every width
    is within a stitch here."""
    outcome = regraded(11.40625, 15, "bulky", {"bust": "71.0 cm", "length": "50.0 cm"})
    assert proven_or_true(outcome, 11.40625, 15, "bulky") == "proven"


@settings(max_examples=draws(25), deadline=None, suppress_health_check=list(HealthCheck))
@given(
    stitches=hs.floats(10, 26),
    rows=hs.floats(14, 40),
    bed=hs.sampled_from(sorted(BEDS)),
    bust=hs.floats(71, 158),
    length=hs.floats(50, 80),
)
def test_any_tension_body_and_bed(stitches: float, rows: float, bed: str, bust: float, length: float) -> None:
    outcome = regraded(stitches, rows, bed, {"bust": f"{bust:.1f} cm", "length": f"{length:.1f} cm"}, DRAWN_IN)
    if outcome.proven:
        proven_or_true(outcome, stitches, rows, bed)
    else:
        # Another body may break the pattern's own requirements too; every refusal still has to say how to mend it.
        assert outcome.diagnostics
        assert all(in_english(d).helps for d in outcome.diagnostics if d.severity.value == "error")


def test_no_size_is_too_tight_for_the_form_that_it_shares() -> None:
    """The neck of the smaller size is shorter in the form that both sizes have in common, and a head does not go through."""
    tension = "20.3 st 44 rows"
    both = compile(
        source("shoal"), "shoal.wale", SHIPPED, Changes(("6_years", "8_years"), {"plain": tension, "stripes": tension}, {})
    )
    assert both.proven
    assert [d.code for d in both.diagnostics] == ["sizes-not-graded"]


def test_a_size_that_is_too_tight_by_itself_is_refused_with_the_others_as_they_are() -> None:
    text = source("shoal").replace(
        "neck        17      17      18    18.5     19.5", "neck        17      17      18    14     19.5"
    )
    found = compile(text, "shoal.wale", SHIPPED, Changes(("8_years", "10_years"), {}, {}))
    assert not found.proven
    assert [(d.code, d.sizes) for d in found.diagnostics] == [("too-tight", ("8_years",))]


def test_a_seam_does_not_go_on_along_what_is_knitted_after_it() -> None:
    """At this tension the neckband has two parts, and the straps are sewn down before its second one is picked up."""
    tensions = {"plain": "25.810 st 30.319 rows", "rib": "27.753 st 32.768 rows"}
    found = compile(source("halyard"), "halyard.wale", SHIPPED, Changes(("M",), tensions, {}))
    assert found.proven, [in_english(d).message for d in found.diagnostics]
    assert "neckband 2" in (found.plain_text or "").replace("\N{NO-BREAK SPACE}", " ")
