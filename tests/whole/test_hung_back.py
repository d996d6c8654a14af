"""Loops hung back on other needles, also where that comes to nothing in some size; an opening that parts without a stitch
between."""

from __future__ import annotations

from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes

FRAME = """\
pattern "Hung back"
sizes S M
    wide 20 24 cm
machine standard
yarn wool "wool", 50 g = 150 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 20 cm by 15 cm
"""

ACROSS = """\
piece front in plain
    levels hem 0 cm, yoke 20 cm, top 30 cm
    start 20 cm wide with e-wrap
    edges straight to yoke
    across to wide wide at yoke
    edges straight to top
    end cast off
"""

POINTED = """\
piece front in plain
    levels hem 0 cm, top 40 cm
    start wide wide with e-wrap
    neck 10 cm wide, 12 cm deep, v, 1 stitch flat, fashioned 2 in, cast off
    end cast off
free front neck
"""


def proven(text: str) -> list[str]:
    """What is reported of a source, all of whose sizes are knitted and read back."""
    made = pipeline.compile(FRAME + text, "hung.wale", shipped(), Changes())
    assert made.proven, [(d.code, d.facts) for d in made.diagnostics]
    return [d.code for d in made.diagnostics]


def test_loops_that_have_as_many_needles_already_stay_there() -> None:
    """In size S the piece is as wide as before; in size M it gets 8 stitches more."""
    assert proven(ACROSS) == []


def test_the_edges_below_may_be_led_in_unlike_numbers_of_parts() -> None:
    parts = """    edges straight to yoke
"""
    assert parts in ACROSS
    for first, other in (("left", "right"), ("right", "left")):
        unlike = f"""    {first} edge straight to low
    {first} edge slope by 2 cm at yoke
    {other} edge slope by 1 cm at yoke
"""
        levels = ACROSS.replace("yoke 20 cm", "low 10 cm, yoke 20 cm").replace(parts, unlike)
        assert proven(levels.replace("across to wide", "across to wide + 10 cm")) == []


def test_an_opening_of_one_stitch_in_an_even_number_begins_as_a_point() -> None:
    proven(POINTED)
