"""Standard output and error that are closed, full, or lack letters; and names that would act on a terminal."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest

import walewright
from walewright.cli import main

Said = pytest.CaptureFixture[str]

RUN = f"exec {sys.executable} -m walewright"
OWN = {**os.environ, "PYTHONPATH": str(Path(walewright.__file__).parents[1])}
"""The compiler under test is found from any folder."""

needs_full = pytest.mark.skipif(not os.path.exists("/dev/full"), reason="no full device here")


def shell(arguments: str, sound: Path, **environment: str) -> subprocess.CompletedProcess[bytes]:
    return subprocess.run(
        ["sh", "-c", f"{RUN} {arguments}"],
        cwd=sound.parent,
        env={**OWN, **environment},
        capture_output=True,
        timeout=120,
        check=False,
    )


@needs_full
@pytest.mark.parametrize("arguments", ["--version", "--help", "build --help"])
def test_a_full_output_is_told(arguments: str, sound: Path) -> None:
    done = shell(f"{arguments} > /dev/full", sound)
    assert done.returncode == 1
    assert b"output-lost" in done.stderr
    assert b"no space left on device" in done.stderr
    assert b"Exception ignored" not in done.stderr


@needs_full
@pytest.mark.parametrize("buffered", ["", "1"])
def test_a_table_that_does_not_fit_is_told(buffered: str, sound: Path) -> None:
    done = shell("check slackwater.wale > /dev/full", sound, PYTHONUNBUFFERED=buffered)
    assert done.returncode == 1
    assert b"output-lost" in done.stderr


@needs_full
def test_what_was_written_before_the_output_was_lost_is_told(sound: Path) -> None:
    done = shell("build slackwater.wale --as text > /dev/full", sound)
    assert done.returncode == 1
    told = done.stderr.decode()
    assert "output-lost" in told
    assert "wrote out/slackwater.txt" in told
    assert "nothing was written" not in told
    assert (sound.parent / "out" / "slackwater.txt").exists()


def test_a_closed_output_is_told_and_nothing_is_written_into_other_files(sound: Path) -> None:
    done = shell("check slackwater.wale >&-", sound)
    assert done.returncode == 1
    assert b"output-lost" in done.stderr
    done = shell("build slackwater.wale --as text,plan >&-", sound)
    assert done.returncode == 1
    text = (sound.parent / "out" / "slackwater.txt").read_text(encoding="utf-8")
    assert text.startswith("Slack Water\n")


@pytest.mark.parametrize("closed", ["2>&-", pytest.param("2>/dev/full", marks=needs_full)])
def test_without_standard_error_the_exit_code_speaks(closed: str, sound: Path) -> None:
    done = shell(f"check none.wale {closed}", sound)
    assert (done.returncode, done.stdout) == (1, b"")
    done = shell(f"check none.txt {closed} <&-", sound)
    assert (done.returncode, done.stdout) == (2, b"")


def test_letters_that_the_encoding_lacks_are_replaced(sound: Path) -> None:
    sound.write_text(sound.read_text(encoding="utf-8").replace("Slack Water", "Große Möwe"), encoding="utf-8")
    done = shell("check slackwater.wale", sound, PYTHONIOENCODING="ascii")
    assert done.returncode == 0
    assert done.stdout.startswith(b"slackwater.wale: Gro?e M?we, 2 sizes proven\n")
    done = shell("check n\u00f6ne.wale", sound, PYTHONIOENCODING="ascii", LC_ALL="C")
    assert done.returncode == 1
    assert b"source-missing" in done.stderr
    assert b"n?ne.wale" in done.stderr or b"n??ne.wale" in done.stderr


NAMES = ("red\x1b[31m.wale", "two\nlines.wale", "bell\x07.wale", "turned\u202e.wale", "c1\x9b31m.wale")


@pytest.mark.parametrize("name", NAMES, ids=ascii)
def test_a_name_never_acts_on_the_terminal(name: str, sound: Path, capsys: Said) -> None:
    path = sound.rename(sound.parent / name)
    out = str(sound.parent / "out")
    assert main(["check", str(path)]) == 0
    assert main(["build", str(path), "--as", "text", "--out", out]) == 0
    path.write_text(path.read_text(encoding="utf-8").replace("let half = chest", "let half   = chest"), encoding="utf-8")
    assert main(["format", str(path)]) == 0
    path.write_text("nonsense\n", encoding="utf-8")
    assert main(["check", str(path)]) == 1
    assert main(["check", str(path) + ".txt"]) == 2
    assert main(["build", str(path), str(path)]) == 2
    path.unlink()
    assert main(["check", str(path)]) == 1
    told = capsys.readouterr()
    for text in (told.out, told.err):
        assert name.removesuffix(".wale") not in text
        assert all(letter == "\n" or letter.isprintable() for letter in text)
        assert not any(line.startswith("lines") for line in text.splitlines())


def test_a_name_that_is_no_text_is_shown_all_the_same(sound: Path, capsys: Said) -> None:
    path = os.fsencode(sound.parent) + b"/latin\xfc.wale"
    try:
        os.rename(sound, path)
    except OSError:
        pytest.skip("this file system has no such names")
    assert main(["check", os.fsdecode(path)]) == 0
    assert "latin\N{REPLACEMENT CHARACTER}.wale" in capsys.readouterr().out


def test_a_request_to_stop_leaves_nothing_behind(sound: Path) -> None:
    asked = (
        "import os, signal, sys; from walewright import pipeline; from walewright.cli import main;"
        "pipeline.compile = lambda *_: os.kill(os.getpid(), signal.SIGTERM);"
        "sys.exit(main(['build', 'slackwater.wale', '--as', 'text']))"
    )
    done = subprocess.run([sys.executable, "-c", asked], cwd=sound.parent, env=OWN, capture_output=True, timeout=60, check=False)
    assert (done.returncode, done.stdout, done.stderr) == (128 + signal.SIGTERM, b"", b"")
    assert os.listdir(sound.parent) == ["slackwater.wale"]
