"""The handwork behind the short sentences: each way of working is explained once, and only if the pattern has it.

All of it is common practice, in words of our own.
"""

from __future__ import annotations

from collections.abc import Iterator

from walewright.design.model import Design
from walewright.pages.model import Advice
from walewright.write.model import Instructions

_WAYS: tuple[tuple[str, tuple[str, ...], str], ...] = (
    (
        "Start on waste yarn",
        ("WasteStart",),
        "Hang the comb on the bed with the waste yarn laid over it, knit, and hang weights evenly on the comb, about one "
        "for each 20 stitches; move them up every 20 rows or so. The ravel cord is laid in for one row and knits the next "
        "thing to the waste: pulled out, it lets the waste come away.",
    ),
    (
        "A closed start",
        ("ClosedStart",),
        "E-wrap: with the needles right out, lead the yarn round each shank in turn from behind, the loops crossed, and "
        "push every loop back behind its latch; knit the first rows slowly. Chain: bring the yarn under the needle, catch "
        "it from above with the latch tool and draw a chain stitch over the needle; go on to the next.",
    ),
    (
        "A decrease at the edge",
        ("Decrease",),
        "Move the end loop on to its neighbour and push the emptied needle out of work. Where the line says so many "
        "stitches in, take the tool with as many prongs, lift the end loops together and set them one needle inwards: two "
        "loops then share the innermost needle. Move the edge weight each time.",
    ),
    (
        "An increase some stitches in",
        ("IncreaseFashioned",),
        "With the tool of as many prongs, lift the end loops together and set them one needle outwards. On the needle left "
        "empty hang the loop below the next stitch inwards, so that no hole is left.",
    ),
    (
        "An increase at the carriage",
        ("IncreaseAtCarriage",),
        "Bring the next empty needle to work on the side where the carriage stands: the next row lays a loop in its hook. "
        "See that the loop is caught, and that it knits in the row after.",
    ),
    (
        "Casting off",
        ("CastOffAtCarriage", "CastOffAll"),
        "At the carriage side, set the end loop on the next needle, lay the yarn in that hook, pull a loose loop through "
        "both, and go on. Make the loops as long as two stitches, so that the edge stretches. "
        "Push the emptied needles out of work.",
    ),
    (
        "Casting on beside the work",
        ("CastOnAtCarriage",),
        "On the carriage side, bring the empty needles right out and lead the yarn round each from the work outwards, a "
        "loop on each shank, not tight. Hang a weight below the new loops before the next row.",
    ),
    (
        "Holding",
        ("HoldAtEnd", "HoldPart", "ReturnHeld", "ReturnPart", "ReturnSome"),
        "Pull the needles right out and set the carriage so that it does not knit them. What is taken back to work is "
        "pushed by hand until the latch lies behind the loop; a part that still waits stays out.",
    ),
    (
        "Wrapping",
        ("WrapHeld",),
        "Before the carriage goes back, lay the yarn under and over the held needle next to the knitting. Without it there "
        "is a hole.",
    ),
    (
        "Returning needles in steps",
        ("ReturnSome",),
        "Push back only the needles that the line names, those next to the knitting, to the place where the latch lies "
        "behind the loop; the others stay held. Knit towards them, wrap the first that is still held, and knit back. Move "
        "the weights to where rows are being added: held stitches with a weight below them stretch.",
    ),
    (
        "Hanging stitches back evenly",
        ("SpreadEvenly",),
        "Leave the counter, the carriage and the garment yarn as they are: lift the loops off on to combs or a thread, or knit "
        "some rows of waste yarn by hand and take the work off. Push the emptied needles out of work. Bring the needles that "
        "the line names to work. With the wrong side facing, hang the loops back from left to right in the order given, through "
        "the garment yarn and not the waste; where two share a needle put both in one hook, where a needle stays empty leave it "
        "in work: the next row gives it a loop. Count before the waste is drawn out, and knit the first row slowly.",
    ),
    (
        "Off on waste yarn in mid-row",
        ("CentreToWaste",),
        "Leave the garment yarn where it is. With a length of waste yarn knit these stitches by hand, 8 rows, and take them "
        "off; or thread it through the loops with a blunt needle and lift them off. Push the emptied needles out of work.",
    ),
    (
        "Off on waste yarn at the end",
        ("OffOnWaste",),
        "Thread the waste yarn in the carriage, knit the rows, take the yarn out and knit once more without it, so that the "
        "work falls from the needles. Push the emptied needles out of work.",
    ),
    (
        "Closing stitches without yarn",
        ("CloseCentre", "SlotClosed"),
        "Begin at the left. Set the first loop on the needle to its right, behind the loop there, and draw that one forward "
        "through it with the latch tool, so that one loop is left; go on to the right. The last loop goes on the needle "
        "after, which then knits two together. Do not stretch the chain: it is as long as the stitches were.",
    ),
    (
        "A slot on waste yarn",
        ("SlotOnWaste",),
        "Knit the named stitches by hand with a length of waste yarn, a few rows, and drop them; pin the waste to the "
        "front. Then cast on again on the same needles, see below. The loops on the waste wait for a thumb, a pocket or a "
        "lining.",
    ),
    (
        "E-wrap with a length of its own",
        ("SlotOnWaste", "SlotClosed", "CastOnBetween"),
        "The yarn in the carriage stays where it is. Cut a length of the same yarn about four times as long as the needles "
        "are wide. Bring the empty needles right out; lead the length round each from left to right, a crossed loop on each "
        "shank, not tight. Leave a tail at both ends and sew them in, closing the corners. Hang a weight below.",
    ),
    (
        "An eyelet",
        ("EyeletAt",),
        "With the 1-prong tool set the loop on the needle beside it that the line names, and leave the empty needle in "
        "work. The next row lays the yarn across its hook and the one after knits it: a hole that a small button goes "
        "through.",
    ),
    (
        "Drawing up",
        ("GatherAll",),
        "Break the yarn with a tail three times as long as the row and thread it in a blunt needle. Take it through every "
        "loop in turn, lift the loops from the bed, draw up until no hole is left, go round once more and fasten on the "
        "wrong side.",
    ),
    (
        "Hanging a first row",
        ("RehangStart",),
        "Turn the piece upside down with the wrong side facing. Hang the loop between two stitches of the first garment row "
        "on each needle, and the outermost loop of the edge on the last; pull the ravel cord when all hang.",
    ),
    (
        "Picking up",
        ("PickUpAlong",),
        "Wrong side facing, the edge along the needles. Loops on waste yarn are hung one by one and the waste taken out; "
        "along rows, push the needle through the edge, a whole stitch deep, spreading the stitches evenly.",
    ),
    (
        "Latching up a rib",
        ("LatchRib", "LatchPanel"),
        "One column at a time. Put the latch tool through the column’s stitch in the first row of the band, so that it runs "
        "no further; drop the column from its needle; latch up bar by bar to the top and hang the last loop back.",
    ),
    ("A marker", ("MarkEdges",), "Knot a thread of another colour into the end stitch at both edges."),
)
"""(technique, classes of the steps that need it, what to do), in the order of work."""

