"""The page as a knitter starts it, in a process of its own, and the hand that fills it in."""

from __future__ import annotations

import re
import subprocess
import sys
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from playwright.sync_api import Browser, Download, Page

LONG = 100_000
"""ms. Where many tests run at once, a garment takes its time."""


@contextmanager
def served(*arguments: str) -> Iterator[str]:
    """The address, until it is left."""
    with served_by(*arguments) as (address, _):
        yield address


@contextmanager
def served_by(*arguments: str) -> Iterator[tuple[str, int]]:
    """The same, and the number of the process."""
    command = [sys.executable, "-m", "walewright", "serve", "--no-browser", *arguments]
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True) as process:
        try:
            assert process.stdout is not None
            found = re.search(r"http://\S+/", process.stdout.readline())
            assert found
            yield found[0], process.pid
        finally:
            process.terminate()


class KnittersHand:
    """Does on a page what a knitter does, and counts it. What the browser complains of is kept."""

    def __init__(self, browser: Browser, width: int = 1280, height: int = 900, scripts: bool = True) -> None:
        size = {"width": width, "height": height}
        self.page: Page = browser.new_page(viewport=size, java_script_enabled=scripts, accept_downloads=True)
        self.page.set_default_timeout(LONG)
        self.done = 0
        self.complaints: list[str] = []
        self.page.on("console", lambda message: self.complaints.append(message.text))
        self.page.on("pageerror", lambda fault: self.complaints.append(str(fault)))

    def click(self, what: str) -> None:
        self.done += 1
        self.page.click(what)

    def fill(self, name: str, text: str) -> None:
        """Into the field, which may have to be unfolded first."""
        folded = self.page.locator(f"[id='f-{name}']").locator("xpath=ancestor::details[not(@open)]/summary")
        if folded.count():
            folded.click()
            self.done += 1
        self.done += 1
        self.page.fill(f"[id='f-{name}']", text)

    def choose(self, name: str, value: str) -> None:
        self.done += 1
        self.page.select_option(f"[id='f-{name}']", value)

    def take(self, what: str) -> Download:
        """The file that the button brings."""
        with self.page.expect_download(timeout=LONG) as taken:
            self.click(what)
        return taken.value

    def value(self, name: str) -> str:
        return self.page.input_value(f"[id='f-{name}']")

    def settled(self, state: str) -> str:
        """The text of the result, when it has come to that state."""
        self.page.wait_for_selector(f"#found:not([aria-busy]) .state.{state}")
        return self.page.inner_text("#found")

    def follows(self) -> None:
        """Wait until the result is that of what is filled in."""
        self.page.wait_for_selector("main:has(#state.unseen):has(#found:not([aria-busy]))")

    def told(self, text: str) -> None:
        """Wait until that stands above the result."""
        self.page.wait_for_selector(f"#state:has-text('{text}')")

    def close(self) -> None:
        self.page.close()


def wider_than(page: Page) -> Sequence[str]:
    """What of the page has to be scrolled sideways to be seen."""
    found: list[str] = page.evaluate(
        """() => document.documentElement.scrollWidth <= window.innerWidth ? [] :
             Array.from(document.querySelectorAll("body *")).filter((one) => one.getBoundingClientRect().right > window.innerWidth)
                  .map((one) => one.outerHTML.slice(0, 120))"""
    )
    return found
