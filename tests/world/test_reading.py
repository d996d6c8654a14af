"""What is read as a source: plain files of the right name, up to a size."""

from __future__ import annotations

import os
import socket
from pathlib import Path

import pytest

from walewright import world
from walewright.cli import main
from walewright.report.english import in_english
from walewright.world import reading

Said = pytest.CaptureFixture[str]


def refused(path: Path) -> str:
    text, fault = world.read_source(str(path))
    assert text is None
    assert fault is not None
    assert in_english(fault).helps
    return f"{fault.code}: {in_english(fault).message}"


@pytest.mark.parametrize("command", ["check", "build", "format"])
@pytest.mark.parametrize("name", ["scarf.txt", "scarf", ".wale", "scarf.wale.txt", "scarf.wale/", "/dev/null", "."])
def test_a_name_that_is_no_sources(command: str, name: str, sound: Path, capsys: Said, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(sound.parent)
    sound.rename("scarf.txt")
    before = os.listdir()
    assert main([command, name]) == 2
    told = capsys.readouterr()
    assert "source-name" in told.err
    assert told.out == ""
    assert os.listdir() == before


def test_capitals_do_not_matter(sound: Path) -> None:
    assert main(["check", str(sound.rename(sound.with_name("SLACK.WALE")))]) == 0


def test_pipes_devices_and_sockets_are_not_opened(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    pipe, device, listening = tmp_path / "pipe.wale", tmp_path / "zero.wale", tmp_path / "socket.wale"
    os.mkfifo(pipe)
    device.symlink_to("/dev/zero")
    with monkeypatch.context() as patch:
        # The name of a socket may be no longer than some hundred letters.
        patch.chdir(tmp_path)
        with socket.socket(socket.AF_UNIX) as open_socket:
            open_socket.bind("socket.wale")
    monkeypatch.setattr(os, "open", lambda *_: pytest.fail("opened"))
    assert refused(pipe) == "source-not-file: this is a named pipe, not a file with a text"
    assert refused(device) == "source-not-file: this is a device, not a file with a text"
    assert refused(listening) == "source-not-file: this is a socket, not a file with a text"
    (tmp_path / "folder.wale").mkdir()
    assert refused(tmp_path / "folder.wale").startswith("source-is-folder: ")


def test_a_pipe_that_took_a_files_place_does_not_wait(sound: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    seen = os.stat(sound)
    sound.unlink()
    os.mkfifo(sound)
    monkeypatch.setattr(reading.os, "stat", lambda *_, **__: seen)
    assert refused(sound).startswith("source-not-file")


def test_a_file_is_read_no_further_than_the_largest_source(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    endless = tmp_path / "endless.wale"
    endless.write_bytes(b"# x\n")
    given = [0]

    def read(_: int, room: int) -> bytes:
        given[0] += min(room, 65_536)
        return b"#" * min(room, 65_536)

    monkeypatch.setattr(os, "read", read)
    assert refused(endless).startswith("source-too-large")
    assert given[0] == world.LARGEST_SOURCE + 1


def test_a_file_that_grows_while_it_is_read(sound: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    read = os.read

    def growing(handle: int, room: int) -> bytes:
        with sound.open("ab") as more:
            more.write(b"# more\n")
        monkeypatch.setattr(os, "read", read)
        return read(handle, room)

    monkeypatch.setattr(os, "read", growing)
    assert refused(sound) == "source-unreadable: the file was changed while it was read"
    assert world.read_source(str(sound))[1] is None


@pytest.mark.parametrize(
    ("fault", "code", "why"),
    [
        (PermissionError(13, "Permission denied"), "source-unreadable", "permission denied"),
        (FileNotFoundError(2, "No such file or directory"), "source-missing", "no such file"),
        (OSError(5, "Input/output error"), "source-unreadable", "input/output error"),
    ],
)
def test_what_the_system_refuses(fault: OSError, code: str, why: str, sound: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def refuse(*_: object) -> None:
        raise fault

    monkeypatch.setattr(os, "open", refuse)
    told = refused(sound)
    assert told.startswith(f"{code}: ")
    assert why in told


def test_names_that_lead_nowhere(tmp_path: Path) -> None:
    assert "name too long" in refused(tmp_path / f"{'x' * 300}.wale")
    (tmp_path / "round.wale").symlink_to("round.wale")
    assert "symbolic links" in refused(tmp_path / "round.wale")
    (tmp_path / "gone.wale").symlink_to("nowhere.wale")
    assert refused(tmp_path / "gone.wale").startswith("source-missing")
    (tmp_path / "file").write_bytes(b"")
    assert "not a directory" in refused(tmp_path / "file" / "a.wale")


@pytest.mark.skipif(hasattr(os, "geteuid") and os.geteuid() == 0, reason="nothing is forbidden to root")
def test_a_folder_that_lets_nobody_in(tmp_path: Path) -> None:
    closed = tmp_path / "closed"
    closed.mkdir(mode=0)
    assert "permission denied" in refused(closed / "a.wale")
    closed.chmod(0o700)
