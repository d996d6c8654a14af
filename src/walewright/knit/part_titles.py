"""What the paragraphs of a piece's parts are called."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.counted.model import SizedOpening, SizedPiece
from walewright.counted.parts import SizedPart
from walewright.design.model import Piece
from walewright.knit.parting import place
from walewright.knit.steps import Words
from walewright.report.said import said


def of_part(piece: Piece, sized: SizedPiece, part: SizedPart) -> Words:
    """Its own rows."""
    if part.whole:
        return said("whole-width")
    side, nth = place(part)
    return said("nth-part", number=nth) if nth else said(f"{side}-{_word(piece, sized, part)}")


def returned_to(piece: Piece, sized: SizedPiece, part: SizedPart) -> Words:
    """What is done as it is turned to."""
    side, nth = place(part)
    return said("return-to-nth", number=nth) if nth else said(f"return-to-{_word(piece, sized, part)}", side=side)


def parted_for(openings: Sequence[SizedOpening]) -> Words:
    """What is done where the width parts."""
    if len(openings) == 1:
        return said("part-for", opening=openings[0].name)
    return said("part-for/several", openings=tuple(o.name for o in openings))


def closed(openings: Sequence[SizedOpening]) -> Words:
    """What is done where parts rejoin."""
    if len(openings) == 1:
        return said("close", opening=openings[0].name)
    return said("close/several", openings=tuple(o.name for o in openings))


def _word(piece: Piece, sized: SizedPiece, part: SizedPart) -> str:
    """Parts beside one gap in the middle, to the top, are halves."""
    (opening, *others) = (gap for gap in (part.left, part.right) if gap is not None)
    beside = others or [o for o in sized.openings if o != opening and o.row < opening.to_row and opening.row < o.to_row]
    off_centre = any(any(o.centre) for o in piece.openings if o.name == opening.name)
    return "part" if opening.rejoins or off_centre or beside else "half"
