"""Every code that this stage reports is registered, and what is told of the source on its page is what the page shows."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

from tests.docs import error_pages
from walewright.report.codes import CODES

NOT_WATCHED = True
ROOT = Path(__file__).parents[2]


def told() -> list[str]:
    found: set[str] = set()
    for module in (ROOT / "src" / "walewright" / "solve").rglob("*.py"):
        for node in ast.walk(ast.parse(module.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and ast.unparse(node.func) == "diagnosed":
                found |= {str(x.value).partition("/")[0] for x in ast.walk(node.args[0]) if isinstance(x, ast.Constant)}
    return sorted(found)


def test_the_codes_are_found() -> None:
    assert "counts-conflict" in told()


@pytest.mark.parametrize("code", told())
def test_a_code_is_registered(code: str) -> None:
    assert code in CODES


@pytest.mark.parametrize("code", told())
def test_the_source_on_its_page_is_told_as_there(code: str) -> None:
    page = error_pages.page(code)
    if page.wrong is not None:
        assert error_pages.printed(page.wrong.source, error_pages.compiled(page.wrong.source).diagnostics) == page.message
