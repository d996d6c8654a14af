"""What came of a knitter's figures: drawings, what they come to on body and bed, and messages."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from walewright.design.reading.given import read_measure
from walewright.figures.measures import measured, name_of
from walewright.figures.schematic import IN_A_COLUMN, fitting_scale, schematic
from walewright.guide.numbers import cm, sentence
from walewright.report.render import unique
from walewright.serve.given import in_cm
from walewright.serve.model import DrawnPiece, Offer, OfferedRow, PageResult, Posted, ResultTable
from walewright.serve.telling import MOST_TOLD, called, told_of
from walewright.sheet import fitting
from walewright.sheet.legends import legend
from walewright.sheet.regrading import regraded
from walewright.sheet.render import picture

if TYPE_CHECKING:
    from walewright.guide.model import Guide
    from walewright.pipeline import Outcome
    from walewright.report.wording import Language


def result(outcome: Outcome, guide: Guide, words: Language, offer: Offer) -> PageResult:
    """Of an outcome, proven or not."""
    words = called(words, outcome.renamed)
    told = tuple(told_of(d, words, guide, offer) for d in unique(outcome.diagnostics))
    first = tuple(sorted(told, key=lambda one: not one.error))[:MOST_TOLD]
    if not outcome.proven:
        return PageResult("refused", first)
    tables = (*_worn(guide, outcome), *_supplies(guide, outcome), *_changed(guide, outcome))
    return PageResult("proven", first, tables, tuple(_drawings(guide, outcome)), dict(_eases(outcome)))


def hints(guide: Guide, offer: Offer, values: Posted, found: PageResult | None) -> dict[str, str]:
    """For each measurement, the size of the pattern that comes nearest to what is filled in, and the ease that was worked out."""
    return {row.name: text for row in offer.rows if (text := " ".join(_hint(guide, offer, row, values, found)))}


def _hint(guide: Guide, offer: Offer, row: OfferedRow, values: Posted, found: PageResult | None) -> Iterator[str]:
    typed = values.get(f"measure:{row.name}", "")
    own = read_measure(in_cm(typed)) if typed.strip() and not row.counts else None
    if own is not None and len(offer.sizes) > 1:
        at = min(range(len(row.values)), key=lambda i: abs(row.values[i] - own))
        yield guide.say("serve/nearest", size=offer.sizes[at].label, cm=guide.decimal(cm(row.values[at])))
    if found is not None and row.name in found.eases:
        yield guide.say("serve/ease-of", cm=guide.decimal(cm(found.eases[row.name])))


def _eases(outcome: Outcome) -> Iterator[tuple[str, float]]:
    """By the measures of the body that they fit, as the source calls them: a reach, and the tightest of what goes round."""
    by = outcome.renamed.back("value") if outcome.renamed is not None else {}
    yield from ((by.get(name, name), ease) for name, ease in _printed_eases(outcome))


def _printed_eases(outcome: Outcome) -> Iterator[tuple[str, float]]:
    if outcome.fit is None:
        return
    for reach in outcome.fit.reaches:
        if reach.body and reach.fits:
            yield reach.fits, reach.values[0] - reach.body[0]
    for ease in sorted(outcome.fit.eases, key=lambda one: one.ease[0], reverse=True):
        yield ease.fits, ease.ease[0]


def _worn(guide: Guide, outcome: Outcome) -> Iterator[ResultTable]:
    """What goes round and how far it reaches; the ease."""
    if outcome.fit is None:
        return
    made = tuple((label, guide.decimal(cm(values[0]))) for label, values in fitting.finished(guide, outcome.fit))
    ease = tuple((label, guide.difference(a[0], b[0], "cm")[0]) for label, a, b in fitting.compared(guide, outcome.fit))
    for title, told in (("serve/finished", made), ("serve/ease", ease)):
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


def _changed(guide: Guide, outcome: Outcome) -> Iterator[ResultTable]:
    """What was given, beside the source's own."""
    table = regraded(guide, outcome.result()[0], "cm")
    if table is not None:
        yield ResultTable(table.caption, table.heads, table.rows)


def _drawings(guide: Guide, outcome: Outcome) -> Iterator[DrawnPiece]:
    """Each piece once, in the one size there is."""
    design, counts, _, _ = outcome.result()
    pieces = tuple(measured(design, counts, piece.name) for piece in design.pieces)
    at = design.at(0)
    scale = fitting_scale(at, pieces)
    for piece in pieces:
        made = schematic(guide, at, piece, "cm", scale, IN_A_COLUMN)
        letters = legend(guide, piece, design.sizes, "cm", made.lettered)
        rows = [row for group in letters.groups for row in group.rows] if letters is not None else []
        told = tuple((row.key, row.label, row.cells[0].text) for row in rows)
        yield DrawnPiece(sentence(name_of(piece.piece.name)), picture(made.drawing), told)
