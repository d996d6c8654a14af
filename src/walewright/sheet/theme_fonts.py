"""Font files of a theme: whether they are fonts, and may be put into a page.

Kinds: TrueType and OpenType (ISO/IEC 14496-22), and WOFF 2 (W3C Recommendation "WOFF File Format 2.0").
"""

from __future__ import annotations

import io
import struct
from typing import Literal

from walewright.sheet.themed import FontKind

MOST_UNPACKED = 16 * 1024 * 1024
"""Bytes of a font's tables when they are unpacked. Fonts of alphabets are far below."""

UnfitFont = Literal["font-kind", "font-damaged", "font-unpacked", "font-restricted"]
"""Why a file is no font for a page."""

KINDS: tuple[tuple[bytes, FontKind], ...] = ((b"\0\1\0\0", "ttf"), (b"true", "ttf"), (b"OTTO", "otf"), (b"wOF2", "woff2"))
"""What files begin with."""

NEEDED = ("head", "hhea", "maxp", "hmtx", "cmap")
"""Tables without which there is nothing to set a line with."""

RESTRICTED, USAGE = 0x0002, 0x000F
"""Of the field fsType of the table OS/2: a licence that forbids embedding, and the bits that say so."""


def font_kind(data: bytes) -> tuple[FontKind | None, UnfitFont | None]:
    """Which kind of font the bytes are; or why they cannot be used."""
    # Only a theme with fonts waits for it.
    from walewright.sheet.render import gathered

    kind = next((kind for begins, kind in KINDS if data.startswith(begins)), None)
    if kind is None:
        return None, "font-kind"
    unfit = _packed(data) if kind == "woff2" else None
    if unfit is None:
        with gathered():
            unfit = _looked_through(data)
    return (kind, None) if unfit is None else (None, unfit)


def _looked_through(data: bytes) -> UnfitFont | None:
    from fontTools.ttLib import TTFont

    try:
        with TTFont(io.BytesIO(data), lazy=True) as font:
            shapes = next((tag for tag in ("glyf", "CFF ", "CFF2") if tag in font), None)
            if shapes is None or any(tag not in font for tag in NEEDED):
                return "font-damaged"
            for tag in (*NEEDED, shapes):
                font[tag]
            if not font.getBestCmap():
                return "font-damaged"
            if "OS/2" in font and font["OS/2"].fsType & USAGE == RESTRICTED:
                return "font-restricted"
    except Exception:
        # The library lets every kind of exception out of damaged tables.
        return "font-damaged"
    return None


def _packed(data: bytes) -> UnfitFont | None:
    """What is wrong with what is packed in a WOFF 2 file, found without unpacking more than a font has: its fonts are one stream
    behind the header (48 bytes) and the directory."""
    import brotli

    try:
        (tables,) = struct.unpack_from(">H", data, 12)
        (length,) = struct.unpack_from(">L", data, 20)
        start = _end_of_directory(data, tables)
        unpacking, size = brotli.Decompressor(), 0
        piece = data[start : start + length]
        while not unpacking.is_finished():
            out = unpacking.process(piece, output_buffer_limit=1 << 20)
            size, given = size + len(out), piece
            piece = b""
            if size > MOST_UNPACKED:
                return "font-unpacked"
            if not out and not given:
                return "font-damaged"
    except (brotli.error, struct.error, IndexError):
        return "font-damaged"
    return None


def _end_of_directory(data: bytes, tables: int) -> int:
    """Where the entries of so many tables end (section 4.1 of the Recommendation). Raises IndexError where the file ends before."""
    at = 48
    for _ in range(tables):
        flags = data[at]
        at += 5 if flags & 0x3F == 0x3F else 1
        at = _end_of_number(data, at)
        shapes, version = flags & 0x3F in (10, 11), flags >> 6
        if (version != 3) if shapes else (version != 0):
            at = _end_of_number(data, at)
    return at


def _end_of_number(data: bytes, at: int) -> int:
    """Where a number in base 128 ends: each byte but its last has the highest bit."""
    while data[at] & 0x80:
        at += 1
    return at + 1
