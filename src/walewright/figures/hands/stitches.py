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
    s.word(s.x(3), 21.6, "left-in-work")


def _tuck(s: Scene) -> None:
    s.needles(out=(2,)).loops(0, 1, 3, 4, 5)
    s.loop(2, 18.5, out=OUT)
    for lift in (0.0, 1.4):
        y = HOOK - 0.4 - lift
        s.yarn([(0.6, y + 1), (s.x(1), y), (s.x(2), y - 2.2), (s.x(3), y), (s.width - 0.6, y + 1)])
    s.word(s.x(2), 21.9, "the-yarn-lies-over-it")


def _slip(s: Scene) -> None:
    s.needles(out=(2,)).loops(0, 1, 3, 4, 5)
    s.loop(2, 15.5, out=OUT)
    s.yarn([(0.6, 10.4), (s.x(1), HOOK - 0.2), (s.x(2), 17.6), (s.x(3), HOOK - 0.2), (s.width - 0.6, 10.4)])
    s.arrow((s.x(2) + 2.8, 12), (s.x(2) + 2.8, 16.6))
    s.word(s.x(2), 21.9, "lifted-off-in-front")


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
        s.other([(s.x(a), 19), (s.x(a) - 0.6, 16.6), (s.x(b) + 1.4, 10.6), (s.x(b), HOOK - 1.9)])
    for a, b in ((1, 3), (2, 4)):
        s.paper.draw("strand", path([(s.x(a), 19), (s.x(a) + 0.6, 16.6), (s.x(b) - 1.4, 10.6)]), colour="paper", width=2.2)
        s.yarn([(s.x(a) - 0.5, 19), (s.x(a) + 0.1, 16.2), (s.x(b) - 1.9, 10.2), (s.x(b), HOOK - 1.9)])
        s.yarn([(s.x(a) + 0.5, 19), (s.x(a) + 1.1, 16.8), (s.x(b) - 0.9, 11), (s.x(b) + 0.2, HOOK - 1.9)])
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
    s.yarn([(x - 1.2, 21.6), (x - 0.9, 19.4), (x, 17.8), (x + 0.9, 19.4), (x + 1.2, 21.6)])
    s.latch_tool(x + 0.2, 16.2, 62, 11)
    s.arrow((x - 3.4, 19.5), (x - 3.4, 11.5))


TECHNIQUES = (
    Technique("eyelet-and-lace", ("cell hole", "cell two from left", "cell two from right", "cell three", "EyeletAt"), _eyelet),
    Technique("tuck-by-holding", ("cell tuck",), _tuck),
    Technique("slip", ("cell slip",), _slip),
    Technique("long-stitch", ("cell long",), _long),
    Technique("ladder", ("cell ladder",), _ladder),
    Technique("crossing-stitches", ("cell cross",), _cross),
    Technique("slack-beside-a-cross", ("cross beside purl",), _slack),
    Technique("purl-columns-and-ridges", ("cell purl",), _re_formed),
)
