"""How-tos of bands, hems and other edges."""

from __future__ import annotations

from collections.abc import Callable

from walewright.figures.hands.scene import HOOK, Scene
from walewright.figures.hands.technique import Technique
from walewright.figures.pens import path


def _rehung(s: Scene) -> None:
    s.needles().loops(0, 1, 2, low=15)
    s.cloth(0, 5, 15.6, 21)
    for i in (3, 4, 5):
        s.loop(i, 15, top=12.2)
    s.transfer_tool(3, 1, HOOK + 0.4)
    s.arrow((s.x(4), 11.8), (s.x(4), 8.6))


def _latched(s: Scene) -> None:
    s.needles().loops(0, 1, 3, 4, low=12.5)
    s.cloth(0, 1, 14.2, 21).cloth(3, 4, 14.2, 21)
    s.bars(2, 11.5, 16.8)
    for y in (21.8, 19.8):
        x = s.x(2)
        s.yarn((x - 1.2, y), (x - 0.9, y - 1.2), (x, y - 2.6), (x + 0.9, y - 1.2), (x + 1.2, y))
    s.latch_tool(s.x(2) + 0.2, 15.8, 62, 11)
    s.bars(5, 11.5, 21.5)


def _mock(s: Scene, every: int) -> None:
    idle = tuple(range(every - 1, 6, every))
    s.needles(7, back=idle).loops(*(i for i in range(7) if i not in idle))
    for i in idle:
        s.bars(i, 12.4, 16)
    s.word(s.width / 2, 21.6, f"every {'second' if every == 2 else 'third'} one out of work")


def _mock_1_by_1(s: Scene) -> None:
    _mock(s, 2)


def _mock_2_by_1(s: Scene) -> None:
    _mock(s, 3)


def fold(s: Scene, word: str) -> None:
    """The fabric from the side, the knitter at its right: down from the needles behind, folded, and up again in front, the first
    row hung on the same hook. Its purl side, which faces the knitter, lies inside the fold."""
    s.count = 6
    y = 5.0
    s.paper.draw("steel", f"M1 {y - 0.5}L20 {y - 0.5}a1.1 1.1 0 0 1 0 2.2l-0.9 0l0 -0.6l0.8 0a0.4 0.4 0 0 0 0 -0.9L1 {y + 0.3}Z")
    s.yarn((19.6, y), (18.4, 8), (18.2, 12), (18.6, 19), (20.4, 20.6), (22.2, 19), (23, 12), (22.6, y + 3), (19.6, y))
    s.word(15.6, 12, "outside", "end")
    s.word(27.6, 12, "inside", "start")
    s.word(44.8, 5.6, "your side", "end")
    s.word(26, 20.8, word, "start")
    s.arrow((26, 17.6), (24.6, 6.6), -0.8)


def _folded(s: Scene) -> None:
    fold(s, "fold row")


def _picot(s: Scene) -> None:
    s.needles().loops(0, 2, 4)
    for i in (2, 4):
        s.loop(i, 15, top=HOOK - 3.6)
    s.arrow((s.x(1), 13.6), (s.x(2) - 1.6, 13.6), 0.6)
    s.arrow((s.x(3), 13.6), (s.x(4) - 1.6, 13.6), 0.6)
    s.loop(5)
    s.paper.draw("texture", path([(s.x(0) + 3.7 * i, 21 if i % 2 else 18.8) for i in range(11)]))


def _facing(s: Scene) -> None:
    s.count = 6
    s.yarn((26, 3), (26.4, 10), (26, 18), (24, 20.6), (22, 18), (21.6, 11), (21.8, 8))
    s.sewing_needle(14, 6.4, 14, 11)
    s.paper.draw("thread", path([(21.8, 8.4), (25.8, 8.0)]))
    s.word(29, 10, "outside", "start")
    s.word(29, 21, "fold row", "start")


def _rolled(s: Scene) -> None:
    s.count = 6
    s.yarn((26, 2), (26, 11), (24.6, 17.6), (20.4, 19.4), (18, 16.6), (19.8, 14), (22, 15.6), (21, 17.2))
    s.paper.draw("texture", *(path([(25.2, y), (24.2, y + 0.9), (25.2, y + 1.8)]) for y in (3.0, 5.2, 7.4, 9.6)))
    s.word(22, 8, "knit side", "end")
    s.word(29, 8, "purl side", "start")


def _chained(s: Scene) -> None:
    s.needles().loops(0, 1, 2, low=14.4)
    for i in range(3, 6):
        x = s.x(i) - 3
        s.yarn((x, 15), (x + 3.6, 13.8), (x + 6.6, 15), (x + 3.6, 16.2), (x, 15))
    s.latch_tool(s.x(2) + 3.6, 15, 8, 8)
    s.cloth(0, 5, 18, 21)


