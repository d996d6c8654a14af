"""Runs of `publish` that end anyhow: killed, without room, two at once, many jobs; and the same bytes everywhere."""

from __future__ import annotations

import errno
import os
import random
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from tests.cli.publishing import CATALOGUE, SCARF, Publisher, agrees, in_process, publisher
from tests.draws import few_of
from walewright.cli import main
from walewright.cli.publishing.records import FOLDER
from walewright.world.sets import NEW, WHOLE

Said = pytest.CaptureFixture[str]

WITH_PAGES = CATALOGUE.replace('sources = ["*.wale"]', 'sources = ["lagoon.wale"]\nformats = ["pdf", "html", "text", "plan"]')
WITH_PAGES += '\n[[garments]]\nsources = ["skerry.wale"]\n'
"""To print takes the longest: one of the two is."""


def tidy(of: Publisher) -> bool:
    """Whether nothing half done is left."""
    return not any((folder / name).exists() for folder in (of.into, of.into / FOLDER) for name in (NEW, WHOLE))


def test_the_same_bytes_everywhere(tmp_path: Path) -> None:
    one, other = publisher(tmp_path / "one"), publisher(tmp_path / "other place")
    for made in (one, other):
        made.says(WITH_PAGES)
    first = in_process(one.arguments(), tmp_path, {"LC_ALL": "C", "PYTHONHASHSEED": "1", "TZ": "Pacific/Kiritimati"})
    there = ["publish", "scarves.toml", "--into", f"../{other.into.name}", "--jobs", "2"]
    second = in_process(there, other.folder, {"LC_ALL": "C.UTF-8", "PYTHONHASHSEED": "2", "TZ": "Pacific/Midway"})
    assert (first.returncode, second.returncode) == (0, 0), first.stderr + second.stderr
    assert first.stdout.replace(str(one.into), "SHELF") == second.stdout.replace(f"../{other.into.name}", "SHELF")
    assert one.files() == other.files()
    assert len(one.files()) == 10
    assert "lagoon.pdf" in one.files()


def test_two_jobs_say_and_make_what_one_does(tmp_path: Path, capsys: Said) -> None:
    names = ("ebb", "lagoon", "skerry")
    alone, together = publisher(tmp_path / "alone", names), publisher(tmp_path / "together", names)
    said = []
    for made, jobs in ((alone, "1"), (together, "2")):
        made.source("lagoon").write_text("nonsense\n", encoding="utf-8")
        code = made.run("--why", "--jobs", jobs)
        told = capsys.readouterr()
        said.append((code, *(text.replace(str(made.folder), "HERE").replace(str(made.into), "SHELF") for text in told)))
    assert said[0] == said[1]
    assert said[0][0] == 1
    assert alone.files() == together.files()


def changed(of: Publisher, length: int) -> None:
    for at, path in enumerate(sorted(of.folder.glob("*.wale"))):
        path.write_text(SCARF.format(name=path.stem.title(), length=length + at), encoding="utf-8")


@pytest.mark.parametrize("seed", few_of(range(60), 4))
def test_killed_at_any_moment(tmp_path: Path, capsys: Said, seed: int) -> None:
    chance = random.Random(seed)
    made = publisher(tmp_path / "scarves")
    assert made.run() == 0
    old = made.files()
    changed(made, 50)
    newer = Publisher(made.folder, tmp_path / "newer")
    began = time.monotonic()
    assert newer.run() == 0
    lasts, new = time.monotonic() - began, newer.files()
    child = os.fork()
    if not child:
        code = 99
        try:
            nowhere = os.open(os.devnull, os.O_RDWR)
            for number in (1, 2):
                os.dup2(nowhere, number)
            code = main(made.arguments())
        finally:
            os._exit(code)
    time.sleep(chance.uniform(0, 1.1 * lasts))
    os.kill(child, chance.choice((signal.SIGKILL, signal.SIGTERM)))
    os.waitpid(child, 0)
    for name in ("lagoon", "skerry"):
        products = [f"{name}.html", f"{name}.txt", f"{name}.cover.svg"]
        there = made.files()
        states = {"old" if there[file] == old[file] else "new" if there[file] == new[file] else "torn" for file in products}
        # Of a set that was decided, and is not yet all in place, the next run finishes the rest.
        assert len(states) == 1 or (made.into / WHOLE).exists(), states
        assert "torn" not in states
    assert made.run() == 0
    assert made.files() == new
    assert tidy(made)
    agrees(made)
    assert made.why(capsys) == {}


@pytest.mark.parametrize("at", few_of(range(24), 4))
def test_a_disk_that_is_full(tmp_path: Path, capsys: Said, monkeypatch: pytest.MonkeyPatch, at: int) -> None:
    made = publisher(tmp_path / "scarves")
    assert made.run() == 0
    old = made.files()
    changed(made, 50)
    written, write = 0, os.write

    def full(handle: int, data: bytes) -> int:
        nonlocal written
        # Other streams than files of ours are left alone.
        if len(data) > 200:
            written += 1
            if written > at:
                raise OSError(errno.ENOSPC, "No space left on device")
        return write(handle, data)

    with monkeypatch.context() as disk:
        disk.setattr(os, "write", full)
        code = made.run()
    there = made.files()
    new = Publisher(made.folder, tmp_path / "newer")
    assert new.run() == 0
    assert {name for name in there if there[name] not in (old[name], new.files()[name])} - {"catalogue.json", "index.html"} == set()
    for name in ("lagoon", "skerry"):
        products = [f"{name}.html", f"{name}.txt", f"{name}.cover.svg"]
        assert len({there[file] == old[file] for file in products}) == 1
    if code:
        assert "no space left on device" in capsys.readouterr().err
    assert made.run() == 0
    assert made.files() == new.files()
    assert tidy(made)


def test_two_runs_at_once(tmp_path: Path, capsys: Said) -> None:
    made = publisher(tmp_path / "scarves")
    assert made.run() == 0
    changed(made, 50)
    root = Path(__file__).resolve().parents[2]
    environment = {**os.environ, "PYTHONPATH": str(root / "src")}
    command = [sys.executable, "-m", "walewright", *made.arguments()]
    runs = [subprocess.Popen(command, env=environment, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True) for _ in range(2)]
    for run in runs:
        assert run.communicate()[1] == ""
        assert run.returncode == 0
    new = Publisher(made.folder, tmp_path / "newer")
    assert new.run() == 0
    assert made.run() == 0
    assert made.files() == new.files()
    assert tidy(made)
    agrees(made)


def test_records_of_another_run_make_it_again(tmp_path: Path, capsys: Said) -> None:
    """Of two runs that saw different sources, one may write the files and the other what is kept."""
    made = publisher(tmp_path / "scarves")
    assert made.run() == 0
    kept = {path: path.read_bytes() for path in made.records()}
    changed(made, 50)
    assert made.run() == 0
    new = made.files()
    for path, data in kept.items():
        path.write_bytes(data)
    changed(made, 40)
    assert set(made.why(capsys).values()) == {"the file was changed"}
    changed(made, 50)
    assert made.run() == 0
    assert made.files() == new
