"""The page of the message does what it says."""

from __future__ import annotations

import shlex
from pathlib import Path

from tests.docs import error_pages
from walewright.cli import main


def test_the_command_on_the_page_goes_too_far_and_the_other_does_not(tmp_path: Path, capsys, monkeypatch) -> None:  # type: ignore[no-untyped-def]
    page = error_pages.page("given-too-far")
    assert page.commands
    wrong, right = page.commands
    (tmp_path / error_pages.COMMANDS_FILE).write_text(page.source, encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    assert main(shlex.split(right)[1:]) == 0
    capsys.readouterr()
    assert main(shlex.split(wrong)[1:]) == 1
    assert capsys.readouterr().err.startswith("error[given-too-far]")
