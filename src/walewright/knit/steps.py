"""Steps: a knitter's sentences as data, for one size. One class a kind; one template in `write` and one rule in `readback` each.

Two steps say the same thing in two sizes when their classes and all their *text* fields agree (`shape`); their *numbers* (ints)
may differ and stand in brackets in the graded text. Needles are slots. `origin` names the statement that the step comes from.
"""

from __future__ import annotations

from walewright.knit.copies import Copy as Copy
from walewright.knit.edging_steps import EveryOutOfWork as EveryOutOfWork
from walewright.knit.edging_steps import FoldUp as FoldUp
from walewright.knit.edging_steps import HangToLink as HangToLink
from walewright.knit.edging_steps import LatchInStages as LatchInStages
from walewright.knit.edging_steps import LatchPanel as LatchPanel
from walewright.knit.edging_steps import LatchPanelInStages as LatchPanelInStages
from walewright.knit.edging_steps import LatchRib as LatchRib
from walewright.knit.edging_steps import PickUpAlong as PickUpAlong
from walewright.knit.edging_steps import PicotRow as PicotRow
from walewright.knit.edging_steps import RehangStart as RehangStart
from walewright.knit.edging_steps import UseLooser as UseLooser
from walewright.knit.inside_steps import DecreaseOn as DecreaseOn
from walewright.knit.inside_steps import DecreaseOuter as DecreaseOuter
from walewright.knit.inside_steps import IncreaseBeside as IncreaseBeside
from walewright.knit.inside_steps import IncreaseOuter as IncreaseOuter
from walewright.knit.joining_steps import EdgeInSeam as EdgeInSeam
from walewright.knit.joining_steps import EdgeIs as EdgeIs
from walewright.knit.joining_steps import GapIs as GapIs
from walewright.knit.joining_steps import JoinEdges as JoinEdges
from walewright.knit.joining_steps import SeamOf as SeamOf
from walewright.knit.joining_steps import Strip as Strip
from walewright.knit.manners import CarriageWay, EndsShaped, MarkWhen, SayManner, SpreadChange, YarnLeft
from walewright.knit.needle_steps import LeaveOut as LeaveOut
from walewright.knit.needle_steps import LeaveOutEvery as LeaveOutEvery
from walewright.knit.needle_steps import NeedleBack as NeedleBack
from walewright.knit.needle_steps import NeedleOut as NeedleOut
from walewright.knit.needle_steps import NeedlesBackEvery as NeedlesBackEvery
from walewright.knit.needle_steps import NeedlesOutEvery as NeedlesOutEvery
from walewright.knit.operations import Side
from walewright.knit.part_steps import DrawPartsCord as DrawPartsCord
from walewright.knit.part_steps import HoldPart as HoldPart
from walewright.knit.part_steps import PartOnCord as PartOnCord
from walewright.knit.part_steps import PartPlace as PartPlace
from walewright.knit.part_steps import ReturnPart as ReturnPart
from walewright.knit.pattern_steps import StartChart as StartChart
from walewright.knit.pattern_steps import StartStripes as StartStripes
from walewright.knit.pattern_steps import StopChart as StopChart
from walewright.knit.pattern_steps import StopChartOn as StopChartOn
from walewright.knit.pattern_steps import StopStripes as StopStripes
from walewright.knit.step import Step as Step
from walewright.knit.step import Words as Words
from walewright.knit.step import numbers as numbers
from walewright.knit.step import shape as shape
from walewright.knit.together import Together as Together
from walewright.knit.together import Track as Track
from walewright.record import record
from walewright.trade.ends import ClosedCastOn, WasteCastOn

# ----------------------------------------------------------------- setting up


@record
class NeedlesToWork(Step):
    """Bring empty needles `first`..`last` to working position (`stitches` of them)."""

    first: int
    last: int
    stitches: int


@record
class CarriageAt(Step):
    """The carriage is brought to `side` without knitting, `way` past the loops that are in work, or past held ones."""

    side: Side
    way: CarriageWay = ""


