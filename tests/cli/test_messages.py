"""`--messages json`: what a program reads in place of the text for people, and edits that do what their help says."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from walewright.cli import main
from walewright.cli.command_line import CommandLine
from walewright.cli.edits import applied
from walewright.report.as_json import Edit
from walewright.report.model import Span

CUSHION = """pattern "Cushion"
    summary "A flat square."

sizes M L
    bust 40 44 cm, to fit

machine standard

yarn wool "wool", 50 g = 120 m

fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm, 11 g

piece back in plain
    levels hem 0 cm, top 30 cm
    start 40 cm wide with e-wrap
    edges straight to top
    end cast off
"""


def messages(
    capsys: pytest.CaptureFixture[str], folder: Path, text: str, command: str = "check", code: int = 1
) -> list[dict[str, Any]]:
    source = folder / "cushion.wale"
    source.write_text(text, encoding="utf-8")
    assert main([command, str(source), "--messages", "json"]) == code
    return [json.loads(line) for line in capsys.readouterr().err.splitlines()]


def edited(text: str, help_: dict[str, Any]) -> str:
    return applied(text, [Edit(Span(e["file"], e["start"], e["end"]), e["text"]) for e in help_["edits"]])


def test_what_is_right_says_nothing(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    assert messages(capsys, tmp_path, CUSHION, code=0) == []


@pytest.mark.parametrize("command", ["check", "choices"])
def test_a_misspelt_name_is_edited_to_the_one_that_is_close(
    command: str, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    wrong = CUSHION.replace("in wool", "in wolo")
    (found,) = [m for m in messages(capsys, tmp_path, wrong, command) if m["code"] == "unknown-name"]
    (help_,) = [h for h in found["helps"] if h["edits"]]
    assert edited(wrong, help_) == CUSHION
    assert messages(capsys, tmp_path, edited(wrong, help_), command, code=0) == []


def two_sides() -> str:
    """A back of 30 cm joined row for row to a front of 36 cm."""
    back = CUSHION.replace("straight to top", "straight to top called side")
    front = back[back.index("\npiece back") :].replace("piece back", "piece front").replace("top 30 cm", "top 36 cm")
    return f"{back}{front}\njoin back side to front side\n"


@pytest.mark.parametrize(
    ("wrong", "code", "helps"),
    [(CUSHION.replace("40 cm wide", "120 cm wide"), "wider-than-bed", 1), (two_sides(), "join-does-not-meet", 2)],
    ids=["a width", "heights"],
)
def test_a_figure_that_would_do_is_edited_where_it_is_a_number_of_the_text(
    wrong: str, code: str, helps: int, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    (found,) = messages(capsys, tmp_path, wrong)
    assert found["code"] == code
    edits = [h for h in found["helps"] if h["edits"]]
    assert len(edits) == helps
    for help_ in edits:
        assert all(e["text"].endswith(" cm") for e in help_["edits"])
        assert [m for m in messages(capsys, tmp_path, edited(wrong, help_), code=0) if m["severity"] == "error"] == []


def test_a_figure_that_is_worked_out_is_no_edit(capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    (found,) = messages(capsys, tmp_path, CUSHION.replace("40 cm wide", "3 * bust wide"))
    assert found["code"] == "wider-than-bed"
    assert [h for h in found["helps"] if h["edits"]] == []


def test_a_wrong_command_line_is_said_in_the_form_it_asks_for(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["check", "--messages=json", "--wide"]) == 2
    (found,) = [json.loads(line) for line in capsys.readouterr().err.splitlines()]
    assert (found["code"], found["facts"]["option"]) == ("option-unknown", "--wide")
    assert found["span"]["file"] == "command line"


@pytest.mark.parametrize("command", ["check", "build", "choices", "format"])
def test_a_form_that_there_is_not_is_refused(command: str, capsys: pytest.CaptureFixture[str], tmp_path: Path) -> None:
    source = tmp_path / "cushion.wale"
    source.write_text(CUSHION, encoding="utf-8")
    assert main([command, str(source), "--messages", "xml"]) == 2
    assert "--messages cannot be 'xml'" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("arguments", "form"),
    [
        (("check", "--messages", "json", "--messages", "text"), "text"),
        (("check", "--messages=text", "--messages", "json"), "json"),
        (("check",), "text"),
        (("--messages", "json"), "json"),
        (("--messages=json",), "json"),
        (("--messages", "text"), "text"),
    ],
)
def test_the_form_is_read_from_the_arguments(arguments: tuple[str, ...], form: str) -> None:
    assert CommandLine(arguments).form == form
