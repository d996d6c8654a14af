"""Sheet to HTML, HTML to PDF. The same sheet gives the same bytes."""

from __future__ import annotations

import datetime
import hashlib
import logging
import os
from collections import defaultdict
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from functools import cache
from typing import Any

from markupsafe import Markup

from walewright import world
from walewright.figures.model import Drawing
from walewright.record import record
from walewright.sheet.bench import BenchDocument
from walewright.sheet.browser import PickedSizes
from walewright.sheet.loading import renderer
from walewright.sheet.model import Sheet
from walewright.sheet.tagging import finish
from walewright.sheet.templating import templates
from walewright.sheet.theme import colours
from walewright.sheet.theme_contrast import channels, hexadecimal
from walewright.sheet.themed import PLAIN, Theme, font_faces

HOUSE = "booklet"


def house_css() -> str:
    """The house's own style sheet."""
    return world.package_text(f"sheet/themes/{HOUSE}.css")


def _ornaments(house: str, css: str) -> str:
    """The house's style sheet with its ornaments, which are pictures within it, in the accent of a theme's `css`."""
    before, after = (channels(colours(text).get("accent", "")) for text in (house, f"{house}\n{css}"))
    if before is None or after is None:
        return house
    return house.replace(f"%23{hexadecimal(before)[1:]}", f"%23{hexadecimal(after)[1:]}")


def html(sheet: Sheet, theme: Theme = PLAIN, large_print: bool = False) -> str:
    """The sheet as one HTML document with its style sheet inside, and over that a publisher's `theme`, in which nothing is `unfit`;
    a browser without the sheet's fonts takes its own. Over both lies the type of a `large_print`."""
    return _document(sheet, theme, large_print)


def browser_html(sheet: Sheet, picked: PickedSizes, theme: Theme = PLAIN, large_print: bool = False) -> str:
    """The same as a page for a browser: with a script, by which a size can be picked and its steps be ticked off, and with colours
    for the night, if it has the house's by day."""
    page = _document(sheet, theme, large_print, picked)
    return page.replace(_KEY, hashlib.sha256(page.encode()).hexdigest()[:32])


_KEY = "key-of-this-document"
"""Stands for the document's hash until it is made."""


def _document(sheet: Sheet, theme: Theme, large_print: bool, picked: PickedSizes | None = None) -> str:
    own = world.package_text("sheet/themes/imprint.css") if theme.imprint or theme.logo else ""
    css = "\n".join(part for part in (_ornaments(house_css(), theme.css), own, font_faces(theme.faces), theme.css) if part)
    css += world.package_text("sheet/themes/large.css") if large_print else ""
    if picked is not None:
        css += "\n" + world.package_text("sheet/themes/browser.css")
        css += "" if theme.css or theme.faces else world.package_text("sheet/themes/night.css")
    # Style sheets alone are let through unescaped: the house's own, and one that was looked through.
    made = {
        "sheet": sheet,
        "words": sheet.words,
        "theme": Markup(css),
        "colours": defaultdict(str, colours(css)),
        "imprint": theme.imprint,
        "logo": theme.logo,
        "browser": picked,
        "large": large_print,
        "key": _KEY,
        "script": Markup(world.package_text("sheet/themes/browser.js")) if picked is not None else "",
    }
    return templates().get_template("sheet.html").render(made)


def bench_html(made: BenchDocument, theme: Theme = PLAIN) -> str:
    """A bench copy as one HTML document. It has a style of its own; of a publisher's `theme` it takes the colours."""
    house = world.package_text("sheet/themes/bench.css")
    own = "".join(f"--{name}: {colour}; " for name, colour in colours(theme.css).items())
    css = f"{house}\n:root {{ {own}}}" if own else house
    made_of = {"sheet": made, "words": made.words, "theme": Markup(css), "colours": defaultdict(str, colours(css))}
    return templates().get_template("bench.html").render(made_of)


