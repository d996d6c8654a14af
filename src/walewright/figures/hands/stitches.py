"""How-tos of stitch patterns: moved, held, dropped, crossed and re-formed stitches."""

from __future__ import annotations

from walewright.figures.hands.scene import HOOK, OUT, Scene
from walewright.figures.hands.technique import Technique
from walewright.figures.pens import path


def _eyelet(s: Scene) -> None:
    s.needles().loops(0, 1, 2, 4, 5)
    s.loop(4, 15, top=HOOK - 3.6)
    s.transfer_tool(4, 1)
    s.arrow((s.x(3), HOOK + 4.2), (s.x(4) - 1.4, HOOK + 4.2), 0.6)
    s.word(s.x(3), 21.6, "left in work")


def _tuck(s: Scene) -> None:
    s.needles(out=(2,)).loops(0, 1, 3, 4, 5)
    s.loop(2, 18.5, out=OUT)
    for lift in (0.0, 1.4):
        y = HOOK - 0.4 - lift
        s.yarn((0.6, y + 1), (s.x(1), y), (s.x(2), y - 2.2), (s.x(3), y), (s.width - 0.6, y + 1))
    s.word(s.x(2), 21.9, "the yarn lies over it")


def _slip(s: Scene) -> None:
    s.needles(out=(2,)).loops(0, 1, 3, 4, 5)
    s.loop(2, 15.5, out=OUT)
    s.yarn((0.6, 10.4), (s.x(1), HOOK - 0.2), (s.x(2), 17.6), (s.x(3), HOOK - 0.2), (s.width - 0.6, 10.4))
    s.arrow((s.x(2) + 2.8, 12), (s.x(2) + 2.8, 16.6))
    s.word(s.x(2), 21.9, "lifted off, in front")


def _long(s: Scene) -> None:
    s.needles().loops(0, 1, 4, 5)
    s.loop(2, 20.5)
    s.loop(3, 20.5)
    s.arrow((s.x(3) + 3.2, 12.5), (s.x(3) + 3.2, 20))


def _ladder(s: Scene) -> None:
    s.needles().loops(0, 1, 2, 4, 5, low=12.5)
    s.bars(3, 12.5, 20)
    s.cloth(0, 2, 14.2, 21).cloth(4, 5, 14.2, 21)


def _cross(s: Scene) -> None:
    s.needles(count=6).loops(0, 5)
    for a, b in ((3, 1), (4, 2)):
        s.other((s.x(a), 19), (s.x(a) - 0.6, 16.6), (s.x(b) + 1.4, 10.6), (s.x(b), HOOK - 1.9))
    for a, b in ((1, 3), (2, 4)):
        s.paper.draw("strand", path([(s.x(a), 19), (s.x(a) + 0.6, 16.6), (s.x(b) - 1.4, 10.6)]), colour="#ffffff", width=2.2)
        s.yarn((s.x(a) - 0.5, 19), (s.x(a) + 0.1, 16.2), (s.x(b) - 1.9, 10.2), (s.x(b), HOOK - 1.9))
        s.yarn((s.x(a) + 0.5, 19), (s.x(a) + 1.1, 16.8), (s.x(b) - 0.9, 11), (s.x(b) + 0.2, HOOK - 1.9))
    s.arrow((s.x(1), 21.4), (s.x(2) + 3, 21.4))
    s.arrow((s.x(4), 21.4), (s.x(3) - 3, 21.4))


def _slack(s: Scene) -> None:
    s.needles(count=6).loops(1, 2, 3, 4, low=12.5)
    s.bars(0, 11.5, 20).bars(5, 11.5, 20)
    s.cloth(1, 4, 14.2, 21)
    s.latch_tool(s.x(5) - 0.4, 16.4, 20, 7)


