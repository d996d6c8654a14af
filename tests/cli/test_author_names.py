"""`name front, in german "…"`: the author's words stand on German pages, are read back, and can be given."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from walewright.cli import main

Said = pytest.CaptureFixture[str]

LINES = """\
name front, in german "Latz"
name half, in german "halbe Weite"
name chest, in german "Oberweite rundum"
name underarm, in german "unterer Arm"
name side, in german "Flanke"
name welt, in german "Bund unten"
name wool, in german "Schurwolle"
name S, in german "klein"
"""


@pytest.fixture
def named(sound: Path) -> Path:
    sound.write_text(LINES + sound.read_text(encoding="utf-8"), encoding="utf-8")
    return sound


def test_the_authors_words_stand_on_pages_and_are_read_back(named: Path, capsys: Said) -> None:
    out = named.parent / "out"
    assert main(["build", str(named), "--language", "german", "--as", "text,html,plan", "--out", str(out)]) == 0
    assert capsys.readouterr().err == ""
    # Where a name is read back, its blanks hold it together.
    text, page = (
        (out / f"slackwater.{kind}").read_text(encoding="utf-8").replace("\N{NO-BREAK SPACE}", " ") for kind in ("txt", "html")
    )
    for word in ("Latz", "Oberweite rundum", "unterer Arm", "Flanke", "Bund unten", "klein"):
        assert word in text or word.capitalize() in text, word
        assert word in page or word.capitalize() in page, word
    # How to read the pattern speaks of fronts whatever their author calls one.
    assert not any(line.startswith("Vorderteil") for line in text.splitlines())
    assert "Rückenteil" in text
    plan = json.loads((out / "slackwater.plan.json").read_text(encoding="utf-8"))
    assert "klein" in json.dumps(plan, ensure_ascii=False)


def test_an_english_page_is_as_it_was(named: Path) -> None:
    plain, out = named.parent / "plain", named.parent / "out"
    plain.mkdir()
    (plain / named.name).write_text(named.read_text(encoding="utf-8").removeprefix(LINES), encoding="utf-8")
    for file, folder in ((named, out), (plain / named.name, plain / "out")):
        assert main(["build", str(file), "--as", "text", "--out", str(folder)]) == 0
    assert (out / "slackwater.txt").read_bytes() == (plain / "out" / "slackwater.txt").read_bytes()


def test_what_is_given_can_be_called_so(named: Path, capsys: Said) -> None:
    told = []
    for name in ("Oberweite rundum", "Oberweite_rundum", "chest"):
        code = main(["check", str(named), "--size", "S", "--language", "german", "--measure", f"{name}=86 cm"])
        told.append((code, capsys.readouterr()))
    assert told[1][0] == 0
    assert told[1] == told[2]


def test_a_fault_is_told_and_nothing_written(named: Path, capsys: Said) -> None:
    named.write_text(named.read_text(encoding="utf-8").replace('"Latz"', '"Latz/Bluse"'), encoding="utf-8")
    out = named.parent / "out"
    for language in ("english", "german"):
        assert main(["build", str(named), "--language", language, "--as", "text", "--out", str(out)]) == 1
        assert "[name-in-language]" in capsys.readouterr().err
    assert not out.exists()


def test_definitions_may_say_what_their_users_call_things(sound: Path, capsys: Said) -> None:
    (sound.parent / "yarns.wale").write_text(
        'yarn wool "chunky wool", 100 g = 120 m\nname wool, in german "Schurwolle"\nname front, in german "Latz"\n',
        encoding="utf-8",
    )
    text = sound.read_text(encoding="utf-8").replace('yarn wool "chunky wool", 100 g = 120 m', 'use wool from "yarns.wale"')
    sound.write_text(text, encoding="utf-8")
    out = sound.parent / "out"
    assert (
        main(["build", str(sound), str(sound.parent / "yarns.wale"), "--language", "german", "--as", "text", "--out", str(out)])
        == 0
    )
    assert capsys.readouterr().err == ""
    assert "Latz" in (out / "slackwater.txt").read_text(encoding="utf-8")


def test_how_far_it_may_go_is_told_whatever_it_is_called(named: Path, capsys: Said) -> None:
    """What is tried for it is given by the names of the source."""
    told = []
    for size, name in (("S", "chest"), ("klein", "Oberweite_rundum"), ("klein", "Oberweite rundum")):
        assert main(["check", str(named), "--size", size, "--language", "german", "--measure", f"{name}=400 cm"]) == 1
        err = capsys.readouterr().err
        assert "[given-too-far]" in err
        told.append([line for line in err.splitlines() if "Abhilfe" in line])
    assert told[0]
    assert "darf hier höchstens" in told[0][0]
    assert told == [told[0]] * 3
