"""What the commands print and write when all is well."""

from __future__ import annotations

import json
import os
import pty
import re
import subprocess
import sys
from dataclasses import replace
from itertools import pairwise
from pathlib import Path

import pytest

from walewright import pipeline
from walewright.cli import main
from walewright.cli.sources import shipped
from walewright.cli.summary import summary
from walewright.design import Changes
from walewright.guide.english import LANGUAGE
from walewright.report.english import ENGLISH

Said = pytest.CaptureFixture[str]


def test_check_prints_a_table_for_every_piece_and_size(sound: Path, capsys: Said) -> None:
    assert main(["check", "--all", str(sound)]) == 0
    told = capsys.readouterr()
    assert told.err == ""
    lines = told.out.splitlines()
    assert lines[0] == f"{sound}: Slack Water, 2 sizes proven"
    assert [line for line in lines if line in ("back", "front")] == ["back", "front"]
    widths = next(line for line in lines if line.startswith("width at start"))
    # 84 / 2 + 2 = 44 cm and 48 cm at 40 stitches to 30.8 cm are 57.1 and 62.3 stitches.
    assert [int(n) for n in re.findall(r"\d+", widths)] == [58, 62]
    # Knitted, 58 and 62 stitches at 0.77 cm each.
    assert re.findall(r"\d+\.\d/\d+\.\d", lines[lines.index(widths) + 1]) == ["44.0/44.7", "48.0/47.7"]
    assert not list(sound.parent.glob("out*"))


def test_check_begins_with_yarn_and_ends_with_what_is_left_over(sound: Path, capsys: Said) -> None:
    assert main(["check", "--all", str(sound)]) == 0
    lines = capsys.readouterr().out.splitlines()
    titles = [line for before, line in pairwise(lines) if not before and line and "  " not in line]
    assert titles[:2] == ["yarn", "as worn"]
    assert re.fullmatch(r"chunky wool +g/balls +\d+/\d +\d+/\d", lines[lines.index("yarn") + 2])
    assert titles.index("as worn") < titles.index("back") < titles.index("joins")
    assert lines[-1] == "nothing is unused, unsewn or off by more than a stitch or a row; no loop is open"
    assert "!" not in "".join(lines)


def test_check_is_short_unless_all_is_asked_for(sound: Path, capsys: Said) -> None:
    assert main(["check", str(sound)]) == 0
    lines = capsys.readouterr().out.splitlines()
    titles = [line for before, line in pairwise(lines) if not before and line and "  " not in line]
    assert titles[:2] == ["yarn", "as worn"]
    assert not {"openings", "back", "front", "joins"} & set(titles)
    assert any(re.match("All round.*cm", line) for line in lines)
    assert lines[-2:] == [
        "nothing is unused, unsewn or off by more than a stitch or a row; no loop is open",
        "every count, opening and join: --all",
    ]


def test_check_says_last_what_is_unused_and_unsewn(sound: Path, capsys: Said) -> None:
    text = sound.read_text(encoding="utf-8").replace("join back side to front side\n", "")
    sound.write_text(text + "\nlet spare = 3 cm\n", encoding="utf-8")
    assert main(["check", "--all", str(sound)]) == 0
    lines = capsys.readouterr().out.splitlines()
    last = lines[len(lines) - lines[::-1].index("") :]
    assert last[0] == "unused: nothing that is made uses the definition `spare`"
    # That nothing names these sides either is not told a second time.
    edges = [f"side_{end}" for end in ("left", "right")]
    assert sorted(last[1:5]) == sorted(f"unsewn: nothing is joined to {p} {edge}" for p in ("back", "front") for edge in edges)
    assert last[-1] == "nothing is off by more than a stitch or a row; no loop is open"


def test_check_marks_what_is_off_by_more_than_its_stitch_or_row(sound: Path) -> None:
    outcome = pipeline.compile(sound.read_text(encoding="utf-8"), "it.wale", shipped(), Changes(sizes=("S",)))
    assert outcome.proof is not None
    (size,) = outcome.proof.sizes
    wide, *rest = size.pieces[0].measures
    assert (LANGUAGE.measure(wide.key), wide.unit) == ("width at start", "st")

    def shown(off: float) -> str:
        piece = replace(size.pieces[0], measures=(replace(wide, off=off), *rest))
        proof = replace(outcome.proof, sizes=(replace(size, pieces=(piece, *size.pieces[1:])),))
        return summary(replace(outcome, proof=proof), LANGUAGE, ENGLISH, everything=True)

    for off, marked in ((1.0, False), (-1.0, False), (1.2, True), (-1.2, True)):
        row = next(line for line in shown(off).splitlines() if "cm wanted/knitted" in line)
        assert row.endswith("!") == marked
    assert "off: back, width at start, S: 1.2 st too little (!)" in shown(-1.2)


def test_build_writes_all_four(sound: Path, capsys: Said) -> None:
    out = sound.parent / "new" / "folder"
    assert main(["build", str(sound), "--out", str(out)]) == 0
    told = capsys.readouterr()
    assert told.err == ""
    names = ["slackwater.pdf", "slackwater.html", "slackwater.txt", "slackwater.plan.json"]
    assert told.out.splitlines() == [f"wrote {out / name}" for name in names]
    assert sorted(os.listdir(out)) == sorted(names)
    assert (out / names[0]).read_bytes().startswith(b"%PDF-")
    assert "Slack Water" in (out / names[1]).read_text(encoding="utf-8")
    assert json.loads((out / names[3]).read_text(encoding="utf-8"))["title"] == "Slack Water"


