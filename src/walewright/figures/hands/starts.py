"""How-tos of beginnings: on waste yarn and closed."""

from __future__ import annotations

from walewright.figures.hands.scene import HOOK, Scene
from walewright.figures.hands.technique import Technique
from walewright.figures.pens import path


def _comb(s: Scene) -> None:
    s.needles()
    points = [(1.0, 12.4)]
    for i in range(6):
        points += [(s.x(i), HOOK + 0.2), (s.x(i) + 3.7, 12.6)]
    s.yarn(points)
    for i in range(6):
        x = s.x(i) + 3.7 - 7.4
        s.paper.draw("tool", f"M{x + 3.7:.2f} 16.5L{x + 3.7:.2f} 11.6a0.8 0.8 0 0 1 1.6 0")
    s.paper.draw("steel", path([(1.5, 16.5), (s.width - 1.5, 16.5), (s.width - 1.5, 18.3), (1.5, 18.3)], closed=True))
    s.word(s.width / 2, 21.6, "comb-weights-below")


def _hem(s: Scene) -> None:
    s.needles().loops(*range(6), low=14)
    s.cloth(0, 5, 14.6, 19)
    s.paper.draw("thread", path([(1.0, 13.4), (s.width - 1.0, 13.4)]))
    s.word(s.width / 2, 21.6, "hem-weights-below")


def _by_hand(s: Scene) -> None:
    s.needles(out=tuple(range(6)))
    wrap(s, range(6), 10.5)
    s.word(s.width / 2, 21.6, "waste-yarn-wound-by-hand")


def wrap(s: Scene, at: range, y: float) -> None:
    """A yarn wound round each shank in turn, crossed in front."""
    points: list[tuple[float, float]] = [(s.x(at[0]) - 3.6, y + 1.6)]
    for i in at:
        x = s.x(i)
        points += [(x - 0.6, y + 1.1), (x + 1.5, y - 0.6), (x, y - 1.9), (x - 1.5, y - 0.6), (x + 0.6, y + 1.1)]
    s.yarn([*points, (s.x(at[-1]) + 3.6, y + 1.6)])


def _e_wrap(s: Scene) -> None:
    s.needles(out=tuple(range(6)))
    wrap(s, range(4), 10.5)
    s.arrow((s.x(3) + 4.4, 12.2), (s.x(4) + 3.2, 12.2))
    s.word(s.width / 2, 21.6, "needles-right-out")


def _chain(s: Scene) -> None:
    s.needles(out=tuple(range(6)))
    for i in range(3):
        x = s.x(i)
        s.yarn([(x - 2.4, 11.6), (x, 10.2), (x + 4.8, 11.6), (x + 0.4, 13), (x - 2.4, 11.6)])
    s.latch_tool(s.x(3) - 1.2, 12, 25, 9)
    s.yarn([(s.x(3) - 1, 12.2), (s.x(3) + 3, 9.4), (s.x(5) + 3, 8.2)])


TECHNIQUES = (
    Technique("start-on-waste-yarn", ("WasteStart",), _comb),
    Technique("start-on-a-hung-hem", ("WasteStart hem",), _hem),
    Technique("waste-yarn-by-hand", ("WasteStart by hand",), _by_hand),
    Technique("e-wrap", ("start e-wrap",), _e_wrap),
    Technique("latch-tool-chain", ("start chain",), _chain),
)
