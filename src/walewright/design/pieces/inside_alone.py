"""What may share rows with shaping along a line within a piece. Stitches outside the line go over to other needles, and with them
the wales that a rib or a chart counts by needles; a part beside an opening has no room for it; and the lines of one edge keep
clear of those of the other."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from walewright.design.model import Chart, EdgeRun, Fabric, PerSize, Piece
from walewright.design.pieces.outline import NOTHING, PieceOutline
from walewright.design.pieces.rows_shared import RowsTaken, share_no_rows, whole_width
from walewright.design.reading.places import AmountPlace
from walewright.record import record
from walewright.report.said import said
from walewright.trade.sides import EdgeSide

LEAST_APART = 2.0
"""Stitches in the design from the innermost line of one edge to that of the other where one is led by its edge: each falls on the
nearest needle, so that two are left, and each line has its own. Lines that keep their needles are put that far apart where they
are counted; they need only not cross."""


def inside_alone(
    piece: Piece,
    outline: PieceOutline,
    fabrics: Mapping[str, Fabric | None],
    charts: Mapping[str, Chart | None],
    place: AmountPlace,
) -> bool:
    """Whether the lines of a piece are shaped in plain knitting over the whole width; told where they are not."""
    numbers = {level.name: number for number, level in enumerate(piece.levels)}
    findings = place.findings
    for run, low in _lined(piece):
        high = numbers[run.to_level]
        shaped = RowsTaken(said("shaping-inside", level=run.to_level), numbers[low], high, run.origin.span)
        panels = [
            RowsTaken(said("panel", fabric=z.fabric), numbers[z.from_level], numbers[z.to_level], z.origin.span)
            for z in piece.zones
            if z.width is not None
        ]
        if not all(share_no_rows((shaped, panel), piece.name, findings) for panel in panels):
            return False
        if not whole_width((shaped,), outline, findings, place):
            return False
        within = [z for z in piece.zones if z.width is None and numbers[z.from_level] < high and numbers[low] < numbers[z.to_level]]
        names = [z.fabric for z in within] or [piece.fabric]
        by_needles = next((f for name in names if (f := fabrics.get(name)) is not None and (f.rib_every or f.chart)), None)
        drawn = by_needles is not None or _motif_there(piece, outline, shaped, charts, place)
        if drawn:
            name = by_needles.name if by_needles is not None else ""
            findings.report(
                "line-inside/fabric", (run.origin.span, "shaped"), helps=("fabric",), to_level=run.to_level, fabric=name
            )
            return False
    return _apart(piece, outline, place)


@record
class _LinedRun:
    """A run shaped along lines, from height `low` to `high`."""

    side: EdgeSide
    run: EdgeRun
    low: PerSize
    high: PerSize

    @property
    def led(self) -> bool:
        """Whether its innermost line goes with the edge: of several that one keeps its needle."""
        return len(self.run.lines) == 1 and self.run.lines[0].of == "edge"

    def innermost(self, size: int, heights: tuple[float, float], outline: PieceOutline) -> float:
        """Where the innermost line is nearest to the other edge between two heights: its distance from the middle of the start.
        A line alone that is led by the edge goes with it."""
        line = self.run.lines[0]
        if line.of == "centre":
            return line.at(self.side)[size]
        follows = heights if self.led else (self.low[size],)
        every = range(len(self.low))
        edges = [outline.position(self.side, tuple(h for _ in every), above=h < self.high[size])[size] for h in follows]
        return min(edges) - line.at(self.side)[size]


def _apart(piece: Piece, outline: PieceOutline, place: AmountPlace) -> bool:
    """Whether the lines of one edge keep clear of those that the other is shaped along in the same rows; told at the later one."""
    if place.fabric is None:
        return True
    two = LEAST_APART / place.fabric.stitches_per_cm
    for left in _lined_runs(piece, "left"):
        for right in _lined_runs(piece, "right"):
            short: list[str] = []
            least = two if left.led or right.led else 0.0
            for i, size in enumerate(place.scope.sizes):
                between = (max(left.low[i], right.low[i]), min(left.high[i], right.high[i]))
                if between[1] - between[0] < NOTHING:
                    continue
                if sum(one.innermost(i, between, outline) for one in (left, right)) < least - NOTHING:
                    short.append(size)
            if short:
                later = max(left.run, right.run, key=lambda run: run.origin.span.start)
                place.findings.report(
                    "line-inside/no-room",
                    (later.origin.span, "shaped"),
                    notes=("other-edge",),
                    helps=("no-room",),
                    sizes=place.scope.only(tuple(short)),
                    to_level=later.to_level,
                )
                return False
    return True


def _lined_runs(piece: Piece, side: EdgeSide) -> Iterator[_LinedRun]:
    heights = {level.name: level.height for level in piece.levels}
    low = piece.levels[0].height
    for run in piece.left if side == "left" else piece.right:
        high = heights[run.to_level]
        if run.lines:
            yield _LinedRun(side, run, low, high)
        low = high


def _lined(piece: Piece) -> Iterator[tuple[EdgeRun, str]]:
    """Runs shaped along lines, each with the level where it begins."""
    for runs in (piece.left,) if piece.symmetric else (piece.left, piece.right):
        low = piece.levels[0].name
        for run in runs:
            if run.lines:
                yield run, low
            low = run.to_level


def _motif_there(
    piece: Piece, outline: PieceOutline, shaped: RowsTaken, charts: Mapping[str, Chart | None], place: AmountPlace
) -> bool:
    """Whether a motif has rows where a line is shaped."""
    heights = {level.name: level.height for level in piece.levels}
    low, high = outline.levels[shaped.low].height, outline.levels[shaped.high].height
    for motif in piece.motifs:
        chart = charts.get(motif.chart)
        if chart is None or place.fabric is None:
            continue
        tall = len(chart.rows) / place.fabric.rows_per_cm
        for begin, a, b in zip(heights[motif.level], low, high, strict=True):
            if begin < b - NOTHING and begin + tall > a + NOTHING:
                return True
    return False
