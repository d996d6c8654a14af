"""What can be tried between the source's own value and the one that was given."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from walewright.design.model import Edition, MachineProfile, Measurement, Origin
from walewright.design.model.fabrics import Fabric
from walewright.design.model.regrading import CountRow, GivenKind
from walewright.design.reading.given import read_bed, read_tension
from walewright.regrade.line import STEPS, lines

HERE = Origin("here")
PLAIN = Fabric("plain", "stocking stitch", 0, "wool", "4", 40, 60, 20, 20, 30, HERE)
SOURCE = Edition(
    ("S", "M"),
    (Measurement("bust", (84.2, 94.0), True, None, HERE),),
    (PLAIN,),
    (),
    MachineProfile("bulky", "bulky bed", 100, 8.0, (1, 2), 8, "", HERE),
)


def test_a_measure_goes_by_half_centimetres_from_the_nearest_size() -> None:
    first, second = lines("measure", "bust", "96.2 cm", SOURCE)
    assert first.texts == ("94 cm", "94.5 cm", "95 cm", "95.5 cm", "96 cm", "96.2 cm")
    assert first.rises
    assert (second.texts[0], second.last) == ("84.2 cm", 25)


def test_a_smaller_measure_goes_down() -> None:
    (first, _) = lines("measure", "bust", "82.9 cm", SOURCE)
    assert first.texts == ("84.2 cm", "84 cm", "83.5 cm", "83 cm", "82.9 cm")
    assert not first.rises


@pytest.mark.parametrize(("kind", "text"), [("tension", "28 st 30 rows"), ("swatch", "28 st 30 rows 10 cm 10 cm")])
def test_a_tension_and_a_swatch_go_in_a_straight_line(kind: str, text: str) -> None:
    (line,) = lines(kind, "plain", text, SOURCE)
    assert line.kind == "tension"
    assert (line.texts[0], line.texts[-1]) == ("20 st 30 rows", "28 st 30 rows")
    assert all(t.endswith("30.0 rows") for t in line.texts[1:-1])
    assert line.rises


def test_a_bed_goes_by_two_needles_and_keeps_what_else_is_given() -> None:
    (line,) = lines("bed", "", "needles=94, pitch=9 mm", SOURCE)
    assert line.texts == ("pitch=9 mm, needles=100", "pitch=9 mm, needles=98", "pitch=9 mm, needles=96", "needles=94, pitch=9 mm")


@pytest.mark.parametrize(
    ("kind", "name", "text"), [("yarn", "wool", "my wool, 50 g = 60 m"), ("bed", "", "fine"), ("measure", "hip", "4 cm")]
)
def test_nothing_lies_between_two_yarns_two_beds_or_for_what_is_not_there(kind: str, name: str, text: str) -> None:
    assert list(lines(kind, name, text, SOURCE)) == []


@pytest.mark.parametrize("text", ["28 st 30 rows 0 cm 10 cm", "28 st 30 rows 10 cm 0 cm", "28 st 30 rows", "a swatch"])
def test_a_swatch_without_a_size_leads_nowhere(text: str) -> None:
    assert list(lines("swatch", "plain", text, SOURCE)) == []


def test_lengths_between_are_those_a_tape_has() -> None:
    """Whole halves of a centimetre, neither end among them."""
    (line,) = lines("measure", "bust", "95 cm", replace(SOURCE, measurements=(replace(SOURCE.measurements[0], values=(94.0,)),)))
    assert line.texts == ("94 cm", "94.5 cm", "95 cm")
    (line,) = lines("measure", "bust", "94.1 cm", replace(SOURCE, measurements=(replace(SOURCE.measurements[0], values=(94.0,)),)))
    assert line.texts == ("94 cm", "94.1 cm")


COUNTED = replace(SOURCE, counts=(CountRow("gores", (6.0, 9.0), ""), CountRow("share", (2.5, 2.5), "")))


@pytest.mark.parametrize(
    ("name", "text", "found"),
    [
        # From the nearest size on, one by one, neither end among what lies between.
        ("gores", "12", [(("9", "10", "11", "12"), True), (("6", "7", "8", "9", "10", "11", "12"), True)]),
        ("gores", "4", [(("6", "5", "4"), False), (("9", "8", "7", "6", "5", "4"), False)]),
        ("gores", "7", [(("6", "7"), True), (("9", "8", "7"), False)]),
        ("gores", "6", [(("9", "8", "7", "6"), False)]),
        ("share", "5", [(("2.5", "3", "4", "5"), True)]),
        ("share", "0.5", [(("2.5", "2", "1", "0.5"), False)]),
        ("share", "2.5", []),
        ("nothing", "5", []),
        ("gores", "many", []),
    ],
)
def test_counts_go_one_by_one(name: str, text: str, found: list[tuple[tuple[str, ...], bool]]) -> None:
    made = list(lines("measure", name, text, COUNTED))
    assert [(line.texts, line.rises) for line in made] == found
    assert all((line.kind, line.name, line.last) == ("measure", name, len(line.texts) - 1) for line in made)


def test_a_size_whose_own_value_is_given_leads_nowhere() -> None:
    (only,) = lines("measure", "bust", "94 cm", SOURCE)
    assert (only.texts[0], only.texts[-1], only.rises) == ("84.2 cm", "94 cm", True)


@pytest.mark.parametrize(
    ("text", "count"), [("needles=98", 2), ("needles=100", 0), ("needles=120", 0), ("needles=97", 0), ("pitch=9 mm", 0)]
)
def test_only_a_bed_with_fewer_needles_has_beds_between(text: str, count: int) -> None:
    assert [len(line.texts) for line in lines("bed", "", text, SOURCE)] == [count] * bool(count)


@pytest.mark.parametrize(
    ("text", "between"),
    [
        ("needles=98, missing=L3 R 4", "missing=L3 R 4, needles=100"),
        ("dial, needles = 98", "dial, needles=100"),
        (
            "standard, needles=98, without latch tool, plates=fine coarse",
            "standard, without latch tool, plates=fine coarse, needles=100",
        ),
    ],
)
def test_facts_of_a_bed_without_a_number_are_kept(text: str, between: str) -> None:
    """What is given besides the needles says the same in every text that is tried."""
    (line,) = lines("bed", "", text, SOURCE)
    assert line.texts == (between, text)
    (one, other) = (read_bed(t) for t in line.texts)
    assert one is not None
    assert other is not None
    assert one.name == other.name
    assert [f for f in one.facts if f.key != "needles"] == [f for f in other.facts if f.key != "needles"]


@pytest.mark.parametrize(
    ("text", "rises"),
    [
        ("20 st 60 rows", True),
        ("20 st 10 rows", False),
        ("21 st 10 rows", True),
        ("19 st 60 rows", False),
        ("20.1 st 29 rows", True),
        ("19.9 st 31 rows", False),
    ],
)
def test_of_the_same_stitches_more_rows_are_the_larger_tension(text: str, rises: bool) -> None:
    (line,) = lines("tension", "plain", text, SOURCE)
    assert line.rises is rises


@given(st.integers(30, 1000), st.integers(30, 1000))
def test_steps_of_a_tension_are_in_order_and_as_a_tension_is_given(stitches: int, rows: int) -> None:
    text = f"{stitches / 10:g} st {rows / 10:g} rows"
    (line,) = lines("tension", "plain", text, SOURCE)
    read = [read_tension(t) for t in line.texts]
    counts = [(t.stitches, t.rows) for t in read if t is not None]
    assert len(counts) == len(line.texts)
    assert counts[0] == (20, 30)
    assert counts[-1] == (stitches / 10, rows / 10)
    # Sixty-four equal steps, to a tenth, the same ones said once; neither end is far from the one beside it.
    assert len(counts) <= STEPS + 1
    for at, (own, wanted) in enumerate(((20, stitches / 10), (30, rows / 10))):
        path = [c[at] for c in counts]
        assert path == sorted(path, reverse=wanted < own)
        assert all(abs(b - a) <= abs(wanted - own) / STEPS + 0.11 for a, b in pairwise(path))
    if abs(stitches - 200) >= 20 * STEPS / 10:
        assert len(counts) == STEPS + 1


@pytest.mark.parametrize("kind", ["tension", "swatch"])
def test_a_fabric_that_is_not_there_or_a_text_that_does_not_read_leads_nowhere(kind: GivenKind) -> None:
    text = {"tension": "28 st 30 rows", "swatch": "28 st 30 rows 10 cm 10 cm"}[kind]
    assert list(lines(kind, "cable", text, SOURCE)) == []
    assert list(lines(kind, "plain", "twenty", SOURCE)) == []


def test_a_swatch_counts_its_stitches_in_its_width_and_its_rows_in_its_height() -> None:
    (line,) = lines("swatch", "plain", "30 st 60 rows 12 cm 15 cm", SOURCE)
    assert (line.name, line.texts[-1]) == ("plain", "25 st 40 rows")


@given(st.integers(1, 4000), st.integers(1, 4000))
def test_every_half_centimetre_between_two_lengths_is_there_once(own: int, wanted: int) -> None:
    """Compared with counting through all millimetres between them."""
    rows = (replace(SOURCE.measurements[0], values=(own / 10,)),)
    found = list(lines("measure", "bust", f"{wanted / 10:g} cm", replace(SOURCE, measurements=rows)))
    if own == wanted:
        assert found == []
        return
    (line,) = found
    between = [mm for mm in range(min(own, wanted) + 1, max(own, wanted)) if mm % 5 == 0]
    between = between if own < wanted else between[::-1]
    assert line.texts == tuple(f"{mm / 10:g} cm" for mm in (own, *between, wanted))
    assert (line.rises, line.kind, line.name) == (wanted > own, "measure", "bust")


@pytest.mark.parametrize(("bed", "text"), [("bulky", "a bed"), ("bulky", "needles=many"), ("bulky", "")])
def test_a_bed_that_does_not_read_leads_nowhere(bed: str, text: str) -> None:
    assert list(lines("bed", bed, text, SOURCE)) == []
