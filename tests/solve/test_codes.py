"""Every code that this stage tells is registered; `tests/docs/` asks for its page."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

from walewright.report.codes import CODES

ROOT = Path(__file__).parents[2]


def told() -> list[str]:
    found: set[str] = set()
    for module in (ROOT / "src" / "walewright" / "solve").glob("*.py"):
        for node in ast.walk(ast.parse(module.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and ast.unparse(node.func) == "Diagnostic" and isinstance(node.args[0], ast.Constant):
                found.add(str(node.args[0].value))
    return sorted(found)


def test_the_codes_are_found() -> None:
    assert "counts-conflict" in told()


@pytest.mark.parametrize("code", told())
def test_a_code_is_registered(code: str) -> None:
    assert code in CODES
