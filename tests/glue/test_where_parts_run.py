"""Where each part of a band that is knitted in parts is said to run: by an edge, a piece, or from one place to another."""

from __future__ import annotations

import re

import pytest

from tests.fit.test_needed import LONG
from tests.glue.test_parted import HUNG
from tests.solve.test_band_places import jacket
from tests.whole.shipped_once import source
from walewright import languages, pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.glue.model import runs_along
from walewright.report.said import Said

ABOVE = "    right edge straight to half called edge\n    right edge straight to throat called above\n"


def said_of(runs: Said | None) -> str:
    if runs is None:
        return ""
    facts = {name: said_of(fact) if isinstance(fact, Said) else str(fact) for name, fact in runs.facts}
    match runs.key:
        case "runs/to":
            return f"{facts['first']} to {facts['last']}"
        case "runs/centre":
            return f"centre of {facts['piece']}"
        case "runs/within":
            return f"within {facts['piece']} {facts['edge']}"
        case _:
            return " ".join(facts.values())


def runs(text: str) -> list[str]:
    made = pipeline.counted(text, "parts.wale", shipped(), Changes())
    assert made.design is not None
    assert made.glued is not None, made.diagnostics
    (glued,) = made.glued.groups
    return [said_of(runs_along(made.design, glued, band)) for band in made.design.bands]


@pytest.mark.parametrize(
    ("front", "needles", "calls", "parts"),
    [
        # Whole; in two at the middle of a square neck; at the seams and names; within an edge that is too long by itself.
        (40, 180, "", [""]),
        (40, 130, "", ["right_front to centre of back", "centre of back to left_front"]),
        (60, 60, ABOVE, ["right_front", "right_front to left_front", "left_front"]),
        (
            100,
            60,
            "",
            [
                "right_front to within right_front edge",
                "within right_front edge to right_front",
                "right_front to left_front",
                "left_front to within left_front edge",
                "within left_front edge to left_front",
            ],
        ),
        # A neck alone on its part is called by its name, and so is an edge.
        (60, 62, "", ["right_front edge", "right_front to left_front", "left_front edge"]),
    ],
)
def test_a_part_is_told_by_where_it_begins_and_ends(front: int, needles: int, calls: str, parts: list[str]) -> None:
    assert runs(jacket(front, needles, "", calls).text) == parts


def told(text: str, language: str = "english") -> list[str]:
    """What the printed words say of each part of the band; they are read back."""
    made = pipeline.compile(text, "parts.wale", shipped(), Changes(), languages.printed(language))
    assert made.proven, made.diagnostics
    words = " ".join((made.plain_text or "").replace("\N{NO-BREAK SPACE}", " ").split())
    return re.findall(r"(?:Part|Stück) \d (?:of|von) \d (?:of the|von) [^:]*: ([^.]*)\.", words)


def test_a_part_along_one_whole_edge_is_told_by_that_alone() -> None:
    fronts = jacket(60, 62).text
    across = "from the neckline of the right front to the neckline of the left front"
    # What hangs on one piece is knitted first.
    assert told(fronts) == ["along the edge of the right front", "along the edge of the left front", across]
    assert told(fronts, "german")[0] == "entlang rechtes Vorderteil Kante"
    assert told(LONG.format(copies=""))[0] == "along one stretch of the one of the scarf"
    assert told(source("whimbrel"))[1] == "along the neck of the back"


def test_the_centre_of_a_v_is_its_foot() -> None:
    """It has no stitches there, so that the parts meet between its two edges."""
    square = "neck 16 cm wide, 2 cm deep, square"
    text = jacket(40, 130).text
    assert square in text
    found = runs(text.replace(square, "neck 16 cm wide, 9 cm deep, v"))
    assert found == ["right_front to centre of back", "centre of back to left_front"]


def test_a_part_along_one_edge_of_another_piece_is_told_by_that() -> None:
    """Parted at both shoulder seams: along each front, with its welt, and along the neck of the back."""
    assert runs(source("whimbrel")) == ["right_front", "back neck", "left_front"]


@pytest.mark.parametrize("copies", ["", ", knit 2"])
def test_parts_within_one_edge_are_told_from_its_end_to_within_it(copies: str) -> None:
    assert runs(LONG.format(copies=copies)) == ["scarf to within scarf one", "within scarf one to scarf"]


def test_a_part_along_both_edges_of_a_piece_runs_to_no_centre() -> None:
    """Only the two sides of an opening meet at the centre of a piece."""
    text = HUNG.format(along="cape one + hood face_left + hood face_right + cape other", free="cape start")
    text = text.replace(
        "    left edge straight to crown called face\n    right edge straight to crown called nape\n",
        "    edges straight to crown called face\n",
    )
    assert runs(f"{text}join hood end to hood end\n") == ["cape one", "hood", "cape other"]
