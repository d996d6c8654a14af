"""The handwork behind the short sentences: each technique is explained once, in a box, and only if the pattern has it; the pieces
refer to the boxes."""

from __future__ import annotations

import itertools
from collections.abc import Iterable, Iterator, Mapping

from walewright.design.model import Chart, Design, EdgeJoin, EdgeName, EdgeRun, Edging
from walewright.figures.hands import TECHNIQUES, Technique
from walewright.figures.hands.scene import Scene
from walewright.figures.measures import name_of
from walewright.guide.model import Guide
from walewright.sheet.charts import anchor as chart_anchor
from walewright.sheet.model import HowTo
from walewright.trade.edge_names import is_top, part_of_edge
from walewright.trade.joins import JoinWay
from walewright.write.model import Instructions, Section


def handwork(guide: Guide, design: Design, instructions: Instructions) -> tuple[HowTo, ...]:
    """What is done by hand in this pattern, one technique each, in the order in which the garment first needs them; none when
    nothing needs a word."""
    told = dict.fromkeys(t for section in instructions.sections for t in _techniques(design, section))
    return tuple(_how_to(guide, t) for t in told)


def _techniques(design: Design, section: Section) -> list[Technique]:
    """Those of a section, in the order of its steps; where one step needs several, in that of the house."""
    needed = set(features(design, section))
    steps = [kind for p in section.paragraphs for s in p.sentences for kind in s.kinds]
    at = {kind: number for number, kind in reversed(list(enumerate(steps)))}
    found = [t for t in TECHNIQUES if needed & set(t.when)]
    return sorted(found, key=lambda t: min(_first(f, at, len(steps)) for f in t.when if f in needed))


def _first(feature: str, at: Mapping[str, int], end: int) -> int:
    """The step that a feature belongs to: a beginning comes first, cells come with their chart, and what no step names is done
    at the end."""
    if feature in at:
        return at[feature]
    if feature.startswith("start "):
        return -1
    return at.get("StartChart", end) if feature.startswith("cell ") or feature in OF_CHARTS else end


OF_CHARTS = frozenset({"picture", "other yarn", "cross beside purl"})
"""Features of charts that name no cell."""


def _how_to(guide: Guide, technique: Technique) -> HowTo:
    told, scene = guide.how_to[technique.key], Scene(guide)
    technique.draw(scene)
    drawn = scene.finished(guide.say("drawing/how-to", title=told.title, shown=told.shown))
    return HowTo(anchor(technique), told.title, (told.text,), drawn)


def anchor(technique: Technique) -> str:
    """The place of its box."""
    return f"how-{technique.key}"


def by_hand(guide: Guide, design: Design, section: Section) -> tuple[tuple[str, str], ...]:
    """(anchor, title) of the charts that a section works and of the boxes that explain its handwork."""
    worked = _charts(design, section) if "StartChart" in features(design, section) else []
    charts = ((chart_anchor(c.name), guide.say("chart", chart=name_of(c.name))) for c in worked)
    return (*charts, *((anchor(t), guide.how_to[t.key].title) for t in _techniques(design, section)))


def features(design: Design, section: Section) -> Iterator[str]:
    """What a section needs: the kinds of its steps, "start chain", "cell hole", "edging folded" and the like."""
    kinds = {kind for p in section.paragraphs for s in p.sentences for kind in s.kinds}
    yield from sorted(kinds)
    if section.joining and "JoinEdges" in kinds:
        for join in design.joins:
            if join.way != "linked":
                yield from _of_join(design, join)
        sewn: JoinWay = "sewn"
        if design.bands and not any(join.way == sewn for join in design.joins):
            # What is left to be sewn are ends of bands, which no join has to name.
            yield from (f"join {sewn}", "join rows to rows")
    if "HangToLink" in kinds:
        yield "join linked"
    piece = next((p for p in design.pieces if p.name == section.name), None)
    if piece is not None:
        yield f"start {piece.start_way}"
        if piece.buttonholes:
            yield "buttonholes"
    if any(b.holes for b in design.bands if b.name == section.name):
        yield "buttonholes"
    if "StartChart" in kinds:
        for chart in _charts(design, section):
            yield from _of_chart(chart)
    for edging in _edgings(design, section):
        yield f"edging {edging.kind} {edging.mock}" if edging.mock else f"edging {edging.kind}"


