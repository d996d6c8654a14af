"""The first row of a piece is taken up by an edging that is added after: what else is joined to it or hung on it is refused before
anything is knitted, and goes where the edging is knitted first."""

from __future__ import annotations

import pytest

from tests.whole.test_bands_at_random import errors, outcome_of
from walewright.report.english import in_english

SOURCE = """\
pattern "Strips"
sizes one
    wide 40 cm
machine standard
yarn wool "fingering-weight wool", 50 g = 200 m
fabric plain
    stocking stitch in wool at tension 6
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm
fabric rib
    latched rib every 2nd needle in wool at tension 4
    swatch 40 stitches by 60 rows = 13.4 cm by 13.8 cm
edging welt in rib, 4 cm deep, {when}
edging collar in rib, 3 cm deep, added after, cast off chain
piece strip in plain, knit 2
    levels hem 0 cm, top 30 cm
    start wide wide {start}, with welt
    edges straight to top called side
    end cast off
free strip side + strip end
"""
AFTER = SOURCE.format(when="added after, cast off chain", start="on waste yarn")
FIRST = SOURCE.format(when="knitted first", start="with chain")
USES = (
    "join strip start to strip start\n",
    "join strip start to strip end\n",
    "band more with collar along strip start\n",
    "piece flap in plain, knit 2\n    levels foot 0 cm, end_level 10 cm\n    start along strip start\n"
    "    edges straight to end_level\n    end cast off\n",
)


@pytest.mark.parametrize("use", USES)
def test_what_needs_the_start_again_is_refused_at_its_line(use: str) -> None:
    outcome = outcome_of(AFTER + use)
    (told,) = errors(outcome)
    assert (told.code, told.case) == ("edge-used-twice", "edged")
    assert [AFTER.count("\n", 0, label.span.start) for label in told.labels][1] == 15
    (piece_help,) = in_english(told).helps
    assert "`welt` be `knitted first`" in piece_help


@pytest.mark.parametrize("use", USES)
def test_it_goes_where_the_edging_is_knitted_first(use: str) -> None:
    outcome = outcome_of(FIRST + use)
    assert outcome.proven, errors(outcome)


def test_a_seam_that_stops_at_the_welt_is_no_use_of_the_start() -> None:
    outcome = outcome_of(AFTER.replace("free strip side + strip end", "join strip side to strip side") + "free strip end\n")
    assert outcome.proven, errors(outcome)
