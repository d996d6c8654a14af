"""Whether the stitches of a piece are as many on both sides of the centre mark, or one more."""

from __future__ import annotations

from typing import Literal

Parity = Literal["even", "odd", "either"]
"""Of the number of stitches across a piece: "odd" has one at the centre, "either" is settled in each size by its widths."""
