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
    s.other([(s.x(2) - 4, 15.4), (s.x(2) - 1, 13.4), (s.x(3) + 1, 13.4), (s.x(3) + 4, 15.4)])
    s.sewing_needle(s.x(3) + 3.4, 15.2, 20, 8)


def _at_end(s: Scene) -> None:
    s.needles()
    s.cloth(0, 5, 13, 15.4)
    s.other([(1, 12.6), (s.width - 1, 12.6)])
    for i in range(6):
        s.loop(i, 18.6, top=16.2)
    s.cloth(0, 5, 19.6, 22)


def _closed(s: Scene) -> None:
    s.needles().loops(0, 3, 4, 5)
    s.yarn([(s.x(1), 14.5), (s.x(2), 13), (s.x(3) - 0.4, HOOK - 1.6), (s.x(3) - 1.4, 12), (s.x(2), 15.6), (s.x(1), 16.2)])
    s.latch_tool(s.x(3) + 0.2, HOOK + 1.4, 16, 11)
    s.arrow((s.x(1), 19.4), (s.x(3), 19.4))


def _slot(s: Scene) -> None:
    s.needles().loops(0, 1, 4, 5)
    s.loops(2, 3, low=15)
    s.other([(s.x(2) - 2, 16), (s.x(3) + 2, 16)])
    for i in (2, 3):
        s.loop(i, 21.5, top=17.2)
    s.cloth(0, 1, 17.6, 22).cloth(4, 5, 17.6, 22)


def _apart(s: Scene) -> None:
    s.needles(out=(2, 3)).loops(0, 1, 4, 5)
    wrap(s, range(2, 4), HOOK + OUT - 3)
    s.word(s.width / 2, 21.9, "a-length-of-its-own")


def _drawn_up(s: Scene) -> None:
    s.needles(5)
    for i in range(5):
        s.loop(i, 19, top=14.2)
    s.yarn([(1.0, 16.4), (s.x(1), 16), (s.x(4) + 1, 16.4), (s.x(4) + 2.6, 14.6), (s.x(4) + 0.6, 13.4)])
    s.sewing_needle(s.x(3) - 1.0, 12.2, 8, 9)


def _sewn_off(s: Scene) -> None:
    s.needles().loops(0, 1, low=15)
    for i in (2, 3, 4, 5):
        s.loop(i, 18, top=13)
    x2, x3 = s.x(2), s.x(3)
    s.other([(s.width - 1, 11.2), (s.x(4), 14.4), (s.x(3), 14.4), (s.x(3) + 2, 12), (s.x(4) - 1.4, 12)])
    s.other([(x3, 14.4), (x2 - 1, 14.8), (x2 - 6, 17)])
    s.sewing_needle(s.x(0) - 1, 18.2, -8, 9)


def _marker(s: Scene) -> None:
    s.needles(5).loops(0, 1, 2, 3, 4, low=12.5)
    s.cloth(0, 4, 14.2, 21)
    x = s.x(4)
    s.other([(x, 17), (x + 2.4, 18.6), (x + 2, 21.5)])
    s.other([(x, 17), (x + 2.8, 16.2), (x + 3.6, 19.4)])


def _buttonhole(s: Scene) -> None:
    s.count = 6
    s.cloth(0, 5, 3.5, 9).cloth(0, 5, 15.5, 21.5).cloth(0, 1, 10, 14.4).cloth(4, 5, 10, 14.4)
    x0, x1 = s.x(2) - 3.4, s.x(3) + 3.4
    s.paper.draw("thread", path([(x0, 10.2), (x1, 10.2)]), path([(x0, 14.2), (x1, 14.2)]))
    for i in range(8):
        x = x0 + 0.6 + i * 1.9
        s.paper.draw("measure", path([(x, 9.2), (x, 11)]), path([(x, 13.4), (x, 15.2)]))


TECHNIQUES = (
    Technique("off-on-waste-yarn-in-mid-row", ("CentreToWaste",), _mid_row),
    Technique("off-on-waste-yarn-at-the-end", ("OffOnWaste",), _at_end),
    Technique("closing-stitches-without-yarn", ("CloseCentre", "SlotClosed"), _closed),
    Technique("a-slot-on-waste-yarn", ("SlotOnWaste",), _slot),
    Technique("e-wrap-with-a-length-of-its-own", ("SlotOnWaste", "SlotClosed", "CastOnBetween"), _apart),
    Technique("back-stitch-cast-off", ("SewOffAll",), _sewn_off),
    Technique("drawing-up", ("GatherAll",), _drawn_up),
    Technique("a-marker", ("MarkEdges",), _marker),
    Technique("buttonholes", ("buttonholes",), _buttonhole),
)
