"""How-tos of more than one yarn."""

from __future__ import annotations

from walewright.figures.hands.scene import HOOK, OUT, Scene
from walewright.figures.hands.technique import Technique


def _in_row(s: Scene) -> None:
    s.needles(out=(1, 3, 4)).loops(0, 2, 5)
    s.loops(1, 3, 4, low=18.5, out=OUT)
    low = HOOK + OUT - 0.2
    s.other(
        [
            (0.6, low + 3),
            (s.x(1) - 1, low),
            (s.x(1) + 1, low),
            (s.x(2), low + 2.6),
            (s.x(3) - 1, low),
            (s.x(4) + 1, low),
            (s.width - 0.4, low + 4),
        ],
    )


def _picture(s: Scene) -> None:
    s.needles().loops(0, 1, 2, 3, 4, 5)
    y = HOOK + 0.1
    s.yarn([(0.6, y + 0.6), (s.x(0), y), (s.x(1), y), (s.x(2), y), (s.x(2) + 3, y + 2), (s.x(2) + 4.6, 20)])
    s.other([(s.x(5) + 3, y), (s.x(3), y), (s.x(2) + 3.4, y + 1.4), (s.x(2) + 2.2, y + 5), (s.x(2) + 2.2, 20)])
    for x in (s.x(2) + 2.2, s.x(2) + 4.9):
        s.paper.draw("steel", f"M{x - 0.8:.2f} 19.6l1.6 0l-0.3 3.2l-1 0Z")
    s.word(s.x(0) + 2, 21.9, "crossed")
    s.arrow((s.x(0) + 7, 21), (s.x(2) + 1.4, 12.4), 1.0)


def _carried(s: Scene) -> None:
    s.needles(count=5)
    s.loops(1, 2, 3, 4, low=12.5)
    s.cloth(1, 4, 14.4, 22)
    x = s.x(1) - 3.7
    s.other([(s.x(4) + 3, 16.3), (x, 16.3), (x - 1.2, 18), (x - 1.2, 20), (x, 21.8)])
    s.yarn([(x, 14.4), (x - 2.4, 15.4), (x - 2.4, 21), (x, 21.8)])


TECHNIQUES = (
    Technique("colour-in-the-row-by-hand", ("other yarn",), _in_row),
    Technique("picture-knitting", ("picture",), _picture),
    Technique("stripes-carried-up-the-side", ("StartStripes carried",), _carried),
)
