"""How the pattern was checked: the proof as tables."""

from __future__ import annotations

from walewright.guide.english.measure_words import measure_words
from walewright.guide.numbers import CM_PER_INCH, sentence
from walewright.proof.model import JoinProof, PieceProof, Proof, SizeProof
from walewright.sheet.model import Checked, Row, RowGroup, SizesTable, TableCell

ABSENT = TableCell("–")


def checked(proof: Proof, units: str) -> Checked:
    """The proof's tables. Lengths in cm, or in inches where `units` is "in"."""
    sizes = tuple(s.size.replace("_", " ") for s in proof.sizes)
    names = dict.fromkeys(p.name for s in proof.sizes for p in s.pieces)
    pieces = tuple(_piece_table(proof, name, sizes, units) for name in names if _measured(proof, name))
    return Checked(_words(proof), pieces, _whole_table(proof, sizes, units))


def _words(proof: Proof) -> tuple[str, ...]:
    count = len(proof.sizes)
    subject = "the garment was" if count == 1 else f"each of the {count} sizes was"
    loops, operations = sum(s.loops for s in proof.sizes), sum(s.operations for s in proof.sizes)
    lines = [
        f"Before these pages were printed, {subject} knitted loop by loop on a needle bed in the computer: "
        f"{_thousands(loops)} loops in {_thousands(operations)} moves of hand and carriage. "
        "No move was made that the machine cannot make, and no loop was left that nothing holds.",
        "The tables below set what was knitted beside what was wanted. Stitches and rows are whole: "
        "the smallest step is one stitch or one row.",
    ]
    unread = [s.size for s in proof.sizes if not s.read_back]
    if unread:
        lines.append(f"The printed words were not read back for: {', '.join(unread)}.")
    else:
        lines.append(
            "Then the printed words themselves were read back by a second reader that knows nothing of the first: what they "
            "tell a knitter to do is what was knitted, move for move, or was knitted in its turn and made the same fabric."
        )
    return tuple(lines)


def _measured(proof: Proof, name: str) -> bool:
    return any(p.measures for s in proof.sizes for p in s.pieces if p.name == name)


def _piece(size: SizeProof, name: str) -> PieceProof | None:
    return next((p for p in size.pieces if p.name == name), None)


def _piece_table(proof: Proof, name: str, sizes: tuple[str, ...], units: str) -> SizesTable:
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
        rows.append(Row(sentence(measure_words(key)), tuple(cells)))
    unit = "inches" if units == "in" else "cm"
    return SizesTable(f"{sentence(name)}: knitted, and wanted in small type, in {unit}", sizes, (RowGroup("", tuple(rows)),))


def _whole_table(proof: Proof, sizes: tuple[str, ...], units: str) -> SizesTable:
    bed = (
        Row("Outermost needles", tuple(_needles(s) for s in proof.sizes)),
        Row(
            "Most stitches on the bed",
            tuple(TableCell(str(max((p.most_stitches for p in s.pieces), default=0))) for s in proof.sizes),
        ),
        Row("Loops", tuple(TableCell(_thousands(s.loops)) for s in proof.sizes)),
        Row("Words read back", tuple(TableCell("yes" if s.read_back else "no") for s in proof.sizes)),
    )
    groups = [RowGroup("On the bed", bed)]
    joins = dict.fromkeys(j.join for s in proof.sizes for j in s.joins)
    if joins:
        groups.append(RowGroup("Seams: one side, and the other in small type", tuple(_seam(proof, join, units) for join in joins)))
    return SizesTable("The whole garment", sizes, tuple(groups))


def _needles(size: SizeProof) -> TableCell:
    if not size.pieces:
        return ABSENT
    widest = max(size.pieces, key=lambda p: p.most_stitches)
    return TableCell(widest.first_needle, widest.last_needle)


def _seam(proof: Proof, join: int, units: str) -> Row:
    """A join of the design, by its number; of its seams, which are alike on both sides, the first."""
    joins = [next((j for j in s.joins if j.join == join), None) for s in proof.sizes]
    in_rows = all(j is None or (j.one_rows is not None and j.other_rows is not None) for j in joins)
    return Row(
        sentence(next(j.text for j in joins if j is not None).replace("_", " ")),
        tuple(ABSENT if j is None else _sides(j, in_rows, units) for j in joins),
        note="rows" if in_rows else ("in" if units == "in" else "cm"),
    )


def _sides(join: JoinProof, in_rows: bool, units: str) -> TableCell:
    if in_rows:
        return TableCell(str(join.one_rows), str(join.other_rows))
    return TableCell(_length(join.one_cm, units), _length(join.other_cm, units))


def _length(value_cm: float, units: str) -> str:
    return f"{value_cm / CM_PER_INCH:.2f}" if units == "in" else f"{value_cm:.1f}"


def _thousands(value: int) -> str:
    return f"{value:,}".replace(",", "\u202f")
