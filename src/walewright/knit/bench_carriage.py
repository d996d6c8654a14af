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
"""Rows. Where needles are held again no later than that, the carriage stays set to hold, which knits needles in work just so."""

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
    for at, line in enumerate(lines):
        if any(isinstance(step, st.CarriageAt) and step.way == "slip" for step in line.body):
            now = "slip"
        following = lines[at + 1 : at + 2]
        if now == "slip" and following and not following[0].rows and not following[0].right_out:
            # No row is knitted before that line, which sets it as the next one needs it.
            yield None
            continue
        needed: Setting = "hold" if line.right_out or (now != "knit all" and _soon(lines[at + 1 :])) else "knit all"
        yield None if needed == now else needed
        now = needed


def _soon(lines: Sequence[BenchLine]) -> bool:
    """Whether needles are right out again before many rows are knitted."""
    rows = 0
    for line in lines:
        rows += line.rows
        if rows > SOON:
            return False
        if line.right_out:
            return True
    return False
