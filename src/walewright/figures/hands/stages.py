"""How-tos of what is put by or done in stages: deep ribs, and a part that waits on cord."""

from __future__ import annotations

from walewright.figures.hands.scene import BACK, HOOK, Scene
from walewright.figures.hands.technique import Technique


def _in_stages(s: Scene) -> None:
    s.needles().loops(0, 1, 3, 4, 5, low=12.5)
    s.cloth(0, 1, 14.2, 21).cloth(3, 5, 14.2, 21)
    s.bars(2, 11.5, 15.6)
    for y in (21.8, 19.6):
        x = s.x(2)
        s.yarn((x - 1.2, y), (x - 0.9, y - 1.2), (x, y - 2.6), (x + 0.9, y - 1.2), (x + 1.2, y))
    # The holder through the stitch that was hung last.
    s.transfer_tool(2, 1, 15.2)
    s.word(s.x(3) + 3.6, 20.4, "latched up before")


def _on_cord(s: Scene) -> None:
    s.needles(back=(0, 1, 2))
    for i in (0, 1, 2):
        s.loop(i, 15.5, top=HOOK + BACK + 1.2)
    s.loops(3, 4, 5)
    y = HOOK + BACK + 0.6
    s.other(*((s.x(i) + dx, y + dy) for i in (0, 1, 2) for dx, dy in ((-3.4, 1.6), (0, -0.7), (3.4, 1.6))))
    s.word(s.x(1), 21.6, "on cord")


TECHNIQUES = (
    Technique(
        "Latching in stages",
        ("LatchInStages", "LatchPanelInStages", "cell purl in stages"),
        "A column can be dropped only as deep as it hangs free above the comb and the weights: every 20 to 30 rows on a fine or "
        "standard bed, every 10 to 15 on a coarser one, after an even number, so that the carriage’s side stays. Do it at each of "
        "the named rows, one column at a time: put a holder, a tool or a safety pin, through the foot of the column, then drop it, "
        "latch it up and hang the last loop. The first stage begins in the first stitch of the rib, every other in the loop that "
        "was hung last. The last stage is done before the cast-off; below a hole latch up to its row, make the hole, and go on.",
        "a holder in the stitch that was latched up last, and the bars above it",
        _in_stages,
    ),
    Technique(
        "A part waiting on ravel cord",
        ("PartOnCord", "DrawPartsCord"),
        "Needles that stand right out for more than about 30 rows wear their stitches, so this part waits fully back. From the "
        "middle outwards, lay the cord in the hook of each needle by hand, push the needle back through its stitch as the carriage "
        "would, and on, as far back as it goes: the cord keeps the stitch on its own needle. Leave long ends and take the weights "
        "off that part. When its turn comes, push the needles right out, so that every stitch lies behind its open latch, draw "
        "the cord out from one end, count, and hang the weights again.",
        "three needles fully back with cord in their hooks, their stitches kept on it",
        _on_cord,
    ),
)
