"""The table of sizes: the bodies they are to fit, the finished measurements as counted, and the ease between them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from walewright.design.model import Design, EdgeName, Measurement
from walewright.pages.figures import cm, inches, length, listed, sentence, unit
from walewright.pages.measures import MeasuredPiece, name_of, stitches_at
from walewright.pages.model import Cell, Row, RowGroup, SizeTable

Finished = tuple[str, str, tuple[float, ...]]
"""(piece, what, cm in each size)"""

ROUND_THE_CHEST = ("bust", "chest")
"""Names of the body measurement that a garment closed below the arms goes round."""


def size_table(design: Design, pieces: tuple[MeasuredPiece, ...], units: str) -> SizeTable:
    """To fit, from the source's size rows so marked; finished, from the counts; ease, where both are known."""
    to_fit = tuple(Row(sentence(m.name), _cells(m.values, units)) for m in design.measurements if m.to_fit)
    finished = tuple(Row(label, _cells(values, units)) for label, values in _finished(design, pieces))
    between = tuple(Row(label, _cells(values, units)) for label, values in ease(design, pieces))
    named = (("To fit", to_fit), ("Finished", finished), ("Ease: finished less body", between))
    return SizeTable(f"Sizes in {unit(units)}", design.sizes, tuple(RowGroup(title, rows) for title, rows in named if rows))


def size_notes(design: Design, units: str) -> tuple[str, ...]:
    """What the finished measurements are, and where the bodies' come from."""
    sources: dict[str, list[str]] = {}
    for m in design.measurements:
        if m.source:
            sources.setdefault(m.source, []).append(name_of(m.name))
    credits = (f"{sentence(listed(names))}: {source.removeprefix('Source: ').rstrip('.')}." for source, names in sources.items())
    return (seam_note(design, units), *credits)


def seam_note(design: Design, units: str) -> str:
    """What is measured, and what a seam takes of it."""
    note = "Finished measurements are those of the pieces as knitted and blocked, before seaming."
    if not any(join.way == "sewn" for join in design.joins):
        return note
    widths = sorted({2 / design.fabric(p.fabric).stitches_per_cm for p in design.pieces})
    in_cm, in_inches = f"{listed(list(dict.fromkeys(cm(w, 0.1) for w in widths)))} cm", f"{listed([inches(w) for w in widths])} in"
    told = {"cm": in_cm, "in": in_inches, "both": f"{in_cm} ({in_inches})"}[units]
    return f"{note} A sewn seam takes one stitch of each side into it: about {told} in all."


def _cells(values: tuple[float, ...], units: str) -> tuple[Cell, ...]:
    return tuple(Cell(*length(v, units)) for v in values)


# ----------------------------------------------------------------- all round


@dataclass(frozen=True, slots=True)
class Round:
    """Pieces that are closed to a tube as far as `level`, and its circumference there in cm."""

    pieces: tuple[str, ...]
    level: str
    values: tuple[float, ...]


def rounds(design: Design, pieces: tuple[MeasuredPiece, ...]) -> tuple[Round, ...]:
    """What goes round a body: a piece joined to itself, two joined at both sides, or a back with its fronts."""
    by_name = {p.piece.name: p for p in pieces}
    found: list[Round] = []
    fronts: dict[str, list[str]] = {}
    taken: set[str] = set()
    for join in design.joins:
        if len(join.one) != 1 or len(join.other) != 1:
            continue
        names = (join.one[0].piece, join.other[0].piece)
        ends = [_seam_end(by_name[e.piece], e) for e in (join.one[0], join.other[0])]
        if names[0] == names[1]:
            if ends[0] is not None and names[0] not in taken:
                found.append(_round(by_name, (names[0],), ends[0]))
                taken.add(names[0])
            continue
        if ends[0] is None or ends[1] is None or taken & set(names):
            continue
        both = [_on_both(by_name[e.piece], e) for e in (join.one[0], join.other[0])]
        if all(both):
            found.append(_round(by_name, names, ends[0]))
            taken |= set(names)
        elif any(both):
            back, front = names if both[0] else (names[1], names[0])
            fronts.setdefault(back, []).append(front)
            if len(fronts[back]) == 2:
                found.append(_round(by_name, (back, *fronts[back]), ends[0] if both[0] else ends[1]))
                taken |= {back, *fronts[back]}
    return tuple(found)


