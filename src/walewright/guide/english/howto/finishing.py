"""How-tos of stitches that wait, are closed or drawn up, and of what is done at the end."""

from __future__ import annotations

from walewright.guide.model import HowToText

HOW_TO = {
    "off-on-waste-yarn-in-mid-row": HowToText(
        "Off on waste yarn in mid-row",
        "Leave the garment yarn where it is. With a length of waste yarn knit these stitches by hand, 8 rows, and take them "
        "off; or thread it through the loops with a blunt needle and lift them off. Push the emptied needles out of work.",
        "a waste yarn threaded through the stitches in the middle, their needles out of work",
    ),
    "off-on-waste-yarn-at-the-end": HowToText(
        "Off on waste yarn at the end",
        "Thread the waste yarn in the carriage and knit the rows. See that a part which waits on its needles is right out and "
        "the carriage set not to knit it; one on ravel cord stays as far back as it goes. Take the weights off and hold the "
        "work: then take the yarn out and knit once more without it, so that the work falls from the needles. Push the "
        "emptied needles out of work.",
        "empty needles; below them rows of waste yarn hold the last stitches",
    ),
    "closing-stitches-without-yarn": HowToText(
        "Closing stitches without yarn",
        "Begin at the left. Set the first loop on the needle to its right, behind the loop there, and draw that one forward "
        "through it with the latch tool, so that one loop is left; go on to the right. The last loop goes on the needle "
        "after, which then knits two together. Do not stretch the chain: it is as long as the stitches were.",
        "loops chained through each other towards the right",
    ),
    "a-slot-on-waste-yarn": HowToText(
        "A slot on waste yarn",
        "Knit the named stitches by hand with a length of waste yarn, a few rows, and drop them; pin the waste to the front. "
        "Then cast on again on the same needles, see below. The loops on the waste wait for a thumb, a pocket or a lining: a "
        "line that hangs them calls them by the slot’s own name, and the foot of the stitches cast on above, which wait too, "
        "its “upper” edge.",
        "stitches on waste yarn below, new stitches on their needles above",
    ),
    "e-wrap-with-a-length-of-its-own": HowToText(
        "E-wrap with a length of its own",
        "The yarn in the carriage stays where it is. Cut a length of the same yarn about four times as long as the needles are "
        "wide. Bring the empty needles right out; lead the length round each from left to right, a crossed loop on each "
        "shank, not tight. Leave a tail at both ends: they close the corners and are sewn in when the piece is put together. "
        "Hang a weight below.",
        "a short length of yarn wound round the empty needles between the stitches",
    ),
    "back-stitch-cast-off": HowToText(
        "Back-stitch cast-off",
        "Break the yarn with the tail that the line gives, about three times the width, and thread it in a blunt needle. From "
        "the carriage side: through the second loop, back through the first, so that a back-stitch lies over both; slip the "
        "first off, and go on, always two on and one back. Draw the thread no tighter than a row.",
        "a blunt needle sewing back-stitches through the last loops",
    ),
    "drawing-up": HowToText(
        "Drawing up",
        "Break the yarn with the tail that the line gives and thread it in a blunt needle. Take it through every loop in turn, "
        "lift the loops from the bed, draw up until no hole is left, go round once more and fasten on the wrong side.",
        "the tail threaded through the last loops",
    ),
    "a-marker": HowToText(
        "A marker",
        "Knot a thread of another colour into the end stitch, at the edge or edges that the line names.",
        "a contrasting thread knotted into the end stitch",
    ),
    "buttonholes": HowToText(
        "Buttonholes",
        "Mark where the buttons go from the finished holes, not from the drawing. Neaten each hole with a few stitches round "
        "its edge; a hole that is to be worked hard gets a backing of ribbon or a small button inside.",
        "a slot in the fabric, its edges oversewn",
    ),
}
