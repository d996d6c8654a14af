"""Choices from the command line: taken, listed, printed, and all of them checked at once."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from tests.cli.bad_sources import SOUND
from walewright.cli import main

Said = pytest.CaptureFixture[str]
NECK = "    neck 20 cm wide, 2.5 cm deep, round, 14 cm flat, cast off\n"
SQUARE = "        neck 20 cm wide, 2.5 cm deep, square, cast off\n"
WELT = "    start half wide on waste yarn, with welt\n"
OFFERED = (
    SOUND.replace("sizes ", "choice neckline round, square\nchoice depth_of_welt deep, none\n\nsizes ", 1)
    .replace(NECK, f"    for neckline round\n    {NECK}    for neckline square\n{SQUARE}")
    .replace(WELT, f"    for depth_of_welt deep\n    {WELT}    for depth_of_welt none\n        start half wide with e-wrap\n", 1)
)


@pytest.fixture
def offered(tmp_path: Path) -> Path:
    path = tmp_path / "slackwater.wale"
    path.write_text(OFFERED, encoding="utf-8")
    return path


def test_all_ways_are_checked_at_once(offered: Path, capsys: Said) -> None:
    assert main(["check", str(offered), "--every-choice", "--size", "S"]) == 0
    heads = [line for line in capsys.readouterr().out.splitlines() if "1 size proven" in line]
    assert [head.partition("Slack Water, ")[2] for head in heads] == [
        "neckline round, depth_of_welt deep, 1 size proven",
        "neckline round, depth_of_welt none, 1 size proven",
        "neckline square, depth_of_welt deep, 1 size proven",
        "neckline square, depth_of_welt none, 1 size proven",
    ]


def test_what_is_chosen_stays_while_the_others_are_gone_through(offered: Path, capsys: Said) -> None:
    assert main(["check", str(offered), "--every-choice", "--size", "S", "--choose", "Neckline=square"]) == 0
    heads = [line for line in capsys.readouterr().out.splitlines() if "1 size proven" in line]
    assert [head.partition("Slack Water, ")[2] for head in heads] == [
        "neckline square, depth_of_welt deep, 1 size proven",
        "neckline square, depth_of_welt none, 1 size proven",
    ]


def test_what_only_one_way_has_is_told_once_with_the_way(offered: Path, capsys: Said) -> None:
    open_neck = OFFERED.replace("deep, square, cast off", "deep, square")
    offered.write_text(open_neck, encoding="utf-8")
    assert main(["check", str(offered), "--size", "S"]) == 0
    capsys.readouterr()
    assert main(["check", str(offered), "--every-choice", "--size", "S", "--messages", "json"]) == 1
    said = capsys.readouterr()
    errors = [json.loads(line) for line in said.err.splitlines() if '"error"' in line]
    assert [e["code"] for e in errors] == ["loops-left-open"]
    assert errors[0]["notes"][-1]["text"] == "so with `neckline square` and `depth_of_welt deep`"
    assert said.out.count("1 size proven") == 2


@pytest.mark.parametrize("command", ["check", "build", "show", "choices"])
def test_every_command_that_regrades_takes_a_choice(offered: Path, capsys: Said, command: str) -> None:
    more = ["--out", str(offered.parent / "out"), "--as", "text"] if command == "build" else []
    stage = ["design"] if command == "show" else []
    assert main([command, *stage, str(offered), "--choose", "neckline=sqare", *more]) == 1
    told = capsys.readouterr().err
    assert "no alternative is called `sqare`" in told
    assert "`square` is close" in told
    assert "--choose neckline=sqare" in told
    assert main([command, *stage, str(offered), "--choose", "neckline=square", *more]) == 0


@pytest.mark.parametrize(("typed", "code"), [("square", 2), ("neckline=", 2), ("collar=square", 1)])
def test_a_choice_is_a_name_and_an_alternative(offered: Path, capsys: Said, typed: str, code: int) -> None:
    assert main(["check", str(offered), "--choose", typed]) == code
    assert "command line" in capsys.readouterr().err


def test_the_list_of_what_can_be_given_has_the_alternatives(offered: Path, capsys: Said) -> None:
    assert main(["choices", str(offered)]) == 0
    told = capsys.readouterr().out
    assert " ".join(next(x for x in told.splitlines() if x.startswith("Neckline")).split()) == "Neckline --choose round, or square"
    assert "--choose neckline=square" in told


def test_a_copy_that_is_only_chosen_is_not_called_regraded(offered: Path) -> None:
    out = offered.parent / "out"
    assert main(["build", str(offered), "--out", str(out), "--as", "text", "--choose", "neckline=square"]) == 0
    text = (out / "slackwater.txt").read_text(encoding="utf-8")
    assert "Neckline: square (in the source round)" in text.partition("\nChosen\n")[2].partition("\n\n")[0]
    assert "\nRegraded\n" not in text


def test_a_copy_says_what_was_chosen_and_what_else_there_is(offered: Path) -> None:
    out = offered.parent / "out"
    own = ["--choose", "neckline=square", "--measure", "length=52 cm", "--size", "S"]
    assert main(["build", str(offered), "--out", str(out), "--as", "html,text,plan", *own]) == 0
    text = (out / "slackwater.txt").read_text(encoding="utf-8")
    assert (
        "Choices\n-------\nNeckline: square in this copy; in others round\nDepth of welt: deep in this copy; in others none\n"
        in text
    )
    assert "Neckline: square (in the source round)" in text.partition("Regraded\n")[2].partition("\n\n")[0]
    assert "Depth of welt: none" not in text
    page = (out / "slackwater.html").read_text(encoding="utf-8")
    assert "square in this copy; in others round" in page
    plan = json.loads((out / "slackwater.plan.json").read_text(encoding="utf-8"))
    assert plan["choices"] == [
        {"name": "neckline", "alternatives": ["round", "square"], "alternative": "square", "chosen": True},
        {"name": "depth_of_welt", "alternatives": ["deep", "none"], "alternative": "deep", "chosen": False},
    ]


def test_a_garment_of_another_alternative_is_what_cannot_be_made(offered: Path, capsys: Said) -> None:
    """What goes too far is tried with what was chosen."""
    assert main(["check", str(offered), "--choose", "neckline=square", "--measure", "chest=30 cm", "--size", "S"]) == 1
    assert "given-too-far" in capsys.readouterr().err