def _re_formed(s: Scene) -> None:
    s.needles().loops(0, 1, 3, 4, 5, low=12.5)
    s.cloth(0, 1, 14.2, 21).cloth(3, 5, 14.2, 21)
    s.bars(2, 11.5, 16.8)
    x = s.x(2)
    s.yarn((x - 1.2, 21.6), (x - 0.9, 19.4), (x, 17.8), (x + 0.9, 19.4), (x + 1.2, 21.6))
    s.latch_tool(x + 0.2, 16.2, 62, 11)
    s.arrow((x - 3.4, 19.5), (x - 3.4, 11.5))


TECHNIQUES = (
    Technique(
        "Eyelet and lace",
        ("cell hole", "cell two from left", "cell two from right", "cell three", "EyeletAt"),
        "With the transfer tool take the stitch off its needle and set it on the needle beside it, on top of the stitch there. "
        "Leave the empty needle in work: the next row lays the yarn across its hook, the row after makes a stitch of it, and the "
        "hole is open. Stitches that go one needle on together are moved together, with a tool of so many prongs. Before each "
        "row see that all latches are open and the doubled needles a little forward.",
        "a stitch set on the needle at its right, its own needle left empty in work",
        _eyelet,
    ),
    Technique(
        "Tuck by holding",
        ("cell tuck",),
        "Pull the needle right out and let it wait, its stitch on it, while the carriage goes by; the yarn lies over its shank "
        "each time. When its rows are over push it back until its latch is behind the stitch: the next row draws one loop "
        "through the stitch and all the strands. Keep the weight even; a needle that waits too long drops its strands.",
        "one needle pulled out, two strands of yarn lying over it between its neighbours",
        _tuck,
    ),
    Technique(
        "Slip",
        ("cell slip",),
        "Pull the needle right out, knit the row, and lift the new strand off over its hook to your side: it lies across the purl "
        "side and the stitch is a row taller. Push the needle back at once.",
        "one needle pulled out, the strand lifted off in front of its stitch",
        _slip,
    ),
    Technique(
        "Long stitch",
        ("cell long",),
        "Pull the needle right out and knit the row: the yarn lies over its shank. Then, from the needle nearest the carriage "
        "on, push each back by hand, so that it takes this yarn through its stitch, and draw the new loop long with the tool, "
        "feeding yarn on from the carriage: taken from its neighbours it would make them tight. All alike: lay a card or a thin "
        "rod between bed and loops to measure by.",
        "two stitches drawn far longer than their neighbours",
        _long,
    ),
    Technique(
        "Ladder",
        ("cell ladder",),
        "Set the first stitch of the ladder on its neighbour and leave the needle in work: it begins a new column, which is "
        "knitted like the others. When the rows are over, drop the column: it runs down to where it began and no further. Leave "
        "the needle in work; the next row starts it again. Draw the bars straight.",
        "a column of bars between two columns of stitches",
        _ladder,
    ),
    Technique(
        "Crossing stitches",
        ("cell cross",),
        "Take the two groups off on two tools. Hang the group that the key names first across on the needles of the other, then "
        "the other group on the needles left. Pull all of them forward, latches open behind the stitches, and knit the next row "
        "slowly, by hand if it goes hard. The group hung first lies in front on the knit side.",
        "two stitches led across two others",
        _cross,
    ),
    Technique(
        "Slack beside a cross",
        ("cross beside purl",),
        "Before the cross, drop the purl columns right beside it from their needles, one at the left and one at the right, only "
        "down to where they were latched up last: the bars give the yarn that the crossed stitches need. Cross, then latch them "
        "up towards you, to the top, and hang them back.",
        "the columns at both sides of a group dropped to bars, one being latched up",
        _slack,
    ),
    Technique(
        "Purl columns and ridges",
        ("cell purl",),
        "Stitches that show their purl side on the knit side are knitted plain and re-formed. When the rows of the run are done, "
        "put the latch tool from your side through the stitch below the first of them, drop the column from its needle, catch the "
        "bar behind and draw it through towards you, bar after bar; hang the last loop back. The column then shows knit stitches "
        "on the side that faces you. For a ridge every column of the row is re-formed so, one row deep.",
        "a dropped column, the latch tool drawing its bars through one after the other",
        _re_formed,
    ),
)
