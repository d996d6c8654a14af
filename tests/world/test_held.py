"""A source as it was found: its text, its line ends and its mark, and what is no text."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from walewright import world
from walewright.report.english import in_english
from walewright.world import reading
from walewright.world.refusals import Hindrance, reason

ENDS = [
    (b"", "", "\n"),
    (b"one", "one", "\n"),
    (b"one\ntwo\n", "one\ntwo\n", "\n"),
    (b"one\r\ntwo\r\n", "one\ntwo\n", "\r\n"),
    (b"one\rtwo\r", "one\ntwo\n", "\r"),
    (b"one\r\ntwo\n", "one\ntwo\n", None),
    (b"one\rtwo\n", "one\ntwo\n", None),
    (b"one\rtwo\r\n", "one\ntwo\n", None),
    (b"\r\r\n", "\n\n", None),
]


def held(path: Path) -> world.Held:
    found, fault = world.read_held(str(path))
    assert fault is None
    assert found is not None
    return found


@pytest.mark.parametrize("mark", [b"", b"\xef\xbb\xbf"])
@pytest.mark.parametrize(("data", "text", "end"), ENDS)
def test_line_ends_and_the_mark(data: bytes, text: str, end: str | None, mark: bytes, tmp_path: Path) -> None:
    path = tmp_path / "a.wale"
    path.write_bytes(mark + data)
    found = held(path)
    assert (found.path, found.text, found.line_end, found.marked, found.data) == (str(path), text, end, bool(mark), mark + data)
    assert world.read_source(str(path)) == (text, None)
    assert found.bytes_of("a\nb\n") == mark + b"a\nb\n".replace(b"\n", (end or "\n").encode())
    if end is not None:
        assert found.bytes_of(found.text) == found.data


@pytest.mark.parametrize(
    ("data", "code", "why"),
    [
        (b"a\0b", "source-not-text", "binary"),
        (b"\xff\xfea\0", "source-not-text", "binary"),
        (b"ab\xff\n", "source-not-text", "byte 3"),
        (b"\xef\xbb\xbfab\xc3", "source-not-text", "byte "),
    ],
)
def test_what_is_no_text(data: bytes, code: str, why: str, tmp_path: Path) -> None:
    path = tmp_path / "a.wale"
    path.write_bytes(data)
    found, fault = world.read_held(str(path))
    assert found is None
    assert fault is not None
    assert fault.code == code
    assert why in f"{fault.case} {in_english(fault).message}"


@pytest.mark.parametrize("more", [-1, 0, 1])
def test_the_largest_source(more: int, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(reading, "LARGEST_SOURCE", 100)
    path = tmp_path / "a.wale"
    path.write_bytes(b"#" * (100 + more))
    text, fault = world.read_source(str(path))
    assert (text is None) == (more > 0) == (fault is not None)
    if fault is not None:
        assert fault.code == "source-too-large"


def test_the_largest_source_is_two_mebibytes() -> None:
    assert world.LARGEST_SOURCE == 2 << 20
    assert world.SOURCE_SUFFIX == ".wale"


def test_a_file_that_is_another_one_or_other(tmp_path: Path) -> None:
    one, other = tmp_path / "one", tmp_path / "other"
    one.write_bytes(b"abc")
    other.write_bytes(b"abc")
    before = os.stat(one)
    assert reading.unchanged(before, os.stat(one))
    assert not reading.unchanged(before, os.stat(other))
    os.utime(one, ns=(before.st_atime_ns + 5, before.st_mtime_ns))
    assert reading.unchanged(before, os.stat(one)), "to read a file does not change it"
    os.utime(one, ns=(before.st_atime_ns, before.st_mtime_ns + 5))
    assert not reading.unchanged(before, os.stat(one))
    one.write_bytes(b"abcd")
    os.utime(one, ns=(before.st_atime_ns, before.st_mtime_ns))
    assert not reading.unchanged(before, os.stat(one))


def test_why_the_system_refused() -> None:
    from walewright.report.said import said

    assert reason(OSError(28, "No space left on device")) == "no space left on device"
    assert reason(ValueError("embedded null byte")) == "embedded null byte"
    assert reason(OSError("Odd")) == "odd"
    assert reason(Hindrance(17, said("kept-for-builds"))) == said("kept-for-builds")
    assert Hindrance(17, said("kept-for-builds")).errno == 17


def test_a_source_that_went_away_before_it_is_written_anew(tmp_path: Path) -> None:
    path = tmp_path / "a.wale"
    path.write_text("a\n")
    found = held(path)
    path.unlink()
    fault = world.rewrite(found, b"b\n")
    assert fault is not None
    told = in_english(fault)
    assert told.message == "the file cannot be written: no such file or directory"
    assert told.helps == ("check that the file is still there",)
    assert list(tmp_path.iterdir()) == []


def test_a_source_is_written_anew(tmp_path: Path) -> None:
    path = tmp_path / "a.wale"
    path.write_bytes(b"a\r\n")
    found = held(path)
    assert world.rewrite(found, found.bytes_of("b\n")) is None
    assert path.read_bytes() == b"b\r\n"
    assert [p.name for p in tmp_path.iterdir()] == ["a.wale"]
