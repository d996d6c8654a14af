"""How-tos of stitch patterns: moved, held, dropped, crossed and re-formed stitches."""

from __future__ import annotations

from walewright.guide.model import HowToText

HOW_TO = {
    "eyelet-and-lace": HowToText(
        "Eyelet and lace",
        "With the transfer tool take the stitch off its needle and set it on the needle beside it, on top of the stitch there. "
        "Leave the empty needle in work: the next row lays the yarn across its hook, the row after makes a stitch of it, and "
        "the hole is open. Stitches that go one needle on together are moved together, with a tool of so many prongs. Before "
        "each row see that all latches are open and the doubled needles a little forward.",
        "a stitch set on the needle at its right, its own needle left empty in work",
    ),
    "tuck-by-holding": HowToText(
        "Tuck by holding",
        "Pull the needle right out and let it wait, its stitch on it, while the carriage goes by; the yarn lies over its shank "
        "each time. When its rows are over push it back until its latch is behind the stitch: the next row draws one loop "
        "through the stitch and all the strands. Keep the weight even; a needle that waits too long drops its strands.",
        "one needle pulled out, two strands of yarn lying over it between its neighbours",
    ),
    "slip": HowToText(
        "Slip",
        "Pull the needle right out, knit the row, and lift the new strand off over its hook to your side: it lies across the "
        "purl side and the stitch is a row taller. Push the needle back at once.",
        "one needle pulled out, the strand lifted off in front of its stitch",
    ),
    "long-stitch": HowToText(
        "Long stitch",
        "Pull the needle right out and knit the row: the yarn lies over its shank. Then, from the needle nearest the carriage "
        "on, push each back by hand, so that it takes this yarn through its stitch, and draw the new loop long with the "
        "tool, feeding yarn on from the carriage: taken from its neighbours it would make them tight. All alike: lay a card "
        "or a thin rod between bed and loops to measure by.",
        "two stitches drawn far longer than their neighbours",
    ),
    "ladder": HowToText(
        "Ladder",
        "Set the first stitch of the ladder on its neighbour and leave the needle in work: it begins a new column, which is "
        "knitted like the others. When the rows are over, drop the column: it runs down to where it began and no further. "
        "Leave the needle in work; the next row starts it again. Draw the bars straight.",
        "a column of bars between two columns of stitches",
    ),
    "crossing-stitches": HowToText(
        "Crossing stitches",
        "Take the two groups off on two tools. Hang the group that the key names first across on the needles of the other, "
        "then the other group on the needles left. Pull all of them forward, latches open behind the stitches, and knit the "
        "next row slowly, by hand if it goes hard. The group hung first lies in front on the knit side.",
        "two stitches led across two others",
    ),
    "slack-beside-a-cross": HowToText(
        "Slack beside a cross",
        "Before the cross, drop the purl columns next to it from their needles, one at the left and one at the right, "
        "only down to where they were latched up last: the bars give the yarn that the crossed stitches need. Cross, then "
        "latch them up towards you, to the top, and hang them back.",
        "the columns at both sides of a group dropped to bars, one being latched up",
    ),
    "purl-columns-and-ridges": HowToText(
        "Purl columns and ridges",
        "Stitches that show their purl side on the knit side are knitted plain and re-formed. When the rows of the run are "
        "done, put the latch tool from your side through the stitch below the first of them, drop the column from its "
        "needle, catch the bar behind and draw it through towards you, bar after bar; hang the last loop back. The column "
        "then shows knit stitches on the side that faces you. For a ridge every column of the row is re-formed so, one row "
        "deep.",
        "a dropped column, the latch tool drawing its bars through one after the other",
    ),
}
