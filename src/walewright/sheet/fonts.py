"""The sheet's typefaces, and the only door through which the renderer may fetch anything.

Source Serif 4 and Source Sans 3 (both under the SIL Open Font License 1.1) come from Python packages, so that a page is
the same on every machine whatever is installed there.
"""

from __future__ import annotations

import importlib.util
from pathlib import Path
from urllib.parse import unquote, urlsplit

from weasyprint.urls import URLFetcher, URLFetcherResponse

FACES = (
    ("Sheet Serif", "normal", "fontpkg_source_serif_4", "SourceSerif4[opsz,wght].ttf"),
    ("Sheet Serif", "italic", "fontpkg_source_serif_4", "SourceSerif4-Italic[opsz,wght].ttf"),
    ("Sheet Sans", "normal", "fontpkg_source_sans_3", "SourceSans3[wght].ttf"),
    ("Sheet Sans", "italic", "fontpkg_source_sans_3", "SourceSans3-Italic[wght].ttf"),
)
"""(family as the theme names it, style, package, file)."""

UPRIGHT = ("serif", "", "sans", "")
"""What pages that are no paper call them."""

SVG = "data:image/svg+xml,"
PHOTOGRAPH = "data:image/jpeg;base64,"
FONTS = tuple(f"data:font/{kind};base64," for kind in ("ttf", "otf", "woff2"))
"""Those of a publisher's theme, checked before they were written into the page (media types of RFC 8081)."""


def font_face_css() -> str:
    """@font-face rules for the renderer. Raises ModuleNotFoundError when a font package is not installed."""
    rules = []
    for family, style, package, file in FACES:
        url = (_files(package) / file).as_uri()
        rules.append(f'@font-face {{ font-family: "{family}"; font-style: {style}; src: url("{url}"); }}')
    return "\n".join(rules)


def face_path(kind: str) -> str:
    """Where the upright face of a kind, "serif" or "sans", lies; empty where its package is not installed."""
    _, _, package, file = FACES[UPRIGHT.index(kind)]
    try:
        return str(_files(package) / file)
    except ModuleNotFoundError:
        return ""


def _files(package: str) -> Path:
    spec = importlib.util.find_spec(package)
    if spec is None or spec.origin is None:
        raise ModuleNotFoundError(f"the font package {package} is not installed", name=package)
    return Path(spec.origin).resolve().parent / "files"


class ShippedOnly(URLFetcher):  # type: ignore[misc]
    """Fetches the font files, the theme's own ornaments written into it as SVG, and what was written into the page: the photograph,
    a publisher's logo and fonts; refuses all else with ValueError.

    Nothing on a sheet comes from elsewhere: an author gives words, which are escaped, and a file that was read before."""

    def __init__(self) -> None:
        super().__init__(allowed_protocols=("file", "data"), allow_redirects=False)
        self._fonts = frozenset(_files(package) / file for _, _, package, file in FACES)

    def fetch(self, url: str, headers: dict[str, str] | None = None) -> URLFetcherResponse:
        """The response, for an allowed `url`."""
        if url.startswith((SVG, PHOTOGRAPH, *FONTS)):
            return super().fetch(url, headers)
        parts = urlsplit(url)
        if parts.scheme == "file" and not parts.netloc and Path(unquote(parts.path)).resolve() in self._fonts:
            return super().fetch(url, headers)
        raise ValueError(f"a sheet may not fetch {url[:80]}")
