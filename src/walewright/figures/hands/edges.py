"""How-tos of bands, hems and other edges."""

from __future__ import annotations

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
        s.yarn([(x - 1.2, y), (x - 0.9, y - 1.2), (x, y - 2.6), (x + 0.9, y - 1.2), (x + 1.2, y)])
    s.latch_tool(s.x(2) + 0.2, 15.8, 62, 11)
    s.bars(5, 11.5, 21.5)


def _mock(s: Scene, every: int) -> None:
    idle = tuple(range(every - 1, 6, every))
    s.needles(6, back=idle).loops(*(i for i in range(6) if i not in idle))
    for i in idle:
        s.bars(i, 12.4, 16)
    s.word(s.width / 2, 21.6, f"every-{every}-out")


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
    s.yarn([(19.6, y), (18.4, 8), (18.2, 12), (18.6, 19), (20.4, 20.6), (22.2, 19), (23, 12), (22.6, y + 3), (19.6, y)])
    s.word(15.6, 12, "outside", "end")
    s.word(27.6, 12, "inside", "start")
    s.word(44.8, 5.6, "your-side", "end")
    s.word(26, 20.8, word, "start")
    s.arrow((26, 17.6), (24.6, 6.6), -0.8)


def _folded(s: Scene) -> None:
    fold(s, "fold-row")


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
    s.yarn([(26, 3), (26.4, 10), (26, 18), (24, 20.6), (22, 18), (21.6, 11), (21.8, 8)])
    s.sewing_needle(14, 6.4, 14, 11)
    s.paper.draw("thread", path([(21.8, 8.4), (25.8, 8.0)]))
    s.word(29, 10, "outside", "start")
    s.word(29, 21, "fold-row", "start")


def _rolled(s: Scene) -> None:
    s.count = 6
    s.yarn([(26, 2), (26, 11), (24.6, 17.6), (20.4, 19.4), (18, 16.6), (19.8, 14), (22, 15.6), (21, 17.2)])
    s.paper.draw("texture", *(path([(25.2, y), (24.2, y + 0.9), (25.2, y + 1.8)]) for y in (3.0, 5.2, 7.4, 9.6)))
    s.word(22, 8, "knit-side", "end")
    s.word(29, 8, "purl-side", "start")


def _chained(s: Scene) -> None:
    s.needles().loops(0, 1, 2, low=14.4)
    for i in range(3, 6):
        x = s.x(i) - 3
        s.yarn([(x, 15), (x + 3.6, 13.8), (x + 6.6, 15), (x + 3.6, 16.2), (x, 15)])
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


TECHNIQUES = (
    Technique("hanging-a-first-row", ("RehangStart",), _rehung),
    Technique("picking-up-along-rows", ("PickUpAlong",), _picked_up),
    Technique("latched-rib", ("LatchRib", "LatchPanel", "LatchInStages", "LatchPanelInStages"), _latched),
    Technique("mock-rib-1-by-1", ("EveryOutOfWork 2", "edging mock rib 2"), _mock_1_by_1),
    Technique("mock-rib-2-by-1", ("EveryOutOfWork 3", "edging mock rib 3"), _mock_2_by_1),
    Technique("folded-hem", ("edging folded",), _folded),
    Technique("picot-hem", ("PicotRow", "edging picot"), _picot),
    Technique("rolled-edge", ("edging rolled",), _rolled),
    Technique("facing", ("edging facing",), _facing),
    Technique("chained-edge", ("edging chained",), _chained),
)
