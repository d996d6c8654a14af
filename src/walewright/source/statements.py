"""Every statement as one line, in the one form that the formatter writes."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import Any

from walewright.source import syntax
from walewright.source.expressions import amount, expression, number
from walewright.source.material_statements import chart_repeat, edging, key, machine_fact, stitch, swatch, yarn
from walewright.source.page_statements import amount_of, in_languages, needed, photograph, place, text_line
from walewright.source.phrasing import counted, joined, maybe, number_or_name, ordinal, with_options
from walewright.source.text import escaped
from walewright.source.written_as import (
    BESIDE,
    COLOUR_WAYS,
    ENDS,
    HOLDING,
    NEXT_COPIES,
    PARITIES,
    PLACES,
    STARTS,
    TAKEN,
    WEDGE_EDGES,
    WHICH,
)
from walewright.trade.ends import Taken
from walewright.trade.joins import WornFacing
from walewright.trade.shaping import WayKind
from walewright.trade.sides import EdgeSide


def line(statement: syntax.Statement) -> str:
    """The statement without its block and its indentation."""
    return _LINES[type(statement)](statement)


def _extent(value: syntax.Expr, most: syntax.Expr | None) -> str:
    return f"between {expression(value)} and {expression(most)}" if most is not None else expression(value)


def _offset(offset: syntax.Expr | None) -> str:
    if offset is None:
        return ""
    place, side = _from_centre(offset)
    return f"{expression(place)} {side} of centre"


def _closed(taken: Taken) -> str:
    """What is said of a gap whose stitches do not go on waste yarn, as they do unless it is said."""
    return TAKEN[taken] if taken != "waste" else ""


def _between(from_level: str, to_level: str) -> str:
    return f"from {from_level} to {to_level}"


def _holes(count: int | syntax.Name, stitches: int) -> str:
    return f"buttonholes {number_or_name(count)} over {counted(stitches, 'stitch', 'stitches')}"


def _places(places: tuple[syntax.InsidePlace, ...]) -> str:
    return " and ".join(f"{expression(p.distance)} {PLACES[p.of]}" for p in places)


def _way(way: WayKind | None, inset: int | None, places: tuple[syntax.InsidePlace, ...] = ()) -> str:
    if way == "inside":
        return f"shaped {_places(places)}"
    return f"fashioned {inset} in" if way == "fashioned" else way or ""


def _size_row(row: syntax.SizeRow) -> str:
    if row.table is not None:
        said = with_options(f"{row.name} from {row.table} {row.table_row}", (f"{own.size} {amount(own.value)}" for own in row.own))
    else:
        said = joined(row.name, *(number(v) for v in row.values), row.unit or "")
    return joined(with_options(said, ["to fit" if row.to_fit else ""]), described(row))


def described(row: syntax.SizeRow) -> str:
    """The text at the end of a row, as it is written."""
    return ", ".join((escaped(row.about), *in_languages(row.others))) if row.about else ""


def _piece(piece: syntax.PieceBlock) -> str:
    copies = f"knit {number_or_name(piece.copies)}" if piece.copies != 1 else ""
    mirror = f"mirror of {piece.mirror_of}" if piece.mirror_of is not None else ""
    centre = PARITIES[piece.parity]
    purpose = f"as {piece.purpose}" if piece.purpose else ""
    fabric = f"in {piece.fabric}" if piece.fabric else ""
    if piece.like is not None:
        return with_options(f"piece {piece.name} like {piece.like}", [fabric, copies, centre, purpose])
    return with_options(f"piece {piece.name} {fabric}", [copies, mirror, centre, purpose])


def _levels(levels: syntax.Levels) -> str:
    return "levels " + ", ".join(f"{level.name} {_extent(level.height, level.most)}" for level in levels.levels)


def _start(start: syntax.Start) -> str:
    way = f"along {_refs(start.along)}" if start.way == "along" else STARTS[start.way]
    if start.width is not None:
        wide = f"{_extent(start.width, start.most)} wide "
    elif start.from_place is None:
        wide = ""
    else:
        ends = " to ".join(f"{expression(place)} {side}" for place, side in map(_from_centre, (start.from_place, start.to_place)))
        wide = f"{ends} of centre "
    said = f"start {wide}{way}"
    return with_options(said, [f"with {start.edging}" if start.edging is not None else "", _facing(start.facing)])


def _from_centre(place: syntax.Expr | None) -> tuple[syntax.Expr, EdgeSide]:
    """A place as it is written: so far from the centre line, and on which side."""
    assert place is not None
    return (place.value, "left") if isinstance(place, syntax.Negative) else (place, "right")


def _facing(facing: WornFacing) -> str:
    return f"{facing} side facing" if facing else ""


def _across(across: syntax.AcrossLine) -> str:
    head = f"across to {expression(across.width)} wide at {across.level}"
    return with_options(head, ["half a gap at each end" if across.half_gaps else ""])


def _opening(opening: syntax.OpeningLine) -> str:
    head = f"opening {opening.name} {expression(opening.width)} wide {_between(opening.from_level, opening.to_level)}"
    return with_options(head, [_offset(opening.offset), _closed(opening.taken)])


def _slot(slot: syntax.SlotLine) -> str:
    head = f"slot {slot.name} {expression(slot.width)} wide at {slot.level}"
    return with_options(head, [_offset(slot.offset), TAKEN[slot.taken]])


def _buttonholes(holes: syntax.ButtonholesLine) -> str:
    head = f"{_holes(holes.count, holes.stitches)} {_between(holes.from_level, holes.to_level)}"
    return f"{head}, {expression(holes.distance)} from the {holes.edge} edge"


def _wedge(wedge: syntax.WedgeLine) -> str:
    place = f"at {WEDGE_EDGES[wedge.edge]} {_between(wedge.from_level, wedge.to_level)}"
    return with_options(
        f"wedge {expression(wedge.width)} wide {place}", [HOLDING[wedge.kind], maybe("resting", wedge.rest), _larger(wedge)]
    )


def _shoulders(shoulders: syntax.Shoulders) -> str:
    whose = "shoulders" if shoulders.edge == "both" else f"{shoulders.edge} shoulder"
    return with_options(f"{whose} held from {shoulders.from_level}", [_larger(shoulders)])


def _larger(held: syntax.WedgeLine | syntax.Shoulders) -> str:
    return "larger steps last" if held.larger_last else ""


def _zone(zone: syntax.ZoneLine) -> str:
    head = f"fabric {zone.fabric} {_between(zone.from_level, zone.to_level)}"
    repeats = f"{counted(zone.repeats, 'repeat', 'repeats')} wide" if zone.repeats is not None else ""
    return with_options(head, [maybe("", zone.width, "wide"), repeats, _offset(zone.offset)])


def _needles(needles: syntax.NeedlesLine) -> str:
    where = f"every {ordinal(needles.every)}" if needles.every is not None else f"at {_places(needles.places)}"
    worn = f", worn {expression(needles.worn)} wide" if needles.worn is not None else ""
    return f"needles out {where} {_between(needles.from_level, needles.to_level)}{worn}"


def _shape(shape: syntax.ShapeBlock) -> str:
    return f"shape {shape.name}({', '.join(shape.parameters)})" if shape.parameters else f"shape {shape.name}"


def _use(use: syntax.Use) -> str:
    at = f"at {WEDGE_EDGES[use.edge]}" if use.edge != "both" else ""
    return with_options(joined(f"use {use.name}", at), [f"{name} {expression(value)}" for name, value in use.arguments])


def _edge(edge: syntax.EdgeLine) -> str:
    first = f"cast off {expression(edge.cast_off)} then" if edge.cast_off is not None else ""
    if edge.path == "straight":
        path = f"straight to {edge.to_level}"
    elif edge.path == "steps":
        path = f"steps {_steps(edge)} to {edge.to_level}"
    elif edge.path == "rate":
        path = _rate(edge)
    elif edge.width is not None:
        path = f"{edge.path} to {_extent(edge.width, edge.width_most)} {BESIDE[edge.beside]} at {edge.to_level}"
    else:
        assert edge.by is not None
        path = f"{edge.path} by {expression(edge.by)} at {edge.to_level}"
    called = f"called {edge.called}" if edge.called is not None else ""
    at_once = "two at once" if edge.at_once == 2 else ""
    larger = f"larger steps {edge.larger}" if edge.larger else ""
    options = [_way(edge.way, edge.inset, edge.places), at_once, larger, *_moving(edge)]
    return with_options(joined(WHICH[edge.which], first, path, called), options)


def _moving(edge: syntax.EdgeLine | syntax.Neck) -> tuple[str, str]:
    return "beginning with a move" if edge.begins_moving else "", "ending with a move" if edge.ends_moving else ""


def _steps(edge: syntax.EdgeLine) -> str:
    if edge.in_turn:
        return " then ".join(_equal_steps(s.by, s.times) if s.times != 1 else expression(s.by) for s in edge.in_turn)
    assert edge.by is not None
    assert edge.times is not None
    return _equal_steps(edge.by, edge.times)


def _equal_steps(by: syntax.Expr, times: int | syntax.Name) -> str:
    return f"{expression(by)}{f', {times.name}' if isinstance(times, syntax.Name) else f' {times}'} times"


def _rate(edge: syntax.EdgeLine) -> str:
    inwards = isinstance(edge.by, syntax.Negative)
    count = edge.by.value if isinstance(edge.by, syntax.Negative) else edge.by
    assert isinstance(count, syntax.Number)
    assert edge.every is not None
    every = counted(edge.every, "row", "rows")
    return f"{'in' if inwards else 'out'} {amount(count)} every {every} to {edge.to_level}"


def _neck(neck: syntax.Neck) -> str:
    flat = f"{expression(neck.flat)} flat" if neck.flat is not None else ""
    said = f"neck {expression(neck.width)} wide, {expression(neck.depth)} deep, {neck.shape}"
    return with_options(said, [flat, _way(neck.way, neck.inset), _closed(neck.taken), *_moving(neck)])


def _refs(refs: Iterable[syntax.EdgeRef]) -> str:
    return " + ".join(f"{ref.piece} {ref.edge}" for ref in refs)


def _band(band: syntax.BandLine) -> str:
    holes = ""
    if band.first is not None and band.last is not None:
        ends = f"{expression(band.first)} first, {expression(band.last)} last"
        where = f" along {_refs(band.hole_along)}" if band.hole_along else ""
        holes = f"{_holes(band.holes, band.hole_stitches)}{where}, {ends}"
    picked = f"{counted(band.picked, 'stitch', 'stitches')} to {counted(band.of_rows, 'row', 'rows')}" if band.of_rows else ""
    return with_options(f"band {band.name} with {band.edging} along {_refs(band.along)}", [holes, picked, _facing(band.facing)])


def _join(join: syntax.JoinLine) -> str:
    way = join.way if join.way != "sewn" else ""
    options = [maybe("easing", join.easing), maybe("longer by", join.longer), way, "matching" if join.matching else ""]
    if join.of_rows:
        options.append(f"{counted(join.of_rows, 'row', 'rows')} to {counted(join.to_stitches, 'stitch', 'stitches')}")
    options.append(NEXT_COPIES[join.next_copy])
    return with_options(f"join {_refs(join.one)} to {_refs(join.other)}", options)


def _finished(finished: syntax.FinishedLine) -> str:
    options = [maybe("wanted", finished.wanted), maybe("fits", finished.fits), "stretches" if finished.stretches else ""]
    return with_options(f"finished {finished.name} {amount_of(finished.amount)}", options)


def _through(through: syntax.Through) -> str:
    passes = "never passes" if through.never else "passes"
    head = joined(f"through {place(through.place)} {passes} {through.part}", maybe("of", through.figure))
    return with_options(head, [maybe("stretches to", through.share)])


def _lap(lap: syntax.LapLine) -> str:
    return with_options(f"lap {place(lap.over)} over {place(lap.under)}", [maybe("", lap.width, "wide")])


def _require(require: syntax.Require) -> str:
    texts = () if require.because is None else (f"because {escaped(require.because)}", *in_languages(require.others))
    return joined(f"require {amount_of(require.left)} {require.relation} {expression(require.right)}", ", ".join(texts))


_LINES: dict[type, Callable[[Any], str]] = {
    syntax.Broken: lambda s: s.text,
    syntax.ChoiceLine: lambda s: f"choice {s.name} {', '.join(s.alternatives)}",
    syntax.UseFrom: lambda s: f"use {', '.join(s.names)} from {escaped(s.file)}",
    syntax.ForBlock: lambda s: f"for {s.choice} {s.alternative}",
    syntax.NameLine: lambda s: with_options(f"name {s.name}", in_languages(s.others)),
    syntax.TextLine: text_line,
    syntax.PhotographLine: photograph,
    syntax.PatternBlock: lambda s: with_options(f"pattern {escaped(s.title)}", in_languages(s.others)),
    syntax.Sizes: lambda s: " ".join(("sizes", *s.names)),
    syntax.SizeRow: _size_row,
    syntax.Let: lambda s: f"let {s.name} = {expression(s.value)}",
    syntax.MachineBlock: lambda s: f"machine {s.name}",
    syntax.MachineFact: machine_fact,
    syntax.YarnLine: yarn,
    syntax.FabricBlock: lambda s: f"fabric {s.name} like {s.like}, in {s.yarn}" if s.like else f"fabric {s.name}",
    syntax.Stitch: stitch,
    syntax.RightSide: lambda s: f"right side {s.face}",
    syntax.Swatch: swatch,
    syntax.ChartBlock: lambda s: f"chart {s.name}",
    syntax.ChartKey: key,
    syntax.ChartRow: lambda s: joined("|", *s.cells, "|"),
    syntax.ChartRepeat: chart_repeat,
    syntax.ChartWay: lambda s: f"colours {COLOUR_WAYS[s.way]}",
    syntax.EdgingLine: edging,
    syntax.PieceBlock: _piece,
    syntax.Levels: _levels,
    syntax.Start: _start,
    syntax.EdgeLine: _edge,
    syntax.AcrossLine: _across,
    syntax.OpeningLine: _opening,
    syntax.Neck: _neck,
    syntax.SlotLine: _slot,
    syntax.ButtonholesLine: _buttonholes,
    syntax.WedgeLine: _wedge,
    syntax.ZoneLine: _zone,
    syntax.MotifLine: lambda s: with_options(f"motif {s.chart} at {s.level}", [_offset(s.offset)]),
    syntax.Without: lambda s: f"without {s.part}",
    syntax.NeedlesLine: _needles,
    syntax.RepeatLine: lambda s: f"repeat {number_or_name(s.times)} times {_between(s.from_level, s.to_level)}",
    syntax.ShapeBlock: _shape,
    syntax.Use: _use,
    syntax.CordLine: lambda s: f"cord {s.piece} {expression(s.length)} long",
    syntax.NeededLine: needed,
    syntax.Shoulders: _shoulders,
    syntax.End: lambda s: f"end with {s.edging}" if s.way == "edging" else f"end {ENDS[s.way]}",
    syntax.BandLine: _band,
    syntax.JoinLine: _join,
    syntax.Free: lambda s: f"free {_refs(s.edges)}",
    syntax.FinishedLine: _finished,
    syntax.Through: _through,
    syntax.LapLine: _lap,
    syntax.Require: _require,
    syntax.MakingUp: lambda s: "making up",
}
