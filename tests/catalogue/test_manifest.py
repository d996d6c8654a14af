"""The manifest: what is said of a garment that was made, and the same bytes for the same products."""

from __future__ import annotations

import datetime
import json
from types import SimpleNamespace
from typing import Any, cast

import jsonschema
import pytest

from tests.fit.wardrobe import HEAD, TUBE
from walewright import pipeline
from walewright.catalogue.facts import garment_facts
from walewright.catalogue.manifest import CataloguedGarment, MadeFile, manifest, manifest_bytes, schema
from walewright.catalogue.model import Catalogue, Product
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.pipeline import Outcome

TEXT = (
    HEAD.replace("sizes one\n    chest 80 cm, to fit", "sizes S M\n    chest 80 90 cm, to fit\n    half 41 46 cm")
    + TUBE.replace("start 41 cm wide", "start half wide")
    + "finished chest_round round back top, fits chest\n"
)

SHEET = SimpleNamespace(
    summary="A tube.",
    author="The Windrow Workshop",
    language="en",
    handwork=(SimpleNamespace(anchor="how-e-wrap", title="E-wrap"), SimpleNamespace(anchor="sewing", title="Sewing")),
)


@pytest.fixture(scope="module")
def outcome() -> Outcome:
    made = pipeline.compile(TEXT, "tube.wale", shipped(), Changes())
    assert made.proven, made.diagnostics
    return made


def test_the_facts_of_a_garment(outcome: Outcome) -> None:
    facts = garment_facts(outcome, cast(Any, SHEET))
    assert (facts["summary"], facts["designer"], facts["code"]) == ("A tube.", "The Windrow Workshop", "en")
    assert facts["sizes"] == ["S", "M"]
    assert facts["for_children"] is False
    assert facts["fits"] == [{"measure": "chest", "cm": {"S": 80.0, "M": 90.0}}]
    # Twice as wide, less two seams of two stitches of half a centimetre.
    (girth,) = cast(list[dict[str, Any]], facts["girths"])
    assert girth["cm"] == {"S": 80.0, "M": 90.0}
    assert (girth["piece"], girth["at"], girth["body"], girth["closing"]) == ("front", "hem", False, "closed")
    assert facts["techniques"] == [{"key": "e-wrap", "title": "E-wrap"}, {"key": "sewing", "title": "Sewing"}]
    assert facts["bed"] == {"name": "standard", "label": "standard bed", "needles": 400, "pitch_mm": 4.5}
    assert facts["chosen"] == {}


def test_yarn_is_listed_in_every_size_with_whole_balls(outcome: Outcome) -> None:
    _, _, _, proof = outcome.result()
    (yarn,) = cast(list[dict[str, Any]], garment_facts(outcome, cast(Any, SHEET))["yarn"])
    uses = {size.size: next(u for u in size.yarn if u.kind == "yarn") for size in proof.sizes}
    assert yarn["label"] == "wool"
    assert yarn["tex"] == 250.0
    assert yarn["grams"] == {size: round(use.grams) for size, use in uses.items()}
    assert yarn["balls"] == {size: use.balls for size, use in uses.items()}
    assert yarn["grams"]["M"] > yarn["grams"]["S"]


def test_what_was_proven_of_each_size(outcome: Outcome) -> None:
    _, _, _, proof = outcome.result()
    found = cast(list[dict[str, Any]], garment_facts(outcome, cast(Any, SHEET))["proof"])
    assert [(f["size"], f["loops"], f["operations"], f["read_back"]) for f in found] == [
        (s.size, s.loops, s.operations, True) for s in proof.sizes
    ]


def test_the_document_has_all_that_was_made_and_is_as_its_schema_says(outcome: Outcome) -> None:
    catalogue = Catalogue("folder\\shore.toml", "Shore", "First", datetime.date(2026, 3, 1), ("Printed", "bound"), {})
    products = (
        MadeFile(Product("tube-a4.pdf", "pdf", "a4", "cm", "booklet", "usual"), "0" * 64, 10, 7),
        MadeFile(Product("tube.json", "plan"), "1" * 64, 20, 0),
    )
    one = CataloguedGarment("tube.wale", "english", {"tube.wale": "2" * 64}, garment_facts(outcome, cast(Any, SHEET)), products)
    made = manifest(catalogue, [one])
    jsonschema.validate(made, schema())
    assert (made["catalogue"], made["title"], made["edition"], made["date"]) == ("shore.toml", "Shore", "First", "2026-03-01")
    assert made["imprint"] == ["Printed", "bound"]
    (garment,) = cast(list[dict[str, Any]], made["garments"])
    first, second = garment["products"]
    assert (first["paper"], first["pages"], first["bytes"]) == ("a4", 7, 10)
    # What a format does not depend on is not there.
    assert set(second) == {"file", "format", "sha256", "bytes"}
    assert garment["files"] == {"tube.wale": "2" * 64}


def test_the_same_document_is_the_same_bytes() -> None:
    made = manifest_bytes({"b": "ä", "a": [1, {"d": 1, "c": 2}]})
    assert made == manifest_bytes({"a": [1, {"c": 2, "d": 1}], "b": "ä"})
    assert made.decode() == '{\n "a": [\n  1,\n  {\n   "c": 2,\n   "d": 1\n  }\n ],\n "b": "ä"\n}\n'
    assert json.loads(made)["b"] == "ä"
    with pytest.raises(ValueError, match="Out of range float"):
        manifest_bytes({"a": float("nan")})
