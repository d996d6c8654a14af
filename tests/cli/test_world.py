"""The door to files: what comes in, what goes out, and that nothing is left half-done."""

from __future__ import annotations

import datetime
import os
import stat
from pathlib import Path

import pytest

from walewright import world


def test_shipped_files_are_found_by_name() -> None:
    assert "bulky.toml" in world.shipped_names("patterns", "machines", ".toml")
    assert world.shipped_names("patterns", "machines", ".csv") == ()
    assert world.shipped_names("patterns", "nowhere") == ()
    assert world.shipped_text("patterns", "machines/bulky.toml").count("needles = 100") == 1


def test_a_shipped_file_that_is_not_there_is_a_fault_of_the_installation() -> None:
    with pytest.raises(FileNotFoundError, match=r"grammar/none\.lark"):
        world.shipped_text("grammar", "none.lark")


def test_what_is_written_can_be_read_by_all_whom_the_folder_lets_in(tmp_path: Path) -> None:
    before = os.umask(0o022)
    try:
        assert world.write_atomic(str(tmp_path / "a" / "b.txt"), b"new") is None
    finally:
        os.umask(before)
    assert (tmp_path / "a" / "b.txt").read_bytes() == b"new"
    assert stat.S_IMODE((tmp_path / "a" / "b.txt").stat().st_mode) == 0o644
    assert os.listdir(tmp_path / "a") == ["b.txt"]


def test_a_full_disk_leaves_the_old_file_and_no_rest(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    target = tmp_path / "pattern.txt"
    target.write_bytes(b"old")

    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fdopen", full)
    fault = world.write_atomic(str(target), b"new")
    monkeypatch.undo()
    assert fault is not None
    assert fault.code == "output-unwritable"
    assert "no space left on device" in fault.message
    assert target.read_bytes() == b"old"
    assert os.listdir(tmp_path) == ["pattern.txt"]


def test_the_date_can_be_stated(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "86400")
    assert world.today() == datetime.date(1970, 1, 2)
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "soon")
    assert world.today() >= datetime.date(2025, 1, 1)
