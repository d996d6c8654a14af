"""How the pattern was checked: the proof as tables."""

from __future__ import annotations

from collections.abc import Iterable

from walewright.figures.measures import name_of
from walewright.guide.model import Guide
from walewright.guide.numbers import CM_PER_INCH, sentence
from walewright.proof.model import JoinProof, PieceProof, Proof, SewnEdge, SizeProof
from walewright.report.said import Said, said
from walewright.sheet.model import Checked, Row, RowGroup, SizesTable, TableCell

ABSENT = TableCell("–")


def checked(guide: Guide, proof: Proof, units: str) -> Checked:
    """The proof's tables. Lengths in cm, or in inches where `units` is "in"."""
    sizes = tuple(name_of(s.size) for s in proof.sizes)
    names = dict.fromkeys(p.name for s in proof.sizes for p in s.pieces)
    pieces = tuple(_piece_table(guide, proof, name, sizes, units) for name in names if _measured(proof, name))
    return Checked(_words(guide, proof), pieces, _whole_table(guide, proof, sizes, units))


def _words(guide: Guide, proof: Proof) -> tuple[str, ...]:
    count = len(proof.sizes)
    loops, moves = (_thousands(sum(getattr(s, of) for s in proof.sizes)) for of in ("loops", "operations"))
    unread = tuple(s.size for s in proof.sizes if not s.read_back)
    return (
        guide.say("checked/one" if count == 1 else "checked/each", sizes=count, loops=loops, moves=moves),
        guide.say("checked/tables"),
        guide.say("checked/unread", sizes=unread) if unread else guide.say("checked/read"),
    )


def _measured(proof: Proof, name: str) -> bool:
    return any(p.measures for s in proof.sizes for p in s.pieces if p.name == name)


def _piece(size: SizeProof, name: str) -> PieceProof | None:
    return next((p for p in size.pieces if p.name == name), None)


def _piece_table(guide: Guide, proof: Proof, name: str, sizes: tuple[str, ...], units: str) -> SizesTable:
    pieces = [_piece(s, name) for s in proof.sizes]
    keys = dict.fromkeys(m.key for p in pieces if p for m in p.measures)
    rows = []
    for key in keys:
        cells = []
        for piece in pieces:
            measure = next((m for m in piece.measures if m.key == key), None) if piece else None
            if measure is None:
                cells.append(ABSENT)
            else:
                cells.append(TableCell(_length(measure.knitted_cm, units), _length(measure.wanted_cm, units)))
        rows.append(Row(sentence(guide.measure(key)), tuple(cells)))
    unit = guide.say("sizes/in" if units == "in" else "sizes/cm")
    return SizesTable(guide.say("checked/piece", piece=sentence(name), unit=unit), sizes, (RowGroup("", tuple(rows)),))


def _whole_table(guide: Guide, proof: Proof, sizes: tuple[str, ...], units: str) -> SizesTable:
    def row(key: str, cells: Iterable[TableCell]) -> Row:
        return Row(guide.say(f"checked/{key}"), tuple(cells))

    bed = (
        row("needles", (_needles(s) for s in proof.sizes)),
        row("most", (TableCell(str(max((p.most_stitches for p in s.pieces), default=0))) for s in proof.sizes)),
        row("loops", (TableCell(_thousands(s.loops)) for s in proof.sizes)),
        row("words", (TableCell(guide.say("checked/yes" if s.read_back else "checked/no")) for s in proof.sizes)),
    )
    groups = [RowGroup(guide.say("checked/bed"), bed)]
    joins = dict.fromkeys(j.join for s in proof.sizes for j in s.joins)
    if joins:
        groups.append(RowGroup(guide.say("checked/seams"), tuple(_seam(guide, proof, join, units) for join in joins)))
    return SizesTable(guide.say("checked/whole"), sizes, tuple(groups))


def _needles(size: SizeProof) -> TableCell:
    if not size.pieces:
        return ABSENT
    widest = max(size.pieces, key=lambda p: p.most_stitches)
    return TableCell(widest.first_needle, widest.last_needle)


def _seam(guide: Guide, proof: Proof, join: int, units: str) -> Row:
    """A join of the design, by its number; of its seams, which are alike on both sides, the first."""
    joins = [next((j for j in s.joins if j.join == join), None) for s in proof.sizes]
    in_rows = all(j is None or (j.one_rows is not None and j.other_rows is not None) for j in joins)
    return Row(
        sentence(join_words(guide, next(j for j in joins if j is not None))),
        tuple(ABSENT if j is None else _sides(j, in_rows, units) for j in joins),
        note=guide.say("checked/rows" if in_rows else "checked/in" if units == "in" else "checked/cm"),
    )


def join_words(guide: Guide, join: JoinProof) -> str:
    """Which edges a join puts together."""
    one, other = (tuple(edge_words(guide, edge) for edge in side) for side in (join.one, join.other))
    return guide.say("join/of-two", one=one, other=other) if other else guide.say("join/upon-itself", one=one)


def edge_words(guide: Guide, edge: SewnEdge) -> Said:
    """An edge with its piece, and which copy of it."""
    piece, named = name_of(edge.piece), guide.edge(edge.edge)
    return (
        said("join/edge-of-copy", piece=piece, edge=named, copy=edge.copy)
        if edge.copy
        else said("join/edge", piece=piece, edge=named)
    )


def _sides(join: JoinProof, in_rows: bool, units: str) -> TableCell:
    if in_rows:
        return TableCell(str(join.one_rows), str(join.other_rows))
    return TableCell(_length(join.one_cm, units), _length(join.other_cm, units))


def _length(value_cm: float, units: str) -> str:
    return f"{value_cm / CM_PER_INCH:.2f}" if units == "in" else f"{value_cm:.1f}"


def _thousands(value: int) -> str:
    return f"{value:,}".replace(",", "\u202f")
