"""Steps of stitch patterns: charts and stripes come into force and end."""

from __future__ import annotations

from walewright.knit.step import Step
from walewright.record import record
from walewright.trade.fabrics import ChartArea


@record
class StartChart(Step):
    """From the next row on work `chart`, from its first row, on needles `first`..`last` as fabric `fabric` (empty: a motif in
    the fabric it stands in). `area` "whole" (as far as the part in work reaches, but for `edge` needles at its two ends, which
    knit plain) or "panel" (those needles alone, and nearer than `edge` to an end plain). The first column of the repeat lies on
    needle `start`; a chart without a repeat begins there and is worked once. See `design.model.Chart` for what is done."""

    chart: str
    fabric: str
    area: ChartArea
    first: int
    last: int
    edge: int
    start: int


@record
class StopChart(Step):
    """No more of `chart`: its purl columns are latched up as far as they have come, held needles return, and ladders that have not
    been dropped stay knitted: the row that comes next may need their loops."""

    chart: str


@record
class StopChartOn(Step):
    """No more of `chart` on the needles `first`..`last` that it was begun on, elsewhere it may go on; else as `StopChart`."""

    chart: str
    first: int
    last: int


@record
class StartStripes(Step):
    """From the next row on knit in `stripes` of (yarn, rows), again and again from the first, at `tension`, as fabric `fabric`.
    `carried` are the yarns that are carried up the side; any other is broken off at the end of its stripe."""

    fabric: str
    stripes: tuple[tuple[str, int], ...]
    tension: str
    carried: tuple[str, ...]


@record
class StopStripes(Step):
    fabric: str


@record
class ColumnsLatched:
    """With the counter at `row`, since it was set for the `nth` time in the block, the purl columns of charts on the needles
    `needles` are latched up, as far as they have come: as rows are knitted, or before a `line` whose step has that class name and
    takes, moves or holds their stitches, or ends their chart."""

    nth: int
    row: int
    needles: tuple[int, ...]
    line: str = ""
