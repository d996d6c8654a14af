"""Files that cannot be read or written, and several files in one command."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from walewright import world
from walewright.cli import main

Said = pytest.CaptureFixture[str]


@pytest.mark.parametrize(
    ("name", "content", "code"),
    [
        ("binary.wale", b"pattern\0\x01\x02", "source-not-text"),
        ("latin.wale", 'pattern "Fl\xfcgel"\n'.encode("latin-1"), "source-not-text"),
        ("empty.wale", b"", "empty-source"),
        ("large.wale", b"# " + b"x" * world.LARGEST_SOURCE, "source-too-large"),
    ],
)
def test_an_unreadable_file(name: str, content: bytes, code: str, tmp_path: Path, capsys: Said) -> None:
    (tmp_path / name).write_bytes(content)
    assert main(["check", str(tmp_path / name)]) == 1
    told = capsys.readouterr()
    assert code in told.err
    assert name in told.err
    assert told.out == ""


def test_a_missing_file_and_a_folder(tmp_path: Path, capsys: Said) -> None:
    (tmp_path / "folder.wale").mkdir()
    assert main(["check", str(tmp_path / "none.wale"), str(tmp_path / "folder.wale")]) == 1
    told = capsys.readouterr().err
    assert "source-missing" in told
    assert "source-is-folder" in told


def test_windows_line_ends_and_a_byte_order_mark_mean_nothing(sound: Path, capsys: Said) -> None:
    text = sound.read_bytes()
    assert main(["check", str(sound)]) == 0
    plain = capsys.readouterr().out
    sound.write_bytes(b"\xef\xbb\xbf" + text.replace(b"\n", b"\r\n"))
    assert main(["check", str(sound)]) == 0
    assert capsys.readouterr().out == plain


def test_an_output_folder_that_is_a_file(sound: Path, capsys: Said) -> None:
    blocked = sound.parent / "blocked"
    blocked.write_text("mine", encoding="utf-8")
    assert main(["build", str(sound), "--out", str(blocked), "--as", "text,plan"]) == 1
    assert "output-unwritable" in capsys.readouterr().err
    assert blocked.read_text(encoding="utf-8") == "mine"


def test_one_unwritable_file_leaves_all_old_ones(sound: Path, capsys: Said) -> None:
    out = sound.parent / "out"
    (out / "slackwater.plan.json").mkdir(parents=True)
    (out / "slackwater.txt").write_text("old", encoding="utf-8")
    assert main(["build", str(sound), "--out", str(out), "--as", "text,plan"]) == 1
    assert "output-unwritable" in capsys.readouterr().err
    assert (out / "slackwater.txt").read_text(encoding="utf-8") == "old"
    assert sorted(os.listdir(out)) == ["slackwater.plan.json", "slackwater.txt"]


def test_other_files_go_on(sound: Path, capsys: Said) -> None:
    out = sound.parent / "out"
    assert main(["build", str(sound.parent / "none.wale"), str(sound), "--out", str(out), "--as", "text"]) == 1
    told = capsys.readouterr()
    assert "source-missing" in told.err
    assert told.out == f"wrote {out / 'slackwater.txt'}\n"


def test_two_sources_of_one_name(sound: Path, capsys: Said) -> None:
    again = sound.parent / "again" / sound.name
    again.parent.mkdir()
    again.write_bytes(sound.read_bytes())
    assert main(["build", str(sound), str(again), "--out", str(sound.parent / "out")]) == 2
    assert "output-clash" in capsys.readouterr().err
    assert not (sound.parent / "out").exists()


def test_a_fault_of_the_compiler_is_told_without_a_traceback(sound: Path, capsys: Said, monkeypatch: pytest.MonkeyPatch) -> None:
    from walewright import solve

    def broken(*_: object) -> object:
        raise ZeroDivisionError("left as it is")

    monkeypatch.setattr(solve, "solve", broken)
    assert main(["build", str(sound), "--out", str(sound.parent / "out")]) == 70
    told = capsys.readouterr().err
    assert "compiler-fault" in told
    assert "walewright 0.1.0" in told
    assert "ZeroDivisionError: left as it is" in told
    assert "Traceback" not in told
    assert not (sound.parent / "out").exists()


def test_a_very_deep_expression_is_told(sound: Path, capsys: Said) -> None:
    deep = "(" * 3000 + "1 cm" + ")" * 3000
    sound.write_text(sound.read_text(encoding="utf-8").replace("length - 5 cm", f"length - {deep}"), encoding="utf-8")
    assert main(["check", str(sound)]) == 1
    assert "too-deep" in capsys.readouterr().err
