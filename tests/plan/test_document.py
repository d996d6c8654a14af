"""The plan document: of its schema, complete, of the same data as everything else, and the same every time."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import pytest
from jsonschema import Draft202012Validator

from tests.plan.schema_kept import faults
from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.knit.operations import CastOff, Pass, SetCounter
from walewright.pipeline import Outcome
from walewright.plan import FORMAT, moves, plan_bytes, plan_json, schema, shapes
from walewright.plan.document import task_json

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture(scope="module")
def outcome() -> Outcome:
    """A proven garment in two sizes, with everything a plan can hold."""
    text = (ROOT / "patterns" / "tidewrack.wale").read_text(encoding="utf-8")
    made = pipeline.compile(text, "tidewrack.wale", shipped(), Changes(sizes=("M", "2X")))
    assert made.proven, made.diagnostics
    return made


def test_it_is_of_its_schema(outcome: Outcome) -> None:
    Draft202012Validator.check_schema(schema())
    assert faults(json.loads(plan_bytes(outcome))) == []


def test_what_is_wanted_of_the_whole_is_there_with_what_is_knitted() -> None:
    text = (ROOT / "patterns" / "tidewrack.wale").read_text(encoding="utf-8")
    text += "\nfinished below round back hem, wanted 100 cm\n"
    made = pipeline.compile(text, "tidewrack.wale", shipped(), Changes(sizes=("M", "2X")))
    document = json.loads(plan_bytes(made))
    assert faults(document) == []
    (below,) = document["worn"]["wanted"]
    assert (below["name"], below["wanted_cm"]) == ("below", {"M": 100.0, "2X": 100.0})
    assert below["off_cm"] == {size: pytest.approx(below["cm"][size] - 100, abs=0.011) for size in ("M", "2X")}


def test_the_schema_is_closed(outcome: Outcome) -> None:
    document = plan_json(outcome)
    document["sizes"][0]["pieces"][0]["colour"] = "grey"
    assert len(faults(document)) == 1


@pytest.mark.parametrize("damage", [{"do": "embroider"}, {"do": 3}, {"do": None}, {"colour": "grey"}, {"first": []}])
def test_an_operation_is_held_to_its_kind(outcome: Outcome, damage: dict[str, object]) -> None:
    """By the way that is quick, and by the standard's own."""
    document = json.loads(plan_bytes(outcome))
    size = document["sizes"][0]
    operations = [op for task in size["work"] if task["kind"] == "block" for row in task["rows"] for op in row["operations"]]
    cast_off = next(op for op in operations if op["do"] == "cast-off")
    assert (faults(document), validated("operation", cast_off)) == ([], [])
    cast_off |= damage
    assert len(faults(document)) == 1
    assert validated("operation", cast_off) != []


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
        for told, block in zip((t for t in size["work"] if t["kind"] == "block"), work.blocks, strict=True):
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


def test_a_picture_row_counts_as_a_pass_does() -> None:
    from walewright.knit.operations import Block, PictureRow

    picture = PictureRow("right", "4", (("wool", 0, 1), ("navy", 2, 3)))
    made = Block("p", (SetCounter(0), Pass("left"), picture, Pass("left"), CastOff(0, 3, "left")))
    assert [(row["row"], [o["do"] for o in row["operations"]]) for row in moves.block(made)["rows"]] == [
        (0, ["set-counter", "pass"]),
        (1, ["picture-row"]),
        (2, ["pass"]),
        (3, ["cast-off"]),
    ]


def test_copies_are_in_the_operations_and_loops(outcome: Outcome) -> None:
    document = plan_json(outcome)
    for size in document["sizes"]:
        blocks = [task for task in size["work"] if task["kind"] == "block"]
        assert any(block["copies"] > 1 for block in blocks)
        listed = sum(block["copies"] * sum(len(row["operations"]) for row in block["rows"]) for block in blocks)
        assert size["operations"] == listed + len(size["work"]) - len(blocks)


