"""What a page for a browser holds: the copies as they were read back, one size's own words, a script that writes none."""

from __future__ import annotations

import hashlib
import html as entities
import re
from dataclasses import replace

import pytest

from tests.browser_pages import built, pattern_of
from tests.whole.shipped_once import GARMENTS, compiled
from walewright import world
from walewright.cli.formats import format_named
from walewright.cli.formats.format import Pattern
from walewright.fit.model import Fit
from walewright.languages import printed
from walewright.sheet import browser_html, picked_sizes
from walewright.sheet.browser import PickedSizes, worn_in
from walewright.sheet.themed import PLAIN, Theme

LARGEST = ("anemone", "shoal", "avocet")
MOST_BYTES = 1_500_000


def picked(pattern: Pattern, only: frozenset[int] | None = None) -> PickedSizes:
    copies = {
        size: copy.instructions
        for size, (copy, _) in enumerate(pattern.bench_copies)
        if copy is not None and (only is None or size in only)
    }
    return picked_sizes(pattern.guide, pattern.proven, copies, pattern.sheet, "cm")


def words(markup: str) -> str:
    return entities.unescape(re.sub(r"<[^>]*>", "", markup))


def lines(page: str, size: int) -> list[str]:
    """The lines of a size's copy on the page."""
    (copy,) = re.findall(rf'<template data-size="{size}">(.*?)</template>', page, flags=re.S)
    return [words(line) for line in re.findall(r"<li.*?</li>", copy, flags=re.S)]


@pytest.mark.parametrize("name", ["tidewrack", "hawser"])
def test_each_size_has_its_copy_word_for_word(name: str) -> None:
    page, pattern = built(name), pattern_of(name)
    for size, (copy, _) in enumerate(pattern.bench_copies):
        assert copy is not None
        wanted = [s.text for section in copy.instructions.sections for s in section.sentences]
        assert lines(page, size) == wanted


def test_figures_of_the_bar_are_those_of_the_line() -> None:
    page = built("tidewrack")
    found = re.findall(r'<li data-rc="(\d+)" data-side="(\w+)" data-on="([^"]*)"><p>(.*?)</p></li>', page)
    assert len(found) > 500
    for counter, side, on, line in found:
        said = words(line)
        in_work, held, waiting = on.split()
        assert said.endswith(f"{in_work} in work, {held} held, {waiting} waiting.")
        assert f"RC {int(counter)}, {'COL' if side == 'left' else 'COR'}:" in said


def test_a_line_names_the_rows_of_charts_that_it_is_for() -> None:
    page = built("hawser")
    marked = [(int(row), words(line)) for row, line in re.findall(r'data-charts="chart-ropes (\d+)"><p>(.*?)</p>', page)]
    assert {row for row, _ in marked} == {6}
    assert any(said.startswith("RC") and "Cross" in said and "Row" not in said for _, said in marked)
    assert not any("Tie a marker" in said for _, said in marked)


def test_one_size_is_told_in_its_own_figures() -> None:
    pattern = pattern_of("tidewrack")
    blocks = picked(pattern).blocks
    assert {"size-notes", "tools", "facts part-back", "machine", "reading", "abbreviations"} - set(blocks) == {"tools"}
    assert "facts part-back-welt" not in blocks
    for block in blocks.values():
        assert sorted(place for places, _ in block for place in map(int, places.split())) == list(range(8))
        assert not re.search(r"\d \([^()]*: ", repr(block))
    (bed,) = [facts for places, facts in blocks["machine"] if "3" in places.split()]
    assert [fact.text for fact in bed][-1] == "72"
    assert any("carriage on the left" in meaning for _, meaning in blocks["abbreviations"][0][1])


def test_what_is_worn_is_told_in_one_size() -> None:
    fit = compiled("tidewrack").fit
    assert fit is not None
    one = worn_in(fit, 3)
    assert isinstance(one, Fit)
    assert [girth.values for girth in one.girths] == [girth.values[3:4] for girth in fit.girths]
    assert [passing.stretched for passing in one.passings] == [passing.stretched[3:4] for passing in fit.passings]
    assert one.needed == tuple(of[3:4] for of in fit.needed)


def test_a_size_that_is_not_read_back_cannot_be_picked() -> None:
    pattern = pattern_of("tidewrack")
    page = browser_html(pattern.sheet, picked(pattern, frozenset({0, 3})))
    assert re.findall(r'<button type="button" data-size="(\d*)"', page) == ["", "0", "3"]
    assert re.findall(r'<template data-size="(\d+)"', page) == ["0", "3"]


