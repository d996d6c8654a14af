"""The garment as it is worn: what goes round, how far a sleeve reaches, what stays open and what passes through it.

Lengths are cm in each size, in the order of the design's sizes.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from walewright.design.model import CountPerSize, Origin, PerSize
from walewright.design.model.credit import Credit
from walewright.design.model.per_size import minus
from walewright.glue.model import Chain
from walewright.record import record
from walewright.trade.worn import BodyPart, ReachWay

Closing = Literal["closed", "lapped", "edge to edge"]
ROWS: Mapping[BodyPart, tuple[str, ...]] = {
    "head": ("head",),
    "hand": ("hand",),
    "foot": ("foot_circumference", "foot"),
    "hips": ("hips",),
    "calf": ("calf",),
}
"""Rows of the size tables that say how large a part of the body is."""

ButtonsFrom = Literal["lower", "neck", "first"]
"""From which end of a strip buttons are counted: its lower one; of one along a shoulder that at the neck; of any other along
stitches the one that hung at the left."""

Role = Literal["", "neck", "cuff", "waist", "leg"]


@record
class Girth:
    """All round the garment at `at`, a level (or, of what is knitted sideways, a row edge) of `piece`, over the pieces and bands
    `over`, each named as often as it lies there. What seams take and what laps is taken off."""

    piece: str
    at: str
    over: tuple[str, ...]
    closing: Closing
    values: PerSize
    body: bool = False
    """Whether it is that of the body, just below the armholes."""


@record
class Ease:
    """`name` of the finished measurement, how large it is, and the measure of the body that it fits. `girth` says where it was
    found, None: as the author states it."""

    name: str
    finished: PerSize
    fits: str
    body: PerSize
    girth: Girth | None = None

    @property
    def ease(self) -> PerSize:
        return minus(self.finished, self.body)


@record
class Beside:
    """A finished measurement, as its author wants it and as it is knitted."""

    name: str
    wanted: PerSize
    knitted: PerSize

    @property
    def off(self) -> PerSize:
        """By how much it is too large, or too small."""
        return minus(self.knitted, self.wanted)


@record
class Ring:
    """An opening of the garment, with its length at rest and stretched (empty where it cannot be told). `chains`: the edges that it
    goes along in each size, and `copies`: how many there are of it, alike; none where a size has no such opening."""

    chains: tuple[Chain, ...]
    relaxed: PerSize
    stretched: PerSize
    copies: CountPerSize
    role: Role = ""

    @property
    def edges(self) -> Chain:
        """Its edges in the first size that has it."""
        return next(chain for chain in self.chains if chain)


@record
class Passing:
    """A part of the body held against an opening: `needed` is the length that lets it through (or, `never`, that of the part
    itself), `stretched` what the opening comes to. `figure` is the part's size, `credit` where that is from."""

    name: str
    part: BodyPart
    never: bool
    relaxed: PerSize
    stretched: PerSize
    figure: PerSize
    needed: PerSize
    credit: Credit | None
    origin: Origin
    place: str = ""
    """The opening as an author names it."""
    around: tuple[tuple[str, str], ...] = ()
    """What it goes round, each once: an edge as (piece, edge), a band as (band, ""), an edging as (piece, edging)."""

    @property
    def good(self) -> tuple[bool, ...]:
        pairs = zip(self.stretched, self.needed, strict=True)
        return tuple((a < b) if self.never else (a >= b - 0.05) for a, b in pairs)


@record
class Reach:
    """From the middle of the back neck over shoulder and sleeve to the end of `sleeve`. `way`: "over the shoulder" (half the
    shoulders, then the whole sleeve), "from the neck" (half the back neck, then the whole sleeve: raglan, saddle) or "half the
    span" (sleeves in one with the body). `body` is empty where nothing is known."""

    sleeve: str
    way: ReachWay
    values: PerSize
    body: PerSize = ()
    fits: str = ""


@record
class Buttons:
    """`over` laps over `under` by `overlap` cm; the buttons are sewn on `under`, each below a buttonhole of one column of `over`:
    `places[i]` is how far button i is from the end `counted_from` of what is above, its edging with it, None in a size that has not
    so many, and `across` how far it lies from the outer edge of `under`."""

    over: str
    under: str
    overlap: PerSize
    places: tuple[tuple[float | None, ...], ...]
    across: PerSize
    counted_from: ButtonsFrom = "lower"
    over_on: str = ""
    under_on: str = ""
    """The pieces that are laid one over the other, where one band lies along both."""


@record
class Fit:
    girths: tuple[Girth, ...]
    eases: tuple[Ease, ...]
    stated: tuple[tuple[str, PerSize], ...]
    """Finished measurements of the author's that fit nothing of the body."""
    reaches: tuple[Reach, ...]
    rings: tuple[Ring, ...]
    passings: tuple[Passing, ...]
    buttons: tuple[Buttons, ...]
    free: tuple[tuple[str, str], ...]
    """Row edges (piece, edge) that nothing joins and the source does not call free."""
    needed: tuple[PerSize, ...] = ()
    """How much of each thing that the design says is needed, counted or in cm; empty where nothing is said."""
    beside: tuple[Beside, ...] = ()
    """Finished measurements that are wanted so large."""
