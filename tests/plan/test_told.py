"""Every key of the plan document holds what docs/plan.md says: each datum of an outcome is another, so that none can stand in the
place of another one unseen."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from tests.plan import told
from walewright import __version__
from walewright.counted.model import SizedNeedlesOut
from walewright.knit.operations import HangFeet
from walewright.plan import moves, plan_json
from walewright.plan.shapes import cm, counts

DOCUMENT = plan_json(told.outcome())
SIZE: dict[str, Any] = DOCUMENT["sizes"][0]


def by_size(small: float, large: float) -> dict[str, float]:
    return {"S": small, "L": large}


def test_the_whole_document_has_these_keys() -> None:
    assert list(DOCUMENT) == [
        *("format", "compiler", "title", "texts", "machine", "yarns", "fabrics", "charts", "measurements", "choices", "files"),
        *("regraded", "sizes", "making_up", "worn", "for_children", "cords", "needed", "photograph"),
    ]
    assert (DOCUMENT["format"], DOCUMENT["compiler"]) == (1, f"walewright {__version__}")


def test_the_authors_words() -> None:
    assert DOCUMENT["title"] == "By hand"
    assert DOCUMENT["texts"] == [{"key": "summary", "text": "Short."}, {"key": "note", "text": "Long."}]
    assert DOCUMENT["making_up"] == ["Block it.", "Sew it."]
    assert DOCUMENT["files"] == ["a.wale", "b/c.wale"]
    assert DOCUMENT["for_children"] is True
    assert DOCUMENT["cords"] == [{"piece": "front", "cm": by_size(90.0, 95.0)}]
    assert DOCUMENT["photograph"] == {"file": "a.jpg", "showing": "a jumper"}
    assert DOCUMENT["choices"] == [
        {"name": "sleeves", "alternatives": ["long", "short"], "alternative": "short", "chosen": True},
        {"name": "neck", "alternatives": ["round", "v"], "alternative": "round", "chosen": False},
    ]


def test_what_it_is_knitted_of() -> None:
    assert DOCUMENT["machine"] == {
        "name": "mid", "label": "mid-gauge bed, old", "needles": 160, "pitch_mm": 6.5, "prongs": [1, 2, 3], "edge_guides": True
    }  # fmt: skip
    assert DOCUMENT["yarns"] == [
        {"name": "wool", "label": "aran wool", "ball_grams": 50.0, "ball_metres": 83.333, "tex": 600.006, "colour": "#102030",
         "fibres": ["wool", "silk"]},
        {"name": "marl", "label": "two of them", "ball_grams": 100, "ball_metres": 160, "tex": 625, "colour": "",
         "strands": ["wool", "wool"]},
    ]  # fmt: skip
    plain = {
        "name": "plain", "stitch": "stocking stitch", "yarn": "wool", "tension": "4.", "stitches_per_10_cm": 19.048,
        "rows_per_10_cm": 31.579, "loop_cm": 1.235, "chart": "", "edge": 0, "fit": "whole", "stripes": [], "right_side": "knit",
        "basis": "source", "reckoned_from": "", "swatch_of": "", "start_dial": True,
    }  # fmt: skip
    assert DOCUMENT["fabrics"] == [
        plain,
        {**plain, "name": "lace", "stitch": "chart", "yarn": "marl", "tension": "5", "stitches_per_10_cm": 15, "rows_per_10_cm": 25,
         "loop_cm": 0, "chart": "holes", "edge": 2, "fit": "balanced", "right_side": "purl", "start_dial": False},
        {**plain, "name": "bands", "stitch": "stripes", "tension": "6", "stitches_per_10_cm": 20, "rows_per_10_cm": 20,
         "loop_cm": 0, "stripes": [{"yarn": "wool", "rows": 4}, {"yarn": "marl", "rows": 2}],
         "basis": "reckoned", "reckoned_from": "plain", "swatch_of": "lace", "start_dial": False},
    ]  # fmt: skip
    nothing = {"yarn": "", "cross": 0, "hung_first": ""}
    assert DOCUMENT["charts"] == [{
        "name": "holes", "rows": ["XX.", "O.."], "before": 1, "repeat": 2, "after": 3, "picture": True, "stage": 12,
        "key": [
            {**nothing, "symbol": "X", "kind": "cross", "cross": 1, "hung_first": "left"},
            {**nothing, "symbol": "O", "kind": "hole"},
            {**nothing, "symbol": ".", "kind": "knit", "yarn": "marl"},
        ],
    }]  # fmt: skip


def test_measurements_and_what_was_given() -> None:
    credit = {"published": ["a table", "a survey"], "recalled": True, "own": ["L"]}
    assert DOCUMENT["measurements"] == [
        {"name": "bust", "to_fit": True, "about": "round the body", "credit": credit, "cm": by_size(80.123, 90.0)},
        {"name": "length", "to_fit": False, "about": "", "credit": None, "cm": by_size(56.0, 58.5)},
    ]
    assert DOCUMENT["regraded"] == [
        {"kind": "measure", "name": "bust", "own": "", "source": "", "own_cm": 88.889, "source_cm": by_size(80.0, 90.0)},
        {"kind": "tension", "name": "plain", "own": "20 to 10", "source": "19 to 10", "own_cm": None, "source_cm": {}},
        {"kind": "measure", "name": "length", "own": "longer", "source": "short", "own_cm": None, "source_cm": {}},
    ]


def test_what_is_needed() -> None:
    """As measured on the knitted garment, where that was done."""
    assert DOCUMENT["needed"] == [
        {"what": "buttons", "count": {"S": 7, "L": 8}},
        {"what": "elastic", "cm": by_size(71.5, 81.5)},
        {"what": "a zip"},
    ]
    assert plan_json(told.outcome(fit=None))["needed"] == [
        {"what": "buttons", "count": {"S": 5, "L": 6}},
        {"what": "elastic", "cm": by_size(70.5, 80.0)},
        {"what": "a zip"},
    ]
    without = plan_json(told.outcome(design=replace(told.DESIGN, needed=(), photograph=None)))
    assert not {"needed", "photograph"} & set(without)


def test_the_garment_as_it_is_worn() -> None:
    assert DOCUMENT["worn"] == {
        "girths": [{"piece": "front", "at": "hem", "over": ["front", "front"], "closing": "lapped", "body": True,
                    "cm": by_size(90.123, 100.0)}],
        "finished": [{"name": "chest", "cm": by_size(90.5, 100.556)}],
        "ease": [{"name": "chest", "fits": "bust", "finished_cm": by_size(90.5, 100.5), "body_cm": by_size(80.0, 91.0),
                  "cm": by_size(10.5, 9.5)}],
        "reach": [
            {"sleeve": "sleeve", "way": "from the neck", "cm": by_size(70.0, 72.0), "body_cm": by_size(68.5, 69.5)},
            {"sleeve": "other", "way": "half the span", "cm": by_size(1.0, 2.0), "body_cm": {}},
        ],
        "openings": [{
            "edges": [{"of": "collar", "edge": "rim", "copy": 2}, {"of": "front", "edge": "neck", "copy": 1}],
            "role": "neck", "copies": 3, "cm": by_size(40.0, 42.0), "stretched_cm": by_size(60.0, 63.0),
        }],
        "passes": [{"opening": "collar", "part": "head", "never": True, "cm": by_size(40.0, 42.0),
                    "stretched_cm": by_size(60.0, 63.0), "needed_cm": by_size(55.5, 56.5)}],
        "buttons": [{"over": "band", "under": "strip", "overlap_cm": by_size(2.5, 2.6), "from_edge_cm": by_size(1.25, 1.35),
                     "at_cm": [by_size(1.0, 1.1), by_size(5.0, 5.1)]}],
    }  # fmt: skip
    assert plan_json(told.outcome(fit=None))["worn"] == {}


def test_a_size_has_these_keys() -> None:
    assert list(SIZE) == [
        *("size", "pieces", "bands", "deviations", "work", "joins", "yarn", "bobbins", "floats", "operations", "loops", "read_back")
    ]
    assert (SIZE["size"], SIZE["operations"], SIZE["loops"], SIZE["read_back"]) == ("S", 1234, 16012, True)
    other = DOCUMENT["sizes"][1]
    assert (other["size"], other["operations"], other["loops"], other["read_back"]) == ("L", 7, 8, False)
    assert [other[key] for key in ("deviations", "work", "joins", "yarn")] == [[], [], [], []]


def test_a_piece() -> None:
    (piece,) = SIZE["pieces"]
    measure = {"what": "depth of neck", "unit": "rows", "wanted_cm": 8.111, "knitted_cm": 8.222, "off": 0.333}
    start = {
        "way": "along", "along": [{"piece": "back", "edge": "neck"}, {"piece": "back", "edge": "end"}],
        "pick_ups": [told.TOLD_PICK_UP, {**told.TOLD_PICK_UP, "between": None}],
    }  # fmt: skip
    assert piece == {
        "name": "front", "fabric": "plain", "copies": 2, "mirror_of": "back", "purpose": "hood", "start": start, "end": "gathered",
        **told.TOLD_COUNTS,
        "knitted": {"first_needle": "L 29", "last_needle": "R 23", "most_stitches": 52, "rows": 78, "loops": 4321,
                    "measures": [measure]},
    }  # fmt: skip


def test_what_a_piece_has_now_and_then() -> None:
    outs = (SizedNeedlesOut(4, 9, (-3, 3), 6, told.AT),)
    found = counts(replace(told.SIZED, needles_out=outs, end_rows=11))
    assert found == {
        **told.TOLD_COUNTS,
        "needles_out": [{"from_row": 4, "to_row": 9, "needles": [-3, 3]}],
        "end_edging_rows": 11,
    }


def test_bands_and_what_was_wanted() -> None:
    assert SIZE["bands"] == [{
        "name": "collar", "stitches": 80, "rows": 12, "pick_ups": [told.TOLD_PICK_UP], "holes": [told.TOLD_SLOT],
        "holes_behind": [{**told.TOLD_SLOT, "row": 18}],
    }]  # fmt: skip
    assert SIZE["deviations"] == [
        {"piece": "front", "what": "width at hem", "unit": "st", "wanted_cm": 44.444, "wanted": 57.778, "solved": 58,
         "solved_cm": 44.667},
        {"piece": "front", "what": "height of top", "unit": "rows", "wanted_cm": 30.0, "wanted": 60.0, "solved": 61,
         "solved_cm": 30.5},
    ]  # fmt: skip


def test_the_work_in_order() -> None:
    block, seam, ratio = SIZE["work"]
    assert block == {
        "kind": "block", "name": "front", "copies": 2,
        "rows": [{"row": 0, "operations": [{"do": "set-counter", "rows": 0}, {"do": "pass", "to": "left"}]}],
    }  # fmt: skip
    edges = [{"piece": "front", "edge": "side", "copy": 1}, {"piece": "front", "edge": "end", "copy": 2}]
    assert seam == {
        "kind": "seam", "one": edges, "other": [{"piece": "back", "edge": "side", "copy": 0}], "ends": ["bottom", "left"],
        "easing_mm": 20, "longer_mm": 15, "way": "gathered", "rows": 31, "one_mm": 410, "other_mm": 420,
    }  # fmt: skip
    assert ratio == {
        "kind": "seam", "one": [{"piece": "front", "edge": "end", "copy": 0}], "other": [], "ends": ["right", "top"],
        "easing_mm": 0, "longer_mm": 0, "way": "grafted", "rows": 0, "one_mm": 0, "other_mm": 0, "ratio": [3, 4],
    }  # fmt: skip


def test_joins_as_proven() -> None:
    assert SIZE["joins"] == [
        {"times": 3, "one": [{"piece": "front", "edge": "side", "copy": 2}], "other": [{"piece": "back", "edge": "side"}],
         "one_rows": 54, "other_rows": 55, "one_cm": 29.111, "other_cm": 29.222, "easing_cm": 1.111, "longer_cm": 2.222,
         "way": "grafted", "matching": True},
        {"times": 1, "one": [{"piece": "front", "edge": "end"}], "other": [], "one_rows": None, "other_rows": None, "one_cm": 9.0,
         "other_cm": 8.0, "easing_cm": 0, "longer_cm": 0, "way": "sewn", "matching": False},
    ]  # fmt: skip


def test_yarn_bobbins_and_floats() -> None:
    none = {"garment_grams": 0, "swatch_grams": 0, "reserve_grams": 0, "balls": 0}
    known = [{"from": "weighed", "fabrics": ["plain", "lace"]}, {"from": "estimated", "fabrics": []}]
    assert SIZE["yarn"] == [
        {"yarn": "wool", "label": "aran wool", "kind": "yarn", "metres": 700.123, "grams": 580.123, "garment_grams": 480.123,
         "swatch_grams": 60.123, "reserve_grams": 40.123, "balls": 6, "reckoned": {"by": known, "spare": 0.08}, "error": 0.05},
        {**none, "yarn": "waste", "label": "", "kind": "waste", "metres": 31.0, "grams": 20.0, "error": 0.1,
         "reckoned": {"as_in_fabric": "plain", "as_thick_as": "aran wool"}},
        {**none, "yarn": "ravel", "label": "", "kind": "ravel", "metres": 2.5, "grams": 0.0, "error": 0.15,
         "reckoned": {"length_cm": 150, "ends_cm": 20, "times": 3}},
    ]  # fmt: skip
    assert SIZE["bobbins"] == [
        {"piece": "front", "chart": "holes", "yarn": "marl", "number": 4, "first": "L 3", "last": "R 2", "row": 12, "last_row": 30,
         "rests": [{"from": 14, "to": 16}, {"from": 18, "to": 20}], "metres": 1.235},
    ]  # fmt: skip
    assert SIZE["floats"] == [
        {"piece": "front", "yarn": "marl", "row": 17, "first": "L 9", "last": "L 1", "stitches": 8, "cm": 4.444}
    ]


@pytest.mark.parametrize(
    ("value", "told_"), [(1.23449, "1.234"), (-0.0001, "0.0"), (0.0005001, "0.001"), (2, "2.0"), (-1.5, "-1.5")]
)
def test_lengths_are_rounded_to_a_thousandth_and_nothing_is_less_than_nothing(value: float, told_: str) -> None:
    assert str(cm(value)) == told_


def test_a_field_that_says_nothing_is_left_out_where_the_page_says_so() -> None:
    assert "row" not in moves.move(HangFeet((1, 2)))
    assert moves.move(HangFeet((1, 2), row=4))["row"] == 4
    assert moves.move(HangFeet((1, 2)))["onto"] == [1, 2]
