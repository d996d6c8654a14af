"""The stage of the small drawings: a row of needles seen from above as the knitter sits, hooks towards her, and what lies on them.

Sizes are mm of paper. Needle number 0 is the leftmost; the bed is at the top, the cloth hangs down.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from walewright.figures.model import Drawing
from walewright.figures.pens import Paper, path, smooth
from walewright.guide.model import Guide
from walewright.record import replace

STEP, MARGIN = 7.4, 4.2
HOOK = 9.0
"""y of a hook in working position."""

HEIGHT, BELOW = 23.0, 1.4
"""Of a drawing at most, and under the lowest thing in it."""

OUT, BACK = 5.0, -4.5
"""How far a held needle stands further out, and one out of work further back."""


@dataclass(slots=True)
class Scene:
    guide: Guide
    paper: Paper = field(default_factory=Paper)
    count: int = 6

    def x(self, needle: float) -> float:
        return MARGIN + STEP * needle

    @property
    def width(self) -> float:
        return 2 * MARGIN + STEP * (self.count - 1)

    # ------------------------------------------------------------- needles and loops

    def needles(self, count: int = 6, out: tuple[int, ...] = (), back: tuple[int, ...] = ()) -> Scene:
        """A row of needles, those in `out` held, those in `back` out of work, over the edge of the bed."""
        self.count = count
        self.paper.draw("hatch", path([(0.6, 2.2), (self.width - 0.6, 2.2)]), path([(0.6, 1.2), (self.width - 0.6, 1.2)]))
        self._hung({i: OUT if i in out else BACK if i in back else 0.0 for i in range(count)})
        return self

    def needle(self, at: float, out: float = 0.0) -> None:
        self._hung({at: out})

    def _hung(self, needles: Mapping[float, float]) -> None:
        """Needles by where they are, each so far out. None lies over another: all steel in one stroke, all latches in the next."""
        hook = "a0.95 0.95 0 0 0 1.9 0l0 -1.1l-0.7 0l0 1a0.25 0.25 0 0 1 -0.5 0"
        steel, latches = [], []
        for at, out in needles.items():
            x, y = self.x(at), HOOK + out
            steel.append(f"M{x - 0.5:.2f} 0.4L{x - 0.5:.2f} {y:.2f}{hook}L{x + 0.3:.2f} 0.4Z")
            # The open latch, lying back.
            latches.append(path([(x - 0.1, y - 2.6), (x + 0.9, y - 4.2) if out else (x + 0.7, y - 1.3)]))
        self.paper.draw("steel", *steel)
        self.paper.draw("tool", *latches)

    def loop(self, at: float, low: float = 16.5, out: float = 0.0, top: float | None = None) -> None:
        """A stitch on a needle, its legs down to `low`."""
        x = self.x(at)
        y = HOOK - 2.3 + out if top is None else top
        self.paper.draw(
            "thread",
            f"M{x - 1.7:.2f} {low:.2f}C{x - 1.3:.2f} {y + 4:.2f} {x - 2.3:.2f} {y:.2f} {x:.2f} {y:.2f}"
            f"C{x + 2.3:.2f} {y:.2f} {x + 1.3:.2f} {y + 4:.2f} {x + 1.7:.2f} {low:.2f}",
        )

    def loops(self, *at: int, low: float = 16.5, out: float = 0.0) -> Scene:
        for i in at:
            self.loop(i, low, out)
        return self

    def doubled(self, at: float) -> Scene:
        """Two loops on one needle."""
        self.loop(at)
        self.loop(at, top=HOOK - 3.6)
        return self

    def cloth(self, first: float, last: float, top: float = 17.0, bottom: float = 22.0) -> Scene:
        """The purl side of the fabric below needles `first` to `last`."""
        x0, x1 = self.x(first) - STEP / 2, self.x(last) + STEP / 2
        waves = round((x1 - x0) / 3.7)
        step = (x1 - x0) / waves
        y = top
        while y <= bottom:
            arcs = "".join(f"q{step / 4:.2f} -1.3 {step / 2:.2f} 0q{step / 4:.2f} 1.3 {step / 2:.2f} 0" for _ in range(waves))
            self.paper.draw("texture", f"M{x0:.2f} {y:.2f}{arcs}")
            y += 1.9
        return self

    def yarn(self, points: Sequence[tuple[float, float]]) -> Scene:
        """A smooth thread through points."""
        self.paper.draw("thread", smooth(points))
        return self

    def other(self, points: Sequence[tuple[float, float]]) -> Scene:
        """A second yarn: a heavier line."""
        self.paper.draw("strand", smooth(points), colour="accent", width=0.85)
        return self

    def bars(self, at: float, top: float, bottom: float, wide: float = 3.4) -> Scene:
        """A ladder: the bars of a dropped column."""
        x, y = self.x(at), top
        while y <= bottom:
            self.paper.draw("thread", path([(x - wide / 2, y), (x + wide / 2, y)]))
            y += 1.7
        return self

    # ------------------------------------------------------------- tools

    def latch_tool(self, x: float, y: float, degrees: float = 0.0, long: float = 10.0) -> Scene:
        """A latch tool, its hook at (x, y); 0 degrees: handle straight down, positive: to the right."""
        s, c = math.sin(math.radians(degrees)), math.cos(math.radians(degrees))

        def at(u: float, v: float) -> tuple[float, float]:
            return x + u * c + v * s, y - u * s + v * c

        self.paper.draw(
            "tool",
            path([at(-0.9, 0.9), at(-0.9, 0.2), at(-0.45, -0.3), at(0, 0), at(0, long * 0.55)]),
            path([at(0, 2.2), at(-0.9, 3.4)]),
        )
        handle = [at(-0.8, long * 0.55), at(0.8, long * 0.55), at(0.8, long), at(-0.8, long)]
        self.paper.draw("steel", path(handle, closed=True))
        return self

    def transfer_tool(self, first: float, prongs: int = 1, eye: float = HOOK + 1.2) -> Scene:
        """A tool whose eyes sit on the hooks of needles from `first` on."""
        last = first + prongs - 1
        for i in range(prongs):
            x = self.x(first + i)
            self.paper.draw(
                "tool", path([(x, eye), (x, eye + 3.4)]), f"M{x - 0.7:.2f} {eye:.2f}a0.7 0.7 0 1 1 1.4 0a0.7 0.7 0 1 1 -1.4 0"
            )
        x0, x1, y = self.x(first) - 0.9, self.x(last) + 0.9, eye + 3.4
        self.paper.draw("steel", path([(x0, y), (x1, y), (x1, y + 1.3), (x0, y + 1.3)], closed=True))
        middle = (x0 + x1) / 2
        self.paper.draw(
            "steel",
            path([(middle - 0.6, y + 1.3), (middle + 0.6, y + 1.3), (middle + 0.6, y + 5.5), (middle - 0.6, y + 5.5)], closed=True),
        )
        return self

    def sewing_needle(self, x: float, y: float, degrees: float = 0.0, long: float = 12.0) -> Scene:
        """A blunt needle, its point at (x, y), lying towards the right, or so many degrees lower."""
        s, c = math.sin(math.radians(degrees)), math.cos(math.radians(degrees))

        def at(u: float, v: float) -> tuple[float, float]:
            return x + u * c - v * s, y + u * s + v * c

        self.paper.draw("steel", path([at(0, 0), at(2, -0.4), at(long, -0.45), at(long, 0.45), at(2, 0.4)], closed=True))
        self.paper.draw("tool", path([at(long - 2.2, 0), at(long - 0.7, 0)]))
        return self

    def arrow(self, start: tuple[float, float], end: tuple[float, float], bend: float = 0.0) -> Scene:
        """An arrow; `bend` mm out to its left."""
        (x0, y0), (x1, y1) = start, end
        length = math.hypot(x1 - x0, y1 - y0)
        nx, ny = (y1 - y0) / length, -(x1 - x0) / length
        mx, my = (x0 + x1) / 2 + nx * bend * 2, (y0 + y1) / 2 + ny * bend * 2
        self.paper.draw("measure", f"M{x0:.2f} {y0:.2f}Q{mx:.2f} {my:.2f} {x1:.2f} {y1:.2f}")
        angle = math.atan2(y1 - my, x1 - mx)
        wings = [(x1 - 1.7 * math.cos(angle + t), y1 - 1.7 * math.sin(angle + t)) for t in (0.42, -0.42)]
        self.paper.draw("arrow", path([(x1, y1), *wings], closed=True))
        return self

    def word(self, x: float, y: float, key: str, anchor: str = "middle") -> Scene:
        """A word of the guide's on the drawing."""
        self.paper.letter(x, y, self.guide.say(f"hands/{key}"), anchor, kind="word")
        return self

    def number(self, x: float, y: float, text: str) -> Scene:
        self.paper.letter(x, y, text, kind="letter")
        return self

    def finished(self, title: str) -> Drawing:
        """As high as what is drawn: the text follows right beneath it."""
        whole = self.paper.finished(title, self.width, HEIGHT + 0.8)
        lowest = max([t.y for t in whole.letterings] + [y for stroke in whole.strokes for y in _ys(stroke.data)])
        return replace(whole, height=round(min(lowest + BELOW, whole.height), 1))


def _ys(data: str) -> Iterator[float]:
    """The ys of absolute points in path data: hooks and waves, told in steps, reach no further than their beginnings."""
    for _command, numbers in re.findall(r"([MLCQ])([-\d. ]+)", data):
        yield from (float(n) for n in numbers.split()[1::2])
