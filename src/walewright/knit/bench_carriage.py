"""How the carriage is set in a bench copy: to hold while needles are right out, to knit all where none are.

The guide tells it once for all holding, under "Holding"; who works line by line is told where it is done.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Literal

from walewright.knit import bench_steps as bs
from walewright.knit import steps as st
from walewright.knit.bench_steps import BenchLine, BenchPart
from walewright.knit.step import Words
from walewright.record import replace

SOON = 12
"""Rows. Where a chart holds needles again no later than that, the carriage stays set to hold: that knits needles in work too."""

Setting = Literal["knit all", "hold", "slip"]
Paragraphs = Sequence[tuple[Words, tuple[BenchPart, ...]]]


def with_settings(paragraphs: Paragraphs) -> tuple[tuple[Words, tuple[BenchPart, ...]], ...]:
    """The lines of a block, each with the setting that the rows after it need, if it is another one than before."""
    lines = [part for _, parts in paragraphs for part in parts if isinstance(part, BenchLine)]
    settings = iter(_settings(lines))
    return tuple(
        (title, tuple(_set(part, next(settings)) if isinstance(part, BenchLine) else part for part in parts))
        for title, parts in paragraphs
    )


def _set(line: BenchLine, to: Setting | None) -> BenchLine:
    if to is None:
        return line
    return replace(line, body=(*line.body, bs.SetToHold() if to == "hold" else bs.SetToKnit()))


def _settings(lines: Sequence[BenchLine]) -> Iterator[Setting | None]:
    """What each line sets the carriage to, None where it stays as it was. A block begins with all needles being knitted."""
    now: Setting = "knit all"
    by_chart = False
    """Whether the needles that were right out last were those of a chart and no others."""
    for at, line in enumerate(lines):
        crossed = _set_in_crossing(line)
        now = crossed or now
        out = line.right_out or line.patterned == "held"
        by_chart = not line.right_out if out else by_chart and line.patterned == "begun" and line.in_work > 0
        following = lines[at + 1 : at + 2]
        if crossed and not out and following and not following[0].rows:
            # No row is knitted before that line, which sets it as the next one needs it.
            yield None
            continue
        stays = now == "hold" and by_chart and _soon(lines[at + 1 :])
        needed: Setting = "hold" if out or stays else "knit all"
        yield None if needed == now else needed
        now = needed


def _set_in_crossing(line: BenchLine) -> Setting | None:
    """What the line sets the carriage to that goes over without knitting, if anything."""
    ways = [step.way for step in line.body if isinstance(step, st.CarriageAt)]
    return "slip" if "slip" in ways else "hold" if "held" in ways else None


def _soon(lines: Sequence[BenchLine]) -> bool:
    """Whether a chart that goes on holds needles again before many rows are knitted, and nothing else does so before it."""
    rows = 0
    for line in lines:
        rows += line.rows
        if rows > SOON or not line.patterned or line.right_out:
            return False
        if line.patterned == "held":
            return True
    return False
