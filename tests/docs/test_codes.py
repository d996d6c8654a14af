"""The pages of codes show what the compiler says, and what they show as mended has nothing to be said about.

Where a page shows another text, `python -m tests.docs.write_messages` writes it anew: read what changed.
"""

from __future__ import annotations

import re

import pytest

from tests.docs import error_pages
from tests.docs.blocks import FRAMED, Block, frames
from walewright.report.codes import CODES

UNSHOWN = {
    "address-refused": "which addresses can be had depends on the system",
    "bed-refuses": "no source is known that causes it: a fault of the compiler",
    "impossible-statement": "no text causes it: only a tree built by a program",
    "installation-incomplete": "what the compiler needs is there when it is tested",
    "knitted-otherwise": "no source is known that causes it: a fault of the compiler",
    "lace-unpaired": "no source is known that causes it: a fault of the compiler",
    "memory-exhausted": "where memory ends depends on the computer",
    "no-proven-best": "no garment is known that comes near the solver's limit",
    "page-printer": "no source is known that causes it",
    "process-lost": "what ends a process depends on the system",
    "size-not-picked": "no source is known that causes it: a fault of the compiler",
    "system-refused": "what a system refuses depends on the system",
    "words-contradict": "no command reads back a text that was changed after printing",
    "words-knit-otherwise": "no command reads back a text that was changed after printing",
    "words-no-sizes": "no command reads back a text that was changed after printing",
    "words-no-such-size": "no command reads back a text that was changed after printing",
    "words-size-count": "no command reads back a text that was changed after printing",
    "words-unreadable": "no command reads back a text that was changed after printing",
}
"""Codes whose message no page can show, and why; their tests make them."""

PAGES = {code: error_pages.page(code) for code in error_pages.codes_with_page()}
SHOWN = sorted(set(PAGES) - set(UNSHOWN))
SOURCES = [code for code in SHOWN if PAGES[code].wrong]
COMMANDS = [code for code in SHOWN if PAGES[code].commands]
HEAD = re.compile(r"^(error|warning)\[([a-z-]+)\]: ", re.MULTILINE)


def test_every_code_has_a_page_and_every_page_a_code() -> None:
    assert set(PAGES) == set(CODES)


def test_every_page_shows_a_message_but_those_that_cannot() -> None:
    assert {code for code, page in PAGES.items() if page.message is None} == set(UNSHOWN)
    assert sorted(SOURCES + COMMANDS) == SHOWN


@pytest.mark.parametrize("code", sorted(PAGES))
def test_a_page_shows_what_the_compiler_prints(code: str) -> None:
    assert PAGES[code].text == error_pages.as_it_should_be(PAGES[code])


@pytest.mark.parametrize("code", SHOWN)
def test_a_message_is_of_the_code_of_its_page_alone(code: str) -> None:
    heads = HEAD.findall(PAGES[code].message or "")
    assert set(heads) == {(CODES[code].severity.value, code)}


@pytest.mark.parametrize("code", SOURCES)
def test_a_mended_source_has_nothing_to_be_said_about(code: str) -> None:
    mended = PAGES[code].mended
    assert mended
    outcome = error_pages.compiled(mended.source)
    assert outcome.diagnostics == ()
    assert outcome.proven


@pytest.mark.parametrize("code", COMMANDS)
def test_mended_commands_succeed_and_say_nothing(code: str) -> None:
    assert error_pages.runs(PAGES[code])[1] == error_pages.Run("", 0)


@pytest.mark.parametrize("name", sorted(set(frames()) - {""}))
def test_a_frame_can_be_knitted_as_it_is(name: str) -> None:
    outcome = error_pages.compiled(frames()[name])
    assert outcome.diagnostics == ()
    assert outcome.proven
    assert f"\n### {name}\n" in error_pages.INDEX.read_text(encoding="utf-8")


def framed() -> list[Block]:
    return [b for page in PAGES.values() for b in page.blocks if FRAMED.fullmatch(b.info)]


def test_every_frame_is_used() -> None:
    assert {FRAMED.fullmatch(b.info)["frame"] for b in framed()} == set(frames()) - {""}  # type: ignore[index]


@pytest.mark.parametrize("block", framed(), ids=lambda b: b.name)
def test_the_line_above_a_framed_block_leads_to_its_frame(block: Block) -> None:
    page = PAGES[block.page.rsplit("/", 1)[1].removesuffix(".md")].text.split("\n")
    name = FRAMED.fullmatch(block.info)["frame"]  # type: ignore[index]
    assert f"[{name}](README.md#{name})" in page[block.line - 3]


def test_the_index_lists_every_code_with_its_summary() -> None:
    text = error_pages.INDEX.read_text(encoding="utf-8")
    assert text == error_pages.index_as_it_should_be()
    assert sorted(re.findall(r"^\| \[([a-z-]+)\]\(\1\.md\) \|", text, re.MULTILINE)) == sorted(CODES)
