"""How-tos of bands, hems and other edges."""

from __future__ import annotations

from walewright.guide.model import HowToText

HOW_TO = {
    "hanging-a-first-row": HowToText(
        "Hanging a first row",
        "Turn the piece upside down, the side that the line names to you: with its purl side to you its right edge comes to the "
        "left. Hang the loop between two stitches of the first garment row on each needle, and the outermost loop of the edge on "
        "the last; pull the ravel cord, and the waste comes away, when all hang.",
        "loops of the first row being set on the needles one by one",
    ),
    "picking-up-along-rows": HowToText(
        "Picking up along rows",
        "The side that the line names faces you, the edge along the needles. Walk along it as the line says: what it names first, "
        "its bottom or its left end, hangs on the needle that is named first. Left and right are those of the piece as it hung on "
        "the bed. Hang both ends, the middle and the quarters first. Loops on waste "
        "yarn are hung one by one and the waste taken out; along rows, push the needle through the edge, a whole stitch "
        "deep, spreading the stitches evenly: about three for four rows, as many as the line says. Along a cast-off edge "
        "take both threads of the chain, stitch for stitch; along a cast-on edge, the loop at the foot of each stitch.",
        "needles taking up an edge at even distances, fewer than there are rows",
    ),
    "latched-rib": HowToText(
        "Latched rib",
        "One column at a time. Put the latch tool through the column’s stitch in the first row of the rib, so that it runs no "
        "further, the tool on your side; drop the column from its needle; draw bar after bar through towards you, to the "
        "top, and hang the last loop back. The column then shows knit stitches on the side that faces you.",
        "one column dropped to its first row and another being latched up",
    ),
    "mock-rib-1-by-1": HowToText(
        "Mock rib 1 by 1",
        "Push every second needle, counted from the left and without the last, out of work before the waste yarn is cast on; "
        "knit twice the depth, the row in the middle looser where the lines say so. Then bring the empty needles back to "
        "work, turn the first row up in front, towards you, purl sides together, and hang its loops: the one left of each "
        "empty needle goes on that, the others where they came from. Set the looser tension that the line names and knit "
        "both layers together in one row. The bars of the gaps draw in to a rib.",
        "every second needle out of work, bars lying in the gaps",
    ),
    "mock-rib-2-by-1": HowToText(
        "Mock rib 2 by 1",
        "Push every third needle, counted from the left and without the last, out of work before the waste yarn is cast on; "
        "knit twice the depth, the row in the middle looser where the lines say so. Then bring the empty needles back to "
        "work, turn the first row up in front, towards you, purl sides together, and hang its loops: the one left of each "
        "empty needle goes on that, the others where they came from. Set the looser tension that the line names and knit "
        "both layers together in one row. The bars of the gaps draw in to a rib.",
        "every third needle out of work, bars lying in the gaps",
    ),
    "folded-hem": HowToText(
        "Folded hem",
        "The first row is turned up in front, towards you, so that the purl sides lie together and the knit side is outside. A "
        "hem at the beginning: knit the part that will lie inside, the fold row if the lines have one, and the outside; turn "
        "the first row up, and hang each loop on the needle on which it was made, straight above its column. Count the loops, "
        "and pull out the ravel cord: the waste comes away. Set the looser tension that the line names and knit both layers "
        "together in one row, slowly. A band that was knitted on: lift the line along which it hangs up in front, hang the loop "
        "of its first row below each stitch on that stitch’s needle, and cast off through both, loosely.",
        "the fabric from the side, turned up in front and its first row hung on the hook it hangs from",
    ),
    "picot-hem": HowToText(
        "Picot hem",
        "Knit the first half; then set every second stitch on the needle at its right, as the line says, and leave the empty "
        "needles in work. Knit the second half. Turn the first row up in front, towards you, purl sides together, hang each "
        "of its loops straight above its column, and count; where it began in waste yarn, pull out the ravel cord then; "
        "knit or cast off both layers together as the line says. The row of holes is the fold and makes small points.",
        "every second stitch set on its neighbour, and the edge of points that comes of it",
    ),
    "rolled-edge": HowToText(
        "Rolled edge",
        "Nothing is hung up or sewn down: the plain fabric rolls to its knit side of itself at a first or last row, as edges "
        "of rows roll to the purl side. Do not press it flat.",
        "the edge from the side, rolled towards the knit side",
    ),
    "facing": HowToText(
        "Facing",
        "A looser row makes the fold; the rows after it are turned in. Sew the last row down on the wrong side, stitch by "
        "stitch, through one thread of the fabric only, not tight, so that nothing shows and the edge still stretches.",
        "the edge from the side, turned in and sewn down with a blunt needle",
    ),
    "chained-edge": HowToText(
        "Chained edge",
        "Hang the edge on the needles, knit one row, not tight, and cast off with the latch tool, each loop as long as two "
        "stitches: a line of chain lies along the edge.",
        "a chain drawn along the edge with the latch tool",
    ),
}
