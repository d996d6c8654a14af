"""What a product depends on, by names, and what each is now: files, shipped data, the program, its libraries, what is asked for.

A name says what it is of, with a colon behind: `file:bollard.wale` lies in the folder of the catalogue or below, `shipped:` among
the shipped patterns, `package:` is a library's version, `asked:` something that the catalogue says.
"""

from __future__ import annotations

import os
import platform
from collections.abc import Iterable, Mapping
from importlib.metadata import PackageNotFoundError, version

from walewright import world
from walewright.catalogue.model import Catalogue, Making, Product
from walewright.cli.formats import format_named
from walewright.languages import ENGLISH

PROGRAM, PYTHON, NAMES = "program", "python", "shipped:names"
FOLDERS = ("tables", "machines", "shapes", "charts", "names")
MEASURES = "shipped:tables/measures.toml"
"""What is looked at for every source."""

READERS = ("lark", "highspy", "numpy", "jinja2", "markupsafe", "tinycss2", "pillow")
"""Libraries that all products are made with."""
PRINTERS = (
    *("weasyprint", "pydyf", "tinyhtml5", "cssselect2", "pyphen", "fonttools", "uharfbuzz", "brotli"),
    *("fontpkg-source-sans-3", "fontpkg-source-serif-4"),
)
"""Those that pages on paper are made with besides."""
ON_PAPER = (".pdf",)


class Inputs:
    """What everything is now. Each thing is looked at once."""

    def __init__(self, folder: str) -> None:
        self._folder = folder
        self._seen: dict[str, str] = {}

    def now(self, name: str) -> str:
        """What a thing is now, as a version or a fingerprint."""
        if name not in self._seen:
            self._seen[name] = self._look(name)
        return self._seen[name]

    def _look(self, name: str) -> str:
        kind, _, rest = name.partition(":")
        if kind == "file":
            return world.file_fingerprint(os.path.join(self._folder, rest))
        if name == NAMES:
            return world.names_fingerprint(FOLDERS)
        if kind == "shipped":
            return world.shipped_fingerprint(rest)
        if kind == "package":
            try:
                return version(rest)
            except PackageNotFoundError:
                return world.MISSING
        return world.program_fingerprint() if name == PROGRAM else platform.python_version()

    def all_now(self, names: Iterable[str]) -> dict[str, str]:
        """What several things are now, by their names."""
        return {name: self.now(name) for name in sorted(names)}


def common(source: str, language: str, used: Iterable[str], shipped: Iterable[str]) -> tuple[str, ...]:
    """What everything that is made of a source in a language depends on: the files that it uses, its own and shipped ones."""
    words = () if language == ENGLISH else (f"shipped:names/{language}.toml",)
    program = (PROGRAM, PYTHON, NAMES, MEASURES, *words, *(f"package:{name}" for name in READERS))
    return (*program, f"file:{source}", *(f"file:{name}" for name in used), *(f"shipped:{name}" for name in shipped))


def of_product(product: Product, theme: Iterable[str]) -> tuple[str, ...]:
    """What a product depends on besides: its printer, and the files of its theme."""
    form = format_named(product.format)
    printer = PRINTERS if form.suffix.endswith(ON_PAPER) else ()
    return (*(f"package:{name}" for name in printer), *(f"file:{name}" for name in (theme if "theme" in form.varies_with else ())))


def asked(catalogue: Catalogue, making: Making, product: Product) -> Mapping[str, str]:
    """What the catalogue says of a product, by the names that the catalogue has for it."""
    said = {
        "languages": making.language,
        "sizes": " ".join(making.sizes),
        "choices": " ".join(f"{choice}={alternative}" for choice, alternative in making.choices),
        "papers": product.paper,
        "units": product.units,
        "prints": product.print,
    }
    if "theme" in format_named(product.format).varies_with:
        own = catalogue.themes.get(product.theme)
        said |= {
            "themes": own.file if own else "",
            "date": catalogue.date.isoformat(),
            "imprint": "\n".join(catalogue.imprint),
            "edition": catalogue.edition,
        }
    return {f"asked:{name}": text for name, text in said.items() if text}
