"""A set of files is whole or not there: at every step a kill, a refusal by the system, a request to stop."""

from __future__ import annotations

import errno
import os
import signal
import stat
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from walewright import world
from walewright.cli import stops
from walewright.report.english import in_english
from walewright.world import locks, sets
from walewright.world.locks import alone_in

OLD = {"a.pdf": b"old" * 9, "a.txt": b"older", "a.plan.json": b"{}"}
NEW = {"a.pdf": b"new" * 9, "a.txt": b"newer", "a.plan.json": b"{1}"}
CALLS = ("open", "write", "fsync", "close", "rename", "replace", "mkdir", "rmdir", "unlink", "lstat", "listdir")
"""What the system is asked for while a set is written."""


def put(folder: Path, files: dict[str, bytes]) -> None:
    folder.mkdir(parents=True, exist_ok=True)
    for name, data in files.items():
        (folder / name).write_bytes(data)


def held(folder: Path) -> dict[str, bytes]:
    return {p.name: p.read_bytes() for p in folder.iterdir() if p.is_file()}


def at_each(step: Callable[[int], object]) -> tuple[dict[str, Any], list[int]]:
    """Replacements of `CALLS` that call `step` with the number of the call before it is made; and how many there were."""
    made = [0]

    def replaced(call: Callable[..., object]) -> Callable[..., object]:
        def wrapper(*arguments: object, **options: object) -> object:
            made[0] += 1
            step(made[0])
            return call(*arguments, **options)

        return wrapper

    return {name: replaced(getattr(os, name)) for name in CALLS}, made


def in_a_child(work: Callable[[], object]) -> int:
    """How a process that does `work` ends: its exit code, or minus the signal's number."""
    child = os.fork()
    if child == 0:
        try:
            work()
            os._exit(0)
        except stops.Stopped as stopped:
            os._exit(stopped.exit_code)
        except BaseException:
            os._exit(99)
    return os.waitstatus_to_exitcode(os.waitpid(child, 0)[1])


def steps_of_a_set(folder: Path, monkeypatch: pytest.MonkeyPatch) -> int:
    put(folder, OLD)
    calls, made = at_each(lambda _: None)
    with monkeypatch.context() as patch:
        for name, call in calls.items():
            patch.setattr(os, name, call)
        assert world.write_set(str(folder), NEW) is None
    return made[0]


def writing_with(step: Callable[[int], object], folder: Path) -> Callable[[], object]:
    def write() -> object:
        for name, call in at_each(step)[0].items():
            setattr(os, name, call)
        return world.write_set(str(folder), NEW)

    return write


