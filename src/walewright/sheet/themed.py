"""A publisher's theme as a value: a style sheet, and what its folder brings besides, made ready for the page."""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Iterable
from typing import Literal

from walewright.record import record
from walewright.sheet.model import PlacedPicture

FontKind = Literal["ttf", "otf", "woff2"]
FontStyle = Literal["normal", "italic"]


@record
class FontFace:
    """A font file that was looked through, and what a style sheet calls it. `weight` is 1 to 1000, as CSS has it."""

    family: str
    weight: int
    style: FontStyle
    kind: FontKind
    data: bytes


@record
class Theme:
    """What is laid over the house's style sheet: `css`, in which nothing is `unfit`; the lines that a publisher prints of itself;
    its logo; its fonts."""

    css: str = ""
    imprint: tuple[str, ...] = ()
    logo: PlacedPicture | None = None
    faces: tuple[FontFace, ...] = ()


PLAIN = Theme()
"""The house's own look."""


def font_faces(faces: Iterable[FontFace]) -> str:
    """Rules that bring the fonts into a page, each with its file inside. Families have no quotation mark and no backslash."""
    return "\n".join(
        f'@font-face {{ font-family: "{face.family}"; font-weight: {face.weight}; font-style: {face.style}; '
        f'src: url("data:font/{face.kind};base64,{b64encode(face.data).decode()}"); }}'
        for face in faces
    )


def colour_rule(colours: Iterable[tuple[str, str]]) -> str:
    """A rule that sets colours by their names; "" for none."""
    own = " ".join(f"--{name}: {colour};" for name, colour in colours)
    return f":root {{ {own} }}\n" if own else ""
