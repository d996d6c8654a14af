"""The table of sizes: the bodies they are to fit, the finished measurements as counted, and the ease between them."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.counted.bands import depth_cm
from walewright.design.model import Band, Design, PerSize
from walewright.design.model.credit import Credit
from walewright.figures.measures import LaidPiece, MeasuredPiece, lengthened_by, name_of
from walewright.figures.sideways import lying_sideways
from walewright.fit.model import Fit
from walewright.guide.model import Guide
from walewright.guide.numbers import inches, sentence
from walewright.report.said import Said, said
from walewright.report.typography import typographic
from walewright.sheet import fitting
from walewright.sheet.model import Row, RowGroup, SizesTable, TableCell
from walewright.sheet.saddles import Saddle, saddle
from walewright.sheet.shared import shared
from walewright.solve.model import Counts
from walewright.trade.edgings import EDGINGS

FinishedMeasure = tuple[str, Said, tuple[float, ...]]
"""(piece, what, cm in each size)"""


def size_table(
    guide: Guide, design: Design, counts: Counts, pieces: tuple[MeasuredPiece, ...], fit: Fit | None, units: str
) -> SizesTable:
    """To fit, from the source's size rows so marked; finished, from the knitted garment; ease, where both are known."""
    to_fit = tuple(Row(sentence(m.name), _cells(guide, m.values, units)) for m in design.measurements if m.to_fit)
    finished = tuple(Row(label, _cells(guide, values, units)) for label, values in _finished(guide, design, counts, pieces, fit))
    between = tuple(
        Row(label, tuple(TableCell(*guide.difference(*pair, units)) for pair in zip(made, body, strict=True)))
        for label, made, body in (fitting.compared(guide, fit) if fit is not None else ())
    )
    named = (("sizes/to-fit", to_fit), ("sizes/finished", finished), ("sizes/ease", between))
    groups = tuple(RowGroup(guide.say(title), rows) for title, rows in named if rows)
    return SizesTable(guide.say("sizes", unit=guide.say(f"sizes/{units}")), design.sizes, groups)


def size_notes(guide: Guide, design: Design, fit: Fit | None, units: str) -> tuple[str, ...]:
    """What the finished measurements are, what passes where, where buttons go if nothing is joined, and where the bodies' come
    from."""
    rows: dict[Credit, list[str]] = {}
    for m in design.measurements:
        if m.credit is not None:
            rows.setdefault(m.credit, []).append(name_of(m.name))
    credits = (
        guide.say("credit/of", rows=sentence(guide.listed(names)), credit=credit_words(guide, credit))
        for credit, names in rows.items()
    )
    return (
        _to_choose(guide, design, fit, units),
        seam_note(guide, design, fit, units),
        # Two openings of a pair say the same.
        *dict.fromkeys(fitting.notes(guide, fit, units) if fit is not None else ()),
        # Where pieces are joined, it stands where the buttons are sewn on.
        *(() if design.joins else fitting.buttons_notes(guide, fit, units)),
        *credits,
    )


CLASSIC_CM, LOOSE_CM = (5, 10), (10, 15)
"""Ease round the bust of a classic and of a loose fit: 2 to 4 and 4 to 6 inches, Craft Yarn Council, fit and ease."""


def _to_choose(guide: Guide, design: Design, fit: Fit | None, units: str) -> str:
    """How a size is chosen: of what fits a body by another one, round a body with what ease does. Empty for a single size."""
    if len(design.sizes) == 1:
        return ""
    eased = [ease.fits for ease in fit.eases if ease.girth is not None and ease.girth.body] if fit is not None else []
    worn = guide.say("sizes/chest" if eased[0] == "chest" else "sizes/bust") if eased else ""
    classic, loose = (
        guide.say(f"told/{units}", cm=guide.say("span", low=low, high=high), inches=guide.say("span", low=a, high=b))
        for (low, high), (a, b) in ((CLASSIC_CM, (2, 4)), (LOOSE_CM, (4, 6)))
    )
    fits = any(m.body for m in design.measurements) or (fit is not None and bool(fit.girths))
    return guide.say("sizes/choose", worn=worn, classic=classic, loose=loose) if fits else guide.say("sizes/choose-cloth")


def credit_words(guide: Guide, credit: Credit) -> str:
    """Where a row's figures are from."""
    first, rest = shared(tuple(map(typographic, credit.published)), "; ")
    unit, numbers = shared(rest, " ") if first else ("", rest)
    told = (guide.say("credit/shared", first=first, unit=unit, rest=numbers),) if first else rest
    return guide.say("credit", published=told, recalled=credit.recalled, own=tuple(map(name_of, credit.own)))


def seam_note(guide: Guide, design: Design, fit: Fit | None, units: str) -> str:
    """What is measured, and what a seam takes of it; of seams nothing where nothing is joined, nor of girths where none is."""
    note = guide.say("sizes/as-knitted", joined=bool(design.joins), round=fit is not None and bool(fit.girths))
    if not any(join.way == "sewn" for join in design.joins):
        return note
    widths = sorted({2 / design.fabric(p.fabric).stitches_per_cm for p in design.pieces})
    in_cm = guide.listed(list(dict.fromkeys(guide.cm(w, 0.1) for w in widths)))
    in_inches = guide.listed([inches(w) for w in widths])
    return guide.say("sizes/seamed", note=note, told=guide.say(f"told/{units}", cm=in_cm, inches=in_inches))


