"""Font files of a theme: fonts are taken, and what is none, or may not be embedded, is refused."""

from __future__ import annotations

import struct
from collections.abc import Callable

import brotli
import pytest

from tests.sheet.themes import font, picture
from walewright.sheet import theme_fonts
from walewright.sheet.theme_fonts import font_kind


@pytest.mark.parametrize(("flavour", "kind"), [(None, "ttf"), ("woff2", "woff2")])
def test_a_font_is_taken(flavour: str | None, kind: str) -> None:
    assert font_kind(font(flavour)) == (kind, None)


@pytest.mark.parametrize(
    ("data", "why"),
    [
        (b"", "font-kind"),
        (picture(), "font-kind"),
        (b"<svg xmlns='http://www.w3.org/2000/svg'/>", "font-kind"),
        (b"ttcf" + bytes(100), "font-kind"),
        (b"\0\1\0\0", "font-damaged"),
        (b"wOF2", "font-damaged"),
        (b"wOF2" + bytes(100), "font-damaged"),
        (b"OTTO" + bytes(200), "font-damaged"),
        (lambda: font()[:2000], "font-damaged"),
        (lambda: font("woff2")[:2000], "font-damaged"),
        (lambda: font(without="cmap"), "font-damaged"),
        (lambda: font(fs_type=2), "font-restricted"),
    ],
)
def test_what_is_no_font_for_a_page_is_refused(
    data: bytes | Callable[[], bytes], why: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert font_kind(data if isinstance(data, bytes) else data()) == (None, why)
    said = capsys.readouterr()
    assert said.out + said.err == ""


def test_a_font_for_previews_may_be_embedded() -> None:
    assert font_kind(font(fs_type=4)) == ("ttf", None)


def test_what_unpacks_without_end_is_stopped(monkeypatch: pytest.MonkeyPatch) -> None:
    packed = brotli.compress(bytes(64 * 1024 * 1024), quality=1)
    assert len(packed) < 100_000
    header = struct.pack(">4sLLHHLLHHLLLLL", b"wOF2", 0, 0, 1, 0, 0, len(packed), 1, 0, 0, 0, 0, 0, 0)
    data = header + bytes([1, 4]) + packed
    assert font_kind(data) == (None, "font-unpacked")
    monkeypatch.setattr(theme_fonts, "MOST_UNPACKED", 1000)
    assert font_kind(font("woff2")) == (None, "font-unpacked")
