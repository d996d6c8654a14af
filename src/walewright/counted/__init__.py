"""A counted piece looked at in one place: the piece in one size with its rows, and every question about it that others ask.

`counted_piece` makes the view; what is asked of it stands in `piece` (fabric, yarn, centimetres at a row), `needles` (which have
stitches), `rows`, `edges` (their lengths), `outline` and `ribs`. Stitches and rows are those of `counted.model`; everything is a
plain number of one size. The bed asks nothing here: it measures the fabric that it made, and is the check.
"""

from walewright.counted.piece import CountedPiece, counted_piece

__all__ = ["CountedPiece", "counted_piece"]
