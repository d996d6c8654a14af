"""The plan document: of its schema, complete, of the same data as everything else, and the same every time."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from jsonschema import Draft202012Validator

from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.knit.operations import CastOff, Pass, SetCounter
from walewright.pipeline import Outcome
from walewright.plan import FORMAT, moves, plan_bytes, plan_json, schema

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture(scope="module")
def outcome() -> Outcome:
    """A proven garment in two sizes, with everything a plan can hold."""
    text = (ROOT / "patterns" / "tidewrack.wale").read_text(encoding="utf-8")
    made = pipeline.compile(text, "tidewrack.wale", shipped(), Changes(sizes=("M", "2X")))
    assert made.proven, made.diagnostics
    return made


def test_it_is_of_its_schema(outcome: Outcome) -> None:
    shape = schema()
    Draft202012Validator.check_schema(shape)
    assert list(Draft202012Validator(shape).iter_errors(json.loads(plan_bytes(outcome)))) == []


def test_the_schema_is_closed(outcome: Outcome) -> None:
    document = plan_json(outcome)
    document["sizes"][0]["pieces"][0]["colour"] = "grey"
    assert len(list(Draft202012Validator(schema()).iter_errors(document))) == 1


def test_the_same_source_gives_the_same_bytes(outcome: Outcome) -> None:
    again = pipeline.compile(outcome.text, outcome.file, shipped(), Changes(sizes=("M", "2X")))
    assert plan_bytes(again) == plan_bytes(outcome)


def test_keys_are_sorted_and_the_format_is_stated(outcome: Outcome) -> None:
    read = json.loads(plan_bytes(outcome), object_pairs_hook=lambda pairs: pairs)
    names = [name for name, _ in read]
    assert names == sorted(names)
    assert dict(read)["format"] == FORMAT


def test_every_operation_of_the_work_is_there_in_order(outcome: Outcome) -> None:
    document = plan_json(outcome)
    for size, work in zip(document["sizes"], outcome.works, strict=True):
        for told, block in zip(size["blocks"], work.blocks, strict=True):
            listed = [operation for row in told["rows"] for operation in row["operations"]]
            assert listed == [moves.move(operation) for operation in block.operations]


def test_counts_and_proof_agree(outcome: Outcome) -> None:
    for size in plan_json(outcome)["sizes"]:
        counted = {(d["piece"], d["what"]): d["solved_cm"] for d in size["deviations"]}
        for piece in size["pieces"]:
            knitted = {(piece["name"], m["what"]): m["knitted_cm"] for m in piece["knitted"]["measures"]}
            assert knitted
            assert knitted == {key: pytest.approx(counted[key], abs=0.002) for key in knitted}
            assert piece["knitted"]["most_stitches"] == piece["widest_stitches"]


def test_operations_are_told_under_the_row_at_which_they_are_done() -> None:
    from walewright.knit.operations import Block

    made = Block("p", (SetCounter(0), Pass("left"), CastOff(0, 1, "left"), Pass("right"), SetCounter(0), Pass("left")))
    assert [(row["row"], [o["do"] for o in row["operations"]]) for row in moves.block(made)["rows"]] == [
        (0, ["set-counter", "pass"]),
        (1, ["cast-off", "pass"]),
        (0, ["set-counter", "pass"]),
    ]
