"""Work that a request to stop does not cut in two, and one writer at a time."""

from __future__ import annotations

import os
import signal
import threading
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

from walewright.world import locks
from walewright.world.locks import LOCK, Busy, alone_in
from walewright.world.undisturbed import STOPPING, undisturbed

HEARD: list[int] = []


@pytest.fixture(autouse=True)
def heard() -> Iterator[list[int]]:
    """Requests to stop are noted in the place of being followed."""
    before = {number: signal.signal(number, lambda number, _: HEARD.append(number)) for number in STOPPING}
    HEARD.clear()
    yield HEARD
    for number, handler in before.items():
        signal.signal(number, handler)


def test_what_is_a_request_to_stop() -> None:
    assert STOPPING == (signal.SIGTERM, signal.SIGINT, signal.SIGHUP)


@pytest.mark.parametrize("number", STOPPING)
def test_a_request_waits_and_is_made_again(number: int, heard: list[int]) -> None:
    with undisturbed():
        os.kill(os.getpid(), number)
        os.kill(os.getpid(), number)
        assert heard == []
    assert heard == [number]
    os.kill(os.getpid(), number)
    assert heard == [number, number], "the handler of before is there again"


def test_the_first_of_several_is_made_again(heard: list[int]) -> None:
    with undisturbed():
        os.kill(os.getpid(), signal.SIGHUP)
        os.kill(os.getpid(), signal.SIGTERM)
    assert heard == [signal.SIGHUP]


def test_without_a_request_nothing_is_made(heard: list[int]) -> None:
    with undisturbed():
        pass
    assert heard == []


def test_a_request_waits_also_where_the_work_fails(heard: list[int]) -> None:
    def fail() -> None:
        with undisturbed():
            os.kill(os.getpid(), signal.SIGTERM)
            raise OSError("full")

    with pytest.raises(OSError, match="full"):
        fail()
    assert heard == [signal.SIGTERM]


def test_what_is_ignored_stays_ignored(heard: list[int]) -> None:
    signal.signal(signal.SIGHUP, signal.SIG_IGN)
    with undisturbed():
        assert signal.getsignal(signal.SIGHUP) is signal.SIG_IGN
        os.kill(os.getpid(), signal.SIGHUP)
    assert heard == []
    assert signal.getsignal(signal.SIGHUP) is signal.SIG_IGN


def test_in_another_thread_it_does_nothing(heard: list[int]) -> None:
    done: list[object] = []

    def work() -> None:
        before = signal.getsignal(signal.SIGTERM)
        with undisturbed():
            done.append(signal.getsignal(signal.SIGTERM) is before)

    thread = threading.Thread(target=work)
    thread.start()
    thread.join()
    assert done == [True]


# ----------------------------------------------------------------- locks


def test_a_folder_is_held_and_let_go(tmp_path: Path) -> None:
    with alone_in(str(tmp_path)):
        assert os.listdir(tmp_path) == [LOCK]
        assert (tmp_path / LOCK).stat().st_size == 0
    assert os.listdir(tmp_path) == []


def test_it_is_let_go_also_where_the_work_fails(tmp_path: Path) -> None:
    with pytest.raises(OSError, match="full"), alone_in(str(tmp_path)):
        raise OSError("full")
    assert os.listdir(tmp_path) == []


def test_another_one_waits_as_long_as_its_patience(tmp_path: Path) -> None:
    with alone_in(str(tmp_path)):
        began = time.monotonic()
        with pytest.raises(Busy), alone_in(str(tmp_path), patience_s=0.2):
            pytest.fail("it is held")
        assert 0.2 <= time.monotonic() - began < 5
        with pytest.raises(Busy), alone_in(str(tmp_path), patience_s=0):
            pytest.fail("it is held")


def test_another_one_has_its_turn(tmp_path: Path) -> None:
    order: list[str] = []

    def wait() -> None:
        with alone_in(str(tmp_path)):
            order.append("second")

    with alone_in(str(tmp_path)):
        thread = threading.Thread(target=wait)
        thread.start()
        time.sleep(0.1)
        order.append("first")
    thread.join()
    assert order == ["first", "second"]
    assert os.listdir(tmp_path) == []


def test_a_lock_that_another_user_made_is_locked_all_the_same(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / LOCK).write_bytes(b"")
    own = os.open

    def only_read(path: str, flags: int, *mode: int) -> int:
        if flags & os.O_RDWR:
            raise PermissionError(13, "Permission denied")
        return own(path, flags, *mode)

    monkeypatch.setattr(os, "open", only_read)
    with alone_in(str(tmp_path)), pytest.raises(Busy), alone_in(str(tmp_path), patience_s=0):
        pytest.fail("it is held")


def test_a_link_in_the_locks_place_is_not_followed(tmp_path: Path) -> None:
    (tmp_path / "elsewhere").write_bytes(b"mine")
    (tmp_path / LOCK).symlink_to(tmp_path / "elsewhere")
    with pytest.raises(OSError, match="symbolic links"), alone_in(str(tmp_path)):
        pytest.fail("it is no lock")
    assert (tmp_path / "elsewhere").read_bytes() == b"mine"


@pytest.mark.parametrize(("number", "held"), [(37, True), (95, True), (38, True), (5, False)])
def test_where_there_are_no_locks_writers_are_not_kept_apart(
    number: int, held: bool, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    import fcntl

    def refuse(*_: object) -> None:
        raise OSError(number, "no locks")

    monkeypatch.setattr(fcntl, "flock", refuse)
    if held:
        with alone_in(str(tmp_path), patience_s=0):
            assert os.listdir(tmp_path) == [LOCK]
    else:
        with pytest.raises(OSError, match="no locks"), alone_in(str(tmp_path), patience_s=0):
            pytest.fail("it is refused")


def test_a_lock_that_was_removed_meanwhile_is_not_the_one(tmp_path: Path) -> None:
    path = str(tmp_path / "lock")
    handle = os.open(path, os.O_RDWR | os.O_CREAT)
    try:
        assert locks._is_at(handle, path)
        os.unlink(path)
        assert not locks._is_at(handle, path)
        (tmp_path / "lock").write_bytes(b"")
        assert not locks._is_at(handle, path)
    finally:
        os.close(handle)
