"""The handwork behind the short sentences: each way of working is explained once, and only if the pattern has it.

All of it is common practice, in words of our own.
"""

from __future__ import annotations

from walewright.pages.model import Advice
from walewright.write.model import Instructions

_WAYS: tuple[tuple[str, str], ...] = (
    (
        "with the comb",
        "Start on waste yarn: hang the comb on the bed with the waste yarn laid over it, knit, and hang weights evenly on the "
        "comb, about one for each 20 stitches; move them up every 20 rows or so. The ravel cord is laid in for one row and knits "
        "the next thing to the waste: pulled out, it lets the waste come away.",
    ),
    (
        "2 sts in",
        "2 stitches in: lift the 2 end loops together with the 2-prong tool. For an increase set them one needle outwards, and "
        "hang the loop below the next stitch inwards on the needle left empty. For a decrease set them one needle inwards, so that "
        "two loops share a needle, and push the emptied end needle out of work. Move the edge weight each time.",
    ),
    (
        "3 sts in",
        "3 stitches in: the same with the 3-prong tool and the 3 end loops.",
    ),
    (
        "at the left end.",
        "A decrease at an end: move the end loop on to its neighbour and push the emptied needle out of work.",
    ),
    (
        "cast off",
        "Casting off: at the carriage side, set the end loop on the next needle, lay the yarn in that hook, pull a loose loop "
        "through both, and go on. Make the loops as long as two stitches, so that the edge stretches.",
    ),
    (
        "into hold",
        "Holding: pull the needles right out and set the carriage so that it does not knit them. What is taken back to work is "
        "pushed by hand until the latch lies behind the loop; a half that still waits stays out.",
    ),
    (
        "wrap the innermost",
        "Wrapping: before the carriage goes back, lay the yarn under and over the held needle next to the knitting. Without it "
        "there is a hole.",
    ),
    (
        "off on waste yarn",
        "Off on waste yarn in mid-row: leave the garment yarn where it is. With a length of waste yarn knit these stitches "
        "by hand, 8 rows, and take them off; or thread it through the loops with a blunt needle and lift them off.",
    ),
    (
        "rows of waste yarn over",
        "Off on waste yarn at the end: thread the waste yarn in the carriage, knit the rows, take the yarn out and knit once more "
        "without it, so that the work falls from the needles.",
    ),
    (
        "hang the",
        "Hanging a first row: turn the piece upside down with the wrong side facing. Hang the loop between two stitches of the "
        "first garment row on each needle, and the outermost loop of the edge on the last; pull the ravel cord when all hang.",
    ),
    (
        "Pick up",
        "Picking up: wrong side facing, the edge along the needles. Loops on waste yarn are hung one by one and the waste "
        "taken out; along rows, push the needle through the edge, a whole stitch deep, spreading the stitches evenly.",
    ),
    (
        "latch it up",
        "Latching up a rib: one column at a time. Put the latch tool through the column’s stitch in the first row of the band, "
        "so that it runs no further; drop the column from its needle; latch up bar by bar to the top and hang the last loop back.",
    ),
    (
        "marker thread",
        "A marker: knot a thread of another colour into the end stitch at both edges.",
    ),
)


def handwork(instructions: Instructions) -> Advice:
    """What is done by hand in this pattern; without lines when nothing needs a word."""
    sentences = [s.text for section in instructions.sections for p in section.paragraphs for s in p.sentences]
    words = "\n".join(f"{text}." for text in sentences)
    return Advice("Work by hand", tuple(text for sign, text in _WAYS if sign.lower() in words.lower()))
