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


MOVED = frozenset({
    *("Decrease 1", "Decrease 2", "Decrease 1 in", "Decrease 2 in", "IncreaseFashioned", "DecreaseOn", "DecreaseOuter"),
    *("IncreaseBeside", "IncreaseOuter", "NeedleOut", "NeedlesOutEvery", "EyeletAt", "PicotRow", "SpreadEvenly", "RehangStart"),
    *("PickUpAlong", "HangToLink", "FoldUp", "CloseCentre", "SlotClosed", "CastOffAtCarriage", "CastOffAll"),
})  # fmt: skip
"""Steps in which loops are moved or hung by a transfer tool of one prong; the lines say where it has more."""
LATCHED = frozenset({
    *("LatchRib", "LatchPanel", "LatchInStages", "LatchPanelInStages", "CloseCentre", "SlotClosed", "CastOffAtCarriage"),
    "CastOffAll",
})  # fmt: skip
"""Steps in which loops are drawn through others by a latch tool."""
WEIGHTED = frozenset({
    *("Decrease 1", "Decrease 2", "Decrease 1 in", "Decrease 2 in", "DecreaseOn", "DecreaseOuter", "IncreaseBeside"),
    *("IncreaseOuter", "CastOnAtCarriage", "CastOnBetween", "SlotOnWaste", "SlotClosed", "ReturnSome"),
})  # fmt: skip
"""Steps after which a weight at the edge, or below what is new, is moved up."""


def tools(guide: Guide, design: Design, instructions: Instructions) -> tuple[str, ...]:
    """Everything beside the yarn and the machine."""
    sentences = (s for section in instructions.sections for p in section.paragraphs for s in p.sentences)
    return tuple(_tools(guide, design, frozenset(kind for s in sentences for kind in s.kinds)))


def _cord(starts: frozenset[str], part: bool) -> Iterator[str]:
    """Ravel cord for starts, two of it below a hung hem, and for a part that waits on it."""
    if "WasteStart hem" in starts:
        yield "tool/cord-hem-both" if part else "tool/cord-hem"
    elif starts or part:
        yield "tool/cord-both" if starts and part else "tool/cord-start" if starts else "tool/cord-part"


def _weights(kinds: frozenset[str]) -> Iterator[str]:
    yield "tool/hem" if "WasteStart hem" in kinds else "tool/comb-and-weights" if "WasteStart" in kinds else "tool/weights"
    if kinds & WEIGHTED:
        yield "tool/edge-weights"


def _transfer_tools(guide: Guide, design: Design, kinds: frozenset[str], charts: tuple[Chart, ...]) -> Iterator[str]:
    insets = {run.way.inset for p in design.pieces for run in _runs(p) if run.way.kind == "fashioned"}
    if any(run.way.inside for p in design.pieces for run in _runs(p)):
        # All that lies outside a line is moved with the widest tool at hand.
        insets.add(max(design.machine.prongs, default=1))
    moved = {n for c in charts for n in moved_together(c)}
    prongs = sorted({i for i in insets if i} | moved | ({1} if kinds & MOVED or insets or moved else set()))
    if prongs:
        yield guide.say("tool/transfer", prongs=tuple(str(p) for p in prongs), tools=len(prongs), most=prongs[-1])
    crossed = sorted({cell.cross for chart in charts for cell in used(chart) if cell.kind == "cross"})
    if crossed:
        yield guide.say("tool/for-crosses", tools=tuple(guide.say("tool/prongs", prongs=k) for k in crossed))


def _tools(guide: Guide, design: Design, kinds: frozenset[str]) -> Iterator[str]:
    charts = worked(design)
    cells = {cell.kind for chart in charts for cell in used(chart)}
    starts = {p.start_way for p in design.pieces}
    # A swatch lies between rows of it.
    yield guide.say("tool/waste-yarn" if any(_wants_waste(p) for p in design.pieces) else "tool/waste-yarn-swatch")
    begun = kinds & {"WasteStart", "WasteStart hem", "WasteStart by hand"}
    yield from (guide.say(key) for key in (*_cord(begun, "PartOnCord" in kinds), *_weights(kinds)))
    yield from _transfer_tools(guide, design, kinds, charts)
    if kinds & LATCHED or "purl" in cells or "chain" in starts or any(e.kind == "chained" for e in design.edgings):
        yield guide.say("tool/latch")
    if "long" in cells:
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
