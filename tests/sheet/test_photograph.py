"""The photograph: what a page can show, made ready; everything else is refused by its kind."""

from __future__ import annotations

import base64
import io
from collections.abc import Iterator

import pytest
from PIL import Image

from walewright.sheet.photograph import LARGEST, SMALLEST, ReadyPicture, ready


def picture(width: int, height: int, kind: str = "JPEG", mode: str = "RGB", **more: object) -> bytes:
    made = io.BytesIO()
    image = Image.new(mode, (width, height), "teal" if mode in ("RGB", "RGBA") else 0)
    image.save(made, kind, **more)
    return made.getvalue()


@pytest.mark.parametrize(
    ("kind", "mode"), [("JPEG", "RGB"), ("JPEG", "L"), ("JPEG", "CMYK"), ("PNG", "RGBA"), ("PNG", "P"), ("PNG", "1")]
)
def test_every_mode_becomes_a_picture_for_paper(kind: str, mode: str) -> None:
    made, why = ready(picture(3 * LARGEST, LARGEST, kind, mode))
    assert why is None
    assert made is not None
    with Image.open(io.BytesIO(made.data)) as shown:
        assert (shown.format, shown.mode, shown.size) == ("JPEG", "RGB", (LARGEST, LARGEST // 3))
    assert (made.width, made.height) == (LARGEST, LARGEST // 3)


def test_what_is_small_enough_keeps_its_size() -> None:
    made, _ = ready(picture(SMALLEST, 40))
    assert made is not None
    assert (made.width, made.height) == (SMALLEST, 40)


def test_a_picture_stands_upright_and_says_nothing_of_where_it_was_taken() -> None:
    exif = Image.Exif()
    exif[0x0112] = 6  # turned by a quarter
    exif[0x010E] = "taken at home"
    made, _ = ready(picture(800, 600, exif=exif))
    assert made is not None
    assert (made.width, made.height) == (600, 800)
    assert b"taken at home" not in made.data


def test_the_same_file_gives_the_same_bytes() -> None:
    assert ready(picture(900, 600)) == ready(picture(900, 600))


def _unfit() -> Iterator[tuple[bytes, str]]:
    yield b"", "kind"
    yield b"<svg xmlns='http://www.w3.org/2000/svg'/>", "kind"
    yield picture(800, 800, "GIF", "L"), "kind"
    yield picture(SMALLEST - 1, SMALLEST - 1), "too-small"
    yield picture(800, 800)[:400], "damaged"
    yield picture(20_000, 6_000, "PNG", "1"), "too-many-pixels"


@pytest.mark.parametrize(("data", "why"), list(_unfit()))
def test_what_no_page_can_show_is_refused(data: bytes, why: str) -> None:
    assert ready(data) == (None, why)


def test_the_file_stands_in_the_page_itself() -> None:
    data = bytes(range(256))
    head, _, written = ReadyPicture(data, 16, 16).uri.partition(",")
    assert head == "data:image/jpeg;base64"
    assert base64.b64decode(written, validate=True) == data
