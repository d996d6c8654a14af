"""Definitions of other files: found beside the source and nowhere else, and told of at their own lines."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from walewright.cli import main

Said = pytest.CaptureFixture[str]
YARNS = 'yarn cream "chunky wool", 100 g = 120 m\n'
STITCHES = """\
use cream from "sub/yarns.wale"
fabric plain
    stocking stitch in cream at tension 4
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g
fabric rib
    latched rib every 3rd needle in cream at tension 2
    swatch 40 stitches by 60 rows = 28.6 cm by 29.4 cm, 56 g
edging welt in rib, deep deep, added after
let deep = length / 10
"""
PANEL = """\
pattern "Panel"
use plain, welt from "stitches.wale"
sizes S M
    length 40 42 cm
machine bulky
piece front in plain
    levels hem 0 cm, top length
    start 40 cm wide with e-wrap
    end on waste yarn
band top with welt along front end
"""


@pytest.fixture
def panel(tmp_path: Path) -> Path:
    folder = tmp_path / "house"
    (folder / "sub").mkdir(parents=True)
    (folder / "sub" / "yarns.wale").write_text(YARNS, encoding="utf-8")
    (folder / "stitches.wale").write_text(STITCHES, encoding="utf-8")
    path = folder / "panel.wale"
    path.write_text(PANEL, encoding="utf-8")
    return path


def told(path: Path, capsys: Said) -> list[tuple[str, str, str, int]]:
    """What `check` tells: code, case, and the file and the line of the first place."""
    capsys.readouterr()
    main(["check", str(path), "--messages", "json"])
    found = [json.loads(line) for line in capsys.readouterr().err.splitlines()]
    return [(d["code"], d["case"] or "", Path(d["span"]["file"]).name, d["span"]["start_line"]) for d in found]


def test_a_garment_with_definitions_of_other_files_is_that_with_its_own(panel: Path, capsys: Said) -> None:
    whole = panel.parent / "whole.wale"
    own = YARNS + STITCHES.partition("\n")[2]
    whole.write_text(PANEL.replace('use plain, welt from "stitches.wale"\n', own), encoding="utf-8")
    out = panel.parent / "out"
    assert main(["build", str(panel), str(whole), "--as", "text,plan", "--out", str(out)]) == 0
    assert capsys.readouterr().err == ""
    assert (out / "panel.txt").read_text().replace("panel.wale", "whole.wale") == (out / "whole.txt").read_text()
    plans = [json.loads((out / f"{name}.plan.json").read_text()) for name in ("panel", "whole")]
    assert plans[0].pop("files") == ["stitches.wale", "sub/yarns.wale"]
    assert plans[1].pop("files") == []
    assert plans[0] == plans[1]


def test_files_of_definitions_alone_are_looked_into_and_not_made(panel: Path, capsys: Said) -> None:
    files = [str(p) for p in sorted(panel.parent.rglob("*.wale"))]
    assert main(["build", *files, "--as", "text", "--out", str(panel.parent / "out")]) == 0
    assert capsys.readouterr().out.count("nothing is made of it") == 2
    assert [p.name for p in (panel.parent / "out").iterdir()] == ["panel.txt"]
    (panel.parent / "stitches.wale").write_text(STITCHES.replace("every 3rd", "every 1st"), encoding="utf-8")
    assert told(panel.parent / "stitches.wale", capsys) == [("bad-rib", "", "stitches.wale", 6)]


@pytest.mark.parametrize("command", [("check", "--every-choice"), ("choices",), ("show", "design"), ("show", "proof")])
def test_every_command_says_that_nothing_is_made_of_definitions(panel: Path, capsys: Said, command: tuple[str, ...]) -> None:
    assert main([*command, str(panel.parent / "stitches.wale")]) == 0
    assert "nothing is made of it" in capsys.readouterr().out


def test_a_fault_of_a_definition_is_told_at_its_own_line(panel: Path, capsys: Said) -> None:
    stitches = panel.parent / "stitches.wale"
    stitches.write_text(STITCHES.replace("every 3rd", "every 1st"), encoding="utf-8")
    assert told(panel, capsys) == [("bad-rib", "", "stitches.wale", 6)]
    main(["check", str(panel)])
    shown = capsys.readouterr().err
    assert "stitches.wale, line 6, column" in shown
    assert "latched rib every 1st needle in cream" in shown
    stitches.write_text(STITCHES.replace("edging welt in", "edging welt on"), encoding="utf-8")
    assert told(panel, capsys) == [("unreadable-line", "cannot-follow", "stitches.wale", 8)]


def test_what_neither_has_is_missing_at_the_line_that_needs_it(panel: Path, capsys: Said) -> None:
    panel.write_text(
        PANEL.replace("    length 40 42 cm", "    height 40 42 cm").replace("top length", "top height"), encoding="utf-8"
    )
    assert told(panel, capsys) == [("unknown-name", "", "stitches.wale", 9)]


def test_the_sources_own_goes_before_what_comes_along(panel: Path, capsys: Said) -> None:
    panel.write_text(PANEL + 'yarn cream "mohair", 50 g = 90 m\n', encoding="utf-8")
    assert main(["check", str(panel)]) == 0
    assert "mohair" in capsys.readouterr().out
    panel.write_text(PANEL + "let deep = 3 cm\n", encoding="utf-8")
    out = panel.parent / "out"
    assert main(["build", str(panel), "--as", "plan", "--out", str(out)]) == 0
    assert capsys.readouterr().err == ""
    plan = json.loads((out / "panel.plan.json").read_text(encoding="utf-8"))
    assert [band["rows"] for band in plan["sizes"][0]["bands"]] == [6]


def test_a_name_that_is_asked_for_is_not_defined_again(panel: Path, capsys: Said) -> None:
    own = "fabric plain\n    stocking stitch in cream at tension 4\n    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g\n"
    panel.write_text(PANEL + own, encoding="utf-8")
    capsys.readouterr()
    main(["check", str(panel), "--messages", "json"])
    (found,) = (json.loads(line) for line in capsys.readouterr().err.splitlines())
    assert found["code"] == "repeated-name"
    assert {Path(label["file"]).name for label in found["labels"]} == {"panel.wale", "stitches.wale"}


def test_what_is_asked_for_and_not_used_is_told_where_it_is_asked_for(panel: Path, capsys: Said) -> None:
    panel.write_text(PANEL.replace("use plain, welt", "use plain, welt, rib, deep").replace("in plain", "in rib"), encoding="utf-8")
    assert told(panel, capsys) == [("unused-name", "definition", "panel.wale", 2)]


@pytest.mark.parametrize(
    ("name", "case"),
    [
        ("../house/stitches.wale", "outside"), ("/etc/passwd", "outside"), ("sub/../stitches.wale", "outside"),
        ("link.wale", "outside"), ("linked/far.wale", "outside"), ("stitches.txt", "not-source"), ("stiches.wale", "missing"),
        ("sub", "not-source"), ("binary.wale", "unreadable"), ("folder.wale", "unreadable"), ("panel.wale", "ring"),
        ("ring.wale", "ring"), ("deep1.wale", "nested"), ("a\\b.wale", "outside"),
    ],
)  # fmt: skip
def test_a_file_that_cannot_be_used_is_told_at_the_line_that_names_it(panel: Path, capsys: Said, name: str, case: str) -> None:
    folder = panel.parent
    (folder.parent / "far.wale").write_text(STITCHES, encoding="utf-8")
    (folder / "link.wale").symlink_to(folder.parent / "far.wale")
    (folder / "linked").symlink_to(folder.parent)
    (folder / "binary.wale").write_bytes(b"\0\1")
    (folder / "folder.wale").mkdir()
    (folder / "ring.wale").write_text('use plain from "ring.wale"\n' + STITCHES, encoding="utf-8")
    for n in range(1, 7):
        (folder / f"deep{n}.wale").write_text(f'use plain from "deep{n + 1}.wale"\n', encoding="utf-8")
    written = name.replace("\\", "\\\\")
    panel.write_text(PANEL.replace('"stitches.wale"', f'"{written}"'), encoding="utf-8")
    found = [d for d in told(panel, capsys) if d[0] == "shared-file-unusable"]
    where = {"ring.wale": "ring.wale", "deep1.wale": "deep5.wale"}.get(name, "panel.wale")
    assert found[0] == ("shared-file-unusable", case, where, 2 if where == "panel.wale" else 1)


def test_a_name_that_the_other_file_lacks_is_told_with_what_it_has(panel: Path, capsys: Said) -> None:
    panel.write_text(PANEL.replace("use plain, welt", "use plane, welt"), encoding="utf-8")
    assert main(["check", str(panel)]) == 1
    assert "no definition in `stitches.wale` is called `plane`" in capsys.readouterr().err
