"""The table of codes against what the reader of sources says, and against the pages about it."""

from __future__ import annotations

import ast
import re
from pathlib import Path

import pytest

from tests.docs import error_pages
from walewright import source
from walewright.report.codes import CODES, COMMANDS, SOURCE

ROOT = Path(__file__).resolve().parents[2]


def written_codes(folder: Path) -> set[str]:
    """Codes that diagnostics are made with: first arguments of `Diagnostic`, and of what makes one."""
    found = set()
    for path in folder.rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and ast.unparse(node.func) == "Diagnostic" and isinstance(node.args[0], ast.Constant):
                found.add(str(node.args[0].value))
    return found


def test_the_table_has_exactly_the_codes_that_source_uses() -> None:
    own = ROOT / "src" / "walewright" / "source"
    indentation = {"wrong-indent"}
    assert written_codes(own) | indentation == set(SOURCE)


def test_codes_are_slugs_and_summaries_sentences() -> None:
    for code, info in CODES.items():
        assert re.fullmatch(r"[a-z]+(-[a-z]+)*", code), code
        assert info.summary.endswith("."), code
        assert info.summary[0].isupper(), code


LONGER_THAN_A_PAGE = {"source-too-long"}
"""Codes that commands cause on their page."""


@pytest.mark.parametrize("code", sorted(set(SOURCE) - LONGER_THAN_A_PAGE))
def test_the_page_of_a_code(code: str) -> None:
    page = error_pages.page(code)
    assert page.wrong
    assert page.mended
    assert {d.code for d in source.read("page.wale", page.wrong.source)[1]} == {code}
    assert source.read("page.wale", page.mended.source)[1] == ()


def test_the_table_has_every_code_of_the_commands() -> None:
    told: set[str] = set()
    for folder in ("cli", "world"):
        for path in (ROOT / "src" / "walewright" / folder).rglob("*.py"):
            for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
                if isinstance(node, ast.Call) and ast.unparse(node.func) in ("Diagnostic", "refusal", "line.fault", "self.fault"):
                    told |= {
                        str(a.value)
                        for a in (*node.args[:2], *(k.value for k in node.keywords if k.arg == "code"))
                        if isinstance(a, ast.Constant) and re.fullmatch(r"[a-z]+(-[a-z]+)+", str(a.value))
                    }
    assert told == set(COMMANDS)
