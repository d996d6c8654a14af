"""The closed sets that operations name: what planner, bed and reader mean by the same word. They are said here once more, apart
from the tables of the trade, because the bed and the reader know nothing of those."""

from __future__ import annotations

from typing import Literal

CastOnWay = Literal["comb", "hem", "e-wrap", "chain"]

CrossingWay = Literal["", "slip", "lift", "hold"]
"""How the carriage passes loops without knitting them: slip: set so | lift: taken off, and put on at the other side | hold: with
every needle right out, those that were in work pushed back afterwards. Empty: in any way that there is, or past no loop in work."""

HungFace = Literal["purl", "knit"]
"""A side of the fabric."""

HungPart = Literal["whole", "left", "centre", "right"]
"""A part of an edge, as the piece hung on the bed."""

HungEnd = Literal["bottom", "top", "left", "right"]
"""An end of an edge: of rows the bottom or the top one, of stitches the left or the right one, as the piece hung on the bed."""

SeamEnd = Literal[HungEnd, ""]
"""The end at which a seam comes to an edge; empty: it has no other side."""

NamedRows = Literal["outer", "left", "right", "inner"]
"""Which edges of rows: the outer ones of both sides, one of them, or those of the parted halves."""

SeamWay = Literal["sewn", "gathered", "pleated", "grafted"]

NEXT_COPY = -1
"""In place of the number of a copy: each copy of the block takes the next one, the last copy the first."""
