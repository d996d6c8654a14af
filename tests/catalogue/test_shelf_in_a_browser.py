"""The shelf in a real browser, from a file, as a publisher leafs through it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

from tests.browser import barriers
from tests.catalogue.test_shelf import OTHER, document, garment
from tests.cli.publishing import CATALOGUE, FOLDER, SCARF, in_process, publisher, told, watching
from walewright.catalogue.shelf import shelf
from walewright.guide.english import LANGUAGE

if TYPE_CHECKING:
    from playwright.sync_api import Browser, Page

PICTURE = '<svg xmlns="http://www.w3.org/2000/svg" width="90" height="60"><path d="M0 0h90v60H0z" fill="#1f5a61"/></svg>'
GERMAN = garment(language="german", code="de", title="Schäre", summary="Ein Oberteil.")


@pytest.fixture
def page_file(tmp_path: Path) -> Path:
    """A shelf of three garments, in English and German, with their covers beside it."""
    file = tmp_path / "index.html"
    file.write_text(shelf(document(garment(), OTHER, GERMAN), LANGUAGE), encoding="utf-8")
    (tmp_path / "skerry.cover.svg").write_text(PICTURE, encoding="utf-8")
    return file


@pytest.fixture
def page(browser: Browser, page_file: Path) -> Iterator[Page]:
    """It, opened; nothing may be said on the console."""
    with_said = _opened(browser, page_file)
    yield with_said[0]
    assert with_said[1] == []
    with_said[0].close()


def _opened(browser: Browser, file: Path, fragment: str = "", **how: Any) -> tuple[Page, list[str]]:
    page = browser.new_page(**how)
    said: list[str] = []
    page.on("console", lambda message: said.append(message.text))
    page.on("pageerror", lambda fault: said.append(str(fault)))
    page.goto(file.as_uri() + fragment)
    return page, said


def shown(page: Page) -> list[str]:
    return page.locator("article:visible h2").all_inner_texts()


SKERRY, EBB, OF_GERMANY = "Skerry <& co>", "Ebb", "Schäre"


@pytest.mark.parametrize(
    ("measure", "typed", "left"),
    [("bust", "92", [SKERRY, OF_GERMANY]), ("bust", "79", []), ("head", "57.5", [EBB]), ("bust", "", [SKERRY, EBB, OF_GERMANY])],
)
def test_a_size_that_fits_is_typed(page: Page, measure: str, typed: str, left: list[str]) -> None:
    page.get_by_label("My measure").select_option(measure)
    page.get_by_label("in cm").click()
    page.keyboard.type(typed)
    assert shown(page) == left
    assert page.inner_text("[role=status]") == f"{len(left)} garments shown"
    assert page.locator(".none").is_visible() == (not left)


@pytest.mark.parametrize(
    ("label", "value", "left"),
    [
        ("Knitting machine", "fine", [EBB]),
        ("Yarn", "700", [SKERRY, OF_GERMANY]),
        ("Handwork", "holding", [EBB]),
        ("Language", "german", [OF_GERMANY]),
    ],
)
def test_something_is_chosen_and_taken_back(page: Page, label: str, value: str, left: list[str]) -> None:
    page.get_by_label(label).select_option(value)
    assert shown(page) == left
    page.get_by_label(label).select_option("")
    assert shown(page) == [SKERRY, EBB, OF_GERMANY]


def test_it_is_sifted_by_keys_alone(page: Page) -> None:
    page.keyboard.press("Tab")
    seen = []
    while (name := page.evaluate("document.activeElement.name")) != "language":
        seen.append(name)
        page.keyboard.press("Tab")
    assert seen == ["measure", "cm", "bed", "yarn", "technique"]
    page.keyboard.press("ArrowDown")
    page.keyboard.press("Enter")
    assert len(shown(page)) < 3


def test_all_stands_there_without_scripts(browser: Browser, page_file: Path) -> None:
    page, said = _opened(browser, page_file, java_script_enabled=False)
    assert shown(page) == [SKERRY, EBB, OF_GERMANY]
    assert not page.locator("form").is_visible()
    assert page.get_by_role("link", name="on paper").first.get_attribute("href") == "skerry-a4.pdf"
    assert said == []
    page.close()


def test_covers_are_shown(page: Page) -> None:
    page.locator("article img").last.scroll_into_view_if_needed()
    page.wait_for_function("Array.from(document.images).every(one => one.complete)")
    assert page.evaluate("Array.from(document.images).map(one => one.naturalWidth)") == [90, 90, 90]


@pytest.mark.parametrize("width", [320, 390, 768, 1280])
def test_nothing_is_wider_than_the_screen_and_nobody_is_kept_out(browser: Browser, page_file: Path, width: int) -> None:
    page, said = _opened(browser, page_file, viewport={"width": width, "height": 844})
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    assert barriers(page) == []
    assert said == []
    # What is chosen with a finger is as high as one.
    heights = page.evaluate("Array.from(document.querySelectorAll('select, input')).map(one => one.getBoundingClientRect().height)")
    assert min(heights) >= 44
    page.close()


def test_no_address_outside_is_asked_for(browser: Browser, page_file: Path) -> None:
    page = browser.new_page()
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    page.goto(page_file.as_uri())
    assert asked
    assert [address for address in asked if not address.startswith(page_file.parent.as_uri())] == []
    page.close()


def test_it_shows_what_was_made_since_when_it_is_opened_again(browser: Browser, tmp_path: Path) -> None:
    made = publisher(tmp_path / "scarves", ("lagoon",))
    assert in_process(made.arguments(), tmp_path).returncode == 0
    page, said = _opened(browser, made.into / "index.html")
    assert shown(page) == ["Lagoon"]
    page.get_by_role("link", name="for a browser").click()
    assert page.title().startswith("Lagoon")
    page.go_back()
    made.source("lagoon").write_text(SCARF.format(name="Tarn", length=44), encoding="utf-8")
    assert in_process(made.arguments(), tmp_path).returncode == 0
    page.reload()
    assert shown(page) == ["Tarn"]
    assert barriers(page) == []
    assert said == []
    page.close()


def test_it_loads_itself_again_while_somebody_watches(browser: Browser, tmp_path: Path) -> None:
    made = publisher(tmp_path / "scarves")
    made.says(f'{CATALOGUE}\n[[exceptions]]\nsources = ["skerry.wale"]\nlanguages = ["german"]\n')
    with watching(made) as run:
        said = told(run)
        assert said[-1] == "made 6 files; 0 as before"
        page, complaints = _opened(browser, made.into / "index.html", fragment="#watch")
        page.get_by_label("Language").select_option("english")
        assert shown(page) == ["Lagoon"]
        page.evaluate("window.before = true")
        made.source("lagoon").write_text(SCARF.format(name="Tarn", length=44), encoding="utf-8")
        page.wait_for_selector("article:visible h2:text-is('Tarn')", timeout=60_000)
        assert page.evaluate("window.before") is None
        # What was chosen still is, and what is as it was loads nothing.
        assert shown(page) == ["Tarn"]
        told(run)
        page.evaluate("window.before = true")
        made.says(f"{made.catalogue.read_text(encoding='utf-8')}\n# nothing else\n")
        assert told(run)[-1] == "made 0 files; 6 as before"
        page.wait_for_timeout(1500)
        assert page.evaluate("window.before") is True
        run.terminate()
        run.wait()
    # Nothing is left of it, and the page was the same all along.
    assert not (made.into / FOLDER / "made.svg").exists()
    assert [text for text in complaints if "made.svg" not in text] == []
    page.close()
    before = made.files()
    assert in_process(made.arguments(), tmp_path).stdout == "made 0 files; 6 as before\n"
    assert made.files() == before


def test_a_shelf_that_nobody_watches_asks_for_no_mark(browser: Browser, page_file: Path) -> None:
    page = browser.new_page()
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    page.goto(page_file.as_uri())
    page.wait_for_timeout(1000)
    assert [address for address in asked if "made.svg" in address] == []
    page.close()
