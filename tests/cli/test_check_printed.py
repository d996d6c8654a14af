"""The whole of what `walewright check` prints of one small source, as it stands on the screen; read by eye when it changes."""

from __future__ import annotations

from pathlib import Path

import pytest
from syrupy.assertion import SnapshotAssertion

from walewright.cli import main

SOURCE = """\
pattern "Pouch"
    summary "Two squares with an edging, sewn on two sides."

sizes S L
    wide 14 18 cm, to fit "across what it is for"
    deep 12 15 cm

let spare = 2 cm

machine bulky

yarn wool "chunky wool", 100 g = 120 m

fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g

edging rim in plain, 1.5 cm deep, added after, cast off chain

piece back in plain
    levels bottom 0 cm, half deep / 2, fold deep - 2 cm, top deep
    start wide + 2 cm wide with e-wrap
    edges straight to top called side
    end on waste yarn

piece front in plain
    levels bottom 0 cm, half deep / 2, top deep - 3 cm
    start wide + 2 cm wide with e-wrap
    left edge straight to top called open
    right edge straight to top called side
    end on waste yarn

band mouth with rim along front end
band flap with rim along back end

join back start to front start
join back side_left to front side, easing 4 cm
finished pouch along back start, fits wide
"""


@pytest.mark.parametrize("options", [(), ("--all",)], ids=["short", "all"])
def test_check_as_it_is_printed(
    options: tuple[str, ...],
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
    snapshot: SnapshotAssertion,
) -> None:
    monkeypatch.chdir(tmp_path)
    Path("pouch.wale").write_text(SOURCE, encoding="utf-8")
    status = main(["check", "pouch.wale", *options])
    told = capsys.readouterr()
    assert (status, told.err.splitlines(), told.out.splitlines()) == snapshot
