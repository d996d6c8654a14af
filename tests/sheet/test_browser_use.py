"""The page in a real browser: a size is picked, steps are ticked off by keys, taps and a foot, and everybody can use it."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Literal

import pytest

from tests.browser import barriers
from tests.browser_pages import built, opened, pick, visible_words
from tests.draws import few_of

if TYPE_CHECKING:
    from playwright.sync_api import Browser, Page

PHONE = {"width": 390, "height": 844}


@pytest.fixture
def tidewrack(browser: Browser, tmp_path: Path) -> Iterator[Page]:
    page = opened(browser, built("tidewrack"), tmp_path)
    yield page
    page.close()


def current(page: Page) -> str:
    """The line in work."""
    return " ".join(page.inner_text(".bench li[aria-current]").split())


def ticked(page: Page) -> int:
    return len(page.query_selector_all(".bench input:checked"))


def test_it_opens_as_the_graded_pattern(tidewrack: Page) -> None:
    assert "52 (60: 66: 72: 80: 86: 92: 100) sts" in tidewrack.inner_text("main")
    assert not tidewrack.is_visible("#bench")
    assert tidewrack.is_visible("#picking")


def test_of_a_size_that_is_picked_there_is_one_column_and_no_bracket(tidewrack: Page) -> None:
    pick(tidewrack, 3)
    assert tidewrack.inner_text("#sizes thead").split() == ["Measure", "L"]
    assert "72" in tidewrack.inner_text(".facts.bed >> visible=true")
    assert re.findall(r"\([^()\n]*: [^()\n]*\)", tidewrack.inner_text("main")) == []
    tidewrack.click('#picking button[data-size=""]')
    assert tidewrack.inner_text("#sizes thead").split() == ["Measure", "XS", "S", "M", "L", "XL", "2X", "3X", "4X"]
    assert not tidewrack.query_selector(".bench")


@pytest.mark.parametrize("key", ["Space", "Enter", "ArrowRight", "PageDown"])
def test_a_key_ticks_a_step_off(key: str, tidewrack: Page) -> None:
    pick(tidewrack, 3)
    first = current(tidewrack)
    tidewrack.keyboard.press(key)
    assert ticked(tidewrack) == 1
    assert current(tidewrack) != first
    tidewrack.keyboard.press("ArrowLeft")
    assert ticked(tidewrack) == 0
    assert current(tidewrack) == first


def test_a_key_that_is_held_down_takes_one_step(tidewrack: Page) -> None:
    pick(tidewrack, 3)
    tidewrack.keyboard.down("PageDown")
    tidewrack.keyboard.down("PageDown")
    tidewrack.keyboard.up("PageDown")
    assert ticked(tidewrack) == 1


def test_keys_are_the_pages_own_until_a_size_is_picked(tidewrack: Page) -> None:
    tidewrack.keyboard.press("PageDown")
    # A browser may scroll there bit by bit.
    tidewrack.wait_for_function("scrollY > 100", timeout=5000)
    assert ticked(tidewrack) == 0


def test_the_bar_says_what_the_line_says(tidewrack: Page) -> None:
    pick(tidewrack, 3)
    for number in range(30):
        line = current(tidewrack)
        counter = re.search(r"RC (\d+), CO", line)
        assert " ".join(tidewrack.inner_text("#bench .say").split()) in line
        assert tidewrack.inner_text("#bench .rc dd") == (f"{int(counter[1]):03}" if counter else "")
        assert tidewrack.inner_text("#bench .side dd") == ("left" if "COL" in line else "right")
        counts = [e.inner_text() for e in tidewrack.query_selector_all("#bench .count dd")]
        assert line.endswith("{} in work, {} held, {} waiting.".format(*counts)), number
        tidewrack.click("#bench .next")
    assert ticked(tidewrack) == 30


def test_of_two_alike_the_second_comes_after_the_first(tidewrack: Page) -> None:
    pick(tidewrack, 3)
    boxes = "#part-sleeve .bench li:not(.note) input"
    tidewrack.click("#part-sleeve .bench li:not(.note) p >> nth=0")
    assert tidewrack.inner_text("#bench .copy") == "1st"
    for _ in range(17):
        tidewrack.click("#bench .next")
    assert tidewrack.inner_text("#bench .part") == "Sleeve (knit 2)"
    assert tidewrack.inner_text("#bench .copy") == "2nd"
    done = [box.is_checked() for box in tidewrack.query_selector_all(boxes)]
    assert done == [True, False] * 17


def test_the_place_is_kept(browser: Browser, tmp_path: Path) -> None:
    context = browser.new_context()
    (tmp_path / "page.html").write_text(built("tidewrack"), encoding="utf-8")
    page = context.new_page()
    page.goto((tmp_path / "page.html").as_uri())
    pick(page, 5)
    for _ in range(7):
        page.keyboard.press("PageDown")
    page.click('#picking button[data-type="1"]')
    line, large = current(page), page.evaluate("getComputedStyle(document.querySelector('#bench .say')).fontSize")
    page.close()
    page = context.new_page()
    page.goto((tmp_path / "page.html").as_uri())
    assert current(page) == line
    assert ticked(page) == 7
    assert page.get_attribute('#picking button[aria-pressed="true"]', "data-size") == "5"
    assert page.evaluate("getComputedStyle(document.querySelector('#bench .say')).fontSize") == large
    # Another size has a place of its own, and another document knows nothing of this one.
    pick(page, 2)
    assert ticked(page) == 0
    other = opened(browser, built("bollard"), tmp_path)
    assert not other.is_visible("#bench")
    context.close()
    other.close()


def test_boxes_can_be_ticked_in_any_order(tidewrack: Page) -> None:
    pick(tidewrack, 3)
    tidewrack.check(".bench input >> nth=1")
    assert ticked(tidewrack) == 1
    tidewrack.keyboard.press("PageDown")
    third = " ".join(tidewrack.inner_text(".bench li:not(.note) >> nth=2").split())
    assert current(tidewrack) == third


def test_after_the_last_step_it_says_so(browser: Browser, tmp_path: Path) -> None:
    page = opened(browser, built("bollard"), tmp_path)
    pick(page, 0)
    steps = len(page.query_selector_all(".bench input"))
    for _ in range(steps):
        page.keyboard.press("PageDown")
    assert page.inner_text("#bench .finished") == "All steps are ticked off."
    assert ticked(page) == steps
    page.keyboard.press("PageDown")
    page.keyboard.press("PageUp")
    assert ticked(page) == steps - 1
    page.close()


BESIDE_ITS_NUMBER = """(number) => {
  const middle = (box) => (box.top + box.bottom) / 2;
  const row = document.querySelector("#chart-ropes figure.sheet .in-work").getBoundingClientRect();
  const labels = [...document.querySelectorAll("#chart-ropes figure.sheet text")].filter((label) => label.textContent === number);
  return labels.some((label) => Math.abs(middle(label.getBoundingClientRect()) - middle(row)) < row.height / 2);
}"""


def test_the_chart_row_in_work_is_marked(browser: Browser, tmp_path: Path) -> None:
    page = opened(browser, built("hawser"), tmp_path)
    pick(page, 2)
    while "Before row 6 of the chart “ropes”" not in current(page):
        assert not page.query_selector("svg .in-work")
        page.keyboard.press("PageDown")
    assert page.evaluate(BESIDE_ITS_NUMBER, "6")
    page.close()


def test_without_scripts_it_is_the_graded_pattern(browser: Browser, tmp_path: Path) -> None:
    with_them, without = (opened(browser, built("tidewrack"), tmp_path, java_script_enabled=on) for on in (True, False))
    assert without.inner_text("main") == with_them.inner_text("main")
    assert not without.is_visible("#picking")
    assert not without.is_visible("#bench")
    with_them.close()
    without.close()


def test_printed_is_what_is_read(tidewrack: Page) -> None:
    pick(tidewrack, 3)
    words = visible_words(tidewrack)
    tidewrack.emulate_media(media="print")
    assert not tidewrack.is_visible("#picking")
    assert not tidewrack.is_visible("#bench")
    assert visible_words(tidewrack) == words


SEEN = [
    *(("tidewrack", 390, "light"), ("hawser", 390, "dark"), ("tidewrack", 1280, "dark"), ("hawser", 1280, "light")),
    *(("tidewrack", 390, "dark"), ("hawser", 390, "light"), ("tidewrack", 1280, "light"), ("hawser", 1280, "dark")),
]
"""Garment, width and scheme of colours: among the first four is each with each of the others."""


@pytest.mark.parametrize("seen", few_of(SEEN, 4), ids=lambda seen: "-".join(map(str, seen)))
def test_nothing_keeps_anybody_out(seen: tuple[str, int, Literal["light", "dark"]], browser: Browser, tmp_path: Path) -> None:
    name, width, scheme = seen
    page = opened(browser, built(name), tmp_path, viewport={"width": width, "height": 800}, color_scheme=scheme)
    assert barriers(page) == []
    pick(page, 2)
    for _ in range(8):
        page.keyboard.press("PageDown")
    assert barriers(page) == []
    page.close()


@pytest.mark.parametrize(("width", "height"), [(390, 844), (640, 400), (320, 640), (820, 1180)])
@pytest.mark.parametrize("name", ["tidewrack", "hawser"])
def test_nothing_is_wider_than_the_screen(name: str, width: int, height: int, browser: Browser, tmp_path: Path) -> None:
    page = opened(browser, built(name), tmp_path, viewport={"width": width, "height": height})
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    pick(page, 2)
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    for _ in range(4):
        page.click('#picking button[data-type="1"]')
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    # The line in work is in sight between the bar and what stands above.
    page.keyboard.press("PageDown")
    place = "(at) => document.querySelector(at).getBoundingClientRect().toJSON()"
    line, bar = (page.evaluate(place, at) for at in ("[aria-current]", "#bench"))
    assert 0 <= line["top"] < bar["top"]
    assert bar["height"] <= height * 0.64
    page.close()


def test_targets_are_large(browser: Browser, tmp_path: Path) -> None:
    page = opened(browser, built("tidewrack"), tmp_path, viewport=PHONE)
    pick(page, 3)
    box = page.locator("#bench .next").bounding_box()
    assert box is not None
    assert box["width"] >= 200
    assert box["height"] >= 56
    for button in page.locator("#picking button").all():
        size = button.bounding_box()
        assert size is not None
        assert min(size["width"], size["height"]) >= 40
    page.close()


def test_what_is_said_aloud(tidewrack: Page) -> None:
    pick(tidewrack, 3)
    assert tidewrack.get_attribute("#bench .now", "role") == "status"
    tidewrack.keyboard.press("PageDown")
    said = " ".join((tidewrack.text_content("#bench .say") or "").split())
    assert said == " ".join((tidewrack.text_content(".bench li[aria-current] p") or "").split())
    assert tidewrack.evaluate("document.activeElement.className") == "next"
    first = tidewrack.query_selector(".bench input")
    assert first is not None
    assert first.get_attribute("aria-label") == "COL: Take the carriage to the left without knitting. 0 in work, 0 held, 0 waiting."


QUICK_MS = 50
TAKEN = """() => {
  const times = [];
  for (let n = 0; n < 40; n += 1) {
    const began = performance.now();
    document.querySelector("#bench .next").click();
    document.body.getBoundingClientRect();
    times.push(performance.now() - began);
  }
  return times.sort((a, b) => a - b)[20];
}"""


def test_a_step_is_quick_in_the_largest_garment(browser: Browser, tmp_path: Path) -> None:
    page = opened(browser, built("anemone"), tmp_path)
    pick(page, 3)
    assert page.evaluate(TAKEN) < QUICK_MS
    page.close()