def _seam_end(whole: MeasuredPiece, edge: EdgeName) -> str | None:
    """The level where a seam along an outer edge of the piece comes to its end."""
    runs = (*whole.piece.right, *whole.piece.left)
    return next((run.to_level for run in reversed(runs) if run.name == edge.edge), None)


def _on_both(whole: MeasuredPiece, edge: EdgeName) -> bool:
    return all(any(r.name == edge.edge for r in runs) for runs in (whole.piece.left, whole.piece.right))


def _round(by_name: dict[str, MeasuredPiece], names: tuple[str, ...], level: str) -> Round:
    wholes = [by_name[name] for name in names]
    values = []
    for size in range(len(wholes[0].sized)):
        total = 0.0
        for whole in wholes:
            # The level is one of the first piece's; another has its seam's end at the same height.
            rows = dict(whole.sized[size].levels)
            row = rows.get(level, min(wholes[0].sized[size].row(level), whole.sized[size].rows))
            total += whole.grids[size].wide(stitches_at(whole.sized[size], row), row)
        values.append(total)
    return Round(names, level, tuple(values))


def ease(design: Design, pieces: tuple[MeasuredPiece, ...]) -> Iterator[tuple[str, tuple[float, ...]]]:
    """Ease where a body measurement of the same name is known: of a level, or round the chest below the arms."""
    for at in rounds(design, pieces):
        body = _body(design, at)
        if body is not None:
            values = tuple(a - b for a, b in zip(at.values, body.values, strict=True))
            yield f"{sentence(body.name)}: all round at {name_of(at.level)}", values


def _body(design: Design, at: Round) -> Measurement | None:
    to_fit = [m for m in design.measurements if m.to_fit]
    named = next((m for m in to_fit if m.name == at.level), None)
    if named is not None or len(at.pieces) < 2:
        return named
    return next((m for m in to_fit if m.name in ROUND_THE_CHEST), None)


# ----------------------------------------------------------------- rows of the table


def _finished(design: Design, pieces: tuple[MeasuredPiece, ...]) -> Iterator[tuple[str, tuple[float, ...]]]:
    all_round = rounds(design, pieces)
    for at in all_round:
        name = "All round" if len(at.pieces) > 1 else f"{sentence(at.pieces[0])}: all round"
        yield f"{name}, at {name_of(at.level)}", at.values
    told = {name for at in all_round if len(at.pieces) > 1 for name in at.pieces}
    yield from _merged([f for p in pieces for f in _of_piece(p, with_widths=p.piece.name not in told)])


def _of_piece(piece: MeasuredPiece, with_widths: bool) -> Iterator[Finished]:
    has_whole = any(m.place == "whole" for m in piece.measures)
    repeated = any(s.repeats for s in piece.sized)
    for m in piece.measures:
        wanted = (m.place == "whole" and not repeated) or (m.place == "rise" and not has_whole)
        if wanted or m.place == "neck width" or (with_widths and m.place in ("start", "across")):
            yield piece.piece.name, m.label.lower().removeprefix("whole "), m.values
    if repeated:
        yield piece.piece.name, "length, with all repeats", tuple(_unrolled(piece, i) for i in range(len(piece.sized)))


def _unrolled(piece: MeasuredPiece, size: int) -> float:
    """Length in cm with every repeat knitted."""
    sized, grid = piece.sized[size], piece.grids[size]
    more = sum((r.times - 1) * (grid.height(r.to_row) - grid.height(r.from_row)) for r in sized.repeats)
    return piece.outlines[size].height + piece.edging_cm[size] + more


def _merged(rows: list[Finished]) -> Iterator[tuple[str, tuple[float, ...]]]:
    """Pieces that measure alike share a row."""
    names: dict[tuple[str, tuple[float, ...]], list[str]] = {}
    for piece, what, values in rows:
        names.setdefault((what, tuple(round(v, 3) for v in values)), []).append(name_of(piece))
    for (what, values), pieces in names.items():
        yield f"{sentence(listed(pieces))}: {what}", values
