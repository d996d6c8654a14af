"""Operations: what hands and carriage do, one by one. The only thing planner, bed and read-back share.

Needles are *slots*: slot s >= 0 is needle R(s+1), slot s < 0 is needle L(-s); so slots run without a gap
through the centre mark, and slot ranges `first..last` are inclusive with first <= last.
An operation says what is done, never what is hoped for, except `Check`, which states what must be true here.
"""

from __future__ import annotations

from dataclasses import field

from walewright.knit.hand_work import DrawLong as DrawLong
from walewright.knit.hand_work import HangFeet as HangFeet
from walewright.knit.hand_work import LayIn as LayIn
from walewright.knit.hand_work import LiftOff as LiftOff
from walewright.knit.hand_work import PictureRow as PictureRow
from walewright.knit.hand_work import SewOff as SewOff
from walewright.knit.move_kinds import NEXT_COPY as NEXT_COPY
from walewright.knit.move_kinds import CastOnWay as CastOnWay
from walewright.knit.move_kinds import CrossingWay as CrossingWay
from walewright.knit.move_kinds import HungEnd as HungEnd
from walewright.knit.move_kinds import HungFace as HungFace
from walewright.knit.move_kinds import HungPart as HungPart
from walewright.knit.move_kinds import NamedRows as NamedRows
from walewright.knit.move_kinds import SeamEnd as SeamEnd
from walewright.knit.move_kinds import SeamWay as SeamWay
from walewright.knit.naming import NameEdge as NameEdge
from walewright.knit.naming import NameGap as NameGap
from walewright.knit.needle import Side as Side
from walewright.knit.needle import needle as needle
from walewright.knit.needle import other as other
from walewright.knit.needle import slot as slot
from walewright.record import record

# ------------------------------------------------------------- yarn, carriage, counter


@record
class UseYarn:
    """Thread `yarn` at `tension`. The yarns "waste" and "ravel" are the machine's helpers and never part of the garment.

    `carried`: the yarn in use is not cut but left hanging at its side, and if an end of `yarn` hangs at the carriage's side, it
    is taken up again."""

    yarn: str
    tension: str
    carried: bool = False


@record
class InFabric:
    """No move: what is knitted from here on counts as the fabric of this name, over the whole width (`first` > `last`) or on
    needles `first`..`last` only. An empty name ends the one that was said before of the same needles."""

    fabric: str
    first: int = 0
    last: int = -1


@record
class BreakYarn:
    """Cut the yarn, leaving a tail of `tail_cm`; no pass, wrap or cast-off can follow before UseYarn. 0: as long as it happens."""

    tail_cm: int = 0


@record
class Pass:
    """The carriage crosses to `to` and knits every needle in work; held needles keep their loop, the yarn passes across."""

    to: Side


@record
class MoveCarriage:
    """The carriage is taken to `to` without knitting, past loops that are in work in the `way` that is said."""

    to: Side
    way: CrossingWay = ""


@record
class SetCounter:
    rows: int


# ------------------------------------------------------------- needles and loops


@record
class IntoWork:
    """Bring empty needles `first..last` from non-working to working position."""

    first: int
    last: int


@record
class OutOfWork:
    """Push empty needles `first..last` back to non-working position."""

    first: int
    last: int


@record
class CastOn:
    """Put a first loop on each empty needle in work `first..last`. way: "comb" (an open edge, for waste yarn), "hem" (the same on a
    strip, for ravel cord), "e-wrap" or "chain" (closed edges). Beside live stitches it happens at the carriage side; with
    `own_length`, a separate piece of the yarn in use, anywhere between or beside them: `length_cm` of it (0: as it takes)."""

    way: CastOnWay
    first: int
    last: int
    own_length: bool = False
    length_cm: int = 0


@record
class Transfer:
    """Lift the loops of `first..last` together (one tool of last-first+1 prongs) and set them `by` needles on (negative = left).
    Needles left empty stay where they are until OutOfWork; a needle that already has a loop then has both."""

    first: int
    last: int
    by: int


