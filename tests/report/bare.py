"""Diagnostics with texts of a test's own, in a language that says them as they are."""

from __future__ import annotations

from walewright.report import render
from walewright.report.english.commands import SHOWN
from walewright.report.model import Diagnostic, Label, Severity, Span
from walewright.report.said import Said, said
from walewright.report.wording import Language, Wording


class _AnyMessage(dict[str, Wording]):
    def __missing__(self, kind: str) -> Wording:
        return Wording("{message}")


BARE = Language(wordings=_AnyMessage(), phrases={"shown": "{shown}", **SHOWN}, terms={})


def shown(text: str) -> Said:
    return said("shown", shown=text)


def bare_label(span: Span, text: str = "") -> Label:
    return Label(span, shown(text) if text else None)


def bare(
    code: str,
    message: str,
    labels: tuple[Label, ...] = (),
    notes: tuple[str, ...] = (),
    helps: tuple[str, ...] = (),
    severity: Severity = Severity.ERROR,
    sizes: tuple[str, ...] = (),
) -> Diagnostic:
    """A diagnostic of these texts."""
    facts = (("message", message),)
    return Diagnostic(code, "", facts, labels, tuple(shown(n) for n in notes), tuple(shown(h) for h in helps), severity, sizes)


def terminal(diagnostics: list[Diagnostic], sources: dict[str, str], *, markup: bool = False) -> str:
    return render.terminal(diagnostics, sources, markup=markup, language=BARE)
