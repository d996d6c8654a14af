"""How-tos of putting edges together."""

from __future__ import annotations

from walewright.figures.hands.scene import HOOK, Scene
from walewright.figures.hands.technique import Technique
from walewright.figures.pens import path, zigzag


def _sewn(s: Scene) -> None:
    s.count = 6
    for x, sign in ((17, -1), (28, 1)):
        for i in range(6):
            y = 3 + i * 3.2
            s.paper.draw("texture", path([(x + sign * 2, y), (x + sign * 4.4, y + 1.8), (x + sign * 6.8, y)]))
            s.paper.draw("measure", path([(x, y + 0.6), (x + sign * 1.6, y + 0.6)]))
    s.yarn([(17, 20), (28, 18.4), (17, 16.6), (28, 15), (17, 13.4), (28, 11.8)])
    s.sewing_needle(18, 9.0, 18, 11)


def _stitches(s: Scene, y: float, up: bool) -> None:
    """A row of stitches along a closed edge: each a V, its chain beyond."""
    for i in range(5):
        x = s.x(i) + 3.2
        tip = y + 3 if up else y - 3
        s.paper.draw("texture", path([(x - 2.4, y), (x, tip), (x + 2.4, y)]))
    beyond = y - 1.6 if up else y + 1.6
    s.paper.draw("thread", zigzag(2, s.width - 2, beyond, 0.7, 1.2))


def _to_rows(s: Scene) -> None:
    s.count = 6
    _stitches(s, 7.2, False)
    for i in range(7):
        x = 3.6 + i * 6.0
        s.paper.draw("measure", path([(x - 1.8, 15.4), (x + 1.8, 15.4)]))
        s.paper.draw("texture", path([(x - 1.8, 18), (x, 20), (x + 1.8, 18)]))
    s.yarn([(3.6, 15.4), (s.x(0) + 3.2, 6.0), (9.6, 15.4), (s.x(1) + 3.2, 6.0), (15.6, 15.4), (21.6, 15.4), (s.x(2) + 3.2, 6.0)])
    s.sewing_needle(s.x(2) + 6.0, 8.4, 20, 11)
    s.word(s.width - 1, 21.9, "rows", "end")
    s.word(s.width - 1, 2.2, "stitches", "end")


def _stitch_to_stitch(s: Scene) -> None:
    s.count = 6
    _stitches(s, 6.4, False)
    _stitches(s, 16.2, True)
    points: list[tuple[float, float]] = []
    for i in range(3):
        x = s.x(i) + 3.2
        points += [(x - 1.6, 17.6), (x + 1.6, 17.6), (x - 1.6, 5.0), (x + 1.6, 5.0)]
    s.yarn(points)
    s.sewing_needle(s.x(2) + 6.6, 7.4, 20, 11)


def _grafted(s: Scene) -> None:
    s.count = 6
    for i in range(5):
        x = s.x(i) + 2.5
        s.paper.draw("thread", f"M{x - 1.8:.2f} 3L{x - 1.8:.2f} 6a1.8 2 0 0 0 3.6 0L{x + 1.8:.2f} 3")
        s.paper.draw("thread", f"M{x - 1.8:.2f} 20.5L{x - 1.8:.2f} 17.5a1.8 2 0 0 1 3.6 0L{x + 1.8:.2f} 20.5")
    y = 12.0
    points = []
    for i in range(4):
        x = s.x(i) + 2.5
        points += [(x - 0.9, 16.8), (x, y), (x + 0.9, 7), (x + 3.2, 6.2), (x + 4.6, 8), (x + 3.7, y)]
    s.other(points[: 6 * 2 + 3])
    s.sewing_needle(s.x(2) + 5.4, 11.2, 6, 11)


def _linked(s: Scene) -> None:
    s.needles()
    for i in range(6):
        s.loop(i, 17, top=HOOK - 3.4)
        s.loop(i, 14.5, top=HOOK - 1.4)
    s.cloth(0, 5, 18, 22)


def _gathered(s: Scene) -> None:
    s.count = 6
    s.paper.draw("thread", zigzag(5, 38, 7, 2.6, 2.2))
    s.paper.draw("texture", path([(5, 14), (38, 14)]), path([(5, 16), (38, 16)]), path([(5, 18), (38, 18)]))
    for i in range(5):
        s.paper.draw("measure", path([(7 + i * 7, 8.5), (7 + i * 7, 13.5)]))
    s.arrow((42, 4), (38.5, 6.4))


TECHNIQUES = (
    Technique("sewing-row-to-row", ("join rows to rows",), _sewn),
    Technique("sewing-stitches-to-rows", ("join stitches to rows",), _to_rows),
    Technique("sewing-stitch-to-stitch", ("join stitches to stitches",), _stitch_to_stitch),
    Technique("grafting", ("join grafted",), _grafted),
    Technique("linking-on-the-bed", ("join linked", "HangToLink"), _linked),
    Technique("sewing-a-gathered-edge", ("join gathered",), _gathered),
)
