"""The table of codes against what the reader of sources says, and against the pages about it."""

from __future__ import annotations

import ast
import re
from pathlib import Path

import pytest

from tests.docs import error_pages
from walewright import source
from walewright.report.codes import CODES, COMMANDS, SOURCE
from walewright.report.english import ENGLISH

ROOT = Path(__file__).resolve().parents[2]


def written_codes(folder: Path) -> set[str]:
    """The codes of the kinds of diagnostics that are written in a folder."""
    found = set()
    for path in folder.rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Constant) and isinstance(node.value, str) and node.value in ENGLISH.wordings:
                found.add(node.value.partition("/")[0])
    return found


TOLD_OF_MEANINGS_TOO = {"unknown-name"}
"""Codes of the next stage that the reader tells already: a function's name is known as soon as it is read."""


def test_the_table_has_exactly_the_codes_that_source_uses() -> None:
    own = ROOT / "src" / "walewright" / "source"
    assert written_codes(own) == set(SOURCE) | TOLD_OF_MEANINGS_TOO


def test_codes_are_slugs_and_summaries_sentences() -> None:
    for code, info in CODES.items():
        assert re.fullmatch(r"[a-z]+(-[a-z]+)*", code), code
        assert info.summary.endswith("."), code
        assert info.summary[0].isupper(), code


NOT_BY_READING = {"source-too-long", "name-in-language"}
"""Codes that reading a page's source does not tell: commands cause it there, or it is told when all that is used is known."""


@pytest.mark.parametrize("code", sorted(set(SOURCE) - NOT_BY_READING))
def test_the_page_of_a_code(code: str) -> None:
    page = error_pages.page(code)
    assert page.wrong
    assert page.mended
    assert {d.code for d in source.read("page.wale", page.wrong.source)[1]} == {code}
    assert source.read("page.wale", page.mended.source)[1] == ()


def test_the_table_has_every_code_of_the_commands() -> None:
    told: set[str] = set()
    for folder in ("catalogue", "cli", "sheet", "world"):
        for path in (ROOT / "src" / "walewright" / folder).rglob("*.py"):
            for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
                if isinstance(node, ast.Call) and ast.unparse(node.func) in (
                    "diagnosed",
                    "refusal",
                    "line.fault",
                    "lines.fault",
                    "self.fault",
                ):
                    told |= {
                        str(x.value).partition("/")[0]
                        for x in ast.walk(node.args[1 if ast.unparse(node.func) == "refusal" else 0])
                        if isinstance(x, ast.Constant) and re.fullmatch(r"[a-z]+(-[a-z]+)+(/.*)?", str(x.value))
                    }
    assert told == set(COMMANDS)
