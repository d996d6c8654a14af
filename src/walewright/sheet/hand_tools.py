"""What hands need beside the yarn and the machine."""

from __future__ import annotations

from collections.abc import Iterator

from walewright.design.model import Cell, Chart, Design, EdgeRun, Piece
from walewright.guide.model import Guide
from walewright.guide.numbers import graded, sentence
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


def tools(guide: Guide, design: Design, instructions: Instructions) -> tuple[str, ...]:
    """Everything beside the yarn and the machine."""
    sentences = (s for section in instructions.sections for p in section.paragraphs for s in p.sentences)
    return tuple(_tools(guide, design, any("PartOnCord" in s.kinds for s in sentences)))


def _cord(start: bool, part: bool) -> Iterator[str]:
    """Ravel cord for starts, and for a part that waits on it."""
    if start or part:
        yield "tool/cord-both" if start and part else "tool/cord-start" if start else "tool/cord-part"


def _tools(guide: Guide, design: Design, part_on_cord: bool) -> Iterator[str]:
    charts = worked(design)
    kinds = {cell.kind for chart in charts for cell in used(chart)}
    starts = {p.start_way for p in design.pieces}
    if any(_wants_waste(p) for p in design.pieces):
        yield guide.say("tool/waste-yarn")
    yield from (guide.say(key) for key in _cord(bool(starts & {"waste", "hand waste"}), part_on_cord))
    yield guide.say("tool/comb-and-weights" if "waste" in starts else "tool/weights")
    insets = {run.way.inset for p in design.pieces for run in _runs(p) if run.way.kind == "fashioned"}
    if any(run.way.inside for p in design.pieces for run in _runs(p)):
        # All that lies outside a line is moved with the widest tool at hand.
        insets.add(max(design.machine.prongs, default=1))
    prongs = sorted({1} | {i for i in insets if i} | {n for c in charts for n in moved_together(c)})
    yield guide.say("tool/transfer", prongs=tuple(str(p) for p in prongs), tools=len(prongs), most=prongs[-1])
    crossed = sorted({cell.cross for chart in charts for cell in used(chart) if cell.kind == "cross"})
    if crossed:
        yield guide.say("tool/for-crosses", tools=tuple(guide.say("tool/prongs", prongs=k) for k in crossed))
    yield guide.say("tool/latch")
    if "long" in kinds:
        yield guide.say("tool/card")
    if any(chart.picture for chart in charts):
        yield guide.say("tool/bobbins")
    if any(run.name for p in design.pieces for run in (*p.left, *p.right)):
        yield guide.say("tool/thread")
    for cord in design.cords:
        yield guide.say(
            "tool/cord", piece=guide.within(sentence(cord.piece)), cm=guide.decimal(graded([f"{cm:g}" for cm in cord.length]))
        )
    yield guide.say("tool/last")


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
