"""How hands do what a sentence tells, where there is more than one way: what a step's text fields may say."""

from __future__ import annotations

from typing import Literal

from walewright.knit.move_kinds import CrossingWay
from walewright.knit.needle import Side

EndsShaped = Literal["both ends", "left end", "right end"]

ONE_END: dict[Side, EndsShaped] = {"left": "left end", "right": "right end"}

CarriageWay = CrossingWay | Literal["held"]
"""How the carriage comes somewhere without knitting: past loops in work, or past such as are held, where no other is."""

YarnLeft = Literal["", "carried"]
"""What becomes of the yarn before: broken off, or left hanging at its side, to be taken up again."""

SpreadChange = Literal["two together", "an empty needle"]

MarkWhen = Literal["begin", "end"]

SayManner = Literal["note", "by hand"]


FoldOnto = Literal["the same needles", "all needles"]

FoldWay = Literal["in front", "behind"]
"""in front: purl sides together | behind: knit sides together."""

FoldBegun = Literal["on ravel cord", "on loops"]
"""on ravel cord: the first row is the garment's | on loops: it is that of an edging, knitted on loops of the garment."""

LinkedOver = Literal["empty needles", "the other piece"]

Sooner = Literal["", "disturbed"]
"""disturbed: a wale too whose stitch is about to be moved, cast off, held, taken off or hung with another."""

LoopsOpen = Literal["", "open", "on cord", "cord"]
"""open: each loop is hung on a needle | on cord: those of a first row, and its ravel cord is pulled out | cord: that is pulled out
behind stitches that are picked up along it, more or fewer than it has loops."""

EdgeStretchOf = Literal["", "rows", "stitches"]
"""What a stretch of an edge is counted in; empty where all of it is meant."""

SeamTurn = Literal["", "own", "next", "round"]
"""Of seams at one copy after the other: own: each copy to that of the same number | next: each to the next one | round: and the
last one to the first. Empty where every seam is told by itself."""

SeamEdges = Literal["", "open", "no tail", "at tail", "beyond"]
"""open: both are open loops, which no seam holds | no tail: of a graft, neither is a last row, where a tail hangs | at tail: a
graft begins where the tail hangs | beyond: what one side is longer lies along the strips."""

SeamChain = Literal["", "off", "on", "mixed"]
"""How the edges of a seam have several stitches at once: cast off, cast on, or both."""

SeamThread = Literal["", "tail", "new", "either"]
"""What a seam is sewn with: a tail that hangs at an end of it | a new length of yarn | at some copies or in some sizes the one,
else the other. Empty where loops are grafted."""
