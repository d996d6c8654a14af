"""The lines of what is knitted with, written anew: facts of a bed, yarns, fabrics, charts, edgings."""

from __future__ import annotations

from walewright.source import syntax
from walewright.source.expressions import amount
from walewright.source.page_statements import in_languages
from walewright.source.phrasing import counted, joined, maybe, ordinal, with_options
from walewright.source.text import escaped
from walewright.source.written_as import CELLS, EDGINGS, FITS, MOCK_RIBS, WHEN


def machine_fact(fact: syntax.MachineFact) -> str:
    """`needles 100`, `prongs 1 2 3`."""
    return joined(fact.key, *(amount(v) for v in fact.values), ", ".join(fact.names))


def yarn(yarn: syntax.YarnLine) -> str:
    """`yarn wool "aran-weight wool", 50 g = 82 m`."""
    length = f" = {amount(yarn.ball_length)}" if yarn.ball_length is not None else ""
    count = f" of {yarn.count.text} {yarn.count.system}" if yarn.count is not None else ""
    ball = " + ".join(yarn.strands) + " together" if yarn.ball_weight is None else f"{amount(yarn.ball_weight)}{length}{count}"
    said = f"yarn {yarn.name} {escaped(yarn.label)}, {ball}"
    fibres = f"fibre {' + '.join(yarn.fibres)}" if yarn.fibres else ""
    shown = f"shown {escaped(yarn.colour)}" if yarn.colour is not None else ""
    return with_options(said, [fibres, shown, *in_languages(yarn.others)])


def stitch(stitch: syntax.Stitch) -> str:
    """`stocking stitch in wool at tension 4`."""
    if stitch.stitch == "stripes":
        stripes = ", ".join(f"{counted(s.rows, 'row', 'rows')} {s.yarn}" for s in stitch.stripes)
        return f"stripes of {stripes} at tension {stitch.tension}"
    if stitch.stitch == "chart":
        edge = counted(stitch.edge, "edge stitch", "edge stitches") if stitch.edge is not None else ""
        head = f"chart {stitch.chart} in {stitch.yarn} at tension {stitch.tension}"
        return with_options(head, [FITS[stitch.fit] if stitch.fit is not None else "", edge])
    every = f"every {ordinal(stitch.every)} needle" if stitch.every is not None else ""
    return joined(stitch.stitch, every, f"in {stitch.yarn} at tension {stitch.tension}")


def swatch(swatch: syntax.Swatch) -> str:
    """`swatch 40 stitches by 60 rows = 25.2 cm by 27 cm, 34 g`."""
    counted = f"swatch {amount(swatch.stitches)} by {amount(swatch.rows)}"
    measured = f"{amount(swatch.width)} by {amount(swatch.height)}"
    weight = amount(swatch.weight) if swatch.weight is not None else ""
    loop = f"{amount(swatch.loop)} to a stitch" if swatch.loop is not None else ""
    return with_options(f"{counted} = {measured}", [weight, loop])


def key(key: syntax.ChartKey) -> str:
    """`key N knit in navy`."""
    meaning = CELLS[key.kind]
    if key.cross is not None:
        meaning = f"cross {key.cross} over {key.over}, {key.hung_first} first"
    yarn = f"in {key.yarn}" if key.yarn is not None else ""
    return joined("key", key.symbol, meaning, yarn)


def chart_repeat(repeat: syntax.ChartRepeat) -> str:
    """`repeat 6 stitches, after 1 stitch`."""
    after = f"after {counted(repeat.after, 'stitch', 'stitches')}" if repeat.after else ""
    return with_options(f"repeat {counted(repeat.stitches, 'stitch', 'stitches')}", [after])


def edging(edging: syntax.EdgingLine) -> str:
    """`edging welt in rib, 6 cm deep, added after, cast off chain`."""
    # An edging knitted first ends in the piece and has nothing to cast off.
    cast_off = f"cast off {edging.cast_off}" if (edging.when, edging.cast_off) != ("first", "chain") else ""
    kind = joined(EDGINGS[edging.kind], MOCK_RIBS[edging.mock])
    fold = f"fold row at tension {edging.fold_tension}" if edging.fold_tension is not None else ""
    inside = f"inside at tension {edging.inside_tension}" if edging.inside_tension is not None else ""
    options = (maybe("", edging.depth, "deep"), kind, fold, inside, WHEN[edging.when], cast_off)
    return with_options(f"edging {edging.name} in {edging.fabric}", options)
