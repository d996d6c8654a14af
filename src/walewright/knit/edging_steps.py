"""Steps of edgings, bands and links: loops hung on, folds, eyelets, ribs latched up."""

from __future__ import annotations

from typing import Literal

from walewright.knit.copies import NONE, Copy
from walewright.knit.manners import EdgeStretchOf, FoldBegun, FoldOnto, FoldWay, LinkedOver, LoopsOpen, Sooner
from walewright.knit.move_kinds import HungEnd, HungFace, HungPart
from walewright.knit.step import Step
from walewright.record import record


@record
class UseLooser(Step):
    """Change to garment yarn `yarn`, or go on with it, at tension `tension`, `by` numbers (least and most, or the one) looser than
    `than`: for a row that knits two layers together. Where the dial's labels are no numbers both are empty: the next looser
    setting. With plates `tension` is one of them, and `by` is empty."""

    yarn: str
    tension: str
    than: str
    by: tuple[int, ...]

    @property
    def setting(self) -> str:
        """The tension as the bed is told it."""
        return self.tension or f"looser than {self.than}"


@record
class EveryOutOfWork(Step):
    """Before anything is cast on: of the needles just brought to work push every `every`th, counted from the left, back out of
    work, but not the last one. `stitches` stay in work. (A mock rib: 2 for 1x1, 3 for 2x1.)"""

    every: int
    stitches: int


@record
class RehangStart(Step):
    """`facing` side ("purl" or "knit") facing, hang the first garment row of `piece` on the needles in work, unravelling the waste
    (`stitches` loops)."""

    piece: str
    stitches: int
    facing: HungFace = "purl"


@record
class PickUpAlong(Step):
    """Pick up `stitches` along `part` of `edge` of `piece` on needles `first`..`last`, its `facing` side to the knitter and the
    edge's `left_end` at the left (see operations.PickUpEdge). `copy`: which of the piece's copies, where that has to be said."""

    piece: str
    edge: str
    part: HungPart
    stitches: int
    first: int
    last: int
    facing: HungFace
    left_end: HungEnd | Literal[""]
    copy: Copy = NONE
    loops: LoopsOpen = ""
    """ "open": as many open loops as there are stitches wait there, and each goes on a needle."""
    stretch: EdgeStretchOf = ""
    """Only a stretch of the edge: "rows" from the counter's `low` to its `high`, or "stitches", those after the `low`th from the
    left up to the `high`th."""
    low: int = 0
    high: int = 0
    per: int = 0
    every: int = 0
    """About `per` stitches for every `every` rows; 0: that is not told."""


@record
class PicotRow(Step):
    """Move every second stitch, beginning with the second from the left and without the last needle, one needle to the right and
    leave the empty needles in work."""


@record
class FoldUp(Step):
    """Fold and hang the first garment row, `loops` of them from left to right. `onto` "the same needles": those it was knitted
    on. "all needles": the needles out of work come back to work, and of the loops of the needles between two of those the last
    goes on the empty needle to its right, the others where they were knitted. `stitches` needles are in work afterwards. `way` "in
    front" (purl sides together) or "behind" (knit sides together). `row`: in place of the first garment row, the one that brought
    the counter there (0: the first). `begun`: the first row is the garment's and hangs "on ravel cord", which is pulled out then,
    or it is the first one of an edging that was begun "on loops" of the garment."""

    loops: int
    onto: FoldOnto
    stitches: int
    way: FoldWay = "in front"
    row: int = 0
    begun: FoldBegun = "on ravel cord"


@record
class HangToLink(Step):
    """Hang `part` of `edge` of `piece`, `stitches` open loops, on needles `first`..`last` with its `facing` ("purl" or "knit") side
    to the knitter and the edge's `left_end` at the left, `over` "empty needles" or "the other piece"."""

    piece: str
    edge: str
    part: HungPart
    stitches: int
    first: int
    last: int
    facing: HungFace
    over: LinkedOver
    left_end: HungEnd
    copy: Copy = NONE


@record
class LatchRib(Step):
    """Drop and re-form on the other face every `every`th wale, `rows` rows deep, from slot `begin` outwards, not the end needles:
    for 3 and 1, first needles L 2 and R 2. The wales are the slots `begin`, `begin` + `every` … and their mirror images -1 - s,
    within the needles in work and without the two end needles."""

    every: int
    begin: int
    rows: int


@record
class LatchInStages(Step):
    """From here on latch the wales of `LatchRib` up whenever the counter reads one of `rows`, each time as far down as they have
    come since the last time. `sooner` "disturbed": a wale too whose stitch is about to be moved, cast off, held, taken off or hung
    with another; else ""."""

    every: int
    begin: int
    rows: tuple[int, ...]
    sooner: Sooner = ""


@record
class LatchPanelInStages(Step):
    """The same within a panel only, on needles `first`..`last`."""

    every: int
    begin: int
    rows: tuple[int, ...]
    first: int
    last: int
    sooner: Sooner = ""


@record
class LatchPanel(Step):
    """The same within a panel only: of the wales that `LatchRib` would take, those on needles `first`..`last`."""

    every: int
    begin: int
    rows: int
    first: int
    last: int
