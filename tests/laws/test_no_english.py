"""The law of English: outside the folders of a language no stage holds words for people. A text of more than one word is the name
of a closed kind, a term that messages put into a language, or where a datum is from in the source."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

from tests.laws.code_tree import breaches, dotted, each_stage, in_a_language, modules, nodes, stage, tree
from walewright.report.english import ENGLISH

WORDLESS = frozenset(
    {"bed", "catalogue", "counted", "cli", "fit", "glue", "knit", "plan", "proof", "readback", "write", "regrade", "serve"}
)
PROSE = re.compile(r"[A-Za-z]{2,}[,:;.]? +[A-Za-z]{2,}")

EDGES = frozenset({"shoulder left", "shoulder right", "first end", "last end"})
"""Edges by the names that the garment is glued with: a name, and which part of it."""

NO_WORDS_FOR_PEOPLE = {
    "bed.corners": {"top of the opening"},
    "cli.options": {"wool=my wool, 50 g = 120 m"},
    "knit.zones": {" in stages"},
    "write.model": {
        *("carriage on the left", "carriage on the right", "needle left of the centre", "needle right of the centre"),
        *("row counter", "next row"),
    },
    "write.row_by_row": {
        *("decrease at ", "increase at ", "hold at "),
        *("increase at carriage", "cast off at carriage", "cast on at carriage"),
    },
    "write.words": {"StartStripes carried"},
    "knit.dial": {"looser than "},
    "knit.edging_steps": {"looser than "},
    "plan.measured": {"width at ", ", all together"},
    "readback.edgings": {"looser than "},
}
"""What is compared, a key or a format: a dial's setting, measures in the plan, keys of marks, and what a value of an option looks
like."""


def silent(module: ast.Module) -> Iterator[int]:
    """Texts that say something to whoever reads the code, or where a datum is from: docstrings, exceptions, origins, help."""
    for node in nodes(module):
        if isinstance(node, ast.Raise | ast.Assert):
            yield from (id(inner) for inner in ast.walk(node))
        elif isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            yield id(node.value)
        elif (
            (isinstance(node, ast.Call) and ast.unparse(node.func).split(".")[-1] in ("Origin", "OutputLost", "UsageError"))
            or (isinstance(node, ast.keyword) and node.arg in ("help", "metavar", "epilog"))
            or (isinstance(node, ast.Call) and ast.unparse(node.func) == "_leaving")
        ):
            yield from (id(inner) for inner in ast.walk(node))


@cache
def kinds() -> frozenset[str]:
    """Every text in a `Literal` of the compiler."""
    return frozenset(
        inner.value
        for path in modules()
        for node in nodes(tree(path))
        if isinstance(node, ast.Subscript) and ast.unparse(node.value).split(".")[-1] == "Literal"
        for inner in ast.walk(node.slice)
        if isinstance(inner, ast.Constant) and isinstance(inner.value, str)
    )


def english(module: ast.Module) -> list[tuple[int, str]]:
    """Texts of two or more words that are no kinds and no terms."""
    quiet = set(silent(module))
    return [
        (node.lineno, node.value)
        for node in nodes(module)
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in quiet
        if PROSE.search(node.value) and node.value not in kinds() and node.value not in {*ENGLISH.terms, *EDGES}
    ]


HELD = [p for p in modules() if stage(p) in WORDLESS and not in_a_language(p)]


def unallowed(path: Path) -> list[tuple[int, str]]:
    allowed = NO_WORDS_FOR_PEOPLE.get(dotted(path).removeprefix("walewright."), set())
    return [found for found in english(tree(path)) if found[1] not in allowed]


@each_stage(HELD)
def test_a_stage_holds_no_words(paths: list[Path]) -> None:
    assert breaches(unallowed, paths) == {}


def test_every_exception_is_there() -> None:
    for name, texts in NO_WORDS_FOR_PEOPLE.items():
        (path,) = (p for p in HELD if dotted(p) == f"walewright.{name}")
        assert texts == {text for _, text in english(tree(path))} & texts


@pytest.mark.parametrize(
    "text",
    ["m.refuse('no-yarn', f'the {m.yarn} is fastened off')", "where = 'the rows of its rib'", "way = f'one length of {n} cm'"],
)
def test_the_law_sees_words(text: str) -> None:
    assert len(english(ast.parse(text))) == 1


def test_the_law_lets_kinds_and_origins_be() -> None:
    assert english(ast.parse('"""Words of a doc string."""\nx = "mock rib"\no = Origin(f"piece {p} / edge to {l}", s)')) == []
