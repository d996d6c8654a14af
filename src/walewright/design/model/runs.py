"""Runs of edges: how an edge goes from level to level, and how its stitches are lost and gained."""

from __future__ import annotations

from typing import Literal

from walewright.design.model.origin import CountPerSize, Origin, PerSize
from walewright.design.model.rate import Rate
from walewright.record import record, replace
from walewright.trade.shaping import LargerSteps, RunPath, WayKind
from walewright.trade.sides import EdgeSide


@record
class ShapingWay:
    """How an edge is shaped: "simple" or "fashioned" `inset` stitches in, `at_once` (1 or 2) stitches at a time; or "inside", with
    each move a stitch along each of `at_once` lines within the piece."""

    kind: WayKind
    inset: int = 0
    at_once: int = 1

    @property
    def inside(self) -> bool:
        """Whether what lies outside a line within the piece is moved with it."""
        return self.kind == "inside"

    def anywhere(self, by: int) -> bool:
        """Whether a move by so many stitches is made with transfer tools, wherever the carriage stands: not cast off or on, nor
        begun on an empty needle at the carriage."""
        return self.inside or by in (-1, -self.at_once) or (by == 1 and self.kind == "fashioned")


@record
class InsideLine:
    """A line within a piece along which an edge's stitches are lost or gained: `cm` outwards from the middle of the start
    ("centre"), or in from the edge ("edge"). `at_right`: of both edges, where the right one has its line, if that is another
    distance from the middle."""

    of: Literal["centre", "edge"]
    cm: PerSize
    at_right: PerSize = ()

    def at(self, side: EdgeSide) -> PerSize:
        """Its distance at that side."""
        return self.at_right if side == "right" and self.at_right else self.cm

    @property
    def turned(self) -> InsideLine:
        """The same of a mirror image."""
        return InsideLine(self.of, self.at_right, self.cm) if self.at_right else self


@record
class StepsAlike:
    """Steps of an edge that follow one another: by size, what each moves in cm, outwards positive, and how many there are."""

    cm: PerSize
    times: CountPerSize

    def of_size(self, size: int) -> StepsAlike:
        """The same, of one size alone."""
        return StepsAlike(self.cm[size : size + 1], self.times[size : size + 1])


@record
class EdgeRun:
    """One edge of a piece from the previous run's level up to `to_level`.

    `change` is this edge's move in cm, outwards positive, over the run; `cast_off` (>= 0 cm) of an inward
    move is cast off at once at the bottom of the run. `path`: straight | slope | curve (level at first, upright in the end) |
    arch (upright at first, level in the end) | steps | rate | across (no rows: at `to_level`, which the run before has come to,
    the loops are hung back evenly on more or fewer needles; both edges have it, with equal changes).
    `steps`: number of steps by size for path "steps", else empty; `rates` those of path "rate", one a size, whose move
    follows from its rows, else empty. With `most` the change is free: from `change`, where the run begins as far out as it may,
    to `most`, where it begins as far in as it may."""

    name: str
    to_level: str
    path: RunPath
    change: PerSize
    cast_off: PerSize
    steps: CountPerSize
    way: ShapingWay
    origin: Origin
    most: PerSize | None = None
    rates: tuple[Rate, ...] = ()
    lines: tuple[InsideLine, ...] = ()
    """Of the way "inside", from the centre outwards."""
    in_turn: tuple[StepsAlike, ...] = ()
    """Of path "steps": those of several sizes, one after the other; empty where all are equal."""
    larger: LargerSteps = ""
    """Of path "steps": they are equal but for a stitch, and these come first or last."""
    begins_moving: bool = False
    """Its first move is made in the first row where it can be."""
    ends_moving: bool = False
    """Its last move is made in the last row where it can be."""
    half_gaps: bool = False
    """Of path "across": the first and the last changed needle are half as far from the ends as from each other."""

    @property
    def equal_steps(self) -> bool:
        """Whether it moves in steps that are all equal."""
        return self.path == "steps" and not self.in_turn and not self.larger

    def of_size(self, size: int) -> EdgeRun:
        """The run with the steps and the rate of one size alone."""
        return replace(
            self,
            steps=self.steps[size : size + 1],
            rates=self.rates[size : size + 1],
            in_turn=tuple(alike.of_size(size) for alike in self.in_turn),
        )
