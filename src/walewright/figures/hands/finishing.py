"""How-tos of stitches that wait, are closed or drawn up, and of what is done at the end."""

from __future__ import annotations

from walewright.figures.hands.scene import HOOK, OUT, Scene
from walewright.figures.hands.starts import wrap
from walewright.figures.hands.technique import Technique
from walewright.figures.pens import path


def _mid_row(s: Scene) -> None:
    s.needles(back=(2, 3)).loops(0, 1, 4, 5)
    for i in (2, 3):
        s.loop(i, 18, top=12)
    s.other((s.x(2) - 4, 15.4), (s.x(2) - 1, 13.4), (s.x(3) + 1, 13.4), (s.x(3) + 4, 15.4))
    s.sewing_needle(s.x(3) + 3.4, 15.2, 20, 8)


def _at_end(s: Scene) -> None:
    s.needles()
    s.cloth(0, 5, 13, 15.4)
    s.other((1, 12.6), (s.width - 1, 12.6))
    for i in range(6):
        s.loop(i, 18.6, top=16.2)
    s.cloth(0, 5, 19.6, 22)


def _closed(s: Scene) -> None:
    s.needles().loops(0, 3, 4, 5)
    s.yarn((s.x(1), 14.5), (s.x(2), 13), (s.x(3) - 0.4, HOOK - 1.6), (s.x(3) - 1.4, 12), (s.x(2), 15.6), (s.x(1), 16.2))
    s.latch_tool(s.x(3) + 0.2, HOOK + 1.4, 16, 11)
    s.arrow((s.x(1), 19.4), (s.x(3), 19.4))


def _slot(s: Scene) -> None:
    s.needles().loops(0, 1, 4, 5)
    s.loops(2, 3, low=15)
    s.other((s.x(2) - 2, 16), (s.x(3) + 2, 16))
    for i in (2, 3):
        s.loop(i, 21.5, top=17.2)
    s.cloth(0, 1, 17.6, 22).cloth(4, 5, 17.6, 22)


def _apart(s: Scene) -> None:
    s.needles(out=(2, 3)).loops(0, 1, 4, 5)
    wrap(s, range(2, 4), HOOK + OUT - 3)
    s.word(s.width / 2, 21.9, "a length of its own")


def _drawn_up(s: Scene) -> None:
    s.needles(5)
    for i in range(5):
        s.loop(i, 19, top=14.2)
    s.yarn((1.0, 16.4), (s.x(1), 16), (s.x(4) + 1, 16.4), (s.x(4) + 2.6, 14.6), (s.x(4) + 0.6, 13.4))
    s.sewing_needle(s.x(3) - 1.0, 12.2, 8, 9)


def _sewn_off(s: Scene) -> None:
    s.needles().loops(0, 1, low=15)
    for i in (2, 3, 4, 5):
        s.loop(i, 18, top=13)
    x2, x3 = s.x(2), s.x(3)
    s.other((s.width - 1, 11.2), (s.x(4), 14.4), (s.x(3), 14.4), (s.x(3) + 2, 12), (s.x(4) - 1.4, 12))
    s.other((x3, 14.4), (x2 - 1, 14.8), (x2 - 6, 17))
    s.sewing_needle(s.x(0) - 1, 18.2, -8, 9)


def _marker(s: Scene) -> None:
    s.needles(5).loops(0, 1, 2, 3, 4, low=12.5)
    s.cloth(0, 4, 14.2, 21)
    x = s.x(4)
    s.other((x, 17), (x + 2.4, 18.6), (x + 2, 21.5))
    s.other((x, 17), (x + 2.8, 16.2), (x + 3.6, 19.4))


def _buttonhole(s: Scene) -> None:
    s.count = 6
    s.cloth(0, 5, 3.5, 9).cloth(0, 5, 15.5, 21.5).cloth(0, 1, 10, 14.4).cloth(4, 5, 10, 14.4)
    x0, x1 = s.x(2) - 3.4, s.x(3) + 3.4
    s.paper.draw("thread", path([(x0, 10.2), (x1, 10.2)]), path([(x0, 14.2), (x1, 14.2)]))
    for i in range(8):
        x = x0 + 0.6 + i * 1.9
        s.paper.draw("measure", path([(x, 9.2), (x, 11)]), path([(x, 13.4), (x, 15.2)]))


