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
    "start-on-waste-yarn/plate": HowToText(
        "Start on waste yarn",
        "Put in the plate of the garment yarn’s first row, or one that makes the waste yarn’s stitches as large. With "
        "every 2nd needle forward the first crossing lays a zigzag: it is the first of the waste rows. Hang the comb in it, and "
        "the weights evenly, about one for each 20 stitches; bring all needles to work and knit the other rows, the last one "
        "with the next looser plate, so that it is easy to hang up again. Then one row with ravel cord, led by hand: it joins "
        "waste and garment, and pulled out it parts them. Move the weights up every 20 rows or so.",
        "waste yarn lying in the hooks and over the teeth of a comb below them",
    ),
    # Common practice, the order of cord and waste yarn from memory.
    "start-on-a-hung-hem": HowToText(
        "Start on a hung hem",
        "Hang the loops along the edge of the hem on the needles in work, one on each, and the weights in its lower edge, about "
        "one "
        "for each 20 stitches. At the tension of the garment yarn’s first row knit one row with ravel cord, slowly, led by hand, "
        "and "
        "the rows of waste yarn. Then one row with ravel cord again. The first cord parts the hem from the waste yarn: drawn "
        "out when the piece hangs far enough to be weighted itself, it gives the hem back for the next start. The second one joins "
        "waste and garment, and pulled out it parts them. Move the weights up every 20 rows or so.",
        "a knitted strip hung on the needles, the cord running through above it",
    ),
    "waste-yarn-by-hand/plate": HowToText(
        "Waste yarn by e-wrap",
        "Without casting on over a comb: pull the needles right out, wind the waste yarn round each shank from behind, towards "
        "the carriage, the loops crossed, and push them behind the latches. Knit two rows slowly, hang claw weights in them, and "
        "go on. Winding is no row: all that the line names are knitted. Put in the plate of the garment yarn’s first row, for the "
        "last row of waste the next looser one. Then one row with ravel cord, led by hand: it joins waste and garment, and pulled "
        "out it parts them.",
        "needles pulled out, the waste yarn wound once round each",
    ),
    "waste-yarn-by-hand": HowToText(
        "Waste yarn by e-wrap",
        "Without casting on over a comb: pull the needles right out, wind the waste yarn round each shank from behind, towards "
        "the carriage, the loops crossed, and push them behind the latches. Knit two rows slowly, hang a comb or claw "
        "weights in them, and go on. Winding is no row: all that the line names are knitted. Set the dial to the tension of the "
        "garment yarn’s first row, the last row of waste one number looser. Then one row with ravel cord, led by hand: it joins "
        "waste and garment, and pulled out it parts them.",
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
