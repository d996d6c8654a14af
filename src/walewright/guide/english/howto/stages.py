"""How-tos of what is put by or done in stages: deep ribs, and a part that waits on cord."""

from __future__ import annotations

from walewright.guide.model import HowToText

HOW_TO = {
    "latching-in-stages": HowToText(
        "Latching in stages",
        "A column can be dropped only as deep as it hangs free above the comb and the weights: every 20 to 30 rows on a fine "
        "or standard bed, every 10 to 15 on a coarser one, after an even number, so that the carriage’s side stays. Do it at "
        "each of the named rows, one column at a time: put a holder, a tool or a safety pin, through the foot of the column, "
        "then drop it, latch it up and hang the last loop. The first stage begins in the first stitch of the rib, every "
        "other in the loop that was hung last. The last stage is done before the cast-off; below a hole latch up to its row, "
        "make the hole, and go on.",
        "a holder in the stitch that was latched up last, and the bars above it",
    ),
    "a-part-waiting-on-ravel-cord": HowToText(
        "A part waiting on ravel cord",
        "Needles that stand right out for more than about 30 rows wear their stitches, so this part waits fully back. From the "
        "middle outwards, lay the cord in the hook of each needle by hand, push the needle back through its stitch as the "
        "carriage would, and on, as far back as it goes: the cord keeps the stitch on its own needle. Leave long ends and "
        "take the weights off that part. When its turn comes, push the needles right out, so that every stitch lies behind "
        "its open latch, draw the cord out from one end, count, and hang the weights again.",
        "three needles fully back with cord in their hooks, their stitches kept on it",
    ),
}