def test_a_kill_at_any_step_leaves_the_old_set_or_the_new(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    steps = steps_of_a_set(tmp_path / "counted", monkeypatch)
    assert steps > 20
    seen = set()
    for fatal in range(1, steps + 1):
        folder = tmp_path / str(fatal)
        put(folder, OLD)

        def die(number: int, fatal: int = fatal) -> None:
            if number == fatal:
                os.kill(os.getpid(), signal.SIGKILL)

        assert in_a_child(writing_with(die, folder)) == -signal.SIGKILL
        there = {name: data for name, data in held(folder).items() if not name.startswith(".")}
        decided = (folder / sets.WHOLE).exists()
        assert there in (OLD, NEW) or decided
        assert world.settle(str(folder)) is None
        assert held(folder) == (NEW if decided or there == NEW else OLD)
        assert sorted(os.listdir(folder)) == sorted(OLD), "leftovers are cleared"
        seen.add((there == OLD, there == NEW, decided))
    assert {(True, False, False), (True, False, True), (False, False, True), (False, True, False)} <= seen


def test_a_refusal_at_any_step_is_told_and_leaves_the_old_set(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    steps = steps_of_a_set(tmp_path / "counted", monkeypatch)
    told = 0
    for refused in range(1, steps + 1):
        folder = tmp_path / str(refused)
        put(folder, OLD)

        def refuse(number: int, refused: int = refused) -> None:
            if number == refused:
                raise OSError(errno.ENOSPC, "No space left on device")

        with monkeypatch.context() as patch:
            for name, call in at_each(refuse)[0].items():
                patch.setattr(os, name, call)
            fault = world.write_set(str(folder), NEW)
        there = {name: data for name, data in held(folder).items() if not name.startswith(".")}
        if fault is None:
            assert there == NEW
        elif not in_english(fault).notes:
            told += 1
            assert fault.code == "output-unwritable"
            assert "no space left on device" in in_english(fault).message
            assert there == OLD
        assert world.write_set(str(folder), NEW) is None
        assert held(folder) == NEW
        assert sorted(os.listdir(folder)) == sorted(NEW)
    assert told > 10


@pytest.mark.parametrize("number", [signal.SIGTERM, signal.SIGHUP])
def test_a_request_to_stop_at_any_step_waits_for_the_set(number: int, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    steps = steps_of_a_set(tmp_path / "counted", monkeypatch)
    for asked in range(1, steps + 1):
        folder = tmp_path / str(asked)
        put(folder, OLD)

        def ask(step: int, asked: int = asked) -> None:
            if step == asked:
                os.kill(os.getpid(), number)

        def stoppable(folder: Path = folder, ask: Callable[[int], None] = ask) -> None:
            # Whoever runs the tests may have it ignored, as `nohup` does.
            signal.signal(number, signal.SIG_DFL)
            with stops.stoppable():
                writing_with(ask, folder)()

        assert in_a_child(stoppable) == 128 + number
        assert held(folder) in (OLD, NEW)
        assert sorted(os.listdir(folder)) == sorted(OLD)


def test_what_is_written_can_be_read_by_all_whom_the_folder_lets_in(tmp_path: Path) -> None:
    before = os.umask(0o022)
    try:
        assert world.write_set(str(tmp_path / "a" / "b"), {"b.txt": b"new"}) is None
    finally:
        os.umask(before)
    assert (tmp_path / "a" / "b" / "b.txt").read_bytes() == b"new"
    assert stat.S_IMODE((tmp_path / "a" / "b" / "b.txt").stat().st_mode) == 0o644
    assert os.listdir(tmp_path / "a" / "b") == ["b.txt"]


def test_a_full_disk_leaves_no_new_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(*_: object) -> None:
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr(os, "write", full)
    fault = world.write_set(str(tmp_path / "new" / "out"), NEW)
    monkeypatch.undo()
    assert fault is not None
    assert "no space left on device" in in_english(fault).message
    assert os.listdir(tmp_path) == []


def test_a_short_write_goes_on(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    write = os.write
    monkeypatch.setattr(os, "write", lambda handle, data: write(handle, data[:2]))
    assert world.write_set(str(tmp_path), NEW) is None
    assert held(tmp_path) == NEW


def test_a_set_that_cannot_begin_to_move_is_taken_back(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    put(tmp_path, OLD)

    def forbidden(*_: object) -> None:
        raise PermissionError(errno.EPERM, "Operation not permitted")

    monkeypatch.setattr(os, "replace", forbidden)
    fault = world.write_set(str(tmp_path), NEW)
    monkeypatch.undo()
    assert fault is not None
    assert in_english(fault).notes == ()
    assert held(tmp_path) == OLD
    assert sorted(os.listdir(tmp_path)) == sorted(OLD)


@pytest.mark.parametrize(
    ("name", "why"),
    [("x" * 300 + ".txt", "name too long"), ("folder", "a folder has its name"), ("a\0b", "null")],
)
def test_names_that_cannot_be_written(name: str, why: str, tmp_path: Path) -> None:
    (tmp_path / "folder").mkdir()
    put(tmp_path, OLD)
    if "\0" in name:
        with pytest.raises(ValueError, match=why):
            world.write_set(str(tmp_path), {name: b"new"})
        return
    fault = world.write_set(str(tmp_path), {"a.pdf": b"new", name: b"new"})
    assert fault is not None
    assert why in in_english(fault).message
    assert held(tmp_path) == OLD
    assert sorted(os.listdir(tmp_path)) == sorted([*OLD, "folder"])


def test_writers_take_turns(tmp_path: Path) -> None:
    with alone_in(str(tmp_path)):
        assert os.listdir(tmp_path) == [locks.LOCK]
        with pytest.raises(locks.Busy), alone_in(str(tmp_path), patience_s=0.05):
            pass
    assert os.listdir(tmp_path) == []
    with alone_in(str(tmp_path)):
        pass


def test_a_running_build_is_told_of_and_left_alone(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    put(tmp_path / sets.NEW, {"a.pdf": b"half"})
    monkeypatch.setattr(sets, "alone_in", lambda folder, patience_s=0.05: alone_in(folder, 0.05))
    with alone_in(str(tmp_path)):
        assert world.settle(str(tmp_path)) is None
        assert (tmp_path / sets.NEW / "a.pdf").exists()
        fault = world.write_set(str(tmp_path), NEW)
    assert fault is not None
    assert "another build" in in_english(fault).message
    assert world.settle(str(tmp_path)) is None
    assert os.listdir(tmp_path) == []


def test_the_lock_of_a_killed_build_holds_nobody_up(tmp_path: Path) -> None:
    def die() -> None:
        with alone_in(str(tmp_path)):
            os.kill(os.getpid(), signal.SIGKILL)

    assert in_a_child(die) == -signal.SIGKILL
    assert os.listdir(tmp_path) == [locks.LOCK]
    assert world.settle(str(tmp_path)) is None
    assert os.listdir(tmp_path) == []


@pytest.mark.parametrize("name", [sets.NEW, sets.WHOLE])
def test_what_no_build_put_there_is_not_removed(name: str, tmp_path: Path) -> None:
    (tmp_path / name / "mine").mkdir(parents=True)
    (tmp_path / name / "mine" / "letter.txt").write_text("mine", encoding="utf-8")
    fault = world.settle(str(tmp_path))
    assert fault is not None
    assert fault.code == "output-unwritable"
    assert (tmp_path / name / "mine" / "letter.txt").exists()
    assert world.write_set(str(tmp_path), NEW) is not None


def test_what_was_left_never_takes_a_sources_place_nor_leads_elsewhere(tmp_path: Path) -> None:
    put(tmp_path, {"scarf.wale": b"source"})
    put(tmp_path / sets.WHOLE, {"scarf.wale": b"lost"})
    assert world.settle(str(tmp_path)) is not None
    assert (tmp_path / "scarf.wale").read_bytes() == b"source"
    out = tmp_path / "out"
    out.mkdir()
    put(tmp_path / "elsewhere", OLD)
    (out / sets.NEW).symlink_to(tmp_path / "elsewhere")
    assert world.settle(str(out)) is not None
    assert held(tmp_path / "elsewhere") == OLD


def test_another_signal_handler_is_put_back(tmp_path: Path) -> None:
    heard = []
    before = signal.signal(signal.SIGTERM, lambda number, _: heard.append(number))
    try:
        write = os.write
        with pytest.MonkeyPatch.context() as patch:
            patch.setattr(os, "write", lambda handle, data: (os.kill(os.getpid(), signal.SIGTERM), write(handle, data))[1])
            assert world.write_set(str(tmp_path), {"a.txt": b"x"}) is None
        assert heard == [signal.SIGTERM]
        os.kill(os.getpid(), signal.SIGTERM)
        assert len(heard) == 2
    finally:
        signal.signal(signal.SIGTERM, before)
