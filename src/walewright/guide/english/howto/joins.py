"""How-tos of putting edges together."""

from __future__ import annotations

from walewright.guide.model import HowToText

HOW_TO = {
    "sewing-row-to-row": HowToText(
        "Sewing row to row",
        "Lay the pieces side by side, right sides up. Take the needle under the bar between the edge stitch and its neighbour "
        "on one side, then on the other, row for row, and draw the thread so that the edge stitches turn in: one stitch of "
        "each side goes into the seam.",
        "a thread going to and fro between the edge stitches of two pieces",
    ),
    "sewing-stitches-to-rows": HowToText(
        "Sewing stitches to rows",
        "Lay the pieces right sides up, the edge of stitches against the edge of rows; pin the middle, the ends and the "
        "quarters first. On the side of the stitches take the needle under both legs of the stitch just inside the cast-off "
        "or cast-on, or, where the loops are still on waste yarn, through each loop before its waste comes out; on the side "
        "of the rows under the bar between the edge stitch and its neighbour. A stitch is wider than a row is high: here and "
        "there take two bars for one stitch, so that both edges come out even, or as much longer as the line says.",
        "a thread going to and fro between the stitches of one edge and the bars of the other, two bars for some stitches",
    ),
    "sewing-stitch-to-stitch": HowToText(
        "Sewing stitch to stitch",
        "Lay the two edges against each other, right sides up. Take the needle under both legs of a stitch just inside the "
        "cast-off or cast-on of one, then of the stitch opposite, and go on stitch for stitch; draw the thread so that both "
        "chains turn in. The seam has to lie as flat as a row and not hold the edge in.",
        "a thread going to and fro under the stitches of two closed edges",
    ),
    "grafting": HowToText(
        "Grafting",
        "Lay the two rows of open loops against each other, right sides up, and unravel the waste a few loops at a time; where an "
        "edge hangs on ravel cord, pull that out as you come to it. The first row of a piece has a loop less between its stitches "
        "than it has stitches: the one at its edge is grafted with them. With a blunt needle go down through a loop and up "
        "through the next on one side, then on the other, as a row of stitches runs, drawing each to the size of its neighbours. "
        "It takes three to four times the length of the row.",
        "two rows of open loops joined by a thread that runs as a row of stitches does",
    ),
    "linking-on-the-bed": HowToText(
        "Linking on the bed",
        "Hang one edge on the bed with the side facing that the line names, loop for loop, then the other on the same needles "
        "with its other side facing, so that the right sides meet, each from the end that the line names first. Set the dial two "
        "to three numbers looser than the pieces, as the line says, thick yarn the more, and knit one row over both, slowly; is "
        "that too hard, draw the second piece’s loops through the first one’s and knit those. Cast off loosely, loop through "
        "loop: the seam must not be tighter than the pieces, nor may it grow. Measure it.",
        "two loops on every needle, one of each piece",
    ),
    "linking-on-the-bed/plate": HowToText(
        "Linking on the bed",
        "Hang one edge on the bed with the side facing that the line names, loop for loop, then the other on the same needles "
        "with its other side facing, so that the right sides meet, each from the end that the line names first. Put in the plate "
        "that the line names, the next looser one if there is one, and knit one row over both, slowly; is "
        "that too hard, draw the second piece’s loops through the first one’s and knit those. Cast off loosely, loop through "
        "loop: the seam must not be tighter than the pieces, nor may it grow. Measure it.",
        "two loops on every needle, one of each piece",
    ),
    "sewing-a-gathered-edge": HowToText(
        "Sewing a gathered edge",
        "Run a thread through the longer edge and draw it up to the length of the other. Spread the fullness evenly, pin, and "
        "sew; the thread stays until the seam is done.",
        "a longer edge drawn up in small waves above a straight one",
    ),
}