@record
class WasteStart(Step):
    """With waste yarn cast on over all needles in work, `way` "comb" or "by hand" (e-wrapped), knit `rows` rows, then one row of
    ravel cord. `way` "hem": a strip is hung on the needles first, and a row of ravel cord comes before those of waste."""

    rows: int
    way: WasteCastOn = "comb"


@record
class ClosedStart(Step):
    """Cast on over all needles in work, `way` "e-wrap" or "chain"."""

    way: ClosedCastOn


@record
class UseYarnStep(Step):
    """Change to garment yarn `yarn` at tension `tension`."""

    yarn: str
    tension: str
    before: YarnLeft = ""
    """What becomes of the yarn before it: "" (broken off), or "carried" (left hanging at its side, to be taken up again)."""
    fabric: str = ""
    """The fabric that it is knitted as, where another one of that yarn and tension has another gauge."""


@record
class SetRowCounter(Step):
    rows: int


# ----------------------------------------------------------------- knitting and shaping


@record
class KnitRows(Step):
    rows: int


@record
class KnitTo(Step):
    """Knit until the counter reads `row`."""

    row: int


@record
class Decrease(Step):
    """Decrease `by` (1 or 2) stitches at `ends` ("both ends", "left end", "right end") of the part in work; `inset` 0
    is simple, else fashioned with that many prongs. The emptied needles go out of work."""

    ends: EndsShaped
    by: int
    inset: int


@record
class IncreaseFashioned(Step):
    """Increase 1 at `ends`: move the `inset` end loops one needle outwards and fill the gap from the stitch below on its
    inner side."""

    ends: EndsShaped
    inset: int


@record
class IncreaseAtCarriage(Step):
    """Bring one further empty needle to work at the carriage side (a simple increase)."""


@record
class CastOffAtCarriage(Step):
    """Cast off `stitches` at the carriage side."""

    stitches: int


@record
class CastOnAtCarriage(Step):
    """E-wrap `stitches` further needles at the carriage side."""

    stitches: int


@record
class HoldAtEnd(Step):
    """Put the `stitches` working needles nearest the `side` end into hold (that end is opposite the carriage)."""

    side: Side
    stitches: int


@record
class WrapHeld(Step):
    """Wrap the innermost held needle of those held for shaping at `side`."""

    side: Side


@record
class ReturnHeld(Step):
    """Return the needles held for shaping at `side` to work."""

    side: Side


@record
class ReturnSome(Step):
    """Return the innermost `stitches` of the needles held for shaping at `side` to work."""

    side: Side
    stitches: int


@record
class SpreadEvenly(Step):
    """Take the stitches of the part in work off on waste yarn and hang them back on needles `first`..`last` (`stitches` of
    them): `runs` times over (1 loop on each of `singles` needles, then `changed` on the next), and the same with the `more_`
    numbers; what is left, 1 loop a needle. `changed` "two together" or "an empty needle". Before all that, `first_runs` times
    (never or once) the same with `first_singles`: half a gap."""

    first: int
    last: int
    stitches: int
    changed: SpreadChange
    singles: int
    runs: int
    more_singles: int
    more_runs: int
    first_singles: int = 0
    first_runs: int = 0

    @property
    def left(self) -> int:
        """Needles that get one loop each after the last changed one."""
        rounds = ((self.first_singles, self.first_runs), (self.singles, self.runs), (self.more_singles, self.more_runs))
        return self.stitches - sum((singles + 1) * runs for singles, runs in rounds)


@record
class SlotOnWaste(Step):
    """Take the `stitches` on needles `first`..`last` off on waste yarn (kept as `edge`) and cast on again on the same needles by
    e-wrap with a separate length of the yarn, `length_cm` at least (0: none is asked for)."""

    stitches: int
    first: int
    last: int
    edge: str
    length_cm: int = 0


@record
class SlotClosed(Step):
    """Close the `stitches` on needles `first`..`last` by chaining them through each other towards the right (the last goes on the
    next needle) and cast on again on the same needles by e-wrap with a separate length of the yarn, as `SlotOnWaste` does."""

    stitches: int
    first: int
    last: int
    length_cm: int = 0


