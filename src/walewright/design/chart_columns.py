"""What a chart does to a needle over several rows, and which yarns meet in a row."""

from __future__ import annotations

from walewright.design.drawn import Drawn
from walewright.design.model import Machine
from walewright.report.model import Severity

MOST_TUCK_ROWS = 4
"""Bars on a held needle; with more the stitch does not knit off (common practice)."""
MOST_SLIP_ROWS = 2
"""Rows that a stitch is drawn up over; with more it pulls the fabric together (common practice)."""
LEAST_LADDER_ROWS = 2


def check_columns(drawn: Drawn) -> None:
    """Tells of needles that wait too long, of tucks side by side and of ladders that cannot be made."""
    for column in range(drawn.chart.width):
        _tucks(drawn, column)
        _slips(drawn, column)
        _ladders(drawn, column)
    for row in range(drawn.height):
        _neighbouring_tucks(drawn, row)


def stage_of(drawn: Drawn, machine: Machine | None) -> int:
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
            drawn.tell(
                "tuck-too-long",
                (at, column),
                f"the needle is held for {'ever' if endless else f'{rows} rows'}, and a stitch with more than "
                f"{MOST_TUCK_ROWS} bars does not knit off",
                "held too long",
                *([(drawn.place(first, column), "held from here")] if at != first else ()),
                helps=(f"let it knit after {MOST_TUCK_ROWS} rows at most; 2 are usual",),
            )


def _slips(drawn: Drawn, column: int) -> None:
    for first, rows, endless in drawn.runs_up(column, "slip"):
        if endless or rows > MOST_SLIP_ROWS:
            at = (first + MOST_SLIP_ROWS) % drawn.height if rows > MOST_SLIP_ROWS else first
            drawn.tell(
                "slip-too-long",
                (at, column),
                f"the stitch is slipped {'and never knitted' if endless else f'over {rows} rows'}",
                "slipped too long",
                *([(drawn.place(first, column), "slipped from here")] if at != first else ()),
                notes=(f"a stitch slipped over more than {MOST_SLIP_ROWS} rows pulls the fabric together (common practice)",),
                helps=(f"let it knit after {MOST_SLIP_ROWS} rows at most: draw a row that knits there above these",),
                severity=Severity.ERROR if endless else Severity.WARNING,
            )


def _ladders(drawn: Drawn, column: int) -> None:
    for first, rows, endless in drawn.runs_up(column, "ladder"):
        if endless:
            drawn.tell(
                "ladder-never-dropped",
                (first, column),
                "every row of this column is a ladder, so no row above drops it, and it stays knitted",
                "never dropped",
                helps=(
                    f"draw a row that knits here above so many rows as the ladder shall be high ({LEAST_LADDER_ROWS} or more): "
                    "that row drops it",
                ),
            )
            continue
        if rows < LEAST_LADDER_ROWS:
            drawn.tell(
                "ladder-too-short",
                (first, column),
                "a ladder of one row: its one bar is hidden between its neighbours",
                "one row",
                helps=(f"draw {LEAST_LADDER_ROWS} rows of it at least, or {drawn.symbol_for('hole')}",),
            )
        _right_of(drawn, first, column)
        top = (first + rows - 1) % drawn.height
        above = drawn.above(top)
        if above is None:
            drawn.tell(
                "ladder-needs-knit",
                (top, column),
                "the row above a ladder drops it, and the chart has no row more",
                "the ladder's last row",
                helps=("draw a row of knit above it",),
            )
        elif drawn.cell(above, column).kind != "knit":
            drawn.tell(
                "ladder-needs-knit",
                (above, column),
                "the ladder below it is dropped, and the row above a ladder lays a new loop there",
                "the row above a ladder",
                (drawn.place(first, column), "the ladder"),
                helps=("let it be knit",),
            )


def _right_of(drawn: Drawn, row: int, column: int) -> None:
    """The first row's loop is hung on the needle to the right, which has to knit it in."""
    stands = drawn.stands
    for at, stand in enumerate(stands):
        if stand.column != column or not stand.told:
            continue
        right = stands[at + 1].column if at + 1 < len(stands) else None
        if right is None or drawn.cell(row, right).kind != "knit":
            also = [(drawn.place(row, right), "not knit")] if right is not None else []
            drawn.tell(
                "ladder-needs-knit",
                (row, column),
                "the stitch that a ladder begins with is hung on its right neighbour, which has to knit",
                "the ladder begins here" if right is not None else "nothing right of it",
                *also,
                helps=("let its right neighbour be knit in this row",)
                if right is not None
                else ("draw a column more on the right",),
            )


def _neighbouring_tucks(drawn: Drawn, row: int) -> None:
    stands = drawn.stands
    for at in range(1, len(stands)):
        left, here = stands[at - 1], stands[at]
        if not here.told or not (drawn.cell(row, left.column).kind == drawn.cell(row, here.column).kind == "tuck"):
            continue
        drawn.tell(
            "tuck-side-by-side",
            (row, here.column),
            "its left neighbour is held in the same row, and bars over two needles do not knit off",
            "held beside a held needle",
            *([(drawn.place(row, left.column), "held too")] if left.column != here.column else []),
            helps=("let one of the two knit",),
        )


# ----------------------------------------------------------------- yarns


def check_yarns(drawn: Drawn) -> None:
    """Tells of rows in too many yarns, of rows that lose the fabric's own, and of what blocks of yarn cannot have in them."""
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
            drawn.tell(
                "three-colours-in-row",
                (row, second),
                f"the row has `{one}` and `{other}` beside the yarn of the fabric",
                f"`{other}`",
                (drawn.place(row, first), f"`{one}`"),
                helps=("keep to one other yarn in a row, or lay the colours in blocks",),
            )
        repeat = range(chart.before, chart.before + chart.repeat)
        if chart.repeat and all(drawn.cell(row, c).yarn for c in repeat):
            drawn.tell(
                "row-without-main",
                (row, chart.before),
                "no stitch of the repeat keeps the yarn of the fabric in this row",
                "the whole repeat in other yarns",
                helps=("leave a stitch in the yarn of the fabric, or knit such rows as stripes",),
            )


def _picture(drawn: Drawn) -> None:
    told: set[str] = set()
    for row in range(drawn.height):
        for column in range(drawn.chart.width):
            symbol, kind = drawn.symbol(row, column), drawn.cell(row, column).kind
            if kind != "knit" and symbol not in told:
                told.add(symbol)
                drawn.tell(
                    "picture-other-stitch",
                    (row, column),
                    f"colours laid in blocks are laid by hand over all needles, and `{symbol}` is {kind}",
                    kind,
                    helps=("keep to knit stitches, or let the colours float",),
                )
