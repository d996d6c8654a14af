"""The page in a real browser."""

from __future__ import annotations

import re
import subprocess
import sys
from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

import pytest

if TYPE_CHECKING:
    from playwright.sync_api import Browser, Page


@pytest.fixture(scope="module")
def address() -> Iterator[str]:
    """A page that is served as a knitter starts it."""
    command = [sys.executable, "-m", "walewright", "serve", "--no-browser"]
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True) as served:
        try:
            assert served.stdout is not None
            found = re.search(r"http://\S+/", served.stdout.readline())
            assert found
            yield found[0]
        finally:
            served.terminate()


def _open(browser: Browser, address: str, **how: Any) -> tuple[Page, list[str]]:
    page = browser.new_page(**how)
    said: list[str] = []
    page.on("console", lambda message: said.append(message.text))
    page.on("pageerror", lambda fault: said.append(str(fault)))
    page.goto(f"{address}garment/tidewrack")
    return page, said


def test_the_result_follows_a_change_and_the_cursor_stays(browser: Browser, address: str) -> None:
    page, said = _open(browser, address)
    page.fill("[id='f-measure:bust']", "300")
    page.keyboard.press("Tab")
    page.wait_for_selector(".state.refused", timeout=90_000)
    assert page.evaluate("document.activeElement.id") == "f-measure:reach"
    page.fill("[id='f-measure:bust']", "104")
    page.keyboard.press("Tab")
    page.wait_for_selector(".state.proven", timeout=90_000)
    assert page.evaluate("document.activeElement.id") == "f-measure:reach"
    assert page.inner_text("#state") == "It can be knitted"
    hint = "[id='h-measure:bust']"
    before = page.inner_text(hint)
    page.select_option("#f-size", "XS")
    page.wait_for_function("before => document.getElementById('h-measure:bust').textContent !== before", arg=before, timeout=90_000)
    assert page.input_value("[id='f-measure:bust']") == "104"
    with page.expect_download(timeout=90_000) as taken:
        page.click("text=Plain text")
    assert taken.value.suggested_filename == "tidewrack.txt"
    assert said == []
    page.close()


@pytest.mark.parametrize(("width", "height"), [(390, 844), (640, 500), (320, 640)])
def test_nothing_is_wider_than_the_screen(width: int, height: int, browser: Browser, address: str) -> None:
    page, _ = _open(browser, address, viewport={"width": width, "height": height})
    page.click("text=Work it out >> nth=0")
    page.wait_for_selector(".state.proven", timeout=90_000)
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    page.close()


def test_without_scripts_the_button_does_the_same(browser: Browser, address: str) -> None:
    page, _ = _open(browser, address, java_script_enabled=False)
    page.fill("[id='f-measure:bust']", "104")
    page.click("text=Work it out >> nth=0")
    assert page.inner_text(".state.proven h2") == "It can be knitted"
    assert page.input_value("[id='f-measure:bust']") == "104"
    page.close()