def test_the_text_copy_opens_with_what_has_to_be_known(sound: Path) -> None:
    out = sound.parent / "out"
    assert main(["build", str(sound), "--out", str(out), "--as", "text"]) == 0
    text = (out / "slackwater.txt").read_text(encoding="utf-8")
    assert text.startswith("Slack Water\n===========\nA straight sleeveless top.\n\nSizes\n-----\nS (M)\nchest: 84 (92) cm\n")
    assert "plain: 13.0 stitches and 18.5 rows to 10 cm in stocking stitch, wool at tension 4\n" in text
    grams = r"\d+( \(\d+\))? g"
    assert re.search(
        rf"^chunky wool: buy \d+( \(\d+\))? balls of 100 g = 120 m; about {grams}: garment {grams}, swatches {grams}, "
        rf"reserve {grams}$",
        text,
        re.MULTILINE,
    )


def test_one_size_has_no_brackets_where_numbers_stand(sound: Path) -> None:
    out = sound.parent / "out"
    assert main(["build", str(sound), "--out", str(out), "--as", "text", "--size", "M", "--units", "in"]) == 0
    text = (out / "slackwater.txt").read_text(encoding="utf-8")
    assert "chest: 36.25 in\n" in text
    assert not re.search(r"\d \(\d", text)
    assert "\nSizes M\n" not in text, "a copy for one size has said which"
    assert text.count("Making up\n") == 1
    assert ("cast-on comb" in text) == ("with the comb" in text), "only what is needed is listed"


def test_sizes_may_be_listed_or_repeated(sound: Path, capsys: Said) -> None:
    assert main(["check", str(sound), "--size", "S,M"]) == 0
    listed = capsys.readouterr().out
    assert main(["check", str(sound), "--size", "M", "--size", "S"]) == 0
    assert capsys.readouterr().out == listed
    assert "2 sizes proven" in listed


def test_a_knitters_tension_and_measure_change_the_counts(sound: Path, capsys: Said) -> None:
    own = ["--size", "S", "--tension", "plain=16 st 22 rows", "--measure", "chest=100 cm"]
    assert main(["check", "--all", str(sound), *own]) == 0
    widths = next(line for line in capsys.readouterr().out.splitlines() if line.startswith("width at start"))
    # 100 / 2 + 2 = 52 cm at 16 stitches to 10 cm are 83.2 stitches.
    assert re.findall(r"\d+", widths) == ["84"] or re.findall(r"\d+", widths) == ["82"]


def test_the_same_command_gives_the_same_bytes(sound: Path) -> None:
    for folder in ("one", "two"):
        assert main(["build", str(sound), "--out", str(sound.parent / folder)]) == 0
    for path in (sound.parent / "one").iterdir():
        assert path.read_bytes() == (sound.parent / "two" / path.name).read_bytes(), path.name


def test_format_rewrites_what_is_untidy_and_leaves_what_is_tidy(sound: Path, capsys: Said) -> None:
    tidy = sound.read_text(encoding="utf-8")
    assert main(["format", "--check", str(sound)]) == 0
    sound.write_text(tidy.replace("let half = chest", "let half   =  chest"), encoding="utf-8")
    assert main(["format", "--check", str(sound)]) == 1
    assert capsys.readouterr().out == f"{sound} would change\n"
    assert main(["format", str(sound)]) == 0
    assert sound.read_text(encoding="utf-8") == tidy
    assert main(["format", str(sound)]) == 0
    assert capsys.readouterr().out == f"rewrote {sound}\n"


def test_format_leaves_what_it_cannot_read(sound: Path, capsys: Said) -> None:
    broken = sound.read_text(encoding="utf-8").replace("end on waste yarn", "end up on  waste yarn", 1)
    sound.write_text(broken, encoding="utf-8")
    assert main(["format", str(sound)]) == 1
    assert capsys.readouterr().err != ""
    assert sound.read_text(encoding="utf-8") == broken


@pytest.mark.parametrize("on_a_terminal", [True, False])
def test_the_progress_bar_is_for_terminals_only(on_a_terminal: bool, sound: Path) -> None:
    command = [sys.executable, "-m", "walewright.cli", "build", str(sound), "--as", "text", "--out", str(sound.parent / "out")]
    if not on_a_terminal:
        assert subprocess.run(command, capture_output=True, text=True, check=True).stderr == ""
        return
    ours, theirs = pty.openpty()
    running = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=theirs, env={**os.environ, "TERM": "xterm"})
    os.close(theirs)
    shown = _to_the_end(ours).decode()
    assert running.wait() == 0
    assert "proving" in shown


def _to_the_end(terminal: int) -> bytes:
    """All that is written to a terminal. It is emptied while the command runs, for a full one would hold the command up."""
    shown = b""
    while True:
        try:
            more = os.read(terminal, 65_536)
        except OSError:
            # Linux says so when the last writer has gone.
            more = b""
        if not more:
            os.close(terminal)
            return shown
        shown += more