def _of_join(design: Design, join: EdgeJoin) -> Iterator[str]:
    """How it is put together; of what is sewn, what lies against what."""
    edges = (*join.one, *join.other)
    if join.way == "sewn" and all(_waits(design, e) for e in edges):
        # No seam holds open loops: they are grafted, or linked on the bed.
        yield from ("join grafted", "join linked")
        return
    yield f"join {join.way}"
    if join.way in ("sewn", "gathered", "pleated"):
        for one in dict.fromkeys(_of_stitches(design, e) for e in join.one):
            for other in dict.fromkeys(_of_stitches(design, e) for e in join.other):
                yield f"join {'stitches' if one or other else 'rows'} to {'stitches' if one and other else 'rows'}"


def _waits(design: Design, edge: EdgeName) -> bool:
    """Whether its loops are on waste yarn."""
    return is_top(edge.edge) and design.band(edge.piece) is None and design.piece(edge.piece).end_way == "waste"


def _of_stitches(design: Design, edge: EdgeName) -> bool:
    """Whether stitches lie along the edge: a start, an end, the lips of a slot, what was taken at once of an opening, a flank in
    steps, as at the side of what is knitted sideways; along any other it is rows."""
    if design.band(edge.piece) is not None:
        return False
    of = part_of_edge(edge.edge)
    piece = design.piece(edge.piece)
    flank = [run for run in (*piece.left, *piece.right) if run.name == of.name]
    if flank and all(map(_in_wide_steps, flank)):
        return True
    return is_top(edge.edge) or of.name in ("start", *(s.name for s in piece.slots)) or of.part == "centre" or of.upper


WIDE_STEP_CM = 1.0
"""From so much on, the stitches of a step are sewn as stitches; a slant of single ones is sewn as rows (common practice; the figure
is ours)."""


def _in_wide_steps(run: EdgeRun) -> bool:
    return run.path == "steps" and all(abs(cm) >= WIDE_STEP_CM * times for cm, times in zip(run.change, run.steps, strict=True))


def _charts(design: Design, section: Section) -> list[Chart]:
    """The charts of a piece's fabric, of those within it, and of its motifs; of an edging's or band's fabric."""
    piece = next((p for p in design.pieces if p.name == section.name), None)
    fabrics = [e.fabric for e in _edgings(design, section)]
    names = []
    if piece is not None:
        fabrics += [piece.fabric, *(z.fabric for z in piece.zones)]
        names += [m.chart for m in piece.motifs]
    names += [f.chart for f in design.fabrics if f.name in fabrics and f.chart]
    return [c for c in design.charts if c.name in names]


def _edgings(design: Design, section: Section) -> Iterable[Edging]:
    named = {b.edging for b in design.bands if b.name == section.name}
    for piece in design.pieces:
        own = piece.start_edging
        if own is not None and section.name in (f"{piece.name} {own}", piece.name):
            edging = design.edging(own)
            # One that is knitted first has no section of its own.
            if section.name != piece.name or edging.when == "first":
                named.add(own)
        if piece.end_edging is not None and section.name == piece.name:
            named.add(piece.end_edging)
    return [e for e in design.edgings if e.name in named]


def _of_chart(chart: Chart) -> Iterator[str]:
    cells = {k.symbol: k.cell for k in chart.key}
    used = [cells[symbol] for symbol in dict.fromkeys("".join(chart.rows))]
    yield from (f"cell {cell.kind}" for cell in used if not cell.yarn)
    if chart.stage:
        yield "cell purl in stages"
    if any(cell.yarn for cell in used):
        yield "picture" if chart.picture else "other yarn"
    for row in chart.rows:
        for one, other in itertools.pairwise(row):
            if {cells[one].kind, cells[other].kind} == {"cross", "purl"}:
                yield "cross beside purl"
                return
