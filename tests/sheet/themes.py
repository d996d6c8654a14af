"""Theme folders for tests: made of the house's typefaces and of pictures drawn here."""

from __future__ import annotations

import io
from functools import cache
from pathlib import Path

from fontTools.subset import Options, Subsetter
from fontTools.ttLib import TTFont
from fontTools.varLib.instancer import instantiateVariableFont
from PIL import Image

from walewright.sheet.fonts import FACES, _files

WHOLE = """\
imprint = ["Loops & <Rows>", "For private use."]

[logo]
file = "pictures/mark.png"
alternative = "A row of loops"

[colours]
accent = "maroon"

[[font]]
family = "House Display"
file = "display.woff2"
weight = 700
style = "italic"

[[font]]
family = "House Display"
file = "display.ttf"
"""
SHEET = 'h1 { font: italic 700 40pt "House Display", serif; }\nh2 { font: 18pt "House Display", serif; }\n'


@cache
def _letters() -> bytes:
    """A font of some letters. They are picked first: to fix the faces of all letters takes seconds."""
    options = Options()
    options.name_IDs = ["*"]
    cut = Subsetter(options)
    cut.populate(text="".join(map(chr, range(32, 127))))
    whole = TTFont(_files(FACES[0].package) / FACES[0].file)
    cut.subset(whole)
    return _saved(instantiateVariableFont(whole, {"opsz": 40, "wght": 400}))


@cache
def font(flavour: str | None = None, fs_type: int = 0, without: str = "") -> bytes:
    """A font of some letters; by itself, or packed as "woff2"."""
    made = TTFont(io.BytesIO(_letters()))
    made["OS/2"].fsType = fs_type
    if without:
        del made[without]
    made.flavor = flavour
    return _saved(made)


def _saved(made: TTFont) -> bytes:
    out = io.BytesIO()
    made.save(out)
    return out.getvalue()


def picture(width: int = 400, height: int = 200) -> bytes:
    out = io.BytesIO()
    Image.new("RGBA", (width, height), (122, 47, 59, 128)).save(out, "PNG")
    return out.getvalue()


def folder(at: Path, description: str | None = WHOLE, sheet: str | None = SHEET) -> Path:
    """A theme's folder with all that the whole description names."""
    (at / "pictures").mkdir(parents=True)
    (at / "pictures" / "mark.png").write_bytes(picture())
    (at / "display.woff2").write_bytes(font("woff2"))
    (at / "display.ttf").write_bytes(font())
    if description is not None:
        (at / "theme.toml").write_text(description, encoding="utf-8")
    if sheet is not None:
        (at / "theme.css").write_text(sheet, encoding="utf-8")
    return at
