"""Charts read: keys, rows and repeat of a `chart` statement put together and checked, every fault at its very cell."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping

from walewright.design.charts.chart_columns import check_columns, check_yarns, stage_of
from walewright.design.charts.chart_crosses import check_crosses
from walewright.design.charts.chart_moves import check_moves
from walewright.design.charts.drawn import MOST_TOLD, Drawn
from walewright.design.findings import Findings
from walewright.design.model import Cell, CellKey, Chart, MachineProfile, Origin, Yarn
from walewright.record import record, replace
from walewright.report.model import Severity, Span
from walewright.report.said import said
from walewright.source import syntax
from walewright.trade.cells import CELLS
from walewright.trade.fabrics import COLOUR_WAYS

MOST_CROSS = 20

LOOK_ALIKE = ("0Oo", "1lI|", ".,·-", "/\\", "xX×", "vV", "*+")
"""Symbols that are taken for each other."""


@record
class ChartUses:
    """Where charts are used: name to the first place. `own` are (chart, yarn of a fabric worked from it)."""

    in_fabrics: Mapping[str, Span]
    in_motifs: Mapping[str, Span]
    own: frozenset[tuple[str, str]]


def uses_of(statements: tuple[syntax.Statement, ...]) -> ChartUses:
    """The uses of charts in a source."""
    fabrics: dict[str, Span] = {}
    motifs: dict[str, Span] = {}
    own: set[tuple[str, str]] = set()
    for statement in statements:
        for node in statement.body if isinstance(statement, syntax.FabricBlock | syntax.PieceBlock) else ():
            if isinstance(node, syntax.Stitch) and node.chart is not None:
                fabrics.setdefault(node.chart, node.span)
                own.add((node.chart, node.yarn))
            elif isinstance(node, syntax.MotifLine):
                motifs.setdefault(node.chart, node.span)
    return ChartUses(fabrics, motifs, frozenset(own))


def chart(
    node: syntax.ChartBlock, yarns: Mapping[str, Yarn | None], uses: ChartUses, machine: MachineProfile | None, findings: Findings
) -> Chart | None:
    """A chart; None when its grid is not one. A chart without a `repeat` is the repeat as a whole where a fabric uses it, and
    has none where a motif does."""
    owner = said("chart", chart=node.name)
    broken = any(isinstance(s, syntax.Broken) for s in node.body)
    repeat = findings.one("repeat", (s for s in node.body if isinstance(s, syntax.ChartRepeat)), owner)
    way = findings.one("colours", (s for s in node.body if isinstance(s, syntax.ChartWay)), owner)
    keys = _keys(node, yarns, findings)
    # The first line drawn is the last row knitted.
    rows = tuple(reversed([s for s in node.body if isinstance(s, syntax.ChartRow)]))
    if way is not None and way.way not in COLOUR_WAYS:
        findings.unknown("way of colours", way.way, way.span, COLOUR_WAYS)
        way = None
    if not any(r.cells for r in rows):
        if not broken:
            findings.report("chart-empty", (node.span, "nothing"), helps=("draw",), chart=node.name)
        return None
    even = _even(rows, node.name, findings)
    known = _known(rows, node, findings)
    columns = _columns(repeat, len(rows[0].cells), node, uses, findings) if even else None
    if keys is None or not known or columns is None or broken:
        return None
    before, across, after = columns
    made = Chart(
        name=node.name,
        rows=tuple("".join(r.cells) for r in rows),
        key=keys,
        before=before,
        repeat=across,
        after=after,
        picture=way is not None and way.way == "blocks",
        origin=Origin(f"chart {node.name}", node.span),
        row_origins=tuple(Origin(f"chart {node.name} / row {n}", _whole(r)) for n, r in enumerate(rows, 1)),
    )
    upwards = node.name not in uses.in_motifs or node.name in uses.in_fabrics
    places = tuple(tuple(_place(r, c) for c in range(len(r.cells))) for r in rows)
    drawn = Drawn(made, places, upwards, findings)
    check_moves(drawn, machine)
    check_crosses(drawn, machine)
    check_columns(drawn)
    made = replace(made, stage=stage_of(drawn, machine))
    if made.picture or not any((made.name, y) in uses.own for y in made.yarns):
        # A symbol for the fabric's own yarn is told of where the fabric is; no row can be judged by it.
        check_yarns(drawn)
    return made


def first_row(node: syntax.ChartBlock) -> tuple[Span, ...]:
    """Where the cells of the first row knitted, the last line, stand in the source."""
    drawn = [s for s in node.body if isinstance(s, syntax.ChartRow)]
    return tuple(_place(drawn[-1], column) for column in range(len(drawn[-1].cells))) if drawn else ()


def _place(row: syntax.ChartRow, column: int) -> Span:
    """Where a cell stands; the whole row where that is not known."""
    return row.places[column] if column < len(row.places) else row.span


def _whole(row: syntax.ChartRow) -> Span:
    return row.places[0].to(row.places[-1]) if row.places else row.span


# ----------------------------------------------------------------- keys


def _keys(node: syntax.ChartBlock, yarns: Mapping[str, Yarn | None], findings: Findings) -> tuple[CellKey, ...] | None:
    """The key; None when a symbol of it cannot be understood. Symbols that are given twice or not drawn are told of."""
    nodes = [s for s in node.body if isinstance(s, syntax.ChartKey)]
    findings.once(said("symbol-of", chart=node.name), ((k.symbol, k.span) for k in nodes))
    drawn = {c for s in node.body if isinstance(s, syntax.ChartRow) for c in s.cells}
    first: dict[str, syntax.ChartKey] = {}
    for key in nodes:
        first.setdefault(key.symbol, key)
    if drawn and not any(isinstance(s, syntax.Broken) for s in node.body):
        for symbol, key in first.items():
            if symbol not in drawn:
                findings.report(
                    "chart-key-unused",
                    (key.span, "not-drawn"),
                    helps=("leave-out",),
                    severity=Severity.WARNING,
                    symbol=symbol,
                    chart=node.name,
                )
    made = [_key(key, node.name, yarns, findings) for key in first.values()]
    return None if None in made else tuple(k for k in made if k is not None)


def _key(node: syntax.ChartKey, chart: str, yarns: Mapping[str, Yarn | None], findings: Findings) -> CellKey | None:
    origin = Origin(f"chart {chart} / key {node.symbol}", node.span)
    if node.kind not in CELLS:
        findings.unknown("meaning of a symbol", node.kind, node.span, CELLS)
        return None
    if node.yarn is not None and findings.look_up("yarn", node.yarn, node.span, yarns) is None:
        return None
    if not CELLS[node.kind].of_groups:
        return CellKey(node.symbol, Cell(node.kind, node.yarn or ""), origin)
    over = node.cross or 0
    if not 1 <= over <= MOST_CROSS or node.over not in (None, over):
        findings.report(
            "cross-uneven",
            (node.span, "cross"),
            notes=("alike",),
            helps=("write",),
            symbol=node.symbol,
            over=over,
            under=node.over or over,
            most=MOST_CROSS,
        )
        return None
    if node.hung_first is None:
        findings.report("missing-part/hung-first", (node.span, "cross"), helps=("add",), symbol=node.symbol)
        return None
    return CellKey(node.symbol, Cell("cross", "", over, node.hung_first), origin)


# ----------------------------------------------------------------- rows


def _even(rows: tuple[syntax.ChartRow, ...], chart: str, findings: Findings) -> bool:
    """Whether all rows are as long as most of them are; told at the end of those that are not."""
    wide, _ = Counter(len(r.cells) for r in rows).most_common(1)[0]
    model = next(n for n, r in enumerate(rows, 1) if len(r.cells) == wide)
    told = 0
    for number, row in enumerate(rows, 1):
        count = len(row.cells)
        if count == wide:
            continue
        told += 1
        if told > MOST_TOLD:
            break
        more = count - wide
        if more > 0:
            where, label = _place(row, wide), "too-many"
        else:
            end = _whole(row).end
            where = Span(row.places[-1].file, end, end + 1) if row.places else row.span
            label = "too-few"
        findings.report(
            "chart-ragged",
            (where, label),
            (_whole(rows[model - 1]), "model"),
            helps=("draw-alike",),
            row=number,
            chart=chart,
            cells=count,
            model=model,
            wide=wide,
            difference=abs(more),
        )
    return told == 0


def _known(rows: tuple[syntax.ChartRow, ...], node: syntax.ChartBlock, findings: Findings) -> bool:
    """Whether every symbol is in the key; each that is not is told of once, at its first cell from the bottom."""
    symbols = tuple(dict.fromkeys(s.symbol for s in node.body if isinstance(s, syntax.ChartKey)))
    if any(isinstance(s, syntax.Broken) for s in node.body):
        # A key that could not be read may have explained it.
        return False
    places: dict[str, list[tuple[int, int]]] = {}
    for number, row in enumerate(rows):
        for column, symbol in enumerate(row.cells):
            if symbol not in symbols:
                places.setdefault(symbol, []).append((number, column))
    for symbol, cells in places.items():
        (first, column), further = cells[0], cells[1:MOST_TOLD]
        meant = _nearest(symbol, symbols)
        findings.report(
            "chart-unknown-symbol",
            (_place(rows[first], column), "no-key"),
            *((_place(rows[y], x), "here-too") for y, x in further),
            notes=("symbols" if symbols else "no-key",),
            helps=(said("close", meant=meant) if meant else said("add"),),
            row=first + 1,
            column=column + 1,
            chart=node.name,
            symbol=symbol,
            symbols=symbols,
        )
    return not places


def _nearest(symbol: str, known: tuple[str, ...]) -> str | None:
    """A symbol of the key that may have been meant."""
    alike = (k for k in known if k.casefold() == symbol.casefold() or any(symbol in group and k in group for group in LOOK_ALIKE))
    return next(alike, None)


# ----------------------------------------------------------------- repeat


def _columns(
    repeat: syntax.ChartRepeat | None, wide: int, node: syntax.ChartBlock, uses: ChartUses, findings: Findings
) -> tuple[int, int, int] | None:
    """Columns before the repeat, in it and after it."""
    name = node.name
    if repeat is None:
        if name in uses.in_fabrics and name in uses.in_motifs:
            findings.report(
                "chart-in-two-ways",
                (node.span, "chart"),
                (uses.in_fabrics[name], "fabric"),
                (uses.in_motifs[name], "motif"),
                helps=("own-chart",),
                chart=name,
            )
            return None
        return 0, wide if name not in uses.in_motifs else 0, 0
    if repeat.stitches < 1 or repeat.after < 0:
        findings.report(
            "not-positive/chart-repeat", (repeat.span, "stitches"), helps=("a-stitch",), chart=name, stitches=repeat.stitches
        )
        return None
    if repeat.after + repeat.stitches > wide:
        findings.report(
            "chart-repeat-too-wide/after" if repeat.after else "chart-repeat-too-wide/alone",
            (repeat.span, "columns"),
            (next(_rows_of(node)), "cells"),
            helps=("fewer",),
            chart=name,
            stitches=repeat.stitches,
            after=repeat.after,
            cells=wide,
            columns=repeat.stitches + repeat.after,
            most=max(wide - repeat.after, 0),
        )
        return None
    return repeat.after, repeat.stitches, wide - repeat.after - repeat.stitches


def _rows_of(node: syntax.ChartBlock) -> Iterator[Span]:
    return (_whole(s) for s in node.body if isinstance(s, syntax.ChartRow))
