"""How-tos of beginnings: on waste yarn and closed."""

from __future__ import annotations

from walewright.guide.model import HowToText

HOW_TO = {
    "start-on-waste-yarn": HowToText(
        "Start on waste yarn",
        "Set the dial to the tension of the garment yarn’s first row, or to what makes the waste yarn’s stitches as large. With "
        "every 2nd needle forward the first crossing lays a zigzag: it is the first of the waste rows. Hang the comb in it, and "
        "the weights evenly, about one for each 20 stitches; bring all needles to work and knit the other rows, the last one "
        "number looser, so that it is easy to hang up again. Then one row with ravel cord, led by hand: it joins waste and "
        "garment, and pulled out it parts them. Move the weights up every 20 rows or so.",
        "waste yarn lying in the hooks and over the teeth of a comb below them",
    ),
    "waste-yarn-by-hand": HowToText(
        "Waste yarn by hand",
        "Without casting on over a comb: pull the needles right out, wind the waste yarn round each shank from behind, towards "
        "the carriage, the loops crossed, and push them behind the latches. Knit two rows slowly, hang a comb or claw "
        "weights in them, and go on. Winding is no row: all that the line names are knitted. Set the dial to the tension of the "
        "garment yarn’s first row, the last row of waste one number looser.",
        "needles pulled out, the waste yarn wound once round each",
    ),
    "e-wrap": HowToText(
        "E-wrap",
        "With the needles right out, lead the yarn round each shank in turn from behind, the loops crossed, and push every "
        "loop back behind its latch; knit the first rows slowly. Work towards the carriage, so that the yarn ends where the "
        "first row begins.",
        "a yarn wound round the needles one after the other",
    ),
    "latch-tool-chain": HowToText(
        "Latch-tool chain",
        "Begin at the end away from the carriage. Bring the yarn under the needle, catch it from above with the latch tool and "
        "draw a chain stitch over the needle; go on to the next, towards the carriage, so that the yarn ends where the first "
        "row begins. Hang the last loop on the end needle. The chain looks like a cast-off edge.",
        "chain stitches lying over the needles, the latch tool drawing the next",
    ),
}
