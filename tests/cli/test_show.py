"""What `show` prints of each stage."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from walewright.cli import main
from walewright.cli.commands.show import RESULTS, data

Said = pytest.CaptureFixture[str]


def shown(capsys: Said, *arguments: str) -> Any:
    assert main(["show", *arguments]) == 0
    told = capsys.readouterr()
    assert "error" not in told.err
    return json.loads(told.out)


@pytest.mark.parametrize("stage", RESULTS)
def test_every_stage_is_shown(stage: str, sound: Path, capsys: Said) -> None:
    found = shown(capsys, stage, str(sound))
    assert (found["stage"], found["file"]) == (stage, str(sound))
    assert found["result"]


def test_counts_follow_what_is_given(sound: Path, capsys: Said) -> None:
    def widest(*given: str) -> int:
        sizes = shown(capsys, "solve", str(sound), *given)["result"]["sizes"]
        return max(piece["start"] for piece in sizes[0]["pieces"])

    assert widest("--tension", "plain=20 st 30 rows") > widest()


def test_the_same_hands_are_read_back(sound: Path, capsys: Said) -> None:
    planned, read = (shown(capsys, stage, str(sound))["result"] for stage in ("hands", "readback"))
    for work in planned:
        for block in work["tasks"]:
            # Words do not say which piece a welt is of.
            assert block.pop("of", None) != ""
    for work in read:
        assert {block.pop("of", "") for block in work["tasks"]} == {""}
    assert planned == read


def test_what_is_not_reached_is_not_shown(sound: Path, capsys: Said) -> None:
    narrow = sound.read_text(encoding="utf-8").replace("machine bulky", "machine own\n    needles 20\n    pitch 9 mm")
    sound.write_text(narrow, encoding="utf-8")
    # It is understood, and does not go on to the bed.
    assert shown(capsys, "design", str(sound))["result"]["is"] == "Design"
    assert main(["show", "solve", str(sound)]) == 1
    told = capsys.readouterr()
    assert told.out == ""
    assert "error[wider-than-bed]" in told.err


def test_an_unknown_stage_is_refused(sound: Path, capsys: Said) -> None:
    assert main(["show", "stitching", str(sound)]) == 2
    told = capsys.readouterr()
    assert told.out == ""
    assert "no stage is called `stitching`" in told.err
    assert all(stage in told.err for stage in RESULTS)


def test_only_data_is_shown() -> None:
    assert data({(1, "a"): {2, 1}}) == [[[1, "a"], [1, 2]]]
    with pytest.raises(TypeError, match="object is not data"):
        data(object())