_JOINS: tuple[tuple[str, str, str], ...] = (
    (
        "sewn",
        "Sewing row to row",
        "Lay the pieces side by side, right sides up. Take the needle under the bar between the edge stitch and its "
        "neighbour on one side, then on the other, row for row, and draw the thread so that the edge stitches turn in: one "
        "stitch of each side goes into the seam.",
    ),
    (
        "grafted",
        "Grafting",
        "Lay the two rows of open loops against each other, right sides up, and unravel the waste a few loops at a time. "
        "With a blunt needle go down through a loop and up through the next on one side, then on the other, as a row of "
        "stitches runs, drawing each to the size of its neighbours.",
    ),
    (
        "linked",
        "Linking two edges",
        "Hang one edge on the bed with the right side facing, loop for loop, then the other on the same needles with the "
        "wrong side facing, so that the right sides meet. Draw the loops behind through those in front, or knit one loose "
        "row, and cast off loosely.",
    ),
    (
        "gathered",
        "Sewing a gathered edge",
        "Run a thread through the longer edge and draw it up to the length of the other. Spread the fullness evenly, pin, "
        "and sew; the thread stays until the seam is done.",
    ),
)

_BUTTONHOLES = (
    "Buttonholes",
    "Mark where the buttons go from the finished holes, not from the drawing. Neaten each hole with a few stitches round "
    "its edge; a hole that is to be worked hard gets a backing of ribbon or a small button inside.",
)


def handwork(design: Design, instructions: Instructions) -> tuple[Advice, ...]:
    """What is done by hand in this pattern, one technique each; none when nothing needs a word."""
    return tuple(_handwork(design, instructions))


def _handwork(design: Design, instructions: Instructions) -> Iterator[Advice]:
    sections = (*instructions.sections, instructions.joining)
    sentences = [s for section in sections for p in section.paragraphs for s in p.sentences]
    kinds = {kind for s in sentences for kind in s.kinds}
    for title, steps, text in _WAYS:
        if kinds & set(steps):
            yield Advice(title, (text,))
    if any(p.buttonholes for p in design.pieces) or any(b.holes for b in design.bands):
        yield Advice(_BUTTONHOLES[0], (_BUTTONHOLES[1],))
    ways = {join.way for join in design.joins}
    for way, title, text in _JOINS:
        if way in ways:
            yield Advice(title, (text,))