def test_what_yarn_is_for_adds_up(outcome: Outcome) -> None:
    for size in plan_json(outcome)["sizes"]:
        for use in size["yarn"]:
            parts = use["garment_grams"] + use["swatch_grams"] + use["reserve_grams"]
            assert parts == (pytest.approx(use["grams"], abs=0.002) if use["kind"] == "yarn" else 0)


def validated(of: str, value: object) -> list[str]:
    """Faults of a value that is to be of the schema's definition."""
    whole = {**schema(), "$ref": f"#/$defs/{of}"}
    for key in ("type", "additionalProperties", "required", "properties"):
        whole.pop(key)
    return [error.message for error in Draft202012Validator(whole).iter_errors(json.loads(json.dumps(value)))]


def samples() -> list[object]:
    """An operation of each kind, its fields filled by their types."""
    from dataclasses import fields
    from typing import Literal, get_args, get_origin, get_type_hints

    from walewright.knit import operations

    filled = {
        int: 1,
        bool: True,
        str: "left",
        tuple[int, ...]: (1, 0, 2),
        tuple[int, int]: (4, 3),
        tuple[tuple[str, int, int], ...]: (("wool", -3, 2),),
        operations.Side: "left",
    }
    side = (("back", "side", 0),)
    made = []
    for of in get_args(operations.Operation):
        hints = get_type_hints(of)
        closed = {name: get_args(hint)[-1] for name, hint in hints.items() if get_origin(hint) is Literal}
        values = {f.name: closed.get(f.name, filled.get(hints[f.name], side)) for f in fields(of)}
        if of is operations.CastOn:
            values["way"] = "e-wrap"
        elif of is operations.PickUpEdge:
            values |= {"part": "whole", "facing": "knit", "copy": operations.NEXT_COPY}
        elif of is operations.Rehang:
            values["facing"] = "purl"
        elif of is operations.Join:
            values |= {"way": "gathered", "ends": ("left", "bottom"), "over": (("back", "welt", 18),)}
        made.append(of(**values))
    return made


@pytest.mark.parametrize("operation", samples(), ids=lambda o: type(o).__name__)
def test_the_schema_knows_every_operation_and_its_fields(operation: object) -> None:
    from walewright.knit.operations import Join

    if isinstance(operation, Join):
        # A seam is a task of its own in the order of work.
        assert validated("seam", task_json(operation)) == []
        assert validated("seam", {**task_json(operation), "extra": 1}) != []
    else:
        assert validated("operation", moves.move(operation)) == []  # type: ignore[arg-type]
        assert validated("operation", {**moves.move(operation), "extra": 1}) != []  # type: ignore[arg-type]


