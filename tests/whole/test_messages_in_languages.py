"""Messages in other languages than English: no English is left in their tables, nor in what the pages of codes show, worded in
them, but what an author wrote."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache
from string import Formatter

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.docs import error_pages
from tests.report.test_languages import OTHERS, texts, told
from walewright import world
from walewright.report.english import ENGLISH
from walewright.report.model import Diagnostic
from walewright.report.render import terminal
from walewright.report.wording import Language, worded

BOTH = {
    "german": frozenset(
        word
        for words in (
            # Words that are German too.
            "alternative an block blocks definition hand in kind links minus name option rest ring so system systems terminal text",
            "stand union upper was",
            # Words of computers, formats, standards and units, as German has them.
            "byte bytes compiler editor jpeg link logo mb otf pdf pipe png python readme signal socket svg toml ttf utf wcag woff",
            "os rgb cm mm nm ne nek tex dtex denier lea en port",
            # What is typed, and stands in other quotes there or is an option.
            "bed fault font for imprint italic jobs maroon mine on out printed private size style theme use by us wale walewright",
            "weight rows stitches",
            "browser catalogue dask date executor garments install into pip publish scheduler sources tcp title",
            # Authorities and their publications, by their own titles.
            "agency and astm cfr chemicals children clothing cords cpsc drawstrings faq finnish outerwear safety",
        )
        for word in words.split()
    )
}
"""Words of a language's table that English has as well."""

UNICODE = frozenset({"latin", "cyrillic", "greek", "capital", "small", "letter"})
"""Of the names of characters, which are the standard's."""

SHOWN = tuple(code for code in error_pages.codes_with_page() if error_pages.page(code).wrong)

SNAPPED = (
    "absurd-swatch",
    "across-too-far",
    "band-parted",
    "beyond-the-edge",
    "buttonholes-crowded",
    "cap-cannot-meet",
    "cast-off-too-wide",
    "chart-ragged",
    "choice-without-effect",
    "copies-left-over",
    "cord-on-child",
    "counts-conflict",
    "cross-too-soon",
    "edge-stitches-too-few",
    "edging-in-parts",
    "free-level-without-room",
    "hole-at-edge",
    "incomplete-statement",
    "join-does-not-meet",
    "levels-fall",
    "line-not-in-order",
    "long-float",
    "loops-left-open",
    "missing-part",
    "name-unreadable",
    "needles-out",
    "no-unit",
    "opening-too-tight",
    "panel-fabric",
    "ragged-row",
    "rate-not-kept",
    "repeat-parity",
    "require-fails",
    "sizes-not-graded",
    "slope-too-flat",
    "too-many",
    "too-much-knitting",
    "unknown-name",
    "unlikely-yarn",
    "unreadable-line",
    "wedge-too-steep",
    "wider-than-bed",
    "without-effect",
)
"""Codes whose messages are looked at whole."""


# ----------------------------------------------------------------- words of a table


def unquoted(words: str) -> str:
    """A text without what is in backquotes."""
    return re.sub(r"`[^`]*`", " ", words)


def said_by(template: str) -> Iterator[str]:
    """Every stretch of a sentence's own text, those in its choices too; without what is in backquotes."""
    bare = unquoted(re.sub(r"(:(?:and|or|names))`\}|:`/", lambda way: f"{way[1]}}}" if way[1] else ":/", template))
    for text, name, way, _ in Formatter().parse(bare):
        yield text
        if name and way and (way[0] in "?=@" or "|" in way):
            yield from said_by(re.sub(r"^[?=@]|[|#]", " ", way))
        elif name and way and "/" in way:
            yield way.partition("/")[2]


def words_in(text: str) -> frozenset[str]:
    return frozenset(word.lower() for word in re.findall(r"[^\W\d_]{2,}", text))


@cache
def vocabulary(name: str) -> frozenset[str]:
    """Every word of a language's own."""
    language = ENGLISH if name == "english" else told(name)
    forms = [form for pair in language.terms.values() for form in pair]
    rest = [*forms, *language.units.values(), *language.words, *language.joined, language.more]
    return words_in(" ".join(part for words in (*texts(language).values(), *rest) for part in said_by(words)))


@pytest.mark.parametrize("name", OTHERS)
def test_no_word_of_english_is_left_in_a_table(name: str) -> None:
    assert sorted((vocabulary(name) & vocabulary("english")) - BOTH[name]) == []


@pytest.mark.parametrize("name", OTHERS)
def test_words_of_both_languages_are_those_that_both_have(name: str) -> None:
    assert sorted(BOTH[name] - vocabulary(name)) == []


# ----------------------------------------------------------------- words of a message


def left_in(diagnostic: Diagnostic, language: Language, name: str, source: str) -> list[str]:
    """Words of English in a message that neither the language has nor the author, nor a table that the source names."""
    told_in = worded(diagnostic, language)
    text = unquoted("\n".join((told_in.message, *told_in.labels, *told_in.notes, *told_in.helps)))
    # What passes an opening is measured by a table that the source need not name.
    files = [
        file
        for file in world.shipped_names("patterns", "tables", ".csv")
        if "passes" in source or diagnostic.code == "too-tight" or re.search(rf"\b{file[:-4]}\b", source)
    ]
    tables = " ".join(world.shipped_text("patterns", f"tables/{file}") for file in (*files, *(["measures.toml"] if files else [])))
    known = BOTH[name] | words_in(source.replace("_", " ")) | words_in(tables.replace("_", " "))
    known |= UNICODE if diagnostic.code == "names-look-alike" else frozenset()
    return sorted((words_in(text.replace("_", " ")) & vocabulary("english")) - known)


def found(code: str) -> tuple[str, tuple[Diagnostic, ...]]:
    """The source of a page, and what is reported of it."""
    shown = error_pages.page(code)
    assert shown.wrong is not None
    return shown.wrong.source, error_pages.compiled(shown.wrong.source).diagnostics


@pytest.mark.parametrize("code", SHOWN)
@pytest.mark.parametrize("name", OTHERS)
def test_no_word_of_english_is_left_in_a_message(name: str, code: str) -> None:
    source, diagnostics = found(code)
    assert diagnostics
    assert {d.code: left for d in diagnostics if (left := left_in(d, told(name), name, source))} == {}


@pytest.mark.parametrize("code", ["levels-fall", "unknown-name", "counts-conflict"])
def test_english_would_be_seen(code: str) -> None:
    source, diagnostics = found(code)
    assert all(len(left_in(d, ENGLISH, "german", source)) > 2 for d in diagnostics)


@pytest.mark.parametrize("name", OTHERS)
def test_messages_in_a_language_read_well(name: str, snapshot: SnapshotAssertion) -> None:
    """Read what changes: right cases and genders, and what is wrong is named first."""
    assert {code: terminal(found(code)[1], {error_pages.FILE: found(code)[0]}, language=told(name)) for code in SNAPPED} == snapshot
