"""The sheet's typefaces, and the only door through which the renderer may fetch anything.

Source Serif 4 and Source Sans 3 (both under the SIL Open Font License 1.1) come from Python packages, so that a page is
the same on every machine whatever is installed there. The packages hold variable fonts. The renderer would make a fixed one of
each for every document, which takes a fifth of its time, and one for each size of type that it meets; so it is given fixed ones,
made once for all pages.
"""

from __future__ import annotations

import hashlib
import importlib.util
import re
import sys
from collections.abc import Mapping
from functools import cache
from pathlib import Path

from weasyprint.urls import URLFetcher, URLFetcherResponse

from walewright import world
from walewright.record import record

SCHEME = "sheet-face:"
"""How the style sheet of the faces names one for the fetcher."""


@record
class FixedFace:
    """One fixed face: the family as the theme names it, its style and weight; the file that it is made of, and where on the axes
    of that."""

    family: str
    style: str
    weight: int
    package: str
    file: str
    axes: tuple[tuple[str, int], ...]

    @property
    def url(self) -> str:
        """What the fetcher knows it by."""
        return f"{SCHEME}{self.family.replace(' ', '-').lower()}-{self.style}-{self.weight}"


def _serif(style: str, weight: int, drawn_for: int) -> FixedFace:
    """A cut of Source Serif 4, drawn for type of so many points (its axis "opsz")."""
    file = "SourceSerif4-Italic[opsz,wght].ttf" if style == "italic" else "SourceSerif4[opsz,wght].ttf"
    return FixedFace("Sheet Serif", style, weight, "fontpkg_source_serif_4", file, (("opsz", drawn_for), ("wght", weight)))


def _sans(style: str, weight: int) -> FixedFace:
    file = "SourceSans3-Italic[wght].ttf" if style == "italic" else "SourceSans3[wght].ttf"
    return FixedFace("Sheet Sans", style, weight, "fontpkg_source_sans_3", file, (("wght", weight),))


TEXT, TITLES = 12, 40
"""Points of type that the serif's cuts are drawn for: what is read, and what stands large."""

FACES = (
    _serif("normal", 400, TEXT),
    _serif("normal", 500, TITLES),
    _serif("normal", 700, TITLES),
    _serif("italic", 400, TEXT),
    _sans("normal", 400),
    _sans("normal", 600),
    _sans("normal", 700),
    _sans("italic", 400),
    _sans("italic", 600),
)
"""Those that a sheet, a bench copy or a publisher's theme can ask for; a weight between is set in the nearest."""

UPRIGHT: Mapping[str, FixedFace] = {"serif": FACES[0], "sans": FACES[4]}
"""The faces whose whole file pages that are no paper take, by what they call them."""

SVG = "data:image/svg+xml,"
PHOTOGRAPH = "data:image/jpeg;base64,"
FONTS = tuple(f"data:font/{kind};base64," for kind in ("ttf", "otf", "woff2"))
"""Those of a publisher's theme, checked before they were written into the page (media types of RFC 8081)."""


LATIN = frozenset((*range(0x20, 0x250), *range(0x2000, 0x2070)))
"""Basic Latin to Latin Extended-B, and General Punctuation: blocks of the Unicode Standard, 16.0, `Blocks.txt`."""

SIGNS = frozenset(map(ord, "\n←→−□"))
"""What a page has besides, whatever it is of: the ends of its lines, minus, arrows and boxes to tick."""


ESCAPED = re.compile(r"\\([0-9a-fA-F]{1,6})")
"""A letter that a style sheet writes by its number (CSS Syntax Module Level 3, section 4.3.7)."""


def font_face_css() -> str:
    """@font-face rules for the renderer. Raises ModuleNotFoundError when a font package is not installed."""
    for face in FACES:
        _files(face.package)
    return "\n".join(
        f'@font-face {{ font-family: "{face.family}"; font-style: {face.style}; font-weight: {face.weight};'
        f' src: url("{face.url}"); }}'
        for face in FACES
    )


def face_path(kind: str) -> str:
    """Where the upright face of a kind, "serif" or "sans", lies, in all its weights; empty where its package is not installed."""
    face = UPRIGHT[kind]
    try:
        return str(_files(face.package) / face.file)
    except ModuleNotFoundError:
        return ""


@cache
def fixed(face: FixedFace, rare: str = "") -> bytes:
    """The face as a TrueType font without axes, with the letters of Latin scripts, what goes with them, and the `rare` ones. One
    without rare letters is made once for all that is printed."""
    path = _files(face.package) / face.file
    if rare:
        return _made(face, path, rare)
    # Another release of the font, or another way to make it of it, is another face.
    made_of = f"{path} {path.stat().st_size} {path.stat().st_mtime_ns} {face} {world.package_text('sheet/fonts.py')}"
    name = f"{face.url.removeprefix(SCHEME)}.{hashlib.sha256(made_of.encode()).hexdigest()[:16]}"
    return world.kept_beside("sheet/fonts.py", name, lambda: _made(face, path, rare))


def _made(face: FixedFace, path: Path, rare: str) -> bytes:
    import uharfbuzz

    whole = uharfbuzz.Face(uharfbuzz.Blob.from_file_path(str(path)))
    cut = uharfbuzz.SubsetInput()
    cut.keep_everything()
    # What other forms a letter has, such as figures of one width, is kept with it.
    cut.glyph_set.clear()
    cut.unicode_set.clear()
    cut.unicode_set.update({*LATIN, *SIGNS, *map(ord, rare)})
    for axis, at in face.axes:
        cut.pin_axis_location(whole, axis, at)
    return bytes(uharfbuzz.subset(whole, cut).blob.data)


def rare(page: str) -> str:
    """The letters of a page beyond `LATIN` and `SIGNS`: those written or, in its style sheets, given by number, and the capitals
    of both."""
    by_number = (chr(min(int(number, 16), sys.maxunicode)) for number in ESCAPED.findall(page))
    letters = {*page, *by_number}
    letters |= {capital for letter in letters for capital in letter.upper()}
    return "".join(sorted(letter for letter in letters if ord(letter) not in LATIN | SIGNS))


def _files(package: str) -> Path:
    spec = importlib.util.find_spec(package)
    if spec is None or spec.origin is None:
        raise ModuleNotFoundError(f"the font package {package} is not installed", name=package)
    return Path(spec.origin).resolve().parent / "files"


class ShippedOnly(URLFetcher):  # type: ignore[misc]
    """Fetches the faces, the theme's own ornaments written into it as SVG, and what was written into the page: the photograph,
    a publisher's logo and fonts; refuses all else with ValueError.

    Nothing on a sheet comes from elsewhere: an author gives words, which are escaped, and a file that was read before."""

    def __init__(self, page: str = "") -> None:
        """For all that the `page` holds: a face has its letters."""
        super().__init__(allowed_protocols=("data",), allow_redirects=False)
        self._faces = {face.url: face for face in FACES}
        self._rare = rare(page)

    def fetch(self, url: str, headers: dict[str, str] | None = None) -> URLFetcherResponse:
        """The response, for an allowed `url`."""
        if url.startswith((SVG, PHOTOGRAPH, *FONTS)):
            return super().fetch(url, headers)
        if url in self._faces:
            return URLFetcherResponse(url, fixed(self._faces[url], self._rare), {"Content-Type": "font/ttf"})
        raise ValueError(f"a sheet may not fetch {url[:80]}")