def _picked_up(s: Scene) -> None:
    s.needles(5)
    left = s.x(0) - 3
    for i in range(9):
        x = left + i * 4.1
        s.paper.draw(
            "texture", f"M{x:.2f} 15.6q1 2 2 0q1 -2 2 0", f"M{x:.2f} 18.6q1 2 2 0q1 -2 2 0", f"M{x:.2f} 21.4q1 2 2 0q1 -2 2 0"
        )
    for needle, at in enumerate((0.2, 1.6, 3.0, 5.0, 6.6)):
        s.loop(needle, 15.2, top=HOOK - 1.6)
        s.paper.draw("measure", path([(s.x(needle), 12.4), (left + at * 4.1 + 2, 15.2)]))


def _mock_rib(ribs: str, every: int, draw: Callable[[Scene], None]) -> Technique:
    which = "second" if every == 2 else "third"
    return Technique(
        f"Mock rib {ribs}",
        (f"EveryOutOfWork {every}", f"edging mock rib {every}"),
        f"Push every {which} needle, counted from the left and without the last, out of work before the waste yarn is cast on; "
        "knit twice the depth, the row in the middle looser where the lines say so. Then bring the empty needles back to work, "
        "turn the first row up in front, towards you, purl sides together, and hang its loops: the one left of each empty needle "
        "goes on that, the others where they came from. Set the looser tension that the line names and knit both layers together "
        "in one row. The bars of the gaps draw in to a rib.",
        f"every {which} needle out of work, bars lying in the gaps",
        draw,
    )


TECHNIQUES = (
    Technique(
        "Hanging a first row",
        ("RehangStart",),
        "Turn the piece upside down, the side that the line names to you. Hang the loop between two stitches of the first garment "
        "row on each needle, and the outermost loop of the edge on the last; pull the ravel cord, and the waste comes away, when "
        "all hang.",
        "loops of the first row being set on the needles one by one",
        _rehung,
    ),
    Technique(
        "Picking up along rows",
        ("PickUpAlong",),
        "The side that the line names faces you, the edge along the needles, the end that it names at the left. Loops on waste "
        "yarn are hung one by one and the waste taken out; along rows, push the needle through the edge, a whole stitch deep, "
        "spreading the stitches evenly: about three for four rows, as many as the line says. Along a cast-off edge take both "
        "threads of the chain, stitch for stitch; along a cast-on edge, the loop at the foot of each stitch.",
        "needles taking up an edge at even distances, fewer than there are rows",
        _picked_up,
    ),
    Technique(
        "Latched rib",
        ("LatchRib", "LatchPanel", "LatchInStages", "LatchPanelInStages"),
        "One column at a time. Put the latch tool through the column’s stitch in the first row of the rib, so that it runs no "
        "further, the tool on your side; drop the column from its needle; draw bar after bar through towards you, to the top, "
        "and hang the last loop back. The column then shows knit stitches on the side that faces you.",
        "one column dropped to its first row and another being latched up",
        _latched,
    ),
    _mock_rib("1 by 1", 2, _mock_1_by_1),
    _mock_rib("2 by 1", 3, _mock_2_by_1),
    Technique(
        "Folded hem",
        ("edging folded",),
        "The first row is turned up in front, towards you, so that the purl sides lie together and the knit side is outside. "
        "A hem at the beginning: knit the part that will lie inside, the fold row if the lines have one, and the outside; turn the "
        "first row up, take the waste out loop by loop, and hang each loop on the needle on which it was made, straight above its "
        "column. Count the loops, set the looser tension that the line names and knit both layers together in one row, slowly. "
        "A band that was knitted on: lift the line along which it hangs up in front, hang the loop of its first row below "
        "each stitch on that stitch’s needle, and cast off through both, loosely.",
        "the fabric from the side, turned up in front and its first row hung on the hook it hangs from",
        _folded,
    ),
    Technique(
        "Picot hem",
        ("PicotRow", "edging picot"),
        "Knit the first half; then set every second stitch on the needle at its right, as the line says, and leave the empty "
        "needles in work. Knit the second half. Turn the first row up in front, towards you, purl sides together, hang each of its "
        "loops straight above its column, the waste taken out loop by loop where it began in waste yarn, and count; knit or cast "
        "off both layers together as the line says. The row of holes is the fold and makes small points.",
        "every second stitch set on its neighbour, and the edge of points that comes of it",
        _picot,
    ),
    Technique(
        "Rolled edge",
        ("edging rolled",),
        "Nothing is hung up or sewn down: the plain fabric rolls to its knit side of itself at a first or last row, as edges of "
        "rows roll to the purl side. Do not press it flat.",
        "the edge from the side, rolled towards the knit side",
        _rolled,
    ),
    Technique(
        "Facing",
        ("edging facing",),
        "A looser row makes the fold; the rows after it are turned in. Sew the last row down on the wrong side, stitch by stitch, "
        "through one thread of the fabric only, not tight, so that nothing shows and the edge still stretches.",
        "the edge from the side, turned in and sewn down with a blunt needle",
        _facing,
    ),
    Technique(
        "Chained edge",
        ("edging chained",),
        "Hang the edge on the needles, knit one row, not tight, and cast off with the latch tool, each loop as long as two "
        "stitches: a line of chain lies along the edge.",
        "a chain drawn along the edge with the latch tool",
        _chained,
    ),
)
