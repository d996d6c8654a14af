"""A shipped garment is found by its name from any folder."""

from __future__ import annotations

from pathlib import Path

import pytest

from walewright.cli import main


def test_a_shipped_garment_is_checked_and_built_by_its_name(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    assert main(["check", "sandbar"]) == 0
    assert "Sandbar" in capsys.readouterr().out
    assert main(["build", "sandbar", "--as", "plan", "--out", "out"]) == 0
    assert [file.name for file in (tmp_path / "out").iterdir()] == ["sandbar.plan.json"]
    capsys.readouterr()
    assert main(["choices", "sandbar"]) == 0
    assert "span" in capsys.readouterr().out


def test_a_name_that_is_no_garment_is_no_source(capsys: pytest.CaptureFixture[str]) -> None:
    for name in ("sandba", "tables/women", "../patterns/sandbar"):
        assert main(["check", name]) == 2
        assert "source-name" in capsys.readouterr().err


def test_an_own_source_of_that_name_is_meant_with_its_ending(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    (tmp_path / "sandbar.wale").write_text('pattern "Mine"\n', encoding="utf-8")
    assert main(["check", "sandbar.wale"]) == 1
    assert "sandbar.wale" in capsys.readouterr().err
