"""What day it is, or is said to be."""

from __future__ import annotations

import datetime
from pathlib import Path

import pytest

from walewright import world
from walewright.cli import main
from walewright.report.english import in_english


def test_the_date_can_be_stated() -> None:
    assert world.today({"SOURCE_DATE_EPOCH": "86400"}) == (datetime.date(1970, 1, 2), None)
    assert world.today({"SOURCE_DATE_EPOCH": "86399"}) == (datetime.date(1970, 1, 1), None)
    assert world.today({"SOURCE_DATE_EPOCH": "253402300799"}) == (datetime.date(9999, 12, 31), None)
    for nought in ("0", "-0", "0" * 5000):
        assert world.today({"SOURCE_DATE_EPOCH": nought}) == (datetime.date(1970, 1, 1), None)
    for unstated in ({}, {"SOURCE_DATE_EPOCH": ""}):
        day, fault = world.today(unstated)
        assert fault is None
        assert day is not None
        assert day >= datetime.date(2025, 1, 1)


@pytest.mark.parametrize(
    ("given", "why"),
    [
        ("soon", "no number"),
        ("1e9", "no number"),
        (" 5", "no number"),
        ("²", "no number"),
        ("٣", "no number"),
        ("-", "no number"),
        ("-5", "before 1970"),
        ("253402300800", "after the year 9999"),
        ("9" * 40, "after the year 9999"),
        ("9" * 5000, "after the year 9999"),
    ],
)
def test_a_date_that_is_none_is_told(given: str, why: str) -> None:
    day, fault = world.today({"SOURCE_DATE_EPOCH": given})
    assert day is None
    assert fault is not None
    assert fault.code == "bad-date"
    assert why in in_english(fault).message
    assert len(in_english(fault).message) < 200


def test_a_date_that_is_none_stops_a_build_before_anything_is_done(
    sound: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "9" * 30)
    assert main(["build", str(sound), "--out", str(sound.parent / "out")]) == 2
    assert "bad-date" in capsys.readouterr().err
    assert not (sound.parent / "out").exists()
