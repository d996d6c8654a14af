"""Diagnostics to render, made by hand so that every shape is there."""

from __future__ import annotations

import pytest

from tests.report.bare import bare, bare_label
from walewright.report.model import Diagnostic, Label, Severity, Span

FILE = "shawl.wale"


@pytest.fixture
def told():  # type: ignore[no-untyped-def]
    """Makes a diagnostic of (text that is marked, label) pairs; each text must stand once in the source."""

    def make(text: str, *marks: tuple[str, str], **more: object) -> Diagnostic:
        labels: list[Label] = []
        for marked, words in marks:
            assert text.count(marked) == 1, marked
            start = text.index(marked)
            labels.append(bare_label(Span(FILE, start, start + len(marked)), words))
        fields: dict[str, object] = {"code": "mixed-units", "message": "a length and a number of rows do not mix", **more}
        return bare(labels=tuple(labels), **fields)  # type: ignore[arg-type]

    return make


__all__ = ["FILE", "Severity"]
