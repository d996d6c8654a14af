"""What hands need beside the yarn and the machine."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.design.model import Cell, Chart, Design, EdgeRun, Piece
from walewright.guide.numbers import graded, listed, sentence
from walewright.write.model import Instructions


def worked(design: Design) -> tuple[Chart, ...]:
    """The charts that a fabric or a motif has."""
    names = {f.chart for f in design.fabrics} | {m.chart for p in design.pieces for m in p.motifs}
    return tuple(c for c in design.charts if c.name in names)


def used(chart: Chart) -> tuple[Cell, ...]:
    """Every cell that occurs in the chart, once."""
    found = set("".join(chart.rows))
    return tuple(k.cell for k in chart.key if k.symbol in found)


def moved_together(chart: Chart) -> set[int]:
    """How many stitches its moves take at once: from a hole to where two come together."""
    cells = {k.symbol: k.cell.kind for k in chart.key}
    counts = set()
    for row in chart.rows:
        # Moves of a repeat may begin in the repeat before.
        kinds = [cells[s] for s in row] * (2 if chart.repeat == len(row) else 1)
        for way in ("left", "right"):
            count = 0
            for kind in kinds if way == "left" else reversed(kinds):
                if kind == f"from {way}":
                    count += 1
                    continue
                if kind in (f"two from {way}", "three"):
                    counts.add(count + 1)
                count = 0
    return counts


def tools(design: Design, instructions: Instructions) -> tuple[str, ...]:
    """Everything beside the yarn and the machine."""
    sentences = (s for section in instructions.sections for p in section.paragraphs for s in p.sentences)
    return tuple(_tools(design, any("PartOnCord" in s.kinds for s in sentences)))


def _cord(start: bool, part: bool) -> Iterator[str]:
    """Ravel cord for starts, and for a part that waits on it."""
    if start and part:
        yield (
            "Ravel cord: two strong, slippery lengths, one longer than the bed is wide for the start, one for a part that waits, "
            "three times as long as that is wide"
        )
    elif start:
        yield "Ravel cord: one strong, slippery length, longer than the bed is wide"
    elif part:
        yield "Ravel cord: one strong, slippery length, three times as long as the part is wide that waits on it"


def _tools(design: Design, part_on_cord: bool) -> Iterator[str]:
    charts = worked(design)
    kinds = {cell.kind for chart in charts for cell in used(chart)}
    if any(_wants_waste(p) for p in design.pieces):
        yield "Waste yarn: smooth, of about the same thickness and in a contrasting colour"
    starts = {p.start_way for p in design.pieces}
    yield from _cord(bool(starts & {"waste", "hand waste"}), part_on_cord)
    yield "Cast-on comb, and weights for the width in work" if "waste" in starts else "Weights for the width in work"
    insets = {run.way.inset for p in design.pieces for run in _runs(p) if run.way.kind == "fashioned"}
    prongs = sorted({1} | {i for i in insets if i} | {n for c in charts for n in moved_together(c)})
    counted = f"{listed([str(p) for p in prongs])} prong{'s' if prongs[-1] > 1 else ''}"
    yield f"Transfer tool{'s' if len(prongs) > 1 else ''} with {counted}"
    crossed = sorted({cell.cross for chart in charts for cell in used(chart) if cell.kind == "cross"})
    if crossed:
        yield f"Two of each for the crosses: {listed([f'{k}-prong tools' for k in crossed])}"
    yield "Latch tool"
    if "long" in kinds:
        yield "A strip of card or a thin rod to measure long stitches by"
    if any(chart.picture for chart in charts):
        yield "Bobbins for picture knitting, one for each block of the row that has most"
    if any(run.name for p in design.pieces for run in (*p.left, *p.right)):
        yield "Short lengths of contrasting thread to mark edges"
    for cord in design.cords:
        yield f"Cord or ribbon for the {sentence(cord.piece).lower()}: {graded([f'{cm:g}' for cm in cord.length])} cm"
    yield "Blunt sewing needle, tape measure, scissors with covered points"


def _wants_waste(piece: Piece) -> bool:
    """Whether stitches of the piece wait on waste yarn at its start, its end, in mid-row, or while they are hung back."""
    if {"waste", "hand waste"} & {piece.start_way, piece.end_way} or any(run.path == "across" for run in piece.left):
        return True
    return any(o.taken == "waste" and any(o.flat) for o in piece.openings) or any(s.taken == "waste" for s in piece.slots)


def _runs(piece: Piece) -> Iterator[EdgeRun]:
    """All that is shaped of a piece: its edges, and those of its openings."""
    yield from (*piece.left, *piece.right)
    for opening in piece.openings:
        yield from (*opening.left, *opening.right)
