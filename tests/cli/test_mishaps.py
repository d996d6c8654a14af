"""What the system refuses is told as such, and is never called a fault of the compiler; a fault of the compiler is."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from walewright import pipeline
from walewright.cli import main, stops

Said = pytest.CaptureFixture[str]


@pytest.mark.parametrize(
    ("fault", "code", "shown", "exits"),
    [
        (MemoryError(), "memory-exhausted", "memory ran out", 1),
        (RecursionError("maximum recursion depth exceeded"), "memory-exhausted", "the stack ran out", 1),
        (OSError("cannot load library 'libsomething': it is not there\nmore lines"), "system-refused", "libsomething", 1),
        (PermissionError(13, "Permission denied", "/etc/x\x1b[31m"), "system-refused", "Permission denied (/etc/x", 1),
        (FileNotFoundError("the installation lacks grammar/source.lark"), "installation-incomplete", "source.lark", 1),
        (ModuleNotFoundError("the font package x is not installed"), "installation-incomplete", "font package x", 1),
        (ZeroDivisionError("left as it is"), "compiler-fault", "left as it is", 70),
        (UnicodeEncodeError("ascii", "\x1b", 0, 1, "\x1b[31m"), "compiler-fault", "UnicodeEncodeError", 70),
        (KeyboardInterrupt(), "", "", 130),
        (stops.Stopped(15), "", "", 143),
        (stops.Stopped(1), "", "", 129),
    ],
    ids=lambda value: type(value).__name__ if isinstance(value, BaseException) else None,
)
def test_what_comes_up_while_building(
    fault: BaseException, code: str, shown: str, exits: int, sound: Path, capsys: Said, monkeypatch: pytest.MonkeyPatch
) -> None:
    def broken(*_: object) -> object:
        raise fault

    monkeypatch.setattr(pipeline, "compile", broken)
    out = sound.parent / "out"
    assert main(["build", str(sound), "--out", str(out)]) == exits
    told = capsys.readouterr()
    assert told.out == ""
    assert code in told.err
    assert shown in told.err
    assert "Traceback" not in told.err
    assert "\x1b" not in told.err
    assert ("bug[" in told.err) == (exits == 70)
    assert bool(told.err) == bool(code)
    assert not out.exists()


def test_other_files_go_on_after_a_mishap(sound: Path, capsys: Said, monkeypatch: pytest.MonkeyPatch) -> None:
    again = sound.with_name("again.wale")
    again.write_bytes(sound.read_bytes())
    compiled = pipeline.compile

    def broken(text: str, file: str, *more: object) -> object:
        if file == str(sound):
            raise MemoryError
        return compiled(text, file, *more)  # type: ignore[arg-type]

    monkeypatch.setattr(pipeline, "compile", broken)
    out = sound.parent / "out"
    assert main(["build", str(sound), str(again), "--out", str(out), "--as", "text", "--jobs", "1"]) == 1
    assert "memory-exhausted" in capsys.readouterr().err
    assert [p.name for p in out.iterdir()] == ["again.txt"]


def test_a_build_begins_by_clearing_what_a_killed_one_left(sound: Path) -> None:
    out = sound.parent / "out"
    (out / ".walewright-new").mkdir(parents=True)
    (out / ".walewright-new" / "half.txt").write_text("half", encoding="utf-8")
    (out / ".walewright-whole").mkdir()
    (out / ".walewright-whole" / "whole.txt").write_text("whole", encoding="utf-8")
    sound.write_text("nonsense\n", encoding="utf-8")
    assert main(["build", str(sound), "--out", str(out)]) == 1
    assert {p.name: p.read_text(encoding="utf-8") for p in out.iterdir()} == {"whole.txt": "whole"}


def test_the_first_cause_is_what_is_told(sound: Path, capsys: Said, monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(*_: object) -> object:
        try:
            raise ImportError("libx.so: failed to map segment")
        except ImportError as fault:
            raise ImportError("READ THIS FIRST\nmuch advice") from fault

    monkeypatch.setattr(pipeline, "compile", broken)
    assert main(["check", str(sound)]) == 1
    told = capsys.readouterr().err
    assert "failed to map segment" in told
    assert "READ THIS" not in told


HOARDING = """
import resource, sys
from walewright import pipeline
from walewright.cli import main

def hoard(*_):
    used = next(int(line.split()[1]) for line in open("/proc/self/status") if line.startswith("VmSize"))
    resource.setrlimit(resource.RLIMIT_AS, (used * 1024 + (32 << 20),) * 2)
    kept = []
    for size in (1 << 20, 1 << 12, 1 << 6):
        try:
            while True:
                kept.append(bytearray(size))
        except MemoryError:
            pass
    raise MemoryError

pipeline.compile = hoard
sys.exit(main(["check", sys.argv[1]]))
"""


@pytest.mark.skipif(not Path("/proc/self/status").exists(), reason="memory in use is read from /proc")
def test_memory_that_is_really_gone_is_told_all_the_same(sound: Path) -> None:
    """What tells it is loaded only then, and has to find room."""
    found = subprocess.run([sys.executable, "-c", HOARDING, str(sound)], capture_output=True, text=True, timeout=120)
    assert (found.returncode, found.stdout) == (1, "")
    assert "memory ran out" in found.stderr
    assert "Traceback" not in found.stderr
