"""The page in a real browser: it follows what is typed, and nothing that is filled in is lost."""

from __future__ import annotations

import socket
from typing import TYPE_CHECKING

import pytest

from tests.serve.served import KnittersHand, served

if TYPE_CHECKING:
    from playwright.sync_api import Browser

BUST, HINT = "measure:bust", "[id='n-measure:bust']"


def test_the_result_follows_what_is_typed_and_the_cursor_stays(hand: KnittersHand, address: str) -> None:
    hand.page.goto(f"{address}garment/tidewrack")
    hand.settled("proven")
    hand.fill(BUST, "300")
    assert "With bust at 300 cm" in hand.settled("refused")
    assert hand.page.evaluate("document.activeElement.id") == f"f-{BUST}"
    hand.fill(BUST, "104")
    hand.settled("proven")
    assert hand.page.evaluate("document.activeElement.id") == f"f-{BUST}"
    assert hand.page.inner_text("#state") == "It can be knitted"
    assert hand.page.inner_text(HINT).startswith("Nearest size: L, 104 cm. Ease ")
    hand.choose("size", "XS")
    hand.page.wait_for_selector(f"[id='h-{BUST}']:has-text('73.5')")
    assert hand.value(BUST) == "104"
    assert hand.take("text=Plain text").suggested_filename == "tidewrack.txt"
    assert hand.complaints == []


def test_without_scripts_the_buttons_do_the_same(browser: Browser, address: str) -> None:
    hand = KnittersHand(browser, scripts=False)
    hand.page.goto(f"{address}garment/tidewrack")
    hand.fill(BUST, "104")
    hand.click("text=Work it out")
    assert hand.page.inner_text(".state.proven h2") == "It can be knitted"
    assert hand.value(BUST) == "104"
    assert hand.page.inner_text(HINT).startswith("Nearest size: L")
    assert hand.take("text=Plain text").suggested_filename == "tidewrack.txt"
    hand.close()


def test_printing_tells_its_pages_and_can_be_stopped(hand: KnittersHand, address: str) -> None:
    hand.page.goto(f"{address}garment/tidewrack")
    hand.fill("measure:length", "58.5")
    hand.follows()
    hand.settled("proven")
    hand.click("text=Pattern to print")
    hand.page.wait_for_selector("#printing p:text-matches('page [0-9]+')")
    hand.click("#printing button")
    hand.page.wait_for_selector("#printing", state="hidden")
    assert hand.value("measure:length") == "58.5"
    # It goes on serving, and the same can be printed after all.
    assert hand.take("text=Pattern to print").suggested_filename == "tidewrack.pdf"


def test_two_tabs_at_once_do_not_meet(browser: Browser, address: str) -> None:
    hands = [KnittersHand(browser), KnittersHand(browser)]
    for hand, bust in zip(hands, ("92", "125"), strict=True):
        hand.page.goto(f"{address}garment/tidewrack")
        hand.fill(BUST, bust)
    for hand, nearest in zip(hands, ("M", "2X"), strict=True):
        hand.follows()
        hand.settled("proven")
        assert hand.page.inner_text(HINT).startswith(f"Nearest size: {nearest},")
    for hand, bust in zip(hands, ("92", "125"), strict=True):
        hand.page.reload()
        assert hand.value(BUST) == bust
        hand.close()


def test_what_is_filled_in_outlives_a_reload_and_a_new_start(hand: KnittersHand) -> None:
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = str(free.getsockname()[1])
    with served("--port", port) as first:
        hand.page.goto(f"{first}garment/sandbar")
        hand.fill("measure:span", "151.5")
        hand.fill("swatch-st:plain", "40")
        hand.page.reload()
        assert hand.value("measure:span") == "151.5"
    hand.fill("measure:span", "152.5")
    hand.told("No answer.")
    assert hand.value("measure:span") == "152.5"
    with served("--port", port) as second:
        assert second != first
        hand.fill("swatch-st:plain", "41")
        hand.told("earlier start")
        hand.page.goto(f"{second}garment/sandbar")
        assert (hand.value("measure:span"), hand.value("swatch-st:plain")) == ("152.5", "41")


@pytest.mark.parametrize(("language", "proven"), [("german", "So lässt es sich stricken")])
def test_the_page_is_in_another_language(language: str, proven: str, hand: KnittersHand) -> None:
    with served("--language", language) as there:
        hand.page.goto(f"{there}garment/sandbar")
        assert proven in hand.settled("proven")
        assert hand.page.get_attribute("html", "lang") == "de"
