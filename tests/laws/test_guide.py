"""The law of the guide: who draws and who puts a sheet together writes no word; each asks the guide it is given, by a key that
is there and with the facts that the sentence has places for; and no sentence stands there that nobody asks for."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from string import Formatter
from typing import get_args

import pytest

from tests.laws.code_tree import PACKAGE, breaches, dotted, each_stage, in_a_language, modules, nodes, stage, tree
from tests.laws.reported import literals
from walewright.guide.english import LANGUAGE
from walewright.guide.model import PLATE
from walewright.serve.model import ResultState
from walewright.serve.pages import FORMATS, WORDS
from walewright.sheet.composing import PAGE_WORDS
from walewright.trade.cells import CELLS
from walewright.trade.edgings import EDGINGS

WORDLESS = ("catalogue", "figures", "sheet")
"""Stages that know only the language they are given."""

PROSE = re.compile(r"[A-Za-z]{2,}[,:;.]? +[A-Za-z]{2,}")

FEATURES = frozenset((*(f"cell {kind}" for kind in CELLS), *(f"edging {kind}" for kind in EDGINGS)))
"""What a section needs: cells and edgings, by the trade's names."""

KINDS = FEATURES | frozenset({
    # Of cells, ways, edgings and joins, as the design names them.
    *("from left", "from right", "two from left", "two from right",
      "two from ", "hand waste", "given, not weighed"),
    # Of what a section needs, see `handwork.features`.
    *("cell purl in stages", "cross beside purl", "other yarn", "start hand waste", "start chain"),
    *("WasteStart hem", "WasteStart by hand", "CarriageAt slip", "CarriageAt lift", "CarriageAt hold", "CarriageAt held"),
    *("edging mock rib 2", "edging mock rib 3", "edging folded", "edging picot", "edging rolled", "edging facing"),
    "edging chained",
    *("join rows to rows", "join stitches to rows", "join stitches to stitches", "join grafted", "join linked", "join gathered"),
    *("StartStripes carried", "Decrease 1 in", "Decrease 2 in"),
    # Of where a measure stands on a drawing.
    *("gap width", "gap height", "neck width", "neck depth", "other depth"),
    # Edges of a band.
    *("first end", "last end"),
    # Typefaces, by which a theme names them.
    *("Sheet Serif", "Sheet Sans"),
})  # fmt: skip
"""Strings of more than one word that are compared and never printed; attributes of SVG, with `="` in them, are none either."""

COMMAND = "walewright build "


def prose(module: ast.Module) -> Iterator[str]:
    """Strings of two or more words that a page could show: no docstrings, no kinds, and nothing that an exception says."""
    silent = set(_silent(module))
    for node in nodes(module):
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in silent:
            text = node.value
            if PROSE.search(text) and text not in KINDS and text != COMMAND and "url(" not in text and '="' not in text:
                yield f"line {node.lineno}: {text!r}"


def _silent(module: ast.Module) -> Iterator[int]:
    for node in nodes(module):
        if isinstance(node, ast.Raise):
            yield from (id(inner) for inner in ast.walk(node))
        elif isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            yield id(node.value)


@each_stage(p for p in modules() if stage(p) in WORDLESS)
def test_no_prose_stands_in_drawings_and_sheets(paths: list[Path]) -> None:
    assert breaches(lambda path: list(prose(tree(path))), paths) == {}


def test_prose_is_seen() -> None:
    text = '"""Words of a doc string."""\nx = f"{a} rows to {b}", "gap width"\nraise E("no such thing")'
    assert list(prose(ast.parse(text))) == ["line 2: ' rows to '"]


TEMPLATES = sorted((PACKAGE / "sheet" / "templates").glob("*.html"))


PAGES = sorted((PACKAGE / "serve" / "templates").glob("*.html"))
"""Those of the page in a browser."""


@pytest.mark.parametrize("path", [*TEMPLATES, *PAGES], ids=lambda p: p.name)
def test_templates_set_no_word_of_their_own(path: Path) -> None:
    text = re.sub(r"\{#.*?#\}|\{%.*?%\}|\{\{.*?\}\}", "", path.read_text(encoding="utf-8"), flags=re.S)
    assert re.findall(r"[A-Za-z]+", re.sub(r"<style>.*?</style>|<[^>]*>", "", text, flags=re.S)) == []


