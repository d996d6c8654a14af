"""The shipped charts: proven in whatever they are knitted in, used by name, and shown as they are."""

from __future__ import annotations

import pytest

from tests.docs import stitches
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.pipeline import compile

IN = (("standard", 14.3, 15.0, 20, 400), ("fine", 11.0, 10.5, 15, 700), ("bulky", 31.0, 32.5, 50, 120))
"""Beds, with a swatch of theirs and a width, in cm, and metres of yarn to 100 g."""


@pytest.mark.parametrize("name", stitches.CHARTS)
def test_a_chart_is_proven_on_every_kind_of_bed(name: str) -> None:
    for machine, width, height, wide, metres in IN:
        outcome = compile(stitches.swatch(name, machine, width, height, wide, metres), "swatch.wale", shipped(), Changes())
        assert outcome.proven, (machine, [d.code for d in outcome.diagnostics])
        told = {d.code for d in outcome.diagnostics}
        # Whether a float is long is a matter of the stitch's width, and that of the bed.
        assert told <= {"long-float"}, (machine, told)
        assert machine == "bulky" or not told, (machine, told)


@pytest.mark.parametrize("name", stitches.CHARTS)
def test_its_file_holds_it_alone_and_says_what_it_is(name: str) -> None:
    about, first, *_ = shipped().charts[name].splitlines()
    assert about.startswith("# ")
    assert about.endswith(".")
    assert shipped().charts[name].count("\nchart ") == 1
    assert f"chart {name}" in shipped().charts[name], first


def test_there_are_two_dozen_of_six_kinds() -> None:
    assert len(stitches.CHARTS) >= 24
    kinds = [shipped().charts[name].partition(":")[0].removeprefix("# ") for name in stitches.CHARTS]
    assert set(kinds) == {"Lace", "Tuck", "Slip", "Cable", "Texture", "Colour", "Border", "Openwork"}


def test_a_chart_of_the_source_goes_before_a_shipped_one() -> None:
    own = "chart rope\n    key . knit\n    key O hole\n    key / two from left\n    | . . |\n    | O / |\n"
    text = stitches.swatch("rope")
    made = compile(text.replace("fabric cloth", f"{own}\nfabric cloth"), "swatch.wale", shipped(), Changes()).design
    assert made is not None
    (chart,) = made.charts
    assert len(chart.rows) == 2


def test_a_name_that_is_nearly_one_is_told() -> None:
    (told,) = compile(stitches.swatch("rope").replace("chart rope", "chart rop"), "s.wale", shipped(), Changes()).diagnostics
    assert told.code == "unknown-name"


@pytest.mark.parametrize("name", stitches.CHARTS)
def test_its_picture_is_that_of_its_loops(name: str) -> None:
    assert (stitches.PICTURES / f"{name}.svg").read_text(encoding="utf-8") == stitches.picture(name)


def test_the_page_has_each_chart_once() -> None:
    assert stitches.PAGE.read_text(encoding="utf-8") == stitches.page()
    assert {p.stem for p in stitches.PICTURES.glob("*.svg")} == set(stitches.CHARTS)
