"""Many sources at once: the same files, words and exit code as one after another, and a lost process costs its own source alone."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from walewright.cli import main, workers
from walewright.cli.command_line import CommandLine

Said = pytest.CaptureFixture[str]


@pytest.fixture
def several(sound: Path) -> list[str]:
    """Three sound sources, and one that does not read between them."""
    names = []
    for name in ("first", "second", "wrong", "third"):
        copy = sound.with_name(f"{name}.wale")
        copy.write_bytes(b"nonsense\n" if name == "wrong" else sound.read_bytes())
        names.append(str(copy))
    return names


def _built(files: list[str], out: Path, jobs: str, capsys: Said) -> tuple[int, str, str, dict[str, bytes]]:
    code = main(["build", *files, "--out", str(out), "--as", "text,plan", "--jobs", jobs])
    told = capsys.readouterr()
    made = {path.name: path.read_bytes() for path in sorted(out.iterdir())}
    return code, told.out.replace(str(out), "OUT"), told.err, made


def test_many_jobs_say_and_write_what_one_does(several: list[str], tmp_path: Path, capsys: Said) -> None:
    alone = _built(several, tmp_path / "alone", "1", capsys)
    together = _built(several, tmp_path / "together", "3", capsys)
    assert alone == together
    assert alone[0] == 1
    assert len(alone[3]) == 6


def _ending(file: str) -> int:
    """Ends its own process for one of the files."""
    if file == "second":
        os.kill(os.getpid(), signal.SIGKILL)
    print(f"{file} is done")
    return 0


def test_a_killed_process_costs_its_own_source(capsys: Said) -> None:
    done: list[str] = []
    assert workers.at_once(CommandLine(("build",)), ("first", "second", "third"), _ending, 2, done.append) == 1
    told = capsys.readouterr()
    assert told.out == "first is done\nthird is done\n"
    assert "process-lost" in told.err
    assert "second ended before it was done, by signal 9" in told.err
    assert done == ["first", "second", "third"]


def _leaving(file: str) -> int:
    os._exit(3)


def test_a_process_that_leaves_by_itself_is_told_with_its_code(capsys: Said) -> None:
    assert workers.at_once(CommandLine(("build",)), ("first", "second"), _leaving, 2, lambda _: None) == 1
    assert capsys.readouterr().err.count("with exit code 3") == 2


@pytest.mark.parametrize("wrong", ["0", "-1", "two", "257", "1.5", "9" * 400, "٣"])
def test_a_wrong_number_of_jobs_is_told(wrong: str, sound: Path, capsys: Said) -> None:
    assert main(["build", str(sound), f"--jobs={wrong}"]) == 2
    assert "write a whole number from 1 to 256" in capsys.readouterr().err


def _gone(group: int) -> bool:
    """Whether a group of processes is gone, waited for a little: some notice only that the first is."""
    for _ in range(50):
        try:
            os.killpg(group, 0)
        except ProcessLookupError:
            return True
        time.sleep(0.1)
    return False


@pytest.mark.skipif(os.name == "nt", reason="signals are not sent so there")
def test_asked_to_stop_all_processes_stop_and_nothing_is_left(several: list[str], tmp_path: Path) -> None:
    out = tmp_path / "out"
    command = [sys.executable, "-m", "walewright", "build", *several, "--out", str(out), "--jobs", "2"]
    with subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, start_new_session=True) as running:
        time.sleep(1.5)
        running.terminate()
        _, told = running.communicate(timeout=60)
        assert running.returncode == 128 + signal.SIGTERM
        assert b"Traceback" not in told
        assert _gone(running.pid)
    assert not [path for path in out.glob("*") if path.name.startswith(".")]
