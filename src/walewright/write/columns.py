"""Columns: the purl columns of charts that are latched up as rows are knitted, or before a step that disturbs them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field

from walewright.knit.bench_steps import Needles
from walewright.knit.steps import Step
from walewright.record import record


@record
class Columns:
    """Needles whose columns are latched up, by which setting of the counter it was, and its reading: in rows, and before steps of
    a class name."""

    in_rows: Mapping[tuple[int, int], Needles] = field(default_factory=dict)
    before: Mapping[tuple[int, int, str], Needles] = field(default_factory=dict)


NO_COLUMNS = Columns()


@record
class ColumnsUp(Step):
    """The purl columns that wait on these needles are latched up before the next step disturbs them."""

    needles: Needles
