"""Every code of this stage has a page, and the page's examples do what it says."""

from __future__ import annotations

import ast
import shlex
from pathlib import Path

import pytest

from tests.docs import error_pages
from walewright.design import Changes, Shipped, understand
from walewright.design.reading.changes import ATTRIBUTES
from walewright.report.codes import DESIGN
from walewright.report.english import ENGLISH
from walewright.report.model import Diagnostic, Severity
from walewright.source import read

ROOT = Path(__file__).parents[2]
WITHOUT_EXAMPLE = {"impossible-statement", "shared-file-unusable"}
"""Codes that no source on the page causes in this stage by itself: what other files define is brought in before it."""


def told_codes() -> list[str]:
    """The code of every literal in the stage's modules that is the kind of a diagnostic."""
    found: set[str] = set()
    for module in (ROOT / "src" / "walewright" / "design").rglob("*.py"):
        for node in ast.walk(ast.parse(module.read_text())):
            if isinstance(node, ast.Constant) and isinstance(node.value, str) and node.value in ENGLISH.wordings:
                found.add(node.value.partition("/")[0])
    return sorted(found)


def changes(command: str) -> Changes:
    """What a command on a page asks for."""
    words = shlex.split(command)
    given = list(zip(words[3::2], words[4::2], strict=True))
    sizes = [tuple(value.split(",")) for option, value in given if option == "--size"]
    pairs = {
        field: dict(value.split("=", 1) for option, value in given if option == f"--{kind}") for kind, field in ATTRIBUTES.items()
    }
    bed = "".join(value for option, value in given if option == "--bed")
    return Changes(sizes[0] if sizes else None, **pairs, bed=bed)  # type: ignore[arg-type]


def understood(text: str, shipped: Shipped, wanted: Changes) -> tuple[bool, tuple[Diagnostic, ...]]:
    tree, unread = read(error_pages.FILE, text)
    assert unread == ()
    design, told = understand(tree, shipped, wanted)
    return design is not None, told


CODES = told_codes()
WITH_EXAMPLE = sorted(set(CODES) - WITHOUT_EXAMPLE)


def test_every_code_is_registered_and_every_registered_code_is_told() -> None:
    assert set(CODES) == set(DESIGN)


def causes_it_alone(code: str, shipped: Shipped) -> None:
    """The wrong example of a page causes its message and no other."""
    page = error_pages.page(code)
    text = page.wrong.source if page.wrong else page.source
    sound, told = understood(text, shipped, changes(page.commands[0]) if page.commands else Changes())
    assert [d.code for d in told] == [code]
    assert told[0].severity is DESIGN[code].severity
    assert sound is (told[0].severity is Severity.WARNING)
    if page.wrong:
        # Its labels, notes and helps as well: what is named, where, and what is proposed.
        assert error_pages.printed(text, told) == page.message


@pytest.mark.parametrize("code", WITH_EXAMPLE[::3])
def test_the_wrong_example_causes_this_message_alone(code: str, shipped: Shipped) -> None:
    """Of every third page: the others have files of their own, since all of them together take long."""
    causes_it_alone(code, shipped)
