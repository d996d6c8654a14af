"""Odd but reasonable uses of charts, from source to proof: each is proven, or refused by a code that names what is in the way."""

from __future__ import annotations

import pytest

from tests.whole.garment import SHIPPED
from walewright.design import Changes
from walewright.pipeline import compile
from walewright.report.model import Severity

GROUND = """
pattern "Odd"
sizes S L
    length 40 46 cm
    half 40 46 cm
machine standard
yarn wool "wool", 100 g = 300 m
yarn navy "navy wool", 100 g = 300 m
fabric plain
    stocking stitch in wool at tension 6
    swatch 40 stitches by 60 rows = 14 cm by 15 cm
fabric rib
    latched rib every 3rd needle in wool at tension 6
    swatch 40 stitches by 60 rows = 14 cm by 15 cm
fabric stripy
    stripes of 3 rows wool, 2 rows navy at tension 6
    swatch 40 stitches by 60 rows = 14 cm by 15 cm
""".lstrip()

CHARTS = {
    "lace": "key . knit\nkey O hole\nkey / two from left\n| . O / . . . |\n| . . . . . . |\nrepeat 6 stitches",
    "odd_rows": "key . knit\nkey O hole\nkey / two from left\n| . . . . |\n| . O / . |\n| . . . . |\nrepeat 4 stitches",
    "one_row": "key . knit\nkey O hole\nkey / two from left\n| . O / . |\nrepeat 4 stitches",
    "one_column": "key - purl\n| - |\n| - |\nrepeat 1 stitch",
    "tuck": "key . knit\nkey t tuck\n| t . |\n| t . |\n| . t |\n| . t |\nrepeat 2 stitches",
    "rope": "key . knit\nkey - purl\nkey C cross 3 over 3, left first\n"
    + "| - . . . . . . - |\n" * 3
    + "| - C C C C C C - |\n"
    + "| - . . . . . . - |\n" * 2
    + "repeat 8 stitches",
    "rope_last": "key . knit\nkey - purl\nkey C cross 2 over 2, left first\n| - C C C C - |\n"
    + "| - . . . . - |\n" * 3
    + "repeat 6 stitches",
    "dots": "key . knit\nkey n knit in navy\n| n . . . |\n| . . n . |\nrepeat 4 stitches",
    "fish": "key . knit\nkey n knit in navy\n| . . n n . . |\n"
    "| . n n n n . |\n| n n n n n n |\n| . n n n n . |\ncolours laid in blocks",
    "wide": "key . knit\nkey O hole\nkey / two from left\n| . O / " + ". " * 130 + "|\n| " + ". " * 133 + "|\nrepeat 133 stitches",
}


def source(chart: str, fit: str, lines: str, fabric: str = "plain", end: str = "end cast off") -> str:
    """A piece with the fabric `figured` made from a chart, and these statements in it."""
    drawn = CHARTS[chart].replace("\n", "\n    ")
    made = f"chart {chart}\n    {drawn}\n"
    if "colours laid in blocks" not in drawn:
        swatch = "swatch 40 stitches by 60 rows = 14 cm by 15 cm"
        made += f"fabric figured\n    chart {chart} in wool at tension 6{fit and f', {fit}'}\n    {swatch}\n"
    levels = "levels hem 0 cm, low 6 cm, mid 15 cm, high 25 cm, tip length - 3 cm, top length"
    body = "".join(f"    {line.strip()}\n" for line in lines.split(";") if line.strip())
    return f"{GROUND}{made}piece back in {fabric}\n    {levels}\n    start half wide with e-wrap\n{body}    {end}\n"


OPEN = "end cast off"
NECK = "shoulders held from tip; neck 15 cm wide, 8 cm deep, round, cast off"
RAGLAN = "edges straight to mid; edges slope to 10 cm wide at top, fashioned 2 in"
FOUR = "centred, 4 edge stitches"


@pytest.mark.parametrize("depth", ["7.75 cm", "8 cm", "8.25 cm", "8.5 cm", "8.75 cm", "9 cm"])
def test_ropes_go_on_in_both_parts_wherever_the_neck_begins(depth: str) -> None:
    slit = "opening slit 6 cm wide from low to mid, cast off"
    assert refusals(source("rope", FOUR, f"{slit}; neck 15 cm wide, {depth} deep, round, cast off", "figured")) == []


@pytest.mark.parametrize(
    "text",
    [
        *(source(c, FOUR, NECK, "figured", OPEN) for c in ("lace", "odd_rows", "one_column", "tuck", "rope", "rope_last", "dots")),
        source("lace", "whole repeats, 3 edge stitches", RAGLAN, "figured"),
        source("odd_rows", "balanced, 2 edge stitches", "fabric figured from low to mid; fabric stripy from mid to high"),
        source(
            "rope",
            "",
            "fabric figured from low to tip, 2 repeats wide, 11 cm left of centre; neck 15 cm wide, 8 cm deep, v",
        ),
        source("rope_last", "centred, 1 edge stitch", "", "figured", "end cast off sewn"),
        source("tuck", "centred, 1 edge stitch", "", "figured", "end gathered"),
        source("one_column", "whole repeats, 1 edge stitch", "", "figured"),
        source("fish", "", "motif fish at mid, 12 cm left of centre; neck 15 cm wide, 30.5 cm deep, v", "plain", OPEN),
        source("lace", "centred, 2 edge stitches", "", "stripy"),
    ],
)  # fmt: skip
def test_proven(text: str) -> None:
    assert refusals(text) == []


@pytest.mark.parametrize(
    ("text", "code"),
    [
        (source("one_row", FOUR, "", "figured"), "holes-meet"),
        (source("wide", "centred, 1 edge stitch", "", "figured"), "repeat-wider-than-piece"),
        (source("lace", "centred, 1 edge stitch", NECK, "figured", OPEN), "edge-stitches-too-few"),
        (source("lace", FOUR, "slot pocket 12 cm wide at mid, cast off", "figured"), "patterns-clash"),
        (source("rope", FOUR, "fabric figured from low to top, 2 repeats wide; fabric rib from hem to mid"), "patterns-clash"),
        (source("rope", FOUR, "fabric figured from low to top, 2 repeats wide", "stripy"), "patterns-clash"),
        (source("rope", FOUR, "fabric figured from low to top, 40 repeats wide"), "beyond-the-edge"),
        (source("fish", "", "motif fish at high; fabric stripy from mid to top"), "patterns-clash"),
        (source("fish", "", "motif fish at mid, 19.5 cm right of centre"), "beyond-the-edge"),
    ],
)
def test_refused(text: str, code: str) -> None:
    assert code in refusals(text)


def refusals(text: str) -> list[str]:
    """The codes of the errors, each of which points into the source and says how to mend it; none for what is proven."""
    outcome = compile(text, "odd.wale", SHIPPED, Changes())
    errors = [d for d in outcome.diagnostics if d.severity is Severity.ERROR]
    assert bool(errors) != outcome.proven
    for error in errors:
        assert error.helps, error
        assert all(text[label.span.start : label.span.end].strip() for label in error.labels), error
    return [error.code for error in errors]
