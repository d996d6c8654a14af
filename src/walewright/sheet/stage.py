"""The stages of a section as they are laid out: lines of steps, and rows of a table."""

from __future__ import annotations

from itertools import takewhile
from typing import Literal

from walewright.record import record
from walewright.trade.sides import EdgeSide
from walewright.write.model import Run

Spans = tuple[tuple[int, int], ...]
"""Where in a text figures begin and end that no line may break."""


@record
class StepLine:
    """One line of the steps. `boxes` tick boxes stand before it (one a copy; none before a line that only checks), and the `number`
    of the step or steps.
    `row` is the counter, `side` "left" | "right" | "". A counter of many sizes that is not said in the line anyway stands beneath
    in `below`. `sizes` names the sizes where not all work it."""

    pieces: tuple[Run, ...]
    boxes: int
    row: str
    side: EdgeSide | Literal[""]
    check: bool
    sizes: str
    below: str = ""
    row_figures: Spans = ()
    below_figures: Spans = ()
    number: str = ""
    refers: str = ""
    """The anchor of the section that it refers to."""
    ticks: tuple[int, ...] = ()
    """What is ticked off below it, once for each box before it."""
    ticked: Literal["as-step", "round"] = "round"
    """What those are: steps that it refers to, or rounds of it."""
    joint: str = ""
    """The number, in the drawing of the pieces opened out, of what it joins."""
    note: bool = False
    """Whether it is a note, which is no step."""
    kept: bool = False
    """Whether it is on one page with the line before it, beside which it is worked."""

    @property
    def closes(self) -> bool:
        """Whether it says nothing but what must be true when the lines before it are done."""
        return self.check and all(run.kind == "check" for run in self.pieces)


@record
class RowLine:
    """One row of a table of rows, step `number`: what is done when the counter reads `row`, and the stitches there are then."""

    row: tuple[Run, ...]
    pieces: tuple[Run, ...]
    stitches: tuple[Run, ...]
    boxes: int
    number: str
    carriage: tuple[Run, ...] = ()
    """Where it stands then, if that matters."""


@record
class Stage:
    """Lines under a small title; `only` is "" or such as "XS, S only". With `rows` the stage is a table of
    what is done at which row, below the lines."""

    title: str
    only: str
    lines: tuple[StepLine, ...]
    rows: tuple[RowLine, ...] = ()

    @property
    def ahead(self) -> tuple[StepLine, ...]:
        """The notes that it begins with: where a table begins with it they stand above the head."""
        return tuple(takewhile(lambda line: line.note, self.lines))

    @property
    def remarks(self) -> bool:
        """Whether there is nothing to be done in it."""
        return not self.rows and not any(line.number for line in self.lines)

    @property
    def sided(self) -> bool:
        """Whether a row says where the carriage stands."""
        return any(row.carriage for row in self.rows)
