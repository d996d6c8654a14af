"""Diagnostics as text, with the lines of source that they speak of. Nothing is printed here."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from walewright.report.columns import harmless
from walewright.report.english import ENGLISH
from walewright.report.excerpt import called, excerpt
from walewright.report.model import Diagnostic, Severity, Span
from walewright.report.paint import Paint
from walewright.report.places import Source, source
from walewright.report.said import Said, said, size_as_said
from walewright.report.wording import Language, phrased, worded

MOST_PER_FILE = 10
"""Diagnostics of a file that the terminal shows whole; the rest are counted."""


def terminal(
    diagnostics: Iterable[Diagnostic], sources: Mapping[str, str], *, markup: bool = False, language: Language = ENGLISH
) -> str:
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
        blocks += [_block(d, language, known, paint) for d in shown]
        if len(group) > len(shown):
            more = said("shown/more", told=_counted([d for d in group if d not in shown]))
            blocks.append(paint.faint(f"{called(file, language) + ': ' if file else ''}{phrased(more, language)}"))
    if told:
        blocks.append(paint.strong(", ".join(phrased(one, language) for one in _counted(told))))
    return "\n\n".join(blocks)


def unique(diagnostics: Iterable[Diagnostic]) -> tuple[Diagnostic, ...]:
    """The diagnostics in their order, each once."""
    return tuple(dict.fromkeys(diagnostics))


def _block(diagnostic: Diagnostic, language: Language, known: Mapping[str, Source], paint: Paint) -> str:
    words, severity = worded(diagnostic, language), diagnostic.severity
    called = phrased(said(f"severity/{severity.value}"), language)
    head = paint.severity(f"{called}[{diagnostic.code}]", severity)
    lines = [f"{head}: {paint.strong(harmless(words.message))}"]
    lines += excerpt(diagnostic, words.labels, known, paint, language)
    if diagnostic.sizes:
        in_sizes = phrased(said("shown/sizes", count=len(diagnostic.sizes)), language)
        lines.append(_remark(in_sizes, ", ".join(map(size_as_said, diagnostic.sizes)), paint))
    lines += [_remark(f"{phrased(said('shown/note'), language)}:", note, paint) for note in words.notes]
    lines += [_remark(f"{phrased(said('shown/help'), language)}:", proposal, paint) for proposal in words.helps]
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


def _counted(diagnostics: Iterable[Diagnostic]) -> tuple[Said, ...]:
    """`2 errors, 1 warning`."""
    severities = [d.severity for d in diagnostics]
    counts = [(severities.count(s), s.value) for s in Severity]
    return tuple(said(f"counted/{word}s", count=n) for n, word in counts if n)


def _span(diagnostic: Diagnostic) -> Span:
    return diagnostic.labels[0].span if diagnostic.labels else Span("", 0, 0)
