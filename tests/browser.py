"""A real browser for tests of pages, Debian's own: nothing is fetched to drive it. Where it is not installed, they are skipped."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from playwright.sync_api import Browser, Page

CHROMIUM = Path("/usr/bin/chromium")
ARGUMENTS = (
    "--headless",
    # A sandbox cannot be had by root, as whom containers run their tests.
    "--no-sandbox",
    "--disable-gpu",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--no-first-run",
)


@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    """Started once a module: while it is driven, nothing else in this thread can run an event loop of its own."""
    if not CHROMIUM.is_file():
        pytest.skip(f"no browser at {CHROMIUM}; `apt-get install chromium` brings it")
    from playwright.sync_api import sync_playwright

    with sync_playwright() as driver:
        started = driver.chromium.launch(executable_path=str(CHROMIUM), args=list(ARGUMENTS))
        yield started
        started.close()


def barriers(page: Page) -> list[str]:
    """What keeps somebody from using the page as it stands, by the rules for accessible pages: a rule and the element each."""
    from axe_playwright_python.sync_playwright import Axe

    # What is as it should be is not wanted: to tell it takes longer than to find it.
    found = Axe().run(page, options={"resultTypes": ["violations"]}).response["violations"]
    return [f"{rule['id']}: {node['target']}: {node['failureSummary']}" for rule in found for node in rule["nodes"]]
