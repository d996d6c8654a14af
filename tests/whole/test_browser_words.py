"""The page in a browser, with a size picked: the words in sight lead to the fabric that was planned, by themselves."""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from tests.browser_pages import built, opened, pick, visible_words
from tests.whole.shipped_once import GARMENTS, compiled
from walewright.bench_copies import BenchCopy, bench_copy, proven_bench
from walewright.languages import printed
from walewright.pipeline import Outcome
from walewright.write import plain_text

if TYPE_CHECKING:
    from playwright.sync_api import Browser, Page

GRADED = re.compile(r"\d \([^()\n]*: [^()\n]*\)")
"""Figures of several sizes."""

FEW = {"tidewrack": (0, 7), "hawser": (2,), "driftline": (3,), "ebb": (0,), "samphire": (0,)}
"""Joined on the bed and banded; with cables in a chart; of hand work; in one size; with buttons by size."""


def read_back(outcome: Outcome, size: int, words: str) -> bool:
    """Whether the words alone make the fabric of that size. Charts are drawn on a page, and read for the numbers of their rows."""
    copy, _ = bench_copy(outcome, size)
    assert copy is not None
    charts = plain_text(replace(copy.instructions, sections=()), printed().writing)
    made, _ = proven_bench(outcome, size, BenchCopy(copy.instructions, f"{charts}\n{words}"))
    return made is not None


def check(page: Page, outcome: Outcome, size: int) -> None:
    pick(page, size)
    words = visible_words(page)
    assert read_back(outcome, size, words)
    assert GRADED.findall(page.inner_text("main")) == []


@pytest.mark.parametrize(("name", "sizes"), FEW.items())
def test_the_words_in_sight_knit_the_garment(name: str, sizes: tuple[int, ...], browser: Browser, tmp_path: Path) -> None:
    page = opened(browser, built(name), tmp_path)
    for size in sizes:
        check(page, compiled(name), size)
    page.close()


@pytest.mark.campaign
@pytest.mark.parametrize("name", GARMENTS)
def test_so_they_do_of_every_garment_in_every_size(name: str, browser: Browser, tmp_path: Path) -> None:
    outcome = compiled(name)
    page = opened(browser, built(name), tmp_path)
    for size in range(len(outcome.plans)):
        check(page, outcome, size)
    page.close()


@pytest.mark.parametrize(
    ("seen", "instead"),
    [("97", "98"), ("24 in work", "25 in work"), ("the left end", "the right end"), ("Wrap the innermost", "Return the innermost")],
)
def test_other_words_in_sight_do_not(seen: str, instead: str, browser: Browser, tmp_path: Path) -> None:
    page = opened(browser, built("tidewrack"), tmp_path)
    pick(page, 3)
    words = visible_words(page)
    page.close()
    assert seen in words
    assert not read_back(compiled("tidewrack"), 3, words.replace(seen, instead, 1))
