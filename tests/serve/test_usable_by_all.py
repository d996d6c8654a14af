"""Every page by the rules for accessible pages, by keyboard alone, on a phone and at twice the size."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from tests.browser import barriers
from tests.serve.served import LONG, KnittersHand, wider_than

if TYPE_CHECKING:
    from playwright.sync_api import Browser


def _gallery(hand: KnittersHand, address: str) -> None:
    hand.page.goto(address)


def _form(hand: KnittersHand, address: str) -> None:
    hand.page.goto(f"{address}garment/redshank")
    hand.settled("proven")


def _refused(hand: KnittersHand, address: str) -> None:
    hand.page.goto(f"{address}garment/tidewrack")
    hand.fill("measure:bust", "300")
    hand.click("text=Work it out")
    hand.settled("refused")
    for summary in hand.page.query_selector_all("summary"):
        summary.click()


def _unread(hand: KnittersHand, address: str) -> None:
    hand.page.goto(f"{address}nothing")


def _lost(hand: KnittersHand, address: str) -> None:
    hand.page.goto(address)
    hand.page.fill("#pasted", "{}")
    hand.click("text=Fill in the form")
    hand.page.wait_for_selector(".told.error")


PAGES = {"gallery": _gallery, "form": _form, "refused": _refused, "unread": _unread, "lost": _lost}


@pytest.mark.parametrize("name", PAGES)
def test_a_page_keeps_nobody_out(name: str, hand: KnittersHand, address: str) -> None:
    PAGES[name](hand, address)
    assert barriers(hand.page) == []


def test_the_check_finds_what_keeps_somebody_out(hand: KnittersHand, address: str) -> None:
    _unread(hand, address)
    hand.page.evaluate("document.querySelector('main').innerHTML += '<input><img src=x>'")
    assert {found.partition(":")[0] for found in barriers(hand.page)} >= {"image-alt", "label"}


SCREENS = {"phone": (390, 844), "small phone": (320, 640), "twice the size": (640, 450), "table": (1280, 900)}


@pytest.mark.parametrize("screen", SCREENS)
@pytest.mark.parametrize("name", ["gallery", "refused", "form"])
def test_nothing_is_wider_than_the_screen(screen: str, name: str, browser: Browser, address: str) -> None:
    width, height = SCREENS[screen]
    hand = KnittersHand(browser, width, height)
    PAGES[name](hand, address)
    assert wider_than(hand.page) == []
    hand.close()


def test_all_can_be_done_by_keyboard(hand: KnittersHand, address: str) -> None:
    hand.page.goto(f"{address}garment/sandbar")
    hand.settled("proven")
    reached = []
    for _ in range(60):
        hand.page.keyboard.press("Tab")
        at, seen = hand.page.evaluate(
            "() => { const at = document.activeElement, style = getComputedStyle(at);"
            " return [at.id || at.textContent.trim(), style.outlineStyle !== 'none' && style.outlineWidth !== '0px']; }"
        )
        reached.append(at)
        assert seen, at
        if at == "f-measure:span":
            hand.page.keyboard.type("150")
        if at == "Plain text":
            break
    assert "f-swatch-st:plain" in reached
    assert hand.page.evaluate("document.activeElement.textContent") == "Plain text"
    hand.follows()
    hand.page.locator("button", has_text="Plain text").focus()
    with hand.page.expect_download(timeout=LONG) as taken:
        hand.page.keyboard.press("Enter")
    assert taken.value.suggested_filename == "sandbar.txt"
