"""Sources that the bed cannot knit as they stand are told of at the author's line, or are knitted: never refused by the bed."""

from __future__ import annotations

import pytest

from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.pipeline import Outcome, compile
from walewright.report.english import in_english
from walewright.report.model import Severity

HEAD = """\
pattern "Trial"
sizes one
    length 40 cm
machine standard
yarn wool "wool", 100 g = 200 m
fabric plain
    stocking stitch in wool at tension 5
    swatch 28 stitches by 40 rows = 10 cm by 10 cm, 10 g
edging collar in plain, 3 cm deep, added after, cast off chain
"""


def made(*lines: str, more: str = "", start: str = "30 cm wide with e-wrap", end: str = "cast off", head: str = "") -> Outcome:
    block = ("levels hem 0 cm, low 10 cm, middle 20 cm, high 30 cm, top length", f"start {start}", *lines, f"end {end}")
    text = HEAD + f"piece body in plain{head}\n" + "".join(f"    {line}\n" for line in block) + more
    return compile(text, "trial.wale", shipped(), Changes())


def errors(outcome: Outcome) -> list[str]:
    return [d.code for d in outcome.diagnostics if d.severity is Severity.ERROR]


@pytest.mark.parametrize(
    ("width", "head", "stitches"), [("1 st", "", 2), ("0.1 cm", "", 2), ("3 st", "", 4), ("1 st", ", centre stitch", 1)]
)
def test_a_narrow_start_keeps_a_stitch(width: str, head: str, stitches: int) -> None:
    outcome = made("edges slope to 20 cm wide at top", start=f"{width} wide with e-wrap", head=head)
    assert outcome.proven
    assert outcome.counts is not None
    assert outcome.counts.sizes[0].pieces[0].start == stitches


@pytest.mark.parametrize("width", ["1 st", "0.1 cm", "3 st"])
def test_a_piece_as_narrow_as_a_cord_is_none(width: str) -> None:
    assert errors(made(start=f"{width} wide with e-wrap")) == ["too-small"]


def test_rows_over_the_whole_width_join_the_parts_of_an_opening_before_a_neck() -> None:
    """The neck's parting is rounded to rows: it comes no nearer than two to where the opening ends."""
    outcome = made(
        "opening slit 2 cm wide from low to high, cast off", "neck 10 cm wide, 9.9 cm deep, round, cast off", end="cast off"
    )
    assert errors(outcome) == []
    assert outcome.proven
    assert outcome.counts is not None
    slit, neck = outcome.counts.sizes[0].pieces[0].openings
    assert neck.row - slit.to_row >= 2


@pytest.mark.parametrize(
    ("lines", "more", "code"),
    [
        (("edges cast off 3 cm then slope to 10 cm wide at top",), "", "cast-off-at-start"),
        (("right edge cast off 3 cm then straight to top",), "", "cast-off-at-start"),
        (("opening a 2 cm wide from low to middle", "opening b 2 cm wide from middle to high"), "", "openings-touch"),
        ((), "join body start to body start, linked\n", "joined-to-itself"),
        ((), "join body start to body end, linked\njoin body end to body start, linked\n", "edge-used-twice"),
        (("slot a 5 cm wide at low, on waste yarn",), "band a_band with collar along body a + body a\n", "line-not-in-order"),
    ],
)
def test_it_is_told_at_the_line(lines: tuple[str, ...], more: str, code: str) -> None:
    outcome = made(*lines, more=more)
    assert errors(outcome) == [code]
    (found,) = (d for d in outcome.diagnostics if d.severity is Severity.ERROR)
    assert found.labels[0].span.file == "trial.wale"
    assert in_english(found).helps


def test_parts_are_not_gathered() -> None:
    assert errors(made("neck 10 cm wide, 5 cm deep, round", end="gathered")) == ["gathered-in-parts"]


HALVES = "opening slit 4 cm wide from high to top, cast off"
COLLAR = """piece flap in plain, knit 2
    levels seam 0 cm, rim 4 cm
    start 11 cm wide along body shoulder
    edges straight to rim
    end cast off
"""


@pytest.mark.parametrize("end", ["cast off", "on waste yarn"])
@pytest.mark.parametrize("head", ["", ", knit 2"])
@pytest.mark.parametrize("opening", [HALVES, "neck 12 cm wide, 6 cm deep, round, cast off"])
def test_a_band_along_two_shoulders_is_told_and_two_bands_are_knitted(opening: str, head: str, end: str) -> None:
    told = made(opening, end=end, head=head, more="band rim with collar along body shoulder\n")
    assert errors(told) == ["band-up-both-sides"]
    bands = "".join(f"band rim_{side} with collar along body shoulder_{side}\n" for side in ("left", "right"))
    assert made(opening, end=end, head=head, more=bands).proven


def test_copies_begun_along_two_shoulders_are_told_and_two_pieces_are_knitted() -> None:
    assert errors(made(HALVES, more=COLLAR)) == ["start-on-both-sides"]
    each = (
        COLLAR.replace(", knit 2", "").replace("flap", f"{s}_flap").replace("shoulder", f"shoulder_{s}") for s in ("left", "right")
    )
    assert made(HALVES, more="".join(each)).proven


def test_a_band_up_one_side_across_the_top_and_down_the_other_is_knitted() -> None:
    flap = """piece flap in plain
    levels hem 0 cm, top 14 cm
    start 16 cm wide with e-wrap
    edges straight to top called side
    end cast off
band rim with collar along flap side + flap end + flap side, buttonholes 3 over 2 stitches, 1 cm first, 1 cm last
"""
    outcome = compile(HEAD + flap, "trial.wale", shipped(), Changes())
    assert errors(outcome) == []
    assert outcome.counts is not None
    (band,) = outcome.counts.sizes[0].bands
    assert [(p.edge.edge, p.part) for p in band.pick_ups] == [("side", "left"), ("end", "whole"), ("side", "right")]
    assert band.pick_ups[0].stitches == band.pick_ups[2].stitches