def test_everything_that_a_piece_can_have_is_told() -> None:
    from walewright.counted.model import (
        ShapingPhrase,
        SizedChart,
        SizedOpening,
        SizedPiece,
        SizedRepeat,
        SizedRun,
        SizedSlot,
        SizedWedge,
        SizedZone,
    )
    from walewright.design.model import Origin, ShapingWay

    at = Origin("by hand")
    run = SizedRun("side", 0, 40, (ShapingPhrase((4,), (-2,), 3),), ShapingWay("fashioned", 2, 2), at)
    across = SizedRun("", 40, 40, (ShapingPhrase((0,), (-4,), 1),), ShapingWay("simple"), at, across=True)
    opening = SizedOpening(
        "pocket", 10, 6, 6, run, at, to_row=20, first=-9, taken="cast-off", rejoins=True, left=(run,), right=(run,)
    )
    piece = SizedPiece(
        "front",
        41,
        (("hem", 0), ("top", 60)),
        60,
        (run, across),
        (run, across),
        (opening,),
        (SizedWedge("dart", "left", 20, (4, 4), at, "both", 3),),
        0,
        41,
        (SizedSlot("thumb", 30, 2, 6, "waste", at), SizedSlot("hole", 32, 0, 0, "eyelet", at)),
        (SizedZone("rib", 0, 8, 0, -1, at), SizedZone("moss", 8, 60, -5, 4, at)),
        (SizedRepeat(8, 20, 3, at),),
        charts=(
            SizedChart("spot", "", "panel", 8, 20, -3, 2, 1, -3, 0, at),
            SizedChart("lace", "lace", "whole", 0, 60, -19, 20, 1, 0, 4, at),
        ),
    )
    told = shapes.counts(piece)
    assert told["counter"] == 60 + 2 * 12
    assert [z["first"] for z in told["zones"]] == [None, -5]
    assert told["openings"][0]["to_row"] == 20
    assert told["openings"][0]["taken"] == "cast-off"
    assert told["wedges"] == [
        {"name": "dart", "edge": "left", "kind": "both", "from_row": 20, "to_row": 28, "groups": [4, 4], "rest": 3}
    ]
    assert [(c["chart"], c["fabric"], c["area"], c["first"], c["repeats"]) for c in told["charts"]] == [
        ("spot", "", "panel", -3, 0),
        ("lace", "lace", "whole", -19, 4),
    ]
    assert [r["across"] for r in told["left"]] == [False, True]
    assert told["left"][0]["way"] == {"kind": "fashioned", "inset": 2, "at_once": 2}
    whole = {
        "name": "front",
        "fabric": "plain",
        "copies": 1,
        "mirror_of": "other",
        "purpose": "",
        "start": {"way": "along", "along": [{"piece": "hand", "edge": "thumb"}], "pick_ups": []},
        "end": "gathered",
        "knitted": {"first_needle": "L 20", "last_needle": "R 21", "most_stitches": 41, "rows": 60, "loops": 9, "measures": []},
    }
    assert validated("piece", {**whole, **told}) == []


def test_a_chart_is_told_with_the_meaning_of_its_symbols() -> None:
    from walewright.design.model import Cell, CellKey, Chart, Origin

    at = Origin("by hand")
    chart = Chart(
        "cable",
        ("..XX", "...n"),
        (
            CellKey(".", Cell("knit"), at),
            CellKey("X", Cell("cross", cross=1, hung_first="left"), at),
            CellKey("n", Cell("knit", "navy"), at),
        ),
        1,
        2,
        1,
        False,
        at,
    )
    told = shapes.chart(chart)
    assert validated("chart", told) == []
    assert (told["rows"], told["before"], told["repeat"], told["after"]) == (["..XX", "...n"], 1, 2, 1)
    assert told["key"][1] == {"symbol": "X", "kind": "cross", "yarn": "", "cross": 1, "hung_first": "left"}
    assert told["key"][2]["yarn"] == "navy"


def test_yarn_is_told_with_its_error_and_what_comes_away(outcome: Outcome) -> None:
    assert outcome.proof is not None
    for size, proof in zip(plan_json(outcome)["sizes"], outcome.proof.sizes, strict=True):
        assert [(use["yarn"], use["kind"], use["balls"]) for use in size["yarn"]] == [
            (use.yarn, use.kind, use.balls) for use in proof.yarn
        ]
        assert [use["kind"] for use in size["yarn"]] == ["yarn", "waste", "ravel"]
        assert 0 < size["yarn"][0]["error"] < 0.1


def test_bobbins_and_floats_are_told(outcome: Outcome) -> None:
    from walewright.proof.model import BobbinUse, FloatFound

    assert outcome.proof is not None
    bobbin = BobbinUse("front", "spot", "navy", 2, "L 2", 31, 1.23456, "R 1", 40, ((34, 35),))
    found = FloatFound("front", "navy", 32, "L 2", "R 4", 6, 4.61538)
    first = replace(outcome.proof.sizes[0], bobbins=(bobbin,), floats=(found,))
    document = plan_json(replace(outcome, proof=replace(outcome.proof, sizes=(first, *outcome.proof.sizes[1:]))))
    assert faults(json.loads(json.dumps(document))) == []
    assert document["sizes"][0]["bobbins"][0]["metres"] == 1.235
    assert document["sizes"][0]["floats"] == [
        {"piece": "front", "yarn": "navy", "row": 32, "first": "L 2", "last": "R 4", "stitches": 6, "cm": 4.615}
    ]
    assert document["sizes"][1]["bobbins"] == []