@record
class FillFromBelow:
    """Hang the purl bar of the stitch below `source` on the empty needle `target` in work (a fashioned increase's gap)."""

    target: int
    source: int


@record
class Hold:
    """Put needles `first..last` to holding position."""

    first: int
    last: int


@record
class Release:
    """Put held needles `first..last` back so that the next pass knits them."""

    first: int
    last: int


@record
class LayCord:
    """Lay ravel cord by hand into the hooks of needles `first`..`last` in turn and push each fully back: it keeps the loops
    there."""

    first: int
    last: int


@record
class DrawCord:
    """Push the needles `first`..`last` that wait on ravel cord right out, to holding position, and draw the cord out."""

    first: int
    last: int


@record
class Wrap:
    """Lay the yarn under and over the held needle `slot`."""

    slot: int


@record
class CastOff:
    """Chain-cast-off the loops `first..last`, beginning at the `start` end, where the carriage and yarn are.
    The last chain is set on the neighbouring live needle, or fastened off when none is left. Emptied needles go to non-working."""

    first: int
    last: int
    start: Side


@record
class Close:
    """Chain the loops `first..last` through each other, without yarn, from the far end `towards` the side where a live
    neighbour waits, and set the last one on that neighbour. Emptied needles go to non-working. (A buttonhole's lower edge.)"""

    first: int
    last: int
    towards: Side


@record
class Gather:
    """Thread the broken yarn's tail through the loops `first..last`, take them off the bed and draw them up: the edge "end"."""

    first: int
    last: int


@record
class Spread:
    """Take the loops of `first..last` off on a tool or waste yarn and hang them back from left to right: needle
    `to_first + i` gets the next `counts[i]` of them (0: the needle stays empty in work and gets its loop from the next row).
    Needles not used any more go to non-working, new ones to work. No yarn is knitted."""

    first: int
    last: int
    to_first: int
    counts: tuple[int, ...]


@record
class OntoWaste:
    """Knit the loops `first..last` off on a piece of waste yarn, `rows` rows, and drop them from the bed: they stay
    live under the name `edge` (e.g. "neck centre", "shoulder left"). Their needles go to non-working. The garment yarn
    takes no part, nor the counter."""

    first: int
    last: int
    rows: int
    edge: str


@record
class LatchUp:
    """Drop the stitches of the needle's wale as far as `rows` rows down (unless `Drop` has done so) and re-form them on the
    other face; the loop is back on its needle. A holder through the stitch below stops the wale there; `goes_on`: that stitch is
    the one that was re-formed and hung last."""

    slot: int
    rows: int
    goes_on: bool = False


@record
class Drop:
    """Let the stitches of the needle's wale run down `rows` rows; the needle stays in work, empty. Either `LatchUp` re-forms
    them, or they stay a ladder, whose lowest row has to be yarn laid in an empty hook, so that it runs no further."""

    slot: int
    rows: int


@record
class Cross:
    """Lift the loops of `first`..`last` on two tools, `left` of them on the one, the rest on the other, and hang them back
    exchanged: the right group on the first needles, the left group on the last ones. `hung_first` is the group hung first: it
    lies in front on the side that faces away from the knitter, which is the right side."""

    first: int
    last: int
    left: int
    hung_first: Side


# ------------------------------------------------------------- edges of finished pieces


@record
class Rehang:
    """Hang the feet of the first main-yarn row of `piece`, its `facing` side to the knitter, on empty needles in work."""

    piece: str
    first: int
    last: int
    facing: HungFace = "purl"


@record
class PickUpEdge:
    """Pick up along `part` of `edge` of `piece` on the empty needles in work `first..last`, evenly over what is there. Its `facing`
    side is to the knitter, and the edge's `left_end` hangs at the left. `copy` is which of the piece's copies, 0 where there is
    one, or where each copy of this block takes its own; `NEXT_COPY`. With `low` and `high` a stretch: of rows those after that
    reading up to that, of stitches those so counted from the left. `ratio`: that is about so many stitches for so many rows."""

    piece: str
    edge: str
    part: HungPart
    first: int
    last: int
    over: bool = False
    """The needles carry the stitches of another piece already, which are to be linked with these."""
    facing: HungFace = "purl"
    left_end: SeamEnd = ""
    copy: int = 0
    low: int = 0
    high: int = 0
    ratio: tuple[int, int] = (0, 0)


