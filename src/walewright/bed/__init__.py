"""The needle bed: what fabric do the operations really make?

Knows nothing of plans, steps or words: it takes hand and carriage moves one by one, as a machine would, and keeps the fabric
that comes of them. Entry: `knit(work, bed) -> BedResult`; `seam` measures edges of the fabrics as joins do.

**State of a needle.** A position and the loops it carries. *Non-working* needles take no part. *Working* needles knit. *Held*
ones keep their loops while the yarn passes across, those *on cord* fully back and out of its way. Loops lie on a needle in the
order in which they were hung.

**State of the machine.** The carriage's side (not known until it is first placed or knits), the row counter, the yarn and its
tension, and where the yarn hangs from the knitting: a side and a needle, or nowhere while it is a fresh end.

**A loop.** Its needle (slot), its parents (the loops it is drawn through), its kind (`loops.Kind`), its face, and, through its
course, the counter's reading, yarn, tension and the unbroken run of yarn it belongs to. Waste and ravel yarns leave no loops,
only marks on the needles: they come away.

**The rules**, one function an operation:

- A *pass* makes one loop on each working needle, drawn through all that the needle carries. On an empty one the yarn lies in
  the hook: a bar, without parents, a stitch from the next pass on. A held needle between working ones gets the yarn laid over
  it: lifted off it is a float, drawn long a stitch, else one more loop (a tuck; not on neighbours, over 4 rows at most). Held
  needles beyond the working ones get nothing. The counter goes up by one.
- *Turning*: when a pass ran out over held needles and the next one leaves that side, the yarn turns beside the innermost of
  them. A wrap there is one more loop on that needle. Without it a hole is left, if later one row is worked over that needle
  and its neighbour on the turning side. If that neighbour is off by then, or waits itself, or both have come to the same
  row of the counter, the turn was a real edge: this tells necks and slits from short rows, whatever became of the yarn.
  One needle held on the carriage's side, straight after it was knitted, is wrapped by the yarn coming back over it.
- A *transfer* lifts loops and hangs them over what the other needles carry; parents show it as soon as these are knitted.
- *Filling from below* hangs the head of the stitch below on a second needle: a loop with that stitch for its parent, no yarn.
- A *cast-off* draws a chain through each needle's loops and the chain before. The last is hung on the next needle if that
  carries a loop; if that needle is held, only if the yarn goes on; else it is fastened off, and the yarn with it.
- *Closing* draws the needles' loops through each other, without yarn, and hangs the last on the neighbour, working or held.
- *Gathering* threads the end of the broken yarn through all stitches that are left: the end of the piece.
- *Hanging back* (spread) takes the loops of a stretch of needles off and hangs them on others in the same order: 0, 1 or 2
  stitches a needle. The yarn goes with the last stitch. An edge goes on from its new end, and is not longer for the way to it.
- *On to waste*: the loops leave the needles and stay live under a name. Cast on again on the same needles in the same row with a
  length of yarn of its own, they are a slot: "<name>" below, "<name> upper" above.
- *Latching up* re-forms a wale's uppermost loops on the other face; nothing else changes. Of what was re-formed before nothing is
  dropped again, and where a stage goes on from the one before, it begins in the loop re-formed last. *Dropped* before, loops wait
  off their needle; if the next row comes first they are a ladder's bars, and run on unless the lowest was yarn laid in an empty
  hook.
- *On cord*: loops stay on their needles, which are pushed fully back with ravel cord in their hooks: the yarn does not come near
  them, hands cannot move them. The yarn in use may not hang there, and the cord is drawn whole, the needles right out.
- *Crossing* exchanges two groups of loops on their needles. Three and more need slack beside them.
- *Laying in* draws loops of another yarn through what held needles carry, after the row's own yarn was lifted off.
- A *picture row* is a pass with a yarn for each block of needles; each goes on with the end that hangs beside it.
- *Hanging the feet* hangs the first row of the block again: a fold. *Sewing off* draws back-stitches of the tail through the loops.
- An *end* left hanging is taken up again at the carriage's side, near the edge, in the same part, a few rows up; else it is a
  fresh one.
- *Rehanging* and *picking up* put loops of a finished piece on needles: loops without yarn, linked to those they are made of.
- *The counter* set back begins another part of the piece; a row over parts finds them at the same reading. Set back to 0 with the
  whole width in work, it begins the piece itself: what was knitted before is an edging, and rows and edges count from here.

**The end.** No loop may be left on a needle. Every loop must be held: by a loop drawn through it, by waste yarn under a name,
or by being fastened off. When all is knitted, no foot of a first row may be left open, and joined edges must agree.
"""

from walewright.bed.fabric import KnitFabric
from walewright.bed.loops import LoopKind
from walewright.bed.model import Bar, Bed, BedEdge, BedStartsWith, Course, Fault, Gauge, Link, Turn
from walewright.bed.seams import SewnSeam, seam
from walewright.bed.simulate import BedResult, knit

__all__ = [
    "Bar",
    "Bed",
    "BedEdge",
    "BedResult",
    "BedStartsWith",
    "Course",
    "Fault",
    "Gauge",
    "KnitFabric",
    "Link",
    "LoopKind",
    "SewnSeam",
    "Turn",
    "knit",
    "seam",
]
