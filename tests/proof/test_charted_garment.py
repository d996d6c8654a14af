"""A garment with charts, stripes, a picture and a cable, through all stages to its proof."""

from __future__ import annotations

import json

import pytest

from tests.plan.schema_kept import faults
from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.pipeline import Outcome
from walewright.plan import plan_bytes
from walewright.proof.model import FromLoops
from walewright.report.english import in_english

SOURCE = """
pattern "Sampler"

sizes one
    width 30 cm

machine bulky

yarn wool "chunky wool", 100 g = 120 m
yarn navy "navy wool", 100 g = 240 m

chart leaves
    key . knit
    key O hole
    key > two from left
    key t three together
    | . . . . . . . . |
    | . O > . . . . . |
    | . . . . . . . . |
    | . . . . O t O . |
    repeat 8 stitches

chart rope
    key . knit
    key - purl
    key X cross 2 over 2, left first
    | - . . . . - |
    | - . . . . - |
    | - . . . . - |
    | - X X X X - |
    repeat 6 stitches

chart mix
    key . knit
    key u tuck
    key s slip
    key l long
    key H ladder
    | . u . . . . . . |
    | . u . s . . H . |
    | . . . . . l H . |
    repeat 8 stitches

chart spots
    key . knit
    key n knit in navy
    | . . . . . . . n |
    | n . . . . . . . |
    repeat 8 stitches

chart spot
    key . knit
    key n knit in navy
    | . n n . |
    | n n n n |
    colours laid in blocks

fabric lace
    chart leaves in wool at tension 4, 1 edge stitch
    swatch 40 stitches by 60 rows = 31.8 cm by 32.4 cm

fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g

fabric cable
    chart rope in wool at tension 4
    swatch 40 stitches by 60 rows = 28 cm by 32.4 cm, 2.2 cm to a stitch

fabric mixed
    chart mix in wool at tension 4, 1 edge stitch
    swatch 40 stitches by 60 rows = 31.8 cm by 32.4 cm, 62 g

fabric spotted
    chart spots in wool at tension 4, 1 edge stitch
    swatch 40 stitches by 60 rows = 31.8 cm by 32.4 cm, 62 g

fabric bands
    stripes of 4 rows wool, 2 rows navy at tension 4
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g

piece front in plain
    levels hem 0 cm, low 8 cm, spot 10 cm, high 14 cm, top 20 cm
    start width wide with e-wrap
    fabric bands from hem to low
    motif spot at spot
    fabric cable from high to top, 10 cm wide
    end cast off

piece back in mixed
    levels hem 0 cm, mid 10 cm, lacy 12 cm, top 20 cm
    start width wide with e-wrap
    fabric plain from mid to lacy
    fabric lace from lacy to top
    end cast off

piece side in spotted
    levels hem 0 cm, top 10 cm
    start width wide with e-wrap
    end cast off
""".lstrip()


@pytest.fixture(scope="module")
def outcome() -> Outcome:
    made = pipeline.compile(SOURCE, "sampler.wale", shipped(), Changes())
    assert made.proven, [(d.code, in_english(d).message, in_english(d).notes) for d in made.diagnostics]
    return made


def test_each_pattern_has_its_picture(outcome: Outcome) -> None:
    assert outcome.proof is not None
    found = {p.fabric: p for p in outcome.proof.pictures}
    assert list(found) == ["lace", "cable", "mixed", "spotted", "bands", "spot"]
    kinds = {name: {loop.kind for loop in p.loops} for name, p in found.items()}
    assert "bar" in kinds["lace"]
    assert {"bar", "float", "long"} <= kinds["mixed"]
    assert any(loop.over for loop in found["cable"].loops)
    assert {loop.face for loop in found["cable"].loops} == {0, 1}
    assert {loop.yarn for loop in found["bands"].loops} == {"wool", "navy"}
    assert {loop.yarn for loop in found["spot"].loops if loop.kind == "knit"} == {"wool", "navy"}
    assert {yarn for *_, yarn in found["spotted"].floats} == {"wool", "navy"}


def test_long_floats_are_told_and_nothing_else(outcome: Outcome) -> None:
    assert [d.code for d in outcome.diagnostics] == ["long-float"]
    assert "in spotted" in in_english(outcome.diagnostics[0]).message
    assert outcome.proof is not None
    assert {(f.yarn, f.stitches) for f in outcome.proof.sizes[0].floats} == {("navy", 7)}


def test_the_spot_has_its_bobbins(outcome: Outcome) -> None:
    assert outcome.proof is not None
    assert "navy" in {b.yarn for b in outcome.proof.sizes[0].bobbins}
    assert {b.chart for b in outcome.proof.sizes[0].bobbins} == {"spot"}


def test_both_yarns_are_reckoned_in_three_ways(outcome: Outcome) -> None:
    assert outcome.proof is not None
    wool, navy = outcome.proof.sizes[0].yarn
    assert isinstance(wool.way, FromLoops)
    assert [source for source, _ in wool.way.known] == ["weighed", "measured", "estimated"]
    assert 0.05 < wool.error < 0.25
    assert 0 < navy.metres < wool.metres
    assert navy.grams == pytest.approx(navy.metres / 2.4)


def test_the_plan_document_holds_it_all(outcome: Outcome) -> None:
    document = json.loads(plan_bytes(outcome))
    assert faults(document) == []
    assert [c["name"] for c in document["charts"]] == ["leaves", "rope", "mix", "spots", "spot"]
    pieces = {p["name"]: p for p in document["sizes"][0]["pieces"]}
    assert [(c["chart"], c["area"]) for c in pieces["front"]["charts"]] == [("spot", "panel"), ("rope", "panel")]
    assert [(c["chart"], c["fabric"]) for c in pieces["back"]["charts"]] == [("mix", "mixed"), ("leaves", "lace")]
    assert document["sizes"][0]["floats"]


def test_what_is_not_named_is_of_the_fabric_without_a_chart(outcome: Outcome) -> None:
    assert outcome.design is not None
    bed = pipeline.bed_of(outcome.design)
    plain = outcome.design.fabric("plain")
    assert bed.gauges["wool", "4"].stitches_per_cm == pytest.approx(plain.stitches_per_cm)
    assert bed.gauges["navy", "4"] == bed.gauges["wool", "4"]
    assert bed.fabrics["cable"].stitches_per_cm == pytest.approx(40 / 28)