@record
class EyeletAt(Step):
    """Move the stitch of `needle` to its neighbour on `side`; leave the empty needle in work."""

    needle: int
    side: Side


@record
class Repeat(Step):
    """Work `body` `times` times in all."""

    body: tuple[Step, ...]
    times: int


@record
class MarkEdges(Step):
    """Tie a marker thread at `ends` ("both ends", "left end", "right end") of the row just knitted: `what` begins here, or `at`
    "end" ends."""

    what: str
    ends: EndsShaped = "both ends"
    at: MarkWhen = "begin"


@record
class Now(Step):
    """What must be true here: stitches on the bed, counter, carriage side."""

    stitches: int
    row: int
    side: Side


@record
class NowInHalf(Now):
    """The same while another half waits: `stitches` are those of the half being worked, `waiting` those of the other."""

    waiting: int


# ----------------------------------------------------------------- parting


@record
class CentreToWaste(Step):
    """Take the `stitches` centre stitches, needles `first`..`last`, off on waste yarn (kept as `edge`). Of an opening off the
    centre: those between the two parts."""

    stitches: int
    first: int
    last: int
    edge: str


@record
class OffOnWaste(Step):
    """Knit `rows` rows of waste yarn over all stitches of the part in work and take it off the bed (kept as `edge`)."""

    rows: int
    edge: str


@record
class CastOffAll(Step):
    """Cast off all stitches of the part in work, from the carriage side."""


@record
class SewOffAll(Step):
    """Cast off all stitches of the part in work by back-stitch with the tail, from the carriage side."""


@record
class CloseCentre(Step):
    """Close the `stitches` between the two parts, needles `first`..`last`, by chaining them through each other towards the right;
    the last goes on the next needle, which is the right part's first."""

    stitches: int
    first: int
    last: int


@record
class CastOnBetween(Step):
    """Cast on `stitches` on the empty needles `first`..`last` between the two parts by e-wrap with a separate length of the
    yarn, as `SlotOnWaste` does."""

    stitches: int
    first: int
    last: int
    length_cm: int = 0


@record
class GatherAll(Step):
    """Thread the tail through all stitches of the part in work, take them off the bed and draw them up."""


@record
class BreakOff(Step):
    """Break the garment yarn, leaving a tail of `tail_cm` (0: no length is asked for)."""

    tail_cm: int = 0


# ----------------------------------------------------------------- words and whole blocks


@record
class Say(Step):
    """Words to the knitter; no operation follows. `manner` "note", or "by hand": to be done when the pieces are off the bed."""

    text: Words
    manner: SayManner = "note"


@record
class Linked:
    """The edge whose link is a block of its own: `copy` of the piece `owner`, where that has to be said."""

    owner: str
    edge: str
    copy: Copy

    @property
    def name(self) -> str:
        """What the block is called in all stages."""
        number = f" {self.copy.number}" if self.copy.number else ""
        return f"{self.owner} {self.edge}{number} link"


@record
class StepBlock:
    """The steps of one thing on the bed (see operations.Block, also for `of`), in paragraphs with a title each; one without a
    title (an empty text) goes on from the one before it. `runs`: of a part of a band, from where to where it runs."""

    name: str
    copies: int
    paragraphs: tuple[tuple[Words, tuple[Step, ...]], ...]
    joining: bool = False
    before: str | Linked = ""
    opening: bool = False
    """Of something joined: the name of what is knitted next, or the link, or neither; whether it comes before all joins."""
    of: str = ""
    linked: Linked | None = None
    """Of a link, what it links."""
    runs: Words = ""


@record
class SizePlan:
    """One size's sentences, in the order of work; a block of `joining` has JoinEdges and Say steps and nothing on the bed."""

    size: str
    blocks: tuple[StepBlock, ...]
    plates: bool = False
    """Whether the tension is set by plates, not on a dial."""