@record
class Join:
    """Put two lines of edges together along one seam. Each is ((piece, edge, copy), ...) in the order along the seam, both from
    the same end of it; `ends` says which end of the first edge of `one` and of `other` that is, as `PickUpEdge.left_end` does.
    `copy` 0: of a piece knitted once, or the seam is made at each copy. Without `other` the edge `one` is closed upon itself,
    folded in half ("sewn") or drawn up on a thread ("gathered"). `way` "sewn", "gathered" (fullness drawn in), "pleated" (laid in
    folds) or "grafted" (open loops). Lengths are added up. `easing_mm` 0 asks for equal rows (or stitches), or for `ratio`: rows of
    one side to stitches of the other; else `one` is `longer_mm` longer, give or take. What must be true: `rows` on both, or
    `one_mm` and `other_mm`. `over`: (piece, edging, rows at each end) of what is sewn together in it beyond its edges; of a band
    the edging is empty. `thread_cm`: the new length of yarn that it is sewn with where no tail is; 0: none is asked for.
    `chained`: the stitches that each side casts off or on at once, which lie on each other; noughts where none are told. `tails`:
    (piece, edging) of those that sew this seam and the others of its sentence; of a piece's own or a band's the edging is empty."""

    one: tuple[tuple[str, str, int], ...]
    other: tuple[tuple[str, str, int], ...]
    ends: tuple[SeamEnd, SeamEnd]
    easing_mm: int
    longer_mm: int = 0
    way: SeamWay = "sewn"
    rows: int = 0
    one_mm: int = 0
    other_mm: int = 0
    ratio: tuple[int, int] = (0, 0)
    over: tuple[tuple[str, str, int], ...] = ()
    thread_cm: int = 0
    chained: tuple[int, int] = (0, 0)
    tails: tuple[tuple[str, str], ...] = ()


@record
class Check:
    """States: `stitches` needles are in work or held on the whole bed (a parted half that waits included, and a needle just
    brought to work, whose loop comes with the next row); the counter reads `row`, the carriage is at `side`."""

    stitches: int
    row: int
    side: Side


Operation = (
    UseYarn
    | InFabric
    | BreakYarn
    | Pass
    | MoveCarriage
    | SetCounter
    | IntoWork
    | OutOfWork
    | CastOn
    | Transfer
    | FillFromBelow
    | Hold
    | Release
    | LayCord
    | DrawCord
    | Wrap
    | CastOff
    | Close
    | Gather
    | Spread
    | OntoWaste
    | LatchUp
    | Drop
    | Cross
    | LiftOff
    | DrawLong
    | LayIn
    | PictureRow
    | HangFeet
    | SewOff
    | Rehang
    | PickUpEdge
    | NameEdge
    | NameGap
    | Join
    | Check
)


@record
class Block:
    """The operations of one thing on the bed, from an empty bed to an empty bed: a piece, an edging knitted on
    to a piece, or a band. `name` is the piece's or band's ("back", "back welt", "neckband"); `copies` knitted alike. `of`: the
    piece or band that it is described with, as far as known."""

    name: str
    operations: tuple[Operation, ...]
    copies: int = 1
    of: str = field(default="", compare=False)


@record
class Work:
    """Everything for one garment in one size, in the order in which it is done."""

    size: str
    tasks: tuple[Block | Join, ...]

    @property
    def blocks(self) -> tuple[Block, ...]:
        return tuple(task for task in self.tasks if isinstance(task, Block))

    @property
    def joins(self) -> tuple[Join, ...]:
        return tuple(task for task in self.tasks if isinstance(task, Join))
