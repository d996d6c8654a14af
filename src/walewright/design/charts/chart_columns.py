"""What a chart does to a needle over several rows, and which yarns meet in a row."""

from __future__ import annotations

from walewright.design.charts.drawn import Drawn
from walewright.design.model import MachineProfile
from walewright.report.model import Severity

MOST_TUCK_ROWS = 4
"""Bars on a held needle; with more the stitch does not knit off (common practice)."""
MOST_SLIP_ROWS = 2
"""Rows that a stitch is drawn up over; with more it pulls the fabric together (common practice)."""
LEAST_LADDER_ROWS = 2


def check_columns(drawn: Drawn) -> None:
    """Reports needles that wait too long, of tucks side by side and of ladders that cannot be made."""
    for column in range(drawn.chart.width):
        _tucks(drawn, column)
        _slips(drawn, column)
        _ladders(drawn, column)
    for row in range(drawn.height):
        _neighbouring_tucks(drawn, row)


def stage_of(drawn: Drawn, machine: MachineProfile | None) -> int:
    """`Chart.stage`: on the bed, if any run of purl cells is deeper than one stage may be."""
    if machine is None:
        return 0
    each, most = machine.stage
    runs = (run for column in range(drawn.chart.width) for run in drawn.runs_up(column, "purl"))
    return each if any(endless or rows > most for _, rows, endless in runs) else 0


def _tucks(drawn: Drawn, column: int) -> None:
    for first, rows, endless in drawn.runs_up(column, "tuck"):
        if endless or rows > MOST_TUCK_ROWS:
            at = (first + MOST_TUCK_ROWS) % drawn.height if rows > MOST_TUCK_ROWS else first
            drawn.report_cell(
                "tuck-too-long/for-ever" if endless else "tuck-too-long/rows",
                (at, column),
                "too-long",
                *([(drawn.place(first, column), "from-here")] if at != first else ()),
                helps=("knit-before",),
                rows=rows,
                most=MOST_TUCK_ROWS,
            )


def _slips(drawn: Drawn, column: int) -> None:
    for first, rows, endless in drawn.runs_up(column, "slip"):
        if endless or rows > MOST_SLIP_ROWS:
            at = (first + MOST_SLIP_ROWS) % drawn.height if rows > MOST_SLIP_ROWS else first
            drawn.report_cell(
                "slip-too-long/for-ever" if endless else "slip-too-long/rows",
                (at, column),
                "too-long",
                *([(drawn.place(first, column), "from-here")] if at != first else ()),
                notes=("pulls",),
                helps=("knit-before",),
                rows=rows,
                most=MOST_SLIP_ROWS,
                severity=Severity.ERROR if endless else Severity.WARNING,
            )


def _ladders(drawn: Drawn, column: int) -> None:
    for first, rows, endless in drawn.runs_up(column, "ladder"):
        if endless:
            drawn.report_cell("ladder-never-dropped", (first, column), "never", helps=("drop",), least=LEAST_LADDER_ROWS)
            continue
        if rows < LEAST_LADDER_ROWS:
            drawn.report_cell(
                "ladder-too-short",
                (first, column),
                "one-row",
                helps=("draw-more",),
                least=LEAST_LADDER_ROWS,
                hole=drawn.symbol_for("hole"),
            )
        _right_of(drawn, first, column)
        top = (first + rows - 1) % drawn.height
        above = drawn.above(top)
        if above is None:
            drawn.report_cell("ladder-needs-knit/no-row-above", (top, column), "last-row", helps=("draw-knit",))
        elif drawn.cell(above, column).kind != "knit":
            drawn.report_cell(
                "ladder-needs-knit/row-above",
                (above, column),
                "row-above",
                (drawn.place(first, column), "ladder"),
                helps=("knit",),
            )


def _right_of(drawn: Drawn, row: int, column: int) -> None:
    """The first row's loop is hung on the needle to the right, which has to knit it in."""
    stands = drawn.stands
    for at, stand in enumerate(stands):
        if stand.column != column or not stand.told:
            continue
        right = stands[at + 1].column if at + 1 < len(stands) else None
        if right is None or drawn.cell(row, right).kind != "knit":
            also = [(drawn.place(row, right), "not-knit")] if right is not None else []
            drawn.report_cell(
                "ladder-needs-knit/right-neighbour",
                (row, column),
                "begins" if right is not None else "nothing-right",
                *also,
                helps=("knit-right",) if right is not None else ("draw-column",),
            )


def _neighbouring_tucks(drawn: Drawn, row: int) -> None:
    stands = drawn.stands
    for at in range(1, len(stands)):
        left, here = stands[at - 1], stands[at]
        if not here.told or not (drawn.cell(row, left.column).kind == drawn.cell(row, here.column).kind == "tuck"):
            continue
        drawn.report_cell(
            "tuck-side-by-side",
            (row, here.column),
            "beside-held",
            *([(drawn.place(row, left.column), "held-too")] if left.column != here.column else []),
            helps=("knit-one",),
        )


# ----------------------------------------------------------------- yarns


def check_yarns(drawn: Drawn) -> None:
    """Reports rows in too many yarns, of rows that lose the fabric's own, and of what blocks of yarn cannot have in them."""
    if drawn.chart.picture:
        _picture(drawn)
        return
    chart = drawn.chart
    for row in range(drawn.height):
        yarns: dict[str, int] = {}
        for column in range(chart.width):
            yarn = drawn.cell(row, column).yarn
            if yarn:
                yarns.setdefault(yarn, column)
        if len(yarns) > 1:
            (one, first), (other, second) = tuple(yarns.items())[:2]
            drawn.report_cell(
                "three-colours-in-row",
                (row, second),
                "other",
                (drawn.place(row, first), "one"),
                helps=("keep-to-one",),
                one=one,
                other=other,
            )
        repeat = range(chart.before, chart.before + chart.repeat)
        if chart.repeat and all(drawn.cell(row, c).yarn for c in repeat):
            drawn.report_cell("row-without-main", (row, chart.before), "whole-repeat", helps=("leave-one",))


def _picture(drawn: Drawn) -> None:
    told: set[str] = set()
    for row in range(drawn.height):
        for column in range(drawn.chart.width):
            symbol, kind = drawn.symbol(row, column), drawn.cell(row, column).kind
            if kind != "knit" and symbol not in told:
                told.add(symbol)
                drawn.report_cell(
                    "picture-other-stitch", (row, column), "stitch", helps=("keep-to-knit",), symbol=symbol, stitch=kind
                )
