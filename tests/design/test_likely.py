"""Swatch, ball and weight checked against each other: what cannot be true together is told at the author's line, once."""

from __future__ import annotations

import pytest

from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import understand
from walewright.design.reading.changes import Changes
from walewright.report.english import in_english
from walewright.report.model import Diagnostic, Severity
from walewright.source import read
from walewright.world import shipped_names, shipped_text

SOURCE = """pattern "Scarf"
sizes one
    length 60 cm
machine bulky
yarn wool "chunky wool", 100 g = 120 m
fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g
piece scarf in plain
    levels bottom 0 cm, top length
    start 24 cm wide with e-wrap
    end cast off
"""
UNLIKELY = ("unlikely-swatch", "unlikely-yarn")


def told(text: str) -> list[Diagnostic]:
    return [d for d in pipeline.compile(text, "scarf.wale", shipped(), Changes()).diagnostics if d.code in UNLIKELY]


@pytest.mark.parametrize(
    ("before", "after", "code", "line"),
    [
        (", 62 g", ", 620 g", "unlikely-swatch", 8),
        (", 62 g", ", 6.2 g", "unlikely-swatch", 8),
        (", 62 g", ", 140 g", "unlikely-swatch", 8),
        (", 62 g", ", 300 mm to a stitch", "", 8),
        (", 62 g", ", 90 mm to a stitch", "unlikely-swatch", 8),
        ("120 m", "120 mm", "unlikely-yarn", 5),
        ("120 m", "120 cm", "unlikely-yarn", 5),
        ("120 m", "9000 m", "unlikely-yarn", 5),
        ("100 g = 120 m", "1000 g = 12 m", "unlikely-yarn", 5),
    ],
)
def test_it_is_told_once_at_the_author_s_line(before: str, after: str, code: str, line: int) -> None:
    found = told(SOURCE.replace(before, after))
    if not code:
        # Told as impossible, not as unlikely.
        assert found == []
        return
    (one,) = found
    assert (one.code, one.severity) == (code, Severity.WARNING)
    text = SOURCE.replace(before, after)
    assert text.count("\n", 0, one.labels[0].span.start) + 1 == line
    assert in_english(one).helps


def test_metres_are_proposed_where_millimetres_are_written() -> None:
    (one,) = told(SOURCE.replace("120 m", "120 mm"))
    assert "`120 m`" in in_english(one).helps[0]
    assert "0.12 m" in in_english(one).message


def test_what_is_to_be_expected_is_told_in_the_author_s_units() -> None:
    (one,) = told(SOURCE.replace(", 62 g", ", 620 g"))
    assert "about 60 g" in in_english(one).message


def test_a_yarn_of_several_swatches_is_told_once() -> None:
    second = "fabric loose\n    stocking stitch in wool at tension 6\n    swatch 40 stitches by 60 rows = 33 cm by 35 cm, 62 g\n"
    text = SOURCE.replace(
        "piece scarf",
        f"{second}piece other in loose\n    levels bottom 0 cm, top length\n    "
        "start 24 cm wide with e-wrap\n    end cast off\npiece scarf",
    )
    assert told(text) == []
    (one,) = told(text.replace("120 m", "120 mm"))
    assert len(one.labels) == 3


@pytest.mark.parametrize("tension", ["9 st 12 rows", "20 st 30 rows"])
def test_a_knitter_s_own_tension_is_not_the_author_s_mistake(tension: str) -> None:
    outcome = pipeline.compile(SOURCE, "scarf.wale", shipped(), Changes(tensions={"plain": tension}))
    assert [d for d in outcome.diagnostics if d.code in UNLIKELY] == []


@pytest.mark.parametrize("name", shipped_names("patterns", suffix=".wale"))
def test_the_shipped_swatches_can_be_true(name: str) -> None:
    tree, _ = read(name, shipped_text("patterns", name))
    _, diagnostics = understand(tree, shipped(), Changes())
    assert [d for d in diagnostics if d.code in UNLIKELY] == []
