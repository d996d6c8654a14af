"""A knitter's copy from the command line: what can be given, and what comes of it."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from walewright.cli import main
from walewright.world import shipped_text

Said = pytest.CaptureFixture[str]


def test_what_can_be_given_is_listed_with_the_sources_figures(sound: Path, capsys: Said) -> None:
    sound.write_text(sound.read_text(encoding="utf-8").replace(" cm, to fit", ' cm, to fit "round the chest"', 1), encoding="utf-8")
    assert main(["choices", str(sound)]) == 0
    told = capsys.readouterr().out
    for word in ("--size", "S, M", "--measure", "chest", "--tension or --swatch", "--dial", "--yarn", "--bed", "shipped beds"):
        assert word in told, word
    assert "let" not in told
    assert "half" not in told, "what follows is not offered"


def test_a_source_that_cannot_be_understood_lists_nothing(sound: Path, capsys: Said) -> None:
    sound.write_text(sound.read_text(encoding="utf-8").replace("machine bulky", "machine bulkie"), encoding="utf-8")
    assert main(["choices", str(sound)]) == 1
    told = capsys.readouterr()
    assert "bulkie" in told.err
    assert told.out == ""


def test_a_copy_says_from_what_it_was_regraded(sound: Path) -> None:
    out = sound.parent / "out"
    own = [
        "--size",
        "m",
        "--measure",
        "Chest=95 cm",
        "--tension",
        "plain=13 st 18.5 rows",
        "--bed",
        "needles=120",
        "--dial",
        "plain=6",
    ]
    assert main(["build", str(sound), "--out", str(out), "--as", "html,text,plan", *own]) == 0
    text = (out / "slackwater.txt").read_text(encoding="utf-8")
    regraded = text.partition("Regraded\n")[2].partition("\n\n")[0]
    assert "Chest: 95 cm (in the source 92 cm)" in regraded
    assert "Bed: 120 needles, 8 mm apart (in the source 100 needles, 8 mm apart)" in regraded
    assert "Dial for plain: 6 (in the source " in regraded
    page = (out / "slackwater.html").read_text(encoding="utf-8")
    assert "In the source" in page
    assert "As you measured it" in page
    assert "Regraded: chest 95 cm" in page
    plan = json.loads((out / "slackwater.plan.json").read_text(encoding="utf-8"))
    assert [(g["kind"], g["name"]) for g in plan["regraded"]] == [
        ("measure", "chest"),
        ("tension", "plain"),
        ("dial", "plain"),
        ("bed", ""),
    ]
    assert plan["regraded"][0]["source_cm"] == {"M": 92.0}


def test_the_sources_own_edition_says_nothing_of_it(sound: Path) -> None:
    out = sound.parent / "out"
    assert main(["build", str(sound), "--out", str(out), "--as", "html,text,plan"]) == 0
    text = (out / "slackwater.txt").read_text(encoding="utf-8")
    assert "\nRegraded\n" not in text
    assert "\nTo regrade\n" in text
    page = (out / "slackwater.html").read_text(encoding="utf-8")
    assert "In this copy" not in page
    assert "<h2>To regrade</h2>" in page
    assert json.loads((out / "slackwater.plan.json").read_text(encoding="utf-8"))["regraded"] == []


def test_a_bed_kept_in_a_file(sound: Path, capsys: Said) -> None:
    bed = sound.parent / "mine.wale"
    bed.write_text("# My own.\nmachine mine\n    needles 110\n    pitch 9 mm\n", encoding="utf-8")
    assert main(["build", str(sound), "--size", "M", "--out", str(sound.parent), "--as", "text", "--bed", str(bed)]) == 0
    assert "machine: mine, 110 needles 9 mm apart" in (sound.parent / "slackwater.txt").read_text(encoding="utf-8")
    capsys.readouterr()
    bed.write_text("machine mine\n    needles 111\n    pitch 9 mm\n", encoding="utf-8")
    assert main(["check", str(sound), "--bed", str(bed)]) == 1
    told = capsys.readouterr().err
    assert "odd-needles" in told
    assert f"{bed}, line 2" in told


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("let a = 4 cm\n", "describes no bed"),
        ("machine a\n    needles 4\nmachine b\n    needles 4\n", "more than a bed"),
        ("machine a\n    needless 4 3 (\n", "mine.wale"),
    ],
)
def test_a_file_that_is_no_bed(text: str, shown: str, sound: Path, capsys: Said) -> None:
    bed = sound.parent / "mine.wale"
    bed.write_text(text, encoding="utf-8")
    assert main(["check", str(sound), "--bed", str(bed)]) == 2
    assert shown in capsys.readouterr().err
    assert main(["check", str(sound), "--bed", str(sound.parent / "none.wale")]) == 2
    assert "no such file" in capsys.readouterr().err


def test_the_first_garment_refuses_its_own_width_and_takes_its_body(tmp_path: Path, capsys: Said) -> None:
    path = tmp_path / "tidewrack.wale"
    path.write_text(shipped_text("patterns", "tidewrack.wale"), encoding="utf-8")
    assert main(["check", str(path), "--size", "M", "--measure", "half=30 cm"]) == 1
    told = capsys.readouterr().err
    assert "worked out" in told
    assert "`bust`" in told
    assert main(["check", str(path), "--size", "m", "--measure", "length=15 cm"]) == 1
    told = capsys.readouterr().err
    assert "`length` may be at least" in told
    assert "'length=15 cm'" in told