def test_templates_ask_for_the_words_that_are_there() -> None:
    asked = {word for path in TEMPLATES for word in re.findall(r'words\["([^"]+)"\]', path.read_text(encoding="utf-8"))}
    assert asked | {"left", "right"} == set(PAGE_WORDS)


def test_the_page_asks_for_the_words_that_are_there() -> None:
    text = "".join(path.read_text(encoding="utf-8") for path in PAGES)
    asked = set(re.findall(r'words\["([a-z-]+)"\]', text))
    put_together = {
        *(f"get-{form}" for form in FORMATS),
        *get_args(ResultState),
        *(f"{state}-help" for state in get_args(ResultState)),
    }
    assert asked | put_together == set(WORDS)


# ----------------------------------------------------------------- keys and facts

SAYS = {"say": 0, "figured": 0, "said": 0, "_fact": 2, "word": 2}
"""Calls that name a sentence, and where among their arguments its key stands."""


BEFORE = {"_fact": "fact/", "word": "hands/"}
"""What such a call puts before its key."""


@cache
def asked() -> tuple[tuple[str, frozenset[str] | None, str], ...]:
    """(pattern of the key, names of its facts or None where they are not seen, where) of every sentence that is asked for."""
    return tuple(found for path in modules() if stage(path) in (*WORDLESS, "guide", "cli", "serve") for found in _asked(path))


def _asked(path: Path) -> Iterator[tuple[str, frozenset[str] | None, str]]:
    for node in nodes(tree(path)):
        if not isinstance(node, ast.Call):
            continue
        name = node.func.attr if isinstance(node.func, ast.Attribute) else node.func.id if isinstance(node.func, ast.Name) else ""
        if name not in SAYS or len(node.args) <= SAYS[name]:
            continue
        unseen = name == "said" or any(k.arg is None for k in node.keywords)
        facts = None if unseen and not node.keywords else frozenset(k.arg or "" for k in node.keywords if k.arg)
        for key in _patterns(node.args[SAYS[name]], BEFORE.get(name, "")):
            yield key, facts, f"{dotted(path)}:{node.lineno}"


def _patterns(key: ast.expr, before: str) -> Iterator[str]:
    if isinstance(key, ast.IfExp):
        yield from (*_patterns(key.body, before), *_patterns(key.orelse, before))
    elif isinstance(key, ast.Constant) and isinstance(key.value, str):
        yield before + re.escape(key.value)
    elif isinstance(key, ast.JoinedStr):
        yield before + "".join(re.escape(str(part.value)) if isinstance(part, ast.Constant) else ".+" for part in key.values)


def places(template: str) -> set[str]:
    """The facts that a sentence has places for, those within places included."""
    found: set[str] = set()
    for _, name, within, _ in Formatter().parse(template):
        if name:
            found |= {name, *places(within or "")}
    return found


PHRASES = LANGUAGE.words.phrases


def amiss(pattern: str, facts: frozenset[str] | None) -> str:
    """What is wrong with what a call asks for."""
    found = [key for key in PHRASES if re.fullmatch(pattern, key)]
    if not found:
        # A key without a stroke is one of another package, where it goes to `said`.
        return "no such sentence" if "/" in pattern else ""
    # Of keys put together some other call may ask for those that want more.
    lacks = [places(PHRASES[key]) - facts for key in found] if facts is not None else []
    return f"without {lacks}" if lacks and all(lacks) else ""


def test_every_sentence_that_is_asked_for_is_there_and_gets_its_facts() -> None:
    assert [(where, pattern, wrong) for pattern, facts, where in asked() if (wrong := amiss(pattern, facts))] == []


@cache
def words_of_the_code() -> frozenset[str]:
    """Every string in the code but the words of languages."""
    return frozenset().union(*(literals(path) for path in modules() if not in_a_language(path)))


@cache
def put_together() -> tuple[re.Pattern[str], ...]:
    """Of keys that are put together, with their parts as groups."""
    return tuple(re.compile(pattern.replace(".+", "(.+)")) for pattern in {pattern for pattern, _, _ in asked()} if ".+" in pattern)


def is_asked_for(key: str) -> bool:
    """By its whole key, or by a key put together of which each part is a word that the code knows."""
    known = words_of_the_code()
    matches = (pattern.fullmatch(key) for pattern in put_together())
    return key in known or any(all(part.isdecimal() or part in known for part in m.groups()) for m in matches if m)


def test_every_sentence_is_asked_for() -> None:
    assert [key for key in PHRASES if not is_asked_for(key.removesuffix(PLATE))] == []
