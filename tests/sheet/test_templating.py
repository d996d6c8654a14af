"""Compiled templates lie where the interpreter keeps its own; nothing depends on it."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from walewright import world
from walewright.sheet import templating

TEMPLATE = "sheet/templates/sheet.html"


@pytest.fixture(autouse=True)
def _anew(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    monkeypatch.setattr(sys, "pycache_prefix", str(tmp_path))
    monkeypatch.setattr(sys, "dont_write_bytecode", False)
    templating.templates.cache_clear()
    yield
    templating.templates.cache_clear()


def kept(folder: Path) -> list[Path]:
    return sorted(path for path in folder.rglob("*") if path.is_file())


def test_kept_for_the_next_process(tmp_path: Path) -> None:
    templating.templates().get_template("macros.html")
    (once,) = kept(tmp_path)
    written = once.stat().st_mtime_ns
    templating.templates.cache_clear()
    templating.templates().get_template("macros.html")
    assert [path.stat().st_mtime_ns for path in kept(tmp_path)] == [written]


def test_one_that_is_broken_is_made_anew(tmp_path: Path) -> None:
    templating.templates().get_template("macros.html")
    (once,) = kept(tmp_path)
    whole = once.read_bytes()
    once.write_bytes(whole[: len(whole) // 2])
    templating.templates.cache_clear()
    templating.templates().get_template("macros.html")
    assert once.read_bytes() == whole


def test_nothing_where_the_interpreter_keeps_nothing(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "dont_write_bytecode", True)
    templating.templates().get_template("macros.html")
    assert world.compiled_beside(TEMPLATE) is None
    assert kept(tmp_path) == []


def test_nothing_where_no_folder_can_be_made(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    file = tmp_path / "file"
    file.write_text("")
    monkeypatch.setattr(sys, "pycache_prefix", str(file))
    assert world.compiled_beside(TEMPLATE) is None
    templating.templates().get_template("macros.html")


def test_a_full_disk_is_not_its_matter(monkeypatch: pytest.MonkeyPatch) -> None:
    def full(*_: object, **__: object) -> None:
        raise OSError(28, "No space left on device")

    templating.templates()
    monkeypatch.setattr(os, "replace", full)
    monkeypatch.setattr("tempfile.NamedTemporaryFile", full)
    templating.templates().get_template("macros.html")
