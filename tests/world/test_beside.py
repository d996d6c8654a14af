"""Files that a source or an option names: in the folder or below, wherever links lead, and up to a size."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from walewright import world
from walewright.world.beside import path_beside
from walewright.world.pictures import LARGEST_PICTURE, read_plain


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A folder with a source, a file and a folder in it, and a source beside it."""
    made = tmp_path / "garments"
    (made / "below").mkdir(parents=True)
    (made / "own.wale").write_text("own\n")
    (made / "stitches.wale").write_text("stitches\r\nmore\r\n", newline="")
    (made / "below" / "deep.wale").write_text("deep\n")
    (made / "below" / "a.jpg").write_bytes(b"12345")
    (tmp_path / "out.wale").write_text("out\n")
    return made


@pytest.mark.parametrize("name", ["stitches.wale", "below/deep.wale", "below//deep.wale", "./below/deep.wale", "gone/away.wale"])
def test_in_the_folder_or_below(name: str, folder: Path) -> None:
    assert path_beside(str(folder / "own.wale"), name) == os.path.realpath(folder / name)


OUTSIDE = ["", ".", "../out.wale", "below/../own.wale", "/etc/hosts", "c:own.wale", "below\\deep.wale", "a\0b.wale"]


@pytest.mark.parametrize("name", OUTSIDE)
def test_names_that_may_lead_elsewhere(name: str, folder: Path) -> None:
    source = str(folder / "own.wale")
    assert path_beside(source, name) is None
    assert world.read_beside(source, name) == ("", "outside", None)
    assert world.read_picture(source, name) == (b"", "outside")
    assert world.bytes_within(str(folder), name, 10) == (b"", "outside")
    assert world.text_within(str(folder), name) == (None, "outside", None)


def test_links_that_lead_elsewhere(folder: Path) -> None:
    source = str(folder / "own.wale")
    (folder / "linked.wale").symlink_to(folder.parent / "out.wale")
    (folder / "up").symlink_to(folder.parent)
    (folder / "fine.wale").symlink_to(folder / "below" / "deep.wale")
    # A name that only begins as the folder's does.
    (folder.parent / "garments2").mkdir()
    (folder.parent / "garments2" / "a.wale").write_text("")
    (folder / "near.wale").symlink_to(folder.parent / "garments2" / "a.wale")
    for name in ("linked.wale", "up/out.wale", "near.wale"):
        assert world.read_beside(source, name)[1] == "outside"
        assert world.read_picture(source, name)[1] == "outside"
    assert world.read_beside(source, "fine.wale") == ("deep\n", "", None)


def test_a_source_reached_by_a_link_has_the_folder_that_it_is_named_in(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(folder)
    assert world.read_beside("own.wale", "stitches.wale") == ("stitches\nmore\n", "", None)


def test_another_source(folder: Path) -> None:
    source = str(folder / "own.wale")
    assert world.read_beside(source, "below/deep.wale") == ("deep\n", "", None)
    assert world.read_beside(source, "gone.wale") == ("", "missing", None)
    assert world.read_beside(source, "below/a.jpg") == ("", "not-source", None)
    assert world.read_beside(source, f"{'x' * 300}.wale")[:2] == ("", "missing")
    (folder / "text.txt").write_text("")
    (folder / "named.wale").symlink_to(folder / "text.txt")
    (folder / "text").symlink_to(folder / "stitches.wale")
    assert world.read_beside(source, "named.wale")[1] == "not-source"
    assert world.read_beside(source, "text")[1] == "not-source"
    (folder / "binary.wale").write_bytes(b"\0")
    text, why, fault = world.read_beside(source, "binary.wale")
    assert (text, why) == ("", "unreadable")
    assert fault is not None
    assert fault.code == "source-not-text"
    (folder / "round.wale").symlink_to("round.wale")
    assert world.read_beside(source, "round.wale")[1] in ("missing", "unreadable")


def test_what_the_system_refuses(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    source = str(folder / "own.wale")

    def refuse(*_: object, **__: object) -> None:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(os.path, "realpath", refuse)
    assert world.read_beside(source, "stitches.wale") == ("", "unreadable", None)
    assert world.read_picture(source, "below/a.jpg") == (b"", "refused")
    assert world.text_within(str(folder), "own.wale") == (None, "refused", None)


def test_plain_files_up_to_a_size(folder: Path) -> None:
    source = str(folder / "own.wale")
    assert world.read_picture(source, "below/a.jpg") == (b"12345", None)
    assert read_plain(source, "below/a.jpg", 5) == (b"12345", None)
    assert read_plain(source, "below/a.jpg", 4) == (b"", "too-large")
    assert world.read_picture(source, "gone.jpg") == (b"", "missing")
    assert world.read_picture(source, "below") == (b"", "not-file")
    assert world.read_picture(source, "own.wale/a.jpg") == (b"", "refused")
    os.mkfifo(folder / "pipe.jpg")
    assert world.read_picture(source, "pipe.jpg") == (b"", "not-file")
    assert LARGEST_PICTURE == 40 << 20


def test_files_of_a_folder_that_an_option_names(folder: Path) -> None:
    assert world.bytes_within(str(folder), "below/a.jpg", 5) == (b"12345", None)
    assert world.bytes_within(str(folder), "below/a.jpg", 4) == (b"", "too-large")
    assert world.text_within(str(folder), "stitches.wale") == ("stitches\nmore\n", None, None)
    assert world.text_within(str(folder), "gone.wale") == (None, "missing", None)
    (folder / "away.css").symlink_to(folder / "nowhere.css")
    text, why, fault = world.text_within(str(folder), "away.css")
    assert (text, why) in ((None, "missing"), (None, None))
    assert (fault is None) == (why is not None)
    text, why, fault = world.text_within(str(folder), "below")
    assert (text, why) == (None, None)
    assert fault is not None
    assert fault.code == "source-is-folder"
    assert fault.labels[0].span.file == os.path.join(str(folder), "below")


def test_a_folder(folder: Path) -> None:
    assert world.is_folder(str(folder))
    assert not world.is_folder(str(folder / "own.wale"))
    assert not world.is_folder(str(folder / "gone"))
    assert not world.is_folder("a\0b")