TECHNIQUES = (
    Technique(
        "Off on waste yarn in mid-row",
        ("CentreToWaste",),
        "Leave the garment yarn where it is. With a length of waste yarn knit these stitches by hand, 8 rows, and take them "
        "off; or thread it through the loops with a blunt needle and lift them off. Push the emptied needles out of work.",
        "a waste yarn threaded through the stitches in the middle, their needles out of work",
        _mid_row,
    ),
    Technique(
        "Off on waste yarn at the end",
        ("OffOnWaste",),
        "Thread the waste yarn in the carriage and knit the rows. See that a part which waits is right out and the carriage set "
        "not to knit it. Take the weights off and hold the work: then take the yarn out and knit once more without it, so that "
        "the work falls from the needles. Push the emptied needles out of work.",
        "empty needles; below them rows of waste yarn hold the last stitches",
        _at_end,
    ),
    Technique(
        "Closing stitches without yarn",
        ("CloseCentre", "SlotClosed"),
        "Begin at the left. Set the first loop on the needle to its right, behind the loop there, and draw that one forward "
        "through it with the latch tool, so that one loop is left; go on to the right. The last loop goes on the needle "
        "after, which then knits two together. Do not stretch the chain: it is as long as the stitches were.",
        "loops chained through each other towards the right",
        _closed,
    ),
    Technique(
        "A slot on waste yarn",
        ("SlotOnWaste",),
        "Knit the named stitches by hand with a length of waste yarn, a few rows, and drop them; pin the waste to the "
        "front. Then cast on again on the same needles, see below. The loops on the waste wait for a thumb, a pocket or a "
        "lining: a line that hangs them calls them by the slot’s own name, and the foot of the stitches cast on above, which wait "
        "too, its “upper” edge.",
        "stitches on waste yarn below, new stitches on their needles above",
        _slot,
    ),
    Technique(
        "E-wrap with a length of its own",
        ("SlotOnWaste", "SlotClosed", "CastOnBetween"),
        "The yarn in the carriage stays where it is. Cut a length of the same yarn about four times as long as the needles "
        "are wide. Bring the empty needles right out; lead the length round each from left to right, a crossed loop on each "
        "shank, not tight. Leave a tail at both ends: they close the corners and are sewn in when the piece is put "
        "together. Hang a weight below.",
        "a short length of yarn wound round the empty needles between the stitches",
        _apart,
    ),
    Technique(
        "Back-stitch cast-off",
        ("SewOffAll",),
        "Break the yarn with the tail that the line gives, about three times the width, and thread it in a blunt needle. From "
        "the carriage side: through the second loop, back through the first, so that a back-stitch lies over both; slip the "
        "first off, and go on, always two on and one back. Draw the thread no tighter than a row.",
        "a blunt needle sewing back-stitches through the last loops",
        _sewn_off,
    ),
    Technique(
        "Drawing up",
        ("GatherAll",),
        "Break the yarn with the tail that the line gives and thread it in a blunt needle. Take it through every "
        "loop in turn, lift the loops from the bed, draw up until no hole is left, go round once more and fasten on the "
        "wrong side.",
        "the tail threaded through the last loops",
        _drawn_up,
    ),
    Technique(
        "A marker",
        ("MarkEdges",),
        "Knot a thread of another colour into the end stitch, at the edge or edges that the line names.",
        "a contrasting thread knotted into the end stitch",
        _marker,
    ),
    Technique(
        "Buttonholes",
        ("buttonholes",),
        "Mark where the buttons go from the finished holes, not from the drawing. Neaten each hole with a few stitches round "
        "its edge; a hole that is to be worked hard gets a backing of ribbon or a small button inside.",
        "a slot in the fabric, its edges oversewn",
        _buttonhole,
    ),
)
