"""Sources with one mistake: a coded message at the exact place, a proposal, no traceback, nothing written."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.cli.bad_sources import BAD, SOUND, Bad
from walewright import pipeline
from walewright.cli import main
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.report.codes import CODES
from walewright.report.model import Severity


def test_the_sound_source_is_sound() -> None:
    outcome = pipeline.compile(SOUND, "sound.wale", shipped(), Changes())
    assert outcome.diagnostics == ()
    assert outcome.proven


@pytest.mark.parametrize("bad", BAD, ids=lambda b: b.name)
def test_a_mistake_is_one_coded_message_in_its_place(bad: Bad) -> None:
    outcome = pipeline.compile(bad.text, "bad.wale", shipped(), Changes())
    errors = [d for d in outcome.diagnostics if d.severity is Severity.ERROR]
    assert [d.code for d in errors] == [bad.code]
    assert bad.code in CODES
    span = errors[0].labels[0].span
    begins = bad.text.rfind("\n", 0, span.start) + 1
    line = bad.text[begins : bad.text.find("\n", span.start)]
    assert bad.line in line
    assert bad.text[span.start : span.end].startswith(bad.at)
    assert errors[0].helps or errors[0].notes or len(errors[0].labels) > 1 or errors[0].labels[0].said
    assert not outcome.proven


@pytest.mark.parametrize("bad", BAD, ids=lambda b: b.name)
def test_a_mistake_writes_nothing(bad: Bad, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    source = tmp_path / "bad.wale"
    source.write_text(bad.text, encoding="utf-8")
    assert main(["build", str(source), "--out", str(tmp_path / "out")]) == 1
    told = capsys.readouterr()
    assert bad.code in told.err
    assert "Traceback" not in told.err
    assert told.out == ""
    assert [p.name for p in tmp_path.iterdir()] == ["bad.wale"]