def test_a_copy_that_reads_otherwise_is_left_out(monkeypatch: pytest.MonkeyPatch) -> None:
    from walewright import bench_copies, pipeline

    proven = bench_copies.proven_bench

    def misprinted(outcome: pipeline.Outcome, size: int, copy: bench_copies.BenchCopy) -> object:
        text = copy.plain_text.replace(" 0 held", " 1 held", 1) if size == 1 else copy.plain_text
        return proven(outcome, size, replace(copy, plain_text=text))

    monkeypatch.setattr(bench_copies, "proven_bench", misprinted)
    page = replace(pattern_of("bollard")).browser_page
    assert re.findall(r'<template data-size="(\d+)"', page) == ["0", "2", "3", "4"]


def test_the_page_for_paper_has_nothing_of_it() -> None:
    pattern = pattern_of("hawser")
    for mark in ("<script", "<template", 'id="picking"', 'id="bench"', "data-key", "data-low", " hidden>"):
        assert mark not in pattern.page
        assert mark in built("hawser")
    assert format_named("html").make(pattern).data == pattern.browser_page.encode()


def test_the_key_is_the_documents_hash() -> None:
    pattern = replace(pattern_of("bollard"))
    pages = {built("bollard"), pattern.browser_page, replace(pattern, date="2026-01-03").browser_page}
    keys = {re.findall(r'data-key="([0-9a-f]{32})"', page)[0]: page for page in pages}
    assert len(pages) == len(keys) == 2
    for key, page in keys.items():
        assert page.count(key) == 1
        assert hashlib.sha256(page.replace(key, "key-of-this-document").encode()).hexdigest()[:32] == key


def test_nothing_is_fetched() -> None:
    for name in ("tidewrack", "hawser"):
        page = built(name)
        addresses = set(re.findall(r"(?:https?:)?//[a-z0-9.-]+\.[a-z]{2,}[^\s\"'<)]*", page))
        assert {a.split("/")[2] for a in addresses} == {"www.w3.org"}
        assert not re.search(r"<(?:link|img|iframe|object|embed)\b|\bsrc=|@import|fetch\(|XMLHttpRequest", page)


def test_the_script_writes_no_words() -> None:
    script = re.sub(r"//[^\n]*", "", world.package_text("sheet/themes/browser.js"))
    assert "innerHTML" not in script
    strings = re.findall(r'"([^"\n]*)"|`([^`]*)`', script)
    texts = [a or b for a, b in strings]
    assert [
        text for text in texts if re.search(r"[a-z] [a-z]", text) and not re.search(r"[#.\[(]|walewright |use strict", text)
    ] == []
    # What is put into a place is copied from another, or is a figure.
    assert set(re.findall(r"textContent = ([^;]+);", script)) == {
        'step ? step.part : ""',
        'step ? step.copy : ""',
        'step ? titleOver(step.line) : ""',
        "rc",
        'on.split(" ")[place] || ""',
    }


def test_a_publishers_page_has_no_night() -> None:
    pattern = pattern_of("bollard")
    house, own = (browser_html(pattern.sheet, picked(pattern), theme) for theme in (PLAIN, Theme(":root { --accent: #7a2f3b; }")))
    assert "prefers-color-scheme: dark" in house
    assert "prefers-color-scheme: dark" not in own


def test_of_one_size_the_whole_pattern_is_the_other_choice() -> None:
    page = built("ebb")
    assert re.findall(r'<button type="button" data-size="(\d*)"[^>]*>([^<]*)<', page) == [("", "Whole pattern"), ("0", "one")]
    assert "data-sizes" not in re.sub(r"<script>.*", "", page, flags=re.S)


@pytest.mark.parametrize("name", LARGEST)
def test_the_largest_pages_are_small_enough(name: str) -> None:
    assert len(built(name).encode()) <= MOST_BYTES


@pytest.mark.campaign
@pytest.mark.parametrize("name", GARMENTS)
def test_all_pages_are_small_enough(name: str) -> None:
    assert len(built(name).encode()) <= MOST_BYTES


def test_the_controls_are_in_the_language_of_the_page() -> None:
    pattern = pattern_of("bollard")
    told = replace(pattern.outcome, language=printed("german"))
    page = replace(pattern, outcome=told, guide=printed("german").guide).browser_page
    for words_of, other in (("Fertig, weiter", "Done, next"), ("Kleinere Schrift", "Smaller type"), ("Größe", "Size")):
        assert f'"{words_of}"' in page or f">{words_of}<" in page
        assert f'"{other}"' not in page
        assert f">{other}<" not in page
