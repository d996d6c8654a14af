"""What a step or an operation is where nothing more is said of it, as most are."""

from __future__ import annotations

from dataclasses import MISSING, fields, is_dataclass

import pytest

from walewright.knit import operations, steps
from walewright.knit.copies import NONE

UNSAID = {
    # Folded towards the knitter; hung, or begun on waste yarn, as it is usually done.
    "FoldUp": {"way": "in front"},
    "WasteStart": {"way": "comb"},
    "RehangStart": {"facing": "purl"},
    "Rehang": {"facing": "purl"},
    "HangFeet": {"behind": False},
    "PickUpAlong": {"copy": NONE, "loops": "", "stretch": "", "low": 0, "high": 0, "per": 0, "every": 0},
    "PickUpEdge": {"over": False, "facing": "purl", "left_end": "", "copy": 0, "low": 0, "high": 0, "ratio": (0, 0)},
    "HangToLink": {"copy": NONE},
    "Copy": {"number": 0, "each": False},
    # Sewn edge to edge, neither longer than the other.
    "JoinEdges": {
        "longer_mm": 0,
        "way": "sewn",
        "rows": 0,
        "one_mm": 0,
        "other_mm": 0,
        "edges": "",
        "strips": (),
        "ratio_rows": 0,
        "ratio_stitches": 0,
    },
    "Join": {"longer_mm": 0, "way": "sewn", "rows": 0, "one_mm": 0, "other_mm": 0, "ratio": (0, 0)},
    # Spread with a whole gap at each end.
    "SpreadEvenly": {"first_singles": 0, "first_runs": 0},
    # No length of yarn is kept for anything.
    "SlotOnWaste": {"length_cm": 0},
    "SlotClosed": {"length_cm": 0},
    "CastOnBetween": {"length_cm": 0},
    "CastOn": {"own_length": False, "length_cm": 0},
    "BreakOff": {"tail_cm": 0},
    "BreakYarn": {"tail_cm": 0},
    # The usual rows.
    "UseYarnStep": {"before": "", "fabric": ""},
    "UseYarn": {"carried": False},
    "InFabric": {"first": 0, "last": -1},
    "PictureRow": {"crossed": True},
    "LatchInStages": {"sooner": ""},
    "LatchPanelInStages": {"sooner": ""},
    "LatchUp": {"goes_on": False},
    "MarkEdges": {"ends": "both ends", "at": "begin"},
    "Say": {"manner": "note"},
    "StepBlock": {"joining": False, "before": "", "of": "", "linked": None},
    "Block": {"copies": 1, "of": ""},
}


@pytest.mark.parametrize("made", [steps, operations], ids=["steps", "operations"])
def test_what_is_not_said_is_what_is_usual(made: object) -> None:
    found = {}
    for name, kind in vars(made).items():
        if is_dataclass(kind):
            unsaid = {f.name: f.default for f in fields(kind) if f.default is not MISSING and f.name != "origin"}
            if unsaid:
                found[name] = unsaid
    assert set(UNSAID) <= {*vars(steps), *vars(operations)}
    assert found == {name: unsaid for name, unsaid in UNSAID.items() if hasattr(made, name)}
