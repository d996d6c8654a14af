"""`--watch`: what a saved file changes is made, until somebody asks to stop."""

from __future__ import annotations

import signal
import sys
from pathlib import Path

import pytest

from tests.cli.publishing import CATALOGUE, SCARF, Publisher, publisher, told, watching
from walewright.cli import main


@pytest.mark.parametrize("into", ["beside", "within"])
def test_what_a_saved_file_changes_is_made(tmp_path: Path, into: str) -> None:
    made = publisher(tmp_path / "scarves")
    if into == "within":
        made = Publisher(made.folder, made.folder / "shelf")
    with watching(made) as run:
        assert told(run)[-1] == "made 6 files; 0 as before"
        made.source("skerry").write_text(SCARF.format(name="Skerry", length=44), encoding="utf-8")
        assert told(run)[-1] == "made 3 files; 3 as before"
        assert "44 cm long" in made.files()["skerry.txt"].decode()
        # What is wrong is told, and holds up nothing.
        made.says(CATALOGUE.replace("[usual]", "[usul]"))
        assert any("error[catalogue-line]" in line for line in told(run))
        made.says(CATALOGUE.replace('"text"]', '"text", "plan"]'))
        assert told(run)[-1] == "made 2 files; 6 as before"
        run.send_signal(signal.SIGTERM)
        assert run.wait(timeout=60) == 128 + signal.SIGTERM


def test_without_its_package_it_is_told(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(sys.modules, "watchfiles", None)
    made = publisher(tmp_path / "scarves")
    assert main(made.arguments("--watch")) == 2
    assert 'pip install "walewright[watch]"' in capsys.readouterr().err
