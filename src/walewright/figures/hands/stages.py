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
        s.yarn([(x - 1.2, y), (x - 0.9, y - 1.2), (x, y - 2.6), (x + 0.9, y - 1.2), (x + 1.2, y)])
    # The holder through the stitch that was hung last.
    s.transfer_tool(2, 1, 15.2)
    # Beside the tool, whose handle is as low as the words.
    s.word(s.width - 0.4, 23.4, "latched-up-before", "end")


def _on_cord(s: Scene) -> None:
    s.needles(back=(0, 1, 2))
    for i in (0, 1, 2):
        s.loop(i, 15.5, top=HOOK + BACK + 1.2)
    s.loops(3, 4, 5)
    y = HOOK + BACK + 0.6
    s.other([(s.x(i) + dx, y + dy) for i in (0, 1, 2) for dx, dy in ((-3.4, 1.6), (0, -0.7), (3.4, 1.6))])
    s.word(s.x(1), 21.6, "on-cord")


TECHNIQUES = (
    Technique("latching-in-stages", ("LatchInStages", "LatchPanelInStages", "cell purl in stages"), _in_stages),
    Technique("a-part-waiting-on-ravel-cord", ("PartOnCord", "DrawPartsCord"), _on_cord),
)
