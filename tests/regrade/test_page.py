"""The page of the message does what it says."""

from __future__ import annotations

import re
import shlex
from pathlib import Path

from walewright.cli import main
from walewright.report.codes import REGRADE

PAGES = Path(__file__).parents[2] / "docs" / "errors"


def test_the_command_on_the_page_goes_too_far_and_the_other_does_not(tmp_path: Path, capsys, monkeypatch) -> None:  # type: ignore[no-untyped-def]
    page = (PAGES / "given-too-far.md").read_text(encoding="utf-8")
    (text,) = re.findall(r"^```wale\n(.*?)^```$", page, re.DOTALL | re.MULTILINE)
    (wrong,) = re.findall(r"^```sh wrong\n(.*?)\n```$", page, re.DOTALL | re.MULTILINE)
    (right,) = re.findall(r"^```sh\n(.*?)\n```$", page, re.DOTALL | re.MULTILINE)
    (tmp_path / "cushion.wale").write_text(text, encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    assert main(shlex.split(right)[1:]) == 0
    capsys.readouterr()
    assert main(shlex.split(wrong)[1:]) == 1
    assert capsys.readouterr().err.startswith("error[given-too-far]")


def test_every_code_has_its_page() -> None:
    for code, info in REGRADE.items():
        assert (PAGES / f"{code}.md").read_text(encoding="utf-8").startswith(f"# {code}\n\n{info.severity.value.capitalize()}. ")
