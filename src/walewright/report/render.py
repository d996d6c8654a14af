"""Diagnostics as text for a terminal, with their lines of source. Nothing is printed here."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from walewright.report.columns import harmless, named
from walewright.report.excerpt import excerpt
from walewright.report.model import Diagnostic, Severity, Span
from walewright.report.paint import Paint
from walewright.report.places import Source, source

MOST_PER_FILE = 10
"""Diagnostics of a file that the terminal shows whole; the rest are counted."""


def terminal(diagnostics: Iterable[Diagnostic], sources: Mapping[str, str], *, markup: bool = False) -> str:
    """Every diagnostic with the lines it speaks of, marked; at the end how many there are. Empty for no diagnostics.

    `sources`: file name to its text; where a text is missing, only the name is given. Each diagnostic is shown once, and
    at most `MOST_PER_FILE` of a file, errors before warnings. With `markup`, the text has style tags of rich's console
    markup, and brackets of the source are escaped; without, it is plain.
    """
    told = unique(diagnostics)
    known = {name: source(text) for name, text in sources.items() if text}
    paint = Paint(markup)
    blocks = []
    for file, group in _by_file(told).items():
        shown = _most_wanted(group)
        blocks += [_block(d, known, paint) for d in shown]
        if len(group) > len(shown):
            more = _counted([d for d in group if d not in shown])
            blocks.append(paint.faint(f"{named(file) + ': ' if file else ''}{more} more not shown"))
    if told:
        blocks.append(paint.strong(_counted(told)))
    return "\n\n".join(blocks)


def unique(diagnostics: Iterable[Diagnostic]) -> tuple[Diagnostic, ...]:
    """The diagnostics in their order, each once."""
    return tuple(dict.fromkeys(diagnostics))


def _block(diagnostic: Diagnostic, known: Mapping[str, Source], paint: Paint) -> str:
    severity = diagnostic.severity
    head = paint.severity(f"{severity.value}[{diagnostic.code}]", severity)
    lines = [f"{head}: {paint.strong(harmless(diagnostic.message))}"]
    lines += excerpt(diagnostic, known, paint)
    if diagnostic.sizes:
        word = "size" if len(diagnostic.sizes) == 1 else "sizes"
        lines.append(_remark(f"in {word}", ", ".join(diagnostic.sizes), paint))
    lines += [_remark("note:", note, paint) for note in diagnostic.notes]
    lines += [_remark("help:", proposal, paint) for proposal in diagnostic.helps]
    return "\n".join(lines)


def _remark(word: str, text: str, paint: Paint) -> str:
    first, *further = harmless(text).split("\n")
    indent = " " * (len(word) + 3)
    return "\n".join((f"  {paint.strong(word)} {paint.plain(first)}", *(indent + paint.plain(t) for t in further)))


def _by_file(diagnostics: Iterable[Diagnostic]) -> dict[str, list[Diagnostic]]:
    groups: dict[str, list[Diagnostic]] = {}
    for diagnostic in diagnostics:
        groups.setdefault(_span(diagnostic).file, []).append(diagnostic)
    return groups


def _most_wanted(group: list[Diagnostic]) -> list[Diagnostic]:
    """The first of a file's diagnostics, in their order; no warning takes the place of an error."""
    wanted = sorted(range(len(group)), key=lambda i: (group[i].severity is not Severity.ERROR, i))[:MOST_PER_FILE]
    return [group[i] for i in sorted(wanted)]


def _counted(diagnostics: Iterable[Diagnostic]) -> str:
    """`2 errors, 1 warning`."""
    severities = [d.severity for d in diagnostics]
    counts = [(severities.count(s), s.value) for s in Severity]
    return ", ".join(f"{n} {word}{'' if n == 1 else 's'}" for n, word in counts if n)


def _span(diagnostic: Diagnostic) -> Span:
    return diagnostic.labels[0].span if diagnostic.labels else Span("", 0, 0)
