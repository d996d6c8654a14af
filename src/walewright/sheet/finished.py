"""The table of sizes: the bodies they are to fit, the finished measurements as counted, and the ease between them."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.design.model import Design
from walewright.figures.measures import MeasuredPiece, name_of
from walewright.fit.model import Fit
from walewright.guide.numbers import cm, inches, length, listed, sentence, unit
from walewright.sheet import fitting
from walewright.sheet.model import Row, RowGroup, SizesTable, TableCell

FinishedMeasure = tuple[str, str, tuple[float, ...]]
"""(piece, what, cm in each size)"""


def size_table(design: Design, pieces: tuple[MeasuredPiece, ...], fit: Fit | None, units: str) -> SizesTable:
    """To fit, from the source's size rows so marked; finished, from the knitted garment; ease, where both are known."""
    to_fit = tuple(Row(sentence(m.name), _cells(m.values, units)) for m in design.measurements if m.to_fit)
    finished = tuple(Row(label, _cells(values, units)) for label, values in _finished(pieces, fit))
    between = tuple(Row(label, _cells(values, units)) for label, values in (fitting.eases(fit) if fit is not None else ()))
    named = (("To fit", to_fit), ("Finished", finished), ("Ease: finished less body", between))
    return SizesTable(f"Sizes in {unit(units)}", design.sizes, tuple(RowGroup(title, rows) for title, rows in named if rows))


def size_notes(design: Design, fit: Fit | None, units: str) -> tuple[str, ...]:
    """What the finished measurements are, what passes where, and where the bodies' come from."""
    sources: dict[str, list[str]] = {}
    for m in design.measurements:
        if m.source:
            sources.setdefault(m.source, []).append(name_of(m.name))
    credits = (f"{sentence(listed(names))}: {source.removeprefix('Source: ').rstrip('.')}." for source, names in sources.items())
    return (seam_note(design, units), *(fitting.notes(fit, units) if fit is not None else ()), *credits)


def seam_note(design: Design, units: str) -> str:
    """What is measured, and what a seam takes of it."""
    note = "Finished measurements are those of the pieces as knitted and blocked, before seaming; what is all round is seamed."
    if not any(join.way == "sewn" for join in design.joins):
        return note
    widths = sorted({2 / design.fabric(p.fabric).stitches_per_cm for p in design.pieces})
    in_cm, in_inches = f"{listed(list(dict.fromkeys(cm(w, 0.1) for w in widths)))} cm", f"{listed([inches(w) for w in widths])} in"
    told = {"cm": in_cm, "in": in_inches, "both": f"{in_cm} ({in_inches})"}[units]
    return f"{note} A sewn seam takes one stitch of each side into it: about {told} in all."


def _cells(values: tuple[float, ...], units: str) -> tuple[TableCell, ...]:
    return tuple(TableCell(*length(v, units)) for v in values)


# ----------------------------------------------------------------- rows of the table


def _finished(pieces: tuple[MeasuredPiece, ...], fit: Fit | None) -> Iterator[tuple[str, tuple[float, ...]]]:
    if fit is not None:
        yield from fitting.finished(fit)
    round_them = {name for g in fit.girths for name in g.over} if fit is not None else set()
    yield from _merged([f for p in pieces for f in _of_piece(p, with_widths=p.piece.name not in round_them)])


def _of_piece(piece: MeasuredPiece, with_widths: bool) -> Iterator[FinishedMeasure]:
    has_whole = any(m.place == "whole" for m in piece.measures)
    repeated = any(s.repeats for s in piece.sized)
    for m in piece.measures:
        wanted = (m.place == "whole" and not repeated) or (m.place == "rise" and not has_whole)
        if wanted or m.place == "neck width" or (with_widths and m.place in ("start", "across")):
            yield piece.piece.name, m.named, m.values
    if repeated:
        yield piece.piece.name, "length, with all repeats", tuple(_unrolled(piece, i) for i in range(len(piece.sized)))


def _unrolled(piece: MeasuredPiece, size: int) -> float:
    """Length in cm with every repeat knitted."""
    sized, of = piece.sized[size], piece.counted[size]
    more = sum((r.times - 1) * (of.height_cm(r.to_row) - of.height_cm(r.from_row)) for r in sized.repeats)
    return piece.outlines[size].height + piece.edging_cm[size] + more


def _merged(rows: list[FinishedMeasure]) -> Iterator[tuple[str, tuple[float, ...]]]:
    """Pieces that measure alike share a row."""
    names: dict[tuple[str, tuple[float, ...]], list[str]] = {}
    for piece, what, values in rows:
        names.setdefault((what, tuple(round(v, 3) for v in values)), []).append(name_of(piece))
    for (what, values), pieces in names.items():
        yield f"{sentence(listed(pieces))}: {what}", values
