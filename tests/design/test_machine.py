"""The bed: shipped profiles, own facts over them, own beds, and facts that make no bed."""

from __future__ import annotations

import pytest

from walewright.design.findings import Findings
from walewright.design.model import MachineProfile as Bed
from walewright.design.reading.machine import machine
from walewright.design.reading.tables import Shipped
from walewright.source.syntax import Broken, MachineBlock, MachineFact, Number


def fact(key: str, *values: float, unit: str | None = None) -> MachineFact:
    return MachineFact(key, tuple(Number(v, unit) for v in values))


def bed(shipped: Shipped, name: str, *facts: MachineFact | Broken) -> tuple[Bed | None, list[str]]:
    findings = Findings()
    made = machine(MachineBlock(name, facts), shipped.machines, findings)
    return made, [d.code for d in findings.all()]


@pytest.mark.parametrize(
    ("name", "needles", "pitch"), [("fine", 250, 3.6), ("standard", 200, 4.5), ("mid", 150, 6.5), ("bulky", 100, 8.0)]
)
def test_shipped_profiles(shipped: Shipped, name: str, needles: int, pitch: float) -> None:
    made, told = bed(shipped, name)
    assert not told
    assert made is not None
    assert (made.needles, made.pitch_mm, made.prongs, made.waste_rows) == (needles, pitch, (1, 2, 3), 8)


def test_own_facts_stand_over_a_profile(shipped: Shipped) -> None:
    made, told = bed(shipped, "bulky", fact("needles", 114), fact("pitch", 0.9, unit="cm"), fact("waste rows", 10))
    assert not told
    assert made is not None
    assert (made.needles, made.pitch_mm, made.waste_rows, made.prongs) == (114, 9.0, 10, (1, 2, 3))


def test_a_bed_of_ones_own(shipped: Shipped) -> None:
    made, told = bed(shipped, "attic", fact("needles", 60), fact("pitch", 7, unit="mm"), fact("prongs", 3, 1))
    assert not told
    assert made is not None
    assert (made.name, made.needles, made.pitch_mm, made.prongs) == ("attic", 60, 7.0, (1, 3))


@pytest.mark.parametrize(
    ("name", "facts", "code"),
    [
        ("bulkie", (), "unknown-name"),
        ("attic", (fact("needles", 60),), "missing-part"),
        ("bulky", (fact("needles", 99),), "odd-needles"),
        ("bulky", (fact("needles", 0),), "bad-machine-fact"),
        ("bulky", (fact("needles", 2),), "bad-machine-fact"),
        ("bulky", (fact("needles", 10000),), "bad-machine-fact"),
        ("bulky", (fact("pitch", 0.01, unit="mm"),), "bad-machine-fact"),
        ("bulky", (fact("needles", 100, 110),), "bad-machine-fact"),
        ("bulky", (fact("needles", 99.5),), "bad-machine-fact"),
        ("bulky", (fact("needles", 100, unit="cm"),), "bad-machine-fact"),
        ("bulky", (fact("needles"),), "bad-machine-fact"),
        ("bulky", (fact("pitch", 0, unit="mm"),), "bad-machine-fact"),
        ("bulky", (fact("pitch", 9),), "bad-machine-fact"),
        ("bulky", (fact("pitch", 9, unit="m"),), "bad-machine-fact"),
        ("bulky", (fact("prongs", 1, 0),), "bad-machine-fact"),
        ("bulky", (fact("prongs", 1, 99),), "bad-machine-fact"),
        ("bulky", (fact("waste rows", 5000),), "bad-machine-fact"),
        ("bulky", (fact("colour", 1),), "unknown-name"),
        ("bulky", (fact("needles", 100), fact("needles", 100)), "repeated-name"),
    ],
)
def test_facts_that_make_no_bed(shipped: Shipped, name: str, facts: tuple[MachineFact, ...], code: str) -> None:
    _, told = bed(shipped, name, *facts)
    assert told == [code]


def test_a_lost_line_may_have_been_the_lacking_one(shipped: Shipped) -> None:
    assert bed(shipped, "attic", fact("needles", 60), Broken("pitch nine")) == (None, [])