def anchors_of_pages(page: str) -> tuple[tuple[str, ...], ...]:
    """Which anchors lie on each page of paper. What goes on has its anchor on its next pages too."""
    weasyprint = renderer()
    from weasyprint.text.fonts import FontConfiguration

    from walewright.sheet.fonts import ShippedOnly, font_face_css
    from walewright.sheet.printer import PrintedPage

    fonts = FontConfiguration()
    with gathered():
        faces = weasyprint.CSS(string=font_face_css(), font_config=fonts, url_fetcher=ShippedOnly(page))
        pages = PrintedPage(page).render(stylesheets=[faces], font_config=fonts).pages
    return tuple(tuple(laid.anchors) for laid in pages)


def picture(drawing: Drawing) -> str:
    """A drawing by itself as one SVG, in the house's colours."""
    macros = templates().get_template("macros.html").make_module({"words": {}, "colours": defaultdict(str, _house())})
    return str(macros.drawing(drawing, "picture"))  # type: ignore[attr-defined]


@cache
def _house() -> Mapping[str, str]:
    """The colours of the house, which do not change."""
    return colours(house_css())


@record
class OnPaper:
    """A PDF, on how many pages it lies, and the renderer's warnings: none, when all is well."""

    data: bytes
    pages: int
    warnings: tuple[str, ...] = ()


def pdf(page: str, sheet: Sheet | BenchDocument) -> tuple[bytes, tuple[str, ...]]:
    """The PDF of `on_paper`, and the renderer's warnings."""
    laid = on_paper(page, sheet)
    return laid.data, laid.warnings


def on_paper(page: str, sheet: Sheet | BenchDocument) -> OnPaper:
    """`page`, the HTML of `sheet`, as a tagged PDF (PDF/UA-1).

    Raises ModuleNotFoundError when the font packages are not installed."""
    weasyprint = renderer()
    from weasyprint.text.fonts import FontConfiguration

    from walewright.sheet.fonts import ShippedOnly, font_face_css
    from walewright.sheet.printer import PrintedPage

    fonts = FontConfiguration()
    laid: list[int] = []

    def completed(document: Any, made: Any) -> None:
        laid.append(len(document.pages))
        finish(document, made)

    with gathered() as said, _dated(sheet.date):
        # Read for its faces, which `fonts` has from then on: as a sheet of the page it would be asked about each element.
        weasyprint.CSS(string=font_face_css(), font_config=fonts, url_fetcher=ShippedOnly(page))
        identifier = hashlib.sha256(page.encode()).hexdigest()[:32].encode()
        options = {"pdf_variant": "pdf/ua-1", "pdf_identifier": identifier}
        data: bytes = PrintedPage(page).laid_out(fonts, options).write_pdf(finisher=completed, **options)
    return OnPaper(data, laid[0], tuple(said))


class _Gather(logging.Handler):
    def __init__(self) -> None:
        super().__init__(logging.WARNING)
        self.said: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        self.said.append(record.getMessage())


@contextmanager
def gathered() -> Iterator[list[str]]:
    """What the renderer and its font library have to complain of, gathered instead of printed."""
    gather = _Gather()
    loggers = [logging.getLogger(name) for name in ("weasyprint", "fontTools")]
    before = [(logger.propagate, logger.level) for logger in loggers]
    for logger in loggers:
        logger.addHandler(gather)
        logger.propagate = False
        logger.setLevel(logging.WARNING)
    try:
        yield gather.said
    finally:
        for logger, (propagate, level) in zip(loggers, before, strict=True):
            logger.removeHandler(gather)
            logger.propagate, logger.level = propagate, level


@contextmanager
def _dated(date: str) -> Iterator[None]:
    """The sheet's date as this process's SOURCE_DATE_EPOCH, which the font library writes into embedded fonts."""
    day = datetime.date.fromisoformat(date) if date else datetime.date(1980, 1, 1)
    epoch = int(datetime.datetime(day.year, day.month, day.day, tzinfo=datetime.UTC).timestamp())
    before = os.environ.get("SOURCE_DATE_EPOCH")
    os.environ["SOURCE_DATE_EPOCH"] = str(epoch)
    try:
        yield
    finally:
        if before is None:
            del os.environ["SOURCE_DATE_EPOCH"]
        else:
            os.environ["SOURCE_DATE_EPOCH"] = before
