"""What came of a knitter's figures: drawings, what they come to on body and bed, and messages."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import TYPE_CHECKING, Any

from walewright.design.reading.given import read_measure
from walewright.figures.measures import name_of
from walewright.guide.numbers import cm, sentence
from walewright.report.model import Diagnostic, Severity
from walewright.report.render import unique
from walewright.report.said import Said
from walewright.report.wording import phrased, worded
from walewright.serve.model import DrawnPiece, PageResult, ResultTable, ToldMistake
from walewright.sheet import fitting
from walewright.sheet.regrading import source_of

if TYPE_CHECKING:
    from walewright.cli.formats.format import Pattern
    from walewright.design.model import Design
    from walewright.guide.model import Guide
    from walewright.pipeline import Outcome
    from walewright.report.wording import Language

MOST_TOLD = 12
"""Messages that are shown."""


def result(pattern: Pattern, words: Language, every_size: Design, given: Mapping[str, Any]) -> PageResult:
    """Of an outcome, proven or not. `every_size`: the design in all its sizes; `given` as `design.Changes` has it."""
    outcome, guide = pattern.outcome, pattern.guide
    told = tuple(_told(d, words) for d in unique(outcome.diagnostics))
    first = tuple(sorted(told, key=lambda one: not one.error))[:MOST_TOLD]
    nearest = tuple(_nearest(guide, every_size, given))
    if not outcome.proven:
        return PageResult("refused", first, nearest)
    tables = (*nearest, *_worn(guide, outcome), *_supplies(guide, outcome), *_changed(pattern))
    return PageResult("proven", first, tables, tuple(_drawings(pattern)))


def refused(told: tuple[Diagnostic, ...], words: Language) -> PageResult:
    """Of figures that do not read."""
    return PageResult("refused", tuple(_told(d, words) for d in told))


def _told(diagnostic: Diagnostic, words: Language) -> ToldMistake:
    """A message without the option and the lines of source that it comes of: of the body, the bed and the yarn. Only what is said
    of something given proposes a change, for the source is not the knitter's."""
    found = worded(replace(diagnostic, given=None, labels=()), words)
    mine = diagnostic.given is not None
    helps = tuple(_help(one, diagnostic, words, text) for one, text in zip(diagnostic.helps, found.helps, strict=False))
    error = diagnostic.severity is Severity.ERROR
    return ToldMistake(error, found.message, found.notes, helps if mine and error else ())


def _help(help_: Said, diagnostic: Diagnostic, words: Language, text: str) -> str:
    """The help as it is; where it says how far something may go, without the option that says so."""
    if help_.key != "may-be":
        return text
    what = dict(diagnostic.facts)["what"]
    return phrased(Said("may-be-here", (("what", what), *help_.facts)), words)


def _nearest(guide: Guide, design: Design, given: Mapping[str, Any]) -> Iterator[ResultTable]:
    """For each measurement given, the size of the pattern that comes nearest to it."""
    rows = []
    for row in source_of(design).measurements:
        own = read_measure(given.get("measures", {}).get(row.name, ""))
        if own is not None and len(design.sizes) > 1:
            at = min(range(len(row.values)), key=lambda i, values=row.values, own=own: abs(values[i] - own))  # type: ignore[misc]
            rows.append((sentence(row.printed or row.name), cm(own, 0.1), name_of(design.sizes[at]), cm(row.values[at])))
    if rows:
        heads = tuple(guide.say(f"serve/{head}") for head in ("measure", "yours-cm", "nearest-size", "its-cm"))
        yield ResultTable(guide.say("serve/nearest"), heads, tuple(rows))


def _worn(guide: Guide, outcome: Outcome) -> Iterator[ResultTable]:
    """What goes round and how far it reaches; the ease."""
    if outcome.fit is None:
        return
    for title, rows in (
        ("serve/finished", fitting.finished(guide, outcome.fit)),
        ("serve/ease", fitting.eases(guide, outcome.fit)),
    ):
        told = tuple((label, cm(values[0])) for label, values in rows)
        if told:
            yield ResultTable(guide.say(title), (guide.say("serve/measure"), guide.say("serve/cm")), told)


def _supplies(guide: Guide, outcome: Outcome) -> Iterator[ResultTable]:
    """Needles of the bed, and yarn."""
    design, _, _, proof = outcome.result()
    size = proof.sizes[0]
    bed = design.machine
    heads = tuple(guide.say(f"serve/{head}") for head in ("piece", "needles", "of-the-bed"))
    needles = tuple(
        (
            sentence(p.name),
            guide.needles(p.first_needle, p.last_needle),
            guide.say("serve/used", used=p.most_stitches, there=bed.needles),
        )
        for p in size.pieces
        if any(piece.name == p.name for piece in design.pieces)
    )
    yield ResultTable(guide.say("serve/on-the-bed"), heads, needles)
    yarn = tuple((sentence(use.label), str(use.balls), f"{use.grams:.0f}") for use in size.yarn if use.kind == "yarn")
    yield ResultTable(guide.say("serve/to-buy"), tuple(guide.say(f"serve/{h}") for h in ("yarn-head", "balls", "grams")), yarn)


def _changed(pattern: Pattern) -> Iterator[ResultTable]:
    """What was given, beside the source's own."""
    table = pattern.sheet.regraded
    if table is not None:
        yield ResultTable(table.caption, table.heads, table.rows)


def _drawings(pattern: Pattern) -> Iterator[DrawnPiece]:
    from walewright.sheet.render import picture

    for part in pattern.sheet.parts:
        if part.drawing is not None:
            rows = [row for group in part.legend.groups for row in group.rows] if part.legend is not None else []
            legend = tuple((row.key, row.label, row.cells[0].text) for row in rows)
            yield DrawnPiece(part.title, picture(part.drawing), legend)
