"""Diagnostics for programs: each an object of JSON on a line of its own. Nothing is printed here.

What a program decides on is data: code, case, places and facts. The words are there as well, in the same language as elsewhere.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Mapping

from walewright.record import record
from walewright.report.english import ENGLISH
from walewright.report.model import Change, Diagnostic, Span
from walewright.report.places import Source, source
from walewright.report.render import unique
from walewright.report.said import Amount, BySize, Fact, Said
from walewright.report.wording import Language, phrased, worded


@record
class Edit:
    """A stretch of a source to be replaced by `text`."""

    span: Span
    text: str


Edits = Callable[[Diagnostic, int], tuple[Edit, ...]]
"""What a diagnostic's help, by its number from 0, changes in the text; nothing where it is no such change."""


def no_edits(_: Diagnostic, __: int) -> tuple[Edit, ...]:
    """Of messages that no source stands behind."""
    return ()


def as_json(
    diagnostics: Iterable[Diagnostic], sources: Mapping[str, str], edits: Edits = no_edits, language: Language = ENGLISH
) -> str:
    """A line for each diagnostic, in their order, each once; in ASCII, with offsets in code points, lines and columns from 1."""
    known = {name: source(text) for name, text in sources.items()}
    found = (_Told(d, known, edits, language).whole() for d in unique(diagnostics))
    return "\n".join(json.dumps(one, ensure_ascii=True) for one in found)


class _Told:
    """One diagnostic on its way to JSON."""

    def __init__(self, diagnostic: Diagnostic, known: Mapping[str, Source], edits: Edits, language: Language) -> None:
        self.diagnostic, self.known, self.edits, self.language = diagnostic, known, edits, language
        self.words = worded(diagnostic, language)

    def whole(self) -> dict[str, object]:
        d, words = self.diagnostic, self.words
        labels = [
            {**self.place(label.span), **self.said(label.said, text)} for label, text in zip(d.labels, words.labels, strict=True)
        ]
        helps = [
            {**self.said(help_, text), "edits": [self.edit(edit) for edit in self.edits(d, n)]}
            for n, (help_, text) in enumerate(zip(d.helps, words.helps, strict=True))
        ]
        return {
            "code": d.code,
            "case": d.case or None,
            "severity": d.severity.value,
            "message": words.message,
            "span": self.place(d.labels[0].span) if d.labels else None,
            "labels": labels,
            "facts": self.facts(d.facts),
            "notes": [self.said(note, text) for note, text in zip(d.notes, words.notes, strict=True)],
            "helps": helps,
            "sizes": list(d.sizes),
            "changes": [[self.change(change) for change in some] for some in d.changes],
            "given": None if d.given is None else {"option": f"--{d.given[0]}", "name": d.given[1] or None},
        }

    def place(self, span: Span) -> dict[str, object]:
        found: dict[str, object] = {"file": span.file, "start": span.start, "end": span.end}
        if span.file in self.known:
            for name, offset in (("start", span.start), ("end", span.end)):
                at = self.known[span.file].place(offset)
                found |= {f"{name}_line": at.line, f"{name}_column": at.column}
        return found

    def said(self, what: Said | None, text: str) -> dict[str, object]:
        if what is not None:
            return {"key": what.key, "text": text, "facts": self.facts(what.facts)}
        return {"key": None, "text": text, "facts": {}}

    def facts(self, facts: Iterable[tuple[str, Fact]]) -> dict[str, object]:
        return {name: self.fact(fact) for name, fact in facts}

    def fact(self, fact: Fact) -> object:
        match fact:
            case Amount(value, unit):
                return {"value": value, "unit": unit or None}
            case BySize(sizes, values, unit):
                if not sizes:
                    return {"value": values[0], "unit": unit or None}
                return {"by_size": dict(zip(sizes, values, strict=True)), "unit": unit or None}
            case Said(key, facts):
                return {"key": key, "text": phrased(fact, self.language), "facts": self.facts(facts)}
            case tuple():
                return [self.fact(part) for part in fact]
        return fact

    def change(self, change: Change) -> dict[str, object]:
        name = phrased(change.name, self.language) if change.name is not None else None
        values = dict(change.values)
        return {"what": change.figure, "owner": change.owner or None, "at": change.at or None, "name": name, "values": values}

    def edit(self, edit: Edit) -> dict[str, object]:
        return {"file": edit.span.file, "start": edit.span.start, "end": edit.span.end, "text": edit.text}


__all__ = ["Edit", "Edits", "as_json", "no_edits"]
