"""Pages of the shipped garments for a browser, and what stands on them: for tests that open them."""

from __future__ import annotations

from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

from tests.whole.shipped_once import compiled, kept
from walewright.cli.formats.format import Pattern
from walewright.cli.options import Wanted

if TYPE_CHECKING:
    from playwright.sync_api import Browser, Page

GUIDE = Wanted({}, (), language="english").guide


@cache
def pattern_of(name: str) -> Pattern:
    """A shipped garment in all its sizes."""
    return Pattern(compiled(name), GUIDE, "a4", "cm", "", "2026-01-02")


@cache
def built(name: str) -> str:
    """Its page."""
    page: str = kept(f"{name}.page", lambda: pattern_of(name).browser_page)
    return page


def opened(browser: Browser, page: str, folder: Path, **how: Any) -> Page:
    """The page as a file that is opened. What its script complains of is an error."""
    file = folder / "page.html"
    file.write_text(page, encoding="utf-8")
    shown = browser.new_page(**how)
    faults: list[str] = []
    shown.on("pageerror", lambda fault: faults.append(str(fault)))
    shown.on("console", lambda message: faults.append(message.text))
    shown.goto(file.as_uri())
    assert faults == []
    return shown


def pick(page: Page, size: int) -> None:
    """By a click on the size's name."""
    page.click(f'#picking button[data-size="{size}"]')


VISIBLE = """() => [...document.querySelectorAll("section.part")].filter((part) => part.offsetParent).map((part) => ({
  title: part.querySelector("h2").innerText,
  lines: [...part.querySelectorAll(".bench h3, .bench li, table")].filter((line) => line.offsetParent && !line.closest(".head"))
    .map((line) => ({
      kind: line.tagName, mark: line.className.replace("done", "").trim(), text: (line.querySelector("p") || line).innerText,
      boxes: line.querySelectorAll("input").length,
    })),
}))"""


def visible_words(page: Page) -> str:
    """The working sections as they are to be seen, set as the plain text sets them."""
    told: list[str] = []
    for part in page.evaluate(VISIBLE):
        told += [part["title"], "=" * len(part["title"]), ""]
        for line in part["lines"]:
            # A browser breaks lines between stretches; a name's own blanks stay.
            text = " ".join(filter(None, line["text"].replace("\n", " ").split(" ")))
            if line["kind"] == "H3":
                told += ["", text, "-" * len(text)]
                continue
            assert line["kind"] == "LI", line
            box = "( ) " if line["mark"] == "hand" else "[ ] "
            assert bool(line["boxes"]) == (line["mark"] != "note"), line
            told.append((box * min(line["boxes"], 4) or "-   ") + text)
        told.append("")
    return "\n".join(told)