def _cells(guide: Guide, values: tuple[float, ...], units: str) -> tuple[TableCell, ...]:
    return tuple(TableCell(*guide.length(v, units)) for v in values)


# ----------------------------------------------------------------- rows of the table


def _finished(
    guide: Guide, design: Design, counts: Counts, pieces: tuple[MeasuredPiece, ...], fit: Fit | None
) -> Iterator[tuple[str, tuple[float, ...]]]:
    if fit is not None:
        yield from fitting.finished(guide, fit)
    round_them = {name for g in fit.girths for name in g.over} if fit is not None else set()
    across = _sideways(design, fit)
    rows = [
        row
        for p in pieces
        for row in (
            _across(design, p)
            if p.piece.name in across
            else _of_piece(design, counts, p, p.piece.name not in round_them, saddle(design, pieces, p.piece.name))
        )
    ]
    yield from _merged(guide, rows)


def _sideways(design: Design, fit: Fit | None) -> frozenset[str]:
    """Pieces whose rows run up and down when they are worn: what goes round lies along the ends of their rows."""
    levels = {p.name: {level.name for level in p.levels} for p in design.pieces}
    girths = fit.girths if fit is not None else ()
    return lying_sideways(design) | {g.piece for g in girths if g.piece in levels and g.at not in levels[g.piece]}


def _across(design: Design, piece: MeasuredPiece) -> Iterator[FinishedMeasure]:
    """Of a piece that is worn with its rows up and down how long it is then: its widest row. How far its rows go on is a girth, or
    reaches from hand to hand."""
    widths = [m.values for m in piece.measures if m.place in ("start", "across")]
    own = {run.name for run in (*piece.piece.left, *piece.piece.right)}
    bands = [b for b in design.bands for e in b.along if e.piece == piece.piece.name and e.edge in own and _ends_it(design, b)]
    named = said("measure/as-worn", bands=tuple(dict.fromkeys(name_of(b.edging) for b in bands)))
    yield piece.piece.name, named, tuple(max(of) for of in zip(*widths, strict=True))
    yield from ((piece.piece.name, m.named, m.values) for m in piece.measures if m.place == "worn")


def _ends_it(design: Design, band: Band) -> bool:
    """Whether the band makes what it hangs on longer: it lies neither round a neck of several pieces nor turned in."""
    return len({e.piece for e in band.along}) == 1 and not EDGINGS[design.edging(band.edging).kind].turned_in


def _of_piece(
    design: Design, counts: Counts, piece: MeasuredPiece, with_widths: bool, on: Saddle | None
) -> Iterator[FinishedMeasure]:
    has_whole = any(m.place == "whole" for m in piece.measures)
    repeated = any(p.sized.repeats for p in piece.laid)
    for m in piece.measures:
        if m.place == "whole" and not repeated and lengthened_by(design, piece.piece):
            yield piece.piece.name, *_with_bands(design, counts, piece, m.values)
            continue
        if m.place == "whole" and not repeated and on is not None:
            yield piece.piece.name, said("measure/length-saddle", length=m.named, saddle=name_of(on.called)), on.with_it(m.values)
            continue
        wanted = (m.place == "whole" and not repeated) or (m.place == "rise" and not has_whole)
        if wanted or m.place in ("neck width", "worn") or (with_widths and m.place in ("start", "across")):
            yield piece.piece.name, m.named, m.values
    if repeated:
        yield piece.piece.name, said("measure/length-unrolled"), tuple(map(_unrolled, piece.laid))


def _with_bands(design: Design, counts: Counts, piece: MeasuredPiece, bare: PerSize) -> tuple[Said, PerSize]:
    """The length with what is hung on its ends: a scarf has a hem at both."""
    of = piece.piece
    longer = lengthened_by(design, of)
    depths_of = ((of.start_edging, [p.of.edging_cm for p in piece.laid]), (of.end_edging, [p.of.end_cm for p in piece.laid]))
    edged = [n for n, cm in depths_of if n and any(cm)]
    names = tuple(dict.fromkeys(map(name_of, (*edged, *(b.edging for b in longer)))))
    sized = [{band.name: band for band in garment.bands} for garment in counts.sizes]
    depths = [tuple(depth_cm(design, of_size[b.name]) for of_size in sized) for b in longer]
    both = len(edged) + len(longer) == 2 and len(names) == 1
    named = said("measure/length-both", edging=names) if both else said("measure/length", edging=names, one_end=False, once=False)
    return named, tuple(map(sum, zip(bare, *depths, strict=True)))


def _unrolled(piece: LaidPiece) -> float:
    """Length in cm with every repeat knitted."""
    of = piece.of
    return piece.full_height + sum((r.times - 1) * (of.height_cm(r.to_row) - of.height_cm(r.from_row)) for r in of.sized.repeats)


def _merged(guide: Guide, rows: list[FinishedMeasure]) -> Iterator[tuple[str, tuple[float, ...]]]:
    """Pieces that measure alike share a row."""
    names: dict[tuple[Said, tuple[float, ...]], list[str]] = {}
    for piece, what, values in rows:
        names.setdefault((what, tuple(round(v, 3) for v in values)), []).append(name_of(piece))
    for (what, values), pieces in names.items():
        yield guide.say("sizes/of-pieces", pieces=sentence(guide.listed(pieces)), what=what), values
